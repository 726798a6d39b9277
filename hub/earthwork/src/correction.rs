//! What is the operator told: down, shave, grade, up or wait, and how much.
//!
//! The amount is against the aim, the word against the target: rounding and aim never change a verdict.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::length::{FOOT, Length};
use crate::tolerance::Verdict;

/// How much, as it is called.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Amount {
    /// Halves of a tenth of a foot: 7 is 3½ tenths.
    HalfTenths(u32),
    /// Tenths of a foot, said in feet: 12 is 1.2 FEET.
    TenthsOfFeet(u32),
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

/// From this on, the amount is said in feet (0.975 ft).
const SAID_IN_FEET: i64 = FOOT / 1000 * 975;
/// Below this, high ground is shaved (0.175 ft).
const SHAVED: i64 = FOOT / 1000 * 175;
const HALF_TENTH: i64 = FOOT / 20;
const TENTH: i64 = FOOT / 10;

/// The correction for a mean difference (measured − target), an aim (usually at or below zero) and the verdict
/// against the target. `settled_high` is the site's rule that what stays doubtful on the high side is trimmed.
///
/// Half-tenths round half up; from 0.975 ft on it is feet with one decimal. HIGH and LOW are never told as 0.
pub fn correction(
    dev_mean: Length,
    aim: Length,
    verdict: Verdict,
    settled_high: bool,
) -> Correction {
    let told = dev_mean - aim;
    match verdict {
        Verdict::High => down(told),
        Verdict::TooCloseHigh if settled_high => down(told),
        Verdict::Low => Correction::Up(amount(-told)),
        Verdict::On => Correction::Grade,
        Verdict::TooCloseHigh | Verdict::TooCloseLow => Correction::Wait,
    }
}

fn down(told: Length) -> Correction {
    if told.tenth_micrometres() < SHAVED {
        Correction::Shave(amount(told))
    } else {
        Correction::Down(amount(told))
    }
}

fn amount(told: Length) -> Amount {
    let counts = told.tenth_micrometres().max(0);
    let steps =
        |step: i64| u32::try_from((counts.saturating_add(step / 2)) / step).unwrap_or(u32::MAX);
    if counts >= SAID_IN_FEET {
        Amount::TenthsOfFeet(steps(TENTH))
    } else {
        Amount::HalfTenths(steps(HALF_TENTH).max(1))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use Amount::{HalfTenths, TenthsOfFeet};
    use Correction::{Down, Grade, Shave, Up, Wait};

    fn th(thousandths: i64) -> Length {
        Length::from_thousandths_of_a_foot(thousandths)
    }

    /// Invented, demo: the calls of the demo day, by the rule ⌊20a + 0.5⌋/2.
    #[test]
    fn the_demo_days_calls_come_out_as_they_were_told() {
        for (dev, verdict, by_rule, told) in [
            (1150, Verdict::High, false, Down(TenthsOfFeet(12))),
            (1050, Verdict::High, false, Down(TenthsOfFeet(11))),
            (3850, Verdict::High, false, Down(TenthsOfFeet(39))),
            (1350, Verdict::High, false, Down(TenthsOfFeet(14))),
            (975, Verdict::High, false, Down(TenthsOfFeet(10))),
            (974, Verdict::High, false, Down(HalfTenths(19))),
            (950, Verdict::High, false, Down(HalfTenths(19))),
            (550, Verdict::High, false, Down(HalfTenths(11))),
            (350, Verdict::High, false, Down(HalfTenths(7))),
            (290, Verdict::High, false, Down(HalfTenths(6))),
            (175, Verdict::High, false, Down(HalfTenths(4))),
            (174, Verdict::High, false, Shave(HalfTenths(3))),
            (150, Verdict::High, false, Shave(HalfTenths(3))),
            (105, Verdict::TooCloseHigh, true, Shave(HalfTenths(2))),
            (105, Verdict::TooCloseHigh, false, Wait),
            (-200, Verdict::TooCloseLow, true, Wait),
            (-240, Verdict::Low, false, Up(HalfTenths(5))),
            (-1150, Verdict::Low, false, Up(TenthsOfFeet(12))),
            (60, Verdict::On, false, Grade),
        ] {
            assert_eq!(
                correction(th(dev), Length::ZERO, verdict, by_rule),
                told,
                "{dev}"
            );
        }
    }

    #[test]
    fn high_and_low_are_never_told_as_nothing_and_the_aim_never_turns_the_word() {
        assert_eq!(
            correction(th(20), Length::ZERO, Verdict::High, false),
            Shave(HalfTenths(1))
        );
        assert_eq!(
            correction(th(-1), Length::ZERO, Verdict::Low, false),
            Up(HalfTenths(1))
        );
        assert_eq!(
            correction(th(20), th(50), Verdict::High, false),
            Shave(HalfTenths(1))
        );
        assert_eq!(
            correction(th(-20), th(-50), Verdict::Low, false),
            Up(HalfTenths(1))
        );
    }

    #[test]
    fn the_amount_told_is_to_the_aim() {
        assert_eq!(
            correction(th(300), th(-50), Verdict::High, false),
            Down(HalfTenths(7))
        );
    }
}
