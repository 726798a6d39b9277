//! ALL STOP from anyone in one press; lifted by a supervisor alone.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::entry::{Body, Entry};
use crate::refusal::{Refusal, Thing};
use crate::said::{check_due, near_miss};
use crate::state::State;
use crate::views::ground::StopCard;

/// Every machine stands still, bucket down.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct StopAll {
    /// Why; may be empty: the press comes first.
    #[serde(default)]
    pub why: String,
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

/// A supervisor lifts a stop.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LiftStop {
    /// Which machine; all when none is named.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
    /// What was seen before it was lifted.
    pub why: String,
}

/// A stop was lifted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct StopLifted {
    /// Which.
    pub machines: Vec<String>,
    /// What was seen.
    pub why: String,
}

/// Every machine of the site, at once. A second press while all stand still adds the second voice, no more.
pub(crate) fn stop_all(state: &State, asked: &StopAll) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let why = asked.why.trim();
    let mut bodies = vec![Body::Stopped(Stopped {
        machines: site
            .machines
            .iter()
            .map(|machine| machine.id.clone())
            .collect(),
        all: true,
        why: why.to_owned(),
    })];
    bodies.extend(near_miss::open(state, site, why));
    Ok(bodies)
}

pub(crate) fn lift(state: &State, asked: &LiftStop) -> Result<Vec<Body>, Refusal> {
    if asked.why.trim().is_empty() {
        return Err(Refusal::SayWhy {
            what: "what you have seen before lifting the stop".into(),
        });
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
        let voices = cab.stop.as_ref().map_or(1, |stop| stop.voices + 1);
        cab.stop = Some(StopCard {
            by: entry.by.person.clone(),
            why: body.why.clone(),
            since,
            voices,
            all: body.all || cab.stop.as_ref().is_some_and(|stop| stop.all),
        });
    }
}

/// The clock of a live call stood still while its machine did.
pub(crate) fn apply_lifted(state: &mut State, entry: &Entry, body: &StopLifted) {
    for machine in &body.machines {
        let cab = state.cab_mut(machine);
        let (stop, live) = (cab.stop.take(), cab.live);
        if let (Some(stop), Some(call)) = (stop, live.and_then(|id| state.calls.get_mut(&id))) {
            let from = stop.since.max(call.sent_at);
            call.stale_at = call.stale_at.plus_ms(entry.at.ms_since(from).max(0));
        }
    }
}
