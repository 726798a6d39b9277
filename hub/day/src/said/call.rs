//! A call goes out, is acknowledged, refused, taken back, or ends. What has ended never comes back.

use contract::ToSchema;
use earthwork::correction::{Correction, Ground};
use earthwork::length::Length;
use earthwork::pace::stale_after_ms;
use earthwork::words::{CallText, ScreenUnit, call_text, edge_text, quick_text};
use serde::{Deserialize, Serialize};
use words::{Language, Text};

use crate::asked::{By, Role};
use crate::call::{CallState, Ending, Label, Message, Reminder};
use crate::cuts::depth::{DepthWarning, Told};
use crate::cuts::held::HeldBy;
use crate::cuts::{buried, strip};
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::keep_out;
use crate::refusal::Refusal;
use crate::said::edge::LineSide;
use crate::saying::{Asking, Closed, Saying};
use crate::state::{Call, State};
use crate::time::{Time, When};

mod answers;

pub use answers::{
    CallGot, CantCard, CantReason, CantSaid, CheckMe, GotIt, LookAsked, SawNod, SayCant,
};
pub(crate) use answers::{own_live, own_machine};

/// A call went out. Its number is the sequence number of this entry.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CallSent {
    /// The machine.
    pub machine: String,
    /// The mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// The target.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub target: Option<String>,
    /// The target's revision.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub revision: Option<u32>,
    /// The set-up that it rests on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub set_up: Option<String>,
    /// What is told.
    pub message: Message,
    /// The aim in force.
    pub aim: Length,
    /// The entries of the readings behind it.
    pub readings: Vec<u64>,
    /// What to know about it.
    pub labels: Vec<Label>,
    /// The laser's last good check, when the label says that there was none since.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub checked_at: Option<Time>,
    /// The keep-out reminder.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reminder: Option<Reminder>,
    /// Rules of depth that are near.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub warnings: Vec<DepthWarning>,
    /// Of an edge: which line, and on which side it lies; not kept by old days.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub line: Option<LineSide>,
    /// When it will be too old.
    pub stale_at: Time,
    /// Its line.
    #[serde(flatten)]
    pub text: Text,
}

impl Happening for CallSent {
    const TOUCHES: Touches = Touches::Call;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_sent(state, entry, self);
    }
}

/// A call is no longer live.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CallEnded {
    /// Which.
    pub call: u64,
    /// The machine that it is for.
    pub machine: String,
    /// The mark that it is about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// How.
    pub how: Ending,
    /// What holds the work there, when that ended it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub held: Option<HeldBy>,
}

impl Happening for CallEnded {
    const TOUCHES: Touches = Touches::Call;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_ended(state, entry, self);
    }
}

/// A call is taken back.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct WithdrawCall {
    /// Which.
    pub call: u64,
}

impl Saying for WithdrawCall {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        withdraw(at.state, self)
    }
}

/// A machine digs about this fast until its own rate is learned, in feet a minute (common practice).
pub(crate) const DIG_RATE_FT_PER_MIN: f64 = 0.05;

/// A call about to be sent.
pub(crate) struct Draft {
    pub(crate) machine: String,
    pub(crate) mark: Option<String>,
    pub(crate) target: Option<(String, u32)>,
    pub(crate) set_up: Option<String>,
    pub(crate) message: Message,
    pub(crate) aim: Length,
    pub(crate) readings: Vec<u64>,
    pub(crate) labels: Vec<Label>,
    pub(crate) checked_at: Option<Time>,
    pub(crate) warnings: Vec<DepthWarning>,
    pub(crate) line: Option<LineSide>,
}

/// The entry that sends a call.
pub(crate) fn send(state: &State, by: &By, when: When, draft: Draft) -> Body {
    let amount = match draft.message {
        Message::Measured { amount, .. } => amount.abs(),
        Message::ByEye { .. } | Message::Edge { .. } => Length::ZERO,
    };
    let reminder = keep_out::reminder(state, by, when.now, &draft.machine, draft.mark.as_deref());
    let line = Text::in_each(|language| text(&draft.message, language, ScreenUnit::Tenths).line);
    let mut labels = draft.labels;
    labels.extend(labels_of_place(state, draft.mark.as_deref()));
    let (target, revision) = draft.target.unzip();
    Body::CallSent(CallSent {
        stale_at: when
            .made_at
            .plus_ms(stale_after_ms(amount, DIG_RATE_FT_PER_MIN)),
        text: line,
        machine: draft.machine,
        mark: draft.mark,
        target,
        revision,
        set_up: draft.set_up,
        message: draft.message,
        aim: draft.aim,
        readings: draft.readings,
        labels,
        checked_at: draft.checked_at,
        reminder,
        warnings: draft.warnings,
        line: draft.line,
    })
}

/// What to know about a place: a buried line beside it, a face over it that nobody has inspected.
fn labels_of_place(state: &State, mark: Option<&str>) -> Vec<Label> {
    let Some((site, at)) = state
        .site()
        .zip(mark.and_then(|mark| strip::place_of(state, mark)))
    else {
        return vec![];
    };
    let by_hand = buried::by_hand(site, at).next().map(|_| Label::HandDig);
    let not_inspected = strip::not_inspected(state, at).then_some(Label::FaceNotInspected);
    by_hand.into_iter().chain(not_inspected).collect()
}

/// What a screen shows for a message.
pub fn text(message: &Message, language: Language, unit: ScreenUnit) -> CallText {
    match message {
        Message::Measured {
            correction,
            dev,
            amount,
            tolerance,
            ..
        } => {
            let ground = Ground {
                dev: *dev,
                aim: *dev - *amount,
                tolerance: *tolerance,
            };
            call_text(correction, &ground, language, unit)
        }
        Message::ByEye { word } => quick_text(*word, language),
        Message::Edge { shot } => edge_text(shot, language, unit),
    }
}

/// The entry that ends a call.
pub(crate) fn ended(id: u64, call: &Call, how: Ending) -> Body {
    held_up(id, call, how, None)
}

/// The same, with what holds the work there.
pub(crate) fn held_up(id: u64, call: &Call, how: Ending, held: Option<HeldBy>) -> Body {
    Body::CallEnded(CallEnded {
        call: id,
        machine: call.sent.machine.clone(),
        mark: call.sent.mark.clone(),
        how,
        held,
    })
}

/// Ends the live call of a machine, if it has one.
pub(crate) fn end_live(state: &State, machine: &str, how: Ending) -> Option<Body> {
    let (id, call) = state.live_call(machine)?;
    Some(ended(id, call, how))
}

fn live(state: &State, id: u64) -> Result<&Call, Refusal> {
    state
        .calls
        .get(&id)
        .filter(|call| {
            state
                .live_call(&call.sent.machine)
                .is_some_and(|(live, _)| live == id)
        })
        .ok_or(Refusal::CallNotLive)
}

pub(crate) fn withdraw(state: &State, asked: &WithdrawCall) -> Result<Vec<Body>, Refusal> {
    let call = live(state, asked.call)?;
    Ok(vec![ended(asked.call, call, Ending::Withdrawn)])
}

fn runs(state: &State) -> impl Iterator<Item = (u64, &Call)> {
    // The clock of a call stands still while its machine is stopped.
    state
        .cabs
        .values()
        .filter(|cab| cab.stop.is_none())
        .filter_map(|cab| cab.live)
        .filter_map(|id| Some((id, state.calls.get(&id)?)))
}

pub(crate) fn next_deadline(state: &State) -> Option<Time> {
    runs(state).map(|(_, call)| call.stale_at).min()
}

pub(crate) fn on_deadline(state: &State, now: Time) -> Vec<Body> {
    runs(state)
        .filter(|(_, call)| call.stale_at <= now)
        .map(|(id, call)| ended(id, call, by_age(call)))
        .collect()
}

/// How a call ends that is too old.
pub(crate) fn by_age(call: &Call) -> Ending {
    let grade = matches!(
        call.sent.message,
        Message::Measured {
            correction: Correction::Grade,
            ..
        }
    );
    if grade {
        Ending::GradeRanOut
    } else {
        Ending::StaleByAge
    }
}

/// Warnings are given once for each state; work under a face that is not inspected is remembered.
fn take_warnings(state: &mut State, entry: &Entry, body: &CallSent) {
    for warning in &body.warnings {
        state.cuts.told.insert(Told {
            zone: warning.zone.clone(),
            rule: warning.rule,
            state: warning.state,
        });
    }
    if !body.labels.contains(&Label::FaceNotInspected) {
        return;
    }
    let Some(at) = body
        .mark
        .as_deref()
        .and_then(|mark| strip::place_of(state, mark))
    else {
        return;
    };
    let zones: Vec<String> = state
        .site()
        .map(|site| {
            strip::zones_at(state, site, at)
                .map(|(zone, _)| zone.id.clone())
                .collect()
        })
        .unwrap_or_default();
    for zone in zones {
        let face = state.cuts.face_mut(&zone);
        face.worked_at = face.worked_at.or(Some(entry.at));
    }
}

pub(crate) fn apply_sent(state: &mut State, entry: &Entry, body: &CallSent) {
    take_warnings(state, entry, body);
    let screen = state
        .cabs
        .get(&body.machine)
        .and_then(|cab| cab.device.clone());
    let assigned = state
        .site()
        .zip(body.target.as_deref())
        .and_then(|(site, target)| site.machine_for(target))
        .is_some_and(|machine| machine.id == body.machine);
    state.calls.insert(
        entry.seq,
        Call {
            sent: body.clone(),
            by: entry.by.person.clone(),
            screen,
            assigned,
            held: None,
            made_at: entry.made_at,
            sent_at: entry.at,
            stale_at: body.stale_at,
            state: CallState::Sent,
            delivered_at: None,
            shown_at: None,
            got_at: None,
            witness: None,
            ended_at: None,
        },
    );
    let cab = state.cab_mut(&body.machine);
    cab.live = Some(entry.seq);
    cab.last = Some(entry.seq);
    cab.called_at = Some(entry.at);
    cab.look_asked_at = None;
    cab.cant = None;
    if body.reminder.as_ref().is_some_and(|reminder| reminder.loud) {
        cab.loud_at = Some(entry.at);
    }
    if body.set_up.is_some() {
        cab.works_from.clone_from(&body.set_up);
        cab.last_mark.clone_from(&body.mark);
        cab.paused = None;
    }
}

pub(crate) fn apply_ended(state: &mut State, entry: &Entry, body: &CallEnded) {
    let Some(call) = state.calls.get_mut(&body.call) else {
        return;
    };
    call.state = CallState::Ended { how: body.how };
    call.held.clone_from(&body.held);
    call.ended_at = Some(entry.at);
    let machine = call.sent.machine.clone();
    let cab = state.cab_mut(&machine);
    if cab.live == Some(body.call) {
        cab.live = None;
    }
}

#[cfg(test)]
mod tests;
