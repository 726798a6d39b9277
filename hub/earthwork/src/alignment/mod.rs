//! Where is it along the line: lines and arcs, station and offset to place and back.
//!
//! Stations are lengths from station 0; offsets are positive to the right looking up-station. Nothing is ever
//! extended past an end. Formulas: an arc's length is radius × angle, its offset radius − distance from the
//! centre (plane geometry, as in any route-surveying textbook).

mod arc_fit;
mod error;
mod piece;
mod station;

use serde::{Deserialize, Serialize};

use crate::length::Length;
use crate::point::Point;
use crate::vector::{counts, rounded};
pub use arc_fit::{FittedArc, fit_arc};
pub use error::AlignmentError;
use piece::Course;
pub use piece::{Piece, Turn};
pub use station::{AlongError, parse_along, parse_station, show_station};

/// Placing rounds to a count on each axis: this much past an end is still the end, in counts (1 µm).
const EDGE: f64 = 10.0;

/// Where a place lies beside an alignment.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct StationOffset {
    /// Along the alignment.
    pub station: Length,
    /// Positive to the right looking up-station.
    pub offset: Length,
}

/// A line on the plan, of straight pieces and arcs.
#[derive(Clone, Debug, PartialEq)]
pub struct Alignment {
    start: Point,
    first: Length,
    /// Each with its distance from the start, in counts.
    courses: Vec<(f64, Course)>,
    length: f64,
}

impl Alignment {
    /// An alignment from a place and its station; each piece starts where the one before it ends.
    ///
    /// # Errors
    /// When there is no piece, one has no length, or an arc's radii differ by more than 0.02 ft.
    pub fn new(start: Point, first: Length, pieces: &[Piece]) -> Result<Alignment, AlignmentError> {
        if pieces.is_empty() {
            return Err(AlignmentError::NoPieces);
        }
        let mut courses = Vec::with_capacity(pieces.len());
        let (mut from, mut length) = (start, 0.0);
        for (number, piece) in (1..).zip(pieces) {
            let course = Course::new(number, from, *piece)?;
            from = course.end();
            let before = length;
            length += course.length;
            courses.push((before, course));
        }
        Ok(Alignment {
            start,
            first,
            courses,
            length,
        })
    }

    /// Where it starts.
    pub fn start(&self) -> Point {
        self.start
    }

    /// The first and the last station.
    pub fn stations(&self) -> (Length, Length) {
        (self.first, self.first + rounded(self.length))
    }

    /// The place at a station and an offset, positive to the right looking up-station.
    ///
    /// # Errors
    /// Past an end, or past the centre of an arc.
    pub fn place(&self, at: StationOffset) -> Result<Point, AlignmentError> {
        let along = counts(at.station - self.first);
        if along < -EDGE {
            return Err(self.past_end(true, -along));
        }
        if along > self.length + EDGE {
            return Err(self.past_end(false, along - self.length));
        }
        let (before, course) = self
            .courses
            .iter()
            .rev()
            .find(|(before, _)| *before <= along)
            .or(self.courses.first())
            .ok_or(AlignmentError::NoPieces)?;
        course.place((along - before).clamp(0.0, course.length), at.offset)
    }

    /// The station and the offset of a place, by the nearest point of the alignment. Outside a corner, where no
    /// piece lies square to the place, the station is the corner's and the offset the distance to it.
    ///
    /// # Errors
    /// Past an end, or at the very centre of an arc.
    pub fn station_offset(&self, at: Point) -> Result<StationOffset, AlignmentError> {
        let (index, before, foot) = self
            .courses
            .iter()
            .enumerate()
            .filter_map(|(index, (before, course))| Some((index, *before, course.foot(at)?)))
            .min_by(|one, other| one.2.distance().total_cmp(&other.2.distance()))
            .ok_or(AlignmentError::AtCentre)?;
        let offset = match foot.past {
            Some(past) if past < -EDGE && index == 0 => return Err(self.past_end(true, -past)),
            Some(past) if past > EDGE && index + 1 == self.courses.len() => {
                return Err(self.past_end(false, past));
            }
            Some(past) if past.abs() > EDGE => foot.distance().copysign(foot.offset),
            Some(_) | None => foot.offset,
        };
        Ok(StationOffset {
            station: self.first + rounded(before + foot.along),
            offset: rounded(offset),
        })
    }

    fn past_end(&self, before: bool, by: f64) -> AlignmentError {
        let (from, to) = self.stations();
        AlignmentError::PastEnd {
            before,
            by: rounded(by),
            from,
            to,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn at(x: i64, y: i64) -> Point {
        Point { x: ft(x), y: ft(y) }
    }

    fn beside(station: i64, offset: i64) -> StationOffset {
        StationOffset {
            station: ft(station),
            offset: ft(offset),
        }
    }

    /// Derived from plane geometry: 100 ft north, a quarter turn to the right of radius 50 ft, 100 ft east.
    fn bend() -> Alignment {
        let pieces = [
            Piece::Line { to: at(0, 10_000) },
            Piece::Arc {
                centre: at(5000, 10_000),
                to: at(5000, 15_000),
                turn: Turn::Right,
            },
            Piece::Line {
                to: at(15_000, 15_000),
            },
        ];
        Alignment::new(at(0, 0), ft(100_000), &pieces).unwrap()
    }

    fn near(one: Length, other: Length) -> bool {
        (one - other).abs() <= Length::from_tenth_micrometres(3)
    }

    #[test]
    fn stations_run_through_line_arc_and_line() {
        let bend = bend();
        let quarter = 50.0 * std::f64::consts::FRAC_PI_2;
        let last = Length::from_feet(1000.0 + 200.0 + quarter).unwrap();
        assert_eq!(bend.stations().0, ft(100_000));
        assert!(near(bend.stations().1, last));
        let half = std::f64::consts::FRAC_1_SQRT_2;
        let middle = StationOffset {
            station: Length::from_feet(1100.0 + quarter / 2.0).unwrap(),
            offset: ft(1000),
        };
        let place = bend.place(middle).unwrap();
        assert!(near(
            place.x,
            Length::from_feet(50.0 - 40.0 * half).unwrap()
        ));
        assert!(near(
            place.y,
            Length::from_feet(100.0 + 40.0 * half).unwrap()
        ));
        assert_eq!(bend.place(beside(105_000, -500)), Ok(at(-500, 5000)));
    }

    #[test]
    fn a_place_beside_the_bend_has_one_station() {
        let bend = bend();
        assert_eq!(bend.station_offset(at(300, 2500)), Ok(beside(102_500, 300)));
        let found = bend.station_offset(at(10_000, 15_200)).unwrap();
        assert_eq!(found.offset, ft(-200));
        assert!(near(found.station, bend.stations().1 - ft(5000)));
    }

    #[test]
    fn the_other_turn_has_its_centre_to_the_left() {
        let left = Alignment::new(
            at(0, 0),
            ft(0),
            &[Piece::Arc {
                centre: at(-5000, 0),
                to: at(-5000, 5000),
                turn: Turn::Left,
            }],
        )
        .unwrap();
        assert_eq!(left.station_offset(at(1000, 0)), Ok(beside(0, 1000)));
        let way_round = Alignment::new(
            at(0, 0),
            ft(0),
            &[Piece::Arc {
                centre: at(-5000, 0),
                to: at(-5000, 5000),
                turn: Turn::Right,
            }],
        )
        .unwrap();
        assert!(near(
            way_round.stations().1,
            rounded(counts(left.stations().1) * 3.0)
        ));
    }

    #[test]
    fn past_an_end_is_refused_with_how_far() {
        let bend = bend();
        let before = bend.station_offset(at(100, -250)).unwrap_err();
        assert!(
            before.to_string().contains("2.5 ft past the start"),
            "{before}"
        );
        let past = bend.station_offset(at(15_100, 15_000)).unwrap_err();
        assert!(past.to_string().contains("1 ft past the end"), "{past}");
        assert!(
            past.text().spanish.contains("1 ft más allá del final"),
            "{}",
            past.text().spanish
        );
        assert!(bend.place(beside(99_999, 0)).is_err());
        let centre = bend.place(StationOffset {
            station: ft(112_000),
            offset: ft(5000),
        });
        assert_eq!(
            centre,
            Err(AlignmentError::PastCentre {
                offset: ft(5000),
                radius: ft(5000)
            })
        );
    }

    #[test]
    fn outside_a_corner_the_corner_is_the_station() {
        let corner = Alignment::new(
            at(0, 0),
            ft(0),
            &[
                Piece::Line { to: at(0, 10_000) },
                Piece::Line {
                    to: at(10_000, 10_000),
                },
            ],
        )
        .unwrap();
        assert_eq!(
            corner.station_offset(at(-300, 10_400)),
            Ok(beside(10_000, -500))
        );
    }

    #[test]
    fn a_malformed_alignment_is_refused() {
        let make = |pieces: &[Piece]| Alignment::new(at(0, 0), ft(0), pieces).unwrap_err();
        assert_eq!(make(&[]), AlignmentError::NoPieces);
        let still = Piece::Line { to: at(0, 0) };
        assert_eq!(make(&[still]), AlignmentError::NoLength { number: 1 });
        let oval = Piece::Arc {
            centre: at(5000, 0),
            to: at(5000, 5100),
            turn: Turn::Right,
        };
        assert!(
            make(&[oval])
                .to_string()
                .contains("radius is 50 ft at its start and 51 ft")
        );
        let centre = Alignment::new(
            at(0, 0),
            ft(0),
            &[Piece::Arc {
                centre: at(5000, 0),
                to: at(5000, 5000),
                turn: Turn::Right,
            }],
        )
        .unwrap();
        assert_eq!(
            centre.station_offset(at(5000, 0)),
            Err(AlignmentError::AtCentre)
        );
    }
}
