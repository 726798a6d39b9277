//! Does a mark's last reading still speak for it? The one rule, for every view: an old result never stands beside a new target.
//!
//! A reading counts while what is asked at its mark is what it was judged against, while the laser that it was taken with is
//! in no doubt that touches it, and while nothing has voided it. What a day before left counts on the next day by the same rule.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::tolerance::Verdict;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::built::{self, BuiltMark, LaserDoubt};
use crate::said::reading::{StepSide, surface_at};
use crate::said::suspect::Standing;
use crate::state::SetUpState;
use crate::state::{State, TakenReading};

/// Whether a last reading still speaks for its mark, and why not.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum StillCounts {
    /// It does.
    Counts,
    /// What is asked there has changed since: it says nothing of the new target.
    BeforeChange,
    /// The laser may have moved before it.
    LaserInDoubt {
        /// The set-up.
        set_up: String,
    },
    /// Something happened to the ground.
    Void(Text),
}

/// What a reading was judged against.
struct Against<'a> {
    mark: &'a str,
    target: &'a str,
    revision: u32,
    dig_to: Length,
    side: Option<StepSide>,
    surface: Option<&'a str>,
}

/// The same rule for a reading of this day.
pub fn of_reading(state: &State, id: u64, taken: &TakenReading) -> StillCounts {
    let reading = &taken.reading;
    if let Some(judged) = &reading.judged
        && changed(
            state,
            &Against {
                mark: &reading.mark,
                target: &judged.target,
                revision: judged.revision,
                dig_to: judged.dig_to,
                side: reading.side,
                surface: judged.surface.as_deref(),
            },
        )
    {
        return StillCounts::BeforeChange;
    }
    if let Some(set_up) = doubted_by(state, id, taken) {
        return StillCounts::LaserInDoubt { set_up };
    }
    let now = state.marks.get(&reading.mark);
    match now.and_then(|now| now.void.as_ref()) {
        Some((_, why)) => StillCounts::Void(why.text()),
        None => StillCounts::Counts,
    }
}

/// The same rule for what a day before left.
pub fn of_before(state: &State, before: &BuiltMark) -> StillCounts {
    if changed_since(state, before) {
        return StillCounts::BeforeChange;
    }
    if before.doubt == LaserDoubt::Open {
        let set_up = before.set_up.clone();
        return StillCounts::LaserInDoubt { set_up };
    }
    match &before.void {
        Some(why) => StillCounts::Void(why.text()),
        None => StillCounts::Counts,
    }
}

/// Whether what is asked at a mark differs from what its last reading was judged against.
pub(crate) fn changed_since(state: &State, built: &BuiltMark) -> bool {
    let Some((target, (revision, dig_to))) = built
        .target
        .as_deref()
        .zip(built.revision.zip(built.dig_to))
    else {
        return false;
    };
    changed(
        state,
        &Against {
            mark: &built.mark,
            target,
            revision,
            dig_to,
            side: built.side,
            surface: built.surface.as_deref(),
        },
    )
}

/// Whether a mark's last reading found it on grade, and that still holds.
pub fn is_on(state: &State, mark: &str) -> bool {
    if let Some((id, taken)) = state.last_reading(mark) {
        let judged = taken.reading.judged.as_ref();
        return judged.is_some_and(|judged| judged.verdict == Verdict::On)
            && of_reading(state, id, taken) == StillCounts::Counts;
    }
    built::before(state, mark).is_some_and(|before| {
        before.verdict == Some(Verdict::On) && of_before(state, &before) == StillCounts::Counts
    })
}

/// The difference that stands at a mark: positive is HIGH; none when nothing counts there.
pub fn difference(state: &State, mark: &str) -> Option<Length> {
    if let Some((id, taken)) = state.last_reading(mark) {
        let counts = of_reading(state, id, taken) == StillCounts::Counts;
        return Some(taken.reading.judged.as_ref().filter(|_| counts)?.mean);
    }
    let before = built::before(state, mark)?;
    (of_before(state, &before) == StillCounts::Counts).then_some(before.mean)?
}

fn changed(state: &State, was: &Against<'_>) -> bool {
    let Some(site) = state.site() else {
        return false;
    };
    let Some(target) = site.target(was.target) else {
        return true;
    };
    if target.revision != was.revision {
        return true;
    }
    // A place that is no mark has its elevation from its own figures, which nothing but a revision changes.
    site.mark(was.mark).is_some_and(|mark| {
        mark.target.as_deref() != Some(was.target)
            || surface_at(target, mark, was.side, was.surface).ok() != Some(was.dig_to)
    })
}

/// The set-up whose doubt touches this reading: it may have moved before it, or nothing can be said yet.
fn doubted_by(state: &State, id: u64, taken: &TakenReading) -> Option<String> {
    let reading = &taken.reading;
    let owed = state
        .suspects
        .iter()
        .find(|suspect| suspect.open.contains(&reading.mark));
    if let Some(suspect) = owed {
        return Some(suspect.window.set_up.clone());
    }
    let set_up = state.set_up(&reading.set_up)?;
    let judged_both_ways = state
        .suspects
        .iter()
        .flat_map(|suspect| &suspect.window.marks)
        .any(|mark| mark.reading == id && mark.standing == Standing::Stands);
    let since_good = set_up.good_at.is_none_or(|good_at| taken.made_at > good_at);
    let in_doubt = matches!(set_up.state, SetUpState::InDoubt { .. });
    (in_doubt && since_good && !judged_both_ways).then(|| set_up.id.clone())
}
