//! A line of levels over turning points: booked, closed on a benchmark, spread in equal parts; and a point of it that a
//! supervisor takes as a benchmark. One turning point shot from two lasers says whether they agree.

use contract::ToSchema;
use earthwork::laser::transfer::transfer;
use earthwork::length::Length;
use earthwork::level_line::{LevelLine, LevelLineError, Turn, allowed_for_set_ups};
use earthwork::point::Point;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::said::check_due;
use crate::said::set_up::{self, rod_value};
use crate::saying::{Asking, Closed, Saying};
use crate::site::Benchmark;
use crate::state::State;

/// A line of levels from one benchmark to another, or back to the first.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RunLevels {
    /// Where it starts.
    pub from: String,
    /// Where it closes; the same for a loop.
    pub to: String,
    /// The rod.
    pub rod: String,
    /// Each set-up: the point behind was shot, then the point ahead.
    pub turns: Vec<TurnRead>,
}

impl Saying for RunLevels {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        run(at.state, self)
    }
}

/// One set-up of the line, as it was read.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct TurnRead {
    /// The rod on the point behind, as typed.
    pub backsight: String,
    /// The rod on the point ahead, as typed.
    pub foresight: String,
    /// The point ahead; the last one is the benchmark that the line closes on.
    pub point: String,
}

/// A line of levels was run, and it closes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct LevelsRun {
    /// Where it starts.
    pub from: String,
    /// Where it closes.
    pub to: String,
    /// The rod.
    pub rod: String,
    /// What was read.
    pub turns: Vec<TurnRead>,
    /// How far it misses: positive when it comes out too high.
    pub misclosure: Length,
    /// How far it may miss.
    pub allowed: Length,
    /// The points between, adjusted.
    pub points: Vec<Levelled>,
}

impl Happening for LevelsRun {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_run(state, entry, self);
    }
}

/// A point of a line that closes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Levelled {
    /// Its name.
    pub point: String,
    /// Its elevation as booked.
    pub booked: Length,
    /// Its elevation with its part of the misclosure taken off.
    pub elevation: Length,
    /// One standard deviation: half the misclosure, or 0.005 ft times the root of the set-ups so far, whichever is larger.
    pub doubt: Length,
}

/// A supervisor takes a levelled point as a benchmark.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AddBenchmark {
    /// The entry of the line.
    pub levels: u64,
    /// The point of it.
    pub point: String,
    /// The benchmark's name.
    pub id: String,
    /// Where it is, when known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place: Option<Point>,
    /// What it looks like, so that it can be found.
    pub note: String,
}

impl Saying for AddBenchmark {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        add(at.state, self)
    }
}

/// A benchmark was added.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct BenchmarkAdded {
    /// The benchmark.
    pub benchmark: Benchmark,
    /// The entry of the line that it comes from.
    pub levels: u64,
}

impl Happening for BenchmarkAdded {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_added(state, self);
    }
}

/// One turning point, shot from two lasers.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CompareSetUps {
    /// The first set-up.
    pub first: String,
    /// The second.
    pub second: String,
    /// The rod.
    pub rod: String,
    /// The rod value from the first, as typed.
    pub from_first: String,
    /// The rod value from the second, as typed.
    pub from_second: String,
}

impl Saying for CompareSetUps {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        compare(at.state, self)
    }
}

/// Two set-ups were compared.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SetUpsCompared {
    /// The first set-up.
    pub first: String,
    /// The second.
    pub second: String,
    /// The point's elevation from the second less that from the first.
    pub difference: Length,
    /// Within 0.02 ft: neither is accused.
    pub agree: bool,
}

impl Happening for SetUpsCompared {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, _state: &mut State, _entry: &Entry) {
        // Nothing is current by it: it is there to be read.
    }
}

/// Half the misclosure, or this for each root of the set-ups (common practice).
const DOUBT: Length = Length::from_thousandths_of_a_foot(5);

pub(crate) fn run(state: &State, asked: &RunLevels) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let from = set_up::benchmark(site, &asked.from)?.elevation;
    let to = set_up::benchmark(site, &asked.to)?.elevation;
    if let Some(last) = asked.turns.last()
        && last.point != asked.to
    {
        return Err(Refusal::Levels(words::turning::line_ends_not(
            &last.point,
            &asked.to,
        )));
    }
    let value = |text: &str| rod_value(site, &asked.rod, text).map(|reading| reading.value);
    let turns = asked
        .turns
        .iter()
        .map(|turn| {
            Ok(Turn {
                backsight: value(&turn.backsight)?,
                foresight: value(&turn.foresight)?,
            })
        })
        .collect::<Result<Vec<Turn>, Refusal>>()?;
    let line = LevelLine::run(from, &turns).map_err(refused)?;
    let n = u32::try_from(turns.len()).unwrap_or(u32::MAX);
    let allowed = allowed_for_set_ups(site.rules.closure, n);
    let adjusted = line.adjusted(to, allowed).map_err(refused)?;
    let misclosure = line.misclosure(to);
    let half = Length::from_tenth_micrometres(misclosure.abs().tenth_micrometres() / 2);
    let between = asked.turns.len().saturating_sub(1);
    let points = (1_u32..)
        .zip(&asked.turns)
        .zip(line.elevations.iter().zip(&adjusted))
        .take(between)
        .map(|((k, turn), (booked, elevation))| Levelled {
            point: turn.point.clone(),
            booked: *booked,
            elevation: *elevation,
            doubt: half.max(allowed_for_set_ups(DOUBT, k)),
        })
        .collect();
    Ok(vec![Body::LevelsRun(LevelsRun {
        from: asked.from.clone(),
        to: asked.to.clone(),
        rod: asked.rod.clone(),
        turns: asked.turns.clone(),
        misclosure,
        allowed,
        points,
    })])
}

#[expect(clippy::needless_pass_by_value, reason = "handed to map_err")]
fn refused(error: LevelLineError) -> Refusal {
    Refusal::Levels(error.text())
}

pub(crate) fn add(state: &State, asked: &AddBenchmark) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let point = state
        .levels
        .get(&asked.levels)
        .and_then(|run| run.points.iter().find(|one| one.point == asked.point))
        .ok_or_else(|| Refusal::Unknown {
            what: Thing::TurningPoint,
            name: asked.point.clone(),
        })?;
    let id = asked.id.trim();
    if id.is_empty() || site.benchmark(id).is_some() {
        return Err(Refusal::Levels(
            words::turning::there_benchmark_already_or_has(&id),
        ));
    }
    if asked.note.trim().is_empty() {
        return Err(Refusal::say_why(
            words::turning::what_benchmark_looks_like_where(),
        ));
    }
    Ok(vec![Body::BenchmarkAdded(BenchmarkAdded {
        benchmark: Benchmark {
            id: id.to_owned(),
            elevation: point.elevation,
            place: asked.place,
            doubt: point.doubt,
            note: asked.note.trim().to_owned(),
        },
        levels: asked.levels,
    })])
}

pub(crate) fn compare(state: &State, asked: &CompareSetUps) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let value = |text: &str| rod_value(site, &asked.rod, text).map(|reading| reading.value);
    let first = set_up::standing(state, &asked.first)?;
    let second = set_up::standing(state, &asked.second)?;
    set_up::sloped::only_level(first)?;
    set_up::sloped::only_level(second)?;
    let shots = (
        (first.height(), value(&asked.from_first)?),
        (second.height(), value(&asked.from_second)?),
    );
    let agree = transfer(shots.0, shots.1).is_ok();
    let mut bodies = vec![Body::SetUpsCompared(SetUpsCompared {
        first: asked.first.clone(),
        second: asked.second.clone(),
        difference: (shots.1.0 - shots.1.1) - (shots.0.0 - shots.0.1),
        agree,
    })];
    if !agree {
        // One of the two has moved, and nobody knows which.
        bodies.extend(check_due::by_drift(first));
        bodies.extend(check_due::by_drift(second));
    }
    Ok(bodies)
}

pub(crate) fn apply_run(state: &mut State, entry: &Entry, body: &LevelsRun) {
    state.levels.insert(entry.seq, body.clone());
}

/// The site file knows nothing of it: it stays in force when the file is read again.
pub(crate) fn apply_added(state: &mut State, body: &BenchmarkAdded) {
    if let Some(in_force) = &mut state.site {
        in_force.site.benchmarks.push(body.benchmark.clone());
    }
    state.added_benchmarks.push(body.benchmark.id.clone());
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, len, supervisor};
    use crate::said::check_due::CheckFellDue;
    use crate::said::site::{ConfirmSite, ReadSite};

    fn turn(backsight: &str, foresight: &str, point: &str) -> TurnRead {
        TurnRead {
            backsight: backsight.into(),
            foresight: foresight.into(),
            point: point.into(),
        }
    }

    fn levels(last: &str) -> Command {
        Command::RunLevels(RunLevels {
            from: "BM-1".into(),
            to: "BM-2".into(),
            rod: "A".into(),
            turns: vec![turn("5.00", "3.00", "TP-1"), turn("4.00", last, "BM-2")],
        })
    }

    fn add(levels: u64, id: &str) -> Command {
        Command::AddBenchmark(AddBenchmark {
            levels,
            point: "TP-1".into(),
            id: id.into(),
            place: None,
            note: "nail in the kerb by the gate".into(),
        })
    }

    /// From 100.00: TP-1 at 102.00, BM-2 at 101.54, 0.02 too high. Two set-ups may miss by 0.028 (0.02 √2, common
    /// practice); half of 0.02 comes off at TP-1.
    #[test]
    fn a_line_that_closes_gives_a_benchmark_on_a_supervisors_word() {
        let mut crew = Crew::opened();
        let answer = crew.says(&ground(), levels("4.46")).unwrap();
        let run = &crew.state.levels[&answer.first];
        assert_eq!(run.misclosure, len("0.02 ft"));
        assert_eq!(run.points[0].elevation, len("101.99 ft"));
        assert_eq!(run.points[0].doubt, len("0.01 ft"));
        assert!(
            crew.says(&ground(), add(answer.first, "BM-3")).is_err(),
            "the supervisor's word"
        );
        assert!(crew.says(&supervisor(), add(answer.first, "BM-1")).is_err());
        crew.says(&supervisor(), add(answer.first, "BM-3")).unwrap();
        let added = crew.state.site().unwrap().benchmark("BM-3").unwrap();
        assert_eq!(added.elevation, len("101.99 ft"));
        // A changed file that does not know it does not take it away.
        let mut site = crate::given::site();
        site.name = "Test yard, east".into();
        let hub = crate::asked::By::hub();
        crew.says(&hub, Command::ReadSite(ReadSite { site }))
            .unwrap();
        let found = &crew.state.site_change.as_ref().unwrap().found;
        assert!(
            found
                .differences
                .iter()
                .all(|one| !one.what.contains("BM-3")),
            "{found:?}"
        );
        let digest = found.digest.clone();
        crew.says(&supervisor(), Command::ConfirmSite(ConfirmSite { digest }))
            .unwrap();
        assert!(crew.state.site().unwrap().benchmark("BM-3").is_some());
    }

    #[test]
    fn a_line_that_misses_or_ends_nowhere_gives_nothing() {
        let mut crew = Crew::opened();
        let missed = crew.says(&ground(), levels("4.44")).unwrap_err();
        assert!(
            missed.to_string().contains("nothing was adjusted"),
            "{missed}"
        );
        let open = Command::RunLevels(RunLevels {
            from: "BM-1".into(),
            to: "BM-2".into(),
            rod: "A".into(),
            turns: vec![turn("5.00", "3.00", "TP-1")],
        });
        let open = crew.says(&ground(), open).unwrap_err();
        assert!(open.to_string().contains("closes on nothing"), "{open}");
    }

    #[test]
    fn two_lasers_that_disagree_are_both_to_be_checked() {
        let mut crew = Crew::digging();
        crew.set_up("BM-1", "6.00");
        crew.check("S2", "BM-2", "4.48").unwrap();
        let mut compared = |from_second: &str| {
            let before = crew.log.len();
            let compare = Command::CompareSetUps(CompareSetUps {
                first: "S1".into(),
                second: "S2".into(),
                rod: "A".into(),
                from_first: "5.00".into(),
                from_second: from_second.into(),
            });
            crew.says(&ground(), compare).unwrap();
            let due =
                |entry: &&Entry| matches!(entry.body, Body::CheckFellDue(CheckFellDue { .. }));
            crew.log[before..].iter().filter(due).count()
        };
        assert_eq!(compared("6.02"), 0);
        assert_eq!(compared("6.03"), 2);
    }
}
