//! The house rules that no compiler knows: which floor may use which, what a file must begin with, how long it may be.

#![expect(
    clippy::panic,
    clippy::unwrap_used,
    reason = "these helpers serve tests alone"
)]

use std::fs;
use std::path::{Path, PathBuf};

#[path = "tidy/day.rs"]
mod day;
#[path = "tidy/dependencies.rs"]
mod dependencies;
#[path = "tidy/words.rs"]
mod words;

/// Lines of code in a file; above this it is two files.
const LONGEST_RUST: usize = 400;
const LONGEST_SCRIPT: usize = 300;

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// Files under a folder with one of these endings, what is made or fetched left out.
fn files(under: &str, endings: &[&str]) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let mut folders = vec![root().join(under)];
    while let Some(folder) = folders.pop() {
        let items =
            fs::read_dir(&folder).unwrap_or_else(|error| panic!("{}: {error}", folder.display()));
        for item in items {
            let path = item.unwrap().path();
            let name = path.file_name().unwrap().to_string_lossy().into_owned();
            if path.is_dir() {
                let fetched = ["node_modules", "dist", "test-results", "shots"];
                // What is built says so; a folder of the source may be called `target` too.
                let built = path.join("CACHEDIR.TAG").exists();
                if !built && !fetched.contains(&name.as_str()) {
                    folders.push(path);
                }
            } else if endings.iter().any(|ending| name.ends_with(ending)) {
                found.push(path);
            }
        }
    }
    found.sort();
    assert!(!found.is_empty(), "no {endings:?} under {under}");
    found
}

fn text(path: &Path) -> String {
    fs::read_to_string(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

fn short(path: &Path) -> String {
    path.strip_prefix(root())
        .unwrap_or(path)
        .display()
        .to_string()
}

fn none(faults: &[String]) {
    assert!(faults.is_empty(), "\n{}", faults.join("\n"));
}

#[test]
fn arrows_between_floors_point_down() {
    let allowed = [
        ("hub/words", vec![]),
        ("hub/earthwork", vec!["words"]),
        ("hub/day", vec!["words", "earthwork"]),
        ("hub/show", vec!["words", "earthwork", "day"]),
        (
            "hub/server",
            vec!["words", "earthwork", "day", "show", "web-ui"],
        ),
        ("web-ui", vec![]),
    ];
    let mut faults = Vec::new();
    for (floor, below) in &allowed {
        let manifest = text(&root().join(floor).join("Cargo.toml"));
        for other in ["words", "earthwork", "day", "show", "rodcall", "web-ui"] {
            let uses = manifest.lines().any(|line| {
                line.starts_with(&format!("{other}.")) || line.starts_with(&format!("{other} ="))
            });
            if uses && !below.contains(&other) {
                faults.push(format!("{floor} uses {other}: arrows only point down"));
            }
        }
    }
    none(&faults);
}

#[test]
fn arrows_within_the_server_hold() {
    // Folder or file, what it must not name, what to do instead.
    let rules = [
        (
            "hub/server/src/http",
            "crate::store",
            "ask the writer or the past",
        ),
        (
            "hub/server/src/http",
            "sled",
            "only the store's index names sled",
        ),
        (
            "hub/server/src/store",
            "crate::http",
            "the store knows no wire",
        ),
        (
            "hub/server/src/store",
            "crate::writer",
            "the writer calls the store",
        ),
        ("hub/server/src/store", "actix", "the store knows no wire"),
        (
            "hub/server/src/demo",
            "crate::writer",
            "the crew uses the public calls alone",
        ),
        (
            "hub/server/src/demo",
            "crate::store",
            "the crew uses the public calls alone",
        ),
    ];
    let mut faults = Vec::new();
    for (folder, banned, instead) in rules {
        for path in files(folder, &[".rs"]) {
            // The one place that turns errors into answers knows them all.
            if path.ends_with("http/problem.rs") {
                continue;
            }
            if text(&path)
                .lines()
                .any(|line| line.contains(banned) && line.trim_start().starts_with("use "))
            {
                faults.push(format!("{}: names {banned}; {instead}", short(&path)));
            }
        }
    }
    for path in files("hub", &[".rs"]) {
        let name = short(&path);
        if name.contains("/store/index") || name.contains("/store/tests") {
            continue;
        }
        if text(&path).contains("sled::") {
            faults.push(format!(
                "{name}: only hub/server/src/store/index.rs names sled"
            ));
        }
    }
    none(&faults);
}

#[test]
fn what_pages_share_knows_no_page_and_state_knows_no_screen() {
    let rules = [
        ("web-ui/src/parts", "pages/", "a part knows no page"),
        ("web-ui/src/words", "../state", "words know no state"),
        ("web-ui/src/words", "../hub", "words know no wire"),
    ];
    let mut faults = Vec::new();
    for (folder, banned, why) in rules {
        for path in files(folder, &[".ts", ".tsx"]) {
            let imports = text(&path);
            let imports = imports.lines().filter(|line| line.contains(" from \""));
            if imports.filter(|line| line.contains(banned)).count() > 0 {
                faults.push(format!("{}: imports {banned}; {why}", short(&path)));
            }
        }
    }
    none(&faults);
}

#[test]
fn every_file_begins_by_saying_what_it_is_for() {
    let mut faults = Vec::new();
    for folder in ["hub", "tests"] {
        for path in files(folder, &[".rs"]) {
            if !text(&path).starts_with("//! ") {
                faults.push(format!(
                    "{}: begin with `//!` and what it is for",
                    short(&path)
                ));
            }
        }
    }
    for path in scripts() {
        let begins = text(&path);
        if !(begins.starts_with("/**") || begins.starts_with("// ")) {
            faults.push(format!(
                "{}: begin with `/**` and what it is for",
                short(&path)
            ));
        }
    }
    none(&faults);
}

/// Generated types and the words that are made of the dictionaries are lists, not code.
fn listed(path: &Path) -> bool {
    let name = short(path);
    name.ends_with("wire.gen.ts") || name.starts_with("web-ui/src/words.gen/")
}

/// The pages, and what makes their words.
fn scripts() -> Vec<PathBuf> {
    ["web-ui/src", "web-ui/fluent"]
        .iter()
        .flat_map(|folder| files(folder, &[".ts", ".tsx", ".mjs"]))
        .collect()
}

#[test]
fn no_file_needs_a_table_of_contents() {
    let mut faults = Vec::new();
    let code = |text: &str| {
        text.lines()
            .take_while(|line| !line.starts_with("#[cfg(test)]"))
            .filter(|line| !line.trim().is_empty() && !line.trim_start().starts_with("//"))
            .count()
    };
    for path in ["hub", "tests"]
        .iter()
        .flat_map(|folder| files(folder, &[".rs"]))
    {
        let lines = code(&text(&path));
        if lines > LONGEST_RUST {
            faults.push(format!(
                "{}: {lines} lines of code; make two files",
                short(&path)
            ));
        }
    }
    for path in scripts() {
        let lines = code(&text(&path));
        if lines > LONGEST_SCRIPT && !listed(&path) {
            faults.push(format!(
                "{}: {lines} lines of code; make two files",
                short(&path)
            ));
        }
    }
    none(&faults);
}

#[test]
fn the_readme_gives_the_two_commands_and_its_pictures_are_there() {
    let readme = text(&root().join("README.md"));
    for command in ["cargo run --release -- demo", "tests/all"] {
        assert!(
            readme.contains(command),
            "the README does not give `{command}`"
        );
    }
    let linked = readme
        .split("](")
        .skip(1)
        .filter_map(|rest| rest.split(')').next())
        .filter(|link| !link.contains("://"));
    let missing: Vec<String> = linked
        .filter(|link| !root().join(link).exists())
        .map(|link| format!("the README links to {link}, which is not there"))
        .collect();
    none(&missing);
}

#[test]
fn every_hazard_and_every_claim_names_a_test_that_there_is() {
    let all: Vec<String> = ["hub", "tests", "web-ui/src", "fixtures"]
        .iter()
        .flat_map(|folder| files(folder, &[".rs", ".ts", ".tsx", ".py", ".toml"]))
        .map(|path| format!("{}\n{}", short(&path), text(&path)))
        .collect();
    let all = all.join("\n");
    let mut faults = Vec::new();
    for table in ["hub/HAZARDS.md", "hub/CLAIMS.md"] {
        let table_text = text(&root().join(table));
        let rows = table_text
            .lines()
            .filter(|line| line.starts_with("| ") && !line.contains("| shown by |"));
        let mut many = 0;
        for row in rows {
            many += 1;
            let last = row.trim_end_matches([' ', '|']).rsplit(" | ").next();
            let named: Vec<&str> = last.unwrap_or("").split('`').skip(1).step_by(2).collect();
            if named.is_empty() {
                faults.push(format!("no test is named: {row}"));
            }
            for name in named {
                let own = name.rsplit("::").next().unwrap_or(name);
                let there =
                    all.contains(&format!("fn {own}(")) || all.contains(&format!("/{name}\n"));
                if !there {
                    faults.push(format!("{table}: there is no test or file “{name}”"));
                }
            }
        }
        assert!(many > 15, "{table} has {many} rows");
    }
    none(&faults);
}
