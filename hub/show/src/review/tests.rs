//! Reviews of small days, told as given – when – then.

use earthwork::length::Length;
use earthwork::tolerance::Verdict;

use super::told::{ToldPage, WhoTold, told};
use super::{Day, Review, review};
use crate::review::exceptions::NotedKind;
use crate::review::hand_over::hand_over;
use crate::review::lanes::{LaneOf, LaneWhat};
use crate::review::marks::Became;
use day::asked::Command;
use day::built::LaserDoubt;
use day::given::{Crew, at, ground, len, operator, reading, supervisor};
use day::open::OpenKind;
use day::said::call::GotIt;
use day::said::check_shot::SayBumped;
use day::said::day::OpenDay;
use day::said::marks::{CheckMarks, LaidFrom, LayMarks};
use day::said::receipt::{Delivered, NoticeScreen, ScreenNotice, Shown};
use day::said::rule::{Rule, Ruling};
use day::state::SetUpState;
use day::state::State;
use day::time::{Time, minutes};
use earthwork::words::ScreenUnit;
use words::Language;

fn day(crew: &Crew) -> Day<'_> {
    Day::fold(State::default(), &crew.log)
}

fn reviewed(crew: &Crew) -> Review {
    review(&day(crew)).unwrap()
}

fn on(review: &Review, kind: OpenKind) -> Vec<&str> {
    let open = review.open.iter().filter(|item| item.kind == kind);
    open.map(|item| item.on.as_str()).collect()
}

/// The phone in EX-1's cab has it, paints it, and its operator presses.
fn received(crew: &mut Crew) -> u64 {
    let (call, _) = crew.state.live_call("EX-1").unwrap();
    let cab = operator("EX-1");
    crew.says(&cab, Command::Delivered(Delivered { call }))
        .unwrap();
    crew.wait(1_000);
    let shown = Shown {
        call,
        language: Language::English,
        unit: ScreenUnit::Tenths,
    };
    crew.says(&cab, Command::Shown(shown)).unwrap();
    crew.wait(3_000);
    crew.says(&cab, Command::GotIt(GotIt { call })).unwrap();
    call
}

#[test]
fn the_fold_ends_where_the_day_ended() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.70").unwrap();
    crew.wait(minutes(40));
    assert_eq!(day(&crew).state, crew.state);
    let review = reviewed(&crew);
    assert_eq!((review.first, review.last), (1, crew.state.seq));
}

/// HI is 105.00 and P-1's dig-to 100.00 (derived by hand): 4.70 is 0.30 high, 5.02 is 0.02 low.
#[test]
fn a_mark_is_built_as_its_last_reading_has_it() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.70").unwrap();
    crew.reads("P-1", "5.02").unwrap();
    crew.reads("R-1", "6.70").unwrap();
    let review = reviewed(&crew);
    let built: Vec<_> = review
        .built
        .iter()
        .map(|one| (one.mark.as_str(), one.dev, one.readings, one.verdict))
        .collect();
    assert_eq!(
        built,
        [
            ("P-1", Some(len("-0.02 ft")), 2, Some(Verdict::On)),
            ("R-1", Some(len("0.30 ft")), 1, Some(Verdict::High)),
        ]
    );
    assert_eq!(on(&review, OpenKind::High), ["R-1"]);
    assert_eq!(on(&review, OpenKind::NotRead), ["PAD", "RUN"]);
    let not_read = review
        .open
        .iter()
        .find(|item| item.kind == OpenKind::NotRead);
    assert_eq!(
        not_read.unwrap().text.english,
        "PAD target: nobody has read P-2."
    );
}

#[test]
fn a_laser_owes_its_closing_check_until_it_was_shot() {
    let mut crew = Crew::digging();
    assert_eq!(on(&reviewed(&crew), OpenKind::ClosingCheck), [""; 0]);
    crew.reads("P-1", "5.00").unwrap();
    let review = reviewed(&crew);
    assert_eq!(on(&review, OpenKind::ClosingCheck), ["S1"]);
    assert!(review.set_ups[0].unproven_since.is_some());
    crew.wait(minutes(1));
    crew.check("S1", "BM-2", "3.48").unwrap();
    let review = reviewed(&crew);
    assert_eq!(on(&review, OpenKind::ClosingCheck), [""; 0]);
    assert_eq!(
        (review.set_ups[0].checks.len(), review.set_ups[0].readings),
        (2, 1)
    );
    assert_eq!(review.set_ups[0].unproven_since, None);
}

#[test]
fn a_bump_leaves_marks_in_doubt_and_stands_among_the_exceptions() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "5.00").unwrap();
    crew.wait(minutes(1));
    let bumped = SayBumped {
        set_up: "S1".into(),
    };
    crew.says(&ground(), Command::SayBumped(bumped)).unwrap();
    crew.wait(minutes(10));
    let review = reviewed(&crew);
    assert!(matches!(
        review.set_ups[0].state,
        SetUpState::InDoubt { .. }
    ));
    assert_eq!(on(&review, OpenKind::InDoubt), ["P-1"]);
    assert_eq!(review.built[0].doubt, LaserDoubt::Open);
    assert!(
        review
            .exceptions
            .iter()
            .any(|one| one.kind == NotedKind::Laser)
    );
    let lane = review
        .lanes
        .iter()
        .find(|lane| lane.of == LaneOf::Laser("S1".into()));
    let spans = &lane.unwrap().spans;
    assert_eq!(spans.last().unwrap().what, LaneWhat::InDoubt);
}

#[test]
fn lanes_follow_one_another_without_a_hole_once_something_is_known() {
    let mut crew = Crew::digging();
    let notice = |screen| {
        Command::NoticeScreen(NoticeScreen {
            device: "m1".into(),
            screen,
            page: None,
        })
    };
    let hub = day::asked::By::hub();
    crew.says(&hub, notice(ScreenNotice::Showing)).unwrap();
    crew.reads("P-1", "4.70").unwrap();
    crew.says(&hub, notice(ScreenNotice::Lost)).unwrap();
    crew.wait(minutes(3));
    crew.says(&hub, notice(ScreenNotice::Showing)).unwrap();
    crew.reads("P-1", "4.80").unwrap();
    let review = reviewed(&crew);
    for lane in &review.lanes {
        for pair in lane.spans.windows(2) {
            assert_eq!(pair[0].to, pair[1].from, "{:?}", lane.of);
        }
    }
    let screen = review
        .lanes
        .iter()
        .find(|lane| lane.of == LaneOf::Screen("EX-1".into()));
    let lost = screen
        .unwrap()
        .spans
        .iter()
        .find(|span| span.what == LaneWhat::Lost);
    let lost = lost.unwrap();
    assert_eq!(lost.to.ms_since(lost.from), minutes(3));
}

/// The stack's only layer is 0.50 of gravel. 5.04 is 0.04 low, so it takes 0.54; 4.70 is 0.30 high and is trimmed first.
#[test]
fn the_next_crew_reads_how_much_gravel_each_station_takes() {
    let mut crew = Crew::digging();
    crew.reads("R-1", "7.04").unwrap();
    crew.reads("R-2", "6.70").unwrap();
    let sheets = hand_over(&day(&crew));
    assert_eq!(sheets.len(), 1, "nobody has read the pad");
    let run = &sheets[0];
    let rows: Vec<_> = run
        .stations
        .iter()
        .map(|one| (one.mark.as_str(), one.fill, one.trim))
        .collect();
    assert_eq!(
        rows[..2],
        [
            ("R-1", Some(len("0.54 ft")), None),
            ("R-2", Some(len("0.20 ft")), Some(len("0.30 ft"))),
        ]
    );
    let step = &run.steps[0];
    assert_eq!(
        (step.station, step.before, step.after),
        (len("20 ft"), len("98.00 ft"), len("97.00 ft"))
    );
    assert_eq!(run.width, Some(len("6 ft")));
}

fn asked(crew: &Crew, from: Time) -> ToldPage {
    let question = WhoTold {
        machine: "EX-1".into(),
        near: at("31 ft", "20 ft"),
        from,
        to: crew.now,
    };
    told(&day(crew), &question).unwrap()
}

#[test]
fn who_told_it_to_dig_is_answered_with_proof_and_gaps() {
    let mut crew = Crew::digging();
    let from = crew.now;
    let lay = LayMarks {
        marks: vec!["P-1".into()],
        from: LaidFrom::Hub,
        note: String::new(),
    };
    crew.says(&ground(), Command::LayMarks(lay)).unwrap();
    crew.reads("P-1", "4.70").unwrap();
    let first = received(&mut crew);
    // A call far away, and one to the other machine: neither is part of the answer.
    crew.reads("P-2", "4.70").unwrap();
    crew.reads("R-1", "6.90").unwrap();
    let page = asked(&crew, from);
    let calls: Vec<_> = page.calls.iter().map(|call| call.call).collect();
    assert_eq!(calls, [first]);
    assert_eq!(page.calls[0].shown_text.as_deref(), Some("DOWN 3"));
    assert_eq!(
        page.text.english,
        "RT told EX-1: P-1 DOWN 3. No call asked for a bottom below 100.00 ft."
    );
    let gaps: Vec<&str> = page
        .gaps
        .iter()
        .map(|gap| gap.text.english.as_str())
        .collect();
    assert_eq!(
        gaps,
        [
            "The screen in EX-1 was not showing.",
            "SETUP-1: no good check after the last of these calls, and nothing that stands either way.",
            "P-1: no second person measured it where it lies now.",
            "No photo of a mark within reach.",
        ]
    );
    // Each gap is closed by what it asks for.
    let check = CheckMarks {
        marks: vec!["P-1".into()],
        apart: "0.02".into(),
    };
    crew.says(&supervisor(), Command::CheckMarks(check))
        .unwrap();
    crew.check("S1", "BM-2", "3.48").unwrap();
    let gaps = asked(&crew, from).gaps;
    assert_eq!(gaps.len(), 2, "{gaps:?}");
}

#[test]
fn silence_is_a_gap_and_nobody_is_accused_of_it() {
    let mut crew = Crew::digging();
    let from = crew.now;
    crew.wait(minutes(45));
    let page = asked(&crew, from);
    assert!(page.calls.is_empty());
    assert_eq!(
        page.text.english,
        "Nobody told EX-1 by this log to dig here in this time."
    );
    let quiet = page
        .gaps
        .iter()
        .find(|gap| gap.text.english.starts_with("No rod reading"));
    let quiet = quiet.unwrap();
    assert_eq!((quiet.from, quiet.to), (Some(from), Some(crew.now)));
}

#[test]
fn a_ruling_closes_what_was_too_close_and_stands_among_the_exceptions() {
    let mut crew = Crew::digging();
    // 0.195 low of 0.20 allowed, twice: too close to call (derived by hand).
    crew.reads("P-1", "5.19").unwrap();
    crew.reads_now("P-1", "5.20").unwrap();
    let before = reviewed(&crew);
    assert_eq!(on(&before, OpenKind::Ruling), ["P-1"]);
    let rule = Rule {
        mark: "P-1".into(),
        ruling: Ruling::Patch,
        why: "gravel".into(),
    };
    crew.says(&supervisor(), Command::Rule(rule)).unwrap();
    let after = reviewed(&crew);
    assert_eq!(on(&after, OpenKind::Ruling), [""; 0]);
    assert_eq!(after.built[0].ruling, Some(Ruling::Patch));
    assert!(
        after
            .exceptions
            .iter()
            .any(|one| one.kind == NotedKind::Override)
    );
}

#[test]
fn a_late_reading_builds_nothing_and_is_told() {
    let mut crew = Crew::digging();
    crew.wait(minutes(10));
    let old = crew.now.plus_ms(-minutes(5));
    crew.said_at(&ground(), Command::TakeReading(reading("P-1", "4.70")), old)
        .unwrap();
    let review = reviewed(&crew);
    assert!(review.built.is_empty());
    let kinds: Vec<NotedKind> = review.exceptions.iter().map(|one| one.kind).collect();
    assert!(kinds.contains(&NotedKind::Late), "{kinds:?}");
    assert_eq!(review.account.hours.len(), 2);
    assert!(
        review
            .coverage
            .iter()
            .all(|run| run.unproven_length > Length::ZERO)
    );
}

/// 4.40 is 0.60 high, ten minutes later 4.70 is 0.30 high: 0.03 ft a minute, so ten minutes more (derived by hand).
#[test]
fn a_marks_history_has_every_reading_and_when_its_bottom_was_expected() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.40").unwrap();
    crew.wait(minutes(8));
    crew.reads("P-1", "4.70").unwrap();
    let second = crew.now;
    crew.wait(minutes(10));
    crew.said_at(
        &ground(),
        Command::TakeReading(reading("P-1", "4.60")),
        second,
    )
    .unwrap();
    let review = reviewed(&crew);
    let mark = review.marks.iter().find(|one| one.mark == "P-1").unwrap();
    let became: Vec<Became> = mark.readings.iter().map(|one| one.became).collect();
    assert_eq!(became, [Became::Taken, Became::Taken, Became::Late]);
    let arrives: Vec<Option<i64>> = mark
        .readings
        .iter()
        .map(|one| Some(one.arrives?.ms_since(one.at)))
        .collect();
    assert_eq!(arrives, [None, Some(minutes(10)), None]);
    // A call speaks of its mark too.
    assert!(
        mark.said
            .iter()
            .any(|one| one.text.english.contains("DOWN 3"))
    );
}

/// The pad is read on one day, the run on the next: the sheet of the second day has both, and says which day each is of.
#[test]
fn a_job_is_handed_over_as_all_its_days_left_it() {
    let mut crew = Crew::digging();
    crew.reads("R-1", "7.00").unwrap();
    crew.reads("R-2", "6.70").unwrap();
    crew.wait(minutes(1));
    crew.check("S1", "BM-2", "3.48").unwrap();
    let first = reviewed(&crew);
    assert_eq!(on(&first, OpenKind::High), ["R-2"]);
    let not_proven = first.coverage[0].unproven_length;
    let tomorrow = OpenDay {
        day: "2030-05-15".into(),
    };
    crew.wait(minutes(14 * 60));
    crew.says(&day::asked::By::hub(), Command::OpenDay(tomorrow))
        .unwrap();
    let morning = reviewed(&crew);
    let days = |review: &Review| -> Vec<(String, String)> {
        let built = review.built.iter();
        built
            .map(|one| (one.mark.clone(), one.day.clone()))
            .collect()
    };
    let old = "2030-05-14".to_owned();
    assert_eq!(
        days(&morning),
        [
            ("R-1".to_owned(), old.clone()),
            ("R-2".to_owned(), old.clone())
        ]
    );
    assert_eq!(on(&morning, OpenKind::High), ["R-2"]);
    assert_eq!(
        morning.coverage[0].unproven_length, not_proven,
        "what was proven stands"
    );
    assert!(
        morning.calls.is_empty(),
        "yesterday's calls are yesterday's"
    );
    crew.set_up("BM-1", "5.00");
    crew.check("S1", "BM-2", "3.48").unwrap();
    crew.reads("R-2", "7.02").unwrap();
    let noon = reviewed(&crew);
    assert_eq!(days(&noon)[1], ("R-2".to_owned(), "2030-05-15".to_owned()));
    assert_eq!(on(&noon, OpenKind::High), [""; 0]);
    let sheets = hand_over(&day(&crew));
    let got = sheets[0].stations.iter().filter(|one| one.got.is_some());
    assert_eq!(got.count(), 2);
}
