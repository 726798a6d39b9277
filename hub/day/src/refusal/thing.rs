//! Kinds of things that have names, as a refusal calls them.

use earthwork::words::Language;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::read_as;

/// Kinds of things that have names.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Thing {
    /// A mark.
    Mark,
    /// A target.
    Target,
    /// A machine.
    Machine,
    /// A benchmark.
    Benchmark,
    /// A rod.
    Rod,
    /// A laser.
    Laser,
    /// A set-up.
    SetUp,
    /// A phone.
    Phone,
    /// A point of a line of levels.
    TurningPoint,
    /// A mark or a target.
    MarkOrTarget,
    /// A line that must not be crossed.
    Line,
    /// A counted load.
    Load,
    /// A patch, or what else is rammed.
    Patch,
    /// A soil test.
    Test,
    /// A proposed undercut.
    Undercut,
    /// A face.
    Face,
    /// Pins across a crack.
    Pins,
    /// A buried line.
    Utility,
    /// A line overhead.
    Overhead,
    /// A pile.
    Pile,
    /// A locate ticket.
    Ticket,
    /// A near miss that is open.
    NearMiss,
    /// A visitor.
    Visitor,
    /// An inspection that waits.
    Inspection,
    /// A query to the engineer.
    Query,
    /// A photo.
    Photo,
}

impl Thing {
    /// A name of this kind as people read it.
    pub(crate) fn read(self, name: &str, language: Language) -> String {
        match self {
            Self::SetUp => read_as::set_up(name, language),
            _ => name.to_owned(),
        }
    }
}

impl std::fmt::Display for Thing {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Self::Mark => "mark",
            Self::Target => "target",
            Self::Machine => "machine",
            Self::Benchmark => "benchmark",
            Self::Rod => "rod",
            Self::Laser => "laser",
            Self::SetUp => "set-up",
            Self::Phone => "phone",
            Self::TurningPoint => "turning point",
            Self::MarkOrTarget => "mark or target",
            Self::Line => "line that must not be crossed",
            Self::Load => "load",
            Self::Patch => "patch, mark or target",
            Self::Test => "soil test",
            Self::Undercut => "proposed undercut",
            Self::Face => "face",
            Self::Pins => "pair of pins",
            Self::Utility => "buried line",
            Self::Overhead => "line overhead",
            Self::Pile => "pile",
            Self::Ticket => "ticket",
            Self::NearMiss => "open near miss",
            Self::Visitor => "visitor",
            Self::Inspection => "inspection that waits",
            Self::Query => "query",
            Self::Photo => "photo",
        })
    }
}
