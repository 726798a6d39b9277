//! A reading from the rod to the cab and back: called, on the phone, on the screen, seen; and what comes late.

use serde_json::{Value, json};

use crate::harness::phone::{Phone, now_ms};
use crate::harness::socket::Socket;
use crate::harness::yard::{FOOT, Yard, prove_laser, reading, set_up};

/// The laser is proven and the screen of EX-1 shows.
fn digging(yard: &Yard) -> (Phone, Phone, Socket) {
    let (ground, cab) = (yard.ground(), yard.cab("EX-1"));
    let mut screen = cab.socket();
    screen.shows();
    prove_laser(&ground);
    (ground, cab, screen)
}

fn call_state(view: &Value, state: &str) -> bool {
    view["machines"][0]["call"]["state"]["kind"] == state
}

#[test]
fn the_ground_person_sees_each_state_of_a_call_as_it_is_reached() {
    let yard = Yard::open();
    let (ground, cab, mut screen) = digging(&yard);
    let mut rod = ground.socket();
    // 105.00 − 4.70 = 100.30 ft; 100.30 − 100.00 = +0.30 ft, HIGH: dig 3 tenths (derived by hand).
    let answer = ground.says(&reading("P-1", "4.70"));
    assert_eq!(answer["outcome"]["kind"], "called");
    assert_eq!(answer["outcome"]["english"], "DOWN 3");
    assert_eq!(answer["outcome"]["verdict"], "high");
    let call = answer["outcome"]["call"].clone();
    rod.view("ground", |view| call_state(view, "sent"));
    let shown = screen.view("operator", |view| view["screen"]["kind"] == "call");
    let text = shown["screen"]["call"]["texts"].as_array().expect("texts");
    let fits = |text: &&Value| text["language"] == "english" && text["unit"] == "tenths";
    let text = text.iter().find(fits).expect("English in tenths");
    assert_eq!(text["line"], "DOWN 3");
    assert_eq!(shown["screen"]["call"]["id"], call);
    // Three tenths of 3 048 000 counts (NIST Handbook 44: 1 ft = 0.3048 m exactly).
    let dev = &shown["screen"]["call"]["message"]["dev"];
    assert_eq!(dev, &json!(3 * FOOT / 10));
    screen.says(&json!({ "kind": "have", "call": call }));
    rod.view("ground", |view| call_state(view, "delivered"));
    let painted = json!({ "kind": "shown", "call": call, "language": "english", "unit": "tenths" });
    cab.says(&painted);
    rod.view("ground", |view| call_state(view, "shown"));
    cab.says(&json!({ "kind": "got_it", "call": call }));
    rod.view("ground", |view| call_state(view, "got"));
    let entry = yard
        .truck
        .log()
        .into_iter()
        .find(|entry| entry["body"]["kind"] == "call_shown");
    assert_eq!(entry.expect("a receipt")["body"]["text"], "DOWN 3");
}

#[test]
fn a_low_spot_is_never_called_down() {
    let yard = Yard::open();
    let (ground, _, _screen) = digging(&yard);
    // 105.00 − 5.50 = 99.50 ft; 99.50 − 100.00 = −0.50 ft, LOW by more than the two tenths allowed (derived by hand).
    let low = ground.says(&reading("P-2", "5.50"));
    assert_eq!(low["outcome"]["verdict"], "low", "{low}");
    let line = low["outcome"]["english"].as_str().expect("a line");
    assert!(!line.starts_with("DOWN"), "{line}");
}

#[test]
fn a_reading_on_a_laser_with_one_benchmark_is_refused_in_both_languages() {
    let yard = Yard::open();
    let ground = yard.ground();
    ground.says(&set_up());
    let refused = ground.is_refused(409, &reading("P-1", "4.70"));
    assert_eq!(refused["refusal"]["kind"], "set_up_not_proven");
    assert!(
        refused["english"]
            .as_str()
            .is_some_and(|text| text.contains("second benchmark"))
    );
    assert_ne!(refused["english"], refused["spanish"]);
}

#[test]
fn the_newest_reading_stands_and_an_older_one_is_only_logged() {
    let yard = Yard::open();
    let (ground, _, mut screen) = digging(&yard);
    let made_at = now_ms();
    let first = ground.says(&reading("P-1", "4.70"));
    let call = first["outcome"]["call"].clone();
    let on_screen = |view: &Value| view["screen"]["call"]["id"] == call;
    screen.view("operator", on_screen);
    // Made a second before the one that the operator sees, at the same mark (architecture: current goes by made_at).
    let key = ground.fresh_key();
    let older = ground
        .say_made_at(&key, made_at - 1_000, &reading("P-1", "4.60"))
        .of(200);
    assert_eq!(older["outcome"]["kind"], "late", "{older}");
    // Made more than 90 s before its arrival (architecture).
    let key = ground.fresh_key();
    let kept = ground
        .say_made_at(&key, made_at - 91_000, &reading("P-2", "4.60"))
        .of(200);
    assert_eq!(kept["outcome"]["kind"], "late", "{kept}");
    let log = yard.truck.log();
    let of_kind = |kind: &str| {
        log.iter()
            .filter(|entry| entry["body"]["kind"] == kind)
            .count()
    };
    assert_eq!((of_kind("reading_late"), of_kind("call_sent")), (2, 1));
    let late = log
        .iter()
        .find(|entry| entry["seq"] == kept["first"])
        .expect("the late one");
    assert_eq!(late["made_at"], json!(made_at - 91_000));
    // A word after it: whatever the operator's screen was sent in between is heard by then.
    ground.says(&json!({ "kind": "say_moved", "machine": "EX-2" }));
    let now = yard.cab_view(&mut screen);
    assert!(on_screen(&now), "{now}");
}

#[test]
fn a_moment_in_the_future_counts_as_the_arrival() {
    let yard = Yard::open();
    let ground = yard.ground();
    let key = ground.fresh_key();
    let later = now_ms() + 3_600_000;
    let answer = ground.say_made_at(&key, later, &set_up()).of(200);
    let entry = ground.json(&format!("/api/log/{}", answer["first"]));
    let moment = |name: &str| entry["entry"][name].as_i64().expect("a moment");
    assert!(moment("made_at") <= moment("at") && moment("at") < later);
}

#[test]
fn impossible_rod_values_are_refused_with_what_to_do() {
    let yard = Yard::open();
    let (ground, _, _screen) = digging(&yard);
    // Rod A is 13 ft long and marked in hundredths of a foot.
    for text in [
        "", "abc", "-4.70", "14.2", "4 3/8 in", "4.7.0", "١.٢", "NaN", "1e3",
    ] {
        let refused = ground.is_refused(409, &reading("P-1", text));
        assert_eq!(
            refused["refusal"]["kind"], "rod_value",
            "{text:?}: {refused}"
        );
        for language in ["english", "spanish"] {
            let said = refused[language].as_str().unwrap_or_default();
            assert!(said.len() > 10, "{text:?}: {refused}");
        }
        assert_ne!(refused["english"], refused["spanish"], "{text:?}");
    }
    let sent = yard
        .truck
        .log()
        .iter()
        .filter(|entry| entry["body"]["kind"] == "call_sent")
        .count();
    assert_eq!(sent, 0);
}

#[test]
fn a_doubtful_value_is_asked_about_and_taken_when_it_is_confirmed() {
    let yard = Yard::open();
    let (ground, _, _screen) = digging(&yard);
    // 105.00 − 3.70 = 101.30 ft: 1.30 ft above grade on a mark without a reading; asked or called, never lost.
    let first = ground.says(&reading("P-1", "4.70"));
    assert_eq!(first["outcome"]["kind"], "called");
    // One foot off the reading before: a misread foot is the common slip (common practice).
    let asked = ground.says(&reading("P-1", "3.70"));
    assert_eq!(asked["outcome"]["kind"], "asked", "{asked}");
    let mut sure = reading("P-1", "3.70");
    sure["sure"] = asked["outcome"]["reading"].clone();
    let taken = ground.says(&sure);
    assert_eq!(taken["outcome"]["kind"], "called", "{taken}");
    // 101.30 − 100.00 = +1.30 ft; from a foot on it is told in feet.
    assert_eq!(taken["outcome"]["english"], "DOWN 1.3 FEET", "{taken}");
}

#[test]
fn a_stop_hides_the_number_and_only_a_supervisor_lifts_it() {
    let yard = Yard::open();
    let (ground, cab, mut screen) = digging(&yard);
    ground.says(&reading("P-1", "4.70"));
    screen.view("operator", |view| view["screen"]["kind"] == "call");
    let visitor = yard.truck.lets_in("VZ", &["visitor"], None);
    visitor.says(&json!({ "kind": "stop_all", "why": "somebody in the cut" }));
    let stopped = screen.view("operator", |view| view["screen"]["kind"] == "stop");
    assert!(stopped["screen"].get("call").is_none(), "{stopped}");
    let lift =
        json!({ "kind": "lift_stop", "press": u64::MAX, "why": "the cut is empty, seen by PN" });
    for phone in [&visitor, &ground, &cab] {
        phone.is_refused(403, &lift);
    }
    yard.truck.says(&lift);
    screen.view("operator", |view| view["screen"]["kind"] != "stop");
}
