//! Words that free, return or place something are about what their speaker saw. Such a word may wait in a phone without a link;
//! when it comes, it counts only if what it answers still stands and if it is not too old to be about now.
//!
//! | word | what it answers |
//! |---|---|
//! | LIFT | the newest press of the stop that the page showed |
//! | an inspection, and its words that bring people back | the alarm that the page showed; nothing seen or said at the face since |
//! | I AM AWAY | the alarm that the cab showed |
//! | a place, MOVED | nothing newer said of that machine's place |
//! | SPOTTER, and its end | this moment: who watched an hour ago does not watch now |
//! | PAINTED AGAIN | nobody has said since that it is gone |
//! | a mark laid again | nobody has said since that it is gone |
//! | a good check of a laser in doubt | the laser as it stands since the doubt |

use crate::refusal::Refusal;
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

/// Refuses a word that was said before what stands now; `what` says what that is, in English and in Spanish.
pub(crate) fn after(
    when: When,
    since: Option<Time>,
    (english, spanish): (&str, &str),
) -> Result<(), Refusal> {
    if since.is_some_and(|since| when.made_at < since) {
        return Err(overtaken(english, spanish));
    }
    Ok(())
}

/// Refuses an answer to something that no longer stands as it was seen.
pub(crate) fn overtaken(english: &str, spanish: &str) -> Refusal {
    Refusal::Overtaken {
        english: format!("{english} Look, and say it again if it still holds."),
        spanish: format!("{spanish} Mire, y dígalo otra vez si sigue siendo así."),
    }
}

#[cfg(test)]
mod tests;
