//! The day's end: closed, signed, amended; kept over restarts, proven, exported; the next day on a hub that runs on.

use std::fs;

use serde_json::{Value, json};

use crate::harness::phone::Phone;
use crate::harness::yard::{FOOT, Yard, prove_laser, reading, second_benchmark};
use crate::harness::{folder, rodcall, words};

const STROKES: &str = "M10 20L40 60L90 15";

fn closes() -> Value {
    json!({ "kind": "close_day" })
}

fn signs() -> Value {
    json!({ "kind": "sign_day", "signature": { "name": "P. N.", "strokes": STROKES } })
}

/// A day with a reading and its closing check, closed by the laptop; with the ground phone.
fn closed() -> (Yard, Phone) {
    let yard = Yard::open();
    let ground = yard.ground();
    prove_laser(&ground);
    ground.says(&reading("P-1", "4.70"));
    let missing = yard.truck.is_refused(409, &closes());
    assert_eq!(
        missing["refusal"]["kind"], "not_ready_to_close",
        "{missing}"
    );
    ground.says(&second_benchmark());
    yard.truck.says(&closes());
    (yard, ground)
}

/// The record as the supervisor's page shows it, once it fits.
fn record(phone: &Phone, fits: impl Fn(&Value) -> bool) -> Value {
    let view = phone
        .socket()
        .view("supervisor", |view| fits(&view["record"]));
    view["record"].clone()
}

#[test]
fn a_closed_and_signed_day_survives_a_restart_and_still_proves_itself() {
    let (yard, ground) = closed();
    ground.is_refused(403, &closes());
    let refused = ground.is_refused(409, &reading("P-2", "4.70"));
    assert_eq!(refused["refusal"]["kind"], "day_is_closed", "{refused}");
    yard.truck.says(&signs());
    let signed = record(&yard.truck, |record| record["signed"].is_object());
    assert_eq!(signed["signed"]["how"]["signature"]["name"], "P. N.");
    let head = &signed["signed"]["how"]["head"];
    let entry = yard.truck.json(&format!("/api/log/{}", head["seq"]));
    assert_eq!(entry["hash"], head["hash"]);
    let amends = json!({ "kind": "amend_day", "entry": 3, "words": "the rod was B",
        "signature": { "name": "P. N.", "strokes": STROKES } });
    yard.truck.says(&amends);
    // A day that was killed in mid-air is as closed as one that was stopped.
    let yard = yard.kill().start();
    let after = record(&yard.truck, |_| true);
    assert_eq!(after["signed"], signed["signed"]);
    assert_eq!(after["amended"][0]["entry"], 3);
    let ground = ground.at(&yard.hub.base);
    ground.is_refused(409, &reading("P-2", "4.70"));
    ground.says(&json!({ "kind": "add_note", "words": "gate locked" }));
    let place = folder();
    let file = place.path().join("log.jsonl");
    fs::write(&file, yard.truck.text("/api/export")).expect("an export");
    let data = place.path().join("again");
    for verb in [
        vec!["verify".as_ref(), file.as_os_str()],
        vec![
            "import".as_ref(),
            file.as_os_str(),
            "--data".as_ref(),
            data.as_os_str(),
        ],
        vec!["verify".as_ref(), data.as_os_str()],
    ] {
        let output = rodcall(&verb);
        assert!(output.status.success(), "{verb:?}: {}", words(&output));
    }
}

#[test]
fn the_next_day_opens_on_a_hub_that_runs_on_and_whoever_opened_it_stays_in() {
    let (yard, ground) = closed();
    yard.truck.says(&signs());
    let old_code = yard.truck.code(&["ground"], None);
    let before = yard.truck.me();
    // Only a supervisor, and by the key alone.
    assert_eq!(ground.post("/api/day/next", &json!({})).status, 403);
    yard.truck
        .is_refused(403, &json!({ "kind": "open_day", "day": "2031-01-01" }));
    let reply = yard.truck.post("/api/day/next", &json!({}));
    let me = reply.of(200);
    // The same date a second time has a number.
    let wanted = format!("{}-2", before["day"].as_str().expect("a day"));
    assert_eq!(me["day"], json!(wanted));
    let mut truck = Phone::stranger(&yard.hub.base);
    truck.cookie = reply.cookie;
    assert_eq!(truck.me()["person"], before["person"]);
    // Everybody else is out, by an old cookie and an old code; the new one lets them in.
    assert_eq!(ground.get("/api/me").status, 401);
    assert_eq!(ground.get(&format!("/api/join/{old_code}")).status, 404);
    let ground = truck.lets_in("RT", &["ground"], None);
    let gone = ground.is_refused(409, &reading("P-1", "4.70"));
    assert_eq!(
        gone["refusal"]["kind"], "unknown",
        "yesterday's set-up: {gone}"
    );
    prove_laser(&ground);
    ground.says(&reading("P-1", "4.70"));
    truck.says(
        &json!({ "kind": "amend_day", "entry": 3, "words": "the rod was B",
        "signature": { "name": "P. N.", "strokes": STROKES } }),
    );
    let days = record(&truck, |_| true)["days"].clone();
    assert_eq!(days[0]["day"], before["day"]);
    assert!(days[0]["closed"].is_i64(), "{days}");
    // The day's name owns its entries after a start too, and both files prove themselves in one chain.
    let yard = yard.stop().start();
    let truck = truck.at(&yard.hub.base);
    assert_eq!(truck.me()["day"], json!(wanted));
    let output = rodcall(&["verify".as_ref(), yard.data().as_os_str()]);
    assert!(output.status.success(), "{}", words(&output));
    what_is_asked_later_is_answered_of_both_days(&truck, &before["day"]);
    // A day that is not closed is not left by the key.
    let refused = truck.post("/api/day/next", &json!({}));
    assert_eq!(refused.status, 409, "{}", refused.text);
}

#[test]
fn codes_and_phones_that_a_supervisor_lets_stay_outlive_the_night_and_each_says_who_holds_it() {
    let (yard, ground) = closed();
    let visitor = yard.truck.lets_in("HF", &["visitor"], None);
    yard.truck
        .says(&json!({ "kind": "set_codes_last", "lasts": "until_renewed" }));
    yard.truck
        .says(&json!({ "kind": "let_stay", "device": ground.device(), "stays": true }));
    let code = yard.truck.code(&["ground"], None);
    let mut screen = ground.socket();
    screen.until("hello", |value| value["kind"] == "hello");
    let reply = yard.truck.post("/api/day/next", &json!({}));
    assert_eq!(reply.of(200)["asks_who"], false);
    let bye = screen.until("a last word", |value| value["kind"] == "bye");
    assert_eq!(bye["why"], "ask_who");
    let mut truck = Phone::stranger(&yard.hub.base);
    truck.cookie = reply.cookie;
    assert_eq!(truck.code(&["ground"], None), code);
    assert_eq!(visitor.get("/api/me").status, 401, "nobody let it stay");
    // Over a restart, too: it stops at once, and says nothing else before it has said who holds it.
    let yard = yard.stop().start();
    let (truck, ground) = (truck.at(&yard.hub.base), ground.at(&yard.hub.base));
    assert_eq!(truck.code(&["ground"], None), code);
    assert_eq!(ground.me()["asks_who"], true);
    let note = json!({ "kind": "add_note", "words": "gate open" });
    let asked = ground.is_refused(409, &note);
    assert_eq!(asked["refusal"]["kind"], "say_who", "{asked}");
    ground.says(&json!({ "kind": "stop_all" }));
    ground.says(&json!({ "kind": "say_who", "person": "RT", "same": true }));
    assert_eq!(ground.me()["asks_who"], false);
    ground.says(&note);
    // New codes void the old ones, however long they were to last.
    truck.says(&json!({ "kind": "renew_codes" }));
    assert_ne!(truck.code(&["ground"], None), code);
}

/// What a later day amended stands on the sheet of the day that it amends; who told is answered day by day.
fn what_is_asked_later_is_answered_of_both_days(truck: &Phone, first: &Value) {
    let first = first.as_str().expect("a day");
    let review = truck.json(&format!("/api/review?day={first}"));
    let later = &review["amended_later"];
    assert_eq!(later.as_array().map(Vec::len), Some(1), "{later}");
    let sheet = truck.text(&format!("/api/report/day?day={first}"));
    assert!(sheet.contains("Amended on later days"), "{sheet}");
    assert!(sheet.contains("AMENDMENT to entry 3 of day"), "{sheet}");
    let newest = truck.text("/api/report/day");
    assert!(!newest.contains("Amended on later days"), "{newest}");
    let question = |from: i64, to: i64| {
        let place = format!("x={}&y={}", 30 * FOOT, 20 * FOOT);
        format!("who-told?machine=EX-1&{place}&from={from}&to={to}")
    };
    let told = truck.json(&format!("/api/{}", question(0, i64::MAX)));
    let days = told["days"].as_array().expect("days");
    let called: Vec<(&Value, Option<usize>)> = days
        .iter()
        .map(|page| (&page["day"], page["calls"].as_array().map(Vec::len)))
        .collect();
    let second = json!(format!("{first}-2"));
    assert_eq!(called, [(&json!(first), Some(1)), (&second, Some(1))]);
    assert!(days[0]["asked"]["to"].as_i64() < days[1]["asked"]["from"].as_i64());
    let sheet = truck.text(&format!("/api/report/{}", question(0, i64::MAX)));
    assert_eq!(
        sheet.matches("RT told EX-1: P-1 DOWN 3.").count(),
        2,
        "{sheet}"
    );
    let none = truck.json(&format!("/api/{}", question(0, 1)));
    assert_eq!(none["days"], json!([]));
    assert!(
        truck
            .text(&format!("/api/report/{}", question(0, 1)))
            .contains("no day in this time")
    );
}

#[test]
fn closed_over_a_missing_check_the_day_says_so_wherever_it_is_read() {
    let yard = Yard::open();
    let ground = yard.ground();
    prove_laser(&ground);
    ground.says(&reading("P-1", "4.70"));
    yard.truck.says(&json!({ "kind": "close_day", "overrides": [
        { "missing": { "kind": "closing_check", "set_up": "S1" }, "why": "battery of the laser" }
    ] }));
    let closed = &record(&yard.truck, |record| record["closed"].is_object())["closed"];
    assert_eq!(closed["how"]["unproven"][0]["set_up"], "S1");
    let table = yard.truck.text("/api/log.csv");
    assert!(table.contains("CLOSED UNPROVEN: SETUP-1"), "{table}");
    let window = yard.truck.log();
    let window = window
        .iter()
        .find(|entry| entry["body"]["kind"] == "suspect_window");
    let mark = &window.expect("a window")["body"]["marks"][0];
    assert_eq!(
        (&mark["mark"], &mark["standing"]),
        (&json!("P-1"), &json!("unproven"))
    );
}

/// The log cut after an entry, with a phone that remembers the next: the hub starts, for a cut log proves itself, and the
/// phone tells.
#[test]
fn a_log_that_was_cut_is_told_by_a_phone_that_remembers_more_of_it() {
    let yard = Yard::open();
    let ground = yard.ground();
    prove_laser(&ground);
    ground.says(&reading("P-1", "4.70"));
    let mut screen = ground.socket();
    let seq = yard.hub_head();
    let beat = screen.until("a beat", |beat| beat["head"].as_u64() == Some(seq));
    let hash = beat["hash"].as_str().expect("a hash").to_owned();
    // What is true is no news.
    let saw = |seq: u64, hash: &str| json!({ "kind": "saw", "seq": seq, "hash": hash });
    screen.says(&saw(seq, &hash));
    let stopped = yard.stop();
    let file = stopped.day_file();
    let text = fs::read_to_string(&file).expect("the day's log");
    assert!(!text.contains("head_mismatch"));
    // Cut behind the last whole request before the reading's.
    let first = |line: &&str| line.contains("phone-key-000003");
    let keep = text
        .lines()
        .position(|line| first(&line))
        .expect("the reading");
    let cut: Vec<&str> = text.lines().take(keep).collect();
    fs::write(&file, cut.join("\n") + "\n").expect("a cut log");
    // Its index went with it: the phones alone remember.
    for item in fs::read_dir(stopped.data()).expect("a data folder") {
        let path = item.expect("an item").path();
        if path.to_string_lossy().contains("index.") {
            fs::remove_dir_all(path).expect("an index");
        }
    }
    let yard = stopped.start();
    let ground = ground.at(&yard.hub.base);
    let mut screen = ground.socket();
    screen.says(&saw(seq, &hash));
    let told = record(&yard.truck, |record| record["mismatches"][0].is_object());
    let what = &told["mismatches"][0]["what"];
    assert_eq!(what["remembered"]["seq"], json!(seq));
    assert_eq!(what["person"], "RT");
    let view = yard.truck.socket().view("supervisor", |_| true);
    let needs = view["exceptions"].as_array().expect("exceptions");
    assert!(
        needs.iter().any(|one| one["what"]["kind"] == "log_cut"),
        "{needs:?}"
    );
}

#[test]
fn a_visitor_sees_what_was_chosen_and_says_on_site_and_nothing_else() {
    let yard = Yard::open();
    let ground = yard.ground();
    prove_laser(&ground);
    ground.says(&reading("P-1", "5.02"));
    ground.says(&second_benchmark());
    let visitor = yard.truck.lets_in("HF", &["visitor"], None);
    let empty = visitor.socket().view("visitor", |_| true);
    assert_eq!(empty["runs"], json!([]));
    yard.truck
        .says(&json!({ "kind": "show_runs", "person": "HF", "targets": ["PAD"] }));
    visitor.says(&json!({ "kind": "visit", "on_site": true }));
    let mut screen = visitor.socket();
    let view = screen.view("visitor", |view| view["here"].is_i64());
    let run = &view["runs"][0];
    assert_eq!(run["target"]["id"], "PAD");
    assert_eq!(run["proven"], json!(["P-1"]));
    assert_eq!(run["lasers"][0]["set_up"], "S1");
    // Nothing of the crew's comes over the socket, and the log stays closed.
    let topics: Vec<&Value> = screen.heard.iter().map(|heard| &heard["topic"]).collect();
    assert!(
        topics
            .iter()
            .all(|topic| topic.is_null() || **topic == "visitor"),
        "{topics:?}"
    );
    for path in [
        "/api/log",
        "/api/log/1",
        "/api/log.csv",
        "/api/export",
        "/api/pocket-sheet",
    ] {
        assert_eq!(visitor.get(path).status, 403, "{path}");
    }
    for command in [
        reading("P-1", "5.00"),
        closes(),
        json!({ "kind": "add_note", "words": "no" }),
        json!({ "kind": "show_runs", "person": "HF", "targets": [] }),
    ] {
        visitor.is_refused(403, &command);
    }
    let on_site = record(&yard.truck, |record| record["visitors"][0]["here"].is_i64());
    assert_eq!(on_site["visitors"][0]["person"], "HF");
    visitor.says(&json!({ "kind": "stop_all", "why": "somebody in the cut" }));
}
