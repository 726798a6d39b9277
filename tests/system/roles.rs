//! Who may do what: every command over HTTP, by every role. The table is written down here, not asked of the hub.

use serde_json::{Value, json};

mod marks;
mod people;
mod record;

use marks::of_marks;
use people::of_people;
use record::of_the_record;

use crate::harness::phone::Phone;
use crate::harness::yard::{FOOT, Yard, reading, second_benchmark, set_up};

const GROUND: &str = "ground";
const OPERATOR: &str = "operator";
const SUPERVISOR: &str = "supervisor";
const VISITOR: &str = "visitor";

/// Each command with the roles that may say it (the words and the job: who reads, who digs, who decides, who looks on).
#[expect(
    clippy::too_many_lines,
    reason = "one row a command reads best in one table"
)]
fn table() -> Vec<(Value, Vec<&'static str>)> {
    let crew = vec![GROUND, SUPERVISOR];
    let on_foot_or_in_cab = vec![GROUND, OPERATOR, SUPERVISOR];
    let cab = vec![OPERATOR];
    let boss = vec![SUPERVISOR];
    let flat = json!({
        "shape": { "kind": "flat", "elevation": 100 * FOOT },
        "stack": { "surface": "bare ground", "layers": [] },
    });
    let tolerance = json!({ "high": FOOT / 10, "low": FOOT / 10 });
    vec![
        (set_up(), crew.clone()),
        (second_benchmark(), crew.clone()),
        (
            json!({ "kind": "restate_set_up", "set_up": "S9", "benchmark": "BM-2", "rod": "A", "text": "5.00" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "level_again", "set_up": "S9", "rod": "A", "point_before": "5.00", "benchmark_again": "5.50", "point_again": "5.50" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "use_one_benchmark", "set_up": "S9" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "close_set_up", "set_up": "S9", "why": "lunch" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "test_laser", "laser": "L9", "rod": "A", "test": { "kind": "turned", "distance": 100 * FOOT, "first": "5.00", "first_turned": "5.00", "second": "5.00", "second_turned": "5.00" } }),
            crew.clone(),
        ),
        (
            json!({ "kind": "run_levels", "from": "BM-1", "to": "BM-9", "rod": "A", "turns": [] }),
            crew.clone(),
        ),
        (
            json!({ "kind": "compare_set_ups", "first": "S8", "second": "S9", "rod": "A", "from_first": "5.00", "from_second": "5.00" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "add_benchmark", "levels": 9_999, "point": "TP-1", "id": "BM-9", "note": "nail" }),
            boss.clone(),
        ),
        (reading("P-1", "4.70"), crew.clone()),
        (
            json!({ "kind": "prove_target", "target": "PAD", "revision": 1, "values": [] }),
            crew.clone(),
        ),
        (
            json!({ "kind": "withdraw_call", "call": 9_999 }),
            crew.clone(),
        ),
        (
            json!({ "kind": "wrong_number", "reading": 9_999 }),
            crew.clone(),
        ),
        (
            json!({ "kind": "drop_unsent", "what": "take_reading", "words": "P-1 4.70" }),
            on_foot_or_in_cab.clone(),
        ),
        (
            json!({ "kind": "inspect_face", "zone": "Z", "class": "b", "seen": "dry", "by_hand": "thumb" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "retype_soil", "zone": "Z", "class": "c", "why": "water" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "read_pins", "zone": "Z", "pins": "C1-C2", "text": "12.10" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "dig_pothole", "utility": "GAS", "mark": "P-1", "top": "98.62", "size": "2 in" }),
            crew.clone(),
        ),
        (json!({ "kind": "saw_nod", "call": 9_999 }), crew.clone()),
        (
            json!({ "kind": "see_at_face", "zone": "Z", "what": "water" }),
            on_foot_or_in_cab.clone(),
        ),
        (
            json!({ "kind": "say_pumped", "at": { "kind": "face", "zone": "Z" }, "water": 9_999 }),
            crew.clone(),
        ),
        (json!({ "kind": "say_rain" }), vec![GROUND, SUPERVISOR]),
        (
            json!({ "kind": "say_rain_stopped", "rain": 9_999 }),
            vec![GROUND, SUPERVISOR],
        ),
        (
            json!({ "kind": "see_slough", "zone": "Z", "length": "16", "height": "8", "back": "5" }),
            on_foot_or_in_cab.clone(),
        ),
        (
            json!({ "kind": "say_paint", "utility": "GAS", "gone": true }),
            on_foot_or_in_cab.clone(),
        ),
        (
            json!({ "kind": "leave_face", "zone": "Z", "alarm": 1 }),
            cab.clone(),
        ),
        (
            json!({ "kind": "say_struck", "line": "GAS" }),
            on_foot_or_in_cab.clone(),
        ),
        (
            json!({ "kind": "revise_face", "zone": "Z", "pieces": [], "why": "as told" }),
            boss.clone(),
        ),
        (
            json!({ "kind": "check_ticket", "ticket": "T", "responses": [] }),
            boss.clone(),
        ),
        (
            json!({ "kind": "allow_dig", "held": { "kind": "not_located", "mark": "P-1" }, "why": "as told" }),
            boss.clone(),
        ),
        (
            json!({ "kind": "say_bumped", "set_up": "S9" }),
            on_foot_or_in_cab.clone(),
        ),
        (
            json!({ "kind": "place_machine", "machine": "EX-1", "at": { "x": 0, "y": 0 } }),
            on_foot_or_in_cab.clone(),
        ),
        (
            json!({ "kind": "say_moved", "machine": "EX-1" }),
            on_foot_or_in_cab.clone(),
        ),
        (json!({ "kind": "got_it", "call": 9_999 }), cab.clone()),
        (json!({ "kind": "check_me" }), cab.clone()),
        (json!({ "kind": "say_cant", "why": "water" }), cab.clone()),
        (json!({ "kind": "delivered", "call": 9_999 }), cab.clone()),
        (
            json!({ "kind": "shown", "call": 9_999, "language": "english", "unit": "tenths" }),
            cab.clone(),
        ),
        (
            json!({ "kind": "see_target", "target": "PAD", "revision": 1 }),
            cab,
        ),
        (
            json!({ "kind": "confirm_site", "digest": "none" }),
            boss.clone(),
        ),
        (
            json!({ "kind": "remove_phone", "device": "d-nobody" }),
            boss.clone(),
        ),
        (json!({ "kind": "renew_codes" }), boss.clone()),
        (
            json!({ "kind": "lift_stop", "press": u64::MAX, "why": "nothing is stopped" }),
            boss.clone(),
        ),
        (
            json!({ "kind": "set_aim", "on": ["PAD"], "aim": 0, "why": "as drawn" }),
            boss.clone(),
        ),
        (
            json!({ "kind": "change_site", "put": [], "retire": [{ "list": "mark", "id": "P-1" }], "why": "" }),
            boss.clone(),
        ),
        (
            json!({ "kind": "revise_target", "target": "PAD", "grade": flat, "tolerance": tolerance, "why": "as told" }),
            boss.clone(),
        ),
        (
            json!({ "kind": "count_load", "way": "out", "material": "soil", "loose_cy": 12 }),
            on_foot_or_in_cab.clone(),
        ),
        (
            json!({ "kind": "add_ticket", "load": 9_999, "ticket": "17" }),
            on_foot_or_in_cab.clone(),
        ),
        (
            json!({ "kind": "take_back_load", "load": 9_999 }),
            on_foot_or_in_cab.clone(),
        ),
        (
            json!({ "kind": "say_waiting", "machine": "EX-1", "cause": "truck" }),
            on_foot_or_in_cab.clone(),
        ),
        (
            json!({ "kind": "work_again", "machine": "EX-1" }),
            on_foot_or_in_cab,
        ),
        (
            json!({ "kind": "add_patch", "mark": "P-1", "length": 9 * FOOT, "width": 6 * FOOT, "depth": FOOT / 4 }),
            crew.clone(),
        ),
        (
            json!({ "kind": "move_patch", "patch": "G9", "to": "filled" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "compact", "on": "PAD", "lift": 1, "thickness": FOOT / 2, "passes": 4, "damp": "right" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "test_soil", "mark": "P-9", "tester": "HF", "test": { "kind": "bearing", "stated_psf": 3_000, "asked_psf": 2_500 } }),
            crew.clone(),
        ),
        (
            json!({ "kind": "void_test", "test": 9_999, "why": "rain" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "point_rock", "mark": "P-1", "top": 100 * FOOT }),
            crew.clone(),
        ),
        (
            json!({ "kind": "measure_soil", "material": "soil", "bank_cy": 40, "how": "grid" }),
            boss.clone(),
        ),
        (json!({ "kind": "order_gravel", "tons": 24 }), boss.clone()),
        (
            json!({ "kind": "confirm_undercut", "undercut": 9_999, "why": "as told" }),
            boss.clone(),
        ),
        (
            json!({ "kind": "set_prices", "prices": { "money": "$" } }),
            boss.clone(),
        ),
        (
            json!({ "kind": "rule", "mark": "P-1", "ruling": "leave", "why": "as told" }),
            boss,
        ),
        (
            json!({ "kind": "change_screen", "language": "spanish", "unit": "millimetres" }),
            vec![GROUND, OPERATOR, SUPERVISOR, VISITOR],
        ),
        (
            json!({ "kind": "stop_all" }),
            vec![GROUND, OPERATOR, SUPERVISOR, VISITOR],
        ),
        (
            json!({ "kind": "ask_in", "machine": "EX-1", "visit": "visit-of-roles" }),
            vec![GROUND, OPERATOR, SUPERVISOR],
        ),
        (
            json!({ "kind": "withdraw_ask", "machine": "EX-1", "visit": "visit-of-roles" }),
            vec![GROUND, OPERATOR, SUPERVISOR],
        ),
        (
            json!({ "kind": "go_in", "machine": "EX-1", "visit": "visit-of-roles-2" }),
            vec![GROUND, OPERATOR, SUPERVISOR],
        ),
        (
            json!({ "kind": "come_out", "machine": "EX-1", "visit": "visit-of-roles-2" }),
            vec![GROUND, OPERATOR, SUPERVISOR],
        ),
        (
            json!({ "kind": "out_by_witness", "machine": "EX-1", "visit": "visit-of-roles-3", "why": "seen" }),
            vec![GROUND, OPERATOR, SUPERVISOR],
        ),
        (
            json!({ "kind": "bucket_down", "answers": [] }),
            vec![OPERATOR],
        ),
        (
            json!({ "kind": "say_wait", "visit": "visit-of-roles-3" }),
            vec![OPERATOR],
        ),
        (
            json!({ "kind": "refuse_entry", "visit": "visit-of-roles-3" }),
            vec![OPERATOR],
        ),
        (json!({ "kind": "release" }), vec![OPERATOR]),
        (
            json!({ "kind": "notice_link", "device": "d-1", "lost": true }),
            vec![],
        ),
        (json!({ "kind": "notice_restart" }), vec![]),
        (json!({ "kind": "open_day", "day": "2030-01-01" }), vec![]),
        (
            json!({ "kind": "read_site", "site": { "name": "Other yard", "benchmarks": [], "targets": [], "marks": [], "machines": [], "rods": [], "lasers": [] } }),
            vec![],
        ),
        (
            json!({ "kind": "join", "device": "d-1", "token_digest": "00", "person": "XX", "roles": ["supervisor"], "language": "english", "unit": "tenths" }),
            vec![],
        ),
        (
            json!({ "kind": "notice_screen", "device": "d-1", "screen": "lost" }),
            vec![],
        ),
    ]
}

/// Every command with its roles.
fn all() -> Vec<(Value, Vec<&'static str>)> {
    let mut all = table();
    all.extend(of_marks());
    all.extend(of_people());
    all.extend(of_the_record());
    all
}

/// The kinds that the contract lists: a command that is added and not in the table above fails here.
fn kinds_of_the_contract(phone: &Phone) -> Vec<String> {
    let contract = phone.json("/api/openapi.json");
    let command = &contract["components"]["schemas"]["Command"]["oneOf"];
    let kinds = command.as_array().expect("the commands").iter().map(|one| {
        let text = one.to_string();
        let after = text.split(r#""enum":[""#).nth(1).expect("a kind");
        after.split('"').next().expect("a kind").to_owned()
    });
    let mut kinds: Vec<String> = kinds.collect();
    kinds.sort();
    kinds
}

#[test]
fn the_table_of_roles_names_every_command() {
    let yard = Yard::open();
    let mut named: Vec<String> = all()
        .iter()
        .map(|(command, _)| command["kind"].as_str().expect("a kind").to_owned())
        .collect();
    named.sort();
    assert_eq!(named, kinds_of_the_contract(&yard.truck));
}

#[test]
fn each_command_is_taken_from_the_roles_that_may_say_it_and_from_no_other() {
    let yard = Yard::open();
    let phones = [
        (GROUND, yard.ground()),
        (OPERATOR, yard.cab("EX-1")),
        (
            SUPERVISOR,
            yard.truck.lets_in("PN", &["ground", "supervisor"], None),
        ),
        (VISITOR, yard.truck.lets_in("VZ", &["visitor"], None)),
    ];
    // The laptop supervises and nothing else.
    let truck = (SUPERVISOR, yard.truck.at(&yard.hub.base));
    for (command, may) in all() {
        let kind = command["kind"].clone();
        for (role, phone) in phones.iter().chain([&truck]) {
            let before = yard.hub_head();
            let reply = phone.say(&phone.fresh_key(), &command);
            if may.contains(role) {
                assert!(
                    [200, 409].contains(&reply.status),
                    "{kind} by {role}: {reply:?}"
                );
                continue;
            }
            let refused = reply.of(403);
            assert_eq!(
                refused["refusal"]["kind"], "not_allowed",
                "{kind} by {role}"
            );
            assert_ne!(refused["english"], refused["spanish"], "{kind} by {role}");
            let entries = yard.truck.json(&format!("/api/log?after={before}"));
            let by_it = entries["lines"].as_array().expect("lines").iter();
            let by_it = by_it.filter(|line| line["device"] == phone_name(phone));
            assert_eq!(by_it.count(), 0, "{kind} by {role} is in the log");
        }
    }
}

fn phone_name(phone: &Phone) -> Value {
    json!(phone.device())
}

#[test]
fn an_operator_speaks_for_the_own_cab_alone() {
    let yard = Yard::open();
    let ground = yard.ground();
    let (one, two) = (yard.cab("EX-1"), yard.cab("EX-2"));
    crate::harness::yard::prove_laser(&ground);
    let answer = ground.says(&reading("P-1", "4.70"));
    let got = json!({ "kind": "got_it", "call": answer["outcome"]["call"] });
    let refused = two.is_refused(403, &got);
    for language in ["english", "spanish"] {
        let said = refused[language].as_str().unwrap_or_default();
        assert!(said.contains("EX-1"), "{refused}");
    }
    one.says(&got);
}
