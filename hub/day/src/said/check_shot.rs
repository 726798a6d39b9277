//! A reading on a benchmark proves that the set-up still holds, or puts it in doubt.

use earthwork::length::Length;
use earthwork::level::Check;
use earthwork::slip::Slip;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::said::set_up::DoubtReason;

/// A reading on a benchmark.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ShootCheck {
    /// Which set-up.
    pub set_up: String,
    /// The benchmark under the rod.
    pub benchmark: String,
    /// The rod.
    pub rod: String,
    /// The rod value as typed.
    pub text: String,
}

/// Somebody saw the laser move.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayBumped {
    /// Which set-up.
    pub set_up: String,
}

/// A check shot was made.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CheckShot {
    /// Which set-up.
    pub set_up: String,
    /// The benchmark.
    pub benchmark: String,
    /// The rod.
    pub rod: String,
    /// As typed.
    pub text: String,
    /// The rod value.
    pub foresight: Length,
    /// (HI − rod) − benchmark: positive when the tool reads high.
    pub residual: Length,
    /// Good, again, failed.
    pub check: Check,
    /// Slips that would explain a failure, likeliest first: asked, never applied.
    pub slips: Vec<Slip>,
}

/// A set-up is in doubt.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SetUpDoubted {
    /// Which set-up.
    pub set_up: String,
    /// Why.
    pub why: DoubtReason,
    /// The machines that are paused by it.
    pub pauses: Vec<String>,
}
