//! The way in, told as given – when – then.

use words::Language;

use crate::answer::Outcome;
use crate::asked::{By, Command, Role};
use crate::cab::{self, Fills};
use crate::entry::Body;
use crate::given::{Crew, ground, operator, supervisor};
use crate::refusal::Refusal;
use crate::said::day::OpenDay;
use crate::said::stop::{LiftStop, StopAll};
use crate::said::way_in::answer::{BucketDown, RefuseEntry, Release, SayWait};
use crate::said::way_in::ask::{AskIn, WithdrawAsk};
use crate::said::way_in::enter::{ComeOut, GoIn, OutByWitness};
use crate::said::way_in::notice::{NoticeLink, NoticeRestart};
use crate::time::seconds;
use crate::way_in::people;
use crate::way_in::{Phase, Stage};

mod together;

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
    assert!(matches!(cab::fills(&crew.state, "EX-1"), Fills::WayIn));
    assert_eq!(people::at(&crew.state.way_in, "EX-1")[0].person, "RT");
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
    let unsaid = crew.says(&supervisor(), witness(VISIT, " ")).unwrap_err();
    assert_eq!(
        [Language::English, Language::Spanish].map(|one| unsaid.text().take(one)),
        [
            "Say what you have seen: it goes into the log.",
            "Diga qué ha visto: queda en el registro."
        ]
    );
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
    crew.says(&By::hub(), Command::NoticeRestart(NoticeRestart::default()))
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
    assert!(matches!(cab::fills(&crew.state, "EX-1"), Fills::Stop(stop) if stop.all));
    assert_eq!(people::at(&crew.state.way_in, "EX-1")[0].person, "RT");
    let lift = |machine: Option<&str>| {
        Command::LiftStop(LiftStop {
            machine: machine.map(Into::into),
            press: u64::MAX,
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
    assert!(matches!(cab::fills(&crew.state, "EX-1"), Fills::WayIn));
}
