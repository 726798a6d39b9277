//! Is the corner square, and which one moves: diagonals, skew, and a side taped wrong.
//!
//! Corners A, B, C, D go round: A–B and C–D have one length, B–C and D–A the other, the diagonals are A–C and
//! B–D. For a parallelogram AC² − BD² = 4·a·b·sin θ (mathematics), θ the angle by which the corners at A and C
//! are more than square, so B and A stay and C and D slide along their side by b·sin θ.

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::{Fixed, Text};

use crate::length::{Length, whole};

/// A rectangle as it was taped.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Diagonals {
    /// The side A–B, the base that stays.
    pub base: Length,
    /// The side B–C, across.
    pub across: Length,
    /// From A to C, as taped.
    pub a_to_c: Length,
    /// From B to D, as taped.
    pub b_to_d: Length,
}

/// What the diagonals say.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Squareness {
    /// What both diagonals should be.
    pub wanted: Length,
    /// By which angle the corner at B opens beyond square, in degrees; negative when it closes.
    pub skew_degrees: f64,
    /// How far C and D move, and which way.
    pub moves: CornerMove,
    /// The mean of the diagonals less what they should be. Skew takes nothing noticeable from the mean, so what is
    /// left here is a side taped wrong.
    pub side_error: Length,
}

/// Which corners move so that the figure is square; A and B, the base, stay.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum CornerMove {
    /// Both diagonals are alike.
    None,
    /// C and D move this far in the direction from B to A: A–C is the longer diagonal.
    TowardA {
        /// How far.
        by: Length,
    },
    /// C and D move this far in the direction from A to B: B–D is the longer diagonal.
    TowardB {
        /// How far.
        by: Length,
    },
}

/// Why diagonals say nothing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SquareError {
    /// Something was not taped.
    NotTaped {
        /// Which one.
        what: Fixed,
        /// As given.
        length: Length,
    },
    /// Diagonals that no such figure has.
    Impossible {
        /// From A to C.
        a_to_c: Length,
        /// From B to D.
        b_to_d: Length,
        /// A–B.
        base: Length,
        /// B–C.
        across: Length,
    },
}

impl SquareError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::NotTaped { what, length } => words::layout::square::not_taped(what, length),
            Self::Impossible {
                a_to_c,
                b_to_d,
                base,
                across,
            } => words::layout::square::impossible(a_to_c, b_to_d, base, across),
        }
    }
}

words::error!(SquareError);

/// Judges a rectangle by its diagonals.
///
/// # Errors
/// When something was not taped, or the diagonals can't belong to the sides.
pub fn squareness(taped: &Diagonals) -> Result<Squareness, SquareError> {
    let Diagonals {
        base,
        across,
        a_to_c,
        b_to_d,
    } = *taped;
    for (what, length) in [
        (words::layout::square::what::base(), base),
        (words::layout::square::what::side(), across),
        (words::layout::square::what::diagonal_ac(), a_to_c),
        (words::layout::square::what::diagonal_bd(), b_to_d),
    ] {
        if length <= Length::ZERO {
            return Err(SquareError::NotTaped { what, length });
        }
    }
    let (a, b, d1, d2) = (base.feet(), across.feet(), a_to_c.feet(), b_to_d.feet());
    let wanted = a.hypot(b);
    let mean = f64::midpoint(d1, d2);
    let sine = (d1 - d2) * (d1 + d2) / (4.0 * a * b);
    // A twentieth is far more than any tape is wrong: it is another figure.
    if sine.abs() > 1.0 || (mean - wanted).abs() > wanted / 20.0 {
        return Err(SquareError::Impossible {
            a_to_c,
            b_to_d,
            base,
            across,
        });
    }
    let by = counts(b * sine.abs());
    Ok(Squareness {
        wanted: counts(wanted),
        skew_degrees: sine.asin().to_degrees(),
        moves: if by == Length::ZERO {
            CornerMove::None
        } else if a_to_c > b_to_d {
            CornerMove::TowardA { by }
        } else {
            CornerMove::TowardB { by }
        },
        side_error: counts(mean - wanted),
    })
}

/// The angle of a corner from its two legs and the tape across them, in degrees, by the law of cosines.
///
/// # Errors
/// When something was not taped, or the three do not close.
pub fn corner_degrees(one: Length, other: Length, between: Length) -> Result<f64, SquareError> {
    for (what, length) in [
        (words::layout::square::what::base(), one),
        (words::layout::square::what::side(), other),
        (words::layout::square::what::diagonal_ac(), between),
    ] {
        if length <= Length::ZERO {
            return Err(SquareError::NotTaped { what, length });
        }
    }
    let (a, b, d) = (one.feet(), other.feet(), between.feet());
    let cosine = (a * a + b * b - d * d) / (2.0 * a * b);
    if cosine.abs() > 1.0 {
        return Err(SquareError::Impossible {
            a_to_c: between,
            b_to_d: between,
            base: one,
            across: other,
        });
    }
    Ok(cosine.acos().to_degrees())
}

fn counts(feet: f64) -> Length {
    let counts = feet * crate::length::FOOT as f64;
    Length::from_tenth_micrometres(whole(counts.round()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::point::Point;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn taped(base: i64, across: i64, a_to_c: i64, b_to_d: i64) -> Diagonals {
        Diagonals {
            base: ft(base),
            across: ft(across),
            a_to_c: ft(a_to_c),
            b_to_d: ft(b_to_d),
        }
    }

    /// Invented, demo: 66 × 70 ft taped at 96.18 and 96.23. Derived: 70·(96.23² − 96.18²)/(4·66·70) = 0.036 ft.
    #[test]
    fn the_demo_pad_is_skewed_by_a_third_of_a_tenth() {
        let square = squareness(&taped(6600, 7000, 9618, 9623)).unwrap();
        assert!((square.wanted.feet() - 96.208_1).abs() < 0.000_1);
        let CornerMove::TowardB { by } = square.moves else {
            panic!("{square:?}");
        };
        assert!((by.feet() - 0.036_44).abs() < 0.000_02, "{by}");
        assert!((square.side_error.feet() + 0.003_11).abs() < 0.000_01);
        assert!(square.skew_degrees < 0.0);
        let even = squareness(&taped(6600, 7000, 9621, 9621)).unwrap();
        assert_eq!(even.moves, CornerMove::None);
    }

    /// Mathematics: 18 and 24 make 30; with 30.10 the corner is 90.40°; 3, 4 and 5.05 make 91.20°.
    #[test]
    fn three_tapes_give_the_corner() {
        for (one, other, between, degrees) in [
            (1800, 2400, 3000, 90.0),
            (1800, 2400, 3010, 90.40),
            (300, 400, 505, 91.20),
        ] {
            let got = corner_degrees(ft(one), ft(other), ft(between)).unwrap();
            assert!((got - degrees).abs() < 0.005, "{got} is not {degrees}");
        }
    }

    #[test]
    fn what_does_not_close_is_refused() {
        let none = squareness(&taped(6600, 0, 9618, 9623)).unwrap_err();
        assert!(none.to_string().contains("The side B–C is 0 ft"), "{none}");
        assert!(
            none.text().spanish.contains("El lado B–C mide 0 ft"),
            "{none:?}"
        );
        let slip = squareness(&taped(6600, 7000, 9618, 6923)).unwrap_err();
        assert!(
            slip.to_string().contains("do not belong to sides"),
            "{slip}"
        );
        assert!(corner_degrees(ft(300), ft(400), ft(800)).is_err());
    }

    proptest! {
        /// A square figure slid by so much along its base is told to slide back by as much.
        #[test]
        fn the_move_undoes_the_skew(base in 2000_i64..9000, across in 2000_i64..9000, slid in -100_i64..100) {
            let at = |x, y| Point { x: ft(x), y: ft(y) };
            let (a, b) = (at(0, 0), at(base, 0));
            let (c, d) = (at(base + slid, across), at(slid, across));
            let square = squareness(&Diagonals {
                base: a.distance(b),
                across: b.distance(c),
                a_to_c: a.distance(c),
                b_to_d: b.distance(d),
            }).unwrap();
            let told = match square.moves {
                CornerMove::None => Length::ZERO,
                CornerMove::TowardA { by } => -by,
                CornerMove::TowardB { by } => by,
            };
            let left = (told + ft(slid)).abs();
            prop_assert!(left <= Length::from_tenth_micrometres(100), "{left:?} {square:?}");
        }
    }
}
