//! GET AWAY FROM THE FACE: nobody works under it before the competent person says so. Each operator near presses when away.

use contract::ToSchema;
use earthwork::point::Point;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::call::Ending;
use crate::cuts::now::{Alarm, InspectionDue, InspectionWhy};
use crate::cuts::plan::FaceZone;
use crate::cuts::strip;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::overtaken;
use crate::refusal::Refusal;
use crate::said::call;
use crate::said::face_seen::zone;
use crate::saying::{Asking, Closed, Saying};
use crate::site::Site;
use crate::state::State;
use crate::time::When;

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

impl Happening for FaceAlarmed {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_alarmed(state, entry, self);
    }
}

/// The face comes down: the word alone, at once. Its figures come after, as [`SeeSlough`](crate::said::face_seen::SeeSlough).
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayCameDown {
    /// Which face.
    pub zone: String,
}

impl Saying for SayCameDown {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        came_down(at.state, self)
    }
}

/// The operator has left the face.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LeaveFace {
    /// Which.
    pub zone: String,
    /// The alarm that the cab showed: see [`MustLeave::alarm`](crate::cuts::now::MustLeave).
    #[serde(default)]
    pub alarm: u64,
}

impl Saying for LeaveFace {
    const BY: &'static [Role] = &[Role::Operator];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        leave(at.state, at.by, self, at.when)
    }
}

/// A machine came to stand under faces that were left, or nobody knows any more where it stands.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct UnderLeftFace {
    /// The machine.
    pub machine: String,
    /// The faces.
    pub zones: Vec<String>,
}

impl Happening for UnderLeftFace {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_under(state, entry, self);
    }
}

/// An operator has left a face.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct FaceLeft {
    /// The machine.
    pub machine: String,
    /// The face.
    pub zone: String,
}

impl Happening for FaceLeft {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_left(state, self);
    }
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

/// Everybody is told first; how much came down is asked for afterwards.
pub(crate) fn came_down(state: &State, asked: &SayCameDown) -> Result<Vec<Body>, Refusal> {
    let zone = zone(state, &asked.zone)?;
    let site = state.site().ok_or(Refusal::NoSite)?;
    Ok(alarm(state, site, zone, AlarmWhy::Slough {}))
}

pub(crate) fn leave(
    state: &State,
    by: &By,
    asked: &LeaveFace,
    when: When,
) -> Result<Vec<Body>, Refusal> {
    let machine = call::own_machine(by)?;
    let mut owed = state.cuts.owed_by(&machine).iter();
    let Some(must) = owed.find(|must| must.zone == asked.zone) else {
        return Ok(vec![]);
    };
    overtaken::in_time(when)?;
    if must.alarm != asked.alarm {
        return Err(overtaken::overtaken(
            words::face_alarm::people_had_get_away_from(),
        ));
    }
    Ok(vec![Body::FaceLeft(FaceLeft {
        machine,
        zone: asked.zone.clone(),
    })])
}

/// A machine that is said to stand elsewhere has left the face; one that is said to stand under a face that was left has yet to.
pub(crate) fn placed(state: &State, machine: &str, at: Point) -> Vec<Body> {
    let Some(site) = state.site() else {
        return vec![];
    };
    let under = |zone: &str| {
        site.cuts
            .face(zone)
            .is_some_and(|zone| strip::within(state, zone, at).is_some())
    };
    let owed = state.cuts.owed_by(machine);
    let away = owed.iter().filter(|must| !under(&must.zone)).map(|must| {
        Body::FaceLeft(FaceLeft {
            machine: machine.to_owned(),
            zone: must.zone.clone(),
        })
    });
    away.chain(newly_under(state, machine, under)).collect()
}

/// Nobody knows any more where a machine stands: it may be under any face that was left.
pub(crate) fn moved(state: &State, machine: &str) -> Option<Body> {
    newly_under(state, machine, |_| true)
}

fn newly_under(state: &State, machine: &str, under: impl Fn(&str) -> bool) -> Option<Body> {
    let owed = state.cuts.owed_by(machine);
    let left = state
        .cuts
        .faces
        .iter()
        .filter(|(zone, face)| face.alarm.is_some() && under(zone))
        .filter(|(zone, _)| owed.iter().all(|must| must.zone != **zone));
    let zones: Vec<String> = left.map(|(zone, _)| zone.clone()).collect();
    (!zones.is_empty()).then(|| {
        Body::UnderLeftFace(UnderLeftFace {
            machine: machine.to_owned(),
            zones,
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
        alarm: entry.seq,
    });
    face.due = Some(InspectionDue {
        why: InspectionWhy::Left,
        since: entry.at,
    });
    for machine in &body.must_leave {
        state.cuts.leaves(machine, &body.zone, entry.at, entry.seq);
    }
    // Who had been told to leave already is shown the newest alarm: its AWAY answers that one.
    for must in state.cuts.must_leave.values_mut().flatten() {
        if must.zone == body.zone {
            must.alarm = entry.seq;
        }
    }
}

pub(crate) fn apply_under(state: &mut State, entry: &Entry, body: &UnderLeftFace) {
    for zone in &body.zones {
        let alarm = state.cuts.face(zone).and_then(|face| face.alarm.as_ref());
        if let Some(alarm) = alarm.map(|alarm| alarm.alarm) {
            state.cuts.leaves(&body.machine, zone, entry.at, alarm);
        }
    }
}

/// A machine that is away does not stand any more where it was said to stand under that face.
pub(crate) fn apply_left(state: &mut State, body: &FaceLeft) {
    state.cuts.has_left(Some(&body.machine), &body.zone);
    let place = state
        .cabs
        .get(&body.machine)
        .and_then(|cab| cab.place.as_ref());
    let zone = state.site().and_then(|site| site.cuts.face(&body.zone));
    let was_under = place
        .zip(zone)
        .is_some_and(|(place, zone)| strip::within(state, zone, place.at).is_some());
    if was_under {
        state.cab_mut(&body.machine).place = None;
    }
}
