//! An inspection: asked for, made with what was shown and what came of it, signed by whoever inspected.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::point::Point;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::built::{self, BuiltMark};
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::record::{Dated, Inspection};
use crate::refusal::{Refusal, Thing};
pub use crate::said::signature::Signature;
use crate::saying::{Asking, Closed, Saying};
use crate::site::Site;
use crate::state::State;
use crate::time::{Time, When};

/// A supervisor asks for an inspection.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AskInspection {
    /// What is to be inspected, such as `footing trench`.
    pub what: String,
    /// Who is asked: an office or a name.
    pub of: String,
    /// The targets that it is about.
    #[serde(default)]
    pub targets: Vec<String>,
}

impl Saying for AskInspection {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        ask(at.state, self)
    }
}

/// An inspection was asked for.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct InspectionAsked {
    /// What is to be inspected.
    pub what: String,
    /// Who is asked.
    pub of: String,
    /// The targets that it is about.
    pub targets: Vec<String>,
}

impl Happening for InspectionAsked {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_asked(state, entry, self);
    }
}

/// An inspection was made; a supervisor writes down what came of it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Inspect {
    /// The entry that asked for it; none when nobody had.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub asked: Option<u64>,
    /// What was inspected; as asked for when left out.
    #[serde(default)]
    pub what: String,
    /// The targets that were looked at; as asked for when left out. It is void when the ground there changes.
    #[serde(default)]
    pub targets: Vec<String>,
    /// Who inspected.
    pub inspector: String,
    /// What was shown, and what was found of each.
    pub items: Vec<InspectedItem>,
    /// What came of it.
    pub result: InspectionResult,
    /// In the inspector's words.
    pub words: String,
    /// On which conditions; empty for none.
    #[serde(default)]
    pub conditions: String,
    /// The inspector's signature, when it was drawn on this phone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub signature: Option<Signature>,
}

impl Saying for Inspect {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        inspect(at.state, self, at.when)
    }
}

/// A mark as it was when it was inspected.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct LookedAt {
    /// The mark.
    pub mark: String,
    /// Where it is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place: Option<Point>,
    /// The ground there, by its last reading.
    pub elevation: Length,
    /// That reading.
    pub reading: u64,
}

/// Something that was shown at an inspection.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct InspectedItem {
    /// What: a target, marks, a record.
    pub what: String,
    /// What was found: a value or words.
    pub found: String,
}

/// What came of an inspection.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum InspectionResult {
    /// Work goes on.
    Passed,
    /// It goes on in part, or on conditions.
    InPart,
    /// It does not go on.
    Failed,
}

/// An inspection was made.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Inspected {
    /// The entry that asked for it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub asked: Option<u64>,
    /// What was inspected.
    pub what: String,
    /// Who inspected.
    pub inspector: String,
    /// Since when the inspector had been on site, as their own phone said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub arrived: Option<Time>,
    /// When it was made.
    pub made_at: Time,
    /// What was shown, and what was found of each.
    pub items: Vec<InspectedItem>,
    /// What came of it.
    pub result: InspectionResult,
    /// In the inspector's words.
    pub words: String,
    /// On which conditions.
    pub conditions: String,
    /// The marks of the targets that were looked at.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub looked_at: Vec<LookedAt>,
    /// The inspector's signature, when it was drawn with it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub signature: Option<Signature>,
}

impl Happening for Inspected {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_made(state, entry, self);
    }
}

/// Whoever inspected signs on their own phone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SignInspection {
    /// The inspection: its number in the view.
    pub inspection: u64,
    /// The signature.
    pub signature: Signature,
}

impl Saying for SignInspection {
    const BY: &'static [Role] = &[Role::Supervisor, Role::Visitor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        sign(at.state, at.by, self)
    }
}

/// An inspection was signed by whoever made it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct InspectionSigned {
    /// Which.
    pub inspection: u64,
    /// The signature.
    pub signature: Signature,
}

impl Happening for InspectionSigned {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_signed(state, entry, self);
    }
}

pub(crate) fn ask(state: &State, asked: &AskInspection) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let (what, of) = (asked.what.trim(), asked.of.trim());
    if what.is_empty() || of.is_empty() {
        return Err(Refusal::say_why(
            words::inspection::what_inspected_who_asked(),
        ));
    }
    known(site, &asked.targets)?;
    Ok(vec![Body::InspectionAsked(InspectionAsked {
        what: what.to_owned(),
        of: of.to_owned(),
        targets: asked.targets.clone(),
    })])
}

fn known(site: &Site, targets: &[String]) -> Result<(), Refusal> {
    match targets.iter().find(|id| site.target(id).is_none()) {
        None => Ok(()),
        Some(target) => Err(Refusal::Unknown {
            what: Thing::Target,
            name: target.clone(),
        }),
    }
}

/// The marks of these targets that have been measured, whenever on the job.
fn looked_at(state: &State, targets: &[String]) -> Vec<LookedAt> {
    let own = |mark: &BuiltMark| {
        let target = mark.target.as_ref();
        target.is_some_and(|target| targets.contains(target))
    };
    let built = built::built(state).into_iter().filter(own);
    built
        .map(|mark| LookedAt {
            place: mark.place,
            elevation: mark.ground(),
            reading: mark.reading,
            mark: mark.mark,
        })
        .collect()
}

pub(crate) fn inspect(state: &State, asked: &Inspect, when: When) -> Result<Vec<Body>, Refusal> {
    let earlier = match asked.asked {
        None => None,
        Some(id) => {
            let waits = state.record.inspections.get(&id);
            let waits = waits.filter(|inspection| inspection.made.is_none());
            Some(waits.ok_or_else(|| Refusal::Unknown {
                what: Thing::Inspection,
                name: id.to_string(),
            })?)
        }
    };
    let asked_for = earlier.and_then(|inspection| inspection.asked.as_ref());
    let what = match asked.what.trim() {
        "" => asked_for.map(|asked| asked.said.what.clone()),
        what => Some(what.to_owned()),
    };
    let inspector = asked.inspector.trim();
    let items: Vec<InspectedItem> = asked.items.iter().map(trimmed).collect();
    let said = items
        .iter()
        .all(|item| !item.what.is_empty() && !item.found.is_empty());
    let (Some(what), false, true) = (what, inspector.is_empty() || items.is_empty(), said) else {
        return Err(Refusal::say_why(
            words::inspection::what_inspected_by_whom_what(),
        ));
    };
    let (words, conditions) = (asked.words.trim(), asked.conditions.trim());
    if words.is_empty() {
        return Err(Refusal::say_why(
            words::inspection::what_the_inspector_said(),
        ));
    }
    if asked.result == InspectionResult::InPart && conditions.is_empty() {
        return Err(Refusal::say_why(words::inspection::what_may_go_what_waits()));
    }
    let targets = match (asked.targets.is_empty(), asked_for) {
        (true, Some(asked)) => &asked.said.targets,
        _ => &asked.targets,
    };
    known(state.site().ok_or(Refusal::NoSite)?, targets)?;
    let visitor = state.record.visitors.get(inspector);
    Ok(vec![Body::Inspected(Inspected {
        asked: asked.asked,
        what,
        inspector: inspector.to_owned(),
        arrived: visitor.and_then(|visitor| visitor.here),
        made_at: when.made_at,
        items,
        result: asked.result,
        words: words.to_owned(),
        conditions: conditions.to_owned(),
        looked_at: looked_at(state, targets),
        signature: asked
            .signature
            .as_ref()
            .map(Signature::checked)
            .transpose()?,
    })])
}

fn trimmed(item: &InspectedItem) -> InspectedItem {
    InspectedItem {
        what: item.what.trim().to_owned(),
        found: item.found.trim().to_owned(),
    }
}

/// Signed once, by the inspector: on a visitor's own phone only by the one who is named.
pub(crate) fn sign(state: &State, by: &By, asked: &SignInspection) -> Result<Vec<Body>, Refusal> {
    let inspection = state.record.inspections.get(&asked.inspection);
    let made = inspection.and_then(|inspection| inspection.made.as_ref());
    let (Some(inspection), Some(made)) = (inspection, made) else {
        return Err(Refusal::Unknown {
            what: Thing::Inspection,
            name: asked.inspection.to_string(),
        });
    };
    if inspection.signed.is_some() {
        return Err(Refusal::of_the_record(
            words::inspection::that_inspection_is_signed(),
        ));
    }
    let own = by.is(Role::Supervisor) || by.person == made.said.inspector;
    if !own {
        let inspector = &made.said.inspector;
        return Err(Refusal::of_the_record(
            words::inspection::made_this_inspection_signs(&inspector),
        ));
    }
    Ok(vec![Body::InspectionSigned(InspectionSigned {
        inspection: asked.inspection,
        signature: asked.signature.checked()?,
    })])
}

pub(crate) fn apply_asked(state: &mut State, entry: &Entry, body: &InspectionAsked) {
    let asked = Inspection {
        asked: Some(Dated::of(entry, body)),
        made: None,
        signed: None,
        void: None,
    };
    state.record.inspections.insert(entry.seq, asked);
}

pub(crate) fn apply_made(state: &mut State, entry: &Entry, body: &Inspected) {
    let id = body.asked.unwrap_or(entry.seq);
    let inspections = &mut state.record.inspections;
    let inspection = inspections.entry(id).or_insert_with(|| Inspection {
        asked: None,
        made: None,
        signed: None,
        void: None,
    });
    inspection.made = Some(Dated::of(entry, body));
    let signature = body.signature.as_ref();
    inspection.signed = signature.map(|signature| Dated::of(entry, signature));
}

pub(crate) fn apply_signed(state: &mut State, entry: &Entry, body: &InspectionSigned) {
    if let Some(inspection) = state.record.inspections.get_mut(&body.inspection) {
        inspection.signed = Some(Dated::of(entry, &body.signature));
    }
}
