//! The day as a state machine. Pure: no clock, no I/O, no randomness; every moment is handed in.
//!
//! A command comes in ([`asked`]), [`decide`] makes entries of it or refuses ([`refusal`]), [`apply`] folds each entry
//! ([`entry`]) into the state ([`state`]), and the views ([`views`]) show it. What was answered is derived from the entries
//! ([`answer`]), so a repeat of a request, a restart and a replay give the same.
//!
//! | to learn | read |
//! |---|---|
//! | what a person can say, and every rule about it | `said/`, one file for each thing |
//! | who may say it | [`permit`] |
//! | what a line of the log is, and how it is proven | [`chain`] |
//! | what each screen shows | [`views`], one file for each screen |
//! | what is counted: loads, gravel, tests, hours | [`account`], at the site's own [`prices`] |
//! | how an entry reads as a sentence | [`tell`] |
//! | a day afterwards: as built, calls, lanes, who told | [`review`], one file for each question |
//! | what is open, now or when a day is closed | [`open`] |
//! | cuts, faces and what is buried | [`cuts`] |
//! | closing, signing, visitors, inspections, queries, photos | [`record`] |
//! | which calls may stand, after each entry | `standing.rs` |
//! | which words come too late | `overtaken.rs` |
//! | whether a last reading still speaks for its mark | [`last`] |
//! | what is near a machine from where it stands | [`near`] |
//! | what a site is made of, what can be wrong with it, and what is odd | [`site`], [`site_faults`], [`plan_sense`] |

pub mod account;
pub mod answer;
mod apply;
pub mod asked;
pub mod built;
pub mod cab;
pub mod call;
pub mod chain;
pub mod coverage;
pub mod cuts;
mod decide;
pub mod entry;
#[cfg(test)]
mod given;
pub mod going;
mod keep_out;
pub mod last;
pub mod lengths;
pub mod near;
pub mod open;
mod overtaken;
pub mod permit;
pub mod plan_sense;
pub mod prices;
pub mod record;
pub mod refusal;
mod refusal_es;
#[cfg(test)]
mod replay;
pub mod review;
pub mod said;
#[cfg(test)]
mod simulated;
pub mod site;
pub mod site_faults;
mod standing;
pub mod state;
pub mod tell;
pub mod time;
pub mod views;
pub mod way_in;

pub use apply::{answered, apply};
pub use decide::{decide, next_deadline, on_deadline};
pub use standing::Following;
