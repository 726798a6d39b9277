//! What is the operator told: down, shave, grade, up or wait, and how much.
//!
//! The amount is against the aim, the word against the target: rounding and aim never change a verdict.
//!
//! How an amount is rounded: whoever digs exactly what the figure says leaves the ground at dev − figure, whoever
//! raises it at dev + figure. Of the figures that a unit has (half-tenths, tenths of a foot from 0.975 ft on, eighths of
//! an inch, millimetres) the one is told that leaves the ground in tolerance, both ends included, and there nearest to
//! the aim; of two alike the one that leaves it higher, which the crew can still trim. Where none of them leaves it in
//! tolerance, tenths give way to hundredths of a foot; where no figure at all does, the ground stays high: the most
//! is told that does not go below what is allowed low, and where the smallest figure would, less than that figure.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::length::{FOOT, Length};
use crate::tolerance::{Tolerance, Verdict};

/// How much, as it is called.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Amount {
    /// Halves of a tenth of a foot: 7 is 3½ tenths.
    HalfTenths(u32),
    /// Tenths of a foot, said in feet: 12 is 1.2 FEET.
    TenthsOfFeet(u32),
    /// Hundredths of a foot, said in feet where tenths are too coarse for the tolerance: 12 is 0.12 FEET, 0 is less
    /// than 0.01 FEET.
    HundredthsOfFeet(u32),
}

/// What to do.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Correction {
    /// Dig.
    Down(Amount),
    /// Take a thin slice.
    Shave(Amount),
    /// On grade.
    Grade,
    /// Too deep by so much; it is not filled with dug soil.
    Up(Amount),
    /// Too close to call: shoot again.
    Wait,
}

/// How the ground stands and what is wanted of it; lengths against the target, positive is high.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ground {
    /// Measured − target, the mean of the shots.
    pub dev: Length,
    /// Where to bring it, usually at or below zero.
    pub aim: Length,
    /// What it may stand at; none in a call that was kept without it, whose figures are the nearest.
    pub tolerance: Option<Tolerance>,
}

/// Which way the ground is to be moved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// Dig.
    Down,
    /// It lies too deep.
    Up,
}

/// So many whole steps of a unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Steps {
    /// How many; none at all means less than one.
    pub count: u64,
    /// Doing exactly so much leaves the ground in tolerance.
    pub in_tolerance: bool,
}

/// From this on, the amount is said in feet (0.975 ft).
const SAID_IN_FEET: i64 = FOOT / 1000 * 975;
/// Below this, high ground is shaved (0.175 ft).
const SHAVED: i64 = FOOT / 1000 * 175;
const HALF_TENTH: i64 = FOOT / 20;
const TENTH: i64 = FOOT / 10;
/// A hundredth of a foot, in counts.
pub(crate) const HUNDREDTH: i64 = FOOT / 100;

impl Ground {
    /// How far to the aim, going this way; negative when the aim lies the other way.
    pub fn told(&self, way: Way) -> Length {
        match way {
            Way::Down => self.dev - self.aim,
            Way::Up => self.aim - self.dev,
        }
    }

    /// How many steps to say, by the rule at the head of this file; `step` is in counts, above zero.
    pub fn steps(&self, way: Way, step: i64) -> Steps {
        let step = i128::from(step.max(1));
        let counts = |length: Length| i128::from(length.tenth_micrometres());
        let told = counts(self.told(way));
        // Halfway goes to the figure that leaves the ground higher: the smaller when digging, the larger when raising.
        let half_way = match way {
            Way::Down => 2 * told + step - 1,
            Way::Up => 2 * told + step,
        };
        let nearest = half_way.div_euclid(2 * step);
        let Some(tolerance) = self.tolerance else {
            return Steps::of(nearest.max(1), true);
        };
        let (to_high, to_low) = (
            counts(self.dev - tolerance.high),
            counts(self.dev + tolerance.low),
        );
        let (least, most) = match way {
            Way::Down => (up(to_high, step).max(1), to_low.div_euclid(step)),
            Way::Up => (up(-to_low, step).max(1), (-to_high).div_euclid(step)),
        };
        if least <= most {
            return Steps::of(nearest.clamp(least, most), true);
        }
        match way {
            Way::Down => Steps::of(most.max(0), false),
            Way::Up => Steps::of(least, false),
        }
    }
}

impl Steps {
    fn of(count: i128, in_tolerance: bool) -> Steps {
        Steps {
            count: u64::try_from(count).unwrap_or(u64::MAX),
            in_tolerance,
        }
    }
}

/// `over / under`, rounded up.
fn up(over: i128, under: i128) -> i128 {
    -(-over).div_euclid(under)
}

/// The correction for ground with this verdict against the target. `settled_high` is the site's rule that what
/// stays doubtful on the high side is trimmed.
///
/// HIGH and LOW are never told as 0. The amounts are rounded as the head of this file says.
pub fn correction(ground: &Ground, verdict: Verdict, settled_high: bool) -> Correction {
    match verdict {
        Verdict::High => down(ground),
        Verdict::TooCloseHigh if settled_high => down(ground),
        Verdict::Low => Correction::Up(amount(ground, Way::Up)),
        Verdict::On => Correction::Grade,
        Verdict::TooCloseHigh | Verdict::TooCloseLow => Correction::Wait,
    }
}

fn down(ground: &Ground) -> Correction {
    let amount = amount(ground, Way::Down);
    if ground.told(Way::Down).tenth_micrometres() < SHAVED {
        Correction::Shave(amount)
    } else {
        Correction::Down(amount)
    }
}

fn amount(ground: &Ground, way: Way) -> Amount {
    let short = |count: u64| u32::try_from(count).unwrap_or(u32::MAX);
    let in_feet = ground.told(way).tenth_micrometres() >= SAID_IN_FEET;
    let coarse = ground.steps(way, if in_feet { TENTH } else { HALF_TENTH });
    if !coarse.in_tolerance {
        return Amount::HundredthsOfFeet(short(ground.steps(way, HUNDREDTH).count));
    }
    if in_feet {
        Amount::TenthsOfFeet(short(coarse.count))
    } else {
        Amount::HalfTenths(short(coarse.count))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use Amount::{HalfTenths, HundredthsOfFeet, TenthsOfFeet};
    use Correction::{Down, Grade, Shave, Up, Wait};

    fn th(thousandths: i64) -> Length {
        Length::from_thousandths_of_a_foot(thousandths)
    }

    fn ground(dev: i64, aim: i64, high: i64, low: i64) -> Ground {
        Ground {
            dev: th(dev),
            aim: th(aim),
            tolerance: Some(Tolerance::new(th(high), th(low)).unwrap()),
        }
    }

    /// Invented, demo: the calls of the demo day, worked by hand with a tenth high and two low.
    #[test]
    fn the_demo_days_calls_come_out_as_they_were_told() {
        for (dev, verdict, by_rule, told) in [
            (1150, Verdict::High, false, Down(TenthsOfFeet(11))),
            (1050, Verdict::High, false, Down(TenthsOfFeet(10))),
            (3850, Verdict::High, false, Down(TenthsOfFeet(38))),
            (1350, Verdict::High, false, Down(TenthsOfFeet(13))),
            (1351, Verdict::High, false, Down(TenthsOfFeet(14))),
            (975, Verdict::High, false, Down(TenthsOfFeet(10))),
            (974, Verdict::High, false, Down(HalfTenths(19))),
            (950, Verdict::High, false, Down(HalfTenths(19))),
            (550, Verdict::High, false, Down(HalfTenths(11))),
            (350, Verdict::High, false, Down(HalfTenths(7))),
            (290, Verdict::High, false, Down(HalfTenths(6))),
            (175, Verdict::High, false, Down(HalfTenths(3))),
            (174, Verdict::High, false, Shave(HalfTenths(3))),
            (150, Verdict::High, false, Shave(HalfTenths(3))),
            (105, Verdict::TooCloseHigh, true, Shave(HalfTenths(2))),
            (105, Verdict::TooCloseHigh, false, Wait),
            (-200, Verdict::TooCloseLow, true, Wait),
            (-240, Verdict::Low, false, Up(HalfTenths(5))),
            (-225, Verdict::Low, false, Up(HalfTenths(5))),
            (-1150, Verdict::Low, false, Up(TenthsOfFeet(12))),
            (60, Verdict::On, false, Grade),
        ] {
            assert_eq!(
                correction(&ground(dev, 0, 100, 200), verdict, by_rule),
                told,
                "{dev}"
            );
        }
    }

    /// By hand: what exactly so much leaves, beside what is allowed.
    #[test]
    fn whoever_does_what_the_figure_says_leaves_the_ground_in_tolerance() {
        for (ground, verdict, told) in [
            // Nothing is allowed low: 3 tenths would leave 0.02 too deep.
            (ground(280, 0, 100, 0), Verdict::High, Down(HalfTenths(5))),
            // Nothing is allowed high: 3 tenths would leave 0.02 high.
            (ground(320, 0, 0, 100), Verdict::High, Down(HalfTenths(7))),
            // Half-tenths leave 0.024 high or 0.026 low, both too much.
            (
                ground(324, 0, 20, 20),
                Verdict::High,
                Down(HundredthsOfFeet(32)),
            ),
            // Tenths of a foot leave 0.05 either way.
            (
                ground(1250, 0, 40, 40),
                Verdict::High,
                Down(HundredthsOfFeet(125)),
            ),
            // No hundredth does either: it stays high.
            (
                ground(324, 0, 0, 3),
                Verdict::High,
                Down(HundredthsOfFeet(32)),
            ),
            // A hundredth would be too deep.
            (
                ground(5, 0, 2, 2),
                Verdict::High,
                Shave(HundredthsOfFeet(0)),
            ),
            // 2½ tenths leave 0.02 too low: nothing is allowed low.
            (ground(-270, 0, 100, 0), Verdict::Low, Up(HalfTenths(6))),
            (
                ground(-325, 0, 4, 0),
                Verdict::Low,
                Up(HundredthsOfFeet(33)),
            ),
        ] {
            assert_eq!(correction(&ground, verdict, false), told, "{ground:?}");
        }
    }

    #[test]
    fn high_and_low_are_never_told_as_nothing_and_the_aim_never_turns_the_word() {
        let told = |dev, aim, verdict| correction(&ground(dev, aim, 100, 200), verdict, false);
        assert_eq!(told(20, 0, Verdict::High), Shave(HalfTenths(1)));
        assert_eq!(told(-1, 0, Verdict::Low), Up(HalfTenths(1)));
        assert_eq!(told(20, 50, Verdict::High), Shave(HalfTenths(1)));
        assert_eq!(told(-20, -50, Verdict::Low), Up(HalfTenths(1)));
    }

    #[test]
    fn the_amount_told_is_to_the_aim() {
        assert_eq!(
            correction(&ground(300, -50, 100, 200), Verdict::High, false),
            Down(HalfTenths(7))
        );
    }

    /// Calls that were kept before the tolerance was kept with them.
    #[test]
    fn without_a_tolerance_the_nearest_figure_is_told() {
        let kept = Ground {
            dev: th(324),
            aim: Length::ZERO,
            tolerance: None,
        };
        assert_eq!(correction(&kept, Verdict::High, false), Down(HalfTenths(6)));
    }
}
