//! The only place that reads the time of day. A demo's clock starts with its day and may run faster than the world's.

use std::fmt;
use std::sync::atomic::{AtomicI64, Ordering};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, Instant, SystemTime};

use day::time::Time;

/// The hub's clock; clones share it. It never runs back.
#[derive(Clone, Debug)]
pub struct Clock(Arc<Inner>);

#[derive(Debug)]
struct Inner {
    kind: Kind,
    /// The latest moment that was told: a clock set back holds still until it is caught up.
    floor: AtomicI64,
    bell: Bell,
}

#[derive(Debug)]
enum Kind {
    Real,
    Fast {
        began: Instant,
        start: Time,
        speed: f64,
        skips: Vec<Skip>,
    },
    Stepped,
}

/// A stretch of a demo's day in which nothing happens: the clock jumps over it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Skip {
    /// Where it jumps from.
    pub from: Time,
    /// Where it lands.
    pub to: Time,
}

/// Rung when a stepped clock is moved, so that what waits for a moment looks again.
#[derive(Default)]
struct Bell(Mutex<Option<Box<dyn Fn() + Send + Sync>>>);

impl fmt::Debug for Bell {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Bell")
    }
}

impl Clock {
    /// The world's clock.
    pub fn real() -> Self {
        Self::of(Kind::Real, Time(i64::MIN))
    }

    /// A clock that begins at `start` now and runs `speed` times as fast, jumping over the skips, which are in order.
    pub fn fast(start: Time, speed: f64, skips: Vec<Skip>) -> Self {
        let kind = Kind::Fast {
            began: Instant::now(),
            start,
            speed,
            skips,
        };
        Self::of(kind, start)
    }

    /// A clock that stands still until somebody moves it.
    pub fn stepped(start: Time) -> Self {
        Self::of(Kind::Stepped, start)
    }

    fn of(kind: Kind, floor: Time) -> Self {
        Self(Arc::new(Inner {
            kind,
            floor: AtomicI64::new(floor.0),
            bell: Bell::default(),
        }))
    }

    /// Now.
    pub fn now(&self) -> Time {
        let raw = match &self.0.kind {
            Kind::Real => SystemTime::now()
                .duration_since(SystemTime::UNIX_EPOCH)
                .map_or(0, |since| {
                    i64::try_from(since.as_millis()).unwrap_or(i64::MAX)
                }),
            Kind::Fast {
                began,
                start,
                speed,
                skips,
            } => fast_now(*start, began.elapsed(), *speed, skips).0,
            Kind::Stepped => i64::MIN,
        };
        Time(self.0.floor.fetch_max(raw, Ordering::SeqCst).max(raw))
    }

    /// How many hub seconds pass in a second of the world; 0 for a stepped clock.
    pub fn speed(&self) -> f64 {
        match &self.0.kind {
            Kind::Real => 1.0,
            Kind::Fast { speed, .. } => *speed,
            Kind::Stepped => 0.0,
        }
    }

    /// True when somebody moves it by hand.
    pub fn is_stepped(&self) -> bool {
        matches!(self.0.kind, Kind::Stepped)
    }

    /// How long in the world until a moment; none when only a step can bring it.
    pub fn wait_for(&self, moment: Time) -> Option<Duration> {
        let ms = moment.ms_since(self.now()).max(0);
        let ms = u64::try_from(ms).unwrap_or(0);
        match &self.0.kind {
            Kind::Real => Some(Duration::from_millis(ms)),
            Kind::Fast { speed, .. } => Some(Duration::from_millis(ms).div_f64(speed.max(0.001))),
            Kind::Stepped => None,
        }
    }

    /// Moves a stepped clock forward; any other clock goes its own way.
    pub fn step_to(&self, moment: Time) {
        if self.is_stepped() {
            self.0.floor.fetch_max(moment.0, Ordering::SeqCst);
            let bell = self.0.bell.0.lock().unwrap_or_else(PoisonError::into_inner);
            if let Some(ring) = bell.as_ref() {
                ring();
            }
        }
    }

    /// What is to happen when the clock is stepped.
    pub fn on_step(&self, ring: impl Fn() + Send + Sync + 'static) {
        let mut bell = self.0.bell.0.lock().unwrap_or_else(PoisonError::into_inner);
        *bell = Some(Box::new(ring));
    }
}

#[expect(
    clippy::cast_possible_truncation,
    reason = "a demo's milliseconds fit into 53 bits"
)]
fn fast_now(start: Time, elapsed: Duration, speed: f64, skips: &[Skip]) -> Time {
    let mut now = start.plus_ms((elapsed.as_secs_f64() * speed * 1_000.0) as i64);
    for skip in skips {
        // A start inside the stretch has only what is left of it to jump over.
        let from = Time(skip.from.0.max(start.0));
        if now >= from && skip.to > from {
            now = now.plus_ms(skip.to.ms_since(from));
        }
    }
    now
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_stepped_clock_stands_until_it_is_moved_and_never_runs_back() {
        let clock = Clock::stepped(Time(1_000));
        assert_eq!(clock.now(), Time(1_000));
        clock.step_to(Time(5_000));
        clock.step_to(Time(2_000));
        assert_eq!(clock.now(), Time(5_000));
        assert_eq!(clock.wait_for(Time(6_000)), None);
    }

    #[test]
    fn a_fast_clock_jumps_over_what_is_skipped() {
        let skips = [Skip {
            from: Time(10_000),
            to: Time(60_000),
        }];
        let at = |ms| fast_now(Time(0), Duration::from_millis(ms), 10.0, &skips);
        assert_eq!(at(900), Time(9_000));
        assert_eq!(at(1_100), Time(61_000));
        // A restart inside of the stretch, or behind it.
        let from = |start| fast_now(Time(start), Duration::ZERO, 10.0, &skips);
        assert_eq!(from(20_000), Time(60_000));
        assert_eq!(from(70_000), Time(70_000));
    }

    #[test]
    fn a_step_rings_the_bell() {
        let clock = Clock::stepped(Time(0));
        let rung = Arc::new(AtomicI64::new(0));
        let count = Arc::clone(&rung);
        clock.on_step(move || {
            count.fetch_add(1, Ordering::SeqCst);
        });
        clock.step_to(Time(1));
        assert_eq!(rung.load(Ordering::SeqCst), 1);
    }
}
