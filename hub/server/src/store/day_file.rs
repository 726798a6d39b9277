//! The files of the days, and where an entry stands in them.
//!
//! A file is named after its first entry and its day, `0000000001-2030-05-14.jsonl`, so that names sort as the chain runs.

use std::path::Path;

use day::chain::Hash;
use day::entry::Entry;

use super::StoreError;

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
