//! What was hauled, by material and way: counted, ticketed, and how that agrees with what was measured in the ground.

use std::collections::BTreeMap;

use contract::ToSchema;
use earthwork::amount::{CubicFeet, PoundsPerCubicFoot};
use earthwork::figure::{Figure, can_be};
use earthwork::haul::{self, Hauled, LoadLimit, Reconciled};
use serde::{Deserialize, Serialize};

use crate::said::load::Way;
use crate::state::State;

/// One material, one way.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct MaterialCard {
    /// What.
    pub material: String,
    /// Which way.
    pub way: Way,
    /// Trucks.
    pub trucks: u32,
    /// Loose cubic yards, counted.
    pub loose_cy: f64,
    /// Tons, counted or by the tickets.
    pub tons: f64,
    /// Measured in the ground, in cubic yards.
    pub bank_cy: Option<f64>,
    /// The same, loose.
    pub measured_loose_cy: Option<f64>,
    /// Loads that the measured soil makes.
    pub measured_loads: Option<u32>,
    /// What bounds each of them.
    pub limit: Option<LoadLimit>,
    /// How counted, tickets and measured agree.
    pub agree: Reconciled,
}

/// Sums by material and way.
pub fn materials(state: &State) -> Vec<MaterialCard> {
    let mut sums: BTreeMap<(Way, String), Sum> = BTreeMap::new();
    for load in state.account.loads.values().filter(|load| !load.taken_back) {
        let key = (load.counted.way, load.counted.material.clone());
        let Sum { hauled, tons } = sums.entry(key).or_default();
        let ticketed = load.ticket.as_ref().and_then(|ticket| ticket.loose_cy);
        // A truck that was counted without a figure is as large as its ticket says.
        let figure = load.counted.loose_cy.or(ticketed).unwrap_or(0.0);
        let counted = CubicFeet::from_cubic_yards(figure);
        hauled.counted += counted;
        hauled.loads += load.counted.trucks;
        let mut weight = load.counted.tons;
        if let Some(ticket) = &load.ticket {
            hauled.with_ticket += load.counted.trucks;
            weight = ticket.tons.or(weight);
            if let Some(yards) = ticket.loose_cy {
                hauled.tickets += CubicFeet::from_cubic_yards(yards);
                hauled.counted_with_ticket += counted;
            }
        }
        *tons += weight.unwrap_or(0.0);
    }
    for material in state.account.measured.keys() {
        sums.entry((Way::Out, material.clone())).or_default();
    }
    sums.into_iter()
        .map(|((way, material), sum)| card(state, way, material, &sum))
        .collect()
}

#[derive(Default)]
struct Sum {
    hauled: Hauled,
    tons: f64,
}

/// What a material weighs in the truck: as the price list says or as its loads were weighed, whichever is heavier.
pub(crate) fn loose_weight(state: &State, material: &str) -> Option<PoundsPerCubicFoot> {
    let listed = state
        .prices()
        .and_then(|prices| prices.material(material)?.loose_pcf);
    let (mut tons, mut volume) = (0.0, CubicFeet::default());
    for load in state.account.loads.values().filter(|load| !load.taken_back) {
        if load.counted.material != material {
            continue;
        }
        let ticket = load.ticket.as_ref();
        let weight = ticket.and_then(|ticket| ticket.tons).or(load.counted.tons);
        let yards = ticket
            .and_then(|ticket| ticket.loose_cy)
            .or(load.counted.loose_cy);
        if let (Some(weight), Some(yards)) = (weight, yards) {
            tons += weight;
            volume += CubicFeet::from_cubic_yards(yards);
        }
    }
    let weighed = (volume.0 > 0.0).then(|| tons * 2_000.0 / volume.0);
    // A slip on a ticket is no soil.
    let sound = |weight: &f64| can_be(Figure::UnitWeight, *weight).is_ok();
    let heavier = listed
        .into_iter()
        .chain(weighed.filter(sound))
        .reduce(f64::max);
    heavier.map(PoundsPerCubicFoot)
}

fn card(state: &State, way: Way, material: String, sum: &Sum) -> MaterialCard {
    let (mut hauled, tons) = (sum.hauled, sum.tons);
    let prices = state.prices();
    let measured = state.account.measured.get(&material);
    let measured = measured.filter(|_| way == Way::Out);
    let factors = prices.and_then(|prices| Some(prices.material(&material)?.factors));
    let bank = measured.map(|measured| CubicFeet::from_cubic_yards(measured.bank_cy));
    hauled.measured = bank.zip(factors).map(|(bank, factors)| factors.loose(bank));
    let truck = prices.and_then(|prices| prices.truck.as_ref());
    let weight = loose_weight(state, &material);
    let measured = hauled.measured.zip(truck);
    let loads = measured.and_then(|(loose, truck)| haul::loads(loose, truck, weight).ok());
    let limit = measured.and_then(|(_, truck)| Some(truck.load(weight).ok()?.1));
    MaterialCard {
        way,
        trucks: hauled.loads,
        loose_cy: hauled.counted.cubic_yards(),
        tons,
        bank_cy: bank.map(CubicFeet::cubic_yards),
        measured_loose_cy: hauled.measured.map(CubicFeet::cubic_yards),
        measured_loads: loads,
        limit,
        agree: haul::reconcile(&hauled),
        material,
    }
}
