//! Soil still to remove, lifts, rock above the dig.

use contract::ToSchema;
use earthwork::amount::SquareFeet;
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::rock_line;
use earthwork::surface::Vertex;
use earthwork::target::{DigTo, Shape};
use earthwork::volume::grid;
use serde::Serialize;

use day::account::need::area_sf;
use day::last;
use day::said::compact::Damp;
use day::site::{Site, Target};
use day::state::State;
use day::time::Time;
use words::Text;

/// Soil still to be removed in one target.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct SoilLeft {
    /// The target.
    pub target: String,
    /// Its area, in square feet.
    pub area_sf: f64,
    /// To be dug, in the ground, in cubic yards.
    pub cut_cy: f64,
    /// Below the target, in cubic yards.
    pub low_cy: f64,
    /// Marks with a reading: each stands for its share of the area.
    pub read: u32,
    /// All its marks; what was not read is not counted.
    pub marks: u32,
}

/// A lift that was rammed.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct LiftCard {
    /// On which patch, mark or target.
    pub on: String,
    /// Which lift.
    pub lift: u32,
    /// How thick.
    pub thickness: Length,
    /// Passes.
    pub passes: u32,
    /// How damp.
    pub damp: Damp,
    /// Thicker than a lift may be.
    pub too_thick: bool,
    /// When.
    pub at: Time,
}

/// Rock above the dig.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct RockCard {
    /// Its points.
    pub points: Vec<day::said::rock::RockPointed>,
    /// Above the dig, in cubic yards; none while there is none to say.
    pub cy: Option<f64>,
    /// How far that may be off, in cubic yards.
    pub edge_doubt_cy: Option<f64>,
    /// Why there is no volume.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub why: Option<Text>,
}

/// The area of a target, as far as its shape tells it.
fn area(target: &Target) -> Option<f64> {
    match (&target.grade.within, &target.grade.shape) {
        (Some(within), _) => Some(area_sf(within)),
        (None, Shape::Run(run)) => Some(run.length.feet() * (run.left + run.right).feet()),
        _ => None,
    }
}

/// Soil still to be removed: each mark's last difference over its share of the target.
pub(crate) fn left(state: &State) -> Vec<SoilLeft> {
    let Some(site) = state.site() else {
        return vec![];
    };
    site.targets
        .iter()
        .filter_map(|target| of_target(state, site, target))
        .collect()
}

fn of_target(state: &State, site: &Site, target: &Target) -> Option<SoilLeft> {
    let area = area(target)?;
    let own: Vec<_> = site
        .marks
        .iter()
        .filter(|mark| mark.target.as_deref() == Some(&target.id))
        .collect();
    let share = SquareFeet(area / (own.len().max(1)) as f64);
    let points: Vec<(SquareFeet, Length)> = own
        .iter()
        .filter_map(|mark| Some((share, last::difference(state, &mark.id)?)))
        .collect();
    if points.is_empty() {
        return None;
    }
    let volume = grid::points(&points).ok()?;
    let count = |many: usize| u32::try_from(many).unwrap_or(u32::MAX);
    Some(SoilLeft {
        target: target.id.clone(),
        area_sf: area,
        cut_cy: volume.cut.cubic_yards(),
        low_cy: volume.fill.cubic_yards(),
        read: count(points.len()),
        marks: count(own.len()),
    })
}

/// Lifts of the job, newest first.
pub(crate) fn lifts(state: &State) -> Vec<LiftCard> {
    let lifts = state.account.lifts.values().rev();
    lifts
        .map(|(at, lift)| LiftCard {
            on: lift.on.clone(),
            lift: lift.lift,
            thickness: lift.thickness,
            passes: lift.passes,
            damp: lift.damp,
            too_thick: lift.too_thick,
            at: *at,
        })
        .collect()
}

/// Rock points, and what of it stands above the dig.
pub(crate) fn rock(state: &State) -> RockCard {
    let points: Vec<_> = state
        .account
        .rock
        .iter()
        .map(|(_, one)| one.clone())
        .collect();
    let mut card = RockCard {
        points,
        cy: None,
        edge_doubt_cy: None,
        why: None,
    };
    if card.points.is_empty() {
        return card;
    }
    let vertices: Vec<Vertex> = card
        .points
        .iter()
        .map(|point| Vertex {
            at: point.at,
            elevation: point.top,
        })
        .collect();
    match rock_line::above(&vertices, |at| dig_to(state, at)) {
        Ok(rock) => {
            card.cy = Some(rock.volume.cubic_yards());
            card.edge_doubt_cy = Some(rock.edge_doubt.cubic_yards());
        }
        Err(error) => card.why = Some(error.text()),
    }
    card
}

/// The dig-to of whichever target lies there; the lower side of a step.
fn dig_to(state: &State, at: Point) -> Option<Length> {
    let targets = &state.site()?.targets;
    targets
        .iter()
        .find_map(|target| match target.grade.dig_to(at) {
            Ok(DigTo::At(elevation)) => Some(elevation),
            Ok(DigTo::NearStep { before, after, .. }) => Some(before.min(after)),
            Err(_) => None,
        })
}
