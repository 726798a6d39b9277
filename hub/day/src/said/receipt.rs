//! What is known of the screens: delivered, shown, showing, hidden, lost.

use earthwork::words::{Language, ScreenUnit};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::asked::By;
use crate::entry::{Body, Entry};
use crate::refusal::Refusal;
use crate::said::call;
use crate::state::{Screen, State};
use crate::views::call::CallState;

/// The call has reached this operator's phone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Delivered {
    /// Which.
    pub call: u64,
}

/// A call reached the operator's phone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CallDelivered {
    /// Which.
    pub call: u64,
    /// The machine that it is for.
    pub machine: String,
    /// The mark that it is about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// Which phone.
    pub device: String,
}

/// The call has been painted on this visible page for a second.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Shown {
    /// Which.
    pub call: u64,
    /// In which language.
    pub language: Language,
    /// In which unit.
    pub unit: ScreenUnit,
}

/// A call was painted on a visible page: not the same as seen by a person.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CallShown {
    /// Which.
    pub call: u64,
    /// The machine that it is for.
    pub machine: String,
    /// The mark that it is about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// Which phone.
    pub device: String,
    /// The exact line that was shown.
    pub text: String,
}

/// The hub notices that an operator's page shows, is hidden, or is gone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NoticeScreen {
    /// Which phone.
    pub device: String,
    /// What it noticed.
    pub screen: ScreenNotice,
}

/// An operator's page began or ceased to show.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ScreenNoticed {
    /// Which phone.
    pub device: String,
    /// Whose cab.
    pub machine: String,
    /// What was noticed.
    pub screen: ScreenNotice,
}

/// Whether a page can be seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum ScreenNotice {
    /// Visible, with a live link.
    Showing,
    /// Hidden or locked.
    Hidden,
    /// The link is gone.
    Lost,
}

pub(crate) fn delivered(state: &State, by: &By, asked: &Delivered) -> Result<Vec<Body>, Refusal> {
    let call = call::own_live(state, by, asked.call)?;
    if call.state != CallState::Sent {
        return Ok(vec![]);
    }
    Ok(vec![Body::CallDelivered(CallDelivered {
        call: asked.call,
        machine: call.sent.machine.clone(),
        mark: call.sent.mark.clone(),
        device: by.device.clone(),
    })])
}

pub(crate) fn shown(state: &State, by: &By, asked: &Shown) -> Result<Vec<Body>, Refusal> {
    let call = call::own_live(state, by, asked.call)?;
    if call.shown_at.is_some() {
        return Ok(vec![]);
    }
    let text = call::text(&call.sent.message, asked.language, asked.unit);
    Ok(vec![Body::CallShown(CallShown {
        call: asked.call,
        machine: call.sent.machine.clone(),
        mark: call.sent.mark.clone(),
        device: by.device.clone(),
        text: text.line,
    })])
}

/// What the hub noticed of an operator's screen; a phone that is not a cab's screen is of no account, and none is once the day
/// is closed.
pub(crate) fn notice(state: &State, asked: &NoticeScreen) -> Vec<Body> {
    if state.record.closed.is_some() {
        return vec![];
    }
    let Some((machine, cab)) = state
        .cabs
        .iter()
        .find(|(_, cab)| cab.device.as_deref() == Some(&asked.device))
    else {
        return vec![];
    };
    let known = match cab.screen {
        Screen::Showing => Some(ScreenNotice::Showing),
        Screen::Hidden(_) => Some(ScreenNotice::Hidden),
        Screen::Lost(_) => Some(ScreenNotice::Lost),
        Screen::None => None,
    };
    if known == Some(asked.screen) {
        return vec![];
    }
    vec![Body::ScreenNoticed(ScreenNoticed {
        device: asked.device.clone(),
        machine: machine.clone(),
        screen: asked.screen,
    })]
}

pub(crate) fn apply_delivered(state: &mut State, entry: &Entry, body: &CallDelivered) {
    if let Some(call) = state.calls.get_mut(&body.call) {
        call.state = CallState::Delivered;
        call.delivered_at = Some(entry.at);
    }
}

pub(crate) fn apply_shown(state: &mut State, entry: &Entry, body: &CallShown) {
    if let Some(call) = state.calls.get_mut(&body.call) {
        call.shown_at = Some(entry.at);
        if matches!(call.state, CallState::Sent | CallState::Delivered) {
            call.state = CallState::Shown;
        }
    }
}

pub(crate) fn apply_noticed(state: &mut State, entry: &Entry, body: &ScreenNoticed) {
    state.cab_mut(&body.machine).screen = match body.screen {
        ScreenNotice::Showing => Screen::Showing,
        ScreenNotice::Hidden => Screen::Hidden(entry.at),
        ScreenNotice::Lost => Screen::Lost(entry.at),
    };
}
