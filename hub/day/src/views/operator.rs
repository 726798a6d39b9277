//! The cab's screen: one call, or why there is none.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::said::set_up::DoubtReason;
use crate::site::MachineShape;
use crate::time::Time;
use crate::views::call::{CallView, Ending};

/// What one machine's screen shows.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[schema(as = OperatorView)]
pub struct Operator {
    /// The job.
    pub site: String,
    /// The day.
    pub day: String,
    /// The machine.
    pub machine: String,
    /// Its shape.
    pub shape: MachineShape,
    /// The names of the targets that it works on.
    pub works_on: Vec<String>,
    /// The direction of work, as the crew says it.
    pub direction: String,
    /// The device that is this machine's screen; any other page for this machine is retired.
    pub device: Option<String>,
    /// What fills the screen.
    pub screen: CabScreen,
    /// Since when the operator has been asking for a look.
    pub look_asked_at: Option<Time>,
}

/// What fills the cab's screen. Anything but a live call shows no number.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum CabScreen {
    /// Stand still, bucket down. Only a supervisor lifts it.
    Stop {
        /// Who pressed.
        by: String,
        /// Why, in the words of the one who pressed; may be empty.
        why: String,
        /// Since when.
        since: Time,
        /// Every machine, not this one alone.
        all: bool,
    },
    /// The laser is in doubt: the number is withdrawn.
    Pause {
        /// Which set-up.
        set_up: String,
        /// Why.
        why: DoubtReason,
        /// Since when.
        since: Time,
    },
    /// The target changed under a live call: press SEEN.
    NewTarget {
        /// Its id, for the SEEN press.
        target: String,
        /// Its name.
        name: String,
        /// Its revision.
        revision: u32,
        /// Since when.
        since: Time,
    },
    /// The live call.
    Call {
        /// The call.
        call: Box<CallView>,
    },
    /// The last call is too old or was withdrawn: its number is removed, not greyed.
    Old {
        /// The mark it was about.
        mark: Option<String>,
        /// Why.
        why: Ending,
        /// Since when.
        since: Time,
    },
    /// Nothing has been called.
    NoCall,
}
