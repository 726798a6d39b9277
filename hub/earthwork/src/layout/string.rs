//! How far below the string is the dig: strings between batter boards, and whether their ends agree.

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::length::{Form, Length, whole};

/// The boards of a level string may differ by this much (common practice: 0.02 ft, two readings of the laser).
pub const LEVEL_WITHIN: Length = Length::from_hundredths_of_a_foot(2);

/// A string between two batter boards.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct BatterString {
    /// The string's elevation at the first board.
    pub first: Length,
    /// The string's elevation at the second board.
    pub second: Length,
    /// Between the boards.
    pub length: Length,
}

/// Why a string gives no depth.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum StringError {
    /// No length.
    NoLength {
        /// As given.
        length: Length,
    },
    /// The place is not under the string.
    NotUnder {
        /// From the first board.
        along: Length,
        /// Between the boards.
        length: Length,
    },
    /// The boards of a string that should be level are not.
    NotLevel {
        /// Second less first.
        by: Length,
    },
    /// The dig would lie above the string.
    AboveString {
        /// By how much.
        by: Length,
    },
}

const HUNDREDTHS: Form = Form::DecimalFeet { places: 2 };

impl StringError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::NoLength { length } => words::layout::string::no_length(length),
            Self::NotUnder { along, length } => words::layout::string::not_under(along, length),
            Self::NotLevel { by } => words::layout::string::not_level(
                &by.abs().show(HUNDREDTHS),
                &(*by > Length::ZERO),
                &LEVEL_WITHIN.show(HUNDREDTHS),
            ),
            Self::AboveString { by } => words::layout::string::above_string(&by.show(HUNDREDTHS)),
        }
    }
}

words::error!(StringError);

impl BatterString {
    /// The string's elevation so far from the first board, on the straight between the boards; sag is left out.
    ///
    /// # Errors
    /// When the string has no length or the place is not under it.
    pub fn elevation(&self, along: Length) -> Result<Length, StringError> {
        let length = self.length;
        if length <= Length::ZERO {
            return Err(StringError::NoLength { length });
        }
        if along < Length::ZERO || along > length {
            return Err(StringError::NotUnder { along, length });
        }
        let share = along.feet() / length.feet();
        let rise = (self.second - self.first).tenth_micrometres() as f64 * share;
        Ok(self.first + Length::from_tenth_micrometres(whole(rise.round())))
    }

    /// How far below the string the dig is, at a place along it.
    ///
    /// # Errors
    /// When there is no string there, or the dig would lie above it.
    pub fn down_to(&self, dig_to: Length, along: Length) -> Result<Length, StringError> {
        let down = self.elevation(along)? - dig_to;
        if down < Length::ZERO {
            return Err(StringError::AboveString { by: -down });
        }
        Ok(down)
    }

    /// Whether the boards of a level string agree; returns second less first.
    ///
    /// # Errors
    /// When they differ by more than 0.02 ft.
    pub fn check_level(&self) -> Result<Length, StringError> {
        let by = self.second - self.first;
        if by.abs() > LEVEL_WITHIN {
            return Err(StringError::NotLevel { by });
        }
        Ok(by)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn string(first: i64, second: i64, length: i64) -> BatterString {
        BatterString {
            first: ft(first),
            second: ft(second),
            length: ft(length),
        }
    }

    /// Derived from subtraction: 305.00 − 302.00, and a quarter of the way along a string that falls 1 ft.
    #[test]
    fn the_dig_is_measured_down_from_the_string() {
        assert_eq!(
            string(30_500, 30_500, 4000).down_to(ft(30_200), ft(0)),
            Ok(ft(300))
        );
        assert_eq!(
            string(30_500, 30_400, 4000).down_to(ft(30_200), ft(1000)),
            Ok(ft(275))
        );
    }

    #[test]
    fn wrong_strings_are_named() {
        assert_eq!(string(30_500, 30_502, 4000).check_level(), Ok(ft(2)));
        let tilted = string(30_500, 30_497, 4000).check_level().unwrap_err();
        assert!(
            tilted.to_string().contains("0.03 ft lower than the first"),
            "{tilted}"
        );
        assert!(
            tilted.text().spanish.contains("0.03 ft más bajo"),
            "{tilted:?}"
        );
        let level = string(30_500, 30_500, 4000);
        let above = level.down_to(ft(30_510), ft(0)).unwrap_err();
        assert!(above.to_string().contains("0.10 ft above"), "{above}");
        for along in [-1, 4001] {
            assert!(level.down_to(ft(30_200), ft(along)).is_err(), "{along}");
        }
        assert!(string(1, 1, 0).elevation(ft(0)).is_err());
    }

    proptest! {
        /// Lifting string and dig alike changes nothing.
        #[test]
        fn a_datum_shift_changes_nothing(drop in 0_i64..500, along in 0_i64..4000, shift in -99_999_i64..99_999) {
            let down = |shift: i64| {
                string(30_500 + shift, 30_490 + shift, 4000).down_to(ft(30_490 + shift - drop), ft(along))
            };
            prop_assert_eq!(down(0), down(shift));
        }
    }
}
