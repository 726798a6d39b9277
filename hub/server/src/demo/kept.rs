//! Where the log takes the story up again.

use std::collections::{BTreeMap, BTreeSet};

use day::entry::Body;
use day::older;
use day::said::receipt::ScreenNotice;
use day::time::Time;

/// What an earlier start has left in the log.
#[derive(Default)]
pub(super) struct Kept {
    pub(super) keys: BTreeSet<String>,
    /// Calls by the key of the row that sent them.
    pub(super) calls: BTreeMap<String, u64>,
    pub(super) last_at: Option<Time>,
    /// Machines whose screen was noticed last as lost.
    pub(super) lost: BTreeSet<String>,
    /// People in a keep-out whose link was noticed last as lost.
    pub(super) unlinked: BTreeSet<String>,
    /// The newest press of STOP.
    pub(super) pressed: u64,
    /// The newest alarm at each face.
    pub(super) alarms: BTreeMap<String, u64>,
    /// The phone that was let in last as each machine's screen.
    pub(super) cabs: BTreeMap<String, String>,
}

impl Kept {
    pub(super) fn read(log: &str) -> Self {
        let mut kept = Self::default();
        let entries = log.lines().filter_map(|line| older::read(line).ok());
        for entry in entries {
            match &entry.body {
                Body::CallSent(_) => {
                    kept.calls.insert(entry.key.clone(), entry.seq);
                }
                Body::Joined(joined) => {
                    if let Some(machine) = &joined.machine {
                        kept.cabs.insert(machine.clone(), joined.device.clone());
                    }
                }
                Body::PhoneRemoved(removed) => {
                    kept.cabs.retain(|_, device| *device != removed.device);
                }
                Body::ScreenNoticed(noticed) if noticed.screen == ScreenNotice::Lost => {
                    kept.lost.insert(noticed.machine.clone());
                }
                Body::Stopped(_) => kept.pressed = entry.seq,
                Body::FaceAlarmed(alarmed) => {
                    kept.alarms.insert(alarmed.zone.clone(), entry.seq);
                }
                Body::LinkNoticed(noticed) if noticed.lost => {
                    kept.unlinked.insert(noticed.person.clone());
                }
                Body::LinkNoticed(noticed) => {
                    kept.unlinked.remove(&noticed.person);
                }
                Body::ScreenNoticed(noticed) => {
                    kept.lost.remove(&noticed.machine);
                }
                _ => {}
            }
            kept.keys.insert(entry.key);
            kept.last_at = Some(entry.at);
        }
        kept
    }
}
