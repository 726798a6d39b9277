//! Targets along a line of straights and arcs: a run with its profile, a pipe trench, a face laid back or benched.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::kept::Drawing;
use super::{DigTo, TargetError};
use crate::alignment::{Alignment, Piece, StationOffset};
use crate::grade::{Corner, Face, Flow, Invert, Layback, Profile, Rise, Trench, TrenchSizes};
use crate::layout::tie::Side;
use crate::length::Length;
use crate::point::Point;

/// Placing rounds to a count on each axis, so that this much past an edge is still the edge (1 µm).
const EDGE: Length = Length::from_tenth_micrometres(10);

/// A line on the plan: where it starts, and its pieces.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Axis {
    /// Where it starts.
    pub start: Point,
    /// The station there.
    pub first: Length,
    /// Straights and arcs, each from where the one before it ends.
    pub pieces: Vec<Piece>,
}

impl Axis {
    fn made(&self) -> Result<Alignment, TargetError> {
        Ok(Alignment::new(self.start, self.first, &self.pieces)?)
    }
}

/// A step of a profile.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct ProfileStep {
    /// The station of its face.
    pub station: Length,
    /// Positive up.
    pub by: Length,
    /// How far, either way, the face may fall from its station.
    #[serde(default)]
    pub window: Length,
}

/// A footing, drive or ditch along a line, with grades, vertical curves and steps.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Along {
    /// The line on the plan.
    pub axis: Axis,
    /// Width to the left, looking up-station.
    pub left: Length,
    /// Width to the right, looking up-station.
    pub right: Length,
    /// Where its grades meet, up-station.
    pub corners: Vec<Corner>,
    /// Its steps, up-station.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub steps: Vec<ProfileStep>,
}

/// A trench for a pipe. Its surface is the invert; pipe wall and bedding are layers of the stack.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PipeTrench {
    /// The line on the plan.
    pub axis: Axis,
    /// Up-station.
    pub inverts: Vec<Invert>,
    /// Which way it is to flow.
    pub flow: Flow,
    /// Of the pipe.
    pub outside_diameter: Length,
    /// Room to each side of the pipe.
    pub side: Length,
    /// A fall below this, in feet per foot, is odd.
    pub least_fall: f64,
}

/// A cut face laid back or benched: its toe's line, and the parts from the toe outward.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct CutFace {
    /// The toe on the plan.
    pub axis: Axis,
    /// The side to which it rises, looking up-station.
    pub rises: Side,
    /// The toe's elevations, up-station.
    pub corners: Vec<Corner>,
    /// From the toe outward.
    pub faces: Vec<Face>,
}

/// An alignment and what stands on it.
#[derive(Clone, Debug)]
pub struct OnLine<T> {
    pub(super) axis: Alignment,
    pub(super) left: Length,
    pub(super) right: Length,
    pub(super) grade: T,
    stations: (Length, Length),
}

impl<T> OnLine<T> {
    /// The line, and how wide it is to its left and to its right.
    pub(super) fn sides(&self) -> (&Alignment, Length, Length) {
        (&self.axis, self.left, self.right)
    }

    /// The station and offset of a place within the widths; a count past the last station is the last station.
    fn on_it(&self, at: Point) -> Result<StationOffset, TargetError> {
        let mut found = self.axis.station_offset(at)?;
        for (side, by) in [
            ("right", found.offset - self.right),
            ("left", -found.offset - self.left),
        ] {
            if by > EDGE {
                return Err(TargetError::BesideRun { side, by });
            }
        }
        let (from, to) = self.stations;
        for end in [from, to] {
            if (found.station - end).abs() <= EDGE {
                found.station = end;
            }
        }
        Ok(found)
    }
}

/// The widths of what lies along a line.
pub(super) fn widths(left: Length, right: Length) -> Result<(), TargetError> {
    if left < Length::ZERO || right < Length::ZERO || left + right == Length::ZERO {
        return Err(TargetError::NoWidth { left, right });
    }
    Ok(())
}

impl Drawing for Along {
    type Made = OnLine<Profile>;

    fn make(&self) -> Result<Self::Made, TargetError> {
        widths(self.left, self.right)?;
        for step in &self.steps {
            if step.window < Length::ZERO {
                return Err(TargetError::StepWindow {
                    station: step.station,
                });
            }
        }
        let steps = self.steps.iter().map(|step| Rise {
            station: step.station,
            by: step.by,
        });
        let grade = Profile::new(self.corners.clone(), steps.collect())?;
        Ok(OnLine {
            axis: self.axis.made()?,
            left: self.left,
            right: self.right,
            stations: grade.stations(),
            grade,
        })
    }
}

impl OnLine<Profile> {
    pub(super) fn surface_at(&self, at: Point) -> Result<DigTo, TargetError> {
        Ok(self.grade.elevation_at(self.on_it(at)?.station)?)
    }
}

impl Drawing for PipeTrench {
    type Made = OnLine<Trench>;

    fn make(&self) -> Result<Self::Made, TargetError> {
        let sizes = TrenchSizes {
            wall: Length::ZERO,
            bedding: Length::ZERO,
            outside_diameter: self.outside_diameter,
            side: self.side,
        };
        if !self.least_fall.is_finite() || self.least_fall < 0.0 {
            return Err(TargetError::TooSteep {
                side: "outlet",
                rise: self.least_fall.to_string(),
            });
        }
        let grade = Trench::new(self.inverts.clone(), self.flow, sizes)?;
        let width = grade.width();
        let right = Length::from_tenth_micrometres(width.tenth_micrometres() / 2);
        widths(width - right, right)?;
        Ok(OnLine {
            axis: self.axis.made()?,
            left: width - right,
            right,
            stations: grade.stations(),
            grade,
        })
    }
}

impl OnLine<Trench> {
    pub(super) fn surface_at(&self, at: Point) -> Result<DigTo, TargetError> {
        Ok(DigTo::At(self.grade.dig_to(self.on_it(at)?.station)?))
    }
}

/// A toe's profile and the face above it.
#[derive(Clone, Debug)]
pub struct ToeAndFace {
    toe: Profile,
    face: Layback,
    rises: Side,
}

impl Drawing for CutFace {
    type Made = OnLine<ToeAndFace>;

    fn make(&self) -> Result<Self::Made, TargetError> {
        let toe = Profile::new(self.corners.clone(), vec![])?;
        let face = Layback::new(self.faces.clone())?;
        let wide = face.width();
        widths(wide, Length::ZERO)?;
        let (left, right) = match self.rises {
            Side::Left => (wide, Length::ZERO),
            Side::Right => (Length::ZERO, wide),
        };
        Ok(OnLine {
            axis: self.axis.made()?,
            left,
            right,
            stations: toe.stations(),
            grade: ToeAndFace {
                toe,
                face,
                rises: self.rises,
            },
        })
    }
}

impl OnLine<ToeAndFace> {
    pub(super) fn surface_at(&self, at: Point) -> Result<DigTo, TargetError> {
        let (toe, distance) = self.beside_toe(at)?;
        Ok(self.grade.face.elevation_at(toe, distance)?)
    }

    /// The toe's elevation at a station; none past its ends.
    pub(super) fn toe_at(&self, station: Length) -> Option<Length> {
        self.grade.toe.on_grades(station).ok()
    }

    /// How steep the face is at a place, feet per foot; none on a vertical.
    pub(super) fn slope_at(&self, at: Point) -> Result<Option<f64>, TargetError> {
        let (_, distance) = self.beside_toe(at)?;
        Ok(self.grade.face.slope_at(distance))
    }

    /// The toe's elevation and the level distance from it.
    fn beside_toe(&self, at: Point) -> Result<(Length, Length), TargetError> {
        let found = self.on_it(at)?;
        let distance = match self.grade.rises {
            Side::Left => -found.offset,
            Side::Right => found.offset,
        };
        let toe = self.grade.toe.on_grades(found.station)?;
        Ok((toe, distance.max(Length::ZERO).min(self.left + self.right)))
    }
}
