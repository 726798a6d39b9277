//! Sentences about faces and what is buried.

use earthwork::face::PinState;

use super::{Told, feet, signed};
use day::cuts::buried::Crossing;
use day::cuts::daylight::DaylightFound;
use day::entry::Body;
use day::said::face_alarm::AlarmWhy;
use day::said::face_pins::PinsRead;
use day::said::face_seen::{AtFace, SeenAtFace};
use day::said::struck::LineStruck;
use earthwork::words::Language;

pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::FaceInspected(b) => Told::new(
            format!(
                "{} inspected, class {}: {}. {} {}",
                b.zone,
                b.class.word(),
                b.seen,
                b.by_hand,
                b.release
            ),
            format!(
                "{} inspeccionado, clase {}: {}. {} {}",
                b.zone,
                b.class.word(),
                b.seen,
                b.by_hand,
                b.release
            ),
        ),
        Body::SoilRetyped(b) => {
            let from = b.from.map_or("–", earthwork::face::SoilClass::word);
            let to = b.class.word();
            Told::new(
                format!("Soil of {}: class {from} is now {to}: {}", b.zone, b.why),
                format!("Suelo de {}: clase {from} ahora es {to}: {}", b.zone, b.why),
            )
        }
        Body::FaceRevised(b) => Told::new(
            format!("{} by an engineer's own design: {}", b.zone, b.why),
            format!("{} según diseño propio del ingeniero: {}", b.zone, b.why),
        ),
        Body::DaylightFound(b) => daylight(b),
        Body::SeenAtFace(b) => seen(b),
        Body::SloughSeen(b) => Told::new(
            format!(
                "{} came down: {} × {} × {}, about {:.1} cy. {}",
                b.zone,
                feet(b.length),
                feet(b.height),
                feet(b.back),
                b.cubic_yards,
                b.note
            ),
            format!(
                "Se cayó {}: {} × {} × {}, unas {:.1} yd³. {}",
                b.zone,
                feet(b.length),
                feet(b.height),
                feet(b.back),
                b.cubic_yards,
                b.note
            ),
        ),
        Body::RainBegan(b) => wet("It rains.", "Llueve.", &b.faces),
        Body::RainStopped(b) => wet("The rain stopped.", "Paró la lluvia.", &b.faces),
        Body::WaterPumped(b) => wet(
            &format!("Water pumped out of {}.", b.at.name()),
            &format!("Se bombeó el agua de {}.", b.at.name()),
            &b.faces,
        ),
        Body::PinsRead(b) => pins(b),
        Body::FaceAlarmed(b) => {
            let (en, es) = why(&b.why);
            Told::new(
                format!("GET AWAY FROM THE FACE {}: {en}.", b.zone),
                format!("ALÉJENSE DEL TALUD {}: {es}.", b.zone),
            )
        }
        Body::UnderLeftFace(b) => Told::new(
            format!(
                "{} may stand under a face that people had to get away from: {}.",
                b.machine,
                b.zones.join(", ")
            ),
            format!(
                "{} puede estar al pie de un talud del que hubo que alejarse: {}.",
                b.machine,
                b.zones.join(", ")
            ),
        )
        .machine(&b.machine),
        Body::FaceLeft(b) => Told::new(
            format!("{} is away from {}.", b.machine, b.zone),
            format!("{} se alejó de {}.", b.machine, b.zone),
        )
        .machine(&b.machine),
        other => buried(other),
    }
}

/// What was struck or met, and what everybody was told.
fn struck(body: &LineStruck) -> Told {
    let (what, que) = if body.met {
        (
            "A pipe or cable is in the way",
            "Hay un tubo o cable en el camino",
        )
    } else {
        ("A buried line was struck", "Se golpeó una línea enterrada")
    };
    let (line, linea) = if body.lines.is_empty() {
        ("not drawn".to_owned(), "no está dibujada".to_owned())
    } else {
        (body.lines.join(", "), body.lines.join(", "))
    };
    let told = Told::new(format!("{what}: {line}."), format!("{que}: {linea}."));
    match &body.machine {
        Some(machine) => told.machine(machine),
        None => told,
    }
}

fn buried(body: &Body) -> Told {
    match body {
        Body::TicketChecked(b) => Told::new(
            format!(
                "Ticket {} holds through {}, {} days more; {} silent.",
                b.ticket,
                b.to,
                b.days_left,
                b.silent.len()
            ),
            format!(
                "Boleto {} vale hasta {}, {} días más; {} sin responder.",
                b.ticket,
                b.to,
                b.days_left,
                b.silent.len()
            ),
        ),
        Body::LineStruck(b) => struck(b),
        Body::PaintSaid(b) if b.gone => Told::new(
            format!("Paint of {} is gone: have it marked again.", b.utility),
            format!("Se borró la marca de {}: pida otra.", b.utility),
        ),
        Body::PaintSaid(b) => Told::new(
            format!("{} is marked again.", b.utility),
            format!("{} está marcada otra vez.", b.utility),
        ),
        Body::PotholeDug(b) => {
            let each = |say: fn(&Crossing) -> String| {
                let all: Vec<String> = b.crossings.iter().map(say).collect();
                all.join("; ")
            };
            Told::new(
                format!(
                    "{} bared: top {}, {} across. {}",
                    b.utility,
                    feet(b.top),
                    b.outside,
                    each(|one| crossing(one, "crosses with", "needs"))
                ),
                format!(
                    "{} destapada: arriba {}, {} de ancho. {}",
                    b.utility,
                    feet(b.top),
                    b.outside,
                    each(|one| crossing(one, "cruza con", "pide"))
                ),
            )
        }
        Body::DigAllowed(b) => Told::new(
            format!(
                "Let go on: {} Why: {}",
                b.held.text(Language::English),
                b.why
            ),
            format!(
                "Sigue: {} Por qué: {}",
                b.held.text(Language::Spanish),
                b.why
            ),
        ),
        Body::DepthOwed(b) => {
            let marks: Vec<String> = b
                .owed
                .iter()
                .map(|one| format!("{} {}", one.mark, feet(one.depth)))
                .collect();
            let marks = marks.join(", ");
            Told::new(
                format!("Owed before digging to {}: {marks}.", b.target),
                format!("Se debe antes de excavar {}: {marks}.", b.target),
            )
        }
        _ => Told::default(),
    }
}

fn crossing(one: &Crossing, with: &str, needs: &str) -> String {
    let clear = one.clear.map_or("?".to_owned(), signed);
    format!("{} {with} {clear}, {needs} {}", one.zone, feet(one.need))
}

fn why(why: &AlarmWhy) -> (String, String) {
    match why {
        AlarmWhy::Pins { pins } => (
            format!("pins {pins} open faster"),
            format!("los clavos {pins} se abren más rápido"),
        ),
        AlarmWhy::Slough {} => ("it came down".into(), "se cayó".into()),
        AlarmWhy::Said {} => (
            "somebody says that it moves".into(),
            "dicen que se mueve".into(),
        ),
    }
}

fn pins(b: &PinsRead) -> Told {
    let apart = feet(b.apart);
    let Some(judged) = b.judged else {
        return Told::new(
            format!("{} {}: {apart}, the first tape.", b.zone, b.pins),
            format!("{} {}: {apart}, primera cinta.", b.zone, b.pins),
        );
    };
    let (en, es) = match judged.state {
        PinState::Still => ("still", "sin moverse"),
        PinState::Watch => ("WATCH", "VIGILAR"),
        PinState::Leave => ("GET AWAY", "ALÉJENSE"),
    };
    let (opened, rate) = (signed(judged.opened), judged.rate_ft_per_hour);
    Told::new(
        format!(
            "{} {}: {apart}, {opened}, {rate:.3} ft an hour: {en}.",
            b.zone, b.pins
        ),
        format!(
            "{} {}: {apart}, {opened}, {rate:.3} ft por hora: {es}.",
            b.zone, b.pins
        ),
    )
}

fn seen(b: &SeenAtFace) -> Told {
    let (en, es) = match &b.what {
        AtFace::Water {} => ("water".into(), "agua".into()),
        AtFace::Crack {} => ("a crack".into(), "una grieta".into()),
        AtFace::Rain {} => ("rain".into(), "lluvia".into()),
        AtFace::Vibration {} => ("vibration".into(), "vibración".into()),
        AtFace::Trimmed {} => (
            "trimmed from the top down".into(),
            "perfilado de arriba abajo".into(),
        ),
        AtFace::Load { back } => (
            format!("a load {} from the crest", feet(*back)),
            format!("carga a {} de la corona", feet(*back)),
        ),
        AtFace::Slough { .. } => ("it came down".into(), "se cayó".into()),
    };
    let back = b.move_back_to.map(feet);
    let (move_en, move_es) = back.map_or((String::new(), String::new()), |back| {
        (
            format!(" Move it back to {back}."),
            format!(" Aléjela a {back}."),
        )
    });
    Told::new(
        format!("Seen at {}: {en}.{move_en} {}", b.zone, b.note),
        format!("Visto en {}: {es}.{move_es} {}", b.zone, b.note),
    )
}

/// With the faces that owe an inspection because of it.
fn wet(english: &str, spanish: &str, faces: &[String]) -> Told {
    if faces.is_empty() {
        return Told::new(english, spanish);
    }
    let faces = faces.join(", ");
    Told::new(
        format!("{english} To be inspected after it: {faces}."),
        format!("{spanish} Por inspeccionar después de esto: {faces}."),
    )
}

fn daylight(b: &DaylightFound) -> Told {
    let crossed: Vec<String> = b
        .lines
        .iter()
        .filter(|line| !line.over.is_empty())
        .map(|line| format!("{} {}", line.line, signed(line.least)))
        .collect();
    let high = feet(b.highest);
    if crossed.is_empty() {
        return Told::new(
            format!("Daylight of {}: {high} high, inside every line.", b.zone),
            format!(
                "Línea de ceros de {}: {high} de alto, dentro de toda línea.",
                b.zone
            ),
        );
    }
    let crossed = crossed.join(", ");
    Told::new(
        format!(
            "DAYLIGHT of {} over a line: {crossed}; {high} high.",
            b.zone
        ),
        format!(
            "LÍNEA DE CEROS de {} sobre una línea: {crossed}; {high} de alto.",
            b.zone
        ),
    )
}
