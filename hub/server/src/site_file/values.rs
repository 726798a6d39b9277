//! How one value of a site is written, so that reading it again gives the same.

use earthwork::length::{Form, Length, MINUS, parse};
use earthwork::point::Point;
use earthwork::target::KeptNet;
use serde::Serialize;

use super::written::Written;

/// How triangles are named, by their target or face: an export writes them to a file, a draft keeps those of the target itself.
pub(super) type Nets<'a> = &'a dyn Fn(&str, &KeptNet) -> Vec<(&'static str, Written)>;

/// A length as somebody would write it, exact: feet, else inches, else metres.
pub fn exact(length: Length) -> String {
    let feet = length.to_string().replace(MINUS, "-");
    let small = length.abs() < Length::from_hundredths_of_a_foot(200);
    let inches = if small {
        length.plain(Form::Inches { parts: 64 })
    } else {
        length.plain(Form::FeetInches { parts: 64 })
    };
    let metres = length.plain(Form::Metres { places: 7 });
    [feet, inches]
        .into_iter()
        .find(|text| parse(text) == Ok(length))
        .unwrap_or(metres)
}

pub(super) fn text(text: &str) -> Written {
    Written::Text(text.to_owned())
}

pub(super) fn length(value: impl Into<Option<Length>>) -> Option<Written> {
    value.into().map(|value| Written::Text(exact(value)))
}

/// A length, unless it is zero, which is what is read when nothing is written.
pub(super) fn unless_zero(value: Length) -> Option<Written> {
    (value != Length::ZERO).then(|| Written::Text(exact(value)))
}

pub(super) fn point(at: Point) -> Written {
    Written::List(vec![text(&exact(at.x)), text(&exact(at.y))])
}

pub(super) fn points(corners: &[Point]) -> Written {
    Written::List(corners.iter().copied().map(point).collect())
}

/// A word of a fixed list, as its own name is written.
pub(super) fn word(of: impl Serialize) -> Option<Written> {
    match serde_json::to_value(of) {
        Ok(serde_json::Value::String(word)) => Some(Written::Text(word)),
        _ => None,
    }
}

pub(super) fn number(value: impl Into<Option<f64>>) -> Option<Written> {
    value.into().map(|value| Written::Text(value.to_string()))
}
