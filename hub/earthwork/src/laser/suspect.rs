//! Which readings stand after a failed check, and which are shot again.
//!
//! A check failed by a residual r (it found the benchmark r too high), and nobody knows when the laser moved. Each
//! reading after the last good check, up to the failed one, is judged as it is and with the fault taken out: by
//! all of r if the laser jumped, and by its share of the time if it crept. What is acceptable in every case
//! stands (derived from the verdict rule; common practice is to shoot everything again).

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::length::{Length, nearest};
use crate::tolerance::{Tolerance, Verdict, verdict};

/// The time between the last good check and the failed one, in milliseconds of one clock.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Window {
    /// The last good check.
    pub good_at: i64,
    /// The failed check; none when no benchmark was ever shot again.
    pub failed_at: Option<i64>,
    /// The failed check's residual: (HI − FS) − benchmark. Positive: everything was found too high.
    pub residual: Length,
}

/// The last reading of a mark in the window.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Doubted {
    /// When it was made, by the same clock.
    pub at: i64,
    /// measured − target, as it was booked.
    pub difference: Length,
    /// What is allowed there.
    pub tolerance: Tolerance,
    /// The guard band of the reading.
    pub guard: Length,
}

/// What becomes of a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Fate {
    /// Made at or before the last good check, or after the failed one: not in doubt here.
    NotInDoubt,
    /// The verdict is the same with and without the fault: it stands.
    Stands,
    /// It may be wrong: shoot it again.
    ShootAgain,
    /// No later benchmark was shot: nothing can be said.
    Unproven,
}

/// A reading under each story of the laser.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Rejudged {
    /// What becomes of it.
    pub fate: Fate,
    /// As it was booked: the laser moved afterwards.
    pub unmoved: Verdict,
    /// The laser jumped before the reading.
    pub jumped: Verdict,
    /// The laser crept evenly from the good check to the failed one.
    pub crept: Verdict,
    /// measured − target with all of the fault taken out.
    pub difference_if_jumped: Length,
}

/// Why a window is none.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WindowError {
    /// The failed check is not after the good one.
    NoTime,
}

impl WindowError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::NoTime => words::laser::window::no_time().into(),
        }
    }
}

words::error!(WindowError);

/// Judges one reading under every story. A reading stands when it is on grade in all of them, or when they all
/// give one verdict; a verdict that is too close to call never stands, because it asked for a second shot anyway.
///
/// # Errors
/// When the failed check is not later than the good one.
pub fn rejudge(window: &Window, reading: &Doubted) -> Result<Rejudged, WindowError> {
    let said = |fault: Length| {
        verdict(
            &[reading.difference - fault],
            reading.tolerance,
            reading.guard,
        )
    };
    let unmoved = said(Length::ZERO);
    let Some(failed_at) = window.failed_at else {
        let fate = if reading.at <= window.good_at {
            Fate::NotInDoubt
        } else {
            Fate::Unproven
        };
        return Ok(Rejudged {
            fate,
            unmoved,
            jumped: unmoved,
            crept: unmoved,
            difference_if_jumped: reading.difference,
        });
    };
    if failed_at <= window.good_at {
        return Err(WindowError::NoTime);
    }
    let doubted = window.good_at < reading.at && reading.at <= failed_at;
    let (jump, creep) = if doubted {
        let share = |over: i64, under: i64| {
            let counts = i128::from(window.residual.tenth_micrometres()) * i128::from(over);
            let counts = nearest(counts, i128::from(under));
            Length::from_tenth_micrometres(i64::try_from(counts).unwrap_or(i64::MAX))
        };
        let crept = share(reading.at - window.good_at, failed_at - window.good_at);
        (window.residual, crept)
    } else {
        (Length::ZERO, Length::ZERO)
    };
    let (jumped, crept) = (said(jump), said(creep));
    let settled = matches!(unmoved, Verdict::High | Verdict::On | Verdict::Low);
    let fate = if !doubted {
        Fate::NotInDoubt
    } else if settled && unmoved == jumped && unmoved == crept {
        Fate::Stands
    } else {
        Fate::ShootAgain
    };
    Ok(Rejudged {
        fate,
        unmoved,
        jumped,
        crept,
        difference_if_jumped: reading.difference - jump,
    })
}

/// A repeat of an untouched mark in the window.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Repeat {
    /// When, by the same clock.
    pub at: i64,
    /// The new elevation less the old one.
    pub residual: Length,
}

/// Where among the repeats a jump by `residual` fits best: so many of them, the earliest, were made before it. The
/// least sum of squares, Σ before e² + Σ after (e − r)²; at a tie the earlier jump, which doubts more readings.
/// The repeats are in the order of their times.
pub fn likeliest_jump(residual: Length, repeats: &[Repeat]) -> usize {
    let square = |length: Length| i128::from(length.tenth_micrometres()).pow(2);
    let cost = |before: usize| -> i128 {
        repeats
            .iter()
            .enumerate()
            .map(|(n, repeat)| {
                let fault = if n < before { Length::ZERO } else { residual };
                square(repeat.residual - fault)
            })
            .sum()
    };
    (0..=repeats.len())
        .min_by_key(|before| cost(*before))
        .unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn th(thousandths: i64) -> Length {
        Length::from_thousandths_of_a_foot(thousandths)
    }

    fn reading(at: i64, difference: i64, guard: i64) -> Doubted {
        Doubted {
            at,
            difference: th(difference),
            tolerance: Tolerance {
                high: th(100),
                low: th(200),
            },
            guard: th(guard),
        }
    }

    fn window() -> Window {
        Window {
            good_at: 0,
            failed_at: Some(49),
            residual: th(130),
        }
    }

    fn fate(at: i64, difference: i64) -> Fate {
        rejudge(&window(), &reading(at, difference, 20))
            .unwrap()
            .fate
    }

    /// Invented, demo: the window from 10:31 to 11:20 with +0.13 ft. N-03, E-07 and E-06 stand; N-02 and E-05 are
    /// shot again.
    #[test]
    fn the_demo_window_sends_the_crew_to_two_marks() {
        for (difference, expected) in [
            (10, Fate::Stands),
            (60, Fate::Stands),
            (50, Fate::Stands),
            (-110, Fate::ShootAgain),
            (-70, Fate::ShootAgain),
            (150, Fate::ShootAgain),
            (400, Fate::Stands),
            (-300, Fate::Stands),
            (100, Fate::ShootAgain),
        ] {
            assert_eq!(fate(25, difference), expected, "{difference}");
        }
    }

    /// The window is open at the good check and closed at the failed one.
    #[test]
    fn only_what_lies_after_the_good_check_is_in_doubt() {
        assert_eq!(fate(0, -110), Fate::NotInDoubt);
        assert_eq!(fate(1, -110), Fate::ShootAgain);
        assert_eq!(fate(49, -110), Fate::ShootAgain);
        assert_eq!(fate(50, -110), Fate::NotInDoubt);
        let never = Window {
            failed_at: None,
            ..window()
        };
        let rejudged = rejudge(&never, &reading(1, 0, 20)).unwrap();
        assert_eq!(rejudged.fate, Fate::Unproven);
    }

    #[test]
    fn a_creeping_laser_is_a_story_of_its_own() {
        // Derived: half way −0.11 − 0.065 = −0.175 lies on grade without a guard, −0.24 does not.
        let rejudged = rejudge(&window(), &reading(24, -110, 0)).unwrap();
        assert_eq!(
            [rejudged.unmoved, rejudged.crept, rejudged.jumped],
            [Verdict::On, Verdict::On, Verdict::Low]
        );
        let wrong = Window {
            failed_at: Some(0),
            ..window()
        };
        let error = rejudge(&wrong, &reading(1, 0, 0)).unwrap_err();
        assert!(error.to_string().contains("not later"), "{error}");
        assert!(
            error.text().spanish.contains("no es posterior"),
            "{error:?}"
        );
    }

    /// Derived from the least sum of squares.
    #[test]
    fn repeats_tell_when_it_jumped() {
        let jump = |residuals: &[i64]| {
            let repeats: Vec<Repeat> = (0..)
                .zip(residuals)
                .map(|(at, residual)| Repeat {
                    at,
                    residual: th(*residual),
                })
                .collect();
            likeliest_jump(th(130), &repeats)
        };
        assert_eq!(jump(&[10, -10, 120, 140]), 2);
        assert_eq!(jump(&[130]), 0);
        assert_eq!(jump(&[0, 10]), 2);
        assert_eq!(jump(&[]), 0);
        assert_eq!(jump(&[65]), 0);
    }

    proptest! {
        /// What stands has its verdict wherever the laser was between unmoved and fully moved.
        #[test]
        fn what_stands_stands_for_every_fault_between(
            difference in -500_i64..500, residual in -200_i64..200, at in 1_i64..=49, part in 0_i64..=100
        ) {
            let window = Window { residual: th(residual), ..window() };
            let doubted = reading(at, difference, 20);
            let rejudged = rejudge(&window, &doubted).unwrap();
            if rejudged.fate == Fate::Stands {
                let between = Length::from_tenth_micrometres(th(residual).tenth_micrometres() / 100 * part);
                let said = verdict(&[th(difference) - between], doubted.tolerance, doubted.guard);
                prop_assert_eq!(said, rejudged.unmoved);
            }
        }
    }
}
