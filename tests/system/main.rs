//! The whole system from outside: the real binary, its HTTP interface and its sockets; one module for each capability.
#![expect(
    clippy::expect_used,
    clippy::panic,
    clippy::print_stdout,
    reason = "a test that can't go on says why and fails"
)]

#[path = "../harness/mod.rs"]
mod harness;

mod bad_inputs;
mod checking;
mod cuts;
mod day_end;
mod delivery;
mod demo_day;
mod joining;
mod keeping;
mod kept;
mod looking_back;
mod out_of_order;
mod photos;
mod reading;
mod replayed;
mod roles;
mod verbs;
mod wire;
