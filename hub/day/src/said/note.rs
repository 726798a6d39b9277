//! A note: words for the log, about a mark or another entry, at any time.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::record::Dated;
use crate::refusal::{Refusal, Thing};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// Somebody writes a note.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AddNote {
    /// The words.
    pub words: String,
    /// The mark that they are about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// The entry that they are about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub entry: Option<u64>,
}

impl Saying for AddNote {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        add(at.state, self)
    }
}

/// A note was written.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct NoteAdded {
    /// The words.
    pub words: String,
    /// The mark that they are about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// The entry that they are about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub entry: Option<u64>,
}

impl Happening for NoteAdded {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        state.record.notes.insert(entry.seq, Dated::of(entry, self));
    }
}

pub(crate) fn add(state: &State, asked: &AddNote) -> Result<Vec<Body>, Refusal> {
    let words = asked.words.trim();
    if words.is_empty() {
        return Err(Refusal::say_why(words::note::what_the_note_says()));
    }
    about(state, asked.mark.as_deref(), asked.entry)?;
    Ok(vec![Body::NoteAdded(NoteAdded {
        words: words.to_owned(),
        mark: asked.mark.clone(),
        entry: asked.entry,
    })])
}

/// The mark and the entry that something is about are there.
pub(crate) fn about(state: &State, mark: Option<&str>, entry: Option<u64>) -> Result<(), Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    if let Some(mark) = mark.filter(|mark| site.mark(mark).is_none()) {
        return Err(Refusal::Unknown {
            what: Thing::Mark,
            name: mark.to_owned(),
        });
    }
    match entry {
        Some(entry) if entry == 0 || entry > state.seq => Err(Refusal::of_the_record(
            words::note::the_log_has_no_entry(&entry),
        )),
        _ => Ok(()),
    }
}
