//! The index and the log brought together: caught up when it is behind, made anew in a fresh folder when they disagree.

use std::path::{Path, PathBuf};

use super::day_file::Located;
use super::index::Index;
use super::log::{self, Log};
use super::{Head, StoreError, disk};

/// Entries that are taken into the index at once when it is made anew.
const AT_ONCE: usize = 1_000;
/// Written when the index failed while the hub ran: the next start makes it anew.
const DOUBT: &str = "index-in-doubt";

/// The newest index that can be opened and knows its head.
pub(super) fn find(folder: &Path) -> Option<(Index, Head)> {
    if folder.join(DOUBT).exists() {
        return None;
    }
    let newest = folders(folder).pop()?;
    let index = Index::open(&newest, &folder.join("log")).ok()?;
    let head = index.head().ok().flatten()?;
    Some((index, head))
}

/// Remembers across a restart that the index is not to be trusted.
pub(super) fn doubt(folder: &Path) {
    // If this can't be written either, the next start still compares the heads.
    let _ = std::fs::write(folder.join(DOUBT), b"");
}

/// An index that fits the log. None when none can be made: then the hub works without, and tries again.
pub(super) fn settle(
    folder: &Path,
    found: Option<(Index, Head)>,
    log: &Log,
    notes: &mut Vec<String>,
) -> Result<Option<Index>, StoreError> {
    let head = log.head();
    let why = match found {
        Some((index, known)) if known == *head => return Ok(Some(index)),
        Some((index, known)) if known.seq < head.seq => match catch_up(&index, &known, log)? {
            Ok(Some(missing)) => {
                notes.push(format!(
                    "The index had not seen the last {missing} of the log; it is caught up."
                ));
                return Ok(Some(index));
            }
            Ok(None) => "it belongs to another log".to_owned(),
            Err(error) => error.to_string(),
        },
        Some((_, known)) if known.seq > head.seq => format!(
            "it remembers entry {}, and the log ends at {}: entries were lost from the log",
            known.seq, head.seq
        ),
        Some(_) => "it belongs to another log".to_owned(),
        None if head.seq == 0 => String::new(),
        None => "it was missing or damaged".to_owned(),
    };
    let made = anew(folder, head.seq);
    match made {
        Ok(index) => {
            if !why.is_empty() {
                notes.push(format!(
                    "The index was made anew from the log ({} entries), because {why}.",
                    head.seq
                ));
            }
            Ok(Some(index))
        }
        Err(error @ StoreError::Damaged { .. }) => Err(error),
        Err(error) => {
            notes.push(format!(
                "The index can't be made ({error}) The hub works without it: calls go on, LOG can't be searched. Free space on the disk: it is tried again."
            ));
            Ok(None)
        }
    }
}

/// Takes in what the index has not seen, and says how many that were; none when it is of another log.
fn catch_up(
    index: &Index,
    known: &Head,
    log: &Log,
) -> Result<Result<Option<usize>, StoreError>, StoreError> {
    let mut taking = Taking::into(index);
    if !log.behind(known, |one| taking.take(one))? {
        return Ok(Ok(None));
    }
    Ok(taking.done().map(Some))
}

/// Makes the index of the entries up to one anew in a fresh folder, then removes the old ones.
pub(super) fn anew(folder: &Path, last: u64) -> Result<Index, StoreError> {
    let old = folders(folder);
    let fresh = folder.join(format!("index.{}", number_of(old.last()) + 1));
    let logs = folder.join("log");
    let index = Index::open(&fresh, &logs)?;
    // Its name first: a power cut between the two leaves one of them.
    disk::sync_folder(folder).map_err(StoreError::folder(folder))?;
    let mut taking = Taking::into(&index);
    log::up_to(&logs, last, |one| taking.take(one))?;
    taking.done()?;
    index.flush()?;
    for path in old {
        std::fs::remove_dir_all(&path).map_err(StoreError::folder(&path))?;
    }
    match std::fs::remove_file(folder.join(DOUBT)) {
        Err(error) if error.kind() != std::io::ErrorKind::NotFound => {
            Err(StoreError::folder(folder)(error))
        }
        _ => Ok(index),
    }
}

/// Entries on their way into an index, [`AT_ONCE`] by [`AT_ONCE`].
struct Taking<'a> {
    index: &'a Index,
    waiting: Vec<Located>,
    taken: usize,
    failed: Option<StoreError>,
}

impl<'a> Taking<'a> {
    fn into(index: &'a Index) -> Self {
        Self {
            index,
            waiting: Vec::with_capacity(AT_ONCE),
            taken: 0,
            failed: None,
        }
    }

    fn take(&mut self, one: Located) {
        self.waiting.push(one);
        if self.waiting.len() == AT_ONCE {
            self.hand_over();
        }
    }

    fn hand_over(&mut self) {
        if self.failed.is_none() {
            self.failed = self.index.take(&self.waiting).err();
        }
        self.taken += self.waiting.len();
        self.waiting.clear();
    }

    /// How many were taken.
    fn done(mut self) -> Result<usize, StoreError> {
        self.hand_over();
        self.failed.map_or(Ok(self.taken), Err)
    }
}

/// Index folders, oldest first.
fn folders(folder: &Path) -> Vec<PathBuf> {
    let Ok(items) = std::fs::read_dir(folder) else {
        return Vec::new();
    };
    let mut found: Vec<PathBuf> = items
        .filter_map(|item| item.ok().map(|item| item.path()))
        .filter(|path| number_of(Some(path)) > 0)
        .collect();
    found.sort_by_key(|path| number_of(Some(path)));
    found
}

fn number_of(path: Option<&PathBuf>) -> u32 {
    path.and_then(|path| {
        path.file_name()?
            .to_str()?
            .strip_prefix("index.")?
            .parse()
            .ok()
    })
    .unwrap_or(0)
}
