//! LEAVE THE FACE: nobody works under it before the competent person says so. Each operator near presses when away.

use earthwork::point::Point;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::asked::By;
use crate::cuts::now::{Alarm, InspectionDue, InspectionWhy, MustLeave};
use crate::cuts::plan::FaceZone;
use crate::cuts::strip;
use crate::entry::{Body, Entry};
use crate::refusal::Refusal;
use crate::said::call;
use crate::site::Site;
use crate::state::State;
use crate::views::call::Ending;

/// Why a face is left.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum AlarmWhy {
    /// A crack opens too fast.
    Pins {
        /// Which pins.
        pins: String,
    },
    /// It came down.
    Slough {},
    /// Somebody said that it moves.
    Said {},
}

/// A face is left.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct FaceAlarmed {
    /// Which.
    pub zone: String,
    /// Why.
    pub why: AlarmWhy,
    /// The machines that may stand or dig under it, or whose place nobody knows.
    pub must_leave: Vec<String>,
}

/// The operator has left the face.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LeaveFace {
    /// Which.
    pub zone: String,
}

/// An operator has left a face.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct FaceLeft {
    /// The machine.
    pub machine: String,
    /// The face.
    pub zone: String,
}

/// The alarm, and the calls under the face that end with it.
pub(crate) fn alarm(state: &State, site: &Site, zone: &FaceZone, why: AlarmWhy) -> Vec<Body> {
    let mut bodies = Vec::new();
    let mut must_leave = Vec::new();
    for machine in &site.machines {
        let under = |mark: &str| {
            strip::place_of(state, mark).is_some_and(|at| strip::within(state, zone, at).is_some())
        };
        let cab = state.cabs.get(&machine.id);
        let live = state.live_call(&machine.id);
        let called = live
            .and_then(|(_, call)| call.sent.mark.as_deref())
            .is_some_and(under);
        if called {
            bodies.extend(call::end_live(state, &machine.id, Ending::StaleByFace));
        }
        let works = cab
            .and_then(|cab| cab.last_mark.as_deref())
            .is_some_and(under);
        let stands = cab
            .and_then(|cab| cab.place.as_ref())
            .is_none_or(|card| strip::within(state, zone, card.at).is_some());
        if called || works || stands {
            must_leave.push(machine.id.clone());
        }
    }
    bodies.push(Body::FaceAlarmed(FaceAlarmed {
        zone: zone.id.clone(),
        why,
        must_leave,
    }));
    bodies
}

pub(crate) fn leave(state: &State, by: &By, asked: &LeaveFace) -> Result<Vec<Body>, Refusal> {
    let machine = call::own_machine(by)?;
    let owed = state.cuts.must_leave.get(&machine);
    if owed.is_none_or(|must| must.zone != asked.zone) {
        return Ok(vec![]);
    }
    Ok(vec![Body::FaceLeft(FaceLeft {
        machine,
        zone: asked.zone.clone(),
    })])
}

/// A machine that is said to stand elsewhere has left the face.
pub(crate) fn placed_away(state: &State, machine: &str, at: Point) -> Option<Body> {
    let must = state.cuts.must_leave.get(machine)?;
    let zone = state.site()?.cuts.face(&must.zone)?;
    let away = strip::within(state, zone, at).is_none();
    away.then(|| {
        Body::FaceLeft(FaceLeft {
            machine: machine.to_owned(),
            zone: must.zone.clone(),
        })
    })
}

/// What an operator means who says that the face moves: the face of the call, or the only one there is.
pub(crate) fn said_from_cab(state: &State, mark: Option<&str>) -> Vec<Body> {
    let Some(site) = state.site() else {
        return vec![];
    };
    let of_mark = mark.and_then(|mark| {
        let at = strip::place_of(state, mark)?;
        strip::zones_at(state, site, at)
            .next()
            .map(|(zone, _)| zone)
    });
    let only = match site.cuts.faces.as_slice() {
        [one] => Some(one),
        _ => None,
    };
    of_mark
        .or(only)
        .map(|zone| alarm(state, site, zone, AlarmWhy::Said {}))
        .unwrap_or_default()
}

pub(crate) fn apply_alarmed(state: &mut State, entry: &Entry, body: &FaceAlarmed) {
    let face = state.cuts.face_mut(&body.zone);
    let since = face.alarm.as_ref().map_or(entry.at, |alarm| alarm.since);
    face.alarm = Some(Alarm {
        why: body.why.clone(),
        since,
        by: entry.by.person.clone(),
    });
    face.due = Some(InspectionDue {
        why: InspectionWhy::Left,
        since: entry.at,
    });
    for machine in &body.must_leave {
        state.cuts.must_leave.insert(
            machine.clone(),
            MustLeave {
                zone: body.zone.clone(),
                since: entry.at,
            },
        );
    }
}

pub(crate) fn apply_left(state: &mut State, body: &FaceLeft) {
    state.cuts.must_leave.remove(&body.machine);
}
