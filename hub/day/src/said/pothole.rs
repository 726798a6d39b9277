//! A buried line is bared by hand: its depth is known there, and every trench over it is judged at once.

use contract::ToSchema;
use earthwork::length::{Length, parse};
use earthwork::point::Point;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::cuts::buried::{Crossing, crossings};
use crate::cuts::held::HeldBy;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::said::face_seen::feet_typed;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::Time;

/// Baring so far off the marked line is another line (common practice).
const OFF_THE_MARKS: Length = Length::from_hundredths_of_a_foot(1_000);

/// A buried line is bared by hand.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct DigPothole {
    /// The line.
    pub utility: String,
    /// Where; the mark, when none.
    #[serde(default)]
    pub at: Option<Point>,
    /// The mark next to it.
    #[serde(default)]
    pub mark: Option<String>,
    /// Elevation of its top, in feet as typed.
    pub top: String,
    /// Its outside diameter, with its unit: `2 in`.
    pub size: String,
}

impl Saying for DigPothole {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        dig(at.state, self)
    }
}

/// Where a line was bared.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Pothole {
    /// Where.
    pub at: Point,
    /// Its top.
    pub top: Length,
    /// Its bottom: the top less its outside diameter.
    pub bottom: Length,
    /// Who.
    pub by: String,
    /// When.
    pub since: Time,
}

/// A buried line was bared.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct PotholeDug {
    /// The line.
    pub utility: String,
    /// Where.
    pub at: Point,
    /// Elevation of its top.
    pub top: Length,
    /// Its outside diameter.
    pub outside: Length,
    /// Every trench that crosses it, judged with this.
    pub crossings: Vec<Crossing>,
}

impl Happening for PotholeDug {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_dug(state, entry, self);
    }
}

pub(crate) fn dig(state: &State, asked: &DigPothole) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    if state.day.is_none() {
        return Err(Refusal::NoDay);
    }
    let unknown = |what, name: &str| Refusal::Unknown {
        what,
        name: name.to_owned(),
    };
    let utility = site
        .cuts
        .utility(&asked.utility)
        .ok_or_else(|| unknown(Thing::Utility, &asked.utility))?;
    let marked = match &asked.mark {
        Some(name) => Some(
            site.mark(name)
                .ok_or_else(|| unknown(Thing::Mark, name))?
                .place,
        ),
        None => None,
    };
    let at = asked
        .at
        .or(marked)
        .ok_or_else(|| Refusal::say_why(words::pothole::where_it_was_bared()))?;
    let away = earthwork::buried::away(&utility.points, at).unwrap_or(Length::ZERO);
    if away > OFF_THE_MARKS {
        return Err(Refusal::RodValue(words::pothole::from_where_marked(
            &away,
            &utility.id,
        )));
    }
    let top = feet_typed(&asked.top)?;
    let outside = parse(asked.size.trim())
        .ok()
        .filter(|size| *size > Length::ZERO && *size < Length::from_hundredths_of_a_foot(3_000))
        .ok_or_else(|| Refusal::RodValue(words::pothole::give_pipe_outside_with_its().into()))?;
    let mut body = PotholeDug {
        utility: utility.id.clone(),
        at,
        top,
        outside,
        crossings: vec![],
    };
    let mut after = state.clone();
    take(&mut after, &body, "", Time::default());
    body.crossings = crossings(&after)
        .into_iter()
        .filter(|one| one.utility == body.utility)
        .collect();
    Ok(vec![Body::PotholeDug(body)])
}

fn take(state: &mut State, body: &PotholeDug, by: &str, since: Time) {
    let now = state
        .cuts
        .utilities
        .entry(body.utility.clone())
        .or_default();
    now.potholes.push(Pothole {
        at: body.at,
        top: body.top,
        bottom: body.top - body.outside,
        by: by.to_owned(),
        since,
    });
}

pub(crate) fn apply_dug(state: &mut State, entry: &Entry, body: &PotholeDug) {
    take(state, body, &entry.by.person, entry.at);
    // What was let go on was the crossing as it was known then.
    state.cuts.allowed.retain(
        |held| !matches!(held, HeldBy::TooNear { utility, .. } if *utility == body.utility),
    );
}
