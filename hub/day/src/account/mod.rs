//! What the job owes and needs, as it was said: loads, gravel, patches, tests, rock, and what each machine did.

pub mod hauled;
pub mod landings;
pub mod meter;
pub mod need;
pub mod soil;

use std::collections::BTreeMap;

use earthwork::point::Point;
use serde::{Deserialize, Serialize};

use crate::prices::Prices;
use crate::said::compact::Compacted;
use crate::said::gravel::GravelOrdered;
use crate::said::load::{LoadCounted, SoilMeasured, TicketAdded};
use crate::said::patch::{PatchNeeded, PatchStep};
use crate::said::rock::RockPointed;
use crate::said::soil_test::SoilTested;
use crate::said::undercut::UndercutProposed;
use crate::said::void::VoidCause;
use crate::said::waiting::WaitCause;
use crate::state::State;
use crate::time::Time;
use meter::{Doing, Meter};

/// The fold of everything that is counted.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Account {
    /// A supervisor's price list, in place of the site file's.
    pub prices: Option<Prices>,
    /// Loads of the day, by entry.
    pub loads: BTreeMap<u64, Load>,
    /// Soil measured in the ground, by material, the newest.
    pub measured: BTreeMap<String, SoilMeasured>,
    /// Gravel orders of the job.
    pub orders: Vec<(Time, GravelOrdered)>,
    /// How much the orders were last said to be short, in tons.
    pub short_tons: f64,
    /// Patches of the job, by name.
    pub patches: BTreeMap<String, Patch>,
    /// Lifts of the job, by entry.
    pub lifts: BTreeMap<u64, (Time, Compacted)>,
    /// Soil tests of the job, by entry.
    pub tests: BTreeMap<u64, Test>,
    /// Undercuts that wait for a supervisor, by entry.
    pub undercuts: BTreeMap<u64, (Time, UndercutProposed)>,
    /// Rock points of the job.
    pub rock: Vec<(Time, RockPointed)>,
    /// What each machine did today.
    pub meters: BTreeMap<String, Meter>,
    /// The last entry: until then everything is added up.
    pub ticked_at: Time,
    /// What each machine waits for, as somebody said.
    pub waits: BTreeMap<String, WaitCause>,
    /// Milliseconds of the days before, by machine and what it did.
    pub before: BTreeMap<String, BTreeMap<Doing, i64>>,
    /// Loads of the days before.
    pub loads_before: Vec<LoadCounted>,
}

/// A load and what became of it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Load {
    /// As counted.
    pub counted: LoadCounted,
    /// Who counted it.
    pub by: String,
    /// When.
    pub at: Time,
    /// Its ticket.
    pub ticket: Option<TicketAdded>,
    /// It was counted by mistake.
    pub taken_back: bool,
}

/// A patch and where it is.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Patch {
    /// As it was measured.
    pub needed: PatchNeeded,
    /// Since when.
    pub since: Time,
    /// Where it is.
    pub step: PatchStep,
    /// Lifts rammed.
    pub lifts: u32,
}

/// A soil test and whether it stands.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Test {
    /// As it was made.
    pub tested: SoilTested,
    /// Where.
    pub at: Option<Point>,
    /// When.
    pub made_at: Time,
    /// Why it does not count any more, and since when.
    pub void: Option<(Time, VoidCause)>,
}

impl Test {
    /// It passed, and nothing voided it.
    pub fn stands(&self) -> bool {
        self.tested.passes && self.void.is_none()
    }
}

impl Account {
    /// Whether a soil test of this mark failed, and no later one took its place: its ground is to be undercut or tested again.
    pub fn fails(&self, mark: &str) -> bool {
        self.tests.iter().any(|(entry, test)| {
            let again = |later: &Test| later.tested.retests == Some(*entry);
            test.tested.mark == mark && !test.tested.passes && !self.tests.values().any(again)
        })
    }
}

impl State {
    /// The price list in force: the supervisor's, else the site file's.
    pub fn prices(&self) -> Option<&Prices> {
        self.account
            .prices
            .as_ref()
            .or_else(|| self.site()?.prices.as_deref())
    }
}

/// A day begins: the day before is added up and leaves memory.
pub(crate) fn day_opened(state: &mut State) {
    let account = &mut state.account;
    let at = account.ticked_at;
    for (machine, meter) in std::mem::take(&mut account.meters) {
        let sums = account.before.entry(machine).or_default();
        for (doing, ms) in meter.totals(at) {
            *sums.entry(doing).or_default() += ms;
        }
    }
    let loads = std::mem::take(&mut account.loads).into_values();
    let kept = loads.filter(|load| !load.taken_back);
    account.loads_before.extend(kept.map(|load| load.counted));
    account.waits.clear();
}
