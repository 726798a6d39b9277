//! The day as lanes over time: what each machine did, what each cab's screen showed, how each laser stood, where people were.

use std::collections::BTreeMap;

use contract::ToSchema;
use serde::Serialize;

use day::account::meter::Doing;
use day::asked::Role;
use day::state::SetUpState;
use day::state::{Screen, SetUp, State};
use day::time::Time;
use day::way_in::Stage;

/// One lane.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct Lane {
    /// Of what.
    pub of: LaneOf,
    /// One span after another; where there is none, nothing was known.
    pub spans: Vec<LaneSpan>,
}

/// Whose lane it is.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, ToSchema)]
#[serde(tag = "kind", content = "name", rename_all = "snake_case")]
pub enum LaneOf {
    /// A machine, by what it did.
    Machine(String),
    /// The screen in a machine's cab.
    Screen(String),
    /// A laser set-up.
    Laser(String),
    /// A person.
    Person(String),
}

/// A span of a lane.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct LaneSpan {
    /// From.
    pub from: Time,
    /// To.
    pub to: Time,
    /// What.
    pub what: LaneWhat,
}

/// What a lane shows.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum LaneWhat {
    /// A machine does something.
    Does {
        /// What.
        doing: Doing,
    },
    /// The cab's page shows, with a live link.
    Showing,
    /// It is hidden or locked.
    Hidden,
    /// Its link is gone: the number has hidden itself.
    Lost,
    /// A laser that no second benchmark has proven.
    Unproven,
    /// A laser in use.
    Proven,
    /// A laser in use whose check is due.
    CheckDue,
    /// A laser in doubt.
    InDoubt,
    /// A person of the crew who has joined, or a visitor who has said that they are on site.
    OnSite,
    /// A person who asks to come in to a keep-out.
    AsksIn {
        /// Whose.
        machine: String,
    },
    /// A person who is in a keep-out.
    In {
        /// Whose.
        machine: String,
        /// The operator had not answered.
        unconfirmed: bool,
        /// Without a link.
        lost: bool,
    },
}

/// Looks at the state after each entry and notes what has changed.
#[derive(Debug, Default)]
pub struct Watch {
    now: BTreeMap<LaneOf, (Time, LaneWhat)>,
    spans: BTreeMap<LaneOf, Vec<LaneSpan>>,
}

impl Watch {
    /// After an entry.
    pub fn look(&mut self, state: &State, at: Time) {
        let seen = seen(state);
        let gone: Vec<LaneOf> = self
            .now
            .iter()
            .filter(|(of, (_, what))| seen.get(of) != Some(what))
            .map(|(of, _)| of.clone())
            .collect();
        for of in gone {
            // What was over within the same moment was nobody's while.
            if let Some((from, what)) = self.now.remove(&of).filter(|(from, _)| *from < at) {
                self.close(of, from, at, what);
            }
        }
        for (of, what) in seen {
            self.now.entry(of).or_insert((at, what));
        }
    }

    fn close(&mut self, of: LaneOf, from: Time, to: Time, what: LaneWhat) {
        let spans = self.spans.entry(of).or_default();
        spans.push(LaneSpan { from, to, what });
    }

    /// Every lane, what still goes on up to a moment.
    pub fn lanes(mut self, until: Time) -> Vec<Lane> {
        for (of, (from, what)) in std::mem::take(&mut self.now) {
            self.close(of, from, until, what);
        }
        let lanes = self.spans.into_iter();
        lanes.map(|(of, spans)| Lane { of, spans }).collect()
    }
}

fn seen(state: &State) -> BTreeMap<LaneOf, LaneWhat> {
    let mut seen = BTreeMap::new();
    for (machine, meter) in &state.account.meters {
        let what = LaneWhat::Does { doing: meter.doing };
        seen.insert(LaneOf::Machine(machine.clone()), what);
    }
    for (machine, cab) in &state.cabs {
        let what = match cab.screen {
            _ if cab.device.is_none() => continue,
            Screen::None => continue,
            Screen::Showing => LaneWhat::Showing,
            Screen::Hidden(_) => LaneWhat::Hidden,
            Screen::Lost(_) => LaneWhat::Lost,
        };
        seen.insert(LaneOf::Screen(machine.clone()), what);
    }
    for set_up in state.set_ups.iter().filter(|set_up| !set_up.closed) {
        seen.insert(LaneOf::Laser(set_up.id.clone()), laser(set_up));
    }
    // A visitor's page may be open at home: a visitor is where they said, or where a supervisor saw them.
    let crew = state
        .devices
        .values()
        .filter(|device| !device.removed && device.roles.iter().any(|role| *role != Role::Visitor));
    let crew = crew.map(|device| &device.person);
    let visitors = state.record.visitors.iter();
    let here = visitors.filter(|(_, visitor)| visitor.here.is_some());
    for person in crew.chain(here.map(|(person, _)| person)) {
        seen.insert(LaneOf::Person(person.clone()), LaneWhat::OnSite);
    }
    for (machine, gate) in state.way_in.gates() {
        for (_, visit) in gate.visits() {
            let what = if visit.stage.may_be_in() {
                LaneWhat::In {
                    machine: machine.clone(),
                    unconfirmed: visit.stage == Stage::Unconfirmed,
                    lost: visit.lost.is_some(),
                }
            } else {
                LaneWhat::AsksIn {
                    machine: machine.clone(),
                }
            };
            seen.insert(LaneOf::Person(visit.person.clone()), what);
        }
    }
    seen
}

fn laser(set_up: &SetUp) -> LaneWhat {
    match set_up.state {
        SetUpState::Unproven => LaneWhat::Unproven,
        SetUpState::InDoubt { .. } => LaneWhat::InDoubt,
        SetUpState::Proven { .. } if set_up.due.is_some() => LaneWhat::CheckDue,
        SetUpState::Proven { .. } => LaneWhat::Proven,
    }
}
