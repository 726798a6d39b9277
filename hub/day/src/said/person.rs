//! Who somebody is: a name is one person's for the day, and a phone is that person's once a supervisor on another phone says so.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::Refusal;
use crate::said::join::{Join, known};
use crate::said::machine;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::{Time, minutes, seconds};
use crate::way_in::Phase;

/// A cab that was given away takes a new phone for so long: long enough to scan a code, too short to be forgotten.
const GIVEN_FOR_MS: i64 = minutes(10);
/// Giving a cab away is about this moment: a press that was on its way for longer is pressed again.
const TOO_LATE_MS: i64 = seconds(10);

/// The cab is given to whichever phone scans its code next: by its own operator, or by a supervisor.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct GiveCab {
    /// Which machine's.
    pub machine: String,
}

impl Saying for GiveCab {
    const BY: &'static [Role] = &[Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        give(at.state, at.by, self, at.when.now.ms_since(at.when.made_at))
    }
}

/// A cab waits for another phone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CabGiven {
    /// Which machine's.
    pub machine: String,
}

impl Happening for CabGiven {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_given(state, entry.at, self);
    }
}

/// A supervisor has looked whose hands another phone is in, and says that it is the one that its name tells.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ConfirmPerson {
    /// Which phone.
    pub device: String,
    /// The name that the supervisor read beside it.
    pub person: String,
}

impl Saying for ConfirmPerson {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        confirm(at.state, at.by, self)
    }
}

/// A supervisor has confirmed whose phone it is. It holds for the day.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PersonConfirmed {
    /// Which phone.
    pub device: String,
    /// Whose.
    pub person: String,
}

impl Happening for PersonConfirmed {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_confirmed(state, &entry.by, self);
    }
}

/// The letters and digits of a name, small: "R.T." and "rt" are one name to whoever hears it.
fn heard(name: &str) -> String {
    let plain = name.chars().filter(|c| c.is_alphanumeric());
    plain.flat_map(char::to_lowercase).collect()
}

/// Somebody of that name who is known already.
struct Namesake {
    person: String,
    device: String,
    since: Time,
    inside: Option<String>,
}

/// The name under which whoever joins goes, and the device of the same person, when they have said that it is theirs.
///
/// # Errors
/// [`Refusal::SameName`] when somebody has that name already and the asker has not said to be that person.
pub(crate) fn named(
    state: &State,
    typed: &str,
    asked: &Join,
) -> Result<(String, Option<String>), Refusal> {
    let own = asked
        .handset
        .as_deref()
        .and_then(|own| state.devices.get(own));
    if let Some(own) = own.filter(|own| heard(&own.person) == heard(typed)) {
        return Ok((own.person.clone(), None));
    }
    let Some(one) = namesake(state, typed, asked.handset.as_deref()) else {
        return Ok((typed.to_owned(), None));
    };
    if asked.same_person {
        return Ok((one.person, Some(one.device)));
    }
    Err(Refusal::SameName {
        another: free_name(state, typed),
        person: one.person,
        since: one.since,
        inside: one.inside,
    })
}

/// Another phone of the day under that name, else somebody of that name who has asked or is in since an earlier day.
fn namesake(state: &State, typed: &str, handset: Option<&str>) -> Option<Namesake> {
    let name = heard(typed);
    let mine = |device: &str| handset.is_some_and(|own| same_handset(state, own, device));
    let visits = || {
        let gates = state.way_in.gates();
        gates.flat_map(|(machine, gate)| gate.visits().map(move |(_, visit)| (machine, visit)))
    };
    let inside = visits()
        .find(|(_, visit)| visit.stage.may_be_in() && heard(&visit.person) == name)
        .map(|(machine, _)| machine.clone());
    let phones = state
        .devices
        .iter()
        .filter(|(id, device)| heard(&device.person) == name && !mine(id));
    if let Some((id, device)) = phones.max_by_key(|(_, device)| (!device.removed, device.since)) {
        return Some(Namesake {
            person: device.person.clone(),
            device: id.clone(),
            since: device.since,
            inside,
        });
    }
    let mut old =
        visits().filter(|(_, visit)| heard(&visit.person) == name && !mine(&visit.device));
    old.next().map(|(_, visit)| Namesake {
        person: visit.person.clone(),
        device: visit.device.clone(),
        since: visit.since,
        inside,
    })
}

/// The first of "JM 2", "JM 3", … that nobody has.
fn free_name(state: &State, typed: &str) -> String {
    let kept: String = typed.chars().take(20).collect();
    let mut names = (2_u32..).map(|number| format!("{} {number}", kept.trim_end()));
    names
        .find(|name| namesake(state, name, None).is_none())
        .unwrap_or_default()
}

/// Whether two devices are one phone that came in twice.
pub(crate) fn same_handset(state: &State, one: &str, other: &str) -> bool {
    first_of(state, one) == first_of(state, other)
}

/// The device that a phone was when it first came in. A chain is never longer than there are phones.
fn first_of<'a>(state: &'a State, device: &'a str) -> &'a str {
    let mut first = device;
    for _ in 0..=state.devices.len() {
        match state
            .devices
            .get(first)
            .and_then(|one| one.handset.as_deref())
        {
            Some(before) => first = before,
            None => break,
        }
    }
    first
}

/// The phone that a new one in the cab retires. A code that is scanned elsewhere does not take a cab: its operator or a
/// supervisor gives it away first, and never while its bucket is held down, or somebody asks or may be in. The phone that is
/// the cab's screen already may come in again.
///
/// # Errors
/// [`Refusal::CabHeld`], [`Refusal::CabTaken`].
pub(crate) fn takes_the_cab(
    state: &State,
    machine: &str,
    handset: Option<&str>,
    now: Time,
) -> Result<Option<String>, Refusal> {
    let cab = state.cabs.get(machine);
    let Some(old) = cab.and_then(|cab| cab.device.clone()) else {
        return Ok(None);
    };
    if handset.is_some_and(|own| same_handset(state, own, &old)) {
        return Ok(Some(old));
    }
    let person = state
        .devices
        .get(&old)
        .map(|device| device.person.clone())
        .unwrap_or_default();
    if state.way_in.gate(machine).phase() != Phase::Working {
        return Err(Refusal::CabHeld {
            machine: machine.to_owned(),
            person,
        });
    }
    let given = cab.and_then(|cab| cab.given_at);
    if given.is_none_or(|at| now.ms_since(at) > GIVEN_FOR_MS) {
        return Err(Refusal::CabTaken {
            machine: machine.to_owned(),
            person,
        });
    }
    Ok(Some(old))
}

pub(crate) fn give(
    state: &State,
    by: &By,
    asked: &GiveCab,
    age_ms: i64,
) -> Result<Vec<Body>, Refusal> {
    machine::known(state, &asked.machine)?;
    if !by.is(Role::Supervisor) && by.machine.as_ref() != Some(&asked.machine) {
        return Err(Refusal::NotAllowed {
            roles: vec![],
            machine: Some(asked.machine.clone()),
        });
    }
    if age_ms > TOO_LATE_MS {
        return Err(Refusal::PressedTooLate);
    }
    Ok(vec![Body::CabGiven(CabGiven {
        machine: asked.machine.clone(),
    })])
}

pub(crate) fn confirm(state: &State, by: &By, asked: &ConfirmPerson) -> Result<Vec<Body>, Refusal> {
    let device = known(state, &asked.device)?;
    if device.person != asked.person || device.asks_who {
        return Err(Refusal::HeldBack(
            words::person::phone_goes_by_another_name().into(),
        ));
    }
    if same_handset(state, &by.device, &asked.device) || by.person == device.person {
        return Err(Refusal::HeldBack(
            words::person::nobody_confirms_themselves().into(),
        ));
    }
    if device.confirmed_by.is_some() {
        return Ok(vec![]);
    }
    Ok(vec![Body::PersonConfirmed(PersonConfirmed {
        device: asked.device.clone(),
        person: device.person.clone(),
    })])
}

/// The asker, who must be one of the competent persons that the site file names, on a phone that a supervisor has confirmed.
pub(crate) fn competent(state: &State, by: &By) -> Result<(), Refusal> {
    let named = state
        .site()
        .map(|site| site.cuts.competent.clone())
        .unwrap_or_default();
    if !named.contains(&by.person) {
        return Err(Refusal::NotCompetent { named });
    }
    let phone = state.device(&by.device);
    if phone.is_none_or(|phone| phone.confirmed_by.is_none()) {
        return Err(Refusal::NotConfirmed {
            person: by.person.clone(),
        });
    }
    Ok(())
}

/// Whether whoever has this phone can be taken for somebody else than the person who went in with that one, since then: it is
/// another phone, which was in before that, or which a supervisor has confirmed.
pub(crate) fn known_since(state: &State, witness: &str, visitor: &str, since: Time) -> bool {
    let Some(phone) = state.device(witness) else {
        return false;
    };
    let before = phone.since <= since || phone.confirmed_by.is_some();
    before && !same_handset(state, witness, visitor)
}

pub(crate) fn apply_given(state: &mut State, at: Time, body: &CabGiven) {
    state.cab_mut(&body.machine).given_at = Some(at);
}

pub(crate) fn apply_confirmed(state: &mut State, by: &By, body: &PersonConfirmed) {
    if let Some(device) = state.devices.get_mut(&body.device) {
        device.confirmed_by = Some(by.person.clone());
    }
}

#[cfg(test)]
mod tests;
