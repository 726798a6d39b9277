//! A day begins. Its name owns its entries, whatever the clock does at midnight.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::account;
use crate::entry::{Body, Entry};
use crate::state::{Cab, SlipRecord, State};

/// The hub opens a day.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct OpenDay {
    /// Its name: the date on the hub's clock at opening, such as `2030-05-14`.
    pub day: String,
}

/// A day began.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct DayOpened {
    /// Its name.
    pub day: String,
}

/// Opens a day, unless it is the one that is open.
pub(crate) fn open(state: &State, asked: &OpenDay) -> Vec<Body> {
    if state.day.as_ref().is_some_and(|day| day.id == asked.day) {
        return vec![];
    }
    vec![Body::DayOpened(DayOpened {
        day: asked.day.clone(),
    })]
}

/// The day before leaves memory: its site, its stops and its declared machines' names stay.
pub(crate) fn apply_opened(state: &mut State, entry: &Entry, body: &DayOpened) {
    state.day = Some(crate::state::OpenDay {
        id: body.day.clone(),
        first: entry.seq,
        at: entry.at,
    });
    account::day_opened(state);
    state.codes_generation = 0;
    state.devices.clear();
    state.set_ups.clear();
    state.calls.clear();
    state.readings.clear();
    state.asked.clear();
    state.slips = SlipRecord::default();
    state.levels.clear();
    state.suspects.clear();
    state.bumps = 0;
    state.marks.clear();
    state.aims.clear();
    state.answers.clear();
    state.cuts.new_day();
    state.way_in.new_day(entry.at);
    for cab in state.cabs.values_mut() {
        // A stop outlives the day: nothing but a supervisor's word lifts it.
        *cab = Cab {
            stop: cab.stop.take(),
            ..Cab::default()
        };
    }
}

#[cfg(test)]
mod tests {
    use crate::given::Crew;
    use crate::time::Time;

    /// Midnight (UTC) is a whole number of days of 86,400,000 ms: the set-up stands before it, the reading behind it.
    #[test]
    fn a_day_that_goes_on_over_midnight_keeps_its_name_and_its_laser() {
        let mut crew = Crew::digging();
        let day = crew.state.day.clone();
        let midnight = Time((crew.now.0 / 86_400_000 + 1) * 86_400_000);
        crew.wait(midnight.ms_since(crew.now) - 60_000);
        crew.check("S1", "BM-2", "3.48").unwrap();
        crew.wait(120_000);
        assert!(crew.now > midnight);
        crew.reads("P-1", "4.70").unwrap();
        assert_eq!(crew.state.day, day);
        assert_eq!(crew.state.calls.len(), 1);
    }
}
