//! What was out of the ordinary on a day, and what changed in the site: picked out of the log.

use contract::ToSchema;
use earthwork::layout::no_cross::Standing;
use earthwork::level::Check;
use serde::Serialize;

use super::Sentence;
use day::call::Ending;
use day::entry::{Body, Entry};
use day::said::receipt::ScreenNotice;

/// An entry that was out of the ordinary.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct Noted {
    /// What kind of thing.
    pub kind: NotedKind,
    /// The entry.
    pub said: Sentence,
}

/// What kind of thing was out of the ordinary.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum NotedKind {
    /// Somebody may have been near a machine that moved: an ALL STOP, an entry without an answer, a release refused, a line crossed.
    NearMiss,
    /// Machines were stopped.
    Stop,
    /// A face was left, came down, or was found too steep for its line.
    Face,
    /// Rain began or stopped, or water was pumped out.
    Rain,
    /// A laser is in doubt, or a check did not hold.
    Laser,
    /// A reading was asked about.
    Asked,
    /// A reading came late and was never shown.
    Late,
    /// Readings of a time without the hub were typed in from paper.
    Paper,
    /// A person decided against what a rule would have said, or in place of it.
    Override,
    /// A call was taken back, refused, or grew too old.
    CallLost,
    /// A cab's page ceased to show.
    Screen,
    /// A soil test failed or does not count any more.
    Test,
    /// An acceptance or an inspection does not count any more.
    Void,
    /// Gravel is short.
    Gravel,
    /// Near a buried line, or one whose paint or ticket is gone.
    Buried,
    /// A phone remembers an entry that the log does not hold.
    LogCut,
}

impl NotedKind {
    /// Somebody or something may have been hurt, or the log was touched: what a page with little room shows in words.
    pub fn is_grave(self) -> bool {
        matches!(
            self,
            Self::NearMiss | Self::Stop | Self::Face | Self::Buried | Self::LogCut
        )
    }
}

/// What was out of the ordinary, by when it happened: what came late or from paper stands under its own time.
pub fn exceptions(entries: &[Entry]) -> Vec<Noted> {
    let mut all: Vec<Noted> = entries
        .iter()
        .filter_map(|entry| {
            Some(Noted {
                kind: noted(&entry.body)?,
                said: Sentence::of(entry),
            })
        })
        .collect();
    all.sort_by_key(|one| one.said.at);
    all
}

fn noted(body: &Body) -> Option<NotedKind> {
    Some(match body {
        Body::PersonIn(b) if !b.confirmed => NotedKind::NearMiss,
        Body::ReleaseRefused(_) | Body::NearMissOpened(_) | Body::NearMissTold(_) => {
            NotedKind::NearMiss
        }
        Body::EdgeRead(b) if b.shot.standing == Standing::Crossed => NotedKind::NearMiss,
        Body::Stopped(_) | Body::StopLifted(_) => NotedKind::Stop,
        Body::SloughSeen(_) | Body::FaceAlarmed(_) => NotedKind::Face,
        Body::DaylightFound(b) if b.crossed().next().is_some() => NotedKind::Face,
        Body::RainBegan(_) | Body::RainStopped(_) | Body::WaterPumped(_) => NotedKind::Rain,
        Body::CheckShot(b) if b.check != Check::Good => NotedKind::Laser,
        Body::SetUpDoubted(_) | Body::SuspectWindow(_) | Body::SetUpRestated(_) => NotedKind::Laser,
        Body::ReadingAsked(_) => NotedKind::Asked,
        Body::ReadingLate(_) => NotedKind::Late,
        Body::Ruled(_) | Body::DigAllowed(_) => NotedKind::Override,
        Body::PersonOut(b) if b.witness.is_some() => NotedKind::Override,
        Body::ReadingTaken(b) if b.reading.paper.is_some() => NotedKind::Paper,
        Body::ReadingTaken(b) => {
            let by_rule = b
                .reading
                .judged
                .as_ref()
                .is_some_and(|one| one.settled_high);
            if !by_rule && b.reading.sure.is_none() {
                return None;
            }
            NotedKind::Override
        }
        Body::CallEnded(b) => match b.how {
            Ending::Withdrawn
            | Ending::Refused
            | Ending::StaleByAge
            | Ending::Restated
            | Ending::Held
            | Ending::ClockBehind => NotedKind::CallLost,
            _ => return None,
        },
        Body::ScreenNoticed(b) if b.screen != ScreenNotice::Showing => NotedKind::Screen,
        Body::SoilTested(b) if !b.passes => NotedKind::Test,
        Body::TestVoided(_) => NotedKind::Test,
        Body::InspectionVoided(_) | Body::AcceptanceVoided(_) => NotedKind::Void,
        Body::GravelShort(_) => NotedKind::Gravel,
        Body::PaintSaid(_) | Body::PotholeDug(_) | Body::LineStruck(_) => NotedKind::Buried,
        Body::HeadMismatch(_) => NotedKind::LogCut,
        _ => return None,
    })
}

/// What was put on record: the close and its signature, amendments, visitors, inspections, queries, notes, photos when taken.
pub fn record(entries: &[Entry]) -> Vec<Sentence> {
    let kept = entries.iter().filter(|entry| {
        matches!(
            entry.body,
            Body::DayClosed(_)
                | Body::DaySigned(_)
                | Body::DayAmended(_)
                | Body::NoteAdded(_)
                | Body::VisitorNoticed(_)
                | Body::RunsShown(_)
                | Body::InspectionAsked(_)
                | Body::Inspected(_)
                | Body::InspectionSigned(_)
                | Body::InspectionVoided(_)
                | Body::QueryOpened(_)
                | Body::QueryAnswered(_)
                | Body::PhotoPromised(_)
                | Body::PhotoGivenUp(_)
        )
    });
    kept.map(Sentence::of).collect()
}

/// What changed in the site, and why.
pub fn changes(entries: &[Entry]) -> Vec<Sentence> {
    let changed = entries.iter().filter(|entry| {
        matches!(
            entry.body,
            Body::SiteTaken(_)
                | Body::SiteRevised(_)
                | Body::SiteChanged(_)
                | Body::TargetRevised(_)
                | Body::TargetTyped(_)
                | Body::TargetSeen(_)
                | Body::AimSet(_)
                | Body::FaceRevised(_)
                | Body::SoilRetyped(_)
                | Body::BenchmarkAdded(_)
                | Body::UndercutConfirmed(_)
                | Body::PricesSet(_)
        )
    });
    changed.map(Sentence::of).collect()
}
