//! How far from a line that must not be crossed: every doubt is counted against the crew.
//!
//! LINE n is the distance less the guard, rounded down to half-tenths. The guard is k·√(tape² + string² + line²),
//! independent parts adding in squares; with three doubts of 0.02 ft and k = 1 it is 0.035 ft.
//! It is a reminder and a number, never a word that a place is clear.

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::{Fixed, Text};

use super::tie::Side;
use crate::length::{FOOT, Length, whole};
use crate::point::Point;
use crate::target::boundary;
use words::Language;

/// Within this of the line, past the guard, it is NEAR (common practice).
pub const NEAR: Length = Length::from_hundredths_of_a_foot(30);
const HALF_TENTH: i64 = FOOT / 20;

/// A line that must not be crossed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct NoCrossLine {
    /// Its corners, in order: at least two. A line around a lot ends where it starts; any other line goes on
    /// straight beyond its ends as far as its sides are concerned.
    pub corners: Vec<Point>,
    /// The hand on which the ground lies that may be dug, going from the first corner to the last.
    pub keep: Side,
}

/// What makes the distance doubtful; each one standard deviation, in feet, at or above zero.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct LineDoubts {
    /// Of the tape or the tie.
    pub tape_ft: f64,
    /// Of the string or the paint it was taken from.
    pub string_ft: f64,
    /// Of the line itself, as it was surveyed.
    pub line_ft: f64,
    /// How many standard deviations are counted.
    pub k: f64,
}

/// Where an edge stands against the line.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
#[schema(as = LineStanding)]
pub enum Standing {
    /// Over the line beyond doubt.
    Crossed,
    /// Within the doubt of the line, on either side.
    Touch,
    /// Short of the line, but by no more than 0.30 ft.
    Near,
    /// Farther from it.
    Ok,
}

/// An edge against a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct LineShot {
    /// From the line to the edge: positive on the side to keep to, negative over the line.
    pub distance: Length,
    /// The doubt that is counted against the crew.
    pub guard: Length,
    /// Where it stands.
    pub standing: Standing,
    /// Half-tenths that are left before the line, rounded down; none when it is touched or crossed.
    pub half_tenths: u32,
}

/// Why there is no distance.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LineError {
    /// Fewer than two corners.
    TooFewCorners {
        /// How many.
        corners: usize,
    },
    /// Two corners at one place.
    CornerTwice {
        /// The first of the two, counted from 1.
        number: usize,
    },
    /// A doubt that is no doubt.
    Doubt {
        /// Which.
        what: Fixed,
    },
}

impl LineError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::TooFewCorners { corners } => words::layout::no_cross::too_few_corners(corners),
            Self::CornerTwice { number } => {
                words::layout::no_cross::corner_twice(number, &(number + 1))
            }
            Self::Doubt { what } => words::layout::no_cross::doubt(what),
        }
    }
}

words::error!(LineError);

impl LineDoubts {
    /// The guard, rounded up to the next count.
    ///
    /// # Errors
    /// When a doubt is not a number at or above zero.
    pub fn guard(&self) -> Result<Length, LineError> {
        for (what, value) in [
            (words::layout::no_cross::what::tape(), self.tape_ft),
            (words::layout::no_cross::what::string(), self.string_ft),
            (words::layout::no_cross::what::line(), self.line_ft),
            (words::layout::no_cross::what::factor(), self.k),
        ] {
            if !(0.0..=100.0).contains(&value) {
                return Err(LineError::Doubt { what });
            }
        }
        let feet = self.k * self.tape_ft.hypot(self.string_ft).hypot(self.line_ft);
        Ok(Length::from_tenth_micrometres(whole(
            (feet * FOOT as f64).ceil(),
        )))
    }
}

impl NoCrossLine {
    /// Whether it meets itself: then no side of it can be told.
    pub fn crosses_itself(&self) -> bool {
        boundary::line_crosses_itself(&self.corners)
    }

    /// The distance from the line: positive on the side to keep to. Rounded toward the line when it is kept and
    /// away from it when it is crossed, so that a count is never given to the crew.
    ///
    /// # Errors
    /// When the line has too few corners, or two neighbours at one place.
    pub fn distance(&self, at: Point) -> Result<Length, LineError> {
        if self.corners.len() < 2 {
            return Err(LineError::TooFewCorners {
                corners: self.corners.len(),
            });
        }
        if let Some(same) = self.corners.windows(2).position(|pair| pair[0] == pair[1]) {
            return Err(LineError::CornerTwice { number: same + 1 });
        }
        let left = self.left_of(at);
        let signed = match self.keep {
            Side::Left => left,
            Side::Right => -left,
        };
        Ok(Length::from_tenth_micrometres(whole(signed.floor())))
    }

    /// Which way the ground that may not be dug lies: square off the piece of the line that is nearest to a place, to east and
    /// to north, of length 1. A line of one piece has one such way, wherever one stands; of one with corners no place names none.
    pub fn beyond(&self, at: Option<Point>) -> Option<(f64, f64)> {
        let pairs = || self.corners.windows(2).filter(|pair| pair[0] != pair[1]);
        let nearest = match at {
            Some(at) => pairs().min_by(|one, other| {
                let away = |pair: &[Point]| Piece::seen_from(pair[0], pair[1], [false; 2], at).away;
                away(one).total_cmp(&away(other))
            }),
            None => pairs().next().filter(|_| pairs().count() == 1),
        }?;
        let (east, north) = nearest[0].to(nearest[1]);
        let length = east.hypot(north);
        // The left hand of one who goes along it lies a quarter turn against the clock.
        let left = (-north / length, east / length);
        Some(match self.keep {
            Side::Right => left,
            Side::Left => (-left.0, -left.1),
        })
    }

    /// The distance to the nearest piece, in counts, positive to the left. The side is that of the nearest piece when
    /// both ends go on straight. Where two pieces are equally near their common corner is the nearest place; there a
    /// bend to the left has the place on its left only if it lies to the left of both pieces, and a bend to the right
    /// if it lies to the left of either.
    fn left_of(&self, at: Point) -> f64 {
        let closed = self.corners.first() == self.corners.last();
        let last = self.corners.len().saturating_sub(2);
        let pieces: Vec<Piece> = self
            .corners
            .windows(2)
            .enumerate()
            .map(|(number, pair)| {
                let goes_on = [!closed && number == 0, !closed && number == last];
                Piece::seen_from(pair[0], pair[1], goes_on, at)
            })
            .collect();
        let Some((nearest, piece)) = pieces
            .iter()
            .enumerate()
            .min_by(|one, other| one.1.away.total_cmp(&other.1.away))
        else {
            return 0.0;
        };
        let neighbour = if piece.past_end {
            let around = pieces.first().filter(|_| closed);
            pieces.get(nearest + 1).or(around).map(|next| (piece, next))
        } else if piece.before_start {
            let around = pieces.last().filter(|_| closed);
            nearest
                .checked_sub(1)
                .and_then(|before| pieces.get(before))
                .or(around)
                .map(|before| (before, piece))
        } else {
            None
        };
        let left = match neighbour {
            None => piece.left,
            Some((before, after)) if before.bends_left_to(after) => before.left && after.left,
            Some((before, after)) => before.left || after.left,
        };
        let away = pieces.iter().map(|piece| piece.drawn_away);
        let away = away.fold(f64::INFINITY, f64::min);
        if left { away } else { -away }
    }

    /// Where an edge stands, with every doubt counted against the crew.
    ///
    /// # Errors
    /// When the line or a doubt is not one.
    pub fn judge(&self, edge: Point, doubts: &LineDoubts) -> Result<LineShot, LineError> {
        Ok(judge(self.distance(edge)?, doubts.guard()?))
    }
}

/// A piece of the line, seen from a place.
struct Piece {
    along: (f64, f64),
    /// From the piece, gone on straight where the line ends with it.
    away: f64,
    /// From the piece as drawn.
    drawn_away: f64,
    left: bool,
    before_start: bool,
    past_end: bool,
}

impl Piece {
    fn seen_from(from: Point, to: Point, [before, past]: [bool; 2], at: Point) -> Piece {
        let along = from.to(to);
        let (east, north) = from.to(at);
        let length = along.0.hypot(along.1);
        let share = (east * along.0 + north * along.1) / length;
        let cross = along.0 * north - along.1 * east;
        let square = cross.abs() / length;
        let to_end =
            |end: f64| (east - end * along.0 / length).hypot(north - end * along.1 / length);
        let drawn_away = if (0.0..=length).contains(&share) {
            square
        } else {
            to_end(share.clamp(0.0, length))
        };
        let goes_on = before && share < 0.0 || past && share > length;
        Piece {
            along,
            away: if goes_on { square } else { drawn_away },
            drawn_away,
            left: cross > 0.0,
            before_start: share <= 0.0 && !before,
            past_end: share >= length && !past,
        }
    }

    fn bends_left_to(&self, next: &Piece) -> bool {
        self.along.0 * next.along.1 - self.along.1 * next.along.0 > 0.0
    }
}

/// Judges a signed distance. On the guard itself it is a touch, and NEAR goes up to and with 0.30 ft.
pub fn judge(distance: Length, guard: Length) -> LineShot {
    let guard = guard.max(Length::ZERO);
    let standing = if distance < -guard {
        Standing::Crossed
    } else if distance <= guard {
        Standing::Touch
    } else if distance <= NEAR {
        Standing::Near
    } else {
        Standing::Ok
    };
    let left = (distance - guard).tenth_micrometres().max(0) / HALF_TENTH;
    LineShot {
        distance,
        guard,
        standing,
        half_tenths: u32::try_from(left).unwrap_or(u32::MAX),
    }
}

/// What is told: `LINE 2½` for what is left, `STOP – LINE CROSSED`, `LINE TOUCHED`. Under half a tenth left is
/// `LINE 0`.
pub fn line_text(shot: &LineShot, language: Language) -> String {
    match shot.standing {
        Standing::Crossed => words::line::crossed().of(language).to_owned(),
        Standing::Touch => words::line::touched().of(language).to_owned(),
        Standing::Near | Standing::Ok => {
            let amount = match (shot.half_tenths / 2, shot.half_tenths % 2) {
                (0, 1) => "½".to_owned(),
                (tenths, 0) => tenths.to_string(),
                (tenths, _) => format!("{tenths}½"),
            };
            words::line::left(&amount).take(language)
        }
    }
}

#[cfg(test)]
mod tests;
