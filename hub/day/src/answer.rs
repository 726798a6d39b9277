//! The answer to a request, derived from the entries that carry its key: so a repeat, and a restart, answer alike.

use earthwork::length::Length;
use earthwork::level::Check;
use earthwork::slip::Slip;
use earthwork::tolerance::Verdict;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::said::reading::{LateReason, Question, SpotReason};

/// What a request came to.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Answer {
    /// The first entry made for it; 0 when there was nothing left to do.
    pub first: u64,
    /// The last entry made for it; 0 when there was nothing left to do.
    pub last: u64,
    /// What came of it.
    pub outcome: Outcome,
}

/// What came of a request.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Outcome {
    /// Done, and nothing more to say.
    Done,
    /// A call went out.
    Called {
        /// Its number.
        call: u64,
        /// The machine.
        machine: String,
        /// Its line in English.
        english: String,
        /// Its line in Spanish.
        spanish: String,
        /// The verdict; none for a word by eye.
        verdict: Option<Verdict>,
    },
    /// The reading was not shown: a question comes first. Send it again with `sure` set to `reading`,
    /// or send what was really meant.
    Asked {
        /// The entry of the question.
        reading: u64,
        /// The question.
        question: Question,
        /// Measured − target as it came, when there is a target.
        dev: Option<Length>,
    },
    /// Two shots are too close to call: the supervisor rules.
    NeedsRuling {
        /// The mean difference.
        dev: Length,
    },
    /// Kept as a spot elevation, without a call.
    Spot {
        /// The elevation.
        elevation: Length,
        /// Why there is no call.
        why: SpotReason,
    },
    /// Kept in the log, never shown.
    Late {
        /// Why.
        why: LateReason,
    },
    /// A set-up was made or restated: a second benchmark is owed.
    SetUp {
        /// Its name.
        set_up: String,
        /// Height of instrument.
        height: Length,
    },
    /// A set-up may be used.
    Proven {
        /// Its name.
        set_up: String,
    },
    /// A check shot was judged.
    Checked {
        /// (HI − rod) − benchmark.
        residual: Length,
        /// Good, again, failed.
        check: Check,
        /// Slips that would explain a failure: asked, never applied.
        slips: Vec<Slip>,
        /// Whether the set-up may be used now.
        usable: bool,
    },
    /// A phone came in.
    Joined {
        /// The device.
        device: String,
    },
}
