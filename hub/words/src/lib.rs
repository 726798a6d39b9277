//! The hub's own sentences in every language that a screen speaks.
//!
//! They stand in `hub/words/<language>/hub/*.ftl`, in the format of Project Fluent, which translators' tools read. The build makes
//! a function of each message, and fails where a language does not say what English says: `words::refusal::no_day()` is the
//! message `no_day` of `refusal.ftl` in each language. A name's level before a `-` is a module.
//!
//! A language is added by its folder, a line in `web-ui/src/languages.json`, and a variant and a field in `text.rs`.

#[cfg(test)]
#[path = "../build/mod.rs"]
mod build;
mod error;
mod fixed;
mod number;
mod said;
mod text;

pub use fixed::Fixed;
pub use number::Number;
pub use said::Said;
pub use text::{Language, Text};

#[expect(
    clippy::all,
    reason = "made by the build: a sentence names as many things as it needs, and nobody reads how it is put together"
)]
mod made {
    include!(concat!(env!("OUT_DIR"), "/hub.rs"));
}

pub use made::*;

#[cfg(test)]
mod tests;
