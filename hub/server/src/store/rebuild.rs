//! The index and the log brought together: caught up when it is behind, made anew in a fresh folder when they disagree.

use std::path::{Path, PathBuf};

use super::day_file::Located;
use super::index::Index;
use super::log::Log;
use super::{Head, StoreError};

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

/// An index that fits the log.
pub(super) fn settle(
    folder: &Path,
    found: Option<(Index, Head)>,
    log: &Log,
    today: &[Located],
    notes: &mut Vec<String>,
) -> Result<Index, StoreError> {
    let head = log.head();
    let why = match found {
        Some((index, known)) if known == *head => return Ok(index),
        Some((index, known)) if known.seq < head.seq => match behind(&known, today) {
            Some(missing) => {
                index.take(missing)?;
                notes.push(format!(
                    "The index had not seen the last {} of the log; it is caught up.",
                    missing.len()
                ));
                return Ok(index);
            }
            None => "it belongs to another log".to_owned(),
        },
        Some((_, known)) if known.seq > head.seq => format!(
            "it remembers entry {}, and the log ends at {}: entries were lost from the log",
            known.seq, head.seq
        ),
        Some(_) => "it belongs to another log".to_owned(),
        None if head.seq == 0 => return anew(folder, log),
        None => "it was missing or damaged".to_owned(),
    };
    let index = anew(folder, log)?;
    notes.push(format!(
        "The index was made anew from the log ({} entries), because {why}.",
        head.seq
    ));
    Ok(index)
}

/// What the index has not yet seen, when it follows from what it has seen.
fn behind<'a>(known: &Head, today: &'a [Located]) -> Option<&'a [Located]> {
    let next = today
        .iter()
        .position(|one| one.entry.seq == known.seq + 1)?;
    (today[next].prev == known.hash).then_some(&today[next..])
}

/// Makes the index anew in a fresh folder, then removes the old ones.
pub(super) fn anew(folder: &Path, log: &Log) -> Result<Index, StoreError> {
    let old = folders(folder);
    let fresh = folder.join(format!("index.{}", number_of(old.last()) + 1));
    let index = Index::open(&fresh, &folder.join("log"))?;
    let mut waiting = Vec::with_capacity(AT_ONCE);
    let mut failed = None;
    log.each(|located| {
        waiting.push(located);
        if waiting.len() == AT_ONCE && failed.is_none() {
            failed = index.take(&waiting).err();
            waiting.clear();
        }
    })?;
    if let Some(error) = failed {
        return Err(error);
    }
    index.take(&waiting)?;
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
