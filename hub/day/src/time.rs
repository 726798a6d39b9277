//! A moment on the hub's clock. The day never reads a clock: every moment is handed in.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

/// Milliseconds since 1970-01-01T00:00:00Z.
#[derive(
    Clone,
    Copy,
    Debug,
    Default,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    ToSchema,
)]
#[serde(transparent)]
#[schema(value_type = i64)]
pub struct Time(pub i64);

impl Time {
    /// The moment `ms` milliseconds later (earlier when negative).
    #[must_use]
    pub const fn plus_ms(self, ms: i64) -> Self {
        Self(self.0.saturating_add(ms))
    }

    /// How many milliseconds have passed since `earlier`; negative when it lies ahead.
    pub const fn ms_since(self, earlier: Self) -> i64 {
        self.0.saturating_sub(earlier.0)
    }
}

/// The moments that a rule may look at.
#[derive(Clone, Copy, Debug)]
pub(crate) struct When {
    /// The hub's clock.
    pub(crate) now: Time,
    /// When the request was made; never later than `now`.
    pub(crate) made_at: Time,
}

/// Seconds in milliseconds.
pub const fn seconds(n: i64) -> i64 {
    n * 1_000
}

/// Minutes in milliseconds.
pub const fn minutes(n: i64) -> i64 {
    n * 60_000
}

/// How long something took, in the unit that a person would say: `40 s`, `3 min`, `2 h`; the same in every language.
pub(crate) fn ago(ms: i64) -> String {
    match ms / 1_000 {
        s @ ..120 => format!("{s} s"),
        s @ 120..7_200 => format!("{} min", s / 60),
        s => format!("{} h", s / 3_600),
    }
}
