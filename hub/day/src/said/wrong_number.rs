//! WRONG NUMBER: a reading that was taken is called wrong. Its call leaves the screen at once, before anything is typed anew,
//! and nothing is compared or averaged with it any more.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::call::Ending;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::Refusal;
use crate::said::{call, suspect};
use crate::saying::{Asking, Closed, Saying};
use crate::state::{State, TakenReading};

/// A reading was wrong, whatever the right one is.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct WrongNumber {
    /// The entry of the reading.
    pub reading: u64,
}

impl Saying for WrongNumber {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        say(at.state, self)
    }
}

/// A reading counts no more: somebody called it wrong.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct ReadingCalledWrong {
    /// The entry of the reading.
    pub reading: u64,
    /// The mark.
    pub mark: String,
    /// As it was typed.
    pub text: String,
}

impl Happening for ReadingCalledWrong {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        counts_no_more(state, self.reading);
    }
}

/// Ends every call that rests on the reading. Said once more, or of a reading that was typed anew meanwhile, it changes nothing.
pub(crate) fn say(state: &State, asked: &WrongNumber) -> Result<Vec<Body>, Refusal> {
    let taken = state
        .readings
        .get(&asked.reading)
        .ok_or(Refusal::NoSuchReading)?;
    if taken.restated {
        return Ok(vec![]);
    }
    let wrong = Body::ReadingCalledWrong(ReadingCalledWrong {
        reading: asked.reading,
        mark: taken.reading.mark.clone(),
        text: taken.reading.text.clone(),
    });
    let rests = |machine: &&String| {
        state
            .live_call(machine)
            .is_some_and(|(_, call)| call.sent.readings.contains(&asked.reading))
    };
    let over = state.cabs.keys().filter(rests);
    let over = over.filter_map(|machine| call::end_live(state, machine, Ending::Restated));
    Ok([wrong].into_iter().chain(over).collect())
}

/// A reading that was wrong, or that another one corrects: its mark stands as it stood before, and what the reading had
/// settled there is open again.
pub(crate) fn counts_no_more(state: &mut State, reading: u64) {
    let Some(taken) = state.readings.get_mut(&reading) else {
        return;
    };
    if taken.restated {
        return;
    }
    taken.restated = true;
    let TakenReading {
        reading: wrong,
        made_at,
        cleared,
        shot_again,
        ..
    } = taken.clone();
    if let Some(mark) = state.marks.get_mut(&wrong.mark) {
        let was_last = mark.last == Some(reading);
        mark.readings.remove(&(made_at, reading));
        mark.last = mark.readings.last().map(|(_, id)| *id);
        mark.ruling = None;
        if was_last && mark.void.is_none() {
            mark.void = cleared;
        }
    }
    suspect::not_shot(state, &shot_again, &wrong.mark);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::answer::{Answer, Outcome};
    use crate::asked::Command;
    use crate::call::CallState;
    use crate::given::{Crew, ground, operator, reading};
    use crate::said::reading::TakeReading;
    use crate::time::seconds;

    fn wrong(crew: &mut Crew, reading: u64) -> Result<Answer, Refusal> {
        crew.says(&ground(), Command::WrongNumber(WrongNumber { reading }))
    }

    #[test]
    fn the_call_leaves_the_screen_before_the_right_number_is_typed() {
        let mut crew = Crew::digging();
        let first = crew.reads("P-1", "4.70").unwrap();
        let (call, _) = crew.state.live_call("EX-1").unwrap();
        wrong(&mut crew, first.first).unwrap();
        assert!(crew.state.live_call("EX-1").is_none());
        let ended = CallState::Ended {
            how: Ending::Restated,
        };
        assert_eq!(crew.state.calls[&call].state, ended);
        assert!(crew.state.last_reading("P-1").is_none());
    }

    /// 4.70 and then 5.00 on ground that nobody has touched would be asked about, and 4.70 with 4.72 would be averaged.
    #[test]
    fn the_next_shot_is_neither_compared_nor_averaged_with_it() {
        for (text, plain) in [("5.00", true), ("4.72", false)] {
            let mut crew = Crew::digging();
            let first = crew.reads("P-1", "4.70").unwrap();
            wrong(&mut crew, first.first).unwrap();
            crew.wait(seconds(5));
            let again = TakeReading {
                restates: (!plain).then_some(first.first),
                ..reading("P-1", text)
            };
            let said = crew.says(&ground(), Command::TakeReading(again)).unwrap();
            assert!(
                matches!(said.outcome, Outcome::Called { .. }),
                "{text}: {said:?}"
            );
            let taken = &crew.state.readings[&said.first].reading;
            assert_eq!(taken.judged.as_ref().unwrap().joined, Vec::<u64>::new());
        }
    }

    /// Of two shots that are averaged the first is called wrong: the third stands with the second alone.
    #[test]
    fn a_wrong_shot_among_averaged_ones_is_left_out_of_the_next_mean() {
        let mut crew = Crew::digging();
        let first = crew.reads("P-1", "4.70").unwrap();
        crew.wait(seconds(10));
        let second = crew.reads_now("P-1", "4.71").unwrap();
        let joined = |crew: &Crew, id: u64| {
            let judged = crew.state.readings[&id].reading.judged.clone();
            judged.unwrap().joined
        };
        assert_eq!(joined(&crew, second.first), [first.first]);
        wrong(&mut crew, first.first).unwrap();
        assert!(crew.state.live_call("EX-1").is_none(), "it rested on both");
        crew.wait(seconds(10));
        let third = crew.reads_now("P-1", "4.72").unwrap();
        assert_eq!(joined(&crew, third.first), [second.first]);
    }

    #[test]
    fn said_twice_or_after_the_right_number_it_takes_nothing_else_away() {
        let mut crew = Crew::digging();
        let first = crew.reads("P-1", "4.70").unwrap();
        wrong(&mut crew, first.first).unwrap();
        crew.wait(seconds(5));
        let right = TakeReading {
            restates: Some(first.first),
            ..reading("P-1", "4.80")
        };
        crew.says(&ground(), Command::TakeReading(right)).unwrap();
        let live = crew.state.live_call("EX-1").unwrap().0;
        let twice = wrong(&mut crew, first.first).unwrap();
        assert_eq!(twice, Answer::nothing());
        assert_eq!(crew.state.live_call("EX-1").unwrap().0, live);
    }

    #[test]
    fn a_reading_that_nobody_took_and_a_word_from_the_cab_are_refused() {
        let mut crew = Crew::digging();
        assert_eq!(wrong(&mut crew, 99_999), Err(Refusal::NoSuchReading));
        let first = crew.reads("P-1", "4.70").unwrap();
        let from_cab = WrongNumber {
            reading: first.first,
        };
        let said = crew.says(&operator("EX-1"), Command::WrongNumber(from_cab));
        assert!(matches!(said, Err(Refusal::NotAllowed { .. })));
    }

    /// A mark that the bump put in doubt is shot again, and that shot was wrong: it is owed again.
    #[test]
    fn what_the_wrong_reading_had_settled_is_owed_again() {
        let mut crew = Crew::digging();
        crew.reads("P-1", "5.00").unwrap();
        crew.check("S1", "BM-2", "3.28").unwrap();
        crew.check("S1", "BM-2", "3.28").unwrap();
        crew.set_up("BM-1", "5.00");
        crew.check("S2", "BM-2", "3.48").unwrap();
        let owed = |crew: &Crew| {
            let mut open = crew.state.suspects.iter();
            open.any(|suspect| suspect.open.contains("P-1"))
        };
        assert!(owed(&crew));
        let again = TakeReading {
            set_up: "S2".into(),
            ..reading("P-1", "5.00")
        };
        crew.wait(seconds(60));
        let shot = crew.says(&ground(), Command::TakeReading(again)).unwrap();
        assert!(!owed(&crew), "{shot:?}");
        wrong(&mut crew, shot.first).unwrap();
        assert!(owed(&crew));
    }
}
