//! The ground person's screen: the machines, the laser, the last reading on each mark, what the rod must read.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::level;
use earthwork::uncertainty::DoubtParts;
use serde::Serialize;

use crate::views::account::{self, GroundAccount};
use crate::views::cuts::{self, CutsCard};
use crate::views::laser_cards::{self, SetUpCard, SuspectCard};
use crate::views::machine_card::{self, MachineCard};
use crate::views::mark_card::{self, MarkCard};
use crate::views::parts::{Each, Named, screen};
use crate::views::start::{self, StartCard};
use day::cuts::held;
use day::going::{self, GoingMark};
use day::said::blind::{self, OwnDoubt};
use day::said::pump::WaterNow;
use day::said::rain::RainNow;
use day::said::reading::{self, Joinable};
use day::site::{Mark, Site, UnsettledHigh};
use day::state::{SetUp, State};
use day::time::Time;

/// What the ground phones show; the same for all of them.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[schema(as = GroundView)]
pub struct Ground {
    /// The job.
    pub site: String,
    /// The day.
    pub day: String,
    /// What was last said of the rain.
    pub rain: RainNow,
    /// Water that stands, in the order of its newest words.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub water: Vec<WaterNow>,
    /// One card for each machine.
    pub machines: Vec<MachineCard>,
    /// The laser set-ups of the day that are not closed, newest last.
    pub set_ups: Vec<SetUpCard>,
    /// The last reading on each mark that has one.
    pub marks: Vec<MarkCard>,
    /// What a shot at each mark would take, for each usable set-up.
    pub shots: Vec<Shot>,
    /// How well people read whose blind pairs tell it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub own_doubts: Vec<OwnDoubt>,
    /// What stays too close to call on the high side after two shots is trimmed.
    pub trims: bool,
    /// Loads, patches, tests, who is needed next.
    pub account: GroundAccount,
    /// What a failed check or a bump put in doubt, while marks are still to be shot again or the laser is in doubt.
    pub suspects: Vec<SuspectCard>,
    /// The marks that machines are about to take, and the ties to take first.
    pub going: Vec<GoingMark>,
    /// Cuts and what is buried.
    pub cuts: CutsCard,
    /// The start of the day.
    pub start: StartCard,
    /// When the day was closed: no call goes out any more.
    pub closed: Option<Time>,
}

/// What a shot at a mark would take: enough for the page to say the call before it is sent.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct Shot {
    /// The mark.
    pub mark: String,
    /// The set-up.
    pub set_up: String,
    /// The height of the laser's plane over the mark.
    pub height: Length,
    /// What the rod must read at grade (HI − dig-to); none near a step or without a target.
    pub grade_rod: Option<Length>,
    /// What is known of its doubt before it is read.
    pub doubt: DoubtParts,
    /// How many times the doubt the guard band is.
    pub guard_factor: f64,
    /// How height turns into distance square to a cut face; 1 elsewhere.
    pub square: f64,
    /// Earlier readings that it would be averaged with, newest first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub before: Vec<Joinable>,
    /// What holds a call there back: a reading is kept as a spot elevation.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub held: Option<reading::SpotReason>,
}

screen! {
    /// The view of the ground phones; none while there is no site or no day.
    Ground(state, site, day) {}
    field Seldom site: site.name.clone(),
    field Seldom day: day.id.clone(),
    field Seldom rain: state.rain.clone(),
    maybe Seldom water: state.cuts.water.clone(),
    list Always machines(alike): machine_card::cards(state),
    list Marks set_ups(alike): laser_cards::set_ups(state),
    each Marks marks(alike): mark_card::cards(state, site),
    each Marks shots: shots(state, site),
    maybe Marks own_doubts: blind::own_doubts(state),
    field Seldom trims: site.rules.unsettled_high == UnsettledHigh::Trim,
    card Spare account: account::ground(state),
    list Always going: going::going(state),
    card Marks cuts: cuts::card(state, false),
    card Seldom start: start::card(state),
    field Seldom closed: state.record.closed.as_ref().map(|closed| closed.at),
    field Marks suspects: suspects(state),
}

/// Those that somebody still has to do something about.
fn suspects(state: &State) -> Vec<SuspectCard> {
    laser_cards::suspects(state)
        .into_iter()
        .filter(|card| !card.shoot_again.is_empty() || laser_cards::in_doubt(state, &card.set_up))
        .collect()
}

impl Named for GoingMark {
    fn name(&self) -> String {
        format!("{} {}", self.machine, self.mark)
    }
}

/// A shot at each mark from each set-up that may be used.
fn shots<'a>(state: &'a State, site: &'a Site) -> Each<'a, (&'a Mark, &'a SetUp), Shot> {
    let set_ups = state.set_ups.iter();
    let usable: Vec<&SetUp> = set_ups.filter(|set_up| set_up.usable()).collect();
    let marks = site.marks.iter();
    let keys = marks.flat_map(|mark| usable.iter().map(move |set_up| (mark, *set_up)));
    Each {
        keys: keys.collect(),
        mark: |(mark, _)| &mark.id,
        name: |(mark, set_up)| format!("{} {}", set_up.id, mark.id),
        one: Box::new(|(mark, set_up)| {
            let target = site.target_of(mark)?;
            let dig_to = reading::dig_to(target, mark, None).ok();
            let height = set_up.height_at(mark.place);
            Some(Shot {
                mark: mark.id.clone(),
                set_up: set_up.id.clone(),
                height,
                grade_rod: dig_to.map(|dig_to| level::grade_rod(height, dig_to)),
                doubt: reading::parts(site, set_up, mark),
                guard_factor: target.guard_factor,
                square: target.grade.square_to_face(mark.place),
                before: reading::joinable(state, set_up, &mark.id, target),
                held: held::at_mark(state, &mark.id).map(|held| held.spot()),
            })
        }),
    }
}
