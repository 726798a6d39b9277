//! Why there is no target, or what is wrong with one, and what to do.

use thiserror::Error;

use crate::alignment::AlignmentError;
use crate::grade::GradeError;
use crate::length::Length;
use crate::surface::SurfaceError;

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
    /// A surface that the stack does not have.
    #[error("There is no “{name}” in this target. It has: {known}.")]
    NoSuchSurface {
        /// As named.
        name: String,
        /// All there are, from the top down.
        known: String,
    },
    /// An undercut without a name, a depth or an outline.
    #[error("Undercut “{name}” {what}.")]
    Undercut {
        /// Its name.
        name: String,
        /// What is wrong and what to do.
        what: &'static str,
    },
    /// A contour without a band.
    #[error(
        "The contour's band is {band}. Give how far off level the walk may be, above zero and at most 0.5 ft."
    )]
    ContourBand {
        /// As given.
        band: Length,
    },
    /// Only what lies along a line has stations.
    #[error(
        "This target has no stations. Give the place by a mark, by two ties or by pacing instead."
    )]
    NoStations,
    /// The line.
    #[error(transparent)]
    Line(#[from] AlignmentError),
    /// The grade along or over it.
    #[error(transparent)]
    Grade(#[from] GradeError),
    /// The surface of triangles.
    #[error(transparent)]
    Net(#[from] SurfaceError),
}
