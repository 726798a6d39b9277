//! What was typed is never lost, and what was pressed to keep people from harm is taken from whoever pressed it.

use serde_json::{Value, json};

use crate::harness::phone::Phone;
use crate::harness::yard::{Yard, prove_laser, reading, second_benchmark};

fn stop() -> Value {
    json!({ "kind": "stop_all", "why": "man in the swing" })
}

fn cab_screen(yard: &Yard, cab: &Phone) -> Value {
    yard.cab_view(&mut cab.socket())["screen"].clone()
}

/// The call that a machine's cab shows as live; none when it shows none.
fn live_call(yard: &Yard, cab: &Phone) -> Value {
    cab_screen(yard, cab)["call"]["id"].clone()
}

#[test]
fn a_stop_from_a_phone_that_was_removed_or_replaced_stops_every_machine_and_nothing_else_is_taken_from_it()
 {
    let yard = Yard::open();
    let removed = yard.ground();
    let replaced = yard.cab("EX-1");
    replaced.says(&json!({ "kind": "give_cab", "machine": "EX-1" }));
    let cab = yard.cab("EX-1");
    yard.truck
        .says(&json!({ "kind": "remove_phone", "device": removed.device() }));
    for phone in [&removed, &replaced] {
        assert_eq!(phone.get("/api/me").status, 401);
        for other in [
            json!({ "kind": "add_note", "words": "still here" }),
            json!({ "kind": "check_me" }),
            reading("P-1", "4.70"),
        ] {
            phone.is_refused(401, &other);
        }
        phone.says(&stop());
        assert_eq!(cab_screen(&yard, &cab)["kind"], "stop");
        let entries = yard.truck.log();
        let told = entries
            .iter()
            .rev()
            .find(|one| one["body"]["kind"] == "stopped");
        let told = told.expect("a stop in the log");
        assert_eq!(told["body"]["all"], true);
        yard.truck
            .says(&json!({ "kind": "lift_stop", "press": told["seq"], "why": "seen, all out" }));
    }
}

/// A day that is over, with a cab's phone and a ground phone of it.
fn closed() -> (Yard, Phone, Phone) {
    let yard = Yard::open();
    let (ground, cab) = (yard.ground(), yard.cab("EX-1"));
    prove_laser(&ground);
    ground.says(&reading("P-1", "4.70"));
    ground.says(&second_benchmark());
    yard.truck.says(&json!({ "kind": "close_day" }));
    (yard, ground, cab)
}

fn opens_the_next_day(yard: &Yard) -> Phone {
    let reply = yard.truck.post("/api/day/next", &json!({}));
    assert_eq!(reply.status, 200, "{}", reply.text);
    let mut truck = Phone::stranger(&yard.hub.base);
    truck.cookie = reply.cookie;
    truck
}

#[test]
fn a_stop_from_yesterdays_phone_is_taken_and_from_a_stranger_it_is_not() {
    let (yard, ground, cab) = closed();
    let truck = opens_the_next_day(&yard);
    let today = truck.lets_in("OW", &["operator"], Some("EX-1"));
    ground.is_refused(401, &reading("P-1", "4.70"));
    ground.says(&stop());
    assert_eq!(cab_screen(&yard, &today)["kind"], "stop");
    cab.is_refused(401, &json!({ "kind": "check_me" }));
    let mut stranger = Phone::stranger(&yard.hub.base);
    stranger.is_refused(401, &stop());
    stranger.cookie = "rodcall=0123456789abcdef".to_owned();
    stranger.is_refused(401, &stop());
}

#[test]
fn a_day_that_opens_with_somebody_in_leaves_out_and_release_to_the_phones_that_owe_them() {
    let (yard, ground, cab) = closed();
    let other = yard.cab("EX-2");
    let visit = |kind: &str| json!({ "kind": kind, "machine": "EX-1", "visit": "visit-01" });
    // A machine may still move after the close, and people may still go in.
    ground.says(&visit("ask_in"));
    cab.says(&json!({ "kind": "bucket_down", "answers": ["visit-01"] }));
    ground.says(&visit("go_in"));
    opens_the_next_day(&yard);
    let yard = yard.kill().start();
    let (ground, cab, other) = (
        ground.at(&yard.hub.base),
        cab.at(&yard.hub.base),
        other.at(&yard.hub.base),
    );
    assert_eq!(ground.me()["person"], "RT");
    let shown = yard.cab_view(&mut cab.socket());
    assert_eq!(shown["screen"]["kind"], "way_in", "{shown}");
    assert_eq!(shown["way_in"]["people"][0]["person"], "RT");
    assert_eq!(other.get("/api/me").status, 401, "nobody is in there");
    ground.says(&visit("come_out"));
    cab.says(&json!({ "kind": "release" }));
    for phone in [&ground, &cab] {
        assert_eq!(phone.get("/api/me").status, 401, "the day is over for it");
    }
}

#[test]
fn a_wrong_number_leaves_the_cab_before_the_right_one_is_typed_and_is_compared_with_nothing() {
    let yard = Yard::open();
    let (ground, cab) = (yard.ground(), yard.cab("EX-1"));
    prove_laser(&ground);
    let taken = ground.says(&reading("P-1", "4.07"));
    let answered = if taken["outcome"]["kind"] == "asked" {
        let mut sure = reading("P-1", "4.07");
        sure["sure"] = taken["first"].clone();
        ground.says(&sure)
    } else {
        taken
    };
    assert_eq!(live_call(&yard, &cab), answered["outcome"]["call"]);
    ground.says(&json!({ "kind": "wrong_number", "reading": answered["first"] }));
    assert_eq!(live_call(&yard, &cab), Value::Null);
    let mut right = reading("P-1", "4.70");
    right["restates"] = answered["first"].clone();
    let right = ground.says(&right);
    assert_eq!(right["outcome"]["kind"], "called", "{right}");
    assert_eq!(live_call(&yard, &cab), right["outcome"]["call"]);
}

#[test]
fn a_reading_and_its_drop_share_one_key_and_whichever_came_first_counts() {
    let yard = Yard::open();
    let (ground, cab) = (yard.ground(), yard.cab("EX-1"));
    prove_laser(&ground);
    let drops = json!({ "kind": "drop_unsent", "what": "take_reading", "words": "P-1 4.70" });
    // The answer to the reading was lost on the way; its person drops it and learns that it had gone out.
    let taken = ground.say("reading-0001", &reading("P-1", "4.70")).of(200);
    assert_eq!(ground.say("reading-0001", &drops).of(200), taken);
    let call = taken["outcome"]["call"].clone();
    ground.says(&json!({ "kind": "withdraw_call", "call": call }));
    // The drop came first: the reading that was still on a slow way becomes no call.
    let dropped = ground.say("reading-0002", &drops).of(200);
    let late = ground.say("reading-0002", &reading("P-1", "4.60")).of(200);
    assert_eq!(late, dropped);
    assert_eq!(live_call(&yard, &cab), Value::Null);
    let log = yard.truck.log();
    let kept = log
        .iter()
        .filter(|one| one["body"]["kind"] == "unsent_dropped");
    assert_eq!(kept.count(), 1);
}

#[test]
fn a_reading_that_waited_says_in_the_log_that_its_person_was_asked() {
    let yard = Yard::open();
    let ground = yard.ground();
    prove_laser(&ground);
    let mut waited = reading("P-1", "4.70");
    waited["waited"] = json!(true);
    let answer = ground.says(&waited);
    let moment = yard
        .truck
        .json(&format!("/api/replay?seq={}", answer["first"]));
    let words = moment["said"]["english"].as_str().expect("words");
    assert!(words.contains("waited without a link"), "{words}");
    let words = moment["said"]["spanish"].as_str().expect("words");
    assert!(words.contains("sin enlace"), "{words}");
}

#[test]
fn a_truck_is_counted_without_a_price_list() {
    let yard = Yard::open();
    let load = json!({ "kind": "count_load", "way": "out", "material": "clay", "loose_cy": null });
    let kept = yard.ground().says(&load);
    assert_eq!(kept["outcome"]["kind"], "done", "{kept}");
}
