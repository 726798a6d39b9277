//! Photos as files of the data folder, each named by the SHA-256 of its bytes: `photos/<64 hex>.jpg`.
//!
//! A file is on the disk before the log says that it has come. It has its name only once it is whole: what a crash leaves of
//! one is swept away at the next start.

use std::fs;
use std::io::{ErrorKind, Write as _};
use std::path::{Path, PathBuf};

use day::chain::digest;
use thiserror::Error;

use super::StoreError;
use super::durable::{make_folder, sync_folder};

/// The beginning of the name of a file that is not whole yet.
const PART: &str = ".part-";
/// Photos leave the log this much of the disk, in bytes: weeks of days.
const LEFT_TO_THE_LOG: u64 = 64 * 1024 * 1024;

/// Why a photo can't be kept or shown.
#[derive(Debug, Error)]
pub enum PhotoError {
    /// The disk is all but full.
    #[error(
        "The laptop's disk is all but full: the rest is left to the log. The photo stays on the phone, and is sent again once there is room."
    )]
    NoRoom,
    /// The system does not let it be written or read.
    #[error("{} can't be written or read ({source}). Check who may use the folder.", path.display())]
    File {
        /// What.
        path: PathBuf,
        /// Why.
        source: std::io::Error,
    },
    /// Its file is not there.
    #[error("the photo {sha256} is missing: there is no file of its name")]
    Missing {
        /// Its name.
        sha256: String,
    },
    /// Its file holds other bytes.
    #[error("the photo {sha256} was touched: its bytes give {has}")]
    Touched {
        /// Its name.
        sha256: String,
        /// The hash of the bytes that are there.
        has: String,
    },
    /// The folder can't be made durable.
    #[error("{0}")]
    Folder(#[from] StoreError),
}

/// The photos of a data folder; clones share it.
#[derive(Clone, Debug)]
pub struct Photos {
    folder: PathBuf,
}

impl Photos {
    /// Those of a data folder.
    pub fn of(data: &Path) -> Self {
        Self {
            folder: data.join("photos"),
        }
    }

    /// Sweeps away what a crash left unfinished, before anything is written.
    ///
    /// # Errors
    /// [`StoreError::Folder`].
    pub fn sweep(&self) -> Result<(), StoreError> {
        let items = match fs::read_dir(&self.folder) {
            Err(error) if error.kind() == ErrorKind::NotFound => return Ok(()),
            items => items.map_err(StoreError::folder(&self.folder))?,
        };
        for item in items {
            let item = item.map_err(StoreError::folder(&self.folder))?;
            if item.file_name().to_string_lossy().starts_with(PART) {
                let path = item.path();
                fs::remove_file(&path).map_err(StoreError::folder(&path))?;
            }
        }
        Ok(())
    }

    /// Keeps a photo whose bytes have this hash. When this returns it is on the disk.
    ///
    /// # Errors
    /// [`PhotoError`]; then nothing of it has a name, and the log is as good as before.
    pub fn keep(&self, sha256: &str, bytes: &[u8]) -> Result<(), PhotoError> {
        if self.read(sha256).is_ok() {
            return Ok(());
        }
        if !self.folder.is_dir() {
            make_folder(&self.folder)?;
        }
        let room = fs4::available_space(&self.folder).map_err(not_written(&self.folder))?;
        if room < LEFT_TO_THE_LOG {
            return Err(PhotoError::NoRoom);
        }
        let path = self.path(sha256);
        let mut part = tempfile::Builder::new()
            .prefix(PART)
            .tempfile_in(&self.folder)
            .map_err(not_written(&self.folder))?;
        part.write_all(bytes)
            .and_then(|()| part.as_file().sync_all())
            .map_err(not_written(&path))?;
        part.persist(&path)
            .map_err(|error| not_written(&path)(error.error))?;
        Ok(sync_folder(&self.folder)?)
    }

    /// The bytes of a photo, which give its name.
    ///
    /// # Errors
    /// [`PhotoError`]: what was touched is shown to nobody.
    pub fn read(&self, sha256: &str) -> Result<Vec<u8>, PhotoError> {
        let path = self.path(sha256);
        let bytes = fs::read(&path).map_err(|source| match source.kind() {
            ErrorKind::NotFound => PhotoError::Missing {
                sha256: sha256.to_owned(),
            },
            _ => PhotoError::File { path, source },
        })?;
        let has = digest(&bytes);
        if has == sha256 {
            Ok(bytes)
        } else {
            Err(PhotoError::Touched {
                sha256: sha256.to_owned(),
                has,
            })
        }
    }

    /// A name that is no hash leads nowhere.
    fn path(&self, sha256: &str) -> PathBuf {
        let hex = sha256.len() == 64 && sha256.bytes().all(|byte| byte.is_ascii_hexdigit());
        self.folder
            .join(if hex { sha256 } else { "no-hash" })
            .with_extension("jpg")
    }
}

fn not_written(path: &Path) -> impl FnOnce(std::io::Error) -> PhotoError + '_ {
    move |source| match source.kind() {
        ErrorKind::StorageFull | ErrorKind::QuotaExceeded => PhotoError::NoRoom,
        _ => PhotoError::File {
            path: path.to_owned(),
            source,
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_photo_is_kept_once_and_what_was_touched_is_named() {
        let data = tempfile::tempdir().unwrap();
        let photos = Photos::of(data.path());
        photos.sweep().unwrap();
        let sha256 = digest(b"picture");
        assert!(matches!(
            photos.read(&sha256),
            Err(PhotoError::Missing { .. })
        ));
        photos.keep(&sha256, b"picture").unwrap();
        photos.keep(&sha256, b"picture").unwrap();
        assert_eq!(photos.read(&sha256).unwrap(), b"picture");
        let path = data.path().join(format!("photos/{sha256}.jpg"));
        fs::write(&path, b"Picture").unwrap();
        let touched = photos.read(&sha256).unwrap_err().to_string();
        assert!(touched.contains(&digest(b"Picture")), "{touched}");
        // What was promised comes again: the touched file gives way to it.
        photos.keep(&sha256, b"picture").unwrap();
        assert_eq!(photos.read(&sha256).unwrap(), b"picture");
        assert_eq!(fs::read_dir(path.parent().unwrap()).unwrap().count(), 1);
    }

    #[test]
    fn a_start_sweeps_away_what_is_not_whole_and_nothing_else() {
        let data = tempfile::tempdir().unwrap();
        let photos = Photos::of(data.path());
        let sha256 = digest(b"picture");
        photos.keep(&sha256, b"picture").unwrap();
        let part = data.path().join("photos/.part-torn");
        fs::write(&part, b"pic").unwrap();
        photos.sweep().unwrap();
        assert!(!part.exists());
        assert!(photos.read(&sha256).is_ok());
    }

    #[test]
    fn a_name_that_is_no_hash_leads_nowhere() {
        let data = tempfile::tempdir().unwrap();
        fs::write(data.path().join("secret"), b"secret").unwrap();
        let photos = Photos::of(data.path());
        photos.keep(&digest(b"x"), b"x").unwrap();
        for name in ["../secret", "", "../photos/x", &"/".repeat(64)] {
            let missing = photos.read(name);
            assert!(matches!(missing, Err(PhotoError::Missing { .. })), "{name}");
        }
    }
}
