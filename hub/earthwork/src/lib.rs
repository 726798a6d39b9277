//! The arithmetic.
