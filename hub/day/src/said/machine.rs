//! Where a machine stands, as last declared. Nothing senses it.

use earthwork::point::Point;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// Somebody says where a machine stands.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct PlaceMachine {
    /// Which.
    pub machine: String,
    /// Where.
    pub at: Point,
}

/// A machine's place was declared.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct MachinePlaced {
    /// Which.
    pub machine: String,
    /// Where.
    pub at: Point,
}

/// A machine has moved; nobody has said where to.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayMoved {
    /// Which.
    pub machine: String,
}

/// A machine moved: its place is unknown.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct MachineMoved {
    /// Which.
    pub machine: String,
}
