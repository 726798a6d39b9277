//! Which way and how far: a vector on the plan, east and north, in counts as an `f64`.
//!
//! Points stay whole counts; a vector lives only from one point to the next, so that nothing big loses digits.

use crate::length::{Length, whole};
use crate::point::Point;

/// East and north, in counts (1e-7 m).
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Vector {
    pub(crate) east: f64,
    pub(crate) north: f64,
}

impl Vector {
    pub(crate) fn between(from: Point, to: Point) -> Vector {
        let (east, north) = from.to(to);
        Vector { east, north }
    }

    pub(crate) fn size(self) -> f64 {
        self.east.hypot(self.north)
    }

    pub(crate) fn times(self, factor: f64) -> Vector {
        Vector {
            east: self.east * factor,
            north: self.north * factor,
        }
    }

    pub(crate) fn plus(self, other: Vector) -> Vector {
        Vector {
            east: self.east + other.east,
            north: self.north + other.north,
        }
    }

    /// The same length, a quarter turn to the right.
    pub(crate) fn to_the_right(self) -> Vector {
        Vector {
            east: self.north,
            north: -self.east,
        }
    }

    /// Turned to the left by so many radians.
    pub(crate) fn turned_left(self, angle: f64) -> Vector {
        let (sin, cos) = angle.sin_cos();
        Vector {
            east: self.east * cos - self.north * sin,
            north: self.east * sin + self.north * cos,
        }
    }

    pub(crate) fn dot(self, other: Vector) -> f64 {
        self.east * other.east + self.north * other.north
    }

    /// The angle to another vector, turning left, in radians from 0 up to a whole turn.
    pub(crate) fn left_to(self, other: Vector) -> f64 {
        let cross = self.east * other.north - self.north * other.east;
        cross
            .atan2(self.dot(other))
            .rem_euclid(std::f64::consts::TAU)
    }

    /// One count long; none when it has no direction.
    pub(crate) fn unit(self) -> Option<Vector> {
        let size = self.size();
        (size > 0.0).then(|| self.times(1.0 / size))
    }

    /// The place that this leads to.
    pub(crate) fn applied_to(self, from: Point) -> Point {
        Point {
            x: from.x + rounded(self.east),
            y: from.y + rounded(self.north),
        }
    }
}

/// A length in counts, as near as an `f64` comes.
pub(crate) fn counts(length: Length) -> f64 {
    length.tenth_micrometres() as f64
}

/// The length nearest to so many counts.
pub(crate) fn rounded(counts: f64) -> Length {
    Length::from_tenth_micrometres(whole(counts.round()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::f64::consts::FRAC_PI_2;

    #[test]
    fn right_of_north_is_east_and_left_of_it_is_west() {
        let north = Vector {
            east: 0.0,
            north: 2.0,
        };
        let east = north.to_the_right();
        assert_eq!((east.east, east.north), (2.0, 0.0));
        let west = north.turned_left(FRAC_PI_2);
        assert!((west.east + 2.0).abs() < 1e-12 && west.north.abs() < 1e-12);
        assert!((north.left_to(west) - FRAC_PI_2).abs() < 1e-12);
        assert!((north.left_to(east) - 3.0 * FRAC_PI_2).abs() < 1e-12);
    }
}
