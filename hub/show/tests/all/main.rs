//! Days told through to what people see of them: one binary, on the yard and the crew that the tests of `day` use too.

#![expect(
    clippy::panic,
    clippy::unwrap_used,
    reason = "these helpers serve tests alone"
)]

mod cuts;
mod last;
mod on_screen;
mod parts;
mod preview;
mod record;
mod replay;
mod sentences;
mod suspect;
mod ties;
