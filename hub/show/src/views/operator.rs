//! The cab's screen: one call, or why there is none.

use contract::ToSchema;
use earthwork::length::Length;
use serde::Serialize;

use crate::views::call::{self, CallView};
use crate::views::parts::screen;
use crate::views::way_in::{self, OnFootCard, WayInCard};
use day::cab::{self, Fills};
use day::call::Ending;
use day::cuts::buried::{self, Crossing};
use day::cuts::held::HeldBy;
use day::cuts::strip;
use day::near::{self, Near};
use day::said::face_alarm::AlarmWhy;
use day::said::rain::RainNow;
use day::said::set_up::DoubtReason;
use day::said::slew::SlewCard;
use day::said::spotter::SpotterCard;
use day::said::stand::{self, StandCard};
use day::said::struck::{self, StruckCard};
use day::site::{Machine, MachineShape, Site};
use day::state::{Cab, State};
use day::time::Time;
use words::Text;

/// A buried line this near to where a machine digs stands on its screen (common practice).
const NEAR_BAND: Length = Length::from_hundredths_of_a_foot(1_500);

/// What one machine's screen shows.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[schema(as = OperatorView)]
pub struct Operator {
    /// The job.
    pub site: String,
    /// The day.
    pub day: String,
    /// What was last said of the rain.
    pub rain: RainNow,
    /// The machine.
    pub machine: String,
    /// Its shape.
    pub shape: MachineShape,
    /// The names of the targets that it works on.
    pub works_on: Vec<String>,
    /// The direction of work, as the crew says it.
    pub direction: String,
    /// The device that is this machine's screen; any other page for this machine is retired.
    pub device: Option<String>,
    /// What fills the screen.
    pub screen: CabScreen,
    /// Since when the operator has been asking for a look.
    pub look_asked_at: Option<Time>,
    /// Faces that were left: nobody under them.
    pub faces_left: Vec<FaceStrip>,
    /// Lines that were struck or met.
    pub struck: Vec<StruckCard>,
    /// Stretches near by that are dug by hand.
    pub hand_dig: Vec<Crossing>,
    /// Who asks to come in and who is in.
    pub way_in: WayInCard,
    /// The other machines with a screen, and what whoever sits in this cab has asked of them on foot.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub on_foot: Vec<OnFootCard>,
    /// What is near it and not settled, from where it was last said to stand.
    pub near: Vec<Near>,
    /// What was proposed or agreed with other machines.
    pub slews: Vec<SlewCard>,
    /// Who spots for it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub spotter: Option<SpotterCard>,
    /// Since when this phone's battery was said to be low.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub battery_low: Option<Time>,
    /// Where it was last said to stand; none for a machine that the site has no more.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stand: Option<StandCard>,
}

/// A face that was left.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct FaceStrip {
    /// Which.
    pub zone: String,
    /// The name that people read.
    pub name: String,
    /// Why.
    pub why: AlarmWhy,
    /// Since when.
    pub since: Time,
    /// Nobody nearer to its toe than this.
    pub strip: Length,
}

/// What fills the cab's screen. Anything but a live call shows no number.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum CabScreen {
    /// Stand still, bucket down. Only a supervisor lifts it.
    Stop {
        /// The entry of the newest press: what sounds again.
        press: u64,
        /// Who pressed.
        by: String,
        /// Why, in the words of the one who pressed; may be empty.
        why: String,
        /// Since when.
        since: Time,
        /// Every machine, not this one alone.
        all: bool,
    },
    /// The machine may be under a face that is left: track back, then press.
    LeaveFace {
        /// The alarm that I AM AWAY names.
        alarm: u64,
        /// Which.
        zone: String,
        /// The name that people read.
        name: String,
        /// Why.
        why: AlarmWhy,
        /// Since when.
        since: Time,
    },
    /// Somebody asks to come in, or is in: stand still, bucket down. See `way_in`.
    WayIn,
    /// The laser is in doubt: the number is withdrawn.
    Pause {
        /// Which set-up.
        set_up: String,
        /// Why.
        why: DoubtReason,
        /// Since when.
        since: Time,
    },
    /// The target changed under a live call: press SEEN.
    NewTarget {
        /// Its id, for the SEEN press.
        target: String,
        /// Its name.
        name: String,
        /// Its revision.
        revision: u32,
        /// Since when.
        since: Time,
    },
    /// The live call.
    Call {
        /// The call.
        call: Box<CallView>,
    },
    /// The last call is too old or was withdrawn: its number is removed, not greyed.
    Old {
        /// The mark it was about.
        mark: Option<String>,
        /// Why.
        why: Ending,
        /// What holds the work there, when that ended it.
        #[serde(skip_serializing_if = "Option::is_none")]
        held: Option<Text>,
        /// Since when.
        since: Time,
    },
    /// The site has this machine no more: nothing is called to it, and STOP still shows.
    OffSite,
    /// Nothing has been called.
    NoCall,
}

screen! {
    /// The screen of one machine, also of one that the site has no more; none while there is no site, no day, or never was
    /// such a machine.
    Operator(state, site, day, machine: &str) {
        let cab = state.cabs.get(machine);
        let here = site.machine(machine).or(cab.was.as_ref());
    }
    field Always site: site.name.clone(),
    field Always day: day.id.clone(),
    field Always rain: state.rain.clone(),
    field Always machine: here.id.clone(),
    field Always shape: here.shape,
    field Always works_on: works_on(site, here),
    field Always direction: here.direction.clone(),
    field Always device: cab.device.clone(),
    field Always screen: screen(state, machine),
    field Always look_asked_at: cab.look_asked_at,
    field Always faces_left: faces_left(state, site),
    field Always struck: struck::cards(state),
    field Always hand_dig: hand_dig(state, here, cab),
    field Always way_in: way_in::at(state, machine),
    maybe Always on_foot: way_in::on_foot(state, site, machine, cab.device.as_deref()),
    field Always near: near::in_the_cab(state, machine),
    field Always slews: slews(state, machine),
    maybe Always spotter: cab.spotter.clone(),
    maybe Always battery_low: cab.battery_low,
    maybe Always stand: site.machine(machine).map(|_| stand::card(site, cab)),
}

/// The names of the targets that a machine works on.
fn works_on(site: &Site, machine: &Machine) -> Vec<String> {
    let targets = machine.works_on.iter().filter_map(|id| site.target(id));
    targets.map(|target| target.name.clone()).collect()
}

fn slews(state: &State, machine: &str) -> Vec<SlewCard> {
    let slews = state.slews.iter().filter(|one| one.names(machine));
    slews.cloned().collect()
}

fn screen(state: &State, machine: &str) -> CabScreen {
    match cab::fills(state, machine) {
        Fills::Stop(stop) => CabScreen::Stop {
            press: stop.press,
            by: stop.by.clone(),
            why: stop.why.clone(),
            since: stop.since,
            all: stop.all,
        },
        Fills::LeaveFace { zone, alarm, must } => CabScreen::LeaveFace {
            alarm: must.alarm,
            zone: zone.id.clone(),
            name: zone.name.clone(),
            why: alarm.why.clone(),
            since: must.since,
        },
        Fills::WayIn => CabScreen::WayIn,
        Fills::OffSite => CabScreen::OffSite,
        Fills::Pause { set_up, why, since } => CabScreen::Pause {
            set_up: set_up.to_owned(),
            why: why.clone(),
            since,
        },
        Fills::NewTarget(must) => {
            let target = state.site().and_then(|site| site.target(&must.target));
            CabScreen::NewTarget {
                target: must.target.clone(),
                name: target.map_or_else(|| must.target.clone(), |target| target.name.clone()),
                revision: must.revision,
                since: must.since,
            }
        }
        Fills::Call(id, call) => CabScreen::Call {
            call: Box::new(call::view(state, id, call)),
        },
        Fills::Old { call, why } => CabScreen::Old {
            mark: call.sent.mark.clone(),
            why,
            held: call.held.as_ref().map(HeldBy::text),
            since: call.ended_at.unwrap_or(call.sent_at),
        },
        Fills::NoCall => CabScreen::NoCall,
    }
}

pub(crate) fn faces_left(state: &State, site: &Site) -> Vec<FaceStrip> {
    let left = site.cuts.faces.iter().filter_map(|zone| {
        let alarm = state.cuts.face(&zone.id)?.alarm.as_ref()?;
        Some(FaceStrip {
            zone: zone.id.clone(),
            name: zone.name.clone(),
            why: alarm.why.clone(),
            since: alarm.since,
            strip: strip::highest(state, zone),
        })
    });
    left.collect()
}

/// Stretches of this machine's own trenches within 15 ft of where it was last told to dig.
fn hand_dig(state: &State, machine: &Machine, cab: &Cab) -> Vec<Crossing> {
    let near = |crossing: &Crossing| {
        let place = cab
            .last_mark
            .as_deref()
            .and_then(|mark| strip::place_of(state, mark));
        let away = place.map(|place| place.distance(crossing.at));
        away.is_none_or(|away| away <= NEAR_BAND)
    };
    buried::crossings(state)
        .into_iter()
        .filter(|crossing| {
            let target = crossing.target.as_ref();
            target.is_some_and(|target| machine.works_on.contains(target))
        })
        .filter(near)
        .collect()
}
