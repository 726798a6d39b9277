//! Where do two tapes meet: swing ties from two known places, and pacing on a line between two marks.
//!
//! Two circles meet in two places, mirror images across the base, so the side must be said (mathematics). The
//! doubt of the place is σ·√2 / |sin γ|, γ the angle between the tapes at the mark (mathematics).

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::length::{Form, Length, whole};
use crate::point::Point;

/// A tie whose tapes meet at less than this, or at more than its supplement, is weak (common practice), in degrees.
pub const WEAK_BELOW_DEGREES: f64 = 30.0;

/// A tape from a known place.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Tape {
    /// Where its end is held.
    pub from: Point,
    /// The level distance to the mark.
    pub distance: Length,
}

/// Which of the two places, standing at the first tape's end and looking toward the second's.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Side {
    /// On the left hand.
    Left,
    /// On the right hand.
    Right,
}

/// Both places where two tapes meet.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SwingTie {
    /// The place on the left, looking from the first tape's end to the second's.
    pub left: Point,
    /// The place on the right.
    pub right: Point,
    /// The angle between the tapes at the mark, in degrees.
    pub angle_degrees: f64,
}

/// Why tapes give no place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TieError {
    /// A tape without length.
    NoTape {
        /// As given.
        distance: Length,
    },
    /// Both tapes are held at one place.
    OneBase,
    /// Together they are shorter than the base.
    TooShort {
        /// What is missing.
        by: Length,
    },
    /// One reaches past the other's circle.
    TooLong {
        /// What is too much.
        by: Length,
    },
    /// A share of the way that is not between the marks.
    Paces {
        /// To the place.
        paces: u32,
        /// The whole way.
        of: u32,
    },
}

const HUNDREDTHS: Form = Form::DecimalFeet { places: 2 };

impl TieError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::NoTape { distance } => words::layout::tie::no_tape(distance),
            Self::OneBase => words::layout::tie::one_base().into(),
            Self::TooShort { by } => words::layout::tie::too_short(&by.show(HUNDREDTHS)),
            Self::TooLong { by } => words::layout::tie::too_long(&by.show(HUNDREDTHS)),
            Self::Paces { paces, of } => words::layout::tie::paces(paces, of),
        }
    }
}

words::error!(TieError);

impl SwingTie {
    /// The place on the side that was said.
    pub fn on(&self, side: Side) -> Point {
        match side {
            Side::Left => self.left,
            Side::Right => self.right,
        }
    }

    /// Whether the tapes meet too flatly: take another pair of hubs.
    pub fn weak(&self) -> bool {
        !(WEAK_BELOW_DEGREES..=180.0 - WEAK_BELOW_DEGREES).contains(&self.angle_degrees)
    }

    /// The doubt of the place from the doubt of each tape, both one standard deviation in feet. `None` when the
    /// tapes lie on one line and the place slides without end.
    pub fn doubt_ft(&self, tape_doubt_ft: f64) -> Option<f64> {
        self.doubt_of_ends_ft(tape_doubt_ft, tape_doubt_ft)
    }

    /// The same when each tape, with the place where it is held, has a doubt of its own: √(σ₁² + σ₂²) / |sin γ|.
    pub fn doubt_of_ends_ft(&self, first_ft: f64, second_ft: f64) -> Option<f64> {
        let sine = self.angle_degrees.to_radians().sin().abs();
        (sine > 1e-9).then(|| first_ft.hypot(second_ft) / sine)
    }

    /// Which of the two places is nearer to where the mark should be.
    pub fn side_of(&self, near: Point) -> Side {
        if self.left.distance(near) <= self.right.distance(near) {
            Side::Left
        } else {
            Side::Right
        }
    }
}

/// Where two tapes meet: with c the base, along = (a² − b² + c²) / 2c and across = √(a² − along²).
///
/// # Errors
/// When a tape has no length, both are held at one place, or they do not meet.
pub fn swing_tie(first: Tape, second: Tape) -> Result<SwingTie, TieError> {
    for tape in [first, second] {
        if tape.distance <= Length::ZERO {
            return Err(TieError::NoTape {
                distance: tape.distance,
            });
        }
    }
    let (east, north) = first.from.to(second.from);
    let base = east.hypot(north);
    if base == 0.0 {
        return Err(TieError::OneBase);
    }
    let (a, b) = (counts(first.distance), counts(second.distance));
    // A millionth of a metre is the rounding of the base, not a gap.
    if a + b < base - ROUNDING {
        return Err(TieError::TooShort {
            by: rounded(base - a - b),
        });
    }
    if (a - b).abs() > base + ROUNDING {
        return Err(TieError::TooLong {
            by: rounded((a - b).abs() - base),
        });
    }
    let along = (a * a - b * b + base * base) / (2.0 * base);
    let across = (a * a - along * along).max(0.0).sqrt();
    let (east, north) = (east / base, north / base);
    let place = |left: f64| Point {
        x: first.from.x + rounded(along * east - left * north),
        y: first.from.y + rounded(along * north + left * east),
    };
    let cosine = ((a * a + b * b - base * base) / (2.0 * a * b)).clamp(-1.0, 1.0);
    Ok(SwingTie {
        left: place(across),
        right: place(-across),
        angle_degrees: cosine.acos().to_degrees(),
    })
}

/// The place after so many paces of the whole way from one mark to another. A pace is judged by its share of a
/// known way, so nobody's stride needs to be known.
///
/// # Errors
/// When there are no paces, or more to the place than to the second mark.
pub fn paced_between(from: Point, to: Point, paces: u32, of: u32) -> Result<Point, TieError> {
    if of == 0 || paces > of {
        return Err(TieError::Paces { paces, of });
    }
    let share = f64::from(paces) / f64::from(of);
    let (east, north) = from.to(to);
    Ok(Point {
        x: from.x + rounded(east * share),
        y: from.y + rounded(north * share),
    })
}

/// Ten counts: 1 µm.
const ROUNDING: f64 = 10.0;

fn counts(length: Length) -> f64 {
    length.tenth_micrometres() as f64
}

fn rounded(counts: f64) -> Length {
    Length::from_tenth_micrometres(whole(counts.round()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn at(x: i64, y: i64) -> Point {
        Point {
            x: Length::from_hundredths_of_a_foot(x),
            y: Length::from_hundredths_of_a_foot(y),
        }
    }

    fn tape(x: i64, y: i64, distance: i64) -> Tape {
        Tape {
            from: at(x, y),
            distance: Length::from_hundredths_of_a_foot(distance),
        }
    }

    /// Mathematics: 40 and 30 ft over a base of 50 ft meet square, 32 ft along and 24 ft to either side.
    #[test]
    fn two_tapes_meet_in_two_places() {
        let tie = swing_tie(tape(0, 0, 4000), tape(5000, 0, 3000)).unwrap();
        assert_eq!(tie.on(Side::Left), at(3200, 2400));
        assert_eq!(tie.on(Side::Right), at(3200, -2400));
        assert!((tie.angle_degrees - 90.0).abs() < 1e-9);
        assert!(!tie.weak());
        // Derived: σ√2 / sin 90°.
        assert!((tie.doubt_ft(0.02).unwrap() - 0.028_284).abs() < 1e-6);
    }

    /// Mathematics: 20 + 25 is 5 short of 50.
    #[test]
    fn tapes_that_do_not_meet_are_refused_with_the_gap() {
        let short = swing_tie(tape(0, 0, 2000), tape(5000, 0, 2500)).unwrap_err();
        assert!(short.to_string().contains("5.00 ft too short"), "{short}");
        assert!(short.text().spanish.contains("faltan 5.00 ft"), "{short:?}");
        let long = swing_tie(tape(0, 0, 8000), tape(5000, 0, 2500)).unwrap_err();
        assert!(long.to_string().contains("5.00 ft too long"), "{long}");
        assert_eq!(
            swing_tie(tape(0, 0, 10), tape(0, 0, 10)),
            Err(TieError::OneBase)
        );
        assert!(matches!(
            swing_tie(tape(0, 0, 0), tape(5, 0, 10)),
            Err(TieError::NoTape { .. })
        ));
    }

    /// Common practice: under 30° and over 150° is weak. Mathematics: two sides of 30 and a base of 2·30·sin(γ/2).
    #[test]
    fn flat_ties_are_weak_and_tapes_on_one_line_slide() {
        for (base, weak) in [(1550, true), (1560, false), (5790, false), (5800, true)] {
            let tie = swing_tie(tape(0, 0, 3000), tape(base, 0, 3000)).unwrap();
            assert_eq!(tie.weak(), weak, "{base} {}", tie.angle_degrees);
        }
        let flat = swing_tie(tape(0, 0, 2000), tape(5000, 0, 3000)).unwrap();
        assert_eq!((flat.left, flat.doubt_ft(0.02)), (flat.right, None));
    }

    /// Derived: three of twelve paces are a quarter of the way.
    #[test]
    fn paces_are_a_share_of_the_way() {
        assert_eq!(
            paced_between(at(0, 0), at(4000, 2000), 3, 12),
            Ok(at(1000, 500))
        );
        let error = paced_between(at(0, 0), at(10, 0), 13, 12).unwrap_err();
        assert!(error.to_string().contains("13 of 12 paces"), "{error}");
        assert!(paced_between(at(0, 0), at(10, 0), 0, 0).is_err());
    }

    proptest! {
        /// Both places are as far from the hubs as the tapes said.
        #[test]
        fn the_places_are_a_tape_from_each_hub(
            bx in 500_i64..9000, by in -9000_i64..9000, px in -9000_i64..9000, py in 500_i64..9000
        ) {
            let (a, b, p) = (at(0, 0), at(bx, by), at(px, py));
            prop_assume!(p.distance(b) > Length::from_hundredths_of_a_foot(100));
            let first = Tape { from: a, distance: a.distance(p) };
            let second = Tape { from: b, distance: b.distance(p) };
            let tie = swing_tie(first, second).unwrap();
            prop_assume!(!tie.weak());
            for place in [tie.left, tie.right] {
                for tape in [first, second] {
                    let off = (tape.from.distance(place) - tape.distance).abs();
                    prop_assert!(off <= Length::from_tenth_micrometres(20), "{off:?}");
                }
            }
            let near = tie.left.distance(p).min(tie.right.distance(p));
            prop_assert!(near <= Length::from_tenth_micrometres(40), "{near:?}");
        }
    }
}
