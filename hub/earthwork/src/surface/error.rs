//! What is wrong with a surface, or with a place on it, and what to do.

use thiserror::Error;

use crate::length::Length;
use crate::point::Point;

/// Why a surface can't be used, or does not reach a place.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum SurfaceError {
    /// No area.
    #[error("The surface has no triangle. Give at least three points that do not lie in one line.")]
    NoTriangles,
    /// Too large to be computed exactly.
    #[error(
        "The surface spans {span}, but at most 100,000 ft can be worked exactly. Check the unit and the points far off."
    )]
    TooWide {
        /// East, north or up.
        span: Length,
    },
    /// One place, two elevations.
    #[error("At east {}, north {} the surface has two elevations, {one} and {other}. Remove one, or move the foot of a vertical face out by 0.01 ft.", .at.x, .at.y)]
    TwoElevations {
        /// Where.
        at: Point,
        /// One of them.
        one: Length,
        /// The other.
        other: Length,
    },
    /// A number that names no point.
    #[error(
        "Point number {number} is named, but there are {points} points, counted from 0. Check the list."
    )]
    NoSuchPoint {
        /// As named.
        number: usize,
        /// How many there are.
        points: usize,
    },
    /// Two breaklines that cross.
    #[error("A line from east {}, north {} to east {}, north {} crosses another. Give both a point where they meet.", .from.x, .from.y, .to.x, .to.y)]
    LinesCross {
        /// Its start.
        from: Point,
        /// Its end.
        to: Point,
    },
    /// A boundary or a hole of less than three points.
    #[error("A boundary or hole has {corners} corners. Give at least three, in order.")]
    TooFewCorners {
        /// As given.
        corners: usize,
    },
    /// A boundary or a hole that crosses itself.
    #[error("A boundary or hole crosses itself. Give its corners in order, walking around it.")]
    RingCrosses,
    /// A triangle without area.
    #[error("Triangle {number}, counted from 0, has no area. Leave it out.")]
    NoArea {
        /// Counted from 0.
        number: usize,
    },
    /// Triangles that lie over each other.
    #[error("Triangles lie over each other along the line from east {}, north {} to east {}, north {}. Have the surface exported again.", .from.x, .from.y, .to.x, .to.y)]
    Overlap {
        /// One end of an edge that they share.
        from: Point,
        /// The other end.
        to: Point,
    },
    /// So many edges near each other that no sound surface has them.
    #[error(
        "The surface's edges lie so close over each other that it can't be checked. Have it exported again, without slivers."
    )]
    Tangled,
    /// Outside, or in a hole.
    #[error(
        "The place is {by} off the surface's edge, outside it or in a hole. There is no target here. Pick a place on the surface."
    )]
    Outside {
        /// To the nearest edge.
        by: Length,
    },
}

impl SurfaceError {
    /// The message in Spanish.
    pub fn spanish(&self) -> String {
        match self {
            Self::NoTriangles => {
                "La superficie no tiene triángulos. Dé por lo menos tres puntos que no estén en una recta.".into()
            }
            Self::TooWide { span } => format!(
                "La superficie abarca {span} y se calculan exactos a lo más 100,000 ft. Revise la unidad y los puntos lejanos."
            ),
            Self::TwoElevations { at, one, other } => format!(
                "En este {}, norte {} la superficie tiene dos cotas, {one} y {other}. Quite una o mueva el pie de la cara vertical 0.01 ft hacia afuera.",
                at.x, at.y
            ),
            Self::NoSuchPoint { number, points } => format!(
                "Se nombra el punto número {number}, pero hay {points}, contados desde 0. Revise la lista."
            ),
            Self::LinesCross { from, to } => format!(
                "La línea de este {}, norte {} a este {}, norte {} cruza otra. Déles un punto donde se encuentran.",
                from.x, from.y, to.x, to.y
            ),
            Self::TooFewCorners { corners } => format!(
                "Un contorno o hueco tiene {corners} esquinas. Dé por lo menos tres, en orden."
            ),
            Self::RingCrosses => {
                "Un contorno o hueco se cruza a sí mismo. Dé sus esquinas en orden, caminando alrededor.".into()
            }
            Self::NoArea { number } => {
                format!("El triángulo {number}, contado desde 0, no tiene área. Quítelo.")
            }
            Self::Overlap { from, to } => format!(
                "Hay triángulos encimados a lo largo de la línea de este {}, norte {} a este {}, norte {}. Pida que exporten otra vez la superficie.",
                from.x, from.y, to.x, to.y
            ),
            Self::Tangled => {
                "Las orillas de la superficie están tan encimadas que no se puede revisar. Pida que la exporten otra vez, sin astillas.".into()
            }
            Self::Outside { by } => format!(
                "El lugar queda a {by} de la orilla de la superficie, fuera de ella o en un hueco. Aquí no hay rasante. Escoja un lugar en la superficie."
            ),
        }
    }
}
