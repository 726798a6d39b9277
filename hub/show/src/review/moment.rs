//! A moment of a day as every screen showed it: the same views, from the log alone.

use std::collections::BTreeMap;

use contract::ToSchema;
use earthwork::words::ScreenUnit;
use serde::Serialize;
use words::Language;

use super::Sentence;
use crate::views::ground::Ground;
use crate::views::operator::Operator;
use crate::views::sheet::Sheet;
use crate::views::supervisor::Supervisor;
use crate::views::{ground, operator, sheet, supervisor};
use day::asked::Role;
use day::entry::Entry;
use day::state::State;
use day::time::Time;

/// What every screen showed once an entry was taken. A screen that was hidden or lost shows in its machine's card: its page
/// had removed the number by itself.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct Moment {
    /// The entry.
    pub said: Sentence,
    /// When the hub took it.
    pub at: Time,
    /// The phones that were in.
    pub phones: Vec<PhoneThen>,
    /// The cabs, by machine.
    pub operators: BTreeMap<String, Operator>,
    /// The ground person's page.
    pub ground: Option<Ground>,
    /// The supervisor's page.
    pub supervisor: Option<Box<Supervisor>>,
    /// What stays put.
    pub sheet: Option<Box<Sheet>>,
}

/// A phone as it was: its page showed in this language and unit.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct PhoneThen {
    /// The device.
    pub device: String,
    /// Name or initials.
    pub person: String,
    /// Roles.
    pub roles: Vec<Role>,
    /// The machine whose cab it sat in.
    pub machine: Option<String>,
    /// Its language.
    pub language: Language,
    /// Its unit.
    pub unit: ScreenUnit,
}

/// The moment after an entry, from the state after it.
pub fn moment(state: &State, entry: &Entry) -> Moment {
    Moment {
        said: Sentence::of(entry),
        at: entry.at,
        phones: phones(state),
        operators: state
            .cabs
            .keys()
            .filter_map(|machine| Some((machine.clone(), operator::view(state, machine)?)))
            .collect(),
        ground: ground::view(state),
        supervisor: supervisor::view(state).map(Box::new),
        sheet: sheet::view(state).map(Box::new),
    }
}

fn phones(state: &State) -> Vec<PhoneThen> {
    let phones = state.devices.iter().filter(|(_, device)| !device.removed);
    phones
        .map(|(id, device)| PhoneThen {
            device: id.clone(),
            person: device.person.clone(),
            roles: device.roles.clone(),
            machine: device.machine.clone(),
            language: device.language,
            unit: device.unit,
        })
        .collect()
}
