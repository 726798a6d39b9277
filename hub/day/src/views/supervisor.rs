//! The supervisor's screen: cards of machines and lasers, exceptions oldest first, people, what the hub knows of itself.

use earthwork::length::Length;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::asked::Role;
use crate::said::site::SiteDifference;
use crate::time::Time;
use crate::views::ground::{MachineCard, MarkCard, SetUpCard};

/// What the supervisor's page shows.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[schema(as = SupervisorView)]
pub struct Supervisor {
    /// The job.
    pub site: String,
    /// The day.
    pub day: String,
    /// One card for each machine.
    pub machines: Vec<MachineCard>,
    /// Every set-up of the day that is not closed.
    pub set_ups: Vec<SetUpCard>,
    /// What needs somebody, oldest first.
    pub exceptions: Vec<Exception>,
    /// Who has joined.
    pub people: Vec<PersonCard>,
    /// The last reading on each mark that has one.
    pub marks: Vec<MarkCard>,
    /// A changed site file that waits for confirmation.
    pub site_change: Option<SiteChangeCard>,
    /// How often the codes of this day were renewed.
    pub codes_generation: u32,
    /// Aims in force that are not zero.
    pub aims: Vec<AimCard>,
}

/// One thing that needs somebody, with one action.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Exception {
    /// Since when.
    pub since: Time,
    /// What.
    pub what: ExceptionKind,
}

/// What needs somebody.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ExceptionKind {
    /// A machine is stopped: lift it when the reason is gone.
    Stopped {
        /// Which.
        machine: String,
        /// Who pressed.
        by: String,
        /// Why.
        why: String,
    },
    /// A set-up is in doubt: shoot two benchmarks.
    LaserInDoubt {
        /// Which.
        set_up: String,
    },
    /// Two shots were too close to call on the low side: rule.
    NeedsRuling {
        /// Which mark.
        mark: String,
        /// The mean difference.
        dev: Length,
    },
    /// The operator can't: see to it.
    Cant {
        /// Which machine.
        machine: String,
        /// Why.
        why: crate::said::call::CantReason,
        /// The mark of the call, if any.
        mark: Option<String>,
    },
    /// A cab's page is not showing: hand signals.
    ScreenNotShowing {
        /// Which machine.
        machine: String,
    },
    /// A changed site file waits.
    SiteChanged,
    /// A revised target has not been seen in the cab.
    TargetNotSeen {
        /// Which machine.
        machine: String,
        /// Which target.
        target: String,
    },
    /// An operator asks for a look.
    LookAsked {
        /// Which machine.
        machine: String,
    },
}

/// Someone who has joined.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PersonCard {
    /// The device.
    pub device: String,
    /// Name or initials.
    pub person: String,
    /// Roles.
    pub roles: Vec<Role>,
    /// The machine.
    pub machine: Option<String>,
    /// When they joined.
    pub since: Time,
}

/// A changed site file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SiteChangeCard {
    /// The digest to confirm.
    pub digest: String,
    /// What differs, in words.
    pub differences: Vec<SiteDifference>,
    /// When it was found.
    pub since: Time,
}

/// An aim in force.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct AimCard {
    /// The mark or target.
    pub on: String,
    /// The aim.
    pub aim: Length,
}
