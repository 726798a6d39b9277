//! A lift is rammed: how thick, how many passes, how damp.

use contract::ToSchema;
use earthwork::figure::{Figure, can_be};
use earthwork::length::Length;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::read_as;
use crate::refusal::{Refusal, Thing};
use crate::said::patch::{self, PatchMoved, PatchStep};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// How damp the lift was.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Damp {
    /// It dusts: wet it.
    Dry,
    /// It holds in the hand.
    Right,
    /// It squeezes out: let it dry.
    Wet,
}

/// A lift is rammed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Compact {
    /// A patch, a mark or a target.
    pub on: String,
    /// Which lift, from 1 at the bottom.
    pub lift: u32,
    /// How thick it lies.
    pub thickness: Length,
    /// Passes of the rammer or the plate.
    pub passes: u32,
    /// How damp it was.
    pub damp: Damp,
}

impl Saying for Compact {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::TakenLate;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        compact(at.state, self)
    }
}

/// A lift was rammed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Compacted {
    /// A patch, a mark or a target.
    pub on: String,
    /// Which lift.
    pub lift: u32,
    /// How thick it lies.
    pub thickness: Length,
    /// Passes.
    pub passes: u32,
    /// How damp it was.
    pub damp: Damp,
    /// Thicker than a lift may be.
    pub too_thick: bool,
    /// It lies in a patch; a mark may bear the name of one.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub patch: bool,
}

impl Happening for Compacted {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_compacted(state, entry, self);
    }
}

pub(crate) fn compact(state: &State, asked: &Compact) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    for count in [asked.lift, asked.passes] {
        can_be(Figure::Count, f64::from(count)).map_err(|error| Refusal::figure(&error))?;
    }
    can_be(Figure::Thickness, asked.thickness.feet()).map_err(|error| Refusal::figure(&error))?;
    let patch = state.account.patches.get(&asked.on);
    if patch.is_none() && site.mark(&asked.on).is_none() && site.target(&asked.on).is_none() {
        return Err(Refusal::Unknown {
            what: Thing::Patch,
            name: asked.on.clone(),
        });
    }
    let mut bodies = vec![Body::Compacted(Compacted {
        on: asked.on.clone(),
        lift: asked.lift,
        thickness: asked.thickness,
        passes: asked.passes,
        damp: asked.damp,
        too_thick: asked.thickness > patch::lift(state),
        patch: patch.is_some(),
    })];
    if let Some(patch) = patch {
        if patch.step == PatchStep::Needed {
            return Err(Refusal::account(words::compact::is_not_filled_yet(
                &read_as::patch(&asked.on),
            )));
        }
        if patch.step == PatchStep::Filled && asked.lift >= patch.needed.lifts {
            bodies.push(Body::PatchMoved(PatchMoved {
                patch: asked.on.clone(),
                to: PatchStep::Compacted,
            }));
        }
    }
    Ok(bodies)
}

pub(crate) fn apply_compacted(state: &mut State, entry: &Entry, body: &Compacted) {
    if let Some(patch) = state.account.patches.get_mut(&body.on) {
        patch.lifts = patch.lifts.max(body.lift);
    }
    let lift = (entry.made_at, body.clone());
    state.account.lifts.insert(entry.seq, lift);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, len};

    fn ram(on: &str, thickness: &str, passes: u32) -> Command {
        Command::Compact(Compact {
            on: on.into(),
            lift: 1,
            thickness: len(thickness),
            passes,
            damp: Damp::Right,
        })
    }

    #[test]
    fn a_thick_lift_is_entered_and_said_to_be_thick() {
        let mut crew = Crew::digging();
        for (thickness, too_thick) in [("0.50 ft", false), ("0.51 ft", true)] {
            crew.says(&ground(), ram("PAD", thickness, 4)).unwrap();
            let (_, lift) = crew.state.account.lifts.values().last().unwrap();
            assert_eq!(lift.too_thick, too_thick, "{thickness}");
        }
        assert!(crew.says(&ground(), ram("NOWHERE", "0.50 ft", 4)).is_err());
        assert!(crew.says(&ground(), ram("PAD", "0.50 ft", 0)).is_err());
    }
}
