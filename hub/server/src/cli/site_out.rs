//! The site in force, written out of a data folder as files that others read.

use std::fs::File;
use std::io::Write;
use std::path::Path;

use crate::error::StartError;
use crate::site_file::RULES_FILE;
use crate::store::{self, DataFolder};
use crate::terminal::say;
use crate::{opening, site_export};

/// Writes the site in force of a data folder into another folder; nothing is overwritten.
pub(super) fn write(data: &Path, out: &Path) -> Result<(), StartError> {
    let mut opened = store::open(DataFolder::take(data)?)?;
    let state = opening::state(&mut opened)?;
    let Some(site) = state.site() else {
        return Err(StartError::Asked(format!(
            "{} holds no site yet. Start the hub with a site file first.",
            data.display()
        )));
    };
    let failed = |path: &Path| {
        let path = path.to_owned();
        move |source| StartError::Write { path, source }
    };
    std::fs::create_dir_all(out).map_err(failed(out))?;
    for name in site_export::FILES {
        let path = out.join(name);
        let text = site_export::file(site, name).unwrap_or_default();
        let mut to = File::create_new(&path).map_err(failed(&path))?;
        to.write_all(text.as_bytes()).map_err(failed(&path))?;
        to.sync_all().map_err(failed(&path))?;
        say(&format!("{}: written.", path.display()));
    }
    if site.cuts.rules.is_some() {
        say(&format!(
            "{RULES_FILE} is not written: the site keeps what it says, not the file. Put your own file of rules beside these under that name."
        ));
    }
    Ok(())
}
