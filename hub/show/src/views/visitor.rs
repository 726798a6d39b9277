//! A visitor's screen: the runs that a supervisor chose for them, each with what proves it. Nothing on it can be changed.

use contract::ToSchema;
use serde::Serialize;

use crate::views::mark_card::{self, MarkCard};
use crate::views::operator::{self, FaceStrip};
use crate::views::papers::{self, InspectedCard, PhotoCard};
use crate::views::parts::screen;
use crate::views::sheet::{self, SheetMark};
use day::account::soil::{self, TestCard};
use day::built;
use day::coverage::{self, RunCoverage};
use day::said::reading::Judged;
use day::said::stop::StopCard;
use day::said::struck::{self, StruckCard};
use day::site::drawn::{DrawnTarget, drawn};
use day::site::{Site, Target};
use day::state::{CheckCard, SetUpState};
use day::state::{SetUp, State};
use day::time::Time;

/// What a visitor's page shows.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[schema(as = VisitorView)]
pub struct Visitor {
    /// The job.
    pub site: String,
    /// The day.
    pub day: String,
    /// On site since; none while off site.
    pub here: Option<Time>,
    /// An ALL STOP that stands.
    pub stop: Option<StopCard>,
    /// Faces that were left: nobody under them.
    #[serde(default)]
    pub faces_left: Vec<FaceStrip>,
    /// Lines that were struck or met.
    pub struck: Vec<StruckCard>,
    /// When the day was closed.
    pub closed: Option<Time>,
    /// The runs that were chosen for them.
    pub runs: Vec<VisitorRun>,
    /// The inspections that they made.
    pub inspections: Vec<InspectedCard>,
}

/// A run with what proves it.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct VisitorRun {
    /// The target.
    pub target: Target,
    /// Its line as it is drawn; none when it has no line.
    pub drawn: Vec<DrawnTarget>,
    /// Its marks.
    pub marks: Vec<SheetMark>,
    /// The last reading on each mark that has one.
    pub shots: Vec<MarkCard>,
    /// Marks whose last reading is on grade and whose laser was found good afterwards.
    pub proven: Vec<String>,
    /// What of it is not proven, along its stations.
    pub coverage: Option<RunCoverage>,
    /// The lasers that its readings rest on.
    pub lasers: Vec<LaserProof>,
    /// Soil tests at its marks.
    pub tests: Vec<TestCard>,
    /// Photos of its marks that have come.
    pub photos: Vec<PhotoCard>,
}

/// What proves a laser set-up.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[schema(as = VisitorLaser)]
pub struct LaserProof {
    /// The set-up.
    pub set_up: String,
    /// The laser.
    pub laser: String,
    /// Whether it was proven, or is in doubt.
    pub state: SetUpState,
    /// The last shot that found it good.
    pub good_at: Option<Time>,
    /// The last check shot.
    pub last_check: Option<CheckCard>,
    /// It was taken down.
    pub closed: bool,
}

screen! {
    /// The view of a visitor by name; none while there is no site or no day.
    Visitor(state, site, day, person: &str) {}
    field Seldom site: site.name.clone(),
    field Seldom day: day.id.clone(),
    field Seldom here: state.record.visitors.get(person).and_then(|visitor| visitor.here),
    field Seldom stop: all_stop(state),
    field Seldom faces_left: operator::faces_left(state, site),
    field Seldom struck: struck::cards(state),
    field Seldom closed: state.record.closed.as_ref().map(|closed| closed.at),
    field Spare runs: runs(state, site, person),
    field Seldom inspections: inspections(state, person),
}

fn all_stop(state: &State) -> Option<StopCard> {
    let mut stops = state.cabs.values().filter_map(|cab| cab.stop.as_ref());
    stops.find(|stop| stop.all).cloned()
}

/// The runs that were chosen for them.
fn runs(state: &State, site: &Site, person: &str) -> Vec<VisitorRun> {
    let visitor = state.record.visitors.get(person);
    let shown = visitor.map_or(&[][..], |visitor| &visitor.shown);
    let targets = shown.iter().filter_map(|id| site.target(id));
    targets.map(|target| run(state, site, target)).collect()
}

/// The inspections that they made.
fn inspections(state: &State, person: &str) -> Vec<InspectedCard> {
    let made = state.record.inspections.iter().filter(|(_, one)| {
        let made = one.made.as_ref();
        made.is_some_and(|made| made.said.inspector == person)
    });
    made.map(|(id, one)| papers::inspected_card(*id, one))
        .collect()
}

fn run(state: &State, site: &Site, target: &Target) -> VisitorRun {
    let own = |mark: &str| {
        site.mark(mark)
            .is_some_and(|mark| mark.target.as_deref() == Some(&target.id))
    };
    let marks = sheet::marks(state, site);
    let shots: Vec<MarkCard> = mark_card::cards(state, site)
        .all()
        .into_iter()
        .filter(|card| own(&card.id))
        .collect();
    // Set-ups are named anew each day.
    let today = |card: &&MarkCard| card.day.is_none();
    let used = |set_up: &&SetUp| {
        let mut shots = shots.iter().filter(today);
        shots.any(|card| card.set_up == set_up.id)
    };
    let photos = papers::photos(state);
    VisitorRun {
        drawn: drawn(target).into_iter().collect(),
        marks: marks.into_iter().filter(|mark| own(&mark.id)).collect(),
        proven: proven(state, target, &shots),
        coverage: coverage::coverage(state)
            .into_iter()
            .find(|run| run.target == target.id),
        lasers: state.set_ups.iter().filter(used).map(proof).collect(),
        tests: soil::tests(state)
            .into_iter()
            .filter(|test| own(&test.mark))
            .collect(),
        photos: photos
            .into_iter()
            .filter(|photo| photo.sha256.is_some() && photo.mark.as_deref().is_some_and(own))
            .collect(),
        target: target.clone(),
        shots,
    }
}

fn proven(state: &State, target: &Target, shots: &[MarkCard]) -> Vec<String> {
    let judged_here = |judged: &Judged| judged.target == target.id;
    shots
        .iter()
        .filter(|card| {
            if card.day.is_some() {
                return built::before(state, &card.id).is_some_and(|before| {
                    before.proven && before.target.as_deref() == Some(&target.id)
                });
            }
            state.readings.get(&card.reading).is_some_and(|taken| {
                taken.reading.judged.as_ref().is_some_and(judged_here)
                    && coverage::is_proven(state, target, card.reading, taken)
            })
        })
        .map(|card| card.id.clone())
        .collect()
}

fn proof(set_up: &SetUp) -> LaserProof {
    LaserProof {
        set_up: set_up.id.clone(),
        laser: set_up.laser.clone(),
        state: set_up.state.clone(),
        good_at: set_up.good_at,
        last_check: set_up.last_check.clone(),
        closed: set_up.closed,
    }
}
