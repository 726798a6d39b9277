//! What of each run nobody has proven yet: for the supervisor, so that a gap is found before the form crew finds it.

use contract::ToSchema;
use earthwork::laser::coverage::{FOOTING_REACH, Stretch, unproven};
use earthwork::length::Length;
use earthwork::target::Shape;
use earthwork::tolerance::Verdict;
use serde::{Deserialize, Serialize};

use crate::built;
use crate::last::{self, StillCounts};
use crate::said::suspect::Standing;
use crate::site::Target;
use crate::state::{State, TakenReading};

/// A run and its stretches that no proven reading speaks for.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct RunCoverage {
    /// The target.
    pub target: String,
    /// Its name.
    pub name: String,
    /// Its first station.
    pub from: Length,
    /// Its last station.
    pub to: Length,
    /// Readings that are on grade and whose laser was found good afterwards.
    pub proven: u32,
    /// Stretches without one within reach, never across a step.
    pub unproven: Vec<Stretch>,
    /// How long they are together.
    pub unproven_length: Length,
}

/// One row for each target along a line.
pub fn coverage(state: &State) -> Vec<RunCoverage> {
    let Some(site) = state.site() else {
        return vec![];
    };
    site.targets
        .iter()
        .filter_map(|target| of_run(state, target))
        .collect()
}

fn of_run(state: &State, target: &Target) -> Option<RunCoverage> {
    let (from, to) = target.grade.stations()?;
    let site = state.site()?;
    let along = |station: Length| station - from;
    let steps: Vec<Length> = steps(target).into_iter().map(along).collect();
    let proven: Vec<Length> = site
        .marks
        .iter()
        .filter(|mark| mark.target.as_deref() == Some(&target.id))
        .filter(|mark| match state.last_reading(&mark.id) {
            Some((id, taken)) => is_proven(state, target, id, taken),
            // What a day before has proven stands until somebody reads there again or the target changes.
            None => built::before(state, &mark.id).is_some_and(|before| before.proven),
        })
        .filter_map(|mark| target.grade.station_offset(mark.place).ok())
        .map(|at| along(at.station))
        .collect();
    let unproven = unproven(along(to), &steps, &proven, FOOTING_REACH);
    Some(RunCoverage {
        target: target.id.clone(),
        name: target.name.clone(),
        from,
        to,
        proven: u32::try_from(proven.len()).unwrap_or(u32::MAX),
        unproven_length: unproven.iter().map(Stretch::length).sum(),
        unproven: unproven
            .into_iter()
            .map(|gap| Stretch {
                from: gap.from + from,
                to: gap.to + from,
            })
            .collect(),
    })
}

fn steps(target: &Target) -> Vec<Length> {
    match &target.grade.shape {
        Shape::Run(run) => run.steps.iter().map(|step| step.from).collect(),
        Shape::Along(along) => along
            .drawn()
            .steps
            .iter()
            .map(|step| step.station)
            .collect(),
        _ => vec![],
    }
}

/// Whether a mark's last reading of this day proves it.
pub(crate) fn proven(state: &State, mark: &str) -> bool {
    let target = state
        .site()
        .and_then(|site| site.target_of(site.mark(mark)?));
    let read = target.zip(state.last_reading(mark));
    read.is_some_and(|(target, (id, taken))| is_proven(state, target, id, taken))
}

/// On grade beyond doubt, on the target as it is now, from a laser that was found good afterwards or whose fault would not
/// have changed the verdict; on ground that has failed no test.
pub fn is_proven(state: &State, target: &Target, id: u64, taken: &TakenReading) -> bool {
    let counts = last::of_reading(state, id, taken);
    let on =
        taken.reading.judged.as_ref().is_some_and(|judged| {
            judged.verdict == Verdict::On && judged.revision == target.revision
        });
    let checked = state
        .set_up(&taken.reading.set_up)
        .and_then(|set_up| set_up.good_at)
        .is_some_and(|good_at| taken.made_at <= good_at);
    let stands = || {
        state.suspects.iter().any(|suspect| {
            suspect
                .window
                .marks
                .iter()
                .any(|mark| mark.reading == id && mark.standing == Standing::Stands)
        })
    };
    let fails = state.account.fails(&taken.reading.mark);
    on && counts == StillCounts::Counts && !fails && (checked || stands())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::given::{Crew, len};
    use crate::time::minutes;

    /// The run is 40 ft with a step at 20; R-1 stands at station 10. Derived by hand: 10 ± 5 is spoken for.
    #[test]
    fn a_reading_counts_when_its_laser_was_found_good_afterwards() {
        let mut crew = Crew::digging();
        crew.reads("R-1", "7.00").unwrap();
        let run = |crew: &Crew| coverage(&crew.state)[0].clone();
        let before = run(&crew);
        assert_eq!((before.proven, before.unproven_length), (0, len("40 ft")));
        crew.wait(minutes(1));
        crew.check("S1", "BM-2", "3.48").unwrap();
        let after = run(&crew);
        assert_eq!((after.proven, after.unproven_length), (1, len("30 ft")));
        let gaps: Vec<(Length, Length)> = after
            .unproven
            .iter()
            .map(|gap| (gap.from, gap.to))
            .collect();
        let ft = |feet: i64| Length::from_hundredths_of_a_foot(feet * 100);
        assert_eq!(gaps, [(ft(0), ft(5)), (ft(15), ft(20)), (ft(20), ft(40))]);
    }
}
