//! Who may say what of marks, edges and faces.

use serde_json::{Value, json};

use super::{GROUND, OPERATOR, SUPERVISOR};

/// The same of marks, edges and faces.
pub(super) fn of_marks() -> Vec<(Value, Vec<&'static str>)> {
    let crew = vec![GROUND, SUPERVISOR];
    let on_foot_or_in_cab = vec![GROUND, OPERATOR, SUPERVISOR];
    vec![
        (
            json!({ "kind": "say_came_down", "zone": "Z" }),
            on_foot_or_in_cab.clone(),
        ),
        (
            json!({ "kind": "lay_marks", "marks": ["P-1"], "from": { "kind": "hub" } }),
            crew.clone(),
        ),
        (
            json!({ "kind": "check_marks", "marks": ["P-1"], "apart": "0.01" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "scrape_marks", "marks": ["P-1"] }),
            on_foot_or_in_cab.clone(),
        ),
        (
            json!({ "kind": "take_ties", "mark": "P-1", "first": "BM-1", "first_tape": "9", "second": "BM-2", "second_tape": "9" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "measure_diagonals", "what": "PAD", "base": "3", "across": "4", "a_to_c": "5", "b_to_d": "5" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "read_edge", "machine": "EX-1", "text": "0.30" }),
            crew.clone(),
        ),
        (
            json!({ "kind": "quick_call", "machine": "EX-1", "word": "more" }),
            crew.clone(),
        ),
    ]
}
