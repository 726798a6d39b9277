//! Why the rules of a cut give no answer, and what to do.

use thiserror::Error;

use super::SoilClass;
use crate::length::Length;

/// Why there is no figure for a cut.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum FaceError {
    /// A size below zero.
    #[error("The {what} is {value}. Give zero or more.")]
    Negative {
        /// Which.
        what: &'static str,
        /// As given.
        value: Length,
    },
    /// A number that is none.
    #[error("The {what} is {value}. Give a number of zero or more that a site can have.")]
    NotANumber {
        /// Which.
        what: &'static str,
        /// As given.
        value: String,
    },
    /// Deeper than the tables go.
    #[error(
        "The cut is {depth} deep; beyond {limit} the tables end ({section}). An engineer designs it."
    )]
    Engineer {
        /// The depth.
        depth: Length,
        /// Where the tables end.
        limit: Length,
        /// The rule.
        section: String,
    },
    /// No benches in this soil.
    #[error("The rules draw no bench for class {} soil. Slope it, or an engineer designs it.", .class.word())]
    NoBench {
        /// The class.
        class: SoilClass,
    },
    /// Benches for cohesive soil alone.
    #[error("The rules draw benches in class {} for cohesive soil alone ({section}). Slope it.", .class.word())]
    CohesiveAlone {
        /// The class.
        class: SoilClass,
        /// The rule.
        section: String,
    },
    /// A bench too high.
    #[error("Vertical {number} is {is}; at most {most} ({section}). Make it lower.")]
    BenchTooHigh {
        /// From the bottom, from 1.
        number: usize,
        /// As given.
        is: Length,
        /// The rule's.
        most: Length,
        /// The rule.
        section: String,
    },
    /// No vertical at the bottom.
    #[error(
        "No unsupported vertical of {vertical} in class {} soil {depth} deep. Slope it from the toe, or support it.", .class.word()
    )]
    NoVertical {
        /// The class.
        class: SoilClass,
        /// The cut.
        depth: Length,
        /// The vertical.
        vertical: Length,
    },
    /// The face never comes out where the ground is known.
    #[error(
        "The face never meets the ground within {within} behind its toe. Give the ground farther out, or a steeper face."
    )]
    NeverDaylights {
        /// How far was looked.
        within: Length,
    },
    /// The ground is not known there.
    #[error("The ground behind the toe is not known: {why}")]
    NoGround {
        /// Why.
        why: String,
    },
    /// A toe without a direction.
    #[error("A toe needs two corners or more at different places; this one has {corners}.")]
    NoToe {
        /// How many.
        corners: usize,
    },
    /// A toe that crosses itself.
    #[error("The toe crosses itself. Give its corners in order along the cut.")]
    ToeCrosses,
    /// More places on a toe than anybody digs by.
    #[error(
        "The toe has more than {most} places {every} apart. Put them farther apart, or give a shorter toe."
    )]
    TooManyPlaces {
        /// How far apart they are.
        every: Length,
        /// How many may be.
        most: usize,
    },
    /// Pieces of a face out of order.
    #[error(
        "The pieces of a face go up from the toe, and only the last one has no top. Give them in order."
    )]
    PieceOrder,
    /// A rules file that can't be read.
    #[error("The rules can't be read: {why}")]
    Rules {
        /// What is wrong and what to do.
        why: String,
    },
}

impl FaceError {
    /// The message in Spanish.
    pub fn spanish(&self) -> String {
        match self {
            Self::Negative { value, .. } => {
                format!("Una medida es {value}. Dé cero o más.")
            }
            Self::NotANumber { value, .. } => {
                format!("Un dato es {value}. Dé un número de cero o más que una obra pueda tener.")
            }
            Self::Engineer {
                depth,
                limit,
                section,
            } => format!(
                "El corte tiene {depth} de hondo; a más de {limit} se acaban las tablas ({section}). Lo diseña un ingeniero."
            ),
            Self::NoBench { class } => format!(
                "Las reglas no dibujan bancos en suelo clase {}. Déle talud, o lo diseña un ingeniero.",
                class.word()
            ),
            Self::CohesiveAlone { class, section } => format!(
                "En clase {} las reglas dibujan bancos solo en suelo cohesivo ({section}). Déle talud.",
                class.word()
            ),
            Self::BenchTooHigh {
                number,
                is,
                most,
                section,
            } => format!(
                "El vertical {number} mide {is}; lo más es {most} ({section}). Hágalo más bajo."
            ),
            Self::NoVertical {
                class,
                depth,
                vertical,
            } => format!(
                "No hay vertical de {vertical} sin soporte en suelo clase {} a {depth} de hondo. Talud desde el pie, o soporte.",
                class.word()
            ),
            Self::NeverDaylights { within } => format!(
                "La cara no llega al terreno en {within} detrás del pie. Dé el terreno más afuera o una cara más parada."
            ),
            Self::NoGround { why } => format!("No se conoce el terreno detrás del pie: {why}"),
            Self::NoToe { corners } => format!(
                "Un pie lleva dos esquinas o más en lugares distintos; este tiene {corners}."
            ),
            Self::ToeCrosses => {
                "El pie se cruza a sí mismo. Dé sus esquinas en orden a lo largo del corte.".into()
            }
            Self::TooManyPlaces { every, most } => format!(
                "El pie tiene más de {most} lugares a cada {every}. Sepárelos más, o dé un pie más corto."
            ),
            Self::PieceOrder => {
                "Las partes de una cara van del pie hacia arriba y solo la última no tiene tope. Délas en orden.".into()
            }
            Self::Rules { why } => format!("No se pueden leer las reglas: {why}"),
        }
    }
}
