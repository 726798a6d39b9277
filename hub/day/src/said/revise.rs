//! A supervisor changes a target: the live call on the old one is withdrawn until the operator has seen it.

use earthwork::target;
use earthwork::tolerance::Tolerance;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::asked::By;
use crate::entry::{Body, Entry};
use crate::refusal::{Refusal, Thing};
use crate::said::call;
use crate::state::{MustSee, State};
use crate::views::call::Ending;

/// A supervisor changes a target.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ReviseTarget {
    /// Which.
    pub target: String,
    /// Its new shape, stack and boundary.
    pub grade: target::Target,
    /// Its allowed high and low.
    pub tolerance: Tolerance,
    /// Why, and on whose word.
    pub why: String,
}

/// A target was revised.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct TargetRevised {
    /// Which.
    pub target: String,
    /// Its new revision.
    pub revision: u32,
    /// Its new shape, stack and boundary.
    pub grade: target::Target,
    /// Its allowed high and low.
    pub tolerance: Tolerance,
    /// Why.
    pub why: String,
    /// The machines whose operator must see it first.
    pub must_see: Vec<String>,
}

/// The operator has seen it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SeeTarget {
    /// Which.
    pub target: String,
    /// Which revision.
    pub revision: u32,
}

/// An operator has seen a revised target.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct TargetSeen {
    /// Which machine.
    pub machine: String,
    /// Which target.
    pub target: String,
    /// Which revision.
    pub revision: u32,
}

/// A live call on the old revision is withdrawn, and its operator must see the new one first.
pub(crate) fn revise(state: &State, asked: &ReviseTarget) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let old = site.target(&asked.target).ok_or_else(|| Refusal::Unknown {
        what: Thing::Target,
        name: asked.target.clone(),
    })?;
    if asked.why.trim().is_empty() {
        return Err(Refusal::SayWhy {
            what: "why the target changes, and on whose word".into(),
        });
    }
    if let Some(wrong) = asked.grade.check().first() {
        return Err(Refusal::BadTarget {
            message: format!("{}: {wrong}", asked.target),
        });
    }
    let tolerance = Tolerance::new(asked.tolerance.high, asked.tolerance.low).map_err(|error| {
        Refusal::BadTarget {
            message: format!("{}: {error}", asked.target),
        }
    })?;
    if old.grade == asked.grade && old.tolerance == tolerance {
        return Ok(vec![]);
    }
    let must_see: Vec<String> = state
        .cabs
        .keys()
        .filter(|machine| {
            state
                .live_call(machine)
                .is_some_and(|(_, call)| call.sent.target.as_deref() == Some(&asked.target))
        })
        .cloned()
        .collect();
    let mut bodies: Vec<Body> = must_see
        .iter()
        .filter_map(|machine| call::end_live(state, machine, Ending::StaleByTarget))
        .collect();
    bodies.push(Body::TargetRevised(TargetRevised {
        target: asked.target.clone(),
        revision: old.revision + 1,
        grade: asked.grade.clone(),
        tolerance,
        why: asked.why.trim().to_owned(),
        must_see,
    }));
    Ok(bodies)
}

pub(crate) fn see(state: &State, by: &By, asked: &SeeTarget) -> Result<Vec<Body>, Refusal> {
    let machine = call::own_machine(by)?;
    let owed = state
        .cabs
        .get(&machine)
        .and_then(|cab| cab.must_see.as_ref());
    let matches =
        owed.is_some_and(|must| must.target == asked.target && must.revision == asked.revision);
    if !matches {
        return Ok(vec![]);
    }
    Ok(vec![Body::TargetSeen(TargetSeen {
        machine,
        target: asked.target.clone(),
        revision: asked.revision,
    })])
}

pub(crate) fn apply_revised(state: &mut State, entry: &Entry, body: &TargetRevised) {
    if let Some(in_force) = &mut state.site
        && let Some(target) = in_force
            .site
            .targets
            .iter_mut()
            .find(|target| target.id == body.target)
    {
        target.grade.clone_from(&body.grade);
        target.tolerance = body.tolerance;
        target.revision = body.revision;
    }
    for machine in &body.must_see {
        state.cab_mut(machine).must_see = Some(MustSee {
            target: body.target.clone(),
            revision: body.revision,
            since: entry.at,
        });
    }
}

pub(crate) fn apply_seen(state: &mut State, body: &TargetSeen) {
    state.cab_mut(&body.machine).must_see = None;
}
