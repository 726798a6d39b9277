//! Where to aim, apart from the target. It changes what is told, never the verdict.

use earthwork::length::Length;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// A supervisor sets an aim.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SetAim {
    /// Marks, or targets for all their marks.
    pub on: Vec<String>,
    /// Relative to the target: negative is deeper.
    pub aim: Length,
    /// Why.
    pub why: String,
}

/// An aim was set.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct AimSet {
    /// Marks or targets.
    pub on: Vec<String>,
    /// The aim.
    pub aim: Length,
    /// Why.
    pub why: String,
}
