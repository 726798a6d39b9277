//! A plane that falls to drain: an elevation at a point, and its rise east and north.

use super::TargetError;
use crate::length::{Length, whole};
use crate::point::Point;

/// The plane's elevation at a place, to the nearest count. Rises are in feet per foot.
pub(super) fn elevation(through: Point, elevation: Length, rises: (f64, f64), at: Point) -> Length {
    let (east, north) = through.to(at);
    let rise = rises.0 * east + rises.1 * north;
    elevation + Length::from_tenth_micrometres(whole(rise.round()))
}

/// Steeper than one in one is no grade but a percentage typed as it is said.
pub(super) fn check(rises: (f64, f64)) -> Vec<TargetError> {
    [("east", rises.0), ("north", rises.1)]
        .into_iter()
        .filter(|(_, rise)| !(-1.0..=1.0).contains(rise))
        .map(|(side, rise)| TargetError::TooSteep {
            side,
            rise: rise.to_string(),
        })
        .collect()
}
