//! The ground person's screen: the machines, the laser, the last reading on each mark, what the rod must read.

use earthwork::laser::check_due::Due;
use earthwork::length::Length;
use earthwork::level;
use earthwork::tolerance::Verdict;
use earthwork::uncertainty::DoubtParts;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::views::account::{self, GroundAccount};
use crate::views::call::CallView;
use crate::views::cards;
use crate::views::cuts::{self, CutsCard};
use crate::views::parts::{Each, Named, screen};
use crate::views::start::{self, StartCard};
use crate::views::way_in::WayInCard;
use day::cuts::held;
use day::going::{self, GoingMark};
use day::last::StillCounts;
use day::near::Near;
use day::said::blind::{self, OwnDoubt};
use day::said::call::CantCard;
use day::said::machine::PlaceCard;
use day::said::pump::WaterNow;
use day::said::rain::RainNow;
use day::said::reading::{self, Joinable};
use day::said::set_up::LaserSlope;
use day::said::slew::SlewCard;
use day::said::spotter::SpotterCard;
use day::said::stop::StopCard;
use day::said::suspect::SuspectMark;
use day::site::{MachineShape, Mark, Site, UnsettledHigh};
use day::state::{CheckCard, SetUp, SetUpState, State, TestedLaser};
use day::time::Time;

/// What the ground phones show; the same for all of them.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
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

/// A machine as the ground person and the supervisor see it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct MachineCard {
    /// The machine.
    pub id: String,
    /// Its shape.
    pub shape: MachineShape,
    /// The targets that it works on.
    pub works_on: Vec<String>,
    /// The last call, live or ended.
    pub call: Option<CallView>,
    /// Its screen.
    pub screen: ScreenCard,
    /// The number of its live call stands there, with nothing graver in its place and no panel over it.
    pub in_view: bool,
    /// Nobody has tapped its page since it was loaded: it can make no sound.
    pub mute: bool,
    /// Stopped: by whom, why, since when.
    pub stop: Option<StopCard>,
    /// The set-up in doubt that has paused it.
    pub paused_by: Option<String>,
    /// The target that its operator has yet to see.
    pub must_see: Option<String>,
    /// Since when its operator has been asking for a look.
    pub look_asked_at: Option<Time>,
    /// What the operator last said that they can't do, while it stands.
    pub cant: Option<CantCard>,
    /// Where it was last declared to stand.
    pub place: Option<PlaceCard>,
    /// Its keep-out radius.
    pub keep_out: Length,
    /// The marks within it, from where the machine was last said to stand.
    pub marks_within: Vec<String>,
    /// How far the mark of its live call lies beyond its reach, from where it was last said to stand.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub beyond_reach: Option<Length>,
    /// From when on the declared place is too old to judge by: then its own marks count as within, and all of them when it is about.
    pub place_old_at: Option<Time>,
    /// It is at work today, as far as anybody has said: while its place is old or unknown, every mark counts as within.
    pub is_about: bool,
    /// Who asks to come in and who is in.
    pub way_in: WayInCard,
    /// What is near it, from where it was last said to stand.
    pub near: Vec<Near>,
    /// What was proposed or agreed with other machines.
    pub slews: Vec<SlewCard>,
    /// Who spots for it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub spotter: Option<SpotterCard>,
    /// Since when the battery of its phone is low: soon it is hands.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub battery_low: Option<Time>,
}

/// Whether anyone can see what is called.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ScreenCard {
    /// No phone has joined for this machine.
    None,
    /// Its page is visible and its link alive.
    Showing {
        /// Who sits there.
        person: String,
    },
    /// Its page is hidden or locked.
    Hidden {
        /// Who sits there.
        person: String,
        /// Since when.
        since: Time,
    },
    /// Its link is gone: hand signals.
    Lost {
        /// Who sits there.
        person: String,
        /// Since when.
        since: Time,
    },
}

/// A laser set-up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
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
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct DueCard {
    /// Why.
    pub why: Due,
    /// Since when.
    pub since: Time,
}

/// What a failed check or a bump put in doubt.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
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

/// The last reading on a mark.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct MarkCard {
    /// The mark.
    pub id: String,
    /// The entry of the reading.
    pub reading: u64,
    /// Measured elevation.
    pub elevation: Length,
    /// Measured − target; none for a spot elevation, and none when it does not count any more.
    pub dev: Option<Length>,
    /// The verdict; none for a spot elevation, and none when it does not count any more.
    pub verdict: Option<Verdict>,
    /// What a supervisor ruled on it, while it stands.
    pub ruling: Option<day::said::rule::Ruling>,
    /// Two shots were too close on the low side: the supervisor rules.
    pub needs_ruling: bool,
    /// When it was made.
    pub at: Time,
    /// Who took it.
    pub by: String,
    /// On which set-up.
    pub set_up: String,
    /// The day on which it was made, when that is not this day.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub day: Option<String>,
    /// Whether it still speaks for the mark, and why not.
    pub counts: StillCounts,
    /// Measured − target as it was booked, when it does not count any more.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub was: Option<Length>,
}

/// What a shot at a mark would take: enough for the page to say the call before it is sent.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
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
    list Always machines(alike): cards::machines(state),
    list Marks set_ups(alike): cards::set_ups(state),
    each Marks marks(alike): cards::marks(state, site),
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
    cards::suspects(state)
        .into_iter()
        .filter(|card| !card.shoot_again.is_empty() || cards::in_doubt(state, &card.set_up))
        .collect()
}

impl Named for MachineCard {
    fn name(&self) -> String {
        self.id.clone()
    }
}

impl Named for GoingMark {
    fn name(&self) -> String {
        format!("{} {}", self.machine, self.mark)
    }
}

impl Named for SetUpCard {
    fn name(&self) -> String {
        self.id.clone()
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
