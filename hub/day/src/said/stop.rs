//! ALL STOP from anyone in one press; lifted by a supervisor alone.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::overtaken;
use crate::refusal::{Refusal, Thing};
use crate::said::{check_due, near_miss};
use crate::saying::{Asking, Closed, Saying};
use crate::site::Site;
use crate::state::State;
use crate::time::{Time, When, minutes};

/// Every machine stands still, bucket down.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct StopAll {
    /// Why; may be empty: the press comes first.
    #[serde(default)]
    pub why: String,
}

impl Saying for StopAll {
    const BY: &'static [Role] = &[
        Role::Ground,
        Role::Operator,
        Role::Supervisor,
        Role::Visitor,
    ];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        stop_all(at.state, self)
    }
}

/// A stop in force.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct StopCard {
    /// The entry of its newest press: what a LIFT names, and what sounds again.
    #[serde(default)]
    pub press: u64,
    /// Who pressed.
    pub by: String,
    /// Why; may be empty.
    pub why: String,
    /// Since when.
    pub since: Time,
    /// Part of an ALL STOP.
    pub all: bool,
}

/// Machines were stopped.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Stopped {
    /// Which.
    pub machines: Vec<String>,
    /// Every machine.
    pub all: bool,
    /// Why.
    pub why: String,
}

impl Happening for Stopped {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_stopped(state, entry, self);
    }
}

/// A supervisor lifts a stop.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LiftStop {
    /// Which machine; all when none is named.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
    /// The newest press that the page showed: see [`StopCard::press`]. A stop that was pressed again since is not lifted.
    #[serde(default)]
    pub press: u64,
    /// What was seen before it was lifted.
    pub why: String,
}

impl Saying for LiftStop {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        lift(at.state, self, at.when)
    }
}

/// A stop was lifted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct StopLifted {
    /// Which.
    pub machines: Vec<String>,
    /// What was seen.
    pub why: String,
}

impl Happening for StopLifted {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_lifted(state, entry, self);
    }
}

/// A call's clock stands still under a stop for no longer than this: after it the ground is read again (our own choice; common
/// practice is to look anew before digging on).
const HELD_STILL_MS: i64 = minutes(5);

/// Every machine of the site, at once, and each that somebody still sits in though the site has it no more. A second press while
/// all stand still adds the second voice, no more.
pub(crate) fn stop_all(state: &State, asked: &StopAll) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let why = asked.why.trim();
    let mut bodies = vec![Body::Stopped(Stopped {
        machines: state.machines_here().map(str::to_owned).collect(),
        all: true,
        why: why.to_owned(),
    })];
    bodies.extend(near_miss::open(state, site, why));
    Ok(bodies)
}

pub(crate) fn lift(state: &State, asked: &LiftStop, when: When) -> Result<Vec<Body>, Refusal> {
    if asked.why.trim().is_empty() {
        return Err(Refusal::say_why(words::stop::what_you_have_seen_before()));
    }
    if let Some(machine) = &asked.machine
        && !state.cabs.contains_key(machine)
    {
        return Err(Refusal::Unknown {
            what: Thing::Machine,
            name: machine.clone(),
        });
    }
    let asked_for = |machine: &String| asked.machine.as_ref().is_none_or(|only| only == machine);
    for (machine, gate) in state.way_in.gates() {
        let people = gate.may_be_in();
        if asked_for(machine) && !people.is_empty() {
            return Err(Refusal::PeopleIn {
                machine: machine.clone(),
                people,
            });
        }
    }
    let machines: Vec<String> = state
        .cabs
        .iter()
        .filter(|(_, cab)| cab.stop.is_some())
        .map(|(machine, _)| machine.clone())
        .filter(asked_for)
        .collect();
    if machines.is_empty() {
        return Ok(vec![]);
    }
    overtaken::in_time(when)?;
    let pressed_since = machines
        .iter()
        .filter_map(|machine| state.cabs.get(machine)?.stop.as_ref())
        .find(|stop| stop.press > asked.press);
    if let Some(stop) = pressed_since {
        return Err(overtaken::overtaken(
            words::stop::pressed_stop_after_what_this(&stop.by),
        ));
    }
    let all_over = machines
        .iter()
        .filter_map(|machine| state.cabs.get(machine)?.stop.as_ref())
        .any(|stop| stop.all);
    let mut bodies = vec![Body::StopLifted(StopLifted {
        machines,
        why: asked.why.trim().to_owned(),
    })];
    // On a closed day nobody is asked for a laser check any more.
    if all_over && state.record.closed.is_none() {
        bodies.extend(check_due::by_restart(state));
    }
    Ok(bodies)
}

pub(crate) fn apply_stopped(state: &mut State, entry: &Entry, body: &Stopped) {
    let stands = |machine: &String| {
        let cab = state.cabs.get(machine);
        cab.and_then(|cab| cab.stop.as_ref())
            .is_some_and(|stop| stop.all)
    };
    if body.machines.iter().all(stands) {
        near_miss::add_voice(state, &entry.by, entry.at, &body.why);
    }
    for machine in &body.machines {
        let cab = state.cab_mut(machine);
        let since = cab.stop.as_ref().map_or(entry.at, |stop| stop.since);
        cab.stop = Some(StopCard {
            by: entry.by.person.clone(),
            why: body.why.clone(),
            since,
            press: entry.seq,
            all: body.all || cab.stop.as_ref().is_some_and(|stop| stop.all),
        });
    }
}

/// Machines that come on to the site while ALL STOP stands are stopped too.
pub(crate) fn newcomers(state: &State, old: &Site, new: &Site) -> Option<Body> {
    let all = state.cabs.values().filter_map(|cab| cab.stop.as_ref());
    let standing = all.filter(|stop| stop.all).max_by_key(|stop| stop.press)?;
    let fresh = new.machines.iter().filter(|one| {
        let stopped = state
            .cabs
            .get(&one.id)
            .is_some_and(|cab| cab.stop.is_some());
        old.machine(&one.id).is_none() && !stopped
    });
    let machines: Vec<String> = fresh.map(|one| one.id.clone()).collect();
    (!machines.is_empty()).then(|| {
        Body::Stopped(Stopped {
            machines,
            all: true,
            why: standing.why.clone(),
        })
    })
}

/// The clock of a live call stood still while its machine did, for a while.
pub(crate) fn apply_lifted(state: &mut State, entry: &Entry, body: &StopLifted) {
    for machine in &body.machines {
        let cab = state.cab_mut(machine);
        let (stop, live) = (cab.stop.take(), cab.live);
        if let (Some(stop), Some(call)) = (stop, live.and_then(|id| state.calls.get_mut(&id))) {
            let from = stop.since.max(call.sent_at);
            call.stale_at = call
                .stale_at
                .plus_ms(entry.at.ms_since(from).clamp(0, HELD_STILL_MS));
        }
    }
}
