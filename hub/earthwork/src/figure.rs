//! Can this figure be: a factor, a weight, a price or a time that no site has is refused by name.

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::{Fixed, Text};

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

    fn name(self) -> Fixed {
        use words::figure::name;
        match self {
            Figure::Swell => name::swell(),
            Figure::Compacted => name::compacted(),
            Figure::TruckYards => name::truck_yards(),
            Figure::TruckTons => name::truck_tons(),
            Figure::UnitWeight => name::unit_weight(),
            Figure::Moisture => name::moisture(),
            Figure::Percent => name::percent(),
            Figure::Bearing => name::bearing(),
            Figure::Area => name::area(),
            Figure::Thickness => name::thickness(),
            Figure::Yards => name::yards(),
            Figure::Tons => name::tons(),
            Figure::Hours => name::hours(),
            Figure::Minutes => name::minutes(),
            Figure::Money => name::money(),
            Figure::Scatter => name::scatter(),
            Figure::Tolerance => name::tolerance(),
            Figure::Count => name::count(),
            Figure::Kilovolts => name::kilovolts(),
            Figure::Reach => name::reach(),
            Figure::Deviation => name::deviation(),
            Figure::Landing => name::landing(),
            Figure::Distance => name::distance(),
            Figure::Slope => name::slope(),
            Figure::GuardFactor => name::guard_factor(),
            Figure::Pounds => name::pounds(),
        }
    }
}

/// A figure outside of what any site has.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FigureError {
    /// Which.
    pub figure: Figure,
    /// As put in.
    pub value: f64,
}

impl FigureError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        let (low, high) = self.figure.range();
        words::figure::not_within(&self.figure.name(), &self.value, &low, &high)
    }
}

words::error!(FigureError);

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
            assert!(
                error
                    .to_string()
                    .contains(figure.name().of(words::Language::English)),
                "{error}"
            );
            assert!(error.text().spanish.contains("Revise"), "{error}");
        }
        assert_eq!(can_be(Figure::Swell, 1.0), Ok(1.0));
    }
}
