//! Words.
