//! Why a request came to nothing; a hub that can't keep its log still shows a stop.

use day::asked::{Asked, Command};
use day::refusal::Refusal;
use words::Text;

use crate::publish::{Publish, UnkeptStop};

/// Why a request came to nothing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotDone {
    /// The day refuses it.
    Refused(Refusal),
    /// The log could not be kept, and a stop stands on the screens all the same.
    StopNotKept,
    /// The log could not be kept.
    NotKept,
    /// Too much waits.
    Busy,
    /// The hub is closing.
    Closing,
}

impl NotDone {
    /// Why, and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::Refused(refusal) => refusal.text(),
            Self::StopNotKept => words::problem::stop_not_kept().into(),
            Self::NotKept => words::problem::not_kept().into(),
            Self::Busy => words::problem::busy().into(),
            Self::Closing => words::problem::closing().into(),
        }
    }
}

words::error!(NotDone; Refused(Refusal));

/// A hub that can't keep its log still shows a stop.
pub(super) fn not_kept(publish: &Publish, asked: &Asked) -> NotDone {
    let (why, machine) = match &asked.command {
        Command::StopAll(stop) => (stop.why.as_str(), None),
        Command::SayCant(cant) if cant.why.stops() => ("", asked.by.machine.clone()),
        _ => return NotDone::NotKept,
    };
    publish.unkept_stop(UnkeptStop {
        by: asked.by.person.clone(),
        why: why.to_owned(),
        since: asked.made_at,
        machine,
    });
    NotDone::StopNotKept
}

/// Says on every screen that nothing is kept any more, should the writer's thread be lost.
pub(super) struct HaltIfLost(pub(super) Publish);

impl Drop for HaltIfLost {
    fn drop(&mut self) {
        self.0.halt("the hub met an error of its own");
    }
}
