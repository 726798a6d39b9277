//! What is near a machine: invented places on the yard of the tests.

use super::*;
use crate::cuts::plan::{Pile, Structure};
use crate::given::{Crew, at, flat_zone, ground, len, site};

/// A face 12 ft high along y = 100, its bank to the north; a wall at x = 200; a line over y = -50, 24 ft high.
fn yard(kind: CutKind) -> Crew {
    let mut site = site();
    site.cuts.faces = vec![flat_zone(kind)];
    site.cuts.structures = vec![Structure {
        id: "SHED".into(),
        points: vec![at("200 ft", "0 ft"), at("200 ft", "60 ft")],
        bottom: len("98 ft"),
    }];
    site.cuts.overheads = vec![OverheadLine {
        id: "STREET".into(),
        points: vec![at("0 ft", "-50 ft"), at("300 ft", "-50 ft")],
        height: len("24 ft"),
        kilovolts: Some(12.5),
        kilovolts_at_most: None,
        clearance: None,
        call: String::new(),
    }];
    site.machines[0].geometry.boom_height = Some(len("19 ft"));
    Crew::digging_on(site)
}

fn around(crew: &mut Crew, x: &str, y: &str) -> Vec<Near> {
    crew.place("EX-1", x, y);
    near(&crew.state, "EX-1")
}

#[test]
fn a_tail_at_a_face_a_wall_or_a_machine_is_said_when_the_machine_is_placed() {
    let mut crew = yard(CutKind::Face);
    // 7 ft of tail and 3 ft round it.
    assert!(matches!(
        &around(&mut crew, "40 ft", "90.01 ft")[..],
        [Near::TailAtFace { zone, .. }] if zone == "F"
    ));
    assert_eq!(around(&mut crew, "40 ft", "90 ft"), []);
    assert!(matches!(
        &around(&mut crew, "191 ft", "30 ft")[..],
        [Near::TailAtWall { structure, .. }] if structure == "SHED"
    ));
    crew.place("EX-2", "400 ft", "30 ft");
    let kinds = around(&mut crew, "416 ft", "30 ft");
    assert!(matches!(
        &kinds[..],
        [Near::TailAtMachine { needs, .. }, Near::CanMeet { .. }] if *needs == len("17 ft")
    ));
    let entry = crew.log.last().unwrap();
    let crate::entry::Body::NearFound(found) = &entry.body else {
        panic!("{entry:?}");
    };
    assert_eq!(found.near, kinds, "what was said is in the log");
    // A trench is straddled: no tail against its face.
    assert_eq!(around(&mut yard(CutKind::Trench), "40 ft", "95 ft"), []);
}

#[test]
fn a_tail_at_a_pile_and_spoil_at_the_crest_are_said_where_somebody_drew_the_pile() {
    let mut crew = yard(CutKind::Face);
    let pile = |x: &str, y: &str| Pile {
        id: "SPOIL".into(),
        at: at(x, y),
        across: len("12 ft"),
        note: String::new(),
    };
    let put = |crew: &mut Crew, pile| {
        crew.state.site.as_mut().unwrap().site.cuts.piles = vec![pile];
    };
    put(&mut crew, pile("300 ft", "30 ft"));
    // 6 ft from its middle to its foot, 7 ft of tail and 3 ft round it.
    assert_eq!(around(&mut crew, "284 ft", "30 ft"), []);
    assert!(matches!(
        &around(&mut crew, "284.1 ft", "30 ft")[..],
        [Near::TailAtPile { pile, apart, needs }]
            if pile == "SPOIL" && *apart == len("9.9 ft") && *needs == len("10 ft")
    ));
    // The face is 12 ft high, nobody picked a class: C, 1.5 to 1, its crest 18 ft behind the toe. The rule: 2 ft of set-back
    // (29 CFR 1926.651 (j)(2)), so the middle lies 26 ft behind the toe or farther.
    let crests = |crew: &Crew| piles_at_crests(&crew.state, crew.state.site().unwrap());
    put(&mut crew, pile("40 ft", "126 ft"));
    assert_eq!(crests(&crew), []);
    put(&mut crew, pile("40 ft", "125.9 ft"));
    assert_eq!(crests(&crew), [("SPOIL".into(), "F".into(), len("1.9 ft"))]);
    // Before the toe it loads nothing.
    put(&mut crew, pile("40 ft", "90 ft"));
    assert_eq!(crests(&crew), []);
}

#[test]
fn tracks_inside_the_line_of_the_slope_are_for_the_competent_person_and_weaker_soil_moves_it() {
    let mut crew = yard(CutKind::Face);
    // Nobody has picked a class: C, 1.5 to 1, 18 ft out at 12 ft; half the tracks are 4.1 ft.
    let inside = |crew: &mut Crew, y: &str| match &around(crew, "40 ft", y)[..] {
        [Near::OnSlope { inside, class, .. }] => Some((*inside, *class)),
        [] => None,
        other => panic!("{other:?}"),
    };
    assert_eq!(
        inside(&mut crew, "118 ft"),
        Some((len("4.1 ft"), SoilClass::C))
    );
    assert_eq!(inside(&mut crew, "122.1 ft"), None);
    crew.state.cuts.face_mut("F").picked = Some(SoilClass::B);
    crew.state.cuts.face_mut("F").counted = Some(SoilClass::B);
    assert_eq!(inside(&mut crew, "118 ft"), None);
    assert_eq!(
        inside(&mut crew, "116 ft"),
        Some((len("0.1 ft"), SoilClass::B))
    );
}

#[test]
fn a_line_overhead_within_reach_asks_for_a_spotter_until_somebody_spots() {
    let mut crew = yard(CutKind::Face);
    let needed = |crew: &Crew| {
        let mut near = unsettled(&crew.state, "EX-1").into_iter();
        near.any(|one| matches!(one, Near::Overhead { .. }))
    };
    // 27.8 ft of reach and 10 ft of clearance.
    assert_eq!(around(&mut crew, "40 ft", "-12.2 ft"), []);
    assert!(!needed(&crew));
    assert!(matches!(
        &around(&mut crew, "40 ft", "-12.3 ft")[..],
        [Near::Overhead { line, .. }] if line == "STREET"
    ));
    assert!(needed(&crew));
    assert_eq!(in_the_cab(&crew.state, "EX-1").len(), 1);
    let spots = crate::asked::Command::BeSpotter(crate::said::spotter::BeSpotter {
        machine: "EX-1".into(),
    });
    crew.says(&ground(), spots).unwrap();
    assert!(!needed(&crew));
    let silent = crate::said::way_in::notice::NoticeLink {
        device: "g1".into(),
        lost: true,
    };
    let silent = crate::asked::Command::NoticeLink(silent);
    crew.says(&crate::asked::By::hub(), silent).unwrap();
    assert!(
        needed(&crew),
        "a spotter whose phone is silent may not be there"
    );
    // 13.9 ft of boom and 10 ft are below 24 ft.
    crew.state.site.as_mut().unwrap().site.machines[0]
        .geometry
        .boom_height = Some(len("13.9 ft"));
    assert_eq!(near(&crew.state, "EX-1"), []);
}

/// 29 CFR 1926.1408 and .1409: 20 ft for a voltage that nobody knows hold to 350 kV alone.
#[test]
fn a_line_of_unknown_voltage_is_fifty_feet_away_until_its_owner_says_that_it_is_no_more_than_350_kv()
 {
    let mut line = yard(CutKind::Face).state.site().unwrap().cuts.overheads[0].clone();
    assert_eq!(line.clearance(), len("10 ft"));
    line.kilovolts = None;
    assert_eq!(line.clearance(), len("50 ft"));
    line.clearance = Some(len("12 ft"));
    assert_eq!(
        line.clearance(),
        len("50 ft"),
        "less than the law is no answer"
    );
    line.kilovolts_at_most = Some(350.0);
    assert_eq!(line.clearance(), len("20 ft"));
    line.clearance = Some(len("60 ft"));
    assert_eq!(line.clearance(), len("60 ft"), "its owner comes first");
    line.clearance = Some(len("1 ft"));
    line.kilovolts = Some(1_200.0);
    assert_eq!(
        line.clearance(),
        len("50 ft"),
        "no figure of the law is no leave"
    );
}

#[test]
fn a_line_overhead_keeps_its_distance_in_the_cab_while_somebody_spots_and_whoever_is_in_spots_nothing()
 {
    use crate::asked::Command;
    use crate::said::spotter::BeSpotter;
    use crate::said::way_in::enter::GoIn;
    let mut crew = yard(CutKind::Face);
    crew.place("EX-1", "40 ft", "-20 ft");
    let line = |near: &[Near]| near.iter().any(|one| matches!(one, Near::Overhead { .. }));
    let shown = |crew: &Crew| line(&in_the_cab(&crew.state, "EX-1"));
    let owed = |crew: &Crew| line(&unsettled(&crew.state, "EX-1"));
    assert!(shown(&crew) && owed(&crew));
    let spots = BeSpotter {
        machine: "EX-1".into(),
    };
    crew.says(&ground(), Command::BeSpotter(spots)).unwrap();
    assert!(shown(&crew), "how far it stays is for whoever moves it");
    assert!(!owed(&crew));
    let goes = GoIn {
        machine: "EX-2".into(),
        visit: "visit-01".into(),
        mark: None,
        others: None,
    };
    crew.says(&ground(), Command::GoIn(goes)).unwrap();
    assert!(owed(&crew), "who is in the cut watches nothing");
}
