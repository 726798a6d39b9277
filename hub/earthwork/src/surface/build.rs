//! From points to triangles: constrained Delaunay triangles that honour breaklines, boundary and holes.

use spade::{ConstrainedDelaunayTriangulation, Point2, Triangulation};

use super::{Surface, SurfaceError, Vertex};
use crate::length::Length;
use crate::point::Point;
use crate::surface::index::{Bounds, Index};
use crate::surface::overlap::{MOST_PAIRS, cross};
use crate::target::boundary;
use crate::vector::{Vector, counts, rounded};

/// What a surface is made of; lines are numbers of points, counted from 0.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Drawn {
    /// All points, breaklines' and boundaries' too.
    pub points: Vec<Vertex>,
    /// Lines that triangles do not cross.
    pub breaklines: Vec<Vec<usize>>,
    /// The outer edge; around all points, without dents, when none.
    pub boundary: Option<Vec<usize>>,
    /// Where there is no surface.
    pub holes: Vec<Vec<usize>>,
}

pub(super) fn build(drawn: &Drawn) -> Result<Surface, SurfaceError> {
    super::span(&drawn.points)?;
    let (mut points, place) = once_each(&drawn.points)?;
    let known = |line: &[usize]| -> Result<Vec<usize>, SurfaceError> {
        line.iter()
            .map(|&number| {
                place.get(number).copied().ok_or(SurfaceError::NoSuchPoint {
                    number,
                    points: place.len(),
                })
            })
            .collect()
    };
    let mut breaks = Vec::new();
    for line in &drawn.breaklines {
        breaks.extend(known(line)?.windows(2).map(|pair| [pair[0], pair[1]]));
    }
    let mut edges = Vec::new();
    let mut ring = |line: &Vec<usize>| -> Result<Vec<Point>, SurfaceError> {
        let line = known(line)?;
        let corners: Vec<Point> = line.iter().map(|&number| points[number].at).collect();
        if corners.len() < 3 {
            return Err(SurfaceError::TooFewCorners {
                corners: corners.len(),
            });
        }
        if boundary::crosses_itself(&corners) {
            return Err(SurfaceError::RingCrosses);
        }
        let next = line.iter().cycle().skip(1);
        edges.extend(line.iter().zip(next).map(|(from, to)| [*from, *to]));
        Ok(corners.into_iter().map(thrice).collect())
    };
    let outer = drawn.boundary.as_ref().map(&mut ring).transpose()?;
    let holes: Vec<Vec<Point>> = drawn
        .holes
        .iter()
        .map(&mut ring)
        .collect::<Result<_, _>>()?;
    split_where_rings_cross(&mut points, &mut breaks, &mut edges)?;
    edges.extend(breaks);
    edges.retain(|edge| edge[0] != edge[1]);
    let mut triangles = triangulate(&points, edges)?;
    triangles.retain(|corners| {
        let at = |axis: fn(Point) -> Length| -> Length {
            corners.iter().map(|corner| axis(points[*corner].at)).sum()
        };
        // Three times the middle, so that it stays a whole number.
        let middle = Point {
            x: at(|point| point.x),
            y: at(|point| point.y),
        };
        outer
            .as_ref()
            .is_none_or(|outer| boundary::contains(outer, middle))
            && !holes.iter().any(|hole| boundary::contains(hole, middle))
    });
    Surface::from_triangles(points, &triangles)
}

/// A boundary or a hole that crosses a breakline gets a point there, at the breakline's elevation: the ring is cut on
/// the plan alone, the breakline is the ground.
fn split_where_rings_cross(
    points: &mut Vec<Vertex>,
    breaks: &mut Vec<[usize; 2]>,
    rings: &mut Vec<[usize; 2]>,
) -> Result<(), SurfaceError> {
    let ends = |points: &[Vertex], edge: &[usize; 2]| edge.map(|number| points[number].at);
    let boxes = (0..)
        .zip(breaks.iter())
        .filter_map(|(number, edge)| Some((number, Bounds::around(&ends(points, edge))?)));
    let index = Index::new(boxes.collect());
    let mut on_breaks: Vec<Vec<(f64, usize)>> = vec![Vec::new(); breaks.len()];
    let mut on_rings: Vec<Vec<(f64, usize)>> = vec![Vec::new(); rings.len()];
    let mut pairs: u64 = 0;
    for (ring, edge) in rings.iter().enumerate() {
        let [from, to] = ends(points, edge);
        let mut met: Vec<u32> = Vec::new();
        let tangled = Bounds::around(&[from, to]).and_then(|bounds| {
            index.touching(bounds, |number| {
                pairs += 1;
                if cross([from, to], ends(points, &breaks[number as usize])) {
                    met.push(number);
                }
                (pairs > MOST_PAIRS).then_some(SurfaceError::Tangled)
            })
        });
        if let Some(tangled) = tangled {
            return Err(tangled);
        }
        for number in met {
            let line = breaks[number as usize];
            let ([start, end], way) =
                (line.map(|number| points[number]), Vector::between(from, to));
            let along = Vector::between(start.at, end.at);
            let across =
                |one: Vector, other: Vector| one.east * other.north - one.north * other.east;
            let gap = Vector::between(start.at, from);
            let part = across(gap, way) / across(along, way);
            let share = across(gap, along) / across(along, way);
            let rise = counts(end.elevation - start.elevation) * part;
            on_breaks[number as usize].push((part, points.len()));
            on_rings[ring].push((share, points.len()));
            points.push(Vertex {
                at: along.times(part).applied_to(start.at),
                elevation: start.elevation + rounded(rise),
            });
        }
    }
    *breaks = cut(breaks, on_breaks);
    *rings = cut(rings, on_rings);
    Ok(())
}

/// Edges cut at points on them, each given by how far along it lies.
fn cut(edges: &[[usize; 2]], on_them: Vec<Vec<(f64, usize)>>) -> Vec<[usize; 2]> {
    let mut parts = Vec::with_capacity(edges.len());
    for ([from, to], mut points) in edges.iter().zip(on_them) {
        points.sort_by(|one, other| one.0.total_cmp(&other.0));
        let mut before = *from;
        for (_, point) in points {
            parts.push([before, point]);
            before = point;
        }
        parts.push([before, *to]);
    }
    parts
}

fn thrice(at: Point) -> Point {
    Point {
        x: at.x * 3,
        y: at.y * 3,
    }
}

/// Each place once, and where each given point went.
fn once_each(given: &[Vertex]) -> Result<(Vec<Vertex>, Vec<usize>), SurfaceError> {
    let mut order: Vec<usize> = (0..given.len()).collect();
    order.sort_by_key(|&number| (given[number].at, number));
    let mut points: Vec<Vertex> = Vec::with_capacity(given.len());
    let mut place = vec![0; given.len()];
    for number in order {
        let next = given[number];
        match points.last() {
            Some(last) if last.at == next.at && last.elevation != next.elevation => {
                return Err(SurfaceError::TwoElevations {
                    at: next.at,
                    one: last.elevation,
                    other: next.elevation,
                });
            }
            Some(last) if last.at == next.at => {}
            Some(_) | None => points.push(next),
        }
        place[number] = points.len() - 1;
    }
    Ok((points, place))
}

fn triangulate(points: &[Vertex], edges: Vec<[usize; 2]>) -> Result<Vec<[usize; 3]>, SurfaceError> {
    let Some(origin) = points.first() else {
        return Err(SurfaceError::NoTriangles);
    };
    // Whole counts from the surface's own corner: an f64 holds them exactly.
    let local = points.iter().map(|point| {
        let way = Vector::between(origin.at, point.at);
        Point2::new(way.east, way.north)
    });
    let mut crossing = None;
    let net = ConstrainedDelaunayTriangulation::<Point2<f64>>::try_bulk_load_cdt(
        local.collect(),
        edges,
        |edge| crossing = Some(edge),
    )
    .map_err(|_not_a_coordinate| SurfaceError::NoTriangles)?;
    if let Some([from, to]) = crossing {
        return Err(SurfaceError::LinesCross {
            from: points[from].at,
            to: points[to].at,
        });
    }
    Ok(net
        .inner_faces()
        .map(|face| face.vertices().map(|vertex| vertex.fix().index()))
        .collect())
}
