//! Rain told through: twice, late, from the wrong person, over the night, under an open form; a property over random words.

use earthwork::face::{Evidence, SoilClass};
use proptest::prelude::*;

use super::*;
use crate::asked::{By, Command};
use crate::cuts::now::FaceNow;
use crate::cuts::plan::{CutKind, Cuts};
use crate::given::{Crew, flat_zone, ground, site, soil_test, supervisor};
use crate::said::day::OpenDay;
use crate::said::face_inspect::InspectFace;
use crate::time::{minutes, seconds};

/// A face 12 ft high, and a trench that nobody has begun: it lies over the ground. Invented.
fn crew() -> Crew {
    let mut site = site();
    let mut trench = flat_zone(CutKind::Trench);
    trench.id = "T".into();
    trench.ground.shape = earthwork::target::Shape::Flat {
        elevation: crate::given::len("100 ft"),
    };
    site.cuts = Cuts {
        competent: vec!["PN".into()],
        faces: vec![flat_zone(CutKind::Face), trench],
        ..Cuts::default()
    };
    Crew::digging_on(site)
}

fn rain() -> Command {
    Command::SayRain(SayRain {})
}

fn stop(rain: u64) -> Command {
    Command::SayRainStopped(SayRainStopped { rain })
}

fn inspection(word: Option<u64>) -> Command {
    Command::InspectFace(InspectFace {
        zone: "F".into(),
        class: SoilClass::C,
        evidence: Evidence::default(),
        seen: "wet, no cracks".into(),
        by_hand: "thumb goes in".into(),
        pins: vec![],
        release: String::new(),
        alarm: None,
        word,
    })
}

fn late(crew: &mut Crew, by: &By, command: Command, ago_ms: i64) -> Result<(), Refusal> {
    let made_at = crew.now.plus_ms(-ago_ms);
    crew.said_at(by, command, made_at).map(|_| ())
}

fn is_overtaken(result: &Result<(), Refusal>) -> bool {
    matches!(result, Err(Refusal::Overtaken { .. }))
}

fn stands(crew: &Crew) -> bool {
    let face = crew.state.cuts.face("F");
    face.is_some_and(FaceNow::inspection_stands)
}

fn test_stands(crew: &Crew) -> bool {
    let tests = crew.state.account.tests.values();
    tests.last().is_some_and(crate::account::Test::stands)
}

#[test]
fn a_face_owes_an_inspection_when_rain_begins_and_again_when_it_stops() {
    let mut crew = crew();
    crew.says(&supervisor(), inspection(None)).unwrap();
    assert!(stands(&crew));
    crew.wait(minutes(5));
    crew.says(&supervisor(), rain()).unwrap();
    let due = crew.state.cuts.face("F").unwrap().due.unwrap();
    assert_eq!((due.why, due.since), (InspectionWhy::Rain, crew.now));
    assert!(
        crew.state
            .cuts
            .face("T")
            .is_none_or(|face| face.due.is_none()),
        "nobody has begun that trench"
    );
    // Looked at while it rains: that is not after it.
    crew.wait(minutes(5));
    crew.says(&supervisor(), inspection(None)).unwrap();
    assert!(stands(&crew));
    crew.wait(minutes(5));
    let began = crew.state.rain.word;
    crew.says(&ground(), stop(began)).unwrap();
    assert!(!stands(&crew));
    assert_eq!(crew.state.rain.since, None);
    crew.says(&supervisor(), inspection(None)).unwrap();
    assert!(stands(&crew));
}

#[test]
fn both_words_void_what_was_tested_before_them() {
    let mut crew = crew();
    crew.reads("P-1", "5.00").unwrap();
    crew.says(&ground(), soil_test("P-1")).unwrap();
    assert!(test_stands(&crew));
    crew.says(&ground(), rain()).unwrap();
    assert!(!test_stands(&crew));
    crew.wait(minutes(5));
    crew.says(&ground(), soil_test("P-1")).unwrap();
    assert!(test_stands(&crew));
    let began = crew.state.rain.word;
    crew.says(&ground(), stop(began)).unwrap();
    assert!(!test_stands(&crew), "tested in the rain");
    // One that was made before the rain stopped and comes after it.
    crew.wait(minutes(5));
    late(&mut crew, &ground(), soil_test("P-1"), minutes(6)).unwrap();
    assert!(!test_stands(&crew));
    crew.says(&ground(), soil_test("P-1")).unwrap();
    assert!(test_stands(&crew));
}

#[test]
fn said_twice_it_is_one_rain_and_what_stops_it_names_the_newest_word() {
    let mut crew = crew();
    crew.wait(minutes(5));
    crew.says(&ground(), rain()).unwrap();
    let (first, since) = (crew.state.rain.word, crew.state.rain.since);
    // Pressed before the first word was known: the same rain, and nothing new.
    crew.wait(seconds(5));
    let before = crew.log.len();
    late(&mut crew, &supervisor(), rain(), seconds(6)).unwrap();
    assert_eq!(crew.log.len(), before);
    // Said again later: since when stays, and what answers the first does not end it.
    crew.wait(minutes(20));
    crew.says(&supervisor(), rain()).unwrap();
    assert_eq!(crew.state.rain.since, since);
    let mut result = crew.says(&ground(), stop(first)).map(|_| ());
    assert!(is_overtaken(&result), "{result:?}");
    assert!(crew.state.rain.since.is_some());
    let newest = crew.state.rain.word;
    crew.says(&ground(), stop(newest)).unwrap();
    let before = crew.log.len();
    crew.says(&supervisor(), stop(newest)).unwrap();
    assert_eq!(crew.log.len(), before, "stopped once is stopped");
    // It rains anew: the word that stopped the rain before does not stop this one.
    crew.wait(minutes(5));
    crew.says(&ground(), rain()).unwrap();
    result = crew.says(&supervisor(), stop(newest)).map(|_| ());
    assert!(is_overtaken(&result), "{result:?}");
}

#[test]
fn late_it_is_taken_unless_it_is_older_than_the_word_that_it_stopped() {
    let mut crew = crew();
    crew.wait(minutes(60));
    crew.says(&supervisor(), inspection(None)).unwrap();
    // Half an hour in a phone without a link.
    late(&mut crew, &ground(), rain(), minutes(30)).unwrap();
    let since = crew.now.plus_ms(-minutes(30));
    assert_eq!(crew.state.rain.since, Some(since));
    assert!(!stands(&crew));
    // It stopped a quarter of an hour ago: who inspected since did not know, so that it is owed.
    crew.wait(minutes(20));
    crew.says(&supervisor(), inspection(None)).unwrap();
    let began = crew.state.rain.word;
    late(&mut crew, &ground(), stop(began), minutes(15)).unwrap();
    assert!(!stands(&crew) && crew.state.rain.since.is_none());
    let result = late(&mut crew, &supervisor(), rain(), minutes(10));
    assert!(is_overtaken(&result), "{result:?}");
    // An inspection from before the rain stopped does not count as after it.
    let result = late(&mut crew, &supervisor(), inspection(None), minutes(1));
    assert!(is_overtaken(&result), "{result:?}");
    assert!(!stands(&crew));
}

#[test]
fn a_form_that_was_opened_before_the_rain_is_looked_at_again() {
    let mut crew = crew();
    let known = |crew: &Crew| {
        let face = crew.state.cuts.face("F");
        face.and_then(|face| face.word).map_or(0, |word| word.entry)
    };
    let opened = known(&crew);
    crew.says(&ground(), rain()).unwrap();
    crew.wait(minutes(2));
    let result = crew
        .says(&supervisor(), inspection(Some(opened)))
        .map(|_| ());
    assert!(is_overtaken(&result), "{result:?}");
    let opened = known(&crew);
    crew.says(&supervisor(), inspection(Some(opened))).unwrap();
    assert!(stands(&crew));
}

#[test]
fn no_visitor_says_it_and_it_goes_on_over_the_night() {
    let mut crew = crew();
    let visitor = By {
        device: "v1".into(),
        person: "VZ".into(),
        roles: vec![Role::Visitor],
        machine: None,
    };
    assert!(matches!(
        crew.says(&visitor, rain()),
        Err(Refusal::NotAllowed { .. })
    ));
    crew.says(&ground(), rain()).unwrap();
    let began = crew.state.rain.clone();
    let next = OpenDay {
        day: "2030-05-15".into(),
    };
    crew.says(&By::hub(), Command::OpenDay(next)).unwrap();
    assert_eq!(crew.state.rain, began, "it rains on");
    assert!(!stands(&crew));
    crew.joins(&ground()).confirms(&supervisor());
    crew.says(&supervisor(), inspection(None)).unwrap();
    assert!(stands(&crew), "looked at on this day, in the rain");
    crew.says(&ground(), stop(began.word)).unwrap();
    assert!(!stands(&crew));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]
    /// Whatever is said in whatever order, late or not: no inspection stands that was made before the newest word about the
    /// rain, no test that passed does, and only a word that it rains makes it rain.
    #[test]
    fn nothing_from_before_the_newest_word_about_rain_stands(
        words in proptest::collection::vec((0_u8..4, 0_i64..40), 1..20)
    ) {
        let mut crew = crew();
        crew.reads("P-1", "5.00").unwrap();
        crew.wait(minutes(60));
        let start = crew.now;
        let (mut inspected, mut tested) = (start, start);
        for (what, ago) in words {
            crew.wait(minutes(3));
            let (by, command) = match what {
                0 => (ground(), rain()),
                1 => (supervisor(), stop(crew.state.rain.word)),
                2 => (supervisor(), inspection(None)),
                _ => (ground(), soil_test("P-1")),
            };
            let made_at = crew.now.plus_ms(-minutes(ago)).max(start);
            let before = crew.state.rain.clone();
            let taken = crew.said_at(&by, command, made_at).is_ok();
            match what {
                2 if taken => inspected = made_at,
                3 if taken => tested = made_at,
                _ => {}
            }
            let newest = crew.state.rain.at.unwrap_or(start);
            prop_assert!(!stands(&crew) || inspected >= newest);
            prop_assert!(!test_stands(&crew) || tested >= newest);
            prop_assert!(what == 0 || crew.state.rain.since.is_none() || crew.state.rain == before);
        }
    }
}
