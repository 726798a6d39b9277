//! What of a run is not proven: ground farther than a reach from every proven reading, never across a step.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::length::Length;

/// A proven reading speaks for this much of a footing, either way (common practice).
pub const FOOTING_REACH: Length = Length::from_hundredths_of_a_foot(500);
/// And for this much of a pad.
pub const PAD_REACH: Length = Length::from_hundredths_of_a_foot(1500);

/// A stretch of a run, in stations.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Stretch {
    /// From this station …
    pub from: Length,
    /// … to this.
    pub to: Length,
}

impl Stretch {
    /// How long it is.
    pub fn length(&self) -> Length {
        self.to - self.from
    }
}

/// The stretches of a run from 0 to `length` that no proven reading speaks for, in order, parted at steps.
/// `proven` are the stations of readings that are on grade beyond doubt from a laser that was checked since;
/// a reading at a step's own station speaks for the ground up-station of it, as the step's elevation does.
pub fn unproven(
    length: Length,
    steps: &[Length],
    proven: &[Length],
    reach: Length,
) -> Vec<Stretch> {
    let mut faces: Vec<Length> = steps
        .iter()
        .copied()
        .filter(|step| *step > Length::ZERO && *step < length)
        .collect();
    faces.push(Length::ZERO);
    faces.push(length);
    faces.sort_unstable();
    faces.dedup();
    let mut proven = proven.to_vec();
    proven.sort_unstable();
    let reach = reach.max(Length::ZERO);
    let mut gaps = Vec::new();
    for pair in faces.windows(2) {
        let (from, to) = (pair[0], pair[1]);
        let last = to == length;
        let mut covered_to = from;
        for at in proven
            .iter()
            .filter(|at| **at >= from && (**at < to || (last && **at == to)))
        {
            if *at - reach > covered_to {
                gaps.push(Stretch {
                    from: covered_to,
                    to: *at - reach,
                });
            }
            covered_to = covered_to.max(*at + reach);
        }
        if covered_to < to {
            gaps.push(Stretch {
                from: covered_to,
                to,
            });
        }
    }
    gaps
}

/// How many places, picked at random and all found in, say with this confidence that at least this share is in:
/// ln(1 − confidence) / ln(share), rounded up (statistics textbooks, success-run). `None` unless both lie between
/// 0 and 1: nothing proves all of it.
pub fn places_to_say(confidence: f64, share: f64) -> Option<u32> {
    let between = |value: f64| 0.0 < value && value < 1.0;
    if !(between(confidence) && between(share)) {
        return None;
    }
    let places = ((1.0 - confidence).ln() / share.ln()).ceil();
    u32::try_from(crate::length::whole(places)).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ft(feet: i64) -> Length {
        Length::from_hundredths_of_a_foot(feet * 100)
    }

    fn gaps(length: i64, steps: &[i64], proven: &[i64]) -> Vec<(Length, Length)> {
        let lengths = |feet: &[i64]| feet.iter().map(|at| ft(*at)).collect::<Vec<_>>();
        unproven(ft(length), &lengths(steps), &lengths(proven), FOOTING_REACH)
            .iter()
            .map(|gap| (gap.from, gap.to))
            .collect()
    }

    /// Derived by hand: a reading at 2 speaks up to 7, one at 20 from 15 on.
    #[test]
    fn what_nobody_shot_is_a_gap() {
        assert_eq!(
            gaps(64, &[], &[2, 20, 25]),
            [(ft(7), ft(15)), (ft(30), ft(64))]
        );
        assert_eq!(gaps(10, &[], &[5]), []);
        assert_eq!(gaps(10, &[], &[]), [(ft(0), ft(10))]);
    }

    #[test]
    fn a_reading_does_not_speak_across_a_step() {
        assert_eq!(gaps(20, &[10], &[8]), [(ft(0), ft(3)), (ft(10), ft(20))]);
        assert_eq!(gaps(20, &[10], &[10]), [(ft(0), ft(10)), (ft(15), ft(20))]);
        assert_eq!(gaps(20, &[10], &[20, 5]), [(ft(10), ft(15))]);
    }

    /// Derived: ln 0.05 / ln 0.90 = 28.4 and ln 0.05 / ln 0.80 = 13.4.
    #[test]
    fn few_places_say_little() {
        assert_eq!(places_to_say(0.95, 0.90), Some(29));
        assert_eq!(places_to_say(0.95, 0.80), Some(14));
        for (confidence, share) in [(1.0, 0.9), (0.95, 1.0), (0.0, 0.5), (f64::NAN, 0.5)] {
            assert_eq!(places_to_say(confidence, share), None);
        }
    }

    proptest! {
        /// Every foot is in a gap exactly when no reading between the same steps lies within reach.
        #[test]
        fn each_foot_is_judged_by_its_own_step(
            steps in prop::collection::vec(1_i64..60, 0..4), proven in prop::collection::vec(0_i64..60, 0..8)
        ) {
            let gaps = gaps(60, &steps, &proven);
            for foot in 0..60 {
                // The middle of the foot, so that no edge is hit.
                let middle = ft(foot) + Length::from_hundredths_of_a_foot(50);
                let side = |at: i64| steps.iter().filter(|step| **step <= at).count();
                let spoken_for = proven
                    .iter()
                    .any(|at| side(*at) == side(foot) && (ft(*at) - middle).abs() < FOOTING_REACH);
                let in_gap = gaps.iter().any(|(from, to)| *from < middle && middle < *to);
                prop_assert_eq!(in_gap, !spoken_for, "{}", foot);
            }
        }
    }
}
