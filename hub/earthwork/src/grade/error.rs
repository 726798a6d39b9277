//! What is wrong with a grade, or with a place on it, and what to do.

use thiserror::Error;

use crate::alignment::show_station;
use crate::length::Length;

/// Why a grade can't be used, or does not reach a place.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum GradeError {
    /// Fewer than two corners.
    #[error(
        "The profile has {corners} points. Give at least two, each with its station and elevation."
    )]
    TooFewCorners {
        /// As given.
        corners: usize,
    },
    /// Corners out of order.
    #[error("The profile's point at {} does not lie beyond the one before it. Give the points up-station, each once.", show_station(*.station))]
    CornerOrder {
        /// As given.
        station: Length,
    },
    /// A curve that does not fit.
    #[error("The vertical curve at {} is {length} long and does not fit between its neighbours. Check its length; the first and the last point have none.", show_station(*.station))]
    CurveDoesNotFit {
        /// Of its point of intersection.
        station: Length,
        /// As given.
        length: Length,
    },
    /// A step that is past an end, out of order or within a curve.
    #[error("The step at {} lies past an end, before the step given ahead of it, or in a vertical curve. Check its station.", show_station(*.station))]
    StepMisplaced {
        /// As given.
        station: Length,
    },
    /// Before the start or past the end.
    #[error("Station {} is {by} past the profile, which goes from {} to {}. Pick a place on it, or have it drawn longer.", show_station(*.station), show_station(*.from), show_station(*.to))]
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
    #[error("From {} to {} the pipe rises {by} the way it should flow. Check the sign of the grade and which end is the outlet.", show_station(*.from), show_station(*.to))]
    Uphill {
        /// The reach's upper end by flow.
        from: Length,
        /// The reach's lower end by flow.
        to: Length,
        /// By how much.
        by: Length,
    },
    /// A size below zero.
    #[error("The {what} is {value}. Give it at or above zero.")]
    NegativeSize {
        /// Which size, in English.
        what: &'static str,
        /// As given.
        value: Length,
    },
    /// Ground that rises as steeply as the face, or steeper.
    #[error(
        "The ground rises {rise} ft per foot away from the cut, and a face of {slope} to 1 never meets it. Give a steeper face, or the ground's profile further out."
    )]
    NeverDaylights {
        /// Feet per foot.
        rise: String,
        /// Horizontal to one vertical.
        slope: String,
    },
    /// A face almost as flat as the ground.
    #[error(
        "A face of {slope} to 1 is almost parallel to ground that rises {rise} ft in a foot: they do not meet near enough to say where. Give a steeper face, or the ground's profile farther out."
    )]
    AlmostParallel {
        /// Feet per foot.
        rise: String,
        /// Horizontal to one vertical.
        slope: String,
    },
    /// A number that is not one, or has no sense here.
    #[error("The {what} is {value}. Give a plain number, at or above zero for a face.")]
    NotANumber {
        /// Which, in English.
        what: &'static str,
        /// As given.
        value: String,
    },
    /// A face without parts.
    #[error(
        "The face has no part, or one without rise and run. Give each part's rise and run, from the toe outward."
    )]
    EmptyFace,
    /// Outside the face.
    #[error("The place is {by} {} the face, which is {width} wide. Pick a place on the face.", if *.before { "in front of the toe of" } else { "behind the crest of" })]
    BesideFace {
        /// In front of the toe.
        before: bool,
        /// By how much.
        by: Length,
        /// From toe to crest, level.
        width: Length,
    },
    /// No plane to fold.
    #[error("The fold has no plane. Give at least one.")]
    NoPlane,
}

impl GradeError {
    /// The message in Spanish.
    pub fn spanish(&self) -> String {
        let what = |name: &str| {
            match name {
                "pipe wall" => "espesor del tubo",
                "bedding" => "espesor de la cama",
                "pipe's outside diameter" => "diámetro exterior del tubo",
                "room beside the pipe" => "espacio al lado del tubo",
                "face's rise" => "alto de la cara",
                "face's run" => "ancho de la cara",
                "ground's rise" => "pendiente del terreno",
                "face's slope" => "talud de la cara",
                "plane's rise" => "pendiente del plano",
                "depth" => "alto de la excavación al pie",
                _ => "valor",
            }
            .to_owned()
        };
        match self {
            Self::TooFewCorners { corners } => format!(
                "El perfil tiene {corners} puntos. Dé por lo menos dos, cada uno con estación y cota."
            ),
            Self::CornerOrder { station } => format!(
                "El punto del perfil en {} no queda después del anterior. Dé los puntos en orden, cada uno una vez.",
                show_station(*station)
            ),
            Self::CurveDoesNotFit { station, length } => format!(
                "La curva vertical en {} mide {length} y no cabe entre sus vecinas. Revise su largo; el primer y el último punto no llevan curva.",
                show_station(*station)
            ),
            Self::StepMisplaced { station } => format!(
                "El escalón en {} queda fuera, antes del anterior o en una curva vertical. Revise su estación.",
                show_station(*station)
            ),
            Self::PastEnd {
                station,
                by,
                from,
                to,
            } => format!(
                "La estación {} queda {by} fuera del perfil, que va de {} a {}. Escoja un lugar en él o pida que lo alarguen.",
                show_station(*station),
                show_station(*from),
                show_station(*to)
            ),
            Self::Uphill { from, to, by } => format!(
                "De {} a {} el tubo sube {by} hacia donde debe correr. Revise el signo de la pendiente y cuál extremo es la salida.",
                show_station(*from),
                show_station(*to)
            ),
            Self::NegativeSize { what: name, value } => {
                format!("El {} es {value}. Dé cero o más.", what(name))
            }
            Self::NeverDaylights { rise, slope } => format!(
                "El terreno sube {rise} ft por pie hacia afuera y una cara de {slope} a 1 nunca lo alcanza. Dé una cara más parada o el perfil del terreno más afuera."
            ),
            Self::AlmostParallel { rise, slope } => format!(
                "Una cara de {slope} a 1 va casi paralela al terreno que sube {rise} ft por pie: no se encuentran bastante cerca para decir dónde. Dé una cara más parada o el perfil del terreno más afuera."
            ),
            Self::NotANumber { what: name, value } => format!(
                "Dato «{}»: {value}. Dé un número, de cero o más si es de una cara.",
                what(name)
            ),
            Self::EmptyFace => {
                "La cara no tiene partes o una no tiene alto ni ancho. Dé el alto y el ancho de cada parte, del pie hacia afuera.".into()
            }
            Self::BesideFace { before, by, width } => format!(
                "El lugar queda {by} {} de la cara, que mide {width} de ancho. Escoja un lugar en la cara.",
                if *before { "delante del pie" } else { "detrás de la corona" }
            ),
            Self::NoPlane => "El pliegue no tiene planos. Dé por lo menos uno.".into(),
        }
    }
}
