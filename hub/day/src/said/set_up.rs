//! The laser is set up, proven, restated, taken down.

use contract::ToSchema;
use earthwork::laser::drift::Drift;
use earthwork::length::Length;
use earthwork::level;
use earthwork::point::Point;
use earthwork::rod::RodReading;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::call::Ending;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::said::{call, suspect};
use crate::saying::{Asking, Closed, Saying};
use crate::site::{Benchmark, Site};
use crate::state::SetUpState;
use crate::state::{SetUp, State};

mod one_benchmark;
pub(crate) mod sloped;

pub use one_benchmark::{LevelAgain, UseOneBenchmark};
pub use sloped::LaserSlope;

/// A backsight on a benchmark.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SetUpLaser {
    /// The laser.
    pub laser: String,
    /// Where it stands, paced or taped; unknown is taken as far.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place: Option<Point>,
    /// The benchmark under the rod.
    pub benchmark: String,
    /// The rod.
    pub rod: String,
    /// The rod value as typed.
    pub text: String,
    /// How its plane is sloped; level without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub slope: Option<LaserSlope>,
}

impl Saying for SetUpLaser {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        set_up(at.state, self)
    }
}

/// The backsight was not what it was said to be.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RestateSetUp {
    /// Which set-up.
    pub set_up: String,
    /// The benchmark that was really under the rod.
    pub benchmark: String,
    /// The rod.
    pub rod: String,
    /// The rod value as typed.
    pub text: String,
}

impl Saying for RestateSetUp {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        restate(at.state, self)
    }
}

/// The set-up is taken down.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CloseSetUp {
    /// Which set-up.
    pub set_up: String,
    /// Why.
    #[serde(default)]
    pub why: String,
}

impl Saying for CloseSetUp {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        close(at.state, self)
    }
}

/// What a set-up's height rests on.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Basis {
    /// The benchmark of the backsight.
    pub benchmark: String,
    /// The rod.
    pub rod: String,
    /// The rod value as typed.
    pub text: String,
    /// The rod value.
    pub backsight: Length,
    /// Height of instrument: benchmark + backsight; of a sloped laser, its plane's height over the laser itself.
    pub height: Length,
}

/// A laser was set up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct LaserSetUp {
    /// Its name, given by the hub: S1, S2 and so on.
    pub set_up: String,
    /// The laser.
    pub laser: String,
    /// Where it stands.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place: Option<Point>,
    /// What its height rests on.
    pub basis: Basis,
    /// How its plane is sloped; level without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub slope: Option<LaserSlope>,
}

impl Happening for LaserSetUp {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_set_up(state, entry, self);
    }
}

/// A set-up's backsight was restated; the set-up must be proven again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SetUpRestated {
    /// Which set-up.
    pub set_up: String,
    /// Its new basis.
    pub basis: Basis,
}

impl Happening for SetUpRestated {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_restated(state, entry, self);
    }
}

/// A set-up may be used.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SetUpProven {
    /// Which set-up.
    pub set_up: String,
    /// How.
    pub proof: Proof,
    /// The new basis, when the laser's height was changed for the proof.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub basis: Option<Basis>,
}

impl Happening for SetUpProven {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_proven(state, entry, self);
    }
}

/// A set-up was taken down.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SetUpClosed {
    /// Which set-up.
    pub set_up: String,
    /// Why.
    pub why: String,
}

impl Happening for SetUpClosed {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_closed(state, self);
    }
}

/// What stands behind a set-up.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Proof {
    /// A second benchmark agreed.
    SecondBenchmark {
        /// Which.
        benchmark: String,
    },
    /// Two benchmarks agreed after a doubt.
    TwoBenchmarks {
        /// The first.
        first: String,
        /// The second.
        second: String,
    },
    /// Two benchmarks that do not lie in one line with a sloped laser agreed, besides the backsight.
    AcrossTheSlope {
        /// The first.
        first: String,
        /// The second.
        second: String,
    },
    /// The only benchmark was levelled a second time from a changed height.
    LevelledAgain {
        /// Between the two levellings of the point.
        disagreement: Length,
    },
    /// Nothing but the backsight: each call says ONE BENCHMARK.
    OneBenchmark,
}

impl Proof {
    /// The benchmarks that it names.
    pub(crate) fn benchmarks(&self) -> impl Iterator<Item = &str> {
        let pair = match self {
            Self::SecondBenchmark { benchmark } => [Some(benchmark), None],
            Self::TwoBenchmarks { first, second } | Self::AcrossTheSlope { first, second } => {
                [Some(first), Some(second)]
            }
            Self::LevelledAgain { .. } | Self::OneBenchmark => [None, None],
        };
        pair.into_iter().flatten().map(String::as_str)
    }
}

/// Why a set-up is in doubt.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum DoubtReason {
    /// A check shot failed.
    FailedCheck {
        /// On which benchmark.
        benchmark: String,
        /// (HI − rod) − benchmark.
        residual: Length,
    },
    /// Somebody saw it move.
    Bumped {
        /// Who.
        by: String,
    },
    /// The elevation of a benchmark that it rests on was corrected.
    BenchmarkChanged {
        /// Which.
        benchmark: String,
        /// New − old.
        by: Length,
    },
}

/// Two lasers closer in height than this could never be told apart by a reading.
const ALIKE: Length = Length::from_hundredths_of_a_foot(50);

/// Reads a rod value, as the rod is marked.
pub(crate) fn rod_value(site: &Site, rod: &str, text: &str) -> Result<RodReading, Refusal> {
    let rod = site.rod(rod).ok_or_else(|| Refusal::Unknown {
        what: Thing::Rod,
        name: rod.to_owned(),
    })?;
    rod.read(text)
        .map_err(|error| Refusal::RodValue(error.text()))
}

pub(crate) fn benchmark<'a>(site: &'a Site, id: &str) -> Result<&'a Benchmark, Refusal> {
    site.benchmark(id).ok_or_else(|| Refusal::Unknown {
        what: Thing::Benchmark,
        name: id.to_owned(),
    })
}

/// A set-up of this day, taken down or not.
pub(crate) fn known<'a>(state: &'a State, id: &str) -> Result<&'a SetUp, Refusal> {
    state.set_up(id).ok_or_else(|| Refusal::Unknown {
        what: Thing::SetUp,
        name: id.to_owned(),
    })
}

/// A set-up that still stands.
pub(crate) fn standing<'a>(state: &'a State, id: &str) -> Result<&'a SetUp, Refusal> {
    let set_up = known(state, id)?;
    if set_up.closed {
        return Err(Refusal::SetUpIsClosed {
            set_up: id.to_owned(),
        });
    }
    Ok(set_up)
}

fn basis(site: &Site, mark: &str, rod: &str, text: &str) -> Result<Basis, Refusal> {
    let benchmark = benchmark(site, mark)?;
    let backsight = rod_value(site, rod, text)?.value;
    Ok(Basis {
        benchmark: mark.to_owned(),
        rod: rod.to_owned(),
        text: text.to_owned(),
        backsight,
        height: level::height_of_instrument(benchmark.elevation, backsight),
    })
}

/// Refuses a height that could not be told from another standing set-up's.
fn told_apart(
    state: &State,
    site: &Site,
    plane: impl Fn(Point) -> Length,
    but: Option<&str>,
) -> Result<(), Refusal> {
    // Two level planes are as far apart everywhere; a sloped one may come near over some mark.
    let places: Vec<Point> = site.marks.iter().map(|mark| mark.place).collect();
    let near = |other: &SetUp, at: Point| (other.height_at(at) - plane(at)).abs() < ALIKE;
    let alike = state.set_ups.iter().find(|other| {
        other.usable()
            && Some(other.id.as_str()) != but
            && (near(other, Point::default()) && other.slope.is_none()
                || places.iter().any(|at| near(other, *at)))
    });
    match alike {
        Some(other) => Err(Refusal::SetUpsAlike {
            set_up: other.id.clone(),
        }),
        None => Ok(()),
    }
}

/// A laser's height over any place; the same everywhere when it is level.
fn plane(slope: Option<LaserSlope>, at: Option<Point>, hi: Length) -> impl Fn(Point) -> Length {
    let plane = slope.zip(at).map(|(slope, at)| slope.plane(at, hi));
    move |place| plane.map_or(hi, |plane| plane.height(place).unwrap_or(hi))
}

pub(crate) fn set_up(state: &State, asked: &SetUpLaser) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    if state.day.is_none() {
        return Err(Refusal::NoDay);
    }
    if site.laser(&asked.laser).is_none() {
        return Err(Refusal::Unknown {
            what: Thing::Laser,
            name: asked.laser.clone(),
        });
    }
    let basis = basis(site, &asked.benchmark, &asked.rod, &asked.text)?;
    let basis = sloped::over_the_laser(site, asked.slope, asked.place, basis)?;
    told_apart(
        state,
        site,
        plane(asked.slope, asked.place, basis.height),
        None,
    )?;
    Ok(vec![Body::LaserSetUp(LaserSetUp {
        set_up: format!("S{}", state.set_ups.len() + 1),
        laser: asked.laser.clone(),
        place: asked.place,
        basis,
        slope: asked.slope,
    })])
}

pub(crate) fn restate(state: &State, asked: &RestateSetUp) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let set_up = standing(state, &asked.set_up)?;
    let basis = basis(site, &asked.benchmark, &asked.rod, &asked.text)?;
    let basis = sloped::over_the_laser(site, set_up.slope, set_up.place, basis)?;
    let plane = plane(set_up.slope, set_up.place, basis.height);
    told_apart(state, site, plane, Some(&set_up.id))?;
    let mut bodies = Vec::new();
    if set_up.usable() {
        // Calls that rest on the old height are gone with it.
        for machine in state.cabs.keys() {
            let rests = state
                .live_call(machine)
                .is_some_and(|(_, call)| call.sent.set_up.as_deref() == Some(&set_up.id));
            if rests {
                bodies.extend(call::end_live(state, machine, Ending::StaleByLaser));
            }
        }
    }
    bodies.push(Body::SetUpRestated(SetUpRestated {
        set_up: asked.set_up.clone(),
        basis,
    }));
    Ok(bodies)
}

pub(crate) fn close(state: &State, asked: &CloseSetUp) -> Result<Vec<Body>, Refusal> {
    let set_up = standing(state, &asked.set_up)?;
    // Taken down without a closing check: what was read since the last one can't be proven any more.
    let mut bodies: Vec<Body> = if set_up.usable() {
        suspect::window(state, set_up, None).into_iter().collect()
    } else {
        vec![]
    };
    bodies.push(Body::SetUpClosed(SetUpClosed {
        set_up: asked.set_up.clone(),
        why: asked.why.clone(),
    }));
    Ok(bodies)
}

pub(crate) fn apply_set_up(state: &mut State, entry: &Entry, body: &LaserSetUp) {
    let tested = state.tested.get(&body.laser).copied();
    state.set_ups.push(SetUp {
        id: body.set_up.clone(),
        laser: body.laser.clone(),
        place: body.place,
        basis: vec![body.basis.clone()],
        since: Some(entry.made_at),
        slope: body.slope,
        good_on: vec![],
        state: SetUpState::Unproven,
        closed: false,
        last_check: None,
        readings_since_check: 0,
        good_at: None,
        due: None,
        drift: Drift::default(),
        repeats: vec![],
        tested,
    });
}

pub(crate) fn apply_restated(state: &mut State, entry: &Entry, body: &SetUpRestated) {
    if let Some(set_up) = state.set_up_mut(&body.set_up) {
        set_up.basis.push(body.basis.clone());
        set_up.since = Some(entry.made_at);
        set_up.state = SetUpState::Unproven;
        set_up.good_on.clear();
        set_up.last_check = None;
        set_up.good_at = None;
        set_up.due = None;
        set_up.drift = Drift::default();
    }
}

pub(crate) fn apply_proven(state: &mut State, entry: &Entry, body: &SetUpProven) {
    if let Some(set_up) = state.set_up_mut(&body.set_up) {
        if let Some(basis) = &body.basis {
            set_up.basis.push(basis.clone());
            set_up.since = Some(entry.made_at);
        }
        set_up.state = SetUpState::Proven {
            proof: body.proof.clone(),
        };
        set_up.now_good(entry.made_at);
    }
    // A laser that two benchmarks stand behind is what a paused cab waits for.
    for cab in state.cabs.values_mut() {
        cab.paused = None;
    }
}

pub(crate) fn apply_closed(state: &mut State, body: &SetUpClosed) {
    if let Some(set_up) = state.set_up_mut(&body.set_up) {
        set_up.closed = true;
    }
}
