//! Where a machine stands, in one press from its own cab: at a mark, where it was called last, or still where it was.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::asked::By;
use crate::entry::Body;
use crate::keep_out;
use crate::refusal::{Refusal, Thing};
use crate::said::call::own_machine;
use crate::said::machine::{self, PlaceMachine};
use crate::state::State;
use crate::time::{When, seconds};

/// A place is about this moment: one that was on its way for longer is pressed again, so that no old one moves a circle back.
const TOO_LATE_MS: i64 = seconds(60);

/// The operator says where the own machine stands now.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct StandHere {
    /// Where.
    pub at: Stand,
}

/// A place that an operator can name with one press.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum Stand {
    /// At a mark.
    Mark {
        /// Which.
        mark: String,
    },
    /// At the mark that was called to this machine last.
    LastCalled,
    /// Where it was last said to stand; not after it has moved.
    Still,
}

pub(crate) fn here(
    state: &State,
    by: &By,
    asked: &StandHere,
    when: When,
) -> Result<Vec<Body>, Refusal> {
    let machine = own_machine(by)?;
    if when.now.ms_since(when.made_at) > TOO_LATE_MS {
        return Err(Refusal::PressedTooLate);
    }
    let cab = state.cabs.get(&machine);
    let at = match &asked.at {
        Stand::Mark { mark } => {
            Some(
                keep_out::place_of(state, mark).ok_or_else(|| Refusal::Unknown {
                    what: Thing::Mark,
                    name: mark.clone(),
                })?,
            )
        }
        Stand::LastCalled => cab
            .and_then(|cab| cab.last_mark.as_deref())
            .and_then(|mark| keep_out::place_of(state, mark)),
        Stand::Still => cab.and_then(|cab| cab.place.as_ref()).map(|card| card.at),
    };
    let Some(at) = at else {
        return Err(Refusal::HeldBack {
            english: "Nobody has said that place today. Pick the mark that the machine stands at."
                .into(),
            spanish: "Nadie ha dicho ese lugar hoy. Escoja la marca donde está la máquina.".into(),
        });
    };
    machine::place(state, &PlaceMachine { machine, at }, when)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, operator};
    use crate::said::machine::SayMoved;
    use crate::time::minutes;

    fn stands(at: Stand) -> Command {
        Command::StandHere(StandHere { at })
    }

    fn place(crew: &Crew) -> Option<earthwork::point::Point> {
        Some(crew.state.cabs["EX-1"].place.as_ref()?.at)
    }

    #[test]
    fn one_press_in_the_cab_says_where_the_machine_stands() {
        let mut crew = Crew::digging();
        let cab = operator("EX-1");
        let mark = crew.state.site().unwrap().mark("P-1").unwrap().place;
        assert!(
            crew.says(&cab, stands(Stand::LastCalled)).is_err(),
            "nothing was called"
        );
        assert!(
            crew.says(&ground(), stands(Stand::Still)).is_err(),
            "the cab says it"
        );
        let nowhere = Stand::Mark {
            mark: "P-99".into(),
        };
        assert!(matches!(
            crew.says(&cab, stands(nowhere)),
            Err(Refusal::Unknown { .. })
        ));
        crew.says(&cab, stands(Stand::Mark { mark: "P-1".into() }))
            .unwrap();
        assert_eq!(place(&crew), Some(mark));
        crew.place("EX-1", "900 ft", "900 ft");
        crew.reads("P-1", "4.70").unwrap();
        crew.says(&cab, stands(Stand::LastCalled)).unwrap();
        assert_eq!(place(&crew), Some(mark));
    }

    #[test]
    fn a_place_that_is_said_again_is_new_and_none_is_made_up_after_a_move_or_taken_late() {
        let mut crew = Crew::digging();
        let cab = operator("EX-1");
        crew.wait(minutes(31));
        crew.says(&cab, stands(Stand::Still)).unwrap();
        let card = crew.state.cabs["EX-1"].place.clone().unwrap();
        assert_eq!((card.since, card.by.as_str()), (crew.now, "OP"));
        let pressed = crew.now;
        crew.wait(TOO_LATE_MS + 1);
        let late = crew.said_at(&cab, stands(Stand::Still), pressed);
        assert_eq!(late, Err(Refusal::PressedTooLate));
        let moved = SayMoved {
            machine: "EX-1".into(),
        };
        crew.says(&ground(), Command::SayMoved(moved)).unwrap();
        let still = crew.says(&cab, stands(Stand::Still));
        assert!(matches!(still, Err(Refusal::HeldBack { .. })), "{still:?}");
        assert_eq!(place(&crew), None);
    }
}
