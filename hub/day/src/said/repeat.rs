//! A reading on an accepted mark, where nobody was told to dig, is a free check of the laser.

use contract::ToSchema;
use earthwork::laser::drift::{DriftSign, REPEAT_DOUBT_FT};
use earthwork::length::Length;
use earthwork::slip::{Doubt, Mode};
use earthwork::tolerance::Verdict;
use serde::{Deserialize, Serialize};

use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::said::check_due;
use crate::said::reading::{Question, Reading};
use crate::state::{RepeatShot, State};

/// An accepted mark was shot again from the same set-up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct MarkRepeated {
    /// Which set-up.
    pub set_up: String,
    /// Which mark.
    pub mark: String,
    /// The elevation now less the accepted one.
    pub residual: Length,
    /// What the repeats since the last good check say together: quiet, or check the laser now.
    pub says: DriftSign,
}

impl Happening for MarkRepeated {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_repeated(state, entry, self);
    }
}

/// What follows from a reading that is about to be entered: a repeat, a check that falls due by it.
pub(crate) fn after_reading(state: &State, bodies: &[Body]) -> Vec<Body> {
    let Some((reading, off)) = bodies.iter().find_map(of_reading) else {
        return vec![];
    };
    let Some(set_up) = state.set_up(&reading.set_up).filter(|one| one.usable()) else {
        return vec![];
    };
    let mut more = Vec::new();
    if let Some(residual) = off.or_else(|| residual(state, reading))
        && let Ok(drift) = set_up.drift.after(residual, REPEAT_DOUBT_FT)
    {
        let says = drift.says();
        more.push(Body::MarkRepeated(MarkRepeated {
            set_up: set_up.id.clone(),
            mark: reading.mark.clone(),
            residual,
            says,
        }));
        if says != DriftSign::Quiet {
            more.extend(check_due::by_drift(set_up));
        }
    }
    if more.len() < 2 {
        let taken = u32::from(matches!(bodies.first(), Some(Body::ReadingTaken(_))));
        more.extend(check_due::by_readings(set_up, taken));
    }
    more
}

/// The reading of a request, with its rise when it was asked about as a repeat.
fn of_reading(body: &Body) -> Option<(&Reading, Option<Length>)> {
    match body {
        Body::ReadingTaken(taken) => Some((&taken.reading, None)),
        Body::ReadingAsked(asked) => match asked.question {
            Question::DoesNotFit {
                doubt: Doubt::RepeatOff { by },
            } => Some((&asked.reading, Some(by))),
            _ => None,
        },
        _ => None,
    }
}

/// By how much a plain rod reading differs from the accepted one before it. An answer to a question was counted when it
/// was asked, a correction says nothing new, and shots that are averaged are one measurement.
fn residual(state: &State, reading: &Reading) -> Option<Length> {
    let judged = reading.judged.as_ref()?;
    if reading.sure.is_some() || reading.restates.is_some() || !judged.joined.is_empty() {
        return None;
    }
    let (_, before) = state.last_reading(&reading.mark)?;
    let before = &before.reading;
    let accepted = before
        .judged
        .as_ref()
        .is_some_and(|judged| judged.verdict == Verdict::On);
    let alike = before.set_up == reading.set_up
        && before.height == reading.height
        && before.mode == Mode::Rod
        && reading.mode == Mode::Rod;
    (accepted && alike).then_some(reading.elevation - before.elevation)
}

pub(crate) fn apply_repeated(state: &mut State, entry: &Entry, body: &MarkRepeated) {
    let at = entry.made_at;
    if let Some(set_up) = state.set_up_mut(&body.set_up) {
        // The sums are worked out from the log anew, so that a replay has them to the last bit.
        if let Ok(drift) = set_up.drift.after(body.residual, REPEAT_DOUBT_FT) {
            set_up.drift = drift;
        }
        set_up.repeats.push(RepeatShot {
            mark: body.mark.clone(),
            at,
            residual: body.residual,
        });
    }
}
