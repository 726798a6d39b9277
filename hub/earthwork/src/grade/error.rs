//! What is wrong with a grade, or with a place on it, and what to do.

use words::{Fixed, Text};

use crate::alignment::show_station;
use crate::length::Length;

/// Why a grade can't be used, or does not reach a place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum GradeError {
    /// Fewer than two corners.
    TooFewCorners {
        /// As given.
        corners: usize,
    },
    /// Corners out of order.
    CornerOrder {
        /// As given.
        station: Length,
    },
    /// A curve that does not fit.
    CurveDoesNotFit {
        /// Of its point of intersection.
        station: Length,
        /// As given.
        length: Length,
    },
    /// A step that is past an end, out of order or within a curve.
    StepMisplaced {
        /// As given.
        station: Length,
    },
    /// Before the start or past the end.
    PastEnd {
        /// Asked for.
        station: Length,
        /// By how much.
        by: Length,
        /// The first station.
        from: Length,
        /// The last station.
        to: Length,
    },
    /// A pipe that runs uphill.
    Uphill {
        /// The reach's upper end by flow.
        from: Length,
        /// The reach's lower end by flow.
        to: Length,
        /// By how much.
        by: Length,
    },
    /// A size below zero.
    NegativeSize {
        /// Which size, in English.
        what: Fixed,
        /// As given.
        value: Length,
    },
    /// Ground that rises as steeply as the face, or steeper.
    NeverDaylights {
        /// Feet per foot.
        rise: String,
        /// Horizontal to one vertical.
        slope: String,
    },
    /// A face almost as flat as the ground.
    AlmostParallel {
        /// Feet per foot.
        rise: String,
        /// Horizontal to one vertical.
        slope: String,
    },
    /// A number that is not one, or has no sense here.
    NotANumber {
        /// Which, in English.
        what: Fixed,
        /// As given.
        value: String,
    },
    /// A face without parts.
    EmptyFace,
    /// Outside the face.
    BesideFace {
        /// In front of the toe.
        before: bool,
        /// By how much.
        by: Length,
        /// From toe to crest, level.
        width: Length,
    },
    /// No plane to fold.
    NoPlane,
}

impl GradeError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::TooFewCorners { corners } => words::grade::too_few_corners(corners),
            Self::CornerOrder { station } => words::grade::corner_order(&show_station(*station)),
            Self::CurveDoesNotFit { station, length } => {
                words::grade::curve_does_not_fit(&show_station(*station), length)
            }
            Self::StepMisplaced { station } => {
                words::grade::step_misplaced(&show_station(*station))
            }
            Self::PastEnd {
                station,
                by,
                from,
                to,
            } => words::grade::past_end(
                &show_station(*station),
                by,
                &show_station(*from),
                &show_station(*to),
            ),
            Self::Uphill { from, to, by } => {
                words::grade::uphill(&show_station(*from), &show_station(*to), by)
            }
            Self::NegativeSize { what, value } => words::grade::negative_size(what, value),
            Self::NeverDaylights { rise, slope } => words::grade::never_daylights(rise, slope),
            Self::AlmostParallel { rise, slope } => words::grade::almost_parallel(slope, rise),
            Self::NotANumber { what, value } => words::grade::not_a_number(what, value),
            Self::EmptyFace => words::grade::empty_face().into(),
            Self::BesideFace { before, by, width } => words::grade::beside_face(by, before, width),
            Self::NoPlane => words::grade::no_plane().into(),
        }
    }
}

words::error!(GradeError);
