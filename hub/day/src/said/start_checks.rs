//! Before a day begins: what is looked at, each with what was seen, and READY with all of them or a named reason.
//!
//! The seven are common practice. A day that is not READY is shown as not ready; nothing is held back by it.

use std::collections::BTreeMap;

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::{Language, Text};

use crate::asked::Role;
use crate::cuts::plan::day_number;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::Refusal;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::{Time, minutes};

/// What is looked at before a day begins.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum StartCheck {
    /// Hat and vest on everybody: who was looked at.
    HatAndVest,
    /// Which hand signals were agreed with the operators.
    HandSignals,
    /// Where first aid is, and the way to it.
    FirstAid,
    /// Which lines hang over the site.
    OverheadLines,
    /// The locate tickets: which, until when.
    LocateTickets,
    /// The laser, rods and receiver: when they were last tested.
    Laser,
    /// Ladders, ramps and barricades: where they stand.
    WaysOut,
}

/// All of them, in the order in which they are gone through.
pub const START_CHECKS: [StartCheck; 7] = [
    StartCheck::HatAndVest,
    StartCheck::HandSignals,
    StartCheck::FirstAid,
    StartCheck::OverheadLines,
    StartCheck::LocateTickets,
    StartCheck::Laser,
    StartCheck::WaysOut,
];

impl StartCheck {
    /// Its name on the page.
    pub fn name(self, language: Language) -> &'static str {
        let word = match self {
            Self::HatAndVest => words::start_checks::hat_and_vest(),
            Self::HandSignals => words::start_checks::hand_signals(),
            Self::FirstAid => words::start_checks::first_aid(),
            Self::OverheadLines => words::start_checks::overhead_lines(),
            Self::LocateTickets => words::start_checks::locate_tickets(),
            Self::Laser => words::start_checks::laser_and_rods(),
            Self::WaysOut => words::start_checks::ladders_and_barricades(),
        };
        word.of(language)
    }
}

/// A signal by hand (common practice; the crew's own sheet draws them).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum HandSignal {
    /// Stand still.
    Stop,
    /// Bucket down.
    Lower,
    /// Bucket up.
    Raise,
    /// Swing to the side of the arm.
    Swing,
    /// Travel.
    Travel,
    /// So much more: between the palms.
    SoMuch,
    /// At grade.
    Grade,
}

impl HandSignal {
    /// Its word.
    pub fn word(self, language: Language) -> &'static str {
        let word = match self {
            Self::Stop => words::start_checks::stop(),
            Self::Lower => words::start_checks::lower(),
            Self::Raise => words::start_checks::raise(),
            Self::Swing => words::start_checks::swing(),
            Self::Travel => words::start_checks::travel(),
            Self::SoMuch => words::start_checks::so_much(),
            Self::Grade => words::start_checks::grade(),
        };
        word.of(language)
    }
}

/// Somebody says what they saw.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayStartCheck {
    /// What was looked at.
    pub check: StartCheck,
    /// What was seen: a value, not a tick.
    #[serde(default)]
    pub value: String,
    /// The signals that were agreed, for the hand signals.
    #[serde(default)]
    pub signals: Vec<HandSignal>,
    /// Looked at now and found as it was said before: when that was said. The words are those, and nothing else is given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub as_before: Option<Time>,
}

impl Saying for SayStartCheck {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        say(at.state, self)
    }
}

/// A start check has its value.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct StartCheckSaid {
    /// What was looked at.
    pub check: StartCheck,
    /// What was seen.
    pub value: String,
    /// The signals that were agreed.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub signals: Vec<HandSignal>,
    /// These are the words of an earlier day, looked at again and found so: when they were said first.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub as_before: Option<Time>,
}

impl Happening for StartCheckSaid {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_said(state, entry, self);
    }
}

/// A supervisor says that the day is READY.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ReadyDay {
    /// Checks that have no value, each with why the day begins all the same.
    #[serde(default)]
    pub overrides: Vec<StartOverride>,
}

impl Saying for ReadyDay {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        ready(at.state, self)
    }
}

/// A check without a value, and why the day begins all the same.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct StartOverride {
    /// Which.
    pub check: StartCheck,
    /// Why.
    pub why: String,
}

/// The day is READY.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct DayReady {
    /// Checks that have a value.
    pub said: Vec<StartCheck>,
    /// Those that have none, with why.
    pub overrides: Vec<StartOverride>,
}

impl Happening for DayReady {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_ready(state, entry, self);
    }
}

/// The start of the day that is open.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct StartNow {
    /// What was seen.
    pub said: BTreeMap<StartCheck, CheckSaid>,
    /// By whom and when it was declared READY.
    pub ready: Option<ReadyBy>,
    /// What was last said on the days before.
    #[serde(default)]
    pub before: BTreeMap<StartCheck, CheckSaid>,
}

/// What was seen, by whom, when.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CheckSaid {
    /// What.
    pub value: String,
    /// The signals that were agreed.
    pub signals: Vec<HandSignal>,
    /// By whom.
    pub by: String,
    /// When.
    pub at: Time,
    /// The words are those of an earlier day, looked at again: when they were said first.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub as_before: Option<Time>,
}

/// Who declared the day READY.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ReadyBy {
    /// Who.
    pub by: String,
    /// When.
    pub at: Time,
    /// Checks that had no value then, with why.
    pub overrides: Vec<StartOverride>,
}

/// Words that are a tick and no value, in either language.
const TICKS: [&str; 12] = [
    "ok", "okay", "yes", "y", "x", "done", "good", "si", "sí", "bien", "listo", "hecho",
];

/// Whether something is said that could be wrong: a bare tick could not.
fn is_value(text: &str) -> bool {
    let plain = text.trim().trim_matches(|c: char| !c.is_alphanumeric());
    plain.chars().count() > 1 && !TICKS.contains(&plain.to_lowercase().as_str())
}

impl StartCheck {
    /// Whether what was said on an earlier day can be looked at and found unchanged. Who wears hat and vest, when the laser was
    /// tested, and where ladders stand in a cut that has grown overnight are said anew each morning: yesterday's words would be
    /// wrong without anybody having to change them.
    pub fn can_stand(self) -> bool {
        match self {
            Self::HandSignals | Self::FirstAid | Self::OverheadLines | Self::LocateTickets => true,
            Self::HatAndVest | Self::Laser | Self::WaysOut => false,
        }
    }
}

/// Words that were typed so long ago are typed anew: a week of mornings (invented).
const STANDS_FOR_MS: i64 = minutes(7 * 24 * 60);

/// What was said on an earlier day and may be confirmed by whoever looks again.
pub fn before(state: &State, check: StartCheck) -> Option<&CheckSaid> {
    let said = state.start.before.get(&check)?;
    let first = said.as_before.unwrap_or(said.at);
    let fresh = state.at.ms_since(first) <= STANDS_FOR_MS;
    (check.can_stand() && fresh && !(check == StartCheck::LocateTickets && lapsed(state)))
        .then_some(said)
}

/// Whether a ticket of the site does not hold on this day: then yesterday's words about tickets are not the ones to confirm.
fn lapsed(state: &State) -> bool {
    let today = state
        .day
        .as_ref()
        .and_then(|day| day_number(day.id.get(..10)?));
    let tickets = state.site().map(|site| site.cuts.tickets.as_slice());
    tickets.unwrap_or_default().iter().any(|ticket| {
        let last = day_number(&ticket.to);
        today.is_none() || last.is_none() || last < today
    })
}

/// Yesterday's words once more, by somebody who has looked again.
fn again(state: &State, asked: &SayStartCheck, said_at: Time) -> Result<Vec<Body>, Refusal> {
    let said = before(state, asked.check).filter(|said| said.at == said_at);
    let (Some(said), true, true) = (said, asked.value.is_empty(), asked.signals.is_empty()) else {
        return Err(Refusal::HeldBack(
            words::start_checks::those_words_cant_stand_for().into(),
        ));
    };
    Ok(vec![Body::StartCheckSaid(StartCheckSaid {
        check: asked.check,
        value: said.value.clone(),
        signals: said.signals.clone(),
        as_before: Some(said.as_before.unwrap_or(said.at)),
    })])
}

pub(crate) fn say(state: &State, asked: &SayStartCheck) -> Result<Vec<Body>, Refusal> {
    state.day.as_ref().ok_or(Refusal::NoDay)?;
    if let Some(said_at) = asked.as_before {
        return again(state, asked, said_at);
    }
    let mut signals = asked.signals.clone();
    signals.sort_unstable();
    signals.dedup();
    if asked.check == StartCheck::HandSignals {
        if !signals.contains(&HandSignal::Stop) {
            return Err(Refusal::HeldBack(
                words::start_checks::name_signals_were_agreed().into(),
            ));
        }
    } else if !is_value(&asked.value) {
        return Err(Refusal::HeldBack(
            words::start_checks::say_what_you_saw().into(),
        ));
    } else {
        signals.clear();
    }
    Ok(vec![Body::StartCheckSaid(StartCheckSaid {
        check: asked.check,
        value: asked.value.trim().to_owned(),
        signals,
        as_before: None,
    })])
}

pub(crate) fn ready(state: &State, asked: &ReadyDay) -> Result<Vec<Body>, Refusal> {
    state.day.as_ref().ok_or(Refusal::NoDay)?;
    let said = &state.start.said;
    let named = |check: &StartCheck| {
        let mut overrides = asked.overrides.iter();
        overrides.any(|one| one.check == *check && is_value(&one.why))
    };
    let left: Vec<StartCheck> = START_CHECKS
        .into_iter()
        .filter(|check| !said.contains_key(check) && !named(check))
        .collect();
    if !left.is_empty() {
        let names = |language| {
            let names: Vec<&str> = left.iter().map(|check| check.name(language)).collect();
            names.join(", ")
        };
        return Err(Refusal::HeldBack(words::start_checks::not_ready(
            &Text::in_each(names),
        )));
    }
    let overrides = asked
        .overrides
        .iter()
        .filter(|one| !said.contains_key(&one.check))
        .map(|one| StartOverride {
            check: one.check,
            why: one.why.trim().to_owned(),
        });
    Ok(vec![Body::DayReady(DayReady {
        said: said.keys().copied().collect(),
        overrides: overrides.collect(),
    })])
}

pub(crate) fn apply_said(state: &mut State, entry: &Entry, body: &StartCheckSaid) {
    let said = CheckSaid {
        value: body.value.clone(),
        signals: body.signals.clone(),
        by: entry.by.person.clone(),
        at: entry.made_at,
        as_before: body.as_before,
    };
    state.start.said.insert(body.check, said);
}

/// A new day: nothing is looked at yet; what was last said of each is remembered.
pub(crate) fn new_day(state: &mut State) {
    let old = std::mem::take(&mut state.start);
    state.start.before = old.before;
    state.start.before.extend(old.said);
}

pub(crate) fn apply_ready(state: &mut State, entry: &Entry, body: &DayReady) {
    state.start.ready = Some(ReadyBy {
        by: entry.by.person.clone(),
        at: entry.at,
        overrides: body.overrides.clone(),
    });
}

#[cfg(test)]
mod tests;
