//! Where a target's line runs, drawn, and what to dig to along it.

use contract::ToSchema;
use earthwork::target::Drawn;
use serde::{Deserialize, Serialize};

use super::Target;

/// A target's line, drawn.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct DrawnTarget {
    /// The target.
    pub id: String,
    /// Its line and what to dig to along it.
    pub drawn: Drawn,
}

/// A target as it is drawn; none when it has no line.
pub fn drawn(target: &Target) -> Option<DrawnTarget> {
    let id = target.id.clone();
    let drawn = target.grade.drawn()?;
    Some(DrawnTarget { id, drawn })
}
