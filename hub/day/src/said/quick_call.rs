//! A call by eye, without a number. It never closes a mark.

use earthwork::words::QuickWord;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// A word to one machine.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct QuickCall {
    /// The machine.
    pub machine: String,
    /// The word.
    pub word: QuickWord,
    /// The mark, when it is about one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
}
