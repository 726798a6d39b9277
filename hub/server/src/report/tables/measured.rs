//! Tables of what was measured and what was said of it: readings, calls, checks, edges, marks as built.

use day::entry::Body;
use show::review::Review;

use super::{feet, in_each, number, table, word};
use crate::days::KeptDay;
use crate::site_export::points;
use crate::when::in_full;

pub(super) fn as_built(review: &Review) -> Option<String> {
    let columns = [
        "mark",
        "target",
        "revision",
        "x_ft",
        "y_ft",
        "dig_to_ft",
        "elevation_ft",
        "difference_ft",
        "mean_ft",
        "guard_ft",
        "verdict",
        "at",
        "by",
        "set_up",
        "readings",
        "reading",
        "standing*",
    ];
    let rows = review.built.iter().map(|one| {
        let mut cells = vec![
            one.mark.clone(),
            one.target.clone().unwrap_or_default(),
            number(one.revision),
            feet(one.place.map(|place| place.x)),
            feet(one.place.map(|place| place.y)),
            feet(one.dig_to),
            feet(Some(one.elevation)),
            feet(one.dev),
            feet(one.mean),
            feet(one.guard),
            word(one.verdict),
            in_full(one.at),
            one.by.clone(),
            one.set_up.clone(),
            one.readings.to_string(),
            one.reading.to_string(),
        ];
        cells.extend(in_each(&one.text));
        cells
    });
    table(&columns, rows)
}

pub(super) fn calls(review: &Review) -> Option<String> {
    let columns = [
        "call",
        "machine",
        "mark",
        "target",
        "revision",
        "set_up",
        "by",
        "*",
        "painted",
        "made_at",
        "sent_at",
        "delivered_at",
        "shown_at",
        "got_at",
        "witness",
        "ended_at",
        "how",
    ];
    let moment = |at: Option<day::time::Time>| at.map(in_full).unwrap_or_default();
    let rows = review.calls.iter().map(|one| {
        let mut cells = vec![
            one.call.to_string(),
            one.machine.clone(),
            one.mark.clone().unwrap_or_default(),
            one.target.clone().unwrap_or_default(),
            number(one.revision),
            one.set_up.clone().unwrap_or_default(),
            one.by.clone(),
        ];
        cells.extend(in_each(&one.text));
        cells.extend([
            one.shown_text.clone().unwrap_or_default(),
            in_full(one.made_at),
            in_full(one.sent_at),
            moment(one.delivered_at),
            moment(one.shown_at),
            moment(one.got_at),
            one.witness.clone().unwrap_or_default(),
            moment(one.ended_at),
            word(one.how),
        ]);
        cells
    });
    table(&columns, rows)
}

pub(super) fn checks(review: &Review) -> Option<String> {
    let columns = [
        "set_up",
        "laser",
        "at",
        "by",
        "benchmark",
        "rod",
        "off_by_ft",
        "check",
    ];
    let rows = review.set_ups.iter().flat_map(|set_up| {
        set_up.checks.iter().map(|one| {
            vec![
                set_up.set_up.clone(),
                set_up.laser.clone(),
                in_full(one.at),
                one.by.clone(),
                one.benchmark.clone(),
                one.text.clone(),
                feet(Some(one.residual)),
                word(Some(one.check)),
            ]
        })
    });
    table(&columns, rows)
}

pub(super) fn edges(day: &KeptDay) -> Option<String> {
    let columns = [
        "entry",
        "at",
        "by",
        "machine",
        "line",
        "mark",
        "text",
        "inside_ft",
        "guard_ft",
        "standing",
    ];
    let rows = day.entries().iter().filter_map(|entry| {
        let Body::EdgeRead(edge) = &entry.body else {
            return None;
        };
        Some(vec![
            entry.seq.to_string(),
            in_full(entry.made_at),
            entry.by.person.clone(),
            edge.machine.clone(),
            edge.line.clone(),
            edge.mark.clone().unwrap_or_default(),
            edge.text.clone(),
            feet(Some(edge.shot.distance)),
            feet(Some(edge.shot.guard)),
            word(Some(edge.shot.standing)),
        ])
    });
    table(&columns, rows)
}

pub(super) fn as_built_points(review: &Review) -> String {
    points(review.built.iter().filter_map(|one| {
        let target = one.target.as_deref().unwrap_or_default();
        let note = format!("{target} {}", one.text.english);
        let elevation = Some(one.elevation);
        Some((
            one.mark.clone(),
            one.place?,
            elevation,
            note.trim().to_owned(),
        ))
    }))
}

pub(super) fn readings(day: &KeptDay) -> Option<String> {
    let columns = [
        "entry",
        "at",
        "by",
        "became",
        "mark",
        "machine",
        "set_up",
        "height_ft",
        "rod",
        "text",
        "elevation_ft",
        "target",
        "revision",
        "dig_to_ft",
        "difference_ft",
        "mean_ft",
        "guard_ft",
        "verdict",
    ];
    let rows = day.entries().iter().filter_map(|entry| {
        let (became, reading) = match &entry.body {
            Body::ReadingTaken(b) => ("taken", &b.reading),
            Body::ReadingAsked(b) => ("asked", &b.reading),
            Body::ReadingLate(b) => ("late", &b.reading),
            _ => return None,
        };
        let judged = reading.judged.as_ref();
        Some(vec![
            entry.seq.to_string(),
            in_full(entry.made_at),
            entry.by.person.clone(),
            became.to_owned(),
            reading.mark.clone(),
            reading.machine.clone().unwrap_or_default(),
            reading.set_up.clone(),
            feet(Some(reading.height)),
            reading.rod.clone(),
            reading.text.clone(),
            feet(Some(reading.elevation)),
            judged.map(|one| one.target.clone()).unwrap_or_default(),
            number(judged.map(|one| one.revision)),
            feet(judged.map(|one| one.dig_to)),
            feet(judged.map(|one| one.dev)),
            feet(judged.map(|one| one.mean)),
            feet(judged.map(|one| one.guard)),
            word(judged.map(|one| one.verdict)),
        ])
    });
    table(&columns, rows)
}
