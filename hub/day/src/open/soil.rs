//! Soil work that is open: tests, patches, gravel, undercuts.

use super::{List, OpenKind};
use crate::account::need;
use crate::account::soil::{self, TestStanding};
use crate::read_as::patch_in_both;
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
                format!("{mark}: the soil test failed; test again."),
                format!("{mark}: la prueba de suelo falló; repítala."),
            ),
            TestStanding::Void => list.push(
                OpenKind::Test,
                mark,
                format!("{mark}: the soil test does not count any more; test again."),
                format!("{mark}: la prueba de suelo ya no vale; repítala."),
            ),
        }
    }
    tests_missing(state, site, list);
    for patch in soil::patches(state) {
        if patch.step != PatchStep::Done {
            let (mark, cy) = (&patch.mark, patch.cy);
            let (name, parche) = patch_in_both(&patch.patch);
            list.push(
                OpenKind::Gravel,
                &patch.patch,
                format!("{name} at {mark}, {cy:.2} cy, is not done."),
                format!("{parche} en {mark}, {cy:.2} yd³, no está hecho."),
            );
        }
    }
    let short = need::short_tons(state, &[]);
    if short > 0.05 {
        list.push(
            OpenKind::Gravel,
            "gravel",
            format!("Gravel on order is {short:.1} t short of what is enough nine times in ten."),
            format!(
                "A la grava pedida le faltan {short:.1} t para que alcance nueve de diez veces."
            ),
        );
    }
    for undercut in soil::undercuts(state) {
        let mark = &undercut.mark;
        list.push(
            OpenKind::Undercut,
            mark,
            format!("The undercut at {mark} waits for a supervisor on the engineer's word."),
            format!("La sobreexcavación en {mark} espera al supervisor con palabra del ingeniero."),
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
                format!("{}: no soil test is in the log.", target.name),
                format!("{}: no hay prueba de suelo en el registro.", target.name),
            );
        }
    }
}
