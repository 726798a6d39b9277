//! A rectangle's sides and diagonals as taped: is it square, and which corners move.

use contract::ToSchema;
use earthwork::layout::square::{CornerMove, Diagonals, Squareness, squareness};
use earthwork::length::Length;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::Refusal;
use crate::said::tape;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// Four tapes of a rectangle whose corners go round A, B, C, D.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct MeasureDiagonals {
    /// Which rectangle: a target's name, or what the crew calls it.
    pub what: String,
    /// The side A–B, which stays, as typed in feet or with a unit.
    pub base: String,
    /// The side B–C.
    pub across: String,
    /// From A to C.
    pub a_to_c: String,
    /// From B to D.
    pub b_to_d: String,
}

impl Saying for MeasureDiagonals {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        measure(at.state, self)
    }
}

/// A rectangle was taped.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct DiagonalsMeasured {
    /// Which rectangle.
    pub what: String,
    /// The tapes.
    pub taped: Diagonals,
    /// What they say.
    pub found: Squareness,
}

impl Happening for DiagonalsMeasured {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, _state: &mut State, _entry: &Entry) {
        // Nothing is current by it: it is there to be read.
    }
}

/// A name is no longer than this.
const LONGEST_NAME: usize = 80;

pub(crate) fn measure(state: &State, asked: &MeasureDiagonals) -> Result<Vec<Body>, Refusal> {
    if state.day.is_none() {
        return Err(Refusal::NoDay);
    }
    let what = asked.what.trim();
    if what.is_empty() || what.chars().count() > LONGEST_NAME {
        return Err(Refusal::BadMark(
            words::diagonals::say_which_rectangle_taped_up().into(),
        ));
    }
    let taped = Diagonals {
        base: tape::typed(&asked.base)?,
        across: tape::typed(&asked.across)?,
        a_to_c: tape::typed(&asked.a_to_c)?,
        b_to_d: tape::typed(&asked.b_to_d)?,
    };
    let found = squareness(&taped).map_err(|error| Refusal::BadMark(error.text()))?;
    Ok(vec![Body::DiagonalsMeasured(DiagonalsMeasured {
        what: what.to_owned(),
        taped,
        found,
    })])
}

/// Which corners move, and how far.
pub fn moves(found: &Squareness) -> Text {
    let to = |by: Length, corner: &str| {
        let by = by.show(earthwork::length::Form::DecimalFeet { places: 3 });
        words::diagonals::c_and_d_move_toward(&by, &corner)
    };
    match found.moves {
        CornerMove::None => words::diagonals::no_corner_moves().into(),
        CornerMove::TowardA { by } => to(by, "A"),
        CornerMove::TowardB { by } => to(by, "B"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, len};

    fn tapes(crew: &mut Crew, b_to_d: &str) -> Result<(), Refusal> {
        let asked = MeasureDiagonals {
            what: "PAD".into(),
            base: "66.00".into(),
            across: "70 ft".into(),
            a_to_c: "96.18".into(),
            b_to_d: b_to_d.into(),
        };
        crew.says(&ground(), Command::MeasureDiagonals(asked))
            .map(|_| ())
    }

    /// Invented, demo: 70·(96.23² − 96.18²)/(4·66·70) = 0.036 ft.
    #[test]
    fn the_log_says_which_corners_move_and_how_far() {
        let mut crew = Crew::opened();
        tapes(&mut crew, "96.23").unwrap();
        let Body::DiagonalsMeasured(body) = &crew.log.last().unwrap().body else {
            panic!("{:?}", crew.log.last());
        };
        let CornerMove::TowardB { by } = body.found.moves else {
            panic!("{body:?}");
        };
        assert!((by - len("0.036 ft")).abs() < len("0.001 ft"), "{by}");
    }

    #[test]
    fn tapes_that_do_not_belong_together_are_refused_and_nothing_is_entered() {
        let mut crew = Crew::opened();
        let before = crew.log.len();
        for bad in ["69.23", "", "-96.23", "far"] {
            assert!(tapes(&mut crew, bad).is_err(), "{bad}");
        }
        assert_eq!(crew.log.len(), before);
    }
}
