//! The way into a machine's keep-out and out again, as a state machine of its own: it knows nothing of the rest of the day.
//!
//! A visit is one ask and one stay of one person; its name is made on the person's phone, so that what is said about it late,
//! twice or out of order can never be taken for another visit. Somebody may be in from the moment that the operator has
//! answered until that person, or a named witness, has said OUT: until then nothing releases the machine.
//!
//! | to learn | read |
//! |---|---|
//! | what can happen | [`step`] |
//! | what one machine's gate is and how it changes | [`gate`] |
//! | which press makes what happen, and which is refused | [`rules`], and who is in and out: `inside` |
//! | that no loss, repeat or order of messages ever lets a machine go while somebody may be in | `explore` |
//! | the state diagram | `hub/WAY-IN.md`, compared with what was explored |

#[cfg(test)]
mod explore;
pub mod gate;
mod inside;
pub mod people;
pub mod rules;
pub mod step;

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::time::Time;
pub use gate::{Gate, Phase, Stage, Visit};
pub use step::Step;

/// The gates of all machines. A machine that nobody has asked about has none.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(transparent)]
pub struct WayIn {
    gates: BTreeMap<String, Gate>,
}

impl WayIn {
    /// The gate of a machine.
    pub fn gate(&self, machine: &str) -> Gate {
        self.gates.get(machine).cloned().unwrap_or_default()
    }

    /// All gates that stand, by machine.
    pub fn gates(&self) -> impl Iterator<Item = (&String, &Gate)> {
        self.gates.iter()
    }

    /// Takes what happened.
    pub fn take(&mut self, at: Time, step: &Step) {
        if let Step::LinkNoticed(noticed) = step {
            for gate in self.gates.values_mut() {
                gate.link(at, &noticed.device, noticed.lost);
            }
            return;
        }
        let Some(machine) = step.machine() else {
            return;
        };
        self.gates
            .entry(machine.to_owned())
            .or_default()
            .take(at, step);
        self.gates.retain(|_, gate| !gate.is_idle());
    }

    /// A phone came in again under the same name: its visits are those of the device that it is now.
    pub fn came_again(&mut self, before: &str, now: &str, person: &str) {
        for gate in self.gates.values_mut() {
            gate.came_again(before, now, person);
        }
    }

    /// A new day: yesterday's phones open nothing, whoever was in is still in.
    pub fn new_day(&mut self, at: Time) {
        for gate in self.gates.values_mut() {
            gate.new_day(at);
        }
        self.gates.retain(|_, gate| !gate.is_idle());
    }
}
