//! Does a target reach here: a boundary of corners, whose edge belongs to it.

use super::TargetError;
use crate::length::{Length, whole};
use crate::point::Point;

/// Placing rounds to a count on each axis: this much past the edge is still the edge, in counts (1 µm).
const EDGE: f64 = 10.0;

/// How far outside the boundary a place lies; none when it lies inside or on the edge.
pub(crate) fn outside_by(corners: &[Point], at: Point) -> Option<Length> {
    let nearest = edges(corners)
        .map(|(from, to)| distance_to_edge(from, to, at))
        .fold(f64::INFINITY, f64::min);
    if nearest <= EDGE || contains(corners, at) {
        return None;
    }
    Some(Length::from_tenth_micrometres(whole(nearest.round())))
}

/// What is wrong with a boundary.
pub(super) fn check(corners: &[Point]) -> Option<TargetError> {
    if corners.len() < 3 {
        return Some(TargetError::TooFewCorners {
            corners: corners.len(),
        });
    }
    crosses_itself(corners).then_some(TargetError::BoundaryCrosses)
}

/// Whether a line that need not come back to where it begins meets itself.
pub(crate) fn line_crosses_itself(corners: &[Point]) -> bool {
    match corners {
        [ring @ .., last] if ring.first() == Some(last) => crosses_itself(ring),
        _ => {
            let edges: Vec<_> = corners.windows(2).map(|pair| (pair[0], pair[1])).collect();
            edges.iter().enumerate().any(|(i, one)| {
                let others = edges.iter().skip(i + 2);
                others.into_iter().any(|other| meet(*one, *other))
            })
        }
    }
}

/// Whether two edges that are not neighbours meet.
pub(crate) fn crosses_itself(corners: &[Point]) -> bool {
    let edges: Vec<_> = edges(corners).collect();
    let last = edges.len().saturating_sub(1);
    edges.iter().enumerate().any(|(i, one)| {
        edges
            .iter()
            .enumerate()
            .skip(i + 2)
            .filter(|(j, _)| !(i == 0 && *j == last))
            .any(|(_, other)| meet(*one, *other))
    })
}

fn edges(corners: &[Point]) -> impl Iterator<Item = (Point, Point)> {
    let next = corners.iter().cycle().skip(1);
    corners.iter().copied().zip(next.copied())
}

/// Counts how often a line going east from the place crosses the boundary; exact, in whole counts.
pub(crate) fn contains(corners: &[Point], at: Point) -> bool {
    edges(corners)
        .filter(|(from, to)| (from.y > at.y) != (to.y > at.y))
        .filter(|(from, to)| (turn(*from, *to, at) > 0) == (to.y > from.y))
        .count()
        % 2
        == 1
}

/// Above zero when the place lies to the left of the way from one point to another; exact.
pub(crate) fn turn(from: Point, to: Point, at: Point) -> i128 {
    let wide = |length: Length| i128::from(length.tenth_micrometres());
    wide(to.x - from.x) * wide(at.y - from.y) - wide(to.y - from.y) * wide(at.x - from.x)
}

pub(crate) fn meet(one: (Point, Point), other: (Point, Point)) -> bool {
    let side = |line: (Point, Point), at| turn(line.0, line.1, at).signum();
    let apart = |line: (Point, Point), a, b| side(line, a) * side(line, b) <= 0;
    let boxes =
        |a: Length, b: Length, c: Length, d: Length| a.min(b) <= c.max(d) && c.min(d) <= a.max(b);
    apart(one, other.0, other.1)
        && apart(other, one.0, one.1)
        && boxes(one.0.x, one.1.x, other.0.x, other.1.x)
        && boxes(one.0.y, one.1.y, other.0.y, other.1.y)
}

fn distance_to_edge(from: Point, to: Point, at: Point) -> f64 {
    let (x, y) = from.to(to);
    let (east, north) = from.to(at);
    let length = x.hypot(y);
    if length == 0.0 {
        return east.hypot(north);
    }
    let along = ((east * x + north * y) / length).clamp(0.0, length);
    (east - along * x / length).hypot(north - along * y / length)
}

#[cfg(test)]
mod tests {
    use super::super::tests::{at, ft};
    use super::*;

    fn ell() -> Vec<Point> {
        vec![
            at(0, 0),
            at(1000, 0),
            at(1000, 400),
            at(400, 400),
            at(400, 1000),
            at(0, 1000),
        ]
    }

    #[test]
    fn the_edge_and_the_corners_belong_to_the_target() {
        for place in [
            at(0, 0),
            at(500, 0),
            at(1000, 200),
            at(700, 400),
            at(400, 400),
            at(400, 700),
            at(200, 200),
        ] {
            assert_eq!(outside_by(&ell(), place), None, "{place:?}");
        }
    }

    #[test]
    fn outside_is_told_by_the_distance_to_the_nearest_edge() {
        assert_eq!(outside_by(&ell(), at(500, 500)), Some(ft(100)));
        assert_eq!(outside_by(&ell(), at(1003, 404)), Some(ft(5)));
        assert_eq!(outside_by(&ell(), at(-1, 500)), Some(ft(1)));
    }

    #[test]
    fn a_boundary_that_crosses_itself_is_seen() {
        assert!(crosses_itself(&[
            at(0, 0),
            at(100, 100),
            at(100, 0),
            at(0, 100)
        ]));
        assert!(!crosses_itself(&ell()));
        let [a, b, c, d] = [at(0, 0), at(1000, 0), at(500, 500), at(500, -500)];
        assert!(line_crosses_itself(&[a, b, c, d]));
        assert!(!line_crosses_itself(&[a, b, c]));
        let mut ring = ell();
        ring.push(ring[0]);
        assert!(!line_crosses_itself(&ring));
    }
}
