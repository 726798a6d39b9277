//! Water told through: pumped out, twice, late, from the wrong person, over the night; what it voids and what it does not free.

use earthwork::face::{Evidence, SoilClass};
use proptest::prelude::*;

use super::*;
use crate::asked::{By, Command};
use crate::cuts::now::FaceNow;
use crate::cuts::plan::{CutKind, Cuts};
use crate::given::{Crew, flat_zone, ground, operator, site, soil_test, supervisor};
use crate::said::call::SayCant;
use crate::said::day::OpenDay;
use crate::said::face_inspect::InspectFace;
use crate::said::face_seen::{SeeAtFace, Sight};
use crate::said::void::VoidCause;
use crate::time::{minutes, seconds};

/// A face along which the pad is dug; the run lies apart from it. Invented.
fn crew() -> Crew {
    let mut site = site();
    let mut face = flat_zone(CutKind::Face);
    face.target = Some("PAD".into());
    site.cuts = Cuts {
        competent: vec!["PN".into()],
        faces: vec![face],
        ..Cuts::default()
    };
    Crew::digging_on(site)
}

fn at_the_face() -> WaterAt {
    WaterAt::Face { zone: "F".into() }
}

fn water(crew: &mut Crew) -> u64 {
    let seen = SeeAtFace {
        zone: "F".into(),
        what: Sight::Water,
        text: String::new(),
        note: String::new(),
    };
    crew.says(&ground(), Command::SeeAtFace(seen)).unwrap();
    crew.state.cuts.water.last().unwrap().water
}

fn pump(at: WaterAt, water: u64) -> Command {
    Command::SayPumped(SayPumped { at, water })
}

fn inspection(evidence: Evidence) -> Command {
    Command::InspectFace(InspectFace {
        zone: "F".into(),
        class: SoilClass::B,
        evidence,
        seen: "water at the toe".into(),
        by_hand: "thumb goes in".into(),
        pins: vec![],
        release: String::new(),
        alarm: None,
        word: None,
    })
}

fn tests_soil(crew: &mut Crew, mark: &str, ago_ms: i64) {
    let made_at = crew.now.plus_ms(-ago_ms);
    crew.said_at(&ground(), soil_test(mark), made_at).unwrap();
}

fn stands(crew: &Crew) -> bool {
    let face = crew.state.cuts.face("F");
    face.is_some_and(FaceNow::inspection_stands)
}

/// Of each soil test, its mark and why it does not count.
fn tests(crew: &Crew) -> Vec<(&str, Option<VoidCause>)> {
    let tests = crew.state.account.tests.values();
    tests
        .map(|one| {
            let why = one.void.as_ref().map(|(_, why)| why.clone());
            (one.tested.mark.as_str(), why)
        })
        .collect()
}

#[test]
fn pumped_out_it_is_gone_and_nothing_is_freed_by_it() {
    let mut crew = crew();
    crew.reads("P-1", "5.00").unwrap();
    crew.reads("R-1", "7.00").unwrap();
    tests_soil(&mut crew, "P-1", 0);
    tests_soil(&mut crew, "R-1", 0);
    let said = water(&mut crew);
    let wet = Evidence {
        water: true,
        ..Evidence::default()
    };
    crew.wait(minutes(5));
    crew.says(&supervisor(), inspection(wet)).unwrap();
    assert!(stands(&crew));
    crew.wait(minutes(30));
    crew.says(&ground(), pump(at_the_face(), said)).unwrap();
    assert!(crew.state.cuts.water.is_empty());
    let face = crew.state.cuts.face("F").unwrap();
    assert_eq!(face.due.map(|due| due.why), Some(InspectionWhy::Water));
    assert_eq!(face.class(), SoilClass::C, "lowered, and it stays so");
    assert_eq!(
        tests(&crew),
        [("P-1", Some(VoidCause::Water {})), ("R-1", None)]
    );
    // Tested before it was pumped out and told after it.
    crew.wait(minutes(5));
    tests_soil(&mut crew, "P-1", minutes(6));
    tests_soil(&mut crew, "P-1", 0);
    let last: Vec<bool> = tests(&crew)[2..]
        .iter()
        .map(|one| one.1.is_none())
        .collect();
    assert_eq!(last, [false, true]);
    // An inspection from before it does not count as after it.
    let made_at = crew.now.plus_ms(-minutes(6));
    let late = crew.said_at(&supervisor(), inspection(wet), made_at);
    assert!(matches!(late, Err(Refusal::Overtaken { .. })), "{late:?}");
    crew.says(&supervisor(), inspection(wet)).unwrap();
    assert!(stands(&crew));
}

#[test]
fn what_a_cab_could_not_dig_for_water_is_pumped_out_at_its_mark() {
    let mut crew = crew();
    crew.reads("P-1", "4.70").unwrap();
    let cant = SayCant {
        why: CantReason::Water,
    };
    crew.says(&operator("EX-1"), Command::SayCant(cant.clone()))
        .unwrap();
    crew.says(&operator("EX-2"), Command::SayCant(cant))
        .unwrap();
    let places: Vec<&str> = crew
        .state
        .cuts
        .water
        .iter()
        .map(|one| one.at.name())
        .collect();
    assert_eq!(places, ["P-1", "EX-2"], "the second had no call");
    let (first, second) = (
        crew.state.cuts.water[0].clone(),
        crew.state.cuts.water[1].clone(),
    );
    crew.says(&ground(), pump(first.at, first.water)).unwrap();
    assert_eq!(crew.state.cabs["EX-1"].cant, None);
    assert!(crew.state.live_call("EX-1").is_none(), "no call comes back");
    assert!(crew.state.cabs["EX-2"].cant.is_some());
    crew.says(&supervisor(), pump(second.at, second.water))
        .unwrap();
    let Body::WaterPumped(told) = &crew.log.last().unwrap().body else {
        panic!("{:?}", crew.log.last())
    };
    assert_eq!(told.marks, ["R-1", "R-2", "R-3", "R-4"], "all that it digs");
}

#[test]
fn twice_late_for_other_water_or_from_the_cab_it_ends_nothing() {
    let mut crew = crew();
    let first = water(&mut crew);
    let since = crew.state.cuts.water[0].since;
    crew.wait(minutes(10));
    let newest = water(&mut crew);
    assert_eq!(crew.state.cuts.water[0].since, since);
    let other = crew.says(&ground(), pump(at_the_face(), first));
    assert!(matches!(other, Err(Refusal::Overtaken { .. })), "{other:?}");
    crew.wait(minutes(1));
    let made_at = crew.now.plus_ms(-seconds(30));
    let late = crew.said_at(&ground(), pump(at_the_face(), newest), made_at);
    assert!(matches!(late, Err(Refusal::SaidTooLate { .. })), "{late:?}");
    let cab = crew.says(&operator("EX-1"), pump(at_the_face(), newest));
    assert!(matches!(cab, Err(Refusal::NotAllowed { .. })), "{cab:?}");
    let nowhere = WaterAt::Face { zone: "X".into() };
    let nowhere = crew.says(&ground(), pump(nowhere, newest));
    assert!(
        matches!(nowhere, Err(Refusal::Unknown { .. })),
        "{nowhere:?}"
    );
    assert_eq!(crew.state.cuts.water.len(), 1);
    // Over the night it stands on, and so does what answers it.
    let next = OpenDay {
        day: "2030-05-15".into(),
    };
    crew.says(&By::hub(), Command::OpenDay(next)).unwrap();
    crew.joins(&ground());
    crew.says(&ground(), pump(at_the_face(), newest)).unwrap();
    let entries = crew.log.len();
    crew.says(&ground(), pump(at_the_face(), newest)).unwrap();
    assert_eq!(crew.log.len(), entries, "pumped out once is pumped out");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]
    /// Whatever is said in whatever order: after PUMPED OUT nothing stands that was looked at before it, and only water that was
    /// said is there to be pumped.
    #[test]
    fn nothing_from_before_the_pump_stands(words in proptest::collection::vec(0_u8..4, 1..20)) {
        let mut crew = crew();
        crew.reads("P-1", "5.00").unwrap();
        let (mut inspected, mut tested, mut pumped_at) = (crew.now, crew.now, crew.now);
        for what in words {
            crew.wait(minutes(3));
            match what {
                0 => { water(&mut crew); }
                1 => {
                    let Some(stands) = crew.state.cuts.water.first().cloned() else { continue };
                    crew.says(&ground(), pump(stands.at, stands.water)).unwrap();
                    pumped_at = crew.now;
                    prop_assert!(crew.state.cuts.water.is_empty());
                }
                2 => {
                    crew.says(&supervisor(), inspection(Evidence::default())).unwrap();
                    inspected = crew.now;
                }
                _ => {
                    tests_soil(&mut crew, "P-1", 0);
                    tested = crew.now;
                }
            }
            prop_assert!(!stands(&crew) || inspected >= pumped_at);
            let last = crew.state.account.tests.values().last();
            prop_assert!(last.is_none_or(|one| !one.stands()) || tested >= pumped_at);
        }
    }
}
