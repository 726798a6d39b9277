//! The photos of an export: each a line of its own behind the entries, `{"photo":"<its SHA-256>","jpeg":"<base64>"}`. The chain
//! proves the entry that names the hash, the hash proves the bytes; no program is needed to check either.

use std::collections::{BTreeMap, BTreeSet};
use std::io::Write;

use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use day::chain::{Hash, digest};
use day::entry::{Body, Entry};
use serde::Deserialize;
use thiserror::Error;

use crate::store::photos::{PhotoError, Photos};

/// How such a line begins; an entry's begins with its number.
const BEGINS: &str = "{\"photo\":";

/// What is wrong with a photo.
#[derive(Debug, Error)]
pub enum PhotoFault {
    /// The entry's photo is missing or was touched.
    #[error(
        "Entry {seq} names a photo that can't be proven: {source}. The entries themselves are untouched"
    )]
    Lost {
        /// The entry.
        seq: u64,
        /// What is wrong.
        source: PhotoError,
    },
    /// A photo's line is none.
    #[error("the line of a photo can't be read ({0})")]
    Unreadable(String),
    /// A photo that no entry names.
    #[error("the photo {0} is named by no entry before it: it was put in")]
    Unnamed(Hash),
    /// A photo that was carried already.
    #[error("the photo {0} stands there twice: it was put in")]
    Twice(Hash),
    /// Photos stand behind the last entry.
    #[error("entry {0} stands behind a photo: it was put in")]
    Entry(u64),
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Line {
    photo: Hash,
    jpeg: String,
}

/// A photo of an export.
#[derive(Debug)]
pub(super) struct Carried {
    pub(super) sha256: Hash,
    pub(super) bytes: Vec<u8>,
}

/// The photo of a line; none when it is a line of the log.
pub(super) fn carried(line: &str) -> Option<Result<Carried, PhotoFault>> {
    if !line.starts_with(BEGINS) {
        return None;
    }
    let read = || {
        let Line { photo, jpeg } = serde_json::from_str(line).map_err(|error| error.to_string())?;
        let bytes = BASE64_STANDARD.decode(jpeg);
        Ok(Carried {
            sha256: photo,
            bytes: bytes.map_err(|error: base64::DecodeError| error.to_string())?,
        })
    };
    let written = read().and_then(|carried: Carried| {
        if line == written(&carried.sha256, &carried.bytes) {
            Ok(carried)
        } else {
            Err("it was not written like this".to_owned())
        }
    });
    Some(written.map_err(PhotoFault::Unreadable))
}

/// The one way in which a photo is written: not a byte of an export can be another and pass.
fn written(sha256: &str, bytes: &[u8]) -> String {
    let jpeg = BASE64_STANDARD.encode(bytes);
    format!("{BEGINS}\"{sha256}\",\"jpeg\":\"{jpeg}\"}}")
}

/// The photos that entries name, each with the first entry that says that it has come, and which of them a file has shown.
#[derive(Debug, Default)]
pub(super) struct Named {
    first: BTreeMap<Hash, u64>,
    shown: BTreeSet<Hash>,
}

impl Named {
    /// Takes an entry.
    pub(super) fn entry(&mut self, entry: &Entry) {
        if let Body::PhotoAdded(added) = &entry.body {
            self.first.entry(added.sha256.clone()).or_insert(entry.seq);
        }
    }

    /// Takes a photo that a file shows.
    ///
    /// # Errors
    /// [`PhotoFault`] when its bytes do not give its name, or no entry names it.
    pub(super) fn photo(&mut self, carried: &Carried) -> Result<(), PhotoFault> {
        let sha256 = carried.sha256.clone();
        let Some(seq) = self.first.get(&sha256).copied() else {
            return Err(PhotoFault::Unnamed(sha256));
        };
        let has = digest(&carried.bytes);
        if has != sha256 {
            let source = PhotoError::Touched { sha256, has };
            return Err(PhotoFault::Lost { seq, source });
        }
        if self.shown.insert(sha256.clone()) {
            Ok(())
        } else {
            Err(PhotoFault::Twice(sha256))
        }
    }

    /// Whether a file has come to its photos: no entry follows them.
    pub(super) fn has_shown(&self) -> bool {
        !self.shown.is_empty()
    }

    /// The first that an entry names and that no line has shown.
    pub(super) fn missing(&self) -> Option<PhotoFault> {
        let mut all = self.in_order().into_iter();
        let (seq, sha256) = all.find(|(_, sha256)| !self.shown.contains(*sha256))?;
        let sha256 = sha256.clone();
        let source = PhotoError::Missing { sha256 };
        Some(PhotoFault::Lost { seq, source })
    }

    /// How many there are.
    pub(super) fn len(&self) -> usize {
        self.first.len()
    }

    /// In the order in which they came.
    fn in_order(&self) -> Vec<(u64, &Hash)> {
        let mut all: Vec<(u64, &Hash)> =
            self.first.iter().map(|(name, seq)| (*seq, name)).collect();
        all.sort_unstable();
        all
    }

    /// Proves every one of them by the folder's files.
    ///
    /// # Errors
    /// [`PhotoFault::Lost`] for the first that is missing or was touched.
    pub(super) fn prove(&self, photos: &Photos) -> Result<(), PhotoFault> {
        for (seq, sha256) in self.in_order() {
            let lost = |source| PhotoFault::Lost { seq, source };
            photos.read(sha256).map_err(lost)?;
        }
        Ok(())
    }

    /// Writes a line for each that is whole. One that is not keeps nothing else from going out: whoever proves the export is
    /// told of it.
    pub(super) fn write(
        &self,
        photos: &Photos,
        out: &mut (impl Write + ?Sized),
    ) -> Result<(), std::io::Error> {
        for (seq, sha256) in self.in_order() {
            match photos.read(sha256) {
                Ok(bytes) => writeln!(out, "{}", written(sha256, &bytes))?,
                Err(error) => tracing::warn!("Entry {seq}: {error}. The export goes without it."),
            }
        }
        Ok(())
    }
}
