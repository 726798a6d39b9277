//! Loads, gravel, patches, tests, rock and waiting, as sentences.

use super::{Told, feet};
use day::entry::Body;
use day::read_as;
use day::said::load::{LoadCounted, Way};
use day::said::patch::PatchStep;
use day::said::soil_test::stated::stated;
use day::said::soil_test::{SoilTested, TestVoided};
use day::said::waiting::WaitCause;
use words::Text;

/// The sentence for an entry of the account; empty for any other.
pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::LoadCounted(b) => counted(b),
        Body::TicketAdded(b) => Told::new(words::tell_account::load_has_ticket(&b.load, &b.ticket)),
        Body::LoadTakenBack(b) => {
            Told::new(words::tell_account::load_was_counted_by_mistake(&b.load))
        }
        Body::SoilMeasured(b) => Told::new(words::tell_account::cubic_yards_measured_ground(
            &b.material,
            &format!("{:.1}", b.bank_cy),
            &b.how,
        )),
        Body::GravelOrdered(b) => Told::new(words::tell_account::gravel_ordered(
            &format!("{:.1}", b.tons),
            &b.note,
        )),
        Body::GravelShort(b) => Told::new(words::tell_account::gravel_is_short_by_tons(
            &format!("{:.1}", b.short_tons),
            &format!("{:.1}", b.ordered_tons),
        )),
        Body::PricesSet(_) => Told::new(words::tell_account::price_list_put()),
        waits @ (Body::WaitingSaid(_) | Body::WorkedAgain(_)) => waiting(waits),
        soil => of_soil(soil),
    }
}

fn counted(b: &LoadCounted) -> Told {
    let what = match b.way {
        Way::Out => words::tell_account::out(),
        Way::In => words::tell_account::r#in(),
    };
    let loose = b
        .loose_cy
        .map(|yards| words::tell_account::yards_loose(&format!("{yards:.1}")));
    let weight = b
        .tons
        .map(|weight| words::tell_account::tons(&format!("{weight:.1}")));
    let amount: Vec<Text> = loose.into_iter().chain(weight).collect();
    let told = Told::new(words::tell_account::counted(
        &b.trucks,
        &b.material,
        &what,
        &Text::joined(&amount, ", "),
    ));
    match &b.machine {
        Some(machine) => told.machine(machine),
        None => told,
    }
}

fn waiting(body: &Body) -> Told {
    match body {
        Body::WaitingSaid(b) => {
            let what = match b.cause {
                WaitCause::Truck => words::tell_account::waits_for_trucks(),
                WaitCause::Attachment => words::tell_account::changes_an_attachment(),
                WaitCause::Broken => words::tell_account::is_broken(),
                WaitCause::Parked => words::tell_account::is_parked(),
                WaitCause::Other => words::tell_account::waits(),
            };
            Told::new(words::tell_account::machine_waits(&b.machine, &what)).machine(&b.machine)
        }
        Body::WorkedAgain(b) => {
            Told::new(words::tell_account::works_again(&b.machine)).machine(&b.machine)
        }
        _ => Told::default(),
    }
}

fn of_soil(body: &Body) -> Told {
    match body {
        Body::PatchNeeded(b) => {
            let (length, width, depth) = (feet(b.length), feet(b.width), feet(b.depth));
            let yards = b.volume_cf / 27.0;
            let patch = read_as::patch(&b.patch);
            Told::new(words::tell_account::cubic_yards_gravel_lifts(
                &patch,
                &length,
                &width,
                &depth,
                &format!("{yards:.2}"),
                &b.lifts,
            ))
            .mark(Some(&b.mark))
        }
        Body::PatchMoved(b) => {
            let what = match b.to {
                PatchStep::Needed => words::tell_account::needed(),
                PatchStep::Filled => words::tell_account::filled(),
                PatchStep::Compacted => words::tell_account::compacted(),
                PatchStep::Tested => words::tell_account::tested(),
                PatchStep::Done => words::tell_account::done(),
            };
            let patch = read_as::patch(&b.patch);
            Told::new(words::tell_account::patch_step(&patch, &what))
        }
        Body::Compacted(b) => {
            let thick = feet(b.thickness);
            let what = if b.too_thick {
                words::tell_account::thicker_than_lift_may().into()
            } else {
                Text::default()
            };
            let on = if b.patch {
                read_as::patch(&b.on)
            } else {
                Text::alike(&b.on)
            };
            Told::new(words::tell_account::lift_rammed_passes(
                &on, &b.lift, &thick, &b.passes, &what,
            ))
        }
        Body::SoilTested(b) => tested(b),
        Body::TestVoided(b) => voided(b),
        Body::UndercutProposed(b) => {
            let depth = feet(b.undercut.depth);
            Told::new(words::tell_account::undercut_proposed_at(
                &b.mark,
                &depth,
                &b.undercut.material,
            ))
            .mark(Some(&b.mark))
        }
        Body::UndercutConfirmed(b) => Told::new(words::tell_account::undercut_force(&b.target)),
        Body::RockPointed(b) => {
            let top = feet(b.top);
            Told::new(if b.what.is_empty() {
                words::tell_account::rock_at(&b.point, &top)
            } else {
                words::tell_account::at(&b.point, &b.what, &top)
            })
            .mark(Some(&b.mark))
        }
        _ => Told::default(),
    }
}

fn tested(b: &SoilTested) -> Told {
    let result = if b.passes {
        words::tell_account::pass()
    } else {
        words::tell_account::fail()
    };
    let what = stated(&b.test, b.density.as_ref());
    let at = feet(b.elevation);
    Told::new(words::tell_account::soil_test_at_by(
        &at, &b.tester, &what, &result,
    ))
    .mark(Some(&b.mark))
}

fn voided(b: &TestVoided) -> Told {
    let what = b.why.text();
    Told::new(words::tell_account::the_soil_test_is_void(&what)).mark(Some(&b.mark))
}
