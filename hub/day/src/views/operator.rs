//! The cab's screen: one call, or why there is none.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::said::set_up::DoubtReason;
use crate::site::MachineShape;
use crate::state::{Cab, Call, State};
use crate::time::Time;
use crate::views::call::{self, CallState, CallView, Ending};
use crate::views::ground::SetUpState;

/// What one machine's screen shows.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[schema(as = OperatorView)]
pub struct Operator {
    /// The job.
    pub site: String,
    /// The day.
    pub day: String,
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
}

/// What fills the cab's screen. Anything but a live call shows no number.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum CabScreen {
    /// Stand still, bucket down. Only a supervisor lifts it.
    Stop {
        /// Who pressed.
        by: String,
        /// Why, in the words of the one who pressed; may be empty.
        why: String,
        /// Since when.
        since: Time,
        /// Every machine, not this one alone.
        all: bool,
    },
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
        /// Since when.
        since: Time,
    },
    /// Nothing has been called.
    NoCall,
}

/// The screen of one machine; none while there is no site, no day, or no such machine.
pub fn view(state: &State, machine: &str) -> Option<Operator> {
    let site = state.site()?;
    let here = site.machine(machine)?;
    let cab = state.cabs.get(machine)?;
    let works_on = here
        .works_on
        .iter()
        .filter_map(|id| site.target(id))
        .map(|target| target.name.clone())
        .collect();
    Some(Operator {
        site: site.name.clone(),
        day: state.day.as_ref()?.id.clone(),
        machine: here.id.clone(),
        shape: here.shape,
        works_on,
        direction: here.direction.clone(),
        device: cab.device.clone(),
        screen: screen(state, cab),
        look_asked_at: cab.look_asked_at,
    })
}

/// The gravest thing first: a stop hides a pause, a pause hides a call.
fn screen(state: &State, cab: &Cab) -> CabScreen {
    if let Some(stop) = &cab.stop {
        return CabScreen::Stop {
            by: stop.by.clone(),
            why: stop.why.clone(),
            since: stop.since,
            all: stop.all,
        };
    }
    if let Some((set_up, since)) = &cab.paused
        && let Some(SetUpState::InDoubt { why, .. }) =
            state.set_up(set_up).map(|set_up| &set_up.state)
    {
        return CabScreen::Pause {
            set_up: set_up.clone(),
            why: why.clone(),
            since: *since,
        };
    }
    if let Some(must) = &cab.must_see {
        let name = state
            .site()
            .and_then(|site| site.target(&must.target))
            .map_or_else(|| must.target.clone(), |target| target.name.clone());
        return CabScreen::NewTarget {
            target: must.target.clone(),
            name,
            revision: must.revision,
            since: must.since,
        };
    }
    if let Some((id, call)) = cab.live.and_then(|id| Some((id, state.calls.get(&id)?))) {
        return CabScreen::Call {
            call: Box::new(call::view(id, call)),
        };
    }
    match cab.last.and_then(|id| state.calls.get(&id)) {
        Some(call) => ended(call),
        None => CabScreen::NoCall,
    }
}

/// What is left of a call that has ended: gone quietly, or said to be old.
fn ended(call: &Call) -> CabScreen {
    let CallState::Ended { how } = call.state else {
        return CabScreen::NoCall;
    };
    match how {
        Ending::GradeRanOut | Ending::Done | Ending::Refused | Ending::Ruled => CabScreen::NoCall,
        why => CabScreen::Old {
            mark: call.sent.mark.clone(),
            why,
            since: call.ended_at.unwrap_or(call.sent_at),
        },
    }
}
