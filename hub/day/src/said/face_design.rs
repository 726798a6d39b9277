//! The soil is typed anew, or an engineer designs the face: its daylight line is worked out again at once.

use contract::ToSchema;
use earthwork::face::{Counted, Evidence, Lowered, Piece, SoilClass};
use earthwork::length::Length;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::cuts::daylight::{self, DaylightFound};
use crate::cuts::held::HeldBy;
use crate::cuts::now::FaceNow;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::Refusal;
use crate::said::face_seen::zone;
use crate::said::person::competent;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// The competent person types the soil anew.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RetypeSoil {
    /// The face.
    pub zone: String,
    /// The class picked.
    pub class: SoilClass,
    /// What was found; it can only lower the class.
    #[serde(default)]
    pub evidence: Evidence,
    /// Why.
    pub why: String,
}

impl Saying for RetypeSoil {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        retype(at.state, at.by, self)
    }
}

/// The soil was typed anew.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SoilRetyped {
    /// The face.
    pub zone: String,
    /// The class that counted before; none when nobody had picked one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<SoilClass>,
    /// The class picked.
    pub picked: SoilClass,
    /// The class that counts.
    pub class: SoilClass,
    /// What lowered it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub lowered_by: Vec<Lowered>,
    /// What was found.
    pub evidence: Evidence,
    /// Why.
    pub why: String,
}

impl Happening for SoilRetyped {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_retyped(state, self);
    }
}

/// A piece of a face, from the toe up.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct DesignPiece {
    /// The elevation of its top; the last goes on to the ground.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub top: Option<Length>,
    /// Run to one of rise.
    pub run_per_rise: f64,
}

impl DesignPiece {
    pub(crate) fn piece(&self) -> Piece {
        Piece {
            top: self.top,
            run_per_rise: self.run_per_rise,
        }
    }

    pub(crate) fn of(piece: &Piece) -> Self {
        Self {
            top: piece.top,
            run_per_rise: piece.run_per_rise,
        }
    }
}

/// An engineer's own design of a face.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ReviseFace {
    /// The face.
    pub zone: String,
    /// Its pieces from the toe up; none goes back to the tables.
    pub pieces: Vec<DesignPiece>,
    /// Whose design, and where it is written.
    pub why: String,
}

impl Saying for ReviseFace {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        revise(at.state, self)
    }
}

/// A face was designed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct FaceRevised {
    /// The face.
    pub zone: String,
    /// Its pieces.
    pub pieces: Vec<DesignPiece>,
    /// Whose design.
    pub why: String,
}

impl Happening for FaceRevised {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_revised(state, self);
    }
}

/// The daylight line as it will be when these entries are in; a note of why not when it can't be worked out.
pub(crate) fn daylight(
    state: &State,
    zone_id: &str,
    change: impl FnOnce(&mut FaceNow),
) -> Result<DaylightFound, Refusal> {
    let mut after = state.clone();
    change(after.cuts.face_mut(zone_id));
    let site = after.site().ok_or(Refusal::NoSite)?;
    let zone = zone(&after, zone_id)?;
    daylight::find(&after, site, zone).map_err(|error| Refusal::BadFace(error.text()))
}

/// What was found, when its figures can be.
pub(crate) fn sound(found: Evidence) -> Result<Evidence, Refusal> {
    found
        .checked()
        .map_err(|error| Refusal::BadFace(error.text()))
}

/// Takes a class and what was found into what is known.
pub(crate) fn take_class(
    face: &mut FaceNow,
    picked: SoilClass,
    counted: &Counted,
    found: Evidence,
) {
    face.picked = Some(picked);
    face.counted = Some(counted.class);
    face.lowered_by.clone_from(&counted.lowered_by);
    face.evidence = found;
}

pub(crate) fn retype(state: &State, by: &By, asked: &RetypeSoil) -> Result<Vec<Body>, Refusal> {
    let zone = zone(state, &asked.zone)?;
    competent(state, by)?;
    if asked.why.trim().is_empty() {
        return Err(Refusal::say_why(
            words::face_design::what_changed_in_the_soil(),
        ));
    }
    let rules = state.site().ok_or(Refusal::NoSite)?.cuts.rules();
    let evidence = sound(asked.evidence)?;
    let counted = evidence.counted(asked.class, rules);
    let found = daylight(state, &zone.id, |face| {
        take_class(face, asked.class, &counted, evidence);
        face.retyped = true;
        // By the tables again: a design was for the soil as it was.
        face.design.clear();
    })?;
    Ok(vec![
        Body::SoilRetyped(SoilRetyped {
            zone: zone.id.clone(),
            from: state.cuts.face(&zone.id).and_then(|face| face.counted),
            picked: asked.class,
            class: counted.class,
            lowered_by: counted.lowered_by,
            evidence,
            why: asked.why.trim().to_owned(),
        }),
        Body::DaylightFound(found),
    ])
}

pub(crate) fn revise(state: &State, asked: &ReviseFace) -> Result<Vec<Body>, Refusal> {
    let zone = zone(state, &asked.zone)?;
    if asked.why.trim().is_empty() {
        return Err(Refusal::say_why(
            words::face_design::whose_design_where_written(),
        ));
    }
    let found = daylight(state, &zone.id, |face| {
        face.design.clone_from(&asked.pieces);
    })?;
    Ok(vec![
        Body::FaceRevised(FaceRevised {
            zone: zone.id.clone(),
            pieces: asked.pieces.clone(),
            why: asked.why.trim().to_owned(),
        }),
        Body::DaylightFound(found),
    ])
}

pub(crate) fn apply_retyped(state: &mut State, body: &SoilRetyped) {
    let counted = Counted {
        class: body.class,
        lowered_by: body.lowered_by.clone(),
    };
    let face = state.cuts.face_mut(&body.zone);
    take_class(face, body.picked, &counted, body.evidence);
    face.retyped = true;
    face.design.clear();
}

pub(crate) fn apply_revised(state: &mut State, body: &FaceRevised) {
    state
        .cuts
        .face_mut(&body.zone)
        .design
        .clone_from(&body.pieces);
}

pub(crate) fn apply_daylight(state: &mut State, entry: &Entry, body: &DaylightFound) {
    let face = state.cuts.face_mut(&body.zone);
    // What was let go on was the daylight line as it was then.
    let another = face.daylight.as_ref() != Some(body);
    face.daylight = Some(body.clone());
    face.daylight_at = Some(entry.at);
    if another {
        state
            .cuts
            .allowed
            .retain(|held| !matches!(held, HeldBy::Daylight { zone } if *zone == body.zone));
    }
}
