//! A machine's card, for the ground person and the supervisor.

use contract::ToSchema;
use earthwork::keep_out::{PLACE_TOO_OLD_MS, keep_out_radius};
use earthwork::length::Length;
use serde::Serialize;

use crate::views::call::{self, CallView};
use crate::views::parts::Named;
use crate::views::way_in::{self, WayInCard};
use day::keep_out;
use day::near::{self, Near};
use day::said::call::CantCard;
use day::said::machine::PlaceCard;
use day::said::slew::SlewCard;
use day::said::spotter::SpotterCard;
use day::said::stop::StopCard;
use day::site::MachineShape;
use day::state::{Cab, Screen, State};
use day::time::Time;

/// A machine as the ground person and the supervisor see it.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
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
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
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

impl Named for MachineCard {
    fn name(&self) -> String {
        self.id.clone()
    }
}

/// One card for each machine of the site.
pub(crate) fn cards(state: &State) -> Vec<MachineCard> {
    let Some(site) = state.site() else {
        return vec![];
    };
    let idle = Cab::default();
    site.machines
        .iter()
        .map(|machine| {
            let cab = state.cabs.get(&machine.id).unwrap_or(&idle);
            let call = cab.last.and_then(|id| Some((id, state.calls.get(&id)?)));
            MachineCard {
                id: machine.id.clone(),
                shape: machine.shape,
                works_on: machine.works_on.clone(),
                call: call.map(|(id, call)| call::view(state, id, call)),
                in_view: day::cab::number_in_view(state, &machine.id),
                mute: day::cab::is_mute(state, &machine.id),
                screen: screen(state, cab),
                stop: cab.stop.clone(),
                paused_by: cab.paused.as_ref().map(|(set_up, _)| set_up.clone()),
                must_see: cab.must_see.as_ref().map(|must| must.target.clone()),
                look_asked_at: cab.look_asked_at,
                cant: cab.cant.clone(),
                place: cab.place.clone(),
                keep_out: keep_out_radius(&machine.reach),
                marks_within: keep_out::marks_within(state, &machine.id),
                beyond_reach: keep_out::beyond_reach(state, &machine.id),
                place_old_at: cab
                    .place
                    .as_ref()
                    .map(|place| place.since.plus_ms(PLACE_TOO_OLD_MS)),
                is_about: keep_out::is_about(state, &machine.id),
                way_in: way_in::at(state, &machine.id),
                near: near::unsettled(state, &machine.id),
                slews: state
                    .slews
                    .iter()
                    .filter(|one| one.names(&machine.id))
                    .cloned()
                    .collect(),
                spotter: cab.spotter.clone(),
                battery_low: cab.battery_low,
            }
        })
        .collect()
}

fn screen(state: &State, cab: &Cab) -> ScreenCard {
    let person = cab
        .device
        .as_deref()
        .and_then(|device| state.device(device))
        .map(|device| device.person.clone());
    match (person, cab.screen) {
        (None, _) | (_, Screen::None) => ScreenCard::None,
        (Some(person), Screen::Showing) => ScreenCard::Showing { person },
        (Some(person), Screen::Hidden(since)) => ScreenCard::Hidden { person, since },
        (Some(person), Screen::Lost(since)) => ScreenCard::Lost { person, since },
    }
}
