//! The supervisor closes the day. What is missing is named, and closed over only with words; nobody closes over people.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::call::Ending;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::open::{OpenItem, open};
use crate::record::Dated;
use crate::record::missing::{CloseMissing, missing, unproven};
use crate::refusal::Refusal;
use crate::said::{call, suspect};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::Time;

/// A supervisor closes the day.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CloseDay {
    /// What is missing and closed over all the same, each with its reason.
    #[serde(default)]
    pub overrides: Vec<CloseOverride>,
    /// A word about the day; may be empty.
    #[serde(default)]
    pub words: String,
}

impl Saying for CloseDay {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        close(at.state, self)
    }
}

/// Something missing that the day is closed over.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CloseOverride {
    /// What.
    pub missing: CloseMissing,
    /// Why.
    pub why: String,
}

/// The day was closed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct DayClosed {
    /// Which.
    pub day: String,
    /// What was missing, each with its reason.
    pub overrides: Vec<CloseOverride>,
    /// Set-ups without a closing check: every reading on them since then is not proven.
    pub unproven: Vec<ClosedUnproven>,
    /// What stays open.
    pub open: Vec<OpenItem>,
    /// Nothing was read and nothing was called on it.
    pub empty: bool,
    /// A word about it.
    pub words: String,
}

impl Happening for DayClosed {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_closed(state, entry, self);
    }
}

/// A set-up that was closed without a check.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct ClosedUnproven {
    /// Which.
    pub set_up: String,
    /// Its last good check; none when there was none.
    pub since: Option<Time>,
}

/// The last word of a day on the laser: live calls end, readings without a check behind them are said to be unproven.
pub(crate) fn close(state: &State, asked: &CloseDay) -> Result<Vec<Body>, Refusal> {
    let day = state.day.as_ref().ok_or(Refusal::NoDay)?;
    if asked.overrides.iter().any(|one| one.why.trim().is_empty()) {
        return Err(Refusal::say_why(words::close::why_day_closed_without()));
    }
    let missing = missing(state);
    let named = |one: &CloseMissing| asked.overrides.iter().any(|over| over.missing == *one);
    let left: Vec<CloseMissing> = missing
        .iter()
        .filter(|one| !one.may_be_overridden() || !named(one))
        .cloned()
        .collect();
    if !left.is_empty() {
        return Err(Refusal::NotReadyToClose { missing: left });
    }
    let overrides = asked.overrides.iter();
    let overrides = overrides.filter(|over| missing.contains(&over.missing));
    let closed = DayClosed {
        day: day.id.clone(),
        overrides: overrides
            .map(|over| CloseOverride {
                missing: over.missing.clone(),
                why: over.why.trim().to_owned(),
            })
            .collect(),
        unproven: state
            .set_ups
            .iter()
            .filter(|set_up| unproven(set_up))
            .map(|set_up| ClosedUnproven {
                set_up: set_up.id.clone(),
                since: set_up.good_at,
            })
            .collect(),
        open: open(state),
        empty: is_empty(state),
        words: asked.words.trim().to_owned(),
    };
    let machines = state.cabs.keys();
    let mut bodies: Vec<Body> = machines
        .filter_map(|machine| call::end_live(state, machine, Ending::DayClosed))
        .collect();
    let usable = state.set_ups.iter();
    let usable = usable.filter(|set_up| set_up.usable() && unproven(set_up));
    bodies.extend(usable.filter_map(|set_up| suspect::window(state, set_up, None)));
    bodies.push(Body::DayClosed(closed));
    Ok(bodies)
}

/// Whether nothing was read and nothing was called today.
fn is_empty(state: &State) -> bool {
    state.readings.is_empty() && state.calls.is_empty()
}

pub(crate) fn apply_closed(state: &mut State, entry: &Entry, body: &DayClosed) {
    state.record.closed = Some(Dated::of(entry, body));
}
