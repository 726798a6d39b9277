//! Soil still to remove, patches, lifts, tests with where they are, undercuts that wait, rock above the dig.

use earthwork::amount::SquareFeet;
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::rock_line;
use earthwork::surface::Vertex;
use earthwork::target::{DigTo, Shape};
use earthwork::volume::grid;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::account::need::area_sf;
use crate::last;
use crate::said::compact::Damp;
use crate::said::patch::PatchStep;
use crate::said::soil_test::SoilTest;
use crate::said::void::VoidCause;
use crate::site::{Site, Target};
use crate::state::State;
use crate::tell;
use crate::time::Time;

/// Soil still to be removed in one target.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
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

/// A patch.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PatchCard {
    /// Its name.
    pub patch: String,
    /// The mark in it.
    pub mark: String,
    /// How long.
    pub length: Length,
    /// How wide.
    pub width: Length,
    /// How deep.
    pub depth: Length,
    /// Rammed gravel, in cubic yards.
    pub cy: f64,
    /// Where it is.
    pub step: PatchStep,
    /// Lifts rammed.
    pub lifts: u32,
    /// Lifts needed.
    pub lifts_needed: u32,
    /// Since when.
    pub since: Time,
}

/// A lift that was rammed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
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

/// How a test stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum TestStanding {
    /// It passed and stands.
    Passes,
    /// It failed.
    Fails,
    /// It passed and does not count any more.
    Void,
}

/// A soil test.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct TestCard {
    /// Its entry.
    pub test: u64,
    /// The mark.
    pub mark: String,
    /// Where.
    pub at: Option<Point>,
    /// Who tested.
    pub tester: String,
    /// What was measured and asked.
    pub what: SoilTest,
    /// What was stated beside what is asked, in English.
    pub english: String,
    /// The same in Spanish.
    pub spanish: String,
    /// The elevation that was tested.
    pub elevation: Length,
    /// How it stands.
    pub standing: TestStanding,
    /// Why it does not count.
    pub void: Option<VoidCause>,
    /// A later test of the mark stands in its place.
    pub replaced: bool,
    /// When.
    pub made_at: Time,
}

/// An undercut that waits for a supervisor.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct UndercutCard {
    /// The proposal's entry.
    pub undercut: u64,
    /// The mark whose test failed.
    pub mark: String,
    /// The target.
    pub target: String,
    /// How deep.
    pub depth: Length,
    /// Its volume, in cubic yards.
    pub cy: f64,
    /// What fills it.
    pub material: String,
    /// In how many lifts.
    pub lifts: u32,
    /// Since when.
    pub since: Time,
}

/// Rock above the dig.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct RockCard {
    /// Its points.
    pub points: Vec<crate::said::rock::RockPointed>,
    /// Above the dig, in cubic yards; none while there is none to say.
    pub cy: Option<f64>,
    /// How far that may be off, in cubic yards.
    pub edge_doubt_cy: Option<f64>,
    /// Why there is no volume, in English.
    pub why_english: String,
    /// The same in Spanish.
    pub why_spanish: String,
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

/// Patches of the job, in the order in which they were measured.
pub(crate) fn patches(state: &State) -> Vec<PatchCard> {
    let mut cards: Vec<PatchCard> = state
        .account
        .patches
        .values()
        .map(|patch| PatchCard {
            patch: patch.needed.patch.clone(),
            mark: patch.needed.mark.clone(),
            length: patch.needed.length,
            width: patch.needed.width,
            depth: patch.needed.depth,
            cy: patch.needed.volume_cf / 27.0,
            step: patch.step,
            lifts: patch.lifts,
            lifts_needed: patch.needed.lifts,
            since: patch.since,
        })
        .collect();
    cards.sort_by_key(|card| (card.since, card.patch.len(), card.patch.clone()));
    cards
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

/// Soil tests of the job, in the order in which they were made.
pub(crate) fn tests(state: &State) -> Vec<TestCard> {
    let all = &state.account.tests;
    all.iter()
        .map(|(entry, test)| {
            let (english, spanish) =
                tell::soil::stated(&test.tested.test, test.tested.density.as_ref());
            TestCard {
                test: *entry,
                mark: test.tested.mark.clone(),
                at: test.at,
                tester: test.tested.tester.clone(),
                what: test.tested.test.clone(),
                english,
                spanish,
                elevation: test.tested.elevation,
                standing: match (test.tested.passes, &test.void) {
                    (false, _) => TestStanding::Fails,
                    (true, None) => TestStanding::Passes,
                    (true, Some(_)) => TestStanding::Void,
                },
                void: test.void.as_ref().map(|(_, why)| why.clone()),
                replaced: all
                    .values()
                    .any(|later| later.tested.retests == Some(*entry)),
                made_at: test.made_at,
            }
        })
        .collect()
}

/// Undercuts that wait, oldest first.
pub(crate) fn undercuts(state: &State) -> Vec<UndercutCard> {
    let waiting = state.account.undercuts.iter();
    waiting
        .map(|(entry, (since, one))| UndercutCard {
            undercut: *entry,
            mark: one.mark.clone(),
            target: one.target.clone(),
            depth: one.undercut.depth,
            cy: one.volume_cf / 27.0,
            material: one.undercut.material.clone(),
            lifts: one.undercut.lifts,
            since: *since,
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
        why_english: String::new(),
        why_spanish: String::new(),
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
        Err(error) => {
            card.why_english = error.to_string();
            card.why_spanish = error.spanish();
        }
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
