//! Does the reading fit: four rules that ask once, each with its reason.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::typed::{digits_swapped, feet_and_inches, inches_as_tenths};
use super::{Hypothesis, Learned, fit, likeliest};
use crate::length::Length;
use crate::rod::{Rod, RodUnit};

/// How the ground was read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Mode {
    /// A number was read off the rod.
    Rod,
    /// The receiver stood at the grade rod and said that the ground is high.
    ReceiverHigh,
    /// The receiver stood at the grade rod and said that the ground is low.
    ReceiverLow,
}

/// The last reading on the same mark.
#[expect(
    clippy::struct_excessive_bools,
    reason = "four facts that do not depend on one another"
)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Earlier {
    /// Its difference (measured − target).
    pub dev: Length,
    /// It was shot from the same set-up.
    pub same_set_up: bool,
    /// The mark was accepted on it.
    pub accepted: bool,
    /// It said that the ground was high.
    pub said_high: bool,
    /// The ground has changed since, by a slough or by laying the mark again.
    pub ground_changed: bool,
}

/// Another mark near by.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Neighbour {
    /// Its name.
    pub mark: String,
    /// Its target.
    pub target: Length,
    /// How far away it is.
    pub distance: Length,
    /// It was this machine's last mark.
    pub machines_last: bool,
}

/// A reading about to be taken.
#[derive(Clone, Debug)]
pub struct Candidate<'a> {
    /// The elevation it gives.
    pub elevation: Length,
    /// The target of the mark that was picked.
    pub target: Length,
    /// The rod's value, bracket included; zero in receiver mode.
    pub typed: Length,
    /// How it was read.
    pub mode: Mode,
    /// The last reading on this mark.
    pub earlier: Option<Earlier>,
    /// Marks near by.
    pub neighbours: &'a [Neighbour],
    /// The rod that was picked.
    pub rod: &'a Rod,
    /// All rods of the site.
    pub rods: &'a [Rod],
    /// What the day has taught about suggestions.
    pub learned: &'a Learned,
}

impl Candidate<'_> {
    fn dev(&self) -> Length {
        self.elevation - self.target
    }
}

/// What is asked before the call is sent.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Doubt {
    /// The receiver says LOW where the ground was HIGH: which way is it?
    WhichWay,
    /// The ground stands higher than before, and nothing put soil there.
    GroundRose {
        /// By how much.
        by: Length,
        /// What it may have been.
        perhaps: Vec<Perhaps>,
    },
    /// An accepted mark reads otherwise than it did, and nobody was told to dig there: check the laser.
    RepeatOff {
        /// By how much: positive when it reads higher, negative when it reads lower.
        by: Length,
    },
    /// It fits the machine's last mark, not the one that was picked.
    OtherMark {
        /// That mark.
        perhaps: String,
    },
    /// Far below target.
    FarBelow {
        /// By how much.
        by: Length,
        /// What it may have been.
        perhaps: Vec<Perhaps>,
    },
}

/// What a reading may have been instead.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Perhaps {
    /// Another number on the same rod, as it would be typed.
    Reading {
        /// The number.
        value: Length,
    },
    /// Feet and inches, read off a rod in inches.
    FeetInches {
        /// That rod, when the site has one.
        rod: Option<String>,
        /// Feet.
        feet: u8,
        /// Inches.
        inches: u8,
    },
    /// Another mark.
    Mark {
        /// Which.
        id: String,
    },
}

/// A machine takes soil away; more than this is no longer reading error.
const ROSE: Length = Length::from_hundredths_of_a_foot(5);
/// Ground falls for good reasons too, so that only a fall that one repeat alone makes an alarm is asked about (4.5 standard
/// deviations of a repeat); smaller ones add up in `laser::drift`.
const FELL: Length = Length::from_hundredths_of_a_foot(10);
/// A first reading within this of its target needs no explanation; nor one less far below it.
const FAR: Length = Length::from_hundredths_of_a_foot(50);
/// Where the ground was above grade before, a machine that is told how much to take seldom goes this far below.
const TOO_DEEP: Length = Length::from_hundredths_of_a_foot(30);
/// This near another mark's target, a reading fits it.
const FITS: Length = Length::from_hundredths_of_a_foot(10);
/// Nobody takes a mark further away for the one they stand at.
const NEAR_BY: Length = Length::from_hundredths_of_a_foot(1500);

/// What must be asked about a reading, if anything: the first of the four rules that it breaks.
pub fn doubt(reading: &Candidate) -> Option<Doubt> {
    low_after_high(reading)
        .or_else(|| ground_rose(reading))
        .or_else(|| fits_the_last_mark(reading))
        .or_else(|| far_below(reading))
}

/// The receiver's two signs look alike in the sun, and the press is the whole reading: after HIGH, a LOW on
/// the same mark is asked about.
fn low_after_high(reading: &Candidate) -> Option<Doubt> {
    let earlier = reading.earlier?;
    (reading.mode == Mode::ReceiverLow && earlier.said_high).then_some(Doubt::WhichWay)
}

/// Digging does not raise the ground. On an accepted mark, where nobody digs, a rise or a fall is a free check
/// of the laser instead.
fn ground_rose(reading: &Candidate) -> Option<Doubt> {
    let earlier = reading.earlier?;
    let by = reading.dev() - earlier.dev;
    if !earlier.same_set_up || earlier.ground_changed {
        return None;
    }
    if earlier.accepted {
        // A lifted laser makes accepted ground fall, and a dropped one makes it rise.
        return (by > ROSE || -by > FELL).then_some(Doubt::RepeatOff { by });
    }
    if by <= ROSE {
        return None;
    }
    Some(Doubt::GroundRose {
        by,
        perhaps: perhaps(reading),
    })
}

/// A first reading far from its target that fits the mark the machine has just left: the page may still show
/// that mark's neighbour.
fn fits_the_last_mark(reading: &Candidate) -> Option<Doubt> {
    if reading.earlier.is_some() || reading.dev().abs() <= FAR {
        return None;
    }
    reading
        .neighbours
        .iter()
        .filter(|other| other.machines_last && other.distance <= NEAR_BY)
        .map(|other| ((reading.elevation - other.target).abs(), other))
        .filter(|(miss, _)| *miss <= FITS)
        .min_by_key(|(miss, _)| *miss)
        .map(|(_, other)| Doubt::OtherMark {
            perhaps: other.mark.clone(),
        })
}

/// Ground so far below its target was dug in error or read in error; either way somebody must look. Where the ground was
/// known from the same set-up, less is enough.
fn far_below(reading: &Candidate) -> Option<Doubt> {
    let by = -reading.dev();
    let known = reading.earlier.is_some_and(|earlier| {
        earlier.same_set_up && !earlier.ground_changed && earlier.dev > -TOO_DEEP
    });
    (by > if known { TOO_DEEP } else { FAR }).then(|| Doubt::FarBelow {
        by,
        perhaps: perhaps(reading),
    })
}

/// What it may have been instead, likeliest first: how often the slip is made (from memory) times how well
/// the reading would then fit.
fn perhaps(reading: &Candidate) -> Vec<Perhaps> {
    let mut weighed = other_readings(reading);
    for other in reading
        .neighbours
        .iter()
        .filter(|other| other.distance <= NEAR_BY)
    {
        let miss = (reading.elevation - other.target).abs();
        if miss <= FITS {
            let weight = if other.machines_last { 0.30 } else { 0.15 }
                * reading.learned.factor(Hypothesis::OtherMark);
            let mark = Perhaps::Mark {
                id: other.mark.clone(),
            };
            weighed.push((weight * fit(miss.feet(), 0.05), mark));
        }
    }
    likeliest(weighed)
}

fn other_readings(reading: &Candidate) -> Vec<(f64, Perhaps)> {
    if reading.mode != Mode::Rod {
        return vec![];
    }
    let rod = reading.rod;
    let typed = reading.typed - rod.bracket;
    let mut weighed = Vec::new();
    let mut add = |weight: f64, value: Length, what: Perhaps| {
        let fits = plausible(reading, reading.dev() + typed - value);
        if value >= Length::ZERO && value <= rod.length && fits > 0.0 {
            let learned = reading.learned.factor(Hypothesis::of(&what, typed));
            weighed.push((weight * learned * fits, what));
        }
    };
    for hundredths in [100, -100, 10, -10] {
        let value = typed + Length::from_hundredths_of_a_foot(hundredths);
        let weight = if hundredths.abs() == 100 { 0.20 } else { 0.10 };
        add(weight, value, Perhaps::Reading { value });
    }
    for value in digits_swapped(typed, rod) {
        add(0.12, value, Perhaps::Reading { value });
    }
    let inch_rod = reading
        .rods
        .iter()
        .find(|rod| rod.unit == RodUnit::FeetInchesEighths);
    // A rod that nobody registered is the likelier one to be typed on the wrong pad.
    let weight = if inch_rod.is_some() { 0.15 } else { 0.30 };
    for (feet, inches) in inches_as_tenths(typed, rod) {
        let what = Perhaps::FeetInches {
            rod: inch_rod.map(|rod| rod.id.clone()),
            feet,
            inches,
        };
        add(weight, feet_and_inches(feet, inches), what);
    }
    weighed
}

/// How well a difference fits what the mark may be at: between a little below target and where it last stood.
fn plausible(reading: &Candidate, dev: Length) -> f64 {
    let highest = reading
        .earlier
        .map_or(FAR * 2, |earlier| earlier.dev.max(Length::ZERO));
    let beyond = (dev - highest).max(-FITS - dev).max(Length::ZERO);
    if beyond > FITS {
        return 0.0;
    }
    fit(beyond.feet(), 0.05)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rod::tests::rod;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn earlier(dev: i64) -> Earlier {
        Earlier {
            dev: ft(dev),
            same_set_up: true,
            accepted: false,
            said_high: dev > 0,
            ground_changed: false,
        }
    }

    /// A reading of `typed` on a target of 300.00 from HI 308.45 (invented, demo).
    fn ask(
        typed: i64,
        earlier: Option<Earlier>,
        neighbours: &[Neighbour],
        rods: &[Rod],
    ) -> Option<Doubt> {
        doubt(&Candidate {
            elevation: ft(30_845 - typed),
            target: ft(30_000),
            typed: ft(typed),
            mode: Mode::Rod,
            earlier,
            neighbours,
            rod: &rod(RodUnit::FeetHundredths),
            rods,
            learned: &Learned::default(),
        })
    }

    fn neighbour(target: i64, distance: i64, machines_last: bool) -> Neighbour {
        Neighbour {
            mark: "N-06".into(),
            target: ft(target),
            distance: ft(distance),
            machines_last,
        }
    }

    /// Invented, demo: 7 ft 10 in typed as 7.10, after +0.90.
    #[test]
    fn ground_that_rises_is_asked_about_with_two_suggestions() {
        let inches = |rod: Option<&str>| Perhaps::FeetInches {
            rod: rod.map(str::to_owned),
            feet: 7,
            inches: 10,
        };
        let foot = Perhaps::Reading { value: ft(810) };
        let by = ft(45);
        assert_eq!(
            ask(710, Some(earlier(90)), &[], &[]),
            Some(Doubt::GroundRose {
                by,
                perhaps: vec![inches(None), foot.clone()]
            })
        );
        let mut inch_rod = rod(RodUnit::FeetInchesEighths);
        inch_rod.id = "B".into();
        assert_eq!(
            ask(710, Some(earlier(90)), &[], &[inch_rod]),
            Some(Doubt::GroundRose {
                by,
                perhaps: vec![foot, inches(Some("B"))]
            })
        );
    }

    #[test]
    fn a_rise_is_not_asked_about_within_reading_error_or_where_soil_came() {
        assert_eq!(ask(750, Some(earlier(90)), &[], &[]), None, "rose by 0.05");
        assert!(
            ask(749, Some(earlier(90)), &[], &[]).is_some(),
            "rose by 0.06"
        );
        let sloughed = Earlier {
            ground_changed: true,
            ..earlier(90)
        };
        assert_eq!(ask(710, Some(sloughed), &[], &[]), None);
        let other_set_up = Earlier {
            same_set_up: false,
            ..earlier(90)
        };
        assert_eq!(ask(710, Some(other_set_up), &[], &[]), None);
    }

    /// Invented, demo: the laser was bumped by 0.13 and an accepted mark shows it.
    #[test]
    fn an_accepted_mark_that_rises_is_a_laser_check() {
        let accepted = Earlier {
            accepted: true,
            ..earlier(2)
        };
        assert_eq!(
            ask(830, Some(accepted), &[], &[]),
            Some(Doubt::RepeatOff { by: ft(13) })
        );
        // A lifted laser lowers it instead; half a tenth up and a tenth down are reading error or a scrape.
        assert_eq!(
            ask(856, Some(accepted), &[], &[]),
            Some(Doubt::RepeatOff { by: ft(-13) })
        );
        for typed in [838, 853] {
            assert_eq!(ask(typed, Some(accepted), &[], &[]), None, "{typed}");
        }
    }

    #[test]
    fn low_after_high_on_the_receiver_asks_which_way() {
        let ask = |mode, said_high| {
            doubt(&Candidate {
                elevation: ft(29_980),
                target: ft(30_000),
                typed: Length::ZERO,
                mode,
                earlier: Some(Earlier {
                    said_high,
                    ..earlier(66)
                }),
                neighbours: &[],
                rod: &rod(RodUnit::FeetHundredths),
                rods: &[],
                learned: &Learned::default(),
            })
        };
        assert_eq!(ask(Mode::ReceiverLow, true), Some(Doubt::WhichWay));
        assert_eq!(ask(Mode::ReceiverLow, false), None);
        assert_eq!(ask(Mode::ReceiverHigh, true), None);
    }

    /// Invented, demo: N-05 was picked, the rod stood at N-06, a foot higher.
    #[test]
    fn a_first_reading_that_fits_the_last_mark_asks_which_mark() {
        let last = [neighbour(30_100, 200, true)];
        let asked = Some(Doubt::OtherMark {
            perhaps: "N-06".into(),
        });
        assert_eq!(ask(752, None, &last, &[]), asked);
        assert_eq!(ask(752, None, &[neighbour(30_100, 200, false)], &[]), None);
        assert_eq!(ask(752, None, &[neighbour(30_100, 1501, true)], &[]), None);
        assert_eq!(ask(725, None, &last, &[]), None, "0.20 from that target");
        assert_eq!(ask(795, None, &last, &[]), None, "only 0.50 from its own");
        assert_eq!(
            ask(752, Some(earlier(120)), &last, &[]),
            None,
            "not the first"
        );
    }

    #[test]
    fn far_below_target_is_asked_about() {
        assert_eq!(ask(895, None, &[], &[]), None);
        let asked = ask(945, Some(earlier(20)), &[], &[]);
        let foot = Perhaps::Reading { value: ft(845) };
        assert!(
            matches!(&asked, Some(Doubt::FarBelow { by, perhaps }) if *by == ft(100) && perhaps.contains(&foot)),
            "{asked:?}"
        );
    }
}
