//! Machines near people and near each other: what the demo day's stops, places and agreements come to.

use serde_json::{Value, json};

use super::played::{key, list, played};

#[test]
fn each_all_stop_opens_a_near_miss_with_what_the_hub_knew() {
    let day = played();
    let opened: Vec<&Value> = day.of_kind("near_miss_opened").collect();
    let wanted = list(&day.oracles["near_misses"]);
    assert_eq!(opened.len(), wanted.len());
    for (number, (entry, want)) in (1..).zip(opened.iter().zip(wanted)) {
        let body = &entry["body"];
        assert_eq!(entry["key"], key(want).as_str());
        assert_eq!(body["number"], number);
        assert_eq!(entry["by"]["person"], want["by"]);
        assert_eq!(entry["at"], day.moment(&want["at"]));
        assert_eq!(body["faces_left"], want["faces_left"]);
        for then in list(&body["machines"]) {
            let machine = then["machine"].as_str().expect("a machine");
            let want = &want["machines"][machine];
            let at = &then["place"]["at"];
            assert_eq!(
                json!([at["x"], at["y"]]),
                want["at"],
                "NM-{number} {machine}"
            );
            assert_eq!(
                then["call"]["english"], want["call"]["english"],
                "{machine}"
            );
            let people = list(&then["people"]).iter();
            let people: Vec<&Value> = people.map(|one| &one["person"]).collect();
            assert_eq!(json!(people), want["people"], "NM-{number} {machine}");
        }
    }
    // What a supervisor says about it leaves it on the open list until it is closed.
    let told: Vec<&Value> = day.of_kind("near_miss_told").collect();
    assert!(!told.is_empty() && told.iter().all(|entry| entry["body"]["closed"] == false));
}

#[test]
fn one_machine_is_lifted_alone_and_the_other_stays_stopped() {
    let day = played();
    let lifted: Vec<Value> = day
        .of_kind("stop_lifted")
        .map(|entry| entry["body"]["machines"].clone())
        .collect();
    assert_eq!(
        lifted,
        [json!(["EX-1", "EX-2"]), json!(["EX-2"]), json!(["EX-1"])]
    );
}

#[test]
fn the_day_is_ready_with_seven_values_before_anybody_digs() {
    let day = played();
    let ready: Vec<&Value> = day.of_kind("day_ready").collect();
    let [entry] = ready[..] else {
        panic!("{ready:?}");
    };
    let want = &day.oracles["ready"];
    assert_eq!(entry["key"], key(want).as_str());
    assert_eq!(entry["at"], day.moment(&want["at"]));
    let mut said: Vec<&str> = list(&entry["body"]["said"])
        .iter()
        .filter_map(Value::as_str)
        .collect();
    said.sort_unstable();
    assert_eq!(json!(said), want["said"]);
    assert_eq!(said.len(), 7);
    assert_eq!(entry["body"]["overrides"], json!([]));
    let first = day.of_kind("reading_taken").next().expect("a reading");
    assert!(entry["seq"].as_u64() < first["seq"].as_u64());
}

#[test]
fn a_low_battery_and_a_spotter_are_in_the_log() {
    let day = played();
    let said: Vec<Value> = day
        .of_kind("battery_said")
        .map(|entry| json!([entry["body"]["machine"], entry["at"], entry["body"]["low"]]))
        .collect();
    let wanted: Vec<Value> = list(&day.oracles["batteries"])
        .iter()
        .map(|want| json!([want["machine"], day.moment(&want["at"]), true]))
        .collect();
    assert_eq!(said, wanted);
    let spotters = ["spotter_set", "spotter_gone"].map(|kind| {
        let each = day.of_kind(kind);
        let each = each.map(|entry| {
            let body = &entry["body"];
            json!([body["machine"], body["person"], entry["at"]])
        });
        each.collect::<Vec<Value>>()
    });
    let wanted = ["from", "to"].map(|when| {
        let each = list(&day.oracles["spotters"]).iter();
        let each =
            each.map(|want| json!([want["machine"], want["person"], day.moment(&want[when])]));
        each.collect::<Vec<Value>>()
    });
    assert_eq!(spotters, wanted);
}

#[test]
fn what_is_near_a_machine_is_said_whenever_it_is_placed() {
    let day = played();
    let wanted = list(&day.oracles["near"]);
    assert!(wanted.iter().any(|one| !one["overhead"].is_null()));
    for want in wanted {
        let key = key(want);
        let mut found = day.of_row(&key, "near_found");
        let near = found.next().map(|entry| &entry["body"]["near"]);
        let near = near.map_or(&[][..], |near| list(near));
        let of = |kind: &str| near.iter().find(|one| one["kind"] == kind);
        let meets = of("can_meet");
        match want["can_meet"].as_f64() {
            None => assert!(meets.is_none(), "{key}: {meets:?}"),
            Some(apart) => {
                let found = &meets.unwrap_or_else(|| panic!("{key}: can meet"))["apart"];
                let feet = found.as_f64().expect("a length") / 3_048_000.0;
                assert!((feet - apart).abs() < 1e-6, "{key}: {feet}, not {apart}");
            }
        }
        let away = of("overhead").map_or(&Value::Null, |one| &one["away"]);
        assert_eq!(away, &want["overhead"], "{key}");
    }
}

#[test]
fn an_agreement_of_two_operators_is_void_when_either_machine_moves() {
    let day = played();
    for want in list(&day.oracles["slews"]) {
        let key = key(want);
        let voided = day.of_row(&key, "slew_voided").count();
        let Some(sides) = want["sides"].as_object() else {
            assert_eq!(voided == 1, want["voided"] == true, "{key}");
            continue;
        };
        let proposed = day.of_row(&key, "slew_proposed").next();
        let body = &proposed.unwrap_or_else(|| panic!("{key}"))["body"];
        for side in list(&body["sides"]) {
            let machine = side["machine"].as_str().expect("a machine");
            assert_eq!(side["keeps_out_of"], sides[machine]);
        }
        let agreed: Vec<&str> = day
            .of_kind("slew_agreed")
            .filter(|entry| {
                let own = entry["key"].as_str();
                own.is_some_and(|own| own.starts_with(&format!("{key}-part")))
            })
            .filter_map(|entry| entry["body"]["machine"].as_str())
            .collect();
        assert_eq!(agreed, ["EX-1", "EX-2"], "{key}");
    }
}
