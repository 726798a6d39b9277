//! A supervisor changes a target: the live call on the old one is withdrawn until the operator has seen it.

use contract::ToSchema;
use earthwork::target;
use earthwork::tolerance::Tolerance;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::call::Ending;
use crate::cuts::daylight;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::overtaken;
use crate::refusal::{Refusal, Thing};
use crate::said::call;
use crate::said::depth_owed;
use crate::said::site;
use crate::said::touched::{Touched, touched};
use crate::saying::{Asking, Closed, Saying};
use crate::state::{MustSee, State};

/// A supervisor changes a target.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ReviseTarget {
    /// Which.
    pub target: String,
    /// Its new shape, stack and boundary.
    pub grade: target::Target,
    /// Its allowed high and low.
    pub tolerance: Tolerance,
    /// Why, and on whose word.
    pub why: String,
    /// The revision that the page showed when it was typed; one that names none is not held against what stands.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seen: Option<u32>,
}

impl Saying for ReviseTarget {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        revise(at.state, self)
    }
}

/// A target was revised.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct TargetRevised {
    /// Which.
    pub target: String,
    /// Its new revision.
    pub revision: u32,
    /// Its new shape, stack and boundary.
    pub grade: target::Target,
    /// Its allowed high and low.
    pub tolerance: Tolerance,
    /// Why.
    pub why: String,
    /// The machines whose operator must see it first.
    pub must_see: Vec<String>,
    /// The marks, calls and acceptances that it touches.
    #[serde(default)]
    pub touches: Touched,
}

impl Happening for TargetRevised {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_revised(state, entry, self);
    }
}

/// The operator has seen it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SeeTarget {
    /// Which.
    pub target: String,
    /// Which revision.
    pub revision: u32,
}

impl Saying for SeeTarget {
    const BY: &'static [Role] = &[Role::Operator];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        see(at.state, at.by, self)
    }
}

/// An operator has seen a revised target.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct TargetSeen {
    /// Which machine.
    pub machine: String,
    /// Which target.
    pub target: String,
    /// Which revision.
    pub revision: u32,
}

impl Happening for TargetSeen {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_seen(state, self);
    }
}

/// A live call on the old revision is withdrawn, and its operator must see the new one first.
pub(crate) fn revise(state: &State, asked: &ReviseTarget) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let old = site.target(&asked.target).ok_or_else(|| Refusal::Unknown {
        what: Thing::Target,
        name: asked.target.clone(),
    })?;
    if asked.why.trim().is_empty() {
        return Err(Refusal::say_why(
            words::revise::why_target_changes_whose_word(),
        ));
    }
    if let Some(wrong) = asked.grade.check().first() {
        return Err(Refusal::BadTarget(words::revise::of(
            &asked.target,
            &wrong.text(),
        )));
    }
    let tolerance = Tolerance::new(asked.tolerance.high, asked.tolerance.low)
        .map_err(|error| Refusal::BadTarget(words::revise::of(&asked.target, &error.text())))?;
    if old.grade == asked.grade && old.tolerance == tolerance {
        return Ok(vec![]);
    }
    if asked.seen.is_some_and(|seen| seen != old.revision) {
        let (id, revision) = (&asked.target, old.revision);
        return Err(overtaken::overtaken(words::revise::was_changed_since(
            &id, &revision,
        )));
    }
    let must_see: Vec<String> = state
        .cabs
        .keys()
        .filter(|machine| {
            state
                .live_call(machine)
                .is_some_and(|(_, call)| call.sent.target.as_deref() == Some(&asked.target))
        })
        .cloned()
        .collect();
    let mut bodies: Vec<Body> = must_see
        .iter()
        .filter_map(|machine| call::end_live(state, machine, Ending::StaleByTarget))
        .collect();
    let mut new = site.clone();
    for target in &mut new.targets {
        if target.id == asked.target {
            target.grade.clone_from(&asked.grade);
            target.tolerance = tolerance;
        }
    }
    let touches = touched(state, site, &new);
    bodies.push(Body::TargetRevised(TargetRevised {
        touches,
        target: asked.target.clone(),
        revision: old.revision + 1,
        grade: asked.grade.clone(),
        tolerance,
        why: asked.why.trim().to_owned(),
        must_see,
    }));
    bodies.extend(depth_owed::newly(site, &new, &asked.target));
    let daylight = daylight::anew(state, &new).into_iter();
    bodies.extend(daylight.map(Body::DaylightFound));
    Ok(bodies)
}

pub(crate) fn see(state: &State, by: &By, asked: &SeeTarget) -> Result<Vec<Body>, Refusal> {
    let machine = call::own_machine(by)?;
    let owed = state
        .cabs
        .get(&machine)
        .and_then(|cab| cab.must_see.as_ref());
    let matches =
        owed.is_some_and(|must| must.target == asked.target && must.revision == asked.revision);
    if !matches {
        return Ok(vec![]);
    }
    Ok(vec![Body::TargetSeen(TargetSeen {
        machine,
        target: asked.target.clone(),
        revision: asked.revision,
    })])
}

pub(crate) fn apply_revised(state: &mut State, entry: &Entry, body: &TargetRevised) {
    let before = state.site().and_then(|site| site.target(&body.target));
    let before = before.cloned();
    if let Some(in_force) = &mut state.site
        && let Some(target) = in_force
            .site
            .targets
            .iter_mut()
            .find(|target| target.id == body.target)
    {
        target.grade.clone_from(&body.grade);
        target.tolerance = body.tolerance;
        target.revision = body.revision;
        // Whoever revised it typed it; a second person has yet to.
        target.typed_by = Some(entry.by.person.clone());
        target.proved_by = None;
    }
    let after = state.site().and_then(|site| site.target(&body.target));
    if let (Some(before), Some(after)) = (before, after) {
        let differences = site::target_differences(&before, after);
        site::by_page(state, entry, &body.why, &differences);
    }
    state.typed_apart.remove(&body.target);
    for machine in &body.must_see {
        state.cab_mut(machine).must_see = Some(MustSee {
            target: body.target.clone(),
            revision: body.revision,
            since: entry.at,
        });
    }
}

pub(crate) fn apply_seen(state: &mut State, body: &TargetSeen) {
    state.cab_mut(&body.machine).must_see = None;
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::cab::{self, Fills};
    use crate::given::{Crew, len, operator, supervisor};
    use crate::said::call::text;
    use earthwork::words::ScreenUnit;
    use words::Language;

    /// 105.00 − 5.00 = 100.00 is on grade; 0.05 ft lower it still is, 0.30 ft lower it is not.
    #[test]
    fn a_mark_that_was_accepted_is_said_to_be_out_or_still_in() {
        for (thickness, still_in) in [("0.55 ft", true), ("0.80 ft", false)] {
            let mut crew = Crew::digging();
            let taken = crew.reads("P-1", "5.00").unwrap();
            let old = crew.state.site().unwrap().target("PAD").unwrap().clone();
            let mut grade = old.grade.clone();
            grade.stack.layers[0].thickness = len(thickness);
            let revise = Command::ReviseTarget(ReviseTarget {
                target: "PAD".into(),
                grade,
                tolerance: old.tolerance,
                why: "engineer's answer".into(),
                seen: None,
            });
            crew.says(&supervisor(), revise).unwrap();
            let Some(Body::TargetRevised(revised)) = crew.log.last().map(|entry| &entry.body)
            else {
                panic!("no revision")
            };
            let mark = &revised.touches.marks[0];
            assert_eq!(
                (mark.accepted, mark.still_in),
                (Some(taken.first), Some(still_in))
            );
        }
    }

    #[test]
    fn a_live_call_on_the_old_target_is_withdrawn_until_the_new_one_is_seen() {
        let mut crew = Crew::digging();
        crew.reads("P-1", "4.70").unwrap();
        let old = crew.state.site().unwrap().target("PAD").unwrap().clone();
        let mut grade = old.grade.clone();
        grade.stack.layers[0].thickness = len("0.80 ft");
        crew.says(
            &supervisor(),
            Command::ReviseTarget(ReviseTarget {
                target: "PAD".into(),
                grade,
                tolerance: old.tolerance,
                why: "engineer's answer".into(),
                seen: None,
            }),
        )
        .unwrap();
        assert!(crew.state.live_call("EX-1").is_none());
        let Some(Body::TargetRevised(revised)) = crew.log.last().map(|entry| &entry.body) else {
            panic!("no revision")
        };
        let touched: Vec<&str> = revised
            .touches
            .marks
            .iter()
            .map(|one| one.mark.as_str())
            .collect();
        assert_eq!(touched, ["P-1", "P-2"]);
        assert_eq!(revised.touches.most, len("0.30 ft"));
        assert!(revised.touches.marks[0].call.is_some());
        // A reading on the new target waits behind the notice.
        crew.reads("P-1", "4.80").unwrap();
        assert!(matches!(
            cab::fills(&crew.state, "EX-1"),
            Fills::NewTarget(must) if must.revision == 2
        ));
        let see = |revision| {
            Command::SeeTarget(SeeTarget {
                target: "PAD".into(),
                revision,
            })
        };
        crew.says(&operator("EX-1"), see(1)).unwrap();
        assert!(crew.state.cabs["EX-1"].must_see.is_some());
        crew.says(&operator("EX-1"), see(2)).unwrap();
        let Fills::Call(_, call) = cab::fills(&crew.state, "EX-1") else {
            panic!("the call should show now")
        };
        // 105.00 − 4.80 = 100.20, dig-to 100.50 + 0.00 − 0.80 = 99.70: 0.50 high.
        let told = text(&call.sent.message, Language::English, ScreenUnit::Tenths);
        assert_eq!(told.line, "DOWN 5");
    }
}
