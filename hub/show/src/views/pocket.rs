//! The sheet for the pocket: what the rod must read at every mark, printed for when everything electric dies.

use contract::ToSchema;
use earthwork::laser::pocket_sheet;
use earthwork::laser::pocket_sheet::Shot;
use earthwork::length::Length;
use earthwork::target::DigTo;
use earthwork::tolerance::Tolerance;
use serde::Serialize;

use day::said::reading::StepSide;
use day::site::{Mark, Site};
use day::state::SetUpState;
use day::state::{SetUp, State};
use day::time::Time;

/// A sheet for each set-up that stands. It is void when its set-up is taken down or a revision in it is not the newest.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[schema(as = PocketSheets)]
pub struct Pocket {
    /// The job.
    pub site: String,
    /// The day.
    pub day: String,
    /// The entry up to which everything is told.
    pub seq: u64,
    /// The moment of that entry.
    pub at: Time,
    /// One sheet for each set-up that stands.
    pub sheets: Vec<PocketSheet>,
}

/// What the rod must read from one set-up.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct PocketSheet {
    /// The set-up.
    pub set_up: String,
    /// The laser.
    pub laser: String,
    /// Height of instrument.
    pub height: Length,
    /// The benchmark that it rests on.
    pub benchmark: String,
    /// Whether it may be used: a sheet of an unproven set-up says so in large type.
    pub state: SetUpState,
    /// The rods' longest reading that was counted with.
    pub rod: Length,
    /// Every mark with a grade, in the order of work.
    pub rows: Vec<PocketRow>,
}

/// A mark on the sheet.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct PocketRow {
    /// The mark.
    pub mark: String,
    /// Its target.
    pub target: String,
    /// The target's revision.
    pub revision: u32,
    /// Which side of the step, where one is near: both are printed.
    pub side: Option<StepSide>,
    /// What to dig to.
    pub dig_to: Length,
    /// What the rod reads when the ground is there: a rod that reads less stands on high ground.
    pub grade_rod: Length,
    /// Allowed high and low.
    pub tolerance: Tolerance,
    /// Whether this laser can shoot it.
    pub shot: Shot,
}

/// The sheets; none while there is no site or no day.
pub fn view(state: &State) -> Option<Pocket> {
    let site = state.site()?;
    Some(Pocket {
        site: site.name.clone(),
        day: state.day.as_ref()?.id.clone(),
        seq: state.seq,
        at: state.at,
        sheets: state
            .set_ups
            .iter()
            .filter(|set_up| !set_up.closed)
            .map(|set_up| sheet(site, set_up))
            .collect(),
    })
}

fn sheet(site: &Site, set_up: &SetUp) -> PocketSheet {
    let rod = site
        .rods
        .iter()
        .map(|rod| rod.length)
        .max()
        .unwrap_or(Length::ZERO);
    PocketSheet {
        set_up: set_up.id.clone(),
        laser: set_up.laser.clone(),
        height: set_up.height(),
        benchmark: set_up
            .basis()
            .map(|basis| basis.benchmark.clone())
            .unwrap_or_default(),
        state: set_up.state.clone(),
        rod,
        rows: site
            .marks
            .iter()
            .flat_map(|mark| rows(site, set_up, mark, rod))
            .collect(),
    }
}

/// One row, or both sides of a step that is near.
fn rows(site: &Site, set_up: &SetUp, mark: &Mark, rod: Length) -> Vec<PocketRow> {
    let Some(target) = site.target_of(mark) else {
        return vec![];
    };
    let sides = match target.grade.dig_to(mark.place) {
        Ok(DigTo::At(dig_to)) => vec![(None, dig_to)],
        Ok(DigTo::NearStep { before, after, .. }) => vec![
            (Some(StepSide::Before), before),
            (Some(StepSide::After), after),
        ],
        Err(_) => vec![],
    };
    let height = set_up.height_at(mark.place);
    sides
        .into_iter()
        .flat_map(|(side, dig_to)| {
            pocket_sheet::rows(height, rod, [(mark.id.as_str(), dig_to)])
                .into_iter()
                .map(move |row| (side, row))
        })
        .map(|(side, row)| PocketRow {
            mark: row.mark,
            target: target.id.clone(),
            revision: target.revision,
            side,
            dig_to: row.dig_to,
            grade_rod: row.grade_rod,
            tolerance: target.tolerance,
            shot: row.shot,
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use day::given::{Crew, len};

    /// HI 105.00: the pad's dig-to is 100.00, the run's 98.00 and 97.00 (invented).
    #[test]
    fn every_mark_has_its_grade_rod_and_a_step_has_both() {
        let crew = Crew::digging();
        let pocket = view(&crew.state).unwrap();
        let [sheet] = &pocket.sheets[..] else {
            panic!("one set-up stands")
        };
        assert_eq!(sheet.height, len("105.00 ft"));
        let rods = |mark: &str| -> Vec<(Option<StepSide>, Length)> {
            sheet
                .rows
                .iter()
                .filter(|row| row.mark == mark)
                .map(|row| (row.side, row.grade_rod))
                .collect()
        };
        assert_eq!(rods("P-1"), [(None, len("5.00 ft"))]);
        assert_eq!(
            rods("R-4"),
            [
                (Some(StepSide::Before), len("7.00 ft")),
                (Some(StepSide::After), len("8.00 ft"))
            ]
        );
        assert_eq!(rods("S-1"), [], "no target, nothing to print");
    }
}
