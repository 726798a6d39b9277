//! Soil work that is open: tests, patches, gravel, undercuts.

use super::{List, OpenKind};
use crate::account::need;
use crate::account::soil::{self, TestStanding};
use crate::read_as;
use crate::said::patch::PatchStep;
use crate::site::Site;
use crate::state::State;

pub(super) fn soil(state: &State, site: &Site, list: &mut List) {
    for test in soil::tests(state).iter().filter(|test| !test.replaced) {
        let mark = &test.mark;
        match test.standing {
            TestStanding::Passes => {}
            TestStanding::Fails => list.push(
                OpenKind::Test,
                mark,
                words::open::the_soil_test_failed(&mark),
            ),
            TestStanding::Void => list.push(
                OpenKind::Test,
                mark,
                words::open::soil_test_does_not_count(&mark),
            ),
        }
    }
    tests_missing(state, site, list);
    for patch in soil::patches(state) {
        if patch.step != PatchStep::Done {
            let (mark, cy) = (&patch.mark, patch.cy);
            list.push(
                OpenKind::Gravel,
                &patch.patch,
                words::open::at_cy_is_not_done(
                    &read_as::patch(&patch.patch),
                    &mark,
                    &format!("{cy:.2}"),
                ),
            );
        }
    }
    let short = need::short_tons(state, &[]);
    if short > 0.05 {
        list.push(
            OpenKind::Gravel,
            "gravel",
            words::open::gravel_order_t_short_what(&format!("{short:.1}")),
        );
    }
    for undercut in soil::undercuts(state) {
        let mark = &undercut.mark;
        list.push(
            OpenKind::Undercut,
            mark,
            words::open::undercut_waits_for_supervisor_engineer(&mark),
        );
    }
}

/// Where the drawing asks for a bearing, a target with readings and without any test is owed one.
fn tests_missing(state: &State, site: &Site, list: &mut List) {
    if state
        .prices()
        .and_then(|prices| prices.bearing_psf)
        .is_none()
    {
        return;
    }
    for target in &site.targets {
        let own = |mark: &str| {
            site.mark(mark)
                .is_some_and(|mark| mark.target.as_deref() == Some(&target.id))
        };
        let read = state
            .marks
            .iter()
            .any(|(mark, now)| own(mark) && now.last.is_some());
        let tested = state
            .account
            .tests
            .values()
            .any(|test| own(&test.tested.mark));
        if read && !tested {
            list.push(
                OpenKind::Test,
                &target.id,
                words::open::no_soil_test_log(&target.name),
            );
        }
    }
}
