//! Is the level itself true: the two-peg test, the half-turn of a rotating laser, and slant as an angle.
//!
//! The tests are in every levelling manual (common practice); a slant is a fall per foot of distance, positive
//! when the plane rises with distance, so that far readings come out too large.

use words::Text;

use crate::length::{Length, whole};

/// Why a test says nothing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TwoPegError {
    /// Equal sights hide the slant.
    EqualSights {
        /// How far.
        distance: Length,
    },
    /// Nearly equal sights.
    NearlyEqualSights {
        /// To one peg.
        a: Length,
        /// To the other.
        b: Length,
    },
    /// A sight below zero.
    Negative {
        /// As given.
        distance: Length,
    },
    /// No distance at all.
    NoDistance {
        /// As given.
        distance: Length,
    },
}

impl TwoPegError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::EqualSights { distance } => words::two_peg::equal_sights(distance),
            Self::NearlyEqualSights { a, b } => words::two_peg::nearly_equal_sights(a, b),
            Self::Negative { distance } => words::two_peg::negative(distance),
            Self::NoDistance { distance } => words::two_peg::no_distance(distance),
        }
    }
}

words::error!(TwoPegError);

/// Two rods read from one place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pegs {
    /// The rod at peg A.
    pub a: Length,
    /// The rod at peg B.
    pub b: Length,
}

impl Pegs {
    /// How much more the rod at A reads than the rod at B.
    pub fn difference(self) -> Length {
        self.a - self.b
    }
}

/// The sights of a test differ by this part of the farther one or more, so that what four readings miss by (0.01 ft) is not
/// taken for more than 0.05 ft of slant at the farther peg (derived).
const LEAST_PART: i64 = 5;

/// The slant from a true difference (read from the middle) and the one seen with unlike sights.
///
/// ```
/// use earthwork::length::parse;
/// use earthwork::two_peg::{Pegs, corrected, slant};
///
/// # fn main() -> Result<(), Box<dyn std::error::Error>> {
/// // From the middle both sights are off by as much, so the difference is true; then from near A (invented figures).
/// let middle = Pegs { a: parse("4.62 ft")?, b: parse("5.13 ft")? };
/// let near_a = Pegs { a: parse("4.50 ft")?, b: parse("5.05 ft")? };
/// let (a, b) = (parse("10 ft")?, parse("210 ft")?);
/// let slant = slant(middle.difference(), near_a.difference(), a, b)?;
/// let true_b = corrected(near_a.b, slant, b);
/// let true_a = corrected(near_a.a, slant, a);
/// assert_eq!(true_a - true_b, middle.difference());
/// # Ok(())
/// # }
/// ```
///
/// # Errors
/// When a sight is below zero, or both pegs are equally or nearly equally far.
pub fn slant(
    true_difference: Length,
    seen: Length,
    distance_a: Length,
    distance_b: Length,
) -> Result<f64, TwoPegError> {
    let farther = distance_a.max(distance_b);
    for distance in [distance_a, distance_b] {
        if distance < Length::ZERO {
            return Err(TwoPegError::Negative { distance });
        }
    }
    let apart = distance_a - distance_b;
    if apart == Length::ZERO {
        return Err(TwoPegError::EqualSights {
            distance: distance_a,
        });
    }
    if apart.abs() * LEAST_PART < farther {
        return Err(TwoPegError::NearlyEqualSights {
            a: distance_a,
            b: distance_b,
        });
    }
    Ok((seen - true_difference).feet() / apart.feet())
}

/// A reading with the slant taken out.
pub fn corrected(reading: Length, slant: f64, distance: Length) -> Length {
    reading - over(slant, distance)
}

/// The slant of a laser's axis from two readings of one rod, the laser turned half round between them.
///
/// # Errors
/// When the distance is not above zero.
pub fn half_turn(first: Length, turned: Length, distance: Length) -> Result<f64, TwoPegError> {
    if distance <= Length::ZERO {
        return Err(TwoPegError::NoDistance { distance });
    }
    Ok((first - turned).feet() / 2.0 / distance.feet())
}

/// How far a slant is off at a distance.
pub fn over(slant: f64, distance: Length) -> Length {
    let counts = slant * distance.tenth_micrometres() as f64;
    Length::from_tenth_micrometres(whole(counts.round()))
}

/// A slant as an angle, in seconds of arc.
pub fn arc_seconds(slant: f64) -> f64 {
    slant.atan().to_degrees() * 3600.0
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mm(millimetres: i64) -> Length {
        Length::from_millimetres(millimetres)
    }

    /// Exercise, source withheld: middle of 40 m 1.476 and 1.432, then 50 m and 10 m away 1.556 and 1.472.
    #[test]
    fn the_two_peg_test_finds_the_slant() {
        let middle = Pegs {
            a: mm(1476),
            b: mm(1432),
        };
        let far = Pegs {
            a: mm(1556),
            b: mm(1472),
        };
        let slant = slant(
            middle.difference(),
            far.difference(),
            mm(50_000),
            mm(10_000),
        )
        .unwrap();
        assert!((slant - 0.001).abs() < 1e-12);
        assert_eq!(corrected(far.a, slant, mm(50_000)), mm(1506));
        assert_eq!(corrected(far.b, slant, mm(10_000)), mm(1462));
    }

    #[test]
    fn equal_sights_and_no_distance_say_nothing() {
        assert!(slant(mm(44), mm(84), mm(50), mm(50)).is_err());
        assert!(half_turn(mm(1), mm(2), Length::ZERO).is_err());
        let near = |a, b| slant(mm(44), mm(84), mm(a), mm(b));
        assert!(near(50_000, 40_000).is_ok());
        for (a, b) in [(50_000, 40_001), (50_000, 49_999), (40_001, 50_000)] {
            let error = near(a, b).unwrap_err();
            assert!(error.to_string().contains("nearly alike"), "{error}");
            assert!(error.text().spanish.contains("errores de lectura"));
        }
        assert!(matches!(
            near(-50_000, 10_000),
            Err(TwoPegError::Negative { .. })
        ));
    }

    /// Derived: half of the difference, over the distance.
    #[test]
    fn a_half_turn_doubles_the_slant() {
        let slant = half_turn(mm(1510), mm(1500), mm(50_000)).unwrap();
        assert_eq!(over(slant, mm(50_000)), mm(5));
    }
}
