//! The people at one machine's keep-out: who asks, was answered, or is in, longest first. Nobody here does not mean that nobody
//! is there.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::step::is_none;
use super::{Gate, Stage, Visit, WayIn};
use crate::time::Time;

/// One person at one machine.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct EntryCard {
    /// The visit, for the presses about it.
    pub visit: String,
    /// Who.
    pub person: String,
    /// On which phone.
    pub device: String,
    /// Where to, when it is a mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// Where it stands.
    pub stage: Stage,
    /// Since when.
    pub since: Time,
    /// Nobody has answered in time.
    pub not_answered: bool,
    /// Since when the phone's link is gone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lost: Option<Time>,
    /// How many come along, whom this person leads.
    #[serde(default, skip_serializing_if = "is_none")]
    pub others: u32,
    /// Other machines at which the same visit stands: whoever asked goes in on the word of all of them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub also: Vec<String>,
}

fn visit(name: &str, visit: &Visit) -> EntryCard {
    EntryCard {
        visit: name.to_owned(),
        person: visit.person.clone(),
        device: visit.device.clone(),
        mark: visit.mark.clone(),
        stage: visit.stage,
        since: visit.since,
        not_answered: visit.stage == Stage::Asked && visit.repeats > 0,
        lost: visit.lost,
        others: visit.others,
        also: vec![],
    }
}

/// Everybody at a machine, each with the other machines at which the same visit stands.
pub fn at(way_in: &WayIn, machine: &str) -> Vec<EntryCard> {
    let mut people = of_gate(&way_in.gate(machine));
    for one in &mut people {
        let gates = way_in.gates();
        let others = gates.filter(|(id, gate)| *id != machine && gate.visit(&one.visit).is_some());
        one.also = others.map(|(id, _)| id.clone()).collect();
    }
    people
}

/// Everybody at a gate, longest first.
pub fn of_gate(gate: &Gate) -> Vec<EntryCard> {
    let mut people: Vec<EntryCard> = gate.visits().map(|(name, one)| visit(name, one)).collect();
    people.sort_by(|a, b| (a.since, &a.visit).cmp(&(b.since, &b.visit)));
    people
}
