//! How often somebody may try: a bucket of tokens for each, refilled over time.

use std::collections::BTreeMap;
use std::sync::{Mutex, PoisonError};
use std::time::Instant;

/// Names that are remembered at most; the fullest buckets are forgotten first, which costs nobody anything.
const REMEMBERED: usize = 4_096;

/// Buckets by name.
#[derive(Debug)]
pub struct Limits {
    size: f64,
    per_second: f64,
    buckets: Mutex<BTreeMap<String, Bucket>>,
}

#[derive(Clone, Copy, Debug)]
struct Bucket {
    tokens: f64,
    at: Instant,
}

impl Limits {
    /// Buckets of `size` tokens, refilled at `per_second`.
    pub fn new(size: f64, per_second: f64) -> Self {
        Self {
            size,
            per_second,
            buckets: Mutex::default(),
        }
    }

    /// Whether this name has a token left, without taking it.
    pub fn has(&self, name: &str) -> bool {
        self.level(name, Instant::now()) >= 1.0
    }

    /// Takes a token; false when there is none.
    pub fn take(&self, name: &str) -> bool {
        self.take_at(name, Instant::now())
    }

    fn level(&self, name: &str, now: Instant) -> f64 {
        let buckets = self.buckets.lock().unwrap_or_else(PoisonError::into_inner);
        buckets
            .get(name)
            .map_or(self.size, |bucket| self.filled(*bucket, now))
    }

    fn filled(&self, bucket: Bucket, now: Instant) -> f64 {
        let since = now.saturating_duration_since(bucket.at).as_secs_f64();
        (bucket.tokens + since * self.per_second).min(self.size)
    }

    fn take_at(&self, name: &str, now: Instant) -> bool {
        let level = self.level(name, now);
        if level < 1.0 {
            return false;
        }
        let mut buckets = self.buckets.lock().unwrap_or_else(PoisonError::into_inner);
        if buckets.len() >= REMEMBERED {
            buckets.retain(|_, bucket| self.filled(*bucket, now) < self.size);
        }
        let tokens = level - 1.0;
        buckets.insert(name.to_owned(), Bucket { tokens, at: now });
        true
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::time::Duration;

    #[test]
    fn a_bucket_empties_and_fills_again_for_each_name() {
        let limits = Limits::new(2.0, 1.0);
        let now = Instant::now();
        assert!(limits.take_at("a", now) && limits.take_at("a", now));
        assert!(!limits.take_at("a", now));
        assert!(limits.take_at("b", now));
        assert!(limits.take_at("a", now + Duration::from_millis(1_100)));
        assert!(!limits.take_at("a", now + Duration::from_millis(1_200)));
    }
}
