//! A second person types a target's elevations without seeing the first: then the target is proved, or both stand.

use contract::ToSchema;
use earthwork::alignment::show_station;
use earthwork::length::{Length, parse};
use earthwork::target::{Shape, Target as Grade};
use serde::{Deserialize, Serialize};
use words::Text;

use crate::asked::{By, Role};
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::saying::{Asking, Closed, Saying};
use crate::site::Target;
use crate::state::State;

/// A second person types a target's elevations.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ProveTarget {
    /// Which.
    pub target: String,
    /// Which revision.
    pub revision: u32,
    /// Each elevation and thickness as typed, with its unit, in the order of `ToProve`.
    pub values: Vec<String>,
}

impl Saying for ProveTarget {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        prove(at.state, at.by, self)
    }
}

/// A target's elevations were typed a second time.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct TargetTyped {
    /// Which.
    pub target: String,
    /// Which revision.
    pub revision: u32,
    /// Whether all agree; then the target is proved.
    pub agrees: bool,
    /// What differs, both as they are; nothing is changed.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub differs: Vec<Differs>,
}

impl Happening for TargetTyped {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_typed(state, entry, self);
    }
}

/// One value that two people typed differently.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Differs {
    /// Which value.
    pub what: Text,
    /// As the site has it.
    pub first: Length,
    /// As the second person typed it.
    pub second: Length,
}

/// A target that waits for a second person, without its values.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct ToProve {
    /// Which.
    pub target: String,
    /// Its name.
    pub name: String,
    /// Which revision.
    pub revision: u32,
    /// What is to be typed, in order.
    pub values: Vec<Text>,
}

/// The values that people type for a target, in the order of the drawing, each with its name.
fn values(grade: &Grade) -> Vec<(Text, Length)> {
    let surface = &grade.stack.surface;
    let plain = || words::prove::elevation_of(&surface);
    let at = |station: Length| {
        let station = show_station(station);
        words::prove::elevation_of_at(&surface, &station)
    };
    let mut found: Vec<(Text, Length)> = match &grade.shape {
        Shape::Flat { elevation }
        | Shape::Plane { elevation, .. }
        | Shape::Contour { elevation, .. } => vec![(plain(), *elevation)],
        Shape::Run(run) => run
            .steps
            .iter()
            .map(|step| (at(step.from), step.elevation))
            .collect(),
        Shape::Fold { planes, .. } => (1..)
            .zip(planes)
            .map(|(number, plane)| {
                let name = words::prove::elevation_of_plane(&number);
                (name, plane.elevation)
            })
            .collect(),
        Shape::Along(along) => {
            let drawn = along.drawn();
            let corners = drawn.corners.iter();
            let steps = drawn.steps.iter().map(|step| {
                let station = show_station(step.station);
                let name = words::prove::step_minus_when_goes_down(&station);
                (name, step.by)
            });
            corners
                .map(|corner| (at(corner.station), corner.elevation))
                .chain(steps)
                .collect()
        }
        Shape::Trench(trench) => trench
            .drawn()
            .inverts
            .iter()
            .map(|invert| (at(invert.station), invert.elevation))
            .collect(),
        Shape::Face(face) => face
            .drawn()
            .corners
            .iter()
            .map(|corner| (at(corner.station), corner.elevation))
            .collect(),
        Shape::Surface(_) | Shape::Strip { .. } => Vec::new(),
    };
    let layers = grade.stack.layers.iter().map(|layer| {
        let name = words::prove::thickness_of(&layer.name);
        (name, layer.thickness)
    });
    found.extend(layers);
    found
}

/// The targets that wait for a second person.
pub fn to_prove(state: &State) -> Vec<ToProve> {
    let targets = state.site().map(|site| site.targets.as_slice());
    targets
        .unwrap_or_default()
        .iter()
        .filter(|target| !target.proved())
        .map(|target| ToProve {
            target: target.id.clone(),
            name: target.name.clone(),
            revision: target.revision,
            values: values(&target.grade)
                .into_iter()
                .map(|(name, _)| name)
                .collect(),
        })
        .collect()
}

pub(crate) fn prove(state: &State, by: &By, asked: &ProveTarget) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let target = site.target(&asked.target).ok_or_else(|| Refusal::Unknown {
        what: Thing::Target,
        name: asked.target.clone(),
    })?;
    let id = &target.id;
    if target.revision != asked.revision {
        return Err(Refusal::BadTarget(words::prove::is_at_revision_now(
            &id,
            &target.revision,
        )));
    }
    if target.proved() {
        return Ok(vec![]);
    }
    if target.typed_by.as_deref() == Some(by.person.as_str()) {
        return Err(Refusal::BadTarget(words::prove::was_typed_by_before(
            &id, &by.person,
        )));
    }
    let first = values(&target.grade);
    if first.len() != asked.values.len() {
        return Err(Refusal::BadTarget(words::prove::has_values_were_typed(
            &id,
            &first.len(),
            &asked.values.len(),
        )));
    }
    let mut differs = Vec::new();
    for ((what, first), text) in first.into_iter().zip(&asked.values) {
        let second = parse(text)
            .map_err(|error| Refusal::BadTarget(words::prove::of(&what, &error.text())))?;
        if second != first {
            differs.push(Differs {
                what,
                first,
                second,
            });
        }
    }
    Ok(vec![Body::TargetTyped(TargetTyped {
        target: asked.target.clone(),
        revision: asked.revision,
        agrees: differs.is_empty(),
        differs,
    })])
}

pub(crate) fn apply_typed(state: &mut State, entry: &Entry, body: &TargetTyped) {
    let Some(in_force) = &mut state.site else {
        return;
    };
    let same = |target: &&mut Target| target.id == body.target && target.revision == body.revision;
    if let Some(target) = in_force.site.targets.iter_mut().find(same) {
        if body.agrees {
            target.proved_by = Some(entry.by.person.clone());
            state.typed_apart.remove(&body.target);
        } else {
            state
                .typed_apart
                .insert(body.target.clone(), (entry.at, body.clone()));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::{Command, Role};
    use crate::call::Label;
    use crate::given::{Crew, ground, len, supervisor};
    use crate::said::revise::ReviseTarget;

    fn typed(revision: u32, values: &[&str]) -> Command {
        Command::ProveTarget(ProveTarget {
            target: "PAD".into(),
            revision,
            values: values.iter().map(|text| (*text).to_owned()).collect(),
        })
    }

    /// The pad, revised by its supervisor: typed once, by one person.
    fn revised() -> Crew {
        let mut crew = Crew::digging();
        let old = crew.state.site().unwrap().target("PAD").unwrap().clone();
        let mut grade = old.grade.clone();
        grade.stack.layers[0].thickness = len("0.80 ft");
        let revise = Command::ReviseTarget(ReviseTarget {
            target: "PAD".into(),
            grade,
            tolerance: old.tolerance,
            why: "engineer's answer".into(),
            seen: None,
        });
        crew.says(&supervisor(), revise).unwrap();
        crew
    }

    fn labels(crew: &Crew) -> Vec<Label> {
        let (_, call) = crew.state.live_call("EX-1").unwrap();
        call.sent.labels.clone()
    }

    #[test]
    fn a_typed_target_is_labelled_until_a_second_person_agrees() {
        let mut crew = revised();
        let waits = to_prove(&crew.state);
        let names: Vec<&str> = waits[0]
            .values
            .iter()
            .map(|name| name.english.as_str())
            .collect();
        assert_eq!(names, ["elevation of top of slab", "thickness of gravel"]);
        crew.reads("P-1", "4.80").unwrap();
        assert!(labels(&crew).contains(&Label::NotProved));
        // 100.50 ft is 1206 inches.
        crew.says(&ground(), typed(2, &["1206 in", "0.8 ft"]))
            .unwrap();
        let pad = crew.state.site().unwrap().target("PAD").unwrap();
        assert_eq!(pad.proved_by.as_deref(), Some("RT"));
        crew.reads("P-2", "4.90").unwrap();
        assert!(!labels(&crew).contains(&Label::NotProved));
        assert_eq!(to_prove(&crew.state), []);
    }

    #[test]
    fn what_two_people_typed_differently_stands_beside_each_other() {
        let mut crew = revised();
        crew.says(&ground(), typed(2, &["105.00 ft", "0.80 ft"]))
            .unwrap();
        let (_, apart) = &crew.state.typed_apart["PAD"];
        assert_eq!(apart.differs.len(), 1);
        assert_eq!(apart.differs[0].first, len("100.50 ft"));
        assert_eq!(apart.differs[0].second, len("105.00 ft"));
        assert_eq!(to_prove(&crew.state).len(), 1);
    }

    #[test]
    fn one_person_is_not_two_and_every_value_is_typed() {
        let mut crew = revised();
        let mut same = supervisor();
        same.roles = vec![Role::Ground];
        let refused = crew
            .says(&same, typed(2, &["100.50 ft", "0.80 ft"]))
            .unwrap_err();
        assert!(refused.to_string().contains("Somebody else"));
        for (revision, values) in [
            (1, vec!["1 ft", "1 ft"]),
            (2, vec!["1 ft"]),
            (2, vec!["1", "2"]),
        ] {
            assert!(crew.says(&ground(), typed(revision, &values)).is_err());
        }
    }
}
