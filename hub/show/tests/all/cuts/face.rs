//! Faces: inspected, typed anew, designed.

use super::*;

#[test]
fn a_face_that_nobody_inspected_is_shown_for_what_it_is_and_becomes_overdue_by_work_under_it() {
    let mut crew = crew(under_a_face());
    let due = |crew: &Crew| {
        owed(crew).into_iter().find_map(|one| match one {
            ExceptionKind::InspectionDue { overdue, .. } => Some(overdue),
            _ => None,
        })
    };
    assert_eq!(due(&crew), Some(false));
    assert_eq!(spot(&mut crew), None);
    assert!(labels(&crew).contains(&Label::FaceNotInspected));
    assert_eq!(due(&crew), Some(true));
    inspects(&mut crew, inspection(SoilClass::B)).unwrap();
    assert_eq!(due(&crew), None);
    crew.reads("R-1", "6.75").unwrap();
    assert!(!labels(&crew).contains(&Label::FaceNotInspected));
    // Rain, water, a crack, vibration, a load: each asks for another. A load too near the crest is sent back.
    let rain = SeeAtFace {
        zone: "BANK".into(),
        what: Sight::Load,
        text: "1.9".into(),
        note: String::new(),
    };
    crew.says(&operator("EX-1"), Command::SeeAtFace(rain))
        .unwrap();
    assert!(crew.log.iter().any(|entry| matches!(
        &entry.body,
        Body::SeenAtFace(seen) if seen.move_back_to == Some(len("2 ft"))
    )));
    assert_eq!(due(&crew), Some(false));
}

#[test]
fn only_the_competent_person_inspects_with_values_and_finds_only_lower_the_class() {
    let mut crew = crew(under_a_face());
    let refused = crew.says(&ground(), Command::InspectFace(inspection(SoilClass::B)));
    assert!(matches!(refused, Err(Refusal::NotCompetent { .. })));
    for blank in [
        InspectFace {
            seen: " ".into(),
            ..inspection(SoilClass::B)
        },
        InspectFace {
            by_hand: String::new(),
            ..inspection(SoilClass::B)
        },
    ] {
        assert!(matches!(
            inspects(&mut crew, blank),
            Err(Refusal::SayWhy { .. })
        ));
    }
    assert_eq!(
        crew.state
            .cuts
            .face("BANK")
            .map(day::cuts::now::FaceNow::class),
        None
    );
    let wet = InspectFace {
        evidence: Evidence {
            water: true,
            ..Evidence::default()
        },
        ..inspection(SoilClass::A)
    };
    inspects(&mut crew, wet).unwrap();
    let face = crew.state.cuts.face("BANK").unwrap();
    assert_eq!(
        (face.picked, face.class()),
        (Some(SoilClass::A), SoilClass::C)
    );
}

#[test]
fn soil_typed_anew_moves_the_daylight_and_a_line_under_it_holds_the_toe_until_somebody_answers_for_it()
 {
    let mut crew = crew(under_a_face());
    inspects(&mut crew, inspection(SoilClass::B)).unwrap();
    let daylight = |crew: &Crew| {
        crew.state
            .cuts
            .face("BANK")
            .unwrap()
            .daylight
            .clone()
            .unwrap()
    };
    let found = daylight(&crew);
    assert_eq!(found.lines[0].least, len("4 ft"));
    assert_eq!(found.highest, len("10 ft"));
    // The shed stands 2 ft behind daylight; its line stands at 106 − 12 = 94 over the toe at 98.
    assert_eq!(
        (found.structures[0].room, found.structures[0].below),
        (len("2 ft"), None)
    );
    assert_eq!(spot(&mut crew), None);
    retypes(&mut crew, SoilClass::C);
    assert_eq!(daylight(&crew).lines[0].least, len("-1 ft"));
    assert!(
        owed(&crew)
            .iter()
            .any(|one| matches!(one, ExceptionKind::DaylightOver { no_cross: true, .. }))
    );
    assert_eq!(spot(&mut crew), Some(SpotReason::DaylightOver));
    // The page knows it before anything is sent.
    let ground_view = show::views::ground::view(&crew.state).unwrap();
    let shot = ground_view.shots.iter().find(|shot| shot.mark == "R-1");
    assert_eq!(shot.unwrap().held, Some(SpotReason::DaylightOver));
    // Away from the face the other machine digs on.
    assert!(matches!(
        crew.reads("P-1", "4.70").unwrap().outcome,
        Outcome::Called { .. }
    ));
    let by_eye = QuickCall {
        machine: "EX-2".into(),
        word: earthwork::words::QuickWord::More,
        mark: Some("R-1".into()),
    };
    let refused = crew.says(&ground(), Command::QuickCall(by_eye));
    assert!(matches!(refused, Err(Refusal::HeldBack { .. })));
    let allow = |why: &str| {
        Command::AllowDig(AllowDig {
            held: HeldBy::Daylight {
                zone: "BANK".into(),
            },
            why: why.into(),
        })
    };
    assert!(crew.says(&supervisor(), allow(" ")).is_err());
    crew.says(&supervisor(), allow("engineer on the phone: shored today"))
        .unwrap();
    assert_eq!(spot(&mut crew), None);
}

#[test]
fn a_line_that_is_moved_on_a_page_is_held_against_the_daylight_at_once() {
    let mut crew = crew(under_a_face());
    inspects(&mut crew, inspection(SoilClass::B)).unwrap();
    assert_eq!(spot(&mut crew), None);
    let mut line = crew.state.site().unwrap().lines[0].clone();
    for corner in &mut line.points {
        corner.y = len("64 ft");
    }
    let moved = Command::ChangeSite(ChangeSite {
        put: vec![SiteThing::Line(line)],
        retire: vec![],
        why: "surveyor found the pin".into(),
        seen: None,
    });
    crew.says(&supervisor(), moved).unwrap();
    // At 1 to 1 it comes out at y = 65, one over the line as it is now.
    let found = crew.state.cuts.face("BANK").unwrap().daylight.clone();
    assert_eq!(found.unwrap().lines[0].least, len("-1 ft"));
    assert_eq!(spot(&mut crew), Some(SpotReason::DaylightOver));
}

#[test]
fn an_engineers_own_design_replaces_the_tables_until_the_soil_is_typed_anew() {
    let mut crew = crew(under_a_face());
    inspects(&mut crew, inspection(SoilClass::B)).unwrap();
    retypes(&mut crew, SoilClass::C);
    let piece = |top: Option<&str>, run_per_rise| DesignPiece {
        top: top.map(len),
        run_per_rise,
    };
    let revise = |pieces: Vec<DesignPiece>, why: &str| {
        Command::ReviseFace(ReviseFace {
            zone: "BANK".into(),
            pieces,
            why: why.into(),
        })
    };
    let least = |crew: &Crew| {
        let found = crew
            .state
            .cuts
            .face("BANK")
            .unwrap()
            .daylight
            .clone()
            .unwrap();
        (found.designed, found.lines[0].least)
    };
    // 1 to 1 up to 102, then 1½ to 1: out 4 + 9 = 13, at y = 68, one inside.
    let design = vec![piece(Some("102 ft"), 1.0), piece(None, 1.5)];
    assert!(
        crew.says(&supervisor(), revise(design.clone(), ""))
            .is_err()
    );
    crew.says(
        &supervisor(),
        revise(design.clone(), "engineer, in writing"),
    )
    .unwrap();
    assert_eq!(least(&crew), (true, len("1 ft")));
    assert_eq!(spot(&mut crew), None);
    let upside_down = vec![piece(None, 1.0), piece(Some("102 ft"), 1.5)];
    let refused = crew.says(&supervisor(), revise(upside_down, "x"));
    assert!(matches!(refused, Err(Refusal::BadFace { .. })));
    retypes(&mut crew, SoilClass::C);
    assert_eq!(least(&crew), (false, len("-1 ft")));
}

#[test]
fn a_new_day_asks_for_an_inspection_and_keeps_what_the_face_did() {
    let mut crew = crew(under_a_face());
    inspects(&mut crew, inspection(SoilClass::B)).unwrap();
    opens(&mut crew);
    let open = OpenDay {
        day: "2031-01-02".into(),
    };
    crew.says(&By::hub(), Command::OpenDay(open)).unwrap();
    let face = crew.state.cuts.face("BANK").unwrap();
    assert!(face.alarm.is_some() && !face.inspection_stands());
    assert_eq!((face.class(), face.tapes["C1-C2"].len()), (SoilClass::B, 4));
}

#[derive(Clone, Copy, Debug)]
enum Doing {
    Inspect(bool),
    Retype,
    Rain,
    Slough,
    Allow,
    Leave,
    NewDay,
    Place,
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]
    /// Whatever is said in whatever order: no call goes out under a face that was left before an inspection with words.
    #[test]
    fn nobody_is_called_under_a_face_that_was_left(doings in proptest::collection::vec(0_u8..9, 1..14)) {
        let mut crew = crew(under_a_face());
        let mut left = false;
        for (step, doing) in doings.into_iter().enumerate() {
            let doing = [Doing::Inspect(false), Doing::Inspect(true), Doing::Retype, Doing::Rain, Doing::Slough,
                Doing::Allow, Doing::Leave, Doing::NewDay, Doing::Place][usize::from(doing)];
            match doing {
                Doing::Inspect(words) => {
                    let release = if words { "looked at" } else { "" };
                    inspects(&mut crew, InspectFace { release: release.into(), ..inspection(SoilClass::B) }).unwrap();
                    left = left && !words;
                }
                Doing::Retype => retypes(&mut crew, SoilClass::B),
                Doing::Rain => {
                    let rain = SeeAtFace { zone: "BANK".into(), what: Sight::Rain, text: String::new(), note: String::new() };
                    crew.says(&ground(), Command::SeeAtFace(rain)).unwrap();
                }
                Doing::Slough => {
                    let slough = SeeSlough { zone: "BANK".into(), length: "1".into(), height: "1".into(), back: "1".into(), mark: None, note: String::new() };
                    crew.says(&ground(), Command::SeeSlough(slough)).unwrap();
                    left = true;
                }
                Doing::Allow => {
                    let held = HeldBy::FaceLeft { zone: "BANK".into() };
                    let allowed = crew.says(&supervisor(), Command::AllowDig(AllowDig { held, why: "hurry".into() }));
                    prop_assert!(allowed.is_err());
                }
                Doing::Leave => {
                    let away = away(&crew);
                    crew.says(&operator("EX-2"), away).unwrap();
                }
                Doing::NewDay => {
                    crew.says(&By::hub(), Command::OpenDay(OpenDay { day: format!("2031-02-{:02}", step + 1) })).unwrap();
                    crew.confirms(&supervisor());
                    crew.set_up("BM-1", "5.00");
                    crew.check("S1", "BM-2", "3.48").unwrap();
                }
                Doing::Place => crew.place("EX-2", "10 ft", "40 ft"),
            }
            crew.check("S1", "BM-2", "3.48").unwrap();
            prop_assert_eq!(spot(&mut crew), left.then_some(SpotReason::FaceLeft));
            prop_assert_eq!(crew.state.live_call("EX-2").is_some(), !left);
        }
    }
}

/// A strength or a dip that is none is refused with words, at the inspection and when the soil is typed anew.
#[test]
fn a_strength_below_zero_is_refused() {
    let mut crew = crew(under_a_face());
    let wrong = |evidence: Evidence| {
        let mut asked = inspection(SoilClass::B);
        asked.evidence = evidence;
        asked
    };
    for evidence in [
        Evidence {
            strength: Some(Strength::Tsf { value: -0.5 }),
            ..Evidence::default()
        },
        Evidence {
            dip_run: Some(-3.0),
            ..Evidence::default()
        },
    ] {
        let refused = inspects(&mut crew, wrong(evidence));
        assert!(
            matches!(refused, Err(Refusal::BadFace { .. })),
            "{refused:?}"
        );
    }
    let good = Evidence {
        strength: Some(Strength::Tsf { value: 0.6 }),
        ..Evidence::default()
    };
    inspects(&mut crew, wrong(good)).unwrap();
    let card = supervisor::view(&crew.state).unwrap().cuts;
    let engineer = card.faces[0].engineer.clone().unwrap();
    // c = 600 psf over the usual weight: the cautious heights are half and two thirds of the hopeful one.
    let [whole, cracked, none] = [
        engineer.critical_height_ft,
        engineer.cracked_height_ft,
        engineer.no_tension_height_ft,
    ]
    .map(Option::unwrap);
    assert!(
        (whole - 4.0 * 600.0 / engineer.weight_pcf).abs() < 1e-9,
        "{whole}"
    );
    assert!((cracked - whole * 2.0 / 3.0).abs() < 1e-9 && (none - whole / 2.0).abs() < 1e-9);
}

/// 29 CFR 1926.652 (a)(1): each employee in an excavation, not in a trench alone. The bank stands ten feet over its toe.
#[test]
fn a_face_of_ten_feet_is_warned_of_like_a_trench_but_for_the_way_out() {
    use day::cuts::depth::{DepthRule, DepthState};
    let mut crew = crew(under_a_face());
    crew.reads("R-1", "6.70").unwrap();
    let call = crew.state.calls.values().next_back().unwrap();
    let said: Vec<_> = call
        .sent
        .warnings
        .iter()
        .map(|one| (one.rule, one.state))
        .collect();
    assert_eq!(said, [(DepthRule::Protection, DepthState::Owed)]);
    crew.reads("R-2", "6.70").unwrap();
    let again = crew.state.calls.values().next_back().unwrap();
    assert_eq!(again.sent.warnings, [], "once for each state");
}

/// 29 CFR 1926.651 (k)(1): excavations, each day before work; no depth is named. In the cab it is a label only where a
/// protection is owed too; the competent person and the supervisor are asked for every cut.
#[test]
fn a_shallow_trench_that_nobody_has_inspected_waits_for_the_competent_person_too() {
    let mut site = under_a_face();
    site.cuts.faces = vec![zone("DITCH", CutKind::Trench, "52 ft", "100.50 ft")];
    let mut crew = crew(site);
    let waits = |crew: &Crew| {
        let due = |one: &ExceptionKind| matches!(one, ExceptionKind::InspectionDue { zone, .. } if zone == "DITCH");
        owed(crew).iter().any(due)
    };
    assert!(waits(&crew));
    crew.reads("R-1", "6.70").unwrap();
    assert!(!labels(&crew).contains(&Label::FaceNotInspected));
    let looked = InspectFace {
        zone: "DITCH".into(),
        ..inspection(SoilClass::C)
    };
    inspects(&mut crew, looked).unwrap();
    assert!(!waits(&crew));
}

#[test]
fn a_card_says_what_the_rules_ask_of_a_cut_so_deep_and_no_reading_shows() {
    use earthwork::face::Asks;
    let asked = |crew: &Crew| {
        let card = supervisor::view(&crew.state).unwrap().cuts.faces[0].clone();
        card.also
            .into_iter()
            .map(|one| one.what)
            .collect::<Vec<_>>()
    };
    // Ten feet: everything.
    assert_eq!(asked(&crew(under_a_face())).len(), 5);
    let mut site = under_a_face();
    site.cuts.faces = vec![zone("DITCH", CutKind::Trench, "52 ft", "101.50 ft")];
    // 98.00 in the western half, 97.00 in the eastern: 4.50 at most, too deep to go in where the air could be bad.
    assert_eq!(
        asked(&crew(site)),
        [
            Asks::FallingLoads,
            Asks::MobileEquipment,
            Asks::Atmosphere,
            Asks::Water
        ]
    );
}
