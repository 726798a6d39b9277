//! What stays over a power cut: a folder that was made, and a file that is there whole or not at all.

use std::fs::File;
use std::io::{self, Write as _};
use std::path::Path;

use tempfile::NamedTempFile;

/// Makes the names in a folder durable.
///
/// # Errors
/// When the folder can't be read or the disk does not answer for it.
pub(crate) fn sync_folder(folder: &Path) -> io::Result<()> {
    // The folder of a bare name is the one that the process stands in.
    let folder = Some(folder).filter(|path| !path.as_os_str().is_empty());
    File::open(folder.unwrap_or(Path::new(".")))?.sync_all()
}

/// Makes a folder with those above it, each durable under its name.
///
/// # Errors
/// When one can't be made.
pub(crate) fn make_folder(folder: &Path) -> io::Result<()> {
    let missing: Vec<&Path> = folder
        .ancestors()
        .take_while(|path| !path.as_os_str().is_empty() && !path.exists())
        .collect();
    std::fs::create_dir_all(folder)?;
    // From the outermost in: a name counts once the folder that holds it does.
    for made in missing.iter().rev() {
        sync_folder(made.parent().unwrap_or(made))?;
    }
    Ok(())
}

/// Writes a file for the hub's eyes alone: whoever opens it finds what was there before, or all of this.
///
/// # Errors
/// When it can't be written; what was there before is there still.
pub(crate) fn write_whole(path: &Path, bytes: &[u8]) -> io::Result<()> {
    let folder = path.parent().unwrap_or(path);
    let mut part = NamedTempFile::new_in(folder)?;
    part.write_all(bytes)?;
    part.as_file().sync_all()?;
    part.persist(path)?;
    sync_folder(folder)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_is_replaced_whole_and_folders_are_made_to_any_depth() {
        let within = tempfile::tempdir().unwrap();
        let folder = within.path().join("a/b/c");
        make_folder(&folder).unwrap();
        make_folder(&folder).unwrap();
        let path = folder.join("file");
        write_whole(&path, b"longer than what follows").unwrap();
        write_whole(&path, b"short").unwrap();
        assert_eq!(std::fs::read(&path).unwrap(), b"short");
        assert_eq!(std::fs::read_dir(&folder).unwrap().count(), 1);
    }
}
