//! The index follows the log: when the writer has a moment to spare, and anew beside it when it failed.

use std::time::{Duration, Instant};

use super::{Desk, Event};
use crate::store::StoreError;
use crate::store::day_file::Located;
use crate::store::index::Index;

/// What is kept and not yet in the index.
#[derive(Default)]
pub(super) struct Behind {
    pub(super) kept: Vec<Located>,
    pub(super) since: Option<Instant>,
    anew: Anew,
}

/// Whether the index is made anew.
#[derive(Default)]
enum Anew {
    /// It is not, or was not tried.
    #[default]
    No,
    /// At this moment.
    Making,
    /// It could not be, when.
    Failed(Instant),
}

/// Once it could not be made, as a rule for want of room, it is tried again after so long.
const TRIED_AGAIN: Duration = Duration::from_mins(1);

impl Desk {
    /// Takes what is kept into the index. Here the disk and the cores are busy, which no screen waits for any more.
    pub(super) fn catch_up(&mut self) {
        self.behind.since = None;
        let Some(last) = self.behind.kept.last() else {
            return;
        };
        match self.store.index(&self.behind.kept) {
            Ok(()) => {
                self.publish.indexed(last.entry.seq);
                self.behind.kept.clear();
            }
            // What is kept meanwhile waits for the new one.
            Err(StoreError::NoIndex) => {
                let due = match self.behind.anew {
                    Anew::No => true,
                    Anew::Making => false,
                    Anew::Failed(at) => at.elapsed() >= TRIED_AGAIN,
                };
                if due {
                    self.index_anew();
                }
            }
            Err(error) => {
                tracing::error!("{error}");
                self.index_anew();
            }
        }
    }

    fn index_anew(&mut self) {
        self.behind.anew = Anew::Making;
        let made = self.made.clone();
        self.store.index_anew(move |index| {
            // The writer is gone: the next start makes it.
            let _ = made.send(Event::Indexed(index));
        });
    }

    pub(super) fn indexed_anew(&mut self, made: Result<Index, StoreError>) {
        let kept = std::mem::take(&mut self.behind.kept);
        match made.and_then(|index| self.store.put_index(index, &kept)) {
            Ok(head) => {
                tracing::info!("The index was made anew.");
                self.publish.indexed(head);
                self.behind.anew = Anew::No;
            }
            // What is kept is in the log.
            Err(error) => {
                tracing::error!("{error}");
                self.behind.kept = kept;
                self.behind.anew = Anew::Failed(Instant::now());
            }
        }
    }
}
