//! A call as every screen shows it, with its text in each language and unit.

use earthwork::correction::{Correction, Ground};
use earthwork::keep_out::Nearness;
use earthwork::layout::no_cross::LineShot;
use earthwork::length::Length;
use earthwork::machine::Zone;
use earthwork::tolerance::{Tolerance, Verdict};
use earthwork::words::{CallText, Language, QuickWord, ScreenUnit};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::cuts::depth::DepthWarning;
use crate::said::call::text;
use crate::state::Call;
use crate::time::Time;

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

/// A call as the screens show it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CallView {
    /// Its number: the sequence number of the entry that sent it.
    pub id: u64,
    /// The machine it is for.
    pub machine: String,
    /// The mark it is about; none for a word by eye without a place.
    pub mark: Option<String>,
    /// The name of the target that it was judged against.
    pub target: Option<String>,
    /// What is told.
    pub message: Message,
    /// The text in each language and unit; a screen picks its own.
    pub texts: Vec<CallText>,
    /// What to know about it.
    pub labels: Vec<Label>,
    /// The laser's last good check, when the label says that there was none since.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub checked_at: Option<Time>,
    /// Who sent it.
    pub by: String,
    /// When the reading was made.
    pub made_at: Time,
    /// When the hub sent it.
    pub sent_at: Time,
    /// When it will be too old, as far as is known now.
    pub stale_at: Time,
    /// Where it is in its life.
    pub state: CallState,
    /// When it reached the operator's phone.
    pub delivered_at: Option<Time>,
    /// When it was painted on a visible page.
    pub shown_at: Option<Time>,
    /// When it was acknowledged.
    pub got_at: Option<Time>,
    /// Who saw the nod, when a witness acknowledged it.
    pub witness: Option<String>,
    /// The keep-out reminder.
    pub reminder: Option<Reminder>,
    /// Rules of depth that are near.
    pub warnings: Vec<DepthWarning>,
}

/// A call as the screens show it.
pub(crate) fn view(id: u64, call: &Call) -> CallView {
    let sent = &call.sent;
    let texts = [Language::English, Language::Spanish]
        .into_iter()
        .flat_map(|language| {
            [
                ScreenUnit::Tenths,
                ScreenUnit::FeetInches,
                ScreenUnit::Millimetres,
            ]
            .map(|unit| text(&sent.message, language, unit))
        })
        .collect();
    CallView {
        id,
        machine: sent.machine.clone(),
        mark: sent.mark.clone(),
        target: sent.target.clone(),
        message: sent.message,
        texts,
        labels: sent.labels.clone(),
        checked_at: sent.checked_at,
        by: call.by.clone(),
        made_at: call.made_at,
        sent_at: call.sent_at,
        stale_at: call.stale_at,
        state: call.state,
        delivered_at: call.delivered_at,
        shown_at: call.shown_at,
        got_at: call.got_at,
        witness: call.witness.clone(),
        reminder: sent.reminder.clone(),
        warnings: sent.warnings.clone(),
    }
}
