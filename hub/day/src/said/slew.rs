//! Two machines whose booms can meet: a supervisor proposes which side each keeps out of, both operators press AGREED.
//! The agreement is void as soon as either machine moves.

use std::f64::consts::{FRAC_PI_4, TAU};

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::point::Point;
use serde::{Deserialize, Serialize};
use words::Language;

use crate::asked::{By, Role};
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::Refusal;
use crate::said::call::own_machine;
use crate::said::machine;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::Time;

/// Said within this of where it stood, a machine has not moved.
const SAME_PLACE: Length = Length::from_hundredths_of_a_foot(100);

/// A side of the compass.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
#[expect(missing_docs, reason = "the sides of the compass")]
pub enum Compass {
    North,
    NorthEast,
    East,
    SouthEast,
    South,
    SouthWest,
    West,
    NorthWest,
}

impl Compass {
    /// The side that lies nearest to a way, given to east and to north.
    pub fn toward((east, north): (f64, f64)) -> Self {
        const ROUND: [Compass; 8] = [
            Compass::North,
            Compass::NorthEast,
            Compass::East,
            Compass::SouthEast,
            Compass::South,
            Compass::SouthWest,
            Compass::West,
            Compass::NorthWest,
        ];
        let turn = east.atan2(north);
        let off = |eighths: u8| {
            let away = (turn - f64::from(eighths) * FRAC_PI_4).rem_euclid(TAU);
            away.min(TAU - away)
        };
        (0_u8..)
            .zip(ROUND)
            .min_by(|(one, _), (other, _)| off(*one).total_cmp(&off(*other)))
            .map_or(Self::North, |(_, side)| side)
    }

    /// Its word.
    pub fn word(self, language: Language) -> &'static str {
        let word = match self {
            Self::North => words::slew::north(),
            Self::NorthEast => words::slew::north_east(),
            Self::East => words::slew::east(),
            Self::SouthEast => words::slew::south_east(),
            Self::South => words::slew::south(),
            Self::SouthWest => words::slew::south_west(),
            Self::West => words::slew::west(),
            Self::NorthWest => words::slew::north_west(),
        };
        word.of(language)
    }
}

/// What one machine keeps out of.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SlewSide {
    /// Which machine.
    pub machine: String,
    /// The side that its boom does not swing to.
    pub keeps_out_of: Compass,
}

/// A supervisor proposes which side each of two machines keeps out of.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AgreeSlew {
    /// The two machines.
    pub sides: [SlewSide; 2],
    /// A word about it, such as from where to where it holds.
    #[serde(default)]
    pub note: String,
}

impl Saying for AgreeSlew {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        agree(at.state, self)
    }
}

/// An agreement waits for both operators.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SlewProposed {
    /// The two machines.
    pub sides: [SlewSide; 2],
    /// A word about it.
    pub note: String,
}

impl Happening for SlewProposed {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_proposed(state, entry, self);
    }
}

/// The operator agrees.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayAgreed {
    /// With which other machine.
    pub with: String,
    /// What the screen said that the own machine keeps out of.
    pub keeps_out_of: Compass,
}

impl Saying for SayAgreed {
    const BY: &'static [Role] = &[Role::Operator];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        say_agreed(at.state, at.by, self)
    }
}

/// An operator has agreed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SlewAgreed {
    /// Whose machine.
    pub machine: String,
    /// With which other machine.
    pub with: String,
}

impl Happening for SlewAgreed {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_agreed(state, self);
    }
}

/// An agreement holds no more.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SlewVoided {
    /// The machine that moved.
    pub machine: String,
    /// The other.
    pub with: String,
}

impl Happening for SlewVoided {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_voided(state, self);
    }
}

/// An agreement between two machines.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct SlewCard {
    /// The two machines.
    pub sides: [SlewSide; 2],
    /// A word about it.
    pub note: String,
    /// Since when it was proposed.
    pub since: Time,
    /// The machines whose operators have pressed AGREED; it holds with both.
    pub agreed: Vec<String>,
    /// Where the machines stood when it was proposed, in the order of the sides; none in a state that is older than this field.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub stood: Vec<Point>,
}

impl SlewCard {
    /// Whether it is about that machine.
    pub fn names(&self, machine: &str) -> bool {
        self.sides.iter().any(|side| side.machine == machine)
    }

    /// Whether both have agreed.
    pub fn holds(&self) -> bool {
        self.sides
            .iter()
            .all(|side| self.agreed.contains(&side.machine))
    }

    /// Whether it is between these two.
    pub fn between(&self, one: &str, other: &str) -> bool {
        one != other && self.names(one) && self.names(other)
    }
}

pub(crate) fn agree(state: &State, asked: &AgreeSlew) -> Result<Vec<Body>, Refusal> {
    let [one, other] = &asked.sides;
    machine::known(state, &one.machine)?;
    machine::known(state, &other.machine)?;
    let placed = |side: &SlewSide| {
        let cab = state.cabs.get(&side.machine);
        cab.is_some_and(|cab| cab.place.is_some())
    };
    if one.machine == other.machine || !placed(one) || !placed(other) {
        return Err(Refusal::HeldBack(
            words::slew::takes_two_machines_somebody_has().into(),
        ));
    }
    Ok(vec![Body::SlewProposed(SlewProposed {
        sides: asked.sides.clone(),
        note: asked.note.trim().to_owned(),
    })])
}

pub(crate) fn say_agreed(state: &State, by: &By, asked: &SayAgreed) -> Result<Vec<Body>, Refusal> {
    let machine = own_machine(by)?;
    let found = state
        .slews
        .iter()
        .find(|one| one.between(&machine, &asked.with));
    let own = SlewSide {
        machine: machine.clone(),
        keeps_out_of: asked.keeps_out_of,
    };
    let Some(slew) = found.filter(|slew| slew.sides.contains(&own)) else {
        return Err(Refusal::HeldBack(
            words::slew::not_proposed_any_more().into(),
        ));
    };
    if slew.agreed.contains(&machine) {
        return Ok(vec![]);
    }
    Ok(vec![Body::SlewAgreed(SlewAgreed {
        machine,
        with: asked.with.clone(),
    })])
}

/// What is void once a machine moves.
pub(crate) fn voided(state: &State, machine: &str) -> Vec<Body> {
    voided_where(state, machine, |_| true)
}

/// What is void once a machine was said to stand somewhere: it is too far from where it stood when that was proposed. Small
/// moves add up: each is held against that place, never against the one before it.
pub(crate) fn voided_at(state: &State, machine: &str, at: Point) -> Vec<Body> {
    let now = state.cabs.get(machine).and_then(|cab| cab.place.as_ref());
    voided_where(state, machine, |slew| {
        let side = slew.sides.iter().position(|side| side.machine == machine);
        let stood = side.and_then(|side| slew.stood.get(side).copied());
        let from = stood.or_else(|| now.map(|card| card.at));
        from.is_none_or(|from| from.distance(at) > SAME_PLACE)
    })
}

fn voided_where(state: &State, machine: &str, far: impl Fn(&SlewCard) -> bool) -> Vec<Body> {
    let own = state
        .slews
        .iter()
        .filter(|slew| slew.names(machine) && far(slew));
    let others = own.flat_map(|slew| slew.sides.iter().filter(|side| side.machine != machine));
    others
        .map(|other| {
            Body::SlewVoided(SlewVoided {
                machine: machine.to_owned(),
                with: other.machine.clone(),
            })
        })
        .collect()
}

pub(crate) fn apply_proposed(state: &mut State, entry: &Entry, body: &SlewProposed) {
    let [one, other] = &body.sides;
    let place = |side: &SlewSide| Some(state.cabs.get(&side.machine)?.place.as_ref()?.at);
    let stood = body.sides.iter().map(place).collect::<Option<_>>();
    state
        .slews
        .retain(|slew| !slew.between(&one.machine, &other.machine));
    state.slews.push(SlewCard {
        sides: body.sides.clone(),
        note: body.note.clone(),
        since: entry.at,
        agreed: vec![],
        stood: stood.unwrap_or_default(),
    });
}

pub(crate) fn apply_agreed(state: &mut State, body: &SlewAgreed) {
    let mut slews = state.slews.iter_mut();
    if let Some(slew) = slews.find(|one| one.between(&body.machine, &body.with)) {
        slew.agreed.push(body.machine.clone());
    }
}

pub(crate) fn apply_voided(state: &mut State, body: &SlewVoided) {
    state
        .slews
        .retain(|slew| !slew.between(&body.machine, &body.with));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_way_has_the_side_that_it_lies_nearest_to() {
        // From memory: east is to the right where north is up.
        for (way, side) in [
            ((0.0, 1.0), Compass::North),
            ((1.0, 1.0), Compass::NorthEast),
            ((1.0, 0.0), Compass::East),
            ((0.2, -1.0), Compass::South),
            ((-1.0, 0.3), Compass::West),
            ((-1.0, 0.9), Compass::NorthWest),
        ] {
            assert_eq!(Compass::toward(way), side, "{way:?}");
        }
    }
    use crate::asked::Command;
    use crate::given::{Crew, ground, operator, supervisor};
    use crate::near::{Near, unsettled};
    use crate::said::machine::SayMoved;

    fn side(machine: &str, keeps_out_of: Compass) -> SlewSide {
        SlewSide {
            machine: machine.into(),
            keeps_out_of,
        }
    }

    fn propose() -> Command {
        Command::AgreeSlew(AgreeSlew {
            sides: [side("EX-1", Compass::East), side("EX-2", Compass::West)],
            note: "while EX-2 is north of y = 60".into(),
        })
    }

    fn agreed(with: &str, keeps_out_of: Compass) -> Command {
        Command::SayAgreed(SayAgreed {
            with: with.into(),
            keeps_out_of,
        })
    }

    fn both_near() -> Crew {
        let mut crew = Crew::digging();
        crew.place("EX-1", "70 ft", "82 ft");
        crew.place("EX-2", "86.75 ft", "72 ft");
        crew
    }

    /// Whether it is said that two booms can meet without an agreement.
    fn waits(crew: &Crew) -> bool {
        let mut near = unsettled(&crew.state, "EX-1").into_iter();
        near.any(|one| matches!(one, Near::CanMeet { .. }))
    }

    #[test]
    fn two_booms_that_can_meet_wait_until_both_operators_agree_and_again_when_one_moves() {
        let mut crew = both_near();
        assert!(waits(&crew));
        assert!(
            crew.says(&ground(), propose()).is_err(),
            "a supervisor proposes"
        );
        crew.says(&supervisor(), propose()).unwrap();
        let one = agreed("EX-2", Compass::East);
        crew.says(&operator("EX-1"), one.clone()).unwrap();
        assert!(waits(&crew), "one is not both");
        let entries = crew.log.len();
        crew.says(&operator("EX-1"), one).unwrap();
        assert_eq!(crew.log.len(), entries, "agreed once");
        crew.says(&operator("EX-2"), agreed("EX-1", Compass::West))
            .unwrap();
        assert!(crew.state.slews[0].holds() && !waits(&crew));
        let moved = SayMoved {
            machine: "EX-2".into(),
        };
        crew.says(&ground(), Command::SayMoved(moved)).unwrap();
        assert_eq!(crew.state.slews, []);
        crew.place("EX-2", "86.75 ft", "72 ft");
        assert!(
            waits(&crew),
            "what was agreed before does not hold in the new place"
        );
    }

    #[test]
    fn an_operator_agrees_to_what_the_screen_said_alone() {
        let mut crew = both_near();
        let early = crew.says(&operator("EX-1"), agreed("EX-2", Compass::East));
        assert!(matches!(early, Err(Refusal::HeldBack { .. })));
        crew.says(&supervisor(), propose()).unwrap();
        let other = crew.says(&operator("EX-1"), agreed("EX-2", Compass::North));
        assert!(matches!(other, Err(Refusal::HeldBack { .. })));
        crew.says(&operator("EX-1"), agreed("EX-2", Compass::East))
            .unwrap();
        // Proposed anew, what was pressed before is gone; placed anew where it stands, nothing is.
        crew.place("EX-1", "70 ft", "82 ft");
        assert_eq!(crew.state.slews[0].agreed, ["EX-1"]);
        crew.says(&supervisor(), propose()).unwrap();
        assert_eq!(crew.state.slews[0].agreed, Vec::<String>::new());
    }

    /// EX-2 creeps east by 0.9 ft at a time: the second step is 1.8 ft from where it stood when both agreed, more than a foot.
    #[test]
    fn small_moves_add_up_until_the_agreement_ends() {
        let mut crew = both_near();
        crew.says(&supervisor(), propose()).unwrap();
        crew.says(&operator("EX-1"), agreed("EX-2", Compass::East))
            .unwrap();
        crew.says(&operator("EX-2"), agreed("EX-1", Compass::West))
            .unwrap();
        crew.place("EX-2", "87.65 ft", "72 ft");
        assert!(crew.state.slews[0].holds(), "0.9 ft is no move");
        crew.place("EX-2", "88.55 ft", "72 ft");
        assert_eq!(crew.state.slews, [], "1.8 ft is one, in two steps too");
        assert!(waits(&crew));
    }

    #[test]
    fn an_agreement_takes_two_machines_whose_places_are_known() {
        let mut crew = both_near();
        let twice = Command::AgreeSlew(AgreeSlew {
            sides: [side("EX-1", Compass::East), side("EX-1", Compass::West)],
            note: String::new(),
        });
        assert!(crew.says(&supervisor(), twice).is_err());
        let moved = SayMoved {
            machine: "EX-1".into(),
        };
        crew.says(&ground(), Command::SayMoved(moved)).unwrap();
        assert!(crew.says(&supervisor(), propose()).is_err());
    }
}
