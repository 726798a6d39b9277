//! What is wrong with an alignment, or with a place beside it, and what to do.

use thiserror::Error;

use super::show_station;
use crate::length::Length;

/// Why an alignment can't be used, or does not reach a place.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum AlignmentError {
    /// Not `n+dd`.
    #[error(
        "“{text}” is not a station. Write hundreds of feet, a plus and two digits, such as 12+34.56."
    )]
    NotAStation {
        /// As written.
        text: String,
    },
    /// Nothing to go along.
    #[error("The alignment has no piece. Give at least one line or arc.")]
    NoPieces,
    /// A piece that goes nowhere.
    #[error("Piece {number} of the alignment ends where it starts. Leave it out, or give its end.")]
    NoLength {
        /// Counted from the start.
        number: usize,
    },
    /// An arc whose two ends are not equally far from its centre.
    #[error(
        "Piece {number} of the alignment is an arc whose radius is {at_start} at its start and {at_end} at its end. Check its centre and its end."
    )]
    RadiusDiffers {
        /// Counted from the start.
        number: usize,
        /// From the centre to the start.
        at_start: Length,
        /// From the centre to the end.
        at_end: Length,
    },
    /// Before the start or past the end.
    #[error("The place is {by} past the {} of the alignment, which goes from {} to {}. Pick a place beside it, or have it drawn longer.", if *.before { "start" } else { "end" }, show_station(*.from), show_station(*.to))]
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
    #[error(
        "The place is the centre of an arc: it belongs to no one station. Pick a place nearer the line."
    )]
    AtCentre,
    /// An offset that reaches past the centre of an arc.
    #[error(
        "An offset of {offset} reaches past the centre of the arc, whose radius is {radius}. Give a smaller offset, or the other side."
    )]
    PastCentre {
        /// As given.
        offset: Length,
        /// Of the arc.
        radius: Length,
    },
}

impl AlignmentError {
    /// The message in Spanish.
    pub fn spanish(&self) -> String {
        match self {
            Self::NotAStation { text } => format!(
                "«{text}» no es una estación. Escriba los cientos de pies, un más y dos cifras, como 12+34.56."
            ),
            Self::NoPieces => "El eje no tiene ningún tramo. Dé por lo menos una recta o un arco.".into(),
            Self::NoLength { number } => format!(
                "El tramo {number} del eje termina donde empieza. Quítelo o dé su final."
            ),
            Self::RadiusDiffers {
                number,
                at_start,
                at_end,
            } => format!(
                "El tramo {number} del eje es un arco con radio de {at_start} al inicio y {at_end} al final. Revise su centro y su final."
            ),
            Self::PastEnd {
                before,
                by,
                from,
                to,
            } => format!(
                "El lugar queda {by} más allá del {} del eje, que va de {} a {}. Escoja un lugar al lado del eje o pida que lo alarguen.",
                if *before { "inicio" } else { "final" },
                show_station(*from),
                show_station(*to)
            ),
            Self::AtCentre => {
                "El lugar es el centro de un arco: no tiene una sola estación. Escoja un lugar más cerca del eje.".into()
            }
            Self::PastCentre { offset, radius } => format!(
                "La distancia de {offset} pasa del centro del arco, cuyo radio es {radius}. Dé una distancia menor o el otro lado."
            ),
        }
    }
}
