//! A day is closed, signed and amended; the next is opened; visitors, inspections, queries and photos are told through.

mod after_close;
mod papers;
mod signing;

use day::asked::{By, Command, Role};
use day::entry::Body;
use day::given::{Crew, ground, operator, supervisor};
use day::record::missing::{CloseMissing, missing};
use day::refusal::Refusal;
use day::said::amend::AmendDay;
use day::said::close::{CloseDay, CloseOverride};

use day::said::load::MeasureSoil;
use day::said::note::AddNote;

use day::said::reading::LateReason;
use day::said::sign::SignDay;
use day::said::signature::Signature;

use day::apply;
use day::call::{CallState, Ending};
use day::coverage;
use day::said::way_in::answer::BucketDown;
use day::said::way_in::ask::AskIn;
use day::said::way_in::enter::{ComeOut, GoIn};
use day::state::State;
use day::time::seconds;
use show::tell;

pub(super) fn closes(overrides: &[(CloseMissing, &str)]) -> Command {
    let over = |(missing, why): &(CloseMissing, &str)| CloseOverride {
        missing: missing.clone(),
        why: (*why).to_owned(),
    };
    Command::CloseDay(CloseDay {
        overrides: overrides.iter().map(over).collect(),
        words: String::new(),
    })
}

pub(super) fn drawn(name: &str) -> Signature {
    Signature {
        name: name.into(),
        strokes: "M10 20L11 22L40 8".into(),
    }
}

pub(super) fn signs() -> Command {
    Command::SignDay(SignDay {
        signature: drawn("P. N."),
        words: String::new(),
    })
}

pub(super) fn amends(entry: u64, words: &str) -> Command {
    Command::AmendDay(AmendDay {
        entry,
        words: words.into(),
        signature: drawn("P. N."),
    })
}

pub(super) fn notes(words: &str) -> Command {
    Command::AddNote(AddNote {
        words: words.into(),
        mark: Some("P-1".into()),
        entry: None,
    })
}

pub(super) fn check(set_up: &str) -> CloseMissing {
    CloseMissing::ClosingCheck {
        set_up: set_up.into(),
    }
}

pub(super) fn visitor(person: &str) -> By {
    By {
        device: format!("v-{person}"),
        person: person.into(),
        roles: vec![Role::Visitor],
        machine: None,
    }
}

/// A crew that has read, shot its closing check and closed.
pub(super) fn closed() -> Crew {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.70").unwrap();
    crew.wait(seconds(60));
    crew.check("S1", "BM-2", "3.48").unwrap();
    crew.says(&supervisor(), closes(&[])).unwrap();
    crew
}

pub(super) fn folded(crew: &Crew) -> State {
    let mut state = State::default();
    for entry in &crew.log {
        apply(&mut state, entry);
    }
    state
}

#[test]
fn a_day_closes_with_a_check_behind_its_last_reading_and_ends_what_is_live() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.70").unwrap();
    assert_eq!(missing(&crew.state), [check("S1")]);
    let refused = crew.says(&supervisor(), closes(&[])).unwrap_err();
    assert_eq!(
        refused,
        Refusal::NotReadyToClose {
            missing: vec![check("S1")]
        }
    );
    assert!(
        refused
            .to_string()
            .contains("closing shot on a benchmark with SETUP-1")
    );
    crew.check("S1", "BM-2", "3.48").unwrap();
    crew.says(&supervisor(), closes(&[])).unwrap();
    assert!(crew.state.live_call("EX-1").is_none());
    let call = crew.state.calls.values().next().unwrap();
    let how = Ending::DayClosed;
    assert_eq!(call.state, CallState::Ended { how });
    let closed = crew.state.record.closed.as_ref().unwrap();
    assert!(closed.said.unproven.is_empty() && !closed.said.empty);
}

#[test]
fn closed_without_a_check_everything_since_the_last_good_one_is_said_to_be_unproven() {
    let mut crew = Crew::digging();
    crew.reads("R-1", "7.00").unwrap();
    crew.wait(seconds(60));
    crew.check("S1", "BM-2", "3.48").unwrap();
    crew.wait(seconds(60));
    crew.reads("R-3", "8.00").unwrap();
    let empty = closes(&[(check("S1"), "  ")]);
    assert!(matches!(
        crew.says(&supervisor(), empty),
        Err(Refusal::SayWhy { .. })
    ));
    crew.says(&supervisor(), closes(&[(check("S1"), "laser ran down")]))
        .unwrap();
    let closed = &crew.state.record.closed.as_ref().unwrap().said;
    assert_eq!(closed.unproven.len(), 1);
    assert_eq!(closed.unproven[0].since, crew.state.set_ups[0].good_at);
    // What was read before the check stands, what came after it is named, mark by mark.
    let marks: Vec<&str> = crew
        .log
        .iter()
        .filter_map(|entry| match &entry.body {
            Body::SuspectWindow(window) => Some(&window.marks),
            _ => None,
        })
        .flatten()
        .map(|mark| mark.mark.as_str())
        .collect();
    assert_eq!(marks, ["R-3"]);
    assert_eq!(coverage::coverage(&crew.state)[0].proven, 1);
    let told = tell::tell(crew.log.last().unwrap());
    assert!(
        told.text.english.contains("CLOSED UNPROVEN: SETUP-1"),
        "{}",
        told.text.english
    );
    assert!(
        told.text.spanish.contains("SIN COMPROBAR"),
        "{}",
        told.text.spanish
    );
    crew.says(&supervisor(), signs()).unwrap();
    assert!(crew.state.record.signed.as_ref().unwrap().said.unproven);
}

#[test]
fn nobody_closes_over_people_in_a_keep_out_whatever_the_words() {
    let mut crew = Crew::digging();
    let visit = || "visit-0001".to_owned();
    let machine = || "EX-1".to_owned();
    let asks = Command::AskIn(AskIn {
        machine: machine(),
        visit: visit(),
        mark: None,
        others: None,
    });
    crew.says(&ground(), asks).unwrap();
    let down = Command::BucketDown(BucketDown {
        answers: vec![visit()],
    });
    crew.says(&operator("EX-1"), down).unwrap();
    let goes = Command::GoIn(GoIn {
        machine: machine(),
        visit: visit(),
        mark: None,
        others: None,
    });
    crew.says(&ground(), goes).unwrap();
    let inside = missing(&crew.state).remove(0);
    assert!(matches!(&inside, CloseMissing::PeopleIn { people, .. } if people == &["RT"]));
    let refused = crew.says(&supervisor(), closes(&[(inside, "he is fine")]));
    assert!(matches!(refused, Err(Refusal::NotReadyToClose { .. })));
    let out = Command::ComeOut(ComeOut {
        machine: machine(),
        visit: visit(),
        all: None,
    });
    crew.says(&ground(), out).unwrap();
    crew.says(&supervisor(), closes(&[])).unwrap();
}

#[test]
fn a_closed_day_takes_notes_tests_and_stops_and_nothing_that_digs() {
    let mut crew = closed();
    crew.wait(seconds(60));
    for (by, command) in [
        (
            ground(),
            Command::TakeReading(day::given::reading("P-1", "4.70")),
        ),
        (supervisor(), closes(&[])),
        (
            supervisor(),
            Command::MeasureSoil(MeasureSoil {
                material: "clay".into(),
                bank_cy: 1.0,
                how: "taped".into(),
            }),
        ),
    ] {
        let refused = crew.says(&by, command.clone());
        assert_eq!(
            refused,
            Err(Refusal::DayIsClosed { signed: false }),
            "{command:?}"
        );
    }
    crew.says(&ground(), notes("rain in the night")).unwrap();
    let stop = day::said::stop::StopAll {
        why: "child on site".into(),
    };
    crew.says(&ground(), Command::StopAll(stop)).unwrap();
    assert_eq!(crew.state.record.notes.len(), 1);
    assert!(crew.state.cabs["EX-1"].stop.is_some());
}

#[test]
fn a_reading_made_before_the_close_comes_late_and_is_kept() {
    let mut crew = closed();
    let made_at = crew.state.record.closed.as_ref().unwrap().at;
    crew.wait(seconds(5));
    let reading = Command::TakeReading(day::given::reading("P-2", "4.70"));
    crew.said_at(&ground(), reading, made_at).unwrap();
    let Body::ReadingLate(late) = &crew.log.last().unwrap().body else {
        panic!("not late");
    };
    assert_eq!(late.why, LateReason::DayClosed);
    assert!(crew.state.live_call("EX-1").is_none());
}

#[test]
fn a_closed_day_asks_for_no_laser_check_and_counts_no_hours() {
    let mut crew = closed();
    let meters = crew.state.account.meters.clone();
    let (ticked, entries) = (crew.state.account.ticked_at, crew.log.len());
    crew.wait(seconds(8 * 3_600));
    assert_eq!(crew.log.len(), entries);
    crew.says(&ground(), notes("locked up")).unwrap();
    assert_eq!(crew.state.account.ticked_at, ticked);
    assert_eq!(crew.state.account.meters, meters);
}
