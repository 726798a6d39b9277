//! Photos as a phone makes them: reduced to JPEG, promised by their hash.

use std::fmt::Write as _;

use jpeg_encoder::{ColorType, Encoder};
use serde_json::{Value, json};
use sha2::{Digest, Sha256};

use super::phone::{Phone, Reply};

/// A photo with its name.
pub(crate) struct Photo {
    /// The phone's name for it.
    pub(crate) name: String,
    /// Its bytes.
    pub(crate) bytes: Vec<u8>,
}

impl Photo {
    /// A picture of this size; another name gives another picture.
    pub(crate) fn new(name: &str, width: u16, height: u16) -> Self {
        let seed = name.bytes().map(usize::from).sum::<usize>();
        let dots = usize::from(width) * usize::from(height);
        let grain = (0..dots).map(|at| u8::try_from((at * seed) % 251).unwrap_or(0));
        let grain: Vec<u8> = grain.collect();
        let mut bytes = Vec::new();
        let encoder = Encoder::new(&mut bytes, 80);
        let encoded = encoder.encode(&grain, width, height, ColorType::Luma);
        encoded.expect("a picture");
        Self {
            name: name.to_owned(),
            bytes,
        }
    }

    /// The same with a part behind the start of the image, as ITU-T T.81, annex B, has it.
    pub(crate) fn with_part(&self, marker: u8, content: &[u8]) -> Self {
        let length = u16::try_from(content.len() + 2).expect("a short part");
        let part = [&[0xff, marker], &length.to_be_bytes()[..], content].concat();
        Self {
            name: self.name.clone(),
            bytes: [&self.bytes[..2], &part, &self.bytes[2..]].concat(),
        }
    }

    /// SHA-256 of its bytes, in hex; FIPS 180-4, by a library.
    pub(crate) fn sha256(&self) -> String {
        let digest = Sha256::digest(&self.bytes);
        digest.iter().fold(String::new(), |mut hex, byte| {
            write!(hex, "{byte:02x}").expect("a string takes it");
            hex
        })
    }

    /// The promise of it, of a mark.
    pub(crate) fn promise(&self, mark: &str) -> Value {
        json!({ "kind": "promise_photo", "photo": self.name, "sha256": self.sha256(), "mark": mark, "words": "scarp" })
    }

    /// Where its bytes go.
    pub(crate) fn path(&self) -> String {
        format!("/api/photos/{}", self.name)
    }

    /// Brings its bytes.
    pub(crate) fn comes(&self, phone: &Phone) -> Reply {
        phone.put(&self.path(), &self.bytes)
    }
}
