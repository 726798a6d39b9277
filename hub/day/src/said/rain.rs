//! Rain, for the whole site: that it began, and that it stopped. Neither frees anything.
//!
//! Faces and what protects them are inspected after every rainstorm (29 CFR 1926.651(k)(1)). So each face that is being dug owes an
//! inspection when it begins and again when it stops: what was looked at while it rained does not count as after it. What rain
//! voids, both words void: see [`crate::said::void`].

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::cuts::now::{FaceWord, InspectionWhy};
use crate::cuts::strip;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::overtaken;
use crate::refusal::Refusal;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::{Time, When};

/// It rains.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayRain {}

impl Saying for SayRain {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        began(at.state, at.when)
    }
}

/// It rains no more.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayRainStopped {
    /// The newest word that it rains which the page showed: see [`RainNow::word`].
    pub rain: u64,
}

impl Saying for SayRainStopped {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        stopped(at.state, self)
    }
}

/// Rain began, or somebody said again that it rains.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct RainBegan {
    /// The faces and trenches that owe an inspection because of it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub faces: Vec<String>,
}

impl Happening for RainBegan {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        let since = state.rain.since.unwrap_or(entry.made_at);
        told(state, entry, &self.faces, Some(since));
    }
}

/// Rain stopped.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct RainStopped {
    /// The word that it rained which this one answers.
    pub rain: u64,
    /// The faces and trenches that owe an inspection because of it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub faces: Vec<String>,
}

impl Happening for RainStopped {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        told(state, entry, &self.faces, None);
    }
}

/// What was last said of the rain. It outlives the day: rain does.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct RainNow {
    /// The newest word, that it began or that it stopped; zero before any.
    pub word: u64,
    /// When the hub took that word.
    #[schema(required)]
    pub at: Option<Time>,
    /// It rains: since when, as the first who said so made the word.
    #[schema(required)]
    pub since: Option<Time>,
    /// Who said the newest word.
    pub by: String,
}

/// Taken however late it comes, unless somebody said meanwhile that it stopped. A word that is older than the one known while
/// it rains tells of the same rain.
fn began(state: &State, when: When) -> Result<Vec<Body>, Refusal> {
    on_a_day(state)?;
    let rain = &state.rain;
    let known = rain.at.is_some_and(|at| when.made_at < at);
    if known && rain.since.is_some() {
        return Ok(vec![]);
    }
    let stopped = words::rain::somebody_said_that_it_stopped();
    overtaken::after(when, rain.at, stopped)?;
    let faces = strip::being_dug(state);
    Ok(vec![Body::RainBegan(RainBegan { faces })])
}

/// Taken however late it comes: it frees nothing, and what it makes due is due the sooner.
fn stopped(state: &State, asked: &SayRainStopped) -> Result<Vec<Body>, Refusal> {
    on_a_day(state)?;
    if state.rain.since.is_none() {
        return Ok(vec![]);
    }
    if state.rain.word != asked.rain {
        return Err(overtaken::overtaken(
            words::rain::somebody_said_that_it_rains(),
        ));
    }
    Ok(vec![Body::RainStopped(RainStopped {
        rain: asked.rain,
        faces: strip::being_dug(state),
    })])
}

fn on_a_day(state: &State) -> Result<(), Refusal> {
    state.site().ok_or(Refusal::NoSite)?;
    state.day.as_ref().map(|_| ()).ok_or(Refusal::NoDay)
}

fn told(state: &mut State, entry: &Entry, faces: &[String], since: Option<Time>) {
    state.rain = RainNow {
        word: entry.seq,
        at: Some(entry.at),
        since,
        by: entry.by.person.clone(),
    };
    let word = FaceWord {
        entry: entry.seq,
        at: entry.at,
    };
    for face in faces {
        state.cuts.owes(face, InspectionWhy::Rain, word);
    }
}

#[cfg(test)]
mod tests;
