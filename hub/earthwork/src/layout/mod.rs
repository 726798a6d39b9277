//! From the drawing to the ground: stakes, tapes, ties, strings, marks and the lines that must not be crossed.
//!
//! | the question | the file |
//! |---|---|
//! | What is lettered on the offset hub? | [`stake`] |
//! | What does a tape on a slope give, level? | [`tape`] |
//! | Where do two tapes meet? | [`tie`] |
//! | Which marks does the machine take next, and which ties bring one back? | [`going`] |
//! | Is the corner square, and which one moves? | [`square`] |
//! | How far below the string is the dig? | [`string`] |
//! | May a mark be laid from this one, and how sure is it? | [`marks`] |
//! | How far from a line that must not be crossed? | [`no_cross`] |
//! | Where can a step fall, with the forms at hand? | [`step_window`] |
//! | Is it wide enough, and not too far out? | [`width`] |

pub mod going;
pub mod marks;
pub mod no_cross;
pub mod square;
pub mod stake;
pub mod step_window;
pub mod string;
pub mod tape;
pub mod tie;
pub mod width;
