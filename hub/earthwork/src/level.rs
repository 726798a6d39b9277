//! How high is it: height of instrument, elevations, grade rods and check shots.
//!
//! Source: US Navy Engineering Aid training text, "Level Computations", for the height-of-instrument method.

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::length::{Form, Length};

/// The height of the laser's plane: a benchmark's elevation plus the backsight read on it.
pub fn height_of_instrument(benchmark: Length, backsight: Length) -> Length {
    benchmark + backsight
}

/// The elevation of the ground under the rod.
pub fn elevation(hi: Length, foresight: Length) -> Length {
    hi - foresight
}

/// What the rod must read when the ground is at its target.
pub fn grade_rod(hi: Length, target: Length) -> Length {
    hi - target
}

/// By how much a check shot misses: (HI − FS) − benchmark. Positive: the benchmark is found too high.
pub fn check_residual(hi: Length, foresight: Length, benchmark: Length) -> Length {
    elevation(hi, foresight) - benchmark
}

/// How far a check shot may miss.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct CheckLimits {
    /// Up to and with this, the set-up holds.
    pub good: Length,
    /// Up to and with this, shoot again; beyond it, the check has failed.
    pub warn: Length,
}

/// 0.015 ft and 0.025 ft: common practice on small sites.
impl Default for CheckLimits {
    fn default() -> CheckLimits {
        CheckLimits {
            good: Length::from_thousandths_of_a_foot(15),
            warn: Length::from_thousandths_of_a_foot(25),
        }
    }
}

/// What a check shot says.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Check {
    /// The set-up holds.
    Good,
    /// Between the limits: shoot again.
    Again,
    /// The set-up does not hold, or a slip was made.
    Failed,
}

/// Judges a check shot; both limits belong to the better side.
pub fn judge_check(residual: Length, limits: CheckLimits) -> Check {
    let miss = residual.abs();
    if miss <= limits.good {
        Check::Good
    } else if miss <= limits.warn {
        Check::Again
    } else {
        Check::Failed
    }
}

/// The laser must have changed height by this much between two levellings, so that the second is a
/// new one and not the first read twice (common practice).
pub const CHANGED_HEIGHT: Length = Length::from_hundredths_of_a_foot(10);

/// One benchmark, levelled twice: a point was shot, the laser's height changed, and the benchmark and the
/// point were shot again.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct SecondLevelling {
    /// The benchmark's elevation.
    pub benchmark: Length,
    /// The first backsight on it.
    pub backsight: Length,
    /// The rod on the point, from the first height.
    pub point: Length,
    /// The backsight on the benchmark from the changed height.
    pub backsight_again: Length,
    /// The rod on the same point from the changed height.
    pub point_again: Length,
    /// How far the two may differ.
    pub limits: CheckLimits,
}

/// Two levellings that agree.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Levelled {
    /// The height of instrument to work with: the laser as it stands now.
    pub height: Length,
    /// The point's second elevation minus its first.
    pub disagreement: Length,
}

/// Why a second levelling proves nothing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LevellingError {
    /// The laser stands as it stood.
    HeightNotChanged {
        /// By how much it changed.
        changed: Length,
    },
    /// The point came out elsewhere.
    Disagrees {
        /// Second minus first.
        disagreement: Length,
        /// What would have been good.
        allowed: Length,
    },
}

impl LevellingError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::HeightNotChanged { changed } => {
                words::level::height_not_changed(&changed.show(THOUSANDTHS))
            }
            Self::Disagrees {
                disagreement,
                allowed,
            } => {
                words::level::disagrees(&disagreement.show(THOUSANDTHS), &allowed.show(THOUSANDTHS))
            }
        }
    }
}

words::error!(LevellingError);

const THOUSANDTHS: Form = Form::DecimalFeet { places: 3 };

/// Proves a set-up where only one benchmark stands.
///
/// # Errors
/// When the laser's height was not changed, or the point disagrees by more than the good limit.
pub fn second_levelling(shots: &SecondLevelling) -> Result<Levelled, LevellingError> {
    let first = height_of_instrument(shots.benchmark, shots.backsight);
    let height = height_of_instrument(shots.benchmark, shots.backsight_again);
    let changed = (height - first).abs();
    if changed < CHANGED_HEIGHT {
        return Err(LevellingError::HeightNotChanged { changed });
    }
    let disagreement = elevation(height, shots.point_again) - elevation(first, shots.point);
    match judge_check(disagreement, shots.limits) {
        Check::Good => Ok(Levelled {
            height,
            disagreement,
        }),
        Check::Again | Check::Failed => Err(LevellingError::Disagrees {
            disagreement,
            allowed: shots.limits.good,
        }),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    /// US Navy Engineering Aid training text, "Setting Grade Stakes": cut = grade rod − ground rod.
    #[test]
    fn cut_is_grade_rod_less_ground_rod() {
        let hi = height_of_instrument(ft(10_635), ft(465));
        let target = ft(10_785);
        assert_eq!(grade_rod(hi, target), ft(315));
        assert_eq!(
            elevation(hi, ft(240)) - target,
            grade_rod(hi, target) - ft(240)
        );
    }

    /// Common practice: 0.015 and 0.025 ft, both edges on the better side.
    #[test]
    fn check_limits_are_closed() {
        let limits = CheckLimits::default();
        let thousandths = Length::from_thousandths_of_a_foot;
        for (miss, check) in [
            (0, Check::Good),
            (15, Check::Good),
            (-15, Check::Good),
            (16, Check::Again),
            (-25, Check::Again),
            (26, Check::Failed),
            (-26, Check::Failed),
        ] {
            assert_eq!(judge_check(thousandths(miss), limits), check, "{miss}");
        }
    }

    fn shots(backsight_again: i64, point_again: i64) -> SecondLevelling {
        SecondLevelling {
            benchmark: ft(10_000),
            backsight: ft(500),
            point: ft(620),
            backsight_again: ft(backsight_again),
            point_again: ft(point_again),
            limits: CheckLimits::default(),
        }
    }

    #[test]
    fn a_second_levelling_from_a_changed_height_proves_the_first() {
        let levelled = second_levelling(&shots(530, 651)).unwrap();
        assert_eq!(levelled.height, ft(10_530));
        assert_eq!(levelled.disagreement, ft(-1));
        assert!(
            second_levelling(&shots(490, 610)).is_ok(),
            "0.10 is a changed height"
        );
    }

    #[test]
    fn a_second_levelling_proves_nothing_from_the_same_height_or_when_it_disagrees() {
        let same = second_levelling(&shots(509, 629)).unwrap_err();
        assert!(same.to_string().contains("Raise or lower it"), "{same}");
        let off = second_levelling(&shots(530, 652)).unwrap_err();
        assert!(
            matches!(off, LevellingError::Disagrees { disagreement, .. } if disagreement == ft(-2))
        );
    }
}
