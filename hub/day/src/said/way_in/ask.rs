//! Somebody asks to come in, or takes the ask back.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::{concerned, entered, few, named, refused};
use crate::asked::{By, Role};
use crate::entry::Body;
use crate::refusal::Refusal;
use crate::said::machine::known;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::way_in::rules::{Going, Visiting, Who};

/// Somebody on foot asks to come in. The same visit once more asks again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AskIn {
    /// The machine whose keep-out it is.
    pub machine: String,
    /// The visit: a name that the phone makes, 8 to 64 letters, digits, `-`, `_`, `.` or `:`, used for one stay alone.
    pub visit: String,
    /// Where to, when it is a mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// How many come along, whom the asker leads in and out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub others: Option<u32>,
}

impl Saying for AskIn {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        ask(at.state, at.by, self)
    }
}

/// Whoever asked is not coming in on this visit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct WithdrawAsk {
    /// The machine.
    pub machine: String,
    /// The visit.
    pub visit: String,
}

impl Saying for WithdrawAsk {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        withdraw(at.state, at.by, self)
    }
}

pub(super) fn who(by: &By) -> Who<'_> {
    Who {
        person: &by.person,
        device: &by.device,
    }
}

/// An operator who goes into another machine's keep-out on foot leaves their own with its bucket down, and for their own machine
/// asks nobody: BUCKET DOWN is held there.
fn on_foot(state: &State, by: &By, machine: &str) -> Result<(), Refusal> {
    let Some(own) = by.machine.as_deref() else {
        return Ok(());
    };
    if own == machine {
        return Err(Refusal::HeldBack(words::way_in::is_your_own_machine(&own)));
    }
    if state.way_in.gate(own).down().is_none() {
        return Err(Refusal::HeldBack(
            words::way_in::hold_bucket_down_before_you(&own, &machine),
        ));
    }
    Ok(())
}

pub(crate) fn ask(state: &State, by: &By, asked: &AskIn) -> Result<Vec<Body>, Refusal> {
    known(state, &asked.machine)?;
    named(&asked.visit)?;
    few(asked.others)?;
    on_foot(state, by, &asked.machine)?;
    let to = Visiting {
        machine: &asked.machine,
        visit: &asked.visit,
    };
    let also = concerned(state, &asked.machine, asked.mark.as_deref());
    let going = Going {
        mark: asked.mark.as_deref(),
        also: &also,
        others: asked.others,
    };
    let steps = state.way_in.ask(to, who(by), going);
    let steps = steps.map_err(|no| refused(&asked.machine, no))?;
    Ok(entered(steps))
}

pub(crate) fn withdraw(state: &State, by: &By, asked: &WithdrawAsk) -> Result<Vec<Body>, Refusal> {
    let to = Visiting {
        machine: &asked.machine,
        visit: &asked.visit,
    };
    let steps = state.way_in.withdraw(to, who(by));
    let steps = steps.map_err(|no| refused(&asked.machine, no))?;
    Ok(entered(steps))
}
