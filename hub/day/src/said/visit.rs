//! Visitors: they say that they are on site or off it, and a supervisor chooses what they are shown.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// A visitor says that they are on site, or off it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Visit {
    /// On site; else off.
    pub on_site: bool,
    /// Who, when somebody else has seen it: a visitor whose phone is gone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub person: Option<String>,
}

impl Saying for Visit {
    const BY: &'static [Role] = &[Role::Supervisor, Role::Visitor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        visit(at.state, at.by, self)
    }
}

/// A visitor is on site, or off it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct VisitorNoticed {
    /// Who.
    pub person: String,
    /// On site; else off.
    pub on_site: bool,
    /// Who has seen it, when the visitor has not said it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub witness: Option<String>,
}

impl Happening for VisitorNoticed {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_noticed(state, entry, self);
    }
}

/// A supervisor chooses what a visitor is shown.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ShowRuns {
    /// The visitor.
    pub person: String,
    /// The targets that they came for; none takes all away.
    pub targets: Vec<String>,
}

impl Saying for ShowRuns {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        show_runs(at.state, self)
    }
}

/// What a visitor is shown was chosen.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct RunsShown {
    /// The visitor.
    pub person: String,
    /// The targets.
    pub targets: Vec<String>,
}

impl Happening for RunsShown {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_shown(state, self);
    }
}

/// Only a supervisor speaks for a visitor, and only of one who has joined.
pub(crate) fn visit(state: &State, by: &By, asked: &Visit) -> Result<Vec<Body>, Refusal> {
    if state.day.is_none() {
        return Err(Refusal::NoDay);
    }
    let other = asked.person.as_ref().filter(|person| **person != by.person);
    let person = match other {
        Some(person) if by.is(Role::Supervisor) => known(state, person)?,
        Some(_) => {
            return Err(Refusal::NotAllowed {
                roles: vec![Role::Supervisor],
                machine: None,
            });
        }
        None => by.person.clone(),
    };
    let here = state.record.visitors.get(&person);
    if here.is_some_and(|visitor| visitor.here.is_some()) == asked.on_site {
        return Ok(vec![]);
    }
    Ok(vec![Body::VisitorNoticed(VisitorNoticed {
        person,
        on_site: asked.on_site,
        witness: other.map(|_| by.person.clone()),
    })])
}

pub(crate) fn show_runs(state: &State, asked: &ShowRuns) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let person = known(state, &asked.person)?;
    for target in &asked.targets {
        if site.target(target).is_none() {
            return Err(Refusal::Unknown {
                what: Thing::Target,
                name: target.clone(),
            });
        }
    }
    Ok(vec![Body::RunsShown(RunsShown {
        person,
        targets: asked.targets.clone(),
    })])
}

/// A visitor who has joined, or who was on site before.
fn known(state: &State, person: &str) -> Result<String, Refusal> {
    let joined = state
        .devices
        .values()
        .any(|device| device.person == person && device.roles.contains(&Role::Visitor));
    if joined || state.record.visitors.contains_key(person) {
        return Ok(person.to_owned());
    }
    Err(Refusal::Unknown {
        what: Thing::Visitor,
        name: person.to_owned(),
    })
}

pub(crate) fn apply_noticed(state: &mut State, entry: &Entry, body: &VisitorNoticed) {
    let visitors = &mut state.record.visitors;
    let visitor = visitors.entry(body.person.clone()).or_default();
    if body.on_site {
        visitor.here = Some(entry.at);
    } else {
        visitor.here = None;
        visitor.left = Some(entry.at);
    }
}

pub(crate) fn apply_shown(state: &mut State, body: &RunsShown) {
    let visitors = &mut state.record.visitors;
    let visitor = visitors.entry(body.person.clone()).or_default();
    visitor.shown.clone_from(&body.targets);
}
