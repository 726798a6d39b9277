//! What went wrong, in Spanish: the same as the English of each error's own text.

use crate::length::{Form, Length, LengthError};
use crate::level::LevellingError;
use crate::rod::RodError;
use crate::target::TargetError;
use crate::tolerance::ToleranceError;

fn thousandths(length: Length) -> String {
    length.show(Form::DecimalFeet { places: 3 })
}

impl RodError {
    /// The message in Spanish.
    pub fn spanish(&self) -> String {
        match self {
            Self::Empty { .. } => {
                "No se escribió ninguna lectura. Escriba lo que marca el estadal.".into()
            }
            Self::NotAReading { text, rod, .. } => format!(
                "«{text}» no es una lectura del estadal {rod}. Escríbala como está marcado el estadal."
            ),
            Self::Negative { text } => format!(
                "«{text}» queda debajo del pie del estadal. Escríbala sin el menos; si el terreno está más alto que el láser, póngalo más arriba."
            ),
            Self::AboveTop { text, rod, length } => format!(
                "«{text}» pasa de la punta del estadal {rod}, que mide {length}. Revise el punto decimal y cuál estadal es."
            ),
            Self::InchesPastTwelve { text, inches } => format!(
                "«{text}» tiene {inches} pulgadas: después de los pies van menos de 12. Revise los pies y luego las pulgadas."
            ),
        }
    }
}

impl LengthError {
    /// The message in Spanish.
    pub fn spanish(&self) -> String {
        match self {
            Self::Empty => {
                "No se escribió ninguna medida. Escriba un número y su unidad, como 98.50 ft."
                    .into()
            }
            Self::NoUnit { text } => format!(
                "«{text}» no tiene unidad. Escriba ft, in, mm o m después del número, como 98.50 ft."
            ),
            Self::UnknownUnit { text, unit } => {
                format!("«{text}»: aquí no se conoce la unidad «{unit}». Use ft, in, mm, cm o m.")
            }
            Self::NotANumber { text } => format!(
                "«{text}» no se entiende como medida. Escríbala como 98.50 ft, 5 ft 4 3/8 in, 12 mm o 1.2 m."
            ),
            Self::Ambiguous {
                text,
                decimal,
                thousands,
            } => format!("«{text}» puede ser dos medidas. Escriba {decimal} o {thousands}."),
            Self::Mixed { text } => format!(
                "«{text}»: solo van juntos pies enteros y pulgadas. Escríbala como 5 ft 4 3/8 in, o en una sola unidad."
            ),
            Self::MinusInside { text } => format!(
                "«{text}»: el signo menos va antes de toda la medida, no dentro. Escriba 5 ft 4 in, 5'-4\" o -5 ft 4 in."
            ),
            Self::InchesPastTwelve { text } => format!(
                "«{text}»: después de los pies van menos de 12 pulgadas. Revise los pies y luego las pulgadas."
            ),
            Self::Fraction { text } => format!(
                "«{text}»: la fracción debe ser menor que uno y de 64 partes a lo más, como 3/8."
            ),
            Self::TooLong { text } => format!(
                "{text} es más largo que cualquier obra: el límite es 100,000,000 ft. Revise la unidad y las cifras."
            ),
            Self::NotFinite => {
                "El número no es finito, así que no es una medida. Revise de dónde salió.".into()
            }
        }
    }
}

impl LevellingError {
    /// The message in Spanish.
    pub fn spanish(&self) -> String {
        match self {
            Self::HeightNotChanged { changed } => format!(
                "La altura del láser cambió solo {}. Súbalo o bájelo por lo menos 0.10 ft y lea otra vez el banco y el punto.",
                thousandths(*changed)
            ),
            Self::Disagrees {
                disagreement,
                allowed,
            } => format!(
                "El punto salió a {} de su primera cota; se permite {}. Lea otra vez el banco y el punto, con el estadal a plomo.",
                thousandths(*disagreement),
                thousandths(*allowed)
            ),
        }
    }
}

impl ToleranceError {
    /// The message in Spanish.
    pub fn spanish(&self) -> String {
        let Self::Negative { side, value } = self;
        format!(
            "La tolerancia permite {value} {}: escriba los dos lados como medidas de cero o más, como 0.10 ft alto y 0.20 ft hondo.",
            if *side == "high" { "alto" } else { "hondo" }
        )
    }
}

impl TargetError {
    /// The message in Spanish.
    pub fn spanish(&self) -> String {
        match self {
            Self::PastEnd { station, by, length } => format!(
                "La estación {station} queda {by} fuera: el tramo va de 0 a {length}. Escoja una marca del tramo o pida que lo alarguen."
            ),
            Self::BesideRun { side, by } => format!(
                "El lugar queda {by} fuera de la orilla {} del tramo. Escoja una marca del tramo o pida que revisen su ancho.",
                if *side == "left" { "izquierda" } else { "derecha" }
            ),
            Self::OutsideBoundary { by } => format!(
                "El lugar queda {by} fuera del contorno de la rasante. Escoja una marca adentro o pida que revisen el contorno."
            ),
            Self::NoSurface => {
                "La rasante no dice de qué es la cota. Nombre la superficie, como corona de zapata.".into()
            }
            Self::LayerUnnamed { number } => {
                format!("La capa {number} desde arriba no tiene nombre. Nómbrela, como grava.")
            }
            Self::LayerThickness { name, thickness } => format!(
                "La capa «{name}» mide {thickness}: una capa mide más de 0 y a lo más 5 ft. Revise la unidad y el punto."
            ),
            Self::TooSteep { side, rise } => format!(
                "El plano sube {rise} ft por pie hacia el {}. Escriba 2 % como 0.02; más de 1 es un talud, no una rasante.",
                match *side {
                    "east" => "este",
                    "north" => "norte",
                    _ => "desagüe",
                }
            ),
            Self::NoDirection => {
                "El inicio del tramo y el punto hacia donde va son el mismo. Dé otro punto más adelante.".into()
            }
            Self::NoLength { length } => {
                format!("El tramo mide {length}. Dé su largo desde 0 hasta el final, más de cero.")
            }
            Self::NoWidth { left, right } => format!(
                "Los anchos del tramo son {left} a la izquierda y {right} a la derecha. Dé los dos de cero o más, uno de ellos más de cero."
            ),
            Self::NoSteps => "El tramo no tiene cota. Dé por lo menos la que vale desde 0.".into(),
            Self::FirstStep { from } => {
                format!("La primera cota vale desde {from}. Dé la que vale desde 0.")
            }
            Self::StepOrder { station } => format!(
                "El escalón en {station} no queda más adelante que el anterior. Dé los escalones en orden, cada uno una vez."
            ),
            Self::StepPastEnd { station, length } => format!(
                "El escalón en {station} queda más allá del final del tramo, en {length}. Revise la estación y el largo."
            ),
            Self::StepWindow { station } => format!(
                "El escalón en {station} tiene una holgura menor que cero. Dé cuánto puede moverse su cara para cada lado."
            ),
            Self::TooFewCorners { corners } => {
                format!("El contorno tiene {corners} esquinas. Dé por lo menos tres, en orden, o ninguna.")
            }
            Self::NoSuchSurface { name, known } => {
                format!("Esta rasante no tiene «{name}». Tiene: {known}.")
            }
            Self::Undercut { name, what } => format!(
                "La sobreexcavación «{name}» {}.",
                if what.contains("no name") {
                    "no tiene nombre. Nómbrela"
                } else if what.contains("fills") {
                    "no dice con qué se rellena. Nombre el material"
                } else {
                    "debe medir más de 0 y a lo más 10 ft de hondo. Revise la unidad y el punto"
                }
            ),
            Self::ContourBand { band } => format!(
                "La holgura de la curva de nivel es {band}. Dé cuánto puede desviarse el recorrido, más de cero y a lo más 0.5 ft."
            ),
            Self::NoStations => {
                "Esta rasante no tiene estaciones. Dé el lugar por una marca, por dos cintas o por pasos.".into()
            }
            Self::Line(error) => error.spanish(),
            Self::Grade(error) => error.spanish(),
            Self::Net(error) => error.spanish(),
            Self::BoundaryCrosses => {
                "El contorno se cruza a sí mismo. Dé sus esquinas en orden, caminando alrededor.".into()
            }
        }
    }
}
