//! What was said stands on the screen that it is for, and on no other.

use day::asked::{By, Command};
use day::cuts::plan::{CutKind, Cuts, OverheadLine, Pile};
use day::given::{Crew, at, flat_zone, ground, len, operator, site, supervisor};
use day::said::battery::LowBattery;
use day::said::face_alarm::SayCameDown;
use day::said::near_miss::TellNearMiss;
use day::said::receipt::{CabPage, NoticeScreen, ScreenNotice};
use day::said::spotter::BeSpotter;
use day::said::stop::{LiftStop, StopAll};
use day::said::way_in::answer::BucketDown;
use day::said::way_in::ask::AskIn;
use day::time::minutes;
use day::way_in::Stage;
use show::views::exception::ExceptionKind;
use show::views::operator::CabScreen;
use show::views::{ground as phones, operator as cab, supervisor as board, visitor};

/// What needs somebody, as the supervisor sees it.
fn owed(crew: &Crew) -> Vec<ExceptionKind> {
    let view = board::view(&crew.state).unwrap();
    view.exceptions.into_iter().map(|one| one.what).collect()
}

#[test]
fn visitors_hear_that_a_face_came_down() {
    let mut yard = site();
    yard.cuts.competent = vec!["PN".into()];
    yard.cuts.faces = vec![flat_zone(CutKind::Face)];
    let mut crew = Crew::digging_on(yard);
    let heard = |crew: &Crew| visitor::view(&crew.state, "AB").unwrap().faces_left.len();
    assert_eq!(heard(&crew), 0);
    let down = SayCameDown { zone: "F".into() };
    crew.says(&ground(), Command::SayCameDown(down)).unwrap();
    assert_eq!(heard(&crew), 1);
}

/// The cab reads the label of its call; that a check is due is none of its business.
#[test]
fn that_a_check_is_due_stands_on_the_ground_phones_and_never_in_the_cab() {
    let mut crew = Crew::digging();
    let due = |crew: &Crew| phones::view(&crew.state).unwrap().set_ups[0].due.is_some();
    crew.wait(minutes(52));
    assert!(!due(&crew));
    crew.wait(minutes(53));
    crew.reads("P-1", "4.80").unwrap();
    assert!(due(&crew));
    let cab = serde_json::to_string(&cab::view(&crew.state, "EX-1")).unwrap();
    assert!(cab.contains("not_checked"), "{cab}");
    assert!(!cab.contains("\"due\""), "{cab}");
}

#[test]
fn a_low_battery_in_the_cab_stands_on_the_ground_phones_and_in_the_cab() {
    let mut crew = Crew::digging();
    let low = LowBattery {
        percent: None,
        charging: false,
    };
    crew.says(&operator("EX-1"), Command::LowBattery(low))
        .unwrap();
    let ground = phones::view(&crew.state).unwrap();
    assert!(ground.machines[0].battery_low.is_some());
    let cab = cab::view(&crew.state, "EX-1").unwrap();
    assert!(cab.battery_low.is_some());
}

#[test]
fn a_number_that_nobody_can_see_or_hear_is_told_on_the_ground_phones() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.70").unwrap();
    let card = |crew: &Crew| {
        let found = phones::view(&crew.state).unwrap().machines[0].clone();
        (found.in_view, found.mute)
    };
    assert_eq!(card(&crew), (true, false));
    let notice = NoticeScreen {
        device: "m1".into(),
        screen: ScreenNotice::Showing,
        page: Some(CabPage {
            covered: true,
            mute: true,
        }),
    };
    crew.says(&By::hub(), Command::NoticeScreen(notice))
        .unwrap();
    assert_eq!(card(&crew), (false, true));
}

#[test]
fn a_near_miss_waits_for_the_supervisor_until_somebody_has_said_what_happened() {
    let mut crew = Crew::digging();
    let stop = StopAll {
        why: "driver on foot".into(),
    };
    crew.says(&ground(), Command::StopAll(stop)).unwrap();
    let lift = LiftStop {
        machine: None,
        press: u64::MAX,
        why: "walked it".into(),
    };
    crew.says(&supervisor(), Command::LiftStop(lift)).unwrap();
    let waits = |crew: &Crew| {
        let mut kinds = owed(crew).into_iter();
        kinds.any(|kind| matches!(kind, ExceptionKind::NearMiss { number: 1, .. }))
    };
    assert!(waits(&crew));
    let told = TellNearMiss {
        number: 1,
        words: "driver briefed".into(),
        close: false,
    };
    crew.says(&supervisor(), Command::TellNearMiss(told))
        .unwrap();
    assert!(!waits(&crew));
}

/// EX-1 and EX-2 as the tests of the slew agreement place them: 27.8 ft of reach each, 19.5 ft apart.
#[test]
fn two_booms_that_can_meet_wait_for_the_supervisor() {
    let mut crew = Crew::digging();
    let waits = |crew: &Crew| {
        let mut kinds = owed(crew).into_iter();
        kinds.any(|kind| matches!(kind, ExceptionKind::CanMeet { .. }))
    };
    crew.place("EX-1", "70 ft", "82 ft");
    assert!(!waits(&crew));
    crew.place("EX-2", "86.75 ft", "72 ft");
    assert!(waits(&crew));
}

/// The day is not ready since it was opened; the booms can meet only now, and a stop comes last.
#[test]
fn what_can_hurt_somebody_stands_over_older_paper_and_of_two_such_the_older_first() {
    let mut crew = Crew::digging();
    let kinds = |crew: &Crew| -> Vec<&'static str> {
        let told = owed(crew).into_iter().filter_map(|kind| match kind {
            ExceptionKind::NotReady { .. } => Some("not ready"),
            ExceptionKind::CanMeet { .. } => Some("can meet"),
            ExceptionKind::Stopped { .. } => Some("stopped"),
            _ => None,
        });
        told.collect()
    };
    crew.place("EX-1", "70 ft", "82 ft");
    assert_eq!(kinds(&crew), ["not ready"]);
    crew.wait(minutes(3));
    crew.place("EX-2", "86.75 ft", "72 ft");
    assert_eq!(kinds(&crew), ["can meet", "not ready"]);
    crew.wait(minutes(6));
    let stop = StopAll { why: String::new() };
    crew.says(&ground(), Command::StopAll(stop)).unwrap();
    let told = kinds(&crew);
    assert_eq!(told.first(), Some(&"can meet"), "{told:?}");
    assert_eq!(told.last(), Some(&"not ready"), "{told:?}");
    assert!(told.contains(&"stopped"), "{told:?}");
}

/// A pile 1.9 ft behind the crest, where the rule has 2 (29 CFR 1926.651 (j)(2)); a line overhead within reach and clearance.
#[test]
fn what_is_near_a_machine_is_told_in_its_cab_and_waits_for_the_supervisor() {
    let mut yard = site();
    yard.cuts = Cuts {
        faces: vec![flat_zone(CutKind::Face)],
        overheads: vec![OverheadLine {
            id: "STREET".into(),
            points: vec![at("0 ft", "-50 ft"), at("300 ft", "-50 ft")],
            height: len("24 ft"),
            kilovolts: Some(12.5),
            kilovolts_at_most: None,
            clearance: None,
            call: String::new(),
        }],
        piles: vec![Pile {
            id: "SPOIL".into(),
            at: at("40 ft", "125.9 ft"),
            across: len("12 ft"),
            note: String::new(),
        }],
        ..Cuts::default()
    };
    yard.machines[0].geometry.boom_height = Some(len("19 ft"));
    let mut crew = Crew::digging_on(yard);
    let piled = |kind: &ExceptionKind| matches!(kind, ExceptionKind::PileAtCrest { .. });
    assert!(owed(&crew).iter().any(piled));
    crew.place("EX-1", "40 ft", "-12.3 ft");
    let spotter = |crew: &Crew| {
        let asks = |kind: &ExceptionKind| matches!(kind, ExceptionKind::SpotterNeeded { .. });
        owed(crew).iter().any(asks)
    };
    let near = |crew: &Crew| cab::view(&crew.state, "EX-1").unwrap().near.len();
    assert!(spotter(&crew));
    assert_eq!(near(&crew), 1);
    let spots = BeSpotter {
        machine: "EX-1".into(),
    };
    crew.says(&ground(), Command::BeSpotter(spots)).unwrap();
    assert!(!spotter(&crew));
    assert_eq!(near(&crew), 1, "how far it stays is for whoever moves it");
    let named = cab::view(&crew.state, "EX-1").unwrap().spotter;
    assert_eq!(named.unwrap().person, "RT");
}

/// An operator who goes to another machine on foot sees the own visit there; the own machine is not asked.
#[test]
fn an_operator_on_foot_reads_in_the_own_cab_how_the_visit_stands() {
    let mut crew = Crew::digging();
    let on_foot = operator("EX-2");
    let down = BucketDown { answers: vec![] };
    crew.says(&on_foot, Command::BucketDown(down)).unwrap();
    let ask = AskIn {
        machine: "EX-1".into(),
        visit: "visit-01".into(),
        mark: None,
        others: None,
    };
    crew.says(&on_foot, Command::AskIn(ask)).unwrap();
    let cards = cab::view(&crew.state, "EX-2").unwrap().on_foot;
    assert_eq!(cards.len(), 1);
    assert_eq!(cards[0].visit.as_ref().unwrap().stage, Stage::Asked);
}

#[test]
fn the_cab_shows_what_fills_its_screen() {
    let mut crew = Crew::digging();
    let screen = |crew: &Crew| cab::view(&crew.state, "EX-1").unwrap().screen;
    assert_eq!(screen(&crew), CabScreen::NoCall);
    crew.reads("P-1", "4.70").unwrap();
    let CabScreen::Call { call } = screen(&crew) else {
        panic!("no call: {:?}", screen(&crew));
    };
    // 105.00 − 4.70 = 100.30, dig-to 100.00: 0.30 high.
    assert_eq!(call.texts[0].line, "DOWN 3");
    crew.wait(minutes(9));
    assert!(matches!(screen(&crew), CabScreen::Old { .. }));
    let stop = StopAll {
        why: "man in swing".into(),
    };
    crew.says(&ground(), Command::StopAll(stop)).unwrap();
    let CabScreen::Stop { by, why, all, .. } = screen(&crew) else {
        panic!("no stop: {:?}", screen(&crew));
    };
    assert_eq!((&*by, &*why, all), ("RT", "man in swing", true));
}

#[test]
fn the_supervisor_reads_how_the_questions_came_out() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.50").unwrap();
    // 5.02 typed as 4.02 lifts the ground by 0.48; a whole foot is among the suggestions.
    crew.reads("P-1", "4.02").unwrap();
    crew.reads_now("P-1", "5.02").unwrap();
    let card = board::view(&crew.state).unwrap().questions;
    assert_eq!((card.asked, card.slips, card.hits), (1, 1, 1));
}
