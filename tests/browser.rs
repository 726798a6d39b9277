//! The pages in a real browser against the real binary: runs the specs of `tests/browser` with Playwright.
//!
//! A missing Chromium or Node is a failure with what to do about it, never a skip.
#![expect(
    clippy::expect_used,
    reason = "a test that can't go on says why and fails"
)]

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::SystemTime;
use std::{env, io};

const NODE: &str = "Node 20.19 or newer with npm is needed for the browser tests: install it, then run this again.";

fn specs() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/browser")
}

fn modified(path: &Path) -> io::Result<SystemTime> {
    fs::metadata(path)?.modified()
}

/// Installs the runner when what is installed is older than the lock file.
fn install(folder: &Path) {
    let lock = modified(&folder.join("package-lock.json")).expect("the lock file");
    let installed = modified(&folder.join("node_modules/.package-lock.json"));
    if installed.is_ok_and(|installed| installed >= lock) {
        return;
    }
    let npm = if cfg!(windows) { "npm.cmd" } else { "npm" };
    let done = Command::new(npm)
        .args(["ci", "--ignore-scripts", "--no-audit", "--no-fund"])
        .current_dir(folder)
        .env("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")
        .status()
        .expect(NODE);
    assert!(
        done.success(),
        "npm could not install the runner: its own words stand above"
    );
}

#[test]
fn the_pages_do_in_a_browser_what_they_promise() {
    let chromium = env::var("CHROMIUM").unwrap_or_else(|_| "/usr/bin/chromium".to_owned());
    assert!(
        Path::new(&chromium).is_file(),
        "{chromium} is not there. Install Chromium (Debian: apt-get install chromium) or name it in CHROMIUM."
    );
    let folder = specs();
    install(&folder);
    let run = Command::new("node")
        .args(["node_modules/@playwright/test/cli.js", "test"])
        .current_dir(&folder)
        .env("RODCALL_BINARY", env!("CARGO_BIN_EXE_rodcall"))
        .output()
        .expect(NODE);
    assert!(
        run.status.success(),
        "A page does not do what it promises:\n{}{}",
        String::from_utf8_lossy(&run.stdout),
        String::from_utf8_lossy(&run.stderr)
    );
}
