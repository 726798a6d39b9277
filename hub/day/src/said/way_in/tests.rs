//! The way in, told as given – when – then.

use crate::answer::Outcome;
use crate::asked::{By, Command, Role};
use crate::entry::Body;
use crate::given::{Crew, ground, operator, supervisor};
use crate::refusal::Refusal;
use crate::said::day::OpenDay;
use crate::said::stop::{LiftStop, StopAll};
use crate::said::way_in::answer::{BucketDown, RefuseEntry, Release, SayWait};
use crate::said::way_in::ask::{AskIn, WithdrawAsk};
use crate::said::way_in::enter::{ComeOut, GoIn, OutByWitness, SeeOut};
use crate::said::way_in::notice::{NoticeLink, NoticeRestart};
use crate::time::seconds;
use crate::views::operator::{self as cab, CabScreen};
use crate::way_in::{Phase, Stage};

const VISIT: &str = "visit-01";

fn jm() -> By {
    By {
        device: "g2".into(),
        person: "JM".into(),
        roles: vec![Role::Ground],
        machine: None,
    }
}

fn asks(visit: &str) -> Command {
    Command::AskIn(AskIn {
        machine: "EX-1".into(),
        visit: visit.into(),
        mark: Some("P-1".into()),
        others: None,
    })
}

fn goes_in(machine: &str, visit: &str) -> Command {
    Command::GoIn(GoIn {
        machine: machine.into(),
        visit: visit.into(),
        mark: None,
        others: None,
    })
}

fn comes_out(visit: &str) -> Command {
    Command::ComeOut(ComeOut {
        machine: "EX-1".into(),
        visit: visit.into(),
        all: None,
    })
}

fn holds(visits: &[&str]) -> Command {
    Command::BucketDown(BucketDown {
        answers: visits.iter().map(|&visit| visit.to_owned()).collect(),
    })
}

fn release() -> Command {
    Command::Release(Release {})
}

fn witness(visit: &str, why: &str) -> Command {
    Command::OutByWitness(OutByWitness {
        machine: "EX-1".into(),
        visit: visit.into(),
        why: why.into(),
        all: None,
    })
}

fn phase(crew: &Crew) -> Phase {
    crew.state.way_in.gate("EX-1").phase()
}

fn inside() -> Crew {
    let mut crew = Crew::digging();
    crew.joins(&supervisor()).joins(&jm());
    crew.says(&ground(), asks(VISIT)).unwrap();
    crew.says(&operator("EX-1"), holds(&[VISIT])).unwrap();
    crew.says(&ground(), goes_in("EX-1", VISIT)).unwrap();
    crew
}

#[test]
fn ask_hold_in_out_release() {
    let mut crew = Crew::digging();
    let cab = operator("EX-1");
    crew.says(&ground(), asks(VISIT)).unwrap();
    assert_eq!(phase(&crew), Phase::Asked);
    crew.says(&cab, holds(&[VISIT])).unwrap();
    assert_eq!(phase(&crew), Phase::Stopped);
    let answer = crew.says(&ground(), goes_in("EX-1", VISIT)).unwrap();
    assert_eq!(answer.outcome, Outcome::Entered { confirmed: true });
    assert_eq!(phase(&crew), Phase::Occupied);
    let before = crew.log.len();
    crew.says(&ground(), goes_in("EX-1", VISIT)).unwrap();
    assert_eq!(crew.log.len(), before, "a double press is one entry");
    let still = crew.says(&cab, release()).unwrap();
    assert_eq!(
        still.outcome,
        Outcome::StillIn {
            people: vec!["RT".into()]
        }
    );
    assert_eq!(phase(&crew), Phase::Occupied);
    crew.says(&ground(), comes_out(VISIT)).unwrap();
    assert_eq!(phase(&crew), Phase::Stopped);
    crew.says(&cab, release()).unwrap();
    assert_eq!(phase(&crew), Phase::Working);
}

#[test]
fn in_without_an_answer_is_kept_and_stops_the_machine() {
    let mut crew = Crew::digging();
    let answer = crew.says(&ground(), goes_in("EX-1", VISIT)).unwrap();
    assert_eq!(answer.outcome, Outcome::Entered { confirmed: false });
    assert_eq!(phase(&crew), Phase::Unconfirmed);
    let view = cab::view(&crew.state, "EX-1").unwrap();
    assert!(matches!(view.screen, CabScreen::WayIn));
    assert_eq!(view.way_in.people[0].person, "RT");
    // The operator agrees afterwards: the log keeps how it began.
    crew.says(&operator("EX-1"), holds(&[VISIT])).unwrap();
    assert_eq!(phase(&crew), Phase::Occupied);
}

#[test]
fn an_answer_for_one_machine_opens_no_other() {
    let mut crew = Crew::digging();
    crew.says(&ground(), asks(VISIT)).unwrap();
    crew.says(&operator("EX-1"), holds(&[VISIT])).unwrap();
    let answer = crew.says(&ground(), goes_in("EX-2", VISIT)).unwrap();
    assert_eq!(answer.outcome, Outcome::Entered { confirmed: false });
    let gate = crew.state.way_in.gate("EX-2");
    assert_eq!(gate.phase(), Phase::Unconfirmed);
    // Where they were awaited they may be as well: both stand until they are out.
    assert_eq!(phase(&crew), Phase::Occupied);
    crew.says(&ground(), comes_out(VISIT)).unwrap();
    assert_eq!(phase(&crew), Phase::Stopped);
}

#[test]
fn a_second_person_is_answered_by_name() {
    let mut crew = inside();
    crew.says(&jm(), asks("visit-02")).unwrap();
    // The hold that answered RT says nothing of JM.
    let answer = crew.says(&jm(), goes_in("EX-1", "visit-02")).unwrap();
    assert_eq!(answer.outcome, Outcome::Entered { confirmed: false });
    assert_eq!(phase(&crew), Phase::Unconfirmed);
    crew.says(&ground(), comes_out(VISIT)).unwrap();
    assert_eq!(crew.state.way_in.gate("EX-1").may_be_in(), ["JM"]);
}

#[test]
fn whoever_was_told_to_come_in_may_be_in() {
    let mut crew = Crew::digging();
    crew.says(&ground(), asks(VISIT)).unwrap();
    crew.says(&operator("EX-1"), holds(&[VISIT])).unwrap();
    let still = crew.says(&operator("EX-1"), release()).unwrap();
    assert!(matches!(still.outcome, Outcome::StillIn { .. }));
    let refuse = Command::RefuseEntry(RefuseEntry {
        visit: VISIT.into(),
        why: String::new(),
    });
    assert_eq!(
        crew.says(&operator("EX-1"), refuse),
        Err(Refusal::NotAsked),
        "what was promised is not taken back from the cab"
    );
    let takes_back = Command::WithdrawAsk(WithdrawAsk {
        machine: "EX-1".into(),
        visit: VISIT.into(),
    });
    crew.says(&ground(), takes_back).unwrap();
    crew.says(&operator("EX-1"), release()).unwrap();
    assert_eq!(phase(&crew), Phase::Working);
}

#[test]
fn an_ask_is_repeated_after_fifteen_seconds_and_not_for_ever() {
    let mut crew = Crew::digging();
    crew.says(&ground(), asks(VISIT)).unwrap();
    let repeats = |crew: &Crew| crew.state.way_in.gate("EX-1").visit(VISIT).unwrap().repeats;
    crew.wait(seconds(14));
    assert_eq!(repeats(&crew), 0);
    crew.wait(seconds(1));
    assert_eq!(repeats(&crew), 1);
    crew.wait(seconds(600));
    assert_eq!(repeats(&crew), 4);
    assert_eq!(
        phase(&crew),
        Phase::Asked,
        "it stands until somebody does something"
    );
}

#[test]
fn wait_and_no_keep_the_person_out() {
    let mut crew = Crew::digging();
    let cab = operator("EX-1");
    crew.says(&ground(), asks(VISIT)).unwrap();
    let wait = Command::SayWait(SayWait {
        visit: VISIT.into(),
    });
    crew.says(&cab, wait).unwrap();
    let stage = |crew: &Crew| crew.state.way_in.gate("EX-1").visit(VISIT).map(|v| v.stage);
    assert_eq!(stage(&crew), Some(Stage::Waiting));
    assert_eq!(phase(&crew), Phase::Asked);
    let no = Command::RefuseEntry(RefuseEntry {
        visit: VISIT.into(),
        why: "truck behind me".into(),
    });
    crew.says(&cab, no).unwrap();
    assert_eq!(stage(&crew), Some(Stage::Refused));
    assert_eq!(phase(&crew), Phase::Working);
    // A hold that comes after it answers nobody.
    crew.says(&cab, holds(&[VISIT])).unwrap();
    assert_eq!(stage(&crew), Some(Stage::Refused));
}

#[test]
fn out_by_witness_needs_another_person_and_a_reason() {
    let mut crew = inside();
    let lost = Command::NoticeLink(NoticeLink {
        device: "g1".into(),
        lost: true,
    });
    crew.says(&By::hub(), lost).unwrap();
    assert_eq!(
        phase(&crew),
        Phase::Occupied,
        "a lost link takes nobody out"
    );
    assert_eq!(
        crew.says(&ground(), witness(VISIT, "it is me")),
        Err(Refusal::NoWitness)
    );
    assert_eq!(
        crew.says(&operator("EX-1"), witness(VISIT, "gone")),
        Err(Refusal::NoWitness)
    );
    assert!(matches!(
        crew.says(&supervisor(), witness(VISIT, " ")),
        Err(Refusal::SayWhy { .. })
    ));
    crew.says(&supervisor(), witness(VISIT, "behind the barricade"))
        .unwrap();
    assert_eq!(phase(&crew), Phase::Stopped);
    // The OUT that lay in the phone agrees, and changes nothing.
    crew.says(&ground(), comes_out(VISIT)).unwrap();
    let last = &crew.log.last().unwrap().body;
    assert!(matches!(last, Body::PersonOut(out) if !out.was_in && out.witness.is_none()));
}

#[test]
fn a_press_in_the_cab_that_was_long_on_its_way_is_pressed_again() {
    let mut crew = Crew::digging();
    crew.says(&ground(), asks(VISIT)).unwrap();
    let made_at = crew.now;
    crew.wait(seconds(11));
    let late = crew.said_at(&operator("EX-1"), holds(&[VISIT]), made_at);
    assert_eq!(late, Err(Refusal::PressedTooLate));
    assert_eq!(phase(&crew), Phase::Asked);
}

#[test]
fn people_inside_outlive_a_restart_and_the_day() {
    let mut crew = inside();
    crew.says(&jm(), asks("visit-02")).unwrap();
    crew.says(&By::hub(), Command::NoticeRestart(NoticeRestart {}))
        .unwrap();
    let gate = crew.state.way_in.gate("EX-1");
    assert_eq!(gate.visit("visit-02").unwrap().repeats, 1, "not answered");
    let day = Command::OpenDay(OpenDay {
        day: "2030-05-15".into(),
    });
    crew.says(&By::hub(), day).unwrap();
    let gate = crew.state.way_in.gate("EX-1");
    assert_eq!(gate.phase(), Phase::Occupied);
    assert!(gate.visit("visit-02").is_none(), "who only asked asks anew");
    // RT's new phone says OUT for the visit of the one that is gone.
    let again = By {
        device: "g9".into(),
        ..ground()
    };
    crew.says(&again, comes_out(VISIT)).unwrap();
    assert_eq!(phase(&crew), Phase::Stopped);
}

#[test]
fn nobody_says_out_for_somebody_else_as_their_own() {
    let mut crew = inside();
    assert_eq!(
        crew.says(&jm(), comes_out(VISIT)),
        Err(Refusal::NotYourVisit {
            person: "RT".into()
        })
    );
}

#[test]
fn all_stop_keeps_who_is_in_and_is_lifted_when_they_are_out() {
    let mut crew = inside();
    crew.says(&jm(), Command::StopAll(StopAll { why: String::new() }))
        .unwrap();
    let view = cab::view(&crew.state, "EX-1").unwrap();
    assert!(matches!(view.screen, CabScreen::Stop { all: true, .. }));
    assert_eq!(view.way_in.people[0].person, "RT");
    let lift = |machine: Option<&str>| {
        Command::LiftStop(LiftStop {
            machine: machine.map(Into::into),
            why: "seen".into(),
        })
    };
    for machine in [None, Some("EX-1")] {
        let refused = crew.says(&supervisor(), lift(machine));
        assert!(
            matches!(refused, Err(Refusal::PeopleIn { .. })),
            "{refused:?}"
        );
    }
    crew.says(&supervisor(), lift(Some("EX-2"))).unwrap();
    crew.says(&ground(), comes_out(VISIT)).unwrap();
    crew.says(&supervisor(), lift(None)).unwrap();
    // Lifting is not releasing: the operator still holds RELEASE.
    assert_eq!(phase(&crew), Phase::Stopped);
    let view = cab::view(&crew.state, "EX-1").unwrap();
    assert!(matches!(view.screen, CabScreen::WayIn));
}

#[test]
fn every_word_of_it_reads_as_a_sentence() {
    let mut crew = inside();
    crew.says(&operator("EX-1"), release()).unwrap();
    crew.says(&supervisor(), witness(VISIT, "seen")).unwrap();
    for entry in &crew.log {
        let told = crate::tell::tell(entry);
        assert!(!told.english.is_empty(), "{entry:?}");
        assert!(!told.spanish.is_empty(), "{entry:?}");
    }
}

#[test]
fn whoever_was_witnessed_out_is_told_by_whom_and_says_whether_it_is_so() {
    let mut crew = inside();
    let told = |crew: &Crew| {
        let view = cab::view(&crew.state, "EX-1").unwrap();
        view.way_in.told_out.into_iter().map(|one| one.told).next()
    };
    crew.says(&jm(), witness(VISIT, "by the truck")).unwrap();
    let card = told(&crew).unwrap();
    assert_eq!(
        (card.person.as_str(), card.device.as_str()),
        ("RT", "g1")
    );
    assert_eq!(card.witness.as_deref(), Some("JM"));
    assert_eq!(card.why, "by the truck");
    let sees = Command::SeeOut(SeeOut {
        machine: "EX-1".into(),
        visit: VISIT.into(),
    });
    assert!(
        matches!(
            crew.says(&jm(), sees.clone()),
            Err(Refusal::NotYourVisit { .. })
        ),
        "nobody sees it for RT"
    );
    // It outlives a restart and a release; RT is still in: the machine stops, and the notice is answered.
    crew.says(&operator("EX-1"), release()).unwrap();
    crew.says(&By::hub(), Command::NoticeRestart(NoticeRestart {}))
        .unwrap();
    assert!(told(&crew).is_some());
    crew.says(&ground(), goes_in("EX-1", VISIT)).unwrap();
    assert_eq!(phase(&crew), Phase::Unconfirmed);
    assert_eq!(told(&crew), None);
    crew.says(&jm(), witness(VISIT, "now by the truck")).unwrap();
    crew.says(&ground(), sees.clone()).unwrap();
    assert_eq!(told(&crew), None);
    let entries = crew.log.len();
    crew.says(&ground(), sees).unwrap();
    assert_eq!(crew.log.len(), entries, "seen once");
}

#[test]
fn a_second_phone_or_name_of_whoever_is_in_is_no_witness() {
    let mut crew = inside();
    crew.wait(seconds(60));
    let second = By {
        device: "g7".into(),
        person: "ZZ".into(),
        ..ground()
    };
    crew.joins(&second);
    assert_eq!(
        crew.says(&second, witness(VISIT, "gone")),
        Err(Refusal::WitnessUnknown {
            person: "RT".into()
        })
    );
    assert_eq!(phase(&crew), Phase::Occupied);
}

#[test]
fn a_group_goes_in_with_whoever_leads_it_and_comes_out_whole() {
    let mut crew = Crew::digging();
    crew.joins(&jm());
    let asks = |others| {
        Command::AskIn(AskIn {
            machine: "EX-1".into(),
            visit: VISIT.into(),
            mark: None,
            others: Some(others),
        })
    };
    assert!(matches!(
        crew.says(&ground(), asks(51)),
        Err(Refusal::HeldBack { .. })
    ));
    crew.says(&ground(), asks(4)).unwrap();
    crew.says(&operator("EX-1"), holds(&[VISIT])).unwrap();
    crew.says(&ground(), goes_in("EX-1", VISIT)).unwrap();
    assert_eq!(phase(&crew), Phase::Occupied);
    assert_eq!(crew.state.way_in.gate("EX-1").may_be_in(), ["RT + 4"]);
    let out = |all| {
        Command::ComeOut(ComeOut {
            machine: "EX-1".into(),
            visit: VISIT.into(),
            all,
        })
    };
    for all in [None, Some(1), Some(4), Some(6)] {
        let few = crew.says(&ground(), out(all));
        assert!(matches!(few, Err(Refusal::NotAllOut { inside: 5, .. })), "{all:?}");
    }
    let seen = crew.says(&jm(), witness(VISIT, "one of them"));
    assert!(matches!(seen, Err(Refusal::NotAllOut { .. })), "{seen:?}");
    assert_eq!(phase(&crew), Phase::Occupied);
    crew.says(&ground(), out(Some(5))).unwrap();
    assert_eq!(phase(&crew), Phase::Stopped);
    // More go in than were asked for: nobody agreed to that.
    let mut crew = Crew::digging();
    crew.says(&ground(), asks(1)).unwrap();
    crew.says(&operator("EX-1"), holds(&[VISIT])).unwrap();
    let more = Command::GoIn(GoIn {
        machine: "EX-1".into(),
        visit: VISIT.into(),
        mark: None,
        others: Some(3),
    });
    crew.says(&ground(), more).unwrap();
    assert_eq!(phase(&crew), Phase::Unconfirmed);
    assert_eq!(crew.state.way_in.gate("EX-1").may_be_in(), ["RT + 3"]);
}

#[test]
fn one_entry_within_two_circles_stops_both_machines_until_out() {
    let mut crew = Crew::digging();
    let mark = crew.state.site().unwrap().mark("P-1").unwrap().place;
    let (x, y) = (mark.x.to_string(), mark.y.to_string());
    crew.place("EX-1", &x, &y);
    crew.place("EX-2", &x, &y);
    // Its place is old by then, and it is asked all the same.
    crew.wait(seconds(31 * 60));
    let second = |crew: &Crew| crew.state.way_in.gate("EX-2").phase();
    crew.says(&ground(), asks(VISIT)).unwrap();
    assert_eq!((phase(&crew), second(&crew)), (Phase::Asked, Phase::Asked));
    crew.says(&operator("EX-1"), holds(&[VISIT])).unwrap();
    let also = |crew: &Crew| cab::view(&crew.state, "EX-1").unwrap().way_in.people[0].also.clone();
    assert_eq!(also(&crew), ["EX-2"]);
    // One has agreed, the other has not: whoever goes in all the same stops it.
    crew.says(&ground(), goes_in("EX-1", VISIT)).unwrap();
    assert_eq!(
        (phase(&crew), second(&crew)),
        (Phase::Occupied, Phase::Unconfirmed)
    );
    crew.says(&ground(), comes_out(VISIT)).unwrap();
    assert_eq!(
        (phase(&crew), second(&crew)),
        (Phase::Stopped, Phase::Stopped)
    );
    crew.says(&operator("EX-1"), release()).unwrap();
    crew.says(&operator("EX-2"), release()).unwrap();
    // Taken back at one, taken back at both.
    crew.says(&ground(), asks("visit-02")).unwrap();
    let back = Command::WithdrawAsk(WithdrawAsk {
        machine: "EX-1".into(),
        visit: "visit-02".into(),
    });
    crew.says(&ground(), back).unwrap();
    assert_eq!(
        (phase(&crew), second(&crew)),
        (Phase::Working, Phase::Working)
    );
}

#[test]
fn an_operator_on_foot_leaves_the_own_machine_with_its_bucket_down() {
    let mut crew = Crew::digging();
    let on_foot = operator("EX-2");
    let ask = |machine: &str| {
        Command::AskIn(AskIn {
            machine: machine.into(),
            visit: VISIT.into(),
            mark: None,
            others: None,
        })
    };
    assert!(matches!(
        crew.says(&on_foot, ask("EX-1")),
        Err(Refusal::HeldBack { .. })
    ));
    assert!(matches!(
        crew.says(&on_foot, ask("EX-2")),
        Err(Refusal::HeldBack { .. })
    ));
    crew.says(&on_foot, holds(&[])).unwrap();
    crew.says(&on_foot, ask("EX-1")).unwrap();
    crew.says(&operator("EX-1"), holds(&[VISIT])).unwrap();
    crew.says(&on_foot, goes_in("EX-1", VISIT)).unwrap();
    assert_eq!(phase(&crew), Phase::Occupied);
    // What has happened is kept, also near the own machine.
    crew.says(&on_foot, goes_in("EX-2", "visit-02")).unwrap();
    let own = crew.state.way_in.gate("EX-2").phase();
    assert_eq!(own, Phase::Unconfirmed);
}
