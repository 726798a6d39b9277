//! What stays too close to call is ruled on by the supervisor.

use contract::ToSchema;
use earthwork::correction::{Correction, Ground, correction};
use earthwork::tolerance::Verdict;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::call::{Ending, Label, Message};
use crate::cuts::held;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::overtaken;
use crate::refusal::Refusal;
use crate::said::call::{self, Draft};
use crate::saying::{Asking, Closed, Saying};
use crate::state::SetUpState;
use crate::state::State;
use crate::time::When;

/// A supervisor rules.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Rule {
    /// The mark.
    pub mark: String,
    /// What is to be done.
    pub ruling: Ruling,
    /// Why.
    pub why: String,
}

impl Saying for Rule {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        rule(at.state, at.by, self, at.when)
    }
}

/// A supervisor ruled.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Ruled {
    /// The mark.
    pub mark: String,
    /// The reading that it settles.
    pub reading: u64,
    /// What is to be done.
    pub ruling: Ruling,
    /// Why.
    pub why: String,
}

impl Happening for Ruled {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_ruled(state, self);
    }
}

/// What is to be done with a mark that is too close to call.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Ruling {
    /// Leave it as it is.
    Leave,
    /// Leave it and fill it with gravel later.
    Patch,
    /// Trim it.
    Trim,
}

/// Settles the last reading of a mark that is too close to call, and tells the machine.
pub(crate) fn rule(state: &State, by: &By, asked: &Rule, when: When) -> Result<Vec<Body>, Refusal> {
    let nothing = || Refusal::NothingToRule {
        mark: asked.mark.clone(),
    };
    let (id, taken) = state.last_reading(&asked.mark).ok_or_else(nothing)?;
    let judged = taken.reading.judged.as_ref().ok_or_else(nothing)?;
    let doubtful = matches!(judged.verdict, Verdict::TooCloseHigh | Verdict::TooCloseLow);
    if !doubtful || judged.settled_high {
        return Err(nothing());
    }
    if asked.ruling == Ruling::Trim && judged.verdict == Verdict::TooCloseLow {
        return Err(Refusal::NothingToTrim {
            mark: asked.mark.clone(),
        });
    }
    // What was measured with a laser in doubt settles nothing; one that was taken down in order does.
    let set_up = &taken.reading.set_up;
    let holds = state.set_up(set_up).is_some_and(|set_up| {
        matches!(set_up.state, SetUpState::Proven { .. }) && set_up.height() == taken.reading.height
    });
    if !holds {
        return Err(Refusal::SetUpNotProven {
            set_up: set_up.clone(),
        });
    }
    if asked.why.trim().is_empty() {
        return Err(Refusal::say_why(words::rule::why_it_is_ruled_so()));
    }
    overtaken::in_time(when)?;
    let newer = words::rule::this_mark_read_again_after();
    overtaken::after(when, Some(taken.made_at), newer)?;
    let machine = taken.reading.machine.as_deref();
    if let Some(machine) = machine {
        overtaken::before_its_call(state, machine, when)?;
    }
    let held = machine
        .and_then(|machine| held::call(state, machine, Some(&asked.mark), Some(&judged.target)));
    if let Some(held) = held.or_else(|| held::at_mark(state, &asked.mark)) {
        return Err(held.refusal());
    }
    let mut bodies = vec![Body::Ruled(Ruled {
        mark: asked.mark.clone(),
        reading: id,
        ruling: asked.ruling,
        why: asked.why.trim().to_owned(),
    })];
    let Some(machine) = taken.reading.machine.clone() else {
        return Ok(bodies);
    };
    bodies.extend(call::end_live(state, &machine, Ending::Ruled));
    let aim = state.aim(&asked.mark, &judged.target);
    let target = state.site().and_then(|site| site.target(&judged.target));
    let ground = Ground {
        dev: judged.mean,
        aim,
        tolerance: target.map(|target| target.tolerance),
    };
    let correction = match asked.ruling {
        Ruling::Leave | Ruling::Patch => Correction::Grade,
        Ruling::Trim => correction(&ground, judged.verdict, true),
    };
    let mut readings = judged.joined.clone();
    readings.push(id);
    bodies.push(call::send(
        state,
        by,
        when,
        Draft {
            machine,
            mark: Some(asked.mark.clone()),
            target: Some((judged.target.clone(), judged.revision)),
            set_up: Some(taken.reading.set_up.clone()),
            message: Message::measured(&ground, correction, judged.verdict),
            aim,
            readings,
            labels: vec![Label::ByRuling],
            checked_at: None,
            warnings: vec![],
            line: None,
        },
    ));
    Ok(bodies)
}

pub(crate) fn apply_ruled(state: &mut State, body: &Ruled) {
    if let Some(mark) = state.marks.get_mut(&body.mark) {
        mark.ruling = Some(body.ruling);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, supervisor};
    use crate::said::check_shot::SayBumped;

    fn ruling(ruling: Ruling) -> Command {
        Command::Rule(Rule {
            mark: "P-1".into(),
            ruling,
            why: "as it lies".into(),
        })
    }

    #[test]
    fn only_what_is_too_close_to_call_is_ruled_on() {
        let mut crew = Crew::digging();
        assert!(crew.says(&supervisor(), ruling(Ruling::Leave)).is_err());
        crew.reads("P-1", "4.70").unwrap();
        assert_eq!(
            crew.says(&supervisor(), ruling(Ruling::Leave)),
            Err(Refusal::NothingToRule { mark: "P-1".into() })
        );
    }

    #[test]
    fn a_low_spot_can_not_be_trimmed() {
        let mut crew = Crew::digging();
        crew.reads("P-1", "5.20").unwrap();
        assert_eq!(
            crew.says(&supervisor(), ruling(Ruling::Trim)),
            Err(Refusal::NothingToTrim { mark: "P-1".into() })
        );
        assert!(crew.says(&supervisor(), ruling(Ruling::Patch)).is_ok());
    }

    #[test]
    fn a_ruling_from_before_a_newer_call_does_not_take_its_place() {
        let mut crew = Crew::digging();
        crew.reads("P-1", "5.20").unwrap();
        let ruled_at = crew.now;
        crew.wait(2_000);
        crew.reads_now("P-2", "4.70").unwrap();
        let live = crew.state.live_call("EX-1").map(|(id, _)| id);
        let late = crew.said_at(&supervisor(), ruling(Ruling::Patch), ruled_at);
        assert!(matches!(late, Err(Refusal::Overtaken { .. })), "{late:?}");
        assert_eq!(crew.state.live_call("EX-1").map(|(id, _)| id), live);
        assert!(crew.says(&supervisor(), ruling(Ruling::Patch)).is_ok());
    }

    #[test]
    fn a_ruling_can_not_rest_on_a_laser_in_doubt() {
        // Found by a random crew: the ruling sent a call on a set-up that had just been bumped.
        let mut crew = Crew::digging();
        crew.reads("P-1", "4.89").unwrap();
        let bumped = SayBumped {
            set_up: "S1".into(),
        };
        crew.says(&ground(), Command::SayBumped(bumped)).unwrap();
        assert_eq!(
            crew.says(&supervisor(), ruling(Ruling::Patch)),
            Err(Refusal::SetUpNotProven {
                set_up: "S1".into()
            })
        );
    }
}
