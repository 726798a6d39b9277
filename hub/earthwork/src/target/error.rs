//! Why there is no target, or what is wrong with one, and what to do.

use words::Text;

use crate::alignment::AlignmentError;
use crate::grade::GradeError;
use crate::length::Length;
use crate::surface::SurfaceError;

/// Why there is no target, or what is wrong with one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TargetError {
    /// Before the start or after the end of a run.
    PastEnd {
        /// The station.
        station: Length,
        /// By how much.
        by: Length,
        /// The run's length.
        length: Length,
    },
    /// Beside a run.
    BesideRun {
        /// Looking up-station.
        side: &'static str,
        /// By how much.
        by: Length,
    },
    /// Outside the boundary.
    OutsideBoundary {
        /// By how much.
        by: Length,
    },
    /// The stack does not say what its surface is.
    NoSurface,
    /// A layer without a name.
    LayerUnnamed {
        /// Counted from the top.
        number: usize,
    },
    /// A layer too thin or too thick.
    LayerThickness {
        /// The layer.
        name: String,
        /// As given.
        thickness: Length,
    },
    /// A plane too steep to be one.
    TooSteep {
        /// `east` or `north`.
        side: &'static str,
        /// As given.
        rise: String,
    },
    /// A run whose two points are one.
    NoDirection,
    /// A run without length.
    NoLength {
        /// As given.
        length: Length,
    },
    /// A run without width.
    NoWidth {
        /// As given.
        left: Length,
        /// As given.
        right: Length,
    },
    /// A run without steps.
    NoSteps,
    /// A first step that is not at the start.
    FirstStep {
        /// As given.
        from: Length,
    },
    /// Steps out of order.
    StepOrder {
        /// As given.
        station: Length,
    },
    /// A step past the end.
    StepPastEnd {
        /// As given.
        station: Length,
        /// The run's length.
        length: Length,
    },
    /// A negative window.
    StepWindow {
        /// Its station.
        station: Length,
    },
    /// Too few corners.
    TooFewCorners {
        /// As given.
        corners: usize,
    },
    /// Edges that cross.
    BoundaryCrosses,
    /// A surface that the stack does not have.
    NoSuchSurface {
        /// As named.
        name: String,
        /// All there are, from the top down.
        known: String,
    },
    /// An undercut without a name, a depth or an outline.
    Undercut(Text),
    /// A contour without a band.
    ContourBand {
        /// As given.
        band: Length,
    },
    /// Only what lies along a line has stations.
    NoStations,
    /// The line.
    Line(AlignmentError),
    /// The grade along or over it.
    Grade(GradeError),
    /// The surface of triangles.
    Net(SurfaceError),
}

impl TargetError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::PastEnd {
                station,
                by,
                length,
            } => words::target::past_end(station, by, &(*station < Length::ZERO), length),
            Self::BesideRun { side, by } => words::target::beside_run(by, side),
            Self::OutsideBoundary { by } => words::target::outside_boundary(by),
            Self::NoSurface => words::target::no_surface().into(),
            Self::LayerUnnamed { number } => words::target::layer_unnamed(number),
            Self::LayerThickness { name, thickness } => {
                words::target::layer_thickness(name, thickness)
            }
            Self::TooSteep { side, rise } => words::target::too_steep(rise, side),
            Self::NoDirection => words::target::no_direction().into(),
            Self::NoLength { length } => words::target::no_length(length),
            Self::NoWidth { left, right } => words::target::no_width(left, right),
            Self::NoSteps => words::target::no_steps().into(),
            Self::FirstStep { from } => words::target::first_step(from),
            Self::StepOrder { station } => words::target::step_order(station),
            Self::StepPastEnd { station, length } => words::target::step_past_end(station, length),
            Self::StepWindow { station } => words::target::step_window(station),
            Self::TooFewCorners { corners } => words::target::too_few_corners(corners),
            Self::BoundaryCrosses => words::target::boundary_crosses().into(),
            Self::NoSuchSurface { name, known } => words::target::no_such_surface(name, known),
            Self::Undercut(wrong) => wrong.clone(),
            Self::ContourBand { band } => words::target::contour_band(band),
            Self::NoStations => words::target::no_stations().into(),
            Self::Line(error) => error.text(),
            Self::Grade(error) => error.text(),
            Self::Net(error) => error.text(),
        }
    }
}

words::error!(TargetError; Line(AlignmentError), Grade(GradeError), Net(SurfaceError));
