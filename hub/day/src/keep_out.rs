//! When a reminder stands with a call, and when it is loud. The tool senses nobody: a place is what was last said.

use earthwork::keep_out::{Nearness, keep_out_radius, nearness};
use earthwork::machine::zone;

use crate::asked::By;
use crate::state::State;
use crate::time::{Time, minutes};
use crate::views::call::Reminder;

/// Loud at most this often for one machine: what nags is not heard.
const QUIET_MS: i64 = minutes(20);
/// After a pause as long as this (lunch), the first reminder is loud again.
const PAUSE_MS: i64 = minutes(30);

/// Where a mark lies to a machine's keep-out.
pub(crate) fn mark_nearness(
    state: &State,
    now: Time,
    machine: &str,
    mark: &str,
) -> Option<Nearness> {
    let site = state.site()?;
    let computed = || Some(state.last_reading(mark)?.1.reading.placed.as_ref()?.at);
    let place = site.mark(mark).map(|mark| mark.place).or_else(computed);
    let declared = state.cabs.get(machine).and_then(|cab| cab.place.as_ref());
    let radius = keep_out_radius(&site.machine(machine)?.reach);
    Some(nearness(
        place,
        declared.map(|card| (card.at, now.ms_since(card.since))),
        radius,
    ))
}

/// The marks that lie within the keep-out of a machine, from where it was last said to stand; none while nobody has said.
pub(crate) fn marks_within(state: &State, machine: &str) -> Vec<String> {
    let Some(site) = state.site() else {
        return vec![];
    };
    let within = site.marks.iter().filter(|mark| {
        let near = mark_nearness(state, state.at, machine, &mark.id);
        matches!(near, Some(Nearness::Inside { .. }))
    });
    within.map(|mark| mark.id.clone()).collect()
}

/// The reminder for a call at a mark; none outside of the keep-out, or for a word without a place.
pub(crate) fn reminder(
    state: &State,
    by: &By,
    now: Time,
    machine: &str,
    mark: Option<&str>,
) -> Option<Reminder> {
    let mark = mark?;
    let nearness = mark_nearness(state, now, machine, mark)?;
    if matches!(nearness, Nearness::Outside { .. }) {
        return None;
    }
    let cab = state.cabs.get(machine);
    let since = |at: Option<Time>| at.map(|at| now.ms_since(at));
    let rested = since(cab.and_then(|cab| cab.called_at)).is_none_or(|ms| ms >= PAUSE_MS);
    let quiet = since(cab.and_then(|cab| cab.loud_at)).is_none_or(|ms| ms >= QUIET_MS);
    let reach = &state.site()?.machine(machine)?.reach;
    let radius = keep_out_radius(reach);
    let zone = match nearness {
        Nearness::Inside { by } => zone(radius - by, reach, radius),
        _ => None,
    };
    Some(Reminder {
        who: by.person.clone(),
        mark: mark.to_owned(),
        nearness,
        zone,
        loud: quiet || rested,
    })
}
