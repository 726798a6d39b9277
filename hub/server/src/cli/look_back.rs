//! Days that are over, from the terminal: sheets, tables, archives, from the log alone; a hub may run meanwhile.

use std::path::Path;

use words::Language;

use crate::archive;
use crate::days::{DayError, KeptDay};
use crate::error::StartError;
use crate::export;
use crate::report::tables::Table;
use crate::report::{self, Kind};
use crate::terminal::say;

impl From<DayError> for StartError {
    fn from(error: DayError) -> Self {
        match error {
            DayError::Store(error) => Self::Store(error),
            DayError::NoSuchDay { .. } | DayError::Nothing(_) => Self::Asked(error.to_string()),
        }
    }
}

/// A day, after its whole log has proven itself.
fn proven(data: &Path, day: Option<&str>) -> Result<KeptDay, StartError> {
    export::verify_log(data)?;
    Ok(KeptDay::read(data, day, u64::MAX, |_, _| None)?)
}

fn no_site(data: &Path) -> StartError {
    StartError::Asked(format!(
        "{} holds no site on that day. Start the hub with a site file first.",
        data.display()
    ))
}

/// Writes a sheet.
pub(super) fn report(
    data: &Path,
    day: Option<&str>,
    kind: Kind,
    language: &str,
    out: Option<&Path>,
) -> Result<(), StartError> {
    let language = Language::ALL
        .into_iter()
        .find(|one| one.code() == language)
        .ok_or_else(|| {
            let known = Language::ALL.map(Language::code).join(", ");
            StartError::Asked(format!("--language {language}: give one of {known}."))
        })?;
    let day = proven(data, day)?;
    let text = report::sheet(&day, kind, language).ok_or_else(|| no_site(data))?;
    super::write(out, |out| {
        out.write_all(text.as_bytes())
            .map_err(|source| export::ExportError::File {
                path: data.to_owned(),
                source,
            })
    })
}

/// Writes every table of a day into a folder.
pub(super) fn tables(data: &Path, day: Option<&str>, out: &Path) -> Result<(), StartError> {
    let day = proven(data, day)?;
    std::fs::create_dir_all(out).map_err(|source| StartError::Write {
        path: out.to_owned(),
        source,
    })?;
    for table in Table::ALL {
        let text = report::tables::file(&day, table).ok_or_else(|| no_site(data))?;
        let path = out.join(table.name());
        super::write(Some(&path), |file| {
            file.write_all(text.as_bytes())
                .map_err(|source| export::ExportError::File {
                    path: path.clone(),
                    source,
                })
        })?;
        say(&format!("{}: written.", path.display()));
    }
    Ok(())
}

/// Puts a day by.
pub(super) fn put_by(data: &Path, day: Option<&str>, out: &Path) -> Result<(), StartError> {
    let names = archive::put_by(data, day, out)?;
    say(&format!(
        "{}: {} files, to be read only. `rodcall verify` proves its log.jsonl.",
        out.display(),
        names.len()
    ));
    Ok(())
}

/// Tries a restore.
pub(super) fn try_restore(data: &Path) -> Result<(), StartError> {
    let back = archive::try_restore(data)?;
    say(&format!(
        "Everything came back: {} entries, {} photos, {} days, {} sheets the same. Head {}.",
        back.head, back.photos, back.days, back.sheets, back.hash
    ));
    Ok(())
}
