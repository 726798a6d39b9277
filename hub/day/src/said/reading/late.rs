//! A reading that came late is kept and never shown.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{Reading, TakeReading};
use crate::decide::When;
use crate::state::State;
use crate::time::seconds;

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
    let newer = state
        .marks
        .get(&asked.mark)
        .into_iter()
        .flat_map(|mark| mark.readings.iter().rev())
        .find(|(_, id)| Some(*id) != corrected)
        .filter(|(made_at, _)| *made_at > when.made_at);
    if let Some((_, id)) = newer {
        let by = state.readings.get(id).map(|taken| taken.by.clone());
        return Some(LateReason::NewerReading {
            by: by.unwrap_or_default(),
        });
    }
    let ms = when.now.ms_since(when.made_at);
    (ms > TOO_OLD_MS).then_some(LateReason::TooOld { ms })
}
