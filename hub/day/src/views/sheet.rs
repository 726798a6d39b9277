//! The day's sheet: what changes seldom. Marks with their dig-to, targets with every layer, rods, benchmarks.

use earthwork::length::Length;
use earthwork::rod::Rod;
use earthwork::target::DigTo;
use earthwork::tolerance::Tolerance;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::site::{Benchmark, Laser, Line, Machine, Target};

/// What a phone keeps for the day.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[schema(as = SheetView)]
pub struct Sheet {
    /// The job.
    pub site: String,
    /// The day.
    pub day: String,
    /// Marks in the order of work.
    pub marks: Vec<SheetMark>,
    /// Targets with their layers.
    pub targets: Vec<Target>,
    /// Benchmarks.
    pub benchmarks: Vec<Benchmark>,
    /// Lines.
    pub lines: Vec<Line>,
    /// Rods.
    pub rods: Vec<Rod>,
    /// Lasers.
    pub lasers: Vec<Laser>,
    /// Machines.
    pub machines: Vec<Machine>,
}

/// A mark with what it asks for.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SheetMark {
    /// Its name.
    pub id: String,
    /// Where it is.
    pub place: earthwork::point::Point,
    /// Its target.
    pub target: Option<String>,
    /// The machine that its target is assigned to.
    pub machine: Option<String>,
    /// The elevation to dig to, or both sides of a step.
    pub dig_to: Option<DigTo>,
    /// Why there is no dig-to, when a target is named but has nothing here.
    pub no_grade: Option<String>,
    /// Allowed high and low.
    pub tolerance: Option<Tolerance>,
    /// Where to aim, relative to the target; zero unless a supervisor set it.
    pub aim: Length,
    /// Station along its run.
    pub station: Option<Length>,
    /// Offset, positive to the right looking up-station.
    pub offset: Option<Length>,
    /// A word about it.
    pub note: String,
}
