//! A closed day is signed under the chain as it stood and amended by name; the next day is opened.

use super::{amends, closed, closes, folded, notes, signs};
use day::asked::{By, Command, Role};
use day::entry::Body;
use day::given::{Crew, ground, supervisor};
use day::open::{OpenItem, OpenKind};
use day::refusal::Refusal;

use day::said::day::OpenDay;

use show::tell;

#[test]
fn a_signature_stands_under_the_chain_as_it_stood_and_only_once() {
    let mut crew = Crew::digging();
    assert!(crew.says(&supervisor(), signs()).is_err());
    let mut crew = closed();
    let before = crew.state.seq;
    crew.says(&supervisor(), signs()).unwrap();
    let Body::DaySigned(signed) = &crew.log.last().unwrap().body else {
        panic!("not signed");
    };
    assert_eq!(signed.head.seq, before);
    // The hash that it names is the one that the chain gives for the entries before it.
    let mut head = day::chain::GENESIS.to_owned();
    for entry in &crew.log[..crew.log.len() - 1] {
        head = day::chain::seal(entry, &head).unwrap().hash;
    }
    assert_eq!(signed.head.hash, head);
    assert!(!signed.empty && !signed.unproven);
    assert!(crew.says(&supervisor(), signs()).is_err());
    assert_eq!(folded(&crew), crew.state);
}

#[test]
fn an_empty_day_is_signed_as_empty() {
    let mut crew = Crew::opened();
    crew.says(&supervisor(), closes(&[])).unwrap();
    crew.says(&supervisor(), signs()).unwrap();
    let told = tell::tell(crew.log.last().unwrap());
    assert!(
        told.text.english.contains("THE DAY IS EMPTY"),
        "{}",
        told.text.english
    );
    assert!(crew.state.record.signed.as_ref().unwrap().said.empty);
}

#[test]
fn an_amendment_names_its_entry_and_stands_under_a_second_signature() {
    let mut crew = closed();
    let reading = crew.state.readings.keys().next().copied().unwrap();
    let early = crew.says(&supervisor(), amends(reading, "the rod was B"));
    assert!(early.unwrap_err().to_string().contains("not signed"));
    crew.says(&supervisor(), signs()).unwrap();
    for bad in [amends(0, "x"), amends(9_999, "x"), amends(reading, " ")] {
        assert!(crew.says(&supervisor(), bad).is_err());
    }
    assert!(crew.says(&ground(), amends(reading, "no")).is_err());
    crew.says(&supervisor(), amends(reading, "the rod was B"))
        .unwrap();
    let amended = &crew.state.record.amended[0].said;
    assert_eq!(
        (amended.entry, amended.day.as_str()),
        (reading, "2030-05-14")
    );
    // Weeks later, on another day.
    opens_next(&mut crew, "2030-05-15").unwrap();
    crew.says(&supervisor(), amends(reading, "and the mark was P-2"))
        .unwrap();
    assert_eq!(crew.state.record.amended[1].said.day, "2030-05-14");
    let of_today = amends(crew.state.seq, "not signed yet");
    assert!(crew.says(&supervisor(), of_today).is_err());
}

/// The next day, on the supervisor's word.
pub(super) fn opens_next(crew: &mut Crew, day: &str) -> Result<(), Refusal> {
    let by = By {
        roles: vec![Role::Hub],
        ..supervisor()
    };
    let day = Command::OpenDay(OpenDay { day: day.into() });
    crew.says(&by, day).map(|_| ())
}

#[test]
fn the_next_day_is_opened_when_this_one_is_closed_and_the_laser_comes_down() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.70").unwrap();
    assert!(opens_next(&mut crew, "2030-05-15").is_err());
    let mut crew = closed();
    crew.says(&ground(), notes("locked up")).unwrap();
    for bad in ["", "../../etc/x", "2030 05 15", "2030-05-15-and-more"] {
        assert!(opens_next(&mut crew, bad).is_err(), "{bad}");
    }
    let last = crew.state.seq;
    opens_next(&mut crew, "2030-05-15").unwrap();
    let Body::DayOpened(opened) = &crew.log.last().unwrap().body else {
        panic!("not opened");
    };
    assert_eq!(opened.taken_down, ["S1"]);
    assert!(crew.state.set_ups.is_empty());
    let past = &crew.state.record.days[0];
    assert_eq!((past.day.as_str(), past.first), ("2030-05-14", 1));
    assert_eq!(past.last, last);
    assert!(past.closed.is_some() && past.signed.is_none());
    // Everything is taken again.
    assert!(crew.state.record.closed.is_none());
    assert!(crew.state.record.notes.is_empty());
    assert_eq!(folded(&crew), crew.state);
}

#[test]
fn a_day_that_nobody_closed_is_said_when_the_hub_opens_the_next() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.70").unwrap();
    let next = Command::OpenDay(OpenDay {
        day: "2030-05-15".into(),
    });
    crew.says(&By::hub(), next).unwrap();
    let Body::DayOpened(opened) = &crew.log.last().unwrap().body else {
        panic!("not opened");
    };
    assert!(opened.not_closed);
    // The reading without a check behind it goes on as something to be done, until it is read again.
    let again = |item: &OpenItem| item.kind == OpenKind::ClosingCheck && item.on == "S1";
    assert!(opened.open.iter().any(again));
    assert_eq!(crew.state.record.days[0].closed, None);
}

#[test]
fn marks_go_on_with_their_generation_and_aims_are_off() {
    let mut crew = Crew::digging();
    let lay = || {
        Command::LayMarks(
            serde_json::from_value(serde_json::json!({
                "marks": ["P-1"], "from": { "kind": "control" }, "note": ""
            }))
            .unwrap(),
        )
    };
    crew.says(&ground(), lay()).unwrap();
    crew.says(&ground(), lay()).unwrap();
    let generation = |crew: &Crew| crew.state.marks["P-1"].paint.as_ref().unwrap().generation;
    assert_eq!(generation(&crew), 2);
    crew.reads("P-1", "4.70").unwrap();
    let aim = day::said::aim::SetAim {
        on: vec!["PAD".into()],
        aim: day::given::len("-0.02 ft"),
        why: "scatter".into(),
        seen: vec![],
    };
    crew.says(&supervisor(), Command::SetAim(aim)).unwrap();
    crew.check("S1", "BM-2", "3.48").unwrap();
    crew.says(&supervisor(), closes(&[])).unwrap();
    opens_next(&mut crew, "2030-05-15").unwrap();
    assert_eq!(generation(&crew), 2);
    assert!(crew.state.aims.is_empty() && crew.state.last_reading("P-1").is_none());
}
