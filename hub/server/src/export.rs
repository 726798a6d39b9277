//! The log on its way out and in: one file of JSON Lines that proves itself, photos and all, and a table for people.

use std::fs::File;
use std::io::{BufReader, Write};
use std::path::{Path, PathBuf};

use day::chain::{ChainError, Sealed, Walk, open};
use day::entry::Entry;
use thiserror::Error;
use words::Language;

use crate::bounded;
use crate::past::LogLine;
use crate::store::log::{self, Log};
use crate::store::photos::{PhotoError, Photos};
use crate::store::{DataFolder, Head, Kept, StoreError};
use crate::when::in_full;

mod photos;

pub use photos::PhotoFault;
use photos::{Carried, Named};

/// Why an export or import came to nothing.
#[derive(Debug, Error)]
pub enum ExportError {
    /// The store can't be used.
    #[error("{0}")]
    Store(#[from] StoreError),
    /// A file can't be read or written.
    #[error("{} can't be read or written ({source}).", path.display())]
    File {
        /// Which.
        path: PathBuf,
        /// Why.
        source: std::io::Error,
    },
    /// The export does not prove itself.
    #[error("{}, line {line}: {source}.", path.display())]
    Broken {
        /// Which file.
        path: PathBuf,
        /// Which line, from 1.
        line: u64,
        /// What is wrong.
        source: ChainError,
    },
    /// A photo of an export does not prove itself.
    #[error("{}, line {line}: {source}.", path.display())]
    BrokenPhoto {
        /// Which file.
        path: PathBuf,
        /// Which line, from 1.
        line: u64,
        /// What is wrong.
        source: PhotoFault,
    },
    /// A photo that an entry names is not there, or was touched.
    #[error("{}: {source}.", path.display())]
    Photo {
        /// Which file or folder.
        path: PathBuf,
        /// What is wrong.
        source: PhotoFault,
    },
    /// A photo can't be written into the new folder.
    #[error("{0}")]
    PhotoNotKept(#[from] PhotoError),
    /// An export that does not prove itself is not taken in.
    #[error("{0} Nothing was imported.")]
    NotImported(Box<ExportError>),
    /// There is a log already.
    #[error("The data folder {} holds a log already. Import into a new folder.", folder.display())]
    NotEmpty {
        /// Which folder.
        folder: PathBuf,
    },
    /// There is nothing.
    #[error("{} holds no log: there is nothing to prove or to export.", path.display())]
    Nothing {
        /// Where.
        path: PathBuf,
    },
    /// The table can't be written.
    #[error("The table can't be written ({0}).")]
    Table(#[from] csv::Error),
}

/// In the line of every entry that says that a photo has come.
const PHOTO_ADDED: &str = "\"kind\":\"photo_added\"";

/// Entries of one request that are kept in one write; a file that claims more is split, so that memory has a bound.
const LONGEST_REQUEST: usize = 8_192;

fn file_error(path: &Path) -> impl FnOnce(std::io::Error) -> ExportError + '_ {
    move |source| ExportError::File {
        path: path.to_owned(),
        source,
    }
}

/// What was proven.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Proof {
    /// The first entry; above 1 when what is before it is not in the file.
    pub first: u64,
    /// The last entry.
    pub head: Head,
    /// Photos that entries name, each proven by its bytes.
    pub photos: usize,
}

/// Proves a data folder, or a file that was exported, with its photos.
///
/// # Errors
/// [`ExportError`], naming the first broken entry, or else the first photo that is missing or was touched.
pub fn verify(path: &Path) -> Result<Proof, ExportError> {
    let (proof, lost) = if path.is_dir() {
        let (proof, named) = prove_folder(path)?;
        (proof, named.prove(&Photos::of(path)).err())
    } else {
        let (proof, named) = prove_file(path)?;
        (proof, named.missing())
    };
    match lost {
        None => Ok(proof),
        Some(source) => Err(ExportError::Photo {
            path: path.to_owned(),
            source,
        }),
    }
}

/// Proves the entries of a data folder; its photos are looked at by whoever shows them.
///
/// # Errors
/// [`ExportError`], naming the first broken entry.
pub fn verify_log(folder: &Path) -> Result<(), ExportError> {
    prove_folder(folder).map(|_| ())
}

fn nothing(path: &Path) -> ExportError {
    ExportError::Nothing {
        path: path.to_owned(),
    }
}

fn prove_folder(folder: &Path) -> Result<(Proof, Named), ExportError> {
    let logs = folder.join("log");
    if !logs.is_dir() {
        return Err(nothing(folder));
    }
    let mut named = Named::default();
    let (head, days) = log::prove(&logs, |located| named.entry(&located.entry))?;
    if days == 0 {
        return Err(nothing(folder));
    }
    let proof = Proof {
        first: 1,
        head,
        photos: named.len(),
    };
    Ok((proof, named))
}

/// Proves what a file holds; which photos it lacks is told by what is given back.
fn prove_file(path: &Path) -> Result<(Proof, Named), ExportError> {
    let mut ends: Option<(u64, Head)> = None;
    let mut named = Named::default();
    each_line(path, |line, at| {
        match line {
            Line::Entry { entry, .. } if named.has_shown() => {
                let late = PhotoFault::Entry(entry.seq);
                return Err(broken_photo(path, at)(late));
            }
            Line::Entry { entry, sealed } => {
                named.entry(&entry);
                let first = ends.as_ref().map_or(entry.seq, |(first, _)| *first);
                let (seq, hash) = (entry.seq, sealed.hash);
                ends = Some((first, Head { seq, hash }));
            }
            Line::Photo(photo) => named.photo(&photo).map_err(broken_photo(path, at))?,
        }
        Ok(())
    })?;
    let (first, head) = ends.ok_or_else(|| nothing(path))?;
    let proof = Proof {
        first,
        head,
        photos: named.len(),
    };
    Ok((proof, named))
}

fn broken_photo(path: &Path, line: u64) -> impl FnOnce(PhotoFault) -> ExportError + '_ {
    move |source| ExportError::BrokenPhoto {
        path: path.to_owned(),
        line,
        source,
    }
}

/// Writes the whole log as JSON Lines, its photos behind it.
///
/// # Errors
/// [`ExportError`].
pub fn export(folder: &Path, out: &mut (impl Write + ?Sized)) -> Result<(), ExportError> {
    let mut named = Named::default();
    for path in paths(folder)? {
        let file = File::open(&path).map_err(file_error(&path))?;
        let mut lines = BufReader::new(file);
        while let Some(line) = bounded::line(&mut lines).map_err(file_error(&path))? {
            writeln!(out, "{}", line.trim_end()).map_err(file_error(&path))?;
            if line.contains(PHOTO_ADDED) {
                let (entry, ..) =
                    open(line.trim_end(), 0).map_err(|source| StoreError::Damaged {
                        file: path.clone(),
                        source,
                    })?;
                named.entry(&entry);
            }
        }
    }
    let photos = Photos::of(folder);
    named.write(&photos, out).map_err(file_error(folder))?;
    out.flush().map_err(file_error(folder))
}

/// What was imported.
#[derive(Debug)]
pub struct Imported {
    /// The last entry.
    pub head: Head,
    /// Photos that entries name.
    pub photos: usize,
    /// The first photo that an entry names and that the export does not carry: the log is whole without it.
    pub missing: Option<PhotoFault>,
}

/// Takes an export into a new data folder, after it has proven itself from the first entry on.
///
/// # Errors
/// [`ExportError`]; then nothing is imported.
pub fn import(path: &Path, folder: &DataFolder) -> Result<Imported, ExportError> {
    let logs = folder.path().join("log");
    let (mut log, today, _) = Log::open(&logs, 0)?;
    if !today.is_empty() {
        return Err(ExportError::NotEmpty {
            folder: folder.path().to_owned(),
        });
    }
    let not_imported = |error| ExportError::NotImported(Box::new(error));
    let (proof, named) = prove_file(path).map_err(not_imported)?;
    if proof.first != 1 {
        return Err(not_imported(ExportError::Broken {
            path: path.to_owned(),
            line: 1,
            source: ChainError::Numbering {
                seq: proof.first,
                expected: 1,
            },
        }));
    }
    let photos = Photos::of(folder.path());
    let mut waiting: Vec<Kept> = Vec::new();
    each_line(path, |line, _| {
        let (entry, sealed) = match line {
            Line::Entry { entry, sealed } => (*entry, sealed),
            Line::Photo(photo) => return Ok(photos.keep(&photo.sha256, &photo.bytes)?),
        };
        if let Some(last) = waiting.last_mut() {
            // The same request goes on: it stays whole in the new folder too.
            last.more = !entry.key.is_empty()
                && last.entry.key == entry.key
                && last.entry.by.device == entry.by.device;
        }
        let whole = waiting.last().is_some_and(|last| !last.more);
        if waiting.len() >= 512 && whole || waiting.len() >= LONGEST_REQUEST {
            log.append(&waiting)?;
            waiting.clear();
        }
        waiting.push(Kept {
            entry,
            sealed,
            more: false,
        });
        Ok(())
    })?;
    log.append(&waiting)?;
    Ok(Imported {
        head: log.head().clone(),
        photos: proof.photos,
        missing: named.missing(),
    })
}

/// Writes the log as a table, one entry a row.
///
/// # Errors
/// [`ExportError`].
pub fn table(folder: &Path, out: impl Write) -> Result<(), ExportError> {
    let mut table = csv::Writer::from_writer(out);
    let columns = [
        "seq", "at", "made_at", "by", "device", "kind", "machine", "mark",
    ];
    table.write_record(columns.into_iter().chain(Language::ALL.map(Language::name)))?;
    for path in paths(folder)? {
        each_line(&path, |line, _| {
            let Line::Entry { entry, .. } = line else {
                return Ok(());
            };
            let line = LogLine::of(&entry);
            let columns = [
                line.seq.to_string(),
                in_full(line.at),
                in_full(line.made_at),
                harmless(&line.by),
                harmless(&line.device),
                harmless(&line.kind),
                harmless(line.machine.as_deref().unwrap_or_default()),
                harmless(line.mark.as_deref().unwrap_or_default()),
            ];
            let said = Language::ALL.map(|language| harmless(line.text.of(language)));
            table.write_record(columns.into_iter().chain(said))?;
            Ok(())
        })?;
    }
    table.flush().map_err(file_error(folder))
}

fn paths(folder: &Path) -> Result<Vec<PathBuf>, ExportError> {
    let logs = folder.join("log");
    if !logs.is_dir() {
        return Err(ExportError::Nothing {
            path: folder.to_owned(),
        });
    }
    Ok(log::paths(&logs)?)
}

/// A cell that a spreadsheet does not take for a formula.
pub(crate) fn harmless(cell: &str) -> String {
    if cell.starts_with(['=', '+', '-', '@', '\t', '\r']) {
        format!("'{cell}")
    } else {
        cell.to_owned()
    }
}

/// A line of a log or of an export.
enum Line {
    /// An entry, proven.
    Entry { entry: Box<Entry>, sealed: Sealed },
    /// A photo, not yet proven.
    Photo(Carried),
}

/// Proves the entries of a file line by line, from whatever entry it begins with; `visit` gets each line with its number.
fn each_line(
    path: &Path,
    mut visit: impl FnMut(Line, u64) -> Result<(), ExportError>,
) -> Result<(), ExportError> {
    let file = File::open(path).map_err(file_error(path))?;
    let mut walk: Option<Walk> = None;
    let mut lines = BufReader::new(file);
    for at in 1.. {
        let Some(line) = bounded::line(&mut lines).map_err(file_error(path))? else {
            break;
        };
        let line = line.strip_suffix(' ').unwrap_or(&line);
        if let Some(photo) = photos::carried(line) {
            visit(Line::Photo(photo.map_err(broken_photo(path, at))?), at)?;
            continue;
        }
        let broken = |source| ExportError::Broken {
            path: path.to_owned(),
            line: at,
            source,
        };
        let mut here = if let Some(walk) = walk.take() {
            walk
        } else {
            let (entry, prev, _) = open(line, at).map_err(broken)?;
            Walk::from_head(entry.seq.saturating_sub(1), prev)
        };
        let entry = Box::new(here.step(line).map_err(broken)?);
        let sealed = Sealed {
            line: line.to_owned(),
            hash: here.hash.clone(),
        };
        walk = Some(here);
        visit(Line::Entry { entry, sealed }, at)?;
    }
    Ok(())
}

#[cfg(test)]
mod tests;
