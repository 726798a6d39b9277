//! A day begins. Its name owns its entries, whatever the clock does at midnight.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::built;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::open::{OpenItem, open as open_items};
use crate::refusal::Refusal;
use crate::said::{codes, start_checks};
use crate::saying::{Asking, Closed, Saying};
use crate::state::{MarkNow, SlipRecord, State};
use crate::{account, record};

/// The hub opens a day.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct OpenDay {
    /// Its name: the date on the hub's clock at opening, such as `2030-05-14`.
    pub day: String,
}

impl Saying for OpenDay {
    const BY: &'static [Role] = &[Role::Hub];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        open(at.state, at.by, self)
    }
}

/// A day began.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct DayOpened {
    /// Its name.
    pub day: String,
    /// Set-ups that still stood on the day before: they count no more.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub taken_down: Vec<String>,
    /// What the day before left to be done.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub open: Vec<OpenItem>,
    /// The day before was never closed.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub not_closed: bool,
}

impl Happening for DayOpened {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_opened(state, entry, self);
    }
}

impl DayOpened {
    /// A day with nothing before it.
    pub fn of(day: &str) -> Self {
        Self {
            day: day.to_owned(),
            taken_down: vec![],
            open: vec![],
            not_closed: false,
        }
    }
}

/// The longest name of a day: a date, and a number when a date has several.
const LONGEST_NAME: usize = 16;

/// Opens a day, unless it is the one that is open. Set-ups that still stand come down with the day before: a new day needs
/// a laser that was set up and proven on it. A person opens the next day only when this one is closed; the hub itself opens
/// the day that it is started on.
pub(crate) fn open(state: &State, by: &By, asked: &OpenDay) -> Result<Vec<Body>, Refusal> {
    let plain = |c: char| c.is_ascii_alphanumeric() || c == '-';
    if asked.day.is_empty() || asked.day.len() > LONGEST_NAME || !asked.day.chars().all(plain) {
        return Err(Refusal::of_the_record(words::day::day_named_by_its_date()));
    }
    let Some(before) = &state.day else {
        return Ok(vec![Body::DayOpened(DayOpened::of(&asked.day))]);
    };
    if before.id == asked.day {
        return Ok(vec![]);
    }
    let closed = state.record.closed.is_some();
    if !closed && by.device != By::hub().device {
        return Err(Refusal::of_the_record(words::day::close_this_day_first()));
    }
    let standing = state.set_ups.iter().filter(|set_up| !set_up.closed);
    // One entry alone: it begins a file, and no request is torn between two files.
    Ok(vec![Body::DayOpened(DayOpened {
        day: asked.day.clone(),
        taken_down: standing.map(|set_up| set_up.id.clone()).collect(),
        open: open_items(state),
        not_closed: !closed,
    })])
}

/// The day before leaves memory. The site, its stops, the paint on the ground with its generation, queries, tests and patches
/// stay; aims are off, the laser is set up anew, faces are inspected anew, codes are void. Phones are out, but for those of people
/// who may be within a keep-out and of the cab there: a day never takes I AM OUT and RELEASE away from them.
pub(crate) fn apply_opened(state: &mut State, entry: &Entry, body: &DayOpened) {
    // Before the readings of the day before leave memory.
    state.built_before = built::built(state)
        .into_iter()
        .map(|mark| (mark.mark.clone(), mark))
        .collect();
    record::day_opened(state, entry, &body.open);
    state.day = Some(crate::state::OpenDay {
        id: body.day.clone(),
        first: entry.seq,
        at: entry.at,
    });
    account::day_opened(state);
    codes::new_day(state, &body.day);
    state.set_ups.clear();
    state.calls.clear();
    state.readings.clear();
    state.asked.clear();
    state.slips = SlipRecord::default();
    state.levels.clear();
    state.suspects.clear();
    state.bumps = 0;
    for mark in state.marks.values_mut() {
        *mark = MarkNow {
            paint: mark.paint.take(),
            ..MarkNow::default()
        };
    }
    state.marks.retain(|_, mark| mark.paint.is_some());
    state.aims.clear();
    state.answers.clear();
    start_checks::new_day(state);
    state.slews.clear();
    let machines: Vec<String> = state.cabs.keys().cloned().collect();
    state.cuts.new_day(&machines);
    state.way_in.new_day(entry.at);
    state.phones_of_a_new_day();
    for (machine, cab) in &mut state.cabs {
        let stays = |device: &String| state.over_night.contains_key(device);
        let held = state.way_in.gates().any(|(id, _)| id == machine);
        *cab = cab.on_a_new_day(held && cab.device.as_ref().is_some_and(stays));
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
