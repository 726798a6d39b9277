//! The way into one machine's keep-out as every screen shows it: who asks, who is in, whose link is gone.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::site::Site;
use crate::state::State;
use crate::time::Time;
use crate::way_in::gate::{Down, ToldOut};
use crate::way_in::step::is_none;
use crate::way_in::{Gate, Phase, Stage, Visit};

/// One machine's keep-out.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct WayInCard {
    /// What the cab has to show; anything but `working` is STOP.
    pub phase: Phase,
    /// Who holds the bucket down, and since when.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub down: Option<Down>,
    /// Who asks, was answered, or is in: longest first. Nobody here does not mean that nobody is there.
    pub people: Vec<EntryCard>,
    /// For whom another phone has said OUT, until their own page has shown it to them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub told_out: Vec<ToldOutCard>,
}

/// Somebody for whom another phone has said OUT.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ToldOutCard {
    /// The visit, for the presses about it.
    pub visit: String,
    /// What was said, of whom, by whom.
    #[serde(flatten)]
    pub told: ToldOut,
}

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

/// Another machine, for an operator who goes there on foot.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct OnFootCard {
    /// The machine.
    pub machine: String,
    /// The operator's own visit there.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub visit: Option<EntryCard>,
    /// Another phone has said OUT for the operator there.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub told_out: Option<ToldOutCard>,
}

/// A machine's keep-out with somebody in, for the supervisor: also of a machine that the site has no more.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct InsideCard {
    /// The machine.
    pub machine: String,
    /// Who may be in.
    pub people: Vec<EntryCard>,
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

/// A machine's keep-out, each visit with the other machines at which it stands.
pub(crate) fn at(state: &State, machine: &str) -> WayInCard {
    let mut card = card(&state.way_in.gate(machine));
    for one in &mut card.people {
        let gates = state.way_in.gates();
        let others = gates.filter(|(id, gate)| *id != machine && gate.visit(&one.visit).is_some());
        one.also = others.map(|(id, _)| id.clone()).collect();
    }
    card
}

/// The other machines that can be asked from this one's cab.
pub(crate) fn on_foot(
    state: &State,
    site: &Site,
    machine: &str,
    device: Option<&str>,
) -> Vec<OnFootCard> {
    let Some(device) = device else {
        return vec![];
    };
    let others = site.machines.iter().filter(|other| other.id != machine);
    let each = others.map(|other| {
        let card = at(state, &other.id);
        OnFootCard {
            machine: other.id.clone(),
            visit: card.people.into_iter().find(|one| one.device == device),
            told_out: card
                .told_out
                .into_iter()
                .find(|one| one.told.device == device),
        }
    });
    each.filter(|card| {
        let cab = state.cabs.get(&card.machine);
        let screen = cab.is_some_and(|cab| cab.device.is_some());
        screen || card.visit.is_some() || card.told_out.is_some()
    })
    .collect()
}

fn card(gate: &Gate) -> WayInCard {
    let mut people: Vec<EntryCard> = gate.visits().map(|(name, one)| visit(name, one)).collect();
    people.sort_by(|a, b| (a.since, &a.visit).cmp(&(b.since, &b.visit)));
    WayInCard {
        phase: gate.phase(),
        down: gate.down().cloned(),
        people,
        told_out: gate
            .told_out()
            .map(|(visit, told)| ToldOutCard {
                visit: visit.clone(),
                told: told.clone(),
            })
            .collect(),
    }
}

/// Everybody who may be in anywhere.
pub(crate) fn inside(state: &State) -> Vec<InsideCard> {
    let each = state.way_in.gates().map(|(machine, gate)| InsideCard {
        machine: machine.clone(),
        people: card(gate)
            .people
            .into_iter()
            .filter(|one| one.stage.may_be_in())
            .collect(),
    });
    each.filter(|card| !card.people.is_empty()).collect()
}
