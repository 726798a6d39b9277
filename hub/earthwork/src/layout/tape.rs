//! What does a tape on a slope give, level: H = √(S² − Δz²), exact by Pythagoras and not by a small-angle rule.

use words::Text;

use crate::length::{Length, whole};

/// Why a slope tape gives no level distance.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TapeError {
    /// No tape.
    NoTape {
        /// As given.
        slope: Length,
    },
    /// The ends differ in height by more than the tape is long.
    TooSteep {
        /// Along the slope.
        slope: Length,
        /// Between the ends, in height.
        rise: Length,
    },
}

impl TapeError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::NoTape { slope } => words::layout::tape::no_tape(slope),
            Self::TooSteep { slope, rise } => words::layout::tape::too_steep(slope, rise),
        }
    }
}

words::error!(TapeError);

/// The level distance under a tape held along a slope; `rise` is the height between its ends, of either sign.
///
/// # Errors
/// When the tape has no length, or the rise is as long as the tape.
pub fn level_distance(slope: Length, rise: Length) -> Result<Length, TapeError> {
    if slope <= Length::ZERO {
        return Err(TapeError::NoTape { slope });
    }
    let rise = rise.abs();
    if rise >= slope {
        return Err(TapeError::TooSteep { slope, rise });
    }
    // (S − Δz)(S + Δz) keeps the digits that squares would lose on a steep tape.
    let counts = |length: Length| length.tenth_micrometres() as f64;
    let level = (counts(slope - rise) * counts(slope + rise)).sqrt();
    Ok(Length::from_tenth_micrometres(whole(level.round())))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    /// Mathematics: 5-4-3, and √(50² − 4²) = 49.8397.
    #[test]
    fn a_slope_tape_is_longer_than_the_ground_plan() {
        assert_eq!(level_distance(ft(500), ft(-400)), Ok(ft(300)));
        let level = level_distance(ft(5000), ft(400)).unwrap();
        assert!((level.feet() - 49.839_743).abs() < 1e-6, "{level}");
        assert_eq!(level_distance(ft(5000), ft(0)), Ok(ft(5000)));
    }

    #[test]
    fn impossible_tapes_are_refused() {
        let steep = level_distance(ft(400), ft(-500)).unwrap_err();
        assert!(
            steep.to_string().contains("5 ft apart in height"),
            "{steep}"
        );
        assert!(steep.text().spanish.contains("5 ft de altura"), "{steep:?}");
        assert!(level_distance(ft(400), ft(400)).is_err());
        assert!(level_distance(ft(0), ft(0)).is_err());
    }

    proptest! {
        /// Level is never longer than the tape, and the three sides keep Pythagoras.
        #[test]
        fn pythagoras_holds(slope in 100_i64..20_000, part in 0_i64..100) {
            let (slope, rise) = (ft(slope), ft(slope * part / 101));
            let level = level_distance(slope, rise).unwrap();
            prop_assert!(level <= slope);
            let back = level.feet().hypot(rise.feet());
            prop_assert!((back - slope.feet()).abs() < 1e-5, "{back}");
        }
    }
}
