//! Phones that stay in over the night, by a supervisor's word. In the morning each says who holds it before it says anything else.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::{Asked, By, Command, Role};
use crate::call::Ending;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::Refusal;
use crate::said::join::known;
use crate::said::{call, person};
use crate::saying::{Asking, Closed, Saying};
use crate::state::{Screen, State};
use crate::time::Time;

/// A supervisor lets a phone stay in over the night, or not any more.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LetStay {
    /// Which.
    pub device: String,
    /// Whether it stays.
    pub stays: bool,
}

impl Saying for LetStay {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        let_stay(at.state, self)
    }
}

/// Whether a phone stays in over the night.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PhoneStays {
    /// Which.
    pub device: String,
    /// Whose.
    pub person: String,
    /// Whether it stays.
    pub stays: bool,
}

impl Happening for PhoneStays {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_stays(state, self);
    }
}

/// In the morning: whoever holds the phone is the one that it names, or somebody else.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayWho {
    /// The name that the page showed.
    pub person: String,
    /// The same person; else somebody else, who joins by a code.
    pub same: bool,
}

impl Saying for SayWho {
    const BY: &'static [Role] = &[
        Role::Ground,
        Role::Operator,
        Role::Supervisor,
        Role::Visitor,
    ];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        say_who(at.state, at.by, self, at.when.now)
    }
}

/// Who holds a phone that stayed in.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct WhoSaid {
    /// Which.
    pub device: String,
    /// Who was asked for.
    pub person: String,
    /// It is that person; else the phone is out.
    pub same: bool,
    /// The machine whose screen it is again.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
}

impl Happening for WhoSaid {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_who(state, entry, self);
    }
}

/// Refuses what a phone that stayed in says before it has said who holds it. A stop is never refused; what was said on the day
/// before and comes now was said by whoever had it then.
pub(crate) fn pass(state: &State, asked: &Asked) -> Result<(), Refusal> {
    let Some(phone) = state.device(&asked.by.device).filter(|one| one.asks_who) else {
        return Ok(());
    };
    let free = matches!(
        asked.command,
        Command::StopAll(_) | Command::SayWho(_) | Command::ChangeScreen(_)
    );
    let before = state.day.as_ref().is_some_and(|day| asked.made_at < day.at);
    if free || before {
        return Ok(());
    }
    Err(Refusal::SayWho {
        person: phone.person.clone(),
    })
}

pub(crate) fn let_stay(state: &State, asked: &LetStay) -> Result<Vec<Body>, Refusal> {
    let device = known(state, &asked.device)?;
    if device.stays == asked.stays {
        return Ok(vec![]);
    }
    Ok(vec![Body::PhoneStays(PhoneStays {
        device: asked.device.clone(),
        person: device.person.clone(),
        stays: asked.stays,
    })])
}

pub(crate) fn say_who(
    state: &State,
    by: &By,
    asked: &SayWho,
    now: Time,
) -> Result<Vec<Body>, Refusal> {
    let device = known(state, &by.device)?;
    if !device.asks_who || device.person != asked.person {
        return Ok(vec![]);
    }
    if asked.same
        && let Some(machine) = &device.machine
    {
        machine_waits(state, machine, &by.device, now)?;
    }
    let machine = device.machine.as_deref().filter(|_| asked.same);
    // What it has not seen since yesterday comes as old, as on a phone that is new in the cab.
    let ended = machine.and_then(|machine| call::end_live(state, machine, Ending::NewScreen));
    let mut bodies: Vec<Body> = ended.into_iter().collect();
    bodies.push(Body::WhoSaid(WhoSaid {
        device: by.device.clone(),
        person: device.person.clone(),
        same: asked.same,
        machine: machine.map(str::to_owned),
    }));
    Ok(bodies)
}

/// The cab has no other screen meanwhile, and the site still has the machine.
fn machine_waits(state: &State, machine: &str, device: &str, now: Time) -> Result<(), Refusal> {
    crate::said::machine::known(state, machine)?;
    person::takes_the_cab(state, machine, Some(device), now).map(|_| ())
}

pub(crate) fn apply_stays(state: &mut State, body: &PhoneStays) {
    if let Some(device) = state.devices.get_mut(&body.device) {
        device.stays = body.stays;
    }
}

pub(crate) fn apply_who(state: &mut State, entry: &Entry, body: &WhoSaid) {
    let Some(device) = state.devices.get_mut(&body.device) else {
        return;
    };
    device.asks_who = false;
    if !body.same {
        device.removed = true;
        return;
    }
    device.since = entry.at;
    if let Some(machine) = &body.machine {
        let cab = state.cab_mut(machine);
        let old = cab.device.replace(body.device.clone());
        cab.battery_low = None;
        cab.given_at = None;
        cab.screen = Screen::Hidden(entry.at);
        if let Some(old) = old.filter(|old| *old != body.device)
            && let Some(old) = state.devices.get_mut(&old)
        {
            old.removed = true;
        }
    }
}

#[cfg(test)]
mod tests;
