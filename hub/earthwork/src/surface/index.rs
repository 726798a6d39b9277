//! Which triangles can lie under a place: boxes around boxes, eight to a box, neighbours together.
//!
//! A long thin triangle costs one box and no more, and a million triangles are seven levels.

use crate::length::Length;
use crate::point::Point;

/// Boxes to a box.
const PACK: usize = 8;

/// East and north bounds, the edge included.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Bounds {
    low: Point,
    high: Point,
}

impl Bounds {
    pub(super) fn around(points: &[Point]) -> Option<Bounds> {
        points
            .iter()
            .map(|at| Bounds {
                low: *at,
                high: *at,
            })
            .reduce(Bounds::with)
    }

    fn with(self, other: Bounds) -> Bounds {
        Bounds {
            low: Point {
                x: self.low.x.min(other.low.x),
                y: self.low.y.min(other.low.y),
            },
            high: Point {
                x: self.high.x.max(other.high.x),
                y: self.high.y.max(other.high.y),
            },
        }
    }

    /// A count more to each side.
    pub(super) fn grown(self) -> Bounds {
        let count = Length::from_tenth_micrometres(1);
        Bounds {
            low: Point {
                x: self.low.x - count,
                y: self.low.y - count,
            },
            high: Point {
                x: self.high.x + count,
                y: self.high.y + count,
            },
        }
    }

    fn touches(&self, other: Bounds) -> bool {
        self.low.x <= other.high.x
            && other.low.x <= self.high.x
            && self.low.y <= other.high.y
            && other.low.y <= self.high.y
    }

    fn holds(&self, at: Point) -> bool {
        (self.low.x..=self.high.x).contains(&at.x) && (self.low.y..=self.high.y).contains(&at.y)
    }
}

/// The boxes, from the triangles' packs up.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Index {
    /// Triangles, neighbours together.
    order: Vec<u32>,
    levels: Vec<Vec<Bounds>>,
}

impl Index {
    /// An index over boxes, each with the number of its triangle.
    pub(super) fn new(mut boxes: Vec<(u32, Bounds)>) -> Index {
        let all = boxes.iter().map(|(_, bounds)| *bounds).reduce(Bounds::with);
        if let Some(all) = all {
            boxes
                .sort_by_cached_key(|(triangle, bounds)| (along_curve(all, bounds.low), *triangle));
        }
        let pack = |boxes: &[Bounds]| -> Vec<Bounds> {
            boxes
                .chunks(PACK)
                .filter_map(|few| few.iter().copied().reduce(Bounds::with))
                .collect()
        };
        let own: Vec<Bounds> = boxes.iter().map(|(_, bounds)| *bounds).collect();
        let mut levels = vec![pack(&own)];
        while let Some(last) = levels.last().filter(|level| level.len() > PACK) {
            levels.push(pack(last));
        }
        Index {
            order: boxes.into_iter().map(|(triangle, _)| triangle).collect(),
            levels,
        }
    }

    /// The first answer of a triangle whose pack may hold the place.
    pub(super) fn find<T>(&self, at: Point, ask: impl FnMut(u32) -> Option<T>) -> Option<T> {
        self.search(|bounds| bounds.holds(at), ask)
    }

    /// The first answer of one whose pack may touch a box.
    pub(super) fn touching<T>(&self, near: Bounds, ask: impl FnMut(u32) -> Option<T>) -> Option<T> {
        self.search(|bounds| bounds.touches(near), ask)
    }

    fn search<T>(
        &self,
        enter: impl Fn(&Bounds) -> bool,
        mut ask: impl FnMut(u32) -> Option<T>,
    ) -> Option<T> {
        let top = self.levels.len().checked_sub(1)?;
        let mut open: Vec<(usize, usize)> = (0..self.levels[top].len())
            .map(|node| (top, node))
            .collect();
        while let Some((level, node)) = open.pop() {
            if !enter(&self.levels[level][node]) {
                continue;
            }
            let inside = node * PACK..(node + 1) * PACK;
            if level == 0 {
                let triangles = &self.order[inside.start..inside.end.min(self.order.len())];
                if let Some(answer) = triangles.iter().find_map(|triangle| ask(*triangle)) {
                    return Some(answer);
                }
            } else {
                let below = self.levels[level - 1].len();
                open.extend((inside.start..inside.end.min(below)).map(|node| (level - 1, node)));
            }
        }
        None
    }
}

/// How far along a curve that fills the plan with four quarters of four quarters: bits of east and north in turn.
fn along_curve(all: Bounds, at: Point) -> u64 {
    let cell = |low: i64, high: i64, here: i64| {
        let span = i128::from(high) - i128::from(low) + 1;
        let cells = (i128::from(here) - i128::from(low)) * (1 << 20) / span;
        u64::try_from(cells).unwrap_or(0)
    };
    let value = Length::tenth_micrometres;
    let east = cell(value(all.low.x), value(all.high.x), value(at.x));
    let north = cell(value(all.low.y), value(all.high.y), value(at.y));
    (0..20).fold(0, |key, bit| {
        key | (east >> bit & 1) << (2 * bit) | (north >> bit & 1) << (2 * bit + 1)
    })
}
