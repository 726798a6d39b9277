//! How is a station written: `12+34.56` is 1234.56 ft, in hundreds of feet and the rest.

use words::Text;

use super::AlignmentError;
use crate::length::{FOOT, Form, Length, LengthError, MINUS, parse};

/// Reads a station: hundreds of feet, `+`, and feet below a hundred with at most seven decimals. A minus stands
/// before the whole station. Exact (common practice of station numbering in feet).
///
/// # Errors
/// When it is not written so.
pub fn parse_station(text: &str) -> Result<Length, AlignmentError> {
    let wrong = || AlignmentError::NotAStation {
        text: text.to_owned(),
    };
    let trimmed = text.trim();
    let (back, rest) = match trimmed.strip_prefix(['-', '−']) {
        Some(rest) => (true, rest),
        None => (false, trimmed),
    };
    let (hundreds, feet) = rest.split_once('+').ok_or_else(wrong)?;
    let digits = |text: &str| !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
    let (before, after) = feet.split_once(['.', ',']).unwrap_or((feet, "0"));
    if !digits(hundreds)
        || hundreds.len() > 6
        || before.len() != 2
        || !digits(before)
        || !digits(after)
    {
        return Err(wrong());
    }
    let hundreds: i64 = hundreds
        .parse()
        .map_err(|_parse: std::num::ParseIntError| wrong())?;
    let feet = parse(&format!("{before}.{after} ft")).map_err(|_parse| wrong())?;
    let station = Length::from_tenth_micrometres(FOOT * 100) * hundreds + feet;
    Ok(if back { -station } else { station })
}

/// Reads a place along a line as it is asked for everywhere: a station like `12+50`, or a length with its unit.
///
/// # Errors
/// When it is neither.
pub fn parse_along(text: &str) -> Result<Length, AlongError> {
    let trimmed = text.trim();
    if trimmed.strip_prefix('+').unwrap_or(trimmed).contains('+') {
        // Stations are in hundreds of feet whether or not somebody says so.
        let bare = trimmed.strip_suffix("ft").unwrap_or(trimmed);
        return Ok(parse_station(bare.trim_end())?);
    }
    Ok(parse(trimmed)?)
}

/// Why a text is no place along a line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum AlongError {
    /// Written like a station, but none.
    Station(AlignmentError),
    /// No length either.
    Length(LengthError),
}

impl AlongError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::Station(error) => error.text(),
            Self::Length(error) => error.text(),
        }
    }
}

words::error!(AlongError; Station(AlignmentError), Length(LengthError));

/// A station as people write it, to the hundredth of a foot: `12+34.56`.
pub fn show_station(station: Length) -> String {
    let shown = station.show(Form::DecimalFeet { places: 2 });
    let shown = shown.trim_end_matches(" ft");
    let (sign, shown) = match shown.strip_prefix(MINUS) {
        Some(rest) => (MINUS, rest),
        None => ("", shown),
    };
    let (whole, hundredths) = shown.split_once('.').unwrap_or((shown, "00"));
    let padded = format!("{whole:0>3}");
    let (hundreds, feet) = padded.split_at(padded.len() - 2);
    format!("{sign}{hundreds}+{feet}.{hundredths}")
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Common practice: station n+dd is n·100 + dd ft.
    #[test]
    fn stations_are_read_and_written_in_hundreds() {
        for (text, hundredths, shown) in [
            ("12+34.56", 123_456, "12+34.56"),
            ("0+00", 0, "0+00.00"),
            ("0+05.5", 550, "0+05.50"),
            ("0+05,5", 550, "0+05.50"),
            ("-0+50", -5000, "−0+50.00"),
            ("74+26.50", 742_650, "74+26.50"),
        ] {
            let station = Length::from_hundredths_of_a_foot(hundredths);
            assert_eq!(parse_station(text), Ok(station), "{text}");
            assert_eq!(show_station(station), shown);
        }
    }

    #[test]
    fn a_place_along_a_line_is_a_station_or_a_length() {
        let at = Length::from_hundredths_of_a_foot(125_000);
        for text in [
            "12+50",
            " 12+50.00 ",
            "12+50 ft",
            "1250 ft",
            "+1250 ft",
            "15000 in",
        ] {
            assert_eq!(parse_along(text), Ok(at), "{text}");
        }
        for text in ["12+5", "1250", "12+50 m", "", "1e308 ft"] {
            let error = parse_along(text).unwrap_err();
            assert!(!error.to_string().is_empty() && !error.text().spanish.is_empty());
        }
    }

    #[test]
    fn what_is_no_station_is_refused() {
        for text in [
            "",
            "12",
            "12+3",
            "12+345",
            "+12",
            "a+00",
            "1+-5",
            "1+00.",
            "1+00.5e1",
            "9999999+00",
        ] {
            let error = parse_station(text).unwrap_err();
            assert!(
                error.to_string().contains("such as 12+34.56"),
                "{text}: {error}"
            );
        }
    }
}
