//! Sentences about where machines stand, who spots for them, near misses, and how a day begins.

use earthwork::length::Length;
use earthwork::words::Language;

use super::{Told, feet};
use day::entry::Body;
use day::near::Near;
use day::said::battery::BatterySaid;
use day::said::near_miss::{MachineThen, NearMissOpened, NearMissTold, name};
use day::said::slew::{SlewProposed, SlewSide};
use day::said::start_checks::{DayReady, StartCheckSaid};

pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::MachinePlaced(b) => {
            let (x, y) = (feet(b.at.x), feet(b.at.y));
            Told::new(
                format!("{} stands at {x}, {y}.", b.machine),
                format!("{} está en {x}, {y}.", b.machine),
            )
            .machine(&b.machine)
        }
        Body::MachineMoved(b) => Told::new(
            format!("{} has moved; its place is unknown.", b.machine),
            format!("{} se movió; no se sabe dónde está.", b.machine),
        )
        .machine(&b.machine),
        Body::StartCheckSaid(b) => start_check(b),
        Body::DayReady(b) => ready(b),
        Body::NearFound(b) => near(&b.machine, &b.near),
        Body::SlewProposed(b) => slew(b),
        Body::SlewAgreed(b) => Told::new(
            format!("{}: AGREED with {}.", b.machine, b.with),
            format!("{}: DE ACUERDO con {}.", b.machine, b.with),
        )
        .machine(&b.machine),
        Body::SlewVoided(b) => Told::new(
            format!(
                "{} moved: what was agreed with {} is void.",
                b.machine, b.with
            ),
            format!(
                "{} se movió: lo acordado con {} ya no vale.",
                b.machine, b.with
            ),
        )
        .machine(&b.machine),
        Body::SpotterSet(b) => Told::new(
            format!("{} spots for {}.", b.person, b.machine),
            format!("{} es señalero de {}.", b.person, b.machine),
        )
        .machine(&b.machine),
        Body::SpotterGone(b) => Told::new(
            format!("{} spots for {} no more.", b.person, b.machine),
            format!("{} ya no es señalero de {}.", b.person, b.machine),
        )
        .machine(&b.machine),
        Body::BatterySaid(b) => battery(b),
        Body::NearMissOpened(b) => opened(b),
        Body::NearMissTold(b) => told(b),
        _ => Told::default(),
    }
}

fn opened(b: &NearMissOpened) -> Told {
    let each = |of: fn(&MachineThen) -> String| {
        let machines: Vec<String> = b.machines.iter().map(of).collect();
        machines.join("; ")
    };
    Told::new(
        format!("Near miss {}: {}.", name(b.number), each(then)),
        format!("Casi accidente {}: {}.", name(b.number), each(entonces)),
    )
}

/// Where it stood, its call, who asked or was in.
fn then(one: &MachineThen) -> String {
    let place = place(one).unwrap_or_else(|| "place unknown".into());
    let call = one.call.as_ref().map(|call| call.english.as_str());
    told_so(&one.machine, &place, call, people(one))
}

fn entonces(one: &MachineThen) -> String {
    let place = place(one).unwrap_or_else(|| "lugar desconocido".into());
    let call = one.call.as_ref().map(|call| call.spanish.as_str());
    told_so(&one.machine, &place, call, people(one))
}

fn place(one: &MachineThen) -> Option<String> {
    let at = one.place.as_ref()?.at;
    Some(format!("({}, {})", feet(at.x), feet(at.y)))
}

fn people(one: &MachineThen) -> String {
    let names: Vec<&str> = one.people.iter().map(|one| one.person.as_str()).collect();
    names.join(", ")
}

fn told_so(machine: &str, place: &str, call: Option<&str>, people: String) -> String {
    let parts = [
        format!("{machine} {place}"),
        call.unwrap_or_default().to_owned(),
        people,
    ];
    let said: Vec<String> = parts.into_iter().filter(|part| !part.is_empty()).collect();
    said.join(", ")
}

fn told(b: &NearMissTold) -> Told {
    let closed = |word: &'static str| if b.closed { word } else { "" };
    Told::new(
        format!("{}{}: {}", name(b.number), closed(" closed"), b.words),
        format!("{}{}: {}", name(b.number), closed(" cerrado"), b.words),
    )
}

fn start_check(b: &StartCheckSaid) -> Told {
    let sentence = |language| {
        let signals: Vec<&str> = b.signals.iter().map(|one| one.word(language)).collect();
        let said = [signals.join(", "), b.value.clone()];
        let said: Vec<String> = said.into_iter().filter(|part| !part.is_empty()).collect();
        format!("{}: {}", b.check.name(language), said.join("; "))
    };
    Told::new(sentence(Language::English), sentence(Language::Spanish))
}

fn ready(b: &DayReady) -> Told {
    let sentence = |language, ready: &str| {
        let without = b.overrides.iter().map(|one| {
            let name = one.check.name(language);
            format!(" – {name}: {}", one.why)
        });
        format!("{ready}{}", without.collect::<String>())
    };
    let (said, of) = (b.said.len(), b.said.len() + b.overrides.len());
    Told::new(
        sentence(
            Language::English,
            &format!("Day READY: {said} of {of} start checks"),
        ),
        sentence(
            Language::Spanish,
            &format!("Día LISTO: {said} de {of} revisiones"),
        ),
    )
}

fn battery(b: &BatterySaid) -> Told {
    let percent = b.percent.map(|percent| format!(" ({percent} %)"));
    let percent = percent.unwrap_or_default();
    let (english, spanish) = if b.low {
        ("battery low, hands soon", "batería baja, pronto señas")
    } else {
        ("battery charges", "batería cargando")
    };
    Told::new(
        format!("{}: {english}{percent}.", b.machine),
        format!("{}: {spanish}{percent}.", b.machine),
    )
    .machine(&b.machine)
}

/// What is near a machine that was placed, one after the other.
fn near(machine: &str, near: &[Near]) -> Told {
    let each: Vec<(String, String)> = near.iter().map(of_near).collect();
    let english: Vec<&str> = each.iter().map(|(english, _)| english.as_str()).collect();
    let spanish: Vec<&str> = each.iter().map(|(_, spanish)| spanish.as_str()).collect();
    Told::new(
        format!("{machine}: {}.", english.join("; ")),
        format!("{machine}: {}.", spanish.join("; ")),
    )
    .machine(machine)
}

fn of_near(near: &Near) -> (String, String) {
    match near {
        Near::CanMeet {
            other,
            apart,
            needs,
        } => {
            let (apart, needs) = (feet(*apart), feet(*needs));
            (
                format!("can meet {other}, {apart} apart, {needs} needed"),
                format!("puede topar con {other}, a {apart}, se necesitan {needs}"),
            )
        }
        Near::TailAtMachine { other, apart, .. } => tail(other, *apart),
        Near::TailAtFace { zone, apart, .. } => tail(zone, *apart),
        Near::TailAtWall {
            structure, apart, ..
        } => tail(structure, *apart),
        Near::TailAtPile { pile, apart, .. } => tail(pile, *apart),
        Near::OnSlope { zone, inside, .. } => {
            let inside = feet(*inside);
            (
                format!("tracks {inside} inside the slope of {zone}, the competent person rules"),
                format!(
                    "orugas {inside} dentro de la pendiente de {zone}, decide la persona competente"
                ),
            )
        }
        Near::Overhead {
            line, clearance, ..
        } => {
            let clearance = feet(*clearance);
            (
                format!("can come within {clearance} of {line} overhead, a spotter is needed"),
                format!(
                    "puede llegar a menos de {clearance} de la línea aérea {line}, se necesita señalero"
                ),
            )
        }
    }
}

fn tail(at: &str, apart: Length) -> (String, String) {
    let apart = feet(apart);
    (
        format!("its tail pinches at {at}, {apart} away"),
        format!("la cola aprisiona contra {at}, a {apart}"),
    )
}

fn slew(b: &SlewProposed) -> Told {
    let [one, other] = &b.sides;
    let note = if b.note.is_empty() {
        String::new()
    } else {
        format!(" – {}", b.note)
    };
    let sentence = |language, keeps: &str| {
        let side = |side: &SlewSide| {
            format!(
                "{} {keeps} {}",
                side.machine,
                side.keeps_out_of.word(language)
            )
        };
        format!("{}, {}{note}", side(one), side(other))
    };
    Told::new(
        sentence(Language::English, "keeps out of the"),
        sentence(Language::Spanish, "no entra ni gira al"),
    )
}
