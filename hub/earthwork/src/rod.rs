//! What does the rod say: a rod, its marking, and the reading that was typed.
//!
//! A reading is typed in the rod's own marking and in no other, because 7.10 on a tenths rod and 7 ft 10 in
//! differ by three quarters of a foot. Readings above an undrawn joint are the crew's affair, not this file's.

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::length::{FOOT, INCH, Length, LengthError, METRE, Number, Scan, plain};

/// How a rod is marked.
#[derive(
    Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum RodUnit {
    /// Feet, tenths and hundredths.
    FeetHundredths,
    /// Feet, inches and eighths.
    FeetInchesEighths,
    /// Metres.
    Metres,
}

/// A rod on the site.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Rod {
    /// What the crew calls it.
    pub id: String,
    /// How it is marked.
    pub unit: RodUnit,
    /// Its length, fully drawn.
    pub length: Length,
    /// The heights of its joints, from the foot up.
    pub joints: Vec<Length>,
    /// Added to every reading: how far below zero its foot, or bracket, stands.
    pub bracket: Length,
}

/// What was read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct RodReading {
    /// The height of the laser above the ground under the rod, bracket included.
    pub value: Length,
    /// Read only to the tenth (or to the centimetre), so worth less.
    pub coarse: bool,
}

/// Why a text is not a reading of this rod.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RodError {
    /// Nothing was typed.
    Empty {
        /// How this rod is typed.
        how: Text,
    },
    /// Not in this rod's marking.
    NotAReading {
        /// What was typed.
        text: String,
        /// The rod.
        rod: String,
        /// How this rod is typed.
        how: Text,
    },
    /// Below zero.
    Negative {
        /// What was typed.
        text: String,
    },
    /// Above the top.
    AboveTop {
        /// What was typed.
        text: String,
        /// The rod.
        rod: String,
        /// Its length.
        length: String,
    },
    /// Twelve inches or more.
    InchesPastTwelve {
        /// What was typed.
        text: String,
        /// The inches.
        inches: i64,
    },
}

impl RodError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::Empty { how } => words::rod::empty(how),
            Self::NotAReading { text, rod, how } => words::rod::not_a_reading(text, rod, how),
            Self::Negative { text } => words::rod::negative(text),
            Self::AboveTop { text, rod, length } => words::rod::above_top(text, rod, length),
            Self::InchesPastTwelve { text, inches } => words::rod::inches_past_twelve(text, inches),
        }
    }
}

words::error!(RodError);

impl Rod {
    /// Reads what was typed, in this rod's marking.
    ///
    /// `5.42` and `5,42` on hundredths (`5.4` counts as coarse); `7-10 3/8`, `7 ft 10 3/8 in`, `7'10"` on
    /// inches; `1.234` on metres (`1.23` counts as coarse).
    ///
    /// # Errors
    /// When it is not a reading of this rod: the message says what is wrong and how to type it.
    pub fn read(&self, text: &str) -> Result<RodReading, RodError> {
        let plain = plain(text);
        let body = plain.trim();
        if body.is_empty() {
            return Err(RodError::Empty { how: self.how() });
        }
        if body.starts_with('-') {
            return Err(RodError::Negative {
                text: text.trim().to_owned(),
            });
        }
        let (counts, coarse) = match self.unit {
            RodUnit::FeetHundredths => {
                let number = self.decimal(body, &["ft", "'"], text)?;
                (number.counts(FOOT), number.places < 2)
            }
            RodUnit::Metres => {
                let number = self.decimal(body, &["m"], text)?;
                (number.counts(METRE), number.places < 3)
            }
            RodUnit::FeetInchesEighths => (self.inches(body, text)?, false),
        };
        let typed =
            i64::try_from(counts).map_or(self.length + self.length, Length::from_tenth_micrometres);
        if typed > self.length {
            return Err(RodError::AboveTop {
                text: text.trim().to_owned(),
                rod: self.id.clone(),
                length: self.length.to_string(),
            });
        }
        Ok(RodReading {
            value: typed + self.bracket,
            coarse,
        })
    }

    /// A decimal number, with nothing after it but its unit.
    fn decimal(&self, body: &str, units: &[&str], text: &str) -> Result<Number, RodError> {
        let mut scan = Scan {
            whole: text,
            rest: body,
        };
        let number = scan.number().map_err(|error| self.refused(&error, text))?;
        let unit = scan.rest.trim();
        let fraction = number.under != 1 && number.places == 0;
        if fraction || !(unit.is_empty() || units.contains(&unit)) {
            return Err(self.not_a_reading(text));
        }
        Ok(number)
    }

    /// Feet and inches in counts. The inches must be typed, even 0: a bare `7` may be feet or inches, and
    /// so may the 7 of `7-1/8`.
    fn inches(&self, body: &str, text: &str) -> Result<i128, RodError> {
        let digits = body.find(|c: char| !c.is_ascii_digit());
        let (feet, after) = body.split_at(digits.unwrap_or(body.len()));
        let said = ["feet", "foot", "ft", "'"]
            .iter()
            .find_map(|unit| after.trim_start().strip_prefix(unit));
        let rest = said.unwrap_or(after);
        // 7-10 and 7'-10"; in 7 ft -10 in the stroke may as well be a minus.
        let rest = match rest.strip_prefix('-') {
            Some(rest) => rest,
            None if rest.trim_start().starts_with('-') => return Err(self.not_a_reading(text)),
            None => rest.trim_start(),
        };
        let Ok(feet) = feet.parse::<i32>() else {
            return Err(self.not_a_reading(text));
        };
        let mut scan = Scan { whole: text, rest };
        let inches = scan.number().map_err(|error| self.refused(&error, text))?;
        let unit = scan.rest.trim().trim_end_matches('.');
        let bare_fraction = rest
            .trim_start_matches(|c: char| c.is_ascii_digit())
            .starts_with('/');
        let lone_fraction = said.is_none() && bare_fraction;
        if lone_fraction || inches.places > 0 || !["", "in", "inch", "inches", "\""].contains(&unit)
        {
            return Err(self.not_a_reading(text));
        }
        if inches.over >= 12 * inches.under {
            return Err(RodError::InchesPastTwelve {
                text: text.trim().to_owned(),
                inches: i64::try_from(inches.over / inches.under).unwrap_or(i64::MAX),
            });
        }
        Ok(i128::from(feet) * i128::from(FOOT) + inches.counts(INCH))
    }

    fn refused(&self, error: &LengthError, text: &str) -> RodError {
        match error {
            LengthError::TooLong { .. } => RodError::AboveTop {
                text: text.trim().to_owned(),
                rod: self.id.clone(),
                length: self.length.to_string(),
            },
            _ => self.not_a_reading(text),
        }
    }

    fn not_a_reading(&self, text: &str) -> RodError {
        RodError::NotAReading {
            text: text.trim().to_owned(),
            rod: self.id.clone(),
            how: self.how(),
        }
    }

    /// How this rod is typed, for a message.
    fn how(&self) -> Text {
        match self.unit {
            RodUnit::FeetHundredths => words::rod::how::hundredths(&self.id),
            RodUnit::FeetInchesEighths => words::rod::how::eighths(&self.id),
            RodUnit::Metres => words::rod::how::metres(&self.id),
        }
    }
}

#[cfg(test)]
pub(crate) mod tests {
    use super::*;

    /// A rod of the demo site (invented, demo).
    pub(crate) fn rod(unit: RodUnit) -> Rod {
        let foot = Length::from_hundredths_of_a_foot;
        Rod {
            id: "A".into(),
            unit,
            length: foot(1300),
            joints: vec![foot(480), foot(890)],
            bracket: Length::ZERO,
        }
    }

    fn sixteenths(feet: i64, inches: i64, sixteenths: i64) -> Length {
        Length::from_sixteenths_of_an_inch((feet * 12 + inches) * 16 + sixteenths)
    }

    #[test]
    fn a_tenths_rod_takes_a_point_or_a_comma() {
        let rod = rod(RodUnit::FeetHundredths);
        for (text, hundredths, coarse) in [
            ("5.42", 542, false),
            ("5,42", 542, false),
            (" 5.42 ft ", 542, false),
            ("5.4", 540, true),
            ("5", 500, true),
            ("0.00", 0, false),
            ("13.00", 1300, false),
        ] {
            let reading = rod.read(text).unwrap();
            assert_eq!(
                reading.value,
                Length::from_hundredths_of_a_foot(hundredths),
                "{text}"
            );
            assert_eq!(reading.coarse, coarse, "{text}");
        }
    }

    #[test]
    fn an_inch_rod_takes_feet_inches_and_eighths() {
        let rod = rod(RodUnit::FeetInchesEighths);
        for (text, value) in [
            ("7-10 3/8", sixteenths(7, 10, 6)),
            ("7 ft 10 3/8 in", sixteenths(7, 10, 6)),
            ("7 ft 10 in.", sixteenths(7, 10, 0)),
            ("7'10\"", sixteenths(7, 10, 0)),
            ("7′-10⅜″", sixteenths(7, 10, 6)),
            ("7 10 1/2", sixteenths(7, 10, 8)),
            ("7-0 1/8", sixteenths(7, 0, 2)),
            ("7 ft 1/8 in", sixteenths(7, 0, 2)),
            ("0-4", sixteenths(0, 4, 0)),
        ] {
            let reading = rod
                .read(text)
                .unwrap_or_else(|error| panic!("{text}: {error}"));
            assert_eq!(reading.value, value, "{text}");
        }
    }

    #[test]
    fn a_metre_rod_takes_metres_and_no_feet() {
        let mut rod = rod(RodUnit::Metres);
        rod.length = Length::from_millimetres(4000);
        assert_eq!(
            rod.read("1.234").unwrap().value,
            Length::from_millimetres(1234)
        );
        assert!(rod.read("1.23").unwrap().coarse);
        assert!(rod.read("1.234 ft").is_err());
        assert!(rod.read("4.001").is_err());
    }

    #[test]
    fn the_bracket_is_added_to_what_was_typed() {
        let mut rod = rod(RodUnit::FeetHundredths);
        rod.bracket = Length::from_hundredths_of_a_foot(50);
        let reading = rod.read("12.90").unwrap();
        assert_eq!(reading.value, Length::from_hundredths_of_a_foot(1340));
    }

    #[test]
    fn what_cannot_be_is_refused_with_what_to_do() {
        let tenths = rod(RodUnit::FeetHundredths);
        let inches = rod(RodUnit::FeetInchesEighths);
        for (rod, text, says) in [
            (
                &tenths,
                "",
                "No reading was typed. Rod A is marked in feet and hundredths: type it like 5.42.",
            ),
            (&tenths, "-5.42", "below the foot of the rod"),
            (
                &tenths,
                "13.01",
                "above the top of rod A, which is 13 ft long",
            ),
            (&tenths, "542", "above the top"),
            (&tenths, "99999999999999999999", "above the top"),
            (&tenths, "abc", "“abc” is not a reading of rod A"),
            (&tenths, "7-10", "type it like 5.42"),
            (&tenths, "5 1/2", "type it like 5.42"),
            (&tenths, "5.4.2", "type it like 5.42"),
            (&inches, "7-13", "has 13 inches"),
            (&inches, "7-12", "has 12 inches"),
            (&inches, "7.85", "type it like 7-10 3/8"),
            (&inches, "7", "type it like 7-10 3/8"),
            (&inches, "7-1/8", "type it like 7-10 3/8"),
            (&inches, "7 ft -10 in", "type it like 7-10 3/8"),
            (&inches, "7 -10", "type it like 7-10 3/8"),
            (&inches, "7 ft", "type it like 7-10 3/8"),
            (&inches, "7-10 9/8", "type it like 7-10 3/8"),
            (&inches, "99999999999-1", "type it like"),
        ] {
            let error = rod.read(text).unwrap_err().to_string();
            assert!(error.contains(says), "{text}: {error}");
        }
    }
}
