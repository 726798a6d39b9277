//! Tables of what was hauled, placed, tested and paid.

use day::said::void::VoidCause;
use serde_json::Value;
use show::review::Review;

use super::{feet, in_each, number, table, word};
use crate::when::in_full;

pub(super) fn hours(review: &Review) -> Option<String> {
    let columns = ["machine", "doing", "from", "to"];
    let rows = review.account.hours.iter().flat_map(|machine| {
        machine.spans.iter().map(|span| {
            vec![
                machine.machine.clone(),
                word(Some(span.doing)),
                in_full(span.from),
                in_full(span.to),
            ]
        })
    });
    table(&columns, rows)
}

/// Money is the site's own; a machine without a rate has no line.
pub(super) fn costs(review: &Review) -> Option<String> {
    let columns = ["what", "of", "cost"];
    let cost = &review.account.cost;
    let lines = cost.lines.iter().map(|line| {
        // Its kind, and the one figure or name beside it.
        let what = serde_json::to_value(&line.what).unwrap_or_default();
        let of = what
            .as_object()
            .and_then(|fields| fields.iter().find(|(field, _)| *field != "kind"))
            .map(|(_, of)| match of {
                Value::Number(figure) => format!("{:.2}", figure.as_f64().unwrap_or_default()),
                other => word(Some(other)),
            });
        vec![
            word(what.get("kind")),
            of.unwrap_or_default(),
            money(line.cost),
        ]
    });
    let sums = [
        ("day", cost.day),
        ("of_it_waiting", cost.waiting),
        ("job", cost.job),
    ];
    let sums = sums.map(|(what, sum)| vec![what.to_owned(), String::new(), money(sum)]);
    table(&columns, lines.chain(sums))
}

pub(super) fn loads(review: &Review) -> Option<String> {
    let columns = [
        "entry", "at", "by", "way", "material", "trucks", "loose_cy", "tons", "ticket",
    ];
    let rows = review.account.loads.iter().rev().map(|one| {
        vec![
            one.load.to_string(),
            in_full(one.at),
            one.by.clone(),
            word(Some(one.way)),
            one.material.clone(),
            one.trucks.to_string(),
            number(one.loose_cy),
            number(one.tons),
            one.ticket.clone().unwrap_or_default(),
        ]
    });
    table(&columns, rows)
}

pub(super) fn patches(review: &Review) -> Option<String> {
    let columns = [
        "patch",
        "mark",
        "length_ft",
        "width_ft",
        "depth_ft",
        "cy",
        "step",
        "lifts",
        "lifts_needed",
        "since",
    ];
    let rows = review.account.patches.iter().map(|one| {
        vec![
            one.patch.clone(),
            one.mark.clone(),
            feet(Some(one.length)),
            feet(Some(one.width)),
            feet(Some(one.depth)),
            format!("{:.4}", one.cy),
            word(Some(one.step)),
            one.lifts.to_string(),
            one.lifts_needed.to_string(),
            in_full(one.since),
        ]
    });
    table(&columns, rows)
}

pub(super) fn tests(review: &Review) -> Option<String> {
    let columns = [
        "entry",
        "at",
        "mark",
        "x_ft",
        "y_ft",
        "tester",
        "stated*",
        "elevation_ft",
        "standing",
        "void*",
    ];
    let rows = review.account.tests.iter().map(|one| {
        let void = one.void.as_ref().map(VoidCause::text);
        let mut cells = vec![
            one.test.to_string(),
            in_full(one.made_at),
            one.mark.clone(),
            feet(one.at.map(|at| at.x)),
            feet(one.at.map(|at| at.y)),
            one.tester.clone(),
        ];
        cells.extend(in_each(&one.text));
        cells.extend([feet(Some(one.elevation)), word(Some(one.standing))]);
        cells.extend(in_each(&void.unwrap_or_default()));
        cells
    });
    table(&columns, rows)
}

pub(super) fn rock(review: &Review) -> Option<String> {
    let columns = ["point", "mark", "x_ft", "y_ft", "top_ft", "what"];
    let rows = review.account.rock.points.iter().map(|one| {
        vec![
            one.point.clone(),
            one.mark.clone(),
            feet(Some(one.at.x)),
            feet(Some(one.at.y)),
            feet(Some(one.top)),
            one.what.clone(),
        ]
    });
    table(&columns, rows)
}

fn money(sum: f64) -> String {
    format!("{sum:.2}")
}
