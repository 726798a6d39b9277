//! How words become Rust: read, held against one another, written. The build script is made of it, and so are its tests.

pub(crate) mod check;
pub(crate) mod message;
pub(crate) mod read;
pub(crate) mod source;
pub(crate) mod write;
