//! A photo: the phone promises it with what it is of, its bytes follow and are named by their own hash.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::entry::{Body, Entry};
use crate::record::{Dated, Photo};
use crate::refusal::{Refusal, Thing};
use crate::said::note;
use crate::state::State;

/// Somebody has taken a photo; its bytes follow.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct PromisePhoto {
    /// The phone's own name for it, 8 to 64 letters, digits, `-` or `_`.
    #[schema(min_length = 8, max_length = 64)]
    pub photo: String,
    /// The mark that it is of.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// The entry that it goes with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub entry: Option<u64>,
    /// A word about it; may be empty.
    #[serde(default)]
    pub words: String,
}

/// A photo was taken; its bytes are still on the phone.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct PhotoPromised {
    /// Its name.
    pub photo: String,
    /// The mark that it is of.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// The entry that it goes with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub entry: Option<u64>,
    /// A word about it.
    pub words: String,
}

/// The hub has a photo's bytes on its disk.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AddPhoto {
    /// Its name.
    pub photo: String,
    /// SHA-256 of its bytes, in hex: the name of its file.
    pub sha256: String,
    /// How many bytes.
    pub bytes: u64,
}

/// A photo's bytes have come.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct PhotoAdded {
    /// Its name.
    pub photo: String,
    /// SHA-256 of its bytes, in hex.
    pub sha256: String,
    /// How many bytes.
    pub bytes: u64,
    /// The mark that it is of.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// The entry that it goes with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub entry: Option<u64>,
    /// Who took it.
    pub taken_by: String,
}

/// The shortest and the longest name of a photo.
const NAME: std::ops::RangeInclusive<usize> = 8..=64;

/// The same promise again is no second photo.
pub(crate) fn promise(state: &State, asked: &PromisePhoto) -> Result<Vec<Body>, Refusal> {
    let plain = |c: char| c.is_ascii_alphanumeric() || matches!(c, '-' | '_');
    if !NAME.contains(&asked.photo.len()) || !asked.photo.chars().all(plain) {
        return Err(Refusal::of_the_record(
            "That photo has no proper name. Open the page again and take it anew.",
            "Esa foto no tiene nombre válido. Abra la página otra vez y tómela de nuevo.",
        ));
    }
    note::about(state, asked.mark.as_deref(), asked.entry)?;
    if state.record.photos.contains_key(&asked.photo) {
        return Ok(vec![]);
    }
    Ok(vec![Body::PhotoPromised(PhotoPromised {
        photo: asked.photo.clone(),
        mark: asked.mark.clone(),
        entry: asked.entry,
        words: asked.words.trim().to_owned(),
    })])
}

pub(crate) fn add(state: &State, asked: &AddPhoto) -> Result<Vec<Body>, Refusal> {
    let photo = state.record.photos.get(&asked.photo);
    let photo = photo.ok_or_else(|| Refusal::Unknown {
        what: Thing::Photo,
        name: asked.photo.clone(),
    })?;
    match &photo.added {
        Some(added) if added.said.sha256 == asked.sha256 => return Ok(vec![]),
        Some(_) => {
            return Err(Refusal::of_the_record(
                "That photo has come already, with other bytes. Take a new one.",
                "Esa foto ya llegó, con otro contenido. Tome una nueva.",
            ));
        }
        None => {}
    }
    let promised = &photo.promised;
    Ok(vec![Body::PhotoAdded(PhotoAdded {
        photo: asked.photo.clone(),
        sha256: asked.sha256.clone(),
        bytes: asked.bytes,
        mark: promised.said.mark.clone(),
        entry: promised.said.entry,
        taken_by: promised.by.clone(),
    })])
}

pub(crate) fn apply_promised(state: &mut State, entry: &Entry, body: &PhotoPromised) {
    let photo = Photo {
        promised: Dated::of(entry, body),
        added: None,
    };
    state.record.photos.insert(body.photo.clone(), photo);
}

pub(crate) fn apply_added(state: &mut State, entry: &Entry, body: &PhotoAdded) {
    if let Some(photo) = state.record.photos.get_mut(&body.photo) {
        photo.added = Some(Dated::of(entry, body));
    }
}
