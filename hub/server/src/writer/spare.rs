//! What is costly in the views waits for a moment to spare: nobody acts on it within a second.

use std::time::{Duration, Instant};

/// When nothing comes for so long, what is costly in the views is worked out, and not again within [`LATEST`].
const PAUSE: Duration = Duration::from_millis(2);
/// It waits no longer, whatever comes.
const LATEST: Duration = Duration::from_millis(250);

/// What is costly in the views and waits for a moment to spare.
#[derive(Default)]
pub(super) struct Spare {
    /// Since when it waits.
    pub(super) since: Option<Instant>,
    /// When it was last worked out.
    pub(super) done: Option<Instant>,
}

impl Spare {
    /// Not again so soon.
    pub(super) fn may_be_done(&self) -> bool {
        self.done.is_none_or(|done| done.elapsed() >= LATEST)
    }

    /// It has waited for as long as it may.
    pub(super) fn is_late(&self) -> bool {
        self.since.is_some_and(|since| since.elapsed() >= LATEST)
    }

    /// How long nothing must come until it is worked out.
    pub(super) fn pause(&self) -> Duration {
        let done = self.done.map_or(LATEST, |done| done.elapsed());
        LATEST.saturating_sub(done).max(PAUSE)
    }
}
