//! When is the next check due: the interval that costs least, and what calls for a check sooner.
//!
//! A check costs c, a disturbed laser costs r for every hour it goes unnoticed, and is disturbed λ times an hour.
//! Checking every T costs c/T + λ·r·T/2 an hour, least at T* = √(2c / λr) (mathematics, by setting the slope to 0).

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::{Fixed, Text};

use crate::length::whole;

/// So many readings since the last check call for one (common practice).
pub const READINGS: u32 = 25;
/// A change of temperature by more than this calls for one, in degrees Fahrenheit (common practice).
pub const WARMER_OR_COLDER_F: f64 = 25.0;
/// No interval is longer, in milliseconds: half a working day.
const LONGEST_MS: f64 = 4.0 * 3_600_000.0;

/// What a check saves and costs.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CheckCosts {
    /// Of one check, in money.
    pub check: f64,
    /// Of an hour with a disturbed laser, in the same money.
    pub undetected_hour: f64,
    /// How often the laser is disturbed, per hour: 1/24 is once in 24 working hours.
    pub disturbed_per_hour: f64,
}

/// Why there is no interval.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum CheckDueError {
    /// A figure that is not above zero.
    NotAbove {
        /// Which.
        what: Fixed,
    },
}

impl CheckDueError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::NotAbove { what } => words::laser::check_due::not_above(what),
        }
    }
}

words::error!(CheckDueError);

/// The interval between checks that costs least, in milliseconds; four hours at the longest. After the first bump
/// of a day the caller gives twice the rate.
///
/// # Errors
/// When a figure is not a number above zero.
pub fn interval_ms(costs: &CheckCosts) -> Result<i64, CheckDueError> {
    for (what, value) in [
        (
            words::laser::check_due::what::cost_of_a_check(),
            costs.check,
        ),
        (
            words::laser::check_due::what::cost_of_an_hour(),
            costs.undetected_hour,
        ),
        (
            words::laser::check_due::what::rate(),
            costs.disturbed_per_hour,
        ),
    ] {
        if !(value.is_finite() && value > 0.0) {
            return Err(CheckDueError::NotAbove { what });
        }
    }
    let hours = (2.0 * costs.check / (costs.disturbed_per_hour * costs.undetected_hour)).sqrt();
    Ok(whole((hours * 3_600_000.0).min(LONGEST_MS).round()))
}

/// What happened since the last good check.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SinceCheck {
    /// Milliseconds.
    pub elapsed_ms: i64,
    /// Readings.
    pub readings: u32,
    /// Degrees Fahrenheit warmer or, below zero, colder; none when nobody noted it.
    pub warmer_f: Option<f64>,
    /// Work stopped and started again.
    pub restarted: bool,
    /// Somebody said that the laser was bumped.
    pub bumped: bool,
    /// Repeats say that it drifts, or a point shot from two lasers comes out in two heights.
    pub drifts: bool,
}

/// Why a check is due; the first that applies, gravest first.
#[derive(
    Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Due {
    /// The laser was bumped: no call before it is checked.
    Bumped,
    /// Repeats on accepted marks say that it drifts.
    Drift,
    /// Twice the interval has passed: calls say that the laser is not checked.
    Overdue,
    /// The interval has passed.
    Time,
    /// 25 readings were made.
    Readings,
    /// It got more than 25 °F warmer or colder.
    Temperature,
    /// Work started again.
    Restart,
}

/// Whether a check is due, and why.
pub fn due(since: &SinceCheck, interval_ms: i64) -> Option<Due> {
    let changed = since
        .warmer_f
        .is_some_and(|by| by.abs() > WARMER_OR_COLDER_F);
    [
        (since.bumped, Due::Bumped),
        (since.drifts, Due::Drift),
        (
            since.elapsed_ms > interval_ms.saturating_mul(2),
            Due::Overdue,
        ),
        (since.elapsed_ms > interval_ms, Due::Time),
        (since.readings >= READINGS, Due::Readings),
        (changed, Due::Temperature),
        (since.restarted, Due::Restart),
    ]
    .into_iter()
    .find_map(|(applies, due)| applies.then_some(due))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn costs(check: f64, disturbed_per_hour: f64) -> CheckCosts {
        CheckCosts {
            check,
            undetected_hour: 250.0,
            disturbed_per_hour,
        }
    }

    /// Derived: √(2·4 / (250/24)) h = 52.6 min, and 37.2 min at twice the rate.
    #[test]
    fn the_usual_interval_is_under_an_hour() {
        for (rate, minutes) in [(1.0 / 24.0, 52.58), (2.0 / 24.0, 37.18)] {
            let got = interval_ms(&costs(4.0, rate)).unwrap() as f64 / 60_000.0;
            assert!((got - minutes).abs() < 0.01, "{got} is not {minutes}");
        }
        assert_eq!(interval_ms(&costs(1e9, 0.001)), Ok(4 * 3_600_000));
        let error = interval_ms(&costs(4.0, 0.0)).unwrap_err();
        assert!(error.to_string().contains("rate of disturbance"), "{error}");
        assert!(
            error.text().spanish.contains("se mueve el láser"),
            "{error:?}"
        );
        assert!(interval_ms(&costs(f64::NAN, 1.0)).is_err());
    }

    #[test]
    fn the_gravest_reason_is_named() {
        let quiet = SinceCheck {
            elapsed_ms: 100,
            readings: 24,
            warmer_f: Some(-25.0),
            restarted: false,
            bumped: false,
            drifts: false,
        };
        assert_eq!(due(&quiet, 100), None);
        assert_eq!(
            due(
                &SinceCheck {
                    elapsed_ms: 101,
                    ..quiet
                },
                100
            ),
            Some(Due::Time)
        );
        assert_eq!(
            due(
                &SinceCheck {
                    elapsed_ms: 201,
                    ..quiet
                },
                100
            ),
            Some(Due::Overdue)
        );
        assert_eq!(
            due(
                &SinceCheck {
                    readings: 25,
                    ..quiet
                },
                100
            ),
            Some(Due::Readings)
        );
        assert_eq!(
            due(
                &SinceCheck {
                    warmer_f: Some(-25.1),
                    ..quiet
                },
                100
            ),
            Some(Due::Temperature)
        );
        assert_eq!(
            due(
                &SinceCheck {
                    restarted: true,
                    ..quiet
                },
                100
            ),
            Some(Due::Restart)
        );
        assert_eq!(
            due(
                &SinceCheck {
                    drifts: true,
                    elapsed_ms: 999,
                    ..quiet
                },
                100
            ),
            Some(Due::Drift)
        );
        let all = SinceCheck {
            bumped: true,
            elapsed_ms: 999,
            ..quiet
        };
        assert_eq!(due(&all, 100), Some(Due::Bumped));
    }

    proptest! {
        /// No other interval costs less an hour.
        #[test]
        fn nothing_is_cheaper(check in 0.5..20.0, rate in 0.02..2.0, factor in 0.3..3.0) {
            let costs = costs(check, rate);
            let hours = interval_ms(&costs).unwrap() as f64 / 3_600_000.0;
            prop_assume!(hours < 4.0);
            let hourly = |hours: f64| check / hours + rate * 250.0 * hours / 2.0;
            prop_assert!(hourly(hours) <= hourly(hours * factor) + 1e-6);
        }
    }
}
