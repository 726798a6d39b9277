//! What the cab answers: got it, come and look, can't.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::{ended, live};
use crate::asked::{By, Role};
use crate::call::{CallState, Ending};
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::Refusal;
use crate::said::face_alarm;
use crate::said::pump::{self, WaterAt};
use crate::said::receipt;
use crate::said::stop::Stopped;
use crate::said::struck;
use crate::saying::{Asking, Closed, Saying};
use crate::state::{Call, State};
use crate::time::{Time, When};

/// The operator has it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct GotIt {
    /// Which.
    pub call: u64,
}

impl Saying for GotIt {
    const BY: &'static [Role] = &[Role::Operator];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        got(at.state, at.by, self)
    }
}

/// The ground person saw the operator nod.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SawNod {
    /// Which.
    pub call: u64,
}

impl Saying for SawNod {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        saw_nod(at.state, at.by, self)
    }
}

/// A call was acknowledged.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CallGot {
    /// Which.
    pub call: u64,
    /// The machine that it is for.
    pub machine: String,
    /// The mark that it is about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// Who saw the nod, when it was not pressed in the cab.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub witness: Option<String>,
}

impl Happening for CallGot {
    const TOUCHES: Touches = Touches::Call;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_got(state, entry, self);
    }
}

/// The operator wants somebody to look.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CheckMe {}

impl Saying for CheckMe {
    const BY: &'static [Role] = &[Role::Operator];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        check_me(at.state, at.by, self)
    }
}

/// The operator asked for a look.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct LookAsked {
    /// The machine.
    pub machine: String,
}

impl Happening for LookAsked {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_look(state, entry, self);
    }
}

/// The operator can't do what was called.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayCant {
    /// Why.
    pub why: CantReason,
}

impl Saying for SayCant {
    const BY: &'static [Role] = &[Role::Operator];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        cant(at.state, at.by, self, at.when)
    }
}

/// The operator can't.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CantSaid {
    /// The machine.
    pub machine: String,
    /// Why.
    pub why: CantReason,
    /// The call that was live.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub call: Option<u64>,
    /// Its mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
}

impl Happening for CantSaid {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_cant(state, entry, self);
    }
}

/// Why the operator can't.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum CantReason {
    /// Rock or old concrete.
    HardGround,
    /// Water in the hole.
    Water,
    /// A pipe or cable: the machine stops.
    Pipe,
    /// The line is too near.
    Line,
    /// The face moves or looks wrong: the machine stops.
    Face,
    /// Something else: come and look.
    Other,
}

/// What the operator can't do.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CantCard {
    /// Why.
    pub why: CantReason,
    /// The mark of the call, if any.
    pub mark: Option<String>,
    /// When.
    pub at: Time,
}

impl CantReason {
    /// Whether it stops the machine.
    pub fn stops(self) -> bool {
        matches!(self, Self::Pipe | Self::Face)
    }
}

/// The live call, which must be for the asker's own machine.
pub(crate) fn own_live<'a>(state: &'a State, by: &By, id: u64) -> Result<&'a Call, Refusal> {
    let call = live(state, id)?;
    if by.machine.as_deref() != Some(&call.sent.machine) {
        return Err(Refusal::NotAllowed {
            roles: vec![Role::Operator],
            machine: Some(call.sent.machine.clone()),
        });
    }
    Ok(call)
}

/// The machine whose cab the asker sits in.
pub(crate) fn own_machine(by: &By) -> Result<String, Refusal> {
    by.machine.clone().ok_or_else(|| Refusal::NotAllowed {
        roles: vec![Role::Operator],
        machine: None,
    })
}

pub(crate) fn got(state: &State, by: &By, asked: &GotIt) -> Result<Vec<Body>, Refusal> {
    let call = own_live(state, by, asked.call)?;
    let mut bodies = Vec::from_iter(receipt::seen_by_press(state, by, asked.call, call)?);
    bodies.extend(acknowledge(call, asked.call, None));
    Ok(bodies)
}

pub(crate) fn saw_nod(state: &State, by: &By, asked: &SawNod) -> Result<Vec<Body>, Refusal> {
    let call = live(state, asked.call)?;
    Ok(acknowledge(call, asked.call, Some(by.person.clone())))
}

fn acknowledge(call: &Call, id: u64, witness: Option<String>) -> Vec<Body> {
    if call.state == CallState::Got {
        return vec![];
    }
    vec![Body::CallGot(CallGot {
        call: id,
        machine: call.sent.machine.clone(),
        mark: call.sent.mark.clone(),
        witness,
    })]
}

pub(crate) fn check_me(state: &State, by: &By, _: &CheckMe) -> Result<Vec<Body>, Refusal> {
    let machine = own_machine(by)?;
    if state
        .cabs
        .get(&machine)
        .is_some_and(|cab| cab.look_asked_at.is_some())
    {
        return Ok(vec![]);
    }
    Ok(vec![Body::LookAsked(LookAsked { machine })])
}

/// The operator can't. The call ends; a pipe stops every machine on that main, a moving face the machine.
pub(crate) fn cant(
    state: &State,
    by: &By,
    asked: &SayCant,
    when: When,
) -> Result<Vec<Body>, Refusal> {
    let machine = own_machine(by)?;
    // What was sent since is not what can't be done.
    let live = state
        .live_call(&machine)
        .filter(|(_, call)| call.sent_at <= when.made_at);
    let mut bodies = vec![Body::CantSaid(CantSaid {
        machine: machine.clone(),
        why: asked.why,
        call: live.map(|(id, _)| id),
        mark: live.and_then(|(_, call)| call.sent.mark.clone()),
    })];
    bodies.extend(live.map(|(id, call)| ended(id, call, Ending::Refused)));
    if asked.why == CantReason::Pipe {
        let mark = live.and_then(|(_, call)| call.sent.mark.as_deref());
        let struck = struck::said_from_cab(state, &machine, mark, when.now).into_iter();
        // Its own call has ended just above.
        bodies
            .extend(struck.filter(
                |body| !matches!(body, Body::CallEnded(ended) if ended.machine == machine),
            ));
    }
    if asked.why == CantReason::Face {
        bodies.push(Body::Stopped(Stopped {
            machines: vec![machine.clone()],
            all: false,
            why: "face / talud".to_owned(),
        }));
    }
    if asked.why == CantReason::Face {
        let mark = live.and_then(|(_, call)| call.sent.mark.as_deref());
        let alarm = face_alarm::said_from_cab(state, mark).into_iter();
        // Its own call has ended just above.
        bodies
            .extend(alarm.filter(
                |body| !matches!(body, Body::CallEnded(ended) if ended.machine == machine),
            ));
    }
    Ok(bodies)
}

pub(crate) fn apply_got(state: &mut State, entry: &Entry, body: &CallGot) {
    if let Some(call) = state.calls.get_mut(&body.call) {
        call.state = CallState::Got;
        call.got_at = Some(entry.at);
        call.witness.clone_from(&body.witness);
    }
}

pub(crate) fn apply_look(state: &mut State, entry: &Entry, body: &LookAsked) {
    state.cab_mut(&body.machine).look_asked_at = Some(entry.at);
}

pub(crate) fn apply_cant(state: &mut State, entry: &Entry, body: &CantSaid) {
    state.cab_mut(&body.machine).cant = Some(CantCard {
        why: body.why,
        mark: body.mark.clone(),
        at: entry.at,
    });
    if body.why == CantReason::Water {
        let at = WaterAt::of_the_cab(&body.machine, body.mark.as_deref());
        pump::stands(state, entry, at);
    }
}
