//! A day begins. Its name owns its entries, whatever the clock does at midnight.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The hub opens a day.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct OpenDay {
    /// Its name: the date on the hub's clock at opening, such as `2030-05-14`.
    pub day: String,
}

/// A day began.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct DayOpened {
    /// Its name.
    pub day: String,
}
