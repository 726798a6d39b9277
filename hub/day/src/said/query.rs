//! A query to the engineer: what is asked, what waits for the answer, and the revision that answers it.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::call::Ending;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::record::{Dated, Query};
use crate::refusal::{Refusal, Thing};
use crate::said::call;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// Somebody asks the engineer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AskQuery {
    /// The question.
    pub question: String,
    /// Who is asked.
    pub of: String,
    /// The marks and targets that it is about.
    pub on: Vec<String>,
    /// Calls there wait for the answer; else work carries on elsewhere and there.
    pub stop: bool,
    /// A photo with it, by the name that the phone gave.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub photo: Option<String>,
}

impl Saying for AskQuery {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        ask(at.state, self)
    }
}

/// A query was opened.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct QueryOpened {
    /// Its name, such as `Q1`.
    pub query: String,
    /// The question.
    pub question: String,
    /// Who is asked.
    pub of: String,
    /// The marks and targets that it is about.
    pub on: Vec<String>,
    /// Calls there wait for the answer.
    pub stop: bool,
    /// A photo with it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub photo: Option<String>,
}

impl Happening for QueryOpened {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_opened(state, entry, self);
    }
}

/// The engineer's answer, as a supervisor has it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AnswerQuery {
    /// Which.
    pub query: String,
    /// The answer.
    pub answer: String,
    /// Who answered, and where it is written.
    pub answered_by: String,
    /// The target whose revision in force carries it out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub target: Option<String>,
}

impl Saying for AnswerQuery {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        answer(at.state, self)
    }
}

/// A query was answered. A second answer stands beside the first.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct QueryAnswered {
    /// Which.
    pub query: String,
    /// The answer.
    pub answer: String,
    /// Who answered.
    pub answered_by: String,
    /// The revision that carries it out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub revision: Option<AnsweringRevision>,
}

impl Happening for QueryAnswered {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_answered(state, entry, self);
    }
}

/// The revision of a target that carries an answer out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct AnsweringRevision {
    /// The target.
    pub target: String,
    /// Its revision.
    pub revision: u32,
}

/// A live call on what waits for the answer ends with the question.
pub(crate) fn ask(state: &State, asked: &AskQuery) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let (question, of) = (asked.question.trim(), asked.of.trim());
    if question.is_empty() || of.is_empty() || asked.on.is_empty() {
        return Err(Refusal::say_why(words::query::what_asked_whom_about_which()));
    }
    let known = |name: &String| site.mark(name).is_some() || site.target(name).is_some();
    if let Some(name) = asked.on.iter().find(|name| !known(name)) {
        return Err(Refusal::Unknown {
            what: Thing::MarkOrTarget,
            name: name.clone(),
        });
    }
    if let Some(photo) = &asked.photo
        && !state.record.photos.contains_key(photo)
    {
        return Err(Refusal::Unknown {
            what: Thing::Photo,
            name: photo.clone(),
        });
    }
    let mut bodies = Vec::new();
    if asked.stop {
        for machine in state.cabs.keys() {
            let waits = state.live_call(machine).is_some_and(|(_, call)| {
                let names = [&call.sent.mark, &call.sent.target];
                names
                    .into_iter()
                    .flatten()
                    .any(|name| asked.on.contains(name))
            });
            if waits {
                bodies.extend(call::end_live(state, machine, Ending::QueryAsked));
            }
        }
    }
    bodies.push(Body::QueryOpened(QueryOpened {
        query: format!("Q{}", state.record.queries.len() + 1),
        question: question.to_owned(),
        of: of.to_owned(),
        on: asked.on.clone(),
        stop: asked.stop,
        photo: asked.photo.clone(),
    }));
    Ok(bodies)
}

pub(crate) fn answer(state: &State, asked: &AnswerQuery) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    if !state.record.queries.contains_key(&asked.query) {
        return Err(Refusal::Unknown {
            what: Thing::Query,
            name: asked.query.clone(),
        });
    }
    let (answer, by) = (asked.answer.trim(), asked.answered_by.trim());
    if answer.is_empty() || by.is_empty() {
        return Err(Refusal::say_why(
            words::query::answer_who_gave_where_written(),
        ));
    }
    let revision = match &asked.target {
        None => None,
        Some(name) => {
            let target = site.target(name).ok_or_else(|| Refusal::Unknown {
                what: Thing::Target,
                name: name.clone(),
            })?;
            Some(AnsweringRevision {
                target: target.id.clone(),
                revision: target.revision,
            })
        }
    };
    Ok(vec![Body::QueryAnswered(QueryAnswered {
        query: asked.query.clone(),
        answer: answer.to_owned(),
        answered_by: by.to_owned(),
        revision,
    })])
}

pub(crate) fn apply_opened(state: &mut State, entry: &Entry, body: &QueryOpened) {
    let query = Query {
        opened: Dated::of(entry, body),
        answers: vec![],
    };
    state.record.queries.insert(body.query.clone(), query);
}

pub(crate) fn apply_answered(state: &mut State, entry: &Entry, body: &QueryAnswered) {
    if let Some(query) = state.record.queries.get_mut(&body.query) {
        query.answers.push(Dated::of(entry, body));
    }
}
