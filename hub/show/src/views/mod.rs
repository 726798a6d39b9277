//! What each screen shows: pure functions of the state, one file for each screen.
//!
//! A view is a whole value. It holds moments, never ages, so that it changes only when something happened;
//! the screen counts the ages itself, from heartbeats.

pub mod account;
pub mod call;
pub mod contour;
pub mod cuts;
mod cuts_owed;
pub mod exception;
mod exceptions;
pub mod ground;
pub mod laser_cards;
pub mod machine_card;
pub mod mark_card;
pub mod operator;
pub mod papers;
pub mod parts;
pub mod pocket;
pub mod record;
pub mod sheet;
pub mod start;
pub mod supervisor;
pub mod visitor;
pub mod way_in;
