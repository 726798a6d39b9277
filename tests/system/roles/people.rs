//! Who may say who somebody is, whose cab it is, how long codes last, and where a machine stands.

use serde_json::{Value, json};

use super::{GROUND, OPERATOR, SUPERVISOR, VISITOR};

pub(super) fn of_people() -> Vec<(Value, Vec<&'static str>)> {
    let boss = vec![SUPERVISOR];
    vec![
        (
            json!({ "kind": "set_codes_last", "lasts": "this_week" }),
            boss.clone(),
        ),
        (
            json!({ "kind": "confirm_person", "device": "d-0", "person": "PN" }),
            boss.clone(),
        ),
        (
            json!({ "kind": "let_stay", "device": "d-0", "stays": true }),
            boss,
        ),
        (
            json!({ "kind": "give_cab", "machine": "EX-1" }),
            vec![OPERATOR, SUPERVISOR],
        ),
        (
            json!({ "kind": "say_who", "person": "RT", "same": true }),
            vec![GROUND, OPERATOR, SUPERVISOR, VISITOR],
        ),
        (
            json!({ "kind": "stand_here", "at": { "kind": "mark", "mark": "P-1" } }),
            vec![OPERATOR],
        ),
        (
            json!({ "kind": "see_out", "machine": "EX-1", "visit": "visit-of-roles-3" }),
            vec![GROUND, OPERATOR, SUPERVISOR],
        ),
    ]
}
