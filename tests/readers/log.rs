//! The log of a data folder and its export: not a byte can be other than it was written and pass.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

use proptest::prelude::*;
use rodcall::export::{self, ExportError};
use rodcall::store::{self, DataFolder};
use tempfile::TempDir;

use crate::damage::{Damage, damaged, damages};
use crate::harness::photo::Photo;
use crate::harness::yard::{Yard, prove_laser, reading};

/// A log with a set-up, readings, calls, a check, a stop and a photo, as the hub wrote it.
fn good() -> &'static [u8] {
    static GOOD: OnceLock<Vec<u8>> = OnceLock::new();
    GOOD.get_or_init(|| {
        let yard = Yard::open();
        let ground = yard.ground();
        let _cab = yard.cab("EX-1");
        prove_laser(&ground);
        for (mark, text) in [("P-1", "4.70"), ("P-2", "5.02"), ("P-3", "4.98")] {
            ground.says(&reading(mark, text));
        }
        let photo = Photo::new("photo-0001", 16, 12);
        ground.says(&photo.promise("P-1"));
        photo.comes(&ground).of(200);
        let stopped = yard.stop();
        let mut out = Vec::new();
        export::export(&stopped.data(), &mut out).expect("an export");
        let many = lines(&out).len();
        assert!(many > 10, "{many}: {}", String::from_utf8_lossy(&out));
        out
    })
}

fn written(bytes: &[u8]) -> (TempDir, PathBuf) {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("export.jsonl");
    fs::write(&path, bytes).expect("a file");
    (folder, path)
}

fn imported(path: &Path) -> Result<(), ExportError> {
    let new = tempfile::tempdir().expect("a folder");
    let folder = DataFolder::take(new.path()).expect("a data folder");
    let done = export::import(path, &folder).map(|_| ());
    drop(folder);
    let there = export::verify(new.path());
    match &done {
        // A log without its photo is taken, and says that it is without.
        Ok(()) => assert!(
            matches!(there, Ok(_) | Err(ExportError::Photo { .. })),
            "what was imported proves itself: {there:?}"
        ),
        Err(_) => assert!(
            matches!(there, Err(ExportError::Nothing { .. })),
            "nothing was imported: {there:?}"
        ),
    }
    done
}

/// The same entries, whatever stands at the ends of their lines.
fn lines(bytes: &[u8]) -> Vec<&[u8]> {
    bytes
        .split(|byte| *byte == b'\n')
        .map(|line| line.strip_suffix(b"\r").unwrap_or(line))
        .map(|line| line.strip_suffix(b" ").unwrap_or(line))
        .collect()
}

/// What stands before the photos of an export.
fn entries(bytes: &[u8]) -> &[u8] {
    let begins = b"\n{\"photo\":";
    let at = bytes
        .windows(begins.len())
        .position(|window| window == begins);
    at.map_or(bytes, |at| &bytes[..=at])
}

/// Whether these are some of the good lines, one after the other.
fn is_a_stretch(bytes: &[u8]) -> bool {
    let (all, mut some) = (lines(good()), lines(bytes));
    while some.last().is_some_and(|line| line.is_empty()) {
        some.pop();
    }
    all.windows(some.len().max(1))
        .any(|stretch| stretch == some)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(150))]

    #[test]
    fn a_damaged_export_is_named_and_never_imported(damages in damages()) {
        let bytes = damaged(good(), &damages);
        let (_folder, path) = written(&bytes);
        match export::verify(&path) {
            // Only whole lines lost at an end leave a file that proves itself.
            Ok(_) => prop_assert!(is_a_stretch(&bytes)),
            Err(ExportError::Photo { .. }) => prop_assert!(is_a_stretch(&bytes)),
            Err(error) => {
                prop_assert!(!error.to_string().is_empty());
                if let ExportError::Broken { line, .. } = &error {
                    prop_assert!(*line <= lines(&bytes).len() as u64, "{error}");
                }
                prop_assert!(imported(&path).is_err());
            }
        }
    }

    #[test]
    fn any_file_is_no_export(bytes in prop::collection::vec(any::<u8>(), 0..600)) {
        let (_folder, path) = written(&bytes);
        prop_assert!(export::verify(&path).is_err());
        prop_assert!(imported(&path).is_err());
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    /// A damaged day file is refused by name, or its torn end is cut off with a note: what is left is a beginning of
    /// what was written.
    #[test]
    fn a_damaged_day_is_refused_or_loses_its_torn_end(damages in damages()) {
        let folder = tempfile::tempdir().expect("a folder");
        let (_there, path) = written(good());
        let taken = DataFolder::take(folder.path()).expect("a data folder");
        export::import(&path, &taken).expect("a log");
        drop(taken);
        let days: Vec<PathBuf> = fs::read_dir(folder.path().join("log"))
            .expect("a log")
            .map(|item| item.expect("a file").path())
            .collect();
        prop_assert_eq!(days.len(), 1, "one day");
        let before = fs::read(&days[0]).expect("the day");
        let after = damaged(&before, &damages);
        fs::write(&days[0], &after).expect("the day");
        let opened = store::open(DataFolder::take(folder.path()).expect("a data folder"));
        match opened {
            Ok(opened) => {
                drop(opened);
                let mut left = Vec::new();
                match export::export(folder.path(), &mut left) {
                    Ok(()) => {
                        let left = entries(&left);
                        prop_assert!(good().starts_with(left) || is_a_stretch(left));
                    }
                    Err(error) => prop_assert!(matches!(error, ExportError::Nothing { .. }), "{error}"),
                }
            }
            Err(error) => prop_assert!(error.to_string().contains("damaged"), "{error}"),
        }
    }
}

/// A line without end, and a file of blanks, in bounded memory.
#[test]
fn a_file_without_lines_is_refused() {
    let (_folder, path) = written(b"");
    let file = fs::File::options()
        .write(true)
        .open(&path)
        .expect("the file");
    file.set_len(1 << 40).expect("a large file");
    let why = export::verify(&path).expect_err("no export").to_string();
    assert!(why.contains("larger than 64 MB"), "{why}");
    let broken = damaged(good(), &[Damage::Cut(0.5, 1)]);
    let (_folder, path) = written(&broken);
    let why = export::verify(&path)
        .expect_err("a byte is missing")
        .to_string();
    assert!(why.contains("line "), "{why}");
}
