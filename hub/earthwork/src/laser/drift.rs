//! Do repeats say that the laser drifts: sums of what repeats and checks miss by, up and down.
//!
//! Two cumulative sums, S⁺ = max(0, S⁺ + z − k) and S⁻ = max(0, S⁻ − z − k) with z the residual over its own
//! standard deviation, k = 0.5 and h = 4 (statistics textbooks' cumulative sum chart). In control, both sides
//! together, it speaks up falsely about once in 168 residuals, which the test below measures.

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::length::Length;

/// What is forgiven of each residual, in standard deviations.
const FORGIVEN: f64 = 0.5;
/// Beyond this a sum speaks up, in standard deviations.
const SPEAKS_UP: f64 = 4.0;
/// A check shot's standard deviation in feet (common practice).
pub const CHECK_DOUBT_FT: f64 = 0.008;
/// A repeat's: √2 times the 0.016 ft of one shot on trimmed ground (common practice).
pub const REPEAT_DOUBT_FT: f64 = 0.016 * std::f64::consts::SQRT_2;

/// The sums so far, in standard deviations; both are zero after a good check of the laser.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Drift {
    /// Of residuals above zero.
    pub up: f64,
    /// Of residuals below zero.
    pub down: f64,
}

/// What the sums say.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum DriftSign {
    /// Nothing yet.
    Quiet,
    /// Everything is found higher than before: check the laser now.
    Higher,
    /// Everything is found lower than before: check the laser now.
    Lower,
}

/// Why a residual is not counted.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum DriftError {
    /// A doubt that is no doubt.
    Doubt,
}

impl DriftError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::Doubt => words::laser::drift::doubt().into(),
        }
    }
}

words::error!(DriftError);

impl Drift {
    /// The sums after one more residual with its standard deviation in feet.
    ///
    /// # Errors
    /// When the doubt is not a number above zero.
    pub fn after(self, residual: Length, doubt_ft: f64) -> Result<Drift, DriftError> {
        if !(doubt_ft.is_finite() && doubt_ft > 0.0) {
            return Err(DriftError::Doubt);
        }
        let z = residual.feet() / doubt_ft;
        Ok(Drift {
            up: (self.up + z - FORGIVEN).max(0.0),
            down: (self.down - z - FORGIVEN).max(0.0),
        })
    }

    /// What the sums say.
    pub fn says(self) -> DriftSign {
        if self.up > SPEAKS_UP && self.up >= self.down {
            DriftSign::Higher
        } else if self.down > SPEAKS_UP {
            DriftSign::Lower
        } else {
            DriftSign::Quiet
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::length::{FOOT, whole};
    use proptest::prelude::*;

    fn th(thousandths: i64) -> Length {
        Length::from_thousandths_of_a_foot(thousandths)
    }

    fn after(residuals: &[i64]) -> Drift {
        residuals.iter().fold(Drift::default(), |drift, residual| {
            drift.after(th(*residual), REPEAT_DOUBT_FT).unwrap()
        })
    }

    /// Derived: 0.13 / 0.0226 = 5.7, less 0.5 is beyond 4; 0.03 / 0.0226 = 1.33, less 0.5, five times, is 4.1.
    #[test]
    fn one_large_or_five_small_repeats_speak_up() {
        assert_eq!(after(&[130]).says(), DriftSign::Higher);
        assert_eq!(after(&[-130]).says(), DriftSign::Lower);
        assert_eq!(after(&[30; 4]).says(), DriftSign::Quiet);
        assert_eq!(after(&[30; 5]).says(), DriftSign::Higher);
        assert_eq!(after(&[10; 1000]).says(), DriftSign::Quiet);
        for doubt in [0.0, -0.01, f64::NAN, f64::INFINITY] {
            let error = Drift::default().after(th(1), doubt).unwrap_err();
            assert!(error.to_string().contains("above 0"), "{error}");
            assert!(error.text().spanish.contains("mayor que 0"), "{error:?}");
        }
    }

    /// A standard normal deviate from a seeded generator: twelve uniforms less six would cut the tails, so Box and
    /// Muller's transform of two 53-bit uniforms of a 64-bit xorshift.
    struct Seeded(u64);

    impl Seeded {
        fn uniform(&mut self) -> f64 {
            self.0 ^= self.0 << 13;
            self.0 ^= self.0 >> 7;
            self.0 ^= self.0 << 17;
            ((self.0 >> 11) as f64 + 0.5) / (1_u64 << 53) as f64
        }

        fn normal(&mut self) -> f64 {
            let (radius, turn) = (self.uniform(), self.uniform());
            (-2.0 * radius.ln()).sqrt() * (std::f64::consts::TAU * turn).cos()
        }
    }

    /// How many residuals of a laser that is off by `shift` standard deviations pass until it speaks up, in the mean.
    fn mean_run(shift: f64, runs: u32) -> f64 {
        let mut seeded = Seeded(0x5EED_0007);
        let mut residuals = 0_u32;
        for _ in 0..runs {
            let mut drift = Drift::default();
            while drift.says() == DriftSign::Quiet {
                let feet = (seeded.normal() + shift) * REPEAT_DOUBT_FT;
                let residual = Length::from_tenth_micrometres(whole((feet * FOOT as f64).round()));
                drift = drift.after(residual, REPEAT_DOUBT_FT).unwrap();
                residuals += 1;
            }
        }
        f64::from(residuals) / f64::from(runs)
    }

    /// Mean run lengths of the two-sided chart with k = 0.5 and h = 4: 168 in control, 8.38 at one standard
    /// deviation, 3.34 at two. From memory of the statistics handbooks' tables; 4,000 runs come within 5 %.
    #[test]
    fn its_false_alarms_and_its_speed_are_what_the_tables_say() {
        for (shift, expected) in [(0.0, 168.0), (1.0, 8.38), (2.0, 3.34)] {
            let got = mean_run(shift, 4000);
            println!(
                "off by {shift} standard deviations: told after {got:.1} residuals, {expected} by the tables"
            );
            assert!((got / expected - 1.0).abs() < 0.05, "{shift}: {got}");
        }
    }

    proptest! {
        /// Turning every residual over turns HIGHER into LOWER.
        #[test]
        fn up_and_down_are_alike(residuals in prop::collection::vec(-80_i64..80, 0..30)) {
            let turned: Vec<i64> = residuals.iter().map(|residual| -residual).collect();
            let (one, other) = (after(&residuals), after(&turned));
            prop_assert_eq!((one.up, one.down), (other.down, other.up));
        }
    }
}
