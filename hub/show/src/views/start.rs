//! The start of a day as every page shows it: what was looked at, and whether it is READY.

use contract::ToSchema;
use serde::Serialize;

use day::said::start_checks::{CheckSaid, ReadyBy, START_CHECKS, StartCheck, before};
use day::state::State;

/// The start of the day.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct StartCard {
    /// Each check, in the order in which they are gone through.
    pub checks: Vec<StartCheckCard>,
    /// Who declared the day READY; nobody yet without it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ready: Option<ReadyBy>,
}

/// One check.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct StartCheckCard {
    /// Which.
    pub check: StartCheck,
    /// What was seen; nothing yet without it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub said: Option<CheckSaid>,
    /// What was said on an earlier day; whoever looks again may confirm it, or says what is different.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub before: Option<CheckSaid>,
}

pub(crate) fn card(state: &State) -> StartCard {
    let checks = START_CHECKS.into_iter().map(|check| StartCheckCard {
        check,
        said: state.start.said.get(&check).cloned(),
        before: before(state, check).cloned(),
    });
    StartCard {
        checks: checks.collect(),
        ready: state.start.ready.clone(),
    }
}
