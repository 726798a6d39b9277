//! A supervisor changes a target: the live call on the old one is withdrawn until the operator has seen it.

use earthwork::target;
use earthwork::tolerance::Tolerance;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// A supervisor changes a target.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ReviseTarget {
    /// Which.
    pub target: String,
    /// Its new shape, stack and boundary.
    pub grade: target::Target,
    /// Its allowed high and low.
    pub tolerance: Tolerance,
    /// Why, and on whose word.
    pub why: String,
}

/// A target was revised.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct TargetRevised {
    /// Which.
    pub target: String,
    /// Its new revision.
    pub revision: u32,
    /// Its new shape, stack and boundary.
    pub grade: target::Target,
    /// Its allowed high and low.
    pub tolerance: Tolerance,
    /// Why.
    pub why: String,
    /// The machines whose operator must see it first.
    pub must_see: Vec<String>,
}

/// The operator has seen it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SeeTarget {
    /// Which.
    pub target: String,
    /// Which revision.
    pub revision: u32,
}

/// An operator has seen a revised target.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct TargetSeen {
    /// Which machine.
    pub machine: String,
    /// Which target.
    pub target: String,
    /// Which revision.
    pub revision: u32,
}
