//! A reading that came late is kept and never shown.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::{Reading, TakeReading};
use crate::entry::Entry;
use crate::happening::{Happening, Touches};
use crate::state::State;
use crate::time::{Time, When, seconds};

/// A reading came late: logged, never shown.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ReadingLate {
    /// The reading.
    pub reading: Reading,
    /// Why.
    pub why: LateReason,
}

impl Happening for ReadingLate {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, _state: &mut State, _entry: &Entry) {
        // Nothing is current by it: it is there to be read.
    }
}

/// Why a reading is late.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum LateReason {
    /// A reading of the same mark was made after it.
    NewerReading {
        /// Whose.
        by: String,
    },
    /// More than 90 s passed between making and arrival.
    TooOld {
        /// How many milliseconds.
        ms: i64,
    },
    /// A reading elsewhere that was made after it is what the machine is told now.
    NewerCall {
        /// Where.
        mark: String,
    },
    /// The day was closed before it came.
    DayClosed,
}

/// The oldest that a reading may be when it arrives and still be shown.
const TOO_OLD_MS: i64 = seconds(90);

/// `machine` is the one that the reading would tell.
pub(super) fn late(
    state: &State,
    asked: &TakeReading,
    machine: Option<&str>,
    when: When,
    corrected: Option<u64>,
) -> Option<LateReason> {
    if state.record.closed.is_some() {
        return Some(LateReason::DayClosed);
    }
    if let Some(by) = newer(state, &asked.mark, when.made_at, corrected) {
        return Some(LateReason::NewerReading { by });
    }
    let ms = when.now.ms_since(when.made_at);
    if ms > TOO_OLD_MS {
        return Some(LateReason::TooOld { ms });
    }
    let (_, live) = state.live_call(machine?)?;
    let mark = live.sent.mark.as_ref()?;
    (live.made_at > when.made_at && *mark != asked.mark)
        .then(|| LateReason::NewerCall { mark: mark.clone() })
}

/// Who made a reading of the mark after this moment; the one that is corrected does not count.
pub(super) fn newer(
    state: &State,
    mark: &str,
    made_at: Time,
    corrected: Option<u64>,
) -> Option<String> {
    let readings = &state.marks.get(mark)?.readings;
    let (at, id) = readings
        .iter()
        .rev()
        .find(|(_, id)| Some(*id) != corrected)?;
    if *at <= made_at {
        return None;
    }
    let by = state.readings.get(id).map(|taken| taken.by.clone());
    Some(by.unwrap_or_default())
}
