//! Does a line of levels close: heights along a line, the misclosure, and how it is spread.
//!
//! Sources: US Navy Engineering Aid training text, "Level Computations", for the page check and the
//! proportional adjustment; 0.02 ft times the root of the set-ups is common practice on small sites.

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::length::{FOOT, Form, Length, METRE, nearest, whole};
use crate::level::{elevation, height_of_instrument};

/// One set-up of a line: a backsight on the last point, a foresight on the next.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Turn {
    /// On the point behind.
    pub backsight: Length,
    /// On the point ahead.
    pub foresight: Length,
}

/// A line of levels, worked out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct LevelLine {
    /// The height of instrument of each set-up.
    pub heights: Vec<Length>,
    /// The elevation of each point ahead, the last one included.
    pub elevations: Vec<Length>,
    /// The sum of the backsights.
    pub backsights: Length,
    /// The sum of the foresights.
    pub foresights: Length,
}

/// Why a line is not adjusted.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LevelLineError {
    /// No set-up at all.
    Empty,
    /// It misses by more than is allowed, so nothing is adjusted.
    TooFar {
        /// By how much.
        misclosure: Length,
        /// How much would do.
        allowed: Length,
    },
    /// Distances that are not a way along a line.
    Distances {
        /// The whole length.
        total: Length,
    },
}

const THOUSANDTHS: Form = Form::DecimalFeet { places: 3 };

impl LevelLineError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::Empty => words::level_line::empty().into(),
            Self::TooFar {
                misclosure,
                allowed,
            } => words::level_line::too_far(
                &misclosure.show(THOUSANDTHS),
                &allowed.show(THOUSANDTHS),
            ),
            Self::Distances { total } => words::level_line::distances(total),
        }
    }
}

words::error!(LevelLineError);

impl LevelLine {
    /// Works out a line from a known elevation.
    ///
    /// # Errors
    /// When there is no set-up.
    pub fn run(start: Length, turns: &[Turn]) -> Result<LevelLine, LevelLineError> {
        if turns.is_empty() {
            return Err(LevelLineError::Empty);
        }
        let mut line = LevelLine {
            heights: Vec::new(),
            elevations: Vec::new(),
            backsights: turns.iter().map(|turn| turn.backsight).sum(),
            foresights: turns.iter().map(|turn| turn.foresight).sum(),
        };
        let mut last = start;
        for turn in turns {
            let height = height_of_instrument(last, turn.backsight);
            last = elevation(height, turn.foresight);
            line.heights.push(height);
            line.elevations.push(last);
        }
        Ok(line)
    }

    /// The page check: backsights less foresights, which is the rise from the first point to the last.
    pub fn rise(&self) -> Length {
        self.backsights - self.foresights
    }

    /// By how much the line misses the known elevation of its last point. Positive: it comes out too high.
    pub fn misclosure(&self, known: Length) -> Length {
        self.elevations
            .last()
            .map_or(Length::ZERO, |last| *last - known)
    }

    /// The elevations with the misclosure taken off in equal parts, one a set-up.
    ///
    /// # Errors
    /// When the line misses by more than is allowed: then there is no adjusted value at all.
    pub fn adjusted(&self, known: Length, allowed: Length) -> Result<Vec<Length>, LevelLineError> {
        let misclosure = self.misclosure(known);
        if misclosure.abs() > allowed {
            return Err(LevelLineError::TooFar {
                misclosure,
                allowed,
            });
        }
        let n = i128::try_from(self.elevations.len()).unwrap_or(i128::MAX);
        let share = |k: i128| part(misclosure, k, n);
        Ok((1_i128..)
            .zip(&self.elevations)
            .map(|(k, elevation)| *elevation - share(k))
            .collect())
    }
}

/// What to add to points at these distances from the start of a line of this length that misses by so much.
///
/// # Errors
/// When the distances do not rise along the line.
pub fn corrections_by_distance(
    misclosure: Length,
    distances: &[Length],
    total: Length,
) -> Result<Vec<Length>, LevelLineError> {
    let rising = distances.is_sorted_by(|a, b| a < b);
    let within = distances
        .iter()
        .all(|at| *at > Length::ZERO && *at <= total);
    if !rising || !within {
        return Err(LevelLineError::Distances { total });
    }
    let counts = |length: Length| i128::from(length.tenth_micrometres());
    Ok(distances
        .iter()
        .map(|at| -part(misclosure, counts(*at), counts(total)))
        .collect())
}

/// `length · over / under`, to the nearest count.
fn part(length: Length, over: i128, under: i128) -> Length {
    let counts = nearest(i128::from(length.tenth_micrometres()) * over, under.max(1));
    Length::from_tenth_micrometres(i64::try_from(counts).unwrap_or(i64::MAX))
}

/// What a closure limit is counted over.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Per {
    /// The root of the kilometres.
    RootKilometre,
    /// The root of the miles of 5,280 ft.
    RootMile,
}

/// The closure allowed over a distance: so much times the root of the kilometres or miles.
pub fn allowed_over(rate: Length, per: Per, distance: Length) -> Length {
    let unit = match per {
        Per::RootKilometre => METRE * 1000,
        Per::RootMile => FOOT * 5280,
    };
    let over = distance.abs().tenth_micrometres() as f64 / unit as f64;
    times(rate, over.sqrt())
}

/// The closure allowed over a number of set-ups: so much times their root.
pub fn allowed_for_set_ups(rate: Length, set_ups: u32) -> Length {
    times(rate, f64::from(set_ups).sqrt())
}

fn times(rate: Length, factor: f64) -> Length {
    Length::from_tenth_micrometres(whole((rate.tenth_micrometres() as f64 * factor).round()))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn turns(shots: &[(i64, i64)]) -> Vec<Turn> {
        shots
            .iter()
            .map(|(backsight, foresight)| Turn {
                backsight: ft(*backsight),
                foresight: ft(*foresight),
            })
            .collect()
    }

    /// Invented, demo: the loop from BM-1 over BM-4 and BM-3. BM-3 comes out at 305.905 (booked 305.92).
    #[test]
    fn the_demo_loop_closes_and_is_adjusted() {
        let line = LevelLine::run(
            ft(29_984),
            &turns(&[(861, 302), (931, 125), (133, 891), (244, 850)]),
        )
        .unwrap();
        assert_eq!(
            line.elevations,
            [ft(30_543), ft(31_349), ft(30_591), ft(29_985)]
        );
        assert_eq!(line.rise(), ft(1));
        assert_eq!(line.misclosure(ft(29_984)), ft(1));
        let allowed = allowed_for_set_ups(ft(2), 4);
        assert_eq!(allowed, ft(4));
        let adjusted = line.adjusted(ft(29_984), allowed).unwrap();
        assert_eq!(adjusted[1], Length::from_thousandths_of_a_foot(313_485));
        assert_eq!(adjusted[3], ft(29_984));
    }

    #[test]
    fn a_line_that_misses_by_too_much_is_not_adjusted() {
        let line = LevelLine::run(ft(10_000), &turns(&[(500, 400), (300, 405)])).unwrap();
        let error = line.adjusted(ft(10_000), ft(4)).unwrap_err();
        assert!(
            error
                .to_string()
                .contains("misses by −0.050 ft; 0.040 ft is allowed"),
            "{error}"
        );
        assert_eq!(LevelLine::run(ft(0), &[]), Err(LevelLineError::Empty));
    }

    #[test]
    fn distances_must_rise_along_the_line() {
        for distances in [
            vec![ft(5), ft(5)],
            vec![ft(0)],
            vec![ft(11)],
            vec![ft(6), ft(5)],
        ] {
            assert!(
                corrections_by_distance(ft(1), &distances, ft(10)).is_err(),
                "{distances:?}"
            );
        }
    }
}
