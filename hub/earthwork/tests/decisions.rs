//! Wrong decisions, simulated and predicted: ground out of tolerance that is accepted, ground in tolerance that is not.
//!
//! The prediction is that of the guide to measurement in conformity assessment (JCGM 106, "The role of measurement
//! uncertainty in conformity assessment"): with a guard band g, a shot of standard uncertainty u accepts ground at y with the
//! chance Φ((U − g − y)/u) − Φ((L + g − y)/u); over all ground the two risks are its integrals. The ground is invented.

use earthwork::length::Length;
use earthwork::tolerance::{Tolerance, Verdict, verdict};
use earthwork::uncertainty::{Care, Doubts, Surface, chance_between, guard, standard_uncertainty};

/// Finish passes of a machine: mean and standard deviation of the ground above target, in feet (invented, demo).
const GROUND: (f64, f64) = (-0.02, 0.06);
const HIGH: f64 = 0.10;
const LOW: f64 = -0.20;

/// A chance between 0 and 1, the same in every run (`SplitMix64`, public domain).
fn chance(seed: &mut u64) -> f64 {
    *seed = seed.wrapping_add(0x9E37_79B9_7F4A_7C15);
    let mut mixed = *seed;
    mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    ((mixed ^ (mixed >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
}

/// A normal deviate (Box and Muller).
fn normal(seed: &mut u64) -> f64 {
    let (radius, angle) = (chance(seed).max(1e-12), chance(seed));
    (-2.0 * radius.ln()).sqrt() * (std::f64::consts::TAU * angle).cos()
}

fn doubts(surface: Surface) -> Doubts {
    let hundredths = Length::from_hundredths_of_a_foot;
    Doubts {
        benchmark: Length::from_thousandths_of_a_foot(5),
        reading: Care::Coarse,
        coarse_text: false,
        surface,
        laser_per_100_ft: Length::from_thousandths_of_a_foot(5),
        backsight_distance: hundredths(7_000),
        foresight_distance: hundredths(6_000),
        shots: 1,
        own_reading: None,
    }
}

/// Accepted though out, and not accepted though in, as shares of all ground: by integrating over the ground.
fn predicted(band: f64, u: f64) -> (f64, f64) {
    let (mean, deviation) = GROUND;
    let steps = 20_000;
    let width = 16.0 * deviation / f64::from(steps);
    (0..steps)
        .map(|n| {
            let y = mean + (f64::from(n) + 0.5) * width - 8.0 * deviation;
            let z = (y - mean) / deviation;
            let share = width * (-0.5 * z * z).exp() / (deviation * std::f64::consts::TAU.sqrt());
            let accepted = chance_between(Some(LOW + band), Some(HIGH - band), y, u);
            if (LOW..=HIGH).contains(&y) {
                (0.0, share * (1.0 - accepted))
            } else {
                (share * accepted, 0.0)
            }
        })
        .fold((0.0, 0.0), |sum, one| (sum.0 + one.0, sum.1 + one.1))
}

#[test]
fn wrong_decisions_come_as_often_as_the_guide_predicts() {
    let tolerance = Tolerance::new(
        Length::from_hundredths_of_a_foot(10),
        Length::from_hundredths_of_a_foot(20),
    )
    .unwrap();
    let shots = 200_000_u32;
    for (n, (surface, k)) in [
        (Surface::Trimmed, 0.0),
        (Surface::Trimmed, 1.0),
        (Surface::ToothMarked, 1.0),
        (Surface::ToothMarked, 1.65),
    ]
    .into_iter()
    .enumerate()
    {
        let doubts = doubts(surface);
        let u = standard_uncertainty(&doubts);
        let band = guard(&doubts, k);
        let mut seed = 106 + n as u64;
        let (mut accepted_out, mut refused_in) = (0_u32, 0_u32);
        for _ in 0..shots {
            let ground = GROUND.0 + GROUND.1 * normal(&mut seed);
            let read = Length::from_feet(ground + u * normal(&mut seed)).unwrap();
            let accepted = verdict(&[read], tolerance, band) == Verdict::On;
            let is_in = (LOW..=HIGH).contains(&ground);
            accepted_out += u32::from(accepted && !is_in);
            refused_in += u32::from(!accepted && is_in);
        }
        let (want_out, want_in) = predicted(band.feet(), u);
        for (what, got, want) in [
            ("accepted though out", accepted_out, want_out),
            ("not accepted though in", refused_in, want_in),
        ] {
            let got = f64::from(got) / f64::from(shots);
            // Five standard deviations of a counted share.
            let scatter = 5.0 * (want * (1.0 - want) / f64::from(shots)).sqrt();
            println!("{surface:?}, k = {k}: {what}: {got:.5}, predicted {want:.5}");
            assert!(
                (got - want).abs() <= scatter,
                "{surface:?} {k} {what}: {got} {want}"
            );
        }
        // A guard band buys fewer wrong acceptances with more second shots.
        let (bare_out, bare_in) = predicted(0.0, u);
        assert!(want_out <= bare_out && want_in >= bare_in);
    }
}
