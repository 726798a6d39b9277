//! Loads as counted and as ticketed.

use std::collections::BTreeSet;

use contract::ToSchema;
use serde::Serialize;

use day::said::load::Way;
use day::state::State;
use day::time::Time;

/// A load.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct LoadCard {
    /// Its entry.
    pub load: u64,
    /// Which way.
    pub way: Way,
    /// What is in it.
    pub material: String,
    /// How many trucks alike.
    pub trucks: u32,
    /// Loose cubic yards.
    pub loose_cy: Option<f64>,
    /// Tons.
    pub tons: Option<f64>,
    /// The ticket's number.
    pub ticket: Option<String>,
    /// Who counted it.
    pub by: String,
    /// When.
    pub at: Time,
    /// It was counted by mistake.
    pub taken_back: bool,
}

/// Every load of the day, newest first.
pub(crate) fn loads(state: &State) -> Vec<LoadCard> {
    let loads = state.account.loads.iter().rev();
    loads
        .map(|(entry, load)| {
            let ticket = load.ticket.as_ref();
            LoadCard {
                load: *entry,
                way: load.counted.way,
                material: load.counted.material.clone(),
                trucks: load.counted.trucks,
                loose_cy: ticket
                    .and_then(|ticket| ticket.loose_cy)
                    .or(load.counted.loose_cy),
                tons: ticket.and_then(|ticket| ticket.tons).or(load.counted.tons),
                ticket: ticket.map(|ticket| ticket.ticket.clone()),
                by: load.by.clone(),
                at: load.at,
                taken_back: load.taken_back,
            }
        })
        .collect()
}

/// What can be tapped: the price list's materials, its gravel, and what was hauled before.
pub(crate) fn names(state: &State) -> Vec<String> {
    let prices = state.prices();
    let listed = prices.into_iter().flat_map(|prices| {
        let gravel = prices.gravel.iter().map(|gravel| gravel.name.clone());
        let materials = prices.materials.iter().map(|one| one.name.clone());
        materials.chain(gravel)
    });
    let hauled = state.account.loads.values();
    let hauled = hauled.map(|load| load.counted.material.clone());
    let mut seen = BTreeSet::new();
    listed
        .chain(hauled)
        .filter(|name| seen.insert(name.to_lowercase()))
        .collect()
}
