//! A reading that came late is kept and never shown.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{Reading, TakeReading};
use crate::decide::When;
use crate::state::State;
use crate::time::{Time, seconds};

/// A reading came late: logged, never shown.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ReadingLate {
    /// The reading.
    pub reading: Reading,
    /// Why.
    pub why: LateReason,
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
    /// The day was closed before it came.
    DayClosed,
}

/// The oldest that a reading may be when it arrives and still be shown.
const TOO_OLD_MS: i64 = seconds(90);

pub(super) fn late(
    state: &State,
    asked: &TakeReading,
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
    (ms > TOO_OLD_MS).then_some(LateReason::TooOld { ms })
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
