//! The operator answers: BUCKET DOWN, WAIT, no; and releases the machine when nobody is in.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::{age_ms, entered, refused};
use crate::asked::{By, Role};
use crate::entry::Body;
use crate::refusal::Refusal;
use crate::said::call::own_machine;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::When;
use crate::way_in::rules::Visiting;

/// The operator has held BUCKET DOWN · LEVER LOCKED for a second.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct BucketDown {
    /// The visits that the screen named while it was held: no other is answered.
    #[serde(default)]
    pub answers: Vec<String>,
}

impl Saying for BucketDown {
    const BY: &'static [Role] = &[Role::Operator];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        bucket_down(at.state, at.by, self, at.when)
    }
}

/// The operator says WAIT.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayWait {
    /// To which visit.
    pub visit: String,
}

impl Saying for SayWait {
    const BY: &'static [Role] = &[Role::Operator];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        wait(at.state, at.by, self)
    }
}

/// The operator says no.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RefuseEntry {
    /// Which visit.
    pub visit: String,
    /// Why; may be empty.
    #[serde(default)]
    pub why: String,
}

impl Saying for RefuseEntry {
    const BY: &'static [Role] = &[Role::Operator];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        refuse(at.state, at.by, self)
    }
}

/// The operator has held RELEASE for a second.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Release {}

impl Saying for Release {
    const BY: &'static [Role] = &[Role::Operator];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        release(at.state, at.by, self, at.when)
    }
}

pub(crate) fn bucket_down(
    state: &State,
    by: &By,
    asked: &BucketDown,
    when: When,
) -> Result<Vec<Body>, Refusal> {
    let machine = own_machine(by)?;
    let way_in = &state.way_in;
    let steps = way_in.bucket_down(&machine, &by.person, &asked.answers, age_ms(when));
    Ok(entered(steps.map_err(|no| refused(&machine, no))?))
}

pub(crate) fn wait(state: &State, by: &By, asked: &SayWait) -> Result<Vec<Body>, Refusal> {
    let machine = own_machine(by)?;
    let steps = state.way_in.wait(Visiting {
        machine: &machine,
        visit: &asked.visit,
    });
    Ok(entered(steps.map_err(|no| refused(&machine, no))?))
}

pub(crate) fn refuse(state: &State, by: &By, asked: &RefuseEntry) -> Result<Vec<Body>, Refusal> {
    let machine = own_machine(by)?;
    let to = Visiting {
        machine: &machine,
        visit: &asked.visit,
    };
    let steps = state.way_in.refuse(to, asked.why.trim());
    Ok(entered(steps.map_err(|no| refused(&machine, no))?))
}

pub(crate) fn release(
    state: &State,
    by: &By,
    _: &Release,
    when: When,
) -> Result<Vec<Body>, Refusal> {
    let machine = own_machine(by)?;
    let steps = state.way_in.release(&machine, age_ms(when));
    Ok(entered(steps.map_err(|no| refused(&machine, no))?))
}
