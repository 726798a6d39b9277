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
    /// The latest moment that was told.
    floor: AtomicI64,
    bell: Bell,
}

#[derive(Debug)]
enum Kind {
    Real(Mutex<Running>),
    Fast {
        began: Instant,
        start: Time,
        speed: f64,
        skips: Vec<Skip>,
    },
    Stepped,
}

/// The world's clock, kept from running back.
#[derive(Clone, Copy, Debug)]
struct Running {
    /// When the laptop's clock was last not behind.
    since: Instant,
    /// What was told then: from there the hub's clock runs on, neither back nor standing still, while the laptop's is behind.
    from: Time,
    /// How far it runs ahead of the laptop's.
    ahead_ms: i64,
}

impl Running {
    /// What to tell when the laptop's clock says `world`, so long after `since`. A laptop that is set right again is followed.
    fn tell(&mut self, world: Time, after: Duration) -> Time {
        let on = self
            .from
            .plus_ms(i64::try_from(after.as_millis()).unwrap_or(i64::MAX));
        if world >= on {
            (self.since, self.from) = (self.since + after, world);
        }
        let told = world.max(on);
        self.ahead_ms = told.ms_since(world);
        told
    }
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
    /// The world's clock, but never behind `log_ends`: when the laptop's clock was set back, it goes on from there.
    pub fn real(log_ends: Time) -> Self {
        let running = Running {
            since: Instant::now(),
            from: log_ends,
            ahead_ms: 0,
        };
        let clock = Self::of(Kind::Real(Mutex::new(running)), log_ends);
        clock.now();
        clock
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
        let told = match &self.0.kind {
            Kind::Real(running) => {
                let mut running = running.lock().unwrap_or_else(PoisonError::into_inner);
                let after = running.since.elapsed();
                running.tell(world(), after)
            }
            Kind::Fast {
                began,
                start,
                speed,
                skips,
            } => fast_now(*start, began.elapsed(), *speed, skips),
            Kind::Stepped => Time(i64::MIN),
        };
        Time(self.0.floor.fetch_max(told.0, Ordering::SeqCst)).max(told)
    }

    /// How far it runs ahead of the laptop's own clock, which was set back behind what the log holds; 0 as a rule.
    pub fn ahead_ms(&self) -> i64 {
        match &self.0.kind {
            Kind::Real(running) => {
                let running = running.lock().unwrap_or_else(PoisonError::into_inner);
                running.ahead_ms
            }
            Kind::Fast { .. } | Kind::Stepped => 0,
        }
    }

    /// How many hub seconds pass in a second of the world; 0 for a stepped clock.
    pub fn speed(&self) -> f64 {
        match &self.0.kind {
            Kind::Real(_) => 1.0,
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
            Kind::Real(_) => Some(Duration::from_millis(ms)),
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

/// The laptop's own clock.
fn world() -> Time {
    let since = SystemTime::now().duration_since(SystemTime::UNIX_EPOCH);
    Time(since.map_or(0, |since| {
        i64::try_from(since.as_millis()).unwrap_or(i64::MAX)
    }))
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
    fn a_clock_that_is_set_back_goes_on_from_what_was_told() {
        let hour = 3_600_000;
        let ms = Duration::from_millis;
        let mut running = Running {
            since: Instant::now(),
            from: Time(hour),
            ahead_ms: 0,
        };
        assert_eq!(running.tell(Time(hour + 40), ms(30)), Time(hour + 40));
        // Set back an hour 500 ms later, it runs on, however often it is asked.
        for after in [500, 501, 2_000] {
            let world = i64::try_from(after).unwrap() + 40;
            let told = running.tell(Time(world), ms(after));
            assert_eq!((told, running.ahead_ms), (Time(hour + world), hour));
        }
        // Set right again, it is the laptop's own; and it follows a laptop that slept.
        let right = running.tell(Time(hour + 3_045), ms(3_000));
        assert_eq!((right, running.ahead_ms), (Time(hour + 3_045), 0));
        assert_eq!(running.tell(Time(3 * hour), ms(10)), Time(3 * hour));
        let log_ends = world().plus_ms(3_600_000);
        let clock = Clock::real(log_ends);
        assert!(clock.now() >= log_ends);
        assert!(clock.ahead_ms() > 0);
        assert_eq!(Clock::real(Time(0)).ahead_ms(), 0);
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
