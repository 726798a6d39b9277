//! Phones come in by a code, change their language, and are removed.

use earthwork::words::{Language, ScreenUnit};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::asked::Role;

/// The hub lets somebody in who showed a valid code.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Join {
    /// The name that the hub gave the device.
    pub device: String,
    /// SHA-256 of the device's cookie, in hex; the cookie itself is never written down.
    pub token_digest: String,
    /// Name or initials.
    pub person: String,
    /// Roles that the code allows.
    pub roles: Vec<Role>,
    /// The machine, for an operator.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
    /// The screen's language.
    pub language: Language,
    /// The screen's unit.
    pub unit: ScreenUnit,
}

/// A phone came in.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Joined {
    /// The device.
    pub device: String,
    /// SHA-256 of its cookie, in hex.
    pub token_digest: String,
    /// Name or initials.
    pub person: String,
    /// Its roles.
    pub roles: Vec<Role>,
    /// Its machine.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
    /// Its language.
    pub language: Language,
    /// Its unit.
    pub unit: ScreenUnit,
    /// The device that was this machine's screen until now.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub retires: Option<String>,
}

/// Language and unit of the asker's own screen.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ChangeScreen {
    /// The language.
    pub language: Language,
    /// The unit.
    pub unit: ScreenUnit,
}

/// A screen's language or unit changed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ScreenChanged {
    /// The device.
    pub device: String,
    /// The language.
    pub language: Language,
    /// The unit.
    pub unit: ScreenUnit,
}

/// A supervisor removes a phone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RemovePhone {
    /// Which.
    pub device: String,
}

/// A phone was removed: its cookie opens nothing any more.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PhoneRemoved {
    /// Which.
    pub device: String,
}

/// A supervisor voids the day's codes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RenewCodes {}

/// The day's codes were made anew.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CodesRenewed {
    /// How often, this day.
    pub generation: u32,
}
