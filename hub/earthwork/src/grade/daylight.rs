//! Where a cut face meets the ground: d = h·m / (1 − m·s), by plane geometry.

use super::GradeError;
use crate::length::Length;
use crate::vector::{counts, rounded};

/// Where a face comes out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Daylight {
    /// From the toe, level.
    pub distance: Length,
    /// Above the toe.
    pub height: Length,
}

/// No face goes farther out for one up, and no ground is steeper, in feet per foot.
const STEEPEST: f64 = 1_000.0;

/// A face that comes out farther than so many times as far as on level ground is as good as parallel to it: a foot of rise in
/// a hundred that nobody has measured moves the place by half (derived).
const FARTHEST: f64 = 50.0;

/// Where a face of `slope` horizontal to 1 vertical meets ground that stands `depth` above its toe and rises
/// `rise` feet per foot away from the cut (negative falls).
///
/// # Errors
/// When the depth or the slope is below zero, a number is one that no ground has, or the face never meets the ground or only where both
/// are almost parallel.
pub fn daylight(depth: Length, slope: f64, rise: f64) -> Result<Daylight, GradeError> {
    if depth < Length::ZERO {
        return Err(GradeError::NegativeSize {
            what: words::grade::what::depth(),
            value: depth,
        });
    }
    for (what, value, wrong) in [
        (words::grade::what::faces_slope(), slope, slope < 0.0),
        (words::grade::what::grounds_rise(), rise, false),
    ] {
        if wrong || !(-STEEPEST..=STEEPEST).contains(&value) {
            return Err(GradeError::NotANumber {
                what,
                value: value.to_string(),
            });
        }
    }
    if slope * rise >= 1.0 {
        return Err(GradeError::NeverDaylights {
            rise: rise.to_string(),
            slope: slope.to_string(),
        });
    }
    if (1.0 - slope * rise) * FARTHEST < 1.0 {
        return Err(GradeError::AlmostParallel {
            rise: rise.to_string(),
            slope: slope.to_string(),
        });
    }
    let distance = counts(depth) * slope / (1.0 - slope * rise);
    Ok(Daylight {
        distance: rounded(distance),
        height: depth + rounded(distance * rise),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Derived from the slope-stake formula: half base 20 ft, 1½ to 1, centre cut 8 ft, ground ±10 %: the stake
    /// stands 37.647 or 27.826 ft out, at a cut of 11.765 or 5.217 ft.
    #[test]
    fn a_slope_stake_stands_where_face_and_ground_meet() {
        for (at_toe, rise, out, cut) in [(10.0, 0.1, 37.647, 11.765), (6.0, -0.1, 27.826, 5.217)] {
            let found = daylight(Length::from_feet(at_toe).unwrap(), 1.5, rise).unwrap();
            assert!((found.distance.feet() + 20.0 - out).abs() < 0.001);
            assert!((found.height.feet() - cut).abs() < 0.001);
        }
    }

    #[test]
    fn ground_as_steep_as_the_face_is_never_met() {
        let depth = Length::from_hundredths_of_a_foot(800);
        let error = daylight(depth, 1.5, 0.7).unwrap_err();
        assert!(error.to_string().contains("never meets it"), "{error}");
        assert!(daylight(depth, f64::NAN, 0.0).is_err());
        assert!(daylight(depth, 1e308, 0.0).is_err());
        // 2 to 1 against 0.49 still meets, fifty times as far as on the level; against 0.4999 nobody knows where.
        let far = daylight(depth, 2.0, 0.49).unwrap();
        assert!((far.distance.feet() - 800.0).abs() < 0.01, "{far:?}");
        let error = daylight(depth, 2.0, 0.4999).unwrap_err();
        assert!(error.to_string().contains("almost parallel"), "{error}");
        assert!(error.text().spanish.contains("casi"), "{error}");
        assert!(daylight(-depth, 1.0, 0.0).is_err());
    }
}
