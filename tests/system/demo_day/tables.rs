//! The demo day as tables for a spreadsheet: every row of the story that counts is a row, and the sums are those of the account.

use std::collections::BTreeMap;
use std::fs;

use serde_json::{Value, json};

use super::played::{Played, list, played};
use crate::harness::{folder, rodcall};

type Row = BTreeMap<String, String>;

/// The tables of the day by the names of their files, each row by its columns.
fn tables(day: &Played) -> BTreeMap<String, Vec<Row>> {
    let data = folder();
    let log = data.path().join("log");
    fs::create_dir_all(&log).expect("a folder");
    fs::write(log.join(&day.file), &day.bytes).expect("the day's file");
    let out = data.path().join("tables");
    let said = rodcall(&[
        "tables".as_ref(),
        "--data".as_ref(),
        data.path().as_os_str(),
        out.as_os_str(),
    ]);
    assert!(said.status.success(), "{said:?}");
    let files = fs::read_dir(&out).expect("a folder");
    let files = files.map(|file| file.expect("a file").path());
    let read = files.filter(|path| path.extension().is_some_and(|kind| kind == "csv"));
    read.map(|path| {
        let mut table = csv::Reader::from_path(&path).expect("a table");
        let rows = table.deserialize().collect::<Result<_, _>>();
        let name = path.file_name().expect("a name").to_string_lossy();
        (name.into_owned(), rows.expect("rows"))
    })
    .collect()
}

fn column<'r>(rows: &'r [Row], name: &str) -> Vec<&'r str> {
    rows.iter().map(|row| row[name].as_str()).collect()
}

fn figures(rows: &[Row], name: &str) -> f64 {
    let figures = column(rows, name).into_iter();
    figures.filter_map(|cell| cell.parse::<f64>().ok()).sum()
}

#[test]
fn loads_tests_patches_rock_and_edges_are_the_storys() {
    let day = played();
    let tables = tables(day);
    let said = |what: &'static str| day.rows.iter().filter(move |row| row["what"] == what);
    let loads = &tables["loads.csv"];
    assert_eq!(loads.len(), said("count_load").count());
    let tons: f64 = said("count_load")
        .filter_map(|row| row["command"]["tons"].as_f64())
        .sum();
    assert!((figures(loads, "tons") - tons).abs() < 1e-9);
    let standing: Vec<Value> = tables["tests.csv"]
        .iter()
        .map(|row| json!({ "mark": row["mark"], "standing": row["standing"] }))
        .collect();
    let oracle = day.oracles["review"]["tests"].as_object().expect("tests");
    for (mark, how) in oracle {
        let wanted = json!({ "mark": mark, "standing": how });
        assert!(standing.contains(&wanted), "{wanted} in {standing:?}");
    }
    assert_eq!(standing.len(), said("test_soil").count());
    assert_eq!(
        json!(column(&tables["patches.csv"], "patch")),
        day.oracles["review"]["open"]["patches"]
    );
    assert_eq!(tables["rock.csv"].len(), said("point_rock").count());
    assert!(
        tables["rock.csv"]
            .iter()
            .all(|row| row["top_ft"].starts_with("303.85"))
    );
    let edges = list(&day.oracles["edges"]["read"]);
    assert_eq!(
        json!(column(&tables["edges.csv"], "mark")),
        edges
            .iter()
            .map(|edge| edge["mark"].clone())
            .collect::<Value>()
    );
}

#[test]
fn the_costs_add_up_to_the_day() {
    let tables = tables(played());
    let (sums, lines): (Vec<Row>, Vec<Row>) = tables["costs.csv"]
        .iter()
        .cloned()
        .partition(|row| ["day", "of_it_waiting", "job"].contains(&row["what"].as_str()));
    let sum = |what: &str| -> f64 {
        let row = sums.iter().find(|row| row["what"] == what);
        row.and_then(|row| row["cost"].parse().ok()).expect(what)
    };
    // Each line is rounded to the cent.
    let cents = 0.005 * lines.len() as f64;
    assert!((figures(&lines, "cost") - sum("day")).abs() <= cents);
    let waiting: Vec<Row> = lines
        .iter()
        .filter(|row| row["what"] == "waiting")
        .cloned()
        .collect();
    assert!((figures(&waiting, "cost") - sum("of_it_waiting")).abs() <= cents);
    assert!(
        waiting.iter().any(|row| row["of"] == "laser_hold"),
        "{waiting:?}"
    );
}
