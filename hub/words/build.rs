//! Reads `<language>/hub/*.ftl`, holds each language against English, and writes the typed functions that `lib.rs` includes.
//! A fault in any language ends the build with its file and line.

#![expect(
    clippy::disallowed_methods,
    reason = "a build reads and writes files; the crate that it makes does not"
)]

use std::fs::{read_dir, read_to_string, write};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

#[path = "build/mod.rs"]
mod build;

use build::source::{File, Source, languages};

fn main() -> ExitCode {
    match compile() {
        Ok(()) => ExitCode::SUCCESS,
        Err(faults) => {
            for fault in faults {
                println!("cargo::error={fault}");
            }
            ExitCode::FAILURE
        }
    }
}

fn compile() -> Result<(), Vec<String>> {
    println!("cargo::rerun-if-changed=build.rs");
    println!("cargo::rerun-if-changed=build");
    println!("cargo::rerun-if-changed=../../web-ui/src/languages.json");
    let languages = languages().map_err(|fault| vec![fault])?;
    let mut sources = Vec::new();
    for code in languages.iter().map(|one| &one.code) {
        println!("cargo::rerun-if-changed={code}/hub");
        sources.push(Source {
            code: code.clone(),
            files: files(&Path::new(code).join("hub")).map_err(|fault| vec![fault])?,
        });
    }
    let code = build::write::rust(&languages, &build::check::all(&sources)?);
    let out = std::env::var_os("OUT_DIR").map(PathBuf::from);
    let out = out.ok_or_else(|| vec!["cargo gives no OUT_DIR".to_owned()])?;
    write(out.join("hub.rs"), code).map_err(|error| vec![format!("hub.rs: {error}")])
}

/// The files of a folder by name, in order.
fn files(folder: &Path) -> Result<Vec<File>, String> {
    let told = |error: std::io::Error| format!("{}: {error}", folder.display());
    let mut found = Vec::new();
    for item in read_dir(folder).map_err(told)? {
        let path = item.map_err(told)?.path();
        if path.extension().is_some_and(|ending| ending == "ftl") {
            let name = path.file_stem().unwrap_or_default().to_string_lossy();
            found.push(File {
                name: name.into_owned(),
                path: format!("hub/words/{}", path.display()),
                text: read_to_string(&path).map_err(told)?,
            });
        }
    }
    found.sort_by(|one, other| one.name.cmp(&other.name));
    Ok(found)
}
