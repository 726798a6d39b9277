//! What is known of the screens: delivered, shown, showing, hidden, lost.

use earthwork::words::{Language, ScreenUnit};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

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
