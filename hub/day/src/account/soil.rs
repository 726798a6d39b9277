//! How the soil work of the job stands: patches, tests with where they are, undercuts that wait.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::point::Point;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::said::patch::PatchStep;
use crate::said::soil_test::SoilTest;
use crate::said::soil_test::stated::stated;
use crate::said::void::VoidCause;
use crate::state::State;
use crate::time::Time;

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
    /// What was stated beside what is asked.
    #[serde(flatten)]
    pub text: Text,
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

/// Patches of the job, in the order in which they were measured.
pub fn patches(state: &State) -> Vec<PatchCard> {
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

/// Soil tests of the job, in the order in which they were made.
pub fn tests(state: &State) -> Vec<TestCard> {
    let all = &state.account.tests;
    all.iter()
        .map(|(entry, test)| {
            let text = stated(&test.tested.test, test.tested.density.as_ref());
            TestCard {
                test: *entry,
                mark: test.tested.mark.clone(),
                at: test.at,
                tester: test.tested.tester.clone(),
                what: test.tested.test.clone(),
                text,
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
pub fn undercuts(state: &State) -> Vec<UndercutCard> {
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
