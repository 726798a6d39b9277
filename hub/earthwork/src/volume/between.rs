//! Volumes between two surfaces of triangles, or between one and a grade: exact prisms, split at the zero line.
//!
//! Where two triangles lie over each other their common part is a convex polygon, on which the difference of two
//! planes is a plane: its prisms are exact (plane geometry; clipping by half planes).

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::{CutFill, VolumeError, prism};
use crate::amount::SquareFeet;
use crate::length::{FOOT, Length};
use crate::point::Point;
use crate::surface::{Surface, Vertex};

/// What lies between two surfaces.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Between {
    /// Cut and fill, apart.
    pub volume: CutFill,
    /// The area on which both are known.
    pub area: SquareFeet,
    /// The area of the first on which the second is not known: nothing is counted there.
    pub not_covered: SquareFeet,
}

/// A place with both elevations, in feet from a corner of the first triangle.
#[derive(Clone, Copy)]
struct Corner {
    x: f64,
    y: f64,
}

/// A triangle as places in feet and the plane over it.
struct Plane {
    corners: [Corner; 3],
    elevations: [f64; 3],
}

impl Plane {
    fn new(from: Vertex, corners: [Vertex; 3]) -> Plane {
        let feet =
            |one: Length, other: Length| (one - other).tenth_micrometres() as f64 / FOOT as f64;
        Plane {
            corners: corners.map(|corner| Corner {
                x: feet(corner.at.x, from.at.x),
                y: feet(corner.at.y, from.at.y),
            }),
            elevations: corners.map(|corner| feet(corner.elevation, from.elevation)),
        }
    }

    /// The plane's elevation, in feet.
    fn at(&self, at: Corner) -> f64 {
        let [a, b, c] = self.corners;
        let whole = turn(a, b, c);
        let (to_b, to_c) = (turn(at, c, a) / whole, turn(at, a, b) / whole);
        let [za, zb, zc] = self.elevations;
        za + to_b * (zb - za) + to_c * (zc - za)
    }
}

/// Twice the area of a triangle, above zero when it turns left.
fn turn(a: Corner, b: Corner, c: Corner) -> f64 {
    (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}

/// The part of a convex polygon to the left of a line.
fn left_of(polygon: &[Corner], from: Corner, to: Corner) -> Vec<Corner> {
    let mut kept = Vec::with_capacity(polygon.len() + 1);
    for (number, one) in polygon.iter().enumerate() {
        let next = polygon[(number + 1) % polygon.len()];
        let (here, there) = (turn(from, to, *one), turn(from, to, next));
        if here >= 0.0 {
            kept.push(*one);
        }
        if here * there < 0.0 {
            let part = here / (here - there);
            kept.push(Corner {
                x: one.x + part * (next.x - one.x),
                y: one.y + part * (next.y - one.y),
            });
        }
    }
    kept
}

/// The common part of two triangles that turn left.
fn common(one: &Plane, other: &Plane) -> Vec<Corner> {
    let [a, b, c] = other.corners;
    [(a, b), (b, c), (c, a)]
        .into_iter()
        .fold(one.corners.to_vec(), |polygon, (from, to)| {
            left_of(&polygon, from, to)
        })
}

/// Cut and fill from a surface down or up to another: the first − the second, positive is cut.
///
/// # Errors
/// When they do not lie over each other.
pub fn surfaces(there: &Surface, wanted: &Surface) -> Result<Between, VolumeError> {
    let mut all = Between::default();
    for corners in there.corners() {
        let from = corners[0];
        let one = Plane::new(from, corners);
        let own = turn(one.corners[0], one.corners[1], one.corners[2]) / 2.0;
        let mut covered = 0.0;
        wanted.triangles_near(corners.map(|corner| corner.at), |corners| {
            let other = Plane::new(from, corners);
            let polygon = common(&one, &other);
            let Some(first) = polygon.first() else { return };
            for pair in polygon[1..].windows(2) {
                let area = turn(*first, pair[0], pair[1]) / 2.0;
                let differences = [*first, pair[0], pair[1]].map(|at| one.at(at) - other.at(at));
                all.volume += prism(SquareFeet(area.max(0.0)), differences);
                covered += area.max(0.0);
            }
        });
        all.area += SquareFeet(covered);
        all.not_covered += SquareFeet((own - covered).max(0.0));
    }
    if all.area.0 > 0.0 {
        Ok(all)
    } else {
        Err(VolumeError::Apart)
    }
}

/// Cut and fill from a surface to a grade that is known at places: exact where the grade is a plane within each
/// triangle, else as good as the triangles are small. A corner where the grade is not known leaves its triangles out.
///
/// # Errors
/// When no triangle has its grade known at all corners.
pub fn to_grade(
    there: &Surface,
    wanted: impl Fn(Point) -> Option<Length>,
) -> Result<Between, VolumeError> {
    let mut all = Between::default();
    for corners in there.corners() {
        let places = Plane::new(corners[0], corners).corners;
        let area = SquareFeet(turn(places[0], places[1], places[2]) / 2.0);
        let differences = corners
            .map(|corner| wanted(corner.at).map(|wanted| (corner.elevation - wanted).feet()));
        if let [Some(a), Some(b), Some(c)] = differences {
            all.volume += prism(area, [a, b, c]);
            all.area += area;
        } else {
            all.not_covered += area;
        }
    }
    if all.area.0 > 0.0 {
        Ok(all)
    } else {
        Err(VolumeError::Apart)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::surface::Drawn;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn surface(points: &[(i64, i64, i64)]) -> Surface {
        Surface::from_points(&Drawn {
            points: points
                .iter()
                .map(|(x, y, z)| Vertex {
                    at: Point {
                        x: ft(*x),
                        y: ft(*y),
                    },
                    elevation: ft(*z),
                })
                .collect(),
            ..Drawn::default()
        })
        .unwrap()
    }

    const SQUARE: [(i64, i64); 4] = [(0, 0), (1000, 0), (1000, 1000), (0, 1000)];

    fn flat(z: i64) -> Surface {
        surface(&SQUARE.map(|(x, y)| (x, y, z)))
    }

    /// Derived: a pyramid of 3 ft on a square of 10 ft is 100 ft³.
    #[test]
    fn a_pyramid_over_a_square_is_a_third_of_its_box() {
        let mut points = SQUARE.map(|(x, y)| (x, y, 0)).to_vec();
        points.push((500, 500, 300));
        let pyramid = surface(&points);
        let between = surfaces(&pyramid, &flat(0)).unwrap();
        assert!((between.volume.cut.0 - 100.0).abs() < 1e-9, "{between:?}");
        assert!(between.volume.fill.0.abs() < 1e-9 && between.not_covered.0.abs() < 1e-9);
        let at_one = to_grade(&pyramid, |_| Some(ft(100))).unwrap();
        assert!((at_one.volume.net().0 - 0.0).abs() < 1e-9, "{at_one:?}");
        // Above 1 ft stands a pyramid two thirds as high: (2/3)³ of it.
        assert!(
            (at_one.volume.cut.0 - 100.0 * 8.0 / 27.0).abs() < 1e-9,
            "{at_one:?}"
        );
    }

    #[test]
    fn what_the_other_does_not_cover_is_said() {
        let wide = surface(&[
            (0, 0, 100),
            (2000, 0, 100),
            (2000, 1000, 100),
            (0, 1000, 100),
        ]);
        let between = surfaces(&wide, &flat(0)).unwrap();
        assert!((between.volume.cut.0 - 100.0).abs() < 1e-9);
        assert!((between.not_covered.0 - 100.0).abs() < 1e-9);
        let away = surface(&[(9000, 0, 0), (9900, 0, 0), (9900, 900, 0)]);
        assert_eq!(surfaces(&away, &flat(0)), Err(VolumeError::Apart));
        assert_eq!(to_grade(&flat(0), |_| None), Err(VolumeError::Apart));
    }

    proptest! {
        /// Both ways around are mirror images, and raising one by a foot adds a foot over the common area.
        #[test]
        fn mirrored_and_raised(z in prop::array::uniform5(-200_i64..200), mid in (100_i64..900, 100_i64..900)) {
            let made = |up: i64| {
                let mut points: Vec<_> = SQUARE.iter().zip(z).map(|((x, y), z)| (*x, *y, z + up)).collect();
                points.push((mid.0, mid.1, z[4] + up));
                surface(&points)
            };
            let grade = surface(&[(0, 0, 0), (1000, 0, 50), (1000, 1000, -30), (0, 1000, 20), (300, 600, 80)]);
            let (there, raised) = (surfaces(&made(0), &grade).unwrap(), surfaces(&made(100), &grade).unwrap());
            let back = surfaces(&grade, &made(0)).unwrap();
            prop_assert!((there.volume.cut.0 - back.volume.fill.0).abs() < 1e-7);
            prop_assert!((there.area.0 - 100.0).abs() < 1e-7);
            prop_assert!((raised.volume.net().0 - there.volume.net().0 - 100.0).abs() < 1e-6);
        }
    }
}
