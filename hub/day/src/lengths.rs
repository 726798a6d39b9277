//! Lengths as sentences say them: feet with two places.

use earthwork::length::{Form, Length};

/// Feet with two places.
pub fn feet(length: Length) -> String {
    length.show(Form::DecimalFeet { places: 2 })
}

/// The same, with a sign before what is above zero too.
pub fn signed(length: Length) -> String {
    if length > Length::ZERO {
        format!("+{}", feet(length))
    } else {
        feet(length)
    }
}
