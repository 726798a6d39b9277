//! Is it what was expected: within the allowance, and with the numbers to show.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{Quantity, WorkedError};
use crate::length::{Length, parse};

/// One expected output beside what came out.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Comparison {
    /// Whether it is within the allowance.
    pub agrees: bool,
    /// As expected.
    pub expected: String,
    /// As it came out.
    pub got: String,
}

/// Compares an expected text with what came out. The allowance is `exact`, a length with its unit, a plain
/// number, or both parted by `;`; lengths take the length, numbers the number, words are always exact.
///
/// # Errors
/// When the expected text or the allowance can't be read, or does not suit what came out.
pub fn compare(expected: &str, got: &Quantity, allowance: &str) -> Result<Comparison, WorkedError> {
    let allowance = Allowance::read(allowance)?;
    let length = |text: &str| {
        parse(text).map_err(|error| WorkedError::BadExpected {
            text: expected.to_owned(),
            why: error.to_string(),
        })
    };
    let near = |expected: Length, got: Length| (expected - got).abs() <= allowance.length;
    let (agrees, shown) = match got {
        Quantity::Length(got) => (near(length(expected)?, *got), got.to_string()),
        Quantity::Lengths(got) => {
            let expected = expected
                .split(';')
                .map(length)
                .collect::<Result<Vec<_>, _>>()?;
            let agrees = expected.len() == got.len()
                && expected
                    .iter()
                    .zip(got)
                    .all(|(one, other)| near(*one, *other));
            let shown: Vec<String> = got.iter().map(Length::to_string).collect();
            (agrees, shown.join("; "))
        }
        Quantity::Number(got) => {
            let number: f64 =
                expected
                    .trim()
                    .parse()
                    .map_err(
                        |_parse: std::num::ParseFloatError| WorkedError::BadExpected {
                            text: expected.to_owned(),
                            why: "a plain number is wanted, without a unit.".to_owned(),
                        },
                    )?;
            ((number - got).abs() <= allowance.number, got.to_string())
        }
        Quantity::Word(got) => (expected.trim() == got, got.clone()),
    };
    Ok(Comparison {
        agrees,
        expected: expected.to_owned(),
        got: shown,
    })
}

struct Allowance {
    length: Length,
    number: f64,
}

impl Allowance {
    fn read(text: &str) -> Result<Allowance, WorkedError> {
        let bad = |why: String| WorkedError::BadAllowance {
            text: text.to_owned(),
            why,
        };
        let mut allowance = Allowance {
            length: Length::ZERO,
            number: 0.0,
        };
        let (mut lengths, mut numbers) = (0, 0);
        for part in text.split(';').map(str::trim) {
            if part == "exact" {
                continue;
            }
            let number = part.parse::<f64>().is_ok();
            numbers += i32::from(number);
            lengths += i32::from(!number);
            if numbers > 1 || lengths > 1 {
                return Err(bad("give one length and one number at most.".to_owned()));
            }
            match (part.parse::<f64>(), parse(part)) {
                (Ok(number), _) if number >= 0.0 && number.is_finite() => allowance.number = number,
                (_, Ok(length)) if length >= Length::ZERO => allowance.length = length,
                _ => return Err(bad(
                    "write exact, a length such as 0.005 ft, or a plain number, none below zero."
                        .to_owned(),
                )),
            }
        }
        Ok(allowance)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn agrees(expected: &str, got: &Quantity, allowance: &str) -> bool {
        compare(expected, got, allowance).unwrap().agrees
    }

    #[test]
    fn each_kind_is_compared_with_its_own_allowance() {
        let length = Quantity::Length(ft(100));
        assert!(agrees("1.00 ft", &length, "exact"));
        assert!(agrees("304.8 mm", &length, "exact"));
        assert!(agrees("1.01 ft", &length, "0.01 ft"));
        assert!(!agrees("1.011 ft", &length, "0.01 ft"));
        assert!(
            !agrees("1.01 ft", &length, "5"),
            "a number is no allowance for a length"
        );
        let number = Quantity::Number(0.9772);
        assert!(agrees("0.977", &number, "0.01 ft; 0.0005"));
        assert!(!agrees("0.977", &number, "0.01 ft"));
        assert!(agrees("high", &Quantity::Word("high".into()), "exact"));
        assert!(!agrees("low", &Quantity::Word("high".into()), "9"));
    }

    #[test]
    fn lists_are_compared_one_by_one() {
        let lengths = Quantity::Lengths(vec![ft(100), ft(200)]);
        assert!(agrees("1 ft; 2 ft", &lengths, "exact"));
        assert!(!agrees("1 ft; 2.01 ft", &lengths, "exact"));
        assert!(!agrees("1 ft", &lengths, "9 ft"));
        assert_eq!(
            compare("1 ft; 3 ft", &lengths, "exact").unwrap().got,
            "1 ft; 2 ft"
        );
    }

    #[test]
    fn what_cannot_be_compared_is_an_error() {
        let length = Quantity::Length(ft(100));
        assert!(matches!(
            compare("1.00", &length, "exact"),
            Err(WorkedError::BadExpected { .. })
        ));
        assert!(matches!(
            compare("one", &Quantity::Number(1.0), "exact"),
            Err(WorkedError::BadExpected { .. })
        ));
        for allowance in [
            "",
            "-1",
            "-1 ft",
            "about",
            "NaN",
            "1 ft; 2 ft",
            "1; 2",
            "1 ft; exact; 3 in",
        ] {
            assert!(
                matches!(
                    compare("1 ft", &length, allowance),
                    Err(WorkedError::BadAllowance { .. })
                ),
                "{allowance}"
            );
        }
    }
}
