//! The day as a state machine. Pure: no clock, no I/O, no randomness; every moment is handed in.
//!
//! A command comes in ([`asked`]), [`decide()`] makes entries of it or refuses ([`refusal`]), [`apply()`] folds each entry
//! ([`entry`]) into the state ([`state`]). What people see of it is in the crate `show`, which this one can't name. What was
//! answered is derived from the entries
//! ([`answer`]), so a repeat of a request, a restart and a replay give the same.
//!
//! | to learn | read |
//! |---|---|
//! | what a person can say, and every rule about it | `said/`, one file for each thing |
//! | who may say it | [`permit`] |
//! | what a line of the log is, and how it is proven | [`chain`] |
//! | how a line that an older hub wrote is read | [`older`] |
//! | what people read for the names that the hub gives | [`read_as`] |
//! | what a call says, and where it is in its life | [`call`] |
//! | what fills a cab's screen, the gravest thing first | [`cab`] |
//! | what was built, and what is proven along a run | [`built`], [`coverage`] |
//! | what is counted: loads, gravel, tests, hours | [`account`], at the site's own [`prices`] |
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
#[cfg(any(test, feature = "given"))]
pub mod given;
pub mod going;
pub mod happening;
pub mod keep_out;
pub mod last;
pub mod lengths;
pub mod near;
pub mod older;
pub mod open;
mod overtaken;
pub mod permit;
pub mod plan_sense;
pub mod prices;
pub mod read_as;
pub mod record;
pub mod refusal;
pub mod said;
mod saying;
#[cfg(test)]
mod simulated;
pub mod site;
pub mod site_faults;
mod standing;
pub mod state;
pub mod time;
pub mod way_in;

pub use apply::{answered, apply};
pub use decide::{decide, next_deadline, on_deadline};
pub use standing::Following;
