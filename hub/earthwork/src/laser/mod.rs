//! Does the laser still hold: what a failed check puts in doubt, drift, when to check, and the sheet for the pocket.
//!
//! | the question | the file |
//! |---|---|
//! | Which readings stand after a failed check, which are shot again? | [`suspect`] |
//! | Do repeats say that the laser drifts? | [`drift`] |
//! | When is the next check due? | [`check_due`] |
//! | How well does this crew read? | [`repeats`] |
//! | What must the rod read at every mark? | [`pocket_sheet`] |
//!
//! Loops over several benchmarks are in [`crate::level_line`], the half-turn and the two-peg test in [`crate::two_peg`].

pub mod check_due;
pub mod drift;
pub mod pocket_sheet;
pub mod repeats;
pub mod suspect;
