//! What a call says and where it is in its life: the message, its labels, its reminder, its states, how it ended.

use contract::ToSchema;
use earthwork::correction::{Correction, Ground};
use earthwork::keep_out::Nearness;
use earthwork::layout::no_cross::LineShot;
use earthwork::length::Length;
use earthwork::machine::Zone;
use earthwork::tolerance::{Tolerance, Verdict};
use earthwork::words::QuickWord;
use serde::{Deserialize, Serialize};

/// What the operator is told: a correction from a reading, or a word by eye.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Message {
    /// From a reading.
    Measured {
        /// Which way and how much.
        correction: Correction,
        /// Measured − target, the mean of the shots: positive is HIGH.
        dev: Length,
        /// dev − aim: what the operator is told to take off.
        amount: Length,
        /// The three-way verdict against the target.
        verdict: Verdict,
        /// What the ground may stand at, by which the amounts are rounded; not kept by old days.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        tolerance: Option<Tolerance>,
    },
    /// An edge against a line that must not be crossed.
    Edge {
        /// How far, how sure, and where that stands.
        shot: LineShot,
    },
    /// By eye, without a number; never closes a mark.
    ByEye {
        /// The word.
        word: QuickWord,
    },
}

impl Message {
    /// A measured message for ground that was judged so.
    pub(crate) fn measured(ground: &Ground, correction: Correction, verdict: Verdict) -> Self {
        Self::Measured {
            correction,
            dev: ground.dev,
            amount: ground.dev - ground.aim,
            verdict,
            tolerance: ground.tolerance,
        }
    }

    /// The verdict that it is from; none for a word by eye or an edge.
    pub fn verdict(&self) -> Option<Verdict> {
        match self {
            Self::Measured { verdict, .. } => Some(*verdict),
            Self::Edge { .. } | Self::ByEye { .. } => None,
        }
    }
}

/// Something to know about a call, told beside it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Label {
    /// No second benchmark stands behind the laser.
    OneBenchmark,
    /// Too close to call after two shots; the site's rule trims it.
    HighByRule,
    /// Too close to call; the supervisor ruled.
    ByRuling,
    /// Taken with a value that was asked about and confirmed.
    Confirmed,
    /// Nobody has typed the target's elevations a second time.
    NotProved,
    /// The laser was not checked for more than twice the interval: see `checked_at`.
    NotChecked,
    /// Within the band of a buried line: dug by hand.
    HandDig,
    /// Under a face that nobody has inspected today.
    FaceNotInspected,
}

/// Where a call is in its life.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum CallState {
    /// On its way.
    Sent,
    /// On the operator's phone.
    Delivered,
    /// Painted on a visible page. Not the same as seen by a person.
    Shown,
    /// The operator pressed GOT IT, or a witness saw the nod.
    Got,
    /// No longer live.
    Ended {
        /// How.
        how: Ending,
    },
}

/// How a call ended. What has ended never comes back.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Ending {
    /// A newer call for the same machine took its place.
    Superseded,
    /// The mark was found on grade.
    Done,
    /// Too old.
    StaleByAge,
    /// GRADE has been said for long enough.
    GradeRanOut,
    /// The laser is in doubt.
    StaleByLaser,
    /// The target changed.
    StaleByTarget,
    /// The mark was laid again.
    StaleByMark,
    /// The reading behind it was restated.
    Restated,
    /// Taken back by hand.
    Withdrawn,
    /// The operator can't.
    Refused,
    /// Another phone took over in the cab.
    NewScreen,
    /// A supervisor's ruling took its place.
    Ruled,
    /// The face over it was left.
    StaleByFace,
    /// The engineer was asked; the work there waits for the answer.
    QueryAsked,
    /// The day was closed.
    DayClosed,
    /// Something holds the work there back: see what the entry names.
    Held,
    /// The machine has moved or was placed where it does not reach the mark.
    MachineMoved,
    /// Its target was given to another machine.
    GivenAway,
    /// The machine is not on the site any more.
    OffSite,
    /// The hub was started on a clock that is behind the log: nobody knows how old it is.
    ClockBehind,
}

/// The keep-out reminder that stands with a call.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Reminder {
    /// Who is at the mark.
    pub who: String,
    /// Which mark.
    pub mark: String,
    /// Inside by how much, or place unknown, or declared too long ago.
    pub nearness: Nearness,
    /// In which part of the keep-out, when both places are known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub zone: Option<Zone>,
    /// With sound and large, by the policy against nagging; else the silent strip alone.
    pub loud: bool,
    /// The large form stands beside the number: it is only that nobody has said, or not lately, where the machine stands.
    /// Without it the large form stands in the number's place.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub beside: bool,
}
