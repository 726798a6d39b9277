//! The competent person inspects a face: values, not ticks. It alone lets work go on under a face that was left.

use contract::ToSchema;
use earthwork::face::{Evidence, Lowered, SoilClass};
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::cuts::now::Signed;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::overtaken;
use crate::refusal::Refusal;
use crate::said::face_alarm::{self, AlarmWhy};
use crate::said::face_design::{daylight, sound, take_class};
use crate::said::face_pins::{self, PinsRead};
use crate::said::face_seen::zone;
use crate::said::person::competent;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::When;

/// An inspection.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct InspectFace {
    /// The face.
    pub zone: String,
    /// The class picked.
    pub class: SoilClass,
    /// What was found; it can only lower the class.
    #[serde(default)]
    pub evidence: Evidence,
    /// What the eye saw, in words.
    pub seen: String,
    /// What the hand found, in words; a strength or a thumb in the evidence does too.
    #[serde(default)]
    pub by_hand: String,
    /// Tapes between pins.
    #[serde(default)]
    pub pins: Vec<PinTape>,
    /// Why work goes on under a face that was left; empty leaves it left.
    #[serde(default)]
    pub release: String,
    /// The alarm that the page showed, when the words bring people back: see [`Alarm::alarm`](crate::cuts::now::Alarm).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub alarm: Option<u64>,
    /// The newest word about the face that the form showed when it was opened, zero for none: see [`FaceNow::word`](crate::cuts::now::FaceNow). An
    /// inspection that names none is held against the time alone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub word: Option<u64>,
}

impl Saying for InspectFace {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        inspect(at.state, at.by, self, at.when)
    }
}

/// A tape between pins.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct PinTape {
    /// The pins.
    pub pins: String,
    /// In feet as typed.
    pub text: String,
}

/// A face was inspected.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct FaceInspected {
    /// The face.
    pub zone: String,
    /// The class picked.
    pub picked: SoilClass,
    /// The class that counts.
    pub class: SoilClass,
    /// What lowered it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub lowered_by: Vec<Lowered>,
    /// What was found.
    pub evidence: Evidence,
    /// What the eye saw.
    pub seen: String,
    /// What the hand found.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub by_hand: String,
    /// Why work goes on under a face that was left.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub release: String,
}

impl Happening for FaceInspected {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_inspected(state, entry, self);
    }
}

pub(crate) fn inspect(
    state: &State,
    by: &By,
    asked: &InspectFace,
    when: When,
) -> Result<Vec<Body>, Refusal> {
    let zone = zone(state, &asked.zone)?;
    let site = state.site().ok_or(Refusal::NoSite)?;
    competent(state, by)?;
    let blank = |text: &str| text.trim().is_empty();
    stands(state, asked, when)?;
    // At least one look and one test by hand (29 CFR 1926 Subpart P, Appendix A, basis of classification).
    if blank(&asked.seen) {
        return Err(Refusal::say_why(words::face_inspect::what_you_saw()));
    }
    let by_hand = asked.evidence.strength.is_some() || asked.evidence.thumb.is_some();
    if blank(&asked.by_hand) && !by_hand {
        return Err(Refusal::say_why(words::face_inspect::what_your_hand_found()));
    }
    let rules = site.cuts.rules();
    let evidence = sound(asked.evidence)?;
    let counted = evidence.counted(asked.class, rules);
    let found = daylight(state, &zone.id, |face| {
        take_class(face, asked.class, &counted, evidence);
    })?;
    let mut tapes = Vec::new();
    for one in &asked.pins {
        tapes.push(face_pins::tape(state, zone, &one.pins, &one.text, when)?);
    }
    let leave = tapes.iter().find(|read| leaves(read)).cloned();
    let mut bodies = vec![Body::FaceInspected(FaceInspected {
        zone: zone.id.clone(),
        picked: asked.class,
        class: counted.class,
        lowered_by: counted.lowered_by,
        evidence,
        seen: asked.seen.trim().to_owned(),
        by_hand: asked.by_hand.trim().to_owned(),
        release: if leave.is_some() {
            String::new()
        } else {
            asked.release.trim().to_owned()
        },
    })];
    bodies.extend(tapes.into_iter().map(Body::PinsRead));
    bodies.push(Body::DaylightFound(found));
    if let Some(read) = leave {
        let why = AlarmWhy::Pins { pins: read.pins };
        bodies.extend(face_alarm::alarm(state, site, zone, why));
    }
    Ok(bodies)
}

/// An inspection is of the face as it was then: what was seen or said there since asks for another one. Words that bring people
/// back are about the alarm that stands, and about this moment.
fn stands(state: &State, asked: &InspectFace, when: When) -> Result<(), Refusal> {
    let day = state.day.as_ref().map(|day| day.at);
    let new_day = words::face_inspect::another_day_began();
    overtaken::after(when, day, new_day)?;
    let Some(now) = state.cuts.face(&asked.zone) else {
        return Ok(());
    };
    // A state that was put by before there was such a word has only what was seen.
    let since = now.seen.iter().map(|seen| seen.at).max();
    let since = since.max(now.alarm.as_ref().map(|alarm| alarm.since));
    let since = since.max(now.word.map(|word| word.at));
    let told = words::face_inspect::something_seen_this_face_after();
    overtaken::after(when, since, told)?;
    let word = now.word.map_or(0, |word| word.entry);
    if asked.word.is_some_and(|seen| seen < word) {
        return Err(overtaken::overtaken(told));
    }
    if asked.release.trim().is_empty() || now.alarm.is_none() {
        return Ok(());
    }
    overtaken::in_time(when)?;
    if now.alarm.as_ref().map(|alarm| alarm.alarm) != asked.alarm {
        return Err(overtaken::overtaken(
            words::face_inspect::people_had_get_away_from(),
        ));
    }
    Ok(())
}

fn leaves(read: &PinsRead) -> bool {
    read.judged
        .is_some_and(|judged| judged.state == earthwork::face::PinState::Leave)
}

pub(crate) fn apply_inspected(state: &mut State, entry: &Entry, body: &FaceInspected) {
    let face = state.cuts.face_mut(&body.zone);
    let counted = earthwork::face::Counted {
        class: body.class,
        lowered_by: body.lowered_by.clone(),
    };
    take_class(face, body.picked, &counted, body.evidence);
    face.inspected = Some(Signed {
        at: entry.at,
        by: entry.by.person.clone(),
    });
    face.worked_at = None;
    if face.alarm.is_some() && body.release.is_empty() {
        return;
    }
    face.due = None;
    face.alarm = None;
    state.cuts.has_left(None, &body.zone);
}
