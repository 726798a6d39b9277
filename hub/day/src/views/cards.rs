//! Cards that the ground person and the supervisor share: machines, set-ups, marks.

use crate::said::reading::Judged;
use crate::state::{Cab, Screen, SetUp, State};
use crate::views::call;
use crate::views::ground::{MachineCard, MarkCard, ScreenCard, SetUpCard};
use earthwork::keep_out::keep_out_radius;

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
                call: call.map(|(id, call)| call::view(id, call)),
                screen: screen(state, cab),
                stop: cab.stop.clone(),
                paused_by: cab.paused.as_ref().map(|(set_up, _)| set_up.clone()),
                must_see: cab.must_see.as_ref().map(|must| must.target.clone()),
                look_asked_at: cab.look_asked_at,
                cant: cab.cant.clone(),
                place: cab.place.clone(),
                keep_out: keep_out_radius(&machine.reach),
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
            benchmark: set_up
                .basis()
                .map(|basis| basis.benchmark.clone())
                .unwrap_or_default(),
            place: set_up.place,
            state: set_up.state.clone(),
            last_check: set_up.last_check.clone(),
            readings_since_check: set_up.readings_since_check,
        })
        .collect()
}

/// The last reading on each mark, in the order of work; then on places that are no mark, by name.
pub(crate) fn marks(state: &State) -> Vec<MarkCard> {
    let Some(site) = state.site() else {
        return vec![];
    };
    let marks = site.marks.iter().map(|mark| &mark.id);
    let places = state.marks.keys().filter(|id| site.mark(id).is_none());
    marks
        .chain(places)
        .filter_map(|mark| {
            let (id, taken) = state.last_reading(mark)?;
            let judged: Option<&Judged> = taken.reading.judged.as_ref();
            let ruling = state.marks.get(mark).and_then(|now| now.ruling);
            Some(MarkCard {
                id: mark.clone(),
                reading: id,
                elevation: taken.reading.elevation,
                dev: judged.map(|judged| judged.mean),
                verdict: judged.map(|judged| judged.verdict),
                ruling,
                needs_ruling: ruling.is_none() && judged.is_some_and(|judged| judged.needs_ruling),
                at: taken.made_at,
                by: taken.by.clone(),
                set_up: taken.reading.set_up.clone(),
            })
        })
        .collect()
}
