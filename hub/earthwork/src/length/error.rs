//! Why a text or a number is no length, and what to write instead.

use words::Text;

/// Why a text or a number is not a length.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LengthError {
    /// Nothing was written.
    Empty,
    /// A number without a unit.
    NoUnit {
        /// What was written.
        text: String,
    },
    /// A unit that is not known here.
    UnknownUnit {
        /// What was written.
        text: String,
        /// The part that should be a unit.
        unit: String,
    },
    /// Not a number where one should stand.
    NotANumber {
        /// What was written.
        text: String,
    },
    /// A comma that may stand for thousands or for the decimal point.
    Ambiguous {
        /// What was written.
        text: String,
        /// How to write it if the comma is the decimal mark.
        decimal: String,
        /// How to write it if the comma parts thousands.
        thousands: String,
    },
    /// Units that do not go together.
    Mixed {
        /// What was written.
        text: String,
    },
    /// A minus where a part of the length begins.
    MinusInside {
        /// What was written.
        text: String,
    },
    /// Twelve inches or more after feet.
    InchesPastTwelve {
        /// What was written.
        text: String,
    },
    /// A fraction that is not one.
    Fraction {
        /// What was written.
        text: String,
    },
    /// More than the scale holds.
    TooLong {
        /// What was written.
        text: String,
    },
    /// Not a number, or endless.
    NotFinite,
}

impl LengthError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::Empty => words::length::empty().into(),
            Self::NoUnit { text } => words::length::no_unit(text),
            Self::UnknownUnit { text, unit } => words::length::unknown_unit(text, unit),
            Self::NotANumber { text } => words::length::not_a_number(text),
            Self::Ambiguous {
                text,
                decimal,
                thousands,
            } => words::length::ambiguous(text, decimal, thousands),
            Self::Mixed { text } => words::length::mixed(text),
            Self::MinusInside { text } => words::length::minus_inside(text),
            Self::InchesPastTwelve { text } => words::length::inches_past_twelve(text),
            Self::Fraction { text } => words::length::fraction(text),
            Self::TooLong { text } => words::length::too_long(text),
            Self::NotFinite => words::length::not_finite().into(),
        }
    }
}

words::error!(LengthError);
