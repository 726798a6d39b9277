//! From a judged reading to the call that the operator sees.

use earthwork::correction::{Ground, correction};
use earthwork::tolerance::Verdict;

use super::shot::Shot;
use super::{Reading, ReadingTaken};
use crate::asked::By;
use crate::call::{Ending, Label, Message};
use crate::cuts::depth;
use crate::entry::Body;
use crate::refusal::Refusal;
use crate::said::call::{self, Draft};
use crate::said::check_due;
use crate::said::set_up::Proof;
use crate::state::SetUpState;
use crate::state::State;
use crate::time::When;

/// The reading, the end of the call before it, and the new call; no new call while a ruling is owed.
pub(super) fn bodies(
    state: &State,
    by: &By,
    shot: &Shot<'_>,
    reading: Reading,
    corrected: Option<u64>,
    when: When,
) -> Result<Vec<Body>, Refusal> {
    let (Some(target), Some(machine)) = (shot.target, shot.machine) else {
        return Err(Refusal::NoSite);
    };
    let Some(judged) = reading.judged.clone() else {
        return Err(Refusal::NoSite);
    };
    let confirmed = reading.sure.is_some();
    let id = state.seq + 1;
    let mut bodies = vec![Body::ReadingTaken(ReadingTaken {
        reading,
        spot: None,
    })];
    let mark = &shot.mark.id;
    if let Some((other, end)) = restated_elsewhere(state, corrected, &machine.id) {
        bodies.extend(call::end_live(state, &other, end));
    }
    if judged.needs_ruling {
        return Ok(bodies);
    }
    let ending = ending(state, &machine.id, mark, judged.verdict, corrected);
    bodies.extend(call::end_live(state, &machine.id, ending));
    let aim = state.aim(mark, &target.id);
    let ground = Ground {
        dev: judged.mean,
        aim,
        tolerance: Some(target.tolerance),
    };
    let told = correction(&ground, judged.verdict, judged.settled_high);
    let message = Message::measured(&ground, told, judged.verdict);
    let mut labels = Vec::new();
    if let SetUpState::Proven { proof } = &shot.set_up.state
        && *proof == Proof::OneBenchmark
    {
        labels.push(Label::OneBenchmark);
    }
    if judged.settled_high {
        labels.push(Label::HighByRule);
    }
    if confirmed {
        labels.push(Label::Confirmed);
    }
    if !target.proved() {
        labels.push(Label::NotProved);
    }
    let checked_at = check_due::not_checked_since(state, shot.set_up, when.now);
    if checked_at.is_some() {
        labels.push(Label::NotChecked);
    }
    let warnings = depth::warnings(
        state,
        &target.id,
        shot.mark.place,
        shot.elevation,
        judged.dig_to,
    );
    let mut readings = judged.joined;
    readings.push(id);
    bodies.push(call::send(
        state,
        by,
        when,
        Draft {
            machine: machine.id.clone(),
            mark: Some(mark.clone()),
            target: Some((target.id.clone(), target.revision)),
            set_up: Some(shot.set_up.id.clone()),
            message,
            aim,
            readings,
            labels,
            checked_at,
            warnings,
            line: None,
        },
    ));
    Ok(bodies)
}

/// How the machine's live call ends when this reading comes.
fn ending(
    state: &State,
    machine: &str,
    mark: &str,
    verdict: Verdict,
    corrected: Option<u64>,
) -> Ending {
    let live = state.live_call(machine).map(|(_, call)| &call.sent);
    let same_mark = live.is_some_and(|sent| sent.mark.as_deref() == Some(mark));
    if live.is_some_and(|sent| corrected.is_some_and(|id| sent.readings.contains(&id))) {
        Ending::Restated
    } else if same_mark && verdict == Verdict::On {
        Ending::Done
    } else {
        Ending::Superseded
    }
}

/// A corrected reading may have told another machine: that call is withdrawn too.
fn restated_elsewhere(
    state: &State,
    corrected: Option<u64>,
    machine: &str,
) -> Option<(String, Ending)> {
    let corrected = corrected?;
    state
        .cabs
        .keys()
        .filter(|other| other.as_str() != machine)
        .find(|other| {
            state
                .live_call(other)
                .is_some_and(|(_, call)| call.sent.readings.contains(&corrected))
        })
        .map(|other| (other.clone(), Ending::Restated))
}
