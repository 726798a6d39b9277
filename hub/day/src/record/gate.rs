//! What is taken on a day that is closed: notes, what comes late, tests, queries, amendments, and what keeps people from harm.

use crate::asked::Asked;
use crate::refusal::Refusal;
use crate::saying::Closed;
use crate::state::State;

/// Refuses what would change a closed day.
///
/// # Errors
/// [`Refusal::DayIsClosed`], which says what may still be said.
pub(crate) fn pass(state: &State, asked: &Asked) -> Result<(), Refusal> {
    let Some(closed) = &state.record.closed else {
        return Ok(());
    };
    let taken = match asked.command.closed() {
        Closed::Taken => true,
        Closed::TakenLate => asked.made_at <= closed.at,
        Closed::Refused => false,
    };
    if taken {
        return Ok(());
    }
    Err(Refusal::DayIsClosed {
        signed: state.record.signed.is_some(),
    })
}
