//! Cards that the ground person and the supervisor share: machines, set-ups, marks.

use crate::views::ground::{DueCard, MachineCard, MarkCard, ScreenCard, SetUpCard, SuspectCard};
use crate::views::parts::Each;
use crate::views::{call, way_in};
use day::built;
use day::keep_out;
use day::last::{self, StillCounts};
use day::near;
use day::said::check_due;
use day::said::reading::Judged;
use day::said::suspect::SuspectMark;
use day::site::Site;
use day::state::SetUpState;
use day::state::{Cab, Screen, SetUp, State};
use earthwork::keep_out::{PLACE_TOO_OLD_MS, keep_out_radius};

/// One card for each machine of the site.
pub(crate) fn machines(state: &State) -> Vec<MachineCard> {
    let Some(site) = state.site() else {
        return vec![];
    };
    let idle = Cab::default();
    site.machines
        .iter()
        .map(|machine| {
            let cab = state.cabs.get(&machine.id).unwrap_or(&idle);
            let call = cab.last.and_then(|id| Some((id, state.calls.get(&id)?)));
            MachineCard {
                id: machine.id.clone(),
                shape: machine.shape,
                works_on: machine.works_on.clone(),
                call: call.map(|(id, call)| call::view(state, id, call)),
                in_view: day::cab::number_in_view(state, &machine.id),
                mute: day::cab::is_mute(state, &machine.id),
                screen: screen(state, cab),
                stop: cab.stop.clone(),
                paused_by: cab.paused.as_ref().map(|(set_up, _)| set_up.clone()),
                must_see: cab.must_see.as_ref().map(|must| must.target.clone()),
                look_asked_at: cab.look_asked_at,
                cant: cab.cant.clone(),
                place: cab.place.clone(),
                keep_out: keep_out_radius(&machine.reach),
                marks_within: keep_out::marks_within(state, &machine.id),
                beyond_reach: keep_out::beyond_reach(state, &machine.id),
                place_old_at: cab
                    .place
                    .as_ref()
                    .map(|place| place.since.plus_ms(PLACE_TOO_OLD_MS)),
                is_about: keep_out::is_about(state, &machine.id),
                way_in: way_in::at(state, &machine.id),
                near: near::unsettled(state, &machine.id),
                slews: state
                    .slews
                    .iter()
                    .filter(|one| one.names(&machine.id))
                    .cloned()
                    .collect(),
                spotter: cab.spotter.clone(),
                battery_low: cab.battery_low,
            }
        })
        .collect()
}

fn screen(state: &State, cab: &Cab) -> ScreenCard {
    let person = cab
        .device
        .as_deref()
        .and_then(|device| state.device(device))
        .map(|device| device.person.clone());
    match (person, cab.screen) {
        (None, _) | (_, Screen::None) => ScreenCard::None,
        (Some(person), Screen::Showing) => ScreenCard::Showing { person },
        (Some(person), Screen::Hidden(since)) => ScreenCard::Hidden { person, since },
        (Some(person), Screen::Lost(since)) => ScreenCard::Lost { person, since },
    }
}

/// The set-ups that are not closed.
pub(crate) fn set_ups(state: &State) -> Vec<SetUpCard> {
    state
        .set_ups
        .iter()
        .filter(|set_up| !set_up.closed)
        .map(|set_up: &SetUp| SetUpCard {
            id: set_up.id.clone(),
            laser: set_up.laser.clone(),
            height: set_up.height(),
            slope: set_up.slope,
            good_on: set_up.good_on.clone(),
            benchmark: set_up
                .basis()
                .map(|basis| basis.benchmark.clone())
                .unwrap_or_default(),
            place: set_up.place,
            state: set_up.state.clone(),
            last_check: set_up.last_check.clone(),
            readings_since_check: set_up.readings_since_check,
            good_at: set_up.good_at,
            check_by: check_due::moments(state, set_up).map(|(due, _)| due),
            due: set_up.due.map(|(why, since)| DueCard { why, since }),
            tested: set_up.tested,
        })
        .collect()
}

/// What failed checks and bumps of the day put in doubt, in the order in which they came.
pub(crate) fn suspects(state: &State) -> Vec<SuspectCard> {
    state
        .suspects
        .iter()
        .map(|suspect| {
            let window = &suspect.window;
            let marks = |owed: bool| -> Vec<SuspectMark> {
                window
                    .marks
                    .iter()
                    .filter(|mark| mark.standing.is_owed() == owed)
                    .filter(|mark| !owed || suspect.open.contains(&mark.mark))
                    .cloned()
                    .collect()
            };
            SuspectCard {
                set_up: window.set_up.clone(),
                from: window.from,
                to: window.to,
                residual: window.residual,
                readings: window.readings,
                held_at: window.held_at,
                moved_by: window.moved_by,
                shoot_again: marks(true),
                stand: marks(false),
            }
        })
        .collect()
}

/// Whether a set-up that still stands is in doubt.
pub(crate) fn in_doubt(state: &State, set_up: &str) -> bool {
    state
        .set_up(set_up)
        .is_some_and(|set_up| !set_up.closed && matches!(set_up.state, SetUpState::InDoubt { .. }))
}

/// The last reading on each mark, of this day or the days before, in the order of work; then of this day on places that are
/// no mark, by name.
pub(crate) fn marks<'a>(state: &'a State, site: &'a Site) -> Each<'a, &'a str, MarkCard> {
    let marks = site.marks.iter().map(|mark| mark.id.as_str());
    let places = state.marks.keys().filter(|id| site.mark(id).is_none());
    Each {
        keys: marks.chain(places.map(String::as_str)).collect(),
        mark: |mark| mark,
        name: |mark| (*mark).to_owned(),
        one: Box::new(|mark| read_today(state, mark).or_else(|| built_before(state, mark))),
    }
}

fn read_today(state: &State, mark: &str) -> Option<MarkCard> {
    let (id, taken) = state.last_reading(mark)?;
    let counts = last::of_reading(state, id, taken);
    let judged: Option<&Judged> = taken.reading.judged.as_ref();
    let ruling = state.marks.get(mark).and_then(|now| now.ruling);
    let needs_ruling = ruling.is_none() && judged.is_some_and(|judged| judged.needs_ruling);
    let card = MarkCard {
        id: mark.to_owned(),
        reading: id,
        elevation: taken.reading.elevation,
        dev: judged.map(|judged| judged.mean),
        verdict: judged.map(|judged| judged.verdict),
        ruling,
        needs_ruling,
        at: taken.made_at,
        by: taken.by.clone(),
        set_up: taken.reading.set_up.clone(),
        day: None,
        counts,
        was: None,
    };
    Some(as_it_counts(card))
}

/// What a day before left, until somebody reads there again.
fn built_before(state: &State, mark: &str) -> Option<MarkCard> {
    let before = built::before(state, mark)?;
    let counts = last::of_before(state, &before);
    Some(as_it_counts(MarkCard {
        id: before.mark,
        reading: before.reading,
        elevation: before.elevation,
        dev: before.mean,
        verdict: before.verdict,
        ruling: before.ruling,
        needs_ruling: false,
        at: before.at,
        by: before.by,
        set_up: before.set_up,
        day: Some(before.day),
        counts,
        was: None,
    }))
}

/// What does not count any more has no difference and no verdict: no view can show them as if they held.
fn as_it_counts(card: MarkCard) -> MarkCard {
    if card.counts == StillCounts::Counts {
        return card;
    }
    MarkCard {
        was: card.dev,
        dev: None,
        verdict: None,
        ruling: None,
        needs_ruling: false,
        ..card
    }
}
