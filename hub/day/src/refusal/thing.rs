//! Kinds of things that have names, as a refusal calls them.

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::{Fixed, Text};

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
    /// A footing or wall behind a cut.
    Structure,
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
    /// What it is called.
    pub(crate) fn called(self) -> Fixed {
        use words::refusal::thing;
        match self {
            Self::Mark => thing::mark(),
            Self::Target => thing::target(),
            Self::Machine => thing::machine(),
            Self::Benchmark => thing::benchmark(),
            Self::Rod => thing::rod(),
            Self::Laser => thing::laser(),
            Self::SetUp => thing::set_up(),
            Self::Phone => thing::phone(),
            Self::TurningPoint => thing::turning_point(),
            Self::MarkOrTarget => thing::mark_or_target(),
            Self::Line => thing::line(),
            Self::Load => thing::load(),
            Self::Patch => thing::patch(),
            Self::Test => thing::test(),
            Self::Undercut => thing::undercut(),
            Self::Face => thing::face(),
            Self::Pins => thing::pins(),
            Self::Structure => thing::structure(),
            Self::Utility => thing::utility(),
            Self::Overhead => thing::overhead(),
            Self::Pile => thing::pile(),
            Self::Ticket => thing::ticket(),
            Self::NearMiss => thing::near_miss(),
            Self::Visitor => thing::visitor(),
            Self::Inspection => thing::inspection(),
            Self::Query => thing::query(),
            Self::Photo => thing::photo(),
        }
    }

    /// A name of this kind as people read it.
    pub(crate) fn read(self, name: &str) -> Text {
        match self {
            Self::SetUp => read_as::set_up(name),
            _ => Text::alike(name),
        }
    }
}
