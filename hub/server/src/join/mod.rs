//! How phones come in: the address they can reach, the codes that let them in, and the drawings of both.

pub mod address;
pub mod code;
pub mod qr;
