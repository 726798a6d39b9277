//! From the log to the state: the newest day on top of what it opened with, or everything from the first entry.

use day::state::State;

use crate::store::{Opened, StoreError};

/// The state that the log adds up to.
///
/// # Errors
/// [`StoreError`] when the log has to be read from the start and does not prove itself.
pub fn state(opened: &mut Opened) -> Result<State, StoreError> {
    let put_by = opened.opening.take().and_then(|json| State::read(&json));
    let mut state = State::default();
    match (put_by, opened.today.first()) {
        (Some(opening), Some(first)) if opening.seq + 1 == first.entry.seq => {
            state = opening;
            for one in &opened.today {
                day::apply(&mut state, &one.entry);
            }
        }
        _ => opened
            .store
            .each(|one| day::apply(&mut state, &one.entry))?,
    }
    Ok(state)
}
