//! The demo day's faces and buried lines: what the hub's log has beside what was worked out apart from it.

use serde_json::Value;

use super::played::{Played, key, list, played};

const FOOT: f64 = 3_048_000.0;

fn only<'a>(day: &'a Played, row: &Value, kind: &str) -> &'a Value {
    let key = key(row);
    let mut found = day.log.iter().filter(|entry| entry["key"] == key.as_str());
    let entry = found.find(|entry| entry["body"]["kind"] == kind);
    &entry.unwrap_or_else(|| panic!("row {key} has no {kind}"))["body"]
}

fn near(hub: &Value, oracle: &Value, counts: i64, what: &str) {
    let (hub, oracle) = (hub.as_i64().expect(what), oracle.as_i64().expect(what));
    assert!(
        (hub - oracle).abs() <= counts,
        "{what}: {hub}, not {oracle}"
    );
}

#[test]
fn the_north_face_comes_to_daylight_where_plane_geometry_has_it() {
    let day = played();
    let all = list(&day.oracles["cuts"]["daylight"]);
    assert_eq!(all.len(), 4, "inspected, typed anew, inspected, designed");
    for oracle in all {
        let found = only(day, oracle, "daylight_found");
        assert_eq!(found["zone"], "T-FACE");
        assert_eq!(found["missing"], 0);
        near(&found["highest"], &oracle["highest"], 2, "highest");
        for line in ["LOT", "NORTH-SETBACK"] {
            let hub = list(&found["lines"]).iter().find(|one| one["line"] == line);
            let hub = hub.unwrap_or_else(|| panic!("{line} is not looked at"));
            near(&hub["least"], &oracle[line]["least"], 4, line);
            let over = list(&hub["over"]);
            if oracle[line]["over"].is_null() {
                assert!(over.is_empty(), "{line}: {over:?}");
            } else {
                assert_eq!(over.len(), 1, "{line}: {over:?}");
                near(&over[0]["from"], &oracle[line]["over"][0], 4, "over from");
                near(&over[0]["to"], &oracle[line]["over"][1], 4, "over to");
            }
        }
        for (x, y) in oracle["at"].as_object().expect("places") {
            let x: f64 = x.parse().expect("a number");
            let hub = daylight_at(found, x);
            let y = y.as_f64().expect("a number");
            assert!((hub - y).abs() < 0.002, "at x = {x}: {hub}, not {y}");
        }
    }
}

/// Between the places of the hub's line, which is straight between them over an even hill.
fn daylight_at(found: &Value, x: f64) -> f64 {
    let feet = |one: &Value| one.as_f64().expect("a length") / FOOT;
    let places: Vec<(f64, f64)> = list(&found["places"])
        .iter()
        .map(|place| (feet(&place["at"]["x"]), feet(&place["at"]["y"])))
        .collect();
    let pair = places
        .windows(2)
        .find(|pair| pair[0].0 <= x && x <= pair[1].0 && pair[0].0 < pair[1].0)
        .expect("a stretch of the toe");
    let share = (x - pair[0].0) / (pair[1].0 - pair[0].0);
    pair[0].1 + share * (pair[1].1 - pair[0].1)
}

#[test]
fn a_crack_is_still_then_watched_then_left_and_the_slough_is_measured() {
    let day = played();
    for oracle in list(&day.oracles["cuts"]["pins"]) {
        let judged = &only(day, oracle, "pins_read")["judged"];
        assert_eq!(judged["state"], oracle["state"], "{oracle}");
        assert_eq!(judged["opened"], oracle["opened"], "{oracle}");
        let apart = judged["rate_ft_per_hour"].as_f64().expect("a rate")
            - oracle["rate"].as_f64().expect("a rate");
        assert!(apart.abs() < 1e-6, "{judged}");
    }
    let states: Vec<&str> = list(&day.oracles["cuts"]["pins"])
        .iter()
        .map(|one| one["state"].as_str().expect("a state"))
        .collect();
    assert_eq!(states, ["still", "watch", "leave"]);
    // Left by the pins at 14:00 and by the slough at 14:05, let go on by words at 14:46, and no call under it between.
    let alarms: Vec<i64> = day
        .of_kind("face_alarmed")
        .map(|entry| entry["at"].as_i64().expect("a moment"))
        .collect();
    assert_eq!(alarms.len(), 2);
    let released = day
        .of_kind("face_inspected")
        .find(|entry| entry["body"]["release"].is_string())
        .expect("the inspection that lets work go on");
    let (from, to) = (alarms[0], released["at"].as_i64().expect("a moment"));
    let north = ["N-0", "E-01"];
    let under = day.of_kind("call_sent").filter(|entry| {
        let at = entry["at"].as_i64().expect("a moment");
        let mark = entry["body"]["mark"].as_str().unwrap_or_default();
        from <= at && at < to && north.iter().any(|name| mark.starts_with(name))
    });
    assert_eq!(under.count(), 0);
    let volume = day.of_kind("slough_seen").next().expect("the slough");
    let apart = volume["body"]["cubic_yards"].as_f64().expect("a volume")
        - day.oracles["cuts"]["slough_cubic_yards"]
            .as_f64()
            .expect("a volume");
    assert!(apart.abs() < 1e-9);
}

#[test]
fn rules_of_depth_are_said_at_the_readings_that_come_near_them_and_before_a_deeper_drain_is_dug() {
    let day = played();
    let mut said = Vec::new();
    for entry in day.of_kind("call_sent") {
        for warning in entry["body"]["warnings"].as_array().into_iter().flatten() {
            said.push((
                entry["key"].as_str().expect("a key").to_owned(),
                warning["rule"].clone(),
                warning["state"].clone(),
                warning["left"].clone(),
            ));
        }
    }
    let wanted: Vec<_> = list(&day.oracles["cuts"]["warned"])
        .iter()
        .map(|one| {
            let told = |name: &str| one[name].clone();
            (key(one), told("rule"), told("state"), told("left"))
        })
        .collect();
    assert_eq!(said, wanted);
    for oracle in list(&day.oracles["cuts"]["owed"]) {
        let owed = list(&only(day, oracle, "depth_owed")["owed"]);
        let mut hub: Vec<Value> = owed
            .iter()
            .map(|one| serde_json::json!([one["mark"], one["rule"], one["depth"]]))
            .collect();
        hub.sort_by_key(ToString::to_string);
        assert_eq!(&hub, list(&oracle["owed"]));
    }
}

#[test]
fn the_drain_meets_the_gas_main_at_first_and_passes_under_it_after_the_revision() {
    let day = played();
    let oracles = list(&day.oracles["cuts"]["crossings"]);
    let bared = only(day, &oracles[0], "pothole_dug");
    let crossing = &list(&bared["crossings"])[0];
    assert_eq!(crossing["clear"], oracles[0]["clear"]);
    near(
        &crossing["by_hand"]["from"],
        &day.oracles["cuts"]["by_hand"][0],
        2,
        "by hand from",
    );
    near(
        &crossing["by_hand"]["to"],
        &day.oracles["cuts"]["by_hand"][1],
        2,
        "by hand to",
    );
    // 298.45 − 298.55, then 298.45 − 297.35 (field book).
    assert_eq!(oracles[0]["clear"], -304_800);
    assert_eq!(oracles[1]["clear"], 3_352_800);
}

#[test]
fn nobody_stands_in_the_toe_strip_from_the_alarm_until_the_face_is_let_go_on() {
    let day = played();
    let at = |entry: &Value| entry["at"].as_i64().expect("a moment");
    let alarm = at(day.of_kind("face_alarmed").next().expect("the alarm"));
    let released = day
        .of_kind("face_inspected")
        .find(|entry| entry["body"]["release"].is_string())
        .expect("the inspection that lets work go on");
    // As high as the face is at most, so wide is the strip before its toe, which runs along y = 98 from x = 20 to 88.
    let first = &list(&day.oracles["cuts"]["daylight"])[0];
    let wide = first["highest"].as_f64().expect("a height") / FOOT;
    let before_the_toe = |place: &Value| {
        let feet = |key: &str| place[key].as_f64().expect("a place") / FOOT;
        let beside = (20.0 - feet("x")).max(feet("x") - 88.0).max(0.0);
        beside.hypot(98.0 - feet("y"))
    };
    let mut stands = std::collections::BTreeMap::new();
    let mut tracked_back = false;
    for entry in day
        .of_kind("machine_placed")
        .filter(|entry| at(entry) <= at(released))
    {
        let body = &entry["body"];
        stands.insert(
            body["machine"].as_str().expect("a machine"),
            before_the_toe(&body["at"]),
        );
        if at(entry) < alarm {
            continue;
        }
        tracked_back |= body["machine"] == "EX-1";
        for (machine, away) in &stands {
            assert!(
                *away > wide,
                "{machine} stands {away} ft from the toe, the strip is {wide}"
            );
        }
    }
    assert!(tracked_back, "the operator says where EX-1 tracked back to");
    let people = |text: &str| {
        let shown = day.shown_at(text);
        let machines = list(&shown["ground"]["machines"]);
        machines
            .iter()
            .map(|one| list(&one["way_in"]["people"]).len())
            .sum::<usize>()
    };
    assert_eq!(people("14:02:00") + people("14:30:00"), 0);
    let shown = day.shown_at("14:30:00");
    let left = &shown["operators"]["EX-2"]["faces_left"];
    assert_eq!(left[0]["zone"], "T-FACE", "{left}");
}

#[test]
fn beside_the_gas_main_the_cab_of_the_drain_says_hand_dig_with_its_stations() {
    let day = played();
    let shown = day.shown_at("15:26:00");
    let bands = list(&shown["operators"]["EX-2"]["hand_dig"]);
    let [band] = &bands[..] else {
        panic!("{bands:?}")
    };
    let [from, to] = ["from", "to"].map(|end| &band["by_hand"][end]);
    near(from, &day.oracles["cuts"]["by_hand"][0], 2, "from");
    near(to, &day.oracles["cuts"]["by_hand"][1], 2, "to");
    // Sta 78 to 82, 24 in. to each side of a 2 in. pipe, as the field book has it to the foot.
    let feet = |length: &Value| (length.as_f64().expect("a length") / FOOT).round();
    assert_eq!((feet(from), feet(to)), (78.0, 82.0));
    assert_eq!(
        (&band["zone"], &band["utility"]),
        (&Value::from("T-DRAIN"), &Value::from("GAS"))
    );
    assert_eq!(
        list(&shown["operators"]["EX-1"]["hand_dig"]).len(),
        0,
        "it digs no drain"
    );
}
