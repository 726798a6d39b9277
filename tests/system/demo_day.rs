//! The demo day, played by the real binary through its own interface, against answers that were worked out apart from it.
//!
//! `fixtures/demo-day/oracles.json` is made by a program of its own from set-ups, rods, targets and the true ground.
//! Source of all figures: invented, demo; the rules behind them are common practice.

use std::collections::BTreeMap;
use std::process::Command;

use serde_json::{Value, json};

mod cuts;
mod keep_out;
mod laser;
mod machines;
mod marks;
mod mid_handshake;
mod papers;
mod played;
mod restart;
mod review;
mod tables;

use played::{SECOND, fixtures, key, list, played};

/// What differs, all of it at once: a day is long to play.
fn agree(what: &str, differences: &[String]) {
    assert!(
        differences.is_empty(),
        "{what}: {} differ\n{}",
        differences.len(),
        differences.join("\n")
    );
}

#[test]
fn the_fixture_is_what_its_story_gives() {
    let made = Command::new("python3")
        .args(["-B", "make.py", "--check"])
        .current_dir(fixtures())
        .output()
        .expect("python3 (3.11 or newer) is needed to check the demo day: install it");
    assert!(
        made.status.success(),
        "{}{}",
        String::from_utf8_lossy(&made.stdout),
        String::from_utf8_lossy(&made.stderr)
    );
}

#[test]
fn every_reading_has_the_elevation_difference_and_verdict_that_were_worked_out() {
    let day = played();
    let mut differ = Vec::new();
    for want in list(&day.oracles["readings"]) {
        let key = key(want);
        let (kind, spot) = match want["kind"].as_str() {
            Some("asked") => ("reading_asked", Value::Null),
            Some("late") => ("reading_late", Value::Null),
            Some("spot") => ("reading_taken", json!("no_target")),
            _ => ("reading_taken", Value::Null),
        };
        let found: Vec<&Value> = day.of_row(&key, kind).collect();
        let [entry] = found[..] else {
            differ.push(format!("{key}: {} entries of {kind}", found.len()));
            continue;
        };
        let reading = &entry["body"]["reading"];
        let judged = &reading["judged"];
        let mut same = |what: &str, got: &Value, want: &Value| {
            if got != want {
                differ.push(format!(
                    "{key} {}: {what} {got}, not {want}",
                    reading["mark"]
                ));
            }
        };
        same("mark", &reading["mark"], &want["mark"]);
        same("machine", &reading["machine"], &want["machine"]);
        same("text", &reading["text"], &want["text"]);
        same("spot", &entry["body"]["spot"], &spot);
        same("by", &entry["by"]["person"], &want["by"]);
        same("elevation", &reading["elevation"], &want["elevation"]);
        same("difference", &judged["dev"], &want["dev"]);
        if kind != "reading_asked" && want["kind"] != "spot" {
            same("verdict", &judged["verdict"], &want["verdict"]);
        }
        if want["kind"] == "taken" {
            same("mean", &judged["mean"], &want["mean"]);
            same(
                "high by rule",
                &judged["settled_high"],
                &want["high_by_rule"],
            );
            same(
                "needs ruling",
                &judged["needs_ruling"],
                &want["needs_ruling"],
            );
            let joined = list(&judged["joined"]).len() + 1;
            same("shots", &json!(joined), &want["shots"]);
        }
    }
    agree("readings", &differ);
    let readings =
        ["reading_taken", "reading_asked", "reading_late"].map(|kind| day.of_kind(kind).count());
    let counts = &day.oracles["counts"];
    let wanted = counts["readings"].as_u64().unwrap() + counts["spots"].as_u64().unwrap();
    assert_eq!(readings.iter().sum::<usize>() as u64, wanted);
}

#[test]
fn exactly_the_planned_questions_are_asked() {
    let day = played();
    let asked: Vec<(Value, Value)> = day
        .of_kind("reading_asked")
        .map(|entry| (entry["key"].clone(), question(&entry["body"]["question"])))
        .collect();
    let wanted: Vec<(Value, Value)> = list(&day.oracles["readings"])
        .iter()
        .filter(|reading| reading["kind"] == "asked")
        .map(|reading| (json!(key(reading)), reading["question"].clone()))
        .collect();
    assert_eq!(asked, wanted);
}

/// A question of the log in the oracles' words.
fn question(asked: &Value) -> Value {
    let doubt = &asked["doubt"];
    let kind = doubt["kind"].as_str().or(asked["kind"].as_str());
    let mut said = json!({ "asks": kind });
    if !doubt["by"].is_null() {
        said["by"] = doubt["by"].clone();
    }
    match &doubt["perhaps"] {
        Value::String(mark) => said["perhaps"] = json!(mark),
        Value::Array(pair) => {
            said["perhaps"] = pair.iter().map(in_words).collect();
        }
        _ => {}
    }
    said
}

/// A rod value that may have been meant, as it would be typed.
fn in_words(perhaps: &Value) -> Value {
    match perhaps["kind"].as_str() {
        Some("reading") => {
            // 3 048 000 counts are a foot (NIST: 1 ft = 0.3048 m exactly).
            let hundredths = perhaps["value"].as_i64().expect("a value") / 30_480;
            json!(format!("{}.{:02}", hundredths / 100, hundredths % 100))
        }
        Some("feet_inches") => json!(format!("{}-{}", perhaps["feet"], perhaps["inches"])),
        _ => perhaps.clone(),
    }
}

#[test]
fn every_call_says_what_was_worked_out_and_ends_when_it_should() {
    let day = played();
    let mut differ = Vec::new();
    let calls = day.calls();
    let wanted = list(&day.oracles["calls"]);
    assert_eq!(calls.len(), wanted.len(), "calls");
    for ((sent, ended), want) in calls.iter().zip(wanted) {
        let body = &sent["body"];
        let key = key(want);
        let mut same = |what: &str, got: &Value, want: &Value| {
            if got != want {
                differ.push(format!("{key} {}: {what} {got}, not {want}", body["mark"]));
            }
        };
        let moment = |text: &Value| match text {
            Value::Null => Value::Null,
            text => json!(day.moment(text)),
        };
        same("key", &sent["key"], &json!(key));
        for field in ["machine", "mark", "english", "spanish", "labels"] {
            same(field, &body[field], &want[field]);
        }
        same("sent at", &sent["at"], &moment(&want["sent_at"]));
        same("stale at", &body["stale_at"], &moment(&want["stale_at"]));
        let (how, at) = ended.map_or((&Value::Null, &Value::Null), |ended| {
            (&ended["body"]["how"], &ended["at"])
        });
        same("ended", how, &want["how"]);
        same("ended at", at, &moment(&want["ended_at"]));
    }
    agree("calls", &differ);
}

#[test]
fn the_words_and_verdicts_of_the_day_add_up() {
    let day = played();
    let mut words: BTreeMap<String, u64> = BTreeMap::new();
    for sent in day.of_kind("call_sent") {
        let line = sent["body"]["english"].as_str().expect("a line");
        let word = line.split(' ').next().expect("a word");
        *words.entry(word.to_owned()).or_default() += 1;
    }
    assert_eq!(json!(words), day.oracles["counts"]["words"]);
    let mut verdicts: BTreeMap<String, u64> = BTreeMap::new();
    for kind in ["reading_taken", "reading_late", "reading_asked"] {
        for entry in day.of_kind(kind) {
            let judged = &entry["body"]["reading"]["judged"];
            let asked = question(&entry["body"]["question"]);
            let verdict = match (kind, judged["settled_high"].as_bool()) {
                ("reading_asked", _) => &asked["asks"],
                (_, Some(true)) => &json!("high_by_rule"),
                _ => &judged["verdict"],
            };
            if let Some(verdict) = verdict.as_str() {
                *verdicts.entry(verdict.to_owned()).or_default() += 1;
            }
        }
    }
    assert_eq!(json!(verdicts), day.oracles["counts"]["verdicts"]);
}

#[test]
fn each_machine_shows_the_call_that_was_live_at_the_moments_that_matter() {
    let day = played();
    let moments = day.oracles["live"].as_object().expect("moments");
    assert!(moments.contains_key("10:58:00") && moments.contains_key("11:22:00"));
    for (text, machines) in moments {
        let now = day.moment(&json!(text));
        for (machine, want) in machines.as_object().expect("machines") {
            let live: Vec<&Value> = day
                .calls()
                .into_iter()
                .filter(|(sent, _)| sent["body"]["machine"] == machine.as_str())
                .filter(|(sent, ended)| {
                    sent["at"].as_i64() <= Some(now)
                        && ended.is_none_or(|ended| ended["at"].as_i64() > Some(now))
                })
                .map(|(sent, _)| sent)
                .collect();
            assert!(live.len() <= 1, "{text} {machine}: {live:?}");
            let got = live.first().map_or(Value::Null, |sent| {
                let body = &sent["body"];
                json!({
                    "row": want["row"],
                    "mark": body["mark"],
                    "english": body["english"],
                    "spanish": body["spanish"],
                })
            });
            assert_eq!(&got, want, "{text} {machine}");
        }
    }
}

#[test]
fn every_call_reaches_its_cab_and_is_shown_in_its_operators_language() {
    let day = played();
    let mut differ = Vec::new();
    for row in day.rows.iter().filter(|row| !row["shown_s"].is_null()) {
        let key = key(row);
        // A reading without a call of its own is shown by the ruling that follows.
        let Some(sent) = day.of_row(&key, "call_sent").next() else {
            differ.push(format!("{key}: no call"));
            continue;
        };
        let at = sent["at"].as_i64().expect("a moment");
        let body = &sent["body"];
        let language = if body["machine"] == "EX-2" {
            "spanish"
        } else {
            "english"
        };
        let later = |kind: &'static str| {
            let of_call = |entry: &&Value| entry["body"]["call"] == sent["seq"];
            day.of_kind(kind).find(of_call)
        };
        match later("call_delivered") {
            Some(entry) if entry["at"] == sent["at"] => {}
            other => differ.push(format!("{key}: delivered {other:?}")),
        }
        let shown = json!(at + row["shown_s"].as_i64().expect("seconds") * SECOND);
        match later("call_shown") {
            Some(entry) if entry["at"] == shown && entry["body"]["text"] == body[language] => {}
            other => differ.push(format!("{key}: shown {other:?}")),
        }
        let got = row["got_s"].as_i64().map(|seconds| at + seconds * SECOND);
        if later("call_got").and_then(|entry| entry["at"].as_i64()) != got {
            differ.push(format!("{key}: got it {:?}", later("call_got")));
        }
    }
    agree("screens", &differ);
}

#[test]
fn the_late_reading_is_kept_and_never_shown() {
    let day = played();
    let late: Vec<&Value> = day.of_kind("reading_late").collect();
    let want = list(&day.oracles["readings"])
        .iter()
        .find(|reading| reading["kind"] == "late")
        .expect("a late reading");
    assert_eq!(late.len(), 1);
    assert_eq!(late[0]["key"], key(want).as_str());
    assert_eq!(late[0]["made_at"], day.moment(&json!("10:06:00")));
    assert_eq!(
        late[0]["body"]["why"],
        json!({ "kind": "newer_reading", "by": want["newer_by"] })
    );
    assert_eq!(day.of_row(&key(want), "call_sent").count(), 0);
}

#[test]
fn overrides_carry_a_name() {
    let day = played();
    let rulings: Vec<Value> = day
        .of_kind("ruled")
        .map(|entry| {
            assert_eq!(entry["by"]["person"], "PN");
            json!([entry["key"], entry["body"]["mark"], entry["body"]["ruling"]])
        })
        .collect();
    let wanted: Vec<Value> = list(&day.oracles["overrides"]["rulings"])
        .iter()
        .map(|ruling| json!([key(ruling), ruling["mark"], ruling["ruling"]]))
        .collect();
    assert_eq!(rulings, wanted);
    let by_rule: Vec<&Value> = day
        .of_kind("reading_taken")
        .map(|entry| &entry["body"]["reading"])
        .filter(|reading| reading["judged"]["settled_high"] == true)
        .map(|reading| &reading["mark"])
        .collect();
    assert_eq!(json!(by_rule), day.oracles["overrides"]["high_by_rule"]);
}

#[test]
fn a_dark_screen_is_noticed_and_the_next_one_takes_over() {
    let day = played();
    let lost: Vec<&Value> = day
        .of_kind("screen_noticed")
        .filter(|entry| entry["body"]["screen"] == "lost")
        .collect();
    let dark = day.moment(&json!("13:10:00"));
    let back = day.moment(&json!("13:18:00"));
    let noticed = lost
        .iter()
        .find(|entry| entry["at"].as_i64() >= Some(dark) && entry["at"].as_i64() < Some(back))
        .unwrap_or_else(|| panic!("the hub never noticed: {lost:?}"));
    assert_eq!(noticed["body"]["machine"], "EX-1");
    let taken_over = day
        .of_kind("joined")
        .find(|entry| !entry["body"]["retires"].is_null())
        .expect("a second phone in the cab");
    assert_eq!(taken_over["at"], back);
    assert_eq!(taken_over["body"]["retires"], noticed["body"]["device"]);
}
