//! Why a reading does not become a call at once: it stays a spot elevation, or a question comes first.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::slip::Doubt;
use serde::{Deserialize, Serialize};

/// Why a reading has no call.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum SpotReason {
    /// The mark has no target.
    NoTarget,
    /// No machine is assigned to the target.
    NoMachine,
    /// The set-up is in doubt.
    SetUpInDoubt,
    /// The set-up is closed.
    SetUpClosed,
    /// People have left the face over it.
    FaceLeft,
    /// The face would come to daylight over a line that nobody may cross.
    DaylightOver,
    /// No locate ticket covers it.
    NotLocated,
    /// The ticket that covers it does not hold today.
    TicketLapsed,
    /// A buried line was struck near it.
    LineStruck,
    /// A buried line's paint is gone.
    PaintGone,
    /// The trench crosses a buried line too near.
    CrossingTooNear,
    /// The engineer was asked; the work there waits for the answer.
    QueryOpen,
}

/// What is asked once before a reading is shown.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Question {
    /// It does not fit what is known of the mark.
    DoesNotFit {
        /// How.
        doubt: Doubt,
    },
    /// More than 6 ft from the target.
    FarFromGrade {
        /// Measured − target.
        dev: Length,
    },
    /// The mark is assigned to another machine.
    OtherMachine {
        /// Which.
        assigned: String,
    },
    /// Shots of the same ground disagree.
    WhichIsRight {
        /// By how much.
        spread: Length,
    },
}
