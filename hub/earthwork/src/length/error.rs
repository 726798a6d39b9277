//! Why a text or a number is no length, and what to write instead.

use thiserror::Error;

/// Why a text or a number is not a length.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum LengthError {
    /// Nothing was written.
    #[error("No length was written. Write a number and its unit, such as 98.50 ft.")]
    Empty,
    /// A number without a unit.
    #[error("“{text}” has no unit. Write ft, in, mm or m after the number, such as 98.50 ft.")]
    NoUnit {
        /// What was written.
        text: String,
    },
    /// A unit that is not known here.
    #[error("“{text}”: the unit “{unit}” is not known here. Use ft, in, mm, cm or m.")]
    UnknownUnit {
        /// What was written.
        text: String,
        /// The part that should be a unit.
        unit: String,
    },
    /// Not a number where one should stand.
    #[error(
        "“{text}” can't be read as a length. Write it like 98.50 ft, 5 ft 4 3/8 in, 12 mm or 1.2 m."
    )]
    NotANumber {
        /// What was written.
        text: String,
    },
    /// A comma that may stand for thousands or for the decimal point.
    #[error("“{text}” can mean two lengths. Write {decimal} or {thousands}.")]
    Ambiguous {
        /// What was written.
        text: String,
        /// How to write it if the comma is the decimal mark.
        decimal: String,
        /// How to write it if the comma parts thousands.
        thousands: String,
    },
    /// Units that do not go together.
    #[error(
        "“{text}”: only whole feet followed by inches go together. Write it like 5 ft 4 3/8 in, or in one unit."
    )]
    Mixed {
        /// What was written.
        text: String,
    },
    /// A minus where a part of the length begins.
    #[error(
        "“{text}”: a minus stands before the whole length, not inside it. Write 5 ft 4 in, 5'-4\" or -5 ft 4 in."
    )]
    MinusInside {
        /// What was written.
        text: String,
    },
    /// Twelve inches or more after feet.
    #[error("“{text}”: after the feet come less than 12 inches. Check the feet, then the inches.")]
    InchesPastTwelve {
        /// What was written.
        text: String,
    },
    /// A fraction that is not one.
    #[error("“{text}”: the fraction must be less than one, with 64 parts at most, such as 3/8.")]
    Fraction {
        /// What was written.
        text: String,
    },
    /// More than the scale holds.
    #[error(
        "{text} is longer than any site: the limit is 100,000,000 ft. Check the unit and the digits."
    )]
    TooLong {
        /// What was written.
        text: String,
    },
    /// Not a number, or endless.
    #[error("The number is not finite, so it is no length. Check where it was computed.")]
    NotFinite,
}
