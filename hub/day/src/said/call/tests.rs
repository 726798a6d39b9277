//! Tests: a call goes out, is acknowledged, refused, taken back, or ends. What has ended never comes back.

use super::*;
use crate::answer::Outcome;
use crate::asked::Command;
use crate::cab::{self, Fills};
use crate::given::{Crew, ground, operator};
use crate::said::quick_call::QuickCall;
use crate::said::receipt::{CabPage, Delivered, NoticeScreen, ScreenNotice, Shown};
use crate::time::minutes;
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

/// GOT IT within the first second: nobody presses it without having seen the number, so the log says both, in order.
#[test]
fn got_it_tells_that_the_number_was_shown() {
    let mut crew = Crew::digging();
    let call = called(&mut crew, "P-1", "4.70");
    let cab = operator("EX-1");
    let before = crew.log.len();
    crew.says(&cab, Command::GotIt(GotIt { call })).unwrap();
    let kinds: Vec<bool> = crew.log[before..]
        .iter()
        .map(|entry| match &entry.body {
            Body::CallShown(shown) => {
                assert_eq!(shown.text, "DOWN 3");
                false
            }
            Body::CallGot(_) => true,
            other => panic!("{other:?}"),
        })
        .collect();
    assert_eq!(kinds, [false, true]);
    assert!(crew.state.calls[&call].shown_at.is_some());
    // The page's own receipt comes a second later and adds nothing.
    let length = crew.log.len();
    let shown = Shown {
        call,
        language: Language::English,
        unit: ScreenUnit::Tenths,
    };
    crew.says(&cab, Command::Shown(shown)).unwrap();
    assert_eq!(crew.log.len(), length);
}

/// Under a stop the number is not there: neither shown nor got, and the ground does not read that it is on the screen.
#[test]
fn nothing_is_shown_or_got_under_a_stop() {
    let mut crew = Crew::digging();
    let call = called(&mut crew, "P-1", "4.70");
    let in_view = |crew: &Crew| cab::number_in_view(&crew.state, "EX-1");
    assert!(in_view(&crew));
    crew.says(
        &ground(),
        Command::StopAll(crate::said::stop::StopAll {
            why: "man in swing".into(),
        }),
    )
    .unwrap();
    assert!(!in_view(&crew));
    let cab = operator("EX-1");
    let refused = crew.says(&cab, Command::GotIt(GotIt { call }));
    assert!(
        matches!(refused, Err(Refusal::HeldBack { .. })),
        "{refused:?}"
    );
    let shown = Shown {
        call,
        language: Language::English,
        unit: ScreenUnit::Tenths,
    };
    crew.says(&cab, Command::Shown(shown)).unwrap();
    assert_eq!(crew.state.calls[&call].shown_at, None);
}

/// A panel or the plan over the number: not in view, whatever was shown before; and a page without sound says so.
#[test]
fn a_page_says_what_it_can_not_give() {
    let mut crew = Crew::digging();
    let notice = |covered, mute| {
        Command::NoticeScreen(NoticeScreen {
            device: "m1".into(),
            screen: ScreenNotice::Showing,
            page: Some(CabPage { covered, mute }),
        })
    };
    let hub = By::hub();
    let card = |crew: &Crew| {
        let state = &crew.state;
        (
            cab::number_in_view(state, "EX-1"),
            cab::is_mute(state, "EX-1"),
        )
    };
    crew.says(&hub, notice(false, true)).unwrap();
    called(&mut crew, "P-1", "4.70");
    assert_eq!(card(&crew), (true, true));
    crew.says(&hub, notice(true, false)).unwrap();
    assert_eq!(card(&crew), (false, false));
    let length = crew.log.len();
    crew.says(&hub, notice(true, false)).unwrap();
    assert_eq!(crew.log.len(), length, "said once");
    crew.says(&hub, notice(false, false)).unwrap();
    assert_eq!(card(&crew), (true, false));
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
        cab::fills(&crew.state, "EX-1"),
        Fills::Old {
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
    assert!(matches!(cab::fills(&crew.state, "EX-1"), Fills::NoCall));
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
    crew.wait(minutes(4));
    assert!(crew.state.live_call("EX-1").is_some());
    assert!(matches!(
        cab::fills(&crew.state, "EX-1"),
        Fills::Stop(stop) if stop.all
    ));
    let lift = |why: &str| {
        Command::LiftStop(crate::said::stop::LiftStop {
            machine: None,
            press: u64::MAX,
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
    // Out of reach of a pipe that nobody drew.
    crew.place("EX-2", "500 ft", "900 ft");
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
    assert_eq!(
        (first.who.as_str(), first.loud, first.beside),
        ("RT", true, false)
    );
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
    // Nobody knows where the machine stands: LOOK stands beside the number, not in its place.
    assert!(unknown.loud && unknown.beside);
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
