//! Phones come in by a code, change their language, and are removed.

use contract::ToSchema;
use earthwork::words::ScreenUnit;
use serde::{Deserialize, Serialize};
use words::{Fixed, Language};

use crate::asked::{By, Role};
use crate::call::Ending;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::said::call;
use crate::said::person;
use crate::saying::{Asking, Closed, Saying};
use crate::state::{Device, Screen, State};
use crate::time::Time;

/// The hub lets somebody in who showed a valid code.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Join {
    /// The name that the hub gave the device.
    pub device: String,
    /// SHA-256 of the device's cookie, in hex; the cookie itself is never written down.
    pub token_digest: String,
    /// Name or initials.
    pub person: String,
    /// Roles that the code allows.
    pub roles: Vec<Role>,
    /// The machine, for an operator.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
    /// The screen's language.
    pub language: Language,
    /// The screen's unit.
    pub unit: ScreenUnit,
    /// Whoever joins has said: I am the same person as the one of that name, on another phone.
    #[serde(default)]
    pub same_person: bool,
    /// The device that this same phone was until now, by the cookie that it showed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub handset: Option<String>,
}

impl Saying for Join {
    const BY: &'static [Role] = &[Role::Hub];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        join(at.state, self, at.when.now)
    }
}

/// A phone came in.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Joined {
    /// The device.
    pub device: String,
    /// SHA-256 of its cookie, in hex.
    pub token_digest: String,
    /// Name or initials.
    pub person: String,
    /// Its roles.
    pub roles: Vec<Role>,
    /// Its machine.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
    /// Its language.
    pub language: Language,
    /// Its unit.
    pub unit: ScreenUnit,
    /// The device that was this machine's screen until now.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub retires: Option<String>,
    /// The device of the same name; whoever joined said that they are that person.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub same_as: Option<String>,
    /// The device that this same phone was until now.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub handset: Option<String>,
}

impl Happening for Joined {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_joined(state, entry, self);
    }
}

/// Language and unit of the asker's own screen.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ChangeScreen {
    /// The language.
    pub language: Language,
    /// The unit.
    pub unit: ScreenUnit,
}

impl Saying for ChangeScreen {
    const BY: &'static [Role] = &[
        Role::Ground,
        Role::Operator,
        Role::Supervisor,
        Role::Visitor,
    ];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        change_screen(at.state, at.by, self)
    }
}

/// A screen's language or unit changed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ScreenChanged {
    /// The device.
    pub device: String,
    /// The language.
    pub language: Language,
    /// The unit.
    pub unit: ScreenUnit,
}

impl Happening for ScreenChanged {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_screen(state, self);
    }
}

/// A supervisor removes a phone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RemovePhone {
    /// Which.
    pub device: String,
}

impl Saying for RemovePhone {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        remove(at.state, self)
    }
}

/// A phone was removed: its cookie opens nothing any more.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PhoneRemoved {
    /// Which.
    pub device: String,
}

impl Happening for PhoneRemoved {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_removed(state, self);
    }
}

/// Nobody needs a longer name than this on a screen at arm's length.
const LONGEST_NAME: usize = 24;

pub(crate) fn join(state: &State, asked: &Join, now: Time) -> Result<Vec<Body>, Refusal> {
    let bad = |text: Fixed| Refusal::BadJoin(text.into());
    if state.day.is_none() {
        return Err(Refusal::NoDay);
    }
    let person = asked.person.trim();
    if person.is_empty() {
        return Err(bad(words::join::type_your_name_or_initials()));
    }
    if person.chars().count() > LONGEST_NAME || person.chars().any(char::is_control) {
        return Err(bad(words::join::that_name_is_too_long()));
    }
    if person.eq_ignore_ascii_case("hub") {
        return Err(bad(words::join::log_calls_laptop_hub()));
    }
    if asked.roles.is_empty() || asked.roles.contains(&Role::Hub) {
        return Err(bad(words::join::pick_what_you_do_this()));
    }
    let (person, same_as) = person::named(state, person, asked)?;
    let operates = asked.roles.contains(&Role::Operator);
    let retires = match &asked.machine {
        Some(machine) if operates => {
            let site = state.site().ok_or(Refusal::NoSite)?;
            if site.machine(machine).is_none() {
                return Err(Refusal::Unknown {
                    what: Thing::Machine,
                    name: machine.clone(),
                });
            }
            person::takes_the_cab(state, machine, asked.handset.as_deref(), now)?
        }
        None if operates => {
            return Err(bad(words::join::pick_machine_this_phone_sits()));
        }
        _ => None,
    };
    let mut bodies = Vec::new();
    if let Some(machine) = asked.machine.as_deref().filter(|_| operates) {
        // What an old screen showed, or none, was never seen on this one: the last call comes back as old.
        bodies.extend(call::end_live(state, machine, Ending::NewScreen));
    }
    bodies.push(Body::Joined(Joined {
        device: asked.device.clone(),
        token_digest: asked.token_digest.clone(),
        person,
        roles: asked.roles.clone(),
        machine: asked.machine.clone().filter(|_| operates),
        language: asked.language,
        unit: asked.unit,
        retires,
        same_as,
        handset: asked
            .handset
            .clone()
            .filter(|old| state.devices.contains_key(old)),
    }));
    Ok(bodies)
}

pub(crate) fn change_screen(
    state: &State,
    by: &By,
    asked: &ChangeScreen,
) -> Result<Vec<Body>, Refusal> {
    let device = known(state, &by.device)?;
    if (device.language, device.unit) == (asked.language, asked.unit) {
        return Ok(vec![]);
    }
    Ok(vec![Body::ScreenChanged(ScreenChanged {
        device: by.device.clone(),
        language: asked.language,
        unit: asked.unit,
    })])
}

pub(crate) fn remove(state: &State, asked: &RemovePhone) -> Result<Vec<Body>, Refusal> {
    known(state, &asked.device)?;
    Ok(vec![Body::PhoneRemoved(PhoneRemoved {
        device: asked.device.clone(),
    })])
}

pub(crate) fn known<'a>(state: &'a State, device: &str) -> Result<&'a Device, Refusal> {
    state.device(device).ok_or_else(|| Refusal::Unknown {
        what: Thing::Phone,
        name: device.to_owned(),
    })
}

pub(crate) fn apply_joined(state: &mut State, entry: &Entry, body: &Joined) {
    if let Some(old) = body
        .retires
        .as_deref()
        .and_then(|old| state.devices.get_mut(old))
    {
        old.removed = true;
    }
    if let Some(before) = &body.handset {
        let (now, person) = (&body.device, &body.person);
        state.way_in.came_again(before, now, person);
    }
    // A phone that stayed in and has joined anew has said who holds it.
    if let Some(before) = body
        .handset
        .as_deref()
        .and_then(|before| state.devices.get_mut(before))
        .filter(|before| before.asks_who)
    {
        before.removed = true;
    }
    state.devices.insert(
        body.device.clone(),
        Device {
            person: body.person.clone(),
            roles: body.roles.clone(),
            machine: body.machine.clone(),
            language: body.language,
            unit: body.unit,
            token_digest: body.token_digest.clone(),
            since: entry.at,
            removed: false,
            handset: body.handset.clone(),
            confirmed_by: None,
            stays: false,
            asks_who: false,
        },
    );
    if let Some(machine) = &body.machine {
        let cab = state.cab_mut(machine);
        cab.device = Some(body.device.clone());
        cab.battery_low = None;
        cab.given_at = None;
        // Until its page reports itself, nobody has seen it show.
        cab.screen = Screen::Hidden(entry.at);
    }
}

pub(crate) fn apply_screen(state: &mut State, body: &ScreenChanged) {
    if let Some(device) = state.devices.get_mut(&body.device) {
        device.language = body.language;
        device.unit = body.unit;
    }
}

pub(crate) fn apply_removed(state: &mut State, body: &PhoneRemoved) {
    if let Some(device) = state.devices.get_mut(&body.device) {
        device.removed = true;
    }
    for cab in state.cabs.values_mut() {
        if cab.device.as_deref() == Some(&body.device) {
            cab.device = None;
            cab.screen = Screen::None;
        }
        if let Some(spotter) = &cab.spotter
            && spotter.device == body.device
        {
            cab.spotter = None;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, operator, supervisor};
    use crate::said::person::GiveCab;

    fn joins(device: &str, person: &str, roles: &[Role], machine: Option<&str>) -> Command {
        Command::Join(Join {
            device: device.into(),
            token_digest: String::new(),
            person: person.into(),
            roles: roles.to_vec(),
            machine: machine.map(Into::into),
            language: Language::English,
            unit: ScreenUnit::Tenths,
            same_person: false,
            handset: None,
        })
    }

    #[test]
    fn a_new_phone_in_the_cab_retires_the_old_one_and_its_number_is_old() {
        let mut crew = Crew::digging();
        crew.reads("P-1", "4.70").unwrap();
        let give = Command::GiveCab(GiveCab {
            machine: "EX-1".into(),
        });
        crew.says(&operator("EX-1"), give).unwrap();
        crew.says(
            &By::hub(),
            joins("m3", "OW", &[Role::Operator], Some("EX-1")),
        )
        .unwrap();
        assert!(crew.state.device("m1").is_none());
        assert_eq!(crew.state.cabs["EX-1"].device.as_deref(), Some("m3"));
        assert!(crew.state.live_call("EX-1").is_none());
    }

    #[test]
    fn names_roles_and_machines_that_can_not_be_are_refused() {
        let mut crew = Crew::opened();
        let long = "x".repeat(25);
        let bad = [
            joins("d", "  ", &[Role::Ground], None),
            joins("d", &long, &[Role::Ground], None),
            joins("d", "A\u{7}", &[Role::Ground], None),
            joins("d", "RT", &[], None),
            joins("d", "RT", &[Role::Hub], None),
            joins("d", "RT", &[Role::Operator], None),
            joins("d", "RT", &[Role::Operator], Some("EX-9")),
        ];
        for command in bad {
            assert!(
                crew.says(&By::hub(), command.clone()).is_err(),
                "{command:?}"
            );
        }
    }

    #[test]
    fn a_removed_phone_is_gone_from_its_cab() {
        let mut crew = Crew::digging();
        let remove = RemovePhone {
            device: "m1".into(),
        };
        crew.says(&supervisor(), Command::RemovePhone(remove))
            .unwrap();
        assert!(crew.state.device("m1").is_none());
        assert_eq!(crew.state.cabs["EX-1"].device, None);
    }
}
