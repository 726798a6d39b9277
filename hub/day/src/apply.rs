//! From an entry to the state. Total: no rule, no error. What each does stands with it in `said/`; this file keeps the answers.

use crate::answer::Answer;
use crate::entry::{Body, Entry};
use crate::state::State;

/// Takes one entry into the state.
pub fn apply(state: &mut State, entry: &Entry) {
    state.seq = entry.seq;
    state.at = state.at.max(entry.at);
    entry.body.apply(state, entry);
    // What machines do after the close is no hour of that day.
    if state.record.closed.is_none() || matches!(entry.body, Body::DayClosed(_)) {
        crate::account::meter::tick(state, entry.at);
    }
    if !entry.key.is_empty() {
        let answers = state.answers.entry(entry.by.device.clone()).or_default();
        answers
            .entry(entry.key.clone())
            .or_insert_with(|| Answer::begun(entry.seq))
            .absorb(entry);
    }
}

/// The answer already given to a device's key, from the entries of this day.
pub fn answered(state: &State, device: &str, key: &str) -> Option<Answer> {
    state.answers.get(device)?.get(key).cloned()
}
