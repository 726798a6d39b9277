//! Where a machine stands, in one press from its own cab: at a mark, or still where it was.

use contract::ToSchema;
use earthwork::keep_out::PLACE_TOO_OLD_MS;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::entry::Body;
use crate::keep_out;
use crate::overtaken;
use crate::refusal::{Refusal, Thing};
use crate::said::call::own_machine;
use crate::said::machine::{self, PlaceMachine};
use crate::saying::{Asking, Closed, Saying};
use crate::site::Site;
use crate::state::{Cab, State};
use crate::time::{Time, When};

/// The operator says where the own machine stands now.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct StandHere {
    /// Where.
    pub at: Stand,
}

impl Saying for StandHere {
    const BY: &'static [Role] = &[Role::Operator];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        here(at.state, at.by, self, at.when)
    }
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
    /// Where it was last said to stand; not after it has moved.
    Still {
        /// When that was said, as the cab's screen showed it: a place that somebody has said since is not meant.
        since: Time,
    },
}

/// What the cab's screen tells of its own place, and what one press can say of it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct StandCard {
    /// When it was last said where the machine stands; none while nobody has said, or since it moved.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub since: Option<Time>,
    /// From when on that is too old to judge by.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub old_at: Option<Time>,
    /// The mark that lies nearest to that place.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub near: Option<String>,
    /// The mark that was called to this machine last.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub called: Option<String>,
}

/// What the screen of a machine's cab tells of its place.
pub fn card(site: &Site, cab: &Cab) -> StandCard {
    let place = cab.place.as_ref();
    let near = place.and_then(|card| {
        let away = |at: earthwork::point::Point| at.distance(card.at);
        site.marks.iter().min_by_key(|mark| away(mark.place))
    });
    let called = cab.last_mark.clone();
    StandCard {
        since: place.map(|card| card.since),
        old_at: place.map(|card| card.since.plus_ms(PLACE_TOO_OLD_MS)),
        near: near.map(|mark| mark.id.clone()),
        called: called.filter(|mark| site.mark(mark).is_some()),
    }
}

pub(crate) fn here(
    state: &State,
    by: &By,
    asked: &StandHere,
    when: When,
) -> Result<Vec<Body>, Refusal> {
    let machine = own_machine(by)?;
    overtaken::in_time(when)?;
    let at = match &asked.at {
        Stand::Mark { mark } => {
            keep_out::place_of(state, mark).ok_or_else(|| Refusal::Unknown {
                what: Thing::Mark,
                name: mark.clone(),
            })?
        }
        Stand::Still { since } => {
            let place = state.cabs.get(&machine).and_then(|cab| cab.place.as_ref());
            let same = place.filter(|card| card.since == *since);
            let card = same.ok_or_else(|| {
                overtaken::overtaken(words::stand::somebody_has_said_since_where())
            })?;
            card.at
        }
    };
    machine::place(state, &PlaceMachine { machine, at }, when)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, operator};
    use crate::said::machine::SayMoved;
    use crate::said::stop::StopAll;
    use crate::time::{minutes, seconds};
    use crate::way_in::rules::TOO_LATE_MS;

    fn stands(at: Stand) -> Command {
        Command::StandHere(StandHere { at })
    }

    fn at(mark: &str) -> Command {
        stands(Stand::Mark { mark: mark.into() })
    }

    fn still(crew: &Crew) -> Command {
        let since = shown(crew).since.expect("a place on the screen");
        stands(Stand::Still { since })
    }

    fn shown(crew: &Crew) -> StandCard {
        card(crew.state.site().unwrap(), &crew.state.cabs["EX-1"])
    }

    fn place(crew: &Crew) -> Option<earthwork::point::Point> {
        Some(crew.state.cabs["EX-1"].place.as_ref()?.at)
    }

    fn moved() -> Command {
        Command::SayMoved(SayMoved {
            machine: "EX-1".into(),
        })
    }

    #[test]
    fn one_press_in_the_cab_says_where_the_machine_stands() {
        let mut crew = Crew::digging();
        let cab = operator("EX-1");
        let mark = crew.state.site().unwrap().mark("P-1").unwrap().place;
        assert!(crew.says(&ground(), at("P-1")).is_err(), "the cab says it");
        let nowhere = crew.says(&cab, at("P-99"));
        assert!(matches!(nowhere, Err(Refusal::Unknown { .. })));
        crew.says(&cab, at("P-1")).unwrap();
        assert_eq!(place(&crew), Some(mark));
        // A slip of the finger is undone by whoever says it anew.
        crew.place("EX-1", "900 ft", "900 ft");
        crew.says(&cab, at("P-1")).unwrap();
        assert_eq!(place(&crew), Some(mark));
        crew.says(&cab, moved()).unwrap();
        assert_eq!(place(&crew), None);
    }

    #[test]
    fn the_screen_offers_the_mark_that_was_called_and_the_place_that_was_said() {
        let mut crew = Crew::digging();
        crew.says(&ground(), moved()).unwrap();
        let none = StandCard {
            since: None,
            old_at: None,
            near: None,
            called: None,
        };
        assert_eq!(shown(&crew), none);
        crew.reads("P-2", "4.70").unwrap();
        assert_eq!(shown(&crew).called.as_deref(), Some("P-2"));
        crew.says(&operator("EX-1"), at("P-1")).unwrap();
        let card = shown(&crew);
        assert_eq!(
            (card.near.as_deref(), card.since),
            (Some("P-1"), Some(crew.now))
        );
        assert_eq!(card.old_at, Some(crew.now.plus_ms(minutes(30))));
    }

    #[test]
    fn a_place_that_is_said_again_is_new_and_none_is_made_up_after_a_move_or_taken_late() {
        let mut crew = Crew::digging();
        let cab = operator("EX-1");
        crew.wait(minutes(31));
        let (old, press) = (place(&crew), still(&crew));
        crew.says(&cab, press.clone()).unwrap();
        let card = crew.state.cabs["EX-1"].place.clone().unwrap();
        assert_eq!((card.since, card.by.as_str()), (crew.now, "OP"));
        // Pressed twice: the second one answers what does not stand any more, and moves nothing.
        crew.wait(seconds(1));
        let twice = crew.says(&cab, press);
        assert!(matches!(twice, Err(Refusal::Overtaken { .. })), "{twice:?}");
        assert_eq!(place(&crew), old);
        let pressed = crew.now;
        crew.wait(TOO_LATE_MS + 1);
        for late in [still(&crew), at("P-1")] {
            let late = crew.said_at(&cab, late, pressed);
            assert!(matches!(late, Err(Refusal::SaidTooLate { .. })), "{late:?}");
        }
        let press = still(&crew);
        crew.says(&ground(), moved()).unwrap();
        let after = crew.says(&cab, press);
        assert!(matches!(after, Err(Refusal::Overtaken { .. })), "{after:?}");
        assert_eq!(place(&crew), None);
    }

    #[test]
    fn still_means_the_place_that_the_screen_showed_and_a_place_lifts_no_stop() {
        let mut crew = Crew::digging();
        let cab = operator("EX-1");
        crew.says(&cab, at("P-1")).unwrap();
        crew.wait(minutes(31));
        let press = still(&crew);
        crew.place("EX-1", "900 ft", "900 ft");
        let other = place(&crew);
        crew.wait(seconds(1));
        let overtaken = crew.says(&cab, press);
        assert!(matches!(overtaken, Err(Refusal::Overtaken { .. })));
        assert_eq!(place(&crew), other);
        crew.says(&ground(), Command::StopAll(StopAll::default()))
            .unwrap();
        crew.says(&cab, at("P-1")).unwrap();
        assert!(crew.state.cabs["EX-1"].stop.is_some());
    }
}
