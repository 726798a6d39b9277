//! What stands and what is shot again after a failed check, told as a day.

use day::answer::Outcome;
use day::asked::Command;
use day::given::{Crew, ground, len, reading};
use day::said::check_shot::SayBumped;
use day::said::set_up::CloseSetUp;
use day::said::suspect::{Standing, SuspectMark};
use day::time::minutes;
use earthwork::length::Length;
use show::views::{ground as ground_view, supervisor};

/// The card of the only window, as the ground phones show it.
fn card(crew: &Crew) -> Option<show::views::laser_cards::SuspectCard> {
    let cards = ground_view::view(&crew.state).unwrap().suspects;
    assert!(cards.len() <= 1);
    cards.into_iter().next()
}

fn names(marks: &[SuspectMark]) -> Vec<&str> {
    marks.iter().map(|mark| mark.mark.as_str()).collect()
}

fn bump(crew: &mut Crew) {
    let bumped = Command::SayBumped(SayBumped {
        set_up: "S1".into(),
    });
    crew.says(&ground(), bumped).unwrap();
}

/// Dig-to is 100.00, HI 105.00: the pad is allowed +0.10 and −0.20. Found 0.13 too high, −0.11 becomes −0.24 (out),
/// +0.01 becomes −0.12 (in), and a mark from before the last good check is not in doubt. Invented figures.
#[test]
fn only_what_may_be_wrong_is_shot_again() {
    let mut crew = Crew::digging();
    crew.reads("R-1", "7.00").unwrap();
    crew.wait(minutes(1));
    crew.check("S1", "BM-2", "3.48").unwrap();
    crew.reads("P-2", "5.11").unwrap();
    crew.reads("P-1", "4.90").unwrap();
    crew.reads("P-1", "4.99").unwrap();
    crew.wait(minutes(2));
    crew.check("S1", "BM-2", "3.35").unwrap();
    let found = card(&crew).unwrap();
    assert_eq!(found.readings, 3);
    assert_eq!(found.residual, Some(len("0.13 ft")));
    assert_eq!(names(&found.shoot_again), ["P-2"]);
    assert_eq!(names(&found.stand), ["P-1"]);
    let stands = &found.stand[0];
    assert_eq!(
        (stands.dev, stands.dev_if_moved),
        (Some(len("0.01 ft")), Some(len("-0.12 ft")))
    );
    // A spot elevation from the doubted laser settles nothing; a shot from a proven one does.
    crew.reads("P-2", "5.24").unwrap();
    assert_eq!(names(&card(&crew).unwrap().shoot_again), ["P-2"]);
    crew.says(
        &ground(),
        Command::CloseSetUp(CloseSetUp {
            set_up: "S1".into(),
            why: "legs moved".into(),
        }),
    )
    .unwrap();
    crew.set_up("BM-1", "6.00");
    crew.check("S2", "BM-2", "4.48").unwrap();
    crew.wait(minutes(2));
    let mut again = reading("P-2", "6.24");
    again.set_up = "S2".into();
    let answer = crew.says(&ground(), Command::TakeReading(again)).unwrap();
    assert!(
        matches!(answer.outcome, Outcome::Called { .. }),
        "{answer:?}"
    );
    assert_eq!(card(&crew), None, "nothing is owed any more");
    let kept = supervisor::view(&crew.state).unwrap().suspects;
    assert_eq!(names(&kept[0].stand), ["P-1"], "the report still says so");
}

/// A repeat that was asked about is a reading of the window, and the acceptance before it stands.
#[test]
fn an_accepted_mark_that_was_only_repeated_keeps_its_acceptance() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "5.00").unwrap();
    crew.check("S1", "BM-2", "3.48").unwrap();
    let asked = crew.reads("P-1", "4.87").unwrap();
    assert!(matches!(asked.outcome, Outcome::Asked { .. }), "{asked:?}");
    crew.wait(minutes(2));
    crew.check("S1", "BM-2", "3.35").unwrap();
    let found = card(&crew).unwrap();
    assert_eq!((found.readings, found.shoot_again.len()), (1, 0));
    assert_eq!(found.stand[0].standing, Standing::EarlierStands);
    assert_eq!(found.stand[0].dev, Some(Length::ZERO));
    assert!(
        found.moved_by.is_some(),
        "the repeat shows when at the latest"
    );
}

#[test]
fn without_a_later_benchmark_everything_is_unproven() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "5.00").unwrap();
    bump(&mut crew);
    let found = card(&crew).unwrap();
    assert_eq!((found.to, found.residual), (None, None));
    assert_eq!(found.shoot_again[0].standing, Standing::Unproven);
    // The first benchmark after the bump says what it did: nothing.
    crew.wait(minutes(1));
    crew.check("S1", "BM-2", "3.48").unwrap();
    let found = card(&crew).unwrap();
    assert_eq!(names(&found.stand), ["P-1"]);
    assert_eq!(found.residual, Some(Length::ZERO));
}

/// A laser taken down without a closing check leaves its last readings unproven.
#[test]
fn taken_down_unchecked_is_unproven() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "5.00").unwrap();
    crew.wait(minutes(1));
    crew.check("S1", "BM-2", "3.48").unwrap();
    crew.reads("P-2", "5.00").unwrap();
    crew.says(
        &ground(),
        Command::CloseSetUp(CloseSetUp {
            set_up: "S1".into(),
            why: "going home".into(),
        }),
    )
    .unwrap();
    let found = card(&crew).unwrap();
    assert_eq!(names(&found.shoot_again), ["P-2"]);
    assert_eq!(found.shoot_again[0].standing, Standing::Unproven);
}

/// The failed check was itself a slip: when two benchmarks agree again, the readings stand.
#[test]
fn a_laser_that_had_not_moved_gives_its_readings_back() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "5.11").unwrap();
    crew.wait(minutes(1));
    crew.check("S1", "BM-2", "3.35").unwrap();
    assert_eq!(names(&card(&crew).unwrap().shoot_again), ["P-1"]);
    crew.wait(minutes(1));
    crew.check("S1", "BM-2", "3.48").unwrap();
    crew.check("S1", "BM-1", "5.00").unwrap();
    assert_eq!(card(&crew), None);
    let kept = supervisor::view(&crew.state).unwrap().suspects;
    assert_eq!(names(&kept[0].stand), ["P-1"]);
}
