//! Why does the check shot miss: slips that would explain a misclosure, ranked.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::typed::{digits_swapped, feet_and_inches, inches_as_tenths};
use super::{fit, likeliest};
use crate::length::Length;
use crate::rod::Rod;

/// A slip that may have been made.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Slip {
    /// The rod stood on another benchmark.
    OtherBenchmark {
        /// The one that was named.
        used: String,
        /// The one it may have been.
        perhaps: String,
    },
    /// A foot too much or too little.
    WholeFoot,
    /// A tenth too much or too little.
    Tenth,
    /// Two digits changed places.
    DigitsSwapped {
        /// As typed.
        typed: Length,
        /// What it may have been.
        perhaps: Length,
    },
    /// The rod's bracket was left off, or on.
    Bracket,
    /// A section of the rod was not drawn out, or was counted twice.
    RodSection,
    /// Inches typed as if they were tenths.
    InchesAsTenths {
        /// As typed.
        typed: Length,
        /// What it may have been.
        perhaps: Length,
    },
    /// The laser was lifted or moved after the backsight: a second shot on its benchmark tells this from every other slip.
    LaserMoved {
        /// The benchmark of the backsight.
        shoot: String,
        /// What the rod reads on it now if the laser moved, bracket left out; as booked if it did not.
        reads: Length,
    },
}

/// A check shot that misses.
#[derive(Clone, Debug)]
pub struct Misclosure<'a> {
    /// (HI − FS) − benchmark.
    pub residual: Length,
    /// The benchmark that the backsight is booked on.
    pub backsight_on: &'a str,
    /// The benchmark that the check is booked on.
    pub checked_on: &'a str,
    /// All benchmarks of the site with their elevations.
    pub benchmarks: &'a [(String, Length)],
    /// The backsight, bracket included.
    pub backsight: Length,
    /// The check's foresight, bracket included.
    pub foresight: Length,
    /// The rod of the foresight.
    pub rod: &'a Rod,
    /// Benchmarks have agreed on this set-up before: no slip of the backsight was made, and time has passed.
    pub proven: bool,
    /// Two standard deviations of the residual: what a slip may leave over and still explain it.
    pub doubt: Length,
}

impl Misclosure<'_> {
    /// How well a slip of this size explains the residual: 0 when more than the doubt is left over.
    fn fit(&self, slip: Length) -> f64 {
        self.fit_within(slip, self.doubt)
    }

    fn fit_within(&self, slip: Length, doubt: Length) -> f64 {
        let left = (self.residual - slip).abs();
        if left > doubt {
            return 0.0;
        }
        fit(left.feet(), (doubt.feet() / 2.0).max(1e-6))
    }

    /// The better fit of a slip that may have gone either way.
    fn fit_either_way(&self, slip: Length) -> f64 {
        self.fit(slip).max(self.fit(-slip))
    }
}

/// What a reading to the whole inch leaves out at most.
const HALF_AN_INCH: Length = Length::from_sixteenths_of_an_inch(8);

/// The slips that would explain a misclosure, likeliest first, two at most; none when the residual is within
/// the doubt, or when nothing explains it. The weights say how often crews make each slip (from memory).
pub fn explain_misclosure(missed: &Misclosure) -> Vec<Slip> {
    if missed.residual.abs() <= missed.doubt {
        return vec![];
    }
    let mut weighed = other_benchmarks(missed);
    weighed.extend(typed_otherwise(missed));
    let hundredths = Length::from_hundredths_of_a_foot;
    weighed.push((
        0.20 * missed.fit_either_way(hundredths(100)),
        Slip::WholeFoot,
    ));
    weighed.push((0.10 * missed.fit_either_way(hundredths(10)), Slip::Tenth));
    if missed.rod.bracket != Length::ZERO {
        weighed.push((
            0.10 * missed.fit_either_way(missed.rod.bracket),
            Slip::Bracket,
        ));
    }
    let section = sections(missed.rod)
        .into_iter()
        .map(|section| missed.fit_either_way(section))
        .fold(0.0, f64::max);
    weighed.push((0.05 * section, Slip::RodSection));
    weighed.extend(moved(missed));
    weighed.retain(|(weight, _)| *weight > 0.0);
    likeliest(weighed)
}

/// A tripod settles, is kicked or is set level again by so much at most; farther, somebody has lifted it on purpose.
const SETTLES: Length = Length::from_hundredths_of_a_foot(50);

/// A laser that moved explains a miss of any size, so that it comes behind each slip of just this size; on a set-up that was
/// proven before, a small miss is the laser's first.
fn moved(missed: &Misclosure) -> Option<(f64, Slip)> {
    let reads = missed.backsight - missed.residual - missed.rod.bracket;
    if reads < Length::ZERO || reads > missed.rod.length {
        return None;
    }
    let weight = match (missed.residual.abs() <= SETTLES, missed.proven) {
        (true, true) => 0.30,
        (true, false) => 0.06,
        (false, _) => 0.02,
    };
    let shoot = missed.backsight_on.to_owned();
    Some((weight, Slip::LaserMoved { shoot, reads }))
}

/// Backsight or check on another benchmark than booked. The backsight comes first: it is made once, in a hurry.
fn other_benchmarks(missed: &Misclosure) -> Vec<(f64, Slip)> {
    let elevation = |id: &str| {
        missed
            .benchmarks
            .iter()
            .find(|(other, _)| other == id)
            .map(|(_, elevation)| *elevation)
    };
    let (Some(backsight), Some(checked)) =
        (elevation(missed.backsight_on), elevation(missed.checked_on))
    else {
        return vec![];
    };
    let mut weighed = Vec::new();
    for (other, elevation) in missed.benchmarks {
        for (weight, used, slip) in [
            (0.30, missed.backsight_on, backsight - *elevation),
            (0.25, missed.checked_on, *elevation - checked),
        ] {
            if other != used {
                weighed.push((
                    weight * missed.fit(slip),
                    Slip::OtherBenchmark {
                        used: used.to_owned(),
                        perhaps: other.clone(),
                    },
                ));
            }
        }
    }
    weighed
}

/// Backsight or foresight typed otherwise than read. A backsight typed too large lifts everything by as much;
/// a foresight typed too large lowers its own shot.
fn typed_otherwise(missed: &Misclosure) -> Vec<(f64, Slip)> {
    let rod = missed.rod;
    let mut weighed = Vec::new();
    for (read, sign) in [(missed.backsight, 1), (missed.foresight, -1)] {
        let typed = read - rod.bracket;
        for perhaps in digits_swapped(typed, rod) {
            let weight = 0.15 * missed.fit((typed - perhaps) * sign);
            weighed.push((weight, Slip::DigitsSwapped { typed, perhaps }));
        }
        for (feet, inches) in inches_as_tenths(typed, rod) {
            let perhaps = feet_and_inches(feet, inches);
            // Whoever types 7.10 for 7 ft 10 3/8 in leaves the eighths out.
            let fits = missed.fit_within((typed - perhaps) * sign, missed.doubt + HALF_AN_INCH);
            let weight = 0.12 * fits;
            weighed.push((weight, Slip::InchesAsTenths { typed, perhaps }));
        }
    }
    weighed
}

/// The lengths of the rod's sections.
fn sections(rod: &Rod) -> Vec<Length> {
    if rod.joints.is_empty() {
        return vec![];
    }
    let mut ends = rod.joints.clone();
    ends.push(rod.length);
    let mut below = Length::ZERO;
    ends.into_iter()
        .map(|end| {
            let section = end - below;
            below = end;
            section
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rod::RodUnit;
    use crate::rod::tests::rod;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    /// Invented, demo: the benchmarks of the demo site.
    fn benchmarks() -> Vec<(String, Length)> {
        [
            ("BM-1", 29_984),
            ("BM-2", 30_136),
            ("BM-3", 30_592),
            ("BM-4", 31_348),
        ]
        .map(|(id, elevation)| (id.to_owned(), ft(elevation)))
        .to_vec()
    }

    fn explain(residual: i64, backsight: i64, foresight: i64, bracket: i64) -> Vec<Slip> {
        let mut rod = rod(RodUnit::FeetHundredths);
        rod.bracket = ft(bracket);
        explain_misclosure(&Misclosure {
            residual: ft(residual),
            backsight_on: "BM-1",
            checked_on: "BM-3",
            benchmarks: &benchmarks(),
            backsight: ft(backsight),
            foresight: ft(foresight),
            rod: &rod,
            proven: false,
            doubt: ft(4),
        })
    }

    /// The laser was moved, and BM-1 now reads so many hundredths.
    fn moved(reads: i64) -> Slip {
        Slip::LaserMoved {
            shoot: "BM-1".into(),
            reads: ft(reads),
        }
    }

    /// Invented, demo: BM-1 was booked, the rod stood on BM-2.
    #[test]
    fn the_other_benchmark_is_asked_first() {
        let slips = explain(-152, 683, 227, 0);
        let other = Slip::OtherBenchmark {
            used: "BM-1".into(),
            perhaps: "BM-2".into(),
        };
        assert_eq!(slips.first(), Some(&other), "{slips:?}");
        assert!(slips.len() <= 2);
    }

    #[test]
    fn each_slip_is_found_by_its_size() {
        // The backsight of 5.55, less what it misses by, is what BM-1 reads once the laser has moved.
        for (residual, slip) in [
            (100, Slip::WholeFoot),
            (-100, Slip::WholeFoot),
            (-11, Slip::Tenth),
            (-480, Slip::RodSection),
        ] {
            let behind = moved(555 - residual);
            assert_eq!(explain(residual, 555, 444, 0), [slip, behind], "{residual}");
        }
        assert_eq!(explain(50, 555, 444, 50), [Slip::Bracket, moved(455)]);
    }

    #[test]
    fn swapped_digits_go_by_the_side_they_stand_on() {
        let swap = |typed, perhaps| Slip::DigitsSwapped {
            typed: ft(typed),
            perhaps: ft(perhaps),
        };
        assert_eq!(explain(-27, 558, 444, 0), [swap(558, 585), moved(585)]);
        assert_eq!(explain(27, 444, 558, 0), [swap(558, 585), moved(417)]);
    }

    #[test]
    fn inches_typed_as_tenths_are_found() {
        let slips = explain(73, 444, 710, 0);
        let inches = Slip::InchesAsTenths {
            typed: ft(710),
            perhaps: Length::from_sixteenths_of_an_inch(94 * 16),
        };
        assert_eq!(slips, [inches, moved(371)]);
    }

    #[test]
    fn a_miss_within_the_doubt_has_no_explanation_and_one_of_no_known_size_is_a_laser_that_moved() {
        assert_eq!(explain(4, 555, 444, 0), []);
        assert_eq!(explain(-317, 555, 444, 0), [moved(872)]);
        // Lifted by more than the rod on BM-1 could show: it can't have been.
        assert_eq!(explain(-917, 555, 444, 0), []);
        assert_eq!(explain(617, 555, 444, 0), []);
    }

    /// Common practice: once two benchmarks have agreed, a tenth is the tripod before it is the rod.
    #[test]
    fn on_a_set_up_that_was_proven_a_small_miss_is_the_lasers_first() {
        let rod = rod(RodUnit::FeetHundredths);
        let explain = |proven, residual| {
            explain_misclosure(&Misclosure {
                residual: ft(residual),
                backsight_on: "BM-1",
                checked_on: "BM-3",
                benchmarks: &benchmarks(),
                backsight: ft(555),
                foresight: ft(444),
                rod: &rod,
                proven,
                doubt: ft(4),
            })
        };
        assert_eq!(explain(true, 10), [moved(545), Slip::Tenth]);
        assert_eq!(explain(false, 10), [Slip::Tenth, moved(545)]);
        assert_eq!(explain(true, -100), [Slip::WholeFoot, moved(655)]);
    }
}
