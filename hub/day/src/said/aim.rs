//! Where to aim, apart from the target. It changes what is told, never the verdict.

use earthwork::length::Length;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::entry::Body;
use crate::refusal::{Refusal, Thing};
use crate::state::State;

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

pub(crate) fn set(state: &State, asked: &SetAim) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    if asked.on.is_empty() {
        return Err(Refusal::say_why(
            "which marks or targets the aim is for",
            "para cuáles marcas o rasantes es la mira",
        ));
    }
    if asked.why.trim().is_empty() {
        return Err(Refusal::say_why(
            "why the aim is set",
            "por qué se pone la mira",
        ));
    }
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
    }
    Ok(vec![Body::AimSet(AimSet {
        on: asked.on.clone(),
        aim: asked.aim,
        why: asked.why.trim().to_owned(),
    })])
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
        })
    }

    #[test]
    fn an_aim_changes_what_is_told_and_never_the_verdict() {
        let mut crew = Crew::digging();
        crew.says(&supervisor(), aims("-0.10 ft")).unwrap();
        crew.reads("P-1", "4.70").unwrap();
        let (_, call) = crew.state.live_call("EX-1").unwrap();
        assert_eq!(call.sent.english, "DOWN 4");
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
