//! A demo that is stopped and started again on the same folder goes on, and doubles nothing.

use serde_json::{Value, json};

use super::played::{STEPPED, key, list, read, wait_until_over};
use crate::harness::{self, Hub};

#[test]
fn a_second_start_on_the_same_folder_doubles_nothing() {
    let data = harness::folder();
    let mut hub = Hub::start(STEPPED, data.path());
    let laptop = hub.laptop();
    let first = wait_until_over(&mut hub, &laptop);
    assert!(hub.stop().success(), "the hub stops cleanly");
    let mut hub = Hub::start(STEPPED, data.path());
    let laptop = hub.laptop();
    let second = wait_until_over(&mut hub, &laptop);
    assert_eq!(second[..first.len()], first[..], "the log only grows");
    let joined = |entry: &Value| entry["body"]["kind"] == "joined";
    assert!(
        second[first.len()..].iter().any(joined),
        "the screens come back"
    );
    assert_eq!(rows_of(&second[first.len()..]), Vec::<&str>::new());
}

#[test]
fn a_hub_that_stops_in_mid_story_goes_on_behind_its_last_row() {
    let data = harness::folder();
    let mut hub = Hub::start(STEPPED, data.path());
    let laptop = hub.laptop();
    // Some reading before noon; the hub may stop at any row behind it.
    let first = hub.wait("the middle of the story", |_| {
        let log = laptop.log();
        rows_of(&log).contains(&"demo-070").then_some(log)
    });
    assert!(hub.stop().success(), "the hub stops cleanly");
    let mut hub = Hub::start(STEPPED, data.path());
    let laptop = hub.laptop();
    let second = wait_until_over(&mut hub, &laptop);
    assert_eq!(second[..first.len()], first[..], "the log only grows");
    let oracles: Value = serde_json::from_str(&read("oracles.json")).expect("oracles.json");
    let rows = rows_of(&second);
    for reading in list(&oracles["readings"]) {
        let key = key(reading);
        let kinds = ["reading_taken", "reading_asked", "reading_late"].map(|kind| json!(kind));
        let taken = second
            .iter()
            .filter(|entry| entry["key"] == key.as_str())
            .filter(|entry| kinds.contains(&entry["body"]["kind"]));
        assert_eq!(taken.count(), 1, "{key} of {} rows", rows.len());
    }
}

/// The keys of the story's rows in a log.
fn rows_of(log: &[Value]) -> Vec<&str> {
    let keys = log.iter().filter_map(|entry| entry["key"].as_str());
    keys.filter(|key| key.starts_with("demo-")).collect()
}
