//! Is the rotating laser itself true: a rod read in four positions of the laser, a quarter turn apart.
//!
//! Half the difference after a half turn, over the distance, is the slant of an axis (common practice, as for any
//! level). Beyond 0.01 ft in 100 ft the laser goes to service; what is found feeds the doubt of every shot.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::length::Length;
use crate::two_peg::{TwoPegError, half_turn};

/// The slant up to and with which a laser is worked with: 0.01 ft in 100 ft (common practice).
pub const SERVICE_BEYOND: f64 = 0.0001;

/// One rod, read with the laser turned on its spot by a quarter each time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct FieldTest {
    /// From the laser to the rod; 100 ft or more shows most.
    pub distance: Length,
    /// The first axis toward the rod.
    pub first: Length,
    /// The first axis turned half round.
    pub first_turned: Length,
    /// The second axis toward the rod.
    pub second: Length,
    /// The second axis turned half round.
    pub second_turned: Length,
}

/// What the test says.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct FieldTestResult {
    /// Of the first axis, in feet per foot; positive when the plane rises toward the rod.
    pub first_slant: f64,
    /// Of the second axis.
    pub second_slant: f64,
    /// The doubt to work with per 100 ft, in feet: the larger of both.
    pub doubt_per_100_ft: f64,
    /// Whether the laser goes to service.
    pub service: bool,
}

/// Works the test out.
///
/// # Errors
/// When the distance is not above zero.
pub fn field_test(test: &FieldTest) -> Result<FieldTestResult, TwoPegError> {
    let first_slant = half_turn(test.first, test.first_turned, test.distance)?;
    let second_slant = half_turn(test.second, test.second_turned, test.distance)?;
    let worst = first_slant.abs().max(second_slant.abs());
    Ok(FieldTestResult {
        first_slant,
        second_slant,
        doubt_per_100_ft: worst * 100.0,
        // A billionth is rounding, not slant.
        service: worst > SERVICE_BEYOND + 1e-9,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn test(first: i64, second: i64) -> FieldTestResult {
        let ft = Length::from_hundredths_of_a_foot;
        field_test(&FieldTest {
            distance: ft(10_000),
            first: ft(500 + first),
            first_turned: ft(500 - first),
            second: ft(500 + second),
            second_turned: ft(500 - second),
        })
        .unwrap()
    }

    /// Derived: half the difference over 100 ft; 0.01 ft is worked with, 0.02 ft goes to service.
    #[test]
    fn the_worse_axis_decides() {
        let good = test(1, 0);
        assert!(!good.service && (good.doubt_per_100_ft - 0.01).abs() < 1e-9);
        let bad = test(1, -2);
        assert!(bad.service && (bad.second_slant + 0.0002).abs() < 1e-12);
    }

    #[test]
    fn no_distance_says_nothing() {
        let none = FieldTest {
            distance: Length::ZERO,
            first: Length::ZERO,
            first_turned: Length::ZERO,
            second: Length::ZERO,
            second_turned: Length::ZERO,
        };
        assert!(field_test(&none).is_err());
    }
}
