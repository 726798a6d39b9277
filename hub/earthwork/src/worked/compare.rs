//! Is it what was expected: within the allowance, and with the numbers to show.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::{Quantity, WorkedError};
use crate::length::{Form, Length, parse};

/// One expected output beside what came out.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Comparison {
    /// Whether it is within the allowance.
    pub agrees: bool,
    /// As expected.
    pub expected: String,
    /// As it came out, with every figure that it takes to see a difference.
    pub got: String,
    /// By how much the two differ, where they do and it can be said: what came out less what was expected.
    pub off: Option<String>,
}

/// Compares an expected text with what came out. The allowance is `exact`, `as printed`, a length with its unit, a
/// plain number, or one of each kind parted by `;`; lengths take the length, numbers the number, words are always
/// exact. `as printed` allows what rounding to the digits of the expected text can have taken: half of its last digit.
///
/// # Errors
/// When the expected text or the allowance can't be read, or does not suit what came out.
pub fn compare(expected: &str, got: &Quantity, allowance: &str) -> Result<Comparison, WorkedError> {
    let allowance = Allowance::read(allowance)?;
    let (agrees, shown, off) = match got {
        Quantity::Length(got) => lengths(expected, &[expected], &[*got], &allowance)?,
        Quantity::Lengths(got) => {
            let parts: Vec<&str> = expected.split(';').collect();
            lengths(expected, &parts, got, &allowance)?
        }
        Quantity::Number(got) => number(expected, *got, &allowance)?,
        Quantity::Word(got) => (expected.trim() == got, got.clone(), None),
    };
    Ok(Comparison {
        agrees,
        expected: expected.to_owned(),
        got: shown,
        off: off.filter(|_| !agrees),
    })
}

type Compared = Result<(bool, String, Option<String>), WorkedError>;

fn bad_expected(text: &str, why: &impl ToString) -> WorkedError {
    WorkedError::BadExpected {
        text: text.to_owned(),
        why: why.to_string(),
    }
}

fn lengths(whole: &str, expected: &[&str], got: &[Length], allowance: &Allowance) -> Compared {
    let expected = expected
        .iter()
        .map(|text| {
            let wanted = parse(text).map_err(|error| bad_expected(whole, &error))?;
            Ok((wanted, allowance.of_length(whole, text)?))
        })
        .collect::<Result<Vec<_>, WorkedError>>()?;
    let near =
        |((wanted, allowed), got): (&(Length, Length), &Length)| (*wanted - *got).abs() <= *allowed;
    let agrees = expected.len() == got.len() && expected.iter().zip(got).all(near);
    // A length that agrees is shown briefly; one that does not, to its last count.
    let show = |length: &Length| {
        if agrees {
            length.to_string()
        } else {
            in_full(*length)
        }
    };
    let list = |lengths: Vec<String>| lengths.join("; ");
    let off = if expected.len() == got.len() {
        let apart = expected.iter().zip(got);
        list(
            apart
                .map(|((wanted, _), got)| in_full(*got - *wanted))
                .collect(),
        )
    } else {
        format!("{} are expected, {} came out", expected.len(), got.len())
    };
    Ok((agrees, list(got.iter().map(show).collect()), Some(off)))
}

/// Feet to the last count of a length, and the metres that say it exactly.
fn in_full(length: Length) -> String {
    let feet = length.show(Form::DecimalFeet { places: 7 });
    let metres = length.show(Form::Metres { places: 7 });
    format!("{feet} ({metres})")
}

fn number(expected: &str, got: f64, allowance: &Allowance) -> Compared {
    let wanted: f64 = expected
        .trim()
        .parse()
        .map_err(|_parse: std::num::ParseFloatError| {
            bad_expected(expected, &"a plain number is wanted, without a unit.")
        })?;
    let off = got - wanted;
    let allowed = if allowance.as_printed {
        // What a binary fraction loses of a decimal one is no difference.
        half_of_last_digit(expected.trim()).ok_or_else(|| bad_expected(expected, &NO_DIGITS))?
            + wanted.abs() * f64::EPSILON * 4.0
    } else {
        allowance.number
    };
    Ok((off.abs() <= allowed, got.to_string(), Some(off.to_string())))
}

const NO_DIGITS: &str =
    "“as printed” needs decimal figures, such as 1.08 or 24650, so that it has a last digit.";

/// Half of the last digit of a plain decimal number; nothing for a fraction or a power of ten.
fn half_of_last_digit(number: &str) -> Option<f64> {
    let number = number.trim_start_matches(['-', '+']);
    let plain = number.chars().all(|c| c.is_ascii_digit() || c == '.');
    let places = number.split_once('.').map_or(0, |(_, after)| after.len());
    plain.then(|| 0.5 / 10_f64.powi(i32::try_from(places).unwrap_or(i32::MAX)))
}

struct Allowance {
    as_printed: bool,
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
            as_printed: text.trim() == "as printed",
            length: Length::ZERO,
            number: 0.0,
        };
        if allowance.as_printed {
            return Ok(allowance);
        }
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
                    "write exact, as printed, a length such as 0.005 ft, or a plain number, none below zero."
                        .to_owned(),
                )),
            }
        }
        Ok(allowance)
    }

    /// How far a length may be from the one that is written so.
    fn of_length(&self, whole: &str, written: &str) -> Result<Length, WorkedError> {
        if !self.as_printed {
            return Ok(self.length);
        }
        let written = written.trim();
        let ends = written.find(|c: char| c.is_alphabetic() || c.is_whitespace());
        let (digits, unit) = written.split_at(ends.unwrap_or(written.len()));
        let one = half_of_last_digit(digits)
            .filter(|_| !unit.contains(|c: char| c.is_ascii_digit()))
            .zip(parse(&format!("1 {}", unit.trim())).ok())
            .and_then(|(half, unit)| Length::from_feet(half * unit.feet()).ok());
        one.ok_or_else(|| bad_expected(whole, &NO_DIGITS))
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
            compare("1 ft; 3 ft", &lengths, "1 ft").unwrap().got,
            "1 ft; 2 ft"
        );
    }

    /// By hand: one count is 0.1 µm, 0.000000328 ft; four decimals would show both as 1 ft.
    #[test]
    fn a_mismatch_shows_the_figures_that_differ() {
        let nearly = Quantity::Length(Length::from_tenth_micrometres(3_048_001));
        let compared = compare("1 ft", &nearly, "exact").unwrap();
        assert!(!compared.agrees);
        assert_eq!(compared.got, "1.0000003 ft (0.3048001 m)");
        assert_eq!(compared.off.unwrap(), "0.0000003 ft (0.0000001 m)");
        let list = Quantity::Lengths(vec![ft(100), ft(200)]);
        let compared = compare("1 ft; 2.01 ft", &list, "exact").unwrap();
        assert_eq!(
            compared.off.unwrap(),
            "0.0000000 ft (0.0000000 m); −0.0100000 ft (−0.0030480 m)"
        );
        let compared = compare("1 ft", &list, "exact").unwrap();
        assert_eq!(compared.off.unwrap(), "1 are expected, 2 came out");
        let compared = compare("0.3", &Quantity::Number(0.1 + 0.2), "exact").unwrap();
        assert_eq!(compared.got, "0.30000000000000004");
        assert!(compared.off.is_some());
        assert_eq!(compare("1 ft; 2 ft", &list, "exact").unwrap().off, None);
    }

    #[test]
    fn as_printed_allows_half_of_the_last_digit_and_no_more() {
        let number = Quantity::Number(637.5);
        assert!(agrees("637", &number, "as printed"));
        assert!(agrees("638", &number, "as printed"));
        assert!(!agrees("637.0", &number, "as printed"));
        assert!(!agrees("636", &number, "as printed"));
        assert!(agrees("-0.67", &Quantity::Number(-2.0 / 3.0), "as printed"));
        assert!(!agrees(
            "-0.66",
            &Quantity::Number(-2.0 / 3.0),
            "as printed"
        ));
        let length = Quantity::Length(ft(12175));
        for (expected, same) in [
            ("121.8 ft", true),
            ("121.7 ft", true),
            ("121.75 ft", true),
            ("121.76 ft", false),
            ("122 ft", true),
            ("37.1 m", true),
            ("37.11 m", true),
            ("37.109 m", true),
            ("37.108 m", false),
        ] {
            assert_eq!(agrees(expected, &length, "as printed"), same, "{expected}");
        }
        let lengths = Quantity::Lengths(vec![ft(104), ft(295)]);
        assert!(agrees("1.0 ft; 2.95 ft", &lengths, "as printed"));
        assert!(!agrees("1.1 ft; 2.95 ft", &lengths, "as printed"));
        for (expected, got) in [
            ("5 ft 4 3/8 in", &length),
            ("1/2 in", &length),
            ("1e3", &number),
        ] {
            assert!(matches!(
                compare(expected, got, "as printed"),
                Err(WorkedError::BadExpected { .. })
            ));
        }
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
