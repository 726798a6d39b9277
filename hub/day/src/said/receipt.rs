//! What is known of the screens: delivered, shown, showing, hidden, lost.

use contract::ToSchema;
use earthwork::words::ScreenUnit;
use serde::{Deserialize, Serialize};
use words::Language;

use crate::asked::{By, Role};
use crate::cab;
use crate::call::CallState;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::Refusal;
use crate::said::call;
use crate::saying::{Asking, Closed, Saying};
use crate::state::{Call, Screen, State};

/// The call has reached this operator's phone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Delivered {
    /// Which.
    pub call: u64,
}

impl Saying for Delivered {
    const BY: &'static [Role] = &[Role::Operator];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        delivered(at.state, at.by, self)
    }
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

impl Happening for CallDelivered {
    const TOUCHES: Touches = Touches::Call;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_delivered(state, entry, self);
    }
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

impl Saying for Shown {
    const BY: &'static [Role] = &[Role::Operator];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        shown(at.state, at.by, self)
    }
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

impl Happening for CallShown {
    const TOUCHES: Touches = Touches::Call;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_shown(state, entry, self);
    }
}

/// The hub notices that an operator's page shows, is hidden, or is gone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NoticeScreen {
    /// Which phone.
    pub device: String,
    /// What it noticed.
    pub screen: ScreenNotice,
    /// What the page said of itself; nothing when it has said nothing.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub page: Option<CabPage>,
}

impl Saying for NoticeScreen {
    const BY: &'static [Role] = &[Role::Hub];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        Ok(notice(at.state, self))
    }
}

/// What an operator's page says of itself: what a live link and a visible page do not tell.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(default)]
pub struct CabPage {
    /// A panel or the plan lies over the number.
    pub covered: bool,
    /// Nobody has tapped it since it was loaded: it can make no sound.
    pub mute: bool,
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
    /// What the page said of itself.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub page: Option<CabPage>,
}

impl Happening for ScreenNoticed {
    const TOUCHES: Touches = Touches::Call;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_noticed(state, entry, self);
    }
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
    // What was painted a second ago and is gone under a stop has been seen for no second: no receipt, and no error.
    if !cab::fills_with_a_call(state, &call.sent.machine) {
        return Ok(vec![]);
    }
    let body = painted(by, asked.call, call, asked.language, asked.unit);
    Ok(vec![body])
}

/// The entry that this call was painted on the asker's page.
fn painted(by: &By, id: u64, call: &Call, language: Language, unit: ScreenUnit) -> Body {
    Body::CallShown(CallShown {
        call: id,
        machine: call.sent.machine.clone(),
        mark: call.sent.mark.clone(),
        device: by.device.clone(),
        text: call::text(&call.sent.message, language, unit).line,
    })
}

/// Whoever presses GOT IT has seen the number: a press within the first second of a call tells that it was shown, too.
pub(crate) fn seen_by_press(
    state: &State,
    by: &By,
    id: u64,
    call: &Call,
) -> Result<Option<Body>, Refusal> {
    if call.shown_at.is_some() {
        return Ok(None);
    }
    if !cab::fills_with_a_call(state, &call.sent.machine) {
        return Err(not_seen());
    }
    let phone = state.device(&by.device);
    let (language, unit) = phone.map_or((Language::English, ScreenUnit::Tenths), |phone| {
        (phone.language, phone.unit)
    });
    Ok(Some(painted(by, id, call, language, unit)))
}

/// Under a stop, an ask, a face to leave, a pause or a new target no number stands on the screen: nobody has seen it there.
fn not_seen() -> Refusal {
    Refusal::HeldBack(words::receipt::number_not_cab_screen_now().into())
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
    // A panel over no number is no news.
    let page = asked.page.filter(|page| {
        let covers = page.covered && !cab.page.covered;
        let uncovers = cab.page.covered && !page.covered;
        page.mute != cab.page.mute || uncovers || (covers && cab.live.is_some())
    });
    if known == Some(asked.screen) && page.is_none() {
        return vec![];
    }
    vec![Body::ScreenNoticed(ScreenNoticed {
        device: asked.device.clone(),
        machine: machine.clone(),
        screen: asked.screen,
        page,
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
    let cab = state.cab_mut(&body.machine);
    cab.screen = match (body.screen, cab.screen) {
        (ScreenNotice::Showing, _) => Screen::Showing,
        // Hidden or lost since then: what the page says of itself meanwhile does not begin it anew.
        (ScreenNotice::Hidden, Screen::Hidden(since)) => Screen::Hidden(since),
        (ScreenNotice::Lost, Screen::Lost(since)) => Screen::Lost(since),
        (ScreenNotice::Hidden, _) => Screen::Hidden(entry.at),
        (ScreenNotice::Lost, _) => Screen::Lost(entry.at),
    };
    if let Some(page) = body.page {
        cab.page = page;
    }
}
