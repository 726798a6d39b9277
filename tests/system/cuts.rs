//! Faces and buried lines from outside: rules from a file, a face that is left, ground that nobody has located.

use serde_json::{Value, json};

use crate::harness::phone::now_ms;
use crate::harness::yard::{FOOT, SITE, Yard, prove_laser, reading, write_site};
use crate::harness::{folder, rodcall, words};

/// The pad is dug to 100.00 under a face whose toe lies at y = 25; the ground before the cut is level at 110.00.
/// At 1½ to 1 it comes out at y = 40; nobody may go over y = 38. Worked out by hand; invented.
const CUTS: &str = r#"
[excavation]
competent = ["PN"]

[[line]]
id = "PL"
kind = "property"
points = [["-50 ft", "38 ft"], ["150 ft", "38 ft"]]
keep = "right"
no_cross = true
doubt = "0.02 ft"

[[face]]
id = "BANK"
name = "north bank"
kind = "face"
toe = [["0 ft", "25 ft", "100 ft"], ["60 ft", "25 ft", "100 ft"]]
bank = "left"
ground = { flat = { elevation = "110 ft" } }
pins = ["C1-C2"]
target = "PAD"

[[utility]]
id = "GAS"
kind = "gas"
points = [["50 ft", "0 ft"], ["50 ft", "40 ft"]]
outside = "2 in"

[[ticket]]
id = "T-1"
from = "2020-01-01"
to = "2099-12-31"
area = [["0 ft", "0 ft"], ["100 ft", "0 ft"], ["100 ft", "45 ft"], ["0 ft", "45 ft"]]
asks = ["gas"]
"#;

fn site() -> String {
    format!("{SITE}{CUTS}")
}

fn inspection(release: &str) -> Value {
    json!({
        "kind": "inspect_face", "zone": "BANK", "class": "b", "seen": "dry, no cracks",
        "by_hand": "thumb goes in with effort", "release": release,
    })
}

#[test]
fn soil_typed_anew_holds_the_toe_and_a_face_that_came_down_is_left_through_a_crash() {
    let yard = Yard::open_on(&site());
    let ground = yard.ground();
    let boss = yard.truck.lets_in("PN", &["ground", "supervisor"], None);
    prove_laser(&ground);
    assert_eq!(
        ground.is_refused(409, &inspection(""))["refusal"]["kind"],
        "not_competent"
    );
    // Whoever types the name is not the person yet.
    assert_eq!(
        boss.is_refused(409, &inspection(""))["refusal"]["kind"],
        "not_confirmed"
    );
    let confirm = json!({ "kind": "confirm_person", "device": boss.device(), "person": "PN" });
    boss.is_refused(409, &confirm);
    yard.truck.says(&confirm);
    boss.says(&inspection(""));
    assert_eq!(
        ground.says(&reading("P-1", "4.70"))["outcome"]["kind"],
        "called"
    );
    let typed = json!({ "kind": "retype_soil", "zone": "BANK", "class": "c", "why": "seep" });
    boss.says(&typed);
    let held = ground.says(&reading("P-2", "4.70"));
    assert_eq!(held["outcome"]["kind"], "spot");
    assert_eq!(held["outcome"]["why"], "daylight_over");
    let allow = json!({ "kind": "allow_dig", "held": { "kind": "daylight", "zone": "BANK" }, "why": "shored, engineer" });
    boss.says(&allow);
    assert_eq!(
        ground.says(&reading("P-2", "4.70"))["outcome"]["kind"],
        "called"
    );
    let slough =
        json!({ "kind": "see_slough", "zone": "BANK", "length": "16", "height": "8", "back": "5" });
    ground.says(&slough);
    assert_eq!(
        ground.says(&reading("P-1", "4.70"))["outcome"]["why"],
        "face_left"
    );
    // The hub dies and comes back: the face is still left, and only words of the competent person change it.
    let yard = yard.kill().start();
    let ground = ground.at(&yard.hub.base);
    let boss = boss.at(&yard.hub.base);
    assert_eq!(
        ground.says(&reading("P-1", "4.71"))["outcome"]["why"],
        "face_left"
    );
    boss.says(&inspection(""));
    assert_eq!(
        ground.says(&reading("P-1", "4.72"))["outcome"]["why"],
        "face_left"
    );
    let alarmed = |entry: &&Value| entry["body"]["kind"] == "face_alarmed";
    let log = yard.truck.log();
    let mut release = inspection("trimmed from the top down");
    release["alarm"] = log.iter().rfind(alarmed).expect("the alarm")["seq"].clone();
    boss.says(&release);
    assert_eq!(
        ground.says(&reading("P-1", "4.73"))["outcome"]["kind"],
        "called"
    );
}

#[test]
fn the_cab_is_told_to_dig_by_hand_and_ground_that_no_ticket_covers_is_not_dug_without_a_reason() {
    let yard = Yard::open_on(&site());
    let ground = yard.ground();
    prove_laser(&ground);
    let beside = ground.says(&reading("P-3", "4.70"));
    assert_eq!(beside["outcome"]["kind"], "called");
    let log = yard.truck.log();
    let sent = log
        .iter()
        .rev()
        .find(|entry| entry["body"]["kind"] == "call_sent");
    let labels = sent.expect("the call")["body"]["labels"].to_string();
    assert!(
        labels.contains("hand_dig") && labels.contains("face_not_inspected"),
        "{labels}"
    );
    // W-1 stands at y = 60, beyond what the ticket covers.
    let outside = ground.says(&reading("W-1", "7.70"));
    assert_eq!(outside["outcome"]["why"], "not_located");
    let by_eye = json!({ "kind": "quick_call", "machine": "EX-2", "word": "more", "mark": "W-1" });
    let refused = ground.is_refused(409, &by_eye);
    assert_eq!(refused["refusal"]["kind"], "held_back");
    assert_ne!(refused["english"], refused["spanish"]);
    let bare = json!({ "kind": "dig_pothole", "utility": "GAS", "at": { "x": 50 * FOOT, "y": 20 * FOOT }, "top": "97.50", "size": "2 in" });
    ground.says(&bare);
    for bad in [("top", "-1"), ("size", "2")] {
        let mut wrong = bare.clone();
        wrong[bad.0] = json!(bad.1);
        ground.is_refused(409, &wrong);
    }
}

fn newest(yard: &Yard, kind: &str) -> Value {
    let log = yard.truck.log();
    let found = log.iter().rfind(|entry| entry["body"]["kind"] == kind);
    found.unwrap_or_else(|| panic!("no {kind}")).clone()
}

#[test]
fn rain_outlives_a_crash_and_owes_each_face_an_inspection_when_it_begins_and_when_it_stops() {
    let yard = Yard::open_on(&site());
    let ground = yard.ground();
    let boss = yard.truck.lets_in("PN", &["ground", "supervisor"], None);
    prove_laser(&ground);
    yard.truck
        .says(&json!({ "kind": "confirm_person", "device": boss.device(), "person": "PN" }));
    boss.says(&inspection(""));
    ground.says(&json!({ "kind": "say_rain" }));
    let began = newest(&yard, "rain_began");
    assert_eq!(began["body"]["faces"], json!(["BANK"]));
    // The hub dies and comes back in the rain.
    let yard = yard.kill().start();
    let ground = ground.at(&yard.hub.base);
    let boss = boss.at(&yard.hub.base);
    let labelled = |mark: &str| {
        let answer = ground.says(&reading(mark, "4.70"));
        assert_eq!(answer["outcome"]["kind"], "called", "{answer}");
        let labels = newest(&yard, "call_sent")["body"]["labels"].to_string();
        labels.contains("face_not_inspected")
    };
    assert!(labelled("P-1"));
    boss.says(&inspection(""));
    assert!(!labelled("P-2"));
    let stopped = |rain: &Value| json!({ "kind": "say_rain_stopped", "rain": rain });
    let other = ground.is_refused(409, &stopped(&json!(1)));
    assert_eq!(other["refusal"]["kind"], "overtaken");
    ground.says(&stopped(&began["seq"]));
    let over = newest(&yard, "rain_stopped");
    assert_eq!(
        (&over["body"]["rain"], &over["body"]["faces"]),
        (&began["seq"], &json!(["BANK"]))
    );
    let entries = yard.truck.log().len();
    boss.says(&stopped(&began["seq"]));
    assert_eq!(yard.truck.log().len(), entries, "stopped once is stopped");
    assert!(labelled("P-1"), "looked at in the rain is not after it");
    boss.says(&inspection(""));
    assert!(!labelled("P-2"));
}

#[test]
fn water_is_pumped_out_once_by_whoever_saw_it_and_the_face_owes_an_inspection_after_it() {
    let yard = Yard::open_on(&site());
    let ground = yard.ground();
    let cab = yard.cab("EX-1");
    ground.says(&json!({ "kind": "see_at_face", "zone": "BANK", "what": "water" }));
    let seen = newest(&yard, "seen_at_face")["seq"].clone();
    let pumped =
        json!({ "kind": "say_pumped", "at": { "kind": "face", "zone": "BANK" }, "water": seen });
    cab.is_refused(403, &pumped);
    let yard = yard.kill().start();
    let ground = ground.at(&yard.hub.base);
    let late = ground.say_made_at(&ground.fresh_key(), now_ms() - 60_000, &pumped);
    assert_eq!(late.of(409)["refusal"]["kind"], "said_too_late");
    ground.says(&pumped);
    let told = newest(&yard, "water_pumped");
    assert_eq!(
        (&told["body"]["water"], &told["body"]["faces"]),
        (&seen, &json!(["BANK"]))
    );
    let entries = yard.truck.log().len();
    ground.says(&pumped);
    assert_eq!(
        yard.truck.log().len(),
        entries,
        "pumped out once is pumped out"
    );
    let nowhere =
        json!({ "kind": "say_pumped", "at": { "kind": "face", "zone": "X" }, "water": 1 });
    assert_eq!(
        ground.is_refused(409, &nowhere)["refusal"]["kind"],
        "unknown"
    );
}

fn checked(text: &str, rules: Option<&str>) -> (bool, String) {
    let place = folder();
    write_site(place.path(), text);
    if let Some(rules) = rules {
        std::fs::write(place.path().join("ours.toml"), rules).expect("a rules file");
    }
    let site = place.path().join("site.toml");
    let output = rodcall(&["check".as_ref(), site.as_os_str()]);
    (output.status.success(), words(&output))
}

#[test]
fn another_set_of_rules_is_a_file_that_is_checked_by_name() {
    let federal = include_str!("../../hub/earthwork/src/face/us_federal.toml");
    let named = site().replace("[excavation]\n", "[excavation]\nrules = \"ours.toml\"\n");
    let stricter = federal.replace("depth = \"5 ft\"", "depth = \"4 ft\"");
    assert!(checked(&named, Some(&stricter)).0);
    for (rules, says) in [
        (None, "ours.toml"),
        (
            Some(federal.replace("c = 1.5", "c = 0.2")),
            "slopes go from rock to C",
        ),
        (Some(federal.replace("[shield]", "[sheild]")), "sheild"),
    ] {
        let (good, said) = checked(&named, rules.as_deref());
        assert!(!good && said.contains(says), "{says}: {said}");
    }
}

#[test]
fn a_site_file_whose_cuts_can_not_be_is_refused_with_the_line() {
    for (from, to, says) in [
        (
            "to = \"2099-12-31\"",
            "to = \"2019-12-31\"",
            "which is before",
        ),
        ("to = \"2099-12-31\"", "to = \"soon\"", "are dates such as"),
        (
            "[\"100 ft\", \"0 ft\"], [\"100 ft\", \"45 ft\"]",
            "[\"100 ft\", \"45 ft\"], [\"100 ft\", \"0 ft\"]",
            "crosses itself",
        ),
        (
            "elevation = \"110 ft\"",
            "elevation = \"90 ft\"",
            "no negative height",
        ),
        (
            "competent = [\"PN\"]",
            "competent = []",
            "no competent person",
        ),
        ("kind = \"gas\"", "kind = \"yellow\"", "there is no"),
        (
            "toe = [[\"0 ft\", \"25 ft\", \"100 ft\"], [\"60 ft\", \"25 ft\", \"100 ft\"]]",
            "toe = [[\"0 ft\", \"25 ft\"]]",
            "places with their elevation",
        ),
    ] {
        assert!(site().contains(from), "{from}");
        let (good, said) = checked(&site().replace(from, to), None);
        assert!(!good && said.contains(says), "{says}: {said}");
        assert!(said.contains("site.toml:"), "{said}");
    }
}
