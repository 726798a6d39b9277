//! The close and signature of a day, visitors, inspections, queries, notes and photos, as sentences.

use super::Told;
use day::entry::Body;
use day::read_as::set_up_in_both;
use day::said::close::DayClosed;
use day::said::day::DayOpened;
use day::said::inspection::{Inspected, InspectionResult};
use day::said::query::{QueryAnswered, QueryOpened};
use day::said::sign::DaySigned;

/// The sentence for an entry of the record; empty for any other.
pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::DayClosed(b) => closed(b),
        Body::DaySigned(b) => signed(b),
        Body::DayAmended(b) => Told::new(
            format!(
                "AMENDMENT to entry {} of day {}, signed by {}: {}",
                b.entry, b.day, b.signature.name, b.words
            ),
            format!(
                "ENMIENDA al asiento {} del día {}, firmada por {}: {}",
                b.entry, b.day, b.signature.name, b.words
            ),
        ),
        Body::NoteAdded(b) => Told::new(format!("Note: {}", b.words), format!("Nota: {}", b.words))
            .mark(b.mark.as_deref()),
        visit @ (Body::VisitorNoticed(_) | Body::RunsShown(_)) => visitors(visit),
        inspection @ (Body::InspectionAsked(_)
        | Body::Inspected(_)
        | Body::InspectionSigned(_)
        | Body::InspectionVoided(_)) => inspections(inspection),
        Body::AcceptanceVoided(b) => Told::new(
            format!(
                "Accepted by entry {}; since then {}: look and shoot it again.",
                b.reading,
                b.why.english()
            ),
            format!(
                "Aceptada con el asiento {}; después {}: mírela y lea otra vez.",
                b.reading,
                b.why.spanish()
            ),
        )
        .mark(Some(&b.mark)),
        Body::QueryOpened(b) => opened(b),
        Body::QueryAnswered(b) => answered(b),
        photo @ (Body::PhotoPromised(_) | Body::PhotoAdded(_) | Body::PhotoGivenUp(_)) => {
            photos(photo)
        }
        Body::HeadMismatch(b) => Told::new(
            format!(
                "THE LOG WAS CUT OR REWRITTEN: {}'s phone remembers entry {}, which this log does not hold.",
                b.person, b.remembered.seq
            ),
            format!(
                "EL REGISTRO FUE CORTADO O REESCRITO: el teléfono de {} recuerda el asiento {}, que este registro no tiene.",
                b.person, b.remembered.seq
            ),
        ),
        _ => Told::default(),
    }
}

/// Sentences in both languages, one behind another.
#[derive(Default)]
struct Both {
    english: Vec<String>,
    spanish: Vec<String>,
}

impl Both {
    fn say(&mut self, english: impl Into<String>, spanish: impl Into<String>) {
        self.english.push(english.into());
        self.spanish.push(spanish.into());
    }

    fn told(self) -> Told {
        Told::new(self.english.join(" "), self.spanish.join(" "))
    }
}

/// A day that begins, with how many things the one before left.
pub(super) fn day_opened(b: &DayOpened) -> Told {
    let mut both = Both::default();
    both.say(
        format!("Day {} opened.", b.day),
        format!("Se abrió el día {}.", b.day),
    );
    if !b.taken_down.is_empty() {
        let down = b.taken_down.join(", ");
        both.say(
            format!("{down} counts no more: set up anew."),
            format!("{down} ya no cuenta: ponga el láser otra vez."),
        );
    }
    if b.not_closed {
        both.say(
            "The day before was never closed.",
            "El día anterior nunca se cerró.",
        );
    }
    if !b.open.is_empty() {
        let many = b.open.len();
        both.say(
            format!("{many} things are open from before."),
            format!("Quedan {many} pendientes de antes."),
        );
    }
    both.told()
}

fn closed(b: &DayClosed) -> Told {
    let mut both = Both::default();
    both.say(
        format!("Day {} closed.", b.day),
        format!("Se cerró el día {}.", b.day),
    );
    if b.empty {
        both.say(
            "EMPTY: nothing was read and nothing was called.",
            "VACÍO: no se leyó ni se ordenó nada.",
        );
    }
    for one in &b.unproven {
        both.say(
            format!(
                "CLOSED UNPROVEN: {} has no closing check, nothing on it since its last good one is proven.",
                set_up_in_both(&one.set_up).0
            ),
            format!(
                "CERRADO SIN COMPROBAR: {} no tiene lectura de cierre, nada en ella desde la última buena está comprobado.",
                set_up_in_both(&one.set_up).1
            ),
        );
    }
    for over in &b.overrides {
        both.say(
            format!("Closed over “{}”: {}.", over.missing.english(), over.why),
            format!(
                "Se cerró pese a «{}»: {}.",
                over.missing.spanish(),
                over.why
            ),
        );
    }
    let work: Vec<&str> = b
        .open
        .iter()
        .filter(|item| item.kind.is_work())
        .map(|item| item.on.as_str())
        .collect();
    if !work.is_empty() {
        let list = work.join(", ");
        both.say(format!("Open: {list}."), format!("Pendiente: {list}."));
    }
    if !b.words.is_empty() {
        both.say(&b.words, &b.words);
    }
    both.told()
}

fn signed(b: &DaySigned) -> Told {
    let code = &b.head.hash[..b.head.hash.len().min(12)];
    let mut both = Both::default();
    both.say(
        format!(
            "Day {} signed by {}, up to entry {}, head code {code}.",
            b.day, b.signature.name, b.head.seq
        ),
        format!(
            "Día {} firmado por {}, hasta el asiento {}, código {code}.",
            b.day, b.signature.name, b.head.seq
        ),
    );
    if b.empty {
        both.say("THE DAY IS EMPTY.", "EL DÍA ESTÁ VACÍO.");
    }
    if b.unproven {
        both.say("CLOSED UNPROVEN.", "CERRADO SIN COMPROBAR.");
    }
    both.told()
}

fn visitors(body: &Body) -> Told {
    match body {
        Body::VisitorNoticed(b) => {
            let (en, es) = if b.on_site {
                ("ON SITE", "EN LA OBRA")
            } else {
                ("OFF SITE", "FUERA DE LA OBRA")
            };
            let (by_en, by_es) = match &b.witness {
                Some(who) => (format!(", as {who} has seen"), format!(", según vio {who}")),
                None => (String::new(), String::new()),
            };
            Told::new(
                format!("Visitor {} is {en}{by_en}.", b.person),
                format!("La visita {} está {es}{by_es}.", b.person),
            )
        }
        Body::RunsShown(b) if b.targets.is_empty() => Told::new(
            format!("{} is shown no run any more.", b.person),
            format!("A {} ya no se le muestra nada.", b.person),
        ),
        Body::RunsShown(b) => Told::new(
            format!("{} is shown {}.", b.person, b.targets.join(", ")),
            format!("A {} se le muestra {}.", b.person, b.targets.join(", ")),
        ),
        _ => Told::default(),
    }
}

fn inspections(body: &Body) -> Told {
    match body {
        Body::InspectionAsked(b) => Told::new(
            format!("Inspection asked of {}: {}.", b.of, b.what),
            format!("Inspección pedida a {}: {}.", b.of, b.what),
        ),
        Body::Inspected(b) => inspected(b),
        Body::InspectionSigned(b) => Told::new(
            format!("Inspection signed by {}.", b.signature.name),
            format!("Inspección firmada por {}.", b.signature.name),
        ),
        Body::InspectionVoided(b) => Told::new(
            format!(
                "The inspection of {} is VOID: {}. Ask for another.",
                b.what,
                b.why.english()
            ),
            format!(
                "La inspección de {} NO VALE: {}. Pida otra.",
                b.what,
                b.why.spanish()
            ),
        )
        .mark(Some(&b.mark)),
        _ => Told::default(),
    }
}

fn inspected(b: &Inspected) -> Told {
    let (en, es) = match b.result {
        InspectionResult::Passed => ("PASSED", "APROBADA"),
        InspectionResult::InPart => ("PASSED IN PART", "APROBADA EN PARTE"),
        InspectionResult::Failed => ("NOT PASSED", "NO APROBADA"),
    };
    let items: Vec<String> = b
        .items
        .iter()
        .map(|item| format!("{}: {}", item.what, item.found))
        .collect();
    let items = items.join("; ");
    let (on_en, on_es) = if b.conditions.is_empty() {
        (String::new(), String::new())
    } else {
        (
            format!(" Conditions: {}.", b.conditions),
            format!(" Condiciones: {}.", b.conditions),
        )
    };
    Told::new(
        format!(
            "{} inspected {}: {en}. {}. Shown: {items}.{on_en}",
            b.inspector, b.what, b.words
        ),
        format!(
            "{} inspeccionó {}: {es}. {}. Se mostró: {items}.{on_es}",
            b.inspector, b.what, b.words
        ),
    )
}

fn opened(b: &QueryOpened) -> Told {
    let (en, es) = if b.stop {
        ("STOP UNTIL ANSWERED", "PARE HASTA LA RESPUESTA")
    } else {
        ("carry on", "se sigue")
    };
    let on = b.on.join(", ");
    Told::new(
        format!("{} to {} about {on}, {en}: {}", b.query, b.of, b.question),
        format!("{} a {} sobre {on}, {es}: {}", b.query, b.of, b.question),
    )
    .mark(b.on.first().map(String::as_str))
}

fn answered(b: &QueryAnswered) -> Told {
    let (en, es) = match &b.revision {
        Some(of) => (
            format!(" Carried out by revision {} of {}.", of.revision, of.target),
            format!(
                " Se cumple con la revisión {} de {}.",
                of.revision, of.target
            ),
        ),
        None => (String::new(), String::new()),
    };
    Told::new(
        format!(
            "{} answered by {}: {}.{en}",
            b.query, b.answered_by, b.answer
        ),
        format!(
            "{} contestada por {}: {}.{es}",
            b.query, b.answered_by, b.answer
        ),
    )
}

fn photos(body: &Body) -> Told {
    match body {
        Body::PhotoPromised(b) => {
            let mut both = Both::default();
            match (&b.face, &b.mark) {
                (Some(of), _) | (None, Some(of)) => {
                    both.say(
                        format!("Photo taken of {of}."),
                        format!("Foto tomada de {of}."),
                    );
                }
                (None, None) => both.say("Photo taken.", "Foto tomada."),
            }
            if let Some(entry) = b.entry {
                both.say(
                    format!("With entry {entry}."),
                    format!("Con el asiento {entry}."),
                );
            }
            if !b.words.is_empty() {
                both.say(&b.words, &b.words);
            }
            both.told().mark(b.mark.as_deref())
        }
        Body::PhotoGivenUp(b) => Told::new(
            format!(
                "The photo that {} took is not waited for any more: {}",
                b.taken_by, b.why
            ),
            format!("Ya no se espera la foto que tomó {}: {}", b.taken_by, b.why),
        )
        .mark(b.mark.as_deref()),
        Body::PhotoAdded(b) => Told::new(
            format!(
                "The photo that {} took has come, {} kB.",
                b.taken_by,
                b.bytes.div_ceil(1_000)
            ),
            format!(
                "Llegó la foto que tomó {}, {} kB.",
                b.taken_by,
                b.bytes.div_ceil(1_000)
            ),
        )
        .mark(b.mark.as_deref()),
        _ => Told::default(),
    }
}
