//! A signed day is not changed: an amendment is a new entry that names the one it amends, under a second signature.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::record::Dated;
use crate::refusal::Refusal;
use crate::said::signature::{ChainHead, Signature};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// A supervisor amends a signed day.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AmendDay {
    /// The entry that is amended.
    pub entry: u64,
    /// What is to be read with it.
    pub words: String,
    /// The second signature.
    pub signature: Signature,
}

impl Saying for AmendDay {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        amend(at.state, self, at.head)
    }
}

/// A signed day was amended.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct DayAmended {
    /// The day whose entry it is.
    pub day: String,
    /// The entry that is amended.
    pub entry: u64,
    /// What is to be read with it.
    pub words: String,
    /// The signature.
    pub signature: Signature,
    /// The end of the chain as it stood.
    pub head: ChainHead,
}

impl Happening for DayAmended {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        state.record.amended.push(Dated::of(entry, self));
    }
}

/// `head` is the hash of the last entry.
pub(crate) fn amend(state: &State, asked: &AmendDay, head: &str) -> Result<Vec<Body>, Refusal> {
    let open = state.day.as_ref().ok_or(Refusal::NoDay)?;
    let words = asked.words.trim();
    if words.is_empty() {
        return Err(Refusal::say_why(words::amend::what_read_with_entry()));
    }
    if asked.entry == 0 || asked.entry > state.seq {
        return Err(Refusal::of_the_record(words::amend::the_log_has_no_entry(
            &asked.entry,
        )));
    }
    if !state.record.is_signed(asked.entry, open.first) {
        return Err(Refusal::of_the_record(
            words::amend::that_day_is_not_signed(),
        ));
    }
    let past = state.record.days.iter();
    let past = past
        .into_iter()
        .rfind(|day| day.first <= asked.entry && asked.entry <= day.last);
    Ok(vec![Body::DayAmended(DayAmended {
        day: past.map_or(&open.id, |day| &day.day).clone(),
        entry: asked.entry,
        words: words.to_owned(),
        signature: asked.signature.checked()?,
        head: ChainHead {
            seq: state.seq,
            hash: head.to_owned(),
        },
    })])
}
