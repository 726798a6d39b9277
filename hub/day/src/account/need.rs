//! How much gravel the job needs: the drawn beds, what the day's own landings take, patches, undercuts.

use earthwork::amount::{CubicFeet, PoundsPerCubicFoot, SquareFeet, Tons};
use earthwork::gravel::{self, Forecast, Need};
use earthwork::landing;
use earthwork::length::Length;
use earthwork::point::Point;

use crate::account::landings::landed;
use crate::prices::Gravel;
use crate::state::State;

/// What gravel is needed; none without a price list that names its gravel. `extra` is what a request is about to add.
pub fn forecast(state: &State, extra: &[CubicFeet]) -> Option<Forecast> {
    let gravel = state.prices()?.gravel.as_ref()?;
    let site = state.site()?;
    let mut layers = Vec::new();
    let (mut area, mut aimed) = (0.0, 0.0);
    for bed in &gravel.beds {
        let Some(target) = site.target(&bed.target) else {
            continue;
        };
        let thickness: Length = target
            .grade
            .stack
            .layers
            .iter()
            .filter(|layer| layer.name.eq_ignore_ascii_case(&gravel.name))
            .map(|layer| layer.thickness)
            .sum();
        layers.push((SquareFeet(bed.area_sf), thickness));
        area += bed.area_sf;
        aimed += bed.area_sf * state.aim("", &target.id).feet();
    }
    let errors: Vec<Length> = landed(state).iter().map(|one| one.error).collect();
    let lands = landing::landing(&errors);
    let mut patches: Vec<CubicFeet> = state
        .account
        .patches
        .values()
        .map(|patch| CubicFeet(patch.needed.volume_cf))
        .collect();
    patches.extend(undercuts(state, gravel));
    patches.extend(proposed(state, gravel));
    patches.extend_from_slice(extra);
    gravel::forecast(&Need {
        layers,
        landing_mean: lands.map_or(0.0, |lands| lands.mean_ft)
            + if area > 0.0 { aimed / area } else { 0.0 },
        landing_sd: lands.map_or(0.0, |lands| lands.sd_ft),
        landings: lands.map_or(0, |lands| lands.count),
        patches,
        density: PoundsPerCubicFoot(gravel.pcf),
    })
    .ok()
}

/// Undercuts that this gravel fills.
fn undercuts<'a>(state: &'a State, gravel: &'a Gravel) -> impl Iterator<Item = CubicFeet> + 'a {
    let targets = state.site().into_iter().flat_map(|site| &site.targets);
    targets
        .flat_map(|target| &target.grade.undercuts)
        .filter(|undercut| undercut.material.eq_ignore_ascii_case(&gravel.name))
        .map(|undercut| CubicFeet(area_sf(&undercut.within) * undercut.depth.feet()))
}

/// Undercuts that wait for a supervisor: whoever orders should count them already.
fn proposed<'a>(state: &'a State, gravel: &'a Gravel) -> impl Iterator<Item = CubicFeet> + 'a {
    let waiting = state.account.undercuts.values();
    waiting
        .filter(|(_, one)| one.undercut.material.eq_ignore_ascii_case(&gravel.name))
        .map(|(_, one)| CubicFeet(one.volume_cf))
}

/// The area of a zone, in square feet (plane geometry: the sum of cross products).
pub fn area_sf(corners: &[Point]) -> f64 {
    let Some(first) = corners.first() else {
        return 0.0;
    };
    let from = |at: &Point| ((at.x - first.x).feet(), (at.y - first.y).feet());
    let twice: f64 = corners
        .iter()
        .zip(corners.iter().cycle().skip(1))
        .map(|(one, next)| {
            let ((x1, y1), (x2, y2)) = (from(one), from(next));
            x1 * y2 - x2 * y1
        })
        .sum();
    twice.abs() / 2.0
}

/// What was ordered so far, in tons.
pub fn ordered_tons(state: &State) -> f64 {
    state.account.orders.iter().map(|(_, one)| one.tons).sum()
}

/// How much the orders lack of what is enough nine times in ten; zero without an order or a need.
pub fn short_tons(state: &State, extra: &[CubicFeet]) -> f64 {
    if state.account.orders.is_empty() {
        return 0.0;
    }
    let Some(found) = forecast(state, extra) else {
        return 0.0;
    };
    (found.enough_tons - Tons(ordered_tons(state))).0.max(0.0)
}
