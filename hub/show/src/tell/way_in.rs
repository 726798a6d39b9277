//! Sentences about the way into a keep-out and out again.

use super::Told;
use day::way_in::Step;

pub(super) fn tell(step: &Step) -> Told {
    let (english, spanish) = sentences(step);
    let told = Told::new(english, spanish);
    let told = match step {
        Step::EntryAsked(b) => told.mark(b.mark.as_deref()),
        Step::PersonIn(b) => told.mark(b.mark.as_deref()),
        _ => told,
    };
    match step.machine() {
        Some(machine) => told.machine(machine),
        None => told,
    }
}

/// How many come along.
fn more(others: u32) -> String {
    if others == 0 {
        return String::new();
    }
    format!(" + {others}")
}

#[expect(
    clippy::too_many_lines,
    reason = "one line for each thing that can be said"
)]
fn sentences(step: &Step) -> (String, String) {
    match step {
        Step::EntryAsked(b) => (
            format!(
                "{}{} asks to come in at {}.",
                b.person,
                more(b.others),
                b.machine
            ),
            format!(
                "{}{} pide entrar en {}.",
                b.person,
                more(b.others),
                b.machine
            ),
        ),
        Step::AskRepeated(b) => (
            format!("No answer: {} asks again at {}.", b.person, b.machine),
            format!(
                "Sin respuesta: {} pide otra vez en {}.",
                b.person, b.machine
            ),
        ),
        Step::AskWithdrawn(b) => (
            format!("{} is not coming in at {}.", b.person, b.machine),
            format!("{} no va a entrar en {}.", b.person, b.machine),
        ),
        Step::EntryDelayed(b) => (
            format!("{}: WAIT, said to {}.", b.machine, b.person),
            format!("{}: ESPERE, dicho a {}.", b.machine, b.person),
        ),
        Step::EntryRefused(b) => (
            format!("{}: NO, said to {}. {}", b.machine, b.person, b.why),
            format!("{}: NO, dicho a {}. {}", b.machine, b.person, b.why),
        ),
        Step::BucketIsDown(b) if b.people.is_empty() => (
            format!("{}: {} holds BUCKET DOWN.", b.machine, b.operator),
            format!("{}: {} mantiene CUCHARÓN ABAJO.", b.machine, b.operator),
        ),
        Step::BucketIsDown(b) => {
            let people = b.people.join(", ");
            (
                format!(
                    "{}: {} holds BUCKET DOWN for {people}.",
                    b.machine, b.operator
                ),
                format!(
                    "{}: {} mantiene CUCHARÓN ABAJO para {people}.",
                    b.machine, b.operator
                ),
            )
        }
        Step::PersonIn(b) if b.confirmed => (
            format!("{}{} is IN at {}.", b.person, more(b.others), b.machine),
            format!(
                "{}{} está ADENTRO en {}.",
                b.person,
                more(b.others),
                b.machine
            ),
        ),
        Step::PersonIn(b) => (
            format!(
                "UNCONFIRMED ENTRY: {}{} is IN at {}.",
                b.person,
                more(b.others),
                b.machine
            ),
            format!(
                "ENTRADA SIN CONFIRMAR: {}{} está ADENTRO en {}.",
                b.person,
                more(b.others),
                b.machine
            ),
        ),
        Step::PersonOut(b) => match &b.witness {
            Some(who) => (
                format!("{who} saw {} OUT at {}: {}", b.person, b.machine, b.why),
                format!(
                    "{who} vio AFUERA a {} en {}: {}",
                    b.person, b.machine, b.why
                ),
            ),
            None if b.phone.is_some() => (
                format!(
                    "{} is OUT at {}, said from another phone in that name.",
                    b.person, b.machine
                ),
                format!(
                    "{} está AFUERA en {}, dicho desde otro teléfono con ese nombre.",
                    b.person, b.machine
                ),
            ),
            None => (
                format!("{} is OUT at {}.", b.person, b.machine),
                format!("{} está AFUERA en {}.", b.person, b.machine),
            ),
        },
        Step::OutSeen(b) => (
            format!("{} has seen it, and is out at {}.", b.person, b.machine),
            format!("{} lo vio, y está afuera en {}.", b.person, b.machine),
        ),
        Step::ReleaseRefused(b) => {
            let people = b.people.join(", ");
            (
                format!("{} NOT RELEASED: {people} in.", b.machine),
                format!("{} NO SE REANUDA: adentro {people}.", b.machine),
            )
        }
        Step::Released(b) => (
            format!("{} released.", b.machine),
            format!("{} se reanuda.", b.machine),
        ),
        Step::LinkNoticed(b) if b.lost => (
            format!("NO LINK to {}.", b.person),
            format!("SIN ENLACE con {}.", b.person),
        ),
        Step::LinkNoticed(b) => (
            format!("Link to {} is back.", b.person),
            format!("Volvió el enlace con {}.", b.person),
        ),
    }
}
