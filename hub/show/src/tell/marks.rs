//! Sentences about marks on the ground.

use super::{Told, feet};
use day::entry::Body;
use day::said::diagonals::{self, DiagonalsMeasured};
use day::said::marks::LaidFrom;
use day::said::ties::TiesTaken;
use words::Text;

pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::MarksLaid(b) => {
            let marks: Vec<String> = b
                .marks
                .iter()
                .map(|laid| format!("{} g{}", laid.mark, laid.generation))
                .collect();
            let what = from(&b.from);
            Told::new(words::tell_marks::laid_from(
                &what,
                &marks.join(", "),
                &b.note,
            ))
            .mark(b.marks.first().map(|laid| laid.mark.as_str()))
        }
        Body::MarksChecked(b) => Told::new(words::tell_marks::measured_a_second_time_apart(
            &b.apart,
            &b.marks.join(", "),
        ))
        .mark(b.marks.first().map(String::as_str)),
        Body::MarksScraped(b) => Told::new(words::tell_marks::paint_gone(&b.marks.join(", ")))
            .mark(b.marks.first().map(String::as_str)),
        _ => Told::default(),
    }
}

/// Two tapes to a mark, and what they are worth.
pub(super) fn ties(b: &TiesTaken) -> Told {
    let [first, second, doubt] = [b.first_tape, b.second_tape, b.doubt].map(feet);
    let angle = b.angle_degrees.round();
    Told::new(words::tell_marks::ties_of(
        &b.mark, &first, &b.first, &second, &b.second, &angle, &doubt, &b.weak,
    ))
    .mark(Some(&b.mark))
}

/// A rectangle by its diagonals: what they should be, and which corners move.
pub(super) fn diagonals(b: &DiagonalsMeasured) -> Told {
    let (taped, found) = (&b.taped, &b.found);
    let what = diagonals::moves(found);
    let [base, across, one, other, wanted] = [
        taped.base,
        taped.across,
        taped.a_to_c,
        taped.b_to_d,
        found.wanted,
    ]
    .map(feet);
    Told::new(words::tell_marks::by(
        &b.what, &base, &across, &one, &other, &wanted, &what,
    ))
}

fn from(from: &LaidFrom) -> Text {
    match from {
        LaidFrom::Control => words::tell_marks::control().into(),
        LaidFrom::Hub => words::tell_marks::hubs().into(),
        LaidFrom::String => words::tell_marks::a_string().into(),
        LaidFrom::Mark { id } => Text::alike(id),
        LaidFrom::Ties => words::tell_marks::their_ties().into(),
        LaidFrom::OldPaint => words::tell_marks::old_paint().into(),
    }
}
