//! What is wrong with an alignment, or with a place beside it, and what to do.

use words::Text;

use super::show_station;
use crate::length::Length;

/// Why an alignment can't be used, or does not reach a place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum AlignmentError {
    /// Not `n+dd`.
    NotAStation {
        /// As written.
        text: String,
    },
    /// Nothing to go along.
    NoPieces,
    /// A piece that goes nowhere.
    NoLength {
        /// Counted from the start.
        number: usize,
    },
    /// An arc whose two ends are not equally far from its centre.
    RadiusDiffers {
        /// Counted from the start.
        number: usize,
        /// From the centre to the start.
        at_start: Length,
        /// From the centre to the end.
        at_end: Length,
    },
    /// Before the start or past the end.
    PastEnd {
        /// Before the start, and not past the end.
        before: bool,
        /// By how much, along the line.
        by: Length,
        /// The first station.
        from: Length,
        /// The last station.
        to: Length,
    },
    /// At the centre of an arc, as near to one station as to another.
    AtCentre,
    /// An offset that reaches past the centre of an arc.
    PastCentre {
        /// As given.
        offset: Length,
        /// Of the arc.
        radius: Length,
    },
}

impl AlignmentError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::NotAStation { text } => words::alignment::not_a_station(text),
            Self::NoPieces => words::alignment::no_pieces().into(),
            Self::NoLength { number } => words::alignment::no_length(number),
            Self::RadiusDiffers {
                number,
                at_start,
                at_end,
            } => words::alignment::radius_differs(number, at_start, at_end),
            Self::PastEnd {
                before,
                by,
                from,
                to,
            } => words::alignment::past_end(by, before, &show_station(*from), &show_station(*to)),
            Self::AtCentre => words::alignment::at_centre().into(),
            Self::PastCentre { offset, radius } => words::alignment::past_centre(offset, radius),
        }
    }
}

words::error!(AlignmentError);
