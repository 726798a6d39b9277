//! How sure are we: one standard uncertainty for a shot, and the guard band that follows from it.
//!
//! Every part is one standard deviation in feet; parts add in squares. The figures for reading and surface
//! are common practice, to be replaced by what a crew's own blind repeats show.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::figure::{Figure, FigureError, can_be_feet};
use crate::length::{FOOT, Length, whole};

/// What the rod stands on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Surface {
    /// Trimmed or compacted: 0.012 ft.
    Trimmed,
    /// Marked by bucket teeth: 0.03 ft.
    ToothMarked,
    /// Rock, old concrete, cobbles: 0.05 ft.
    HardOrRock,
}

/// How the rod was read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Care {
    /// The receiver on fine: 0.005 ft.
    Fine,
    /// The receiver on coarse: 0.010 ft.
    Coarse,
    /// The rod read by eye: 0.02 ft.
    ByEye,
    /// A muddy rod, or in a hurry: 0.03 ft.
    Muddy,
}

/// A text read only to the tenth: 0.03 ft, a tenth over the square root of twelve.
const COARSE_TEXT: f64 = 0.03;

/// Everything that makes a shot doubtful; lengths are one standard deviation or distances, at or above zero.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Doubts {
    /// Of the benchmark.
    pub benchmark: Length,
    /// How rod and backsight were read.
    pub reading: Care,
    /// The foresight was typed only to the tenth.
    pub coarse_text: bool,
    /// What the rod stood on.
    pub surface: Surface,
    /// Of the laser's plane, per 100 ft of distance.
    pub laser_per_100_ft: Length,
    /// From the laser to the benchmark.
    pub backsight_distance: Length,
    /// From the laser to the ground shot.
    pub foresight_distance: Length,
    /// How many shots are averaged; the set-up's own doubt does not average out.
    pub shots: u32,
    /// What this crew's own blind repeats show of one reading, in place of the usual figure for a receiver.
    #[serde(default)]
    pub own_reading: Option<Length>,
}

/// The squares of what is known of a shot before anybody reads it, in square feet: of the set-up and of the ground.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct DoubtParts {
    /// Of the benchmark.
    pub benchmark: f64,
    /// Of the laser's plane over the backsight.
    pub backsight: f64,
    /// Of the laser's plane over the ground shot.
    pub foresight: f64,
    /// Of what the rod stands on.
    pub surface: f64,
}

impl Doubts {
    /// The same, when each doubt is a standard deviation and each distance one of a site.
    ///
    /// # Errors
    /// When one is below zero or beyond every site's.
    pub fn checked(self) -> Result<Doubts, FigureError> {
        let doubts = [
            Some(self.benchmark),
            Some(self.laser_per_100_ft),
            self.own_reading,
        ];
        for doubt in doubts.into_iter().flatten() {
            can_be_feet(Figure::Deviation, doubt)?;
        }
        for distance in [self.backsight_distance, self.foresight_distance] {
            can_be_feet(Figure::Distance, distance)?;
        }
        Ok(self)
    }

    /// The parts that do not hang on how the rod is read.
    pub fn parts(&self) -> DoubtParts {
        let at = |distance: Length| self.laser_per_100_ft.feet() * distance.feet() / 100.0;
        let square = |value: f64| value * value;
        let surface = match self.surface {
            Surface::Trimmed => 0.012,
            Surface::ToothMarked => 0.03,
            Surface::HardOrRock => 0.05,
        };
        DoubtParts {
            benchmark: square(self.benchmark.feet()),
            backsight: square(at(self.backsight_distance)),
            foresight: square(at(self.foresight_distance)),
            surface: square(surface),
        }
    }

    /// The square of the standard uncertainty, in square feet.
    pub(crate) fn variance(&self) -> f64 {
        let square = |value: f64| value * value;
        let parts = self.parts();
        let reading = match self.reading {
            Care::Fine => 0.005,
            Care::Coarse => 0.010,
            Care::ByEye => 0.02,
            Care::Muddy => 0.03,
        };
        let own = match (self.own_reading, self.reading) {
            (Some(own), Care::Fine | Care::Coarse) => own.feet(),
            (Some(own), Care::ByEye | Care::Muddy) => own.feet().max(reading),
            (None, _) => reading,
        };
        let typed: f64 = if self.coarse_text { COARSE_TEXT } else { 0.0 };
        let set_up = parts.benchmark + square(reading) + parts.backsight;
        let shot = square(typed.max(own)) + parts.foresight + parts.surface;
        set_up + shot / f64::from(self.shots.max(1))
    }
}

/// One standard deviation of the elevation difference, in feet.
pub fn standard_uncertainty(doubts: &Doubts) -> f64 {
    doubts.variance().sqrt()
}

/// The guard band k·u, rounded up to the next count. A k that is not a positive number gives none.
pub fn guard(doubts: &Doubts, k: f64) -> Length {
    let feet = if k > 0.0 {
        k * standard_uncertainty(doubts)
    } else {
        0.0
    };
    let counts = (feet * FOOT as f64).ceil().min(FOOT as f64 * 1000.0);
    Length::from_tenth_micrometres(whole(counts))
}

/// The chance that the true value lies between limits, for a measured value and its standard uncertainty, both
/// in the same unit. A limit that is not given is none; the uncertainty is above zero.
///
/// Source: Φ((high − y)/u) − Φ((low − y)/u), as the guide to measurement in conformity assessment (JCGM 106) has it.
pub fn chance_between(low: Option<f64>, high: Option<f64>, value: f64, uncertainty: f64) -> f64 {
    let below = |limit: f64| normal((limit - value) / uncertainty);
    high.map_or(1.0, below) - low.map_or(0.0, below)
}

/// The chance that a normal deviate is below `z`, to about 1e-12: the series ½ + φ(z)·(z + z³/3 + z⁵/15 + …),
/// whose terms are all of one sign.
pub(crate) fn normal(z: f64) -> f64 {
    if z.abs() > 8.0 {
        return if z > 0.0 { 1.0 } else { 0.0 };
    }
    let density = normal_density(z);
    let (mut term, mut sum, mut odd) = (z, z, 3.0);
    while term.abs() > 1e-17 {
        term *= z * z / odd;
        sum += term;
        odd += 2.0;
    }
    0.5 + density * sum
}

/// The density of a normal deviate at `z`.
pub(crate) fn normal_density(z: f64) -> f64 {
    (-z * z / 2.0).exp() / std::f64::consts::TAU.sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shot(reading: Care, surface: Surface, distance: i64, shots: u32) -> Doubts {
        let th = Length::from_thousandths_of_a_foot;
        Doubts {
            benchmark: th(5),
            reading,
            coarse_text: false,
            surface,
            laser_per_100_ft: th(5),
            backsight_distance: th(70_000),
            foresight_distance: th(distance * 1000),
            shots,
            own_reading: None,
        }
    }

    /// Derived from the sum of squares with the defaults of this file (common practice).
    #[test]
    fn usual_shots_have_the_usual_uncertainty() {
        for (reading, surface, distance, expected) in [
            (Care::Coarse, Surface::Trimmed, 60, 0.0198),
            (Care::Fine, Surface::Trimmed, 60, 0.0155),
            (Care::Coarse, Surface::ToothMarked, 120, 0.0342),
        ] {
            let u = standard_uncertainty(&shot(reading, surface, distance, 1));
            assert!((u - expected).abs() < 0.000_06, "{u} is not {expected}");
        }
    }

    #[test]
    fn a_doubt_below_zero_is_refused() {
        let usual = shot(Care::Coarse, Surface::Trimmed, 60, 1);
        assert!(usual.clone().checked().is_ok());
        let wrong = Doubts {
            benchmark: -usual.benchmark,
            ..usual.clone()
        };
        assert!(wrong.checked().is_err());
        let far = Doubts {
            foresight_distance: -usual.foresight_distance,
            ..usual
        };
        assert!(far.checked().is_err());
    }

    /// Derived: u² = set-up² + shot²/n.
    #[test]
    fn repeats_do_not_average_the_set_up_out() {
        let one = standard_uncertainty(&shot(Care::Coarse, Surface::Trimmed, 60, 1));
        let two = standard_uncertainty(&shot(Care::Coarse, Surface::Trimmed, 60, 2));
        let many = standard_uncertainty(&shot(Care::Coarse, Surface::Trimmed, 60, 1_000_000));
        assert!((two - 0.0162).abs() < 0.000_06, "{two}");
        assert!(two < one && (many - 0.011_715).abs() < 0.000_01, "{many}");
    }

    #[test]
    fn a_text_to_the_tenth_widens_the_guard_band_and_k_scales_it() {
        let fine = shot(Care::Coarse, Surface::Trimmed, 60, 1);
        let coarse = Doubts {
            coarse_text: true,
            ..fine.clone()
        };
        assert!(guard(&coarse, 1.0) > guard(&fine, 1.0));
        assert!(guard(&fine, 1.65) > guard(&fine, 1.0));
        assert_eq!(guard(&fine, f64::NAN), Length::ZERO);
        let exact = standard_uncertainty(&fine) * FOOT as f64;
        let counts = guard(&fine, 1.0).tenth_micrometres() as f64;
        assert!(counts >= exact && counts < exact + 1.0);
    }
}
