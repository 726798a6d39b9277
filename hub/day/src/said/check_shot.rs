//! A reading on a benchmark proves that the set-up still holds, or puts it in doubt.

use std::collections::BTreeMap;

use contract::ToSchema;
use earthwork::laser::drift::CHECK_DOUBT_FT;
use earthwork::length::Length;
use earthwork::level::{self, Check};
use earthwork::slip::{Misclosure, Slip, explain_misclosure};
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::call::Ending;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::overtaken;
use crate::refusal::Refusal;
use crate::said::call;
use crate::said::set_up::{self, DoubtReason, Proof, SetUpProven, sloped};
use crate::said::suspect::{self, EndShot};
use crate::saying::{Asking, Closed, Saying};
use crate::site::Site;
use crate::state::{CheckCard, SetUpState};
use crate::state::{SetUp, State};
use crate::time::{Time, When};

/// A reading on a benchmark.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ShootCheck {
    /// Which set-up.
    pub set_up: String,
    /// The benchmark under the rod.
    pub benchmark: String,
    /// The rod.
    pub rod: String,
    /// The rod value as typed.
    pub text: String,
}

impl Saying for ShootCheck {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        shoot(at.state, self, at.when)
    }
}

/// Somebody saw the laser move.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayBumped {
    /// Which set-up.
    pub set_up: String,
}

impl Saying for SayBumped {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        bumped(at.state, at.by, self)
    }
}

/// A check shot was made.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CheckShot {
    /// Which set-up.
    pub set_up: String,
    /// The benchmark.
    pub benchmark: String,
    /// The rod.
    pub rod: String,
    /// As typed.
    pub text: String,
    /// The rod value.
    pub foresight: Length,
    /// (HI − rod) − benchmark: positive when the tool reads high.
    pub residual: Length,
    /// Good, again, failed.
    pub check: Check,
    /// Slips that would explain a failure, likeliest first: asked, never applied.
    pub slips: Vec<Slip>,
    /// Whether the set-up could be used when the shot was made.
    pub usable: bool,
}

impl Happening for CheckShot {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_check(state, entry, self);
    }
}

/// A set-up is in doubt.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SetUpDoubted {
    /// Which set-up.
    pub set_up: String,
    /// Why.
    pub why: DoubtReason,
    /// The machines that are paused by it.
    pub pauses: Vec<String>,
}

impl Happening for SetUpDoubted {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_doubted(state, entry, self);
    }
}

pub(crate) fn shoot(state: &State, asked: &ShootCheck, when: When) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let set_up = set_up::standing(state, &asked.set_up)?;
    if let SetUpState::InDoubt { since, .. } = &set_up.state {
        let newer = words::check_shot::shot_made_before_laser_put();
        overtaken::after(when, Some(*since), newer)?;
    }
    let shot_on = set_up::benchmark(site, &asked.benchmark)?;
    let foresight = set_up::rod_value(site, &asked.rod, &asked.text)?.value;
    let height = sloped::height_over(site, set_up, &asked.benchmark)?;
    let residual = level::check_residual(height, foresight, shot_on.elevation);
    let check = level::judge_check(residual, site.rules.checks);
    let slips = if check == Check::Failed {
        explain(state, set_up, asked, residual, foresight)
    } else {
        vec![]
    };
    let mut bodies = vec![Body::CheckShot(CheckShot {
        set_up: asked.set_up.clone(),
        benchmark: asked.benchmark.clone(),
        rod: asked.rod.clone(),
        text: asked.text.clone(),
        foresight,
        residual,
        check,
        slips,
        usable: set_up.usable(),
    })];
    let proof = (check == Check::Good)
        .then(|| proof(site, set_up, &asked.benchmark))
        .flatten();
    if let Some(ends) = ends_doubt(
        state,
        set_up,
        proof.as_ref(),
        (when.made_at, residual, check),
    ) {
        bodies.extend(suspect::window(state, set_up, Some(ends)));
    }
    match check {
        Check::Good => bodies.extend(proof.map(|proof| {
            Body::SetUpProven(SetUpProven {
                set_up: asked.set_up.clone(),
                proof,
                basis: None,
            })
        })),
        Check::Failed if set_up.usable() => {
            let why = DoubtReason::FailedCheck {
                benchmark: asked.benchmark.clone(),
                residual,
            };
            let ends = EndShot {
                at: when.made_at,
                residual,
            };
            bodies.extend(doubt(state, set_up, why, Some(ends)));
        }
        Check::Again | Check::Failed => {}
    }
    Ok(bodies)
}

/// The shot that says what a doubted laser did: the first benchmark after a bump, and later the second one that agrees,
/// after which the laser is known not to have moved.
fn ends_doubt(
    state: &State,
    set_up: &SetUp,
    proof: Option<&Proof>,
    (at, residual, check): (Time, Length, Check),
) -> Option<EndShot> {
    if !matches!(set_up.state, SetUpState::InDoubt { .. }) {
        return None;
    }
    let unmoved = EndShot {
        at,
        residual: Length::ZERO,
    };
    if proof.is_some() {
        return Some(unmoved);
    }
    if !suspect::is_open_ended(state, &set_up.id) {
        return None;
    }
    Some(match check {
        Check::Good => unmoved,
        Check::Again | Check::Failed => EndShot { at, residual },
    })
}

/// What a good shot on this benchmark proves, if anything.
fn proof(site: &Site, set_up: &SetUp, benchmark: &str) -> Option<Proof> {
    // Two shots in one line with a sloped laser do not show a turned axis.
    let spread =
        |other: &&String| *other != benchmark && sloped::spread(site, set_up, other, benchmark);
    match &set_up.state {
        SetUpState::Unproven if set_up.slope.is_some() => {
            let backsight_on = set_up.basis()?.benchmark.as_str();
            let others = set_up.good_on.iter().filter(|other| *other != backsight_on);
            let first = others.into_iter().find(spread)?;
            (backsight_on != benchmark).then(|| Proof::AcrossTheSlope {
                first: first.clone(),
                second: benchmark.to_owned(),
            })
        }
        SetUpState::Unproven => {
            let backsight_on = set_up.basis()?.benchmark.as_str();
            (backsight_on != benchmark).then(|| Proof::SecondBenchmark {
                benchmark: benchmark.to_owned(),
            })
        }
        SetUpState::Proven { .. } => None,
        SetUpState::InDoubt { agreed, .. } => {
            let first = agreed.iter().find(spread)?;
            Some(Proof::TwoBenchmarks {
                first: first.clone(),
                second: benchmark.to_owned(),
            })
        }
    }
}

fn explain(
    state: &State,
    set_up: &SetUp,
    asked: &ShootCheck,
    residual: Length,
    foresight: Length,
) -> Vec<Slip> {
    // Over a sloped plane, differences of benchmarks are not those of heights.
    let level = set_up.slope.is_none();
    let (Some(site), Some(basis)) = (state.site().filter(|_| level), set_up.basis()) else {
        return vec![];
    };
    let Some(rod) = site.rod(&asked.rod) else {
        return vec![];
    };
    let benchmarks: Vec<(String, Length)> = site
        .benchmarks
        .iter()
        .map(|benchmark| (benchmark.id.clone(), benchmark.elevation))
        .collect();
    explain_misclosure(&Misclosure {
        residual,
        backsight_on: &basis.benchmark,
        checked_on: &asked.benchmark,
        benchmarks: &benchmarks,
        backsight: basis.backsight,
        foresight,
        rod,
        proven: set_up.usable(),
        doubt: site.rules.checks.warn,
    })
}

pub(crate) fn bumped(state: &State, by: &By, asked: &SayBumped) -> Result<Vec<Body>, Refusal> {
    // A laser that was taken down since may have been moved before: its last readings are in doubt all the same.
    let set_up = set_up::known(state, &asked.set_up)?;
    if matches!(set_up.state, SetUpState::InDoubt { .. }) {
        return Ok(vec![]);
    }
    Ok(doubt(
        state,
        set_up,
        DoubtReason::Bumped {
            by: by.person.clone(),
        },
        None,
    ))
}

/// Set-ups that rest on a benchmark whose elevation is another one on the new site: none of what they measured is proven, and
/// those that still stand are in doubt.
pub(crate) fn benchmarks_changed(state: &State, old: &Site, new: &Site) -> Vec<Body> {
    let changed: BTreeMap<&str, Length> = old
        .benchmarks
        .iter()
        .filter_map(|before| {
            let after = new.benchmark(&before.id)?;
            let by = after.elevation - before.elevation;
            (by != Length::ZERO).then_some((before.id.as_str(), by))
        })
        .collect();
    let mut bodies = Vec::new();
    for set_up in &state.set_ups {
        let Some((benchmark, by)) = changed.iter().find(|(id, _)| rests_on(set_up, id)) else {
            continue;
        };
        // A wrong benchmark was wrong from the first reading on.
        let from = set_up.since.or(set_up.good_at);
        let window = from.and_then(|from| suspect::window_from(state, set_up, from, None));
        if matches!(set_up.state, SetUpState::Proven { .. }) {
            bodies.push(Body::SetUpDoubted(SetUpDoubted {
                set_up: set_up.id.clone(),
                why: DoubtReason::BenchmarkChanged {
                    benchmark: (*benchmark).to_owned(),
                    by: *by,
                },
                pauses: working_from(state, set_up),
            }));
        }
        bodies.extend(window);
    }
    bodies
}

fn rests_on(set_up: &SetUp, benchmark: &str) -> bool {
    let named = |name: &String| name == benchmark;
    let by_proof = match &set_up.state {
        SetUpState::Proven { proof } => proof.benchmarks().any(|name| name == benchmark),
        SetUpState::Unproven | SetUpState::InDoubt { .. } => false,
    };
    by_proof
        || set_up.basis().is_some_and(|basis| named(&basis.benchmark))
        || set_up.good_on.iter().any(named)
        || set_up
            .last_check
            .as_ref()
            .is_some_and(|check| named(&check.benchmark))
}

/// The machines whose work rests on a set-up.
fn working_from(state: &State, set_up: &SetUp) -> Vec<String> {
    let cabs = state.cabs.iter();
    cabs.filter(|(_, cab)| cab.works_from.as_deref() == Some(&set_up.id))
        .map(|(machine, _)| machine.clone())
        .collect()
}

/// Calls on a set-up in doubt are gone. A machine pauses unless its work rests on another set-up that still holds.
fn doubt(state: &State, set_up: &SetUp, why: DoubtReason, ends: Option<EndShot>) -> Vec<Body> {
    let rests_elsewhere = |machine: &str| {
        state
            .cabs
            .get(machine)
            .and_then(|cab| cab.works_from.as_deref())
            .filter(|from| *from != set_up.id)
            .and_then(|from| state.set_up(from))
            .is_some_and(SetUp::usable)
    };
    let pauses: Vec<String> = state
        .cabs
        .keys()
        .filter(|machine| !rests_elsewhere(machine))
        .cloned()
        .collect();
    let mut bodies: Vec<Body> = pauses
        .iter()
        .filter_map(|machine| call::end_live(state, machine, Ending::StaleByLaser))
        .collect();
    bodies.push(Body::SetUpDoubted(SetUpDoubted {
        set_up: set_up.id.clone(),
        why,
        pauses,
    }));
    bodies.extend(suspect::window(state, set_up, ends));
    bodies
}

pub(crate) fn apply_check(state: &mut State, entry: &Entry, body: &CheckShot) {
    let Some(set_up) = state.set_up_mut(&body.set_up) else {
        return;
    };
    set_up.last_check = Some(CheckCard {
        benchmark: body.benchmark.clone(),
        residual: body.residual,
        at: entry.at,
        check: body.check,
    });
    match (&mut set_up.state, body.check) {
        (SetUpState::Proven { .. }, Check::Good) => set_up.now_good(entry.made_at),
        (SetUpState::Proven { .. }, Check::Again) => {
            if let Ok(drift) = set_up.drift.after(body.residual, CHECK_DOUBT_FT) {
                set_up.drift = drift;
            }
        }
        (SetUpState::Unproven, Check::Good)
            if set_up.slope.is_some() && !set_up.good_on.contains(&body.benchmark) =>
        {
            set_up.good_on.push(body.benchmark.clone());
        }
        (SetUpState::Unproven, Check::Failed) => set_up.good_on.clear(),
        (SetUpState::InDoubt { agreed, .. }, Check::Good) if !agreed.contains(&body.benchmark) => {
            agreed.push(body.benchmark.clone());
        }
        (SetUpState::InDoubt { agreed, .. }, Check::Failed) => agreed.clear(),
        _ => {}
    }
}

pub(crate) fn apply_doubted(state: &mut State, entry: &Entry, body: &SetUpDoubted) {
    if let Some(set_up) = state.set_up_mut(&body.set_up) {
        set_up.state = SetUpState::InDoubt {
            why: body.why.clone(),
            since: entry.at,
            agreed: vec![],
        };
    }
    state.bumps += 1;
    for machine in &body.pauses {
        state.cab_mut(machine).paused = Some((body.set_up.clone(), entry.at));
    }
}

#[cfg(test)]
mod tests;
