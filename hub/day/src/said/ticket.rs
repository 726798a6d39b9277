//! The locate ticket is looked at before the day begins: who has answered what, and how long it holds.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::cuts::held::HeldBy;
use crate::cuts::now::{Signed, TicketNow};
use crate::cuts::plan::UtilityKind;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::overtaken;
use crate::refusal::{Refusal, Thing};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::When;

/// A supervisor looks at a ticket.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CheckTicket {
    /// Its number.
    pub ticket: String,
    /// Who has answered what.
    pub responses: Vec<Response>,
}

impl Saying for CheckTicket {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        check(at.state, self)
    }
}

/// Who has answered what.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Response {
    /// Which kind of line.
    pub kind: UtilityKind,
    /// The answer.
    pub answer: Answered,
}

/// An answer of an owner.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Answered {
    /// Marked on the ground.
    Marked,
    /// Nothing of theirs here.
    NoneHere,
    /// No answer yet.
    Silent,
}

/// A ticket was looked at.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct TicketChecked {
    /// Its number.
    pub ticket: String,
    /// The last day that it holds for.
    pub to: String,
    /// Days that are left after this one.
    pub days_left: i64,
    /// Who has answered what.
    pub responses: Vec<Response>,
    /// Who was asked and has not answered.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub silent: Vec<UtilityKind>,
}

impl Happening for TicketChecked {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_checked(state, entry, self);
    }
}

/// Paint of a buried line on the ground.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayPaint {
    /// The line.
    pub utility: String,
    /// It is gone; else it was painted again.
    pub gone: bool,
}

impl Saying for SayPaint {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        say_paint(at.state, self, at.when)
    }
}

/// Paint of a buried line went, or came again.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct PaintSaid {
    /// The line.
    pub utility: String,
    /// It is gone.
    pub gone: bool,
}

impl Happening for PaintSaid {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_paint(state, entry, self);
    }
}

pub(crate) fn check(state: &State, asked: &CheckTicket) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let day = &state.day.as_ref().ok_or(Refusal::NoDay)?.id;
    let ticket = site
        .cuts
        .tickets
        .iter()
        .find(|ticket| ticket.id == asked.ticket)
        .ok_or_else(|| Refusal::Unknown {
            what: Thing::Ticket,
            name: asked.ticket.clone(),
        })?;
    let days_left = ticket.days_left(day).filter(|days| *days >= 0);
    let days_left = days_left.ok_or_else(|| Refusal::TicketLapsed {
        ticket: ticket.id.clone(),
        days: format!("{} – {}", ticket.from, ticket.to),
    })?;
    let answered = |kind: &UtilityKind| {
        asked
            .responses
            .iter()
            .any(|one| one.kind == *kind && one.answer != Answered::Silent)
    };
    Ok(vec![Body::TicketChecked(TicketChecked {
        ticket: ticket.id.clone(),
        to: ticket.to.clone(),
        days_left,
        silent: ticket
            .asks
            .iter()
            .filter(|kind| !answered(kind))
            .copied()
            .collect(),
        responses: asked.responses.clone(),
    })])
}

pub(crate) fn say_paint(state: &State, asked: &SayPaint, when: When) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    if site.cuts.utility(&asked.utility).is_none() {
        return Err(Refusal::Unknown {
            what: Thing::Utility,
            name: asked.utility.clone(),
        });
    }
    let gone = state
        .cuts
        .utilities
        .get(&asked.utility)
        .and_then(|now| now.paint_gone);
    if gone.is_some() == asked.gone {
        return Ok(vec![]);
    }
    overtaken::after(when, gone, words::ticket::somebody_has_said_since_paint())?;
    Ok(vec![Body::PaintSaid(PaintSaid {
        utility: asked.utility.clone(),
        gone: asked.gone,
    })])
}

pub(crate) fn apply_checked(state: &mut State, entry: &Entry, body: &TicketChecked) {
    state.cuts.tickets.insert(
        body.ticket.clone(),
        TicketNow {
            checked: Signed {
                at: entry.at,
                by: entry.by.person.clone(),
            },
            responses: body.responses.clone(),
        },
    );
}

pub(crate) fn apply_paint(state: &mut State, entry: &Entry, body: &PaintSaid) {
    let now = state
        .cuts
        .utilities
        .entry(body.utility.clone())
        .or_default();
    now.paint_gone = body.gone.then_some(entry.made_at);
    // What was let go on was the paint that was gone then.
    state
        .cuts
        .allowed
        .retain(|held| !matches!(held, HeldBy::PaintGone { utility } if *utility == body.utility));
}
