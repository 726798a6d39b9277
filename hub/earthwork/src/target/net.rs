//! A surface as a target keeps it: points and triangles as flat lists of numbers, shared and not copied.

use std::sync::Arc;

use contract::ToSchema;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::TargetError;
use super::kept::Drawing;
use crate::length::Length;
use crate::point::Point;
use crate::surface::{Surface, Vertex};

/// Triangles of points. What is written are flat lists: east, north and elevation of each point in
/// tenth-micrometres, and three numbers of points, counted from 0, for each triangle.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Net {
    /// Where it came from, such as a file's name.
    #[serde(default)]
    pub source: String,
    /// The points.
    #[schema(value_type = Vec<i64>)]
    #[serde(with = "points")]
    points: Arc<Vec<Vertex>>,
    /// The triangles.
    #[schema(value_type = Vec<u32>)]
    #[serde(with = "triangles")]
    triangles: Arc<Vec<[u32; 3]>>,
}

impl Net {
    /// The net of a surface that has been worked out.
    pub fn of(surface: &Surface, source: &str) -> Net {
        let (points, triangles) = surface.net();
        Net {
            source: source.to_owned(),
            points,
            triangles,
        }
    }

    /// How many points, and how many triangles.
    pub fn counts(&self) -> (usize, usize) {
        (self.points.len(), self.triangles.len())
    }

    /// The points.
    pub fn points(&self) -> &[Vertex] {
        &self.points
    }

    /// The triangles, as numbers of points counted from 0.
    pub fn triangles(&self) -> &[[u32; 3]] {
        &self.triangles
    }

    /// The points alone, of a net too large for a phone's screen; the whole net else.
    pub(super) fn for_screens(&self, most: usize) -> Net {
        if self.triangles.len() <= most {
            return self.clone();
        }
        Net {
            source: self.source.clone(),
            points: Arc::default(),
            triangles: Arc::default(),
        }
    }
}

impl Drawing for Net {
    type Made = Surface;

    fn make(&self) -> Result<Surface, TargetError> {
        Ok(Surface::from_net(
            Arc::clone(&self.points),
            Arc::clone(&self.triangles),
        )?)
    }
}

mod points {
    use super::{Arc, Deserialize, Deserializer, Length, Point, Serialize, Serializer, Vertex};
    use serde::de::Error;

    pub(super) fn serialize<S: Serializer>(points: &[Vertex], to: S) -> Result<S::Ok, S::Error> {
        let flat: Vec<Length> = points
            .iter()
            .flat_map(|one| [one.at.x, one.at.y, one.elevation])
            .collect();
        flat.serialize(to)
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(
        from: D,
    ) -> Result<Arc<Vec<Vertex>>, D::Error> {
        let flat = Vec::<Length>::deserialize(from)?;
        let (threes, rest) = flat.as_chunks::<3>();
        if !rest.is_empty() {
            return Err(D::Error::custom("points come in threes"));
        }
        let points = threes.iter().map(|&[x, y, elevation]| Vertex {
            at: Point { x, y },
            elevation,
        });
        Ok(Arc::new(points.collect()))
    }
}

mod triangles {
    use super::{Arc, Deserialize, Deserializer, Serialize, Serializer};
    use serde::de::Error;

    pub(super) fn serialize<S: Serializer>(net: &[[u32; 3]], to: S) -> Result<S::Ok, S::Error> {
        net.as_flattened().serialize(to)
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(
        from: D,
    ) -> Result<Arc<Vec<[u32; 3]>>, D::Error> {
        let flat = Vec::<u32>::deserialize(from)?;
        let (threes, rest) = flat.as_chunks::<3>();
        if !rest.is_empty() {
            return Err(D::Error::custom("triangles come in threes"));
        }
        Ok(Arc::new(threes.to_vec()))
    }
}
