//! The supervisor signs a closed day: a name, a drawn signature, and the end of the chain as it stood.

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

/// A supervisor signs the day.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SignDay {
    /// The signature.
    pub signature: Signature,
    /// A word with it; may be empty.
    #[serde(default)]
    pub words: String,
}

impl Saying for SignDay {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        sign(at.state, self, at.head)
    }
}

/// The day was signed. What comes after is an amendment.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct DaySigned {
    /// Which.
    pub day: String,
    /// The signature.
    pub signature: Signature,
    /// The end of the chain as it stood: everything up to there is signed.
    pub head: ChainHead,
    /// Nothing was read and nothing was called on it: the signature is under an empty day.
    pub empty: bool,
    /// It was closed without a check behind its last readings.
    pub unproven: bool,
    /// A word with it.
    pub words: String,
}

impl Happening for DaySigned {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        state.record.signed = Some(Dated::of(entry, self));
    }
}

/// `head` is the hash of the last entry.
pub(crate) fn sign(state: &State, asked: &SignDay, head: &str) -> Result<Vec<Body>, Refusal> {
    let day = state.day.as_ref().ok_or(Refusal::NoDay)?;
    let Some(closed) = &state.record.closed else {
        return Err(Refusal::of_the_record(words::sign::close_the_day_first()));
    };
    if let Some(signed) = &state.record.signed {
        let name = &signed.said.signature.name;
        return Err(Refusal::of_the_record(words::sign::has_signed_this_day(
            &name,
        )));
    }
    Ok(vec![Body::DaySigned(DaySigned {
        day: day.id.clone(),
        signature: asked.signature.checked()?,
        head: ChainHead {
            seq: state.seq,
            hash: head.to_owned(),
        },
        empty: closed.said.empty,
        unproven: !closed.said.unproven.is_empty(),
        words: asked.words.trim().to_owned(),
    })])
}
