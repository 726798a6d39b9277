//! A day put by for years, and the proof that it would come back: a folder that opens without the hub, and a restore that is
//! tried in a scratch folder and compared, sheet by sheet.

use std::fs::{self, File};
use std::io;
use std::path::{Path, PathBuf};

use clap::ValueEnum as _;
use contract::ToSchema;
use serde::Serialize;
use thiserror::Error;
use words::Language;

use crate::days::{self, DayError, KeptDay};
use crate::export::{self, ExportError};
use crate::report::tables::{self, Table};
use crate::report::{self, Kind};
use crate::store::DataFolder;

/// Why a day is not put by, or did not come back.
#[derive(Debug, Error)]
pub enum ArchiveError {
    /// The log does not prove itself, or can't be carried over.
    #[error("{0}")]
    Export(#[from] ExportError),
    /// The day can't be read.
    #[error("{0}")]
    Day(#[from] DayError),
    /// The folder is there already, or can't be written.
    #[error("{} can't be written ({source}). Name a new folder with room on its disk.", path.display())]
    Folder {
        /// Which.
        path: PathBuf,
        /// Why.
        source: io::Error,
    },
    /// A day without a site has no sheets.
    #[error("{day} has no site: there is nothing to put on paper. Name another day.")]
    NoSite {
        /// Which day.
        day: String,
    },
    /// A sheet of the copy differs.
    #[error(
        "The copy's {sheet} of {day} is not the same. Keep the data folder, and do not count on its exports."
    )]
    Differs {
        /// Which day.
        day: String,
        /// Which sheet.
        sheet: &'static str,
    },
}

impl ArchiveError {
    fn at(path: &Path) -> impl FnOnce(io::Error) -> Self + '_ {
        move |source| Self::Folder {
            path: path.to_owned(),
            source,
        }
    }
}

/// The name of a sheet, as the command line has it.
fn name_of(kind: Kind) -> String {
    let value = kind.to_possible_value();
    value.map_or_else(String::new, |value| value.get_name().to_owned())
}

/// Writes a day into a new folder: every sheet in every language, every table, the log up to now with its photos. The files may
/// only be read afterwards. Gives their names.
///
/// # Errors
/// [`ArchiveError`]; the folder is then not whole.
pub fn put_by(data: &Path, day: Option<&str>, out: &Path) -> Result<Vec<String>, ArchiveError> {
    let proof = export::verify(data)?;
    let day = KeptDay::read(data, day, proof.head.seq, |_, _| None)?;
    fs::create_dir(out).map_err(ArchiveError::at(out))?;
    let mut names = Vec::new();
    let mut keep = |name: String, text: &str| {
        let path = out.join(&name);
        fs::write(&path, text).map_err(ArchiveError::at(&path))?;
        names.push(name);
        Ok::<_, ArchiveError>(())
    };
    for kind in Kind::value_variants() {
        for language in Language::ALL {
            if let Some(text) = report::sheet(&day, *kind, language) {
                keep(
                    format!("{}.{}.html", name_of(*kind), language.code()),
                    &text,
                )?;
            }
        }
    }
    for table in Table::ALL {
        if let Some(text) = tables::file(&day, table) {
            keep(table.name(), &text)?;
        }
    }
    if names.is_empty() {
        return Err(ArchiveError::NoSite {
            day: day.name().to_owned(),
        });
    }
    let log = out.join("log.jsonl");
    let mut file = File::create_new(&log).map_err(ArchiveError::at(&log))?;
    export::export(data, &mut file)?;
    file.sync_all().map_err(ArchiveError::at(&log))?;
    names.push("log.jsonl".to_owned());
    for name in &names {
        read_only(&out.join(name))?;
    }
    Ok(names)
}

fn read_only(path: &Path) -> Result<(), ArchiveError> {
    let mut rights = fs::metadata(path)
        .map_err(ArchiveError::at(path))?
        .permissions();
    rights.set_readonly(true);
    fs::set_permissions(path, rights).map_err(ArchiveError::at(path))
}

/// What a tried restore proved.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct Restored {
    /// The last entry that came back.
    pub head: u64,
    /// The hash of the chain there.
    pub hash: String,
    /// Photos that came back, each proven by its bytes.
    pub photos: usize,
    /// Days.
    pub days: usize,
    /// Sheets of the copy that are the same, byte for byte.
    pub sheets: usize,
}

/// Exports everything, takes it into a scratch folder, proves it there, and compares each sheet of each day with the original.
/// Nothing of the data folder is changed; the scratch folder is gone afterwards.
///
/// # Errors
/// [`ArchiveError`], naming the first thing that did not come back.
pub fn try_restore(data: &Path) -> Result<Restored, ArchiveError> {
    let scratch = tempfile::tempdir().map_err(ArchiveError::at(&std::env::temp_dir()))?;
    let carried = scratch.path().join("log.jsonl");
    let mut file = File::create_new(&carried).map_err(ArchiveError::at(&carried))?;
    export::export(data, &mut file)?;
    let copy = scratch.path().join("copy");
    let folder = DataFolder::take(&copy).map_err(ExportError::from)?;
    let imported = export::import(&carried, &folder)?;
    let proof = export::verify(&copy)?;
    let until = imported.head.seq;
    let mut sheets = 0;
    let names = days::names(&copy)?;
    for name in &names {
        let there = KeptDay::read(&copy, Some(name), until, |_, _| None)?;
        let here = KeptDay::read(data, Some(name), until, |_, _| None)?;
        sheets += same(&here, &there)?;
    }
    Ok(Restored {
        head: until,
        hash: imported.head.hash,
        photos: proof.photos,
        days: names.len(),
        sheets,
    })
}

/// How many sheets of a day are the same in both; a sheet that differs is an error.
fn same(here: &KeptDay, there: &KeptDay) -> Result<usize, ArchiveError> {
    let mut same = 0;
    for kind in Kind::value_variants() {
        for language in Language::ALL {
            let (ours, theirs) = (
                report::sheet(here, *kind, language),
                report::sheet(there, *kind, language),
            );
            if ours != theirs {
                return Err(ArchiveError::Differs {
                    day: here.name().to_owned(),
                    sheet: match kind {
                        Kind::Day => "sheet of the day",
                        Kind::AsBuilt => "as-built sheet",
                        Kind::HandOver => "hand-over sheet",
                        Kind::CabCard => "cab card",
                        Kind::HandSignals => "sheet of hand signals",
                    },
                });
            }
            same += usize::from(ours.is_some());
        }
    }
    Ok(same)
}
