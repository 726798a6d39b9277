//! Tests: a reading on a benchmark proves that the set-up still holds, or puts it in doubt.

use super::*;
use crate::answer::Outcome;
use crate::asked::Command;
use crate::cab::{self, Fills};
use crate::given::{Crew, ground, len};
use crate::said::set_up::{CloseSetUp, LevelAgain, RestateSetUp, UseOneBenchmark};

fn slips(outcome: &Outcome) -> Vec<Slip> {
    match outcome {
        Outcome::Checked { slips, .. } => slips.clone(),
        other => panic!("not a check: {other:?}"),
    }
}

fn paused(crew: &Crew, machine: &str) -> bool {
    matches!(cab::fills(&crew.state, machine), Fills::Pause { .. })
}

#[test]
fn a_second_benchmark_proves_a_set_up_and_the_first_again_does_not() {
    let mut crew = Crew::opened();
    crew.set_up("BM-1", "5.00");
    crew.check("S1", "BM-1", "5.00").unwrap();
    assert!(!crew.state.set_up("S1").unwrap().usable());
    crew.check("S1", "BM-2", "3.48").unwrap();
    assert!(crew.state.set_up("S1").unwrap().usable());
}

/// Between the two shots somebody set the tripod up again, 0.25 higher: 5.25 on BM-1 tells it from a misread foot or tenth.
#[test]
fn a_laser_lifted_between_the_two_shots_is_asked_about_with_the_shot_that_tells_and_is_never_put_right_by_itself()
 {
    let mut crew = Crew::opened();
    crew.set_up("BM-1", "5.00");
    let answer = crew.check("S1", "BM-2", "3.73").unwrap();
    let moved = Slip::LaserMoved {
        shoot: "BM-1".into(),
        reads: len("5.25 ft"),
    };
    assert_eq!(slips(&answer.outcome).first(), Some(&moved));
    let tells = crew.check("S1", "BM-1", "5.25").unwrap();
    assert!(matches!(
        tells.outcome,
        Outcome::Checked { residual, usable: false, .. } if residual == len("-0.25 ft")
    ));
    let set_up = crew.state.set_up("S1").unwrap();
    assert_eq!(
        (set_up.height(), set_up.usable()),
        (len("105.00 ft"), false)
    );
}

#[test]
fn the_wrong_benchmark_is_asked_about_first_and_never_put_right_by_itself() {
    let mut crew = Crew::opened();
    // The rod was on BM-2, BM-1 was picked: BM-2 then reads low by 101.52 − 100.00 = 1.52.
    crew.set_up("BM-1", "3.48");
    let answer = crew.check("S1", "BM-2", "3.48").unwrap();
    let Outcome::Checked { residual, .. } = answer.outcome else {
        panic!()
    };
    assert_eq!(residual, len("-1.52 ft"));
    assert!(matches!(
        slips(&answer.outcome).first(),
        Some(Slip::OtherBenchmark { perhaps, .. }) if perhaps == "BM-2"
    ));
    assert_eq!(crew.state.set_up("S1").unwrap().height(), len("103.48 ft"));
    crew.says(
        &ground(),
        Command::RestateSetUp(RestateSetUp {
            set_up: "S1".into(),
            benchmark: "BM-2".into(),
            rod: "A".into(),
            text: "3.48".into(),
        }),
    )
    .unwrap();
    let set_up = crew.state.set_up("S1").unwrap();
    assert_eq!(set_up.height(), len("105.00 ft"));
    assert_eq!(set_up.basis.len(), 2);
    assert!(!set_up.usable());
}

#[test]
fn a_failed_check_takes_the_numbers_away_until_two_benchmarks_agree() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.70").unwrap();
    crew.check("S1", "BM-2", "3.35").unwrap();
    assert!(paused(&crew, "EX-1") && paused(&crew, "EX-2"));
    assert!(crew.state.live_call("EX-1").is_none());
    let spot = crew.reads("P-1", "4.80").unwrap();
    assert!(matches!(spot.outcome, Outcome::Spot { .. }));
    crew.check("S1", "BM-2", "3.48").unwrap();
    crew.check("S1", "BM-2", "3.48").unwrap();
    assert!(paused(&crew, "EX-1"), "one benchmark twice is not two");
    crew.check("S1", "BM-1", "5.00").unwrap();
    assert!(!paused(&crew, "EX-1"));
    assert!(
        crew.state.live_call("EX-1").is_none(),
        "an ended call never comes back"
    );
    assert!(crew.reads("P-1", "4.80").is_ok());
}

#[test]
fn between_good_and_failed_it_is_shot_again_and_nothing_changes() {
    let mut crew = Crew::digging();
    let answer = crew.check("S1", "BM-2", "3.46").unwrap();
    assert!(matches!(
        answer.outcome,
        Outcome::Checked {
            check: Check::Again,
            usable: true,
            ..
        }
    ));
    assert!(crew.state.set_up("S1").unwrap().usable());
}

#[test]
fn a_bump_pauses_the_cabs_at_once() {
    let mut crew = Crew::digging();
    let bumped = SayBumped {
        set_up: "S1".into(),
    };
    crew.says(&ground(), Command::SayBumped(bumped)).unwrap();
    assert!(paused(&crew, "EX-1") && paused(&crew, "EX-2"));
}

#[test]
fn a_new_proven_set_up_lifts_the_pause_too() {
    let mut crew = Crew::digging();
    crew.check("S1", "BM-2", "3.35").unwrap();
    crew.says(
        &ground(),
        Command::CloseSetUp(CloseSetUp {
            set_up: "S1".into(),
            why: "legs moved".into(),
        }),
    )
    .unwrap();
    assert!(paused(&crew, "EX-1"));
    crew.set_up("BM-1", "6.00");
    crew.check("S2", "BM-2", "4.48").unwrap();
    assert!(!paused(&crew, "EX-1"));
}

#[test]
fn with_more_than_one_benchmark_one_is_not_enough() {
    let mut crew = Crew::opened();
    crew.set_up("BM-1", "5.00");
    let one = Command::UseOneBenchmark(UseOneBenchmark {
        set_up: "S1".into(),
    });
    assert!(matches!(
        crew.says(&ground(), one),
        Err(Refusal::SecondBenchmarkThere { .. })
    ));
}

#[test]
fn the_only_benchmark_levelled_again_from_a_changed_height_proves_a_set_up() {
    let mut crew = Crew::opened();
    crew.state
        .site
        .as_mut()
        .unwrap()
        .site
        .benchmarks
        .truncate(1);
    crew.set_up("BM-1", "5.00");
    let again = |benchmark_again: &str, point_again: &str| {
        Command::LevelAgain(LevelAgain {
            set_up: "S1".into(),
            rod: "A".into(),
            point_before: "4.20".into(),
            benchmark_again: benchmark_again.into(),
            point_again: point_again.into(),
        })
    };
    // The same height again would repeat the same slip.
    assert!(crew.says(&ground(), again("5.00", "4.20")).is_err());
    // 0.30 higher, but the point is off by 0.10.
    assert!(crew.says(&ground(), again("5.30", "4.60")).is_err());
    crew.says(&ground(), again("5.30", "4.50")).unwrap();
    let set_up = crew.state.set_up("S1").unwrap();
    assert!(set_up.usable());
    assert_eq!(set_up.height(), len("105.30 ft"));
}

#[test]
fn two_lasers_at_nearly_the_same_height_are_refused() {
    let mut crew = Crew::digging();
    let alike = Command::SetUpLaser(set_up::SetUpLaser {
        laser: "L1".into(),
        place: None,
        benchmark: "BM-1".into(),
        rod: "A".into(),
        text: "5.40".into(),
        slope: None,
    });
    assert_eq!(
        crew.says(&ground(), alike),
        Err(Refusal::SetUpsAlike {
            set_up: "S1".into()
        })
    );
}
