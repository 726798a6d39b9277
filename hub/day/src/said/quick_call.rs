//! A call by eye, without a number. It never closes a mark.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::words::QuickWord;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::call::{Ending, Message};
use crate::cuts::held;
use crate::entry::Body;
use crate::overtaken;
use crate::refusal::{Refusal, Thing};
use crate::said::call::{self, Draft};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::When;

/// A word to one machine.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct QuickCall {
    /// The machine.
    pub machine: String,
    /// The word.
    pub word: QuickWord,
    /// The mark, when it is about one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
}

impl Saying for QuickCall {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        say(at.state, at.by, self, at.when)
    }
}

/// A word to a machine. What was measured before is no longer what is wanted, so it takes the live call's place.
pub(crate) fn say(
    state: &State,
    by: &By,
    asked: &QuickCall,
    when: When,
) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    if state.day.is_none() {
        return Err(Refusal::NoDay);
    }
    let unknown = |what, name: &str| Refusal::Unknown {
        what,
        name: name.to_owned(),
    };
    if site.machine(&asked.machine).is_none() {
        return Err(unknown(Thing::Machine, &asked.machine));
    }
    if let Some(mark) = &asked.mark
        && site.mark(mark).is_none()
    {
        return Err(unknown(Thing::Mark, mark));
    }
    overtaken::before_its_call(state, &asked.machine, when)?;
    if let Some(held) = held::call(state, &asked.machine, asked.mark.as_deref(), None) {
        return Err(held.refusal());
    }
    let mut bodies: Vec<Body> = call::end_live(state, &asked.machine, Ending::Superseded)
        .into_iter()
        .collect();
    bodies.push(call::send(
        state,
        by,
        when,
        Draft {
            machine: asked.machine.clone(),
            mark: asked.mark.clone(),
            target: None,
            set_up: None,
            message: Message::ByEye { word: asked.word },
            aim: Length::ZERO,
            readings: vec![],
            labels: vec![],
            checked_at: None,
            warnings: vec![],
            line: None,
        },
    ));
    Ok(bodies)
}
