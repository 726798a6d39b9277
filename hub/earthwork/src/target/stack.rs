//! What lies between the drawing's elevation and the dig: layers, from the top down.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::TargetError;
use crate::length::Length;

/// One layer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Layer {
    /// What it is, such as `gravel`.
    pub name: String,
    /// Above 0 and up to 5 ft.
    pub thickness: Length,
}

/// The layers under the surface that the drawing gives.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Stack {
    /// What the shape's elevation is, such as `top of footing`.
    pub surface: String,
    /// From the surface down.
    pub layers: Vec<Layer>,
}

/// What lies under all layers goes by this name.
pub const SUBGRADE: &str = "subgrade";
/// Thicker is a slip of the unit or the point (common practice).
const THICKEST: Length = Length::from_hundredths_of_a_foot(500);

impl Stack {
    /// How far a named surface lies below the shape's: the shape's own name, the top of a layer by the layer's name
    /// (with or without “top of”), `subgrade` for what lies under all of them.
    ///
    /// # Errors
    /// When the stack has no such surface.
    pub fn depth_of(&self, name: &str) -> Result<Length, TargetError> {
        let plain = |name: &str| {
            let name = name.trim().to_lowercase();
            name.strip_prefix("top of ")
                .map_or(name.clone(), str::to_owned)
        };
        let wanted = plain(name);
        let mut depth = Length::ZERO;
        if wanted == plain(&self.surface) {
            return Ok(depth);
        }
        for layer in &self.layers {
            if wanted == plain(&layer.name) {
                return Ok(depth);
            }
            depth += layer.thickness;
        }
        if wanted == SUBGRADE {
            return Ok(depth);
        }
        Err(TargetError::NoSuchSurface {
            name: name.to_owned(),
            known: self.names().join(", "),
        })
    }

    /// The surfaces that a reading can be judged against, from the top down.
    pub fn names(&self) -> Vec<String> {
        std::iter::once(self.surface.clone())
            .chain(self.layers.iter().map(|layer| layer.name.clone()))
            .chain([SUBGRADE.to_owned()])
            .collect()
    }

    /// What is wrong with the layers.
    pub(super) fn check(&self) -> Vec<TargetError> {
        let mut wrong = Vec::new();
        if self.surface.trim().is_empty() {
            wrong.push(TargetError::NoSurface);
        }
        for (below, layer) in self.layers.iter().enumerate() {
            if layer.name.trim().is_empty() {
                wrong.push(TargetError::LayerUnnamed { number: below + 1 });
            }
            if layer.thickness <= Length::ZERO || layer.thickness > THICKEST {
                wrong.push(TargetError::LayerThickness {
                    name: layer.name.clone(),
                    thickness: layer.thickness,
                });
            }
        }
        wrong
    }
}
