//! What can happen on the way in: one struct each, in the past tense, as the log keeps it.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "serde hands over a reference"
)]
pub(crate) fn is_none(others: &u32) -> bool {
    *others == 0
}

/// Somebody asked to come in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct EntryAsked {
    /// The machine whose keep-out it is.
    pub machine: String,
    /// The visit, named by the person's phone.
    pub visit: String,
    /// Who.
    pub person: String,
    /// On which phone.
    pub device: String,
    /// Where to, when it is a mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// How many come along, whom this person leads.
    #[serde(default, skip_serializing_if = "is_none")]
    pub others: u32,
}

/// Nobody has answered: it is asked again, louder.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct AskRepeated {
    /// The machine.
    pub machine: String,
    /// The visit.
    pub visit: String,
    /// Who asks.
    pub person: String,
}

/// Whoever asked is not coming in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct AskWithdrawn {
    /// The machine.
    pub machine: String,
    /// The visit.
    pub visit: String,
    /// Who.
    pub person: String,
}

/// The operator says WAIT.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct EntryDelayed {
    /// The machine.
    pub machine: String,
    /// The visit.
    pub visit: String,
    /// Who waits.
    pub person: String,
}

/// The operator says no.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct EntryRefused {
    /// The machine.
    pub machine: String,
    /// The visit.
    pub visit: String,
    /// Who stays out.
    pub person: String,
    /// Why, when the operator said it.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub why: String,
}

/// The operator held BUCKET DOWN · LEVER LOCKED.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct BucketIsDown {
    /// The machine.
    pub machine: String,
    /// Who held it.
    pub operator: String,
    /// The visits that it answers: those that the operator's screen named.
    pub answers: Vec<String>,
    /// Their people.
    pub people: Vec<String>,
}

/// Somebody went in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct PersonIn {
    /// The machine.
    pub machine: String,
    /// The visit.
    pub visit: String,
    /// Who.
    pub person: String,
    /// On which phone.
    pub device: String,
    /// Where to, when it is a mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// The operator had answered; without it this is an UNCONFIRMED ENTRY.
    pub confirmed: bool,
    /// How many come along, whom this person leads.
    #[serde(default, skip_serializing_if = "is_none")]
    pub others: u32,
}

/// Somebody is out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct PersonOut {
    /// The machine.
    pub machine: String,
    /// The visit.
    pub visit: String,
    /// Who.
    pub person: String,
    /// The gate still held the visit; false for a word that only agrees with what was known.
    pub was_in: bool,
    /// Who saw it, when the person did not say so.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub witness: Option<String>,
    /// What the witness saw.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub why: String,
    /// The phone that said it, when it is not the one of the visit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub phone: Option<String>,
}

/// Whoever was said to be out by another phone has seen that, and agrees.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct OutSeen {
    /// The machine.
    pub machine: String,
    /// The visit.
    pub visit: String,
    /// Who.
    pub person: String,
}

/// RELEASE was pressed while somebody may be in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct ReleaseRefused {
    /// The machine.
    pub machine: String,
    /// Who may be in.
    pub people: Vec<String>,
}

/// The operator released the machine: nobody has said that they are in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Released {
    /// The machine.
    pub machine: String,
}

/// The link of somebody who has asked or is in was lost, or came back.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct LinkNoticed {
    /// The phone.
    pub device: String,
    /// Whose.
    pub person: String,
    /// Lost; else back.
    pub lost: bool,
}

/// Anything that happens on the way in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Step {
    /// Somebody asked.
    EntryAsked(EntryAsked),
    /// It was asked again.
    AskRepeated(AskRepeated),
    /// The ask was taken back.
    AskWithdrawn(AskWithdrawn),
    /// WAIT.
    EntryDelayed(EntryDelayed),
    /// No.
    EntryRefused(EntryRefused),
    /// BUCKET DOWN · LEVER LOCKED.
    BucketIsDown(BucketIsDown),
    /// Somebody went in.
    PersonIn(PersonIn),
    /// Somebody is out.
    PersonOut(PersonOut),
    /// An OUT that another phone said is seen.
    OutSeen(OutSeen),
    /// A release that was refused.
    ReleaseRefused(ReleaseRefused),
    /// Released.
    Released(Released),
    /// A link was lost or came back.
    LinkNoticed(LinkNoticed),
}

impl Step {
    /// The machine that it is about; none for a link, which is about every machine where its person is.
    pub fn machine(&self) -> Option<&str> {
        Some(match self {
            Self::EntryAsked(b) => &b.machine,
            Self::AskRepeated(b) => &b.machine,
            Self::AskWithdrawn(b) => &b.machine,
            Self::EntryDelayed(b) => &b.machine,
            Self::EntryRefused(b) => &b.machine,
            Self::BucketIsDown(b) => &b.machine,
            Self::PersonIn(b) => &b.machine,
            Self::PersonOut(b) => &b.machine,
            Self::OutSeen(b) => &b.machine,
            Self::ReleaseRefused(b) => &b.machine,
            Self::Released(b) => &b.machine,
            Self::LinkNoticed(_) => return None,
        })
    }
}
