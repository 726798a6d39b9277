//! What a day teaches about questions: a suggestion that is wrong five times in a row weighs half for that day.
//!
//! Nothing here decides whether to ask: the four rules do. It only ranks what is suggested, so a crew whose rod has no
//! inches on it stops reading "7 ft 10 in?" first (invented for this project, after common practice of ranking).

use std::collections::BTreeMap;

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::Perhaps;
use crate::length::Length;

/// A kind of slip that a suggestion stands for.
#[derive(
    Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Hypothesis {
    /// A foot too much or too little.
    WholeFoot,
    /// A tenth too much or too little.
    Tenth,
    /// Two digits changed places.
    DigitsSwapped,
    /// Inches typed as if they were tenths.
    InchesAsTenths,
    /// Another mark than the one that was picked.
    OtherMark,
}

impl Hypothesis {
    /// What a suggestion stands for, with the rod value as it was typed (no bracket in it).
    pub fn of(perhaps: &Perhaps, typed: Length) -> Self {
        match perhaps {
            Perhaps::Mark { .. } => Self::OtherMark,
            Perhaps::FeetInches { .. } => Self::InchesAsTenths,
            Perhaps::Reading { value } => {
                let off = (*value - typed).abs();
                if off == Length::from_hundredths_of_a_foot(100) {
                    Self::WholeFoot
                } else if off == Length::from_hundredths_of_a_foot(10) {
                    Self::Tenth
                } else {
                    Self::DigitsSwapped
                }
            }
        }
    }
}

/// So many wrong suggestions of one kind in a row halve its weight.
pub const HALVES_AFTER: u32 = 5;

/// What a day has taught so far.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Learned {
    in_a_row: BTreeMap<Hypothesis, u32>,
    halved: BTreeMap<Hypothesis, u32>,
}

impl Learned {
    /// A suggestion of this kind was answered: it was right, or it was not.
    pub fn answered(&mut self, kind: Hypothesis, right: bool) {
        let wrong = self.in_a_row.entry(kind).or_default();
        *wrong = if right { 0 } else { *wrong + 1 };
        if *wrong == HALVES_AFTER {
            *wrong = 0;
            *self.halved.entry(kind).or_default() += 1;
        }
    }

    /// By how much this kind weighs less than it did in the morning: 1, ½, ¼ …
    pub fn factor(&self, kind: Hypothesis) -> f64 {
        let halved = self.halved.get(&kind).copied().unwrap_or(0);
        0.5_f64.powi(i32::try_from(halved).unwrap_or(i32::MAX))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Five in a row, not five in all: a right one between starts the count again.
    #[test]
    fn five_wrong_in_a_row_halve_a_suggestion_for_the_day() {
        let mut learned = Learned::default();
        let kind = Hypothesis::InchesAsTenths;
        for right in [false, false, false, false, true, false, false, false, false] {
            learned.answered(kind, right);
        }
        assert!((learned.factor(kind) - 1.0).abs() < f64::EPSILON);
        learned.answered(kind, false);
        assert!((learned.factor(kind) - 0.5).abs() < f64::EPSILON);
        for _ in 0..HALVES_AFTER {
            learned.answered(kind, false);
        }
        assert!((learned.factor(kind) - 0.25).abs() < f64::EPSILON);
        assert!((learned.factor(Hypothesis::Tenth) - 1.0).abs() < f64::EPSILON);
    }

    #[test]
    fn a_suggestion_is_known_by_what_it_changes() {
        let ft = Length::from_hundredths_of_a_foot;
        for (value, kind) in [
            (642, Hypothesis::WholeFoot),
            (552, Hypothesis::Tenth),
            (452, Hypothesis::DigitsSwapped),
        ] {
            let reading = Perhaps::Reading { value: ft(value) };
            assert_eq!(Hypothesis::of(&reading, ft(542)), kind, "{value}");
        }
        let mark = Perhaps::Mark { id: "N-06".into() };
        assert_eq!(Hypothesis::of(&mark, ft(542)), Hypothesis::OtherMark);
    }
}
