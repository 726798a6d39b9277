//! Readings: what is called, asked, late, averaged, settled. Set-up: HI 105.00, pad dig-to 100.00, run 98.00 and 97.00.

use earthwork::correction::{Amount, Correction};
use earthwork::slip::{Doubt, Mode};
use earthwork::tolerance::Verdict;

use super::*;
use crate::answer::Outcome;
use crate::asked::Command;
use crate::cab::{self, Fills};
use crate::call::{CallState, Ending, Label, Message};
use crate::given::{Crew, ground, len, reading, supervisor};
use crate::said::rule::{Rule, Ruling};
use crate::time::{minutes, seconds};

fn line(outcome: &Outcome) -> &str {
    match outcome {
        Outcome::Called { text, .. } => &text.english,
        other => panic!("no call: {other:?}"),
    }
}

#[test]
fn a_rod_reading_becomes_a_correction() {
    // Derived from HI − rod: 105.00 − 4.70 = 100.30, 0.30 above 100.00.
    let mut crew = Crew::digging();
    let answer = crew.reads("P-1", "4.70").unwrap();
    assert_eq!(line(&answer.outcome), "DOWN 3");
    let (_, call) = crew.state.live_call("EX-1").unwrap();
    let Message::Measured {
        correction, dev, ..
    } = call.sent.message
    else {
        panic!("not measured")
    };
    assert_eq!(dev, len("0.30 ft"));
    assert_eq!(correction, Correction::Down(Amount::HalfTenths(6)));
}

#[test]
fn an_unproven_laser_tells_nobody_anything() {
    let mut crew = Crew::opened();
    crew.set_up("BM-1", "5.00");
    assert_eq!(
        crew.reads("P-1", "4.70"),
        Err(Refusal::SetUpNotProven {
            set_up: "S1".into()
        })
    );
}

#[test]
fn a_newer_call_takes_the_place_of_the_older() {
    let mut crew = Crew::digging();
    let first = crew.reads("P-1", "4.50").unwrap();
    let Outcome::Called { call, .. } = first.outcome else {
        panic!()
    };
    crew.reads("P-1", "4.70").unwrap();
    let ended = CallState::Ended {
        how: Ending::Superseded,
    };
    assert_eq!(crew.state.calls[&call].state, ended);
    let answer = crew.reads("P-1", "5.00").unwrap();
    assert_eq!(line(&answer.outcome), "GRADE");
}

#[test]
fn a_reading_made_before_the_newest_is_late_and_never_shown() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.70").unwrap();
    let made_at = crew.now.plus_ms(seconds(-10));
    let late = crew
        .said_at(
            &ground(),
            Command::TakeReading(reading("P-1", "4.40")),
            made_at,
        )
        .unwrap();
    assert!(matches!(
        late.outcome,
        Outcome::Late {
            why: LateReason::NewerReading { .. }
        }
    ));
    assert_eq!(
        crew.state.live_call("EX-1").unwrap().1.sent.text.english,
        "DOWN 3"
    );
}

#[test]
fn a_reading_older_than_ninety_seconds_is_late() {
    let mut crew = Crew::digging();
    let exactly = crew.now.plus_ms(seconds(-90));
    crew.said_at(
        &ground(),
        Command::TakeReading(reading("P-1", "4.70")),
        exactly,
    )
    .unwrap();
    let mut other = Crew::digging();
    let over = other.now.plus_ms(seconds(-90) - 1);
    let late = other
        .said_at(
            &ground(),
            Command::TakeReading(reading("P-1", "4.70")),
            over,
        )
        .unwrap();
    assert!(matches!(late.outcome, Outcome::Late { .. }));
    assert!(other.state.live_call("EX-1").is_none());
}

#[test]
fn low_after_high_on_a_receiver_is_asked_about_once() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.60").unwrap();
    crew.wait(minutes(2));
    let mut low = reading("P-1", "1");
    low.mode = Mode::ReceiverLow;
    let asked = crew
        .says(&ground(), Command::TakeReading(low.clone()))
        .unwrap();
    let Outcome::Asked {
        reading: id,
        question,
        ..
    } = asked.outcome
    else {
        panic!("not asked")
    };
    assert_eq!(
        question,
        Question::DoesNotFit {
            doubt: Doubt::WhichWay
        }
    );
    low.sure = Some(id);
    let told = crew.says(&ground(), Command::TakeReading(low)).unwrap();
    assert_eq!(line(&told.outcome), "GRADE");
}

#[test]
fn two_shots_inside_the_guard_band_on_the_high_side_are_trimmed_by_rule() {
    let mut crew = Crew::digging();
    // 105.00 − 4.89 = 100.11, 0.01 above the tolerance and inside the guard band.
    let first = crew.reads("P-1", "4.89").unwrap();
    assert_eq!(line(&first.outcome), "WAIT");
    crew.wait(seconds(60));
    let second = crew.reads_now("P-1", "4.90").unwrap();
    assert_eq!(line(&second.outcome), "SHAVE 1");
    let (_, call) = crew.state.live_call("EX-1").unwrap();
    assert!(call.sent.labels.contains(&Label::HighByRule));
    assert_eq!(call.sent.readings.len(), 2);
}

#[test]
fn two_shots_on_the_low_side_wait_for_the_supervisor() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "5.20").unwrap();
    crew.wait(minutes(2));
    let second = crew.reads_now("P-1", "5.19").unwrap();
    assert!(matches!(second.outcome, Outcome::NeedsRuling { .. }));
    let ruled = crew
        .says(
            &supervisor(),
            Command::Rule(Rule {
                mark: "P-1".into(),
                ruling: Ruling::Patch,
                why: "gravel restores it".into(),
            }),
        )
        .unwrap();
    assert_eq!(line(&ruled.outcome), "GRADE");
    let taken = crew.state.last_reading("P-1").unwrap().1;
    let judged = taken.reading.judged.as_ref().unwrap();
    assert_eq!(judged.verdict, Verdict::TooCloseLow);
}

#[test]
fn near_a_step_the_side_is_asked_for() {
    let mut crew = Crew::digging();
    assert_eq!(
        crew.reads("R-4", "6.00"),
        Err(Refusal::WhichSide { mark: "R-4".into() })
    );
    let mut after = reading("R-4", "7.70");
    after.side = Some(StepSide::After);
    let told = crew.says(&ground(), Command::TakeReading(after)).unwrap();
    assert_eq!(line(&told.outcome), "DOWN 3");
}

#[test]
fn a_mark_of_another_machine_is_asked_about() {
    let mut crew = Crew::digging();
    let mut wrong = reading("P-1", "4.70");
    wrong.machine = Some("EX-2".into());
    let asked = crew.says(&ground(), Command::TakeReading(wrong)).unwrap();
    assert!(matches!(
        asked.outcome,
        Outcome::Asked {
            question: Question::OtherMachine { .. },
            ..
        }
    ));
}

#[test]
fn restating_keeps_both_and_withdraws_the_old_call() {
    let mut crew = Crew::digging();
    let first = crew.reads("P-1", "4.50").unwrap();
    let mut corrected = reading("P-1", "4.60");
    corrected.restates = Some(first.first);
    crew.wait(seconds(10));
    crew.says(&ground(), Command::TakeReading(corrected))
        .unwrap();
    let Outcome::Called { call, .. } = first.outcome else {
        panic!()
    };
    let restated = CallState::Ended {
        how: Ending::Restated,
    };
    assert_eq!(crew.state.calls[&call].state, restated);
    assert!(crew.state.readings[&first.first].restated);
    let (_, live) = crew.state.live_call("EX-1").unwrap();
    assert_eq!(live.sent.text.english, "DOWN 4");
}

#[test]
fn a_mark_without_a_target_is_a_spot_elevation() {
    let mut crew = Crew::digging();
    let spot = crew.reads("S-1", "4.00").unwrap();
    assert_eq!(
        spot.outcome,
        Outcome::Spot {
            elevation: len("101.00 ft"),
            why: SpotReason::NoTarget
        }
    );
}

#[test]
fn what_can_not_be_on_a_rod_is_refused_and_nothing_is_entered() {
    let mut crew = Crew::digging();
    for text in ["85.4", "-1.00", "", "four", "1e9"] {
        crew.wait(seconds(1));
        let before = crew.state.clone();
        let refused = crew.reads_now("P-1", text);
        assert!(
            matches!(refused, Err(Refusal::RodValue { .. })),
            "{text}: {refused:?}"
        );
        assert_eq!(before, crew.state);
    }
}

#[test]
fn an_old_number_is_removed_and_said_to_be_old() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.70").unwrap();
    // 1.5 × 0.30 ft ÷ 0.05 ft a minute = 9 minutes (field practice, H6).
    crew.wait(minutes(9) - 1);
    assert!(crew.state.live_call("EX-1").is_some());
    crew.wait(1);
    assert!(matches!(
        cab::fills(&crew.state, "EX-1"),
        Fills::Old {
            why: Ending::StaleByAge,
            ..
        }
    ));
}
