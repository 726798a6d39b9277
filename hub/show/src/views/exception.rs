//! One thing that needs somebody on site, of every kind that there is, and how grave it is.

use contract::ToSchema;
use earthwork::length::Length;
use serde::Serialize;

use crate::views::cuts::TicketCard;
use day::cuts::buried::Crossing;
use day::cuts::now::InspectionWhy;
use day::said::call::CantReason;
use day::said::face_alarm::AlarmWhy;
use day::said::prove::Differs;
use day::said::struck::StruckCard;
use day::time::Time;

/// One thing that needs somebody, with one action.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct Exception {
    /// Since when.
    pub since: Time,
    /// What.
    pub what: ExceptionKind,
}

/// What needs somebody.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ExceptionKind {
    /// A machine is stopped: lift it when the reason is gone.
    Stopped {
        /// Which.
        machine: String,
        /// Who pressed.
        by: String,
        /// Why.
        why: String,
    },
    /// A set-up is in doubt: shoot two benchmarks.
    LaserInDoubt {
        /// Which.
        set_up: String,
    },
    /// Two shots were too close to call on the low side: rule.
    NeedsRuling {
        /// Which mark.
        mark: String,
        /// The mean difference.
        dev: Length,
    },
    /// The operator can't: see to it.
    Cant {
        /// Which machine.
        machine: String,
        /// Why.
        why: CantReason,
        /// The mark of the call, if any.
        mark: Option<String>,
    },
    /// A cab's page is not showing: hand signals.
    ScreenNotShowing {
        /// Which machine.
        machine: String,
    },
    /// A changed site file waits.
    SiteChanged,
    /// A revised target has not been seen in the cab.
    TargetNotSeen {
        /// Which machine.
        machine: String,
        /// Which target.
        target: String,
    },
    /// Two people typed a target's elevations differently.
    TargetTypedApart {
        /// Which target.
        target: String,
        /// What differs, both as they are.
        differs: Vec<Differs>,
    },
    /// A face was left: the competent person inspects it.
    FaceLeft {
        /// Which.
        zone: String,
        /// Why.
        why: AlarmWhy,
    },
    /// A face waits for an inspection.
    InspectionDue {
        /// Which.
        zone: String,
        /// Why.
        why: InspectionWhy,
        /// Somebody was called to work there without one.
        overdue: bool,
    },
    /// A face would come to daylight over a line.
    DaylightOver {
        /// Which face.
        zone: String,
        /// Which line.
        line: String,
        /// Nobody may cross it.
        no_cross: bool,
        /// The least distance; below zero is over it.
        least: Length,
    },
    /// A pile stands nearer to a crest than the rule has it.
    PileAtCrest {
        /// Which pile.
        pile: String,
        /// Which face.
        zone: String,
        /// How far behind the crest its foot stands; below zero is within the slope.
        back: Length,
        /// How far it takes.
        needs: Length,
    },
    /// A trench crosses a buried line too near.
    CrossingTooNear {
        /// How.
        crossing: Crossing,
    },
    /// A buried line was struck or met.
    LineStruck {
        /// What everybody was told.
        struck: StruckCard,
    },
    /// A buried line's paint is gone.
    PaintGone {
        /// Which line.
        utility: String,
    },
    /// A ticket was not looked at today, lapses soon, or has no answer.
    TicketWaits {
        /// The ticket.
        ticket: TicketCard,
    },
    /// The gravel orders do not cover what is needed.
    GravelShort {
        /// What is missing, in tons.
        tons: f64,
    },
    /// A failed soil test proposes an undercut: confirm it on the engineer's word.
    UndercutWaits {
        /// The proposal's entry.
        undercut: u64,
        /// The mark whose test failed.
        mark: String,
    },
    /// A soil test failed or is void, and nobody has tested again.
    RetestOwed {
        /// The mark.
        mark: String,
        /// It passed before and is void; else it failed.
        void: bool,
    },
    /// Somebody went in without the operator's answer: get them out, get eye contact.
    UnconfirmedEntry {
        /// Which machine.
        machine: String,
        /// Who.
        person: String,
    },
    /// Somebody who is in has no link: look, and say OUT as a witness when you have seen it.
    InWithoutLink {
        /// Which machine.
        machine: String,
        /// Who.
        person: String,
        /// The visit.
        visit: String,
    },
    /// Nobody in the cab has answered somebody who asks to come in.
    EntryNotAnswered {
        /// Which machine.
        machine: String,
        /// Who.
        person: String,
    },
    /// The day is not READY: start checks have no value.
    NotReady {
        /// How many have one.
        said: usize,
        /// Of how many.
        of: usize,
    },
    /// Two booms can meet, and their operators have not both agreed.
    CanMeet {
        /// One of them.
        machine: String,
        /// The other.
        other: String,
        /// From middle to middle.
        apart: Length,
        /// What it takes for them not to meet.
        needs: Length,
    },
    /// A machine can come too near to a line overhead, and nobody spots for it.
    SpotterNeeded {
        /// Which machine.
        machine: String,
        /// Which line.
        line: String,
    },
    /// Its tracks stand inside of a slope's line: the competent person rules.
    OnSlope {
        /// Which machine.
        machine: String,
        /// Which face.
        zone: String,
        /// How far inside.
        inside: Length,
    },
    /// A near miss was opened, and no supervisor has said anything about it.
    NearMiss {
        /// Which: 1 for NM-1.
        number: u32,
        /// Who pressed.
        by: String,
        /// What was said with the press; may be empty.
        why: String,
    },
    /// A machine is about to take marks that nothing written down would bring back: have them tied.
    TiesFirst {
        /// Which machine.
        machine: String,
        /// Which marks.
        marks: Vec<String>,
    },
    /// A phone remembers an end of the log that the log does not hold.
    LogCut {
        /// Whose.
        person: String,
        /// The entry that it remembers.
        entry: u64,
    },
    /// A query that calls wait for has no answer.
    QueryWaits {
        /// Which.
        query: String,
        /// The marks and targets.
        on: Vec<String>,
    },
    /// An operator asks for a look.
    LookAsked {
        /// Which machine.
        machine: String,
    },
}

/// How grave a thing is that needs somebody: who may be hurt comes before what may be dug wrong, and that before what is owed on
/// paper. The order is invented; within one the oldest comes first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Gravity {
    /// Somebody may be within a swing and nobody has agreed to it, or knows how they are.
    People,
    /// A machine is stopped, or stands or digs where it can hurt.
    Danger,
    /// A machine waits, or ground waits for a word.
    Work,
    /// What is owed on paper.
    Paper,
}

impl ExceptionKind {
    /// How grave it is.
    pub(crate) fn gravity(&self) -> Gravity {
        match self {
            Self::UnconfirmedEntry { .. }
            | Self::InWithoutLink { .. }
            | Self::EntryNotAnswered { .. } => Gravity::People,
            Self::Stopped { .. }
            | Self::LineStruck { .. }
            | Self::FaceLeft { .. }
            | Self::InspectionDue { overdue: true, .. }
            | Self::ScreenNotShowing { .. }
            | Self::CanMeet { .. }
            | Self::SpotterNeeded { .. }
            | Self::OnSlope { .. }
            | Self::PileAtCrest { .. }
            | Self::DaylightOver { no_cross: true, .. }
            | Self::CrossingTooNear { .. }
            | Self::PaintGone { .. } => Gravity::Danger,
            Self::LaserInDoubt { .. }
            | Self::NeedsRuling { .. }
            | Self::Cant { .. }
            | Self::TargetNotSeen { .. }
            | Self::TargetTypedApart { .. }
            | Self::InspectionDue { overdue: false, .. }
            | Self::DaylightOver {
                no_cross: false, ..
            }
            | Self::TiesFirst { .. }
            | Self::LookAsked { .. }
            | Self::QueryWaits { .. }
            | Self::UndercutWaits { .. }
            | Self::SiteChanged => Gravity::Work,
            Self::TicketWaits { ticket } if ticket.days_left.is_none_or(|left| left < 0) => {
                Gravity::Work
            }
            Self::NotReady { .. }
            | Self::TicketWaits { .. }
            | Self::NearMiss { .. }
            | Self::GravelShort { .. }
            | Self::RetestOwed { .. }
            | Self::LogCut { .. } => Gravity::Paper,
        }
    }
}
