//! The demo day as the hub's log has it, and as its oracles want it: played once for all tests.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

use day::entry::Entry;
use day::state::State;
use serde_json::{Value, json};
use show::review::moment::moment;

use crate::harness::yard::day_file;
use crate::harness::{self, Hub};

pub(super) const SECOND: i64 = 1_000;
/// The demo with a clock that its crew moves from row to row.
pub(super) const STEPPED: &[&str] = &["demo", "--speed", "step"];

/// The day as the hub's log has it, and as the oracles want it.
pub(super) struct Played {
    pub(super) log: Vec<Value>,
    pub(super) oracles: Value,
    pub(super) rows: Vec<Value>,
    /// The one file of the log, byte for byte.
    pub(super) bytes: Vec<u8>,
    /// Its name.
    pub(super) file: PathBuf,
    /// Midnight before the day on the hub's clock.
    midnight: i64,
}

pub(super) fn fixtures() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../fixtures/demo-day")
}

pub(super) fn read(name: &str) -> String {
    std::fs::read_to_string(fixtures().join(name)).expect(name)
}

pub(super) fn story() -> Vec<Value> {
    let lines = read("rows.jsonl");
    let rows = lines.lines().map(serde_json::from_str);
    rows.collect::<Result<_, _>>().expect("rows.jsonl")
}

pub(super) fn key(row: &Value) -> String {
    format!("demo-{:03}", row["row"].as_u64().expect("a row number"))
}

pub(super) fn wait_until_over(hub: &mut Hub, laptop: &harness::Laptop) -> Vec<Value> {
    hub.wait("the end of the demo's story", |hub| {
        hub.said().contains("story is over").then(|| laptop.log())
    })
}

/// Plays the day once for all tests of this file.
pub(super) fn played() -> &'static Played {
    static PLAYED: OnceLock<Played> = OnceLock::new();
    PLAYED.get_or_init(|| {
        let data = harness::folder();
        let mut hub = Hub::start(STEPPED, data.path());
        let laptop = hub.laptop();
        let log = wait_until_over(&mut hub, &laptop);
        let opened = &log[0];
        assert_eq!(opened["body"]["kind"], "day_opened");
        assert_eq!(opened["body"]["day"], "2030-05-14");
        // The demo's clock starts at 06:40 with its day.
        let midnight = opened["at"].as_i64().expect("a moment") - (6 * 60 + 40) * 60 * SECOND;
        assert!(hub.stop().success(), "the hub stops cleanly");
        let file = day_file(data.path());
        Played {
            log,
            oracles: serde_json::from_str(&read("oracles.json")).expect("oracles.json"),
            rows: story(),
            bytes: std::fs::read(&file).expect("the day's file"),
            file: file.file_name().map(PathBuf::from).expect("a name"),
            midnight,
        }
    })
}

impl Played {
    pub(super) fn of_row<'a>(
        &'a self,
        key: &'a str,
        kind: &'a str,
    ) -> impl Iterator<Item = &'a Value> {
        self.log
            .iter()
            .filter(move |entry| entry["key"] == key && entry["body"]["kind"] == kind)
    }

    pub(super) fn of_kind(&self, kind: &'static str) -> impl Iterator<Item = &Value> {
        self.log
            .iter()
            .filter(move |entry| entry["body"]["kind"] == kind)
    }

    /// A time of day of the oracles on the hub's clock.
    pub(super) fn moment(&self, text: &Value) -> i64 {
        let text = text.as_str().expect("a time of day");
        let (clock, ms) = text.split_once('.').unwrap_or((text, "0"));
        let seconds = clock
            .split(':')
            .map(|part| part.parse::<i64>().expect("a time of day"))
            .fold(0, |sum, part| sum * 60 + part);
        self.midnight + seconds * SECOND + ms.parse::<i64>().expect("milliseconds")
    }

    /// What every screen showed at a time of day.
    pub(super) fn shown_at(&self, text: &str) -> Value {
        let until = self.moment(&Value::from(text));
        let lines = self.bytes.split_inclusive(|byte| *byte == b'\n');
        let entries = lines.map(|line| serde_json::from_slice(line).expect("an entry"));
        let (mut state, mut last) = (State::default(), None);
        for entry in entries.take_while(|entry: &Entry| entry.at.0 <= until) {
            day::apply(&mut state, &entry);
            last = Some(entry);
        }
        json!(moment(&state, &last.expect("a day that has begun")))
    }

    /// The calls of the day in order: the entry that sent it, and the one that ended it.
    pub(super) fn calls(&self) -> Vec<(&Value, Option<&Value>)> {
        let ends: BTreeMap<u64, &Value> = self
            .of_kind("call_ended")
            .map(|entry| (entry["body"]["call"].as_u64().expect("a call"), entry))
            .collect();
        self.of_kind("call_sent")
            .map(|sent| (sent, ends.get(&sent["seq"].as_u64().expect("seq")).copied()))
            .collect()
    }
}

pub(super) fn list(value: &Value) -> &Vec<Value> {
    value.as_array().expect("a list")
}
