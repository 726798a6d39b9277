//! Tests: the site file becomes entries: taken the first time, shown as a difference later, revised on a supervisor's word.

use super::*;
use crate::asked::{By, Command};
use crate::given::{Crew, len, site, supervisor};

#[test]
fn a_changed_file_is_shown_first_and_in_force_only_when_confirmed() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.70").unwrap();
    let mut changed = site();
    changed.targets[0].grade.stack.layers[0].thickness = len("0.60 ft");
    changed.marks[1].note = "by the gate".into();
    crew.says(&By::hub(), Command::ReadSite(ReadSite { site: changed }))
        .unwrap();
    let change = crew.state.site_change.clone().unwrap();
    let what: Vec<&str> = change
        .found
        .differences
        .iter()
        .map(|d| d.what.as_str())
        .collect();
    assert_eq!(
        what,
        [
            "marks P-2 note",
            "targets PAD grade stack layers gravel thickness"
        ]
    );
    assert_eq!(change.found.differences[1].was.as_deref(), Some("0.5 ft"));
    assert!(crew.state.live_call("EX-1").is_some());
    let confirm = |digest: &str| {
        Command::ConfirmSite(ConfirmSite {
            digest: digest.into(),
        })
    };
    assert_eq!(
        crew.says(&supervisor(), confirm("0")),
        Err(Refusal::SiteChangedAgain)
    );
    crew.says(&supervisor(), confirm(&change.found.digest))
        .unwrap();
    let pad = crew.state.site().unwrap().target("PAD").unwrap();
    assert_eq!(pad.revision, 2);
    assert!(crew.state.live_call("EX-1").is_none());
    assert!(crew.state.cabs["EX-1"].must_see.is_some());
}

#[test]
fn the_same_file_again_changes_nothing() {
    let mut crew = Crew::opened();
    let before = crew.log.len();
    crew.says(&By::hub(), Command::ReadSite(ReadSite { site: site() }))
        .unwrap();
    assert_eq!(crew.log.len(), before);
}

/// A trench's `bedding` and a `layers` line of that name: one of the two taken out is a line of its own, with every dig-to.
#[test]
fn a_layer_that_is_taken_out_has_a_line_for_its_target_and_every_mark_says_what_it_was_and_becomes()
{
    let mut twice = site();
    let layers = &mut twice.targets[0].grade.stack.layers;
    layers.push(layers[0].clone());
    let mut crew = Crew::digging_on(twice.clone());
    let mut once = twice;
    once.targets[0].grade.stack.layers.truncate(1);
    crew.says(&By::hub(), Command::ReadSite(ReadSite { site: once }))
        .unwrap();
    let found = crew.state.site_change.clone().unwrap().found;
    let what: Vec<&str> = found.differences.iter().map(|d| d.what.as_str()).collect();
    assert_eq!(what, ["targets PAD grade stack layers gravel (2)"]);
    let target = &found.touches.targets[0];
    assert_eq!(
        (
            target.target.as_str(),
            target.layers_were,
            target.layers_are,
            target.more
        ),
        ("PAD", Some(len("1.00 ft")), Some(len("0.50 ft")), false)
    );
    for mark in &found.touches.marks {
        // 100.50 less one foot, and less half a foot.
        assert_eq!(
            (mark.was, mark.now),
            (Some(len("99.50 ft")), Some(len("100.00 ft")))
        );
    }
    assert!(found.touches.marks.len() > 1);
    assert_eq!(found.touches.most, len("0.50 ft"));
}

#[test]
fn near_a_step_both_dig_tos_are_said() {
    let mut crew = Crew::digging();
    let mut changed = site();
    let at_step = crate::given::at("20 ft", "50 ft");
    changed.marks[0].place = at_step;
    changed.marks[0].target = Some("RUN".into());
    crew.says(&By::hub(), Command::ReadSite(ReadSite { site: changed }))
        .unwrap();
    let found = crew.state.site_change.clone().unwrap().found;
    let mark = &found.touches.marks[0];
    assert!(mark.was.is_some() && mark.were_at_step.is_none());
    let [before, after] = mark.are_at_step.unwrap();
    assert_eq!((before - after).abs(), len("1 ft"));
}

fn revises(crew: &mut Crew, thickness: &str, why: &str) {
    let pad = crew.state.site().unwrap().target("PAD").unwrap().clone();
    let mut grade = pad.grade;
    grade.stack.layers[0].thickness = len(thickness);
    let asked = crate::said::revise::ReviseTarget {
        target: "PAD".into(),
        grade,
        tolerance: pad.tolerance,
        why: why.into(),
        seen: None,
    };
    crew.says(&supervisor(), Command::ReviseTarget(asked))
        .unwrap();
}

#[test]
fn a_file_that_undoes_a_page_says_whose_word_it_undoes_before_it_is_in_force() {
    let mut crew = Crew::digging();
    revises(&mut crew, "0.80 ft", "answer of the engineer");
    let mut old = site();
    old.marks[1].note = "by the gate".into();
    crew.says(&By::hub(), Command::ReadSite(ReadSite { site: old }))
        .unwrap();
    let undoes = |crew: &Crew| crew.state.site_change.clone().unwrap().found.undoes;
    let named: Vec<_> = undoes(&crew)
        .into_iter()
        .map(|one| (one.what, one.was, one.becomes, one.by, one.why))
        .collect();
    assert_eq!(
        named,
        [(
            "targets PAD grade stack layers gravel thickness".into(),
            Some("0.8 ft".into()),
            Some("0.5 ft".into()),
            "PN".into(),
            "answer of the engineer".into(),
        )]
    );
    // While the file waits, another revision on a page is held against it at once.
    revises(&mut crew, "0.90 ft", "the engineer again");
    assert_eq!(undoes(&crew)[0].was.as_deref(), Some("0.9 ft"));
    assert_eq!(undoes(&crew)[0].why, "the engineer again");
    let digest = crew.state.site_change.clone().unwrap().found.digest;
    let confirm = Command::ConfirmSite(ConfirmSite { digest });
    crew.says(&supervisor(), confirm).unwrap();
    // What is in force now is the file's; a file that says the same undoes nothing.
    assert!(crew.state.site.as_ref().unwrap().by_page.is_empty());
}

#[test]
fn a_file_that_leaves_a_pages_mark_out_undoes_it_and_one_that_has_it_does_not() {
    let mut crew = Crew::digging();
    let mut mark = site().marks[0].clone();
    mark.id = "P-9".into();
    let asked = crate::said::change::ChangeSite {
        put: vec![crate::said::change::SiteThing::Mark(mark.clone())],
        retire: vec![],
        why: "the form crew asks".into(),
        seen: None,
    };
    crew.says(&supervisor(), Command::ChangeSite(asked))
        .unwrap();
    let mut with = site();
    with.marks.push(mark);
    assert_eq!(compare(&crew.state, &with).unwrap().undoes, []);
    let found = compare(&crew.state, &site()).unwrap();
    let named: Vec<&str> = found.undoes.iter().map(|one| one.what.as_str()).collect();
    assert_eq!(named, ["marks P-9"]);
    assert_eq!(found.undoes[0].becomes, None);
}
