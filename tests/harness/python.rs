//! A Python that has numpy, scipy and shapely: installed once, in an environment of its own under the target folder.
//!
//! A missing Python is a failure with what to do about it, never a skip.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

const PYTHON: &str = "Python 3.11 or newer with venv and pip is needed to compare with outside libraries: install it \
    (Debian: apt-get install python3 python3-venv python3-pip), then run this again.";

/// Runs a command to its end; when it fails, says what it was for and everything that it said.
pub(crate) fn ran(command: &mut Command, what: &str) -> Output {
    let output = command.output().expect(PYTHON);
    assert!(
        output.status.success(),
        "{what}:\n{}{}",
        String::from_utf8_lossy(&output.stdout),
        String::from_utf8_lossy(&output.stderr)
    );
    output
}

/// A script of this folder, with the Python that has the libraries of `tests/reference/requirements.txt`; they are
/// installed anew when that list differs from what was installed.
pub(crate) fn script(path: &str) -> Command {
    let tests = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests");
    let list = tests.join("reference/requirements.txt");
    let mut command = Command::new(python(&list));
    command.arg("-B").arg(tests.join(path));
    command
}

fn python(list: &Path) -> PathBuf {
    let home = Path::new(env!("CARGO_TARGET_TMPDIR")).join("reference");
    let inside = if cfg!(windows) {
        "Scripts/python.exe"
    } else {
        "bin/python"
    };
    let python = home.join(inside);
    let wanted = fs::read(list).expect("the list of libraries");
    let installed = home.join("installed.txt");
    if python.is_file() && fs::read(&installed).is_ok_and(|has| has == wanted) {
        return python;
    }
    let own = ["-m", "venv", "--clear"];
    ran(Command::new("python3").args(own).arg(&home), PYTHON);
    let install = "-m pip install --quiet --disable-pip-version-check --requirement";
    ran(
        Command::new(&python).args(install.split(' ')).arg(list),
        "pip could not install numpy, scipy and shapely. It needs Python 3.11 or newer and a package index",
    );
    fs::write(&installed, wanted).expect("a note of what is installed");
    python
}
