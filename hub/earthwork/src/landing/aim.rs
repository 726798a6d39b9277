//! Where to aim: gravel under a deep spot against work on a shallow one, weighed by the day's own scatter.
//!
//! With the mean landing at a, a spot costs A·c·E[(−e)₊] for gravel, a shallow one's work times its chance, and a too
//! deep one's work times its chance. The mean that costs least is worth hundredths, not tenths; with a steady hand and
//! a machine still there it can lie above the target.

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use super::{FEWEST, Landing};
use crate::figure::{Figure, FigureError, can_be};
use crate::gravel::expected_low_ft;
use crate::length::{Length, whole};
use crate::tolerance::Tolerance;
use crate::uncertainty::normal;

/// The least room to the low limit, in standard deviations (common practice).
const ROOM: f64 = 1.5;
/// How sure the advice's bounds are.
const SURE: f64 = 0.8;
/// Half the width of that interval for a mean, in standard deviations.
const SURE_Z: f64 = 1.281_551_565_5;

/// What a spot costs; money is the site's own.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AimCosts {
    /// The area that one reading stands for, in square feet.
    pub spot_sf: f64,
    /// Gravel bought, placed and rammed, a cubic foot.
    pub gravel_cf: f64,
    /// A shallow spot: another pass now, or hand work once the machine has gone, as they mix.
    pub shallow: f64,
    /// A spot below the low limit: the ruling, the lifts, the test.
    pub too_deep: f64,
}

/// A point of the curve.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct AimPoint {
    /// Where the mean lands, relative to the target.
    pub at: Length,
    /// What a spot then costs.
    pub cost: f64,
}

/// Where to aim, with what it rests on.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Advice {
    /// The aim to set: where the mean should land, less where it lands by itself.
    pub aim: Length,
    /// Where the mean should land.
    pub mean: Length,
    /// What a spot costs there.
    pub cost: f64,
    /// What a spot costs with the mean on the target.
    pub cost_on_target: f64,
    /// The aim lies between here …
    pub from: Length,
    /// … and here, eight times in ten, by what so few landings can tell.
    pub to: Length,
    /// The cost along the means that are allowed, to the hundredth.
    pub curve: Vec<AimPoint>,
}

/// Why there is no advice.
#[derive(Clone, Debug, PartialEq)]
pub enum AimError {
    /// Too few landings.
    TooFew {
        /// So far.
        has: u32,
    },
    /// No mean is allowed.
    NoRoom {
        /// The scatter, in feet.
        sd: f64,
    },
    /// A figure that can't be.
    Figure(FigureError),
}

impl AimError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::TooFew { has } => words::landing::too_few(has, &FEWEST),
            Self::NoRoom { sd } => words::landing::no_room(&format!("{sd:.2}")),
            Self::Figure(error) => error.text(),
        }
    }
}

words::error!(AimError; Figure(FigureError));

/// What a spot costs with the mean landing at `mean` feet from the target.
pub fn cost(mean: f64, sd: f64, tolerance: Tolerance, guard: Length, costs: &AimCosts) -> f64 {
    let (high, low) = ((tolerance.high - guard).feet(), -tolerance.low.feet());
    costs.spot_sf * costs.gravel_cf * expected_low_ft(mean, sd)
        + costs.shallow * normal((mean - high) / sd)
        + costs.too_deep * normal((low - mean) / sd)
}

/// The means that are allowed, in hundredths of a foot: from 1.5 standard deviations above the low limit up to the
/// guard below the high one.
fn allowed(sd: f64, tolerance: Tolerance, guard: Length) -> std::ops::RangeInclusive<i64> {
    let low = (-tolerance.low.feet() + ROOM * sd) * 100.0;
    let high = (tolerance.high - guard).feet() * 100.0;
    whole((low - 1e-9).ceil())..=whole((high + 1e-9).floor())
}

fn curve(sd: f64, tolerance: Tolerance, guard: Length, costs: &AimCosts) -> Vec<AimPoint> {
    allowed(sd, tolerance, guard)
        .map(|hundredths| {
            let at = Length::from_hundredths_of_a_foot(hundredths);
            AimPoint {
                at,
                cost: cost(at.feet(), sd, tolerance, guard, costs),
            }
        })
        .collect()
}

fn least(curve: &[AimPoint]) -> Option<AimPoint> {
    curve
        .iter()
        .copied()
        .min_by(|one, other| one.cost.total_cmp(&other.cost))
}

/// Where to aim.
///
/// # Errors
/// When there are too few landings, no mean is allowed, or a figure is one that no site has.
pub fn advise(
    landing: &Landing,
    tolerance: Tolerance,
    guard: Length,
    costs: &AimCosts,
) -> Result<Advice, AimError> {
    if landing.count < FEWEST {
        return Err(AimError::TooFew { has: landing.count });
    }
    can_be(Figure::Count, f64::from(landing.count))?;
    let sd = can_be(Figure::Scatter, landing.sd_ft)?;
    can_be(Figure::Area, costs.spot_sf)?;
    for limit in [tolerance.high, tolerance.low, guard] {
        can_be(Figure::Tolerance, limit.feet())?;
    }
    for money in [costs.gravel_cf, costs.shallow, costs.too_deep] {
        can_be(Figure::Money, money)?;
    }
    let curve = curve(sd, tolerance, guard, costs);
    let best = least(&curve).ok_or(AimError::NoRoom { sd })?;
    let to_set = |mean: Length, lands: f64| {
        let hundredths = (mean.feet() - lands) * 100.0;
        Length::from_hundredths_of_a_foot(whole(hundredths.round()))
    };
    let (tight, wide) = landing.sd_between(SURE);
    let means = [tight, sd, wide].map(|sd| {
        let other = self::curve(sd, tolerance, guard, costs);
        least(&other).map_or(best.at, |point| point.at)
    });
    let off = SURE_Z * landing.mean_doubt_ft();
    let aims = means.iter().flat_map(|mean| {
        [landing.mean_ft - off, landing.mean_ft + off].map(|lands| to_set(*mean, lands))
    });
    let (mut from, mut to) = (
        to_set(best.at, landing.mean_ft),
        to_set(best.at, landing.mean_ft),
    );
    for aim in aims {
        from = from.min(aim);
        to = to.max(aim);
    }
    Ok(Advice {
        aim: to_set(best.at, landing.mean_ft),
        mean: best.at,
        cost: best.cost,
        cost_on_target: cost(0.0, sd, tolerance, guard, costs),
        from,
        to,
        curve,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn footing() -> Tolerance {
        Tolerance::new(ft(10), ft(20)).unwrap()
    }

    fn costs(shallow: f64) -> AimCosts {
        AimCosts {
            spot_sf: 60.0,
            gravel_cf: 2.60,
            shallow,
            too_deep: 40.0,
        }
    }

    fn landing(mean_ft: f64, sd_ft: f64) -> Landing {
        Landing {
            count: 10,
            mean_ft,
            sd_ft,
        }
    }

    #[test]
    fn a_machine_that_lands_high_by_itself_is_aimed_deeper() {
        let level = advise(&landing(0.0, 0.05), footing(), ft(2), &costs(96.0)).unwrap();
        let high = advise(&landing(0.03, 0.05), footing(), ft(2), &costs(96.0)).unwrap();
        assert_eq!(high.aim, level.aim - ft(3));
        assert_eq!(high.mean, level.mean);
        assert!(high.from < high.aim && high.aim < high.to, "{high:?}");
    }

    #[test]
    fn too_few_or_no_room_is_said() {
        let few = Landing {
            count: 7,
            ..landing(0.0, 0.05)
        };
        let error = advise(&few, footing(), ft(2), &costs(96.0)).unwrap_err();
        assert_eq!(error, AimError::TooFew { has: 7 });
        assert!(error.text().spanish.contains("hacen falta 8"));
        let wild = advise(&landing(0.0, 0.30), footing(), ft(2), &costs(96.0)).unwrap_err();
        assert!(wild.to_string().contains("0.30 ft"), "{wild}");
        assert!(advise(&landing(0.0, 0.05), footing(), ft(2), &costs(-1.0)).is_err());
        // A limit that no footing has would make a curve that fills the memory.
        let endless = Tolerance::new(ft(10_000_000_000), ft(20)).unwrap();
        let error = advise(&landing(0.0, 0.05), endless, ft(2), &costs(96.0)).unwrap_err();
        assert!(error.to_string().contains("tolerance"), "{error}");
        // More passes than a site ever sees would be summed one by one.
        let endless = Landing {
            count: u32::MAX,
            ..landing(0.0, 0.05)
        };
        assert!(advise(&endless, footing(), ft(2), &costs(96.0)).is_err());
    }

    proptest! {
        /// No allowed mean costs less, and dearer shallow spots never raise the aim.
        #[test]
        fn nothing_is_cheaper(sd in 0.02..0.09_f64, shallow in 0.0..300.0_f64, more in 0.0..200.0_f64) {
            let here = advise(&landing(0.0, sd), footing(), ft(2), &costs(shallow)).unwrap();
            prop_assert!(here.curve.iter().all(|point| point.cost >= here.cost));
            let dearer = advise(&landing(0.0, sd), footing(), ft(2), &costs(shallow + more)).unwrap();
            prop_assert!(dearer.mean <= here.mean);
        }
    }
}
