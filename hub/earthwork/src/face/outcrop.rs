//! Where a face comes out of the ground: along a toe, square to it, up its pieces, until the ground is met.

use super::FaceError;
use crate::layout::tie::Side;
use crate::length::{FOOT, Length};
use crate::point::Point;
use crate::target::boundary::meet;
use crate::vector::{Vector, counts, rounded};

/// A place on the toe of a face.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Toe {
    /// Where.
    pub at: Point,
    /// How high the bottom is there.
    pub elevation: Length,
}

/// A piece of a face, from the toe up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Piece {
    /// The elevation of its top; the last goes on to the ground.
    pub top: Option<Length>,
    /// Run to one of rise; 0 is vertical.
    pub run_per_rise: f64,
}

/// A place on the toe and the way that the face goes from there: one long, east and north.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Way {
    /// Where it begins.
    pub toe: Toe,
    /// East.
    pub east: f64,
    /// North.
    pub north: f64,
}

/// Where a face comes out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Outcrop {
    /// The toe under it.
    pub toe: Toe,
    /// The place.
    pub at: Point,
    /// From the toe, level.
    pub run: Length,
    /// From the toe, up.
    pub height: Length,
}

/// Steps of the march; between two of them the ground is taken not to dip under the face and out again.
const STEP: f64 = FOOT as f64;
/// The corner of a toe is walked round in turns no wider than this.
const FAN: f64 = std::f64::consts::PI / 12.0;
/// More places on a toe than this are a slip of the unit: at two feet apart it would be four miles long.
const MOST_PLACES: usize = 10_000;

/// The ways along a toe, `every` so far and at each corner, square to the toe on the bank's side, looking along it.
/// Round a corner that bends away from the bank the ways spread out: there the face is a cone.
///
/// # Errors
/// When the toe has no direction or crosses itself, `every` is not above zero, or there would be too many places.
pub fn ways(toe: &[Toe], bank: Side, every: Length) -> Result<Vec<Way>, FaceError> {
    if every <= Length::ZERO {
        return Err(FaceError::Negative {
            what: words::face::what::places_on_toe(),
            value: every,
        });
    }
    let pieces: Vec<(Toe, Toe)> = toe
        .windows(2)
        .map(|pair| (pair[0], pair[1]))
        .filter(|(from, to)| from.at != to.at)
        .collect();
    if pieces.is_empty() {
        return Err(FaceError::NoToe { corners: toe.len() });
    }
    let crosses = pieces.iter().enumerate().any(|(number, one)| {
        pieces
            .iter()
            .skip(number + 2)
            .any(|other| meet((one.0.at, one.1.at), (other.0.at, other.1.at)))
    });
    if crosses {
        return Err(FaceError::ToeCrosses);
    }
    let mut found = Vec::new();
    let mut last: Option<Vector> = None;
    for (from, to) in pieces {
        let along = Vector::between(from.at, to.at);
        let Some(unit) = along.unit() else { continue };
        let right = unit.to_the_right();
        let square = match bank {
            Side::Right => right,
            Side::Left => right.times(-1.0),
        };
        if let Some(before) = last {
            fan(&mut found, from, before, square, bank);
        }
        let many = (along.size() / counts(every)).ceil().max(1.0);
        if found.len() as f64 + many > MOST_PLACES as f64 {
            return Err(FaceError::TooManyPlaces {
                every,
                most: MOST_PLACES,
            });
        }
        let mut number = 0.0;
        while number <= many {
            found.push(way(between(from, to, number / many), square));
            number += 1.0;
        }
        last = Some(square);
    }
    Ok(found)
}

fn way(toe: Toe, square: Vector) -> Way {
    Way {
        toe,
        east: square.east,
        north: square.north,
    }
}

fn between(from: Toe, to: Toe, share: f64) -> Toe {
    Toe {
        at: Vector::between(from.at, to.at)
            .times(share)
            .applied_to(from.at),
        elevation: from.elevation + rounded(counts(to.elevation - from.elevation) * share),
    }
}

/// The ways between two pieces of the toe, where they spread out.
fn fan(found: &mut Vec<Way>, at: Toe, before: Vector, after: Vector, bank: Side) {
    let left = before.left_to(after);
    let turn = if left > std::f64::consts::PI {
        left - std::f64::consts::TAU
    } else {
        left
    };
    let spreads = match bank {
        Side::Right => turn > 0.0,
        Side::Left => turn < 0.0,
    };
    if !spreads {
        return;
    }
    let many = (turn.abs() / FAN).ceil();
    let mut number = 1.0;
    while number < many {
        found.push(way(at, before.turned_left(turn * number / many)));
        number += 1.0;
    }
}

/// Where the face that goes up its pieces from a toe meets the ground, no farther out than `farthest`.
///
/// # Errors
/// When the pieces are none, the ground is not known, or it is not met.
pub fn outcrop(
    way: &Way,
    pieces: &[Piece],
    ground: &dyn Fn(Point) -> Result<Length, String>,
    farthest: Length,
) -> Result<Outcrop, FaceError> {
    check(pieces)?;
    let unit = Vector {
        east: way.east,
        north: way.north,
    };
    let at = |out: f64| unit.times(out).applied_to(way.toe.at);
    let above = |out: f64| -> Result<f64, FaceError> {
        let ground = ground(at(out)).map_err(|why| FaceError::NoGround { why })?;
        Ok(counts(ground) - face_at(way.toe.elevation, pieces, out))
    };
    let found = |out: f64| -> Result<Outcrop, FaceError> {
        let place = at(out);
        let level = ground(place).map_err(|why| FaceError::NoGround { why })?;
        Ok(Outcrop {
            toe: way.toe,
            at: place,
            run: rounded(out),
            height: (level - way.toe.elevation).max(Length::ZERO),
        })
    };
    if above(0.0)? <= 0.0 {
        return found(0.0);
    }
    let mut inside = 0.0;
    while inside < counts(farthest) {
        let outside = (inside + STEP).min(counts(farthest));
        if above(outside)? <= 0.0 {
            return found(meeting(inside, outside, &above)?);
        }
        inside = outside;
    }
    Err(FaceError::NeverDaylights { within: farthest })
}

/// Halves the way between a place under the ground and one above it, down to a count.
fn meeting(
    mut inside: f64,
    mut outside: f64,
    above: &dyn Fn(f64) -> Result<f64, FaceError>,
) -> Result<f64, FaceError> {
    while outside - inside > 1.0 {
        let middle = f64::midpoint(inside, outside);
        if above(middle)? > 0.0 {
            inside = middle;
        } else {
            outside = middle;
        }
    }
    Ok(outside.round())
}

/// Where the face comes out along the whole toe: one place for each way, or why there is none.
///
/// # Errors
/// When the toe or the pieces are none.
pub fn daylight_line(
    toe: &[Toe],
    bank: Side,
    pieces: &[Piece],
    ground: &dyn Fn(Point) -> Result<Length, String>,
    every: Length,
    farthest: Length,
) -> Result<Vec<Result<Outcrop, FaceError>>, FaceError> {
    check(pieces)?;
    let ways = ways(toe, bank, every)?;
    Ok(ways
        .iter()
        .map(|way| outcrop(way, pieces, ground, farthest))
        .collect())
}

fn check(pieces: &[Piece]) -> Result<(), FaceError> {
    let Some((last, others)) = pieces.split_last() else {
        return Err(FaceError::PieceOrder);
    };
    for piece in pieces {
        if !(piece.run_per_rise.is_finite() && piece.run_per_rise >= 0.0) {
            return Err(FaceError::NotANumber {
                what: words::face::what::faces_slope(),
                value: piece.run_per_rise.to_string(),
            });
        }
    }
    let tops: Vec<Length> = others.iter().filter_map(|piece| piece.top).collect();
    let rising = tops.windows(2).all(|pair| pair[0] < pair[1]);
    if last.top.is_some() || tops.len() != others.len() || !rising {
        return Err(FaceError::PieceOrder);
    }
    Ok(())
}

/// The face's elevation so far out from its toe, in counts; past a vertical without a top there is no more face.
fn face_at(toe: Length, pieces: &[Piece], out: f64) -> f64 {
    let (mut up, mut left) = (counts(toe), out);
    for piece in pieces {
        let top = piece.top.map_or(f64::INFINITY, counts);
        if top <= up {
            continue;
        }
        let run = if piece.run_per_rise > 0.0 {
            (top - up) * piece.run_per_rise
        } else {
            0.0
        };
        if left < run {
            return up + left / piece.run_per_rise;
        }
        up = top;
        left -= run;
    }
    up
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn toe(x: i64, y: i64, z: i64) -> Toe {
        Toe {
            at: Point { x: ft(x), y: ft(y) },
            elevation: ft(z),
        }
    }

    const ONE: [Piece; 1] = [Piece {
        top: None,
        run_per_rise: 1.0,
    }];

    /// Invented, demo: the hill is 299.50 + 0.13 y + 0.02 x.
    fn hill(at: Point) -> Result<Length, String> {
        Length::from_feet(299.5 + 0.13 * at.y.feet() + 0.02 * at.x.feet())
            .map_err(|error| error.to_string())
    }

    fn north(toe: Toe) -> Way {
        Way {
            toe,
            east: 0.0,
            north: 1.0,
        }
    }

    #[test]
    fn more_places_than_anybody_digs_by_are_refused() {
        let corners = [toe(0, 0, 0), toe(10_000, 0, 0)];
        assert_eq!(ways(&corners, Side::Left, ft(200)).unwrap().len(), 51);
        let hair = Length::from_tenth_micrometres(1);
        let error = ways(&corners, Side::Left, hair).unwrap_err();
        assert!(error.to_string().contains("farther apart"), "{error}");
        assert!(error.text().spanish.contains("lugares"), "{error:?}");
    }

    #[test]
    fn a_face_in_three_pieces_bends_at_its_tops() {
        // r3 of the demo: 1 to 1 up to 306.00, then 1½ to 1: at x 85 it comes out at y 117.76.
        let pieces = [
            Piece {
                top: Some(ft(30_600)),
                run_per_rise: 1.0,
            },
            Piece {
                top: None,
                run_per_rise: 1.5,
            },
        ];
        let found = outcrop(&north(toe(8500, 9800, 30_200)), &pieces, &hill, ft(50_000)).unwrap();
        assert!((found.at.y.feet() - 117.76).abs() < 0.005, "{found:?}");
        assert!((found.run.feet() - 19.76).abs() < 0.005, "{found:?}");
    }

    #[test]
    fn what_can_not_be_is_refused() {
        let way = north(toe(8500, 9800, 30_200));
        let steep = |run| {
            [Piece {
                top: None,
                run_per_rise: run,
            }]
        };
        let meets = |pieces: &[Piece]| outcrop(&way, pieces, &hill, ft(50_000));
        assert!(matches!(
            meets(&steep(8.0)),
            Err(FaceError::NeverDaylights { .. })
        ));
        assert!(meets(&steep(f64::NAN)).is_err());
        assert!(meets(&steep(-1.0)).is_err());
        assert_eq!(meets(&[]), Err(FaceError::PieceOrder));
        let top = Piece {
            top: Some(ft(30_600)),
            run_per_rise: 1.0,
        };
        assert_eq!(meets(&[top]), Err(FaceError::PieceOrder));
        assert_eq!(meets(&[top, top, ONE[0]]), Err(FaceError::PieceOrder));
        let nowhere = |_: Point| Err("no survey there".to_owned());
        assert!(matches!(
            outcrop(&way, &ONE, &nowhere, ft(50_000)),
            Err(FaceError::NoGround { .. })
        ));
        let crossed = [
            toe(0, 0, 0),
            toe(1000, 0, 0),
            toe(1000, 1000, 0),
            toe(500, -500, 0),
        ];
        assert_eq!(
            ways(&crossed, Side::Left, ft(200)),
            Err(FaceError::ToeCrosses)
        );
        assert!(ways(&crossed[..1], Side::Left, ft(200)).is_err());
        assert!(ways(&crossed[..2], Side::Left, ft(0)).is_err());
    }

    #[test]
    fn round_a_corner_the_ways_spread_and_a_vertical_face_comes_out_over_its_toe() {
        let corner = [toe(0, 0, 0), toe(1000, 0, 0), toe(1000, 1000, 0)];
        // Turning left with the bank on the right: six turns of 15 degrees.
        let round = ways(&corner, Side::Right, ft(1000)).unwrap();
        assert_eq!(round.len(), 4 + 5);
        assert_eq!(ways(&corner, Side::Left, ft(1000)).unwrap().len(), 4);
        let vertical = [Piece {
            top: None,
            run_per_rise: 0.0,
        }];
        let found = outcrop(
            &north(toe(8500, 9800, 30_200)),
            &vertical,
            &hill,
            ft(50_000),
        )
        .unwrap();
        assert_eq!(found.run, Length::ZERO);
        assert_eq!(found.height, ft(1194));
    }

    proptest! {
        #[test]
        fn flatter_comes_out_farther_and_a_datum_shift_changes_nothing(
            x in 0_i64..10_000, deep in 100_i64..1800, run in 0.1..2.0_f64, more in 0.01..1.0_f64, shift in -100_000_i64..100_000,
        ) {
            let at = toe(x, 9800, 31_224 + x / 50 - deep);
            let out = |toe: Toe, run, by: i64| {
                let ground = |at: Point| hill(at).map(|z| z + ft(by));
                let pieces = [Piece { top: None, run_per_rise: run }];
                outcrop(&north(toe), &pieces, &ground, ft(50_000)).unwrap().run
            };
            let near = out(at, run, 0);
            prop_assert!(out(at, run + more, 0) >= near);
            let moved = Toe { elevation: at.elevation + ft(shift), ..at };
            prop_assert!((out(moved, run, shift) - near).abs() <= Length::from_tenth_micrometres(4));
        }
    }
}
