//! Which arc fits a walked line: the circle whose distances to the points have the least squares.
//!
//! Begun with the circle that is linear in its unknowns, then improved step by step on the distances themselves
//! (Gauss–Newton; plane geometry).

use crate::length::Length;
use crate::point::Point;
use crate::vector::{Vector, rounded};

/// A circle fitted to points.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FittedArc {
    /// Its centre.
    pub centre: Point,
    /// Its radius.
    pub radius: Length,
    /// How far the farthest point stands from it.
    pub most_off: Length,
}

/// Improving ends here at the latest; three to five steps are usual.
const MOST_STEPS: usize = 50;
/// A radius beyond this many times the points' span is a straight line.
const STRAIGHT: f64 = 1e4;

/// Fits an arc to points; none when there are fewer than three, or they lie in a straight line.
pub fn fit_arc(points: &[Point]) -> Option<FittedArc> {
    let first = *points.first()?;
    let local: Vec<Vector> = points
        .iter()
        .map(|at| Vector::between(first, *at))
        .collect();
    let span = local.iter().map(|way| way.size()).fold(0.0, f64::max);
    if points.len() < 3 || span <= 0.0 {
        return None;
    }
    // In units of the span, so that no square grows out of hand.
    let unit: Vec<Vector> = local.iter().map(|way| way.times(1.0 / span)).collect();
    let rows = unit
        .iter()
        .map(|at| ([at.east, at.north, 1.0], at.dot(*at)));
    let [east, north, rest] = least_squares(rows)?;
    let mut centre = Vector {
        east: east / 2.0,
        north: north / 2.0,
    };
    let mut radius = (rest + centre.dot(centre)).max(0.0).sqrt();
    for _ in 0..MOST_STEPS {
        let rows = unit.iter().filter_map(|at| {
            let out = at.plus(centre.times(-1.0));
            let away = out.unit()?;
            Some(([away.east, away.north, 1.0], out.size() - radius))
        });
        let [east, north, larger] = least_squares(rows)?;
        centre = centre.plus(Vector { east, north });
        radius += larger;
        if east.hypot(north).hypot(larger) < 1e-14 * radius.abs() {
            break;
        }
    }
    if !radius.is_finite() || radius <= 0.0 || radius > STRAIGHT {
        return None;
    }
    let off = unit
        .iter()
        .map(|at| (at.plus(centre.times(-1.0)).size() - radius).abs())
        .fold(0.0, f64::max);
    Some(FittedArc {
        centre: centre.times(span).applied_to(first),
        radius: rounded(radius * span),
        most_off: rounded(off * span),
    })
}

/// Three unknowns by least squares; none when the rows do not fix them.
fn least_squares(rows: impl Iterator<Item = ([f64; 3], f64)>) -> Option<[f64; 3]> {
    let mut normal = [[0.0; 4]; 3];
    for (row, value) in rows {
        for (line, one) in normal.iter_mut().zip(row) {
            for (sum, other) in line.iter_mut().zip(row.into_iter().chain([value])) {
                *sum += one * other;
            }
        }
    }
    for pivot in 0..3 {
        let best = (pivot..3).max_by(|one, other| {
            let size = |line: &usize| normal[*line][pivot].abs();
            size(one).total_cmp(&size(other))
        })?;
        normal.swap(pivot, best);
        if normal[pivot][pivot].abs() < 1e-12 {
            return None;
        }
        let row = normal[pivot];
        for (line, values) in normal.iter_mut().enumerate() {
            if line != pivot {
                let share = values[pivot] / row[pivot];
                for (value, own) in values.iter_mut().zip(row) {
                    *value -= share * own;
                }
            }
        }
    }
    Some([0, 1, 2].map(|line| normal[line][3] / normal[line][line]))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(x: f64, y: f64) -> Point {
        Point {
            x: Length::from_feet(x).unwrap(),
            y: Length::from_feet(y).unwrap(),
        }
    }

    /// Derived from plane geometry: points on a circle of radius 50 ft about (2,000,100, 700,200).
    #[test]
    fn an_arc_is_found_from_its_points_even_far_from_the_origin() {
        let on_it = |degrees: f64, radius: f64| {
            let (sin, cos) = degrees.to_radians().sin_cos();
            at(2_000_100.0 + radius * cos, 700_200.0 + radius * sin)
        };
        let exact: Vec<Point> = [0.0, 20.0, 35.0, 50.0]
            .map(|turn| on_it(turn, 50.0))
            .to_vec();
        let found = fit_arc(&exact).unwrap();
        assert!((found.radius.feet() - 50.0).abs() < 1e-4, "{found:?}");
        assert!(found.centre.distance(at(2_000_100.0, 700_200.0)).feet() < 1e-4);
        let mut walked = exact;
        walked[1] = on_it(20.0, 50.06);
        let found = fit_arc(&walked).unwrap();
        assert!(found.most_off.feet() < 0.06 && found.most_off.feet() > 0.02);
    }

    #[test]
    fn a_straight_line_is_no_arc() {
        assert_eq!(fit_arc(&[at(0.0, 0.0), at(1.0, 1.0)]), None);
        assert_eq!(
            fit_arc(&[at(0.0, 0.0), at(10.0, 10.0), at(20.0, 20.0)]),
            None
        );
        assert_eq!(fit_arc(&[at(3.0, 3.0); 4]), None);
    }
}
