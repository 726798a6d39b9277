//! Words about a plan that come late: what their page showed is not what stands any more.

use crate::asked::{By, Command};
use crate::given::{Crew, len, supervisor};
use crate::refusal::Refusal;
use crate::said::aim::{AimSeen, SetAim};
use crate::said::day::OpenDay;
use crate::said::revise::ReviseTarget;
use crate::time::minutes;

/// The aim of somebody whose page showed that aim and that revision.
fn aims(aim: &str, shown: &str, revision: u32) -> Command {
    Command::SetAim(SetAim {
        on: vec!["PAD".into()],
        aim: len(aim),
        why: "deep is cheaper".into(),
        seen: vec![AimSeen {
            on: "PAD".into(),
            aim: len(shown),
            revision,
        }],
    })
}

fn revises(crew: &Crew, thickness: &str, seen: Option<u32>) -> Command {
    let old = crew.state.site().unwrap().target("PAD").unwrap();
    let mut grade = old.grade.clone();
    grade.stack.layers[0].thickness = len(thickness);
    Command::ReviseTarget(ReviseTarget {
        target: "PAD".into(),
        grade,
        tolerance: old.tolerance,
        why: "engineer's answer".into(),
        seen,
    })
}

fn aim(crew: &Crew) -> earthwork::length::Length {
    crew.state.aims.get("PAD").copied().unwrap_or(len("0 ft"))
}

fn overtaken(said: &Result<(), Refusal>, word: &str) {
    let Err(Refusal::Overtaken(text)) = said else {
        panic!("{said:?}")
    };
    assert!(text.english.contains(word), "{text:?}");
}

#[test]
fn a_revision_that_was_typed_against_an_older_one_does_not_undo_the_newer() {
    let mut crew = Crew::digging();
    let late = revises(&crew, "0.80 ft", Some(1));
    let newer = revises(&crew, "0.60 ft", Some(1));
    crew.says(&supervisor(), newer.clone()).unwrap();
    let stands = crew.state.site().unwrap().target("PAD").unwrap().clone();
    crew.wait(minutes(20));
    let said = crew.says(&supervisor(), late.clone()).map(|_| ());
    overtaken(&said, "PAD was changed since: r2 stands now.");
    // The same, sent twice by a phone that heard no answer: it stands already.
    crew.says(&supervisor(), newer).unwrap();
    assert_eq!(crew.state.site().unwrap().target("PAD"), Some(&stands));
    let Command::ReviseTarget(mut again) = late else {
        panic!()
    };
    again.seen = Some(2);
    crew.says(&supervisor(), Command::ReviseTarget(again))
        .unwrap();
    let after = crew.state.site().unwrap().target("PAD").unwrap();
    assert_eq!(after.revision, 3);
}

#[test]
fn an_aim_that_was_typed_before_another_or_before_a_revision_is_asked_for_again() {
    let mut crew = Crew::digging();
    crew.says(&supervisor(), aims("-0.10 ft", "0 ft", 1))
        .unwrap();
    let said = crew.says(&supervisor(), aims("0.05 ft", "0 ft", 1));
    overtaken(&said.map(|_| ()), "set the aim on PAD to");
    assert_eq!(aim(&crew), len("-0.10 ft"));
    let revise = revises(&crew, "0.60 ft", Some(1));
    crew.says(&supervisor(), revise).unwrap();
    let said = crew.says(&supervisor(), aims("0.05 ft", "-0.10 ft", 1));
    overtaken(&said.map(|_| ()), "r2 stands now");
    crew.says(&supervisor(), aims("0.05 ft", "-0.10 ft", 2))
        .unwrap();
    assert_eq!(aim(&crew), len("0.05 ft"));
}

#[test]
fn an_aim_of_yesterday_that_comes_today_is_not_todays() {
    let mut crew = Crew::digging();
    let typed = crew.now;
    crew.wait(minutes(10));
    let day = OpenDay {
        day: "2030-05-15".into(),
    };
    crew.says(&By::hub(), Command::OpenDay(day)).unwrap();
    let said = crew.said_at(&supervisor(), aims("-0.10 ft", "0 ft", 1), typed);
    overtaken(&said.map(|_| ()), "A new day has begun since");
    assert_eq!(aim(&crew), len("0 ft"));
}
