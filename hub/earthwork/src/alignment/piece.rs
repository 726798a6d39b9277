//! One piece of an alignment: a straight line, or an arc about a centre.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::AlignmentError;
use crate::length::Length;
use crate::point::Point;
use crate::vector::{Vector, counts, rounded};

/// Which way an arc turns, looking up-station.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Turn {
    /// Its centre lies to the left.
    Left,
    /// Its centre lies to the right.
    Right,
}

/// A piece, from where the one before it ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Piece {
    /// Straight to a place.
    Line {
        /// Its end.
        to: Point,
    },
    /// Around a centre, less than a whole turn.
    Arc {
        /// Its centre.
        centre: Point,
        /// Its end.
        to: Point,
        /// Which way it turns.
        turn: Turn,
    },
}

/// An arc's two radii may differ by so much, since plans round them: 0.02 ft (common practice).
const RADII_AGREE: Length = Length::from_hundredths_of_a_foot(2);

/// A piece with its place and its length worked out; in counts and radians.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Course {
    start: Point,
    end: Point,
    pub(super) length: f64,
    curve: Option<Curve>,
}

#[derive(Clone, Debug, PartialEq)]
struct Curve {
    centre: Point,
    radius: f64,
    turn: Turn,
}

/// A place as seen from a piece, in counts.
pub(super) struct Foot {
    /// From the piece's start, held to the piece.
    pub(super) along: f64,
    /// Positive to the right.
    pub(super) offset: f64,
    /// How far the place lies past the piece: below zero before its start, above past its end, else none.
    pub(super) past: Option<f64>,
}

impl Course {
    pub(super) fn new(number: usize, start: Point, piece: Piece) -> Result<Course, AlignmentError> {
        let (end, curve) = match piece {
            Piece::Line { to } => (to, None),
            Piece::Arc { centre, to, turn } => (to, Some((centre, turn))),
        };
        if start == end {
            return Err(AlignmentError::NoLength { number });
        }
        let Some((centre, turn)) = curve else {
            return Ok(Course {
                start,
                end,
                length: Vector::between(start, end).size(),
                curve: None,
            });
        };
        let (at_start, at_end) = (centre.distance(start), centre.distance(end));
        if (at_start - at_end).abs() > RADII_AGREE || at_start == Length::ZERO {
            return Err(AlignmentError::RadiusDiffers {
                number,
                at_start,
                at_end,
            });
        }
        let radius = Vector::between(centre, start).size();
        let swept = swept(
            turn,
            Vector::between(centre, start),
            Vector::between(centre, end),
        );
        Ok(Course {
            start,
            end,
            length: radius * swept,
            curve: Some(Curve {
                centre,
                radius,
                turn,
            }),
        })
    }

    pub(super) fn end(&self) -> Point {
        self.end
    }

    /// One count up-station, so far along.
    pub(super) fn heading(&self, along: f64) -> Option<Vector> {
        match &self.curve {
            None => Vector::between(self.start, self.end).unit(),
            Some(curve) => {
                let out = curve.out(self.start, along).unit()?;
                Some(match curve.turn {
                    Turn::Right => out.to_the_right(),
                    Turn::Left => out.to_the_right().times(-1.0),
                })
            }
        }
    }

    /// The place so far along and so far to the right.
    pub(super) fn place(&self, along: f64, offset: Length) -> Result<Point, AlignmentError> {
        let Some(curve) = &self.curve else {
            let ahead = self.heading(along).ok_or(AlignmentError::NoPieces)?;
            let way = ahead
                .times(along)
                .plus(ahead.to_the_right().times(counts(offset)));
            return Ok(way.applied_to(self.start));
        };
        let from_centre = match curve.turn {
            Turn::Right => curve.radius - counts(offset),
            Turn::Left => curve.radius + counts(offset),
        };
        if from_centre <= 0.0 {
            return Err(AlignmentError::PastCentre {
                offset,
                radius: rounded(curve.radius),
            });
        }
        let out = curve.out(self.start, along);
        Ok(out
            .times(from_centre / curve.radius)
            .applied_to(curve.centre))
    }

    /// Where a place lies beside the piece; none at an arc's very centre.
    pub(super) fn foot(&self, at: Point) -> Option<Foot> {
        let along = match &self.curve {
            None => self.heading(0.0)?.dot(Vector::between(self.start, at)),
            Some(curve) => {
                let out = Vector::between(curve.centre, at);
                out.unit()?;
                let start = Vector::between(curve.centre, self.start);
                let along = swept(curve.turn, start, out) * curve.radius;
                let around = std::f64::consts::TAU * curve.radius;
                // The gap that the arc leaves open is shared by its two ends.
                if along > f64::midpoint(self.length, around) {
                    along - around
                } else {
                    along
                }
            }
        };
        let held = along.clamp(0.0, self.length);
        let end = if along < 0.0 { self.start } else { self.end };
        let from_end = Vector::between(end, at);
        let past = (!(0.0..=self.length).contains(&along))
            .then(|| Some(self.heading(held)?.dot(from_end)))
            .flatten();
        let offset = match (&self.curve, past) {
            (None, None) => self
                .heading(0.0)?
                .to_the_right()
                .dot(Vector::between(self.start, at)),
            (Some(curve), None) => curve.inward(at),
            (_, Some(_)) => self.heading(held)?.to_the_right().dot(from_end),
        };
        Some(Foot {
            along: held,
            offset,
            past,
        })
    }
}

impl Foot {
    /// How far the place lies from the nearest point of the piece, in counts.
    pub(super) fn distance(&self) -> f64 {
        self.past.unwrap_or(0.0).hypot(self.offset)
    }
}

impl Curve {
    /// From the centre to the line, so far along.
    fn out(&self, start: Point, along: f64) -> Vector {
        let angle = along / self.radius;
        Vector::between(self.centre, start).turned_left(match self.turn {
            Turn::Left => angle,
            Turn::Right => -angle,
        })
    }

    /// The offset of a place: positive to the right, which is toward the centre of an arc to the right.
    fn inward(&self, at: Point) -> f64 {
        let from_centre = Vector::between(self.centre, at).size();
        match self.turn {
            Turn::Right => self.radius - from_centre,
            Turn::Left => from_centre - self.radius,
        }
    }
}

fn swept(turn: Turn, from: Vector, to: Vector) -> f64 {
    match turn {
        Turn::Left => from.left_to(to),
        Turn::Right => to.left_to(from),
    }
}
