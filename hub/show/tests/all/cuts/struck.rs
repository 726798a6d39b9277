//! A buried line that was struck: who gets away, which machines stand still, what is held and until when.

use super::*;
use day::said::call::{CantReason, SayCant};
use day::said::stop::LiftStop;
use day::said::struck::{SayStruck, StruckDo};

/// A gas main along x = 10; R-1 lies within its band. Invented.
fn beside(kind: UtilityKind) -> Crew {
    let mut site = site();
    site.cuts = Cuts {
        utilities: vec![Utility {
            id: "MAIN".into(),
            kind,
            points: vec![at("10 ft", "0 ft"), at("10 ft", "100 ft")],
            outside: len("2 in"),
            zone: len("24 in"),
            marked: Marked::Centre,
            call: "its owner".into(),
        }],
        ..Cuts::default()
    };
    crew(site)
}

fn cant_pipe(crew: &mut Crew, machine: &str) {
    let asked = SayCant {
        why: CantReason::Pipe,
    };
    crew.says(&operator(machine), Command::SayCant(asked))
        .unwrap();
}

fn stopped(crew: &Crew) -> Vec<&str> {
    let cabs = crew.state.cabs.iter();
    cabs.filter(|(_, cab)| cab.stop.is_some())
        .map(|(machine, _)| machine.as_str())
        .collect()
}

fn allow(crew: &mut Crew, line: Option<&str>, why: &str) -> Result<(), Refusal> {
    let held = HeldBy::LineStruck {
        line: line.map(str::to_owned),
    };
    let asked = AllowDig {
        held,
        why: why.into(),
    };
    crew.says(&supervisor(), Command::AllowDig(asked))
        .map(|_| ())
}

/// 49 CFR 196.107 and .109: 911 where it leaks, then the owner; every machine on that main, not only the one that met it.
#[test]
fn gas_that_a_cab_meets_sends_everybody_away_and_stops_every_machine_on_that_main() {
    let mut crew = beside(UtilityKind::Gas);
    crew.place("EX-1", "30 ft", "90 ft");
    assert_eq!(spot(&mut crew), None);
    cant_pipe(&mut crew, "EX-2");
    assert_eq!(stopped(&crew), ["EX-1", "EX-2"]);
    for machine in ["EX-1", "EX-2"] {
        let told = cab::view(&crew.state, machine).unwrap().struck;
        assert_eq!(told[0].what, StruckDo::GetAway);
        assert_eq!(told[0].call, "its owner");
        assert!(crew.state.live_call(machine).is_none());
    }
    assert!(
        owed(&crew)
            .iter()
            .any(|one| matches!(one, ExceptionKind::LineStruck { .. }))
    );
    // A stop that is lifted does not bring the numbers back: the line is settled in words of its own.
    let lift = LiftStop {
        machine: None,
        press: u64::MAX,
        why: "the fire department has closed it".into(),
    };
    crew.says(&supervisor(), Command::LiftStop(lift)).unwrap();
    assert_eq!(spot(&mut crew), Some(SpotReason::LineStruck));
    assert!(allow(&mut crew, Some("MAIN"), " ").is_err());
    allow(&mut crew, Some("MAIN"), "its owner has capped it, by hand").unwrap();
    assert_eq!(spot(&mut crew), None);
    assert!(cab::view(&crew.state, "EX-2").unwrap().struck.is_empty());
    // Struck again on the same day it is held again.
    cant_pipe(&mut crew, "EX-2");
    assert_eq!(spot(&mut crew), Some(SpotReason::LineStruck));
}

#[test]
fn a_machine_far_off_a_water_main_digs_on_and_one_of_unknown_place_does_not() {
    let mut crew = beside(UtilityKind::Water);
    assert_eq!(spot(&mut crew), None);
    cant_pipe(&mut crew, "EX-2");
    assert_eq!(stopped(&crew), ["EX-2"]);
    let told = cab::view(&crew.state, "EX-2").unwrap().struck;
    assert_eq!(told[0].what, StruckDo::TouchNothing);
    let mut crew = beside(UtilityKind::Water);
    spot(&mut crew);
    let moved = SayMoved {
        machine: "EX-1".into(),
    };
    crew.says(&operator("EX-1"), Command::SayMoved(moved))
        .unwrap();
    cant_pipe(&mut crew, "EX-2");
    assert_eq!(
        stopped(&crew),
        ["EX-1", "EX-2"],
        "nobody knows where EX-1 stands"
    );
    // A place that was said more than half an hour ago is no place.
    let mut crew = beside(UtilityKind::Water);
    crew.wait(minutes(31));
    crew.place("EX-2", "10 ft", "30 ft");
    cant_pipe(&mut crew, "EX-2");
    assert_eq!(stopped(&crew), ["EX-1", "EX-2"]);
}

#[test]
fn anybody_on_foot_says_that_a_line_was_struck_and_one_that_nobody_drew_counts_as_gas() {
    let mut crew = beside(UtilityKind::Electric);
    crew.place("EX-1", "30 ft", "50 ft");
    crew.place("EX-2", "12 ft", "20 ft");
    let said = |line: Option<&str>| {
        Command::SayStruck(SayStruck {
            line: line.map(str::to_owned),
            mark: Some("R-1".into()),
        })
    };
    assert!(crew.says(&ground(), said(Some("NO-SUCH"))).is_err());
    crew.says(&ground(), said(Some("MAIN"))).unwrap();
    assert_eq!(stopped(&crew), ["EX-1", "EX-2"]);
    let told = |crew: &Crew| {
        let cards = supervisor::view(&crew.state).unwrap().cuts.struck;
        cards.into_iter().map(|card| card.what).collect::<Vec<_>>()
    };
    assert_eq!(told(&crew), [StruckDo::Live]);
    crew.says(&ground(), said(None)).unwrap();
    assert_eq!(told(&crew), [StruckDo::Live, StruckDo::GetAway]);
    // Each is settled by itself, and only by a supervisor's words.
    allow(&mut crew, Some("MAIN"), "its owner has cut it off").unwrap();
    assert_eq!(told(&crew), [StruckDo::GetAway]);
    assert_eq!(spot(&mut crew), Some(SpotReason::LineStruck));
    allow(&mut crew, None, "an old drain, its owner says").unwrap();
    assert!(told(&crew).is_empty());
}

/// A pipe in the way that nobody drew and nobody hit: the machine stands still, the words say what to do if it was hit.
#[test]
fn a_pipe_that_nobody_drew_and_that_is_only_in_the_way_stops_the_machine_that_met_it() {
    let mut crew = crew(site());
    crew.reads("R-1", "6.70").unwrap();
    cant_pipe(&mut crew, "EX-2");
    assert_eq!(stopped(&crew), ["EX-2"]);
    let told = cab::view(&crew.state, "EX-2").unwrap().struck;
    assert_eq!(told[0].what, StruckDo::NotKnown);
    assert_eq!(spot(&mut crew), Some(SpotReason::LineStruck));
}

#[test]
fn a_struck_line_is_still_struck_on_the_next_day() {
    let mut crew = beside(UtilityKind::Gas);
    cant_pipe(&mut crew, "EX-2");
    crew.state.cuts.new_day(&[]);
    assert_eq!(crew.state.cuts.struck.len(), 1);
}
