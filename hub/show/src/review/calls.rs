//! Each call's way: sent, on the phone, on the screen, got it, ended; and how long each step took.

use std::collections::BTreeMap;

use contract::ToSchema;
use serde::Serialize;

use super::Day;
use day::call::{CallState, Ending};
use day::entry::Body;
use day::state::Call;
use day::time::Time;
use words::Text;

/// A call's way.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct CallHistory {
    /// Its number: the entry that sent it.
    pub call: u64,
    /// The machine that it was for.
    pub machine: String,
    /// The mark that it was about.
    pub mark: Option<String>,
    /// The target.
    pub target: Option<String>,
    /// Its revision.
    pub revision: Option<u32>,
    /// The set-up that it rests on.
    pub set_up: Option<String>,
    /// The entries of the readings behind it.
    pub readings: Vec<u64>,
    /// Who sent it.
    pub by: String,
    /// What is said.
    #[serde(flatten)]
    pub text: Text,
    /// The exact line that was painted, in the screen's language.
    pub shown_text: Option<String>,
    /// When the reading was made.
    pub made_at: Time,
    /// When the hub sent it.
    pub sent_at: Time,
    /// When it reached the phone.
    pub delivered_at: Option<Time>,
    /// When it was painted on a visible page.
    pub shown_at: Option<Time>,
    /// When it was acknowledged.
    pub got_at: Option<Time>,
    /// Who saw the nod, when it was acknowledged by a witness.
    pub witness: Option<String>,
    /// When it ended.
    pub ended_at: Option<Time>,
    /// How it ended; none while it lives.
    pub how: Option<Ending>,
}

/// Every call of the day, in the order in which they went out.
pub fn calls(day: &Day<'_>) -> Vec<CallHistory> {
    let painted: BTreeMap<u64, &str> = day
        .entries
        .iter()
        .filter_map(|entry| match &entry.body {
            Body::CallShown(b) => Some((b.call, b.text.as_str())),
            _ => None,
        })
        .collect();
    let calls = day.state.calls.iter();
    calls
        .map(|(id, call)| of_call(*id, call, painted.get(id).copied()))
        .collect()
}

fn of_call(id: u64, call: &Call, painted: Option<&str>) -> CallHistory {
    let sent = &call.sent;
    CallHistory {
        call: id,
        machine: sent.machine.clone(),
        mark: sent.mark.clone(),
        target: sent.target.clone(),
        revision: sent.revision,
        set_up: sent.set_up.clone(),
        readings: sent.readings.clone(),
        by: call.by.clone(),
        text: sent.text.clone(),
        shown_text: painted.map(str::to_owned),
        made_at: call.made_at,
        sent_at: call.sent_at,
        delivered_at: call.delivered_at,
        shown_at: call.shown_at,
        got_at: call.got_at,
        witness: call.witness.clone(),
        ended_at: call.ended_at,
        how: match call.state {
            CallState::Ended { how } => Some(how),
            _ => None,
        },
    }
}
