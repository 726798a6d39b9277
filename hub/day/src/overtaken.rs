//! Words that free, return or place something are about what their speaker saw. Such a word may wait in a phone without a link;
//! when it comes, it counts only if what it answers still stands and if it is not too old to be about now.
//!
//! | word | what it answers |
//! |---|---|
//! | LIFT | the newest press of the stop that the page showed |
//! | an inspection, and its words that bring people back | the alarm that the page showed; nothing seen or said at the face since the form was opened, on this day |
//! | RAIN STOPPED | the newest word that it rains which the page showed; however late, for it frees nothing |
//! | PUMPED OUT | the newest word of water there that the page showed, and this moment |
//! | RAIN | however late; nobody has said since that it stopped |
//! | I AM AWAY | the alarm that the cab showed |
//! | a place, MOVED | nothing newer said of that machine's place |
//! | a place said in the cab | the same, and this moment; STILL HERE the place that the screen showed |
//! | SPOTTER, and its end | this moment: who watched an hour ago does not watch now |
//! | PAINTED AGAIN | nobody has said since that it is gone |
//! | a mark laid again | nobody has said since that it is gone |
//! | a good check of a laser in doubt | the laser as it stands since the doubt |
//! | a target's revision | the revision that the page showed |
//! | an aim | the aim and the target's revision that the page showed, on this day |

use words::Text;

use crate::refusal::Refusal;
use crate::state::State;
use crate::time::{Time, When};
use crate::way_in::rules::TOO_LATE_MS;

/// Refuses a word that was on its way for too long to be about this moment.
pub(crate) fn in_time(when: When) -> Result<(), Refusal> {
    let ms = when.now.ms_since(when.made_at);
    if ms > TOO_LATE_MS {
        return Err(Refusal::SaidTooLate { ms });
    }
    Ok(())
}

/// Refuses a word that was said before what stands now; `what` says what that is.
pub(crate) fn after(when: When, since: Option<Time>, what: impl Into<Text>) -> Result<(), Refusal> {
    if since.is_some_and(|since| when.made_at < since) {
        return Err(overtaken(what));
    }
    Ok(())
}

/// Refuses a word to a machine that was on its way for too long, or made before what the machine was told last: it does not
/// take the place of that.
pub(crate) fn before_its_call(state: &State, machine: &str, when: When) -> Result<(), Refusal> {
    in_time(when)?;
    let live = state.live_call(machine).map(|(_, call)| call.made_at);
    let newer = words::overtaken::machine_told_something_newer();
    after(when, live, newer)
}

/// Refuses an answer to something that no longer stands as it was seen.
pub(crate) fn overtaken(what: impl Into<Text>) -> Refusal {
    Refusal::Overtaken(words::overtaken::look_again(&what.into()))
}

#[cfg(test)]
mod plan_tests;
#[cfg(test)]
mod tests;
