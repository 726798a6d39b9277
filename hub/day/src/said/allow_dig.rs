//! A supervisor lets work go on where something holds it back, with a reason that stays in the log. Where nothing is located
//! the leave is for one mark, never for the site.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::cuts::held::{self, HeldBy};
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::overtaken;
use crate::refusal::{Refusal, Thing};
use crate::said::struck;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::When;

/// A supervisor lets work go on.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AllowDig {
    /// What holds it back.
    pub held: HeldBy,
    /// Why it goes on, and on whose word.
    pub why: String,
}

impl Saying for AllowDig {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        allow(at.state, self, at.when)
    }
}

/// Work was let go on, for this day.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct DigAllowed {
    /// What held it back.
    pub held: HeldBy,
    /// Why.
    pub why: String,
}

impl Happening for DigAllowed {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_allowed(state, self);
    }
}

pub(crate) fn allow(state: &State, asked: &AllowDig, when: When) -> Result<Vec<Body>, Refusal> {
    if state.day.is_none() {
        return Err(Refusal::NoDay);
    }
    if asked.why.trim().is_empty() {
        return Err(Refusal::say_why(words::allow_dig::why_dig_goes_whose_word()));
    }
    if matches!(asked.held, HeldBy::FaceLeft { .. } | HeldBy::Query { .. }) {
        // No word from the truck brings people back under a face that was left, or is the engineer's answer.
        return Err(asked.held.refusal());
    }
    if let HeldBy::NotLocated { mark } = &asked.held {
        let site = state.site().ok_or(Refusal::NoSite)?;
        let mark = mark
            .as_deref()
            .ok_or_else(|| Refusal::say_why(words::allow_dig::which_mark_dig_goes()))?;
        site.mark(mark).ok_or_else(|| Refusal::Unknown {
            what: Thing::Mark,
            name: mark.to_owned(),
        })?;
    }
    if held::let_go_on(state, &asked.held) {
        return Ok(vec![]);
    }
    overtaken::in_time(when)?;
    Ok(vec![Body::DigAllowed(DigAllowed {
        held: asked.held.clone(),
        why: asked.why.trim().to_owned(),
    })])
}

pub(crate) fn apply_allowed(state: &mut State, body: &DigAllowed) {
    if let HeldBy::LineStruck { line } = &body.held {
        struck::settle(state, line.as_deref());
        return;
    }
    state.cuts.allowed.push(body.held.clone());
}
