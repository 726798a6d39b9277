//! Somebody asks to come in, or takes the ask back.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{entered, named, refused};
use crate::asked::By;
use crate::entry::Body;
use crate::refusal::Refusal;
use crate::said::machine::known;
use crate::state::State;
use crate::way_in::rules::{Visiting, Who};

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

pub(super) fn who(by: &By) -> Who<'_> {
    Who {
        person: &by.person,
        device: &by.device,
    }
}

pub(crate) fn ask(state: &State, by: &By, asked: &AskIn) -> Result<Vec<Body>, Refusal> {
    known(state, &asked.machine)?;
    named(&asked.visit)?;
    let to = Visiting {
        machine: &asked.machine,
        visit: &asked.visit,
    };
    let steps = state.way_in.ask(to, who(by), asked.mark.as_deref());
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
