//! Sentences about marks on the ground.

use super::Told;
use crate::entry::Body;
use crate::said::marks::LaidFrom;

pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::MarksLaid(b) => {
            let marks: Vec<String> = b
                .marks
                .iter()
                .map(|laid| format!("{} g{}", laid.mark, laid.generation))
                .collect();
            let (en, es) = from(&b.from);
            Told::new(
                format!("Laid from {en}: {}. {}", marks.join(", "), b.note),
                format!("Puestas desde {es}: {}. {}", marks.join(", "), b.note),
            )
            .mark(b.marks.first().map(|laid| laid.mark.as_str()))
        }
        Body::MarksChecked(b) => Told::new(
            format!(
                "Measured a second time, {} apart: {}.",
                b.apart,
                b.marks.join(", ")
            ),
            format!(
                "Medidas por segunda vez, a {}: {}.",
                b.apart,
                b.marks.join(", ")
            ),
        )
        .mark(b.marks.first().map(String::as_str)),
        Body::MarksScraped(b) => Told::new(
            format!("Paint gone: {}.", b.marks.join(", ")),
            format!("Se borró la pintura: {}.", b.marks.join(", ")),
        )
        .mark(b.marks.first().map(String::as_str)),
        _ => Told::default(),
    }
}

fn from(from: &LaidFrom) -> (&str, &str) {
    match from {
        LaidFrom::Control => ("control", "el control"),
        LaidFrom::Hub => ("hubs", "estacas"),
        LaidFrom::String => ("a string", "un hilo"),
        LaidFrom::Mark { id } => (id, id),
        LaidFrom::OldPaint => ("old paint", "pintura vieja"),
    }
}
