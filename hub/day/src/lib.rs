//! The day.
