//! Coming in to a machine's keep-out and going out again, as it is said; the rules are those of [`crate::way_in`].

pub mod answer;
pub mod ask;
pub mod enter;
mod happened;
pub mod notice;

use crate::entry::{Body, Entry};
use crate::keep_out;
use crate::refusal::Refusal;
use crate::state::State;
use crate::time::When;
use crate::way_in::Step;
use crate::way_in::rules::No;

/// A visit's name, made by a phone, is at least this long, so that two never meet by chance.
const NAME_MIN: usize = 8;
/// And not longer than is good for the log.
const NAME_MAX: usize = 64;

/// A visit's name has the form that phones give it.
fn named(visit: &str) -> Result<(), Refusal> {
    let plain = |c: char| c.is_ascii_alphanumeric() || matches!(c, '-' | '_' | '.' | ':');
    if (NAME_MIN..=NAME_MAX).contains(&visit.len()) && visit.chars().all(plain) {
        return Ok(());
    }
    Err(Refusal::BadVisit)
}

/// More than this nobody leads through a cut: it is a slip of the finger.
const LED_AT_MOST: u32 = 50;

/// How many come along.
fn few(others: Option<u32>) -> Result<(), Refusal> {
    if others.unwrap_or(0) <= LED_AT_MOST {
        return Ok(());
    }
    Err(Refusal::HeldBack(words::way_in::say_how_many_come_along(
        &LED_AT_MOST,
    )))
}

/// The other machines with a screen in whose keep-out a mark lies too, from where they were last said to stand, however long
/// ago. Whose place nobody has said is for the person to ask: the page lists it.
fn concerned(state: &State, machine: &str, mark: Option<&str>) -> Vec<String> {
    let (Some(mark), Some(site)) = (mark, state.site()) else {
        return vec![];
    };
    let others = site.machines.iter().filter(|other| {
        let cab = state.cabs.get(&other.id);
        other.id != machine
            && cab.is_some_and(|cab| cab.device.is_some())
            && keep_out::lies_within(state, &other.id, mark)
    });
    others.map(|other| other.id.clone()).collect()
}

/// How long a press has been on its way.
fn age_ms(when: When) -> i64 {
    when.now.ms_since(when.made_at)
}

fn entered(steps: Vec<Step>) -> Vec<Body> {
    steps.into_iter().map(Body::from).collect()
}

fn refused(machine: &str, no: No) -> Refusal {
    let machine = machine.to_owned();
    match no {
        No::AlreadyIn(person) => Refusal::AlreadyIn { person, machine },
        No::IsIn => Refusal::SayOutInstead,
        No::NotAsked => Refusal::NotAsked,
        No::NotIn => Refusal::NotIn { machine },
        No::NotYours(person) => Refusal::NotYourVisit { person },
        No::NoWitness => Refusal::NoWitness,
        No::WitnessUnknown(person) => Refusal::WitnessUnknown { person },
        No::NotAllOut {
            person,
            inside,
            said,
        } => Refusal::NotAllOut {
            person,
            inside,
            said,
        },
        No::SayWhat => Refusal::say_why(words::way_in::what_you_have_seen()),
        No::AnswerFirst(person) => Refusal::AnswerFirst { person },
        No::TooLate => Refusal::PressedTooLate,
    }
}

impl From<Step> for Body {
    fn from(step: Step) -> Self {
        match step {
            Step::EntryAsked(b) => Self::EntryAsked(b),
            Step::AskRepeated(b) => Self::AskRepeated(b),
            Step::AskWithdrawn(b) => Self::AskWithdrawn(b),
            Step::EntryDelayed(b) => Self::EntryDelayed(b),
            Step::EntryRefused(b) => Self::EntryRefused(b),
            Step::BucketIsDown(b) => Self::BucketIsDown(b),
            Step::PersonIn(b) => Self::PersonIn(b),
            Step::PersonOut(b) => Self::PersonOut(b),
            Step::OutSeen(b) => Self::OutSeen(b),
            Step::ReleaseRefused(b) => Self::ReleaseRefused(b),
            Step::Released(b) => Self::Released(b),
            Step::LinkNoticed(b) => Self::LinkNoticed(b),
        }
    }
}

/// The step that an entry tells of, if it tells of one.
pub fn step(body: &Body) -> Option<Step> {
    Some(match body {
        Body::EntryAsked(b) => Step::EntryAsked(b.clone()),
        Body::AskRepeated(b) => Step::AskRepeated(b.clone()),
        Body::AskWithdrawn(b) => Step::AskWithdrawn(b.clone()),
        Body::EntryDelayed(b) => Step::EntryDelayed(b.clone()),
        Body::EntryRefused(b) => Step::EntryRefused(b.clone()),
        Body::BucketIsDown(b) => Step::BucketIsDown(b.clone()),
        Body::PersonIn(b) => Step::PersonIn(b.clone()),
        Body::PersonOut(b) => Step::PersonOut(b.clone()),
        Body::OutSeen(b) => Step::OutSeen(b.clone()),
        Body::ReleaseRefused(b) => Step::ReleaseRefused(b.clone()),
        Body::Released(b) => Step::Released(b.clone()),
        Body::LinkNoticed(b) => Step::LinkNoticed(b.clone()),
        _ => return None,
    })
}

/// Takes what happened on a way in.
pub(crate) fn apply(state: &mut State, entry: &Entry) {
    if let Some(step) = step(&entry.body) {
        state.way_in.take(entry.at, &step);
        state.phones_after_the_way_in();
    }
}

#[cfg(test)]
mod tests;
