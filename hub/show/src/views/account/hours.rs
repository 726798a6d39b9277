//! Hours by what each machine did, waiting by its cause, and the cost of the day and the job at the user's own rates.

use std::collections::BTreeMap;

use contract::ToSchema;
use earthwork::cost;
use serde::Serialize;

use day::account::meter::{Doing, Span};
use day::said::load::Way;
use day::state::State;

/// One machine's day.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct MachineHours {
    /// The machine.
    pub machine: String,
    /// What it does now.
    pub doing: Doing,
    /// Sums, digging first.
    pub sums: Vec<DoingSum>,
    /// One span after another, in order.
    pub spans: Vec<Span>,
}

/// How long a machine did something.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct DoingSum {
    /// What.
    pub doing: Doing,
    /// Milliseconds of the day.
    pub ms: i64,
    /// What it costs; none without a rate.
    pub cost: Option<f64>,
}

/// What the day and the job cost, as far as rates are known.
#[derive(Clone, Debug, Default, PartialEq, Serialize, ToSchema)]
pub struct CostCard {
    /// The day, line by line.
    pub lines: Vec<CostLine>,
    /// The day.
    pub day: f64,
    /// The job so far, the day with it.
    pub job: f64,
    /// Of the day: waiting, in all.
    pub waiting: f64,
    /// Machines without a rate: their hours are not in the sum.
    pub without_rate: Vec<String>,
}

/// A line of the cost.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct CostLine {
    /// What for.
    pub what: CostOf,
    /// How much.
    pub cost: f64,
}

/// What something costs money for.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum CostOf {
    /// A machine that digs.
    Machine {
        /// Which.
        machine: String,
    },
    /// Machines that wait, by the cause.
    Waiting {
        /// What for.
        cause: Doing,
    },
    /// Loads at their price.
    Loads {
        /// What.
        material: String,
    },
    /// Gravel that came, at its price.
    Gravel {
        /// How much.
        tons: f64,
    },
    /// Patches that are filled, placed and rammed; their gravel is in it.
    Patches {
        /// How much, in cubic yards.
        cy: f64,
    },
}

/// What each machine did today, up to the last entry.
pub(crate) fn hours(state: &State) -> Vec<MachineHours> {
    let meters = state.account.meters.iter();
    meters
        .map(|(machine, meter)| MachineHours {
            machine: machine.clone(),
            doing: meter.doing,
            sums: meter
                .totals(state.at)
                .into_iter()
                .map(|(doing, ms)| DoingSum {
                    doing,
                    ms,
                    cost: charged(state, machine, ms),
                })
                .collect(),
            spans: meter.all(state.at).collect(),
        })
        .collect()
}

fn charged(state: &State, machine: &str, ms: i64) -> Option<f64> {
    cost::of_time(ms, state.prices()?.machine_hour(machine)?).ok()
}

/// The day's and the job's cost.
pub(crate) fn cost(state: &State) -> CostCard {
    let mut card = CostCard::default();
    let mut waiting: BTreeMap<Doing, f64> = BTreeMap::new();
    for one in hours(state) {
        let mut digs = 0.0;
        for sum in &one.sums {
            match sum.cost {
                Some(cost) if sum.doing.works() => digs += cost,
                Some(cost) => *waiting.entry(sum.doing).or_default() += cost,
                None => {
                    if !card.without_rate.contains(&one.machine) {
                        card.without_rate.push(one.machine.clone());
                    }
                }
            }
        }
        if digs > 0.0 {
            card.push(
                CostOf::Machine {
                    machine: one.machine,
                },
                digs,
            );
        }
    }
    for (cause, cost) in waiting {
        card.waiting += cost;
        card.push(CostOf::Waiting { cause }, cost);
    }
    hauled(state, &mut card);
    patched(state, &mut card);
    card.day = card.lines.iter().map(|line| line.cost).sum();
    let before = state.account.before.iter().flat_map(|(machine, sums)| {
        sums.values()
            .filter_map(move |ms| charged(state, machine, *ms))
    });
    let loads_before = state.account.loads_before.iter();
    let hauled_before = loads_before.filter_map(|load| {
        let price = state.prices()?.material(&load.material)?.load?;
        Some(price * f64::from(load.trucks))
    });
    card.job = card.day + before.sum::<f64>() + hauled_before.sum::<f64>();
    card
}

impl CostCard {
    fn push(&mut self, what: CostOf, cost: f64) {
        self.lines.push(CostLine { what, cost });
    }
}

fn hauled(state: &State, card: &mut CostCard) {
    let Some(prices) = state.prices() else {
        return;
    };
    let mut trucks: BTreeMap<&str, u32> = BTreeMap::new();
    let mut tons = 0.0;
    for load in state.account.loads.values().filter(|load| !load.taken_back) {
        let counted = &load.counted;
        *trucks.entry(&counted.material).or_default() += counted.trucks;
        let gravel = prices.gravel.as_ref();
        if counted.way == Way::In
            && gravel.is_some_and(|gravel| gravel.name.eq_ignore_ascii_case(&counted.material))
        {
            let ticket = load.ticket.as_ref().and_then(|ticket| ticket.tons);
            tons += ticket.or(counted.tons).unwrap_or(0.0);
        }
    }
    for (material, many) in trucks {
        if let Some(price) = prices.material(material).and_then(|one| one.load) {
            let what = CostOf::Loads {
                material: material.to_owned(),
            };
            card.push(what, price * f64::from(many));
        }
    }
    if let (Some(gravel), true) = (&prices.gravel, tons > 0.0) {
        card.push(CostOf::Gravel { tons }, tons * gravel.ton);
    }
}

/// What patches cost placed: known as soon as they are measured.
fn patched(state: &State, card: &mut CostCard) {
    let gravel = state.prices().and_then(|prices| prices.gravel.as_ref());
    let cubic_feet: f64 = state
        .account
        .patches
        .values()
        .map(|patch| patch.needed.volume_cf)
        .sum();
    if let (Some(gravel), true) = (gravel, cubic_feet > 0.0) {
        let cy = cubic_feet / 27.0;
        card.push(CostOf::Patches { cy }, cubic_feet * gravel.placed_cf);
    }
}
