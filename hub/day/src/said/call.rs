//! A call goes out, is acknowledged, refused, taken back, or ends. What has ended never comes back.

use earthwork::length::Length;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::time::Time;
use crate::views::call::{Ending, Label, Message, Reminder};

/// A call went out. Its number is the sequence number of this entry.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CallSent {
    /// The machine.
    pub machine: String,
    /// The mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// The target.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub target: Option<String>,
    /// The target's revision.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub revision: Option<u32>,
    /// The set-up that it rests on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub set_up: Option<String>,
    /// What is told.
    pub message: Message,
    /// The aim in force.
    pub aim: Length,
    /// The entries of the readings behind it.
    pub readings: Vec<u64>,
    /// What to know about it.
    pub labels: Vec<Label>,
    /// The keep-out reminder.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reminder: Option<Reminder>,
    /// When it will be too old.
    pub stale_at: Time,
    /// Its line in English.
    pub english: String,
    /// Its line in Spanish.
    pub spanish: String,
}

/// A call is no longer live.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CallEnded {
    /// Which.
    pub call: u64,
    /// How.
    pub how: Ending,
}

/// A call is taken back.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct WithdrawCall {
    /// Which.
    pub call: u64,
}

/// The operator has it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct GotIt {
    /// Which.
    pub call: u64,
}

/// The ground person saw the operator nod.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SawNod {
    /// Which.
    pub call: u64,
}

/// A call was acknowledged.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CallGot {
    /// Which.
    pub call: u64,
    /// Who saw the nod, when it was not pressed in the cab.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub witness: Option<String>,
}

/// The operator wants somebody to look.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CheckMe {}

/// The operator asked for a look.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct LookAsked {
    /// The machine.
    pub machine: String,
}

/// The operator can't do what was called.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayCant {
    /// Why.
    pub why: CantReason,
}

/// The operator can't.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CantSaid {
    /// The machine.
    pub machine: String,
    /// Why.
    pub why: CantReason,
    /// The call that was live.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub call: Option<u64>,
    /// Its mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
}

/// Why the operator can't.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum CantReason {
    /// Rock or old concrete.
    HardGround,
    /// Water in the hole.
    Water,
    /// A pipe or cable: the machine stops.
    Pipe,
    /// The line is too near.
    Line,
    /// The face moves or looks wrong: the machine stops.
    Face,
    /// Something else: come and look.
    Other,
}
