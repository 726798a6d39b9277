//! A machine waits for something that no entry shows by itself: trucks, an attachment, a repair, a break.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// What for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum WaitCause {
    /// Trucks.
    Truck,
    /// An attachment is changed: bucket, breaker.
    Attachment,
    /// It is broken.
    Broken,
    /// Parked: a break, or nothing to do.
    Parked,
    /// Something else.
    Other,
}

/// A machine waits.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayWaiting {
    /// Which; the operator's own when left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
    /// What for.
    pub cause: WaitCause,
}

impl Saying for SayWaiting {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        wait(at.state, at.by, self)
    }
}

/// A machine waits.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct WaitingSaid {
    /// Which.
    pub machine: String,
    /// What for.
    pub cause: WaitCause,
}

impl Happening for WaitingSaid {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_waiting(state, self);
    }
}

/// A machine works again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct WorkAgain {
    /// Which; the operator's own when left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
}

impl Saying for WorkAgain {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        again(at.state, at.by, self)
    }
}

/// A machine works again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct WorkedAgain {
    /// Which.
    pub machine: String,
}

impl Happening for WorkedAgain {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_again(state, self);
    }
}

/// The machine that is spoken of: an operator speaks for their own alone.
fn machine(state: &State, by: &By, named: Option<&String>) -> Result<String, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let machine = named.or(by.machine.as_ref()).ok_or(Refusal::Unknown {
        what: Thing::Machine,
        name: String::new(),
    })?;
    if site.machine(machine).is_none() {
        return Err(Refusal::Unknown {
            what: Thing::Machine,
            name: machine.clone(),
        });
    }
    let own = by.machine.as_ref() == Some(machine);
    if own || by.is(Role::Ground) || by.is(Role::Supervisor) {
        Ok(machine.clone())
    } else {
        Err(Refusal::NotAllowed {
            roles: vec![Role::Operator],
            machine: Some(machine.clone()),
        })
    }
}

pub(crate) fn wait(state: &State, by: &By, asked: &SayWaiting) -> Result<Vec<Body>, Refusal> {
    let machine = machine(state, by, asked.machine.as_ref())?;
    if state.account.waits.get(&machine) == Some(&asked.cause) {
        return Ok(vec![]);
    }
    Ok(vec![Body::WaitingSaid(WaitingSaid {
        machine,
        cause: asked.cause,
    })])
}

pub(crate) fn again(state: &State, by: &By, asked: &WorkAgain) -> Result<Vec<Body>, Refusal> {
    let machine = machine(state, by, asked.machine.as_ref())?;
    if !state.account.waits.contains_key(&machine) {
        return Ok(vec![]);
    }
    Ok(vec![Body::WorkedAgain(WorkedAgain { machine })])
}

pub(crate) fn apply_waiting(state: &mut State, body: &WaitingSaid) {
    let waits = &mut state.account.waits;
    waits.insert(body.machine.clone(), body.cause);
}

pub(crate) fn apply_again(state: &mut State, body: &WorkedAgain) {
    state.account.waits.remove(&body.machine);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, operator};

    fn wait(machine: Option<&str>) -> Command {
        Command::SayWaiting(SayWaiting {
            machine: machine.map(Into::into),
            cause: WaitCause::Truck,
        })
    }

    #[test]
    fn an_operator_speaks_for_their_own_machine_alone() {
        let mut crew = Crew::digging();
        assert!(matches!(
            crew.says(&operator("EX-1"), wait(Some("EX-2"))),
            Err(Refusal::NotAllowed { .. })
        ));
        crew.says(&operator("EX-1"), wait(None)).unwrap();
        crew.says(&ground(), wait(Some("EX-2"))).unwrap();
        assert_eq!(crew.state.account.waits.len(), 2);
        assert!(matches!(
            crew.says(&ground(), wait(None)),
            Err(Refusal::Unknown { .. })
        ));
        let again = Command::WorkAgain(WorkAgain { machine: None });
        crew.says(&operator("EX-1"), again.clone()).unwrap();
        let before = crew.log.len();
        crew.says(&operator("EX-1"), again).unwrap();
        assert_eq!(crew.log.len(), before, "working again twice is once");
    }
}
