//! What stays too close to call is ruled on by the supervisor.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// A supervisor rules.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Rule {
    /// The mark.
    pub mark: String,
    /// What is to be done.
    pub ruling: Ruling,
    /// Why.
    pub why: String,
}

/// A supervisor ruled.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Ruled {
    /// The mark.
    pub mark: String,
    /// The reading that it settles.
    pub reading: u64,
    /// What is to be done.
    pub ruling: Ruling,
    /// Why.
    pub why: String,
}

/// What is to be done with a mark that is too close to call.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Ruling {
    /// Leave it as it is.
    Leave,
    /// Leave it and fill it with gravel later.
    Patch,
    /// Trim it.
    Trim,
}
