//! What ends a live call, one name for each thing that did not; and on random days, that no call lives which would not be sent.

use proptest::prelude::*;

use crate::answer::Outcome;
use crate::asked::{Asked, By, Command, Role};
use crate::cab::{self, Fills};
use crate::call::{CallState, Ending};
use crate::cuts::plan::{CutKind, Cuts, FaceZone, ToeCorner, Utility, UtilityKind};
use crate::decide;
use crate::entry::Body;
use crate::given::{Crew, at, flat_zone, ground, len, operator, reading, site, supervisor};
use crate::said::allow_dig::AllowDig;
use crate::said::change::{ChangeSite, Listed, Retired, SiteThing};
use crate::said::check_shot::SayBumped;
use crate::said::face_alarm::{LeaveFace, SayCameDown};
use crate::said::face_design::RetypeSoil;
use crate::said::face_inspect::InspectFace;
use crate::said::join::{Join, RemovePhone};
use crate::said::machine::{PlaceMachine, SayMoved};
use crate::said::person::GiveCab;
use crate::said::pothole::DigPothole;
use crate::said::query::{AnswerQuery, AskQuery};
use crate::said::quick_call::QuickCall;
use crate::said::reading::{LateReason, TakeReading};
use crate::said::set_up::CloseSetUp;
use crate::said::stop::{LiftStop, StopAll};
use crate::said::suspect::Standing;
use crate::said::ticket::SayPaint;
use crate::said::way_in::notice::NoticeRestart;
use crate::site::{Line, LineKind, Side, Site};
use crate::state::SetUpState;
use crate::time::{minutes, seconds};
use earthwork::buried::Marked;
use earthwork::face::{Evidence, SoilClass};
use earthwork::words::{QuickWord, ScreenUnit};
use words::Language;

mod off_site;
mod random;

/// A face north of the run, the run as a trench of its own, a gas main across it at x = 10, and a line over which nobody may go.
fn yard() -> Site {
    let mut site = site();
    let corner = |x: &str, y: &str| ToeCorner {
        at: at(x, y),
        elevation: len("98 ft"),
    };
    let zone = |id: &str, kind, y: &str| FaceZone {
        id: id.into(),
        toe: vec![corner("0 ft", y), corner("50 ft", y)],
        target: Some("RUN".into()),
        ..flat_zone(kind)
    };
    site.lines.push(Line {
        id: "PL".into(),
        kind: LineKind::Property,
        points: vec![at("-20 ft", "74 ft"), at("120 ft", "74 ft")],
        keep: Side::Right,
        no_cross: true,
        doubt: len("0.02 ft"),
        note: String::new(),
    });
    site.cuts = Cuts {
        competent: vec!["PN".into()],
        faces: vec![
            zone("BANK", CutKind::Face, "55 ft"),
            FaceZone {
                pipe_crown: Some(len("0.35 ft")),
                ..zone("DITCH", CutKind::Trench, "52 ft")
            },
        ],
        utilities: vec![Utility {
            id: "GAS".into(),
            kind: UtilityKind::Gas,
            points: vec![at("10 ft", "0 ft"), at("10 ft", "100 ft")],
            outside: len("2 in"),
            zone: len("24 in"),
            marked: Marked::Centre,
            call: "gas company".into(),
        }],
        ..Cuts::default()
    };
    site
}

/// EX-2 has a live call at R-1, beside the main and under the bank.
fn called() -> Crew {
    let mut crew = Crew::digging_on(yard());
    let class = Command::InspectFace(inspection("BANK", SoilClass::B, None));
    crew.says(&supervisor(), class).unwrap();
    let class = Command::InspectFace(inspection("DITCH", SoilClass::B, None));
    crew.says(&supervisor(), class).unwrap();
    crew.reads("R-1", "6.70").unwrap();
    assert!(live(&crew, "EX-2"));
    crew
}

fn inspection(zone: &str, class: SoilClass, release: Option<u64>) -> InspectFace {
    InspectFace {
        zone: zone.into(),
        class,
        evidence: Evidence::default(),
        seen: "dry".into(),
        by_hand: "thumb dents it".into(),
        pins: vec![],
        release: release.map_or_else(String::new, |_| "trimmed from the top".into()),
        alarm: release,
        word: None,
    }
}

fn live(crew: &Crew, machine: &str) -> bool {
    crew.state.live_call(machine).is_some()
}

/// How the newest call to a machine ended.
fn how(crew: &Crew, machine: &str) -> Option<Ending> {
    let last = crew.state.cabs[machine].last?;
    match crew.state.calls[&last].state {
        CallState::Ended { how } => Some(how),
        _ => None,
    }
}

/// Something is said, and the live call of EX-2 ends by it, once, and shows no number.
#[expect(clippy::needless_pass_by_value, reason = "each is said once")]
fn ends(mut crew: Crew, by: &By, command: Command, with: Ending) {
    crew.says(by, command.clone()).unwrap();
    assert_eq!(how(&crew, "EX-2"), Some(with), "{command:?}");
    let ended = |body: &Body| matches!(body, Body::CallEnded(_));
    let ends = crew.log.iter().filter(|entry| ended(&entry.body)).count();
    assert_eq!(ends, 1, "{command:?}");
    let screen = cab::fills(&crew.state, "EX-2");
    assert!(!matches!(screen, Fills::Call(..)), "{screen:?}");
}

fn change(put: Vec<SiteThing>, retire: Vec<Retired>) -> Command {
    Command::ChangeSite(ChangeSite {
        put,
        retire,
        why: "the office says so".into(),
        seen: None,
    })
}

fn machine_without_its_run(crew: &Crew) -> Vec<SiteThing> {
    let machine = |id: &str, works_on: &str| {
        let mut machine = crew.state.site().unwrap().machine(id).unwrap().clone();
        machine.works_on = works_on.split_whitespace().map(Into::into).collect();
        SiteThing::Machine(machine)
    };
    vec![machine("EX-2", ""), machine("EX-1", "PAD RUN")]
}

fn corrected(crew: &Crew, benchmark: &str, by: &str) -> Command {
    let mut mark = crew
        .state
        .site()
        .unwrap()
        .benchmark(benchmark)
        .unwrap()
        .clone();
    mark.elevation += len(by);
    change(vec![SiteThing::Benchmark(mark)], vec![])
}

fn bared() -> Command {
    // The run is dug to 98.00 at x = 10; the pipe's bottom would lie at 98.13.
    Command::DigPothole(DigPothole {
        utility: "GAS".into(),
        at: None,
        mark: Some("R-1".into()),
        top: "98.30".into(),
        size: "2 in".into(),
    })
}

fn paint(gone: bool) -> Command {
    Command::SayPaint(SayPaint {
        utility: "GAS".into(),
        gone,
    })
}

fn joins(device: &str, machine: &str) -> Command {
    Command::Join(Join {
        device: device.into(),
        token_digest: device.into(),
        person: "OW".into(),
        roles: vec![Role::Operator],
        machine: Some(machine.into()),
        language: Language::English,
        unit: ScreenUnit::Tenths,
        same_person: false,
        handset: None,
    })
}

fn gives(machine: &str) -> Command {
    Command::GiveCab(GiveCab {
        machine: machine.into(),
    })
}

fn places(machine: &str, x: &str, y: &str) -> Command {
    Command::PlaceMachine(PlaceMachine {
        machine: machine.into(),
        at: at(x, y),
    })
}

fn lifts(crew: &Crew) -> Command {
    let stops = crew.state.cabs.values().filter_map(|cab| cab.stop.as_ref());
    Command::LiftStop(LiftStop {
        machine: None,
        press: stops.map(|stop| stop.press).max().unwrap_or_default(),
        why: "nobody there".into(),
    })
}

#[test]
fn a_pothole_that_bares_a_pipe_too_near_ends_the_call_beside_it() {
    ends(called(), &ground(), bared(), Ending::Held);
}

#[test]
fn paint_that_went_ends_the_call_beside_the_line() {
    ends(called(), &ground(), paint(true), Ending::Held);
    let mut crew = called();
    crew.says(&ground(), paint(true)).unwrap();
    let Fills::Old { call, .. } = cab::fills(&crew.state, "EX-2") else {
        panic!("no number, and why")
    };
    let held = call.held.as_ref().unwrap().text().english;
    assert!(held.starts_with("The paint of GAS is gone."));
}

#[test]
fn soil_typed_weaker_over_a_line_ends_the_call_at_its_toe() {
    // The bank is 14 ft high at y = 55: at 1:1 it comes out at 69, at 1½:1 at 76, over y = 74.
    let weaker = Command::RetypeSoil(RetypeSoil {
        zone: "BANK".into(),
        class: SoilClass::C,
        evidence: Evidence::default(),
        why: "seep".into(),
    });
    ends(called(), &supervisor(), weaker, Ending::Held);
}

#[test]
fn a_laser_that_was_taken_down_takes_its_calls_with_it_and_may_still_be_said_to_have_been_bumped() {
    let down = Command::CloseSetUp(CloseSetUp {
        set_up: "S1".into(),
        why: String::new(),
    });
    ends(called(), &ground(), down.clone(), Ending::StaleByLaser);
    let mut crew = called();
    crew.says(&ground(), down).unwrap();
    let bumped = Command::SayBumped(SayBumped {
        set_up: "S1".into(),
    });
    crew.says(&ground(), bumped).unwrap();
    let open = &crew.state.suspects.last().unwrap().open;
    assert!(open.contains("R-1"), "{open:?}");
}

#[test]
fn a_benchmark_that_was_corrected_puts_the_laser_and_its_readings_in_doubt() {
    for benchmark in ["BM-1", "BM-2"] {
        let mut crew = called();
        let command = corrected(&crew, benchmark, "1.00 ft");
        ends(
            crew.clone(),
            &supervisor(),
            command.clone(),
            Ending::StaleByLaser,
        );
        crew.says(&supervisor(), command).unwrap();
        let state = &crew.state.set_up("S1").unwrap().state;
        assert!(matches!(state, SetUpState::InDoubt { .. }), "{state:?}");
        let window = &crew.state.suspects.last().unwrap().window;
        assert_eq!(window.marks[0].mark, "R-1");
        assert_eq!(window.marks[0].standing, Standing::Unproven);
        let again = crew.reads("R-1", "6.70").unwrap();
        assert!(matches!(again.outcome, Outcome::Spot { .. }), "{again:?}");
    }
    // What was taken down since measured from it too.
    let mut crew = called();
    let down = Command::CloseSetUp(CloseSetUp {
        set_up: "S1".into(),
        why: String::new(),
    });
    crew.says(&ground(), down).unwrap();
    let command = corrected(&crew, "BM-1", "1.00 ft");
    crew.says(&supervisor(), command).unwrap();
    assert!(crew.state.suspects.last().unwrap().open.contains("R-1"));
}

#[test]
fn a_machine_that_moved_or_was_placed_elsewhere_has_no_call_from_before() {
    let moved = Command::SayMoved(SayMoved {
        machine: "EX-2".into(),
    });
    ends(called(), &ground(), moved, Ending::MachineMoved);
    ends(
        called(),
        &ground(),
        places("EX-2", "900 ft", "800 ft"),
        Ending::MachineMoved,
    );
    // Within reach of the mark it digs on.
    let mut crew = called();
    crew.says(&ground(), places("EX-2", "10 ft", "30 ft"))
        .unwrap();
    assert!(live(&crew, "EX-2"));
}

#[test]
fn a_run_given_to_another_machine_leaves_no_number_in_the_first() {
    let crew = called();
    let given = change(machine_without_its_run(&crew), vec![]);
    ends(crew, &supervisor(), given, Ending::GivenAway);
}

#[test]
fn a_number_is_for_the_phone_that_it_was_sent_to() {
    let mut given = called();
    given.says(&operator("EX-2"), gives("EX-2")).unwrap();
    ends(given, &By::hub(), joins("m9", "EX-2"), Ending::NewScreen);
    let remove = Command::RemovePhone(RemovePhone {
        device: "m2".into(),
    });
    ends(called(), &supervisor(), remove.clone(), Ending::NewScreen);
    // An operator who joins later sees no number that was sent into an empty cab.
    let mut crew = called();
    crew.says(&supervisor(), remove).unwrap();
    crew.reads("R-1", "6.70").unwrap();
    assert!(live(&crew, "EX-2"));
    crew.says(&By::hub(), joins("m9", "EX-2")).unwrap();
    assert_eq!(how(&crew, "EX-2"), Some(Ending::NewScreen));
}

#[test]
fn a_stop_of_hours_leaves_nothing_to_dig_by() {
    let mut crew = called();
    crew.says(&ground(), Command::StopAll(StopAll::default()))
        .unwrap();
    crew.wait(minutes(180));
    let lift = lifts(&crew);
    crew.says(&supervisor(), lift).unwrap();
    assert_eq!(how(&crew, "EX-2"), Some(Ending::StaleByAge));
    // A short one costs the number nothing.
    let mut crew = called();
    crew.says(&ground(), Command::StopAll(StopAll::default()))
        .unwrap();
    crew.wait(minutes(3));
    let lift = lifts(&crew);
    crew.says(&supervisor(), lift).unwrap();
    assert!(live(&crew, "EX-2"));
}

#[test]
fn a_query_at_the_mark_ends_its_call_and_a_mark_that_left_the_site_too() {
    let query = Command::AskQuery(AskQuery {
        question: "is it the upper line?".into(),
        of: "engineer".into(),
        on: vec!["R-1".into()],
        stop: true,
        photo: None,
    });
    ends(called(), &supervisor(), query, Ending::QueryAsked);
    let gone = Retired {
        list: Listed::Mark,
        id: "R-1".into(),
    };
    let mut crew = called();
    crew.says(&supervisor(), change(vec![], vec![gone]))
        .unwrap();
    assert!(!live(&crew, "EX-2"));
}

#[test]
fn an_older_reading_of_another_mark_does_not_take_the_place_of_a_newer_call() {
    let mut crew = called();
    let call = crew.state.live_call("EX-2").unwrap().0;
    crew.wait(seconds(80));
    let earlier = crew.now.plus_ms(-seconds(85));
    let late = crew
        .said_at(
            &ground(),
            Command::TakeReading(reading("R-2", "6.50")),
            earlier,
        )
        .unwrap();
    let why = LateReason::NewerCall { mark: "R-1".into() };
    assert_eq!(late.outcome, Outcome::Late { why });
    assert_eq!(crew.state.live_call("EX-2").unwrap().0, call);
    // Nor does a word by eye that waited for its link.
    let more = Command::QuickCall(QuickCall {
        machine: "EX-2".into(),
        word: QuickWord::More,
        mark: None,
    });
    crew.said_at(&ground(), more, earlier).unwrap_err();
    assert_eq!(crew.state.live_call("EX-2").unwrap().0, call);
}

#[test]
fn a_hub_that_starts_on_a_clock_behind_its_log_keeps_no_number() {
    let mut crew = called();
    crew.says(&By::hub(), Command::NoticeRestart(NoticeRestart::default()))
        .unwrap();
    assert!(live(&crew, "EX-2"), "a quick start under a live crew");
    let behind = NoticeRestart { clock_behind: true };
    crew.says(&By::hub(), Command::NoticeRestart(behind))
        .unwrap();
    assert_eq!(how(&crew, "EX-2"), Some(Ending::ClockBehind));
}
