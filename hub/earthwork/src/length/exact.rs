//! How long is it, exactly: a length as a whole number of tenth-micrometres, and how people read it.
//!
//! 0.001 ft, 1 mm and 1/16 in are all whole counts, so a comparison at the very edge of a tolerance never
//! depends on a rounding. The foot is the international foot, 0.3048 m exactly (NIST Special Publication 811,
//! appendix B.8). Rounding happens once, when a person reads the value.

use std::fmt;
use std::iter::Sum;
use std::ops::{Add, AddAssign, Mul, Neg, Sub, SubAssign};

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::error::LengthError;

/// Counts in a foot.
pub(crate) const FOOT: i64 = 3_048_000;
/// Counts in an inch.
pub(crate) const INCH: i64 = 254_000;
/// Counts in a metre.
pub(crate) const METRE: i64 = 10_000_000;
/// The longest length that is taken from outside: 1e8 ft. Sums of thirty thousand of them still fit.
pub(crate) const LONGEST: i64 = FOOT * 100_000_000;

/// The sign before what is below zero, on paper, pages and in sentences: U+2212, which no line breaks at and which is as wide as a
/// plus. Tables and files for programs have a hyphen.
pub const MINUS: &str = "−";

/// A length or an elevation: a whole number of tenth-micrometres (1e-7 m).
///
/// Sums beyond the end of the scale stay at its end; nothing from outside comes near it.
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
#[serde(try_from = "i64", into = "i64")]
pub struct Length(i64);

impl Length {
    /// No length.
    pub const ZERO: Length = Length(0);

    /// From counts of a tenth of a micrometre.
    pub const fn from_tenth_micrometres(counts: i64) -> Length {
        Length(counts)
    }

    /// In counts of a tenth of a micrometre.
    pub const fn tenth_micrometres(self) -> i64 {
        self.0
    }

    /// From hundredths of a foot; exact.
    pub const fn from_hundredths_of_a_foot(hundredths: i64) -> Length {
        Length(hundredths.saturating_mul(FOOT / 100))
    }

    /// From thousandths of a foot; exact.
    pub const fn from_thousandths_of_a_foot(thousandths: i64) -> Length {
        Length(thousandths.saturating_mul(FOOT / 1000))
    }

    /// From sixteenths of an inch; exact.
    pub const fn from_sixteenths_of_an_inch(sixteenths: i64) -> Length {
        Length(sixteenths.saturating_mul(INCH / 16))
    }

    /// From millimetres; exact.
    pub const fn from_millimetres(millimetres: i64) -> Length {
        Length(millimetres.saturating_mul(METRE / 1000))
    }

    /// From feet, to the nearest count.
    ///
    /// # Errors
    /// When the number is not finite or beyond 100,000,000 ft either way.
    pub fn from_feet(feet: f64) -> Result<Length, LengthError> {
        if !feet.is_finite() {
            return Err(LengthError::NotFinite);
        }
        let counts = (feet * FOOT as f64).round();
        if counts.abs() > LONGEST as f64 {
            return Err(LengthError::TooLong {
                text: format!("{feet} ft"),
            });
        }
        Ok(Length(whole(counts)))
    }

    /// In feet, as near as an `f64` comes.
    pub fn feet(self) -> f64 {
        self.0 as f64 / FOOT as f64
    }

    /// In metres, as near as an `f64` comes.
    pub fn metres(self) -> f64 {
        self.0 as f64 / METRE as f64
    }

    /// Without its sign.
    #[must_use]
    pub const fn abs(self) -> Length {
        Length(self.0.saturating_abs())
    }

    /// As a person reads it: rounded once, half away from zero, a sign only when what is shown is negative, and then [`MINUS`].
    ///
    /// ```
    /// use earthwork::length::{Form, parse};
    ///
    /// # fn main() -> Result<(), Box<dyn std::error::Error>> {
    /// let found = parse("0.30 ft")?;
    /// assert_eq!(found.show(Form::DecimalFeet { places: 2 }), "0.30 ft");
    /// assert_eq!(found.show(Form::Inches { parts: 8 }), "3 5/8 in");
    /// assert_eq!(found.show(Form::Millimetres), "91 mm");
    /// # Ok(())
    /// # }
    /// ```
    pub fn show(self, form: Form) -> String {
        match self.plain(form).strip_prefix('-') {
            Some(size) => format!("{MINUS}{size}"),
            None => self.plain(form),
        }
    }

    /// The same as programs read it: a hyphen stands for the minus.
    pub fn plain(self, form: Form) -> String {
        match form {
            Form::DecimalFeet { places } => self.decimal(FOOT, places, "ft"),
            Form::Metres { places } => self.decimal(METRE, places, "m"),
            Form::Millimetres => self.decimal(METRE / 1000, 0, "mm"),
            Form::Inches { parts } => {
                let (sign, inches) = self.inches(parts);
                format!("{sign}{} in", mixed(inches, parts))
            }
            Form::FeetInches { parts } => {
                let (sign, all) = self.inches(parts);
                let foot = 12 * u64::from(parts.max(1));
                format!("{sign}{} ft {} in", all / foot, mixed(all % foot, parts))
            }
        }
    }

    fn decimal(self, unit: i64, places: u8, name: &str) -> String {
        let places = usize::from(places.min(9));
        let scale = 10_i128.pow(u32::try_from(places).unwrap_or(9));
        let shown = nearest(i128::from(self.0) * scale, i128::from(unit));
        let sign = if shown < 0 { "-" } else { "" };
        let shown = shown.unsigned_abs();
        let scale = scale.unsigned_abs();
        if places == 0 {
            return format!("{sign}{shown} {name}");
        }
        format!("{sign}{}.{:0places$} {name}", shown / scale, shown % scale)
    }

    /// The sign and the nearest whole number of parts of an inch.
    fn inches(self, parts: u8) -> (&'static str, u64) {
        let counts = i128::from(self.0) * i128::from(parts.max(1));
        let all = nearest(counts, i128::from(INCH));
        let sign = if all < 0 { "-" } else { "" };
        (sign, u64::try_from(all.unsigned_abs()).unwrap_or(u64::MAX))
    }
}

/// A number without a unit as a person reads it: so many places, and [`MINUS`] before what is shown below zero.
///
/// ```
/// use earthwork::length::shown_number;
///
/// assert_eq!(shown_number(-0.5, 2), "−0.50");
/// assert_eq!(shown_number(-0.001, 2), "0.00");
/// ```
pub fn shown_number(value: f64, places: usize) -> String {
    let size = format!("{:.places$}", value.abs());
    let nothing = size.bytes().all(|byte| matches!(byte, b'0' | b'.'));
    if value < 0.0 && !nothing {
        format!("{MINUS}{size}")
    } else {
        size
    }
}

/// How a length is written for a reader.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Form {
    /// `98.50 ft`, with so many places (nine at most).
    DecimalFeet {
        /// Places after the point.
        places: u8,
    },
    /// `5 ft 4 3/8 in`.
    FeetInches {
        /// Parts of an inch: 8 or 16.
        parts: u8,
    },
    /// `64 3/8 in`.
    Inches {
        /// Parts of an inch: 8 or 16.
        parts: u8,
    },
    /// `1.234 m`, with so many places (nine at most).
    Metres {
        /// Places after the point.
        places: u8,
    },
    /// `104 mm`.
    Millimetres,
}

/// The whole number nearest to `value`, which the caller has bounded.
#[expect(
    clippy::cast_possible_truncation,
    reason = "a cast from f64 to i64 stops at the ends of i64, and callers round first"
)]
pub(crate) fn whole(value: f64) -> i64 {
    value as i64
}

/// `over / under` to the nearest whole number, half away from zero; `under` is above zero.
pub(crate) fn nearest(over: i128, under: i128) -> i128 {
    let half = under / 2;
    if over < 0 {
        (over - half) / under
    } else {
        (over + half) / under
    }
}

/// `4 3/8`, with the fraction in its lowest terms and left out when it is nothing.
pub(crate) fn mixed(all: u64, parts: u8) -> String {
    let parts = u64::from(parts.max(1));
    let (whole, mut over, mut under) = (all / parts, all % parts, parts);
    if over == 0 {
        return whole.to_string();
    }
    while over.is_multiple_of(2) && under.is_multiple_of(2) {
        over /= 2;
        under /= 2;
    }
    if whole == 0 {
        format!("{over}/{under}")
    } else {
        format!("{whole} {over}/{under}")
    }
}

impl TryFrom<i64> for Length {
    type Error = LengthError;

    fn try_from(counts: i64) -> Result<Length, LengthError> {
        if counts.unsigned_abs() > LONGEST.unsigned_abs() {
            return Err(LengthError::TooLong {
                text: format!("{counts} tenth-micrometres"),
            });
        }
        Ok(Length(counts))
    }
}

impl From<Length> for i64 {
    fn from(length: Length) -> i64 {
        length.0
    }
}

impl Add for Length {
    type Output = Length;

    fn add(self, other: Length) -> Length {
        Length(self.0.saturating_add(other.0))
    }
}

impl Sub for Length {
    type Output = Length;

    fn sub(self, other: Length) -> Length {
        Length(self.0.saturating_sub(other.0))
    }
}

impl Neg for Length {
    type Output = Length;

    fn neg(self) -> Length {
        Length(self.0.saturating_neg())
    }
}

impl Mul<i64> for Length {
    type Output = Length;

    fn mul(self, times: i64) -> Length {
        Length(self.0.saturating_mul(times))
    }
}

impl AddAssign for Length {
    fn add_assign(&mut self, other: Length) {
        *self = *self + other;
    }
}

impl SubAssign for Length {
    fn sub_assign(&mut self, other: Length) {
        *self = *self - other;
    }
}

impl Sum for Length {
    fn sum<I: Iterator<Item = Length>>(lengths: I) -> Length {
        lengths.fold(Length::ZERO, Add::add)
    }
}

/// Decimal feet with as many places as it takes, four at most: `98.5 ft`.
impl fmt::Display for Length {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let shown = self.show(Form::DecimalFeet { places: 4 });
        let digits = shown
            .trim_end_matches(" ft")
            .trim_end_matches('0')
            .trim_end_matches('.');
        let digits = if digits.is_empty() { "0" } else { digits };
        write!(f, "{digits} ft")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn feet(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    /// NIST Special Publication 811, appendix B.8: 1 ft = 0.3048 m and 1 in = 25.4 mm, exactly.
    #[test]
    fn a_foot_is_exactly_304_8_millimetres() {
        assert_eq!(feet(100).tenth_micrometres(), 3_048_000);
        assert_eq!(
            Length::from_sixteenths_of_an_inch(16).tenth_micrometres(),
            254_000
        );
        assert_eq!(Length::from_sixteenths_of_an_inch(192), feet(100));
        assert_eq!(Length::from_millimetres(3048), feet(1000));
        assert_eq!(Length::from_thousandths_of_a_foot(10), feet(1));
    }

    #[test]
    fn lengths_show_as_people_read_them() {
        let cases = [
            (feet(9850), Form::DecimalFeet { places: 2 }, "98.50 ft"),
            (feet(-4), Form::DecimalFeet { places: 2 }, "−0.04 ft"),
            (feet(-4), Form::DecimalFeet { places: 0 }, "0 ft"),
            (feet(34), Form::Inches { parts: 8 }, "4 1/8 in"),
            (feet(34), Form::Millimetres, "104 mm"),
            (
                Length::from_sixteenths_of_an_inch(1030),
                Form::FeetInches { parts: 8 },
                "5 ft 4 3/8 in",
            ),
            (
                Length::from_sixteenths_of_an_inch(1031),
                Form::FeetInches { parts: 16 },
                "5 ft 4 7/16 in",
            ),
            (
                Length::from_sixteenths_of_an_inch(191),
                Form::FeetInches { parts: 8 },
                "1 ft 0 in",
            ),
            (
                Length::from_sixteenths_of_an_inch(-8),
                Form::FeetInches { parts: 8 },
                "−0 ft 1/2 in",
            ),
            (
                Length::from_millimetres(1234),
                Form::Metres { places: 3 },
                "1.234 m",
            ),
        ];
        for (length, form, text) in cases {
            assert_eq!(length.show(form), text);
        }
    }

    #[test]
    fn a_half_rounds_away_from_zero() {
        let half = Length::from_thousandths_of_a_foot(5);
        assert_eq!(half.show(Form::DecimalFeet { places: 2 }), "0.01 ft");
        assert_eq!((-half).show(Form::DecimalFeet { places: 2 }), "−0.01 ft");
        assert_eq!((-half).plain(Form::DecimalFeet { places: 2 }), "-0.01 ft");
    }

    #[test]
    fn display_keeps_only_the_places_it_needs() {
        assert_eq!(feet(9850).to_string(), "98.5 ft");
        assert_eq!(feet(10_000).to_string(), "100 ft");
        assert_eq!(feet(0).to_string(), "0 ft");
        assert_eq!(feet(-2).to_string(), "−0.02 ft");
        assert_eq!(
            Length::from_thousandths_of_a_foot(1).to_string(),
            "0.001 ft"
        );
    }

    #[test]
    fn what_is_not_a_length_is_refused() {
        assert_eq!(Length::from_feet(f64::NAN), Err(LengthError::NotFinite));
        assert_eq!(
            Length::from_feet(f64::NEG_INFINITY),
            Err(LengthError::NotFinite)
        );
        assert!(Length::from_feet(1.1e8).is_err());
        assert_eq!(Length::from_feet(-0.04), Ok(feet(-4)));
        assert!(Length::try_from(i64::MAX).is_err());
        assert!(Length::try_from(i64::MIN).is_err());
    }
}
