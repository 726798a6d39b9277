//! Loads, gravel, patches, tests, rock and waiting, as sentences.

use super::{Told, feet};
use day::entry::Body;
use day::read_as::patch_in_both;
use day::said::load::{LoadCounted, Way};
use day::said::patch::PatchStep;
use day::said::soil_test::stated::stated;
use day::said::soil_test::{SoilTested, TestVoided};
use day::said::waiting::WaitCause;

/// The sentence for an entry of the account; empty for any other.
pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::LoadCounted(b) => counted(b),
        Body::TicketAdded(b) => Told::new(
            format!("Load {} has ticket {}.", b.load, b.ticket),
            format!("La carga {} tiene el boleto {}.", b.load, b.ticket),
        ),
        Body::LoadTakenBack(b) => Told::new(
            format!("Load {} was counted by mistake.", b.load),
            format!("La carga {} se contó por error.", b.load),
        ),
        Body::SoilMeasured(b) => Told::new(
            format!(
                "{}: {:.1} cubic yards measured in the ground, {}.",
                b.material, b.bank_cy, b.how
            ),
            format!(
                "{}: {:.1} yardas cúbicas medidas en banco, {}.",
                b.material, b.bank_cy, b.how
            ),
        ),
        Body::GravelOrdered(b) => Told::new(
            format!("Gravel ordered: {:.1} tons. {}", b.tons, b.note),
            format!("Grava pedida: {:.1} toneladas. {}", b.tons, b.note),
        ),
        Body::GravelShort(b) => Told::new(
            format!(
                "GRAVEL IS SHORT by {:.1} tons: {:.1} are ordered.",
                b.short_tons, b.ordered_tons
            ),
            format!(
                "FALTA GRAVA: {:.1} toneladas; hay {:.1} pedidas.",
                b.short_tons, b.ordered_tons
            ),
        ),
        Body::PricesSet(_) => {
            Told::new("The price list was put in.", "Se puso la lista de precios.")
        }
        waits @ (Body::WaitingSaid(_) | Body::WorkedAgain(_)) => waiting(waits),
        soil => of_soil(soil),
    }
}

fn counted(b: &LoadCounted) -> Told {
    let (en, es) = match b.way {
        Way::Out => ("out", "salió"),
        Way::In => ("in", "entró"),
    };
    let amount = |cy: &str, tons: &str| {
        let loose = b.loose_cy.map(|yards| format!("{yards:.1} {cy}"));
        let weight = b.tons.map(|weight| format!("{weight:.1} {tons}"));
        let parts: Vec<String> = loose.into_iter().chain(weight).collect();
        parts.join(", ")
    };
    let told = Told::new(
        format!(
            "{} × {} {en}: {}.",
            b.trucks,
            b.material,
            amount("cubic yards loose", "tons")
        ),
        format!(
            "{} × {} {es}: {}.",
            b.trucks,
            b.material,
            amount("yardas cúbicas sueltas", "toneladas")
        ),
    );
    match &b.machine {
        Some(machine) => told.machine(machine),
        None => told,
    }
}

fn waiting(body: &Body) -> Told {
    match body {
        Body::WaitingSaid(b) => {
            let (en, es) = match b.cause {
                WaitCause::Truck => ("waits for trucks", "espera camiones"),
                WaitCause::Attachment => ("changes an attachment", "cambia de herramienta"),
                WaitCause::Broken => ("is broken", "está descompuesta"),
                WaitCause::Parked => ("is parked", "está estacionada"),
                WaitCause::Other => ("waits", "espera"),
            };
            Told::new(
                format!("{} {en}.", b.machine),
                format!("{} {es}.", b.machine),
            )
            .machine(&b.machine)
        }
        Body::WorkedAgain(b) => Told::new(
            format!("{} works again.", b.machine),
            format!("{} trabaja otra vez.", b.machine),
        )
        .machine(&b.machine),
        _ => Told::default(),
    }
}

fn of_soil(body: &Body) -> Told {
    match body {
        Body::PatchNeeded(b) => {
            let (length, width, depth) = (feet(b.length), feet(b.width), feet(b.depth));
            let yards = b.volume_cf / 27.0;
            let (patch, parche) = patch_in_both(&b.patch);
            Told::new(
                format!("{patch}: {length} × {width} × {depth}, {yards:.2} cubic yards of gravel in {} lifts.", b.lifts),
                format!("{parche}: {length} × {width} × {depth}, {yards:.2} yardas cúbicas de grava en {} capas.", b.lifts),
            )
            .mark(Some(&b.mark))
        }
        Body::PatchMoved(b) => {
            let (en, es) = match b.to {
                PatchStep::Needed => ("needed", "hace falta"),
                PatchStep::Filled => ("filled", "lleno"),
                PatchStep::Compacted => ("compacted", "compactado"),
                PatchStep::Tested => ("tested", "probado"),
                PatchStep::Done => ("done", "terminado"),
            };
            let (patch, parche) = patch_in_both(&b.patch);
            Told::new(format!("{patch}: {en}."), format!("{parche}: {es}."))
        }
        Body::Compacted(b) => {
            let thick = feet(b.thickness);
            let (en, es) = if b.too_thick {
                (
                    " THICKER THAN A LIFT MAY BE.",
                    " MÁS GRUESA DE LO QUE DEBE.",
                )
            } else {
                ("", "")
            };
            let (on, sobre) = if b.patch {
                patch_in_both(&b.on)
            } else {
                (b.on.clone(), b.on.clone())
            };
            Told::new(
                format!(
                    "{on}: lift {} rammed, {thick}, {} passes.{en}",
                    b.lift, b.passes
                ),
                format!(
                    "{sobre}: capa {} apisonada, {thick}, {} pasadas.{es}",
                    b.lift, b.passes
                ),
            )
        }
        Body::SoilTested(b) => tested(b),
        Body::TestVoided(b) => voided(b),
        Body::UndercutProposed(b) => {
            let depth = feet(b.undercut.depth);
            Told::new(
                format!(
                    "Undercut proposed at {}: {depth} deeper, filled with {}.",
                    b.mark, b.undercut.material
                ),
                format!(
                    "Sobreexcavación propuesta en {}: {depth} más hondo, relleno de {}.",
                    b.mark, b.undercut.material
                ),
            )
            .mark(Some(&b.mark))
        }
        Body::UndercutConfirmed(b) => Told::new(
            format!("The undercut of {} is in force.", b.target),
            format!("La sobreexcavación de {} ya vale.", b.target),
        ),
        Body::RockPointed(b) => {
            let top = feet(b.top);
            Told::new(
                format!(
                    "{}: {} at {top}.",
                    b.point,
                    if b.what.is_empty() { "rock" } else { &b.what }
                ),
                format!(
                    "{}: {} en {top}.",
                    b.point,
                    if b.what.is_empty() { "roca" } else { &b.what }
                ),
            )
            .mark(Some(&b.mark))
        }
        _ => Told::default(),
    }
}

fn tested(b: &SoilTested) -> Told {
    let (result_en, result_es) = if b.passes {
        ("PASS", "PASA")
    } else {
        ("FAIL", "NO PASA")
    };
    let (en, es) = stated(&b.test, b.density.as_ref());
    let at = feet(b.elevation);
    Told::new(
        format!("Soil test at {at} by {}: {en}. {result_en}.", b.tester),
        format!(
            "Prueba de suelo en {at} por {}: {es}. {result_es}.",
            b.tester
        ),
    )
    .mark(Some(&b.mark))
}

fn voided(b: &TestVoided) -> Told {
    let (en, es) = (b.why.english(), b.why.spanish());
    Told::new(
        format!("The soil test is VOID: {en}. Test again."),
        format!("La prueba de suelo NO VALE: {es}. Pruebe otra vez."),
    )
    .mark(Some(&b.mark))
}
