//! Tests: a call goes out, is acknowledged, refused, taken back, or ends. What has ended never comes back.

use super::*;
use crate::answer::Outcome;
use crate::asked::Command;
use crate::given::{Crew, ground, operator};
use crate::said::quick_call::QuickCall;
use crate::said::receipt::{Delivered, Shown};
use crate::time::minutes;
use crate::views::operator::{self as cab, CabScreen};
use earthwork::keep_out::Nearness;
use earthwork::words::QuickWord;

fn called(crew: &mut Crew, mark: &str, text: &str) -> u64 {
    match crew.reads(mark, text).unwrap().outcome {
        Outcome::Called { call, .. } => call,
        other => panic!("no call: {other:?}"),
    }
}

#[test]
fn a_call_goes_from_sent_to_got_it() {
    let mut crew = Crew::digging();
    let call = called(&mut crew, "P-1", "4.70");
    let cab = operator("EX-1");
    crew.says(&cab, Command::Delivered(Delivered { call }))
        .unwrap();
    assert_eq!(crew.state.calls[&call].state, CallState::Delivered);
    let shown = Shown {
        call,
        language: Language::Spanish,
        unit: ScreenUnit::Tenths,
    };
    crew.says(&cab, Command::Shown(shown)).unwrap();
    assert_eq!(crew.state.calls[&call].state, CallState::Shown);
    crew.says(&cab, Command::GotIt(GotIt { call })).unwrap();
    assert_eq!(crew.state.calls[&call].state, CallState::Got);
    // The log keeps the exact text that was shown.
    assert!(crew.log.iter().any(|entry| matches!(
        &entry.body,
        Body::CallShown(shown) if shown.text == "BAJE 3"
    )));
    let before = crew.log.len();
    crew.says(&cab, Command::GotIt(GotIt { call })).unwrap();
    assert_eq!(crew.log.len(), before, "the second press adds nothing");
}

#[test]
fn another_cab_can_not_acknowledge() {
    let mut crew = Crew::digging();
    let call = called(&mut crew, "P-1", "4.70");
    assert!(matches!(
        crew.says(&operator("EX-2"), Command::GotIt(GotIt { call })),
        Err(Refusal::NotAllowed { .. })
    ));
}

#[test]
fn a_nod_is_witnessed_by_name() {
    let mut crew = Crew::digging();
    let call = called(&mut crew, "P-1", "4.70");
    crew.says(&ground(), Command::SawNod(SawNod { call }))
        .unwrap();
    assert_eq!(crew.state.calls[&call].witness.as_deref(), Some("RT"));
}

#[test]
fn what_was_taken_back_is_gone_and_stays_gone() {
    let mut crew = Crew::digging();
    let call = called(&mut crew, "P-1", "4.70");
    crew.says(&ground(), Command::WithdrawCall(WithdrawCall { call }))
        .unwrap();
    assert!(matches!(
        cab::view(&crew.state, "EX-1").unwrap().screen,
        CabScreen::Old {
            why: Ending::Withdrawn,
            ..
        }
    ));
    assert_eq!(
        crew.says(&operator("EX-1"), Command::GotIt(GotIt { call })),
        Err(Refusal::CallNotLive)
    );
}

#[test]
fn grade_ends_quietly_and_a_number_is_said_to_be_old() {
    let mut crew = Crew::digging();
    called(&mut crew, "P-1", "5.00");
    crew.wait(minutes(8));
    assert_eq!(
        cab::view(&crew.state, "EX-1").unwrap().screen,
        CabScreen::NoCall
    );
}

#[test]
fn the_clock_of_a_call_stands_still_while_the_machine_is_stopped() {
    let mut crew = Crew::digging();
    called(&mut crew, "P-1", "4.70");
    crew.says(
        &ground(),
        Command::StopAll(crate::said::stop::StopAll {
            why: "man in swing".into(),
        }),
    )
    .unwrap();
    crew.wait(minutes(30));
    assert!(crew.state.live_call("EX-1").is_some());
    assert!(matches!(
        cab::view(&crew.state, "EX-1").unwrap().screen,
        CabScreen::Stop { all: true, .. }
    ));
    let lift = |why: &str| {
        Command::LiftStop(crate::said::stop::LiftStop {
            machine: None,
            why: why.into(),
        })
    };
    assert!(crew.says(&crate::given::supervisor(), lift(" ")).is_err());
    crew.says(&crate::given::supervisor(), lift("driver is in his truck"))
        .unwrap();
    crew.wait(minutes(9) - 1);
    assert!(crew.state.live_call("EX-1").is_some());
    crew.wait(1);
    assert!(crew.state.live_call("EX-1").is_none());
}

#[test]
fn a_pipe_stops_the_machine_and_hard_ground_does_not() {
    let mut crew = Crew::digging();
    let cant = |why| Command::SayCant(SayCant { why });
    crew.says(&operator("EX-1"), cant(CantReason::HardGround))
        .unwrap();
    assert!(crew.state.cabs["EX-1"].stop.is_none());
    crew.says(&operator("EX-1"), cant(CantReason::Pipe))
        .unwrap();
    assert!(crew.state.cabs["EX-1"].stop.is_some());
    assert!(crew.state.cabs["EX-2"].stop.is_none());
}

#[test]
fn a_word_by_eye_is_marked_so_and_closes_no_mark() {
    let mut crew = Crew::digging();
    called(&mut crew, "P-1", "4.70");
    crew.says(
        &ground(),
        Command::QuickCall(QuickCall {
            machine: "EX-1".into(),
            word: QuickWord::There,
            mark: Some("P-1".into()),
        }),
    )
    .unwrap();
    let (_, call) = crew.state.live_call("EX-1").unwrap();
    assert!(matches!(call.sent.message, Message::ByEye { .. }));
    let (_, taken) = crew.state.last_reading("P-1").unwrap();
    let verdict = taken.reading.judged.as_ref().unwrap().verdict;
    assert_eq!(verdict, earthwork::tolerance::Verdict::High);
}

#[test]
fn inside_the_keep_out_a_strip_stands_with_every_call_and_is_loud_at_first_only() {
    let mut crew = Crew::digging();
    crew.place("EX-1", "30 ft", "30 ft");
    let reminder = |crew: &mut Crew, text| {
        let call = called(crew, "P-1", text);
        crew.state.calls[&call].sent.reminder.clone()
    };
    let first = reminder(&mut crew, "4.40").unwrap();
    assert_eq!((first.who.as_str(), first.loud), ("RT", true));
    assert!(matches!(first.nearness, Nearness::Inside { .. }));
    assert!(!reminder(&mut crew, "4.50").unwrap().loud);
    crew.wait(minutes(20));
    assert!(reminder(&mut crew, "4.60").unwrap().loud);
    let moved = crate::said::machine::SayMoved {
        machine: "EX-1".into(),
    };
    crew.says(&ground(), Command::SayMoved(moved)).unwrap();
    let unknown = reminder(&mut crew, "4.70").unwrap();
    assert_eq!(unknown.nearness, Nearness::PlaceUnknown);
    assert!(unknown.loud);
    crew.place("EX-1", "900 ft", "900 ft");
    assert_eq!(reminder(&mut crew, "4.75"), None);
}

/// The tolerance is kept with a call; a day of before it was kept opens all the same, and its words are as they were.
#[test]
fn a_call_keeps_what_its_amounts_were_rounded_by() {
    let mut crew = Crew::digging();
    let call = called(&mut crew, "P-1", "4.70");
    let message = crew.state.calls[&call].sent.message;
    let mut kept = serde_json::to_value(message).unwrap();
    assert_eq!(
        serde_json::from_value::<Message>(kept.clone()).unwrap(),
        message
    );
    assert!(kept.as_object_mut().unwrap().remove("tolerance").is_some());
    let old: Message = serde_json::from_value(kept).unwrap();
    for unit in [
        ScreenUnit::Tenths,
        ScreenUnit::FeetInches,
        ScreenUnit::Millimetres,
    ] {
        let line = |message| text(message, Language::English, unit).line;
        assert_eq!(line(&old), line(&message));
    }
}
