//! Why a request came to nothing; a hub that can't keep its log still shows a stop.

use day::asked::{Asked, Command};
use day::refusal::Refusal;
use thiserror::Error;

use crate::publish::{Publish, UnkeptStop};

/// Why a request came to nothing.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum NotDone {
    /// The day refuses it.
    #[error("{0}")]
    Refused(#[from] Refusal),
    /// The log could not be kept, and a stop stands on the screens all the same.
    #[error(
        "STOP stands on every screen that has a link, but it is not in the log: the hub can't write any more. Use hand signals too; write down who stopped and when; the hub must be started again."
    )]
    StopNotKept,
    /// The log could not be kept.
    #[error(
        "Not kept: the hub can't write its log any more. Use hand signals; the hub must be started again."
    )]
    NotKept,
    /// Too much waits.
    #[error("The hub is busy. It will be sent again.")]
    Busy,
    /// The hub is closing.
    #[error("The hub is closing. It will be sent again when it is back.")]
    Closing,
}

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
