//! A check of the laser falls due: by time, by readings, after a stop, when repeats drift. The cab is never told.

use contract::ToSchema;
use earthwork::laser::check_due::{self, CheckCosts, Due, READINGS};
use serde::{Deserialize, Serialize};

use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::state::{SetUp, State};
use crate::time::Time;

/// A check of a set-up is due; a graver reason takes the place of a lighter one until the check is good.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CheckFellDue {
    /// Which set-up.
    pub set_up: String,
    /// Why.
    pub why: Due,
}

impl Happening for CheckFellDue {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_due(state, entry, self);
    }
}

/// The interval between checks, in milliseconds: after the first disturbance of the day the laser is taken to be disturbed
/// twice as often. None when the site's figures give none.
pub(crate) fn interval_ms(state: &State) -> Option<i64> {
    let costs = state.site()?.rules.check_costs;
    let often = if state.bumps > 0 { 2.0 } else { 1.0 };
    check_due::interval_ms(&CheckCosts {
        check: costs.check,
        undetected_hour: costs.undetected_hour,
        disturbed_per_hour: often / costs.hours_between_bumps,
    })
    .ok()
}

/// When a check of a usable set-up is due, and when calls begin to say that there was none.
pub fn moments(state: &State, set_up: &SetUp) -> Option<(Time, Time)> {
    if !set_up.usable() {
        return None;
    }
    let interval = interval_ms(state)?;
    let good_at = set_up.good_at?;
    Some((
        good_at.plus_ms(interval),
        good_at.plus_ms(interval.saturating_mul(2)),
    ))
}

/// The last good check, when it is so long ago that each call says so.
pub(crate) fn not_checked_since(state: &State, set_up: &SetUp, now: Time) -> Option<Time> {
    let (_, overdue) = moments(state, set_up)?;
    (now > overdue).then_some(set_up.good_at).flatten()
}

fn fell_due(set_up: &SetUp, why: Due) -> Option<Body> {
    let graver = set_up.due.is_none_or(|(known, _)| why < known);
    (set_up.usable() && graver).then(|| {
        Body::CheckFellDue(CheckFellDue {
            set_up: set_up.id.clone(),
            why,
        })
    })
}

/// What has fallen due by the clock alone, with its moment.
fn by_time(state: &State, set_up: &SetUp) -> Option<(Time, Due)> {
    let (due, overdue) = moments(state, set_up)?;
    match set_up.due {
        Some((known, _)) if known <= Due::Overdue => None,
        Some((Due::Time, _)) => Some((overdue, Due::Overdue)),
        _ => Some((due, Due::Time)),
    }
}

/// The next moment at which a check falls due.
pub(crate) fn next_deadline(state: &State) -> Option<Time> {
    state
        .set_ups
        .iter()
        .filter_map(|set_up| by_time(state, set_up))
        // The moment itself still belongs to the interval.
        .map(|(at, _)| at.plus_ms(1))
        .min()
}

/// The checks that have fallen due by now.
pub(crate) fn on_deadline(state: &State, now: Time) -> Vec<Body> {
    state
        .set_ups
        .iter()
        .filter_map(|set_up| {
            let (at, why) = by_time(state, set_up)?;
            (now > at).then(|| fell_due(set_up, why)).flatten()
        })
        .collect()
}

/// So many readings since the last good check call for one.
pub(crate) fn by_readings(set_up: &SetUp, taken: u32) -> Option<Body> {
    (set_up.readings_since_check + taken >= READINGS)
        .then(|| fell_due(set_up, Due::Readings))
        .flatten()
}

/// Repeats, or a point shot from two lasers, say that this one moved.
pub(crate) fn by_drift(set_up: &SetUp) -> Option<Body> {
    fell_due(set_up, Due::Drift)
}

/// Work starts again after everything stood still.
pub(crate) fn by_restart(state: &State) -> Vec<Body> {
    state
        .set_ups
        .iter()
        .filter_map(|set_up| fell_due(set_up, Due::Restart))
        .collect()
}

pub(crate) fn apply_due(state: &mut State, entry: &Entry, body: &CheckFellDue) {
    if let Some(set_up) = state.set_up_mut(&body.set_up) {
        set_up.due = Some((body.why, entry.at));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::answer::Outcome;
    use crate::asked::Command;
    use crate::call::Label;
    use crate::given::{Crew, len, supervisor};
    use crate::said::check_shot::SayBumped;
    use crate::said::stop::{LiftStop, StopAll};
    use crate::time::minutes;

    fn due(crew: &Crew) -> Option<Due> {
        crew.state.set_ups.first()?.due.map(|(why, _)| why)
    }

    fn labels(crew: &Crew) -> Vec<Label> {
        let (_, call) = crew.state.live_call("EX-1").unwrap();
        call.sent.labels.clone()
    }

    /// T* is 52.6 min with the usual figures, twice that 105.2 min (derived from √(2c/λr)).
    #[test]
    fn by_the_clock_it_falls_due_and_then_calls_say_so() {
        let mut crew = Crew::digging();
        let good_at = crew.now;
        crew.wait(minutes(52));
        assert_eq!(due(&crew), None);
        crew.wait(minutes(1));
        assert_eq!(due(&crew), Some(Due::Time));
        crew.reads("P-1", "4.70").unwrap();
        assert_eq!(labels(&crew), []);
        crew.wait(minutes(51));
        assert_eq!(due(&crew), Some(Due::Overdue));
        crew.reads("P-1", "4.80").unwrap();
        let (_, call) = crew.state.live_call("EX-1").unwrap();
        assert_eq!(call.sent.labels, [Label::NotChecked]);
        assert_eq!(call.sent.checked_at, Some(good_at));
        crew.check("S1", "BM-2", "3.48").unwrap();
        assert_eq!(due(&crew), None);
        crew.reads("P-1", "4.85").unwrap();
        assert_eq!(labels(&crew), []);
    }

    /// 37.2 min after the first disturbance of the day.
    #[test]
    fn after_a_bump_it_falls_due_sooner() {
        let mut crew = Crew::digging();
        let bumped = Command::SayBumped(SayBumped {
            set_up: "S1".into(),
        });
        crew.says(&supervisor(), bumped).unwrap();
        crew.check("S1", "BM-2", "3.48").unwrap();
        crew.check("S1", "BM-1", "5.00").unwrap();
        crew.wait(minutes(37));
        assert_eq!(due(&crew), None);
        crew.wait(minutes(1));
        assert_eq!(due(&crew), Some(Due::Time));
    }

    #[test]
    fn twenty_five_readings_and_a_restart_call_for_one() {
        let mut crew = Crew::digging();
        for n in 0..24 {
            crew.wait(minutes(1));
            let mark = ["P-1", "P-2"][n % 2];
            crew.reads_now(mark, &format!("{:.2}", 4.0 + n as f64 / 100.0))
                .unwrap();
        }
        assert_eq!(due(&crew), None);
        crew.reads("P-1", "4.40").unwrap();
        assert_eq!(due(&crew), Some(Due::Readings));
        crew.check("S1", "BM-2", "3.48").unwrap();
        let stop = StopAll { why: String::new() };
        crew.says(&supervisor(), Command::StopAll(stop)).unwrap();
        let lift = LiftStop {
            machine: None,
            press: u64::MAX,
            why: "he is out".into(),
        };
        crew.says(&supervisor(), Command::LiftStop(lift)).unwrap();
        assert_eq!(due(&crew), Some(Due::Restart));
    }

    /// Derived: 0.04 ft is 1.77 standard deviations of a repeat; less 0.5, four times, is beyond 4.
    #[test]
    fn small_rises_on_accepted_marks_add_up() {
        let mut crew = Crew::digging();
        crew.reads("P-1", "5.00").unwrap();
        crew.reads("P-2", "5.00").unwrap();
        for text in ["4.96", "4.92"] {
            for mark in ["P-1", "P-2"] {
                assert_eq!(due(&crew), None, "{mark} {text}");
                let answer = crew.reads(mark, text).unwrap();
                assert!(
                    matches!(answer.outcome, Outcome::Called { .. }),
                    "{answer:?}"
                );
            }
        }
        assert_eq!(due(&crew), Some(Due::Drift));
        let repeats = &crew.state.set_up("S1").unwrap().repeats;
        assert_eq!(repeats.len(), 4);
        assert!(
            repeats
                .iter()
                .all(|repeat| repeat.residual == len("0.04 ft"))
        );
    }

    /// A lifted laser finds accepted ground lower: asked like a rise, and one such repeat is enough.
    #[test]
    fn a_fall_on_an_accepted_mark_is_asked_about_too() {
        let mut crew = Crew::digging();
        crew.reads("P-1", "5.00").unwrap();
        let answer = crew.reads("P-1", "5.13").unwrap();
        assert!(
            matches!(answer.outcome, Outcome::Asked { .. }),
            "{answer:?}"
        );
        assert_eq!(due(&crew), Some(Due::Drift));
    }
}
