//! The log: JSON Lines, one entry a line, hash-chained within and across days, on the disk before anything is answered.
//!
//! A line that ends in a blank is followed by another entry of the same request: a request is kept whole or not at all.

use std::fs::File;
use std::io::{BufRead as _, BufReader, Write as _};
use std::path::{Path, PathBuf};

use day::chain::{GENESIS, Walk, open};
use day::entry::Body;

use super::day_file::{DayFile, Located, Location, day_files};
use super::durable::{make_folder, sync_folder};
use super::{Head, Kept, StoreError, tail};

/// The log, open for appending.
#[derive(Debug)]
pub struct Log {
    folder: PathBuf,
    days: Vec<DayFile>,
    file: Option<File>,
    length: u64,
    head: Head,
}

impl Log {
    /// Opens the log: proves the newest day, cuts a torn tail, checks that the day follows the one before.
    /// `known` is the last entry that the index remembers; 0 when it remembers nothing.
    ///
    /// # Errors
    /// [`StoreError`] when anything but the tail is damaged.
    pub fn open(
        folder: &Path,
        known: u64,
    ) -> Result<(Self, Vec<Located>, Vec<String>), StoreError> {
        make_folder(folder)?;
        let mut days = day_files(folder)?;
        let mut notes = Vec::new();
        let mut today = Vec::new();
        let mut length = 0;
        while let Some(day) = days.last() {
            let found = tail::recover(folder, day, known, &mut notes)?;
            if !found.entries.is_empty() {
                (today, length) = (found.entries, found.length);
                break;
            }
            days.pop();
        }
        let before = match days.len().checked_sub(2) {
            Some(at) => last_of(folder, &days[at])?,
            None => Head {
                seq: 0,
                hash: GENESIS.to_owned(),
            },
        };
        let head = match (today.first(), today.last()) {
            (Some(first), Some(last)) => {
                if first.prev != before.hash || first.entry.seq != before.seq + 1 {
                    return Err(StoreError::DayMissing {
                        file: folder.join(&first.location.name),
                    });
                }
                Head {
                    seq: last.entry.seq,
                    hash: last.hash.clone(),
                }
            }
            _ => before,
        };
        let file = match days.last() {
            Some(day) => Some(open_for_appending(&folder.join(&day.name))?),
            None => None,
        };
        let log = Self {
            folder: folder.to_owned(),
            days,
            file,
            length,
            head,
        };
        Ok((log, today, notes))
    }

    /// The last entry.
    pub fn head(&self) -> &Head {
        &self.head
    }

    /// Keeps entries: one write and one fdatasync; a day that opens gets a file of its own.
    ///
    /// # Errors
    /// [`StoreError::Folder`]; then nothing more may be appended.
    pub fn append(&mut self, kept: &[Kept]) -> Result<Vec<Located>, StoreError> {
        let mut located = Vec::with_capacity(kept.len());
        let mut bytes = Vec::new();
        for one in kept {
            if let Body::DayOpened(opened) = &one.entry.body {
                self.write(&bytes)?;
                bytes.clear();
                self.begin(one.entry.seq, &opened.day)?;
            }
            if self.days.is_empty() {
                // Nothing opens a log but a day; a log without is kept all the same.
                self.begin(one.entry.seq, "no-day")?;
            }
            let offset = self.length + bytes.len() as u64;
            bytes.extend_from_slice(one.sealed.line.as_bytes());
            bytes.extend_from_slice(if one.more { b" \n" } else { b"\n" });
            located.push(self.locate(one, offset));
            self.head = Head {
                seq: one.entry.seq,
                hash: one.sealed.hash.clone(),
            };
        }
        self.write(&bytes)?;
        Ok(located)
    }

    fn locate(&self, kept: &Kept, offset: u64) -> Located {
        let (file, name) = self
            .days
            .last()
            .map_or((0, String::new()), |day| (day.first, day.name.clone()));
        Located {
            entry: kept.entry.clone(),
            prev: self.head.hash.clone(),
            hash: kept.sealed.hash.clone(),
            location: Location {
                file,
                name,
                offset,
                length: u32::try_from(kept.sealed.line.len()).unwrap_or(u32::MAX),
            },
        }
    }

    fn write(&mut self, bytes: &[u8]) -> Result<(), StoreError> {
        let (Some(file), Some(day), false) = (&mut self.file, self.days.last(), bytes.is_empty())
        else {
            return Ok(());
        };
        let path = self.folder.join(&day.name);
        file.write_all(bytes).map_err(StoreError::folder(&path))?;
        file.sync_data().map_err(StoreError::folder(&path))?;
        self.length += bytes.len() as u64;
        Ok(())
    }

    fn begin(&mut self, first: u64, day: &str) -> Result<(), StoreError> {
        let plain: String = day
            .chars()
            .map(|c| if c.is_ascii_alphanumeric() { c } else { '-' })
            .collect();
        let name = format!("{first:010}-{plain}.jsonl");
        let path = self.folder.join(&name);
        let file = File::options()
            .create_new(true)
            .append(true)
            .open(&path)
            .map_err(StoreError::folder(&path))?;
        file.sync_all().map_err(StoreError::folder(&path))?;
        sync_folder(&self.folder)?;
        self.days.push(DayFile { first, name });
        self.file = Some(file);
        self.length = 0;
        Ok(())
    }

    /// Every entry from the first, in order, each proven.
    ///
    /// # Errors
    /// [`StoreError`] at the first that does not prove itself.
    pub fn each(&self, mut visit: impl FnMut(Located)) -> Result<(), StoreError> {
        let mut walk = Walk::default();
        for day in &self.days {
            walk_day(&self.folder, day, &mut walk, &mut visit)?;
        }
        Ok(())
    }
}

/// Proves every entry of a log that may be in use: for `verify`. Gives the last one, and how many days there are.
///
/// # Errors
/// [`StoreError`] at the first that does not prove itself.
pub fn prove(folder: &Path, mut visit: impl FnMut(Located)) -> Result<(Head, usize), StoreError> {
    let days = day_files(folder)?;
    let mut walk = Walk::default();
    for day in &days {
        walk_day(folder, day, &mut walk, &mut visit)?;
    }
    let head = Head {
        seq: walk.seq,
        hash: walk.hash,
    };
    Ok((head, days.len()))
}

/// The paths of the day files in the order of the chain: for export.
///
/// # Errors
/// [`StoreError::Folder`].
pub fn paths(folder: &Path) -> Result<Vec<PathBuf>, StoreError> {
    Ok(day_files(folder)?
        .into_iter()
        .map(|day| folder.join(day.name))
        .collect())
}

fn walk_day(
    folder: &Path,
    day: &DayFile,
    walk: &mut Walk,
    visit: &mut impl FnMut(Located),
) -> Result<(), StoreError> {
    let path = folder.join(&day.name);
    let file = File::open(&path).map_err(StoreError::folder(&path))?;
    let mut offset = 0;
    for line in BufReader::new(file).split(b'\n') {
        let raw = line.map_err(StoreError::folder(&path))?;
        let text = String::from_utf8_lossy(&raw);
        let line = text.strip_suffix(' ').unwrap_or(&text);
        let prev = walk.hash.clone();
        let entry = walk.step(line).map_err(|source| StoreError::Damaged {
            file: path.clone(),
            source,
        })?;
        visit(Located {
            entry,
            prev,
            hash: walk.hash.clone(),
            location: Location {
                file: day.first,
                name: day.name.clone(),
                offset,
                length: u32::try_from(line.len()).unwrap_or(u32::MAX),
            },
        });
        offset += raw.len() as u64 + 1;
    }
    Ok(())
}

/// The last entry of a day that is closed.
fn last_of(folder: &Path, day: &DayFile) -> Result<Head, StoreError> {
    let path = folder.join(&day.name);
    let text = std::fs::read(&path).map_err(StoreError::folder(&path))?;
    let text = String::from_utf8_lossy(&text);
    let last = text
        .trim_end_matches('\n')
        .rsplit('\n')
        .next()
        .unwrap_or_default();
    let (entry, _, hash) =
        open(last.strip_suffix(' ').unwrap_or(last), 0).map_err(|source| StoreError::Damaged {
            file: path.clone(),
            source,
        })?;
    Ok(Head {
        seq: entry.seq,
        hash,
    })
}

fn open_for_appending(path: &Path) -> Result<File, StoreError> {
    File::options()
        .append(true)
        .open(path)
        .map_err(StoreError::folder(path))
}
