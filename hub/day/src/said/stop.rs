//! ALL STOP from anyone in one press; lifted by a supervisor alone.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// Every machine stands still, bucket down.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct StopAll {
    /// Why; may be empty: the press comes first.
    #[serde(default)]
    pub why: String,
}

/// Machines were stopped.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Stopped {
    /// Which.
    pub machines: Vec<String>,
    /// Every machine.
    pub all: bool,
    /// Why.
    pub why: String,
}

/// A supervisor lifts a stop.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LiftStop {
    /// Which machine; all when none is named.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
    /// What was seen before it was lifted.
    pub why: String,
}

/// A stop was lifted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct StopLifted {
    /// Which.
    pub machines: Vec<String>,
    /// What was seen.
    pub why: String,
}
