//! Where a machine stands, as last declared. Nothing senses it.

use contract::ToSchema;
use earthwork::point::Point;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::near::{self, Near};
use crate::overtaken;
use crate::refusal::{Refusal, Thing};
use crate::said::{face_alarm, slew};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::{Time, When};

/// Somebody says where a machine stands.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct PlaceMachine {
    /// Which.
    pub machine: String,
    /// Where.
    pub at: Point,
}

impl Saying for PlaceMachine {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        place(at.state, self, at.when)
    }
}

/// A declared place. Nothing senses it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PlaceCard {
    /// Where.
    pub at: Point,
    /// When it was declared.
    pub since: Time,
    /// Who declared it.
    pub by: String,
}

/// A machine's place was declared.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct MachinePlaced {
    /// Which.
    pub machine: String,
    /// Where.
    pub at: Point,
}

impl Happening for MachinePlaced {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_placed(state, entry, self);
    }
}

/// Something is near a machine that was placed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct NearFound {
    /// Which machine.
    pub machine: String,
    /// What.
    pub near: Vec<Near>,
}

impl Happening for NearFound {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, _state: &mut State, _entry: &Entry) {
        // Nothing is current by it: it is there to be read.
    }
}

/// A machine has moved; nobody has said where to.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayMoved {
    /// Which.
    pub machine: String,
}

impl Saying for SayMoved {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        moved(at.state, self, at.when)
    }
}

/// A machine moved: its place is unknown.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct MachineMoved {
    /// Which.
    pub machine: String,
}

impl Happening for MachineMoved {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_moved(state, entry, self);
    }
}

pub(crate) fn known(state: &State, machine: &str) -> Result<(), Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    match site.machine(machine) {
        Some(_) => Ok(()),
        None => Err(Refusal::Unknown {
            what: Thing::Machine,
            name: machine.to_owned(),
        }),
    }
}

/// A place that was said before the newest word about it is not where the machine stands now.
fn newest(state: &State, machine: &str, when: When) -> Result<(), Refusal> {
    let said = state.cabs.get(machine).and_then(|cab| cab.place_said);
    overtaken::after(when, said, words::machine::somebody_has_said_since_where())
}

pub(crate) fn place(state: &State, asked: &PlaceMachine, when: When) -> Result<Vec<Body>, Refusal> {
    known(state, &asked.machine)?;
    newest(state, &asked.machine, when)?;
    if !state.cuts.owed_by(&asked.machine).is_empty() {
        // It takes a GET AWAY FROM THE FACE from the screen.
        overtaken::in_time(when)?;
    }
    let mut bodies = vec![Body::MachinePlaced(MachinePlaced {
        machine: asked.machine.clone(),
        at: asked.at,
    })];
    bodies.extend(face_alarm::placed(state, &asked.machine, asked.at));
    bodies.extend(slew::voided_at(state, &asked.machine, asked.at));
    let near = near::near_at(state, &asked.machine, asked.at);
    if !near.is_empty() {
        bodies.push(Body::NearFound(NearFound {
            machine: asked.machine.clone(),
            near,
        }));
    }
    Ok(bodies)
}

pub(crate) fn moved(state: &State, asked: &SayMoved, when: When) -> Result<Vec<Body>, Refusal> {
    known(state, &asked.machine)?;
    newest(state, &asked.machine, when)?;
    let mut bodies = vec![Body::MachineMoved(MachineMoved {
        machine: asked.machine.clone(),
    })];
    bodies.extend(face_alarm::moved(state, &asked.machine));
    bodies.extend(slew::voided(state, &asked.machine));
    Ok(bodies)
}

pub(crate) fn apply_placed(state: &mut State, entry: &Entry, body: &MachinePlaced) {
    let cab = state.cab_mut(&body.machine);
    cab.place = Some(PlaceCard {
        at: body.at,
        since: entry.made_at,
        by: entry.by.person.clone(),
    });
    cab.place_said = Some(entry.made_at);
    cab.moved = false;
    // In a new place everyone looks anew.
    cab.loud_at = None;
}

pub(crate) fn apply_moved(state: &mut State, entry: &Entry, body: &MachineMoved) {
    let cab = state.cab_mut(&body.machine);
    cab.place = None;
    cab.place_said = Some(entry.made_at);
    cab.moved = true;
    cab.loud_at = None;
}
