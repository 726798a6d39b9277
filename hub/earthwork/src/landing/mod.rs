//! Where do finish passes land: the mean and scatter of a machine in a soil, and how well the tolerance holds them.
//!
//! A landing is the first difference that is read after a machine was told less than a few tenths: measured − what it
//! was told to reach. Landings measure machine, soil and method; they are never counted by person.

pub mod aim;

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::length::Length;
use crate::tolerance::Tolerance;
use crate::uncertainty::{chance_between, normal};

/// Fewer landings tell nothing about where to aim (common practice).
pub const FEWEST: u32 = 8;
/// A pass is a finish pass when it was told no more than this (common practice).
pub const FINISH: Length = Length::from_hundredths_of_a_foot(35);

/// Mean and scatter of landings, in feet; positive is high.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Landing {
    /// How many.
    pub count: u32,
    /// Their mean.
    pub mean_ft: f64,
    /// Their standard deviation, with one degree of freedom spent on the mean.
    pub sd_ft: f64,
}

/// Mean and scatter; none below two landings.
pub fn landing(errors: &[Length]) -> Option<Landing> {
    let count = u32::try_from(errors.len()).ok().filter(|many| *many > 1)?;
    let many = f64::from(count);
    let mean = errors.iter().map(|one| one.feet()).sum::<f64>() / many;
    let squares: f64 = errors.iter().map(|one| (one.feet() - mean).powi(2)).sum();
    Some(Landing {
        count,
        mean_ft: mean,
        sd_ft: (squares / (many - 1.0)).sqrt(),
    })
}

/// How well a tolerance holds what a machine lands.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Capability {
    /// The tolerance by six standard deviations, Cp.
    pub cp: f64,
    /// The nearer limit by three standard deviations, Cpk.
    pub cpk: f64,
    /// The share that lands within, by the normal law.
    pub within: f64,
}

impl Landing {
    /// Capability against a tolerance. None when there is no scatter.
    ///
    /// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.1.6.
    pub fn capability(&self, tolerance: Tolerance) -> Option<Capability> {
        if self.sd_ft <= 0.0 {
            return None;
        }
        let (high, low) = (tolerance.high.feet(), -tolerance.low.feet());
        let to_high = (high - self.mean_ft) / (3.0 * self.sd_ft);
        let to_low = (self.mean_ft - low) / (3.0 * self.sd_ft);
        Some(Capability {
            cp: (high - low) / (6.0 * self.sd_ft),
            cpk: to_high.min(to_low),
            within: chance_between(Some(low), Some(high), self.mean_ft, self.sd_ft),
        })
    }

    /// Between which values the true scatter lies with this chance (0 to 1), in feet: s·√(ν/χ²) at both ends.
    pub fn sd_between(&self, chance: f64) -> (f64, f64) {
        let free = self.count.saturating_sub(1).max(1);
        let tail = ((1.0 - chance) / 2.0).clamp(1e-6, 0.5);
        let at =
            |above: f64| self.sd_ft * (f64::from(free) / chi_square_with_above(above, free)).sqrt();
        (at(tail), at(1.0 - tail))
    }

    /// One standard deviation of the mean, in feet.
    pub fn mean_doubt_ft(&self) -> f64 {
        self.sd_ft / f64::from(self.count).sqrt()
    }
}

/// The chance that chi-square with so many degrees of freedom is above `x`: a finite series for whole degrees
/// (Abramowitz and Stegun, 26.4.4 and 26.4.5).
fn chi_square_above(x: f64, free: u32) -> f64 {
    let half = x / 2.0;
    let (mut term, mut sum, mut step) = if free.is_multiple_of(2) {
        (1.0, 1.0, 1.0)
    } else {
        let root = x.sqrt();
        let first = root * 2.0 * (-half).exp() / std::f64::consts::TAU.sqrt();
        if free == 1 {
            return 2.0 * normal(-root);
        }
        (first, first, 1.5)
    };
    for _ in 0..(free / 2).saturating_sub(1) {
        term *= half / step;
        sum += term;
        step += 1.0;
    }
    if free.is_multiple_of(2) {
        (-half).exp() * sum
    } else {
        2.0 * normal(-x.sqrt()) + sum
    }
}

/// The value that chi-square is above with this chance, by halving.
fn chi_square_with_above(above: f64, free: u32) -> f64 {
    let (mut low, mut high) = (0.0, 10.0 * f64::from(free) + 100.0);
    for _ in 0..200 {
        let middle = f64::midpoint(low, high);
        if chi_square_above(middle, free) > above {
            low = middle;
        } else {
            high = middle;
        }
    }
    f64::midpoint(low, high)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    /// Source: chi-square tables of statistics textbooks.
    #[test]
    fn chi_square_is_as_tabled() {
        for (above, free, value) in [
            (0.05, 1, 3.841),
            (0.05, 2, 5.991),
            (0.95, 3, 0.352),
            (0.10, 9, 14.684),
            (0.90, 9, 4.168),
            (0.05, 20, 31.410),
        ] {
            let got = chi_square_with_above(above, free);
            assert!((got - value).abs() < 0.001, "{got} is not {value}");
        }
    }

    #[test]
    fn one_landing_has_no_scatter() {
        assert_eq!(landing(&[ft(3)]), None);
        let two = landing(&[ft(3), ft(5)]).unwrap();
        assert!(
            (two.mean_ft - 0.04).abs() < 1e-12
                && (two.sd_ft - 0.02_f64 / 2.0_f64.sqrt()).abs() < 1e-12
        );
        let none = landing(&[ft(3), ft(3)]).unwrap();
        assert_eq!(
            none.capability(Tolerance::new(ft(10), ft(20)).unwrap()),
            None
        );
    }

    proptest! {
        /// A shift of all moves the mean alone, and the interval holds the scatter.
        #[test]
        fn a_shift_moves_the_mean_alone(errors in prop::collection::vec(-30_i64..30, 3..40), by in -20_i64..20) {
            let here: Vec<Length> = errors.iter().map(|one| ft(*one)).collect();
            let there: Vec<Length> = errors.iter().map(|one| ft(one + by)).collect();
            let (here, there) = (landing(&here).unwrap(), landing(&there).unwrap());
            prop_assert!((there.mean_ft - here.mean_ft - ft(by).feet()).abs() < 1e-9);
            prop_assert!((there.sd_ft - here.sd_ft).abs() < 1e-9);
            let (low, high) = here.sd_between(0.8);
            prop_assert!(low <= here.sd_ft && here.sd_ft <= high);
        }
    }
}
