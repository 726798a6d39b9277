//! How much gravel: the drawn layer, what low spots are expected to take, patches; the mean, and what is enough nine
//! times in ten.

use crate::amount::{CubicFeet, PoundsPerCubicFoot, SquareFeet, Tons};
use crate::figure::{Figure, FigureError, can_be, can_be_feet};
use crate::haul::full;
use crate::length::Length;
use crate::uncertainty::{normal, normal_density};

/// The 90th percentile of a normal deviate.
const NINE_IN_TEN: f64 = 1.281_551_565_5;
/// How far a layer's mean thickness differs from the drawn one by placing and raking, in feet (common practice).
const PLACING: f64 = 0.015;
/// How far a delivery's density differs from the usual one, as a part of it (common practice).
const DELIVERY: f64 = 0.04;
/// So long before the pit closes the order must be enough, in minutes (common practice).
const CLOSES_SOON: f64 = 120.0;

/// What needs gravel.
#[derive(Clone, Debug, PartialEq)]
pub struct Need {
    /// Layers as drawn: area and thickness.
    pub layers: Vec<(SquareFeet, Length)>,
    /// Where the bottom lands on average against the target, in feet; positive is high.
    pub landing_mean: f64,
    /// Its scatter, one standard deviation in feet.
    pub landing_sd: f64,
    /// How many landings this rests on; 0 when nobody has any, and then the scatter is a guess.
    pub landings: u32,
    /// Patches and undercuts, each measured.
    pub patches: Vec<CubicFeet>,
    /// Rammed.
    pub density: PoundsPerCubicFoot,
}

/// How much gravel, rammed.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Forecast {
    /// As drawn.
    pub nominal: CubicFeet,
    /// What low spots take beyond it, expected.
    pub low: CubicFeet,
    /// Patches and undercuts.
    pub patches: CubicFeet,
    /// All of it.
    pub mean: CubicFeet,
    /// One standard deviation.
    pub sd: CubicFeet,
    /// Enough nine times in ten.
    pub enough: CubicFeet,
    /// The mean's weight.
    pub mean_tons: Tons,
    /// The weight that is enough nine times in ten.
    pub enough_tons: Tons,
}

/// The expected depth below the target, in feet, for a bottom that lands at `mean` ± `sd`: E[(−e)₊].
///
/// High spots save none: the layer keeps its drawn thickness. Source: the unit normal loss, s·φ(m/s) − m·Φ(−m/s).
pub fn expected_low_ft(mean: f64, sd: f64) -> f64 {
    if sd <= 0.0 {
        return (-mean).max(0.0);
    }
    let loss = sd * normal_density(mean / sd) - mean * normal(-mean / sd);
    // Far out both parts are alike to their last figure: the loss is never below that of a bottom without scatter.
    loss.max((-mean).max(0.0))
}

/// How much gravel to expect.
///
/// The variance adds three parts in squares: the doubt of the mean landing (s/√n on the whole area), placing
/// (0.015 ft on the area) and the delivery's density (4 %).
///
/// # Errors
/// When a figure is one that no site has.
pub fn forecast(need: &Need) -> Result<Forecast, FigureError> {
    can_be(Figure::UnitWeight, need.density.0)?;
    let sd = need.landing_sd;
    can_be(Figure::Deviation, sd)?;
    if sd > 0.0 {
        can_be(Figure::Scatter, sd)?;
    }
    can_be(Figure::Landing, need.landing_mean)?;
    let (mut area, mut nominal) = (0.0, 0.0);
    for (layer, thickness) in &need.layers {
        let layer = can_be(Figure::Area, layer.0)?;
        area += layer;
        nominal += layer * can_be(Figure::Thickness, thickness.feet())?;
    }
    for patch in &need.patches {
        can_be(Figure::Yards, patch.cubic_yards())?;
    }
    let low = CubicFeet(area * expected_low_ft(need.landing_mean, sd));
    let patches: CubicFeet = need.patches.iter().copied().sum();
    let mean = CubicFeet(nominal) + low + patches;
    let shared = sd / f64::from(need.landings.max(1)).sqrt();
    let parts = [shared * area, PLACING * area, DELIVERY * mean.0];
    let sd = CubicFeet(parts.iter().map(|part| part * part).sum::<f64>().sqrt());
    let enough = mean + sd * NINE_IN_TEN;
    Ok(Forecast {
        nominal: CubicFeet(nominal),
        low,
        patches,
        mean,
        sd,
        enough,
        mean_tons: mean.weight(need.density),
        enough_tons: enough.weight(need.density),
    })
}

/// What to order: enough nine times in ten when the pit closes within two hours, else the mean.
pub fn to_order(forecast: &Forecast, pit_closes_in_minutes: Option<f64>) -> Tons {
    match pit_closes_in_minutes {
        Some(minutes) if minutes < CLOSES_SOON => forecast.enough_tons,
        _ => forecast.mean_tons,
    }
}

/// Whole loads for a weight.
///
/// # Errors
/// When a figure is one that no truck has.
pub fn loads(tons: Tons, load_tons: f64) -> Result<u32, FigureError> {
    Ok(full(
        can_be(Figure::Tons, tons.0)? / can_be(Figure::TruckTons, load_tons)?,
    ))
}

/// A patch: its area by how far the ground is below the target, plus a layer that goes on it; never below zero.
pub fn patch(area: SquareFeet, dev: Length, layer: Length) -> CubicFeet {
    CubicFeet(area.0 * (layer - dev).feet().max(0.0))
}

/// How many lifts a thickness takes when none is thicker than `lift`.
///
/// # Errors
/// When the lift is not above zero, or the thickness is one that no patch has.
pub fn lifts(thickness: Length, lift: Length) -> Result<u32, FigureError> {
    let thickness = can_be(Figure::Thickness, thickness.feet())?;
    if can_be_feet(Figure::Thickness, lift)? == Length::ZERO {
        return Err(FigureError {
            figure: Figure::Thickness,
            value: lift.feet(),
        });
    }
    Ok(full(thickness / lift.feet()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn need() -> Need {
        Need {
            layers: vec![(SquareFeet(844.0), ft(33))],
            landing_mean: -0.02,
            landing_sd: 0.05,
            landings: 10,
            patches: vec![CubicFeet::from_cubic_yards(0.88)],
            density: PoundsPerCubicFoot(138.0),
        }
    }

    #[test]
    fn the_order_is_enough_when_the_pit_closes_soon() {
        let all = forecast(&need()).unwrap();
        assert!((all.nominal.cubic_yards() - 844.0 * 0.33 / 27.0).abs() < 1e-9);
        assert!(all.enough_tons > all.mean_tons);
        assert_eq!(to_order(&all, Some(119.0)), all.enough_tons);
        assert_eq!(to_order(&all, Some(121.0)), all.mean_tons);
        assert_eq!(to_order(&all, None), all.mean_tons);
        assert_eq!(loads(Tons(24.0), 12.0), Ok(2));
        assert_eq!(loads(Tons(24.1), 12.0), Ok(3));
    }

    #[test]
    fn a_patch_goes_in_lifts() {
        assert!((patch(SquareFeet(54.0), ft(-24), ft(0)).cubic_yards() - 0.48).abs() < 1e-9);
        assert_eq!(patch(SquareFeet(54.0), ft(24), ft(0)), CubicFeet(0.0));
        assert!((patch(SquareFeet(54.0), ft(0), ft(50)).cubic_yards() - 1.0).abs() < 1e-9);
        assert_eq!(lifts(ft(100), ft(50)), Ok(2));
        assert_eq!(lifts(ft(101), ft(50)), Ok(3));
        assert!(lifts(ft(100), ft(0)).is_err());
        let mut wrong = need();
        wrong.density = PoundsPerCubicFoot(1380.0);
        assert!(forecast(&wrong).is_err());
    }

    proptest! {
        /// Deeper takes more, never less; high spots save nothing.
        #[test]
        fn deeper_takes_more(mean in -0.3..0.3_f64, by in 0.0..0.1_f64, sd in 0.005..0.1_f64) {
            let (here, deeper) = (expected_low_ft(mean, sd), expected_low_ft(mean - by, sd));
            prop_assert!(here >= 0.0 && here >= -mean);
            prop_assert!(deeper >= here - 1e-12 && deeper <= here + by + 1e-12);
        }
    }
}
