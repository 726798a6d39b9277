//! What voids itself, told through: the ground moves, the target is revised, the laser had moved, it rains, a face comes down.

use super::*;
use earthwork::face::{Evidence, SoilClass};

use crate::asked::{By, Command};
use crate::given::{Crew, at, ground, len, site, soil_test, supervisor};
use crate::open::{OpenKind, open};
use crate::said::face_inspect::InspectFace;
use crate::said::face_seen::{SeeAtFace, SeeSlough, Sight};
use crate::said::inspection::{AskInspection, Inspect, InspectedItem};
use crate::said::revise::ReviseTarget;
use crate::site::Site;

/// The test yard with a face above the run: its toe lies 5 ft north of the run's marks. The pad's lie 35 ft off. Invented.
fn yard() -> Site {
    let mut site = site();
    let zone = serde_json::json!({
        "id": "BANK", "name": "bank", "kind": "face",
        "toe": [
            { "at": at("0 ft", "55 ft"), "elevation": len("98 ft") },
            { "at": at("50 ft", "55 ft"), "elevation": len("98 ft") }
        ],
        "bank": "left",
        "ground": { "shape": { "kind": "flat", "elevation": len("108 ft") }, "stack": { "surface": "ground", "layers": [] } }
    });
    site.cuts.competent = vec!["PN".into()];
    site.cuts.faces = vec![serde_json::from_value(zone).unwrap()];
    site
}

fn inspects(crew: &mut Crew, target: &str) -> u64 {
    let asked = AskInspection {
        what: format!("{target} trench"),
        of: "county".into(),
        targets: vec![target.into()],
    };
    crew.says(&supervisor(), Command::AskInspection(asked))
        .unwrap();
    let id = crew.state.seq;
    let made = Inspect {
        asked: Some(id),
        what: String::new(),
        targets: vec![],
        inspector: "HF".into(),
        items: vec![InspectedItem {
            what: "trench".into(),
            found: "clean".into(),
        }],
        result: InspectionResult::Passed,
        words: "form it".into(),
        conditions: String::new(),
        signature: None,
    };
    crew.says(&supervisor(), Command::Inspect(made)).unwrap();
    id
}

fn tests_soil(crew: &mut Crew, mark: &str) {
    crew.says(&ground(), soil_test(mark)).unwrap();
}

fn why(crew: &Crew, inspection: u64) -> Option<VoidCause> {
    let void = crew.state.record.inspections[&inspection].void.as_ref();
    void.map(|void| void.said.why.clone())
}

fn about(crew: &Crew, kind: OpenKind) -> Vec<String> {
    let open = open(&crew.state).into_iter();
    let of = open.filter(|item| item.kind == kind);
    of.map(|item| item.on).collect()
}

/// The pad and the run measured, at grade; soil tested at R-1; both inspected.
fn inspected() -> (Crew, u64, u64) {
    let mut crew = Crew::digging_on(yard());
    crew.reads("P-1", "5.00").unwrap();
    crew.reads("R-1", "7.00").unwrap();
    tests_soil(&mut crew, "R-1");
    let (pad, run) = (inspects(&mut crew, "PAD"), inspects(&mut crew, "RUN"));
    assert!(about(&crew, OpenKind::Inspection).is_empty());
    (crew, pad, run)
}

fn test_stands(crew: &Crew) -> bool {
    crew.state.account.tests.values().all(Test::stands)
}

#[test]
fn an_inspection_holds_for_the_ground_that_was_looked_at() {
    let (mut crew, pad, run) = inspected();
    crew.wait(600_000);
    crew.reads("P-1", "5.05").unwrap();
    assert_eq!(why(&crew, pad), None, "0.05 is not more than 0.05");
    crew.wait(600_000);
    crew.reads("P-1", "5.06").unwrap();
    let Some(VoidCause::Moved { by }) = why(&crew, pad) else {
        panic!("{:?}", why(&crew, pad));
    };
    assert!(by < Length::ZERO, "lower: {by:?}");
    assert_eq!(why(&crew, run), None);
    assert_eq!(about(&crew, OpenKind::Inspection), ["PAD trench"]);
    // Inspected again, it is open no more; the old one stays void.
    inspects(&mut crew, "PAD");
    assert!(about(&crew, OpenKind::Inspection).is_empty());
    assert!(why(&crew, pad).is_some());
}

#[test]
fn a_revision_voids_what_was_inspected_and_tested_there_and_nothing_else() {
    let (mut crew, pad, run) = inspected();
    let target = crew.state.site().unwrap().target("RUN").unwrap();
    let mut grade = target.grade.clone();
    grade.stack.layers[0].thickness = len("0.75 ft");
    let revise = ReviseTarget {
        target: "RUN".into(),
        grade,
        tolerance: target.tolerance,
        why: "engineer".into(),
        seen: None,
    };
    crew.says(&supervisor(), Command::ReviseTarget(revise))
        .unwrap();
    let revised = VoidCause::Revised {
        target: "RUN".into(),
    };
    assert_eq!((why(&crew, run), why(&crew, pad)), (Some(revised), None));
    assert!(!test_stands(&crew));
}

/// The same tape of BM-2 as in the morning plus 0.30: everything since was measured 0.30 too high or low.
#[test]
fn a_laser_that_had_moved_voids_the_inspection_but_not_the_soil() {
    let (mut crew, pad, run) = inspected();
    crew.wait(600_000);
    crew.check("S1", "BM-2", "3.78").unwrap();
    let moved = VoidCause::Laser {
        set_up: "S1".into(),
    };
    assert_eq!(why(&crew, pad), Some(moved.clone()));
    assert_eq!(why(&crew, run), Some(moved));
    assert!(test_stands(&crew));
}

#[test]
fn rain_voids_tests_and_inspections_and_moves_no_grade() {
    let (mut crew, pad, run) = inspected();
    let rain = SeeAtFace {
        zone: "BANK".into(),
        what: Sight::Rain,
        text: String::new(),
        note: String::new(),
    };
    crew.says(&ground(), Command::SeeAtFace(rain)).unwrap();
    let rained = Some(VoidCause::Rain {});
    assert_eq!((why(&crew, pad), why(&crew, run)), (rained.clone(), rained));
    assert!(!test_stands(&crew));
    assert!(about(&crew, OpenKind::InDoubt).is_empty());
}

#[test]
fn a_face_that_comes_down_voids_what_was_accepted_within_ten_feet_until_it_is_shot_again() {
    let (mut crew, pad, run) = inspected();
    crew.wait(60_000);
    crew.check("S1", "BM-2", "3.48").unwrap();
    let proven = |crew: &Crew, mark| crate::coverage::proven(&crew.state, mark);
    assert!(proven(&crew, "R-1") && proven(&crew, "P-1"));
    let slough = SeeSlough {
        zone: "BANK".into(),
        length: "16".into(),
        height: "8".into(),
        back: "5".into(),
        mark: Some("R-1".into()),
        note: String::new(),
    };
    crew.says(&ground(), Command::SeeSlough(slough)).unwrap();
    let fell = VoidCause::Slough {
        zone: "BANK".into(),
    };
    assert_eq!((why(&crew, pad), why(&crew, run)), (None, Some(fell)));
    assert!(!test_stands(&crew));
    assert!(!proven(&crew, "R-1"), "within reach");
    assert!(proven(&crew, "P-1"), "36 ft away; 8 and 10 count");
    assert_eq!(about(&crew, OpenKind::InDoubt), ["R-1"]);
    // It goes on open over the night.
    let mut next = crew.clone();
    next.says(&By::hub(), opens_next()).unwrap();
    assert_eq!(about(&next, OpenKind::InDoubt), ["R-1"]);
    // A spot elevation under a face that was left accepts nothing.
    crew.reads("R-1", "7.00").unwrap();
    assert_eq!(about(&crew, OpenKind::InDoubt), ["R-1"]);
    let release = InspectFace {
        zone: "BANK".into(),
        class: SoilClass::C,
        evidence: Evidence::default(),
        seen: "dry, scarp trimmed".into(),
        by_hand: "crumbles".into(),
        pins: vec![],
        release: "trimmed back, mucked out".into(),
        alarm: crew.state.cuts.faces["BANK"]
            .alarm
            .as_ref()
            .map(|alarm| alarm.alarm),
        word: None,
    };
    crew.says(&supervisor(), Command::InspectFace(release))
        .unwrap();
    crew.reads("R-1", "7.00").unwrap();
    assert!(about(&crew, OpenKind::InDoubt).is_empty());
}

fn opens_next() -> Command {
    Command::OpenDay(crate::said::day::OpenDay {
        day: "2030-05-15".into(),
    })
}
