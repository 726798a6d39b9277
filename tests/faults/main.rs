//! What happens when the laptop dies or its disk fails: what was answered is kept, what is not kept is never shown.
#![expect(
    clippy::expect_used,
    clippy::panic,
    clippy::print_stdout,
    reason = "a test that can't go on says why and fails"
)]

#[path = "../harness/mod.rs"]
#[expect(dead_code, reason = "these tests use a part of the harness")]
mod harness;

mod clock;
mod crew;
mod disk;
mod kill;
mod photo;
mod power_cut;
mod shim;
