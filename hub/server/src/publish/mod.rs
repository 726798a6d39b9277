//! What is current, for everyone who looks: the newest view of each screen, who is known, how far the log has come.
//!
//! Each is one value in a `watch`: a slow phone jumps to the newest and nothing queues behind it.

mod newest;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use bytestring::ByteString;
use contract::ToSchema;
use day::asked::Role;
use day::state::State;
use day::time::Time;
use serde::Serialize;
use show::views;
use show::views::parts::{Alike, Due, Part};
use tokio::sync::watch;

pub use newest::Form;
use newest::Newest;
pub use show::board::{Board, Gone, Phone};

/// A screen's subject.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Topic {
    /// The cab of one machine.
    Operator(String),
    /// The ground person's page.
    Ground,
    /// The supervisor's page.
    Supervisor,
    /// What stays put: marks, targets, benchmarks.
    Sheet,
    /// The page of one visitor, by name.
    Visitor(String),
}

impl Topic {
    fn word(&self) -> &'static str {
        match self {
            Self::Operator(_) => "operator",
            Self::Ground => "ground",
            Self::Supervisor => "supervisor",
            Self::Sheet => "sheet",
            Self::Visitor(_) => "visitor",
        }
    }
}

/// How far the log has come, and whether it still goes on.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Pulse {
    /// The last entry that is kept.
    pub head: u64,
    /// Its hash.
    pub hash: String,
    /// Why nothing is kept any more.
    pub halted: Option<String>,
    /// A stop that was pressed after that: it is on the screens and not in the log.
    pub stop: Option<UnkeptStop>,
}

/// A stop that a hub took that can't keep its log: it stands on the screens until the hub is started again, and then comes anew
/// from the phone that pressed it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct UnkeptStop {
    /// Who pressed.
    pub by: String,
    /// Why; may be empty.
    pub why: String,
    /// Since when.
    pub since: Time,
    /// The machine that it is for; every one when none is named.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
}

/// What is current; clones share it.
#[derive(Clone, Debug)]
pub struct Publish(Arc<Shared>);

#[derive(Debug)]
struct Shared {
    board: watch::Sender<Arc<Board>>,
    pulse: watch::Sender<Pulse>,
    halts: watch::Sender<u32>,
    indexed: watch::Sender<u64>,
    closing: watch::Sender<bool>,
    views: Mutex<BTreeMap<Topic, Channel>>,
}

/// One topic: its newest parts, and how often they changed.
#[derive(Debug, Default)]
struct Channel {
    newest: Newest,
    rounds: watch::Sender<u64>,
    /// Entries went by while nobody watched: what waits for a moment to spare is as it was before them.
    asleep: bool,
}

impl Default for Publish {
    fn default() -> Self {
        Self(Arc::new(Shared {
            board: watch::Sender::default(),
            pulse: watch::Sender::default(),
            halts: watch::Sender::default(),
            indexed: watch::Sender::default(),
            closing: watch::Sender::default(),
            views: Mutex::default(),
        }))
    }
}

impl Publish {
    /// Says who is known, when that has changed.
    pub fn board(&self, state: &State) {
        let board = Board::of(state);
        self.0.board.send_if_modified(|known| {
            let changed = **known != board;
            if changed {
                *known = Arc::new(board);
            }
            changed
        });
    }

    /// Works out what is due of each view, and says so to whoever watches when it has changed. What waits for a moment to spare is
    /// worked out where somebody watches; the rest always, so that a hub that can't keep its log any more has what it last kept.
    pub fn views(&self, state: &State, due: &Due) {
        let alike = &Alike::default();
        // The cabs first: somebody digs by them.
        for machine in state.cabs.keys() {
            self.view(Topic::Operator(machine.clone()), state.seq, due, |due| {
                views::operator::parts(state, machine, due, alike)
            });
        }
        self.view(Topic::Ground, state.seq, due, |due| {
            views::ground::parts(state, due, alike)
        });
        self.view(Topic::Supervisor, state.seq, due, |due| {
            views::supervisor::parts(state, due, alike)
        });
        self.view(Topic::Sheet, state.seq, due, |due| {
            views::sheet::parts(state, due, alike)
        });
        let visitors = state.devices.values();
        let visitors =
            visitors.filter(|device| !device.removed && device.roles.contains(&Role::Visitor));
        let people: BTreeSet<&String> = visitors.map(|device| &device.person).collect();
        for person in people {
            self.view(Topic::Visitor(person.clone()), state.seq, due, |due| {
                views::visitor::parts(state, person, due, alike)
            });
        }
    }

    /// Only the writer comes here. What is costly is worked out between the locks: no screen waits for another one's view.
    fn view(
        &self,
        topic: Topic,
        seq: u64,
        due: &Due,
        parts: impl Fn(&Due) -> Option<Vec<(&'static str, Part)>>,
    ) {
        let (watched, due) = {
            let mut channels = self.channels();
            let channel = channels.entry(topic.clone()).or_default();
            let watched = channel.rounds.receiver_count() > 0;
            let spare = watched && (due.spare || channel.asleep);
            let first = channel.newest.round() == 0;
            let due = if first {
                Due::ALL
            } else {
                due.with_spare(spare)
            };
            (watched, due)
        };
        if due == Due::NOTHING {
            return;
        }
        let Some(parts) = parts(&due) else { return };
        let mut channels = self.channels();
        let channel = channels.entry(topic).or_default();
        let changed = channel.newest.take(seq, due.spare, parts);
        // Whoever woke it has nothing yet, also when nothing has changed since it fell asleep.
        let woken = due.spare && channel.asleep;
        channel.asleep = !due.spare && (channel.asleep || !watched);
        if woken || changed {
            channel.rounds.send_replace(channel.newest.round());
        }
    }

    fn channels(&self) -> MutexGuard<'_, BTreeMap<Topic, Channel>> {
        self.0.views.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// How often the view of a topic has changed, from now on. Whoever begins to watch asks the writer to wake it
    /// ([`crate::writer::Writer::wake`]).
    pub fn watch(&self, topic: Topic) -> watch::Receiver<u64> {
        self.channels().entry(topic).or_default().rounds.subscribe()
    }

    /// What of a topic is newer than the round that a screen has, in one message, and the round that it brings the screen to;
    /// none while there is nothing newer, or while it wakes.
    pub fn newer(&self, topic: &Topic, than: u64, form: Form) -> Option<(u64, ByteString)> {
        // A hub that can't keep its log wakes nothing any more: what it last kept is better than an empty page.
        let halted = self.0.pulse.borrow().halted.is_some();
        let mut channels = self.channels();
        let channel = channels.get_mut(topic)?;
        if channel.asleep && !halted {
            return None;
        }
        channel.newest.newer(topic.word(), than, form)
    }

    /// Says how far the log has come.
    pub fn head(&self, seq: u64, hash: &str) {
        self.0.pulse.send_modify(|pulse| {
            pulse.head = seq;
            hash.clone_into(&mut pulse.hash);
        });
    }

    /// Says how far the index has come.
    pub fn indexed(&self, seq: u64) {
        self.0.indexed.send_replace(seq);
    }

    /// Says that nothing is kept any more, and why.
    pub fn halt(&self, why: &str) {
        self.0.pulse.send_modify(|pulse| {
            pulse.halted.get_or_insert_with(|| why.to_owned());
        });
        self.0.halts.send_modify(|halts| *halts += 1);
    }

    /// Shows a stop that could not be kept. One for every machine is not narrowed by one for a single machine.
    pub fn unkept_stop(&self, stop: UnkeptStop) {
        self.0.pulse.send_modify(|pulse| {
            let all = pulse.stop.as_ref().is_some_and(|one| one.machine.is_none());
            if !(all && stop.machine.is_some()) {
                pulse.stop = Some(stop);
            }
        });
        self.0.halts.send_modify(|halts| *halts += 1);
    }

    /// Says that the hub is closing.
    pub fn close(&self) {
        self.0.closing.send_replace(true);
    }

    /// Who is known now.
    pub fn known(&self) -> Arc<Board> {
        self.0.board.borrow().clone()
    }

    /// Who is known, from now on.
    pub fn watch_board(&self) -> watch::Receiver<Arc<Board>> {
        self.0.board.subscribe()
    }

    /// How far the log has come.
    pub fn pulse(&self) -> Pulse {
        self.0.pulse.borrow().clone()
    }

    /// Each time that the log ends for good, or a stop stands that it can't take: what a screen hears at once.
    pub fn watch_halts(&self) -> watch::Receiver<u32> {
        self.0.halts.subscribe()
    }

    /// How far the index has come, from now on.
    pub fn watch_indexed(&self) -> watch::Receiver<u64> {
        self.0.indexed.subscribe()
    }

    /// Whether the hub is closing, from now on.
    pub fn watch_closing(&self) -> watch::Receiver<bool> {
        self.0.closing.subscribe()
    }
}
