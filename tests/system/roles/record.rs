//! Who may say what of the record of the day and of its start.

use serde_json::{Value, json};

use super::{GROUND, OPERATOR, SUPERVISOR, VISITOR};

/// The same of the record of the day and of its start; the close last, behind which little is taken.
pub(super) fn of_the_record() -> Vec<(Value, Vec<&'static str>)> {
    let crew = vec![GROUND, SUPERVISOR];
    let not_visitors = vec![GROUND, OPERATOR, SUPERVISOR];
    let boss = vec![SUPERVISOR];
    let visits = vec![SUPERVISOR, VISITOR];
    let signature = json!({ "name": "PN", "strokes": "M1 1L2 2" });
    vec![
        (
            json!({ "kind": "add_note", "words": "rain" }),
            not_visitors.clone(),
        ),
        (
            json!({ "kind": "promise_photo", "photo": "photo-of-roles", "sha256": "0".repeat(64) }),
            not_visitors,
        ),
        (
            json!({ "kind": "add_photo", "photo": "photo-of-roles", "sha256": "0".repeat(64), "bytes": 1 }),
            vec![],
        ),
        (
            json!({ "kind": "give_up_photo", "photo": "photo-of-roles", "why": "lost" }),
            boss.clone(),
        ),
        (
            json!({ "kind": "miss_head", "person": "RT", "remembered": { "seq": 9, "hash": "00" }, "has": null, "log_ends": 8 }),
            vec![],
        ),
        (json!({ "kind": "visit", "on_site": true }), visits.clone()),
        (
            json!({ "kind": "show_runs", "person": "VZ", "targets": [] }),
            boss.clone(),
        ),
        (
            json!({ "kind": "ask_inspection", "what": "pad", "of": "county" }),
            boss.clone(),
        ),
        (
            json!({ "kind": "inspect", "inspector": "VZ", "items": [], "result": "passed", "words": "fine" }),
            boss.clone(),
        ),
        (
            json!({ "kind": "sign_inspection", "inspection": 9_999, "signature": signature }),
            visits,
        ),
        (
            json!({ "kind": "ask_query", "question": "how deep?", "of": "engineer", "on": ["P-3"], "stop": false }),
            crew.clone(),
        ),
        (
            json!({ "kind": "answer_query", "query": "Q1", "answer": "a foot", "answered_by": "engineer" }),
            boss.clone(),
        ),
        (
            json!({ "kind": "be_spotter", "machine": "EX-9" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "end_spotter", "machine": "EX-9" }),
            crew.clone(),
        ),
        (json!({ "kind": "low_battery" }), vec![OPERATOR]),
        (
            json!({ "kind": "agree_slew", "sides": [
                { "machine": "EX-8", "keeps_out_of": "east" }, { "machine": "EX-9", "keeps_out_of": "west" },
            ] }),
            boss.clone(),
        ),
        (
            json!({ "kind": "say_agreed", "with": "EX-9", "keeps_out_of": "east" }),
            vec![OPERATOR],
        ),
        (
            json!({ "kind": "say_start_check", "check": "hat_and_vest", "value": "all heard" }),
            crew,
        ),
        (json!({ "kind": "ready_day" }), boss.clone()),
        (
            json!({ "kind": "tell_near_miss", "number": 9, "words": "seen" }),
            boss.clone(),
        ),
        (
            json!({ "kind": "close_day", "overrides": [] }),
            boss.clone(),
        ),
        (
            json!({ "kind": "sign_day", "signature": signature }),
            boss.clone(),
        ),
        (
            json!({ "kind": "amend_day", "entry": 1, "words": "so", "signature": signature }),
            boss,
        ),
    ]
}
