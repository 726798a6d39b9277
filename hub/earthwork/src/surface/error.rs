//! What is wrong with a surface, or with a place on it, and what to do.

use words::Text;

use crate::length::Length;
use crate::point::Point;

/// Why a surface can't be used, or does not reach a place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SurfaceError {
    /// No area.
    NoTriangles,
    /// Too large to be computed exactly.
    TooWide {
        /// East, north or up.
        span: Length,
    },
    /// One place, two elevations.
    TwoElevations {
        /// Where.
        at: Point,
        /// One of them.
        one: Length,
        /// The other.
        other: Length,
    },
    /// A number that names no point.
    NoSuchPoint {
        /// As named.
        number: usize,
        /// How many there are.
        points: usize,
    },
    /// Two breaklines that cross.
    LinesCross {
        /// Its start.
        from: Point,
        /// Its end.
        to: Point,
    },
    /// A boundary or a hole of less than three points.
    TooFewCorners {
        /// As given.
        corners: usize,
    },
    /// A boundary or a hole that crosses itself.
    RingCrosses,
    /// A triangle without area.
    NoArea {
        /// Counted from 0.
        number: usize,
    },
    /// Triangles that lie over each other.
    Overlap {
        /// One end of an edge that they share.
        from: Point,
        /// The other end.
        to: Point,
    },
    /// So many edges near each other that no sound surface has them.
    Tangled,
    /// Outside, or in a hole.
    Outside {
        /// To the nearest edge.
        by: Length,
    },
}

impl SurfaceError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::NoTriangles => words::surface::no_triangles().into(),
            Self::TooWide { span } => words::surface::too_wide(span),
            Self::TwoElevations { at, one, other } => {
                words::surface::two_elevations(&at.x, &at.y, one, other)
            }
            Self::NoSuchPoint { number, points } => words::surface::no_such_point(number, points),
            Self::LinesCross { from, to } => {
                words::surface::lines_cross(&from.x, &from.y, &to.x, &to.y)
            }
            Self::TooFewCorners { corners } => words::surface::too_few_corners(corners),
            Self::RingCrosses => words::surface::ring_crosses().into(),
            Self::NoArea { number } => words::surface::no_area(number),
            Self::Overlap { from, to } => words::surface::overlap(&from.x, &from.y, &to.x, &to.y),
            Self::Tangled => words::surface::tangled().into(),
            Self::Outside { by } => words::surface::outside(by),
        }
    }
}

words::error!(SurfaceError);
