//! What anybody sees at a face: water, a crack, rain, vibration, loads at its crest, and soil that came down.
//!
//! It lowers no class by itself, the competent person does; until then the inspection is due again.

use contract::ToSchema;
use earthwork::face::slough_volume;
use earthwork::length::{Length, parse};
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::cuts::now::{FaceWord, InspectionWhy, SeenNow};
use crate::cuts::plan::FaceZone;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::said::face_alarm::{self, AlarmWhy};
use crate::said::pump::{self, WaterAt};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// The newest things seen that are kept at hand.
const KEPT: usize = 12;

/// Something at a face.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "what", rename_all = "snake_case")]
pub enum AtFace {
    /// Water comes out.
    Water {},
    /// A crack, a bulge, a sunken edge.
    Crack {},
    /// It rained.
    Rain {},
    /// Heavy traffic, a breaker, a roller.
    Vibration {},
    /// Spoil or a load at the crest, so far back from it.
    Load {
        /// From the crest.
        back: Length,
    },
    /// It was trimmed from the top down.
    Trimmed {},
    /// It came down.
    Slough {
        /// Along the face.
        length: Length,
        /// Up.
        height: Length,
        /// Back from the face.
        back: Length,
    },
}

/// Somebody sees something at a face.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SeeAtFace {
    /// Which face.
    pub zone: String,
    /// What.
    pub what: Sight,
    /// With a load: how far back from the crest, in feet as typed.
    #[serde(default)]
    pub text: String,
    /// A word about it.
    #[serde(default)]
    pub note: String,
}

impl Saying for SeeAtFace {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        see(at.state, self)
    }
}

/// What can be seen, as it is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Sight {
    /// Water.
    Water,
    /// A crack.
    Crack,
    /// Rain.
    Rain,
    /// Vibration.
    Vibration,
    /// Spoil or a load at the crest.
    Load,
    /// Trimmed from the top down.
    Trimmed,
}

/// Something was seen at a face.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct SeenAtFace {
    /// Which face.
    pub zone: String,
    /// What.
    pub what: AtFace,
    /// A load or spoil stands nearer than the rules allow: at least this far back.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub move_back_to: Option<Length>,
    /// A word about it.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

impl Happening for SeenAtFace {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_seen(state, entry, self);
    }
}

/// The face comes down, or came down.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SeeSlough {
    /// Which face.
    pub zone: String,
    /// Along the face, in feet as typed.
    pub length: String,
    /// How high.
    pub height: String,
    /// How far back.
    pub back: String,
    /// The mark nearest to it; what was accepted, tested and inspected round there is void.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// Who was near.
    #[serde(default)]
    pub note: String,
}

impl Saying for SeeSlough {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        slough(at.state, self)
    }
}

/// A face came down.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SloughSeen {
    /// Which face.
    pub zone: String,
    /// Along it.
    pub length: Length,
    /// Up.
    pub height: Length,
    /// Back.
    pub back: Length,
    /// The mark nearest to it, when somebody said so.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// About so many cubic yards: half of length, height and depth.
    pub cubic_yards: f64,
    /// Who was near.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

impl Happening for SloughSeen {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_slough(state, entry, self);
    }
}

/// A face of this site.
pub(crate) fn zone<'a>(state: &'a State, id: &str) -> Result<&'a FaceZone, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    if state.day.is_none() {
        return Err(Refusal::NoDay);
    }
    site.cuts.face(id).ok_or_else(|| Refusal::Unknown {
        what: Thing::Face,
        name: id.to_owned(),
    })
}

/// Feet as typed: `5`, `0.25`, or with their unit.
pub(crate) fn feet_typed(text: &str) -> Result<Length, Refusal> {
    let plain = text.trim();
    let with_unit = if plain.ends_with(|last: char| last.is_ascii_digit()) {
        format!("{plain} ft")
    } else {
        plain.to_owned()
    };
    let length = parse(&with_unit)
        .map_err(|error| Refusal::RodValue(words::face_seen::of(&plain, &error.text())))?;
    if length < Length::ZERO {
        return Err(Refusal::RodValue(words::face_seen::is_below_zero(&plain)));
    }
    Ok(length)
}

pub(crate) fn see(state: &State, asked: &SeeAtFace) -> Result<Vec<Body>, Refusal> {
    let zone = zone(state, &asked.zone)?;
    let mut move_back_to = None;
    let what = match asked.what {
        Sight::Water => AtFace::Water {},
        Sight::Crack => AtFace::Crack {},
        Sight::Rain => AtFace::Rain {},
        Sight::Vibration => AtFace::Vibration {},
        Sight::Trimmed => AtFace::Trimmed {},
        Sight::Load => {
            let back = feet_typed(&asked.text)?;
            let rules = state.site().ok_or(Refusal::NoSite)?.cuts.rules();
            if back < rules.spoil.distance {
                move_back_to = Some(rules.spoil.distance);
            }
            AtFace::Load { back }
        }
    };
    Ok(vec![Body::SeenAtFace(SeenAtFace {
        zone: zone.id.clone(),
        what,
        move_back_to,
        note: asked.note.trim().to_owned(),
    })])
}

/// What came down, and the face is left.
pub(crate) fn slough(state: &State, asked: &SeeSlough) -> Result<Vec<Body>, Refusal> {
    let zone = zone(state, &asked.zone)?;
    let site = state.site().ok_or(Refusal::NoSite)?;
    let (length, height) = (feet_typed(&asked.length)?, feet_typed(&asked.height)?);
    let back = feet_typed(&asked.back)?;
    let cubic_yards =
        slough_volume(length, height, back).map_err(|error| Refusal::RodValue(error.text()))?;
    if let Some(mark) = &asked.mark
        && site.mark(mark).is_none()
    {
        return Err(Refusal::Unknown {
            what: Thing::Mark,
            name: mark.clone(),
        });
    }
    let mut bodies = vec![Body::SloughSeen(SloughSeen {
        zone: zone.id.clone(),
        length,
        height,
        back,
        mark: asked.mark.clone(),
        cubic_yards,
        note: asked.note.trim().to_owned(),
    })];
    // The figures of what everybody was told already tell nobody anew.
    let told = state
        .cuts
        .face(&zone.id)
        .and_then(|face| face.alarm.as_ref())
        .is_some_and(|alarm| alarm.why == AlarmWhy::Slough {});
    if !told {
        bodies.extend(face_alarm::alarm(state, site, zone, AlarmWhy::Slough {}));
    }
    Ok(bodies)
}

fn keep(state: &mut State, entry: &Entry, zone: &str, what: AtFace) {
    let word = FaceWord {
        entry: entry.seq,
        at: entry.at,
    };
    if matches!(what, AtFace::Trimmed {}) {
        state.cuts.face_mut(zone).word = Some(word);
    } else {
        state.cuts.owes(zone, InspectionWhy::Seen, word);
    }
    let face = state.cuts.face_mut(zone);
    face.seen.push(SeenNow {
        what,
        at: entry.at,
        by: entry.by.person.clone(),
    });
    let over = face.seen.len().saturating_sub(KEPT);
    face.seen.drain(..over);
}

pub(crate) fn apply_seen(state: &mut State, entry: &Entry, body: &SeenAtFace) {
    keep(state, entry, &body.zone, body.what.clone());
    if body.what == (AtFace::Water {}) {
        let zone = body.zone.clone();
        pump::stands(state, entry, WaterAt::Face { zone });
    }
}

pub(crate) fn apply_slough(state: &mut State, entry: &Entry, body: &SloughSeen) {
    let what = AtFace::Slough {
        length: body.length,
        height: body.height,
        back: body.back,
    };
    keep(state, entry, &body.zone, what);
}
