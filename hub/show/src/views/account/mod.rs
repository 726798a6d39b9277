//! What the day costs, what was hauled, what gravel is needed, where passes land, who is needed next: cards for the
//! supervisor, and what of it the ground person works with.

pub mod gravel;
pub mod hours;
pub mod landing;
pub mod loads;
pub mod next;
pub mod soil;

use contract::ToSchema;
use serde::Serialize;

use day::account::hauled::{self, MaterialCard};
use day::account::soil::{self as stands, PatchCard, TestCard, UndercutCard};
use day::prices::Prices;
use day::state::State;
use gravel::GravelCard;
use hours::{CostCard, MachineHours};
use landing::LandingCard;
use loads::LoadCard;
use next::{ArrivalCard, VisitCard};
use soil::{LiftCard, RockCard, SoilLeft};

/// The supervisor's account of the day and the job.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
#[schema(as = AccountView)]
pub struct Account {
    /// The price list in force.
    pub prices: Option<Prices>,
    /// What each machine did.
    pub hours: Vec<MachineHours>,
    /// What it costs.
    pub cost: CostCard,
    /// Loads by material and way.
    pub materials: Vec<MaterialCard>,
    /// Loads of the day, newest first.
    pub loads: Vec<LoadCard>,
    /// Soil still to be removed, by target.
    pub soil_left: Vec<SoilLeft>,
    /// Gravel; none without a price list that names its gravel.
    pub gravel: Option<GravelCard>,
    /// Where finish passes land, and where to aim.
    pub landings: Vec<LandingCard>,
    /// When each bottom arrives.
    pub arrivals: Vec<ArrivalCard>,
    /// Who is needed, in the order that costs least.
    pub visits: Vec<VisitCard>,
    /// Patches of the job.
    pub patches: Vec<PatchCard>,
    /// Lifts rammed.
    pub lifts: Vec<LiftCard>,
    /// Soil tests of the job.
    pub tests: Vec<TestCard>,
    /// Undercuts that wait for a supervisor.
    pub undercuts: Vec<UndercutCard>,
    /// Rock.
    pub rock: RockCard,
}

/// What the ground person works with.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[schema(as = GroundAccountView)]
pub struct GroundAccount {
    /// What is hauled.
    pub materials: Vec<String>,
    /// Loads of the day, newest first, as many as fit a hand.
    pub loads: Vec<LoadCard>,
    /// Patches that are not done.
    pub patches: Vec<PatchCard>,
    /// Soil tests.
    pub tests: Vec<TestCard>,
    /// The bearing that the drawing asks, in pounds per square foot.
    pub bearing_psf: Option<f64>,
    /// Whether a density is asked.
    pub density_asked: bool,
    /// When each bottom arrives.
    pub arrivals: Vec<ArrivalCard>,
    /// Who is needed, in the order that costs least.
    pub visits: Vec<VisitCard>,
}

/// Loads that a ground phone lists.
const LISTED: usize = 6;

/// The supervisor's cards.
pub(crate) fn account(state: &State) -> Account {
    let arrivals = next::arrivals(state);
    Account {
        prices: state.prices().cloned(),
        hours: hours::hours(state),
        cost: hours::cost(state),
        materials: hauled::materials(state),
        loads: loads::loads(state),
        soil_left: soil::left(state),
        gravel: gravel::card(state),
        landings: landing::cards(state),
        visits: next::visits(state, &arrivals),
        arrivals,
        patches: stands::patches(state),
        lifts: soil::lifts(state),
        tests: stands::tests(state),
        undercuts: stands::undercuts(state),
        rock: soil::rock(state),
    }
}

/// What of it the ground person works with.
pub(crate) fn ground(state: &State) -> GroundAccount {
    let arrivals = next::arrivals(state);
    let prices = state.prices();
    let mut patches = stands::patches(state);
    patches.retain(|patch| patch.step != day::said::patch::PatchStep::Done);
    let mut loads = loads::loads(state);
    loads.truncate(LISTED);
    GroundAccount {
        materials: loads::names(state),
        loads,
        patches,
        tests: stands::tests(state),
        bearing_psf: prices.and_then(|prices| prices.bearing_psf),
        density_asked: prices.is_some_and(|prices| prices.density.is_some()),
        visits: next::visits(state, &arrivals),
        arrivals,
    }
}
