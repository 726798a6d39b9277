//! What should a surface of triangles be here: exact, in microseconds, and never past its edge.
//!
//! In a triangle the elevation is the mean of its corners', each weighed by the area that the place spans with
//! the other two (barycentric coordinates; plane geometry). It is computed in whole counts and rounded once.

mod build;
mod error;
mod index;
mod outline;
mod overlap;

use std::sync::Arc;

use crate::length::{Length, nearest};
use crate::point::Point;
use crate::target::boundary;
use crate::vector::{Vector, counts, rounded};
pub use build::Drawn;
pub use error::SurfaceError;
use index::{Bounds, Index};

/// The widest span that is worked exactly: 100,000 ft.
const WIDEST: Length = Length::from_hundredths_of_a_foot(10_000_000);
/// Placing rounds to a count on each axis: this much past the edge is still the edge, in counts (1 µm).
const EDGE: f64 = 10.0;

/// A point of a surface.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Vertex {
    /// Where.
    pub at: Point,
    /// How high.
    pub elevation: Length,
}

/// A surface of triangles.
#[derive(Clone, Debug, PartialEq)]
pub struct Surface {
    vertices: Arc<Vec<Vertex>>,
    /// Corners, walking around to the left.
    triangles: Arc<Vec<[u32; 3]>>,
    /// Edges of one triangle alone.
    outline: Vec<[u32; 2]>,
    /// The outline walked around, for drawing.
    edges: Vec<Vec<Point>>,
    index: Index,
}

impl Surface {
    /// From points, breaklines, boundary and holes.
    ///
    /// # Errors
    /// When there is no area, one place has two elevations, lines cross, or a number names no point.
    pub fn from_points(drawn: &Drawn) -> Result<Surface, SurfaceError> {
        build::build(drawn)
    }

    /// From given triangles, as numbers of points counted from 0; either way around.
    ///
    /// # Errors
    /// When there is none, one has no area or names no point, or two lie over each other along an edge.
    pub fn from_triangles(
        vertices: Vec<Vertex>,
        given: &[[usize; 3]],
    ) -> Result<Surface, SurfaceError> {
        let points = vertices.len();
        let small = |number: usize| {
            u32::try_from(number)
                .ok()
                .filter(|_| number < points)
                .ok_or(SurfaceError::NoSuchPoint { number, points })
        };
        let triangles: Vec<[u32; 3]> = given
            .iter()
            .map(|[a, b, c]| Ok([small(*a)?, small(*b)?, small(*c)?]))
            .collect::<Result<_, SurfaceError>>()?;
        Surface::from_net(Arc::new(vertices), Arc::new(triangles))
    }

    /// From triangles as they are kept; shares them.
    ///
    /// # Errors
    /// When there is none, one has no area or names no point, or two lie over each other.
    pub fn from_net(
        vertices: Arc<Vec<Vertex>>,
        mut triangles: Arc<Vec<[u32; 3]>>,
    ) -> Result<Surface, SurfaceError> {
        span(&vertices)?;
        let points = vertices.len();
        let mut boxes = Vec::with_capacity(triangles.len());
        let mut turned = Vec::new();
        for (number, corners) in triangles.iter().enumerate() {
            if let Some(number) = corners.iter().find(|corner| **corner as usize >= points) {
                let number = *number as usize;
                return Err(SurfaceError::NoSuchPoint { number, points });
            }
            let [a, b, c] = corners.map(|corner| vertices[corner as usize].at);
            match boundary::turn(a, b, c) {
                0 => return Err(SurfaceError::NoArea { number }),
                right if right < 0 => turned.push(number),
                _ => {}
            }
            boxes.extend(u32::try_from(number).ok().zip(Bounds::around(&[a, b, c])));
        }
        if triangles.is_empty() {
            return Err(SurfaceError::NoTriangles);
        }
        if !turned.is_empty() {
            let all = Arc::make_mut(&mut triangles);
            for number in turned {
                all[number].swap(1, 2);
            }
        }
        let outline = outline::of(&vertices, &triangles)?;
        let surface = Surface {
            index: Index::new(boxes),
            edges: outline::walked(&vertices, &outline),
            vertices,
            triangles,
            outline,
        };
        overlap::refuse(&surface)?;
        Ok(surface)
    }

    /// Its points and its triangles, shared.
    pub fn net(&self) -> (Arc<Vec<Vertex>>, Arc<Vec<[u32; 3]>>) {
        (Arc::clone(&self.vertices), Arc::clone(&self.triangles))
    }

    /// How many triangles.
    pub fn triangles(&self) -> usize {
        self.triangles.len()
    }

    /// The elevation at a place, to the nearest count. The edge belongs to the surface.
    ///
    /// # Errors
    /// Outside the surface or in a hole, with the distance to the nearest edge.
    pub fn elevation_at(&self, at: Point) -> Result<Length, SurfaceError> {
        self.index
            .find(at, |triangle| self.in_triangle(triangle, at))
            .map_or_else(|| self.on_edge(at), Ok)
    }

    /// Every triangle, its corners walking around to the left.
    pub(crate) fn corners(&self) -> impl Iterator<Item = [Vertex; 3]> + '_ {
        self.triangles
            .iter()
            .map(|corners| corners.map(|corner| self.corner(corner)))
    }

    /// Its outline and its holes, each walked around and back to where it begins, as near as a drawing needs.
    pub fn edges(&self) -> &[Vec<Point>] {
        &self.edges
    }

    /// How long its outline is, holes' edges included, in feet.
    pub(crate) fn outline_ft(&self) -> f64 {
        let edge = |ends: &[u32; 2]| {
            let [from, to] = ends.map(|corner| self.corner(corner).at);
            from.distance(to).feet()
        };
        self.outline.iter().map(edge).sum()
    }

    /// Shows every triangle that can lie over the one between these places.
    pub(crate) fn triangles_near(&self, places: [Point; 3], mut show: impl FnMut([Vertex; 3])) {
        let Some(bounds) = Bounds::around(&places) else {
            return;
        };
        let _all_were_shown = self.index.touching(bounds, |triangle| {
            let corners = self.triangles[triangle as usize];
            show(corners.map(|corner| self.corner(corner)));
            None::<()>
        });
    }

    fn corner(&self, number: u32) -> Vertex {
        self.vertices[number as usize]
    }

    fn in_triangle(&self, triangle: u32, at: Point) -> Option<Length> {
        let [a, b, c] = self.triangles[triangle as usize].map(|corner| self.corner(corner));
        let (to_a, to_b, to_c) = (
            boundary::turn(b.at, c.at, at),
            boundary::turn(c.at, a.at, at),
            boundary::turn(a.at, b.at, at),
        );
        if to_a < 0 || to_b < 0 || to_c < 0 {
            return None;
        }
        let above =
            |corner: Vertex| i128::from((corner.elevation - a.elevation).tenth_micrometres());
        let rise = nearest(to_b * above(b) + to_c * above(c), to_a + to_b + to_c);
        let rise = Length::from_tenth_micrometres(i64::try_from(rise).ok()?);
        Some(a.elevation + rise)
    }

    /// The elevation of the nearest edge, when the place lies past it by no more than rounding does.
    fn on_edge(&self, at: Point) -> Result<Length, SurfaceError> {
        let near = |edge: &[u32; 2]| {
            let [from, to] = edge.map(|corner| self.corner(corner));
            let (along, way) = (
                Vector::between(from.at, to.at),
                Vector::between(from.at, at),
            );
            let part = (way.dot(along) / along.dot(along)).clamp(0.0, 1.0);
            let apart = way.plus(along.times(-part)).size();
            (
                apart,
                from.elevation + rounded(counts(to.elevation - from.elevation) * part),
            )
        };
        let nearest = self.outline.iter().map(near);
        match nearest.min_by(|one, other| one.0.total_cmp(&other.0)) {
            Some((apart, elevation)) if apart <= EDGE => Ok(elevation),
            Some((apart, _)) => Err(SurfaceError::Outside { by: rounded(apart) }),
            None => Err(SurfaceError::NoTriangles),
        }
    }
}

/// Refuses points that lie too far apart to be worked exactly.
fn span(vertices: &[Vertex]) -> Result<(), SurfaceError> {
    let axes: [fn(&Vertex) -> Length; 3] = [|one| one.at.x, |one| one.at.y, |one| one.elevation];
    for axis in axes {
        let values = || vertices.iter().map(axis);
        let span = values()
            .max()
            .zip(values().min())
            .map(|(high, low)| high - low);
        if let Some(span) = span.filter(|span| *span > WIDEST) {
            return Err(SurfaceError::TooWide { span });
        }
    }
    Ok(())
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

    fn vertex(x: i64, y: i64, z: i64) -> Vertex {
        Vertex {
            at: at(x, y),
            elevation: ft(z),
        }
    }

    /// Invented, demo: a square of 10 ft whose two opposite corners stand 1 ft higher.
    fn square() -> Vec<Vertex> {
        vec![
            vertex(0, 0, 100),
            vertex(1000, 0, 0),
            vertex(1000, 1000, 100),
            vertex(0, 1000, 0),
        ]
    }

    fn drawn(breakline: [usize; 2]) -> Drawn {
        Drawn {
            points: square(),
            breaklines: vec![breakline.to_vec()],
            ..Drawn::default()
        }
    }

    #[test]
    fn a_breakline_makes_a_ridge_or_a_ditch() {
        let ridge = Surface::from_points(&drawn([0, 2])).unwrap();
        let ditch = Surface::from_points(&drawn([1, 3])).unwrap();
        assert_eq!(ridge.elevation_at(at(500, 500)), Ok(ft(100)));
        assert_eq!(ditch.elevation_at(at(500, 500)), Ok(ft(0)));
        assert_eq!(ridge.elevation_at(at(1000, 500)), Ok(ft(50)));
    }

    /// Invented, demo: a ridge from west to east runs out of the boundary on both sides.
    #[test]
    fn a_breakline_that_runs_out_of_the_boundary_is_cut_there() {
        let mut points = vec![
            vertex(100, 0, 0),
            vertex(900, 0, 0),
            vertex(900, 1000, 0),
            vertex(100, 1000, 0),
        ];
        points.extend([vertex(0, 500, 100), vertex(1000, 500, 200)]);
        let surface = Surface::from_points(&Drawn {
            points,
            breaklines: vec![vec![4, 5]],
            boundary: Some(vec![0, 1, 2, 3]),
            ..Drawn::default()
        })
        .unwrap();
        assert_eq!(surface.elevation_at(at(500, 500)), Ok(ft(150)));
        assert_eq!(surface.elevation_at(at(100, 500)), Ok(ft(110)));
        assert_eq!(surface.elevation_at(at(900, 250)), Ok(ft(95)));
        assert!(surface.elevation_at(at(50, 500)).is_err());
    }

    #[test]
    fn big_coordinates_lose_no_count() {
        let far = Length::from_hundredths_of_a_foot(200_000_000);
        let moved = square().into_iter().map(|mut one| {
            one.at.x += far;
            one.at.y += far;
            one
        });
        let triangles = [[0, 1, 2], [0, 3, 2]];
        let there = Surface::from_triangles(moved.collect(), &triangles).unwrap();
        let here = Surface::from_triangles(square(), &triangles).unwrap();
        for (x, y) in [(1, 2), (333, 777), (999, 1), (500, 500)] {
            let place = at(x, y);
            let moved = Point {
                x: place.x + far,
                y: place.y + far,
            };
            assert_eq!(there.elevation_at(moved), here.elevation_at(place));
        }
    }

    #[test]
    fn nothing_is_extended_past_the_edge_or_over_a_hole() {
        let mut points = square();
        points.extend([
            vertex(400, 400, 50),
            vertex(600, 400, 50),
            vertex(600, 600, 50),
            vertex(400, 600, 50),
            vertex(2000, 500, 50),
        ]);
        let surface = Surface::from_points(&Drawn {
            points,
            boundary: Some(vec![0, 1, 2, 3]),
            holes: vec![vec![4, 5, 6, 7]],
            ..Drawn::default()
        })
        .unwrap();
        let outside = |x, y| surface.elevation_at(at(x, y)).unwrap_err();
        assert_eq!(outside(500, 500), SurfaceError::Outside { by: ft(100) });
        assert_eq!(outside(1300, 500), SurfaceError::Outside { by: ft(300) });
        assert!(
            outside(500, 500)
                .to_string()
                .contains("1 ft off the surface's edge")
        );
        assert!(
            outside(500, 500)
                .text()
                .spanish
                .contains("a 1 ft de la orilla")
        );
        for (x, y) in [(500, 400), (0, 0), (1000, 300), (500, 300)] {
            assert!(surface.elevation_at(at(x, y)).is_ok(), "{x} {y}");
        }
        let mut hair = at(1000, 300);
        hair.x += Length::from_tenth_micrometres(1);
        assert!(
            surface.elevation_at(hair).is_ok(),
            "rounding is not outside"
        );
    }

    #[test]
    fn a_malformed_surface_is_refused() {
        let points = |points: &[Vertex]| {
            Surface::from_points(&Drawn {
                points: points.to_vec(),
                ..Drawn::default()
            })
        };
        let line = [vertex(0, 0, 0), vertex(100, 100, 0), vertex(200, 200, 0)];
        assert_eq!(points(&line), Err(SurfaceError::NoTriangles));
        assert_eq!(points(&[]), Err(SurfaceError::NoTriangles));
        let mut face = square();
        face.push(vertex(0, 0, 500));
        assert!(matches!(
            points(&face),
            Err(SurfaceError::TwoElevations { .. })
        ));
        face[4] = vertex(100_000_000, 0, 0);
        assert!(matches!(points(&face), Err(SurfaceError::TooWide { .. })));
        let mut crossing = drawn([0, 2]);
        crossing.breaklines.push(vec![1, 3]);
        assert!(matches!(
            Surface::from_points(&crossing),
            Err(SurfaceError::LinesCross { .. })
        ));
        assert!(matches!(
            Surface::from_points(&drawn([0, 9])),
            Err(SurfaceError::NoSuchPoint {
                number: 9,
                points: 4
            })
        ));
        let given = |triangles: &[[usize; 3]]| Surface::from_triangles(square(), triangles);
        assert!(matches!(
            given(&[[0, 1, 1]]),
            Err(SurfaceError::NoArea { number: 0 })
        ));
        assert!(matches!(
            given(&[[0, 1, 2], [0, 1, 3]]),
            Err(SurfaceError::Overlap { .. })
        ));
        assert!(matches!(
            given(&[[0, 1, 4]]),
            Err(SurfaceError::NoSuchPoint { .. })
        ));
    }
}
