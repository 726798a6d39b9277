//! Does it carry: a bearing pressure as its tester states it, against what the drawing asks; and what a code presumes.
//!
//! Nothing here turns blows of a rod into a pressure: that is the tester's judgement. A presumed value is a reminder
//! with its section beside it; the site's own code and the engineer come first.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::amount::PoundsPerSquareFoot;
use crate::figure::{Figure, FigureError, can_be};

/// Where the presumed values are printed.
pub const SECTION: &str = "International Building Code, table 1806.2";

/// Soils as the table names them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Soil {
    /// Crystalline bedrock.
    CrystallineBedrock,
    /// Sedimentary and foliated rock.
    SedimentaryRock,
    /// Sandy gravel and gravel (GW, GP).
    Gravel,
    /// Sand, silty and clayey sand, silty and clayey gravel (SW, SP, SM, SC, GM, GC).
    Sand,
    /// Clay, sandy and silty clay, clayey silt, silt, sandy silt (CL, ML, MH, CH).
    ClayOrSilt,
    /// Mud, organic silt or clay, peat, unprepared fill.
    PeatOrFill,
}

impl Soil {
    /// What the table presumes, and none for what has to be tested or prepared.
    pub fn presumed(self) -> Option<PoundsPerSquareFoot> {
        let psf = match self {
            Soil::CrystallineBedrock => 12_000.0,
            Soil::SedimentaryRock => 4_000.0,
            Soil::Gravel => 3_000.0,
            Soil::Sand => 2_000.0,
            Soil::ClayOrSilt => 1_500.0,
            Soil::PeatOrFill => return None,
        };
        Some(PoundsPerSquareFoot(psf))
    }
}

/// Whether a stated pressure is at least what is asked.
///
/// # Errors
/// When a pressure is one that no footing has.
pub fn passes(
    stated: PoundsPerSquareFoot,
    asked: PoundsPerSquareFoot,
) -> Result<bool, FigureError> {
    Ok(can_be(Figure::Bearing, stated.0)? >= can_be(Figure::Bearing, asked.0)?)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_stated_pressure_is_held_against_the_drawing() {
        let psf = PoundsPerSquareFoot;
        assert_eq!(passes(psf(2500.0), psf(2500.0)), Ok(true));
        assert_eq!(passes(psf(2499.0), psf(2500.0)), Ok(false));
        assert!(passes(psf(2.5), psf(2500.0)).is_err());
    }

    /// Peat and unprepared fill have no presumed value.
    #[test]
    fn soft_ground_has_no_presumed_value() {
        assert_eq!(Soil::PeatOrFill.presumed(), None);
        assert!(Soil::Gravel.presumed() > Soil::Sand.presumed());
    }
}
