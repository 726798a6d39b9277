//! Where the day is kept: the log is the truth, the index is what the hub works with and can be made anew from it.
//!
//! | to learn | read |
//! |---|---|
//! | the files of the days and where an entry stands in them | `day_file` |
//! | durable appends, torn tails, proofs | `log`, `tail` |
//! | photos beside it, named by their hash | `photos` |
//! | how a folder or a file stays over a power cut | `disk` |
//! | the index over them (the only file that names sled) | `index` |
//! | by what a state that was put by is known again | `put_by` |
//! | what happens when the two disagree | `rebuild` |

pub mod day_file;
pub(crate) mod disk;
pub mod index;
pub mod log;
pub mod photos;
pub mod put_by;
mod rebuild;
mod tail;

use std::fs::File;
use std::path::{Path, PathBuf};
use std::sync::{Arc, PoisonError, RwLock};
use std::time::{Duration, Instant};

use day::chain::{ChainError, Hash, Sealed};
use day::entry::Entry;
use thiserror::Error;

use day_file::Located;
use index::Index;
use log::Log;

/// How long a killed process's lock may linger before it counts as held.
const LOCK_PATIENCE: Duration = Duration::from_secs(5);
/// Between two tries at a lock.
const LOCK_PAUSE: Duration = Duration::from_millis(100);

/// Why something can't be kept or read.
#[derive(Debug, Error)]
pub enum StoreError {
    /// The folder can't be used.
    #[error("{} can't be used ({source}). Check that the folder exists, that it may be written to, and that the disk is not full.", path.display())]
    Folder {
        /// What.
        path: PathBuf,
        /// Why.
        source: std::io::Error,
    },
    /// Another hub has it.
    #[error("The data folder {} is in use by another hub. Stop that one first, or give another folder with --data.", folder.display())]
    Locked {
        /// Which folder.
        folder: PathBuf,
    },
    /// The log does not prove itself.
    #[error("The log is damaged: {}: {source}. The hub does not start over it. Keep the folder as evidence, and start on a copy of the last good export: rodcall import FILE --data NEW.", file.display())]
    Damaged {
        /// Which file.
        file: PathBuf,
        /// What is wrong.
        source: ChainError,
    },
    /// A day file is missing or doubled.
    #[error("The log is damaged: {} does not follow the day file before it: one was removed, changed or put in between. The hub does not start over it.", file.display())]
    DayMissing {
        /// The file that does not follow.
        file: PathBuf,
    },
    /// The index failed.
    #[error(
        "The index failed ({reason}). The log is not touched by this: the index is made anew from it, now or at the next start."
    )]
    Index {
        /// Why.
        reason: String,
    },
    /// There is no index at this moment.
    #[error(
        "The index failed and is made anew from the log, which is not touched by this. Calls go on; look again in a minute."
    )]
    NoIndex,
}

impl StoreError {
    fn folder(path: &Path) -> impl FnOnce(std::io::Error) -> Self + '_ {
        move |source| Self::Folder {
            path: path.to_owned(),
            source,
        }
    }
}

/// An entry ready to be kept.
#[derive(Clone, Debug)]
pub struct Kept {
    /// The entry.
    pub entry: Entry,
    /// Its line and hash.
    pub sealed: Sealed,
    /// Another entry of the same request follows.
    pub more: bool,
}

/// The last entry's number and hash.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Head {
    /// Its number; 0 before the first.
    pub seq: u64,
    /// Its hash.
    pub hash: Hash,
}

/// A data folder, held by this process alone.
#[derive(Debug)]
pub struct DataFolder {
    path: PathBuf,
    _lock: File,
}

impl DataFolder {
    /// Makes the folder if need be, and takes it.
    ///
    /// # Errors
    /// [`StoreError::Locked`] when another hub holds it for longer than a killed process's lock lingers.
    pub fn take(path: &Path) -> Result<Self, StoreError> {
        disk::make_folder(path).map_err(StoreError::folder(path))?;
        let name = path.join("lock");
        let lock = File::options()
            .create(true)
            .truncate(false)
            .write(true)
            .open(&name)
            .map_err(StoreError::folder(&name))?;
        let began = Instant::now();
        loop {
            match lock.try_lock() {
                Ok(()) => break,
                Err(std::fs::TryLockError::WouldBlock) if began.elapsed() < LOCK_PATIENCE => {
                    std::thread::sleep(LOCK_PAUSE);
                }
                Err(std::fs::TryLockError::WouldBlock) => {
                    return Err(StoreError::Locked {
                        folder: path.to_owned(),
                    });
                }
                Err(std::fs::TryLockError::Error(source)) => {
                    return Err(StoreError::Folder { path: name, source });
                }
            }
        }
        Ok(Self {
            path: path.to_owned(),
            _lock: lock,
        })
    }

    /// Where it is.
    pub fn path(&self) -> &Path {
        &self.path
    }
}

/// The index, as far as there is one: none while it is made anew. Clones share it.
#[derive(Clone, Debug, Default)]
pub struct IndexNow(Arc<RwLock<Option<Index>>>);

impl IndexNow {
    /// The index.
    ///
    /// # Errors
    /// [`StoreError::NoIndex`] while there is none.
    pub fn get(&self) -> Result<Index, StoreError> {
        let index = self.0.read().unwrap_or_else(PoisonError::into_inner);
        index.clone().ok_or(StoreError::NoIndex)
    }

    fn set(&self, index: Option<Index>) {
        *self.0.write().unwrap_or_else(PoisonError::into_inner) = index;
    }
}

/// The log and its index, for the one writer.
#[derive(Debug)]
pub struct Store {
    log: Log,
    index: IndexNow,
    folder: DataFolder,
}

/// A store as it was found.
#[derive(Debug)]
pub struct Opened {
    /// The store.
    pub store: Store,
    /// The entries of the newest day, in order.
    pub today: Vec<Located>,
    /// The state at the opening of that day as it was put by, when it fits the log.
    pub opening: Option<Vec<u8>>,
    /// What a person should know about it.
    pub notes: Vec<String>,
    /// The end of the log that the index remembers, when the log has lost it since.
    pub lost: Option<Head>,
}

/// Opens the log and the index; catches the index up, or makes it anew.
///
/// # Errors
/// [`StoreError`] when the log is damaged or can't be read.
pub fn open(folder: DataFolder) -> Result<Opened, StoreError> {
    let found = rebuild::find(folder.path());
    let remembered = found.as_ref().map(|(_, head)| head.clone());
    let known = remembered.as_ref().map_or(0, |head| head.seq);
    let (log, today, mut notes) = Log::open(&folder.path().join("log"), known)?;
    let mut index = rebuild::settle(folder.path(), found, &log, &mut notes)?;
    let mut opening = None;
    if let (Some(used), Some(first)) = (&index, today.first()) {
        match used.opening(first.entry.seq, &first.prev) {
            Ok(put_by) => opening = put_by,
            Err(error) => {
                notes.push(format!("The index is made anew: {error}"));
                drop(index.take());
                index = rebuild::settle(folder.path(), None, &log, &mut notes)?;
            }
        }
    }
    let now = IndexNow::default();
    now.set(index);
    Ok(Opened {
        lost: remembered.filter(|known| known.seq > log.head().seq),
        store: Store {
            log,
            index: now,
            folder,
        },
        today,
        opening,
        notes,
    })
}

/// Makes the index anew, whatever its condition.
///
/// # Errors
/// [`StoreError`] when the log is damaged or can't be read.
pub fn rebuild(folder: &DataFolder) -> Result<Head, StoreError> {
    let (log, _, _) = Log::open(&folder.path().join("log"), 0)?;
    rebuild::anew(folder.path(), log.head().seq)?;
    Ok(log.head().clone())
}

impl Store {
    /// The last entry that is kept.
    pub fn head(&self) -> &Head {
        self.log.head()
    }

    /// Every entry from the first, in order.
    ///
    /// # Errors
    /// [`StoreError`] at the first that does not prove itself.
    pub fn each(&self, visit: impl FnMut(Located)) -> Result<(), StoreError> {
        self.log.each(visit)
    }

    /// Keeps entries. When this returns they are on the disk.
    ///
    /// # Errors
    /// [`StoreError`]: nothing of them may be answered or shown, and the store must not be used again.
    pub fn append(&mut self, kept: &[Kept]) -> Result<Vec<Located>, StoreError> {
        self.log.append(kept)
    }

    /// Takes kept entries into the index. A failure costs the index, not the day: it is made anew beside the running hub, or by
    /// the next start.
    ///
    /// # Errors
    /// [`StoreError::Index`] when it fails, [`StoreError::NoIndex`] while there is none.
    pub fn index(&mut self, located: &[Located]) -> Result<(), StoreError> {
        let done = self.index.get()?.take(located);
        if done.is_err() {
            rebuild::doubt(self.folder.path());
            self.index.set(None);
        }
        done
    }

    /// Makes the index of what is kept by now anew, on a thread of its own, and hands it to `done`.
    pub fn index_anew(&self, done: impl FnOnce(Result<Index, StoreError>) + Send + 'static) {
        let (folder, last) = (self.folder.path().to_owned(), self.head().seq);
        std::thread::spawn(move || done(rebuild::anew(&folder, last)));
    }

    /// Works with an index that was made anew, once it has taken in what was kept meanwhile; gives the last entry that it knows.
    ///
    /// # Errors
    /// [`StoreError::Index`].
    pub fn put_index(&mut self, index: Index, kept: &[Located]) -> Result<u64, StoreError> {
        let head = index.head()?.map_or(0, |head| head.seq);
        let from = kept.partition_point(|one| one.entry.seq <= head);
        index.take(&kept[from..])?;
        self.index.set(Some(index));
        Ok(kept.last().map_or(head, |last| last.entry.seq.max(head)))
    }

    /// Puts the state by that a day opened with: `first` is the day's first entry, `prev` the hash before it.
    ///
    /// # Errors
    /// [`StoreError::Index`], [`StoreError::NoIndex`]; then the next start folds the day before too.
    pub fn put_opening(&self, first: u64, prev: &str, state: &[u8]) -> Result<(), StoreError> {
        self.index.get()?.put_opening(first, prev, state)
    }

    /// The entries that a device's key made on whatever day.
    ///
    /// # Errors
    /// [`StoreError`] when they can't be read.
    pub fn by_key(&self, device: &str, key: &str) -> Result<Vec<Entry>, StoreError> {
        self.index.get()?.by_key(device, key)
    }

    /// The index, for those who read the log.
    pub fn reader(&self) -> IndexNow {
        self.index.clone()
    }

    /// Makes the index durable, before a clean end.
    ///
    /// # Errors
    /// [`StoreError::Index`].
    pub fn close(&self) -> Result<(), StoreError> {
        self.index.get().map_or(Ok(()), |index| index.flush())
    }
}

#[cfg(test)]
mod tests;
