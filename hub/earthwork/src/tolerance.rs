//! Is it in: high, on, low, or too close to call, under unlike tolerances and a guard band.
//!
//! With h and l the allowed high and low, and g the guard band: HIGH above h + g, ON from −l + g to h − g with
//! both ends, LOW below −l − g, and between them too close to call, on the high or the low side. The guard
//! band is that of decision rules for measurement (ILAC-G8 in its general form). A guard band as wide as the
//! tolerance or wider (2·g ≥ h + l, g above zero) proves nothing: there is no ON.

use std::cmp::Ordering;

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::length::{FOOT, Length, whole};
use crate::uncertainty::{Doubts, guard};

/// How far the ground may stand from its target; both ways at or above zero.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
pub struct Tolerance {
    /// Allowed high.
    pub high: Length,
    /// Allowed low, as a positive length.
    pub low: Length,
}

/// Why two lengths are no tolerance.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ToleranceError {
    /// A side below zero.
    Negative {
        /// `high` or `low`.
        side: &'static str,
        /// What was written.
        value: Length,
    },
}

impl ToleranceError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::Negative { side, value } => words::tolerance::negative(value, side),
        }
    }
}

words::error!(ToleranceError);

impl Tolerance {
    /// A tolerance from its two sides.
    ///
    /// # Errors
    /// When a side is below zero.
    pub fn new(high: Length, low: Length) -> Result<Tolerance, ToleranceError> {
        for (side, value) in [("high", high), ("low", low)] {
            if value < Length::ZERO {
                return Err(ToleranceError::Negative { side, value });
            }
        }
        Ok(Tolerance { high, low })
    }
}

/// What the readings say of the ground.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// Too high beyond doubt.
    High,
    /// Within tolerance beyond doubt.
    On,
    /// Too low beyond doubt.
    Low,
    /// Too close to call, at the high limit.
    TooCloseHigh,
    /// Too close to call, at the low limit.
    TooCloseLow,
}

/// The verdict on the mean of the differences (measured − target). Sums are compared, so nothing is rounded.
///
/// When the tolerance can't be proven the two doubtful bands meet: the nearer limit names the side, and the
/// middle goes to the high side, which is the one the crew can trim. No readings prove nothing: too close.
///
/// ```
/// use earthwork::length::{Length, parse};
/// use earthwork::tolerance::{Tolerance, Verdict, verdict};
///
/// # fn main() -> Result<(), Box<dyn std::error::Error>> {
/// let tolerance = Tolerance::new(parse("0.10 ft")?, parse("0.10 ft")?)?;
/// let at_the_limit = [parse("0.10 ft")?];
/// assert_eq!(verdict(&at_the_limit, tolerance, Length::ZERO), Verdict::On);
/// let guard = parse("0.02 ft")?;
/// assert_eq!(verdict(&at_the_limit, tolerance, guard), Verdict::TooCloseHigh);
/// # Ok(())
/// # }
/// ```
pub fn verdict(devs: &[Length], tolerance: Tolerance, guard: Length) -> Verdict {
    let n = i128::try_from(devs.len()).unwrap_or(i128::MAX);
    let counts = |length: Length| i128::from(length.tenth_micrometres());
    let sum: i128 = devs.iter().map(|dev| counts(*dev)).sum();
    let guard = counts(guard.max(Length::ZERO));
    let (high, low) = (counts(tolerance.high), -counts(tolerance.low));
    if n == 0 {
        Verdict::TooCloseHigh
    } else if sum > n * (high + guard) {
        Verdict::High
    } else if sum < n * (low - guard) {
        Verdict::Low
    } else if provable(high - low, guard) && n * (low + guard) <= sum && sum <= n * (high - guard) {
        Verdict::On
    } else {
        match (2 * sum).cmp(&(n * (high + low))) {
            Ordering::Less => Verdict::TooCloseLow,
            Ordering::Equal | Ordering::Greater => Verdict::TooCloseHigh,
        }
    }
}

/// Whether any reading with this guard band could prove the ground in tolerance. Where none can, no verdict is ON; a guard
/// of nothing leaves nothing in doubt.
pub fn can_be_proven(tolerance: Tolerance, guard: Length) -> bool {
    let counts = |length: Length| i128::from(length.tenth_micrometres());
    provable(
        counts(tolerance.high) + counts(tolerance.low),
        counts(guard.max(Length::ZERO)),
    )
}

/// The same of the whole width of a tolerance, in counts.
fn provable(width: i128, guard: i128) -> bool {
    guard == 0 || width > 2 * guard
}

/// The distance to move the laser within, in whole feet, for the tolerance to be provable at all with these
/// doubts: the foresight distance solved from the uncertainty. `None` when no distance helps, or when the
/// laser's own doubt is zero and distance does not matter.
pub fn furthest_provable(doubts: &Doubts, tolerance: Tolerance, k: f64) -> Option<Length> {
    let laser = doubts.laser_per_100_ft.feet() / 100.0;
    if laser <= 0.0 || !(k > 0.0 && k.is_finite()) {
        return None;
    }
    let shots = f64::from(doubts.shots.max(1));
    let near = Doubts {
        foresight_distance: Length::ZERO,
        ..doubts.clone()
    };
    let most = (tolerance.high + tolerance.low).feet() / (2.0 * k);
    let left = most * most - near.variance();
    if left <= 0.0 {
        return None;
    }
    let feet = (left * shots).sqrt() / laser;
    let mut furthest = whole(feet.min(10_000.0).floor());
    // The guard band is rounded up, so the last foot may not do.
    while furthest > 0 {
        let foresight_distance = Length::from_tenth_micrometres(furthest * FOOT);
        let at = Doubts {
            foresight_distance,
            ..doubts.clone()
        };
        if can_be_proven(tolerance, guard(&at, k)) {
            return Some(foresight_distance);
        }
        furthest -= 1;
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::uncertainty::{Care, Surface};

    fn th(thousandths: i64) -> Length {
        Length::from_thousandths_of_a_foot(thousandths)
    }

    fn tolerance(high: i64, low: i64) -> Tolerance {
        Tolerance::new(th(high), th(low)).unwrap()
    }

    /// Derived from the rule of the guard band, closed intervals: every edge and one count beyond it.
    #[test]
    fn every_edge_of_unlike_tolerances_is_where_the_rule_puts_it() {
        let count = Length::from_tenth_micrometres(1);
        let call = |dev| verdict(&[dev], tolerance(100, 200), th(20));
        for (edge, at, beyond) in [
            (th(120), Verdict::TooCloseHigh, Verdict::High),
            (th(80), Verdict::On, Verdict::TooCloseHigh),
            (th(-180) - count, Verdict::TooCloseLow, Verdict::On),
            (th(-220) - count, Verdict::Low, Verdict::TooCloseLow),
        ] {
            assert_eq!(call(edge), at, "{edge}");
            assert_eq!(call(edge + count), beyond, "{edge} and a count");
        }
    }

    /// Derived from closed intervals: a tenth high with no guard band is on.
    #[test]
    fn the_tolerance_itself_is_on_without_a_guard_band() {
        for (dev, expected) in [
            (100, Verdict::On),
            (101, Verdict::High),
            (-200, Verdict::On),
            (-201, Verdict::Low),
        ] {
            assert_eq!(
                verdict(&[th(dev)], tolerance(100, 200), Length::ZERO),
                expected,
                "{dev}"
            );
        }
    }

    #[test]
    fn means_are_compared_as_sums() {
        let third = [th(80), th(80), th(80) + Length::from_tenth_micrometres(1)];
        assert_eq!(
            verdict(&third, tolerance(100, 200), th(20)),
            Verdict::TooCloseHigh
        );
        assert_eq!(
            verdict(&third[..2], tolerance(100, 200), th(20)),
            Verdict::On
        );
        assert_eq!(
            verdict(&[], tolerance(100, 200), th(20)),
            Verdict::TooCloseHigh
        );
    }

    #[test]
    fn doubtful_bands_that_meet_go_to_the_nearer_side() {
        let call = |dev| verdict(&[th(dev)], tolerance(20, 20), th(30));
        assert!(!can_be_proven(tolerance(20, 20), th(30)));
        assert_eq!(call(1), Verdict::TooCloseHigh);
        assert_eq!(call(0), Verdict::TooCloseHigh);
        assert_eq!(call(-1), Verdict::TooCloseLow);
        assert_eq!(call(51), Verdict::High);
        assert_eq!(call(-51), Verdict::Low);
    }

    /// A guard as wide as the tolerance: nothing is on grade and unprovable at once.
    #[test]
    fn what_cannot_be_proven_is_never_on() {
        let call = |dev, guard| verdict(&[th(dev)], tolerance(100, 60), th(guard));
        assert_eq!(call(20, 79), Verdict::On);
        assert!(can_be_proven(tolerance(100, 60), th(79)));
        assert_eq!(call(20, 80), Verdict::TooCloseHigh);
        assert!(!can_be_proven(tolerance(100, 60), th(80)));
        let exact = tolerance(0, 0);
        assert_eq!(verdict(&[th(0)], exact, Length::ZERO), Verdict::On);
        assert!(can_be_proven(exact, Length::ZERO));
    }

    #[test]
    fn a_negative_tolerance_is_refused() {
        let error = Tolerance::new(th(100), th(-200)).unwrap_err().to_string();
        assert!(error.contains("−0.2 ft low"), "{error}");
    }

    #[test]
    fn the_furthest_provable_distance_is_provable_and_a_foot_more_is_not() {
        let doubts = |distance: i64| Doubts {
            benchmark: th(5),
            reading: Care::Fine,
            coarse_text: false,
            surface: Surface::Trimmed,
            laser_per_100_ft: th(5),
            backsight_distance: th(70_000),
            foresight_distance: th(distance),
            shots: 1,
            own_reading: None,
        };
        let tolerance = tolerance(20, 20);
        let furthest = furthest_provable(&doubts(400_000), tolerance, 1.0).unwrap();
        let feet = furthest.tenth_micrometres() / FOOT;
        assert!(can_be_proven(tolerance, guard(&doubts(feet * 1000), 1.0)));
        assert!(!can_be_proven(
            tolerance,
            guard(&doubts((feet + 1) * 1000), 1.0)
        ));
        assert_eq!(
            furthest_provable(&doubts(60_000), self::tolerance(5, 5), 1.0),
            None
        );
    }
}
