//! A reading that was booked on paper while the hub was away, typed in afterwards: kept where it belongs in time, counted
//! as what was measured, labelled, and never a call.

use earthwork::tolerance::Verdict;

use super::late::newer;
use super::shot::Shot;
use super::{LateReason, Reading, ReadingLate, ReadingTaken, SpotReason, TakeReading};
use crate::call::Ending;
use crate::entry::Body;
use crate::refusal::Refusal;
use crate::said::call;
use crate::said::suspect;
use crate::state::State;
use crate::time::{Time, When, minutes};

/// Who is named on paper has a name of at most this many letters.
const LONGEST_NAME: usize = 40;

/// What becomes of it: late when a newer reading of the mark is there, a spot elevation when its laser can't speak for it,
/// else a reading without a call.
pub(super) fn bodies(
    state: &State,
    shot: &Shot<'_>,
    asked: &TakeReading,
    when: When,
    corrected: Option<u64>,
) -> Result<Vec<Body>, Refusal> {
    possible(shot, asked, when)?;
    let late = match newer(state, &asked.mark, when.made_at, corrected) {
        Some(by) => Some(LateReason::NewerReading { by }),
        None => state
            .record
            .closed
            .is_some()
            .then_some(LateReason::DayClosed),
    };
    if let Some(why) = late {
        let reading = shot.reading(asked, shot.judge(&[], false));
        return Ok(vec![Body::ReadingLate(ReadingLate { reading, why })]);
    }
    let doubted = suspect::doubted_at(state, &shot.set_up.id, when.made_at);
    let spot = shot
        .spot_reason()
        .filter(|why| *why != SpotReason::NoMachine)
        .or(doubted.then_some(SpotReason::SetUpInDoubt));
    let judged = spot
        .is_none()
        .then(|| {
            let joined = super::fit::joined(state, shot, asked, when, corrected);
            shot.judge(&joined, true)
        })
        .flatten();
    let reading = shot.reading(asked, judged);
    let over = calls_over(state, &reading, when, corrected);
    let taken = Body::ReadingTaken(ReadingTaken { reading, spot });
    Ok([taken].into_iter().chain(over).collect())
}

/// Somebody read it, and the set-up stood then as it stands now.
fn possible(shot: &Shot<'_>, asked: &TakeReading, when: When) -> Result<(), Refusal> {
    let by = asked.paper.as_deref().unwrap_or_default().trim();
    if by.is_empty() || by.chars().count() > LONGEST_NAME {
        return Err(Refusal::of_the_record(
            words::reading::say_whose_reading_as_paper(&LONGEST_NAME),
        ));
    }
    // Paper knows the minute, not the second.
    let before = |since: Time| since.ms_since(when.made_at) > minutes(1);
    if shot.set_up.since.is_some_and(before) {
        let id = &shot.set_up.id;
        return Err(Refusal::of_the_record(
            words::reading::did_not_stand_yet_time(&id),
        ));
    }
    Ok(())
}

/// Calls on this mark, or from the reading that it corrects, which are older than what the paper says.
fn calls_over(state: &State, reading: &Reading, when: When, corrected: Option<u64>) -> Vec<Body> {
    let on = reading
        .judged
        .as_ref()
        .is_some_and(|judged| judged.verdict == Verdict::On);
    let over = |machine: &String| {
        let (_, live) = state.live_call(machine)?;
        let sent = &live.sent;
        if corrected.is_some_and(|id| sent.readings.contains(&id)) {
            return call::end_live(state, machine, Ending::Restated);
        }
        let here = sent.mark.as_deref() == Some(reading.mark.as_str());
        let how = if on { Ending::Done } else { Ending::Superseded };
        (here && live.made_at < when.made_at)
            .then(|| call::end_live(state, machine, how))
            .flatten()
    };
    state.cabs.keys().filter_map(over).collect()
}

#[cfg(test)]
mod tests {
    use earthwork::length::Length;

    use super::*;
    use crate::answer::Outcome;
    use crate::asked::Command;
    use crate::built::built;
    use crate::given::{Crew, ground, operator, reading, supervisor};
    use crate::said::reading::Question;

    fn from_paper(crew: &mut Crew, mark: &str, text: &str, ago: i64) -> Result<Outcome, Refusal> {
        let paper = TakeReading {
            paper: Some(" JM ".into()),
            ..reading(mark, text)
        };
        let at = Time(crew.now.0 - minutes(ago));
        let said = crew.said_at(&ground(), Command::TakeReading(paper), at);
        said.map(|answer| answer.outcome)
    }

    /// The day's dig is told up to where the hub fell silent: DOWN at P-1 half an hour ago.
    fn dug() -> Crew {
        let mut crew = Crew::digging();
        crew.wait(minutes(5));
        crew.reads("P-1", "4.75").unwrap();
        crew.wait(minutes(30));
        crew
    }

    #[test]
    fn it_counts_as_measured_under_its_reader_and_is_no_call() {
        let mut crew = dug();
        let calls = crew.state.calls.len();
        let said = from_paper(&mut crew, "P-1", "5.00", 20).unwrap();
        assert_eq!(
            said,
            Outcome::FromPaper {
                dev: Length::ZERO,
                verdict: Verdict::On
            }
        );
        assert_eq!(crew.state.calls.len(), calls);
        let (_, taken) = crew.state.last_reading("P-1").unwrap();
        assert_eq!(taken.by, "JM");
        assert_eq!(crew.now.ms_since(taken.made_at), minutes(20));
        let as_built = built(&crew.state);
        let mark = as_built.iter().find(|one| one.mark == "P-1").unwrap();
        assert!(
            mark.paper && mark.text.english.contains("from paper"),
            "{mark:?}"
        );
    }

    #[test]
    fn a_call_that_the_paper_has_overtaken_ends_and_a_newer_one_stays() {
        let mut crew = Crew::digging();
        crew.wait(minutes(5));
        crew.reads("P-1", "4.75").unwrap();
        crew.wait(minutes(3));
        from_paper(&mut crew, "P-1", "5.00", 1).unwrap();
        assert_eq!(crew.state.live_call("EX-1"), None);
        crew.wait(minutes(2));
        crew.reads("P-2", "4.75").unwrap();
        let live = crew.state.live_call("EX-1").unwrap().0;
        crew.wait(minutes(1));
        let late = from_paper(&mut crew, "P-2", "5.00", 2).unwrap();
        assert!(matches!(late, Outcome::Late { .. }), "{late:?}");
        assert_eq!(crew.state.live_call("EX-1").unwrap().0, live);
    }

    #[test]
    fn a_slip_of_the_pen_is_asked_about_like_any_other() {
        let mut crew = dug();
        // A foot too little: the ground would have risen.
        let said = from_paper(&mut crew, "P-1", "4.00", 20).unwrap();
        let Outcome::Asked { question, .. } = said else {
            panic!("{said:?}");
        };
        assert!(matches!(question, Question::DoesNotFit { .. }));
    }

    #[test]
    fn a_laser_that_was_in_doubt_then_makes_it_a_spot_elevation() {
        let mut crew = dug();
        // The check fails by 0.13: whatever was read since the last good one is in doubt.
        crew.check("S1", "BM-2", "3.13").unwrap();
        let said = from_paper(&mut crew, "P-1", "5.00", 20).unwrap();
        assert!(
            matches!(
                said,
                Outcome::Spot {
                    why: SpotReason::SetUpInDoubt,
                    ..
                }
            ),
            "{said:?}"
        );
        let (_, taken) = crew.state.last_reading("P-1").unwrap();
        assert_eq!(taken.reading.judged, None);
    }

    #[test]
    fn without_a_reader_or_before_its_set_up_it_is_refused_with_what_to_do() {
        let mut crew = dug();
        let early = from_paper(&mut crew, "P-1", "5.00", 600).unwrap_err();
        assert!(early.to_string().contains("mend the time"), "{early}");
        let nobody = TakeReading {
            paper: Some(" ".into()),
            ..reading("P-1", "5.00")
        };
        let nobody = crew.says(&ground(), Command::TakeReading(nobody));
        assert!(nobody.unwrap_err().to_string().contains("whose reading"));
    }

    #[test]
    fn only_who_may_read_may_type_it_in() {
        let mut crew = dug();
        for (by, may) in [(operator("EX-1"), false), (supervisor(), true)] {
            let paper = TakeReading {
                paper: Some("JM".into()),
                ..reading("P-2", "5.00")
            };
            let said = crew.says(&by, Command::TakeReading(paper));
            assert_eq!(said.is_ok(), may, "{said:?}");
        }
    }
}
