//! What should the ground be: a shape, the layers under it, and where it ends.
//!
//! Outside its edges a target is refused, with how far and what to do; nothing is ever extended past an edge.

pub(crate) mod boundary;
pub(crate) mod drawn;
mod error;
mod kept;
mod line;
mod net;
mod plane;
mod run;
mod stack;
mod undercut;

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::alignment::StationOffset;
use crate::grade::{Fold, Plane, folded};
use crate::length::Length;
use crate::point::Point;
pub use drawn::{Drawn, ProfilePoint, SectionPoint};
pub use error::TargetError;
pub use kept::{Drawing, Kept};
pub use line::{Along, Axis, CutFace, OnLine, PipeTrench, ProfileStep, ToeAndFace};
pub use net::Net;
pub use run::{NEAR_STEP, Run, Step};
pub use stack::{Layer, SUBGRADE, Stack};
pub use undercut::Undercut;

/// A drawing along a line, kept.
pub type KeptAlong = Kept<Along>;
/// A pipe trench's drawing, kept.
pub type KeptTrench = Kept<PipeTrench>;
/// A cut face's drawing, kept.
pub type KeptFace = Kept<CutFace>;
/// A net, kept.
pub type KeptNet = Kept<Net>;

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
    /// Along a straight line, in steps.
    Run(Run),
    /// Planes that meet in a crown or a valley.
    Fold {
        /// Which.
        fold: Fold,
        /// The planes.
        planes: Vec<Plane>,
    },
    /// Along straights and arcs, with grades, vertical curves and steps.
    Along(KeptAlong),
    /// A pipe trench: the surface is the invert.
    Trench(KeptTrench),
    /// A cut face, laid back or benched.
    Face(KeptFace),
    /// Triangles.
    Surface(KeptNet),
    /// Existing ground: the layers of the stack are stripped from it.
    Strip {
        /// The ground as it lies.
        ground: KeptNet,
    },
    /// One elevation, walked along a hill: the line is wherever the ground has it.
    Contour {
        /// Of the whole line.
        elevation: Length,
        /// How far off level the walk may be.
        band: Length,
    },
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
    /// Zones that are dug deeper and filled again.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub undercuts: Vec<Undercut>,
}

/// Larger nets are not sent to phones.
const MOST_FOR_SCREENS: usize = 2_000;

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

impl DigTo {
    /// The same moved down.
    #[must_use]
    pub fn lowered(self, by: Length) -> DigTo {
        match self {
            DigTo::At(elevation) => DigTo::At(elevation - by),
            DigTo::NearStep {
                station,
                before,
                after,
            } => DigTo::NearStep {
                station,
                before: before - by,
                after: after - by,
            },
        }
    }
}

impl Target {
    /// A target without a boundary and without undercuts.
    pub fn new(shape: Shape, stack: Stack) -> Target {
        Target {
            shape,
            stack,
            within: None,
            undercuts: Vec::new(),
        }
    }

    /// What to dig to at a place: under all layers, and under an undercut where there is one. A place on an edge or
    /// an end belongs to the target. The target is one that `check` found nothing wrong with.
    ///
    /// # Errors
    /// When the place is outside, by how much and what to do.
    pub fn dig_to(&self, at: Point) -> Result<DigTo, TargetError> {
        let surface = self.surface_at(at)?;
        let deeper = undercut::deepest(&self.undercuts, at).map_or(Length::ZERO, |one| one.depth);
        let layers = self.stack.layers.iter().map(|layer| layer.thickness).sum();
        Ok(surface.lowered(layers).lowered(deeper))
    }

    /// The elevation of a surface of the stack that somebody names: the shape's own, the top of a layer or of an
    /// undercut's material, or the subgrade under all layers.
    ///
    /// # Errors
    /// When there is no such surface here, or the place is outside.
    pub fn named(&self, surface: &str, at: Point) -> Result<DigTo, TargetError> {
        let here = undercut::deepest(&self.undercuts, at);
        let of_undercut = here.is_some_and(|one| one.is_named(surface));
        let depth = self
            .stack
            .depth_of(if of_undercut { SUBGRADE } else { surface })?;
        Ok(self.surface_at(at)?.lowered(depth))
    }

    /// The elevation of the drawing's surface at a place.
    fn surface_at(&self, at: Point) -> Result<DigTo, TargetError> {
        if let Some(by) = self
            .within
            .as_deref()
            .and_then(|corners| boundary::outside_by(corners, at))
        {
            return Err(TargetError::OutsideBoundary { by });
        }
        match &self.shape {
            Shape::Flat { elevation } | Shape::Contour { elevation, .. } => {
                Ok(DigTo::At(*elevation))
            }
            Shape::Plane {
                through,
                elevation,
                rise_east,
                rise_north,
            } => Ok(DigTo::At(plane::elevation(
                *through,
                *elevation,
                (*rise_east, *rise_north),
                at,
            ))),
            Shape::Run(run) => run.surface_at(at),
            Shape::Fold { fold, planes } => Ok(DigTo::At(folded(*fold, planes, at)?)),
            Shape::Along(along) => along.made()?.surface_at(at),
            Shape::Trench(trench) => trench.made()?.surface_at(at),
            Shape::Face(face) => face.made()?.surface_at(at),
            Shape::Surface(net) | Shape::Strip { ground: net } => {
                Ok(DigTo::At(net.made()?.elevation_at(at)?))
            }
        }
    }

    /// The station and the offset of a place beside the target's line.
    ///
    /// # Errors
    /// When the target has no line, or the place lies past its end.
    pub fn station_offset(&self, at: Point) -> Result<StationOffset, TargetError> {
        let axis = match &self.shape {
            Shape::Run(run) => {
                let (station, offset) = run.station_offset(at);
                return Ok(StationOffset { station, offset });
            }
            Shape::Along(along) => &along.made()?.axis,
            Shape::Trench(trench) => &trench.made()?.axis,
            Shape::Face(face) => &face.made()?.axis,
            _ => return Err(TargetError::NoStations),
        };
        Ok(axis.station_offset(at)?)
    }

    /// The place at a station and an offset of the target's line; the offset is positive to the right looking
    /// up-station.
    ///
    /// # Errors
    /// When the target has no line, or the station lies past its end.
    pub fn place(&self, at: StationOffset) -> Result<Point, TargetError> {
        let axis = match &self.shape {
            Shape::Run(run) => return run.place(at.station, at.offset),
            Shape::Along(along) => &along.made()?.axis,
            Shape::Trench(trench) => &trench.made()?.axis,
            Shape::Face(face) => &face.made()?.axis,
            _ => return Err(TargetError::NoStations),
        };
        Ok(axis.place(at)?)
    }

    /// The first and the last station of the target's line; none when it has none.
    pub fn stations(&self) -> Option<(Length, Length)> {
        match &self.shape {
            Shape::Run(run) => Some((Length::ZERO, run.length)),
            Shape::Along(along) => Some(along.made().ok()?.axis.stations()),
            Shape::Trench(trench) => Some(trench.made().ok()?.axis.stations()),
            Shape::Face(face) => Some(face.made().ok()?.axis.stations()),
            _ => None,
        }
    }

    /// How a face's height turns into distance square to it: the cosine of its slope, 1 where it is no face.
    pub fn square_to_face(&self, at: Point) -> f64 {
        let Shape::Face(face) = &self.shape else {
            return 1.0;
        };
        let slope = face.made().and_then(|face| face.slope_at(at));
        slope
            .ok()
            .flatten()
            .map_or(1.0, |slope| 1.0 / slope.hypot(1.0))
    }

    /// Whether its elevations came from a file: nobody typed them.
    pub fn imported(&self) -> bool {
        matches!(self.shape, Shape::Surface(_) | Shape::Strip { .. })
    }

    /// The same without nets that are too large for a phone.
    #[must_use]
    pub fn for_screens(&self) -> Target {
        let small = |net: &Kept<Net>| Kept::new(net.drawn().for_screens(MOST_FOR_SCREENS));
        let shape = match &self.shape {
            Shape::Surface(net) => Shape::Surface(small(net)),
            Shape::Strip { ground } => Shape::Strip {
                ground: small(ground),
            },
            other => other.clone(),
        };
        Target {
            shape,
            stack: self.stack.clone(),
            within: self.within.clone(),
            undercuts: self.undercuts.clone(),
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
            Shape::Fold { fold, planes } => {
                for plane in planes {
                    wrong.extend(plane::check((plane.rise_east, plane.rise_north)));
                }
                wrong.extend(
                    folded(*fold, planes, Point::default())
                        .err()
                        .map(Into::into),
                );
            }
            Shape::Along(along) => wrong.extend(along.made().err()),
            Shape::Trench(trench) => wrong.extend(trench.made().err()),
            Shape::Face(face) => wrong.extend(face.made().err()),
            Shape::Surface(net) | Shape::Strip { ground: net } => wrong.extend(net.made().err()),
            Shape::Contour { band, .. } => {
                if !(Length::ZERO < *band && *band <= NEAR_STEP) {
                    wrong.push(TargetError::ContourBand { band: *band });
                }
            }
        }
        wrong.extend(self.within.as_deref().and_then(boundary::check));
        wrong.extend(self.undercuts.iter().filter_map(Undercut::check));
        wrong
    }
}

#[cfg(test)]
mod kinds;
#[cfg(test)]
mod tests;
