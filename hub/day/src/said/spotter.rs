//! A spotter: somebody on the ground who has nothing to do but to watch one machine and what is round it. The cab names them.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::overtaken;
use crate::refusal::Refusal;
use crate::said::machine;
use crate::said::way_in::notice::NoticeLink;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::{Time, When};
use crate::way_in::step::LinkNoticed;

/// A ground person spots for a machine, in the place of whoever did.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct BeSpotter {
    /// Which.
    pub machine: String,
}

impl Saying for BeSpotter {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        be(at.state, at.by, self, at.when)
    }
}

/// A machine has a spotter.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SpotterSet {
    /// Which machine.
    pub machine: String,
    /// Who.
    pub person: String,
    /// On which phone.
    pub device: String,
}

impl Happening for SpotterSet {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_set(state, entry, self);
    }
}

/// Nobody spots for a machine any more.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct EndSpotter {
    /// Which.
    pub machine: String,
}

impl Saying for EndSpotter {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        end(at.state, at.by, self, at.when)
    }
}

/// A machine has no spotter any more.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SpotterGone {
    /// Which machine.
    pub machine: String,
    /// Who spotted.
    pub person: String,
}

impl Happening for SpotterGone {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_gone(state, self);
    }
}

/// Who spots for a machine.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct SpotterCard {
    /// Who.
    pub person: String,
    /// On which phone.
    pub device: String,
    /// Since when.
    pub since: Time,
    /// Since when the phone's link is gone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lost: Option<Time>,
}

pub(crate) fn be(
    state: &State,
    by: &By,
    asked: &BeSpotter,
    when: When,
) -> Result<Vec<Body>, Refusal> {
    machine::known(state, &asked.machine)?;
    overtaken::in_time(when)?;
    let of = |cab: &crate::state::Cab| cab.spotter.as_ref().map(|one| one.device.clone());
    let now = state.cabs.get(&asked.machine).and_then(of);
    if now.as_ref() == Some(&by.device) {
        return Ok(vec![]);
    }
    // Two machines can't be watched at once.
    let elsewhere = state
        .cabs
        .iter()
        .filter(|(_, cab)| of(cab).as_ref() == Some(&by.device));
    let mut bodies: Vec<Body> = elsewhere
        .map(|(machine, _)| gone(machine, &by.person))
        .collect();
    bodies.push(Body::SpotterSet(SpotterSet {
        machine: asked.machine.clone(),
        person: by.person.clone(),
        device: by.device.clone(),
    }));
    Ok(bodies)
}

pub(crate) fn end(
    state: &State,
    by: &By,
    asked: &EndSpotter,
    when: When,
) -> Result<Vec<Body>, Refusal> {
    machine::known(state, &asked.machine)?;
    let cab = state.cabs.get(&asked.machine);
    let Some(spotter) = cab.and_then(|cab| cab.spotter.as_ref()) else {
        return Ok(vec![]);
    };
    // Who took over since is not sent away by an older word.
    overtaken::after(
        when,
        Some(spotter.since),
        words::spotter::somebody_spots_for_machine_since(),
    )?;
    if spotter.device != by.device && !by.is(Role::Supervisor) {
        return Err(Refusal::NotAllowed {
            roles: vec![Role::Supervisor],
            machine: None,
        });
    }
    Ok(vec![gone(&asked.machine, &spotter.person)])
}

fn gone(machine: &str, person: &str) -> Body {
    Body::SpotterGone(SpotterGone {
        machine: machine.to_owned(),
        person: person.to_owned(),
    })
}

/// The link of a spotter's phone is lost, or back.
pub(crate) fn link(state: &State, asked: &NoticeLink) -> Option<Body> {
    let mut spotters = state.cabs.values().filter_map(|cab| cab.spotter.as_ref());
    let spotter =
        spotters.find(|one| one.device == asked.device && one.lost.is_some() != asked.lost)?;
    Some(Body::LinkNoticed(LinkNoticed {
        device: asked.device.clone(),
        person: spotter.person.clone(),
        lost: asked.lost,
    }))
}

pub(crate) fn apply_set(state: &mut State, entry: &Entry, body: &SpotterSet) {
    state.cab_mut(&body.machine).spotter = Some(SpotterCard {
        person: body.person.clone(),
        device: body.device.clone(),
        since: entry.at,
        lost: None,
    });
}

pub(crate) fn apply_gone(state: &mut State, body: &SpotterGone) {
    state.cab_mut(&body.machine).spotter = None;
}

pub(crate) fn apply_link(state: &mut State, entry: &Entry, body: &LinkNoticed) {
    let spotters = state
        .cabs
        .values_mut()
        .filter_map(|cab| cab.spotter.as_mut());
    for spotter in spotters.filter(|one| one.device == body.device) {
        spotter.lost = body.lost.then_some(entry.at);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, operator, supervisor};
    use crate::said::join::{Join, RemovePhone};
    use earthwork::words::ScreenUnit;
    use words::Language;

    fn be(machine: &str) -> Command {
        let machine = machine.into();
        Command::BeSpotter(BeSpotter { machine })
    }

    fn end(machine: &str) -> Command {
        let machine = machine.into();
        Command::EndSpotter(EndSpotter { machine })
    }

    fn on_the_cab(crew: &Crew, machine: &str) -> Option<SpotterCard> {
        crew.state.cabs[machine].spotter.clone()
    }

    #[test]
    fn a_spotter_is_named_in_the_cab_and_watches_one_machine() {
        let mut crew = Crew::digging();
        assert!(matches!(
            crew.says(&operator("EX-1"), be("EX-1")),
            Err(Refusal::NotAllowed { .. })
        ));
        crew.says(&ground(), be("EX-1")).unwrap();
        assert_eq!(on_the_cab(&crew, "EX-1").unwrap().person, "RT");
        crew.says(&ground(), be("EX-2")).unwrap();
        assert_eq!(on_the_cab(&crew, "EX-1"), None);
        assert_eq!(on_the_cab(&crew, "EX-2").unwrap().person, "RT");
        crew.says(&supervisor(), end("EX-2")).unwrap();
        assert_eq!(on_the_cab(&crew, "EX-2"), None);
    }

    #[test]
    fn a_spotter_whose_phone_is_silent_or_removed_is_not_taken_for_one_who_watches() {
        let mut crew = Crew::digging();
        let join = Join {
            device: "g1".into(),
            token_digest: String::new(),
            person: "RT".into(),
            roles: vec![Role::Ground],
            machine: None,
            language: Language::English,
            unit: ScreenUnit::Tenths,
            same_person: false,
            handset: None,
        };
        crew.says(&By::hub(), Command::Join(join)).unwrap();
        crew.says(&ground(), be("EX-1")).unwrap();
        let link = |lost| {
            Command::NoticeLink(NoticeLink {
                device: "g1".into(),
                lost,
            })
        };
        crew.says(&By::hub(), link(true)).unwrap();
        let entries = crew.log.len();
        assert_eq!(on_the_cab(&crew, "EX-1").unwrap().lost, Some(crew.now));
        crew.says(&By::hub(), link(true)).unwrap();
        assert_eq!(crew.log.len(), entries, "said once");
        crew.says(&By::hub(), link(false)).unwrap();
        assert_eq!(on_the_cab(&crew, "EX-1").unwrap().lost, None);
        let device = "g1".into();
        crew.says(&supervisor(), Command::RemovePhone(RemovePhone { device }))
            .unwrap();
        assert_eq!(on_the_cab(&crew, "EX-1"), None);
    }
}
