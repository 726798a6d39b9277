//! By what a state that was put by is known again: by its shape, and by the rules that folded it.
//!
//! A state of another shape, or folded by other rules, is not taken: the days before are folded from the log, once, and the
//! day goes on as it would have. So nothing is ever lost by a wrong guess here, and nothing old is taken for new.

use std::sync::LazyLock;

use day::chain::digest;

/// Every type that a state is made of, each with a digest of its fields: made and held to the code by `tests/readers/shape.rs`.
const SHAPE: &str = include_str!("state_shape.txt");
/// Counts the times that a fold changed what it makes of the same entries though the shape stayed; a golden log whose put-by
/// state is not what it folds to says when.
const RULES: u32 = 1;

/// What stands before a state that is put by.
pub fn known_by() -> &'static str {
    static KNOWN_BY: LazyLock<String> =
        LazyLock::new(|| format!("{RULES}-{}", digest(SHAPE.as_bytes())));
    &KNOWN_BY
}
