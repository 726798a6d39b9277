//! A low spot is filled with gravel: needed, filled, compacted, tested, done, and never with dug soil.

use contract::ToSchema;
use earthwork::amount::{CubicFeet, SquareFeet};
use earthwork::figure::{Figure, FigureError, can_be};
use earthwork::gravel;
use earthwork::length::Length;
use serde::{Deserialize, Serialize};

use crate::account::Patch;
use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::read_as;
use crate::refusal::{Refusal, Thing};
use crate::said::gravel::short_after;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// No lift under a rammer is thicker, until the price list says so: 0.5 ft (common practice).
const USUAL_LIFT: Length = Length::from_hundredths_of_a_foot(50);

/// A low spot is measured.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AddPatch {
    /// The mark in it.
    pub mark: String,
    /// How long.
    pub length: Length,
    /// How wide.
    pub width: Length,
    /// How deep; as the last reading has it when left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub depth: Option<Length>,
}

impl Saying for AddPatch {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::TakenLate;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        add(at.state, self)
    }
}

/// A low spot needs gravel.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PatchNeeded {
    /// Its name, such as `G1`.
    pub patch: String,
    /// The mark in it.
    pub mark: String,
    /// How long.
    pub length: Length,
    /// How wide.
    pub width: Length,
    /// How deep.
    pub depth: Length,
    /// Rammed gravel, in cubic feet.
    pub volume_cf: f64,
    /// In how many lifts.
    pub lifts: u32,
}

impl Happening for PatchNeeded {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_needed(state, entry, self);
    }
}

/// Where a patch is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum PatchStep {
    /// Measured, not filled.
    Needed,
    /// Gravel lies in it.
    Filled,
    /// Every lift is rammed.
    Compacted,
    /// A test in it passed.
    Tested,
    /// Finished.
    Done,
}

/// Somebody says that a patch is a step further.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct MovePatch {
    /// Which.
    pub patch: String,
    /// Where it is now: filled or done; ramming and tests move it by themselves.
    pub to: PatchStep,
}

impl Saying for MovePatch {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::TakenLate;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        go_on(at.state, self)
    }
}

/// A patch is a step further.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PatchMoved {
    /// Which.
    pub patch: String,
    /// Where it is now.
    pub to: PatchStep,
}

impl Happening for PatchMoved {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_moved(state, self);
    }
}

/// The greatest thickness of a lift.
pub(crate) fn lift(state: &State) -> Length {
    let gravel = state.prices().and_then(|prices| prices.gravel.as_ref());
    gravel.map_or(USUAL_LIFT, |gravel| gravel.lift)
}

pub(crate) fn add(state: &State, asked: &AddPatch) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    if site.mark(&asked.mark).is_none() {
        return Err(Refusal::Unknown {
            what: Thing::Mark,
            name: asked.mark.clone(),
        });
    }
    let read = state
        .last_reading(&asked.mark)
        .and_then(|(_, taken)| Some(-taken.reading.judged.as_ref()?.mean));
    let depth = asked
        .depth
        .or(read)
        .ok_or_else(|| Refusal::account(words::patch::has_no_reading_take_depth(&asked.mark)))?;
    for size in [asked.length, asked.width, depth] {
        let feet = can_be(Figure::Thickness, size.feet());
        feet.and_then(|feet| {
            if feet > 0.0 {
                Ok(feet)
            } else {
                Err(FigureError {
                    figure: Figure::Thickness,
                    value: feet,
                })
            }
        })
        .map_err(|error| Refusal::figure(&error))?;
    }
    let area = SquareFeet(asked.length.feet() * asked.width.feet());
    let volume = gravel::patch(area, -depth, Length::ZERO);
    let lifts = gravel::lifts(depth, lift(state)).map_err(|error| Refusal::figure(&error))?;
    let mut bodies = vec![Body::PatchNeeded(PatchNeeded {
        patch: format!("G{}", state.account.patches.len() + 1),
        mark: asked.mark.clone(),
        length: asked.length,
        width: asked.width,
        depth,
        volume_cf: volume.0,
        lifts,
    })];
    bodies.extend(short_after(state, &[CubicFeet(volume.0)]));
    Ok(bodies)
}

/// The patch of that name.
pub(crate) fn named<'a>(state: &'a State, patch: &str) -> Result<&'a Patch, Refusal> {
    state
        .account
        .patches
        .get(patch)
        .ok_or_else(|| Refusal::Unknown {
            what: Thing::Patch,
            name: patch.to_owned(),
        })
}

/// One step at a time: filled after needed, done after a test, or after ramming where no test is asked.
pub(crate) fn go_on(state: &State, asked: &MovePatch) -> Result<Vec<Body>, Refusal> {
    let patch = named(state, &asked.patch)?;
    let moved = || {
        Ok(vec![Body::PatchMoved(PatchMoved {
            patch: asked.patch.clone(),
            to: asked.to,
        })])
    };
    let name = read_as::patch(&asked.patch);
    match (patch.step, asked.to) {
        (PatchStep::Needed, PatchStep::Filled)
        | (PatchStep::Compacted | PatchStep::Tested, PatchStep::Done) => moved(),
        (step, to) if step == to => Ok(vec![]),
        (PatchStep::Needed, _) => Err(Refusal::account(words::patch::is_not_filled_yet(
            &name,
            &patch.needed.lifts,
        ))),
        _ => Err(Refusal::account(words::patch::has_of_lifts_rammed(
            &name,
            &patch.lifts,
            &patch.needed.lifts,
        ))),
    }
}

pub(crate) fn apply_needed(state: &mut State, entry: &Entry, body: &PatchNeeded) {
    state.account.patches.insert(
        body.patch.clone(),
        Patch {
            needed: body.clone(),
            since: entry.made_at,
            step: PatchStep::Needed,
            lifts: 0,
        },
    );
}

pub(crate) fn apply_moved(state: &mut State, body: &PatchMoved) {
    if let Some(patch) = state.account.patches.get_mut(&body.patch) {
        patch.step = body.to;
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, len};
    use crate::said::compact::{Compact, Damp};

    fn add(depth: Option<&str>) -> Command {
        Command::AddPatch(AddPatch {
            mark: "P-1".into(),
            length: len("9 ft"),
            width: len("6 ft"),
            depth: depth.map(len),
        })
    }

    fn to(to: PatchStep) -> Command {
        Command::MovePatch(MovePatch {
            patch: "G2".into(),
            to,
        })
    }

    fn ram(lift: u32) -> Command {
        Command::Compact(Compact {
            on: "G2".into(),
            lift,
            thickness: len("0.50 ft"),
            passes: 4,
            damp: Damp::Right,
        })
    }

    #[test]
    fn a_patch_is_as_deep_as_the_last_reading_and_goes_step_by_step() {
        let mut crew = Crew::digging();
        assert!(crew.says(&ground(), add(None)).is_err(), "nothing was read");
        crew.reads("P-1", "5.18").unwrap();
        crew.says(&ground(), add(None)).unwrap();
        assert_eq!(
            crew.state.account.patches["G1"].needed.depth,
            len("0.18 ft")
        );
        crew.says(&ground(), add(Some("0.74 ft"))).unwrap();
        let patch = &crew.state.account.patches["G2"];
        assert!((patch.needed.volume_cf - 54.0 * 0.74).abs() < 1e-9);
        assert_eq!(patch.needed.lifts, 2);
        assert!(crew.says(&ground(), to(PatchStep::Done)).is_err());
        crew.says(&ground(), to(PatchStep::Filled)).unwrap();
        crew.says(&ground(), ram(1)).unwrap();
        assert!(
            crew.says(&ground(), to(PatchStep::Done)).is_err(),
            "one lift of two"
        );
        crew.says(&ground(), ram(2)).unwrap();
        assert_eq!(crew.state.account.patches["G2"].step, PatchStep::Compacted);
        crew.says(&ground(), to(PatchStep::Done)).unwrap();
        assert_eq!(crew.state.account.patches["G2"].step, PatchStep::Done);
    }

    #[test]
    fn a_patch_without_depth_or_place_is_refused() {
        let mut crew = Crew::digging();
        assert!(matches!(
            crew.says(&ground(), add(Some("0 ft"))),
            Err(Refusal::Account { .. })
        ));
        assert!(matches!(
            crew.says(&ground(), add(Some("-1 ft"))),
            Err(Refusal::Account { .. })
        ));
        assert!(matches!(
            crew.says(&ground(), to(PatchStep::Filled)),
            Err(Refusal::Unknown {
                what: Thing::Patch,
                ..
            })
        ));
    }
}
