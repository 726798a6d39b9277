//! Everything that reads what people or other programs wrote, tried on arbitrary and on damaged input.
//!
//! The law is the same everywhere: the reader gives a value or a sentence, never a panic, never a value that the good
//! input would not have given unnoticed, and what it says is bounded by what it was given.
//!
//! | reader | file |
//! |---|---|
//! | site file, table of marks | `site` |
//! | points and surfaces of others, CSV and `LandXML` | `survey` |
//! | log of a data folder, export, import | `log` |
//! | logs as earlier versions wrote them, and a verifier that is none of ours | `golden`, `verifier` |
//! | the shape by which a state that was put by is known | `shape` |
//! | lengths, rods, stations, plan numbers, computations | `texts` |
#![expect(
    clippy::expect_used,
    clippy::panic,
    clippy::print_stdout,
    reason = "a test that can't go on says why and fails"
)]

#[path = "../harness/mod.rs"]
#[expect(dead_code, reason = "these tests use a part of the harness")]
mod harness;

mod damage;
mod golden;
mod log;
mod shape;
mod site;
mod survey;
mod texts;
mod verifier;
