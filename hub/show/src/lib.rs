//! What people see of the day: views, the review, sentences. Pure: no clock, no I/O, and no rule looks up here.
//!
//! What a rule needs too (as built, what is proven, what is open, what fills a cab's screen) is in `day`, which can't name this
//! crate.
//!
//! | to learn | read |
//! |---|---|
//! | what each screen shows | [`views`], one file for each screen |
//! | who is known, and what the day is | [`board`] |
//! | a day afterwards: calls, marks, lanes, who told | [`review`], one file for each question |
//! | how an entry reads as a sentence | [`tell`] |

pub mod board;
pub mod review;
pub mod tell;
pub mod views;
