//! What keeps a day from being closed.

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::read_as;
use crate::state::SetUpState;
use crate::state::{SetUp, State};

/// Something that is missing before the day can be closed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum CloseMissing {
    /// Somebody may be within a keep-out. Nobody closes over that.
    PeopleIn {
        /// At which machine.
        machine: String,
        /// Who.
        people: Vec<String>,
    },
    /// The last readings on a set-up have no good benchmark shot behind them.
    ClosingCheck {
        /// Which set-up.
        set_up: String,
    },
    /// A mark that a laser's fault put in doubt was not shot again.
    ShootAgain {
        /// Which.
        mark: String,
    },
    /// A visitor has not said OFF SITE.
    VisitorOnSite {
        /// Who.
        person: String,
    },
}

impl CloseMissing {
    /// What is missing and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::PeopleIn { machine, people } => {
                words::missing::people_in(&people.join(", "), machine)
            }
            Self::ClosingCheck { set_up } => {
                words::missing::closing_check(&read_as::set_up(set_up))
            }
            Self::ShootAgain { mark } => words::missing::shoot_again(mark),
            Self::VisitorOnSite { person } => words::missing::visitor_on_site(person),
        }
    }

    /// Whether a supervisor may close over it, with words.
    pub fn may_be_overridden(&self) -> bool {
        !matches!(self, Self::PeopleIn { .. })
    }
}

/// A set-up that stands and whose readings since the last good check nothing proves.
pub(crate) fn unproven(set_up: &SetUp) -> bool {
    let doubted = matches!(set_up.state, SetUpState::InDoubt { .. });
    !set_up.closed && (doubted || set_up.readings_since_check > 0)
}

/// What is missing before the day can be closed; what nobody may close over stands first.
pub fn missing(state: &State) -> Vec<CloseMissing> {
    let mut found: Vec<CloseMissing> = state
        .way_in
        .gates()
        .filter_map(|(machine, gate)| {
            let people = gate.may_be_in();
            (!people.is_empty()).then(|| CloseMissing::PeopleIn {
                machine: machine.clone(),
                people,
            })
        })
        .collect();
    let checks = state.set_ups.iter().filter(|set_up| unproven(set_up));
    found.extend(checks.map(|set_up| CloseMissing::ClosingCheck {
        set_up: set_up.id.clone(),
    }));
    found.extend(shoot_again(state).map(|mark| CloseMissing::ShootAgain { mark }));
    let here = state.record.visitors.iter();
    let here = here.filter(|(_, visitor)| visitor.here.is_some());
    found.extend(here.map(|(person, _)| CloseMissing::VisitorOnSite {
        person: person.clone(),
    }));
    found
}

/// Marks in doubt, each once, in the order in which they came into doubt.
fn shoot_again(state: &State) -> impl Iterator<Item = String> {
    let mut marks: Vec<String> = Vec::new();
    for mark in state.suspects.iter().flat_map(|suspect| &suspect.open) {
        if !marks.contains(mark) {
            marks.push(mark.clone());
        }
    }
    marks.into_iter()
}
