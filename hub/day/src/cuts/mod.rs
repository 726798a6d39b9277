//! Cuts and what is buried: what the site says of them, what is known of them now, and what holds work back.
//!
//! | the question | the file |
//! |---|---|
//! | What does the site file say? | [`plan`] |
//! | What is known now? | [`now`] |
//! | How high is the face here, who stands under it? | `strip` |
//! | Where does it come to daylight, against every line? | [`daylight`] |
//! | Which rule is next at this depth? | [`depth`] |
//! | What is near underground? | [`buried`] |
//! | What holds a call back? | [`held`] |

pub mod buried;
pub mod daylight;
pub mod depth;
pub mod held;
pub mod now;
pub mod plan;
pub mod strip;
