//! The cards of laser set-ups and of what failed checks put in doubt, for the ground person and the supervisor.

use contract::ToSchema;
use earthwork::laser::check_due::Due;
use earthwork::length::Length;
use serde::Serialize;

use crate::views::parts::Named;
use day::said::check_due;
use day::said::set_up::LaserSlope;
use day::said::suspect::SuspectMark;
use day::state::{CheckCard, SetUp, SetUpState, State, TestedLaser};
use day::time::Time;

/// A laser set-up.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct SetUpCard {
    /// Its name, such as `S1`.
    pub id: String,
    /// The laser.
    pub laser: String,
    /// Height of instrument.
    pub height: Length,
    /// How its plane is sloped; level without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub slope: Option<LaserSlope>,
    /// Benchmarks that agreed before it was proven, when it is sloped.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub good_on: Vec<String>,
    /// The benchmark of the backsight.
    pub benchmark: String,
    /// Where it stands, when told.
    pub place: Option<earthwork::point::Point>,
    /// Whether it may be used, and what is owed when it may not.
    pub state: SetUpState,
    /// The last check shot.
    pub last_check: Option<CheckCard>,
    /// Readings since the last good check.
    pub readings_since_check: u32,
    /// The last shot that proved it.
    pub good_at: Option<Time>,
    /// When the next check falls due by the clock, while it may be used.
    pub check_by: Option<Time>,
    /// A check is due: why, and since when.
    pub due: Option<DueCard>,
    /// What the newest test of its laser found.
    pub tested: Option<TestedLaser>,
}

/// A check of the laser that is due. The cab is never told.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct DueCard {
    /// Why.
    pub why: Due,
    /// Since when.
    pub since: Time,
}

/// What a failed check or a bump put in doubt.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct SuspectCard {
    /// Which set-up.
    pub set_up: String,
    /// The last good check.
    pub from: Time,
    /// The benchmark shot that ends it; none while there was none.
    pub to: Option<Time>,
    /// What that shot missed by.
    pub residual: Option<Length>,
    /// How many readings it holds.
    pub readings: u32,
    /// The last repeat that fits a laser not yet moved.
    pub held_at: Option<Time>,
    /// The first repeat that fits a laser already moved.
    pub moved_by: Option<Time>,
    /// Marks to shoot again, in walking order; one that was shot again has left.
    pub shoot_again: Vec<SuspectMark>,
    /// Marks that stand either way, and earlier acceptances that stand.
    pub stand: Vec<SuspectMark>,
}

impl Named for SetUpCard {
    fn name(&self) -> String {
        self.id.clone()
    }
}

/// The set-ups that are not closed.
pub(crate) fn set_ups(state: &State) -> Vec<SetUpCard> {
    state
        .set_ups
        .iter()
        .filter(|set_up| !set_up.closed)
        .map(|set_up: &SetUp| SetUpCard {
            id: set_up.id.clone(),
            laser: set_up.laser.clone(),
            height: set_up.height(),
            slope: set_up.slope,
            good_on: set_up.good_on.clone(),
            benchmark: set_up
                .basis()
                .map(|basis| basis.benchmark.clone())
                .unwrap_or_default(),
            place: set_up.place,
            state: set_up.state.clone(),
            last_check: set_up.last_check.clone(),
            readings_since_check: set_up.readings_since_check,
            good_at: set_up.good_at,
            check_by: check_due::moments(state, set_up).map(|(due, _)| due),
            due: set_up.due.map(|(why, since)| DueCard { why, since }),
            tested: set_up.tested,
        })
        .collect()
}

/// What failed checks and bumps of the day put in doubt, in the order in which they came.
pub(crate) fn suspects(state: &State) -> Vec<SuspectCard> {
    state
        .suspects
        .iter()
        .map(|suspect| {
            let window = &suspect.window;
            let marks = |owed: bool| -> Vec<SuspectMark> {
                window
                    .marks
                    .iter()
                    .filter(|mark| mark.standing.is_owed() == owed)
                    .filter(|mark| !owed || suspect.open.contains(&mark.mark))
                    .cloned()
                    .collect()
            };
            SuspectCard {
                set_up: window.set_up.clone(),
                from: window.from,
                to: window.to,
                residual: window.residual,
                readings: window.readings,
                held_at: window.held_at,
                moved_by: window.moved_by,
                shoot_again: marks(true),
                stand: marks(false),
            }
        })
        .collect()
}

/// Whether a set-up that still stands is in doubt.
pub(crate) fn in_doubt(state: &State, set_up: &str) -> bool {
    state
        .set_up(set_up)
        .is_some_and(|set_up| !set_up.closed && matches!(set_up.state, SetUpState::InDoubt { .. }))
}
