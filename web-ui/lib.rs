//! The phone pages.
