//! Names that outlive a power cut: a file or a folder is there for good only once the folder that names it is synced too.

use std::fs::File;
use std::path::Path;

use super::StoreError;

/// Makes a folder with all that it lies in, and each of their names durable. One that is there already may have been made by a
/// process that died before it could: its name is made durable again.
///
/// # Errors
/// [`StoreError::Folder`].
pub fn make_folder(folder: &Path) -> Result<(), StoreError> {
    let missing = folder.ancestors().take_while(|one| !one.exists()).count();
    std::fs::create_dir_all(folder).map_err(StoreError::folder(folder))?;
    for made in folder.ancestors().take(missing.max(1)) {
        sync_name(made)?;
    }
    Ok(())
}

/// Makes the name of a file or a folder durable.
///
/// # Errors
/// [`StoreError::Folder`].
pub fn sync_name(path: &Path) -> Result<(), StoreError> {
    match path.parent() {
        // Nothing names the root.
        None => Ok(()),
        Some(folder) if folder.as_os_str().is_empty() => sync_folder(Path::new(".")),
        Some(folder) => sync_folder(folder),
    }
}

/// Makes the names in a folder durable.
///
/// # Errors
/// [`StoreError::Folder`].
pub fn sync_folder(folder: &Path) -> Result<(), StoreError> {
    File::open(folder)
        .and_then(|folder| folder.sync_all())
        .map_err(StoreError::folder(folder))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn folders_are_made_with_all_that_they_lie_in_and_again_is_no_error() {
        let place = tempfile::tempdir().unwrap();
        let deep = place.path().join("a/b/c");
        make_folder(&deep).unwrap();
        make_folder(&deep).unwrap();
        assert!(deep.is_dir());
        sync_name(Path::new("/")).unwrap();
        sync_name(Path::new("in-this-folder")).unwrap();
        let file = place.path().join("file");
        std::fs::write(&file, b"").unwrap();
        let refused = make_folder(&file.join("under")).unwrap_err();
        assert!(refused.to_string().contains("can't be used"), "{refused}");
    }
}
