//! What may stand now. After each entry every live call is asked whether it would still be sent; what would not be is ended, by
//! whatever the entry was: a pipe that was bared, paint that went, a machine that moved, a laser that was taken down.

use std::collections::VecDeque;

use crate::call::Ending;
use crate::cuts::held::{self, HeldBy};
use crate::cuts::strip;
use crate::entry::Body;
use crate::said::call;
use crate::state::{Call, State};

/// The entries of one request, in their order, and after them what they take away: there is no other way into the log.
///
/// Take one, apply it, take the next: what follows from the state is only known then.
#[derive(Debug)]
pub struct Following {
    left: VecDeque<Body>,
}

impl Following {
    /// What follows from a request, or from the clock.
    pub fn new(bodies: Vec<Body>) -> Self {
        Self {
            left: bodies.into(),
        }
    }

    /// The next entry, by the state that holds all before it.
    pub fn next(&mut self, state: &State) -> Option<Body> {
        self.more(state).then(|| self.left.pop_front()).flatten()
    }

    /// Whether there is another one.
    pub fn more(&mut self, state: &State) -> bool {
        if self.left.is_empty() {
            self.left.extend(ends(state));
        }
        !self.left.is_empty()
    }
}

/// The ends of live calls that may not stand.
pub(crate) fn ends(state: &State) -> Vec<Body> {
    let live = state.cabs.values().filter_map(|cab| cab.live);
    live.filter_map(|id| {
        let call = state.calls.get(&id)?;
        let (how, held) = why_not(state, call)?;
        Some(call::held_up(id, call, how, held))
    })
    .collect()
}

/// Why a call that is live may not stand; none when it may. The one place that says so.
pub(crate) fn why_not(state: &State, call: &Call) -> Option<(Ending, Option<HeldBy>)> {
    let sent = &call.sent;
    let site = state.site()?;
    let cab = state.cabs.get(&sent.machine)?;
    let plain = |how| Some((how, None));
    let Some(machine) = site.machine(&sent.machine) else {
        return plain(Ending::OffSite);
    };
    // What the old screen showed was never seen on the new one.
    if cab.device != call.screen {
        return plain(Ending::NewScreen);
    }
    if let Some(target) = &sent.target {
        let revision = site.target(target).map(|target| target.revision);
        if revision.is_none() {
            return plain(Ending::StaleByTarget);
        }
        let assigned = site.machine_for(target);
        if call.assigned && assigned.is_none_or(|one| one.id != machine.id) {
            return plain(Ending::GivenAway);
        }
    }
    if let Some(mark) = &sent.mark
        && strip::place_of(state, mark).is_none()
    {
        return plain(Ending::StaleByMark);
    }
    let usable = |id: &String| state.set_up(id).is_some_and(crate::state::SetUp::usable);
    if sent.set_up.as_ref().is_some_and(|id| !usable(id)) {
        return plain(Ending::StaleByLaser);
    }
    let taken = sent.readings.iter().filter_map(|id| state.readings.get(id));
    if taken.into_iter().any(|taken| taken.restated) {
        return plain(Ending::Restated);
    }
    if let Some(held) = held::call(
        state,
        &sent.machine,
        sent.mark.as_deref(),
        sent.target.as_deref(),
    ) {
        return Some((held.ending(), Some(held)));
    }
    if out_of_place(state, call) {
        return plain(Ending::MachineMoved);
    }
    if cab.stop.is_none() && call.stale_at <= state.at {
        return plain(call::by_age(call));
    }
    None
}

/// Whether the machine was said, after the reading, to have moved, or to stand where it does not reach the mark.
fn out_of_place(state: &State, call: &Call) -> bool {
    let Some(cab) = state.cabs.get(&call.sent.machine) else {
        return false;
    };
    if cab.place_said.is_none_or(|said| said < call.made_at) {
        return false;
    }
    let Some(place) = &cab.place else {
        return true;
    };
    let reach = state
        .site()
        .and_then(|site| site.machine(&call.sent.machine))
        .map(|machine| machine.reach.reach_at_ground);
    let mark = call.sent.mark.as_deref();
    let at = mark.and_then(|mark| strip::place_of(state, mark));
    at.zip(reach)
        .is_some_and(|(at, reach)| at.distance(place.at) > reach)
}

#[cfg(test)]
mod tests;
