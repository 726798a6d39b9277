//! Where a test fails, soft ground is dug out and filled again: proposed with the test, in force when a supervisor confirms it.

use contract::ToSchema;
use earthwork::alignment::StationOffset;
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::target::Undercut;
use serde::{Deserialize, Serialize};

use crate::account::need::area_sf;
use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::said::revise::{self, ReviseTarget};
use crate::saying::{Asking, Closed, Saying};
use crate::site::Site;
use crate::state::State;

/// What the tester has dug out.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AskedUndercut {
    /// From this station; about the mark, as long as wide, when left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<Length>,
    /// To this station.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub to: Option<Length>,
    /// How wide, half to each side.
    pub width: Length,
    /// Below the dig-to.
    pub depth: Length,
    /// What fills it again.
    pub material: String,
    /// In how many lifts.
    pub lifts: u32,
}

/// An undercut waits for a supervisor.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct UndercutProposed {
    /// The mark of the test that failed.
    pub mark: String,
    /// The target that it changes.
    pub target: String,
    /// Where, how deep, filled with what.
    pub undercut: Undercut,
    /// Its volume, in cubic feet.
    pub volume_cf: f64,
}

impl Happening for UndercutProposed {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_proposed(state, entry, self);
    }
}

/// A supervisor takes a proposed undercut into the target.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ConfirmUndercut {
    /// The proposal's entry.
    pub undercut: u64,
    /// On whose word.
    pub why: String,
}

impl Saying for ConfirmUndercut {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        confirm(at.state, self)
    }
}

/// A proposed undercut is in force.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct UndercutConfirmed {
    /// The proposal's entry.
    pub undercut: u64,
    /// The target.
    pub target: String,
}

impl Happening for UndercutConfirmed {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_confirmed(state, self);
    }
}

/// The entry that proposes it.
pub(crate) fn propose(
    site: &Site,
    mark: &str,
    asked: &AskedUndercut,
) -> Result<UndercutProposed, Refusal> {
    let known = site.mark(mark);
    let target = known.and_then(|mark| site.target_of(mark));
    let (Some(known), Some(target)) = (known, target) else {
        return Err(Refusal::BadTarget(words::undercut::belongs_to_no_target(
            &mark,
        )));
    };
    let half = Length::from_tenth_micrometres(asked.width.tenth_micrometres() / 2);
    let within = match (asked.from, asked.to) {
        (Some(from), Some(to)) => {
            let corners = [(from, -half), (to, -half), (to, half), (from, half)];
            let places = corners
                .map(|(station, offset)| target.grade.place(StationOffset { station, offset }));
            places
                .into_iter()
                .collect::<Result<Vec<_>, _>>()
                .map_err(|error| Refusal::BadTarget(error.text()))?
        }
        _ => [(-half, -half), (half, -half), (half, half), (-half, half)]
            .map(|(east, north)| Point {
                x: known.place.x + east,
                y: known.place.y + north,
            })
            .to_vec(),
    };
    let undercut = Undercut {
        name: format!("{mark} undercut"),
        within,
        depth: asked.depth,
        material: asked.material.trim().to_owned(),
        lifts: asked.lifts,
    };
    let mut grade = target.grade.clone();
    grade.undercuts.push(undercut.clone());
    if let Some(wrong) = grade.check().first() {
        return Err(Refusal::BadTarget(wrong.text()));
    }
    Ok(UndercutProposed {
        mark: mark.to_owned(),
        target: target.id.clone(),
        volume_cf: area_sf(&undercut.within) * undercut.depth.feet(),
        undercut,
    })
}

/// The target is revised; whoever digs there must see it.
pub(crate) fn confirm(state: &State, asked: &ConfirmUndercut) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let (_, proposed) = state
        .account
        .undercuts
        .get(&asked.undercut)
        .ok_or_else(|| Refusal::Unknown {
            what: Thing::Undercut,
            name: asked.undercut.to_string(),
        })?;
    let target = site
        .target(&proposed.target)
        .ok_or_else(|| Refusal::Unknown {
            what: Thing::Target,
            name: proposed.target.clone(),
        })?;
    let mut grade = target.grade.clone();
    grade.undercuts.push(proposed.undercut.clone());
    let mut bodies = revise::revise(
        state,
        &ReviseTarget {
            target: target.id.clone(),
            grade,
            tolerance: target.tolerance,
            why: asked.why.clone(),
            seen: None,
        },
    )?;
    bodies.push(Body::UndercutConfirmed(UndercutConfirmed {
        undercut: asked.undercut,
        target: target.id.clone(),
    }));
    Ok(bodies)
}

pub(crate) fn apply_proposed(state: &mut State, entry: &Entry, body: &UndercutProposed) {
    let proposed = (entry.made_at, body.clone());
    state.account.undercuts.insert(entry.seq, proposed);
}

pub(crate) fn apply_confirmed(state: &mut State, body: &UndercutConfirmed) {
    state.account.undercuts.remove(&body.undercut);
}
