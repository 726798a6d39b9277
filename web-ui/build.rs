//! Builds the phone pages with npm and Vite into `$OUT_DIR/web`, where `lib.rs` embeds them.
//!
//! The sources, and the pages' words of every language, are copied out of the tree first, so that a build never writes
//! beside what a developer edits.
//! The packages are installed once for each lock file and kept under the target folder.

use std::collections::hash_map::DefaultHasher;
use std::ffi::OsStr;
use std::hash::{Hash, Hasher};
use std::path::{Path, PathBuf};
use std::process::{Command, ExitCode};
use std::{env, fs, io};

/// What the pages are made of.
const SOURCES: [&str; 9] = [
    "src",
    "fluent",
    "public",
    "index.html",
    "package.json",
    "package-lock.json",
    ".npmrc",
    "tsconfig.json",
    "vite.config.ts",
];

/// Where the words lie, seen from the pages and from their copies alike: a folder for each language.
const WORDS: &str = "../hub/words";

/// What to install when the pages can't be built.
const REMEDY: &str = "Node 20.19 or newer with npm is needed to build the phone pages: install it, \
    or set RODCALL_WEB_DIST to a built folder.";

fn main() -> ExitCode {
    match build() {
        Ok(()) => ExitCode::SUCCESS,
        Err(problem) => {
            println!("cargo::error={problem}");
            ExitCode::FAILURE
        }
    }
}

fn build() -> Result<(), String> {
    println!("cargo::rerun-if-env-changed=RODCALL_WEB_DIST");
    for source in SOURCES.iter().chain(&["build.rs"]) {
        println!("cargo::rerun-if-changed={source}");
    }
    let here = PathBuf::from(var("CARGO_MANIFEST_DIR")?);
    let words = words(&here)?;
    for folder in &words {
        println!("cargo::rerun-if-changed={}", here.join(folder).display());
    }
    let out = PathBuf::from(var("OUT_DIR")?);
    let web = out.join("web");
    clear(&web)?;
    if let Ok(built) = env::var("RODCALL_WEB_DIST") {
        println!("cargo::rerun-if-changed={built}");
        let built = PathBuf::from(built);
        if !built.join("index.html").is_file() {
            return Err(format!(
                "RODCALL_WEB_DIST is {}, which holds no index.html: name a folder that Vite has built.",
                built.display()
            ));
        }
        copy(&built, &web)?;
    } else {
        needs_node()?;
        let packages = install(&here, &out)?;
        pages(&here, &out, &packages, &words, &web)?;
    }
    println!("cargo::rustc-env=RODCALL_WEB_BUILD={}", digest(&web)?);
    Ok(())
}

fn var(name: &str) -> Result<String, String> {
    env::var(name).map_err(|error| format!("{name}: {error}. Build with cargo."))
}

/// Refuses a missing or old Node in one sentence.
fn needs_node() -> Result<(), String> {
    let told = Command::new("node")
        .arg("--version")
        .output()
        .map_err(|_absent| REMEDY.to_owned())?;
    let version = String::from_utf8_lossy(&told.stdout).trim().to_owned();
    let mut parts = version.trim_start_matches('v').split('.');
    let mut next = || parts.next().and_then(|part| part.parse::<u32>().ok());
    match (next(), next()) {
        (Some(major), Some(minor)) if (major, minor) >= (20, 19) => Ok(()),
        _ => Err(format!("{REMEDY} Found {version}.")),
    }
}

/// The folder whose `node_modules` holds the packages of this lock file.
fn install(here: &Path, out: &Path) -> Result<PathBuf, String> {
    let lock = here.join("package-lock.json");
    let own = here.join("node_modules/.package-lock.json");
    if modified(&own)
        .zip(modified(&lock))
        .is_some_and(|(own, lock)| own >= lock)
    {
        return Ok(here.to_owned());
    }
    let mut hasher = DefaultHasher::new();
    read(&lock)?.hash(&mut hasher);
    let name = format!("web-ui-npm-{:016x}", hasher.finish());
    let kept = out.ancestors().nth(3).unwrap_or(out).join(&name);
    if kept.join("node_modules").is_dir() {
        return Ok(kept);
    }
    // Installed aside and moved in whole, so that a build that was broken off leaves no half of it.
    let aside = out.join(&name);
    clear(&aside)?;
    for file in ["package.json", "package-lock.json", ".npmrc"] {
        copy(&here.join(file), &aside.join(file))?;
    }
    run(
        &aside,
        npm(),
        &["ci", "--ignore-scripts", "--no-audit", "--no-fund"],
    )?;
    match fs::rename(&aside, &kept) {
        // Another build has moved its own in first: the same packages.
        Err(_) if kept.join("node_modules").is_dir() => Ok(kept),
        Err(error) => Err(format!("{}: {error}", kept.display())),
        Ok(()) => Ok(kept),
    }
}

/// The folders of the pages' words, seen from the pages. What else the hub says is no source of theirs.
fn words(here: &Path) -> Result<Vec<PathBuf>, String> {
    let failed = |error: io::Error| format!("{WORDS}: {error}");
    let mut found = Vec::new();
    for language in fs::read_dir(here.join(WORDS)).map_err(failed)? {
        let folder = Path::new(WORDS)
            .join(language.map_err(failed)?.file_name())
            .join("pages");
        if here.join(&folder).is_dir() {
            found.push(folder);
        }
    }
    Ok(found)
}

/// Copies the sources beside their packages and lets Vite build them.
fn pages(
    here: &Path,
    out: &Path,
    packages: &Path,
    words: &[PathBuf],
    web: &Path,
) -> Result<(), String> {
    let room = out.join("copy/web-ui");
    clear(&out.join("copy"))?;
    for source in SOURCES {
        copy(&here.join(source), &room.join(source))?;
    }
    for folder in words {
        copy(&here.join(folder), &room.join(folder))?;
    }
    let modules = packages.join("node_modules");
    link(&modules, &room.join("node_modules"))
        .map_err(|error| format!("{}: {error}", modules.display()))?;
    let vite = modules.join("vite/bin/vite.js");
    run(
        &room,
        "node",
        &[
            vite.as_os_str(),
            OsStr::new("build"),
            OsStr::new("--outDir"),
            web.as_os_str(),
            OsStr::new("--emptyOutDir"),
        ],
    )
}

#[cfg(unix)]
fn link(from: &Path, to: &Path) -> io::Result<()> {
    std::os::unix::fs::symlink(from, to)
}

#[cfg(windows)]
fn link(from: &Path, to: &Path) -> io::Result<()> {
    std::os::windows::fs::symlink_dir(from, to)
}

fn npm() -> &'static str {
    if cfg!(windows) { "npm.cmd" } else { "npm" }
}

/// Runs a tool; what it said goes into the error, for it is the only one that knows.
fn run(folder: &Path, tool: &str, arguments: &[impl AsRef<OsStr>]) -> Result<(), String> {
    let told = Command::new(tool)
        .args(arguments)
        .current_dir(folder)
        .output()
        .map_err(|error| format!("{tool}: {error}. {REMEDY}"))?;
    if told.status.success() {
        return Ok(());
    }
    for text in [&told.stdout, &told.stderr] {
        for line in String::from_utf8_lossy(text).lines() {
            println!("cargo::warning={line}");
        }
    }
    Err(format!(
        "{tool} could not build the phone pages: its own words stand above. Put that right, \
         or set RODCALL_WEB_DIST to a built folder."
    ))
}

fn modified(path: &Path) -> Option<std::time::SystemTime> {
    fs::metadata(path).and_then(|about| about.modified()).ok()
}

fn read(path: &Path) -> Result<Vec<u8>, String> {
    fs::read(path).map_err(|error| format!("{}: {error}", path.display()))
}

/// Removes a folder of this build's own; a link is removed, not followed.
fn clear(folder: &Path) -> Result<(), String> {
    match fs::remove_dir_all(folder) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => {
            Err(format!("{}: {error}", folder.display()))
        }
        _ => Ok(()),
    }
}

/// Copies a file or a folder with all that it holds.
fn copy(from: &Path, to: &Path) -> Result<(), String> {
    let failed = |error: io::Error| format!("{}: {error}", from.display());
    if !from.is_dir() {
        if let Some(parent) = to.parent() {
            fs::create_dir_all(parent).map_err(failed)?;
        }
        return fs::copy(from, to).map(|_bytes| ()).map_err(failed);
    }
    fs::create_dir_all(to).map_err(failed)?;
    for entry in fs::read_dir(from).map_err(failed)? {
        let entry = entry.map_err(failed)?;
        copy(&entry.path(), &to.join(entry.file_name()))?;
    }
    Ok(())
}

/// A name for what was built: every file's name and bytes, in order.
fn digest(folder: &Path) -> Result<String, String> {
    let mut files = Vec::new();
    list(folder, &mut files)?;
    files.sort();
    let mut hasher = DefaultHasher::new();
    for file in files {
        file.strip_prefix(folder).unwrap_or(&file).hash(&mut hasher);
        read(&file)?.hash(&mut hasher);
    }
    Ok(format!("{:016x}", hasher.finish()))
}

fn list(folder: &Path, files: &mut Vec<PathBuf>) -> Result<(), String> {
    let failed = |error: io::Error| format!("{}: {error}", folder.display());
    for entry in fs::read_dir(folder).map_err(failed)? {
        let path = entry.map_err(failed)?.path();
        if path.is_dir() {
            list(&path, files)?;
        } else {
            files.push(path);
        }
    }
    Ok(())
}
