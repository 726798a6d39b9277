//! The shim between the hub and its disk: built here, told what to fail, asked what was done.

use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use tempfile::TempDir;

use crate::harness::folder;
use crate::harness::yard::Yard;

/// A built shim with its control and its record.
pub(crate) struct Shim {
    folder: TempDir,
}

/// What had been done to the day's file by some moment.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Done {
    /// Bytes written.
    pub(crate) written: usize,
    /// Bytes that a power cut can't take.
    pub(crate) synced: usize,
    /// The file's name is on the disk too.
    pub(crate) named: bool,
}

impl Shim {
    /// Builds it; needs a C compiler.
    pub(crate) fn build() -> Self {
        let shim = Self { folder: folder() };
        let source = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/faults/shim.c");
        let built = Command::new("cc")
            .args(["-shared", "-fPIC", "-O1", "-Wall", "-Werror", "-o"])
            .args([shim.library(), source])
            .arg("-ldl")
            .output()
            .expect("a C compiler: install gcc (Debian: apt-get install gcc)");
        assert!(
            built.status.success(),
            "{}",
            String::from_utf8_lossy(&built.stderr)
        );
        shim.fails("-");
        shim
    }

    fn library(&self) -> PathBuf {
        self.folder.path().join("shim.so")
    }

    fn control(&self) -> PathBuf {
        self.folder.path().join("control")
    }

    fn record(&self) -> PathBuf {
        self.folder.path().join("record")
    }

    /// A hub on the yard with the shim under it.
    pub(crate) fn open_yard(&self) -> Yard {
        let (library, control, record) = (self.library(), self.control(), self.record());
        let environment: [(&str, &OsStr); 3] = [
            ("LD_PRELOAD", library.as_ref()),
            ("RODCALL_FAULT", control.as_ref()),
            ("RODCALL_RECORD", record.as_ref()),
        ];
        Yard::open_with(&environment)
    }

    /// From now on this fails: see `shim.c`.
    pub(crate) fn fails(&self, what: &str) {
        // Renamed into place, so that the hub never reads half of it.
        let fresh = self.folder.path().join("fresh");
        fs::write(&fresh, what).expect("a control file");
        fs::rename(fresh, self.control()).expect("a control file");
    }

    /// What had been done by now.
    pub(crate) fn done(&self) -> Done {
        let text = fs::read_to_string(self.record()).expect("a record");
        let whole = text.rfind('\n').map_or("", |end| &text[..end]);
        let mut done = Done::default();
        for line in whole.lines() {
            match line.split_once(' ') {
                Some(("W", count)) => done.written += count.parse::<usize>().expect("a count"),
                None if line == "S" => done.synced = done.written,
                None if line == "D" => done.named = true,
                _ => panic!("{line:?} in the record"),
            }
        }
        done
    }
}
