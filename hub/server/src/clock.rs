//! The only place that reads the time: the real clock, the demo's fast one, and one that the demo's player steps.

use std::sync::atomic::{AtomicI64, Ordering};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, Instant, SystemTime, UNIX_EPOCH};

use day::time::Time;

/// The hub's clock. Cheap to clone; all clones show the same moment. It never runs back.
#[derive(Clone, Debug)]
pub struct Clock(Arc<Kind>);

#[derive(Debug)]
enum Kind {
    /// The machine's own clock.
    Real {
        /// The latest moment shown: the machine's clock may be set back under us.
        latest: AtomicI64,
    },
    /// Runs at a speed of its own, and may be told to skip ahead.
    Fast {
        /// Hub seconds in a real second.
        speed: f64,
        /// Where it was last set.
        since: Mutex<Segment>,
    },
    /// Stands still until it is stepped.
    Stepped(AtomicI64),
}

/// From this real instant on, the clock runs evenly from this moment.
#[derive(Clone, Copy, Debug)]
struct Segment {
    real: Instant,
    shown: Time,
}

impl Clock {
    /// The machine's own clock.
    pub fn real() -> Self {
        Self(Arc::new(Kind::Real {
            latest: AtomicI64::new(i64::MIN),
        }))
    }

    /// A clock that starts at a moment and runs `speed` times as fast as the real one; at least at a tenth of it.
    pub fn fast(start: Time, speed: f64) -> Self {
        Self(Arc::new(Kind::Fast {
            speed: if speed.is_finite() { speed.max(0.1) } else { 1.0 },
            since: Mutex::new(Segment {
                real: Instant::now(),
                shown: start,
            }),
        }))
    }

    /// A clock that stands at a moment until it is told to skip ahead.
    pub fn stepped(start: Time) -> Self {
        Self(Arc::new(Kind::Stepped(AtomicI64::new(start.0))))
    }

    /// What it shows now.
    pub fn now(&self) -> Time {
        match &*self.0 {
            Kind::Real { latest } => {
                let real = SystemTime::now()
                    .duration_since(UNIX_EPOCH)
                    .map_or(0, |since| i64::try_from(since.as_millis()).unwrap_or(i64::MAX));
                Time(latest.fetch_max(real, Ordering::SeqCst).max(real))
            }
            Kind::Fast { speed, since } => {
                let since = *since.lock().unwrap_or_else(PoisonError::into_inner);
                since.shown.plus_ms(scaled(since.real.elapsed(), *speed))
            }
            Kind::Stepped(shown) => Time(shown.load(Ordering::SeqCst)),
        }
    }

    /// Hub seconds in a real second: 1 on a real day, 0 while a clock stands still between steps.
    pub fn speed(&self) -> f64 {
        match &*self.0 {
            Kind::Real { .. } => 1.0,
            Kind::Fast { speed, .. } => *speed,
            Kind::Stepped(_) => 0.0,
        }
    }

    /// Whether it stands still until it is stepped.
    pub fn is_stepped(&self) -> bool {
        matches!(*self.0, Kind::Stepped(_))
    }

    /// Skips ahead to a moment; a moment that has passed changes nothing, and nobody skips the real clock.
    pub fn skip_to(&self, moment: Time) {
        match &*self.0 {
            Kind::Real { .. } => {}
            Kind::Fast { speed, since } => {
                let mut since = since.lock().unwrap_or_else(PoisonError::into_inner);
                let shown = since.shown.plus_ms(scaled(since.real.elapsed(), *speed));
                *since = Segment {
                    real: Instant::now(),
                    shown: shown.max(moment),
                };
            }
            Kind::Stepped(shown) => {
                shown.fetch_max(moment.0, Ordering::SeqCst);
            }
        }
    }

    /// How long to wait, in real time, until it shows a moment; none for a clock that waits to be stepped.
    pub fn real_time_until(&self, moment: Time) -> Option<Duration> {
        let ms = u64::try_from(moment.ms_since(self.now())).unwrap_or(0);
        if self.is_stepped() {
            return (ms == 0).then_some(Duration::ZERO);
        }
        Some(Duration::from_millis(ms).div_f64(self.speed()))
    }
}

/// Real time as hub milliseconds.
fn scaled(elapsed: Duration, speed: f64) -> i64 {
    i64::try_from(elapsed.mul_f64(speed).as_millis()).unwrap_or(i64::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_stepped_clock_stands_still_and_never_runs_back() {
        let clock = Clock::stepped(Time(1_000));
        assert_eq!(clock.now(), Time(1_000));
        assert_eq!(clock.real_time_until(Time(1_001)), None);
        clock.clone().skip_to(Time(61_000));
        clock.skip_to(Time(2_000));
        assert_eq!(clock.now(), Time(61_000));
        assert_eq!(clock.real_time_until(Time(61_000)), Some(Duration::ZERO));
    }

    #[test]
    fn a_fast_clock_skips_ahead_alone() {
        let clock = Clock::fast(Time(0), 60.0);
        clock.skip_to(Time(3_600_000));
        let shown = clock.now();
        assert!(shown >= Time(3_600_000));
        clock.skip_to(Time(0));
        assert!(clock.now() >= shown);
        assert!(clock.real_time_until(clock.now().plus_ms(60_000)) <= Some(Duration::from_secs(1)));
    }

    #[test]
    fn a_real_clock_is_skipped_by_nobody() {
        let clock = Clock::real();
        let before = clock.now();
        clock.skip_to(Time(i64::MAX));
        assert!(clock.now() >= before);
        assert!(clock.now() < Time(i64::MAX));
    }
}
