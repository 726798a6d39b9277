//! How high is a sloped laser's plane here, and is its axis where it should point.
//!
//! HI(x, y) = HI₀ + a·(x − x₀) + b·(y − y₀), with the rises a to the east and b to the
//! north. An axis that is off by ψ is wrong by distance ·
//! grade · sin ψ across the slope (mathematics), which one check shot up or down the slope does not show.

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::length::{Length, whole};
use crate::point::Point;

/// Two checks count as lying in line with the laser when the angle between them is below this, in degrees, or
/// above its supplement (common practice).
pub const IN_LINE_BELOW_DEGREES: f64 = 20.0;
/// No laser is set steeper: 25 %.
const STEEPEST: f64 = 0.25;

/// A laser whose plane is sloped.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SlopedLaser {
    /// Where it stands.
    pub at: Point,
    /// The height of its plane there.
    pub hi: Length,
    /// Rise to the east, in feet per foot.
    pub rise_east: f64,
    /// Rise to the north, in feet per foot.
    pub rise_north: f64,
}

/// Why a sloped laser is not worked with.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SlopedLaserError {
    /// A slope that is none.
    Slope,
    /// The checks do not show a turned axis.
    InLine,
}

impl SlopedLaserError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::Slope => words::laser::sloped::slope().into(),
            Self::InLine => words::laser::sloped::in_line().into(),
        }
    }
}

words::error!(SlopedLaserError);

impl SlopedLaser {
    /// The height of the plane at a place.
    ///
    /// # Errors
    /// When a slope is not a number or steeper than 25 %.
    pub fn height(&self, place: Point) -> Result<Length, SlopedLaserError> {
        for rise in [self.rise_east, self.rise_north] {
            if !(-STEEPEST..=STEEPEST).contains(&rise) {
                return Err(SlopedLaserError::Slope);
            }
        }
        let (east, north) = self.at.to(place);
        let counts = self.rise_east * east + self.rise_north * north;
        Ok(self.hi + Length::from_tenth_micrometres(whole(counts.round())))
    }

    /// measured − target for a rod read at a place.
    ///
    /// # Errors
    /// As for `height`.
    pub fn difference(
        &self,
        place: Point,
        foresight: Length,
        target: Length,
    ) -> Result<Length, SlopedLaserError> {
        Ok(self.height(place)? - foresight - target)
    }

    /// Whether two check shots would show a turned axis: they must not lie in one line with the laser.
    ///
    /// # Errors
    /// When they do, or one lies at the laser itself.
    pub fn checks_spread(&self, one: Point, other: Point) -> Result<(), SlopedLaserError> {
        let (first, second) = (self.at.to(one), self.at.to(other));
        let long = first.0.hypot(first.1) * second.0.hypot(second.1);
        let sine = (first.0 * second.1 - first.1 * second.0).abs() / long;
        // At the laser itself the sine is no number, and no check either.
        if sine >= IN_LINE_BELOW_DEGREES.to_radians().sin() {
            Ok(())
        } else {
            Err(SlopedLaserError::InLine)
        }
    }
}

/// How far a plane of this grade is off at a distance across its slope when its axis is turned by so many degrees.
pub fn turned_axis(distance: Length, grade: f64, degrees: f64) -> Length {
    let counts = distance.tenth_micrometres() as f64 * grade * degrees.to_radians().sin();
    Length::from_tenth_micrometres(whole(counts.round()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn at(x: i64, y: i64) -> Point {
        Point {
            x: Length::from_hundredths_of_a_foot(x),
            y: Length::from_hundredths_of_a_foot(y),
        }
    }

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn laser(rise_east: f64, rise_north: f64) -> SlopedLaser {
        SlopedLaser {
            at: at(1000, 2000),
            hi: ft(10_000),
            rise_east,
            rise_north,
        }
    }

    /// Mathematics: 2 % over 100 ft is 2 ft; 80 ft · 0.02 · sin 3° = 0.084 ft.
    #[test]
    fn the_plane_rises_with_the_distance() {
        let sloped = laser(0.02, -0.01);
        assert_eq!(sloped.height(at(11_000, 2000)), Ok(ft(10_200)));
        assert_eq!(sloped.height(at(1000, 12_000)), Ok(ft(9900)));
        assert_eq!(
            sloped.difference(at(11_000, 2000), ft(500), ft(9690)),
            Ok(ft(10))
        );
        assert!((turned_axis(ft(8000), 0.02, 3.0).feet() - 0.083_74).abs() < 1e-5);
        let error = laser(2.0, 0.0).height(at(0, 0)).unwrap_err();
        assert!(error.to_string().contains("2 % as 0.02"), "{error}");
        assert!(laser(0.0, f64::NAN).height(at(0, 0)).is_err());
    }

    #[test]
    fn checks_in_line_do_not_show_a_turned_axis() {
        let sloped = laser(0.02, 0.0);
        assert_eq!(sloped.checks_spread(at(6000, 2000), at(1000, 7000)), Ok(()));
        for (one, other) in [
            (at(6000, 2000), at(9000, 2100)),
            (at(6000, 2000), at(-4000, 2000)),
            (at(1000, 2000), at(6000, 2000)),
        ] {
            let error = sloped.checks_spread(one, other).unwrap_err();
            assert!(error.text().spanish.contains("en línea"), "{error:?}");
        }
    }

    proptest! {
        /// A level laser is the same everywhere, and its difference is that of plain levelling.
        #[test]
        fn level_is_the_plain_case(x in -9999_i64..9999, y in -9999_i64..9999, rod in 0_i64..1300) {
            let difference = laser(0.0, 0.0).difference(at(x, y), ft(rod), ft(9500)).unwrap();
            prop_assert_eq!(difference, ft(10_000 - rod - 9500));
        }
    }
}
