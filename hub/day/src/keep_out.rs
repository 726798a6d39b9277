//! When a reminder stands with a call, and when it is loud. The tool senses nobody: a place is what was last said.

use earthwork::keep_out::{Nearness, PLACE_TOO_OLD_MS, keep_out_radius, nearness};
use earthwork::length::Length;
use earthwork::machine::zone;
use earthwork::point::Point;

use crate::asked::By;
use crate::call::Reminder;
use crate::state::State;
use crate::time::{Time, minutes};

/// Loud at most this often for one machine: what nags is not heard.
const QUIET_MS: i64 = minutes(20);
/// After a pause as long as this (lunch), the first reminder is loud again.
const PAUSE_MS: i64 = minutes(30);

/// Where a mark lies: as laid out, else where its last reading was placed.
pub(crate) fn place_of(state: &State, mark: &str) -> Option<Point> {
    let computed = || Some(state.last_reading(mark)?.1.reading.placed.as_ref()?.at);
    let laid = state.site()?.mark(mark).map(|mark| mark.place);
    laid.or_else(computed)
}

/// Where a mark lies to a machine's keep-out.
pub fn mark_nearness(state: &State, now: Time, machine: &str, mark: &str) -> Option<Nearness> {
    let site = state.site()?;
    let place = place_of(state, mark);
    let declared = state.cabs.get(machine).and_then(|cab| cab.place.as_ref());
    let radius = keep_out_radius(&site.machine(machine)?.reach);
    Some(nearness(
        place,
        declared.map(|card| (card.at, now.ms_since(card.since))),
        radius,
    ))
}

/// Whether a mark lies in the keep-out of a machine where it was last said to stand, however long ago that was.
pub(crate) fn lies_within(state: &State, machine: &str, mark: &str) -> bool {
    let said = state.cabs.get(machine).and_then(|cab| cab.place.as_ref());
    let near = said.and_then(|card| mark_nearness(state, card.since, machine, mark));
    matches!(near, Some(Nearness::Inside { .. }))
}

/// Whether a machine counts as near every mark while its place is old or unknown: it is at work today, as far as anybody has said.
/// Somebody sits in its cab, or has called to it, placed it, or said that it moved. One that nobody has spoken of today is asked
/// for at the marks that it is to dig alone.
pub fn is_about(state: &State, machine: &str) -> bool {
    state.cabs.get(machine).is_some_and(|cab| {
        cab.device.is_some() || cab.place.is_some() || cab.last.is_some() || cab.moved
    })
}

/// The marks that lie within the keep-out of a machine, from where it was last said to stand; none while nobody has said.
pub fn marks_within(state: &State, machine: &str) -> Vec<String> {
    let Some(site) = state.site() else {
        return vec![];
    };
    let within = site.marks.iter().filter(|mark| {
        let near = mark_nearness(state, state.at, machine, &mark.id);
        matches!(near, Some(Nearness::Inside { .. }))
    });
    within.map(|mark| mark.id.clone()).collect()
}

/// How far the mark of a machine's live call lies beyond its bucket's reach; none within reach, without a live call at a mark, or
/// while nobody has said lately where the machine stands. Likely it has moved, and then its keep-out is drawn where it is not.
pub fn beyond_reach(state: &State, machine: &str) -> Option<Length> {
    let (_, call) = state.live_call(machine)?;
    let site = state.site()?;
    let mark = site.mark(call.sent.mark.as_deref()?)?;
    let place = state.cabs.get(machine)?.place.as_ref()?;
    let apart = mark.place.distance(place.at);
    let beyond = apart - site.machine(machine)?.reach.reach_at_ground;
    let lately = state.at.ms_since(place.since) <= PLACE_TOO_OLD_MS;
    (lately && beyond > Length::ZERO).then_some(beyond)
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
        beside: !matches!(nearness, Nearness::Inside { .. }),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, len};
    use crate::said::machine::SayMoved;

    #[test]
    fn a_machine_that_nobody_has_spoken_of_today_is_not_about_and_one_that_moved_is() {
        let mut crew = Crew::opened();
        assert!(!is_about(&crew.state, "EX-2"));
        let moved = SayMoved {
            machine: "EX-2".into(),
        };
        crew.says(&ground(), Command::SayMoved(moved)).unwrap();
        assert!(is_about(&crew.state, "EX-2"));
        let crew = Crew::digging();
        assert!(is_about(&crew.state, "EX-1") && is_about(&crew.state, "EX-2"));
    }

    /// The mark lies 40 ft east of the machine, further than its bucket reaches (invented).
    #[test]
    fn a_call_for_a_mark_beyond_reach_is_said_until_the_machine_is_placed_anew() {
        let mut crew = Crew::digging();
        let mark = crew.state.site().unwrap().mark("P-1").unwrap().place;
        let place = |crew: &mut Crew, west: &str| {
            let x = (mark.x - len(west)).to_string();
            crew.place("EX-1", &x, &mark.y.to_string());
        };
        place(&mut crew, "40 ft");
        assert_eq!(beyond_reach(&crew.state, "EX-1"), None, "nothing is called");
        crew.reads("P-1", "4.70").unwrap();
        let reach = crew.state.site().unwrap().machine("EX-1").unwrap().reach;
        let by = len("40 ft") - reach.reach_at_ground;
        assert_eq!(beyond_reach(&crew.state, "EX-1"), Some(by));
        place(&mut crew, "20 ft");
        assert_eq!(beyond_reach(&crew.state, "EX-1"), None);
        place(&mut crew, "40 ft");
        let moved = SayMoved {
            machine: "EX-1".into(),
        };
        crew.says(&ground(), Command::SayMoved(moved)).unwrap();
        assert_eq!(beyond_reach(&crew.state, "EX-1"), None, "nobody knows");
    }
}
