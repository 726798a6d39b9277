//! Is it compacted: dry density in percent of the laboratory's greatest, with its window of moisture.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::amount::PoundsPerCubicFoot;
use crate::figure::{Figure, FigureError, can_be};

/// Dry density of a wet one: γd = γ/(1 + w), with the water in percent of dry weight (ASTM D2216, D6938).
///
/// # Errors
/// When a figure is one that no soil has.
pub fn dry(wet: PoundsPerCubicFoot, water_percent: f64) -> Result<PoundsPerCubicFoot, FigureError> {
    let wet = can_be(Figure::UnitWeight, wet.0)?;
    let water = can_be(Figure::Moisture, water_percent)?;
    Ok(PoundsPerCubicFoot(wet / (1.0 + water / 100.0)))
}

/// What a gauge shows: the wet density and the water in the same unit. Gives dry density and water in percent.
///
/// # Errors
/// When a figure is one that no soil has.
pub fn by_gauge(
    wet: PoundsPerCubicFoot,
    water: PoundsPerCubicFoot,
) -> Result<(PoundsPerCubicFoot, f64), FigureError> {
    let wet = can_be(Figure::UnitWeight, wet.0)?;
    let dry = can_be(Figure::UnitWeight, wet - water.0)?;
    Ok((
        PoundsPerCubicFoot(dry),
        can_be(Figure::Moisture, water.0 / dry * 100.0)?,
    ))
}

/// Wet density by the sand cone: the soil's weight by the volume of its hole (ASTM D1556). Weights in pounds.
///
/// # Errors
/// When the hole holds no sand, or the density is one that no soil has.
pub fn by_sand_cone(
    soil: f64,
    sand_poured: f64,
    sand_in_cone: f64,
    sand: PoundsPerCubicFoot,
) -> Result<PoundsPerCubicFoot, FigureError> {
    for weight in [soil, sand_poured, sand_in_cone] {
        can_be(Figure::Pounds, weight)?;
    }
    let volume = (sand_poured - sand_in_cone) / can_be(Figure::UnitWeight, sand.0)?;
    can_be(Figure::UnitWeight, soil / volume).map(PoundsPerCubicFoot)
}

/// What the drawing asks of a compacted lift.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
#[schema(as = DensityWanted)]
pub struct Wanted {
    /// The laboratory's greatest dry density, in pounds per cubic foot.
    pub maximum_pcf: f64,
    /// At least so many percent of it.
    pub least_percent: f64,
    /// The laboratory's best moisture, in percent of dry weight; none when nobody asks.
    #[serde(default)]
    pub optimum_percent: Option<f64>,
    /// So many points of moisture either way of it.
    #[serde(default = "usual_window")]
    pub window_points: f64,
}

/// Two points either way (common practice).
fn usual_window() -> f64 {
    2.0
}

/// Where the moisture lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Moisture {
    /// Too dry: wet it and ram again.
    TooDry,
    /// Within the window.
    Within,
    /// Too wet: let it dry and ram again.
    TooWet,
    /// Nobody asks.
    NotAsked,
}

/// A density test, judged.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[schema(as = DensityJudged)]
pub struct Judged {
    /// Dry density, in pounds per cubic foot.
    pub dry_pcf: f64,
    /// Percent of the laboratory's greatest.
    pub percent: f64,
    /// Where the moisture lies.
    pub moisture: Moisture,
    /// Both are in.
    pub passes: bool,
}

impl Judged {
    /// The percentage as shown, to a tenth and rounded down: what fails never reads as if it passed.
    pub fn shown_percent(&self) -> f64 {
        ((self.percent + 1e-9) * 10.0).floor() / 10.0
    }
}

/// Judges a dry density and a moisture. The percentage is compared as it is, not as it is shown.
///
/// # Errors
/// When a figure is one that no soil has.
pub fn judge(
    dry: PoundsPerCubicFoot,
    water_percent: f64,
    wanted: &Wanted,
) -> Result<Judged, FigureError> {
    let dry = can_be(Figure::UnitWeight, dry.0)?;
    let maximum = can_be(Figure::UnitWeight, wanted.maximum_pcf)?;
    let least = can_be(Figure::Percent, wanted.least_percent)?;
    let water = can_be(Figure::Moisture, water_percent)?;
    let moisture = match wanted.optimum_percent {
        None => Moisture::NotAsked,
        Some(optimum) => {
            let off = water - can_be(Figure::Moisture, optimum)?;
            let window = can_be(Figure::Moisture, wanted.window_points)? + 1e-9;
            if off < -window {
                Moisture::TooDry
            } else if off > window {
                Moisture::TooWet
            } else {
                Moisture::Within
            }
        }
    };
    let percent = dry / maximum * 100.0;
    Ok(Judged {
        dry_pcf: dry,
        percent,
        moisture,
        passes: percent + 1e-9 >= least
            && matches!(moisture, Moisture::Within | Moisture::NotAsked),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn wanted(optimum: Option<f64>) -> Wanted {
        Wanted {
            maximum_pcf: 118.5,
            least_percent: 95.0,
            optimum_percent: optimum,
            window_points: 2.0,
        }
    }

    /// Derived: 124.8/(1.112)/118.5 is 94.71 %, which is not 95 %.
    #[test]
    fn what_fails_never_reads_as_if_it_passed() {
        let dry = dry(PoundsPerCubicFoot(124.8), 11.2).unwrap();
        let judged = judge(dry, 11.2, &wanted(None)).unwrap();
        assert!(!judged.passes);
        assert!((judged.shown_percent() - 94.7).abs() < 1e-9, "{judged:?}");
    }

    #[test]
    fn the_moisture_has_a_window() {
        let dense = PoundsPerCubicFoot(117.0);
        for (water, moisture, passes) in [
            (9.2, Moisture::Within, true),
            (9.1, Moisture::TooDry, false),
            (13.2, Moisture::Within, true),
            (13.3, Moisture::TooWet, false),
        ] {
            let judged = judge(dense, water, &wanted(Some(11.2))).unwrap();
            assert_eq!(
                (judged.moisture, judged.passes),
                (moisture, passes),
                "{water}"
            );
        }
        assert!(judge(PoundsPerCubicFoot(1170.0), 9.0, &wanted(None)).is_err());
        assert!(by_sand_cone(5.0, 3.0, 3.0, PoundsPerCubicFoot(90.0)).is_err());
        // A cone that holds less than nothing would make the hole larger.
        assert!(by_sand_cone(5.0, 3.0, -1.0, PoundsPerCubicFoot(90.0)).is_err());
    }

    proptest! {
        /// The gauge's way and the formula agree, and wetter soil of one weight is less dense.
        #[test]
        fn both_ways_agree(wet in 90.0..150.0_f64, water in 1.0..30.0_f64) {
            let (by_gauge, percent) = by_gauge(PoundsPerCubicFoot(wet), PoundsPerCubicFoot(water)).unwrap();
            let again = dry(PoundsPerCubicFoot(wet), percent).unwrap();
            prop_assert!((again.0 - by_gauge.0).abs() < 1e-9);
        }
    }
}
