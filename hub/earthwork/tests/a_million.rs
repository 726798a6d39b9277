//! Monotone and mirrored, on a million seeded inputs: a larger difference never moves toward LOW, high and low are mirror
//! images, the word goes the way of the difference, and nothing out of tolerance is told as nothing.

use earthwork::correction::{Amount, Correction, Ground, correction};
use earthwork::length::Length;
use earthwork::tolerance::{Tolerance, Verdict, verdict};

const FOOT: i64 = 3_048_000;
const INPUTS: u32 = 1_000_000;

/// Whole numbers that are the same in every run (`SplitMix64`, public domain).
struct Seeded(u64);

impl Seeded {
    /// From `low` up to `high`.
    fn between(&mut self, low: i64, high: i64) -> i64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        low + ((mixed ^ (mixed >> 31)) % (high - low + 1).unsigned_abs()).cast_signed()
    }

    fn length(&mut self, low: i64, high: i64) -> Length {
        Length::from_tenth_micrometres(self.between(low, high))
    }
}

fn rank(verdict: Verdict) -> i8 {
    match verdict {
        Verdict::Low => -2,
        Verdict::TooCloseLow => -1,
        Verdict::On => 0,
        Verdict::TooCloseHigh => 1,
        Verdict::High => 2,
    }
}

fn steps(correction: Correction) -> Option<u32> {
    match correction {
        Correction::Down(amount) | Correction::Shave(amount) | Correction::Up(amount) => {
            Some(match amount {
                Amount::HalfTenths(steps)
                | Amount::TenthsOfFeet(steps)
                | Amount::HundredthsOfFeet(steps) => steps,
            })
        }
        Correction::Grade | Correction::Wait => None,
    }
}

#[test]
fn a_million_inputs_are_monotone_and_mirrored() {
    let mut seeded = Seeded(8_211);
    let mut seen = [0_u32; 5];
    for n in 0..INPUTS {
        let dev = seeded.length(-FOOT / 2, FOOT / 2);
        let more = seeded.length(0, FOOT / 10);
        let (high, low) = (seeded.length(0, FOOT / 4), seeded.length(0, FOOT / 4));
        let tolerance = Tolerance::new(high, low).unwrap();
        // A guard as wide as all of the tolerance leaves no side that is mirrored: both answers are too close.
        let guard = seeded.length(0, (high + low).tenth_micrometres() / 2);
        let aim = seeded.length(-FOOT / 20, FOOT / 20);
        let say = || format!("input {n}: {dev} +{more}, {high}/{low}, guard {guard}, aim {aim}");

        let here = verdict(&[dev], tolerance, guard);
        assert!(
            rank(here) <= rank(verdict(&[dev + more], tolerance, guard)),
            "{}",
            say()
        );
        let turned = Tolerance::new(low, high).unwrap();
        let mirror = rank(verdict(&[-dev], turned, guard));
        let both_close = (high + low) <= guard * 2;
        assert!(mirror == -rank(here) || both_close, "{}", say());

        let ground = Ground {
            dev,
            aim,
            tolerance: Some(tolerance),
        };
        let told = correction(&ground, here, false);
        match here {
            Verdict::High => assert!(
                matches!(told, Correction::Down(_) | Correction::Shave(_)),
                "{}",
                say()
            ),
            Verdict::Low => assert!(matches!(told, Correction::Up(_)), "{}", say()),
            Verdict::On => assert_eq!(told, Correction::Grade, "{}", say()),
            Verdict::TooCloseHigh | Verdict::TooCloseLow => {
                assert_eq!(told, Correction::Wait, "{}", say());
            }
        }
        // Less than a hundredth is told only where a hundredth would be too deep.
        let hundredth = Length::from_hundredths_of_a_foot(1);
        let no_room = dev - hundredth < -low;
        assert!(steps(told) != Some(0) || no_room, "{}", say());
        seen[usize::try_from(rank(here) + 2).unwrap()] += 1;
    }
    println!("{INPUTS} inputs: low, too close, on, too close, high = {seen:?}");
    assert!(seen.iter().all(|count| *count > 10_000), "{seen:?}");
}
