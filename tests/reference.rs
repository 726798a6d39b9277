//! The hub's arithmetic beside numpy, scipy, shapely and exact fractions, on thousands of seeded inputs: runs
//! `tests/reference/check.py` on `rodcall compute`.
//!
//! The libraries are installed once, into an environment of their own under the target folder. A missing Python is a
//! failure with what to do about it, never a skip.
#![expect(
    clippy::expect_used,
    reason = "a test that can't go on says why and fails"
)]

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

const PYTHON: &str = "Python 3.11 or newer with venv and pip is needed to compare the arithmetic with outside libraries: \
    install it (Debian: apt-get install python3 python3-venv python3-pip), then run this again.";

fn ran(command: &mut Command, what: &str) -> Output {
    let output = command.output().expect(PYTHON);
    assert!(
        output.status.success(),
        "{what}:\n{}{}",
        String::from_utf8_lossy(&output.stdout),
        String::from_utf8_lossy(&output.stderr)
    );
    output
}

/// The Python that has the libraries; they are installed anew when the list of them differs from what was installed.
fn python(folder: &Path) -> PathBuf {
    let home = Path::new(env!("CARGO_TARGET_TMPDIR")).join("reference");
    let inside = if cfg!(windows) {
        "Scripts/python.exe"
    } else {
        "bin/python"
    };
    let python = home.join(inside);
    let wanted = fs::read(folder.join("requirements.txt")).expect("the list of libraries");
    let installed = home.join("installed.txt");
    if python.is_file() && fs::read(&installed).is_ok_and(|has| has == wanted) {
        return python;
    }
    let made = ["-m", "venv", "--clear"];
    ran(Command::new("python3").args(made).arg(&home), PYTHON);
    let quiet = [
        "-m",
        "pip",
        "install",
        "--quiet",
        "--disable-pip-version-check",
        "--requirement",
    ];
    ran(
        Command::new(&python)
            .args(quiet)
            .arg(folder.join("requirements.txt")),
        "pip could not install numpy, scipy and shapely. It needs Python 3.11 or newer and a package index",
    );
    fs::write(&installed, wanted).expect("a note of what is installed");
    python
}

#[test]
fn the_arithmetic_agrees_with_outside_libraries() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/reference");
    let checked = ran(
        Command::new(python(&folder))
            .arg("-B")
            .arg(folder.join("check.py"))
            .arg(env!("CARGO_BIN_EXE_rodcall")),
        "The hub and a reference differ; each difference has a line that `rodcall compute` takes",
    );
    let said = String::from_utf8_lossy(&checked.stdout);
    let cases: usize = said
        .lines()
        .filter_map(|line| {
            line.split_once(": ")?
                .1
                .split_once(" cases ")?
                .0
                .parse::<usize>()
                .ok()
        })
        .sum();
    assert!(cases >= 20_000, "only {cases} cases were compared:\n{said}");
}
