//! Does a mark's last reading still speak for it? The one rule, for every view: an old result never stands beside a new target.
//!
//! A reading counts while what is asked at its mark is what it was judged against, while the laser that it was taken with is
//! in no doubt that touches it, and while nothing has voided it. What a day before left counts on the next day by the same rule.

use earthwork::length::Length;
use earthwork::tolerance::Verdict;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::built::{self, BuiltMark, LaserDoubt};
use crate::said::reading::{StepSide, surface_at};
use crate::said::suspect::Standing;
use crate::state::{State, TakenReading};
use crate::state::SetUpState;

/// Whether a last reading still speaks for its mark, and why not.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum StillCounts {
    /// It does.
    Counts,
    /// What is asked there has changed since: it says nothing of the new target.
    BeforeChange,
    /// The laser may have moved before it.
    LaserInDoubt {
        /// The set-up.
        set_up: String,
    },
    /// Something happened to the ground.
    Void {
        /// What, in English.
        english: String,
        /// The same in Spanish.
        spanish: String,
    },
}

/// What a reading was judged against.
struct Against<'a> {
    mark: &'a str,
    target: &'a str,
    revision: u32,
    dig_to: Length,
    side: Option<StepSide>,
    surface: Option<&'a str>,
}

/// The same rule for a reading of this day.
pub(crate) fn of_reading(state: &State, id: u64, taken: &TakenReading) -> StillCounts {
    let reading = &taken.reading;
    if let Some(judged) = &reading.judged
        && changed(
            state,
            &Against {
                mark: &reading.mark,
                target: &judged.target,
                revision: judged.revision,
                dig_to: judged.dig_to,
                side: reading.side,
                surface: judged.surface.as_deref(),
            },
        )
    {
        return StillCounts::BeforeChange;
    }
    if let Some(set_up) = doubted_by(state, id, taken) {
        return StillCounts::LaserInDoubt { set_up };
    }
    let now = state.marks.get(&reading.mark);
    match now.and_then(|now| now.void.as_ref()) {
        Some((_, why)) => StillCounts::Void {
            english: why.english(),
            spanish: why.spanish(),
        },
        None => StillCounts::Counts,
    }
}

/// The same rule for what a day before left.
pub(crate) fn of_before(state: &State, before: &BuiltMark) -> StillCounts {
    if changed_since(state, before) {
        return StillCounts::BeforeChange;
    }
    if before.doubt == LaserDoubt::Open {
        let set_up = before.set_up.clone();
        return StillCounts::LaserInDoubt { set_up };
    }
    match &before.void {
        Some(why) => StillCounts::Void {
            english: why.english(),
            spanish: why.spanish(),
        },
        None => StillCounts::Counts,
    }
}

/// Whether what is asked at a mark differs from what its last reading was judged against.
pub(crate) fn changed_since(state: &State, built: &BuiltMark) -> bool {
    let Some((target, (revision, dig_to))) = built
        .target
        .as_deref()
        .zip(built.revision.zip(built.dig_to))
    else {
        return false;
    };
    changed(
        state,
        &Against {
            mark: &built.mark,
            target,
            revision,
            dig_to,
            side: built.side,
            surface: built.surface.as_deref(),
        },
    )
}

/// Whether a mark's last reading found it on grade, and that still holds.
pub(crate) fn is_on(state: &State, mark: &str) -> bool {
    if let Some((id, taken)) = state.last_reading(mark) {
        let judged = taken.reading.judged.as_ref();
        return judged.is_some_and(|judged| judged.verdict == Verdict::On)
            && of_reading(state, id, taken) == StillCounts::Counts;
    }
    built::before(state, mark).is_some_and(|before| {
        before.verdict == Some(Verdict::On) && of_before(state, &before) == StillCounts::Counts
    })
}

/// The difference that stands at a mark: positive is HIGH; none when nothing counts there.
pub(crate) fn difference(state: &State, mark: &str) -> Option<Length> {
    if let Some((id, taken)) = state.last_reading(mark) {
        let counts = of_reading(state, id, taken) == StillCounts::Counts;
        return Some(taken.reading.judged.as_ref().filter(|_| counts)?.mean);
    }
    let before = built::before(state, mark)?;
    (of_before(state, &before) == StillCounts::Counts).then_some(before.mean)?
}

fn changed(state: &State, was: &Against<'_>) -> bool {
    let Some(site) = state.site() else {
        return false;
    };
    let Some(target) = site.target(was.target) else {
        return true;
    };
    if target.revision != was.revision {
        return true;
    }
    // A place that is no mark has its elevation from its own figures, which nothing but a revision changes.
    site.mark(was.mark).is_some_and(|mark| {
        mark.target.as_deref() != Some(was.target)
            || surface_at(target, mark, was.side, was.surface).ok() != Some(was.dig_to)
    })
}

/// The set-up whose doubt touches this reading: it may have moved before it, or nothing can be said yet.
fn doubted_by(state: &State, id: u64, taken: &TakenReading) -> Option<String> {
    let reading = &taken.reading;
    let owed = state
        .suspects
        .iter()
        .find(|suspect| suspect.open.contains(&reading.mark));
    if let Some(suspect) = owed {
        return Some(suspect.window.set_up.clone());
    }
    let set_up = state.set_up(&reading.set_up)?;
    let judged_both_ways = state
        .suspects
        .iter()
        .flat_map(|suspect| &suspect.window.marks)
        .any(|mark| mark.reading == id && mark.standing == Standing::Stands);
    let since_good = set_up.good_at.is_none_or(|good_at| taken.made_at > good_at);
    let in_doubt = matches!(set_up.state, SetUpState::InDoubt { .. });
    (in_doubt && since_good && !judged_both_ways).then(|| set_up.id.clone())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::answer::Outcome;
    use crate::asked::{By, Command};
    use crate::given::{Crew, ground, len, reading as given_reading, site, supervisor};
    use crate::said::check_shot::SayBumped;
    use crate::said::day::OpenDay;
    use crate::said::reading::TakeReading;
    use crate::said::revise::ReviseTarget;
    use crate::said::site::{ConfirmSite, ReadSite};
    use crate::views::ground::{self as view, MarkCard};

    fn card(crew: &Crew, mark: &str) -> MarkCard {
        let marks = view::view(&crew.state).unwrap().marks;
        marks.into_iter().find(|card| card.id == mark).unwrap()
    }

    fn revise(crew: &mut Crew, thickness: &str) {
        let old = crew.state.site().unwrap().target("PAD").unwrap().clone();
        let mut grade = old.grade.clone();
        grade.stack.layers[0].thickness = len(thickness);
        let revise = ReviseTarget {
            target: "PAD".into(),
            grade,
            tolerance: old.tolerance,
            why: "sketch of this morning".into(),
        };
        crew.says(&supervisor(), Command::ReviseTarget(revise))
            .unwrap();
    }

    /// 105.00 − 4.99 = 100.01: on grade at +0.01. The pad is then dug 0.25 ft deeper: +0.26 against it, and nobody may read ON.
    #[test]
    fn after_a_revision_the_last_reading_is_said_to_be_of_before() {
        let mut crew = Crew::digging();
        crew.reads("P-1", "4.99").unwrap();
        let before = card(&crew, "P-1");
        assert_eq!(before.counts, StillCounts::Counts);
        assert_eq!(before.verdict, Some(Verdict::On));
        revise(&mut crew, "0.75 ft");
        let after = card(&crew, "P-1");
        assert_eq!(after.counts, StillCounts::BeforeChange);
        assert_eq!((after.verdict, after.dev), (None, None));
        assert_eq!(after.was, Some(len("0.01 ft")));
        assert!(!is_on(&crew.state, "P-1"));
        assert_eq!(difference(&crew.state, "P-1"), None);
        let built = built::built(&crew.state);
        assert!(
            built[0].english.contains("before its target changed"),
            "{}",
            built[0].english
        );
        // What was dug meanwhile is asked about once, and is right.
        let asked = crew.reads("P-1", "5.24").unwrap().outcome;
        if let Outcome::Asked { reading, .. } = asked {
            let sure = TakeReading {
                sure: Some(reading),
                ..given_reading("P-1", "5.24")
            };
            crew.says(&ground(), Command::TakeReading(sure)).unwrap();
        }
        assert_eq!(card(&crew, "P-1").counts, StillCounts::Counts);
    }

    #[test]
    fn a_changed_file_and_a_mark_given_to_another_target_count_as_changes() {
        let mut moved = site();
        moved.marks[0].target = Some("RUN".into());
        let mut thicker = site();
        thicker.targets[0].grade.stack.layers.clear();
        for changed in [moved, thicker] {
            let mut crew = Crew::digging();
            crew.reads("P-1", "4.99").unwrap();
            crew.says(&By::hub(), Command::ReadSite(ReadSite { site: changed }))
                .unwrap();
            let found = crew.state.site_change.clone().unwrap().found.digest;
            let take = ConfirmSite { digest: found };
            crew.says(&supervisor(), Command::ConfirmSite(take))
                .unwrap();
            assert_eq!(card(&crew, "P-1").counts, StillCounts::BeforeChange);
            assert_eq!(card(&crew, "P-1").verdict, None);
        }
    }

    #[test]
    fn a_laser_in_doubt_is_said_beside_each_reading_that_it_touches() {
        let mut crew = Crew::digging();
        crew.reads("P-1", "4.99").unwrap();
        let bumped = SayBumped {
            set_up: "S1".into(),
        };
        crew.says(&ground(), Command::SayBumped(bumped)).unwrap();
        let doubted = card(&crew, "P-1");
        let set_up = "S1".to_owned();
        assert_eq!(doubted.counts, StillCounts::LaserInDoubt { set_up });
        assert_eq!((doubted.verdict, doubted.was), (None, Some(len("0.01 ft"))));
    }

    /// The next day every mark carries what was built, with its day, until it is read again; a revision then counts as before.
    #[test]
    fn the_second_day_shows_what_was_built() {
        let mut crew = Crew::digging();
        crew.reads("P-1", "4.99").unwrap();
        crew.wait(60_000);
        crew.check("S1", "BM-2", "3.48").unwrap();
        let day = OpenDay {
            day: "2030-05-15".into(),
        };
        crew.says(&By::hub(), Command::OpenDay(day)).unwrap();
        let kept = card(&crew, "P-1");
        assert_eq!(kept.day.as_deref(), Some("2030-05-14"));
        assert_eq!(
            (kept.verdict, kept.dev),
            (Some(Verdict::On), Some(len("0.01 ft")))
        );
        assert!(is_on(&crew.state, "P-1"));
        assert!(!is_on(&crew.state, "P-2"));
        revise(&mut crew, "0.75 ft");
        assert_eq!(card(&crew, "P-1").counts, StillCounts::BeforeChange);
        assert_eq!(card(&crew, "P-1").verdict, None);
    }
}
