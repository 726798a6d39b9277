//! Which marks does the machine take next, and which ties bring one back.
//!
//! A machine goes over a strip: from where it digs, along the marks in the order of work, as wide as its tracks and
//! a little more. What is painted there is gone afterwards; two tapes from places that stay bring it back.

use crate::layout::tie::{Side, Tape, swing_tie};
use crate::length::Length;
use crate::point::Point;
use crate::vector::{Vector, counts};

/// So far ahead of where it digs now, a machine comes before somebody looks again (common practice).
pub const AHEAD: Length = Length::from_hundredths_of_a_foot(2_000);
/// Bucket and tracks wander this far beside their path (common practice).
pub const BESIDE: Length = Length::from_hundredths_of_a_foot(200);
/// No tie is longer than the crew's tape (common practice).
pub const LONGEST_TAPE: Length = Length::from_hundredths_of_a_foot(10_000);

/// Whether a place lies in the strip that a machine of that width goes over next. The path begins where it digs now;
/// of it counts what is within [`AHEAD`] of its beginning.
pub fn goes_over(path: &[Point], width: Length, place: Point) -> bool {
    let half = counts(width) / 2.0 + counts(BESIDE);
    let mut left = counts(AHEAD);
    let Some(&first) = path.first() else {
        return false;
    };
    if Vector::between(first, place).size() <= half {
        return true;
    }
    for pair in path.windows(2) {
        let (from, way) = (pair[0], Vector::between(pair[0], pair[1]));
        let long = way.size();
        let used = long.min(left);
        if let Some(along) = way.unit() {
            let to = Vector::between(from, place);
            let foot = along.times(to.dot(along).clamp(0.0, used));
            let apart = to.plus(foot.times(-1.0));
            if apart.size() <= half {
                return true;
            }
        }
        left -= used;
        if left <= 0.0 {
            return false;
        }
    }
    false
}

/// A place that stays, from which a tape can be held.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TieEnd {
    /// Where it is.
    pub at: Point,
    /// One standard deviation of that, in feet.
    pub doubt_ft: f64,
}

/// Two tapes that bring a mark back.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ties {
    /// Which ends, by their place in the list: the first tape's and the second's.
    pub ends: (usize, usize),
    /// What each tape reads, level.
    pub tapes: (Length, Length),
    /// On which side of the line from the first end to the second the mark lies.
    pub side: Side,
    /// The angle between the tapes at the mark, in degrees.
    pub angle_degrees: f64,
    /// The tapes meet too flatly; no pair of these ends meets better.
    pub weak: bool,
    /// One standard deviation of the place, in feet: the ends' and the tapes'.
    pub doubt_ft: f64,
}

/// The two ends whose tapes put the mark in the least doubt; a pair that meets too flatly only when every pair does.
/// None when no two ends are within a tape of the mark.
pub fn best_ties(mark: Point, ends: &[TieEnd], tape_doubt_ft: f64) -> Option<Ties> {
    let mut best: Option<Ties> = None;
    for first in 0..ends.len() {
        for second in first + 1..ends.len() {
            let Some(ties) = ties(mark, ends, (first, second), tape_doubt_ft) else {
                continue;
            };
            if best.is_none_or(|best| (ties.weak, ties.doubt_ft) < (best.weak, best.doubt_ft)) {
                best = Some(ties);
            }
        }
    }
    best
}

/// What these two ends give.
fn ties(mark: Point, ends: &[TieEnd], of: (usize, usize), tape_doubt_ft: f64) -> Option<Ties> {
    let (first, second) = (ends[of.0], ends[of.1]);
    let tapes = (first.at.distance(mark), second.at.distance(mark));
    if tapes.0 > LONGEST_TAPE || tapes.1 > LONGEST_TAPE {
        return None;
    }
    let tape = |from, distance| Tape { from, distance };
    let tie = swing_tie(tape(first.at, tapes.0), tape(second.at, tapes.1)).ok()?;
    let doubt = |end: TieEnd| end.doubt_ft.hypot(tape_doubt_ft);
    Some(Ties {
        ends: of,
        tapes,
        side: tie.side_of(mark),
        angle_degrees: tie.angle_degrees,
        weak: tie.weak(),
        doubt_ft: tie.doubt_of_ends_ft(doubt(first), doubt(second))?,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::layout::marks::{CONTROL_DOUBT_FT, HUB_DOUBT_FT, TAPE_DOUBT_FT};
    use proptest::prelude::*;

    fn at(x: i64, y: i64) -> Point {
        Point {
            x: Length::from_hundredths_of_a_foot(x * 100),
            y: Length::from_hundredths_of_a_foot(y * 100),
        }
    }

    fn end(x: i64, y: i64, doubt_ft: f64) -> TieEnd {
        TieEnd {
            at: at(x, y),
            doubt_ft,
        }
    }

    const WIDE: Length = Length::from_hundredths_of_a_foot(800);

    /// Derived: 20 ft ahead of 0, 0 toward the east, 8 / 2 + 2 = 6 ft to each side.
    #[test]
    fn the_strip_is_twenty_feet_long_and_as_wide_as_the_tracks_and_a_little_more() {
        let path = [at(0, 0), at(12, 0), at(50, 0)];
        for (place, goes) in [
            (at(0, 0), true),
            (at(12, 6), true),
            (at(12, 7), false),
            (at(26, 0), true),
            (at(27, 0), false),
            (at(-6, 0), true),
            (at(-7, 0), false),
        ] {
            assert_eq!(goes_over(&path, WIDE, place), goes, "{place:?}");
        }
        assert!(!goes_over(&[], WIDE, at(0, 0)));
        // A path that turns back does not reach twice as far.
        assert!(!goes_over(&[at(0, 0), at(15, 0), at(0, 0)], WIDE, at(0, 9)));
    }

    /// Mathematics: 40 and 30 ft over a base of 50 ft meet square; by hubs, √2·√(0.02² + 0.02²) = 0.04.
    #[test]
    fn the_tapes_that_meet_best_are_named_with_what_they_are_worth() {
        let hubs = [
            end(0, 0, HUB_DOUBT_FT),
            end(64, 48, HUB_DOUBT_FT),
            end(50, 0, HUB_DOUBT_FT),
        ];
        // The second lies in one line with the first and the mark at 32, 24.
        let ties = best_ties(at(32, 24), &hubs, TAPE_DOUBT_FT).unwrap();
        assert_eq!((ties.ends, ties.side), ((0, 2), Side::Left));
        assert_eq!(
            ties.tapes,
            (at(0, 0).distance(at(40, 0)), at(0, 0).distance(at(30, 0)))
        );
        assert!((ties.angle_degrees - 90.0).abs() < 1e-9 && !ties.weak);
        assert!((ties.doubt_ft - 0.04).abs() < 1e-9, "{}", ties.doubt_ft);
        // Control is known better than a hub in the same place.
        let control = [hubs[0], hubs[2], end(50, 0, CONTROL_DOUBT_FT)];
        let better = best_ties(at(32, 24), &control, TAPE_DOUBT_FT).unwrap();
        assert_eq!(better.ends, (0, 2));
    }

    #[test]
    fn a_flat_pair_is_named_weak_and_one_beyond_the_tape_is_not_named() {
        let flat = [end(0, 0, HUB_DOUBT_FT), end(60, 1, HUB_DOUBT_FT)];
        assert!(best_ties(at(30, 2), &flat, TAPE_DOUBT_FT).unwrap().weak);
        assert_eq!(best_ties(at(120, 0), &flat, TAPE_DOUBT_FT), None);
        assert_eq!(best_ties(at(30, 2), &flat[..1], TAPE_DOUBT_FT), None);
        // A tape of nothing is none: the mark is itself a hub.
        assert_eq!(best_ties(at(0, 0), &flat, TAPE_DOUBT_FT), None);
    }

    proptest! {
        /// What is named brings the mark back, no other pair is worth more, and the order of the ends does not matter.
        #[test]
        fn the_ties_bring_the_mark_back(
            mark in (0_i64..80, 0_i64..80),
            places in proptest::collection::vec((0_i64..80, 0_i64..80, 0.0_f64..0.05), 2..8)
        ) {
            let mark = at(mark.0, mark.1);
            let ends: Vec<TieEnd> = places.iter().map(|(x, y, doubt)| end(*x, *y, *doubt)).collect();
            let found = best_ties(mark, &ends, TAPE_DOUBT_FT);
            let turned: Vec<TieEnd> = ends.iter().rev().copied().collect();
            let again = best_ties(mark, &turned, TAPE_DOUBT_FT);
            prop_assert_eq!(found.map(|ties| (ties.weak, ties.doubt_ft)), again.map(|ties| (ties.weak, ties.doubt_ft)));
            if let Some(ties) = found {
                let tape = |end: usize, distance| Tape { from: ends[end].at, distance };
                let tie = swing_tie(tape(ties.ends.0, ties.tapes.0), tape(ties.ends.1, ties.tapes.1)).unwrap();
                prop_assert!(ties.weak || tie.on(ties.side).distance(mark) <= Length::from_tenth_micrometres(40));
                prop_assert!(ties.doubt_ft >= TAPE_DOUBT_FT * std::f64::consts::SQRT_2 - 1e-12);
            }
        }
    }
}
