//! Can this figure be: a factor, a weight, a price or a time that no site has is refused by name.

use serde::{Deserialize, Serialize};
use thiserror::Error;
use utoipa::ToSchema;

use crate::length::Length;

/// A figure that somebody puts in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Figure {
    /// Loose volume by volume in the ground.
    Swell,
    /// Compacted volume by volume in the ground.
    Compacted,
    /// What a truck carries, in cubic yards.
    TruckYards,
    /// What a truck may carry, in tons.
    TruckTons,
    /// A weight of soil or stone, in pounds per cubic foot.
    UnitWeight,
    /// Water by dry weight, in percent.
    Moisture,
    /// A part of a whole, in percent.
    Percent,
    /// A bearing pressure, in pounds per square foot.
    Bearing,
    /// An area, in square feet.
    Area,
    /// A thickness or length, in feet.
    Thickness,
    /// A volume, in cubic yards.
    Yards,
    /// A weight, in tons.
    Tons,
    /// A time, in hours.
    Hours,
    /// A time, in minutes.
    Minutes,
    /// A price or a rate, in the site's money.
    Money,
    /// A scatter, in feet.
    Scatter,
    /// A tolerance or a guard band, in feet.
    Tolerance,
    /// How many.
    Count,
    /// A voltage, in kilovolts.
    Kilovolts,
    /// How far a machine reaches or is wide, in feet.
    Reach,
    /// One standard deviation, in feet.
    Deviation,
    /// Where bottoms land on the mean, in feet.
    Landing,
    /// A distance on a site, in feet.
    Distance,
    /// How far a face goes back for one up.
    Slope,
    /// The factor of a guard band.
    GuardFactor,
    /// A weight, in pounds.
    Pounds,
}

impl Figure {
    /// Its least and its greatest value (common practice; a swell below 1 or above 2 is a slip).
    fn range(self) -> (f64, f64) {
        match self {
            Figure::Swell => (1.0, 2.0),
            Figure::Compacted => (0.5, 1.5),
            Figure::TruckYards | Figure::TruckTons => (0.1, 200.0),
            Figure::UnitWeight => (20.0, 300.0),
            Figure::Moisture | Figure::Reach => (0.0, 300.0),
            Figure::Percent => (0.0, 120.0),
            Figure::Bearing => (100.0, 200_000.0),
            Figure::Area | Figure::Money => (0.0, 1e8),
            Figure::Thickness | Figure::Deviation | Figure::Slope => (0.0, 100.0),
            Figure::Yards | Figure::Tons => (0.0, 1e7),
            Figure::Hours | Figure::Minutes => (0.0, 1e6),
            Figure::Scatter => (0.001, 2.0),
            Figure::Tolerance => (0.0, 5.0),
            Figure::Count => (1.0, 10_000.0),
            Figure::Kilovolts => (0.0, 1_500.0),
            Figure::Landing => (-10.0, 10.0),
            Figure::Distance => (0.0, 100_000.0),
            Figure::GuardFactor => (0.0, 10.0),
            Figure::Pounds => (0.0, 10_000.0),
        }
    }

    fn english(self) -> &'static str {
        match self {
            Figure::Swell => "swell factor",
            Figure::Compacted => "compacted factor",
            Figure::TruckYards => "truck's cubic yards",
            Figure::TruckTons => "truck's tons",
            Figure::UnitWeight => "weight in pounds per cubic foot",
            Figure::Moisture => "water in percent of dry weight",
            Figure::Percent => "percentage",
            Figure::Bearing => "bearing in pounds per square foot",
            Figure::Area => "area in square feet",
            Figure::Thickness => "thickness in feet",
            Figure::Yards => "volume in cubic yards",
            Figure::Tons => "weight in tons",
            Figure::Hours => "time in hours",
            Figure::Minutes => "time in minutes",
            Figure::Money => "price",
            Figure::Scatter => "scatter in feet",
            Figure::Tolerance => "tolerance in feet",
            Figure::Count => "number",
            Figure::Kilovolts => "voltage in kilovolts",
            Figure::Reach => "machine's measure in feet",
            Figure::Deviation => "standard deviation in feet",
            Figure::Landing => "mean landing in feet",
            Figure::Distance => "distance in feet",
            Figure::Slope => "slope, out for one up,",
            Figure::GuardFactor => "factor of the guard band",
            Figure::Pounds => "weight in pounds",
        }
    }

    fn spanish(self) -> &'static str {
        match self {
            Figure::Swell => "El factor de abundamiento",
            Figure::Compacted => "El factor de compactado",
            Figure::TruckYards => "Las yardas cúbicas del camión",
            Figure::TruckTons => "Las toneladas del camión",
            Figure::UnitWeight => "El peso en libras por pie cúbico",
            Figure::Moisture => "El agua en por ciento del peso seco",
            Figure::Percent => "El porcentaje",
            Figure::Bearing => "La capacidad en libras por pie cuadrado",
            Figure::Area => "El área en pies cuadrados",
            Figure::Thickness => "El espesor en pies",
            Figure::Yards => "El volumen en yardas cúbicas",
            Figure::Tons => "El peso en toneladas",
            Figure::Hours => "El tiempo en horas",
            Figure::Minutes => "El tiempo en minutos",
            Figure::Money => "El precio",
            Figure::Scatter => "La dispersión en pies",
            Figure::Tolerance => "La tolerancia en pies",
            Figure::Count => "El número",
            Figure::Kilovolts => "El voltaje en kilovoltios",
            Figure::Reach => "La medida de la máquina en pies",
            Figure::Deviation => "La desviación estándar en pies",
            Figure::Landing => "La media de las pasadas en pies",
            Figure::Distance => "La distancia en pies",
            Figure::Slope => "El talud, hacia afuera por uno hacia arriba,",
            Figure::GuardFactor => "El factor de la banda de guarda",
            Figure::Pounds => "El peso en libras",
        }
    }
}

/// A figure outside of what any site has.
#[derive(Clone, Copy, Debug, PartialEq, Error)]
#[error("The {} {value} is not within {} to {}. Check it and put in the site's own.", .figure.english(), .figure.range().0, .figure.range().1)]
pub struct FigureError {
    /// Which.
    pub figure: Figure,
    /// As put in.
    pub value: f64,
}

impl FigureError {
    /// The message in Spanish.
    pub fn spanish(&self) -> String {
        let (low, high) = self.figure.range();
        format!(
            "{} {} no está entre {low} y {high}. Revise y ponga el dato de la obra.",
            self.figure.spanish(),
            self.value
        )
    }
}

/// The value, when it can be.
///
/// # Errors
/// When it is not a number, or outside of what any site has.
pub fn can_be(figure: Figure, value: f64) -> Result<f64, FigureError> {
    let (low, high) = figure.range();
    if value >= low && value <= high {
        Ok(value)
    } else {
        Err(FigureError { figure, value })
    }
}

/// The same of a length, by its feet.
///
/// # Errors
/// As [`can_be`].
pub fn can_be_feet(figure: Figure, value: Length) -> Result<Length, FigureError> {
    can_be(figure, value.feet()).map(|_feet| value)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_no_site_has_is_refused_by_name() {
        for (figure, value) in [
            (Figure::Swell, 0.99),
            (Figure::Swell, 2.01),
            (Figure::Hours, -0.1),
            (Figure::Money, f64::NAN),
            (Figure::Area, f64::INFINITY),
            (Figure::Kilovolts, -50.0),
            (Figure::Reach, -27.8),
            (Figure::Deviation, -0.05),
            (Figure::Pounds, 1e308),
        ] {
            let error = can_be(figure, value).unwrap_err();
            assert!(error.to_string().contains(figure.english()), "{error}");
            assert!(error.spanish().contains("Revise"), "{error}");
        }
        assert_eq!(can_be(Figure::Swell, 1.0), Ok(1.0));
    }
}
