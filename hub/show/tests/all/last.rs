//! Whether a last reading still speaks for its mark, as the ground phones show it.

use day::answer::Outcome;
use day::asked::{By, Command};
use day::built;
use day::given::{Crew, ground, len, reading as given_reading, site, supervisor};
use day::last::{StillCounts, difference, is_on};
use day::said::check_shot::SayBumped;
use day::said::day::OpenDay;
use day::said::reading::TakeReading;
use day::said::revise::ReviseTarget;
use day::said::site::{ConfirmSite, ReadSite};
use earthwork::tolerance::Verdict;
use show::views::ground as view;
use show::views::mark_card::MarkCard;

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
        seen: None,
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
        built[0].text.english.contains("before its target changed"),
        "{}",
        built[0].text.english
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
