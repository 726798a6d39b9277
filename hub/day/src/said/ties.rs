//! Two tapes to a mark that the machine is about to take, so that it can be put back.

use contract::ToSchema;
use earthwork::layout::marks::{CONTROL_DOUBT_FT, HUB_DOUBT_FT, TAPE_DOUBT_FT};
use earthwork::layout::tie::{Side, Tape, swing_tie};
use earthwork::length::{Form, Length};
use earthwork::point::Point;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::said::marks::{Paint, PaintState};
use crate::said::tape;
use crate::saying::{Asking, Closed, Saying};
use crate::site::Site;
use crate::state::State;
use crate::time::Time;

/// A place by two tapes may lie this far from the plan's, whatever the tapes are worth (from memory).
const ALWAYS_ALLOWED_FT: f64 = 0.10;
/// So many standard deviations are not yet another place (common practice).
const WITHIN: f64 = 3.0;

/// Somebody has taped a mark from two places that stay.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct TakeTies {
    /// The mark.
    pub mark: String,
    /// A benchmark or another mark: where the first tape is held.
    pub first: String,
    /// What it reads, held level, as typed in feet or with a unit.
    pub first_tape: String,
    /// Where the second is held.
    pub second: String,
    /// What it reads.
    pub second_tape: String,
}

impl Saying for TakeTies {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        take(at.state, self)
    }
}

/// A mark was tied.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct TiesTaken {
    /// The mark.
    pub mark: String,
    /// Where the first tape was held.
    pub first: String,
    /// What it read.
    pub first_tape: Length,
    /// Where the second was held.
    pub second: String,
    /// What it read.
    pub second_tape: Length,
    /// On which side of the line from the first to the second the mark lies.
    pub side: Side,
    /// The angle between the tapes at the mark, in degrees.
    pub angle_degrees: f64,
    /// The tapes meet too flatly: another pair is better.
    pub weak: bool,
    /// How far the place of the tapes lies from the plan's.
    pub off: Length,
    /// One standard deviation of that place: the ends' and the tapes'.
    pub doubt: Length,
}

impl Happening for TiesTaken {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_taken(state, entry, self);
    }
}

/// The ties of a mark, and who took them when.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct TiesCard {
    /// The ties.
    pub ties: TiesTaken,
    /// Who took them.
    pub by: String,
    /// When.
    pub at: Time,
}

/// A place to hold a tape at, by its name: a benchmark with a place, or a mark; with one standard deviation in feet.
pub fn held_at(state: &State, site: &Site, name: &str) -> Option<(Point, f64)> {
    if let Some(benchmark) = site.benchmark(name) {
        return Some((benchmark.place?, CONTROL_DOUBT_FT));
    }
    let doubt = paint(state, name).and_then(|paint| paint.doubt);
    Some((
        site.mark(name)?.place,
        doubt.map_or(HUB_DOUBT_FT, Length::feet),
    ))
}

fn paint<'a>(state: &'a State, mark: &str) -> Option<&'a Paint> {
    state.marks.get(mark)?.paint.as_ref()
}

fn scraped(state: &State, mark: &str) -> bool {
    paint(state, mark).is_some_and(|paint| paint.state == PaintState::Scraped)
}

/// The ties of a mark while both of their ends stand.
pub fn standing<'a>(state: &'a State, mark: &str) -> Option<&'a TiesCard> {
    let card = state.marks.get(mark)?.ties.as_ref()?;
    let ends = [&card.ties.first, &card.ties.second];
    ends.iter().all(|end| !scraped(state, end)).then_some(card)
}

/// How many marks away from control a mark is that is laid from ties: one more than the deeper of their ends.
pub(crate) fn depth_of_ends(state: &State, ties: &TiesTaken) -> u8 {
    let depth = |end: &String| paint(state, end).map_or(0, |paint| paint.depth);
    depth(&ties.first).max(depth(&ties.second))
}

pub(crate) fn take(state: &State, asked: &TakeTies) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let mark = site
        .mark(&asked.mark)
        .ok_or_else(|| unknown(Thing::Mark, &asked.mark))?;
    let held = |name: &str| {
        if scraped(state, name) {
            let mark = name.to_owned();
            return Err(Refusal::MarkScraped { mark });
        }
        held_at(state, site, name).ok_or_else(|| unknown(Thing::Mark, name))
    };
    if scraped(state, &mark.id) {
        let mark = mark.id.clone();
        return Err(Refusal::MarkScraped { mark });
    }
    let (first, second) = (held(&asked.first)?, held(&asked.second)?);
    let tapes = (
        tape::typed(&asked.first_tape)?,
        tape::typed(&asked.second_tape)?,
    );
    let tape = |from, distance| Tape { from, distance };
    let tie = swing_tie(tape(first.0, tapes.0), tape(second.0, tapes.1))
        .map_err(|error| Refusal::BadMark(words::ties::of(&mark.id, &error.text())))?;
    let worth = |end: f64| end.hypot(TAPE_DOUBT_FT);
    let doubt_ft = tie
        .doubt_of_ends_ft(worth(first.1), worth(second.1))
        .ok_or_else(|| Refusal::BadMark(words::ties::tapes_lie_one_line_place(&mark.id)))?;
    let side = tie.side_of(mark.place);
    let off = tie.on(side).distance(mark.place);
    if off.feet() > (WITHIN * doubt_ft).max(ALWAYS_ALLOWED_FT) {
        return Err(elsewhere(&mark.id, off, doubt_ft));
    }
    Ok(vec![Body::TiesTaken(TiesTaken {
        mark: mark.id.clone(),
        first: asked.first.clone(),
        first_tape: tapes.0,
        second: asked.second.clone(),
        second_tape: tapes.1,
        side,
        angle_degrees: tie.angle_degrees,
        weak: tie.weak(),
        off,
        doubt: Length::from_feet(doubt_ft).unwrap_or(Length::ZERO),
    })])
}

fn unknown(what: Thing, name: &str) -> Refusal {
    Refusal::Unknown {
        what,
        name: name.to_owned(),
    }
}

/// The tapes are of another place, of another end, or were not held level.
fn elsewhere(mark: &str, off: Length, doubt_ft: f64) -> Refusal {
    let off = off.show(Form::DecimalFeet { places: 2 });
    Refusal::BadMark(words::ties::by_these_tapes_lies_from(
        &mark,
        &off,
        &format!("{doubt_ft:.2}"),
    ))
}

pub(crate) fn apply_taken(state: &mut State, entry: &Entry, body: &TiesTaken) {
    state.marks.entry(body.mark.clone()).or_default().ties = Some(TiesCard {
        ties: body.clone(),
        by: entry.by.person.clone(),
        at: entry.made_at,
    });
}
