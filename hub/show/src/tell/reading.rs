//! Sentences about readings, questions and rulings.

use earthwork::tolerance::Verdict;
use earthwork::words::{Language, ScreenUnit, edge_text};

use super::{Told, feet, signed};
use day::said::drop_unsent::UnsentDropped;
use day::said::edge::EdgeRead;
use day::said::reading::{Judged, LateReason, Question, Reading, SpotReason};
use day::said::rule::Ruling;
use day::said::wrong_number::ReadingCalledWrong;

fn measured(reading: &Reading) -> (String, String) {
    let at = feet(reading.elevation);
    match &reading.judged {
        Some(judged) => {
            let dev = signed(judged.dev);
            let mean = if judged.joined.is_empty() {
                String::new()
            } else {
                format!(" ({} × {})", judged.joined.len() + 1, signed(judged.mean))
            };
            let (en, es) = verdict(judged);
            let on = judged.surface.as_deref();
            let on = on.map_or(String::new(), |surface| format!(" ({surface})"));
            (
                format!("{}{on}: {at}, {dev}{mean}, {en}", reading.mark),
                format!("{}{on}: {at}, {dev}{mean}, {es}", reading.mark),
            )
        }
        None => (
            format!("{}: {at}", reading.mark),
            format!("{}: {at}", reading.mark),
        ),
    }
}

fn verdict(judged: &Judged) -> (&'static str, &'static str) {
    match judged.verdict {
        _ if judged.settled_high => ("HIGH BY RULE", "ALTO POR REGLA"),
        Verdict::High => ("HIGH", "ALTO"),
        Verdict::On => ("ON", "A NIVEL"),
        Verdict::Low => ("LOW", "HONDO"),
        Verdict::TooCloseHigh => (
            "too close to call, high side",
            "muy justo para decir, lado alto",
        ),
        Verdict::TooCloseLow => (
            "too close to call, low side",
            "muy justo para decir, lado hondo",
        ),
    }
}

fn about(told: Told, reading: &Reading) -> Told {
    let told = told.mark(Some(&reading.mark));
    match &reading.machine {
        Some(machine) => told.machine(machine),
        None => told,
    }
}

/// That it was typed in from paper, and whose it is.
fn from_paper(reading: &Reading) -> (String, String) {
    match &reading.paper {
        Some(by) => (
            format!(" FROM PAPER, read by {by},"),
            format!(" DEL PAPEL, leída por {by},"),
        ),
        None => (String::new(), String::new()),
    }
}

pub(super) fn taken(reading: &Reading, spot: Option<SpotReason>) -> Told {
    let (en, es) = measured(reading);
    let (paper_en, paper_es) = from_paper(reading);
    let (paper_en, paper_es) = if reading.waited {
        (
            " that had waited without a link and was sent on its reader's word,".to_owned(),
            " que había esperado sin enlace y se mandó porque su lector lo dijo,".to_owned(),
        )
    } else {
        (paper_en, paper_es)
    };
    let (why_en, why_es) = match spot {
        None => (String::new(), String::new()),
        Some(reason) => {
            let (en, es) = match reason {
                SpotReason::NoTarget => ("no target there", "sin rasante"),
                SpotReason::NoMachine => ("no machine assigned", "sin máquina asignada"),
                SpotReason::SetUpInDoubt => ("laser in doubt", "láser en duda"),
                SpotReason::SetUpClosed => ("set-up taken down", "puesta quitada"),
                SpotReason::FaceLeft => (
                    "everybody had to get away from the face",
                    "hubo que alejarse del talud",
                ),
                SpotReason::DaylightOver => (
                    "the face would come to daylight over a line",
                    "el talud saldría sobre una línea",
                ),
                SpotReason::NotLocated => ("no ticket covers it", "ningún boleto lo cubre"),
                SpotReason::TicketLapsed => {
                    ("the ticket does not hold today", "el boleto no vale hoy")
                }
                SpotReason::LineStruck => {
                    ("a line was struck near it", "cerca se golpeó una línea")
                }
                SpotReason::PaintGone => (
                    "a buried line's paint is gone",
                    "se borró la marca de una línea",
                ),
                SpotReason::QueryOpen => {
                    ("a query is not answered", "una consulta está sin contestar")
                }
                SpotReason::CrossingTooNear => (
                    "it crosses a buried line too near",
                    "cruza una línea enterrada demasiado cerca",
                ),
            };
            (
                format!(" Spot elevation, no call: {en}."),
                format!(" Cota suelta, sin orden: {es}."),
            )
        }
    };
    about(
        Told::new(
            format!("Reading {}{paper_en} at {en}.{why_en}", reading.text),
            format!("Lectura {}{paper_es} en {es}.{why_es}", reading.text),
        ),
        reading,
    )
}

pub(super) fn asked(reading: &Reading, question: &Question) -> Told {
    let (en, es) = match question {
        Question::DoesNotFit { .. } => (
            "it does not fit what is known of the mark",
            "no cuadra con lo que se sabe de la marca",
        ),
        Question::FarFromGrade { .. } => ("far from the target", "muy lejos de la rasante"),
        Question::OtherMachine { .. } => (
            "the mark is assigned to another machine",
            "la marca es de otra máquina",
        ),
        Question::WhichIsRight { .. } => ("two shots disagree", "dos lecturas no concuerdan"),
    };
    about(
        Told::new(
            format!(
                "ASKED before showing {} at {}: {en}.",
                reading.text, reading.mark
            ),
            format!(
                "SE PREGUNTÓ antes de mostrar {} en {}: {es}.",
                reading.text, reading.mark
            ),
        ),
        reading,
    )
}

pub(super) fn late(reading: &Reading, why: &LateReason) -> Told {
    let (en, es) = match why {
        LateReason::NewerReading { by } => (
            format!("{by} has a newer one"),
            format!("{by} tiene una más nueva"),
        ),
        LateReason::TooOld { ms } => (
            format!("{} s old", ms / 1_000),
            format!("tiene {} s", ms / 1_000),
        ),
        LateReason::NewerCall { mark } => (
            format!("the machine was told about {mark} after it was made"),
            format!("a la máquina se le dijo de {mark} después"),
        ),
        LateReason::DayClosed => (
            "the day was closed before it came".to_owned(),
            "el día se cerró antes de que llegara".to_owned(),
        ),
    };
    let (what_en, what_es) = measured(reading);
    about(
        Told::new(
            format!("LATE, not shown: {what_en}; {en}."),
            format!("TARDE, no se mostró: {what_es}; {es}."),
        ),
        reading,
    )
}

pub(super) fn called_wrong(body: &ReadingCalledWrong) -> Told {
    let (text, mark) = (&body.text, &body.mark);
    Told::new(
        format!("WRONG NUMBER: the reading {text} at {mark} counts no more."),
        format!("NÚMERO MALO: la lectura {text} en {mark} ya no cuenta."),
    )
    .mark(Some(mark))
}

pub(super) fn dropped(body: &UnsentDropped) -> Told {
    Told::new(
        format!("Not sent, thrown away on the phone: {}", body.words),
        format!("No se mandó, se tiró en el teléfono: {}", body.words),
    )
}

pub(super) fn ruled(mark: &str, ruling: Ruling, why: &str) -> Told {
    let (en, es) = match ruling {
        Ruling::Leave => ("leave it", "déjela"),
        Ruling::Patch => ("leave it, patch with gravel", "déjela, parche de grava"),
        Ruling::Trim => ("trim it", "recórtela"),
    };
    Told::new(
        format!("Ruling on {mark}: {en}. {why}"),
        format!("Decisión en {mark}: {es}. {why}"),
    )
    .mark(Some(mark))
}

pub(super) fn edge(body: &EdgeRead) -> Told {
    let line = |language| {
        let text = edge_text(&body.shot, language, ScreenUnit::Tenths);
        format!("{} ({})", text.exact, text.line)
    };
    let place = body.mark.as_deref().unwrap_or("-");
    let (en, es) = body.mark_doubt.map_or_else(Default::default, |doubt| {
        let doubt = feet(doubt);
        (
            format!(", taped from the mark, ±{doubt}"),
            format!(", medida desde la marca, ±{doubt}"),
        )
    });
    Told::new(
        format!(
            "Edge at {place} to {}{en}: {}.",
            body.line,
            line(Language::English)
        ),
        format!(
            "Orilla en {place} a {}{es}: {}.",
            body.line,
            line(Language::Spanish)
        ),
    )
    .machine(&body.machine)
    .mark(body.mark.as_deref())
}
