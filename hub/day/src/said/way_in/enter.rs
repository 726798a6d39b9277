//! Somebody goes in, comes out, or is seen out by somebody else. An entry is never refused: what has happened is kept.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::ask::who;
use super::{LED_AT_MOST, concerned, entered, named, refused};
use crate::asked::{By, Role};
use crate::entry::Body;
use crate::refusal::Refusal;
use crate::said::machine::known;
use crate::said::person;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::way_in::rules::{Going, Visiting, Witness};

/// Somebody goes in now, or says afterwards that they did.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct GoIn {
    /// The machine whose keep-out it is.
    pub machine: String,
    /// The visit that the operator answered; a new one when nobody was asked.
    pub visit: String,
    /// Where to, when it is a mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// How many come along; without it as many as were asked for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub others: Option<u32>,
}

impl Saying for GoIn {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        go_in(at.state, at.by, self)
    }
}

/// Somebody is out again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ComeOut {
    /// The machine.
    pub machine: String,
    /// The visit.
    pub visit: String,
    /// Who leads a group: how many are out, the leader too. All of them, or nobody is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub all: Option<u32>,
}

impl Saying for ComeOut {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        come_out(at.state, at.by, self)
    }
}

/// Whoever was said to be out by another phone has seen that, and is out. Who is still in says `go_in` on the same visit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SeeOut {
    /// The machine.
    pub machine: String,
    /// The visit.
    pub visit: String,
}

impl Saying for SeeOut {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        see_out(at.state, at.by, self)
    }
}

/// Somebody else has seen a person out, and has told them so.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct OutByWitness {
    /// The machine.
    pub machine: String,
    /// The visit.
    pub visit: String,
    /// What was seen.
    pub why: String,
    /// For a group: how many were seen out, the leader too.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub all: Option<u32>,
}

impl Saying for OutByWitness {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        by_witness(at.state, at.by, self)
    }
}

pub(crate) fn go_in(state: &State, by: &By, asked: &GoIn) -> Result<Vec<Body>, Refusal> {
    known(state, &asked.machine)?;
    named(&asked.visit)?;
    let to = Visiting {
        machine: &asked.machine,
        visit: &asked.visit,
    };
    let also = concerned(state, &asked.machine, asked.mark.as_deref());
    let going = Going {
        mark: asked.mark.as_deref(),
        also: &also,
        // An entry is never refused: a count that can't be is kept as the most that can.
        others: asked.others.map(|others| others.min(LED_AT_MOST)),
    };
    Ok(entered(state.way_in.go_in(to, who(by), going)))
}

pub(crate) fn come_out(state: &State, by: &By, asked: &ComeOut) -> Result<Vec<Body>, Refusal> {
    named(&asked.visit)?;
    let to = Visiting {
        machine: &asked.machine,
        visit: &asked.visit,
    };
    let steps = state.way_in.come_out(to, who(by), asked.all);
    Ok(entered(steps.map_err(|no| refused(&asked.machine, no))?))
}

pub(crate) fn by_witness(
    state: &State,
    by: &By,
    asked: &OutByWitness,
) -> Result<Vec<Body>, Refusal> {
    let to = Visiting {
        machine: &asked.machine,
        visit: &asked.visit,
    };
    let gate = state.way_in.gate(&asked.machine);
    let known = gate
        .visit(&asked.visit)
        .is_some_and(|visit| person::known_since(state, &by.device, &visit.device, visit.since));
    let witness = Witness {
        who: who(by),
        sits_in: by.machine.as_deref(),
        known,
        all: asked.all,
        why: asked.why.trim(),
    };
    let steps = state.way_in.out_by_witness(to, witness);
    Ok(entered(steps.map_err(|no| refused(&asked.machine, no))?))
}

pub(crate) fn see_out(state: &State, by: &By, asked: &SeeOut) -> Result<Vec<Body>, Refusal> {
    let to = Visiting {
        machine: &asked.machine,
        visit: &asked.visit,
    };
    let steps = state.way_in.see_out(to, who(by));
    Ok(entered(steps.map_err(|no| refused(&asked.machine, no))?))
}
