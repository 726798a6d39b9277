//! A call as every screen shows it, with its text in each language and unit.

use contract::ToSchema;
use earthwork::words::CallText;
use serde::Serialize;

use day::call::{CallState, Label, Message, Reminder};
use day::cuts::depth::DepthWarning;
use day::said::call::text;
use day::said::edge::LineSide;
use day::state::{Call, State};
use day::time::Time;

/// A call as the screens show it.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct CallView {
    /// Its number: the sequence number of the entry that sent it.
    pub id: u64,
    /// The machine it is for.
    pub machine: String,
    /// The mark it is about; none for a word by eye without a place.
    pub mark: Option<String>,
    /// The name of the target that it was judged against.
    pub target: Option<String>,
    /// What is told.
    pub message: Message,
    /// The text in each language and unit that a screen of the day has; a screen picks its own.
    pub texts: Vec<CallText>,
    /// What to know about it.
    pub labels: Vec<Label>,
    /// The laser's last good check, when the label says that there was none since.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub checked_at: Option<Time>,
    /// Who sent it.
    pub by: String,
    /// When the reading was made.
    pub made_at: Time,
    /// When the hub sent it.
    pub sent_at: Time,
    /// When it will be too old, as far as is known now.
    pub stale_at: Time,
    /// Where it is in its life.
    pub state: CallState,
    /// When it reached the operator's phone.
    pub delivered_at: Option<Time>,
    /// When it was painted on a visible page.
    pub shown_at: Option<Time>,
    /// When it was acknowledged.
    pub got_at: Option<Time>,
    /// Who saw the nod, when a witness acknowledged it.
    pub witness: Option<String>,
    /// The keep-out reminder.
    pub reminder: Option<Reminder>,
    /// Rules of depth that are near.
    pub warnings: Vec<DepthWarning>,
    /// Of an edge: which line, and on which side it lies.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub line: Option<LineSide>,
}

/// A call as the screens show it.
pub(crate) fn view(state: &State, id: u64, call: &Call) -> CallView {
    let sent = &call.sent;
    let texts = state.screens_speak().into_iter();
    let texts = texts.map(|(language, unit)| text(&sent.message, language, unit));
    let texts = texts.collect();
    CallView {
        id,
        machine: sent.machine.clone(),
        mark: sent.mark.clone(),
        target: sent.target.clone(),
        message: sent.message,
        texts,
        labels: sent.labels.clone(),
        checked_at: sent.checked_at,
        by: call.by.clone(),
        made_at: call.made_at,
        sent_at: call.sent_at,
        stale_at: call.stale_at,
        state: call.state,
        delivered_at: call.delivered_at,
        shown_at: call.shown_at,
        got_at: call.got_at,
        witness: call.witness.clone(),
        reminder: sent.reminder.clone(),
        warnings: sent.warnings.clone(),
        line: sent.line.clone(),
    }
}
