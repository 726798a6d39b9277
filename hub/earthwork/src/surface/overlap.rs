//! Do triangles lie over each other without sharing an edge: no outline may run through the inside of the surface.
//!
//! All triangles turn to the left, so how many lie over a place changes only across the outline, the edges of one
//! triangle alone. Where two layers lie over each other, some edge of the outline has one layer on its outer side:
//! then it crosses another edge of the outline, or its middle lies in a triangle that is not its own (winding
//! numbers; plane topology). Edges that only touch, corner to edge, are not taken apart further.

use super::{Surface, SurfaceError};
use crate::length::Length;
use crate::point::Point;
use crate::surface::index::{Bounds, Index};
use crate::target::boundary;

/// More pairs than this are compared only for a file made to stall the hub: a sound surface has a few to an edge.
pub(super) const MOST_PAIRS: u64 = 40_000_000;

/// Refuses a surface whose triangles lie over each other.
pub(super) fn refuse(surface: &Surface) -> Result<(), SurfaceError> {
    let ends = |edge: &[u32; 2]| edge.map(|corner| surface.corner(corner).at);
    let boxes = (0..).zip(&surface.outline).filter_map(|(number, edge)| {
        let bounds = Bounds::around(&ends(edge))?;
        Some((number, bounds))
    });
    let index = Index::new(boxes.collect());
    let mut pairs: u64 = 0;
    for edge in &surface.outline {
        let [from, to] = ends(edge);
        let overlap = SurfaceError::Overlap { from, to };
        let Some(bounds) = Bounds::around(&[from, to]) else {
            continue;
        };
        let crossed = index.touching(bounds, |other| {
            pairs += 1;
            let other = ends(&surface.outline[other as usize]);
            if pairs > MOST_PAIRS {
                Some(SurfaceError::Tangled)
            } else {
                cross([from, to], other).then(|| overlap.clone())
            }
        });
        if let Some(wrong) = crossed {
            return Err(wrong);
        }
        let middle = twice(from, to);
        let Some(near) = Bounds::around(&[halved(middle)]) else {
            continue;
        };
        let covered = surface.index.touching(near.grown(), |triangle| {
            pairs += 1;
            let corners = surface.triangles[triangle as usize];
            let own = edge.iter().all(|end| corners.contains(end));
            let at = corners.map(|corner| {
                let at = surface.corner(corner).at;
                twice(at, at)
            });
            let inside = [(0, 1), (1, 2), (2, 0)]
                .iter()
                .all(|(a, b)| boundary::turn(at[*a], at[*b], middle) > 0);
            if pairs > MOST_PAIRS {
                Some(SurfaceError::Tangled)
            } else {
                (!own && inside).then(|| overlap.clone())
            }
        });
        if let Some(wrong) = covered {
            return Err(wrong);
        }
    }
    Ok(())
}

/// The sum of two places: twice their middle, so that it stays a whole number.
fn twice(one: Point, other: Point) -> Point {
    Point {
        x: one.x + other.x,
        y: one.y + other.y,
    }
}

fn halved(at: Point) -> Point {
    let half = |length: Length| Length::from_tenth_micrometres(length.tenth_micrometres() / 2);
    Point {
        x: half(at.x),
        y: half(at.y),
    }
}

/// Whether two edges cross at a place inside both.
pub(super) fn cross(one: [Point; 2], other: [Point; 2]) -> bool {
    let side = |line: [Point; 2], at| boundary::turn(line[0], line[1], at).signum();
    side(one, other[0]) * side(one, other[1]) < 0 && side(other, one[0]) * side(other, one[1]) < 0
}

#[cfg(test)]
mod tests {
    use super::super::{Surface, SurfaceError, Vertex};
    use crate::length::Length;
    use crate::point::Point;

    fn net(corners: &[(i64, i64)], triangles: &[[usize; 3]]) -> Result<Surface, SurfaceError> {
        let ft = Length::from_hundredths_of_a_foot;
        let points = corners.iter().map(|(x, y)| Vertex {
            at: Point {
                x: ft(*x),
                y: ft(*y),
            },
            elevation: ft(0),
        });
        Surface::from_triangles(points.collect(), triangles)
    }

    /// Derived from plane geometry.
    #[test]
    fn triangles_over_each_other_are_found_without_a_shared_edge() {
        let both = [[0, 1, 2], [3, 4, 5]];
        let crossing = [(0, 0), (100, 0), (0, 100), (20, 20), (120, 20), (20, 120)];
        let inside = [(0, 0), (100, 0), (0, 100), (10, 10), (30, 10), (10, 30)];
        for corners in [crossing, inside] {
            let found = net(&corners, &both);
            assert!(matches!(found, Err(SurfaceError::Overlap { .. })));
        }
        let apart = [(0, 0), (100, 0), (0, 100), (200, 0), (300, 0), (200, 100)];
        let touching = [(0, 0), (100, 0), (0, 100), (100, 0), (200, 0), (100, 100)];
        for corners in [apart, touching] {
            assert!(net(&corners, &both).is_ok());
        }
    }

    /// Derived from plane geometry: a corner that hangs on a longer edge is no overlap.
    #[test]
    fn a_hanging_corner_is_no_overlap() {
        let corners = [(0, 0), (200, 0), (100, 100), (100, -100), (100, 0)];
        assert!(net(&corners, &[[0, 1, 2], [0, 3, 4], [4, 3, 1]]).is_ok());
    }
}
