//! Who told a machine to dig near a place, between two moments: one page with the answer, its proof and its gaps.

use std::collections::BTreeSet;

use contract::ToSchema;
use earthwork::layout::no_cross::LineShot;
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::target::DigTo;
use serde::Serialize;

use super::calls::{CallHistory, calls};
use super::{Day, Sentence};
use crate::views::papers::{self, PhotoCard};
use day::entry::{Body, Entry};
use day::said::edge;
use day::said::marks::{Paint, PaintState};
use day::site::Site;
use day::time::Time;
use words::Text;

mod answer;
mod gaps;
mod laser;

pub use gaps::Gap;
pub use laser::LaserProof;

/// A call or a reading this near speaks of the place (common practice).
pub const NEAR: Length = Length::from_hundredths_of_a_foot(500);
/// A line this near matters.
const LINE_NEAR: Length = Length::from_hundredths_of_a_foot(1_500);

/// The question.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct WhoTold {
    /// The machine.
    pub machine: String,
    /// The place.
    pub near: Point,
    /// From when.
    pub from: Time,
    /// Until when.
    pub to: Time,
}

/// The answer.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct ToldPage {
    /// The job.
    pub site: String,
    /// The day.
    pub day: String,
    /// What was asked.
    pub asked: WhoTold,
    /// How near counts.
    pub within: Length,
    /// The answer.
    #[serde(flatten)]
    pub text: Text,
    /// Marks within reach, the nearest first, with who laid them.
    pub marks: Vec<NearMark>,
    /// The targets there.
    pub targets: Vec<NearTarget>,
    /// The calls to this machine at these marks, and how each travelled.
    pub calls: Vec<CallHistory>,
    /// Readings there by anyone: taken, asked about, late.
    pub readings: Vec<Sentence>,
    /// What the operator pressed, and what was said to this machine: looks, can't, stops.
    pub presses: Vec<Sentence>,
    /// Notes, photos and queries of these marks, whenever on the day, and amendments of what stands on this page, whenever made.
    pub papers: Vec<Sentence>,
    /// Photos of these marks that have come, of whatever day.
    pub photos: Vec<PhotoCard>,
    /// Lines that nobody may cross, within 15 ft.
    pub lines: Vec<NearLine>,
    /// Tapes to them within reach.
    pub edges: Vec<EdgeTaped>,
    /// What stands behind the laser of these calls.
    pub lasers: Vec<LaserProof>,
    /// What the log does not say.
    pub gaps: Vec<Gap>,
}

/// The answer over time, one page for each day that the question touches.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[schema(as = ToldDays)]
pub struct Told {
    /// What was asked.
    pub asked: WhoTold,
    /// The days, oldest first, each asked about its own part of the time.
    pub days: Vec<ToldPage>,
}

/// A mark within reach.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct NearMark {
    /// The mark.
    pub mark: String,
    /// How far away.
    pub away: Length,
    /// Its target.
    pub target: Option<String>,
    /// The elevation to dig to, as the target is at the end of the day.
    pub dig_to: Option<Length>,
    /// How it stands on the ground.
    pub paint: Option<Paint>,
    /// Who laid, checked and scraped it.
    pub laid: Vec<Sentence>,
}

/// A target of marks within reach.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct NearTarget {
    /// The target.
    pub target: String,
    /// Its name.
    pub name: String,
    /// Its revision at the end of the day.
    pub revision: u32,
    /// Who typed its elevations, when they were typed on a page.
    pub typed_by: Option<String>,
    /// Who typed them a second time.
    pub proved_by: Option<String>,
    /// How it changed on the day.
    pub changes: Vec<Sentence>,
}

/// A line that nobody may cross.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct NearLine {
    /// The line.
    pub line: String,
    /// From it to the place that was asked about: positive on the side to keep to, negative over it.
    pub inside: Length,
}

/// A tape from a line to the edge of the cut.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct EdgeTaped {
    /// The line.
    pub line: String,
    /// How far, how sure.
    pub shot: LineShot,
    /// The entry.
    pub said: Sentence,
}

/// The answer; none while there is no site.
pub fn told(day: &Day<'_>, asked: &WhoTold) -> Option<ToldPage> {
    let state = &day.state;
    let site = state.site()?;
    let marks = near_marks(day, site, asked);
    let names: BTreeSet<&str> = marks.iter().map(|one| one.mark.as_str()).collect();
    let at_mark = |mark: Option<&str>| mark.is_some_and(|mark| names.contains(mark));
    let inside = |at: Time| at >= asked.from && at <= asked.to;
    let calls: Vec<CallHistory> = calls(day)
        .into_iter()
        .filter(|call| call.machine == asked.machine && inside(call.sent_at))
        .filter(|call| at_mark(call.mark.as_deref()))
        .collect();
    let said = || day.entries.iter().filter(|entry| inside(entry.made_at));
    let readings: Vec<Sentence> = said()
        .filter(|entry| read(&entry.body).is_some_and(|mark| at_mark(Some(mark))))
        .map(Sentence::of)
        .collect();
    let edges: Vec<EdgeTaped> = said()
        .filter_map(|entry| match &entry.body {
            Body::EdgeRead(b) if at_mark(b.mark.as_deref()) => Some(EdgeTaped {
                line: b.line.clone(),
                shot: b.shot,
                said: Sentence::of(entry),
            }),
            _ => None,
        })
        .collect();
    let lines = near_lines(site, asked.near);
    let lasers = laser::proofs(day, &calls);
    let text = answer::answer(day, asked, &calls, &edges);
    let papers = papers(day.entries, &names);
    let photos = photos(day, &names);
    let mut page = ToldPage {
        site: site.name.clone(),
        day: state.day.as_ref()?.id.clone(),
        asked: asked.clone(),
        within: NEAR,
        text,
        targets: near_targets(day, site, &marks),
        presses: said()
            .filter(|entry| pressed(&entry.body, &asked.machine))
            .map(Sentence::of)
            .collect(),
        papers,
        photos,
        marks,
        calls,
        readings,
        lines,
        edges,
        lasers,
        gaps: vec![],
    };
    page.gaps = gaps::gaps(day, &page);
    let amended = amendments(day, &page);
    page.papers.extend(amended);
    Some(page)
}

fn near_marks(day: &Day<'_>, site: &Site, asked: &WhoTold) -> Vec<NearMark> {
    let state = &day.state;
    let placed = state.marks.keys().filter_map(|id| {
        let (_, taken) = state.last_reading(id)?;
        Some((id.clone(), taken.reading.placed.as_ref()?.at))
    });
    let drawn = site.marks.iter().map(|mark| (mark.id.clone(), mark.place));
    let mut found: Vec<NearMark> = drawn
        .chain(placed)
        .filter(|(_, place)| place.distance(asked.near) <= NEAR)
        .map(|(id, place)| {
            let mark = site.mark(&id);
            let target = mark.and_then(|mark| site.target_of(mark));
            NearMark {
                away: place.distance(asked.near),
                target: target.map(|target| target.id.clone()),
                dig_to: target.and_then(|target| match target.grade.dig_to(place) {
                    Ok(DigTo::At(at)) => Some(at),
                    _ => None,
                }),
                paint: state.marks.get(&id).and_then(|now| now.paint.clone()),
                laid: day
                    .entries
                    .iter()
                    .filter(|entry| entry.made_at <= asked.to && lays(&entry.body, &id))
                    .map(Sentence::of)
                    .collect(),
                mark: id,
            }
        })
        .collect();
    found.sort_by_key(|one| one.away);
    found
}

fn lays(body: &Body, mark: &str) -> bool {
    match body {
        Body::MarksLaid(b) => b.marks.iter().any(|one| one.mark == mark),
        Body::MarksChecked(b) => b.marks.iter().any(|one| one == mark),
        Body::MarksScraped(b) => b.marks.iter().any(|one| one == mark),
        _ => false,
    }
}

/// The mark of a reading, whatever became of it.
fn read(body: &Body) -> Option<&str> {
    Some(match body {
        Body::ReadingTaken(b) => &b.reading.mark,
        Body::ReadingAsked(b) => &b.reading.mark,
        Body::ReadingLate(b) => &b.reading.mark,
        _ => return None,
    })
}

fn pressed(body: &Body, machine: &str) -> bool {
    match body {
        Body::CallGot(b) => b.machine == machine,
        Body::LookAsked(b) => b.machine == machine,
        Body::CantSaid(b) => b.machine == machine,
        Body::TargetSeen(b) => b.machine == machine,
        Body::MachinePlaced(b) => b.machine == machine,
        Body::MachineMoved(b) => b.machine == machine,
        Body::ScreenNoticed(b) => b.machine == machine,
        Body::Stopped(b) => b.machines.iter().any(|one| one == machine),
        Body::StopLifted(b) => b.machines.iter().any(|one| one == machine),
        _ => false,
    }
}

/// What was put on record about marks within reach.
fn papers(entries: &[Entry], names: &BTreeSet<&str>) -> Vec<Sentence> {
    let here = |mark: &Option<String>| mark.as_deref().is_some_and(|mark| names.contains(mark));
    let of = entries.iter().filter(|entry| match &entry.body {
        Body::NoteAdded(b) => here(&b.mark),
        Body::PhotoPromised(b) => here(&b.mark),
        Body::QueryOpened(b) => b.on.iter().any(|on| names.contains(on.as_str())),
        _ => false,
    });
    of.map(Sentence::of).collect()
}

fn photos(day: &Day<'_>, names: &BTreeSet<&str>) -> Vec<PhotoCard> {
    let mut photos = papers::photos(&day.state);
    photos.retain(|photo| {
        let mark = photo.mark.as_deref();
        photo.sha256.is_some() && mark.is_some_and(|mark| names.contains(mark))
    });
    photos
}

/// Amendments of entries that stand on the page, of the same day and of later ones.
fn amendments(day: &Day<'_>, page: &ToldPage) -> Vec<Sentence> {
    let edges = page.edges.iter().map(|edge| edge.said.seq);
    let said = page.readings.iter().chain(&page.presses);
    let said = said.chain(&page.papers).map(|one| one.seq);
    let calls = page.calls.iter().map(|call| call.call);
    let named: BTreeSet<u64> = calls.chain(said).chain(edges).collect();
    let entries = day.entries.iter().chain(day.later);
    let amends = |entry: &&Entry| match &entry.body {
        Body::DayAmended(amended) => named.contains(&amended.entry),
        _ => false,
    };
    entries.filter(amends).map(Sentence::of).collect()
}

fn near_lines(site: &Site, near: Point) -> Vec<NearLine> {
    let kept = site.lines.iter().filter(|line| line.no_cross);
    kept.filter_map(|line| {
        let inside = edge::kept(line).distance(near).ok()?;
        (inside.abs() <= LINE_NEAR).then(|| NearLine {
            line: line.id.clone(),
            inside,
        })
    })
    .collect()
}

fn near_targets(day: &Day<'_>, site: &Site, marks: &[NearMark]) -> Vec<NearTarget> {
    let names: BTreeSet<&str> = marks
        .iter()
        .filter_map(|mark| mark.target.as_deref())
        .collect();
    let changed = |entry: &&Entry, id: &str| match &entry.body {
        Body::TargetRevised(b) => b.target == id,
        Body::TargetTyped(b) => b.target == id,
        Body::TargetSeen(b) => b.target == id,
        _ => false,
    };
    names
        .into_iter()
        .filter_map(|id| {
            let target = site.target(id)?;
            Some(NearTarget {
                target: id.to_owned(),
                name: target.name.clone(),
                revision: target.revision,
                typed_by: target.typed_by.clone(),
                proved_by: target.proved_by.clone(),
                changes: day
                    .entries
                    .iter()
                    .filter(|entry| changed(entry, id))
                    .map(Sentence::of)
                    .collect(),
            })
        })
        .collect()
}

/// Whether somebody else than who laid a mark has measured it.
pub(super) fn checked(mark: &NearMark) -> bool {
    mark.paint
        .as_ref()
        .is_some_and(|paint| paint.state == PaintState::Checked)
}
