//! One rod value at one mark becomes a correction, a question, a spot elevation, or a late line in the log.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::slip::Mode;
use earthwork::tolerance::Verdict;
use earthwork::uncertainty::Care;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::cuts::held;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::Refusal;
use crate::said::marks::PaintState;
use crate::said::{blind, repeat, settle, suspect, wrong_number};
use crate::saying::{Asking, Closed, Saying};
use crate::state::{AskedReading, State, TakenReading};
use crate::time::When;

mod called;
mod fit;
mod late;
mod paper;
mod place;
mod rocked;
mod shot;
mod why;

pub use fit::{Joinable, joinable};
pub use late::{LateReason, ReadingLate};
use late::{late, newer};
pub use place::{Placed, Where};
use shot::Shot;
pub(crate) use shot::surface_at;
pub use shot::{dig_to, parts};
pub use why::{Question, SpotReason};

/// One rod value at one mark.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct TakeReading {
    /// The mark under the rod; with a `place`, the name under which it is kept, or nothing.
    #[serde(default)]
    pub mark: String,
    /// Where the rod stands, when it stands on no mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place: Option<Where>,
    /// The surface that it stands on, by the stack's names; the ground to dig to when none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub surface: Option<String>,
    /// The set-up.
    pub set_up: String,
    /// The rod.
    pub rod: String,
    /// The rod value as typed; with a receiver, the tenths that the ground is high or low.
    pub text: String,
    /// Rod, or the ground HIGH or LOW by a receiver fixed at grade rod.
    pub mode: Mode,
    /// How finely it was read.
    #[serde(default = "coarse")]
    pub care: Care,
    /// The machine, when it is not the one that the mark is assigned to.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
    /// Which side of the step, within half a foot of one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub side: Option<StepSide>,
    /// The entry of the question that this answers: taken as it is, not asked again.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sure: Option<u64>,
    /// The entry of the reading that this corrects.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub restates: Option<u64>,
    /// Other quick readings of the rocked rod, as typed: the smallest of all counts.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub rocked: Vec<String>,
    /// Made without seeing the reading before: the two tell how well this person reads.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub blind: bool,
    /// It waited on the phone without a link, and whoever took it was asked and said SEND when the link was back.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub waited: bool,
    /// Typed in from paper: who read it, as the paper has it. The moment of the request is then the one on the paper, and
    /// no call follows.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub paper: Option<String>,
}

impl Saying for TakeReading {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::TakenLate;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        take(at.state, at.by, self, at.when)
    }
}

/// Which side of a step, looking up-station.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum StepSide {
    /// The side of the lower stations.
    Before,
    /// The side of the higher stations.
    After,
}

/// A reading with everything that was derived from it, so that the log can be checked by hand.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Reading {
    /// The mark, or the name of a computed place.
    pub mark: String,
    /// The place, when the rod stood on no mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub placed: Option<Placed>,
    /// The machine.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
    /// The set-up.
    pub set_up: String,
    /// Which basis of the set-up, from 1.
    pub basis: u32,
    /// Height of instrument used.
    pub height: Length,
    /// The height of a sloped laser's plane over the mark; none when the laser is level.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub height_here: Option<Length>,
    /// The rod.
    pub rod: String,
    /// As typed.
    pub text: String,
    /// Rod or receiver.
    pub mode: Mode,
    /// How finely it was read.
    pub care: Care,
    /// Typed to the tenth alone.
    pub coarse: bool,
    /// The rod value; none with a receiver.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub value: Option<Length>,
    /// Measured elevation.
    pub elevation: Length,
    /// How it was judged; none for a spot elevation.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub judged: Option<Judged>,
    /// Which side of the step.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub side: Option<StepSide>,
    /// The question that it answered.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sure: Option<u64>,
    /// The reading that it corrects.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub restates: Option<u64>,
    /// Other quick readings of the rocked rod, as typed: larger, and not counted.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub rocked: Vec<String>,
    /// Made without seeing the reading before.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub blind: bool,
    /// It waited on the phone without a link, and whoever took it said SEND when the link was back.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub waited: bool,
    /// Typed in from paper: who read it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub paper: Option<String>,
}

/// A reading judged against a target.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Judged {
    /// The target.
    pub target: String,
    /// Its revision.
    pub revision: u32,
    /// The surface that it was judged against; the ground to dig to when none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub surface: Option<String>,
    /// The elevation of that surface.
    pub dig_to: Length,
    /// Measured − dig-to of this shot, square to a cut face: positive is HIGH.
    pub dev: Length,
    /// Earlier shots that are averaged with this one.
    pub joined: Vec<u64>,
    /// The mean difference of all shots joined, rounded to the nearest count.
    pub mean: Length,
    /// The guard band.
    pub guard: Length,
    /// High, on, low, or too close to call.
    pub verdict: Verdict,
    /// Too close on the high side after two shots, trimmed by the site's rule.
    pub settled_high: bool,
    /// Too close after two shots: the supervisor rules.
    pub needs_ruling: bool,
}

/// A reading was taken.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ReadingTaken {
    /// The reading.
    pub reading: Reading,
    /// Why it is a spot elevation, without a call.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub spot: Option<SpotReason>,
}

impl Happening for ReadingTaken {
    const TOUCHES: Touches = Touches::Mark;

    fn mark(&self) -> Option<&str> {
        // A reading that restates one takes that back, and it may be of another mark.
        let restates = self.reading.restates.is_some();
        (!restates).then_some(self.reading.mark.as_str())
    }

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_taken(state, entry, self);
    }
}

/// A reading was asked about: not judged, not shown.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ReadingAsked {
    /// The reading as it came.
    pub reading: Reading,
    /// What was asked.
    pub question: Question,
}

impl Happening for ReadingAsked {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_asked(state, entry, self);
    }
}

fn coarse() -> Care {
    Care::Coarse
}

/// Takes a reading, with what follows from it for the laser and for the questions asked before.
pub(crate) fn take(
    state: &State,
    by: &By,
    asked: &TakeReading,
    when: When,
) -> Result<Vec<Body>, Refusal> {
    let mut bodies = weigh(state, by, asked, when)?;
    let pair = blind::after_reading(state, by, when.made_at, &bodies);
    let settled = settle::after_reading(state, by, when.made_at, &bodies);
    let more = repeat::after_reading(state, &bodies);
    bodies.extend(pair);
    bodies.extend(settled);
    bodies.extend(more);
    Ok(bodies)
}

/// Late, a spot elevation, a question, or judged and called.
fn weigh(state: &State, by: &By, asked: &TakeReading, when: When) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let asked = &rocked::smallest(site, &place::named(site, asked)?)?;
    let reader = asked.paper.as_deref().unwrap_or(&by.person);
    let shot = Shot::of(state, reader, asked)?;
    let corrected = corrected(state, asked)?;
    let answers = answered_question(state, asked)?;
    if asked.paper.is_some() {
        let fits = answers || newer(state, &asked.mark, when.made_at, corrected).is_some();
        if !fits && let Some(question) = fit::question(state, &shot, asked, when, corrected) {
            let reading = shot.reading(asked, shot.judge(&[], false));
            return Ok(vec![Body::ReadingAsked(ReadingAsked { reading, question })]);
        }
        return paper::bodies(state, &shot, asked, when, corrected);
    }
    if let Some(why) = late(
        state,
        asked,
        shot.machine.map(|machine| machine.id.as_str()),
        when,
        corrected,
    ) {
        let reading = shot.reading(asked, shot.judge(&[], false));
        return Ok(vec![Body::ReadingLate(ReadingLate { reading, why })]);
    }
    if scraped(state, &shot.mark.id) {
        return Err(Refusal::MarkScraped {
            mark: shot.mark.id.clone(),
        });
    }
    // Without a target or a machine there is no call to hold back.
    let held = || {
        let machine = shot.target.and(shot.machine)?;
        let target = shot.mark.target.as_deref();
        let held = held::call(state, &machine.id, None, None);
        let held = held.or_else(|| held::at(state, &shot.mark.id, shot.mark.place, target));
        let held = held.or_else(|| held::by_query(state, &shot.mark.id, target));
        held.map(|held| held.spot())
    };
    if let Some(why) = shot.spot_reason().or_else(held) {
        let reading = shot.reading(asked, None);
        return Ok(vec![Body::ReadingTaken(ReadingTaken {
            reading,
            spot: Some(why),
        })]);
    }
    if !answers && let Some(question) = fit::question(state, &shot, asked, when, corrected) {
        let reading = shot.reading(asked, shot.judge(&[], false));
        return Ok(vec![Body::ReadingAsked(ReadingAsked { reading, question })]);
    }
    let joined = fit::joined(state, &shot, asked, when, corrected);
    let judged = shot.judge(&joined, true);
    let reading = shot.reading(asked, judged);
    called::bodies(state, by, &shot, reading, corrected, when)
}

/// Whether the mark's paint is gone and nobody has laid it again.
fn scraped(state: &State, mark: &str) -> bool {
    state
        .marks
        .get(mark)
        .and_then(|now| now.paint.as_ref())
        .is_some_and(|paint| paint.state == PaintState::Scraped)
}

/// The reading that this one corrects, which must be of this day.
fn corrected(state: &State, asked: &TakeReading) -> Result<Option<u64>, Refusal> {
    match asked.restates {
        Some(id) if !state.readings.contains_key(&id) => Err(Refusal::NoSuchReading),
        other => Ok(other),
    }
}

/// Whether a question about this mark has been answered: then it is not asked again.
fn answered_question(state: &State, asked: &TakeReading) -> Result<bool, Refusal> {
    match asked.sure {
        None => Ok(false),
        Some(id) => match state.asked.get(&id) {
            Some(earlier) if earlier.reading.mark == asked.mark => Ok(true),
            Some(_) => Err(Refusal::NotThatQuestion),
            None => Err(Refusal::NoSuchReading),
        },
    }
}

pub(crate) fn apply_taken(state: &mut State, entry: &Entry, body: &ReadingTaken) {
    let reading = &body.reading;
    if let Some(old) = reading.restates {
        wrong_number::counts_no_more(state, old);
    }
    if let Some(set_up) = state.set_up_mut(&reading.set_up) {
        set_up.readings_since_check += 1;
    }
    let shot_again = if body.spot.is_none() {
        suspect::shot_again(state, &reading.mark)
    } else {
        vec![]
    };
    let mark = state.marks.entry(reading.mark.clone()).or_default();
    mark.readings.insert((entry.made_at, entry.seq));
    mark.last = mark.readings.last().map(|(_, id)| *id);
    mark.ruling = None;
    let mut cleared = None;
    if body.spot.is_none() && mark.last == Some(entry.seq) {
        cleared = mark.void.take();
    }
    state.readings.insert(
        entry.seq,
        TakenReading {
            reading: reading.clone(),
            by: reading.paper.as_ref().unwrap_or(&entry.by.person).clone(),
            made_at: entry.made_at,
            restated: false,
            cleared,
            shot_again,
        },
    );
}

pub(crate) fn apply_asked(state: &mut State, entry: &Entry, body: &ReadingAsked) {
    state.asked.insert(
        entry.seq,
        AskedReading {
            reading: body.reading.clone(),
            question: body.question.clone(),
            by: entry.by.person.clone(),
            made_at: entry.made_at,
            settled: false,
        },
    );
}

#[cfg(test)]
mod tests;
