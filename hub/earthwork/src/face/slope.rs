//! How steep a face stands and how steep it may stand: run to one of rise, never the rule's rounded degrees.

use super::{ExcavationRules, FaceError, SoilClass};
use crate::length::Length;
use crate::vector::{counts, rounded};

/// A face as it stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PresentSlope {
    /// From toe to crest, up.
    pub rise: Length,
    /// From toe to crest, level; negative overhangs.
    pub run: Length,
    /// Run to one of rise.
    pub run_per_rise: f64,
}

/// A slope in degrees from level: 0 to 1 is 90°.
pub fn degrees(run_per_rise: f64) -> f64 {
    1.0_f64.atan2(run_per_rise).to_degrees()
}

/// The slope from a toe to a crest.
///
/// # Errors
/// When the crest does not stand above the toe.
pub fn present_slope(rise: Length, run: Length) -> Result<PresentSlope, FaceError> {
    if rise <= Length::ZERO {
        return Err(FaceError::Negative {
            what: words::face::what::toe_to_crest(),
            value: rise,
        });
    }
    Ok(PresentSlope {
        rise,
        run,
        run_per_rise: counts(run) / counts(rise),
    })
}

/// How far the crest must go back before the face is as flat as owed; zero when it is.
pub fn crest_back(present: &PresentSlope, owed: f64) -> Length {
    rounded((counts(present.rise) * owed - counts(present.run)).ceil()).max(Length::ZERO)
}

/// The steepest slope for a class and a depth, run to one of rise.
///
/// # Errors
/// Below the tables an engineer designs it; a depth below zero is none.
pub fn owed_slope(
    rules: &ExcavationRules,
    class: SoilClass,
    depth: Length,
    short_term: bool,
    distress: bool,
) -> Result<f64, FaceError> {
    if depth < Length::ZERO {
        return Err(FaceError::Negative {
            what: words::face::what::depth(),
            value: depth,
        });
    }
    if rules.engineer.owed(depth) {
        return Err(FaceError::Engineer {
            depth,
            limit: rules.engineer.depth,
            section: rules.engineer.section.clone(),
        });
    }
    let usual = rules.slopes.of(class);
    let steepest = match &rules.short_term {
        Some(short) if short_term && class == SoilClass::A && depth <= short.depth => short.a,
        _ => usual,
    };
    Ok(if distress {
        usual + rules.distress.flatter
    } else {
        steepest
    })
}

/// The slope of each layer, from the top down: none steeper than the flattest that it or any layer below it needs
/// (Appendix B, the layered figures in one rule).
pub fn layered(rules: &ExcavationRules, from_top: &[SoilClass]) -> Vec<f64> {
    let mut flattest = 0.0_f64;
    let mut from_bottom: Vec<f64> = from_top
        .iter()
        .rev()
        .map(|class| {
            flattest = flattest.max(rules.slopes.of(*class));
            flattest
        })
        .collect();
    from_bottom.reverse();
    from_bottom
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    #[test]
    fn a_face_as_flat_as_owed_owes_nothing_and_a_count_steeper_owes_a_count() {
        let flat = present_slope(ft(1000), ft(1500)).unwrap();
        assert_eq!(crest_back(&flat, 1.5), Length::ZERO);
        let count = Length::from_tenth_micrometres(1);
        let steep = present_slope(ft(1000), ft(1500) - count).unwrap();
        assert_eq!(crest_back(&steep, 1.5), count);
        assert!(present_slope(ft(0), ft(100)).is_err());
        assert!(present_slope(ft(-100), ft(100)).is_err());
    }

    #[test]
    fn signs_of_distress_take_the_short_term_away() {
        let rules = ExcavationRules::us_federal();
        let at = |short, distress| owed_slope(rules, SoilClass::A, ft(1000), short, distress);
        assert_eq!(at(true, false), Ok(0.5));
        assert_eq!(at(true, true), Ok(1.25));
        assert!(owed_slope(rules, SoilClass::A, ft(-1), false, false).is_err());
    }
}
