//! Who was in a keep-out, from when to when, and who let the machine go: the log and the screens beside what was worked out apart.

use std::collections::BTreeMap;

use serde_json::{Value, json};

use super::played::{Played, list, played};

/// The moments at which entries of a kind that match were taken.
fn taken(day: &Played, kind: &'static str, matches: impl Fn(&Value) -> bool) -> Vec<i64> {
    day.of_kind(kind)
        .filter(|entry| matches(&entry["body"]))
        .map(|entry| entry["at"].as_i64().expect("a moment"))
        .collect()
}

#[test]
fn everybody_asks_waits_for_bucket_down_goes_in_and_comes_out_before_the_release() {
    let day = played();
    let all = list(&day.oracles["keep_out"]["entries"]);
    assert_eq!(day.of_kind("person_in").count(), all.len());
    for want in all {
        let visit = format!("demo-visit-{:03}", want["row"].as_u64().expect("a row"));
        let own = |body: &Value| body["visit"] == visit.as_str();
        let at = |what: &str| vec![day.moment(&want[what])];
        assert_eq!(taken(day, "entry_asked", own), at("asked"), "{visit}");
        let repeats = taken(day, "ask_repeated", own).len();
        assert_eq!(json!(repeats), want["repeats"], "{visit}");
        let answers = |body: &Value| list(&body["answers"]).contains(&json!(visit));
        assert_eq!(
            taken(day, "bucket_is_down", answers),
            at("stopped"),
            "{visit}"
        );
        assert_eq!(taken(day, "person_in", own), at("in"), "{visit}");
        let comes_out = |body: &Value| own(body) && body["was_in"] == true;
        assert_eq!(taken(day, "person_out", comes_out), at("out"), "{visit}");
        let out = day.moment(&want["out"]);
        let machine = |body: &Value| body["machine"] == want["machine"];
        let mut released = taken(day, "released", machine);
        released.retain(|at| *at >= out);
        assert_eq!(released[..1], at("released"), "{visit}");
        let witness = day
            .of_kind("person_out")
            .find(|entry| comes_out(&entry["body"]))
            .map(|entry| entry["body"]["witness"].clone());
        assert_eq!(witness, Some(want["witness"].clone()), "{visit}");
    }
}

#[test]
fn a_release_with_somebody_in_is_refused_by_name() {
    let day = played();
    let refused: Vec<Value> = day
        .of_kind("release_refused")
        .map(|entry| json!([entry["at"], entry["body"]["people"]]))
        .collect();
    let wanted: Vec<Value> = list(&day.oracles["keep_out"]["refused_releases"])
        .iter()
        .map(|want| json!([day.moment(&want["at"]), want["people"]]))
        .collect();
    assert_eq!(refused, wanted);
}

#[test]
fn the_supervisors_page_names_who_is_in_at_each_machine_and_whose_phone_is_silent() {
    let day = played();
    let moments = day.oracles["keep_out"]["inside"].as_object();
    for (text, want) in moments.expect("moments") {
        let shown = day.shown_at(text);
        let mut inside: BTreeMap<&str, Vec<&Value>> = BTreeMap::new();
        for card in list(&shown["supervisor"]["inside"]) {
            let people = list(&card["people"]).iter().map(|one| &one["person"]);
            let machine = card["machine"].as_str().expect("a machine");
            inside.insert(machine, people.collect());
        }
        for (machine, people) in want.as_object().expect("machines") {
            let found = inside.remove(machine.as_str()).unwrap_or_default();
            assert_eq!(json!(found), *people, "{text} {machine}");
        }
        assert!(inside.is_empty(), "{text}: {inside:?}");
    }
    let shown = day.shown_at("10:07:00");
    let person = &shown["supervisor"]["inside"][0]["people"][0];
    assert_eq!(person["person"], "RT");
    assert_eq!(person["lost"], day.moment(&json!("10:05:00")), "{person}");
}
