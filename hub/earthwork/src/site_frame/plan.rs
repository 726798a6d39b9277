//! A plan's number, exactly as written, and what its unit is.

use std::fmt;

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::FrameError;
use crate::length::{LONGEST, Length, nearest, short};

/// Parts of a plan's unit that are kept: seven decimals.
const PARTS: i128 = 10_000_000;

/// A plan's coordinate without its unit, exact to seven decimals.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct PlanNumber(i128);

/// A plan's place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PlanPoint {
    /// East.
    pub east: PlanNumber,
    /// North.
    pub north: PlanNumber,
}

/// What a plan counts in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum PlanUnit {
    /// The international foot, 0.3048 m (NIST Special Publication 811, appendix B).
    Foot,
    /// The US survey foot, 1200/3937 m (NIST Special Publication 811, appendix B).
    SurveyFoot,
    /// The metre.
    Metre,
}

impl PlanNumber {
    /// Nought.
    pub const ZERO: PlanNumber = PlanNumber(0);

    /// Reads a plain decimal number of up to 12 digits and 7 decimals; exact.
    ///
    /// # Errors
    /// When it is anything else.
    pub fn parse(text: &str) -> Result<PlanNumber, FrameError> {
        let wrong = || FrameError::NotANumber { text: short(text) };
        let trimmed = text.trim();
        let (sign, digits) = match trimmed.strip_prefix('-') {
            Some(rest) => (-1, rest),
            None => (1, trimmed),
        };
        let (before, after) = digits.split_once('.').unwrap_or((digits, ""));
        let plain = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
        let fits = (1..=12).contains(&before.len()) && after.len() <= 7;
        if !fits || !plain(before) || !plain(after) {
            return Err(wrong());
        }
        let parts: i128 = format!("{before}{after:0<7}")
            .parse()
            .map_err(|_parse: std::num::ParseIntError| wrong())?;
        Ok(PlanNumber(sign * parts))
    }

    /// As near as an `f64` comes.
    pub fn value(self) -> f64 {
        self.0 as f64 / PARTS as f64
    }
}

impl fmt::Display for PlanNumber {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let sign = if self.0 < 0 { "-" } else { "" };
        let parts = self.0.unsigned_abs();
        let scale = PARTS.unsigned_abs();
        write!(f, "{sign}{}.{:07}", parts / scale, parts % scale)
    }
}

impl PlanUnit {
    /// Tenth-micrometres in a plan's unit, as a fraction.
    fn counts(self) -> (i128, i128) {
        match self {
            PlanUnit::Foot => (3_048_000, 1),
            PlanUnit::SurveyFoot => (12_000_000_000, 3937),
            PlanUnit::Metre => (10_000_000, 1),
        }
    }

    /// A number that counts in another unit, in this one, to the seventh decimal.
    pub fn of(self, other: PlanUnit, number: PlanNumber) -> PlanNumber {
        let ((over, under), (other_over, other_under)) = (self.counts(), other.counts());
        PlanNumber(nearest(number.0 * other_over * under, other_under * over))
    }

    /// From one plan number to another, to the nearest count.
    ///
    /// # Errors
    /// When they lie more than 100,000,000 ft apart.
    pub fn length(self, from: PlanNumber, to: PlanNumber) -> Result<Length, FrameError> {
        let (over, under) = self.counts();
        let counts = nearest((to.0 - from.0) * over, under * PARTS);
        i64::try_from(counts)
            .ok()
            .filter(|counts| counts.unsigned_abs() <= LONGEST.unsigned_abs())
            .map(Length::from_tenth_micrometres)
            .ok_or(FrameError::TooFar)
    }

    /// The plan number so far beyond another, to the seventh decimal.
    pub(super) fn beyond(self, from: PlanNumber, by: Length) -> PlanNumber {
        let (over, under) = self.counts();
        PlanNumber(from.0 + nearest(i128::from(by.tenth_micrometres()) * under * PARTS, over))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn plan_numbers_are_kept_as_written() {
        for (text, shown) in [
            ("2000123.456", "2000123.4560000"),
            ("-0.5", "-0.5000000"),
            ("7", "7.0000000"),
        ] {
            assert_eq!(PlanNumber::parse(text).unwrap().to_string(), shown);
        }
        for text in [
            "",
            "-",
            ".5",
            "1e6",
            "1,000",
            "NaN",
            "1.23456789",
            "+5",
            "5 ft",
            "--1",
        ] {
            let error = PlanNumber::parse(text).unwrap_err();
            assert!(error.to_string().contains("plain number"), "{text}");
        }
        let endless = PlanNumber::parse(&"9".repeat(1_000_000)).unwrap_err();
        assert!(
            endless.to_string().len() < 300,
            "what is endless is cut short"
        );
    }

    /// NIST Special Publication 811, appendix B: 1 ft = 0.3048 m, a survey foot is 1200/3937 m; 2,000,000 survey feet are 609,601.2192 m
    /// and 2,000,004.000008 ft.
    #[test]
    fn a_number_of_another_unit_is_converted_to_the_seventh_decimal() {
        let number = |text| PlanNumber::parse(text).unwrap();
        for (to, from, given, wanted) in [
            (PlanUnit::Foot, PlanUnit::Metre, "609600", "2000000"),
            (PlanUnit::Metre, PlanUnit::SurveyFoot, "3937", "1200"),
            (
                PlanUnit::Foot,
                PlanUnit::SurveyFoot,
                "2000000",
                "2000004.0000080",
            ),
            (
                PlanUnit::SurveyFoot,
                PlanUnit::SurveyFoot,
                "-0.0000001",
                "-0.0000001",
            ),
        ] {
            assert_eq!(to.of(from, number(given)), number(wanted), "{given}");
        }
    }

    #[test]
    fn what_is_too_far_is_refused() {
        let number = |text| PlanNumber::parse(text).unwrap();
        let far = PlanUnit::Metre.length(number("0"), number("999999999999"));
        assert_eq!(far, Err(FrameError::TooFar));
    }
}
