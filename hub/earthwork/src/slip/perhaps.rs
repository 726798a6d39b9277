//! What a reading that does not fit may have been instead, likeliest first.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::candidate::{Candidate, FAR, FITS, Mode, NEAR_BY};
use super::typed::{digits_swapped, feet_and_inches, inches_as_tenths};
use super::{Hypothesis, fit, likeliest};
use crate::length::Length;
use crate::rod::RodUnit;

/// What a reading may have been instead.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Perhaps {
    /// Another number on the same rod, as it would be typed.
    Reading {
        /// The number.
        value: Length,
    },
    /// Feet and inches, read off a rod in inches.
    FeetInches {
        /// That rod, when the site has one.
        rod: Option<String>,
        /// Feet.
        feet: u8,
        /// Inches.
        inches: u8,
    },
    /// Another mark.
    Mark {
        /// Which.
        id: String,
    },
}

/// What it may have been instead, likeliest first: how often the slip is made (from memory) times how well
/// the reading would then fit.
pub(super) fn perhaps(reading: &Candidate) -> Vec<Perhaps> {
    let mut weighed = other_readings(reading);
    for other in reading
        .neighbours
        .iter()
        .filter(|other| other.distance <= NEAR_BY)
    {
        let miss = (reading.elevation - other.target).abs();
        if miss <= FITS {
            let weight = if other.machines_last { 0.30 } else { 0.15 }
                * reading.learned.factor(Hypothesis::OtherMark);
            let mark = Perhaps::Mark {
                id: other.mark.clone(),
            };
            weighed.push((weight * fit(miss.feet(), 0.05), mark));
        }
    }
    likeliest(weighed)
}

fn other_readings(reading: &Candidate) -> Vec<(f64, Perhaps)> {
    if reading.mode != Mode::Rod {
        return vec![];
    }
    let rod = reading.rod;
    let typed = reading.typed - rod.bracket;
    let mut weighed = Vec::new();
    let mut add = |weight: f64, value: Length, what: Perhaps| {
        let fits = plausible(reading, reading.dev() + typed - value);
        if value >= Length::ZERO && value <= rod.length && fits > 0.0 {
            let learned = reading.learned.factor(Hypothesis::of(&what, typed));
            weighed.push((weight * learned * fits, what));
        }
    };
    for hundredths in [100, -100, 10, -10] {
        let value = typed + Length::from_hundredths_of_a_foot(hundredths);
        let weight = if hundredths.abs() == 100 { 0.20 } else { 0.10 };
        add(weight, value, Perhaps::Reading { value });
    }
    for value in digits_swapped(typed, rod) {
        add(0.12, value, Perhaps::Reading { value });
    }
    let inch_rod = reading
        .rods
        .iter()
        .find(|rod| rod.unit == RodUnit::FeetInchesEighths);
    // A rod that nobody registered is the likelier one to be typed on the wrong pad.
    let weight = if inch_rod.is_some() { 0.15 } else { 0.30 };
    for (feet, inches) in inches_as_tenths(typed, rod) {
        let what = Perhaps::FeetInches {
            rod: inch_rod.map(|rod| rod.id.clone()),
            feet,
            inches,
        };
        add(weight, feet_and_inches(feet, inches), what);
    }
    weighed
}

/// How well a difference fits what the mark may be at: between a little below target and where it last stood.
fn plausible(reading: &Candidate, dev: Length) -> f64 {
    let highest = reading
        .earlier
        .map_or(FAR * 2, |earlier| earlier.dev.max(Length::ZERO));
    let beyond = (dev - highest).max(-FITS - dev).max(Length::ZERO);
    if beyond > FITS {
        return 0.0;
    }
    fit(beyond.feet(), 0.05)
}
