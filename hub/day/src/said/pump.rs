//! Water is pumped out of a cut. It ends the water that was said there, and frees nothing.
//!
//! Water in an excavation asks for an inspection by the competent person (29 CFR 1926.651(h)). The ground that stood in it is
//! softer than when it was tested: soil tests and inspections of it are void ([`crate::said::void`]), and the faces over it owe an
//! inspection made after it. What water lowered the class of the soil by stays: only an inspection picks a class.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::cuts::now::{FaceWord, InspectionWhy};
use crate::cuts::plan::FaceZone;
use crate::cuts::strip;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::overtaken;
use crate::refusal::{Refusal, Thing};
use crate::said::call::{CantCard, CantReason};
use crate::saying::{Asking, Closed, Saying};
use crate::site::{Mark, Site};
use crate::state::State;
use crate::time::{Time, When};

/// Where water stands, as it was said.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum WaterAt {
    /// Under a face or in a trench.
    Face {
        /// Which.
        zone: String,
    },
    /// At the mark of the call that a cab could not dig.
    Mark {
        /// Which.
        mark: String,
    },
    /// Where a machine digs, when no call said at which mark.
    Cab {
        /// Which machine.
        machine: String,
    },
}

impl WaterAt {
    /// Where a cab could not dig for it.
    pub(crate) fn of_the_cab(machine: &str, mark: Option<&str>) -> Self {
        match mark {
            Some(mark) => Self::Mark { mark: mark.into() },
            None => Self::Cab {
                machine: machine.into(),
            },
        }
    }

    /// The name that a person reads.
    pub fn name(&self) -> &str {
        match self {
            Self::Face { zone } => zone,
            Self::Mark { mark } => mark,
            Self::Cab { machine } => machine,
        }
    }
}

/// Water that stands. It outlives the day: water does.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct WaterNow {
    /// Where.
    pub at: WaterAt,
    /// The newest word that it stands there: what PUMPED OUT names.
    pub water: u64,
    /// Since when, by the first word.
    pub since: Time,
    /// Who said the newest word.
    pub by: String,
}

/// Somebody has pumped it out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayPumped {
    /// Where.
    pub at: WaterAt,
    /// The newest word that the page showed of water there: see [`WaterNow::water`].
    pub water: u64,
}

impl Saying for SayPumped {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        pumped(at.state, self, at.when)
    }
}

/// Water was pumped out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct WaterPumped {
    /// Where.
    pub at: WaterAt,
    /// The word that it stood there which this one answers.
    pub water: u64,
    /// The faces and trenches that owe an inspection because of it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub faces: Vec<String>,
    /// The marks whose ground is taken to have stood in it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub marks: Vec<String>,
}

impl Happening for WaterPumped {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_pumped(state, entry, self);
    }
}

/// It is about the water that the page showed, and about this moment: whoever sees it come back says nothing while a page still
/// shows it.
fn pumped(state: &State, asked: &SayPumped, when: When) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    if state.day.is_none() {
        return Err(Refusal::NoDay);
    }
    let Some(stands) = state.cuts.water.iter().find(|one| one.at == asked.at) else {
        return known(site, &asked.at).map(|()| vec![]);
    };
    overtaken::in_time(when)?;
    if stands.water != asked.water {
        return Err(overtaken::overtaken(
            words::pump::somebody_said_that_water_stands(),
        ));
    }
    let marks: Vec<&Mark> = under(state, site, &asked.at);
    let over = |zone: &&FaceZone| {
        let named = asked.at
            == WaterAt::Face {
                zone: zone.id.clone(),
            };
        let holds = |mark: &&Mark| strip::within(state, zone, mark.place).is_some();
        strip::is_dug(zone, strip::highest(state, zone)) && (named || marks.iter().any(holds))
    };
    let faces = site.cuts.faces.iter().filter(over);
    Ok(vec![Body::WaterPumped(WaterPumped {
        at: asked.at.clone(),
        water: asked.water,
        faces: faces.map(|zone| zone.id.clone()).collect(),
        marks: marks.iter().map(|mark| mark.id.clone()).collect(),
    })])
}

fn known(site: &Site, at: &WaterAt) -> Result<(), Refusal> {
    let (found, what) = match at {
        WaterAt::Face { zone } => (site.cuts.face(zone).is_some(), Thing::Face),
        WaterAt::Mark { mark } => (site.mark(mark).is_some(), Thing::Mark),
        WaterAt::Cab { machine } => (site.machine(machine).is_some(), Thing::Machine),
    };
    if found {
        return Ok(());
    }
    Err(Refusal::Unknown {
        what,
        name: at.name().to_owned(),
    })
}

/// The marks whose ground is taken to have stood in it. Nobody says how far it reached: under a face it is the strip and all that
/// is dug along that toe; where a cab named no mark, all that it digs.
fn under<'a>(state: &State, site: &'a Site, at: &WaterAt) -> Vec<&'a Mark> {
    let stood = |mark: &&Mark| match at {
        WaterAt::Mark { mark: only } => mark.id == *only,
        WaterAt::Face { zone } => site.cuts.face(zone).is_some_and(|zone| {
            let along = mark.target.is_some() && mark.target == zone.target;
            along || strip::within(state, zone, mark.place).is_some()
        }),
        WaterAt::Cab { machine } => site.machine(machine).is_some_and(|machine| {
            let target = mark.target.as_ref();
            target.is_some_and(|target| machine.works_on.contains(target))
        }),
    };
    site.marks.iter().filter(stood).collect()
}

/// Somebody says that water stands there.
pub(crate) fn stands(state: &mut State, entry: &Entry, at: WaterAt) {
    let water = &mut state.cuts.water;
    let since = water.iter().find(|one| one.at == at);
    let since = since.map_or(entry.at, |one| one.since);
    water.retain(|one| one.at != at);
    water.push(WaterNow {
        at,
        water: entry.seq,
        since,
        by: entry.by.person.clone(),
    });
}

fn apply_pumped(state: &mut State, entry: &Entry, body: &WaterPumped) {
    state.cuts.water.retain(|one| one.at != body.at);
    for (machine, cab) in &mut state.cabs {
        let answered = |cant: &CantCard| {
            let at = WaterAt::of_the_cab(machine, cant.mark.as_deref());
            cant.why == CantReason::Water && at == body.at
        };
        if cab.cant.as_ref().is_some_and(answered) {
            cab.cant = None;
        }
    }
    let word = FaceWord {
        entry: entry.seq,
        at: entry.at,
    };
    for face in &body.faces {
        state.cuts.owes(face, InspectionWhy::Water, word);
    }
    for mark in &body.marks {
        state.cuts.pumped.insert(mark.clone(), entry.at);
    }
}

#[cfg(test)]
mod tests;
