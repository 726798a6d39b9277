//! Somebody goes in, comes out, or is seen out by somebody else. An entry is never refused: what has happened is kept.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::ask::who;
use super::{entered, named, refused};
use crate::asked::By;
use crate::entry::Body;
use crate::refusal::Refusal;
use crate::said::machine::known;
use crate::state::State;
use crate::way_in::rules::Visiting;

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
}

/// Somebody is out again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ComeOut {
    /// The machine.
    pub machine: String,
    /// The visit.
    pub visit: String,
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
}

pub(crate) fn go_in(state: &State, by: &By, asked: &GoIn) -> Result<Vec<Body>, Refusal> {
    known(state, &asked.machine)?;
    named(&asked.visit)?;
    let to = Visiting {
        machine: &asked.machine,
        visit: &asked.visit,
    };
    Ok(entered(state.way_in.go_in(
        to,
        who(by),
        asked.mark.as_deref(),
    )))
}

pub(crate) fn come_out(state: &State, by: &By, asked: &ComeOut) -> Result<Vec<Body>, Refusal> {
    named(&asked.visit)?;
    let to = Visiting {
        machine: &asked.machine,
        visit: &asked.visit,
    };
    let steps = state.way_in.come_out(to, who(by));
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
    let sits_in = by.machine.as_deref();
    let steps = state
        .way_in
        .out_by_witness(to, who(by), sits_in, asked.why.trim());
    Ok(entered(steps.map_err(|no| refused(&asked.machine, no))?))
}
