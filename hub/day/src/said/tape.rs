//! A tape as it is typed: a bare number is feet, as on the tape in the truck.

use earthwork::length::{self, Length};

use crate::refusal::Refusal;

/// Reads a tape.
pub(crate) fn typed(text: &str) -> Result<Length, Refusal> {
    let typed = text.trim();
    let bare = typed
        .chars()
        .all(|c| c.is_ascii_digit() || matches!(c, '.' | ','));
    let written = if bare {
        format!("{typed} ft")
    } else {
        typed.to_owned()
    };
    length::parse(&written).map_err(|error| Refusal::BadMark(error.text()))
}
