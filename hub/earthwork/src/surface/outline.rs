//! Where a surface of triangles ends: the edges of one triangle alone, and the same walked around.

use std::collections::BTreeMap;

use super::{SurfaceError, Vertex};
use crate::point::Point;
use crate::target::drawn::{fewest, off_line};

/// A drawing keeps this share of the outline's own size.
const NEAR: f64 = 0.001;

/// The edges of one triangle alone; an edge walked twice the same way means triangles that lie over each other.
pub(super) fn of(
    vertices: &[Vertex],
    triangles: &[[u32; 3]],
) -> Result<Vec<[u32; 2]>, SurfaceError> {
    let mut edges: Vec<([u32; 2], bool)> = triangles
        .iter()
        .flat_map(|[a, b, c]| [[*a, *b], [*b, *c], [*c, *a]])
        .map(|[from, to]| ([from.min(to), from.max(to)], from < to))
        .collect();
    edges.sort_unstable();
    if let Some(twice) = edges.windows(2).find(|pair| pair[0] == pair[1]) {
        let [from, to] = twice[0].0.map(|corner| vertices[corner as usize].at);
        return Err(SurfaceError::Overlap { from, to });
    }
    Ok(edges
        .chunk_by(|one, other| one.0 == other.0)
        .filter(|same| same.len() == 1)
        .map(|same| same[0].0)
        .collect())
}

/// The outline walked around: rings, the first place again at the end, without what no drawing shows. Where rings touch,
/// either way on is taken.
pub(super) fn walked(vertices: &[Vertex], outline: &[[u32; 2]]) -> Vec<Vec<Point>> {
    let mut beside: BTreeMap<u32, Vec<u32>> = BTreeMap::new();
    for [one, other] in outline {
        beside.entry(*one).or_default().push(*other);
        beside.entry(*other).or_default().push(*one);
    }
    let mut rings = Vec::new();
    while let Some(start) = beside.keys().next().copied() {
        let (mut ring, mut at) = (vec![start], start);
        while let Some(next) = beside.get_mut(&at).and_then(Vec::pop) {
            for (end, gone) in [(at, next), (next, at)] {
                if let Some(left) = beside.get_mut(&end) {
                    if let Some(place) = left.iter().position(|other| *other == gone) {
                        left.swap_remove(place);
                    }
                    if left.is_empty() {
                        beside.remove(&end);
                    }
                }
            }
            ring.push(next);
            at = next;
        }
        beside.remove(&start);
        rings.push(drawn(vertices, &ring));
    }
    rings
}

/// A ring as it is drawn: the fewest places, never fewer than its farthest from where it begins.
fn drawn(vertices: &[Vertex], ring: &[u32]) -> Vec<Point> {
    let places: Vec<Point> = ring.iter().map(|one| vertices[*one as usize].at).collect();
    let Some(start) = places.first() else {
        return places;
    };
    let far = |at: &Point| {
        let (x, y) = start.to(*at);
        x.hypot(y)
    };
    let size = places.iter().map(far).fold(0.0, f64::max);
    fewest(&places, off_line, size * NEAR)
}
