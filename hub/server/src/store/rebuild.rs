//! The index and the log brought together: caught up when it is behind, made anew in a fresh folder when they disagree.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};

use super::day_file::Located;
use super::durable::sync_name;
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
    let head = guarded(|| index.head().ok().flatten())?;
    Some((index, head))
}

/// Remembers across a restart that the index is not to be trusted.
pub(super) fn doubt(folder: &Path) {
    // If this can't be written either, the next start still compares the heads.
    let _ = std::fs::write(folder.join(DOUBT), b"");
}

/// An index that fits the log, with the state at the opening of the newest day as it was put by, when it fits too.
///
/// What can't be read of an index, whatever it is, is no reason to stay out: it is made anew.
pub(super) fn settle(
    folder: &Path,
    found: Option<(Index, Head)>,
    log: &Log,
    today: &[Located],
    notes: &mut Vec<String>,
) -> Result<(Index, Option<Vec<u8>>), StoreError> {
    let why = match found {
        None if log.head().seq == 0 => return Ok((anew(folder, log)?, None)),
        None => "it was missing or damaged".to_owned(),
        Some((index, known)) => match guarded(|| Some(caught_up(&index, &known, log, today)))
            .unwrap_or_else(|| Err("it can't be read".to_owned()))
        {
            Ok(fits) => {
                if fits.missing > 0 {
                    notes.push(format!(
                        "The index had not seen the last {} of the log; it is caught up.",
                        fits.missing
                    ));
                }
                return Ok((index, fits.opening));
            }
            Err(why) => why,
        },
    };
    let index = anew(folder, log)?;
    notes.push(format!(
        "The index was made anew from the log ({} entries), because {why}.",
        log.head().seq
    ));
    let opening = opening(&index, today)?;
    Ok((index, opening))
}

/// None also where sled panics over what it finds.
fn guarded<T>(look: impl FnOnce() -> Option<T>) -> Option<T> {
    catch_unwind(AssertUnwindSafe(look)).ok().flatten()
}

/// What an index that fits gave.
struct Fits {
    /// So many entries it had not seen.
    missing: usize,
    opening: Option<Vec<u8>>,
}

/// Brings an index up to the log; or says why it is to be made anew.
fn caught_up(index: &Index, known: &Head, log: &Log, today: &[Located]) -> Result<Fits, String> {
    let head = log.head();
    let failed = |error: StoreError| format!("it can't be read or written ({error})");
    if known.seq > head.seq {
        return Err(format!(
            "it remembers entry {}, and the log ends at {}: entries were lost from the log",
            known.seq, head.seq
        ));
    }
    let missing = if known == head {
        &[]
    } else {
        behind(known, today).ok_or("it belongs to another log")?
    };
    index.take(missing).map_err(failed)?;
    Ok(Fits {
        missing: missing.len(),
        opening: opening(index, today).map_err(failed)?,
    })
}

/// The state that the newest day opened with.
fn opening(index: &Index, today: &[Located]) -> Result<Option<Vec<u8>>, StoreError> {
    match today.first() {
        Some(first) => index.opening(first.entry.seq, &first.prev),
        None => Ok(None),
    }
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
    // Its name first: a power cut between the two leaves one of them.
    sync_name(&fresh)?;
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
