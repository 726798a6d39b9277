//! What the house is built on: each dependency is used, comes from the registry, may be passed on under our licences, and stands
//! there once.

use std::collections::{BTreeMap, BTreeSet};
use std::process::Command;

use serde_json::Value;

use super::{files, none, root, text};

/// Licences under which another's code may be in a binary that is passed on as MIT or Apache-2.0; MPL-2.0 asks for the source
/// of its own files alone, and they are not changed.
const LICENCES: [&str; 10] = [
    "0BSD",
    "Apache-2.0",
    "BSD-3-Clause",
    "IJG",
    "ISC",
    "MIT",
    "MPL-2.0",
    "Unicode-3.0",
    "Unlicense",
    "Zlib",
];

/// Crates that stand in the binary or its tests in two versions, and who holds the older. One more is to be known, not overlooked.
const TWICE: [(&str, &str); 7] = [
    ("base64", "actix-web"),
    ("getrandom", "our own: tempfile takes the newer"),
    ("hashbrown", "spade"),
    ("http", "actix-web"),
    ("parking_lot", "sled"),
    ("parking_lot_core", "sled"),
    ("syn", "maud, rust-embed, tracing"),
];

/// The members of the workspace, as its manifest lists them.
fn members() -> Vec<String> {
    let manifest = text(&root().join("Cargo.toml"));
    let list = manifest
        .split_once("members = [")
        .unwrap()
        .1
        .split_once(']')
        .unwrap()
        .0;
    let names = list.split('"').skip(1).step_by(2);
    names.map(str::to_owned).collect()
}

/// The names in the tables of dependencies of a manifest.
fn named(manifest: &str) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    let mut inside = false;
    for line in manifest.lines() {
        if line.starts_with('[') {
            inside = line.ends_with("dependencies]");
        } else if inside && !line.starts_with('#') {
            let name = line.split(['.', ' ', '=']).next().unwrap_or_default();
            names.extend((!name.is_empty()).then(|| name.to_owned()));
        }
    }
    names
}

/// Whether a source speaks of a crate: its name as a whole word, on a line that is no comment.
fn speaks_of(source: &str, name: &str) -> bool {
    let inner = |c: char| c.is_alphanumeric() || c == '_';
    source
        .lines()
        .filter(|line| !line.trim_start().starts_with("//"))
        .any(|line| line.split(|c| !inner(c)).any(|word| word == name))
}

#[test]
fn every_dependency_is_used_where_it_is_named() {
    let mut faults = Vec::new();
    let mut of_members = BTreeSet::new();
    for member in members() {
        // The whole-system tests are built with the server.
        let folders = if member == "hub/server" {
            vec![member.as_str(), "tests"]
        } else {
            vec![member.as_str()]
        };
        let paths = folders.iter().flat_map(|folder| files(folder, &[".rs"]));
        let sources: Vec<String> = paths.map(|path| text(&path)).collect();
        let names = named(&text(&root().join(&member).join("Cargo.toml")));
        for name in &names {
            let mut words = vec![name.replace('-', "_")];
            // What the contract's derives write names it.
            words.extend((name == "utoipa").then(|| "contract".to_owned()));
            let used = |source: &String| words.iter().any(|word| speaks_of(source, word));
            if !sources.iter().any(used) {
                faults.push(format!(
                    "{member}/Cargo.toml: {name} is named, and no source uses it: take it out"
                ));
            }
        }
        of_members.extend(names);
    }
    assert!(
        of_members.len() > 20,
        "only these are named: {of_members:?}"
    );
    for name in named(&text(&root().join("Cargo.toml"))).difference(&of_members) {
        faults.push(format!(
            "Cargo.toml: {name} is named for the workspace, and no member uses it: take it out"
        ));
    }
    none(&faults);
}

/// Packages that are called by another name than their own.
const CALLED: [(&str, &str); 2] = [("@biomejs/biome", "biome "), ("typescript", "tsc")];

#[test]
fn every_package_of_the_pages_is_used() {
    let manifest: Value = serde_json::from_str(&text(&root().join("web-ui/package.json"))).unwrap();
    let sources = files("web-ui", &[".ts", ".tsx", ".mjs"]);
    let mut sources: Vec<String> = sources.iter().map(|path| text(path)).collect();
    sources.push(manifest["scripts"].to_string());
    let mut faults = Vec::new();
    for table in ["dependencies", "devDependencies"] {
        for name in manifest[table].as_object().unwrap().keys() {
            let called = CALLED.iter().find(|(of, _)| of == name);
            let called = called.map_or(name.as_str(), |(_, called)| called);
            if !sources.iter().any(|source| source.contains(called)) {
                faults.push(format!(
                    "web-ui/package.json: {name} is named, and nothing uses it: take it out"
                ));
            }
        }
    }
    none(&faults);
}

/// What `cargo metadata` says of every crate that this machine's build takes in.
fn packages() -> Vec<Value> {
    let cargo = |arguments: &[&str]| {
        let ran = Command::new(env!("CARGO"))
            .args(arguments)
            .current_dir(root())
            .output()
            .unwrap();
        assert!(
            ran.status.success(),
            "{}",
            String::from_utf8_lossy(&ran.stderr)
        );
        String::from_utf8(ran.stdout).unwrap()
    };
    let version = cargo(&["version", "--verbose"]);
    let host = version
        .lines()
        .find_map(|line| line.strip_prefix("host: "))
        .unwrap();
    // What was built is there: nothing is fetched for this.
    let said = cargo(&[
        "metadata",
        "--offline",
        "--locked",
        "--format-version",
        "1",
        "--filter-platform",
        host,
    ]);
    let mut said: Value = serde_json::from_str(&said).unwrap();
    let Value::Array(packages) = said["packages"].take() else {
        panic!("cargo metadata lists no packages");
    };
    assert!(packages.len() > 100, "{} packages", packages.len());
    packages
}

fn word<'a>(package: &'a Value, name: &str) -> &'a str {
    package[name].as_str().unwrap_or_default()
}

/// Whether a licence (an SPDX expression, or the older form with a stroke) can be met by those that are allowed.
fn allowed(licence: &str) -> bool {
    licence.replace('/', " OR ").split(" AND ").all(|part| {
        let any = part.trim_matches(['(', ')', ' ']);
        any.split(" OR ").any(|one| LICENCES.contains(&one.trim()))
    })
}

#[test]
fn a_licence_is_read_as_it_is_meant() {
    for good in [
        "MIT",
        "Unlicense/MIT",
        "GPL-3.0 OR MIT",
        "(MIT OR Apache-2.0) AND Unicode-3.0",
    ] {
        assert!(allowed(good), "{good}");
    }
    for bad in [
        "",
        "GPL-3.0",
        "(MIT OR Apache-2.0) AND GPL-3.0",
        "MIT AND LGPL-2.1",
    ] {
        assert!(!allowed(bad), "{bad}");
    }
}

#[test]
fn every_crate_comes_from_the_registry_under_a_licence_that_may_be_passed_on() {
    let mut faults = Vec::new();
    for package in packages() {
        let (name, version) = (word(&package, "name"), word(&package, "version"));
        let Some(source) = package["source"].as_str() else {
            // Our own.
            continue;
        };
        if !source.starts_with("registry+") {
            faults.push(format!(
                "{name} {version} comes from {source}: take it from the registry"
            ));
        }
        let licence = word(&package, "license");
        if !allowed(licence) {
            faults.push(format!("{name} {version} is under “{licence}”: take another crate, or ask whether it may be passed on"));
        }
    }
    none(&faults);
}

#[test]
fn no_crate_stands_there_twice_unawares() {
    let mut versions = BTreeMap::<String, BTreeSet<String>>::new();
    for package in packages() {
        let (name, version) = (
            word(&package, "name").to_owned(),
            word(&package, "version").to_owned(),
        );
        versions.entry(name).or_default().insert(version);
    }
    let mut faults = Vec::new();
    for (name, all) in versions.iter().filter(|(_, all)| all.len() > 1) {
        if all.len() > 2 || !TWICE.iter().any(|(known, _)| known == name) {
            faults.push(format!("{name} stands there as {all:?}: bring them together, or name it in TWICE with who holds the older"));
        }
    }
    for (name, _) in TWICE {
        if versions.get(name).is_none_or(|all| all.len() < 2) {
            faults.push(format!("{name} stands there once: take it out of TWICE"));
        }
    }
    none(&faults);
}
