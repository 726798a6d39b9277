//! The end of the newest day file after a power cut: a torn tail is cut at the last whole request, other damage is named.

use std::fs::File;
use std::io::Write as _;
use std::path::Path;

use day::chain::{ChainError, Walk};

use super::StoreError;
use super::day_file::{DayFile, Located, line, sync_folder};

/// No batch has more lines than this: more of them behind a gap were kept by several appends, so the gap is damage.
const LONGEST_BATCH: usize = 512;

/// What the newest day file holds.
pub(super) struct Recovered {
    pub(super) entries: Vec<Located>,
    /// Bytes up to the end of the last whole request.
    pub(super) length: u64,
}

/// Proves a day file and cuts its torn tail; a file with nothing whole in it is removed.
/// `known` is the last entry that the index remembers: what it remembers was on the disk, so a gap there is damage.
pub(super) fn recover(
    folder: &Path,
    day: &DayFile,
    known: u64,
    notes: &mut Vec<String>,
) -> Result<Recovered, StoreError> {
    let path = folder.join(&day.name);
    let bytes = std::fs::read(&path).map_err(StoreError::folder(&path))?;
    let damaged = |source| StoreError::Damaged {
        file: path.clone(),
        source,
    };
    let scan = scan(day, &bytes, known).map_err(damaged)?;
    let Scan {
        mut entries,
        whole_to,
        whole,
        unended,
    } = scan;
    entries.truncate(whole);
    let mut length = whole_to as u64;
    if unended {
        length += 1;
        end_last_line(&path, whole_to as u64)?;
        notes.push(format!(
            "The end of the last line of the log was damaged. Entry {} is proven by its own hash: it is kept, and its line is ended again.",
            entries.last().map_or(0, |last| last.entry.seq),
        ));
    } else if whole_to < bytes.len() {
        let lost = &bytes[whole_to..];
        keep_torn(folder, day, whole_to, lost)?;
        let file = File::options()
            .write(true)
            .open(&path)
            .map_err(StoreError::folder(&path))?;
        file.set_len(whole_to as u64)
            .and_then(|()| file.sync_all())
            .map_err(StoreError::folder(&path))?;
        notes.push(format!(
            "The log ended in {} torn bytes after entry {} (a power cut?). They were never answered to anyone; they are put by in {}.",
            lost.len(),
            entries.last().map_or(day.first.saturating_sub(1), |last| last.entry.seq),
            torn_name(day, whole_to),
        ));
    }
    if entries.is_empty() {
        std::fs::remove_file(&path).map_err(StoreError::folder(&path))?;
        sync_folder(folder)?;
    }
    // Of what a killed hub wrote last, nothing is answered before it is on the disk.
    if length > 0 {
        let file = File::open(&path).map_err(StoreError::folder(&path))?;
        file.sync_all().map_err(StoreError::folder(&path))?;
        sync_folder(folder)?;
    }
    Ok(Recovered { entries, length })
}

fn end_last_line(path: &Path, at: u64) -> Result<(), StoreError> {
    let mut file = File::options()
        .append(true)
        .open(path)
        .map_err(StoreError::folder(path))?;
    file.set_len(at)
        .and_then(|()| file.write_all(b"\n"))
        .and_then(|()| file.sync_all())
        .map_err(StoreError::folder(path))
}

struct Scan {
    entries: Vec<Located>,
    /// Bytes up to the end of the last whole request.
    whole_to: usize,
    /// Entries up to there.
    whole: usize,
    /// The last of them is proven, and its line does not end.
    unended: bool,
}

fn scan(day: &DayFile, bytes: &[u8], known: u64) -> Result<Scan, ChainError> {
    let mut found = Scan {
        entries: Vec::new(),
        whole_to: 0,
        whole: 0,
        unended: false,
    };
    let mut walk: Option<Walk> = None;
    let mut at = 0;
    loop {
        let Some(length) = bytes[at..].iter().position(|byte| *byte == b'\n') else {
            if let Some((located, length)) = unended(day, walk.as_ref(), &bytes[at..], at, known) {
                found.entries.push(located);
                (found.whole_to, found.whole) = (at + length, found.entries.len());
                found.unended = true;
            }
            break;
        };
        let raw = &bytes[at..at + length];
        match line(day, &mut walk, raw, at) {
            Ok((located, more)) => {
                found.entries.push(located);
                at += length + 1;
                if !more {
                    (found.whole_to, found.whole) = (at, found.entries.len());
                }
            }
            Err(error) if known < next(day, &found) && is_torn(&bytes[at..], &error) => break,
            Err(error) => return Err(error),
        }
    }
    // What the index remembers was kept whole: a blank that says that more of the request follows is damage.
    let last = found.entries.last().map_or(0, |last| last.entry.seq);
    if found.whole < found.entries.len() && known >= last {
        (found.whole_to, found.whole) = (at, found.entries.len());
    }
    Ok(found)
}

/// The last line, proven though it does not end, and its length: its newline was damaged, or is gone though the index remembers
/// the entry. Otherwise a power cut may have taken more than the newline.
fn unended(
    day: &DayFile,
    walk: Option<&Walk>,
    rest: &[u8],
    at: usize,
    known: u64,
) -> Option<(Located, usize)> {
    let proves = |raw: &[u8]| {
        let found = line(day, &mut walk.cloned(), raw, at).ok();
        found.filter(|(_, more)| !more).map(|(located, _)| located)
    };
    if let Some(located) = proves(rest) {
        return (known >= located.entry.seq).then_some((located, rest.len()));
    }
    let (damaged, whole) = rest.split_last()?;
    // A block that was never written reads as zeros.
    let located = proves(whole).filter(|_| *damaged != 0)?;
    Some((located, whole.len()))
}

/// The number of the entry that should stand next.
fn next(day: &DayFile, found: &Scan) -> u64 {
    day.first + found.entries.len() as u64
}

/// A power cut leaves the front of a line, or blocks that were never written and read as zeros; of one batch the later
/// blocks may have been written before the earlier. A line without zeros that ends is no cut: somebody changed it.
fn is_torn(rest: &[u8], error: &ChainError) -> bool {
    let mut lines = rest.split(|byte| *byte == b'\n');
    let never_written = lines.next().is_some_and(|line| line.contains(&0));
    let one_batch = lines.count() <= LONGEST_BATCH;
    never_written && one_batch && matches!(error, ChainError::NotAnEntry { .. })
}

fn torn_name(day: &DayFile, at: usize) -> String {
    format!("{}.torn-at-{at}", day.name)
}

fn keep_torn(folder: &Path, day: &DayFile, at: usize, lost: &[u8]) -> Result<(), StoreError> {
    let path = folder.join(torn_name(day, at));
    let mut file = File::create(&path).map_err(StoreError::folder(&path))?;
    file.write_all(lost)
        .and_then(|()| file.sync_all())
        .map_err(StoreError::folder(&path))?;
    sync_folder(folder)
}
