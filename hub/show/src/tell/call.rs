//! Sentences about calls and stops.

use super::Told;
use day::call::Ending;
use day::entry::Body;
use day::said::call::CantReason;

pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::CallSent(b) => Told::new(
            format!("{} ← {}", b.machine, b.english),
            format!("{} ← {}", b.machine, b.spanish),
        )
        .machine(&b.machine)
        .mark(b.mark.as_deref()),
        Body::CallDelivered(b) => Told::new(
            format!("Call {} is on the phone.", b.call),
            format!("La orden {} está en el teléfono.", b.call),
        )
        .machine(&b.machine)
        .mark(b.mark.as_deref()),
        Body::CallShown(b) => Told::new(
            format!("Call {} shown: {}", b.call, b.text),
            format!("Orden {} mostrada: {}", b.call, b.text),
        )
        .machine(&b.machine)
        .mark(b.mark.as_deref()),
        Body::CallGot(b) => match &b.witness {
            None => Told::new(
                format!("Call {}: GOT IT pressed.", b.call),
                format!("Orden {}: apretó ENTENDIDO.", b.call),
            )
            .machine(&b.machine)
            .mark(b.mark.as_deref()),
            Some(who) => Told::new(
                format!("Call {}: {who} saw the nod.", b.call),
                format!("Orden {}: {who} vio la seña.", b.call),
            )
            .machine(&b.machine)
            .mark(b.mark.as_deref()),
        },
        Body::CallEnded(b) => {
            let (en, es) = ending(b.how);
            let (to, mark) = (&b.machine, b.mark.as_deref());
            Told::new(
                format!("Call {} to {to}{} ended: {en}.", b.call, at(" at ", mark)),
                format!("Orden {} a {to}{} terminó: {es}.", b.call, at(" en ", mark)),
            )
            .machine(&b.machine)
            .mark(b.mark.as_deref())
        }
        Body::LookAsked(b) => Told::new(
            format!("{} asks for a look.", b.machine),
            format!("{} pide que vean.", b.machine),
        )
        .machine(&b.machine),
        Body::CantSaid(b) => {
            let (en, es) = cant(b.why);
            Told::new(
                format!("{} can't: {en}.", b.machine),
                format!("{} no puede: {es}.", b.machine),
            )
            .machine(&b.machine)
            .mark(b.mark.as_deref())
        }
        Body::Stopped(b) => {
            let all = if b.all { "ALL STOP" } else { "STOP" };
            let pare = if b.all { "PARE para todas" } else { "PARE" };
            let why = if b.why.is_empty() {
                String::new()
            } else {
                format!(": {}", b.why)
            };
            let machines = b.machines.join(", ");
            Told::new(
                format!("{all} ({machines}){why}"),
                format!("{pare} ({machines}){why}"),
            )
        }
        Body::StopLifted(b) => {
            let machines = b.machines.join(", ");
            Told::new(
                format!("Stop lifted for {machines}: {}", b.why),
                format!("PARE levantado para {machines}: {}", b.why),
            )
        }
        _ => Told::default(),
    }
}

/// A mark behind its word; nothing where no mark is known.
fn at(word: &str, mark: Option<&str>) -> String {
    mark.map(|mark| format!("{word}{mark}")).unwrap_or_default()
}

fn ending(how: Ending) -> (&'static str, &'static str) {
    match how {
        Ending::Superseded => ("a newer call took its place", "la reemplazó una nueva"),
        Ending::Done => ("the mark is on grade", "la marca está a nivel"),
        Ending::StaleByAge => ("too old", "demasiado vieja"),
        Ending::GradeRanOut => ("said for long enough", "ya se dijo bastante"),
        Ending::StaleByLaser => ("the laser is in doubt", "el láser está en duda"),
        Ending::StaleByTarget => ("the target changed", "cambió la rasante"),
        Ending::StaleByMark => ("the mark was laid again", "la marca se puso otra vez"),
        Ending::Restated => ("its reading was corrected", "se corrigió su lectura"),
        Ending::Withdrawn => ("taken back", "se retiró"),
        Ending::Refused => ("the cab can't", "la cabina no puede"),
        Ending::NewScreen => ("another phone took over", "otro teléfono tomó su lugar"),
        Ending::Ruled => ("a ruling took its place", "la reemplazó una decisión"),
        Ending::StaleByFace => (
            "everybody had to get away from the face",
            "hubo que alejarse del talud",
        ),
        Ending::QueryAsked => ("the engineer was asked", "se consultó al ingeniero"),
        Ending::DayClosed => ("the day was closed", "se cerró el día"),
        Ending::Held => (
            "something holds the work there",
            "algo detiene el trabajo ahí",
        ),
        Ending::MachineMoved => ("the machine moved", "la máquina se movió"),
        Ending::GivenAway => (
            "its target was given to another machine",
            "su rasante pasó a otra máquina",
        ),
        Ending::OffSite => (
            "the machine is not on the site any more",
            "la máquina ya no está en la obra",
        ),
        Ending::ClockBehind => (
            "the laptop's clock was behind: nobody knows how old it is",
            "el reloj de la computadora estaba atrasado: nadie sabe qué tan vieja es",
        ),
    }
}

fn cant(why: CantReason) -> (&'static str, &'static str) {
    match why {
        CantReason::HardGround => ("hard ground", "terreno duro"),
        CantReason::Water => ("water", "agua"),
        CantReason::Pipe => ("pipe or cable", "tubo o cable"),
        CantReason::Line => ("line", "línea"),
        CantReason::Face => ("face", "talud"),
        CantReason::Other => ("come and look", "venga a ver"),
    }
}
