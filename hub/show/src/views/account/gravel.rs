//! Gravel before the pit closes: the mean, what is enough nine times in ten, loads, orders, what came, what is short.

use contract::ToSchema;
use earthwork::gravel;
use serde::Serialize;

use day::account::need;
use day::said::load::Way;
use day::state::State;

/// How much gravel.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct GravelCard {
    /// As drawn, rammed, in cubic yards.
    pub nominal_cy: f64,
    /// What low spots are expected to take beyond it.
    pub low_cy: f64,
    /// Patches and undercuts.
    pub patches_cy: f64,
    /// All of it.
    pub mean_cy: f64,
    /// One standard deviation.
    pub sd_cy: f64,
    /// The mean, in tons.
    pub mean_tons: f64,
    /// Enough nine times in ten, in tons.
    pub enough_tons: f64,
    /// Loads for the mean.
    pub mean_loads: u32,
    /// Loads for what is enough.
    pub enough_loads: u32,
    /// What the mean costs, delivered.
    pub mean_cost: f64,
    /// What is enough costs, delivered.
    pub enough_cost: f64,
    /// Ordered so far.
    pub ordered_tons: f64,
    /// Came so far.
    pub came_tons: f64,
    /// What the orders lack of enough; zero before the first order.
    pub short_tons: f64,
    /// How many finish passes the low spots rest on.
    pub landings: u32,
}

/// The card; none without a price list that names its gravel.
pub(crate) fn card(state: &State) -> Option<GravelCard> {
    let found = need::forecast(state, &[])?;
    let prices = state.prices()?.gravel.as_ref()?;
    let loads = |tons| gravel::loads(tons, prices.load_tons).ok();
    let came = state.account.loads.values().filter(|load| {
        !load.taken_back
            && load.counted.way == Way::In
            && load.counted.material.eq_ignore_ascii_case(&prices.name)
    });
    let came_tons = came.filter_map(|load| {
        let ticket = load.ticket.as_ref().and_then(|ticket| ticket.tons);
        ticket.or(load.counted.tons)
    });
    Some(GravelCard {
        nominal_cy: found.nominal.cubic_yards(),
        low_cy: found.low.cubic_yards(),
        patches_cy: found.patches.cubic_yards(),
        mean_cy: found.mean.cubic_yards(),
        sd_cy: found.sd.cubic_yards(),
        mean_tons: found.mean_tons.0,
        enough_tons: found.enough_tons.0,
        mean_loads: loads(found.mean_tons)?,
        enough_loads: loads(found.enough_tons)?,
        mean_cost: found.mean_tons.0 * prices.ton,
        enough_cost: found.enough_tons.0 * prices.ton,
        ordered_tons: need::ordered_tons(state),
        came_tons: came_tons.sum(),
        short_tons: need::short_tons(state, &[]),
        landings: u32::try_from(day::account::landings::landed(state).len()).unwrap_or(u32::MAX),
    })
}
