//! Planes that fold: a crown sheds both ways, a valley gathers.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::GradeError;
use crate::length::Length;
use crate::point::Point;
use crate::vector::{Vector, rounded};

/// An even grade.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Plane {
    /// A place on it.
    pub through: Point,
    /// Its elevation there.
    pub elevation: Length,
    /// Rise to the east, in feet per foot; negative falls.
    pub rise_east: f64,
    /// Rise to the north, in feet per foot; negative falls.
    pub rise_north: f64,
}

/// How planes meet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Fold {
    /// The lowest plane counts: a ridge between them.
    Crown,
    /// The highest plane counts: a gutter between them.
    Valley,
}

impl Plane {
    /// The elevation at a place.
    pub fn elevation_at(&self, at: Point) -> Length {
        let rises = Vector {
            east: self.rise_east,
            north: self.rise_north,
        };
        self.elevation + rounded(rises.dot(Vector::between(self.through, at)))
    }

    /// The steepest slope, feet per foot, at or above zero.
    pub fn slope(&self) -> f64 {
        self.rise_east.hypot(self.rise_north)
    }
}

/// No ground is steeper, in feet per foot.
const STEEPEST: f64 = 1_000.0;

/// The elevation of folded planes at a place.
///
/// # Errors
/// When there is no plane, or a rise is one that no ground has.
pub fn folded(fold: Fold, planes: &[Plane], at: Point) -> Result<Length, GradeError> {
    let sound = |plane: &&Plane| plane.slope() <= STEEPEST;
    if let Some(wrong) = planes.iter().find(|plane| !sound(plane)) {
        return Err(GradeError::NotANumber {
            what: words::grade::what::planes_rise(),
            value: wrong.slope().to_string(),
        });
    }
    let elevations = planes.iter().map(|plane| plane.elevation_at(at));
    match fold {
        Fold::Crown => elevations.min(),
        Fold::Valley => elevations.max(),
    }
    .ok_or(GradeError::NoPlane)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Derived from plane geometry: 2 % both ways from x = 50.
    #[test]
    fn a_crown_sheds_and_a_valley_gathers() {
        let ft = Length::from_hundredths_of_a_foot;
        let at = |x| Point { x: ft(x), y: ft(0) };
        let plane = |rise_east| Plane {
            through: at(5000),
            elevation: ft(10_000),
            rise_east,
            rise_north: 0.0,
        };
        let both = [plane(0.02), plane(-0.02)];
        for x in [4000, 6000] {
            assert_eq!(folded(Fold::Crown, &both, at(x)), Ok(ft(9980)));
            assert_eq!(folded(Fold::Valley, &both, at(x)), Ok(ft(10_020)));
        }
        assert_eq!(folded(Fold::Crown, &[], at(0)), Err(GradeError::NoPlane));
        for wrong in [f64::NAN, f64::INFINITY, 1e308] {
            assert!(folded(Fold::Crown, &[plane(wrong)], at(0)).is_err());
        }
    }
}
