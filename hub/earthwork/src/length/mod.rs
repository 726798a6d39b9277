//! How long is it, exactly, and how do people write it?
//!
//! | to learn | read |
//! |---|---|
//! | how a length is kept, so that a verdict at the edge of a tolerance never depends on a rounding | `exact` |
//! | what people may type, always with its unit | `text` |
//! | what is said of a text that is no length | `error` |

mod error;
mod exact;
mod text;

pub use error::LengthError;
pub use exact::{Form, Length, MINUS, shown_number};
pub use text::parse;

pub(crate) use exact::{FOOT, INCH, LONGEST, METRE, mixed, nearest, whole};
pub(crate) use text::{Number, Scan, plain, short};
