//! Phones witness the log: one that remembers an end of the chain that the log does not hold is heard.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::record::Dated;
use crate::refusal::Refusal;
use crate::said::signature::ChainHead;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// The hub misses an end of the chain that a phone remembers.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct MissHead {
    /// Whose phone.
    pub person: String,
    /// What it remembers.
    pub remembered: ChainHead,
    /// The hash that the log has under that number; none when it ends before.
    pub has: Option<String>,
    /// Where the log ended when the phone came.
    pub log_ends: u64,
}

impl Saying for MissHead {
    const BY: &'static [Role] = &[Role::Hub];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        Ok(miss(at.state, self))
    }
}

/// A phone remembers an end of the chain that the log does not hold: the log was cut or rewritten since.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct HeadMismatch {
    /// Whose phone.
    pub person: String,
    /// What it remembers.
    pub remembered: ChainHead,
    /// The hash that the log has under that number; none when it ended before.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub has: Option<String>,
    /// Where the log ended when the phone came.
    pub log_ends: u64,
}

impl Happening for HeadMismatch {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        state.record.mismatches.push(Dated::of(entry, self));
    }
}

/// More than this tells nothing new, and a phone that lies fills no log.
const MOST: usize = 50;

/// The same memory is told once, whoever has it.
pub(crate) fn miss(state: &State, asked: &MissHead) -> Vec<Body> {
    let told = &state.record.mismatches;
    if told.len() >= MOST
        || told
            .iter()
            .any(|one| one.said.remembered == asked.remembered)
    {
        return vec![];
    }
    vec![Body::HeadMismatch(HeadMismatch {
        person: asked.person.clone(),
        remembered: asked.remembered.clone(),
        has: asked.has.clone(),
        log_ends: asked.log_ends,
    })]
}
