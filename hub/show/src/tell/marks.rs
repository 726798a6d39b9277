//! Sentences about marks on the ground.

use super::{Told, feet};
use day::entry::Body;
use day::said::diagonals::{self, DiagonalsMeasured};
use day::said::marks::LaidFrom;
use day::said::ties::TiesTaken;

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

/// Two tapes to a mark, and what they are worth.
pub(super) fn ties(b: &TiesTaken) -> Told {
    let [first, second, doubt] = [b.first_tape, b.second_tape, b.doubt].map(feet);
    let angle = b.angle_degrees.round();
    let weak = |words| if b.weak { words } else { "" };
    Told::new(
        format!(
            "Ties of {}: {first} from {}, {second} from {}; they meet at {angle}°, ±{doubt}.{}",
            b.mark,
            b.first,
            b.second,
            weak(" Weak: take another pair.")
        ),
        format!(
            "Amarres de {}: {first} desde {}, {second} desde {}; se cruzan a {angle}°, ±{doubt}.{}",
            b.mark,
            b.first,
            b.second,
            weak(" Débiles: tome otro par.")
        ),
    )
    .mark(Some(&b.mark))
}

/// A rectangle by its diagonals: what they should be, and which corners move.
pub(super) fn diagonals(b: &DiagonalsMeasured) -> Told {
    let (taped, found) = (&b.taped, &b.found);
    let (en, es) = diagonals::moves(found);
    let [base, across, one, other, wanted] = [
        taped.base,
        taped.across,
        taped.a_to_c,
        taped.b_to_d,
        found.wanted,
    ]
    .map(feet);
    Told::new(
        format!(
            "{}, {base} by {across}: diagonals {one} and {other}, both should be {wanted}: {en}.",
            b.what
        ),
        format!(
            "{}, {base} por {across}: diagonales {one} y {other}, las dos deben medir {wanted}: {es}.",
            b.what
        ),
    )
}

fn from(from: &LaidFrom) -> (&str, &str) {
    match from {
        LaidFrom::Control => ("control", "el control"),
        LaidFrom::Hub => ("hubs", "estacas"),
        LaidFrom::String => ("a string", "un hilo"),
        LaidFrom::Mark { id } => (id, id),
        LaidFrom::Ties => ("their ties", "sus amarres"),
        LaidFrom::OldPaint => ("old paint", "pintura vieja"),
    }
}
