//! The index over the log, in sled: the only file that names sled. All of it can be made anew from the log.
//!
//! One tree, so that a batch and the head that it leads to are taken together. Keys begin with a letter for what they are:
//! `H` head · `L` seq → where its line stands · `K` device, key → seq · `M` mark, `P` person, `E` machine, `T` kind, each → seq ·
//! `O` a day's first entry → the state that it opened with.

use std::fs::File;
use std::io::{Read as _, Seek as _, SeekFrom};
use std::panic::AssertUnwindSafe;
use std::path::{Path, PathBuf};
use std::time::Instant;

use day::chain::{Hash, open};
use day::entry::Entry;
use show::tell::tell;
use sled::{Batch, Db, IVec};

use super::day_file::{Located, Location};
use super::put_by::known_by;
use super::{Head, LOCK_PATIENCE, LOCK_PAUSE, StoreError};

/// sled's own cache; its default of a gibibyte is a whole small laptop.
const CACHE_BYTES: u64 = 64 << 20;

/// The index, open; clones share it.
#[derive(Clone, Debug)]
pub struct Index {
    db: Db,
    logs: PathBuf,
}

/// By what the log can be looked through.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum By {
    /// A mark's name.
    Mark,
    /// A person, as they named themselves.
    Person,
    /// A machine.
    Machine,
    /// A kind of entry.
    Kind,
}

impl By {
    fn letter(self) -> u8 {
        match self {
            Self::Mark => b'M',
            Self::Person => b'P',
            Self::Machine => b'E',
            Self::Kind => b'T',
        }
    }
}

/// An entry with its place in the chain.
#[derive(Clone, Debug, PartialEq)]
pub struct Linked {
    /// The entry.
    pub entry: Entry,
    /// The hash that it follows.
    pub prev: Hash,
    /// Its hash.
    pub hash: Hash,
}

impl Linked {
    /// What was read in the log itself.
    pub fn of(located: Located) -> Self {
        let Located {
            entry, prev, hash, ..
        } = located;
        Self { entry, prev, hash }
    }
}

fn lingers(error: &sled::Error) -> bool {
    matches!(error, sled::Error::Io(source) if source.to_string().contains("could not acquire lock"))
}

impl Index {
    /// Opens the index in a folder of its own; `logs` is where the day files are.
    ///
    /// # Errors
    /// [`StoreError::Index`].
    pub fn open(folder: &Path, logs: &Path) -> Result<Self, StoreError> {
        let config = sled::Config::new().path(folder).cache_capacity(CACHE_BYTES);
        let began = Instant::now();
        let db = loop {
            match caught(|| config.open())? {
                Ok(db) => break db,
                // Its last owner's threads let go of the lock a moment after they were told to: that is no damage.
                Err(error) if lingers(&error) && began.elapsed() < LOCK_PATIENCE => {
                    std::thread::sleep(LOCK_PAUSE);
                }
                Err(error) => return Err(bad(&error.to_string())),
            }
        };
        Ok(Self {
            db,
            logs: logs.to_owned(),
        })
    }

    /// The last entry that it has taken in.
    ///
    /// # Errors
    /// [`StoreError::Index`] when it is damaged.
    pub fn head(&self) -> Result<Option<Head>, StoreError> {
        let Some(value) = caught(|| self.db.get(b"H"))?.map_err(failed)? else {
            return Ok(None);
        };
        let (seq, hash) = value
            .split_at_checked(8)
            .ok_or_else(|| bad("its head is torn"))?;
        Ok(Some(Head {
            seq: number(seq)?,
            hash: String::from_utf8_lossy(hash).into_owned(),
        }))
    }

    /// Takes entries in, all of them or none.
    ///
    /// # Errors
    /// [`StoreError::Index`].
    pub fn take(&self, located: &[Located]) -> Result<(), StoreError> {
        let Some(last) = located.last() else {
            return Ok(());
        };
        let mut batch = Batch::default();
        for one in located {
            put(&mut batch, one);
        }
        let mut head = last.entry.seq.to_be_bytes().to_vec();
        head.extend_from_slice(last.hash.as_bytes());
        batch.insert(b"H", head);
        caught(|| self.db.apply_batch(batch))?.map_err(failed)
    }

    /// Makes what was taken in durable.
    ///
    /// # Errors
    /// [`StoreError::Index`].
    pub fn flush(&self) -> Result<(), StoreError> {
        caught(|| self.db.flush())?.map(|_| ()).map_err(failed)
    }

    /// Puts the state by that a day opened with.
    ///
    /// # Errors
    /// [`StoreError::Index`].
    pub fn put_opening(&self, first: u64, prev: &str, state: &[u8]) -> Result<(), StoreError> {
        let mut value = front_of_opening(prev).into_bytes();
        value.extend_from_slice(state);
        caught(|| self.db.insert(numbered(b'O', first), value))?
            .map(|_| ())
            .map_err(failed)
    }

    /// The state that a day opened with, when it was put by for this very chain, in today's shape and by today's rules.
    ///
    /// # Errors
    /// [`StoreError::Index`].
    pub fn opening(&self, first: u64, prev: &str) -> Result<Option<Vec<u8>>, StoreError> {
        let value = caught(|| self.db.get(numbered(b'O', first)))?.map_err(failed)?;
        let front = front_of_opening(prev);
        Ok(value.and_then(|value| value.strip_prefix(front.as_bytes()).map(<[u8]>::to_vec)))
    }

    /// One entry.
    ///
    /// # Errors
    /// [`StoreError`] when the index or the line that it points to is damaged.
    pub fn entry(&self, seq: u64) -> Result<Option<Linked>, StoreError> {
        let value = caught(|| self.db.get(numbered(b'L', seq)))?.map_err(failed)?;
        let Some(value) = value else {
            return Ok(None);
        };
        let at = read_location(&value)?;
        let path = self.logs.join(&at.name);
        let mut bytes = vec![0; at.length as usize];
        let mut file = File::open(&path).map_err(StoreError::folder(&path))?;
        file.seek(SeekFrom::Start(at.offset))
            .and_then(|_| file.read_exact(&mut bytes))
            .map_err(StoreError::folder(&path))?;
        let line = String::from_utf8_lossy(&bytes);
        let (entry, prev, hash) =
            open(&line, seq).map_err(|source| StoreError::Damaged { file: path, source })?;
        Ok(Some(Linked { entry, prev, hash }))
    }

    /// The entries that a device's key made.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn by_key(&self, device: &str, key: &str) -> Result<Vec<Entry>, StoreError> {
        let mut found = Vec::new();
        for item in self.db.scan_prefix(named(b'K', &[device, key])) {
            let (key, _) = item.map_err(failed)?;
            if let Some(linked) = self.entry(tail_number(&key)?)? {
                found.push(linked.entry);
            }
        }
        Ok(found)
    }

    /// Numbers of entries by a name, newest first, below `before`.
    pub fn named(
        &self,
        by: By,
        name: &str,
        before: u64,
    ) -> impl Iterator<Item = Result<u64, StoreError>> + use<> {
        let front = named(by.letter(), &[name]);
        let mut end = front.clone();
        end.extend_from_slice(&before.to_be_bytes());
        self.db
            .range(front..end)
            .rev()
            .map(|item| tail_number(&item.map_err(failed)?.0))
    }

    /// Numbers of entries by a name, oldest first, above `after`.
    pub fn named_after(
        &self,
        by: By,
        name: &str,
        after: u64,
    ) -> impl Iterator<Item = Result<u64, StoreError>> + use<> {
        let front = named(by.letter(), &[name]);
        let (mut start, mut end) = (front.clone(), front);
        start.extend_from_slice(&after.saturating_add(1).to_be_bytes());
        end.extend_from_slice(&u64::MAX.to_be_bytes());
        self.db
            .range(start..=end)
            .map(|item| tail_number(&item.map_err(failed)?.0))
    }
}

fn front_of_opening(prev: &str) -> String {
    format!("{}\n{prev}\n", known_by())
}

fn put(batch: &mut Batch, one: &Located) {
    let entry = &one.entry;
    let seq = entry.seq;
    let mut by = |letter: u8, names: &[&str]| {
        let mut key = named(letter, names);
        key.extend_from_slice(&seq.to_be_bytes());
        batch.insert(key, b"");
    };
    if !entry.key.is_empty() {
        by(b'K', &[&entry.by.device, &entry.key]);
    }
    by(b'P', &[&entry.by.person]);
    by(b'T', &[entry.body.kind()]);
    let told = tell(entry);
    if let Some(mark) = &told.mark {
        by(b'M', &[mark]);
    }
    if let Some(machine) = &told.machine {
        by(b'E', &[machine]);
    }
    batch.insert(numbered(b'L', seq), write_location(&one.location));
}

fn numbered(letter: u8, seq: u64) -> Vec<u8> {
    let mut key = vec![letter];
    key.extend_from_slice(&seq.to_be_bytes());
    key
}

/// Names end in a zero, so that `P-1` is not found under `P-10`.
fn named(letter: u8, names: &[&str]) -> Vec<u8> {
    let mut key = vec![letter];
    for name in names {
        key.extend(name.bytes().filter(|byte| *byte != 0));
        key.push(0);
    }
    key
}

fn write_location(at: &Location) -> Vec<u8> {
    let mut value = at.offset.to_be_bytes().to_vec();
    value.extend_from_slice(&at.file.to_be_bytes());
    value.extend_from_slice(&at.length.to_be_bytes());
    value.extend_from_slice(at.name.as_bytes());
    value
}

fn read_location(value: &[u8]) -> Result<Location, StoreError> {
    let torn = || bad("a place in the log is torn");
    let (offset, rest) = value.split_at_checked(8).ok_or_else(torn)?;
    let (file, rest) = rest.split_at_checked(8).ok_or_else(torn)?;
    let (length, name) = rest.split_at_checked(4).ok_or_else(torn)?;
    Ok(Location {
        offset: number(offset)?,
        file: number(file)?,
        length: length.try_into().map(u32::from_be_bytes).or(Err(torn()))?,
        name: String::from_utf8_lossy(name).into_owned(),
    })
}

fn number(bytes: &[u8]) -> Result<u64, StoreError> {
    bytes
        .try_into()
        .map(u64::from_be_bytes)
        .or(Err(bad("a number is torn")))
}

fn tail_number(key: &IVec) -> Result<u64, StoreError> {
    number(key.get(key.len().saturating_sub(8)..).unwrap_or_default())
}

/// A damaged file can make sled panic as well as fail: both mean that the index is made anew.
fn caught<T>(ask: impl FnOnce() -> T) -> Result<T, StoreError> {
    std::panic::catch_unwind(AssertUnwindSafe(ask)).or(Err(bad("its files are damaged")))
}

#[expect(clippy::needless_pass_by_value, reason = "handed to map_err")]
fn failed(error: sled::Error) -> StoreError {
    bad(&error.to_string())
}

fn bad(reason: &str) -> StoreError {
    StoreError::Index {
        reason: reason.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_opening_of_another_shape_or_by_other_rules_is_not_taken() {
        let folder = tempfile::tempdir().unwrap();
        let index = Index::open(&folder.path().join("index.1"), folder.path()).unwrap();
        index.put_opening(5, "before", b"{}").unwrap();
        let taken = index.opening(5, "before").unwrap();
        assert_eq!(taken, Some(b"{}".to_vec()));
        assert_eq!(index.opening(5, "another").unwrap(), None);
        // As the first version put it by, and with another count of the rules.
        for known in ["0.1.0".to_owned(), format!("9{}", known_by())] {
            let value = format!("{known}\nbefore\n{{}}");
            index
                .db
                .insert(numbered(b'O', 5), value.as_bytes())
                .unwrap();
            assert_eq!(index.opening(5, "before").unwrap(), None, "{known}");
        }
    }
}
