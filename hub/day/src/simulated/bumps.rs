//! Bumps thrown into simulated days: how soon they are noticed, and whether the list to shoot again holds all that is wrong.

use earthwork::length::Length;
use earthwork::slip::Doubt;
use earthwork::tolerance::{Tolerance, Verdict, verdict};

use super::{Came, Chance, HEIGHT, SHOT, days, digging, marks, send, typed};
use crate::answer::Outcome;
use crate::given::{Crew, len, reading};
use crate::said::reading::{Question, TakeReading};
use crate::time::{Time, minutes};

/// BM-2 of the simulated site, in feet.
const BENCHMARK: f64 = 101.52;
/// One standard deviation of a shot on a benchmark, in feet.
const CHECK: f64 = 0.005;
/// The crew shoots a benchmark each hour.
const HOURLY_MS: i64 = minutes(60);

/// A crew at work with a laser that may have moved.
struct Day {
    crew: Crew,
    chance: Chance,
    /// When the laser moves, and by how much everything is found too high from then on, in feet.
    bump: (Time, f64),
    /// When somebody was first told to check the laser, after the bump.
    told: Option<Time>,
    /// Prompts while the laser was still true, and residuals of that time.
    false_prompts: u32,
    residuals: u32,
    /// Marks, with true height above target in feet.
    dug: Vec<(String, f64, f64)>,
    checked_at: Time,
    over: bool,
}

impl Day {
    fn fault(&self) -> f64 {
        if self.crew.now >= self.bump.0 {
            self.bump.1
        } else {
            0.0
        }
    }

    /// A reading of ground so far above its target; the laser as it stands now.
    fn read(&mut self, mark: &str, dig_to: f64, dev: f64) -> TakeReading {
        let seen = dig_to + dev + self.fault() + self.chance.normal(SHOT);
        reading(mark, &typed(HEIGHT - seen))
    }

    fn take(&mut self, reading: TakeReading) {
        let asked = send(&mut self.crew, reading.clone());
        let due = self.crew.state.set_up("S1").unwrap().due;
        let drifts = due.is_some_and(|(why, _)| why == earthwork::laser::check_due::Due::Drift);
        let repeat_asked = matches!(asked, Came::Asked(id) if self.is_repeat(id));
        if drifts || repeat_asked {
            self.prompted();
        }
        if let Came::Asked(id) = asked
            && !self.over
        {
            let sure = Some(id);
            send(&mut self.crew, TakeReading { sure, ..reading });
        }
    }

    fn is_repeat(&self, question: u64) -> bool {
        matches!(
            self.crew.state.asked[&question].question,
            Question::DoesNotFit {
                doubt: Doubt::RepeatOff { .. }
            }
        )
    }

    /// Somebody is told to check the laser, and does so two minutes later.
    fn prompted(&mut self) {
        if self.crew.now >= self.bump.0 {
            self.told.get_or_insert(self.crew.now);
        } else {
            self.false_prompts += 1;
        }
        self.crew.wait(minutes(2));
        self.check();
    }

    fn check(&mut self) {
        let seen = BENCHMARK + self.fault() + self.chance.normal(CHECK);
        let text = typed(HEIGHT - seen);
        let answer = self.crew.check("S1", "BM-2", &text).unwrap();
        self.checked_at = self.crew.now;
        if let Outcome::Checked { usable: false, .. } = answer.outcome {
            self.told.get_or_insert(self.crew.now);
            self.over = true;
        }
    }

    fn work(&mut self) {
        let all = marks();
        for (mark, dig_to) in &all {
            let mut dev = self.chance.between(0.3, 2.5);
            for look in 0..8 {
                let pause = self.chance.whole(3, 8);
                self.crew.wait(minutes(pause));
                if self.crew.now.ms_since(self.checked_at) >= HOURLY_MS {
                    self.check();
                }
                if !self.over && look == 2 {
                    self.repeat();
                }
                if self.over {
                    return;
                }
                let shot = self.read(mark, *dig_to, dev);
                self.take(shot);
                if self.over {
                    return;
                }
                // The crew digs to what the laser says, not to what is true.
                let seen = dev + self.fault();
                if seen < 0.09 {
                    break;
                }
                let left = if seen > 0.45 {
                    seen * self.chance.between(0.15, 0.5)
                } else {
                    self.chance.normal(0.04)
                };
                dev = left - self.fault();
            }
            self.dug.push((mark.clone(), *dig_to, dev));
        }
        // The closing check finds what nothing else has.
        self.crew.wait(minutes(5));
        self.check();
    }

    /// An accepted mark that nobody has touched is shot again on the way.
    fn repeat(&mut self) {
        let Some((mark, dig_to, dev)) = self.dug.last().cloned() else {
            return;
        };
        let accepted = self
            .crew
            .state
            .last_reading(&mark)
            .is_some_and(|(_, taken)| {
                taken
                    .reading
                    .judged
                    .as_ref()
                    .is_some_and(|judged| judged.verdict == Verdict::On)
            });
        if accepted {
            if self.crew.now < self.bump.0 {
                self.residuals += 1;
            }
            let shot = self.read(&mark, dig_to, dev);
            self.take(shot);
            self.crew.wait(minutes(2));
        }
    }

    /// Marks whose verdict the bump has turned round, and whether each is on the list to shoot again.
    fn wrong(&self) -> Vec<(String, bool)> {
        let Some(suspect) = self.crew.state.suspects.last() else {
            return vec![];
        };
        let tolerance = Tolerance::new(len("0.10 ft"), len("0.20 ft")).unwrap();
        let fault = Length::from_feet(self.bump.1).unwrap();
        let last = marks().into_iter().filter_map(|(mark, _)| {
            let (_, taken) = self.crew.state.last_reading(&mark)?;
            Some((mark, taken))
        });
        last.filter(|(_, taken)| taken.made_at >= self.bump.0)
            .filter_map(|(mark, taken)| {
                let judged = taken.reading.judged.as_ref()?;
                // What an unmoved laser would have found, without a guard: the ground as it is.
                let truly = verdict(&[judged.mean - fault], tolerance, Length::ZERO);
                let settled = matches!(judged.verdict, Verdict::High | Verdict::On | Verdict::Low);
                let turned = settled && judged.verdict != truly;
                turned.then(|| (mark.clone(), suspect.open.contains(&mark)))
            })
            .collect()
    }
}

fn day(seed: u64, bumped: bool) -> Day {
    let mut chance = Chance(seed.wrapping_mul(7919) + 17);
    let crew = digging();
    let after = chance.whole(20, 200);
    let size = chance.between(0.05, 0.20) * chance.pick(&[1.0, -1.0]);
    let at = if bumped {
        crew.now.plus_ms(minutes(after))
    } else {
        Time(i64::MAX)
    };
    let checked_at = crew.now;
    let mut day = Day {
        crew,
        chance,
        bump: (at, size),
        told: None,
        false_prompts: 0,
        residuals: 0,
        dug: vec![],
        checked_at,
        over: false,
    };
    day.work();
    day
}

#[test]
fn a_bump_is_noticed_soon_and_everything_wrong_is_shot_again() {
    let (mut minutes_to_prompt, mut wrong, mut listed, mut stand, mut again) = (vec![], 0, 0, 0, 0);
    for seed in 0..days(150) {
        let day = day(seed, true);
        let Some(told) = day.told else {
            // The day was over before the bump.
            assert!(day.crew.now < day.bump.0, "{seed}: never noticed");
            continue;
        };
        minutes_to_prompt.push(told.ms_since(day.bump.0) / minutes(1));
        for (mark, is_listed) in day.wrong() {
            wrong += 1;
            listed += u32::from(is_listed);
            assert!(
                is_listed,
                "{seed}: {mark} is wrong and nobody is sent there"
            );
        }
        for suspect in &day.crew.state.suspects {
            let marks = &suspect.window.marks;
            let owed = marks.iter().filter(|mark| mark.standing.is_owed());
            again += owed
                .clone()
                .filter(|mark| suspect.open.contains(&mark.mark))
                .count();
            stand += marks.len() - owed.count();
        }
    }
    minutes_to_prompt.sort_unstable();
    let at = |share: usize| minutes_to_prompt[minutes_to_prompt.len() * share / 100];
    println!(
        "minutes from bump to prompt: median {}, nine in ten {}, of {} days",
        at(50),
        at(90),
        minutes_to_prompt.len()
    );
    println!("verdicts turned round by the bump: {wrong}, listed {listed}");
    println!("marks in doubt: {again} to shoot again, {stand} stand");
    assert!(minutes_to_prompt.len() > 80);
    assert!(at(50) <= 25, "{}", at(50));
    assert!(wrong > 20, "{wrong}");
    assert!(stand > 20, "the list is shorter than everything: {stand}");
}

#[test]
fn a_laser_that_stands_still_is_seldom_accused() {
    let (mut prompts, mut residuals) = (0, 0);
    for seed in 0..days(60) {
        let day = day(seed + 1_000_000, false);
        prompts += day.false_prompts;
        residuals += day.residuals;
        assert!(day.crew.state.suspects.is_empty(), "{seed}");
    }
    println!("false prompts: {prompts} in {residuals} repeats");
    assert!(residuals > 300, "{residuals}");
    assert!(
        f64::from(prompts) <= 0.05 * f64::from(residuals),
        "{prompts} of {residuals}"
    );
}
