//! The day's sheet: what changes seldom. Marks with their dig-to, targets with every layer, rods, benchmarks.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::rod::Rod;
use earthwork::target::DigTo;
use earthwork::tolerance::Tolerance;
use serde::Serialize;

use crate::views::parts::{Named, screen};
use day::cuts::plan::{FaceZone, OverheadLine, Pile, Structure, Ticket, Utility};
use day::said::marks::Paint;
use day::said::prove::{self, ToProve};
use day::said::ties::{self, TiesCard};
use day::site::drawn::{DrawnTarget, drawn};
use day::site::{Benchmark, Laser, Line, Machine, Mark, Site, Target};
use day::state::State;
use words::Text;

/// What a phone keeps for the day.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
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
    /// Where targets with a line run, and what to dig to along it.
    pub drawn: Vec<DrawnTarget>,
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
    /// Targets that wait for a second person to type them, without their values.
    pub to_prove: Vec<ToProve>,
    /// Faces and trenches: toes and where they come to daylight.
    pub faces: Vec<SheetFace>,
    /// Buried lines.
    pub utilities: Vec<Utility>,
    /// The ground that tickets cover.
    pub tickets: Vec<Ticket>,
    /// Footings and walls behind the cuts.
    pub structures: Vec<Structure>,
    /// Lines overhead.
    pub overheads: Vec<OverheadLine>,
    /// Piles.
    pub piles: Vec<Pile>,
}

/// A face or a trench on the plan.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct SheetFace {
    /// Its name.
    pub id: String,
    /// Its toe.
    pub toe: Vec<Point>,
    /// Where it comes to daylight, in order along the toe; empty before it was worked out.
    pub daylight: Vec<Point>,
    /// Over a line that nobody may cross.
    pub over: bool,
}

/// A mark with what it asks for.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct SheetMark {
    /// Its name.
    pub id: String,
    /// Where it is.
    pub place: Point,
    /// Its target.
    pub target: Option<String>,
    /// The machine that its target is assigned to.
    pub machine: Option<String>,
    /// The elevation to dig to, or both sides of a step.
    pub dig_to: Option<DigTo>,
    /// Why there is no dig-to, when a target is named but has nothing here.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub why_no_grade: Option<Text>,
    /// Allowed high and low.
    pub tolerance: Option<Tolerance>,
    /// Where to aim, relative to the target; zero unless a supervisor set it.
    pub aim: Length,
    /// How it stands on the ground, once somebody has said so.
    pub paint: Option<Paint>,
    /// The two tapes that bring it back, while both their ends stand.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub ties: Option<TiesCard>,
    /// Station along its target's line.
    pub station: Option<Length>,
    /// Offset, positive to the right looking up-station.
    pub offset: Option<Length>,
    /// A word about it.
    pub note: String,
}

screen! {
    /// The sheet; none while there is no site or no day.
    Sheet(state, site, day) {}
    field Seldom site: site.name.clone(),
    field Seldom day: day.id.clone(),
    list Seldom marks: marks(state, site),
    field Seldom targets: site.targets.iter().map(on_screens).collect::<Vec<_>>(),
    field Seldom drawn: site.targets.iter().filter_map(drawn).collect::<Vec<_>>(),
    field Seldom benchmarks: site.benchmarks.clone(),
    field Seldom lines: site.lines.clone(),
    field Seldom rods: site.rods.clone(),
    field Seldom lasers: site.lasers.clone(),
    field Seldom machines: site.machines.clone(),
    field Seldom to_prove: prove::to_prove(state),
    field Seldom faces: site.cuts.faces.iter().map(|zone| face(state, zone)).collect::<Vec<_>>(),
    field Seldom utilities: site.cuts.utilities.clone(),
    field Seldom tickets: site.cuts.tickets.clone(),
    field Seldom structures: site.cuts.structures.clone(),
    field Seldom overheads: site.cuts.overheads.clone(),
    field Seldom piles: site.cuts.piles.clone(),
}

/// Marks in the order of work.
pub(crate) fn marks(state: &State, site: &Site) -> Vec<SheetMark> {
    let marks = site.marks.iter();
    marks.map(|mark| sheet_mark(state, site, mark)).collect()
}

fn on_screens(target: &Target) -> Target {
    Target {
        grade: target.grade.for_screens(),
        ..target.clone()
    }
}

fn face(state: &State, zone: &FaceZone) -> SheetFace {
    let now = state.cuts.face(&zone.id);
    let found = now.and_then(|now| now.daylight.as_ref());
    SheetFace {
        id: zone.id.clone(),
        toe: zone.toe.iter().map(|corner| corner.at).collect(),
        daylight: found
            .map(|found| found.places.iter().map(|place| place.at).collect())
            .unwrap_or_default(),
        over: found.is_some_and(|found| found.crossed().next().is_some()),
    }
}

impl Named for SheetMark {
    fn name(&self) -> String {
        self.id.clone()
    }
}

fn sheet_mark(state: &State, site: &Site, mark: &Mark) -> SheetMark {
    let target = site.target_of(mark);
    let grade = target.map(|target| target.grade.dig_to(mark.place));
    let (dig_to, why_no_grade) = match grade {
        Some(Ok(dig_to)) => (Some(dig_to), None),
        Some(Err(error)) => (None, Some(error.text())),
        None => (None, None),
    };
    SheetMark {
        id: mark.id.clone(),
        place: mark.place,
        target: mark.target.clone(),
        machine: target
            .and_then(|target| site.machine_for(&target.id))
            .map(|machine| machine.id.clone()),
        dig_to,
        why_no_grade,
        tolerance: target.map(|target| target.tolerance),
        aim: target.map_or(Length::ZERO, |target| state.aim(&mark.id, &target.id)),
        paint: state.marks.get(&mark.id).and_then(|now| now.paint.clone()),
        ties: ties::standing(state, &mark.id).cloned(),
        station: mark.station.or_else(|| {
            let beside = target?.grade.station_offset(mark.place).ok()?;
            Some(beside.station)
        }),
        offset: mark.offset,
        note: mark.note.clone(),
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::view;
    use day::given::{Crew, at, site};
    use words::Language;

    #[test]
    fn a_mark_beside_its_target_says_so_in_every_language() {
        let mut site = site();
        for mark in &mut site.marks {
            if mark.id == "R-1" {
                mark.place = at("10 ft", "90 ft");
            }
        }
        let sheet = view(&Crew::opened_on(site).state).unwrap();
        let sent = |id: &str| sheet.marks.iter().find(|mark| mark.id == id).unwrap();
        let beside = sent("R-1");
        assert_eq!(beside.dig_to, None);
        let why = beside.why_no_grade.as_ref().unwrap();
        let said: BTreeSet<_> = Language::ALL.iter().map(|one| why.of(*one)).collect();
        assert_eq!(said.len(), Language::ALL.len(), "{said:?}");
        assert_eq!(sent("R-2").why_no_grade, None);
    }
}
