//! What lies between the drawing's elevation and the dig: layers, from the top down.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

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

/// Thicker is a slip of the unit or the point (common practice).
const THICKEST: Length = Length::from_hundredths_of_a_foot(500);

impl Stack {
    /// The elevation to dig to under a surface at `z`.
    pub fn dig_to(&self, z: Length) -> Length {
        z - self.layers.iter().map(|layer| layer.thickness).sum()
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
