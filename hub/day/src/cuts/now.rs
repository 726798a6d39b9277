//! What is known of the cuts and of what is buried, now: a fold over what was said.

use std::collections::{BTreeMap, BTreeSet};

use contract::ToSchema;
use earthwork::face::{Evidence, Lowered, PinState, SoilClass, Taped};
use earthwork::length::Length;
use serde::{Deserialize, Serialize};

use super::daylight::DaylightFound;
use super::depth::Told;
use super::held::HeldBy;
use crate::said::face_alarm::AlarmWhy;
use crate::said::face_design::DesignPiece;
use crate::said::face_seen::AtFace;
use crate::said::pothole::Pothole;
use crate::said::pump::WaterNow;
use crate::said::struck::StruckNow;
use crate::said::ticket::Response;
use crate::time::Time;

/// Everything that is known.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct CutsNow {
    /// Faces by name.
    pub faces: BTreeMap<String, FaceNow>,
    /// Tickets that were looked at today.
    pub tickets: BTreeMap<String, TicketNow>,
    /// Buried lines by name.
    pub utilities: BTreeMap<String, UtilityNow>,
    /// What a supervisor has let go on today, each with a reason in the log.
    pub allowed: Vec<HeldBy>,
    /// Depth warnings that were given today.
    pub told: BTreeSet<Told>,
    /// Lines that were struck, until a supervisor says on whose word work goes on.
    pub struck: Vec<StruckNow>,
    /// Machines whose operators have yet to leave a face, the alarms in their order.
    pub must_leave: BTreeMap<String, Vec<MustLeave>>,
    /// Water that stands, in the order of its newest words.
    pub water: Vec<WaterNow>,
    /// The marks whose ground stood in water, and when it was last pumped out.
    pub pumped: BTreeMap<String, Time>,
}

/// A machine whose operator has yet to leave a face.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct MustLeave {
    /// The face.
    pub zone: String,
    /// Since when.
    pub since: Time,
    /// The entry of the alarm that the cab shows: what I AM AWAY names.
    pub alarm: u64,
}

/// What is known of a face.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct FaceNow {
    /// The class that the competent person picked.
    pub picked: Option<SoilClass>,
    /// The class that counts: never firmer than what was picked and found.
    pub counted: Option<SoilClass>,
    /// What lowered it.
    pub lowered_by: Vec<Lowered>,
    /// It was typed anew since the inspection.
    pub retyped: bool,
    /// What was found.
    pub evidence: Evidence,
    /// The newest inspection of this day.
    pub inspected: Option<Signed>,
    /// Since the inspection something asks for another.
    pub due: Option<InspectionDue>,
    /// Since when somebody was called to work in its strip while an inspection was due.
    pub worked_at: Option<Time>,
    /// The engineer's own design; by the tables when none.
    pub design: Vec<DesignPiece>,
    /// Tapes between pins.
    pub tapes: BTreeMap<String, Vec<Taped>>,
    /// What the newest tape of each pair says.
    pub pins: BTreeMap<String, PinNow>,
    /// Leave the face.
    pub alarm: Option<Alarm>,
    /// What was seen there, oldest first.
    pub seen: Vec<SeenNow>,
    /// The newest word that asks for an inspection made after it.
    pub word: Option<FaceWord>,
    /// Where it comes to daylight.
    pub daylight: Option<DaylightFound>,
    /// Since when that is known.
    pub daylight_at: Option<Time>,
}

/// A word that asks for an inspection made after it: something seen at the face, rain, water pumped out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct FaceWord {
    /// Its entry: what an inspection names as known to whoever made it.
    pub entry: u64,
    /// When the hub took it.
    pub at: Time,
}

/// Who signed, when.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Signed {
    /// When.
    pub at: Time,
    /// Who.
    pub by: String,
}

/// Why an inspection is due.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum InspectionWhy {
    /// None yet on this day.
    NewDay,
    /// Something was seen since.
    Seen,
    /// It rains, or the rain stopped.
    Rain,
    /// Water was pumped out.
    Water,
    /// It was left.
    Left,
}

/// An inspection is due.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct InspectionDue {
    /// Why.
    pub why: InspectionWhy,
    /// Since when.
    pub since: Time,
}

/// A pair of pins.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PinNow {
    /// What to do.
    pub state: PinState,
    /// How far apart.
    pub apart: Length,
    /// Opened since the tape before.
    pub opened: Length,
    /// Opened since the first.
    pub in_all: Length,
    /// Feet an hour.
    pub rate_ft_per_hour: f64,
    /// When it was taped.
    pub at: Time,
}

/// A face that was left.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Alarm {
    /// Why.
    pub why: AlarmWhy,
    /// Since when.
    pub since: Time,
    /// Who said what led to it.
    pub by: String,
    /// The entry of the newest alarm: what an inspection names that brings people back.
    #[serde(default)]
    pub alarm: u64,
}

/// Something seen at a face.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SeenNow {
    /// What.
    pub what: AtFace,
    /// When.
    pub at: Time,
    /// By whom.
    pub by: String,
}

/// A ticket that was looked at.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct TicketNow {
    /// Who looked, when.
    pub checked: Signed,
    /// Who answered what.
    pub responses: Vec<Response>,
}

/// What is known of a buried line.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct UtilityNow {
    /// Where it was bared by hand.
    pub potholes: Vec<Pothole>,
    /// Since when its paint is gone.
    pub paint_gone: Option<Time>,
}

impl FaceNow {
    /// The class that counts: C until a competent person has picked one.
    pub fn class(&self) -> SoilClass {
        self.counted.unwrap_or(SoilClass::C)
    }

    /// Whether an inspection of today stands.
    pub fn inspection_stands(&self) -> bool {
        self.inspected.is_some() && self.due.is_none()
    }
}

impl CutsNow {
    /// What is known of a face.
    pub fn face(&self, id: &str) -> Option<&FaceNow> {
        self.faces.get(id)
    }

    pub(crate) fn face_mut(&mut self, id: &str) -> &mut FaceNow {
        self.faces.entry(id.to_owned()).or_default()
    }

    /// A face owes an inspection made after that entry; what was due before stays due for its own reason.
    pub(crate) fn owes(&mut self, zone: &str, why: InspectionWhy, word: FaceWord) {
        let face = self.face_mut(zone);
        face.word = Some(word);
        face.due.get_or_insert(InspectionDue {
            why,
            since: word.at,
        });
    }

    /// A machine has yet to leave a face.
    pub(crate) fn leaves(&mut self, machine: &str, zone: &str, since: Time, alarm: u64) {
        let owed = self.must_leave.entry(machine.to_owned()).or_default();
        owed.retain(|must| must.zone != zone);
        owed.push(MustLeave {
            zone: zone.to_owned(),
            since,
            alarm,
        });
    }

    /// The faces that a machine has yet to leave.
    pub fn owed_by(&self, machine: &str) -> &[MustLeave] {
        self.must_leave.get(machine).map_or(&[], Vec::as_slice)
    }

    /// These have left a face: one machine, or all of them when none is named.
    pub(crate) fn has_left(&mut self, machine: Option<&str>, zone: &str) {
        for (id, owed) in &mut self.must_leave {
            if machine.is_none_or(|only| only == id) {
                owed.retain(|must| must.zone != zone);
            }
        }
        self.must_leave.retain(|_, owed| !owed.is_empty());
    }

    /// A new day: cracks, classes, designs and alarms stay; inspections, tickets and permissions are asked for again. Nobody
    /// knows where a machine stands on the new day, so that each of them has yet to leave each face that is still left.
    pub fn new_day(&mut self, machines: &[String]) {
        self.tickets.clear();
        self.allowed.clear();
        self.told.clear();
        self.must_leave.clear();
        let left: Vec<(String, Alarm)> = self
            .faces
            .iter()
            .filter_map(|(zone, face)| Some((zone.clone(), face.alarm.clone()?)))
            .collect();
        for (zone, alarm) in &left {
            for machine in machines {
                self.leaves(machine, zone, alarm.since, alarm.alarm);
            }
        }
        for face in self.faces.values_mut() {
            face.inspected = None;
            face.due = None;
            face.worked_at = None;
            face.seen.clear();
        }
    }
}
