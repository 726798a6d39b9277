//! From a request to entries or a refusal. The rules are in `said/`; which is whose says the list of [`crate::asked`].

use crate::asked::Asked;
use crate::entry::Body;
use crate::permit;
use crate::record;
use crate::refusal::Refusal;
use crate::said;
use crate::saying::Asking;
use crate::state::State;
use crate::time::{Time, When};

/// What follows from a request. An empty list means that there was nothing left to do. `head` is the hash of the last entry:
/// a signature stands under it.
///
/// # Errors
/// A [`Refusal`] that says what to do instead; then nothing is entered.
pub fn decide(state: &State, asked: &Asked, now: Time, head: &str) -> Result<Vec<Body>, Refusal> {
    permit::check(&asked.by, &asked.command)?;
    said::stay::pass(state, asked)?;
    record::gate::pass(state, asked)?;
    let when = When {
        now,
        made_at: asked.made_at.min(now),
    };
    let mut bodies = asked.command.decide(&Asking {
        state,
        by: &asked.by,
        when,
        head,
    })?;
    let voided = said::void::after(state, when, &bodies);
    bodies.extend(voided);
    bodies.extend(said::site::held_anew(state, asked, now, &bodies));
    Ok(bodies)
}

/// The next moment at which something ends by itself.
pub fn next_deadline(state: &State) -> Option<Time> {
    let ask = said::way_in::notice::next_deadline(state);
    if state.record.closed.is_some() {
        return ask;
    }
    let call = said::call::next_deadline(state);
    let check = said::check_due::next_deadline(state);
    [call, check, ask].into_iter().flatten().min()
}

/// What has ended by itself. On a closed day nobody is asked for a laser check any more.
pub fn on_deadline(state: &State, now: Time) -> Vec<Body> {
    let mut bodies = Vec::new();
    if state.record.closed.is_none() {
        bodies.extend(said::call::on_deadline(state, now));
        bodies.extend(said::check_due::on_deadline(state, now));
    }
    bodies.extend(said::way_in::notice::on_deadline(state, now));
    bodies
}
