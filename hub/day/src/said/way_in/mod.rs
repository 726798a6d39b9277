//! Coming in to a machine's keep-out and going out again, as it is said; the rules are those of [`crate::way_in`].

pub mod answer;
pub mod ask;
pub mod enter;
pub mod notice;

use crate::decide::When;
use crate::entry::{Body, Entry};
use crate::refusal::Refusal;
use crate::state::State;
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
        No::SayWhat => Refusal::SayWhy {
            what: "what you have seen".into(),
        },
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
