//! Faces that are left: by pins, by a slough, by an operator's word; and what the cab shows first.

use super::*;
use day::said::way_in::ask::AskIn;
use day::said::way_in::enter::GoIn;

#[test]
fn a_crack_that_opens_faster_clears_the_face_and_only_an_inspection_with_words_brings_people_back()
{
    let mut crew = crew(under_a_face());
    crew.place("EX-1", "30 ft", "20 ft");
    inspects(&mut crew, inspection(SoilClass::B)).unwrap();
    opens(&mut crew);
    // The call under the face is gone; its machine must leave, the other one stands elsewhere.
    assert!(crew.state.live_call("EX-2").is_none());
    assert!(matches!(screen(&crew, "EX-2"), CabScreen::LeaveFace { .. }));
    assert!(!matches!(
        screen(&crew, "EX-1"),
        CabScreen::LeaveFace { .. }
    ));
    assert_eq!(
        cab::view(&crew.state, "EX-1").unwrap().faces_left[0].strip,
        len("10 ft")
    );
    let away = away(&crew);
    crew.says(&operator("EX-2"), away).unwrap();
    assert!(!matches!(
        screen(&crew, "EX-2"),
        CabScreen::LeaveFace { .. }
    ));
    assert_eq!(spot(&mut crew), Some(SpotReason::FaceLeft));
    let allow = AllowDig {
        held: HeldBy::FaceLeft {
            zone: "BANK".into(),
        },
        why: "hurry".into(),
    };
    assert!(crew.says(&supervisor(), Command::AllowDig(allow)).is_err());
    inspects(&mut crew, inspection(SoilClass::B)).unwrap();
    assert_eq!(spot(&mut crew), Some(SpotReason::FaceLeft));
    let words = InspectFace {
        release: "trimmed from the top, engineer looked".into(),
        ..inspection(SoilClass::B)
    };
    inspects(&mut crew, words).unwrap();
    assert_eq!(spot(&mut crew), None);
}

#[test]
fn an_ask_does_not_hide_a_face_that_is_left_and_somebody_who_may_be_in_does() {
    let mut crew = crew(under_a_face());
    inspects(&mut crew, inspection(SoilClass::B)).unwrap();
    opens(&mut crew);
    let visit = "visit-01";
    let ask = AskIn {
        machine: "EX-2".into(),
        visit: visit.into(),
        mark: None,
        others: None,
    };
    crew.says(&ground(), Command::AskIn(ask)).unwrap();
    assert!(matches!(screen(&crew, "EX-2"), CabScreen::LeaveFace { .. }));
    // Tracking back over somebody is worse than standing under the face.
    let enter = GoIn {
        machine: "EX-2".into(),
        visit: visit.into(),
        mark: None,
        others: None,
    };
    crew.says(&ground(), Command::GoIn(enter)).unwrap();
    assert_eq!(screen(&crew, "EX-2"), CabScreen::WayIn);
    assert_eq!(cab::view(&crew.state, "EX-2").unwrap().faces_left.len(), 1);
}

#[test]
fn a_machine_whose_place_nobody_knows_must_leave_and_placing_it_elsewhere_does() {
    let mut crew = crew(under_a_face());
    for machine in ["EX-1", "EX-2"] {
        let moved = SayMoved {
            machine: machine.into(),
        };
        crew.says(&ground(), Command::SayMoved(moved)).unwrap();
    }
    let slough = SeeSlough {
        zone: "BANK".into(),
        length: "16".into(),
        height: "8".into(),
        back: "5".into(),
        mark: None,
        note: "nobody near".into(),
    };
    crew.says(&operator("EX-1"), Command::SeeSlough(slough.clone()))
        .unwrap();
    let volume = crew.log.iter().find_map(|entry| match &entry.body {
        Body::SloughSeen(seen) => Some(seen.cubic_yards),
        _ => None,
    });
    assert!((volume.unwrap() - 11.85).abs() < 0.005);
    for machine in ["EX-1", "EX-2"] {
        assert!(matches!(
            screen(&crew, machine),
            CabScreen::LeaveFace { .. }
        ));
    }
    crew.place("EX-1", "30 ft", "60 ft");
    assert!(matches!(screen(&crew, "EX-1"), CabScreen::LeaveFace { .. }));
    crew.place("EX-1", "30 ft", "30 ft");
    assert!(!matches!(
        screen(&crew, "EX-1"),
        CabScreen::LeaveFace { .. }
    ));
    let negative = SeeSlough {
        height: "-8".into(),
        ..slough
    };
    assert!(crew.says(&ground(), Command::SeeSlough(negative)).is_err());
}

#[test]
fn an_operator_who_says_that_the_face_moves_clears_it_and_each_call_ends_once() {
    let mut crew = crew(under_a_face());
    assert_eq!(spot(&mut crew), None);
    let cant = Command::SayCant(day::said::call::SayCant {
        why: day::said::call::CantReason::Face,
    });
    crew.says(&operator("EX-2"), cant).unwrap();
    assert!(crew.state.cuts.face("BANK").unwrap().alarm.is_some());
    assert!(matches!(screen(&crew, "EX-2"), CabScreen::Stop { .. }));
    let ends = crew
        .log
        .iter()
        .filter(|entry| matches!(entry.body, Body::CallEnded(_)));
    assert_eq!(ends.count(), 1);
    assert_eq!(spot(&mut crew), Some(SpotReason::FaceLeft));
}
