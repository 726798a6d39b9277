//! Does the laser still hold: what a failed check puts in doubt, drift, when to check, and the sheet for the pocket.
//!
//! | the question | the file |
//! |---|---|
//! | Which readings stand after a failed check, which are shot again? | [`suspect`] |
//! | Do repeats say that the laser drifts? | [`drift`] |
//! | When is the next check due? | [`check_due`] |
//! | How well does this crew read? | [`repeats`] |
//! | What must the rod read at every mark? | [`pocket_sheet`] |
//! | How high is a sloped laser's plane here? | [`plane`] |
//! | Is the rotating laser itself true? | [`field_test`] |
//! | Do two set-ups agree? | [`transfer`] |
//! | What of a run is not proven? | [`coverage`] |
//!
//! Loops over several benchmarks are in [`crate::level_line`], the half-turn and the two-peg test in [`crate::two_peg`].

pub mod check_due;
pub mod coverage;
pub mod drift;
pub mod field_test;
pub mod plane;
pub mod pocket_sheet;
pub mod repeats;
pub mod suspect;
pub mod transfer;
