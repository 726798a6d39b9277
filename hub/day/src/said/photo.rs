//! A photo: the phone promises it with what it is of and with the hash of its bytes; the bytes follow, and no others are taken.
//!
//! The promise names two hashes. That of the reduced photo binds the phone before it has sent anything: what comes later, from
//! whatever phone, is that picture or is refused. That of the file from which it was reduced proves, should its owner still
//! have it and give it to somebody, that it is the one; the hub never sees it.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::record::{Dated, Photo};
use crate::refusal::{Refusal, Thing};
use crate::said::{face_seen, note};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// Somebody has taken a photo; its bytes follow.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct PromisePhoto {
    /// The phone's own name for it, 8 to 64 letters, digits, `-` or `_`.
    #[schema(min_length = 8, max_length = 64)]
    pub photo: String,
    /// SHA-256 of the bytes that follow, in lower-case hex.
    #[schema(min_length = 64, max_length = 64)]
    pub sha256: String,
    /// SHA-256 of the file from which it was reduced.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub original: Option<String>,
    /// The mark that it is of.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// The face that it is of.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub face: Option<String>,
    /// The entry that it goes with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub entry: Option<u64>,
    /// A word about it; may be empty.
    #[serde(default)]
    pub words: String,
}

impl Saying for PromisePhoto {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        promise(at.state, self)
    }
}

/// A photo was taken; its bytes are still on the phone.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct PhotoPromised {
    /// Its name.
    pub photo: String,
    /// SHA-256 of the bytes that are to come; none in the oldest logs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sha256: Option<String>,
    /// SHA-256 of the file from which it was reduced, as the phone says.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub original: Option<String>,
    /// The mark that it is of.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// The face that it is of.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub face: Option<String>,
    /// The entry that it goes with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub entry: Option<u64>,
    /// A word about it.
    pub words: String,
}

impl Happening for PhotoPromised {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_promised(state, entry, self);
    }
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

impl Saying for AddPhoto {
    const BY: &'static [Role] = &[Role::Hub];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        add(at.state, self)
    }
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

impl Happening for PhotoAdded {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_added(state, entry, self);
    }
}

/// A supervisor does not wait for a photo any more: its phone is lost, or has forgotten it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct GiveUpPhoto {
    /// Its name.
    pub photo: String,
    /// Why it will not come.
    pub why: String,
}

impl Saying for GiveUpPhoto {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        give_up(at.state, self)
    }
}

/// A photo that was promised is not waited for any more. Should its bytes come all the same, they are taken.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct PhotoGivenUp {
    /// Its name.
    pub photo: String,
    /// Why it will not come.
    pub why: String,
    /// Who took it.
    pub taken_by: String,
    /// The mark that it is of.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
}

impl Happening for PhotoGivenUp {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_given_up(state, entry, self);
    }
}

/// The shortest and the longest name of a photo.
const NAME: std::ops::RangeInclusive<usize> = 8..=64;

/// Digits of a SHA-256 in hex.
const HEX: usize = 64;

/// The same promise again is no second photo.
pub(crate) fn promise(state: &State, asked: &PromisePhoto) -> Result<Vec<Body>, Refusal> {
    let plain = |c: char| c.is_ascii_alphanumeric() || matches!(c, '-' | '_');
    if !NAME.contains(&asked.photo.len()) || !asked.photo.chars().all(plain) {
        return Err(Refusal::of_the_record(
            words::photo::photo_has_no_proper_name(),
        ));
    }
    if !is_hash(&asked.sha256) || !asked.original.as_deref().is_none_or(is_hash) {
        return Err(Refusal::of_the_record(
            words::photo::photo_has_no_proper_hash(),
        ));
    }
    note::about(state, asked.mark.as_deref(), asked.entry)?;
    if let Some(face) = &asked.face {
        face_seen::zone(state, face)?;
    }
    if let Some(known) = state.record.photos.get(&asked.photo) {
        return if known.promised.said.sha256.as_ref() == Some(&asked.sha256) {
            Ok(vec![])
        } else {
            Err(other_bytes())
        };
    }
    Ok(vec![Body::PhotoPromised(PhotoPromised {
        photo: asked.photo.clone(),
        sha256: Some(asked.sha256.clone()),
        original: asked.original.clone(),
        mark: asked.mark.clone(),
        face: asked.face.clone(),
        entry: asked.entry,
        words: asked.words.trim().to_owned(),
    })])
}

fn is_hash(text: &str) -> bool {
    let hex = |c: char| c.is_ascii_digit() || ('a'..='f').contains(&c);
    text.len() == HEX && text.chars().all(hex)
}

fn other_bytes() -> Refusal {
    Refusal::of_the_record(words::photo::those_are_not_bytes_were())
}

pub(crate) fn add(state: &State, asked: &AddPhoto) -> Result<Vec<Body>, Refusal> {
    let photo = state.record.photos.get(&asked.photo);
    let photo = photo.ok_or_else(|| unknown(&asked.photo))?;
    let promised = &photo.promised;
    let added = photo.added.as_ref().map(|added| &added.said.sha256);
    match added.or(promised.said.sha256.as_ref()) {
        Some(sha256) if *sha256 != asked.sha256 => return Err(other_bytes()),
        _ if added.is_some() => return Ok(vec![]),
        _ => {}
    }
    Ok(vec![Body::PhotoAdded(PhotoAdded {
        photo: asked.photo.clone(),
        sha256: asked.sha256.clone(),
        bytes: asked.bytes,
        mark: promised.said.mark.clone(),
        entry: promised.said.entry,
        taken_by: promised.by.clone(),
    })])
}

/// Only what is owed can be given up, and only with a reason.
pub(crate) fn give_up(state: &State, asked: &GiveUpPhoto) -> Result<Vec<Body>, Refusal> {
    let photo = state.record.photos.get(&asked.photo);
    let photo = photo.ok_or_else(|| unknown(&asked.photo))?;
    let why = asked.why.trim();
    if why.is_empty() {
        return Err(Refusal::say_why(words::photo::why_photo_will_not_come()));
    }
    if !photo.is_owed() {
        return Ok(vec![]);
    }
    Ok(vec![Body::PhotoGivenUp(PhotoGivenUp {
        photo: asked.photo.clone(),
        why: why.to_owned(),
        taken_by: photo.promised.by.clone(),
        mark: photo.promised.said.mark.clone(),
    })])
}

fn unknown(photo: &str) -> Refusal {
    Refusal::Unknown {
        what: Thing::Photo,
        name: photo.to_owned(),
    }
}

/// Whether the hub still wants these bytes: they were promised and have not come.
///
/// # Errors
/// [`Refusal`] when nobody promised them.
pub fn wants(state: &State, bytes: &AddPhoto) -> Result<bool, Refusal> {
    Ok(!add(state, bytes)?.is_empty())
}

/// Photos whose bytes have not come, by the hash that was promised; how many bytes it will be nobody knows yet.
pub fn owed(state: &State) -> Vec<AddPhoto> {
    let photos = state.record.photos.iter();
    let photos = photos.filter(|(_, photo)| photo.added.is_none());
    photos
        .filter_map(|(name, photo)| {
            Some(AddPhoto {
                photo: name.clone(),
                sha256: photo.promised.said.sha256.clone()?,
                bytes: 0,
            })
        })
        .collect()
}

pub(crate) fn apply_promised(state: &mut State, entry: &Entry, body: &PhotoPromised) {
    let photo = Photo {
        promised: Dated::of(entry, body),
        made_at: Some(entry.made_at),
        given_up: None,
        added: None,
    };
    state.record.photos.insert(body.photo.clone(), photo);
}

pub(crate) fn apply_given_up(state: &mut State, entry: &Entry, body: &PhotoGivenUp) {
    if let Some(photo) = state.record.photos.get_mut(&body.photo) {
        photo.given_up = Some(Dated::of(entry, body));
    }
}

pub(crate) fn apply_added(state: &mut State, entry: &Entry, body: &PhotoAdded) {
    if let Some(photo) = state.record.photos.get_mut(&body.photo) {
        photo.added = Some(Dated::of(entry, body));
    }
}
