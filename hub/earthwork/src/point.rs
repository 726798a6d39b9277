//! Where is it: a place on the site, east and north of the site's own corner.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::length::{Length, whole};
use crate::target::boundary::outside_by;

/// A place on the ground.
#[derive(
    Clone,
    Copy,
    Debug,
    Default,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    ToSchema,
)]
pub struct Point {
    /// East of the site's corner.
    pub x: Length,
    /// North of the site's corner.
    pub y: Length,
}

impl Point {
    /// How far apart, level, to the nearest count.
    pub fn distance(self, other: Point) -> Length {
        let (east, north) = self.to(other);
        Length::from_tenth_micrometres(whole(east.hypot(north).round()))
    }

    /// How far east and north the other lies, in counts.
    pub(crate) fn to(self, other: Point) -> (f64, f64) {
        let counts = |length: Length| length.tenth_micrometres() as f64;
        (counts(other.x - self.x), counts(other.y - self.y))
    }
}

/// Whether a place lies inside a boundary of corners; its edge belongs to it.
pub fn is_within(corners: &[Point], at: Point) -> bool {
    outside_by(corners, at).is_none()
}

/// Whether two edges of a boundary that are not neighbours meet.
pub fn crosses_itself(corners: &[Point]) -> bool {
    crate::target::boundary::crosses_itself(corners)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Derived from Pythagoras: legs of 18 and 24 ft make 30 ft.
    #[test]
    fn three_four_five() {
        let at = |x, y| Point {
            x: Length::from_hundredths_of_a_foot(x),
            y: Length::from_hundredths_of_a_foot(y),
        };
        assert_eq!(
            at(100, -100).distance(at(1900, 2300)),
            Length::from_hundredths_of_a_foot(3000)
        );
    }
}
