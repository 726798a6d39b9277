//! Words that come late: each is said while something stands, waits without a link, and comes when something else does.

use crate::asked::{By, Command};
use crate::cab::{self, Fills};
use crate::cuts::held::HeldBy;
use crate::cuts::plan::{CutKind, Cuts, Utility, UtilityKind};
use crate::given::{Crew, at, flat_zone, ground, operator, site, supervisor};
use crate::refusal::Refusal;
use crate::said::allow_dig::AllowDig;
use crate::said::face_alarm::{LeaveFace, SayCameDown};
use crate::said::face_inspect::InspectFace;
use crate::said::face_seen::{SeeAtFace, Sight};
use crate::said::machine::{PlaceMachine, SayMoved};
use crate::said::marks::{LaidFrom, LayMarks, ScrapeMarks};
use crate::said::set_up::DoubtReason;
use crate::said::spotter::{BeSpotter, EndSpotter};
use crate::said::stop::{LiftStop, StopAll};
use crate::said::ticket::SayPaint;
use crate::state::SetUpState;
use crate::time::{minutes, seconds};
use earthwork::buried::Marked;
use earthwork::face::{Evidence, SoilClass};

mod forms;

/// A face along y = 100 and a gas main along y = 20, with a digging crew far from both.
fn crew() -> Crew {
    let mut site = site();
    let mut other = flat_zone(CutKind::Face);
    other.id = "G".into();
    site.cuts = Cuts {
        competent: vec!["PN".into()],
        faces: vec![flat_zone(CutKind::Face), other],
        utilities: vec![Utility {
            id: "GAS".into(),
            kind: UtilityKind::Gas,
            points: vec![at("0 ft", "20 ft"), at("100 ft", "20 ft")],
            outside: crate::given::len("2 in"),
            zone: crate::given::len("24 in"),
            marked: Marked::Centre,
            call: "gas company".into(),
        }],
        ..Cuts::default()
    };
    Crew::digging_on(site)
}

/// Said so many seconds ago.
fn late(crew: &mut Crew, by: &By, command: Command, ago: i64) -> Result<(), Refusal> {
    let made_at = crew.now.plus_ms(-seconds(ago));
    crew.said_at(by, command, made_at).map(|_| ())
}

fn press(crew: &Crew) -> u64 {
    let stops = crew.state.cabs.values().filter_map(|cab| cab.stop.as_ref());
    stops.map(|stop| stop.press).max().unwrap_or_default()
}

fn lifts(press: u64) -> Command {
    Command::LiftStop(LiftStop {
        machine: None,
        press,
        why: "nobody there, eyes met".into(),
    })
}

fn alarm(crew: &Crew, zone: &str) -> u64 {
    let face = crew.state.cuts.face(zone).unwrap();
    face.alarm.as_ref().unwrap().alarm
}

fn came_down(zone: &str) -> Command {
    Command::SayCameDown(SayCameDown { zone: zone.into() })
}

fn inspects(zone: &str, alarm: Option<u64>) -> Command {
    Command::InspectFace(InspectFace {
        zone: zone.into(),
        class: SoilClass::C,
        evidence: Evidence::default(),
        seen: "dry".into(),
        by_hand: "thumb dents it".into(),
        pins: vec![],
        release: alarm.map_or_else(String::new, |_| "trimmed from the top".into()),
        alarm,
        word: None,
    })
}

fn away(zone: &str, alarm: u64) -> Command {
    Command::LeaveFace(LeaveFace {
        zone: zone.into(),
        alarm,
    })
}

fn place(machine: &str, x: &str) -> Command {
    Command::PlaceMachine(PlaceMachine {
        machine: machine.into(),
        at: at(x, "90 ft"),
    })
}

fn overtaken(result: &Result<(), Refusal>) {
    assert!(
        matches!(result, Err(Refusal::Overtaken { .. })),
        "{result:?}"
    );
}

fn too_late(result: &Result<(), Refusal>) {
    assert!(
        matches!(result, Err(Refusal::SaidTooLate { .. })),
        "{result:?}"
    );
}

#[test]
fn a_lift_that_waited_in_a_phone_does_not_lift_a_later_stop() {
    let mut crew = crew();
    let stop = || Command::StopAll(StopAll::default());
    crew.says(&ground(), stop()).unwrap();
    let first = press(&crew);
    crew.wait(minutes(1));
    crew.says(&supervisor(), lifts(first)).unwrap();
    crew.wait(minutes(1));
    crew.says(&ground(), stop()).unwrap();
    // Typed against the first stop, on its way for two minutes; and the same as if it had been pressed just now.
    too_late(&late(&mut crew, &supervisor(), lifts(first), 120));
    overtaken(&late(&mut crew, &supervisor(), lifts(first), 0));
    // Who presses while the words are typed is not lifted with them.
    let seen = press(&crew);
    crew.says(&operator("EX-1"), stop()).unwrap();
    overtaken(&late(&mut crew, &supervisor(), lifts(seen), 0));
    assert!(crew.state.cabs.values().all(|cab| cab.stop.is_some()));
    let newest = press(&crew);
    crew.says(&supervisor(), lifts(newest)).unwrap();
    assert!(crew.state.cabs.values().all(|cab| cab.stop.is_none()));
}

#[test]
fn an_inspection_from_before_a_slough_does_not_bring_people_back_under_it() {
    let mut crew = crew();
    crew.says(&supervisor(), inspects("F", None)).unwrap();
    crew.says(&ground(), came_down("F")).unwrap();
    let first = alarm(&crew, "F");
    crew.wait(minutes(60));
    overtaken(&late(
        &mut crew,
        &supervisor(),
        inspects("F", Some(first)),
        3_700,
    ));
    // Made after it, but on its way too long for words that bring people back.
    too_late(&late(
        &mut crew,
        &supervisor(),
        inspects("F", Some(first)),
        60,
    ));
    crew.says(&ground(), came_down("F")).unwrap();
    overtaken(&late(
        &mut crew,
        &supervisor(),
        inspects("F", Some(first)),
        0,
    ));
    assert!(crew.state.cuts.face("F").unwrap().alarm.is_some());
    let newest = alarm(&crew, "F");
    crew.says(&supervisor(), inspects("F", Some(newest)))
        .unwrap();
    assert!(crew.state.cuts.face("F").unwrap().alarm.is_none());
    // What is seen at a face asks for an inspection made after it.
    crew.wait(minutes(5));
    let rain = SeeAtFace {
        zone: "F".into(),
        what: Sight::Rain,
        text: String::new(),
        note: String::new(),
    };
    crew.says(&ground(), Command::SeeAtFace(rain)).unwrap();
    overtaken(&late(&mut crew, &supervisor(), inspects("F", None), 30));
}

#[test]
fn away_is_about_the_alarm_that_the_cab_showed_and_two_left_faces_are_two() {
    let mut crew = crew();
    for zone in ["F", "G"] {
        crew.says(&ground(), place_of_ex_1(zone))
            .unwrap_or_else(|error| panic!("{error}"));
    }
    crew.says(&ground(), came_down("F")).unwrap();
    let first = alarm(&crew, "F");
    crew.says(&ground(), came_down("G")).unwrap();
    assert_eq!(crew.state.cuts.owed_by("EX-1").len(), 2);
    too_late(&late(&mut crew, &operator("EX-1"), away("F", first), 3_600));
    crew.says(&ground(), came_down("F")).unwrap();
    overtaken(&late(&mut crew, &operator("EX-1"), away("F", first), 0));
    let newest = alarm(&crew, "F");
    crew.says(&operator("EX-1"), away("F", newest)).unwrap();
    // The other one is left still.
    let screen = cab::fills(&crew.state, "EX-1");
    assert!(
        matches!(&screen, Fills::LeaveFace { zone, .. } if zone.id == "G"),
        "{screen:?}"
    );
    assert_eq!(
        crew.state.cabs["EX-1"].place, None,
        "it is not where it was said to be"
    );
}

fn place_of_ex_1(_: &str) -> Command {
    place("EX-1", "40 ft")
}

#[test]
fn a_machine_that_comes_under_a_left_face_is_told_to_leave_and_called_nowhere() {
    let mut crew = crew();
    crew.says(&ground(), came_down("F")).unwrap();
    assert!(
        crew.state.cuts.owed_by("EX-1").is_empty(),
        "it stands far off"
    );
    crew.says(&ground(), place("EX-1", "40 ft")).unwrap();
    let leaves = |crew: &Crew| {
        let screen = cab::fills(&crew.state, "EX-1");
        matches!(screen, Fills::LeaveFace { .. })
    };
    assert!(leaves(&crew));
    let spot = crew.reads("P-1", "4.70").unwrap();
    assert!(
        matches!(
            spot.outcome,
            crate::answer::Outcome::Spot {
                why: crate::said::reading::SpotReason::FaceLeft,
                ..
            }
        ),
        "{spot:?}"
    );
    let more = crate::said::quick_call::QuickCall {
        machine: "EX-1".into(),
        word: earthwork::words::QuickWord::More,
        mark: None,
    };
    let held = crew.says(&ground(), Command::QuickCall(more));
    assert!(matches!(held, Err(Refusal::HeldBack { .. })), "{held:?}");
    // Elsewhere again; then nobody knows where.
    crew.says(&ground(), place("EX-1", "900 ft")).unwrap();
    assert!(!leaves(&crew));
    let moved = SayMoved {
        machine: "EX-1".into(),
    };
    crew.says(&ground(), Command::SayMoved(moved)).unwrap();
    assert!(leaves(&crew));
}

#[test]
fn the_next_day_opens_with_a_left_face_still_left() {
    let mut crew = crew();
    crew.says(&ground(), came_down("F")).unwrap();
    let day = crate::said::day::OpenDay {
        day: "2030-05-15".into(),
    };
    crew.says(&By::hub(), Command::OpenDay(day)).unwrap();
    for machine in ["EX-1", "EX-2"] {
        let screen = cab::fills(&crew.state, machine);
        assert!(matches!(screen, Fills::LeaveFace { .. }), "{screen:?}");
    }
}

#[test]
fn an_older_word_about_a_place_does_not_move_the_machine_back() {
    let mut crew = crew();
    crew.wait(minutes(61));
    crew.says(&ground(), place("EX-1", "40 ft")).unwrap();
    overtaken(&late(&mut crew, &ground(), place("EX-1", "900 ft"), 3_600));
    let moved = || {
        Command::SayMoved(SayMoved {
            machine: "EX-1".into(),
        })
    };
    overtaken(&late(&mut crew, &ground(), moved(), 3_600));
    crew.says(&ground(), moved()).unwrap();
    overtaken(&late(&mut crew, &ground(), place("EX-1", "900 ft"), 5));
    assert_eq!(crew.state.cabs["EX-1"].place, None);
}

#[test]
fn who_spotted_an_hour_ago_does_not_spot_now_and_sends_nobody_away() {
    let mut crew = crew();
    let be = || {
        Command::BeSpotter(BeSpotter {
            machine: "EX-1".into(),
        })
    };
    too_late(&late(&mut crew, &ground(), be(), 3_600));
    assert!(crew.state.cabs["EX-1"].spotter.is_none());
    crew.says(&ground(), be()).unwrap();
    let end = Command::EndSpotter(EndSpotter {
        machine: "EX-1".into(),
    });
    overtaken(&late(&mut crew, &ground(), end, 60));
    assert!(crew.state.cabs["EX-1"].spotter.is_some());
}

#[test]
fn painted_again_from_before_it_went_leaves_it_gone_and_a_leave_to_dig_does_not_outlive_what_it_was_about()
 {
    let mut crew = crew();
    let paint = |gone| {
        Command::SayPaint(SayPaint {
            utility: "GAS".into(),
            gone,
        })
    };
    let allow = || {
        let held = HeldBy::PaintGone {
            utility: "GAS".into(),
        };
        Command::AllowDig(AllowDig {
            held,
            why: "the locator repaints at noon, offsets held".into(),
        })
    };
    crew.says(&ground(), paint(true)).unwrap();
    overtaken(&late(&mut crew, &ground(), paint(false), 60));
    too_late(&late(&mut crew, &supervisor(), allow(), 60));
    crew.says(&supervisor(), allow()).unwrap();
    let held = |crew: &Crew| crate::cuts::held::at_mark(&crew.state, "P-1").is_some();
    assert!(!held(&crew));
    crew.says(&ground(), paint(false)).unwrap();
    crew.says(&ground(), paint(true)).unwrap();
    assert!(held(&crew), "gone once more: another matter");
}

#[test]
fn a_mark_laid_before_it_was_scraped_is_still_gone() {
    let mut crew = crew();
    let marks = || vec!["P-1".to_owned()];
    let lay = || {
        Command::LayMarks(LayMarks {
            marks: marks(),
            from: LaidFrom::Control,
            note: String::new(),
        })
    };
    let scrape = Command::ScrapeMarks(ScrapeMarks { marks: marks() });
    crew.says(&ground(), lay()).unwrap();
    crew.wait(minutes(10));
    crew.says(&ground(), scrape).unwrap();
    overtaken(&late(&mut crew, &ground(), lay(), 300));
    crew.says(&ground(), lay()).unwrap();
}

#[test]
fn a_good_shot_from_before_the_doubt_proves_nothing_about_the_laser_now() {
    let mut crew = crew();
    crew.wait(minutes(5));
    let bumped = Command::SayBumped(crate::said::check_shot::SayBumped {
        set_up: "S1".into(),
    });
    crew.says(&ground(), bumped).unwrap();
    let shot = |benchmark: &str, text: &str| {
        Command::ShootCheck(crate::said::check_shot::ShootCheck {
            set_up: "S1".into(),
            benchmark: benchmark.into(),
            rod: "A".into(),
            text: text.into(),
        })
    };
    overtaken(&late(&mut crew, &ground(), shot("BM-1", "5.00"), 120));
    let state = &crew.state.set_up("S1").unwrap().state;
    assert!(
        matches!(state, SetUpState::InDoubt { why: DoubtReason::Bumped { .. }, agreed, .. } if agreed.is_empty()),
        "{state:?}"
    );
}

#[test]
fn came_down_warns_everybody_before_it_asks_for_figures() {
    let mut crew = crew();
    crew.says(&ground(), place("EX-1", "40 ft")).unwrap();
    crew.says(&ground(), came_down("F")).unwrap();
    let screen = cab::fills(&crew.state, "EX-1");
    assert!(matches!(screen, Fills::LeaveFace { .. }), "{screen:?}");
    // The figures come after, and tell nobody anew.
    let said = alarm(&crew, "F");
    let slough = crate::said::face_seen::SeeSlough {
        zone: "F".into(),
        length: "16".into(),
        height: "8".into(),
        back: "5".into(),
        mark: None,
        note: String::new(),
    };
    crew.says(&ground(), Command::SeeSlough(slough)).unwrap();
    assert_eq!(alarm(&crew, "F"), said);
}
