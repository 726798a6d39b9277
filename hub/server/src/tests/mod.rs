//! The hub in one piece, in process: let in, say, see, restart, halt.

mod running;
mod wire;
mod writing;
