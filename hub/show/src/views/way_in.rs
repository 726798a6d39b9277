//! The way into one machine's keep-out as every screen shows it: who asks, who is in, whose link is gone.

use contract::ToSchema;
use serde::Serialize;

use day::site::Site;
use day::state::State;
use day::way_in::gate::{Down, ToldOut};
use day::way_in::people::{EntryCard, at as people_at, of_gate};
use day::way_in::{Gate, Phase};

/// One machine's keep-out.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
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
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct ToldOutCard {
    /// The visit, for the presses about it.
    pub visit: String,
    /// What was said, of whom, by whom.
    #[serde(flatten)]
    pub told: ToldOut,
}

/// Another machine, for an operator who goes there on foot.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
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
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct InsideCard {
    /// The machine.
    pub machine: String,
    /// Who may be in.
    pub people: Vec<EntryCard>,
}

/// A machine's keep-out, each visit with the other machines at which it stands.
pub(crate) fn at(state: &State, machine: &str) -> WayInCard {
    card(
        &state.way_in.gate(machine),
        people_at(&state.way_in, machine),
    )
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

fn card(gate: &Gate, people: Vec<EntryCard>) -> WayInCard {
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
        people: of_gate(gate)
            .into_iter()
            .filter(|one| one.stage.may_be_in())
            .collect(),
    });
    each.filter(|card| !card.people.is_empty()).collect()
}
