//! The day as a state machine: command → entries → state → views. Pure: no clock, no I/O.

pub mod answer;
pub mod asked;
pub mod entry;
pub mod refusal;
mod refusal_es;
pub mod said;
pub mod site;
pub mod time;
pub mod views;
