//! What should the ground be: a shape, the layers under it, and where it ends.
//!
//! Outside its edges a target is refused, with how far and what to do; nothing is ever extended past an edge.

pub(crate) mod boundary;
mod plane;
mod run;
mod stack;

use serde::{Deserialize, Serialize};
use thiserror::Error;
use utoipa::ToSchema;

use crate::length::Length;
use crate::point::Point;
pub use run::{NEAR_STEP, Run, Step};
pub use stack::{Layer, Stack};

/// The shape of the surface that the drawing gives.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Shape {
    /// Level.
    Flat {
        /// Everywhere.
        elevation: Length,
    },
    /// Even, falling to drain.
    Plane {
        /// A place on it.
        through: Point,
        /// Its elevation there.
        elevation: Length,
        /// Rise to the east, in feet per foot; negative falls.
        rise_east: f64,
        /// Rise to the north, in feet per foot; negative falls.
        rise_north: f64,
    },
    /// Along a line, in steps.
    Run(Run),
}

/// The grade to reach.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Target {
    /// The drawing's surface.
    pub shape: Shape,
    /// What lies under it, down to the dig.
    pub stack: Stack,
    /// The corners of its boundary, in order; everywhere when none. A run ends at its own edges too.
    pub within: Option<Vec<Point>>,
}

/// What to dig to at a place.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum DigTo {
    /// One elevation.
    At(Length),
    /// Within half a foot of a step's face: say which side.
    NearStep {
        /// The station of the face.
        station: Length,
        /// The elevation before it.
        before: Length,
        /// The elevation after it.
        after: Length,
    },
}

/// Why there is no target, or what is wrong with one.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum TargetError {
    /// Before the start or after the end of a run.
    #[error("Station {station} is {by} past its {}: the run goes from 0 to {length}. Pick a mark on the run, or have the run drawn longer.", if *.station < Length::ZERO { "start" } else { "end" })]
    PastEnd {
        /// The station.
        station: Length,
        /// By how much.
        by: Length,
        /// The run's length.
        length: Length,
    },
    /// Beside a run.
    #[error(
        "The place is {by} past the {side} edge of the run. Pick a mark on the run, or have its width revised."
    )]
    BesideRun {
        /// Looking up-station.
        side: &'static str,
        /// By how much.
        by: Length,
    },
    /// Outside the boundary.
    #[error(
        "The place is {by} outside the target's boundary. Pick a mark inside it, or have the boundary revised."
    )]
    OutsideBoundary {
        /// By how much.
        by: Length,
    },
    /// The stack does not say what its surface is.
    #[error(
        "The target does not say what its elevation is. Name the surface, such as top of footing."
    )]
    NoSurface,
    /// A layer without a name.
    #[error("Layer {number} from the top has no name. Name it, such as gravel.")]
    LayerUnnamed {
        /// Counted from the top.
        number: usize,
    },
    /// A layer too thin or too thick.
    #[error(
        "Layer “{name}” is {thickness} thick: a layer is more than 0 and at most 5 ft. Check the unit and the point."
    )]
    LayerThickness {
        /// The layer.
        name: String,
        /// As given.
        thickness: Length,
    },
    /// A plane too steep to be one.
    #[error(
        "The plane rises {rise} ft per foot to the {side}. Write 2 % as 0.02; steeper than 1 is a face, not a grade."
    )]
    TooSteep {
        /// `east` or `north`.
        side: &'static str,
        /// As given.
        rise: String,
    },
    /// A run whose two points are one.
    #[error(
        "The run's start and the point it goes toward are the same. Give another point up-station."
    )]
    NoDirection,
    /// A run without length.
    #[error("The run is {length} long. Give its length from station 0 to the end, above zero.")]
    NoLength {
        /// As given.
        length: Length,
    },
    /// A run without width.
    #[error(
        "The run's widths are {left} to the left and {right} to the right. Give both at or above zero, one of them above."
    )]
    NoWidth {
        /// As given.
        left: Length,
        /// As given.
        right: Length,
    },
    /// A run without steps.
    #[error("The run has no elevation. Give at least the one from station 0 on.")]
    NoSteps,
    /// A first step that is not at the start.
    #[error("The first elevation is given from station {from} on. Give the one from station 0.")]
    FirstStep {
        /// As given.
        from: Length,
    },
    /// Steps out of order.
    #[error(
        "The step at station {station} does not lie beyond the one before it. Give the steps up-station, each once."
    )]
    StepOrder {
        /// As given.
        station: Length,
    },
    /// A step past the end.
    #[error(
        "The step at station {station} lies past the run's end at {length}. Check the station and the length."
    )]
    StepPastEnd {
        /// As given.
        station: Length,
        /// The run's length.
        length: Length,
    },
    /// A negative window.
    #[error(
        "The step at station {station} has a window below zero. Give how far, either way, its face may fall."
    )]
    StepWindow {
        /// Its station.
        station: Length,
    },
    /// Too few corners.
    #[error("The boundary has {corners} corners. Give at least three, in order, or none at all.")]
    TooFewCorners {
        /// As given.
        corners: usize,
    },
    /// Edges that cross.
    #[error("The boundary crosses itself. Give its corners in order, walking around it.")]
    BoundaryCrosses,
}

impl Target {
    /// What to dig to at a place. A place on an edge or an end belongs to the target.
    ///
    /// # Errors
    /// When the place is outside, by how much and what to do; or the target itself is wrong.
    pub fn dig_to(&self, at: Point) -> Result<DigTo, TargetError> {
        if let Some(wrong) = self.check().into_iter().next() {
            return Err(wrong);
        }
        if let Some(by) = self
            .within
            .as_deref()
            .and_then(|corners| boundary::outside_by(corners, at))
        {
            return Err(TargetError::OutsideBoundary { by });
        }
        let level = |z| DigTo::At(self.stack.dig_to(z));
        match &self.shape {
            Shape::Flat { elevation } => Ok(level(*elevation)),
            Shape::Plane {
                through,
                elevation,
                rise_east,
                rise_north,
            } => Ok(level(plane::elevation(
                *through,
                *elevation,
                (*rise_east, *rise_north),
                at,
            ))),
            Shape::Run(run) => run.dig_to(at, &self.stack),
        }
    }

    /// Everything that is wrong with the target; none when it can be worked to.
    pub fn check(&self) -> Vec<TargetError> {
        let mut wrong = self.stack.check();
        match &self.shape {
            Shape::Flat { .. } => {}
            Shape::Plane {
                rise_east,
                rise_north,
                ..
            } => wrong.extend(plane::check((*rise_east, *rise_north))),
            Shape::Run(run) => wrong.extend(run.check()),
        }
        match &self.within {
            Some(corners) if corners.len() < 3 => wrong.push(TargetError::TooFewCorners {
                corners: corners.len(),
            }),
            Some(corners) if boundary::crosses_itself(corners) => {
                wrong.push(TargetError::BoundaryCrosses);
            }
            Some(_) | None => {}
        }
        wrong
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    pub(super) fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    pub(super) fn at(x: i64, y: i64) -> Point {
        Point { x: ft(x), y: ft(y) }
    }

    pub(super) fn stack(thickness: i64) -> Stack {
        Stack {
            surface: "top of slab".into(),
            layers: vec![Layer {
                name: "gravel".into(),
                thickness: ft(thickness),
            }],
        }
    }

    /// Invented, demo: the pad falls 1 % to the south.
    fn pad() -> Target {
        Target {
            shape: Shape::Plane {
                through: at(1800, 8000),
                elevation: ft(30_400),
                rise_east: 0.0,
                rise_north: 0.01,
            },
            stack: stack(50),
            within: Some(vec![
                at(1800, 2000),
                at(8400, 2000),
                at(8400, 9000),
                at(1800, 9000),
            ]),
        }
    }

    #[test]
    fn a_plane_falls_and_the_stack_lies_under_it() {
        assert_eq!(pad().dig_to(at(2500, 4000)), Ok(DigTo::At(ft(30_310))));
        assert_eq!(pad().dig_to(at(8400, 9000)), Ok(DigTo::At(ft(30_360))));
    }

    #[test]
    fn outside_the_boundary_is_refused_with_how_far() {
        let error = pad().dig_to(at(1750, 4000)).unwrap_err();
        assert_eq!(error, TargetError::OutsideBoundary { by: ft(50) });
        assert!(error.to_string().contains("0.5 ft outside"), "{error}");
    }

    #[test]
    fn a_flat_target_without_a_boundary_is_everywhere() {
        let flat = Target {
            shape: Shape::Flat {
                elevation: ft(10_050),
            },
            stack: stack(50),
            within: None,
        };
        assert_eq!(flat.dig_to(at(-999_999, 0)), Ok(DigTo::At(ft(10_000))));
    }

    #[test]
    fn a_wrong_target_is_refused_before_it_is_used() {
        let mut wrong = pad();
        wrong.stack = stack(501);
        wrong.stack.layers[0].name = " ".into();
        wrong.stack.surface = String::new();
        wrong.within = Some(vec![at(0, 0), at(1, 1)]);
        wrong.shape = Shape::Plane {
            through: at(0, 0),
            elevation: ft(0),
            rise_east: 2.0,
            rise_north: f64::NAN,
        };
        assert_eq!(wrong.check().len(), 6);
        assert_eq!(wrong.dig_to(at(0, 0)), Err(TargetError::NoSurface));
        let percent = TargetError::TooSteep {
            side: "east",
            rise: "2".into(),
        };
        assert!(percent.to_string().contains("Write 2 % as 0.02"));
    }
}
