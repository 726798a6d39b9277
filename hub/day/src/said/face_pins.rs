//! A tape between two pins across a crack: still, watched, or the face is left.

use contract::ToSchema;
use earthwork::face::{PinState, Pins, Taped, judge_pins};
use earthwork::length::Length;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::cuts::now::PinNow;
use crate::cuts::plan::FaceZone;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::said::face_alarm::{self, AlarmWhy};
use crate::said::face_seen::{feet_typed, zone};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::When;

/// Somebody tapes between two pins.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ReadPins {
    /// The face.
    pub zone: String,
    /// The pins.
    pub pins: String,
    /// The tape, in feet as typed.
    pub text: String,
}

impl Saying for ReadPins {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        read(at.state, self, at.when)
    }
}

/// Pins were taped.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PinsRead {
    /// The face.
    pub zone: String,
    /// The pins.
    pub pins: String,
    /// As typed.
    pub text: String,
    /// How far apart.
    pub apart: Length,
    /// When it was taped, in milliseconds.
    pub at_ms: i64,
    /// What it says beside the tapes before; none for the first.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub judged: Option<PinJudged>,
}

impl Happening for PinsRead {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_read(state, entry, self);
    }
}

/// A tape judged.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PinJudged {
    /// What to do.
    pub state: PinState,
    /// Opened since the tape before.
    pub opened: Length,
    /// Opened since the first.
    pub in_all: Length,
    /// Feet an hour.
    pub rate_ft_per_hour: f64,
    /// Faster twice running.
    pub speeding_up: bool,
}

impl From<Pins> for PinJudged {
    fn from(pins: Pins) -> Self {
        Self {
            state: pins.state,
            opened: pins.opened,
            in_all: pins.in_all,
            rate_ft_per_hour: pins.rate_ft_per_hour,
            speeding_up: pins.speeding_up,
        }
    }
}

/// The tape of a pair, judged beside those before.
pub(crate) fn tape(
    state: &State,
    zone: &FaceZone,
    pins: &str,
    text: &str,
    when: When,
) -> Result<PinsRead, Refusal> {
    if !zone.pins.iter().any(|one| one == pins) {
        return Err(Refusal::Unknown {
            what: Thing::Pins,
            name: pins.to_owned(),
        });
    }
    let taped = Taped {
        at_ms: when.made_at.0,
        apart: feet_typed(text)?,
    };
    let mut tapes = state
        .cuts
        .face(&zone.id)
        .and_then(|face| face.tapes.get(pins))
        .cloned()
        .unwrap_or_default();
    tapes.push(taped);
    let judged = if tapes.len() < 2 {
        None
    } else {
        let judged = judge_pins(&tapes).map_err(|error| Refusal::RodValue(error.text()))?;
        Some(judged.into())
    };
    Ok(PinsRead {
        zone: zone.id.clone(),
        pins: pins.to_owned(),
        text: text.to_owned(),
        apart: taped.apart,
        at_ms: taped.at_ms,
        judged,
    })
}

pub(crate) fn read(state: &State, asked: &ReadPins, when: When) -> Result<Vec<Body>, Refusal> {
    let zone = zone(state, &asked.zone)?;
    let site = state.site().ok_or(Refusal::NoSite)?;
    let read = tape(state, zone, &asked.pins, &asked.text, when)?;
    let leave = read
        .judged
        .is_some_and(|judged| judged.state == PinState::Leave);
    let mut bodies = vec![Body::PinsRead(read)];
    if leave {
        let why = AlarmWhy::Pins {
            pins: asked.pins.clone(),
        };
        bodies.extend(face_alarm::alarm(state, site, zone, why));
    }
    Ok(bodies)
}

pub(crate) fn apply_read(state: &mut State, entry: &Entry, body: &PinsRead) {
    let face = state.cuts.face_mut(&body.zone);
    face.tapes
        .entry(body.pins.clone())
        .or_default()
        .push(Taped {
            at_ms: body.at_ms,
            apart: body.apart,
        });
    let judged = body.judged.unwrap_or(PinJudged {
        state: PinState::Still,
        opened: Length::ZERO,
        in_all: Length::ZERO,
        rate_ft_per_hour: 0.0,
        speeding_up: false,
    });
    face.pins.insert(
        body.pins.clone(),
        PinNow {
            state: judged.state,
            apart: body.apart,
            opened: judged.opened,
            in_all: judged.in_all,
            rate_ft_per_hour: judged.rate_ft_per_hour,
            at: entry.made_at,
        },
    );
}
