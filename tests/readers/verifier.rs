//! A verifier that knows `hub/LOG.md` alone, in Python, beside `rodcall verify`: on whole logs, and on each kind of damage.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::golden::logs;
use crate::harness::{folder, rodcall, words};

/// What a verifier says when a log is proven: its first and last entry, and the head.
fn proven_by_python(place: &Path) -> Option<String> {
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/reference/verify_log.py");
    let ran = Command::new("python3")
        .arg("-B")
        .arg(script)
        .arg(place)
        .output();
    let ran = ran.expect("Python 3.11 or newer (Debian: apt-get install python3)");
    let said = words(&ran);
    assert!(
        ran.status.success() || said.starts_with("not proven: "),
        "it fails for no reason of the log's: {said}"
    );
    ran.status.success().then(|| said.trim().to_owned())
}

fn proven_by_the_hub(place: &Path) -> Option<String> {
    let ran = rodcall(&["verify".as_ref(), place.as_os_str()]);
    let said = words(&ran);
    let from = said.find("Entries ");
    let proven = ran.status.success().then(|| from.expect("what is proven"));
    proven.map(|at| {
        let end = said[at..].find('.').expect("an end") + at;
        said[at..=end].to_owned()
    })
}

/// Both agree; whether it is proven.
fn agree(place: &Path, what: &str) -> bool {
    let (hub, python) = (proven_by_the_hub(place), proven_by_python(place));
    assert_eq!(hub, python, "{what}");
    hub.is_some()
}

/// The file to damage: an export itself, or the first day of a folder.
fn copied(log: &Path, to: &Path) -> (PathBuf, PathBuf) {
    if log.is_file() {
        let copy = to.join("export.jsonl");
        fs::copy(log, &copy).expect("a copy");
        return (copy.clone(), copy);
    }
    for part in ["log", "photos"] {
        fs::create_dir_all(to.join(part)).expect("a folder");
        for item in fs::read_dir(log.join(part)).expect("a folder") {
            let item = item.expect("a file");
            fs::copy(item.path(), to.join(part).join(item.file_name())).expect("a copy");
        }
    }
    let mut days: Vec<PathBuf> = fs::read_dir(to.join("log"))
        .expect("days")
        .map(|item| item.expect("a day").path())
        .collect();
    days.sort();
    (to.to_owned(), days.remove(0))
}

#[test]
fn a_stranger_s_verifier_agrees_on_whole_logs_and_on_every_damage() {
    for log in logs() {
        assert!(
            agree(&log, &log.display().to_string()),
            "a golden log is proven"
        );
        let place = folder();
        let (copy, file) = copied(&log, place.path());
        let good = fs::read(&file).expect("a day");
        let lines: Vec<&[u8]> = good.split_inclusive(|byte| *byte == b'\n').collect();
        let try_it = |what: &str, bytes: Vec<u8>, passes: bool| {
            fs::write(&file, bytes).expect("a damaged day");
            assert_eq!(agree(&copy, what), passes, "{what} of {}", file.display());
        };
        // One bit each in places all over the file, ends of lines among them.
        for step in 0..12 {
            let at = good.len() * step / 12 + step;
            let mut bytes = good.clone();
            bytes[at] ^= 1;
            try_it(&format!("byte {at} is another"), bytes, false);
        }
        let mut bytes = good.clone();
        bytes[lines[0].len() - 1] ^= 1;
        try_it("a line feed is another byte", bytes, false);
        let middle = lines.len() / 3;
        let mut missing = lines.clone();
        missing.remove(middle);
        try_it("a line is missing", missing.concat(), false);
        let mut swapped = lines.clone();
        swapped.swap(middle, middle + 1);
        try_it("two lines have changed places", swapped.concat(), false);
        let mut twice = lines.clone();
        twice.insert(middle, lines[middle]);
        try_it("a line stands twice", twice.concat(), false);
        try_it("the end is torn", good[..good.len() - 40].to_vec(), false);
        // Whole lines cut off an export prove themselves, but for photos: the head is another. A day that goes on does not.
        let cut = lines[..middle].concat();
        try_it("the end is cut off at a line", cut, log.is_file());
        try_it("it is whole again", good.clone(), true);
    }
}
