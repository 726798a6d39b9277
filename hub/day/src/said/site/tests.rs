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
