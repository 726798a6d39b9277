//! The files of the days, and where an entry stands in them.
//!
//! A file is named after its first entry and its day, `0000000001-2030-05-14.jsonl`, so that names sort as the chain runs.

use std::path::Path;

use day::chain::{ChainError, Hash, Walk, open};
use day::entry::Entry;

use super::{StoreError, disk};

/// Where an entry's line stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Location {
    /// The first entry of its file.
    pub file: u64,
    /// The file's name.
    pub name: String,
    /// Its first byte.
    pub offset: u64,
    /// Its length without blank and newline.
    pub length: u32,
}

/// An entry of the log with its place in the chain and on the disk.
#[derive(Clone, Debug, PartialEq)]
pub struct Located {
    /// The entry.
    pub entry: Entry,
    /// The hash that it follows.
    pub prev: Hash,
    /// Its hash.
    pub hash: Hash,
    /// Where its line stands.
    pub location: Location,
}

/// One day's file.
#[derive(Clone, Debug)]
pub(super) struct DayFile {
    pub(super) first: u64,
    pub(super) name: String,
}

/// The day files in the order of the chain.
pub(super) fn day_files(folder: &Path) -> Result<Vec<DayFile>, StoreError> {
    let mut days = Vec::new();
    for item in std::fs::read_dir(folder).map_err(StoreError::folder(folder))? {
        let item = item.map_err(StoreError::folder(folder))?;
        let name = item.file_name().to_string_lossy().into_owned();
        let first = name
            .strip_suffix(".jsonl")
            .and_then(|stem| stem.split_once('-'))
            .and_then(|(first, _)| first.parse().ok());
        if let Some(first) = first {
            days.push(DayFile { first, name });
        }
    }
    days.sort_by_key(|day| day.first);
    Ok(days)
}

/// Makes a new name in a folder durable.
pub(super) fn sync_folder(folder: &Path) -> Result<(), StoreError> {
    disk::sync_folder(folder).map_err(StoreError::folder(folder))
}

/// The next line of a day file: its entry, proven, and whether more of its request follows. The first line of a walk says itself
/// what it follows.
///
/// # Errors
/// The first thing that is wrong with it.
pub(super) fn line(
    day: &DayFile,
    walk: &mut Option<Walk>,
    raw: &[u8],
    at: usize,
) -> Result<(Located, bool), ChainError> {
    let text = String::from_utf8_lossy(raw);
    let line = text.strip_suffix(' ').unwrap_or(&text);
    let mut here = if let Some(walk) = walk.take() {
        walk
    } else {
        let (_, prev, _) = open(line, 1)?;
        Walk::from_head(day.first.saturating_sub(1), prev)
    };
    let prev = here.hash.clone();
    let entry = here.step(line)?;
    let hash = here.hash.clone();
    *walk = Some(here);
    let located = Located {
        entry,
        prev,
        hash,
        location: Location {
            file: day.first,
            name: day.name.clone(),
            offset: at as u64,
            length: u32::try_from(line.len()).unwrap_or(u32::MAX),
        },
    };
    Ok((located, line.len() < text.len()))
}
