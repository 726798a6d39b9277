//! The hash chain: what a line of the log is, how it is sealed, how it is proven.
//!
//! A line is one JSON object that ends in `,"prev":"<64 hex>","hash":"<64 hex>"}`. The hash is SHA-256 over the bytes of the
//! line with the hash member cut out, that is, over everything before `,"hash":` and then `}`. So anyone can prove a
//! line with a text editor and `sha256sum`, and no program has to write JSON in the very same way again.

use sha2::{Digest, Sha256};
use thiserror::Error;

use crate::entry::Entry;
use crate::older;

/// A SHA-256 digest in lower-case hex.
pub type Hash = String;

/// What stands before the first entry.
pub const GENESIS: &str = "0000000000000000000000000000000000000000000000000000000000000000";

const HASH_MEMBER: &str = ",\"hash\":\"";
const PREV_MEMBER: &str = ",\"prev\":\"";
const HEX: usize = 64;

/// A line ready for the log.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sealed {
    /// The line, without its newline.
    pub line: String,
    /// Its hash: the `prev` of the next.
    pub hash: Hash,
}

/// What is wrong with a line.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum ChainError {
    /// Not a line of the log at all.
    #[error("line {line}: not an entry of the log ({reason})")]
    NotAnEntry {
        /// Which line, from 1.
        line: u64,
        /// Why.
        reason: String,
    },
    /// Its bytes were changed.
    #[error(
        "entry {seq}: its text does not give its own hash: it was changed after it was written"
    )]
    Changed {
        /// Which entry.
        seq: u64,
    },
    /// The entry before it is not the one that it was chained to.
    #[error(
        "entry {seq}: it does not follow the entry before it: something was changed, removed or put in between"
    )]
    Broken {
        /// Which entry.
        seq: u64,
    },
    /// A number is missing or doubled.
    #[error("entry {seq}: the number should be {expected}")]
    Numbering {
        /// Which entry.
        seq: u64,
        /// What it should be.
        expected: u64,
    },
    /// An entry could not be written as JSON.
    #[error("entry {seq} can't be written: {reason}")]
    Unwritable {
        /// Which entry.
        seq: u64,
        /// Why.
        reason: String,
    },
}

/// SHA-256 of some bytes, in lower-case hex.
pub fn digest(bytes: &[u8]) -> Hash {
    use std::fmt::Write as _;
    Sha256::digest(bytes)
        .iter()
        .fold(String::with_capacity(HEX), |mut hex, byte| {
            // Writing to a string can't fail.
            let _ = write!(hex, "{byte:02x}");
            hex
        })
}

/// Seals an entry behind the one whose hash is `prev`.
///
/// # Errors
/// [`ChainError::Unwritable`] when the entry can't be written as JSON.
pub fn seal(entry: &Entry, prev: &str) -> Result<Sealed, ChainError> {
    let mut line = serde_json::to_string(entry).map_err(|error| ChainError::Unwritable {
        seq: entry.seq,
        reason: error.to_string(),
    })?;
    line.pop();
    line.push_str(PREV_MEMBER);
    line.push_str(prev);
    line.push_str("\"}");
    let hash = digest(line.as_bytes());
    line.pop();
    line.push_str(HASH_MEMBER);
    line.push_str(&hash);
    line.push_str("\"}");
    Ok(Sealed { line, hash })
}

/// Opens one line: the entry, the hash that it follows, and its own hash, proven against its text.
///
/// # Errors
/// [`ChainError::NotAnEntry`] or [`ChainError::Changed`]; `number` is the line's number, from 1.
pub fn open(line: &str, number: u64) -> Result<(Entry, Hash, Hash), ChainError> {
    let not = |reason: &str| ChainError::NotAnEntry {
        line: number,
        reason: reason.to_owned(),
    };
    let tail = HASH_MEMBER.len() + HEX + 2;
    let cut = line
        .len()
        .checked_sub(tail)
        .filter(|cut| line.is_char_boundary(*cut))
        .ok_or_else(|| not("too short"))?;
    let (kept, hash_part) = line.split_at(cut);
    let hash = hash_part
        .strip_prefix(HASH_MEMBER)
        .and_then(|rest| rest.strip_suffix("\"}"))
        .ok_or_else(|| not("it does not end in its hash"))?;
    let prev_tail = PREV_MEMBER.len() + HEX + 1;
    let prev = kept
        .len()
        .checked_sub(prev_tail)
        .and_then(|at| kept.get(at..))
        .and_then(|part| part.strip_prefix(PREV_MEMBER))
        .and_then(|rest| rest.strip_suffix('"'))
        .ok_or_else(|| not("it does not name the entry before it"))?;
    let entry = older::read(line).map_err(|error| ChainError::NotAnEntry {
        line: number,
        reason: error.to_string(),
    })?;
    if digest(format!("{kept}}}").as_bytes()) != hash {
        return Err(ChainError::Changed { seq: entry.seq });
    }
    Ok((entry, prev.to_owned(), hash.to_owned()))
}

/// A proof that walks along the log, one line at a time.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Walk {
    /// The last entry's number; 0 before the first.
    pub seq: u64,
    /// The last entry's hash.
    pub hash: Hash,
    lines: u64,
}

impl Default for Walk {
    fn default() -> Self {
        Self::from_head(0, GENESIS.to_owned())
    }
}

impl Walk {
    /// A walk that goes on behind a known entry.
    pub fn from_head(seq: u64, hash: Hash) -> Self {
        Self {
            seq,
            hash,
            lines: 0,
        }
    }

    /// Takes the next line.
    ///
    /// # Errors
    /// The first thing that is wrong with it.
    pub fn step(&mut self, line: &str) -> Result<Entry, ChainError> {
        self.lines += 1;
        let (entry, prev, hash) = open(line, self.lines)?;
        if entry.seq != self.seq + 1 {
            return Err(ChainError::Numbering {
                seq: entry.seq,
                expected: self.seq + 1,
            });
        }
        if prev != self.hash {
            return Err(ChainError::Broken { seq: entry.seq });
        }
        self.seq = entry.seq;
        self.hash = hash;
        Ok(entry)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::By;
    use crate::entry::Body;
    use crate::said::day::DayOpened;
    use crate::time::Time;

    fn log(n: u64) -> Vec<String> {
        let mut prev = GENESIS.to_owned();
        (1..=n)
            .map(|seq| {
                let entry = Entry {
                    seq,
                    at: Time(1),
                    made_at: Time(1),
                    by: By::hub(),
                    key: format!("k{seq}"),
                    body: Body::DayOpened(DayOpened::of(&format!("día “{seq}”"))),
                };
                let sealed = seal(&entry, &prev).unwrap();
                prev = sealed.hash;
                sealed.line
            })
            .collect()
    }

    fn walk(lines: &[String]) -> Result<Walk, ChainError> {
        let mut walk = Walk::default();
        for line in lines {
            walk.step(line)?;
        }
        Ok(walk)
    }

    #[test]
    fn an_untouched_log_proves_itself() {
        assert_eq!(walk(&log(5)).unwrap().seq, 5);
    }

    #[test]
    fn one_changed_byte_anywhere_is_named() {
        let lines = log(3);
        let line = &lines[1];
        for at in 0..line.len() {
            let mut bytes = line.clone().into_bytes();
            bytes[at] ^= 1;
            let Ok(changed) = String::from_utf8(bytes) else {
                continue;
            };
            let mut copy = lines.clone();
            copy[1] = changed;
            assert!(walk(&copy).is_err(), "byte {at} was changed unnoticed");
        }
    }

    #[test]
    fn a_line_cut_out_or_doubled_is_named() {
        let lines = log(4);
        let mut cut = lines.clone();
        cut.remove(1);
        assert_eq!(
            walk(&cut),
            Err(ChainError::Numbering {
                seq: 3,
                expected: 2
            })
        );
        let mut doubled = lines.clone();
        doubled.insert(1, lines[0].clone());
        assert!(walk(&doubled).is_err());
    }

    #[test]
    fn the_hash_can_be_checked_by_hand() {
        // FIPS 180-4, example: SHA-256 of "abc".
        assert_eq!(
            digest(b"abc"),
            "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
        );
    }
}
