//! What does the text say: lengths as people type them, always with their unit.
//!
//! A text that could mean two lengths is refused with both spelled out, never guessed at.

use super::error::LengthError;
use super::exact::{FOOT, INCH, LONGEST, Length, METRE, nearest};

/// No length takes so many bytes to write.
const LONGEST_TEXT: usize = 200;

/// A text as an error repeats it: what is endless is cut short.
pub(crate) fn short(text: &str) -> String {
    match text.char_indices().nth(60) {
        Some((end, _)) => format!("{}…", &text[..end]),
        None => text.to_owned(),
    }
}

/// Reads a length as people write it, with its unit: `98.50 ft`, `98,50 ft`, `5 ft 4 3/8 in`, `5'-4 3/8"`,
/// `3 1/2 in`, `12 mm`, `1.2 m`, `-0.04 ft`. Decimals and fractions are taken exactly; what falls between
/// two counts goes to the nearest.
///
/// ```
/// use earthwork::length::parse;
///
/// # fn main() -> Result<(), Box<dyn std::error::Error>> {
/// assert_eq!(parse("5'-4 3/8\"")?, parse("64.375 in")?);
/// assert_eq!(parse("1 ft")?, parse("304.8 mm")?);
/// assert!(parse("98.50").is_err(), "no unit, no length");
/// # Ok(())
/// # }
/// ```
///
/// # Errors
/// When the unit is missing, the text is not a length, or could be two.
pub fn parse(text: &str) -> Result<Length, LengthError> {
    if text.len() > LONGEST_TEXT {
        return Err(LengthError::NotANumber { text: short(text) });
    }
    let plain = plain(text);
    let body = plain.trim();
    if body.is_empty() {
        return Err(LengthError::Empty);
    }
    let (negative, body) = match body.strip_prefix('-') {
        Some(rest) => (true, rest),
        None => (false, body.strip_prefix('+').unwrap_or(body)),
    };
    let mut scan = Scan {
        whole: text,
        rest: body,
    };
    let (first, unit) = scan.quantity()?;
    let counts = if scan.rest.trim().is_empty() {
        first.counts(unit)
    } else {
        feet_and_inches(&mut scan, &first, unit)?
    };
    let too_long = || LengthError::TooLong {
        text: format!("“{}”", text.trim()),
    };
    let counts = i64::try_from(counts).map_err(|_over: std::num::TryFromIntError| too_long())?;
    if counts > LONGEST {
        return Err(too_long());
    }
    Ok(Length::from_tenth_micrometres(if negative {
        -counts
    } else {
        counts
    }))
}

fn feet_and_inches(scan: &mut Scan<'_>, feet: &Number, unit: i64) -> Result<i128, LengthError> {
    let text = scan.whole.to_owned();
    // 5'-4" is feet and inches; in 5 ft -4 in the stroke may as well be a minus.
    if let Some(rest) = scan.rest.strip_prefix('-') {
        scan.rest = rest;
    } else if scan.rest.trim_start().starts_with('-') {
        return Err(LengthError::MinusInside { text });
    }
    let (inches, second) = scan.quantity()?;
    if unit != FOOT || second != INCH || feet.under != 1 || !scan.rest.trim().is_empty() {
        return Err(LengthError::Mixed { text });
    }
    if inches.over >= 12 * inches.under {
        return Err(LengthError::InchesPastTwelve { text });
    }
    Ok(feet.counts(FOOT) + inches.counts(INCH))
}

/// The same text in plain characters: one kind of minus, prime, quote, space and fraction.
pub(crate) fn plain(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    for character in text.chars() {
        match character {
            '−' | '–' | '‐' | '‑' => plain.push('-'),
            '′' | '’' | '‘' | 'ʹ' | '´' => plain.push('\''),
            '″' | '”' | '“' | 'ʺ' => plain.push('"'),
            '⁄' => plain.push('/'),
            '½' => plain.push_str(" 1/2"),
            '¼' => plain.push_str(" 1/4"),
            '¾' => plain.push_str(" 3/4"),
            '⅛' => plain.push_str(" 1/8"),
            '⅜' => plain.push_str(" 3/8"),
            '⅝' => plain.push_str(" 5/8"),
            '⅞' => plain.push_str(" 7/8"),
            other if other.is_whitespace() => plain.push(' '),
            other => plain.extend(other.to_lowercase()),
        }
    }
    plain.replace("''", "\"")
}

/// A number as written, never rounded: `over / under`, not negative.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Number {
    pub(crate) over: i128,
    pub(crate) under: i128,
    /// Digits after the decimal mark.
    pub(crate) places: usize,
}

impl Number {
    /// So many units, in counts, to the nearest.
    pub(crate) fn counts(&self, unit: i64) -> i128 {
        nearest(self.over * i128::from(unit), self.under)
    }
}

/// Reads numbers and units from the front of a text that `plain` has cleaned.
pub(crate) struct Scan<'a> {
    /// The whole text as typed, for messages.
    pub(crate) whole: &'a str,
    /// What is left to read.
    pub(crate) rest: &'a str,
}

impl<'a> Scan<'a> {
    fn quantity(&mut self) -> Result<(Number, i64), LengthError> {
        let start = self.rest.trim_start();
        let number = self.number()?;
        let written = &start[..start.len() - self.rest.len()];
        let unit = self.unit()?;
        self.refuse_thousands(written)?;
        Ok((number, unit))
    }

    /// `5`, `5.42`, `5,42`, `3/8` or `4 3/8`.
    pub(crate) fn number(&mut self) -> Result<Number, LengthError> {
        self.rest = self.rest.trim_start();
        let digits = self.take(|c| c.is_ascii_digit());
        if digits.is_empty() && !self.rest.starts_with('.') {
            return Err(self.not_a_number());
        }
        if self.rest.starts_with(['.', ',']) {
            self.rest = &self.rest[1..];
            let decimals = self.take(|c| c.is_ascii_digit());
            if decimals.is_empty() || self.rest.starts_with(['.', ',']) {
                return Err(self.not_a_number());
            }
            return self.decimal(digits, decimals);
        }
        let first = self.digits(digits)?;
        if let Some(after) = self.rest.strip_prefix('/') {
            return self.fraction(0, first, after);
        }
        // 4-3/8 and 4 3/8; in 4 -3/8 the stroke may as well be a minus.
        let ahead = match self.rest.strip_prefix('-') {
            Some(rest) => rest,
            None => self.rest.trim_start_matches(' '),
        };
        if ahead.starts_with('-') {
            return Err(LengthError::MinusInside {
                text: self.whole.to_owned(),
            });
        }
        let over =
            &ahead[..ahead.len() - ahead.trim_start_matches(|c: char| c.is_ascii_digit()).len()];
        if !over.is_empty()
            && ahead.len() < self.rest.len()
            && let Some(after) = ahead[over.len()..].strip_prefix('/')
        {
            let over = self.digits(over)?;
            return self.fraction(first, over, after);
        }
        Ok(Number {
            over: first,
            under: 1,
            places: 0,
        })
    }

    fn decimal(&self, digits: &str, decimals: &str) -> Result<Number, LengthError> {
        let whole = if digits.is_empty() {
            0
        } else {
            self.digits(digits)?
        };
        let part = self.digits(decimals)?;
        let under = 10_i128.pow(u32::try_from(decimals.len()).unwrap_or(0));
        Ok(Number {
            over: whole * under + part,
            under,
            places: decimals.len(),
        })
    }

    fn fraction(&mut self, whole: i128, over: i128, after: &'a str) -> Result<Number, LengthError> {
        let under = after.len() - after.trim_start_matches(|c: char| c.is_ascii_digit()).len();
        let parts = self.digits(&after[..under])?;
        if !(2..=64).contains(&parts) || over >= parts {
            return Err(LengthError::Fraction {
                text: self.whole.to_owned(),
            });
        }
        self.rest = &self.rest[self.rest.len() - (after.len() - under)..];
        Ok(Number {
            over: whole * parts + over,
            under: parts,
            places: 0,
        })
    }

    fn unit(&mut self) -> Result<i64, LengthError> {
        self.rest = self.rest.trim_start();
        let name = if self.rest.starts_with(['\'', '"']) {
            let (mark, rest) = self.rest.split_at(1);
            self.rest = rest;
            mark
        } else {
            let name = self.take(char::is_alphabetic);
            // "in." is how some write it.
            self.rest = self.rest.strip_prefix('.').unwrap_or(self.rest);
            name
        };
        let text = self.whole.trim().to_owned();
        match name {
            "ft" | "foot" | "feet" | "'" => Ok(FOOT),
            "in" | "inch" | "inches" | "\"" => Ok(INCH),
            "mm" => Ok(METRE / 1000),
            "cm" => Ok(METRE / 100),
            "m" | "metre" | "metres" | "meter" | "meters" => Ok(METRE),
            "" if self.rest.is_empty() => Err(LengthError::NoUnit { text }),
            "" => Err(LengthError::NotANumber { text }),
            unit => Err(LengthError::UnknownUnit {
                text,
                unit: unit.to_owned(),
            }),
        }
    }

    /// `1,234 ft` may be a thousand feet or little more than one.
    fn refuse_thousands(&self, written: &str) -> Result<(), LengthError> {
        let Some((before, after)) = written.trim().split_once(',') else {
            return Ok(());
        };
        let grouped =
            after.len() == 3 && (1..=3).contains(&before.len()) && !before.starts_with('0');
        if !grouped {
            return Ok(());
        }
        let unit = self
            .whole
            .trim()
            .trim_start_matches(|c: char| !c.is_alphabetic() && c != '\'' && c != '"');
        Err(LengthError::Ambiguous {
            text: self.whole.trim().to_owned(),
            decimal: format!("{before}.{after} {unit}"),
            thousands: format!("{before}{after} {unit}"),
        })
    }

    fn digits(&self, digits: &str) -> Result<i128, LengthError> {
        if digits.is_empty() {
            return Err(self.not_a_number());
        }
        // Twelve digits hold the longest length to a count; more would overflow the exact sums.
        if digits.len() > 12 {
            return Err(LengthError::TooLong {
                text: format!("“{}”", self.whole.trim()),
            });
        }
        digits
            .parse()
            .map_err(|_parse: std::num::ParseIntError| self.not_a_number())
    }

    fn take(&mut self, wanted: impl Fn(char) -> bool) -> &'a str {
        let end = self.rest.find(|c| !wanted(c)).unwrap_or(self.rest.len());
        let (taken, rest) = self.rest.split_at(end);
        self.rest = rest;
        taken
    }

    fn not_a_number(&self) -> LengthError {
        LengthError::NotANumber {
            text: self.whole.trim().to_owned(),
        }
    }
}

#[cfg(test)]
mod tests;
