//! What keeps a day from being closed, and what stays open when it is.

use earthwork::face::PinState;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::said::near_miss;
use crate::said::patch::PatchStep;
use crate::state::{SetUp, State};
use crate::views::account::soil::{self, TestStanding};
use crate::views::ground::SetUpState;

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
    /// What is missing and what to do, in English.
    pub fn english(&self) -> String {
        match self {
            Self::PeopleIn { machine, people } => format!(
                "{} may be in at {machine}: everybody comes out first",
                people.join(", ")
            ),
            Self::ClosingCheck { set_up } => {
                format!("a closing shot on a benchmark with {set_up}")
            }
            Self::ShootAgain { mark } => format!("{mark} was to be shot again"),
            Self::VisitorOnSite { person } => format!("{person} has not said OFF SITE"),
        }
    }

    /// The same in Spanish.
    pub fn spanish(&self) -> String {
        match self {
            Self::PeopleIn { machine, people } => format!(
                "{} puede estar adentro en {machine}: primero salen todos",
                people.join(", ")
            ),
            Self::ClosingCheck { set_up } => {
                format!("una lectura de cierre en un banco de nivel con {set_up}")
            }
            Self::ShootAgain { mark } => format!("había que leer {mark} otra vez"),
            Self::VisitorOnSite { person } => format!("{person} no ha dicho FUERA DE LA OBRA"),
        }
    }

    /// Whether a supervisor may close over it, with words.
    pub fn may_be_overridden(&self) -> bool {
        !matches!(self, Self::PeopleIn { .. })
    }
}

/// Something that the day leaves to be done.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum LeftOpen {
    /// A query without an answer.
    Query {
        /// Which.
        query: String,
    },
    /// A test that failed or is void.
    Retest {
        /// The mark.
        mark: String,
        /// It passed before; else it failed.
        void: bool,
    },
    /// A patch that is not done.
    Patch {
        /// Its name.
        patch: String,
        /// The mark in it.
        mark: String,
    },
    /// An undercut that nobody has confirmed.
    Undercut {
        /// The mark.
        mark: String,
    },
    /// A face that is left, or whose pins move.
    FaceWatch {
        /// Which.
        zone: String,
    },
    /// A near miss that no supervisor has closed.
    NearMiss {
        /// Which.
        near_miss: String,
    },
    /// A machine that stands stopped.
    Stopped {
        /// Which.
        machine: String,
    },
    /// A mark in doubt since a laser's fault.
    ShootAgain {
        /// Which.
        mark: String,
    },
    /// A set-up whose last readings are not proven.
    Unproven {
        /// Which.
        set_up: String,
    },
    /// An inspection that was asked for and not made.
    Inspection {
        /// What was asked for.
        what: String,
    },
    /// A photo that was promised and has not come.
    PhotoOwed {
        /// Who took it.
        person: String,
    },
}

impl LeftOpen {
    /// What is to be done, in English.
    pub fn english(&self) -> String {
        match self {
            Self::Query { query } => query.clone(),
            Self::Retest { mark, void: true } => format!("test of {mark} is void"),
            Self::Retest { mark, .. } => format!("test of {mark} failed"),
            Self::Patch { patch, mark } => format!("patch {patch} at {mark}"),
            Self::Undercut { mark } => format!("undercut at {mark}"),
            Self::FaceWatch { zone } => format!("watch face {zone}"),
            Self::NearMiss { near_miss } => near_miss.clone(),
            Self::Stopped { machine } => format!("{machine} is stopped"),
            Self::ShootAgain { mark } => format!("shoot {mark} again"),
            Self::Unproven { set_up } => format!("{set_up} is not proven"),
            Self::Inspection { what } => format!("inspection: {what}"),
            Self::PhotoOwed { person } => format!("photo on {person}'s phone"),
        }
    }

    /// The same in Spanish.
    pub fn spanish(&self) -> String {
        match self {
            Self::Query { query } => query.clone(),
            Self::Retest { mark, void: true } => format!("la prueba de {mark} no vale"),
            Self::Retest { mark, .. } => format!("la prueba de {mark} no pasó"),
            Self::Patch { patch, mark } => format!("parche {patch} en {mark}"),
            Self::Undercut { mark } => format!("sobreexcavación en {mark}"),
            Self::FaceWatch { zone } => format!("vigilar el talud {zone}"),
            Self::NearMiss { near_miss } => near_miss.clone(),
            Self::Stopped { machine } => format!("{machine} está parada"),
            Self::ShootAgain { mark } => format!("leer {mark} otra vez"),
            Self::Unproven { set_up } => format!("{set_up} no está comprobada"),
            Self::Inspection { what } => format!("inspección: {what}"),
            Self::PhotoOwed { person } => format!("foto en el teléfono de {person}"),
        }
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

/// What is open now.
pub fn open(state: &State) -> Vec<LeftOpen> {
    let record = &state.record;
    let queries = record.queries.iter();
    let queries = queries.filter(|(_, query)| query.answers.is_empty());
    let mut found: Vec<LeftOpen> = queries
        .map(|(query, _)| LeftOpen::Query {
            query: query.clone(),
        })
        .collect();
    for card in soil::tests(state) {
        let void = card.standing == TestStanding::Void;
        if !card.replaced && (void || card.standing == TestStanding::Fails) {
            let mark = card.mark;
            found.push(LeftOpen::Retest { mark, void });
        }
    }
    for (name, patch) in &state.account.patches {
        if patch.step != PatchStep::Done {
            found.push(LeftOpen::Patch {
                patch: name.clone(),
                mark: patch.needed.mark.clone(),
            });
        }
    }
    let undercuts = state.account.undercuts.values();
    found.extend(undercuts.map(|(_, undercut)| LeftOpen::Undercut {
        mark: undercut.mark.clone(),
    }));
    for (zone, face) in &state.cuts.faces {
        let moves = face.pins.values().any(|pin| pin.state != PinState::Still);
        if face.alarm.is_some() || moves {
            found.push(LeftOpen::FaceWatch { zone: zone.clone() });
        }
    }
    let near_misses = state.near_misses.open.iter();
    found.extend(near_misses.map(|one| LeftOpen::NearMiss {
        near_miss: near_miss::name(one.then.number),
    }));
    let stopped = state.cabs.iter().filter(|(_, cab)| cab.stop.is_some());
    found.extend(stopped.map(|(machine, _)| LeftOpen::Stopped {
        machine: machine.clone(),
    }));
    found.extend(shoot_again(state).map(|mark| LeftOpen::ShootAgain { mark }));
    let set_ups = state.set_ups.iter().filter(|set_up| unproven(set_up));
    found.extend(set_ups.map(|set_up| LeftOpen::Unproven {
        set_up: set_up.id.clone(),
    }));
    found.extend(of_papers(state));
    found.extend(still_carried(state));
    found
}

/// Inspections that wait and photos that have not come.
fn of_papers(state: &State) -> Vec<LeftOpen> {
    let record = &state.record;
    let waits = record.inspections.values();
    let waits = waits.filter(|inspection| inspection.made.is_none());
    let asked = waits.filter_map(|inspection| inspection.asked.as_ref());
    let asked = asked.map(|asked| LeftOpen::Inspection {
        what: asked.said.what.clone(),
    });
    let owed = record.photos.values().filter(|photo| photo.is_owed());
    let owed = owed.map(|photo| LeftOpen::PhotoOwed {
        person: photo.promised.by.clone(),
    });
    asked.chain(owed).collect()
}

/// Of what the day before left: only marks and set-ups are not seen from the state itself. A mark that was read is done with.
fn still_carried(state: &State) -> Vec<LeftOpen> {
    let stands = |item: &&LeftOpen| match item {
        LeftOpen::ShootAgain { mark } => state.last_reading(mark).is_none(),
        _ => false,
    };
    state
        .record
        .carried
        .iter()
        .filter(stands)
        .cloned()
        .collect()
}
