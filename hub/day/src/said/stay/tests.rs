//! Phones that stay in over the night, told as given – when – then.

use super::*;
use crate::given::{Crew, ground, operator, reading, supervisor};
use crate::said::day::OpenDay;
use crate::said::stop::StopAll;
use crate::time::seconds;

fn lets(device: &str, stays: bool) -> Command {
    Command::LetStay(LetStay {
        device: device.into(),
        stays,
    })
}

fn who(person: &str, same: bool) -> Command {
    Command::SayWho(SayWho {
        person: person.into(),
        same,
    })
}

/// The ground person's phone and the cab of EX-1 stay in; the next day is open.
fn next_morning() -> Crew {
    let mut crew = Crew::digging();
    crew.joins(&ground()).joins(&supervisor());
    assert!(
        crew.says(&ground(), lets("g1", true)).is_err(),
        "a supervisor says it"
    );
    crew.says(&supervisor(), lets("g1", true)).unwrap();
    crew.says(&supervisor(), lets("m1", true)).unwrap();
    let entries = crew.log.len();
    crew.says(&supervisor(), lets("m1", true)).unwrap();
    assert_eq!(crew.log.len(), entries, "said once");
    crew.wait(seconds(60));
    let day = OpenDay {
        day: "2030-05-15".into(),
    };
    crew.says(&By::hub(), Command::OpenDay(day)).unwrap();
    crew
}

#[test]
fn only_what_a_supervisor_lets_stay_is_in_the_next_day() {
    let crew = next_morning();
    let devices: Vec<&String> = crew.state.devices.keys().collect();
    assert_eq!(devices, ["g1", "m1"]);
    assert!(crew.state.devices.values().all(|one| one.asks_who));
    assert_eq!(
        crew.state.cabs["EX-1"].device, None,
        "nobody has said who sits there"
    );
}

#[test]
fn a_phone_that_stayed_says_first_who_holds_it_but_stops_at_once() {
    let mut crew = next_morning();
    let reads = Command::TakeReading(reading("P-1", "4.70"));
    let asked = crew.says(&ground(), reads.clone());
    assert_eq!(
        asked,
        Err(Refusal::SayWho {
            person: "RT".into()
        })
    );
    let stop = Command::StopAll(StopAll { why: String::new() });
    crew.says(&ground(), stop).unwrap();
    crew.says(&ground(), who("RT", true)).unwrap();
    let entries = crew.log.len();
    crew.says(&ground(), who("RT", true)).unwrap();
    assert_eq!(crew.log.len(), entries, "said once");
    // Refused for the laser that nobody has set up today, not for the person.
    assert!(!matches!(
        crew.says(&ground(), reads),
        Err(Refusal::SayWho { .. })
    ));
}

#[test]
fn what_was_said_before_the_night_is_not_lost_for_the_question() {
    let mut crew = next_morning();
    let note = crate::said::note::AddNote {
        words: "rain since noon".into(),
        mark: None,
        entry: None,
    };
    let before = crew.state.day.as_ref().unwrap().at.plus_ms(-1_000);
    crew.said_at(&ground(), Command::AddNote(note), before)
        .unwrap();
}

#[test]
fn somebody_else_with_that_phone_is_out_and_an_answer_for_another_name_does_nothing() {
    let mut crew = next_morning();
    crew.says(&ground(), who("JM", false)).unwrap();
    assert!(
        crew.state.device("g1").is_some(),
        "the page showed another name"
    );
    crew.says(&ground(), who("RT", false)).unwrap();
    assert!(crew.state.device("g1").is_none());
}

#[test]
fn a_cab_has_its_screen_again_when_its_operator_says_so_unless_another_took_it() {
    let mut crew = next_morning();
    crew.says(&operator("EX-1"), who("OP", true)).unwrap();
    assert_eq!(crew.state.cabs["EX-1"].device.as_deref(), Some("m1"));
    let mut crew = next_morning();
    let other = By {
        device: "m7".into(),
        person: "ZZ".into(),
        ..operator("EX-1")
    };
    crew.joins(&other);
    assert!(matches!(
        crew.says(&operator("EX-1"), who("OP", true)),
        Err(Refusal::CabTaken { .. })
    ));
    assert_eq!(crew.state.cabs["EX-1"].device.as_deref(), Some("m7"));
}
