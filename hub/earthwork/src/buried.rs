//! What is buried: how near a line the machine gives way to the shovel, and how clear a pipe crosses it.
//!
//! Widths around a marked line are the place's own rule: 18 in in some states, 24 in in others (common practice).

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::{Fixed, Text};

use crate::length::Length;
use crate::point::Point;
use crate::vector::{Vector, counts, rounded};

/// Why there is no answer about a buried line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum BuriedError {
    /// Fewer than two places.
    TooFewPlaces {
        /// How many.
        places: usize,
    },
    /// A size below zero.
    Negative {
        /// Which.
        what: Fixed,
        /// As given.
        value: Length,
    },
    /// Top below bottom.
    UpsideDown {
        /// The top.
        top: Length,
        /// The bottom.
        bottom: Length,
    },
}

impl BuriedError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::TooFewPlaces { places } => words::buried::too_few_places(places),
            Self::Negative { what, value } => words::buried::negative(what, value),
            Self::UpsideDown { top, bottom } => words::buried::upside_down(top, bottom),
        }
    }
}

words::error!(BuriedError);

/// How the line is marked on the ground.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Marked {
    /// Along its middle.
    #[default]
    Centre,
    /// Along both edges: the same places, the width is known.
    Edges,
}

/// From the middle of a line to where the machine may dig again: half of its outside and the zone.
///
/// # Errors
/// When a size is below zero.
pub fn half_band(outside: Length, zone: Length) -> Result<Length, BuriedError> {
    for (what, value) in [
        (words::buried::what::outside_diameter(), outside),
        (words::buried::what::zone(), zone),
    ] {
        if value < Length::ZERO {
            return Err(BuriedError::Negative { what, value });
        }
    }
    Ok(zone + rounded((counts(outside) / 2.0).ceil()))
}

/// How far a place lies from the middle of a buried line, level.
///
/// # Errors
/// When the line has fewer than two places.
pub fn away(line: &[Point], at: Point) -> Result<Length, BuriedError> {
    if line.len() < 2 {
        return Err(BuriedError::TooFewPlaces { places: line.len() });
    }
    let nearest = line
        .windows(2)
        .map(|pair| {
            let (along, to) = (
                Vector::between(pair[0], pair[1]),
                Vector::between(pair[0], at),
            );
            let square = along.dot(along);
            let share = if square > 0.0 {
                (to.dot(along) / square).clamp(0.0, 1.0)
            } else {
                0.0
            };
            to.plus(along.times(-share)).size()
        })
        .fold(f64::INFINITY, f64::min);
    Ok(rounded(nearest.floor()))
}

/// The stretches of a straight run, by station, that lie within a half band of a buried line; in order, joined where
/// they touch.
///
/// # Errors
/// When the line has fewer than two places.
pub fn stretches(
    run: (Point, Point),
    line: &[Point],
    half_band: Length,
) -> Result<Vec<(Length, Length)>, BuriedError> {
    if line.len() < 2 {
        return Err(BuriedError::TooFewPlaces { places: line.len() });
    }
    let whole = Vector::between(run.0, run.1);
    let Some(unit) = whole.unit() else {
        return Ok(vec![]);
    };
    let mut found: Vec<(f64, f64)> = line
        .windows(2)
        .filter_map(|pair| within(run.0, unit, (pair[0], pair[1]), counts(half_band)))
        .map(|(from, to)| (from.max(0.0), to.min(whole.size())))
        .filter(|(from, to)| from < to)
        .collect();
    found.sort_by(|one, other| one.0.total_cmp(&other.0));
    let mut joined: Vec<(f64, f64)> = Vec::new();
    for (from, to) in found {
        match joined.last_mut() {
            Some(last) if from <= last.1 => last.1 = last.1.max(to),
            _ => joined.push((from, to)),
        }
    }
    Ok(joined
        .into_iter()
        .map(|(from, to)| (rounded(from.floor()), rounded(to.ceil())))
        .collect())
}

/// Where a straight way lies within `half` of one piece of a line: the piece with round ends is convex, so it is one
/// stretch, from the ends' circles and the piece's flanks.
fn within(from: Point, unit: Vector, piece: (Point, Point), half: f64) -> Option<(f64, f64)> {
    let mut reach: Option<(f64, f64)> = None;
    let mut take = |low: f64, high: f64| {
        let (least, most) = reach.unwrap_or((low, high));
        reach = Some((least.min(low), most.max(high)));
    };
    for end in [piece.0, piece.1] {
        let to = Vector::between(from, end);
        let share = to.dot(unit);
        let aside = to.plus(unit.times(-share)).size();
        if aside <= half {
            let chord = (half * half - aside * aside).sqrt();
            take(share - chord, share + chord);
        }
    }
    let along = Vector::between(piece.0, piece.1);
    if let Some(flank) = along.unit() {
        let right = flank.to_the_right();
        let start = Vector::between(piece.0, from);
        let (mut low, mut high) = (f64::NEG_INFINITY, f64::INFINITY);
        for (at, speed, least, most) in [
            (start.dot(right), unit.dot(right), -half, half),
            (start.dot(flank), unit.dot(flank), 0.0, along.size()),
        ] {
            if speed.abs() < 1e-12 {
                if at < least || at > most {
                    (low, high) = (1.0, 0.0);
                }
                continue;
            }
            let (one, other) = ((least - at) / speed, (most - at) / speed);
            low = low.max(one.min(other));
            high = high.min(one.max(other));
        }
        if low <= high && low.is_finite() && high.is_finite() {
            take(low, high);
        }
    }
    reach
}

/// How clear a new pipe or dig crosses a buried line, up and down: the gap between them; negative is how far they are
/// one in the other.
///
/// # Errors
/// When a top lies below its bottom.
pub fn clearance(
    new_bottom: Length,
    new_top: Length,
    line_bottom: Length,
    line_top: Length,
) -> Result<Length, BuriedError> {
    for (bottom, top) in [(new_bottom, new_top), (line_bottom, line_top)] {
        if top < bottom {
            return Err(BuriedError::UpsideDown { top, bottom });
        }
    }
    Ok((line_bottom - new_top).max(new_bottom - line_top))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn at(x: i64, y: i64) -> Point {
        Point { x: ft(x), y: ft(y) }
    }

    /// Invented, demo: a 2 in gas main at y = 8 under a drain that runs south from (14, 88).
    #[test]
    fn the_shovels_stretch_is_the_zone_both_sides_of_the_main() {
        let half = half_band(ft(17), ft(200)).unwrap();
        let main = [at(-5000, 800), at(15_000, 800)];
        let found = stretches((at(1400, 8800), at(1400, 0)), &main, half).unwrap();
        assert_eq!(found.len(), 1);
        let (from, to) = found[0];
        assert!((from.feet() - 77.915).abs() < 0.001 && (to.feet() - 82.085).abs() < 0.001);
        assert_eq!(away(&main, at(1400, 0)), Ok(ft(800)));
    }

    #[test]
    fn one_pipe_in_another_is_below_zero() {
        let main = (ft(29_845), ft(29_862));
        let gap = |invert: i64, crown: i64| clearance(ft(invert), ft(crown), main.0, main.1);
        assert_eq!(gap(29_820, 29_855), Ok(ft(-10)));
        assert_eq!(gap(29_700, 29_735), Ok(ft(110)));
        assert_eq!(gap(29_900, 29_935), Ok(ft(38)));
        assert!(gap(29_855, 29_820).is_err());
        assert!(half_band(ft(-1), ft(200)).is_err());
        assert!(away(&[at(0, 0)], at(1, 1)).is_err());
    }

    proptest! {
        #[test]
        fn a_place_is_in_a_stretch_when_it_is_near_the_line(
            corners in proptest::collection::vec((-5000_i64..5000, -5000_i64..5000), 2..5),
            run in (-5000_i64..5000, -5000_i64..5000, -5000_i64..5000, -5000_i64..5000),
            half in 50_i64..800, share in 0.0..1.0_f64,
        ) {
            let line: Vec<Point> = corners.into_iter().map(|(x, y)| at(x, y)).collect();
            let run = (at(run.0, run.1), at(run.2, run.3));
            prop_assume!(run.0 != run.1);
            let whole = Vector::between(run.0, run.1);
            let here = whole.times(share).applied_to(run.0);
            let away = away(&line, here).unwrap();
            let station = rounded(whole.size() * share);
            let inside = stretches(run, &line, ft(half)).unwrap()
                .iter().any(|(from, to)| *from <= station && station <= *to);
            if (away - ft(half)).abs() > Length::from_tenth_micrometres(100) {
                prop_assert_eq!(inside, away < ft(half));
            }
        }
    }
}
