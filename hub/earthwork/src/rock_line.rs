//! How much rock stands above the dig: points on its top make a surface, and what of it lies above the target is extra
//! work with evidence. Nothing is claimed beyond the outermost points.

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::amount::{CubicFeet, SquareFeet};
use crate::length::{FOOT, Length};
use crate::point::Point;
use crate::surface::{Drawn, Surface, SurfaceError, Vertex};
use crate::volume::VolumeError;
use crate::volume::between::to_grade;

/// Fewer points make no surface.
pub const FEWEST: usize = 3;

/// What stands above the dig.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct RockLine {
    /// Rock above the target, within the outermost points.
    pub volume: CubicFeet,
    /// The area within the outermost points.
    pub area: SquareFeet,
    /// How far the volume may be off because nobody knows where the rock ends: half the usual distance of points,
    /// all around, by the mean thickness.
    pub edge_doubt: CubicFeet,
}

/// Why there is no volume.
#[derive(Clone, Debug, PartialEq)]
pub enum RockError {
    /// Too few points.
    TooFew {
        /// So far.
        has: usize,
    },
    /// The points make no surface.
    Surface(SurfaceError),
    /// There is no volume.
    Volume(VolumeError),
}

impl RockError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::TooFew { has } => words::rock_line::too_few(has, &FEWEST),
            Self::Surface(error) => error.text(),
            Self::Volume(error) => error.text(),
        }
    }
}

words::error!(RockError; Surface(SurfaceError), Volume(VolumeError));

/// Rock above a target: ∫ max(0, rock − target) dA over the triangles of the points; the target is taken at the points.
///
/// # Errors
/// When the points make no surface, or the target is known at none of its triangles.
pub fn above(
    points: &[Vertex],
    target: impl Fn(Point) -> Option<Length>,
) -> Result<RockLine, RockError> {
    if points.len() < FEWEST {
        return Err(RockError::TooFew { has: points.len() });
    }
    let surface = Surface::from_points(&Drawn {
        points: points.to_vec(),
        ..Drawn::default()
    })?;
    let between = to_grade(&surface, target)?;
    let volume = between.volume.cut;
    let thick = volume.0 / between.area.0;
    let edge = surface.outline_ft() * spacing_ft(points) / 2.0;
    Ok(RockLine {
        volume,
        area: between.area,
        edge_doubt: CubicFeet(edge * thick),
    })
}

/// The mean distance from a point to its nearest neighbour, in feet.
fn spacing_ft(points: &[Vertex]) -> f64 {
    let nearest = |number: usize| {
        let others = points
            .iter()
            .enumerate()
            .filter(|(other, _)| *other != number);
        let counts = others.map(|(_, other)| points[number].at.distance(other.at));
        counts.min().map_or(0.0, |counts| {
            counts.tenth_micrometres() as f64 / FOOT as f64
        })
    };
    (0..points.len()).map(nearest).sum::<f64>() / points.len() as f64
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn slab(z: i64) -> Vec<Vertex> {
        [(0, 0), (1200, 0), (1200, 1000), (0, 1000)]
            .map(|(x, y)| Vertex {
                at: Point { x: ft(x), y: ft(y) },
                elevation: ft(z),
            })
            .to_vec()
    }

    /// Invented, demo: a slab of 12 by 10 ft that stands 0.80 ft above the target.
    #[test]
    fn a_slab_is_its_area_by_its_height() {
        let rock = above(&slab(180), |_| Some(ft(100))).unwrap();
        assert!((rock.volume.0 - 96.0).abs() < 1e-9, "{rock:?}");
        // 44 ft around, points 10 ft apart, 0.80 ft thick.
        assert!(
            (rock.edge_doubt.0 - 44.0 * 5.0 * 0.8).abs() < 1e-9,
            "{rock:?}"
        );
        let below = above(&slab(80), |_| Some(ft(100))).unwrap();
        assert!(below.volume.0.abs() < 1e-12);
    }

    #[test]
    fn two_points_or_a_line_make_no_volume() {
        let error = above(&slab(0)[..2], |_| Some(ft(0))).unwrap_err();
        assert!(error.to_string().contains("at least 3"), "{error}");
        assert!(error.text().spanish.contains("al menos 3"));
        let mut line = slab(0)[..3].to_vec();
        line[2].at.y = ft(0);
        line[2].at.x = ft(600);
        assert!(matches!(
            above(&line, |_| Some(ft(0))),
            Err(RockError::Surface(_))
        ));
        assert!(matches!(
            above(&slab(0), |_| None),
            Err(RockError::Volume(_))
        ));
    }
}
