//! A site with one benchmark: it is levelled again from a changed height, or each call says ONE BENCHMARK.

use contract::ToSchema;
use earthwork::level;
use serde::{Deserialize, Serialize};

use super::{Basis, Proof, SetUpProven, benchmark, rod_value, sloped, standing};
use crate::asked::Role;
use crate::entry::Body;
use crate::refusal::Refusal;
use crate::saying::{Asking, Closed, Saying};
use crate::state::SetUpState;
use crate::state::State;

/// The only benchmark levelled again: a point shot before, the laser's height changed, benchmark and point shot again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LevelAgain {
    /// Which set-up.
    pub set_up: String,
    /// The rod.
    pub rod: String,
    /// The rod on a hard point, before the height was changed.
    pub point_before: String,
    /// The rod on the benchmark, after.
    pub benchmark_again: String,
    /// The rod on the same point, after.
    pub point_again: String,
}

impl Saying for LevelAgain {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        level_again(at.state, self)
    }
}

/// Work on one benchmark, each call labelled so.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct UseOneBenchmark {
    /// Which set-up.
    pub set_up: String,
}

impl Saying for UseOneBenchmark {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        use_one(at.state, self)
    }
}

pub(crate) fn level_again(state: &State, asked: &LevelAgain) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let set_up = standing(state, &asked.set_up)?;
    sloped::only_level(set_up)?;
    let first = set_up.basis().ok_or(Refusal::NoSite)?;
    let known = benchmark(site, &first.benchmark)?;
    let value = |text: &str| rod_value(site, &asked.rod, text).map(|reading| reading.value);
    let again = value(&asked.benchmark_again)?;
    let levelled = level::second_levelling(&level::SecondLevelling {
        benchmark: known.elevation,
        backsight: first.backsight,
        point: value(&asked.point_before)?,
        backsight_again: again,
        point_again: value(&asked.point_again)?,
        limits: site.rules.checks,
    })
    .map_err(|error| Refusal::SecondLevelling(error.text()))?;
    Ok(vec![Body::SetUpProven(SetUpProven {
        set_up: asked.set_up.clone(),
        proof: Proof::LevelledAgain {
            disagreement: levelled.disagreement,
        },
        basis: Some(Basis {
            benchmark: first.benchmark.clone(),
            rod: asked.rod.clone(),
            text: asked.benchmark_again.clone(),
            backsight: again,
            height: levelled.height,
        }),
    })])
}

pub(crate) fn use_one(state: &State, asked: &UseOneBenchmark) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let set_up = standing(state, &asked.set_up)?;
    sloped::only_level(set_up)?;
    let used = set_up.basis().map(|basis| basis.benchmark.as_str());
    if let Some(other) = site
        .benchmarks
        .iter()
        .find(|other| Some(other.id.as_str()) != used)
    {
        return Err(Refusal::SecondBenchmarkThere {
            other: other.id.clone(),
        });
    }
    match set_up.state {
        SetUpState::Unproven => Ok(vec![Body::SetUpProven(SetUpProven {
            set_up: asked.set_up.clone(),
            proof: Proof::OneBenchmark,
            basis: None,
        })]),
        SetUpState::Proven { .. } => Ok(vec![]),
        SetUpState::InDoubt { .. } => Err(Refusal::SetUpNotProven {
            set_up: asked.set_up.clone(),
        }),
    }
}
