//! What the hub notices by itself: a phone's link, its own new start, an ask that nobody has answered.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::entered;
use crate::asked::Role;
use crate::call::Ending;
use crate::entry::Body;
use crate::refusal::Refusal;
use crate::said::{call, spotter};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::Time;

/// The hub notices that the link of a phone is lost, or back.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NoticeLink {
    /// Which phone.
    pub device: String,
    /// Lost; else back.
    pub lost: bool,
}

impl Saying for NoticeLink {
    const BY: &'static [Role] = &[Role::Hub];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        Ok(link(at.state, self))
    }
}

/// The hub was started again.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NoticeRestart {
    /// The laptop's clock is behind the log: nobody knows how long the hub was down.
    #[serde(default)]
    pub clock_behind: bool,
}

impl Saying for NoticeRestart {
    const BY: &'static [Role] = &[Role::Hub];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        Ok(restart(at.state, self))
    }
}

pub(crate) fn link(state: &State, asked: &NoticeLink) -> Vec<Body> {
    let visits = entered(state.way_in.link(&asked.device, asked.lost));
    if visits.is_empty() {
        // One entry tells of both: who visits a machine and spots for one has one phone.
        return spotter::link(state, asked).into_iter().collect();
    }
    visits
}

pub(crate) fn restart(state: &State, asked: &NoticeRestart) -> Vec<Body> {
    let mut bodies = entered(state.way_in.restarted());
    if asked.clock_behind {
        let machines = state.cabs.keys();
        bodies.extend(
            machines.filter_map(|machine| call::end_live(state, machine, Ending::ClockBehind)),
        );
    }
    bodies
}

pub(crate) fn next_deadline(state: &State) -> Option<Time> {
    state.way_in.next_deadline()
}

pub(crate) fn on_deadline(state: &State, now: Time) -> Vec<Body> {
    entered(state.way_in.on_deadline(now))
}
