//! Tests of a site changed on a page: nothing half-done, nothing lost, the operator sees what changed under a call.

use super::*;
use crate::asked::{By, Command};
use crate::cuts::plan::{CutKind, UtilityKind};
use crate::given::{Crew, at, flat_zone, ground, len, site, supervisor};
use crate::said::face_alarm::SayCameDown;
use crate::said::site::{ConfirmSite, ReadSite};
use earthwork::target::Shape;

fn changes(put: Vec<SiteThing>, retire: &[(Listed, &str)]) -> ChangeSite {
    let gone = retire.iter().map(|(list, id)| Retired {
        list: *list,
        id: (*id).into(),
    });
    ChangeSite {
        put,
        retire: gone.collect(),
        why: "engineer's answer".into(),
        seen: None,
    }
}

fn deeper() -> SiteThing {
    let mut target = site().targets[0].clone();
    target.grade.stack.layers[0].thickness = len("0.80 ft");
    SiteThing::Target(Box::new(target))
}

fn mark(id: &str, target: Option<&str>) -> SiteThing {
    SiteThing::Mark(Mark {
        id: id.into(),
        target: target.map(str::to_owned),
        place: at("35 ft", "21 ft"),
        ..site().marks[0].clone()
    })
}

fn say(crew: &mut Crew, change: ChangeSite) -> Result<crate::answer::Answer, Refusal> {
    crew.says(&supervisor(), Command::ChangeSite(change))
}

#[test]
fn a_mark_that_is_added_takes_readings_and_one_that_is_retired_takes_none() {
    let mut crew = Crew::digging();
    say(&mut crew, changes(vec![mark("P-9", Some("PAD"))], &[])).unwrap();
    crew.reads("P-9", "4.70").unwrap();
    assert!(crew.state.live_call("EX-1").is_some());
    say(&mut crew, changes(vec![], &[(Listed::Mark, "P-9")])).unwrap();
    assert!(crew.state.live_call("EX-1").is_none(), "its call is gone");
    assert!(matches!(
        crew.reads("P-9", "4.70"),
        Err(Refusal::Unknown { .. })
    ));
    assert_eq!(crew.state.site(), Some(&site()));
}

#[test]
fn a_face_that_was_left_is_neither_drawn_anew_nor_retired_and_one_that_was_not_is() {
    let mut yard = site();
    yard.cuts.competent = vec!["PN".into()];
    yard.cuts.faces = vec![flat_zone(CutKind::Face)];
    let mut crew = Crew::digging_on(yard);
    let wider = || {
        let mut face = flat_zone(CutKind::Face);
        face.name = "north face".into();
        SiteThing::Face(Box::new(face))
    };
    say(&mut crew, changes(vec![wider()], &[])).unwrap();
    assert_eq!(crew.state.site().unwrap().cuts.faces[0].name, "north face");
    let down = SayCameDown { zone: "F".into() };
    crew.says(&ground(), Command::SayCameDown(down)).unwrap();
    let before = crew.state.site().unwrap().clone();
    for asked in [
        changes(
            vec![SiteThing::Face(Box::new(flat_zone(CutKind::Face)))],
            &[],
        ),
        changes(vec![], &[(Listed::Face, "F")]),
    ] {
        assert!(matches!(say(&mut crew, asked), Err(Refusal::BadSite(_))));
    }
    assert_eq!(crew.state.site(), Some(&before));
}

/// The same by the site file: neither without the face nor with another toe is it in force.
#[test]
fn a_site_file_takes_no_face_away_that_was_left() {
    let mut yard = site();
    yard.cuts.competent = vec!["PN".into()];
    yard.cuts.faces = vec![flat_zone(CutKind::Face)];
    let mut crew = Crew::digging_on(yard.clone());
    let down = SayCameDown { zone: "F".into() };
    crew.says(&ground(), Command::SayCameDown(down)).unwrap();
    let mut gone = yard.clone();
    gone.cuts.faces.clear();
    let mut other = yard.clone();
    other.cuts.faces[0].name = "north face".into();
    for file in [gone, other] {
        crew.says(&By::hub(), Command::ReadSite(ReadSite { site: file }))
            .unwrap();
        let found = crew.state.site_change.clone().unwrap().found;
        let confirm = Command::ConfirmSite(ConfirmSite {
            digest: found.digest,
        });
        let refused = crew.says(&supervisor(), confirm);
        assert!(matches!(refused, Err(Refusal::BadSite(_))), "{refused:?}");
        assert_eq!(crew.state.site(), Some(&yard));
    }
    // What leaves the face as it is goes through.
    let mut note = yard.clone();
    note.marks[1].note = "by the gate".into();
    crew.says(&By::hub(), Command::ReadSite(ReadSite { site: note }))
        .unwrap();
    let digest = crew.state.site_change.clone().unwrap().found.digest;
    crew.says(&supervisor(), Command::ConfirmSite(ConfirmSite { digest }))
        .unwrap();
}

#[test]
fn a_buried_line_that_is_added_makes_way_for_the_shovel_and_one_that_is_retired_does_not() {
    let mut crew = Crew::digging();
    let line = || {
        SiteThing::Utility(Utility {
            id: "MAIN".into(),
            kind: UtilityKind::Gas,
            points: vec![at("30 ft", "0 ft"), at("30 ft", "60 ft")],
            outside: len("0.2 ft"),
            zone: len("2 ft"),
            marked: earthwork::buried::Marked::default(),
            call: String::new(),
        })
    };
    say(&mut crew, changes(vec![line()], &[])).unwrap();
    assert_eq!(crew.state.site().unwrap().cuts.utilities.len(), 1);
    say(&mut crew, changes(vec![], &[(Listed::Utility, "MAIN")])).unwrap();
    assert_eq!(crew.state.site(), Some(&site()));
    assert!(matches!(
        say(&mut crew, changes(vec![], &[(Listed::Utility, "MAIN")])),
        Err(Refusal::Unknown { .. })
    ));
}

#[test]
fn a_line_overhead_that_is_added_asks_for_a_spotter_and_one_that_is_retired_does_not() {
    let mut crew = Crew::digging();
    crew.place("EX-1", "30 ft", "30 ft");
    let line = SiteThing::Overhead(OverheadLine {
        id: "LANE".into(),
        points: vec![at("0 ft", "40 ft"), at("60 ft", "40 ft")],
        height: len("24 ft"),
        kilovolts: None,
        kilovolts_at_most: None,
        clearance: None,
        call: String::new(),
    });
    let needed = |crew: &Crew| {
        let near = crate::near::unsettled(&crew.state, "EX-1");
        near.iter()
            .any(|one| matches!(one, crate::near::Near::Overhead { line, .. } if line == "LANE"))
    };
    say(&mut crew, changes(vec![line.clone()], &[])).unwrap();
    assert!(needed(&crew), "where the machine stands is known already");
    let SiteThing::Overhead(mut low) = line else {
        unreachable!("it is a line overhead")
    };
    low.height = Length::ZERO;
    let refused = say(&mut crew, changes(vec![SiteThing::Overhead(low)], &[]));
    assert!(
        matches!(refused, Err(Refusal::BadSite { .. })),
        "{refused:?}"
    );
    say(&mut crew, changes(vec![], &[(Listed::Overhead, "LANE")])).unwrap();
    assert!(!needed(&crew));
    let again = say(&mut crew, changes(vec![], &[(Listed::Overhead, "LANE")]));
    assert!(matches!(again, Err(Refusal::Unknown { .. })));
}

#[test]
fn a_changed_grade_is_a_new_revision_that_the_operator_must_see_and_nobody_has_proved() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.70").unwrap();
    let would = would(&crew.state, &supervisor(), &changes(vec![deeper()], &[])).unwrap();
    assert_eq!(would.touches.most, len("0.30 ft"));
    assert!(would.faults.is_empty());
    let change = ChangeSite {
        seen: Some(would.seen),
        ..changes(vec![deeper()], &[])
    };
    say(&mut crew, change).unwrap();
    let pad = crew.state.site().unwrap().target("PAD").unwrap();
    assert_eq!((pad.revision, pad.proved()), (2, false));
    assert_eq!(pad.typed_by, Some(supervisor().person));
    assert!(crew.state.live_call("EX-1").is_none());
    assert!(crew.state.cabs["EX-1"].must_see.is_some());
    let Some(Body::SiteChanged(changed)) = crew.log.last().map(|entry| &entry.body) else {
        panic!("no change")
    };
    assert_eq!(changed.why, "engineer's answer");
    assert_eq!(changed.differences[0].was.as_deref(), Some("0.5 ft"));
}

#[test]
fn what_is_wrong_is_refused_in_both_languages_and_nothing_is_entered() {
    let mut crew = Crew::digging();
    let before = crew.log.len();
    let wrong = [
        changes(vec![mark("P-9", Some("NOWHERE"))], &[]),
        changes(vec![], &[(Listed::Target, "PAD")]),
        changes(
            vec![],
            &[(Listed::Benchmark, "BM-1"), (Listed::Benchmark, "BM-2")],
        ),
    ];
    for change in wrong {
        let Err(Refusal::BadSite(text)) = say(&mut crew, change) else {
            panic!("taken")
        };
        assert_ne!(text.english, text.spanish);
    }
    let mut silent = changes(vec![deeper()], &[]);
    silent.why = " ".into();
    assert!(matches!(
        say(&mut crew, silent),
        Err(Refusal::SayWhy { .. })
    ));
    let mut stale = changes(vec![deeper()], &[]);
    stale.seen = Some("0".into());
    assert_eq!(say(&mut crew, stale), Err(Refusal::SiteChangedAgain));
    let unknown = changes(vec![], &[(Listed::Rod, "Z")]);
    assert!(matches!(
        say(&mut crew, unknown),
        Err(Refusal::Unknown { .. })
    ));
    assert_eq!(crew.log.len(), before);
}

#[test]
fn the_same_again_changes_nothing() {
    let mut crew = Crew::digging();
    let same = SiteThing::Target(Box::new(site().targets[0].clone()));
    let before = crew.log.len();
    say(&mut crew, changes(vec![same], &[])).unwrap();
    assert_eq!(crew.log.len(), before);
}

#[test]
fn a_target_goes_with_its_marks_and_no_machine_works_on_it_any_more() {
    let mut crew = Crew::digging();
    let on_pad = site()
        .marks
        .into_iter()
        .filter(|mark| mark.target.as_deref() == Some("PAD"));
    let mut change = changes(vec![], &[(Listed::Target, "PAD")]);
    change.retire.extend(on_pad.map(|mark| Retired {
        list: Listed::Mark,
        id: mark.id,
    }));
    say(&mut crew, change).unwrap();
    let now = crew.state.site().unwrap();
    assert!(now.target("PAD").is_none() && now.machine_for("PAD").is_none());
}

#[test]
fn marks_by_station_move_with_their_run() {
    let mut crew = Crew::digging();
    let run = site()
        .targets
        .into_iter()
        .find(|target| matches!(target.grade.shape, Shape::Run(_)))
        .unwrap();
    let on_run = Mark {
        id: "E-9".into(),
        target: Some(run.id.clone()),
        place: run
            .grade
            .place(StationOffset {
                station: len("10 ft"),
                offset: Length::ZERO,
            })
            .unwrap(),
        station: Some(len("10 ft")),
        offset: None,
        ..site().marks[0].clone()
    };
    say(&mut crew, changes(vec![SiteThing::Mark(on_run)], &[])).unwrap();
    let mut moved = run.clone();
    let Shape::Run(shape) = &mut moved.grade.shape else {
        panic!("no run")
    };
    shape.start.x += len("1 ft");
    let change = changes(vec![SiteThing::Target(Box::new(moved))], &[]);
    say(&mut crew, change).unwrap();
    let place = crew.state.site().unwrap().mark("E-9").unwrap().place;
    assert_eq!(place, at("11 ft", "50 ft"));
}
