//! Which slip would bring stray plan points on to the lot: suspected with a count, never put right.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::{FrameError, PlanNumber, PlanPoint, PlanUnit};
use crate::length::Length;
use crate::point::Point;
use crate::target::boundary;
use crate::vector::rounded;

/// Points this far outside the lot are still believed: 200 ft (common practice).
const MARGIN: Length = Length::from_hundredths_of_a_foot(20_000);

/// A pin found twice is the same within this, in the plan's feet (common practice).
const SAME_PIN: f64 = 0.05;

/// What may have happened to the numbers.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
#[schema(as = PlanSlip)]
pub enum Slip {
    /// East and north are in each other's place.
    Swapped,
    /// They are metres, read as feet.
    Metres,
    /// They are feet, read as metres.
    Feet,
    /// The point slipped one place: they are ten times too large.
    TenTimes,
    /// The point slipped one place: they are ten times too small.
    ATenth,
    /// They count in the other foot, of the international and the US survey foot.
    OtherFoot,
}

/// A slip and how many of the stray points it would bring on to the lot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Suspicion {
    /// Which.
    pub slip: Slip,
    /// So many stray points would then lie within 200 ft of the lot.
    pub explains: usize,
    /// Of so many.
    pub of: usize,
}

/// What would explain the points that lie more than 200 ft outside the lot, the best first; none when no point does or
/// nothing explains it. The lot's corners are counted from the origin, in order.
///
/// # Errors
/// When the lot has fewer than three corners given from the origin, or one lies too far off to be compared.
pub fn suspicions(
    unit: PlanUnit,
    origin: PlanPoint,
    lot: &[Point],
    points: &[PlanPoint],
) -> Result<Vec<Suspicion>, FrameError> {
    if lot.len() < 3 {
        return Err(FrameError::TooFewPins { pins: lot.len() });
    }
    let zero = PlanNumber::parse("0")?;
    let foot = unit.length(zero, PlanNumber::parse("1")?)?;
    let corner = (origin.east.value(), origin.north.value());
    // A wrong number may lie anywhere: one that leaves the scale is simply not on the lot.
    let on_lot = |(east, north): (f64, f64)| {
        let unit = foot.tenth_micrometres() as f64;
        let at = Point {
            x: rounded((east - corner.0) * unit),
            y: rounded((north - corner.1) * unit),
        };
        let far = |length: Length| Length::try_from(length.tenth_micrometres()).is_err();
        !far(at.x) && !far(at.y) && boundary::outside_by(lot, at).is_none_or(|by| by <= MARGIN)
    };
    let plain = |point: &PlanPoint| (point.east.value(), point.north.value());
    let stray: Vec<(f64, f64)> = points.iter().map(plain).filter(|at| !on_lot(*at)).collect();
    let times = |factor: f64| move |(east, north): (f64, f64)| (east * factor, north * factor);
    let explains = |slip: Slip| {
        let undone = |at: (f64, f64)| match slip {
            Slip::Swapped => (at.1, at.0),
            Slip::Metres => times(1.0 / 0.3048)(at),
            Slip::Feet => times(0.3048)(at),
            Slip::TenTimes => times(0.1)(at),
            Slip::ATenth => times(10.0)(at),
            // Four feet in two million bring no stray point home: known points tell it, see `other_foot`.
            Slip::OtherFoot => at,
        };
        stray.iter().filter(|at| on_lot(undone(**at))).count()
    };
    let all = [
        Slip::Swapped,
        Slip::Metres,
        Slip::Feet,
        Slip::TenTimes,
        Slip::ATenth,
    ];
    let mut found: Vec<Suspicion> = all
        .into_iter()
        .map(|slip| Suspicion {
            slip,
            explains: explains(slip),
            of: stray.len(),
        })
        .filter(|one| one.explains > 0)
        .collect();
    found.sort_by_key(|one| std::cmp::Reverse(one.explains));
    Ok(found)
}

/// Points that the plan knows by the same name lie off it by what the two feet differ there, 2 parts in 1,000,000 of the
/// coordinate: how many, of how many that are known. Each pair is the file's place and the plan's, in the plan's unit.
pub fn other_foot(unit: PlanUnit, pairs: &[(PlanPoint, PlanPoint)]) -> Option<Suspicion> {
    let (foot, survey) = (PlanUnit::Foot, PlanUnit::SurveyFoot);
    let other = match unit {
        PlanUnit::Foot => survey,
        PlanUnit::SurveyFoot => foot,
        PlanUnit::Metre => return None,
    };
    let apart = |one: PlanPoint, other: PlanPoint| {
        let (east, north) = (
            other.east.value() - one.east.value(),
            other.north.value() - one.north.value(),
        );
        east.hypot(north)
    };
    let as_other = |at: PlanPoint| PlanPoint {
        east: other.of(unit, at.east),
        north: other.of(unit, at.north),
    };
    let as_unit = |at: PlanPoint| PlanPoint {
        east: unit.of(other, at.east),
        north: unit.of(other, at.north),
    };
    let explains = |(file, plan): &&(PlanPoint, PlanPoint)| {
        let better = apart(as_other(*file), *plan).min(apart(as_unit(*file), *plan));
        better <= SAME_PIN && apart(*file, *plan) > 2.0 * SAME_PIN
    };
    let explains = pairs.iter().filter(explains).count();
    (explains > 0).then_some(Suspicion {
        slip: Slip::OtherFoot,
        explains,
        of: pairs.len(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn plan(east: &str, north: &str) -> PlanPoint {
        PlanPoint {
            east: PlanNumber::parse(east).unwrap(),
            north: PlanNumber::parse(north).unwrap(),
        }
    }

    fn found(points: &[PlanPoint]) -> Vec<Suspicion> {
        let at = |x, y| Point {
            x: Length::from_hundredths_of_a_foot(x),
            y: Length::from_hundredths_of_a_foot(y),
        };
        let lot = [at(0, 0), at(10_000, 0), at(10_000, 12_000), at(0, 12_000)];
        suspicions(PlanUnit::Foot, plan("2000000", "700000"), &lot, points).unwrap()
    }

    /// NIST Special Publication 811, appendix B: the two feet lie 4.00 ft apart at 2,000,000 and 1.40 ft at 700,000; the pin is invented.
    #[test]
    fn the_other_foot_is_suspected_from_a_pin_that_the_plan_knows() {
        let pin = plan("2000000", "700000");
        let off = (plan("2000004.000", "700001.400"), pin);
        let back = (plan("1999996.000", "699998.600"), pin);
        for unit in [PlanUnit::Foot, PlanUnit::SurveyFoot] {
            let found = other_foot(unit, &[off, back, (pin, pin)]).unwrap();
            assert_eq!(
                (found.slip, found.explains, found.of),
                (Slip::OtherFoot, 2, 3)
            );
        }
        assert_eq!(
            other_foot(PlanUnit::Foot, &[(plan("2000004.2", "700001.4"), pin)]),
            None
        );
        assert_eq!(other_foot(PlanUnit::Metre, &[off]), None);
        assert_eq!(other_foot(PlanUnit::Foot, &[]), None);
    }

    /// Invented, demo.
    #[test]
    fn each_slip_is_suspected_from_its_own_trace() {
        for (stray, slip) in [
            (plan("700050", "2000050"), Slip::Swapped),
            (plan("609615.24", "213375.24"), Slip::Metres),
            (plan("20000500", "7000500"), Slip::TenTimes),
            (plan("200005.0", "70005.0"), Slip::ATenth),
        ] {
            let explained = Suspicion {
                slip,
                explains: 1,
                of: 1,
            };
            assert_eq!(found(&[stray, plan("2000010", "700010")]), [explained]);
        }
        assert_eq!(found(&[plan("2000010", "700010")]), []);
        assert_eq!(found(&[plan("5", "5")]), []);
    }
}
