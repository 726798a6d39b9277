//! What a golden log comes to: facts of the state that a day folds to, the rows of its tables, and how two such outcomes differ.

use std::collections::BTreeMap;
use std::path::Path;

use rodcall::days::KeptDay;
use serde_json::{Value, json};

/// Columns with words that a program makes anew when it is asked: they may be said better one day, and are not compared.
const SAID_ANEW: [(&str, &[&str]); 4] = [
    ("as-built.csv", &["standing", "standing_es"]),
    ("exceptions.csv", &["english", "spanish"]),
    ("open.csv", &["english", "spanish"]),
    (
        "tests.csv",
        &["stated", "stated_es", "standing", "void", "void_es"],
    ),
];
/// Tables that a later version may find more for.
const MAY_GROW: [&str; 2] = ["exceptions.csv", "open.csv"];

/// What differs between two values, each with its place.
pub(super) fn differences(at: &str, was: &Value, is: &Value, found: &mut Vec<String>) {
    match (was, is) {
        (Value::Object(one), Value::Object(other)) => {
            for (name, was) in one {
                let is = other.get(name).unwrap_or(&Value::Null);
                differences(&format!("{at}.{name}"), was, is, found);
            }
        }
        (Value::Array(one), Value::Array(other)) if one.len() == other.len() => {
            for (number, (was, is)) in one.iter().zip(other).enumerate() {
                differences(&format!("{at}[{number}]"), was, is, found);
            }
        }
        _ if was == is => {}
        _ => found.push(format!("{at}: it was {was}, it is {is}")),
    }
}

/// What people ask of a day, from the state that it folds to. Members may be added; what is kept of them must not change.
pub(super) fn facts(day: &KeptDay) -> Value {
    let state = day.newest();
    let set_ups = state.set_ups.iter().map(|set_up| {
        let good = json!(set_up.good_on);
        let value = json!({ "laser": set_up.laser, "closed": set_up.closed, "good_on": good });
        (set_up.id.clone(), value)
    });
    let cabs = state.cabs.iter().map(|(machine, cab)| {
        let placed = cab.place.as_ref().map(|place| json!(place)["at"].clone());
        let value = json!({
            "stopped": cab.stop.is_some(), "live": cab.live, "last": cab.last, "moved": cab.moved, "placed": placed,
        });
        (machine.clone(), value)
    });
    let marks = state.marks.iter().map(|(mark, now)| {
        let value =
            json!({ "last": now.last, "void": now.void.is_some(), "readings": now.readings.len() });
        (mark.clone(), value)
    });
    let mut kinds = BTreeMap::<String, u64>::new();
    for entry in day.entries() {
        *kinds.entry(entry.body.kind().to_owned()).or_default() += 1;
    }
    json!({
        "last": day.head().seq,
        "head": day.head().hash,
        "entries": kinds,
        "set_ups": set_ups.collect::<BTreeMap<_, _>>(),
        "cabs": cabs.collect::<BTreeMap<_, _>>(),
        "marks": marks.collect::<BTreeMap<_, _>>(),
        "aims": state.aims,
        "bumps": state.bumps,
        "questions": json!(state.slips),
        "to_shoot_again": state.suspects.iter().map(|one| json!(one.open)).collect::<Vec<_>>(),
        "phones": state.devices.values().map(|phone| json!([phone.person, phone.roles, phone.removed])).collect::<Vec<_>>(),
    })
}

/// The rows of a table without the columns that are said anew, each with its columns' names.
fn rows(table: &str, name: &str, columns: Option<&[String]>) -> (Vec<String>, Vec<Vec<String>>) {
    let anew = SAID_ANEW
        .iter()
        .find(|(of, _)| *of == name)
        .map_or(&[][..], |(_, columns)| *columns);
    let mut reader = csv::Reader::from_reader(table.as_bytes());
    let heads: Vec<String> = reader
        .headers()
        .expect("heads")
        .iter()
        .map(str::to_owned)
        .collect();
    let wanted: Vec<String> = match columns {
        Some(columns) => columns.to_vec(),
        None => heads
            .iter()
            .filter(|head| !anew.contains(&head.as_str()))
            .cloned()
            .collect(),
    };
    let places: Vec<Option<usize>> = wanted
        .iter()
        .map(|name| heads.iter().position(|head| head == name))
        .collect();
    let rows = reader.records().map(|row| {
        let row = row.expect("a row");
        let cell = |at: &Option<usize>| at.and_then(|at| row.get(at)).unwrap_or("no such column");
        places
            .iter()
            .map(|at| cell(at).to_owned())
            .collect::<Vec<String>>()
    });
    let rows = rows.collect();
    (wanted, rows)
}

pub(super) fn same_table(day: &str, name: &str, was: &str, is: &str, found: &mut Vec<String>) {
    let (columns, was) = rows(was, name, None);
    let (_, is) = rows(is, name, Some(&columns));
    let grows = MAY_GROW.contains(&name);
    if was.len() != is.len() && !grows {
        found.push(format!(
            "{day}, {name}: {} rows, there were {}",
            is.len(),
            was.len()
        ));
    }
    for (number, row) in was.iter().enumerate() {
        let now = if grows {
            is.iter().find(|now| *now == row)
        } else {
            is.get(number)
        };
        let Some(now) = now else {
            found.push(format!("{day}, {name}: the row {row:?} is gone"));
            continue;
        };
        for (column, (was, is)) in columns
            .iter()
            .zip(row.iter().zip(now))
            .filter(|(_, (a, b))| a != b)
        {
            found.push(format!(
                "{day}, {name}, row {number}, {column}: it was {was:?}, it is {is:?}"
            ));
        }
    }
}

pub(super) fn none(log: &Path, found: &[String]) {
    assert!(
        found.is_empty(),
        "{} comes to something else than when it was written. A log is never made anew for this: mend what reads it.\n{}",
        log.display(),
        found.join("\n")
    );
}
