//! Where to aim, apart from the target. It changes what is told, never the verdict.

use contract::ToSchema;
use earthwork::length::Length;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::overtaken;
use crate::refusal::{Refusal, Thing};
use crate::saying::{Asking, Closed, Saying};
use crate::site::Target;
use crate::state::State;
use crate::time::When;

/// A supervisor sets an aim.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SetAim {
    /// Marks, or targets for all their marks.
    pub on: Vec<String>,
    /// Relative to the target: negative is deeper.
    pub aim: Length,
    /// Why.
    pub why: String,
    /// What stood there on the page of whoever sets it; an aim that names none is not held against what stands.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub seen: Vec<AimSeen>,
}

impl Saying for SetAim {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        set(at.state, self, at.when)
    }
}

/// What stood where an aim is set.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AimSeen {
    /// The mark or target.
    pub on: String,
    /// The aim that was set there; zero without one.
    pub aim: Length,
    /// The revision of the target.
    pub revision: u32,
}

/// An aim was set.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct AimSet {
    /// Marks or targets.
    pub on: Vec<String>,
    /// The aim.
    pub aim: Length,
    /// Why.
    pub why: String,
}

impl Happening for AimSet {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_set(state, self);
    }
}

pub(crate) fn set(state: &State, asked: &SetAim, when: When) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    if asked.on.is_empty() {
        return Err(Refusal::say_why(words::aim::which_marks_or_targets_aim()));
    }
    if asked.why.trim().is_empty() {
        return Err(Refusal::say_why(words::aim::why_the_aim_is_set()));
    }
    overtaken::after(
        when,
        state.day.as_ref().map(|day| day.at),
        words::aim::new_day_has_begun_since(),
    )?;
    for name in &asked.on {
        let target = site
            .mark(name)
            .and_then(|mark| site.target_of(mark))
            .or_else(|| site.target(name))
            .ok_or_else(|| Refusal::Unknown {
                what: Thing::MarkOrTarget,
                name: name.clone(),
            })?;
        let (low, high) = (-target.tolerance.low, target.tolerance.high);
        if asked.aim < low || asked.aim > high {
            return Err(Refusal::AimOutside {
                low: low.to_string(),
                high: high.to_string(),
            });
        }
        if let Some(seen) = asked.seen.iter().find(|seen| seen.on == *name) {
            still_stands(state, seen, target)?;
        }
    }
    Ok(vec![Body::AimSet(AimSet {
        on: asked.on.clone(),
        aim: asked.aim,
        why: asked.why.trim().to_owned(),
    })])
}

/// Whoever typed an aim has seen what stands there now.
fn still_stands(state: &State, seen: &AimSeen, target: &Target) -> Result<(), Refusal> {
    let (on, id, revision) = (&seen.on, &target.id, target.revision);
    if revision != seen.revision {
        return Err(overtaken::overtaken(words::aim::was_changed_since(
            &id, &revision,
        )));
    }
    let aim = state.aims.get(on).copied().unwrap_or(Length::ZERO);
    if aim != seen.aim {
        return Err(overtaken::overtaken(
            words::aim::somebody_has_set_aim_since(&on, &aim),
        ));
    }
    Ok(())
}

pub(crate) fn apply_set(state: &mut State, body: &AimSet) {
    for name in &body.on {
        state.aims.insert(name.clone(), body.aim);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::call::Message;
    use crate::given::{Crew, len, supervisor};

    fn aims(aim: &str) -> Command {
        Command::SetAim(SetAim {
            on: vec!["PAD".into()],
            aim: len(aim),
            why: "deep is cheaper".into(),
            seen: vec![],
        })
    }

    #[test]
    fn an_aim_changes_what_is_told_and_never_the_verdict() {
        let mut crew = Crew::digging();
        crew.says(&supervisor(), aims("-0.10 ft")).unwrap();
        crew.reads("P-1", "4.70").unwrap();
        let (_, call) = crew.state.live_call("EX-1").unwrap();
        assert_eq!(call.sent.text.english, "DOWN 4");
        let Message::Measured { dev, verdict, .. } = call.sent.message else {
            panic!()
        };
        assert_eq!(dev, len("0.30 ft"));
        assert_eq!(verdict, earthwork::tolerance::Verdict::High);
    }

    #[test]
    fn an_aim_beyond_the_tolerance_is_refused() {
        let mut crew = Crew::digging();
        for aim in ["0.11 ft", "-0.21 ft"] {
            assert!(matches!(
                crew.says(&supervisor(), aims(aim)),
                Err(Refusal::AimOutside { .. })
            ));
        }
    }
}
