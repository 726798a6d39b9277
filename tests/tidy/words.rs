//! The words that no page may print, and that each sentence is said somewhere.

use std::path::{Path, PathBuf};

use super::{files, none, root, short, text};

/// Every file whose sentences stand on a screen or on a sheet.
fn what_a_person_reads() -> Vec<PathBuf> {
    [
        files("hub/words", &[".ftl"]),
        files("hub/earthwork/src/words", &[".rs"]),
        files("hub/show/src", &[".rs"]),
        files("hub/day/src/said", &[".rs"]),
        files("hub/day/src/open", &[".rs"]),
        files("hub/server/src/report", &[".rs"]),
        vec![
            root().join("hub/day/src/built.rs"),
            root().join("hub/day/src/cuts/held.rs"),
            root().join("hub/day/src/refusal.rs"),
        ],
    ]
    .concat()
    .into_iter()
    .filter(|path| !path.ends_with("tests.rs") && !short(path).contains("/tests/"))
    .collect()
}

/// The hub's own sentences, in every language.
fn hub_words() -> Vec<PathBuf> {
    let mut found = files("hub/words", &[".ftl"]);
    found.retain(|path| short(path).contains("/hub/"));
    assert!(found.len() > 100, "{} files of words", found.len());
    found
}

/// A line that nobody reads on a screen or on a sheet.
fn comment(path: &Path, line: &str) -> bool {
    let begins = line.trim_start();
    if is_fluent(path) {
        return begins.starts_with('#');
    }
    begins.starts_with("//") || begins.starts_with('*') || begins.starts_with("/*")
}

fn is_fluent(path: &Path) -> bool {
    path.extension().is_some_and(|ending| ending == "ftl")
}

/// What a line says: between quotes in a program, behind the name in a file of words.
fn quoted<'a>(path: &Path, line: &'a str) -> Vec<&'a str> {
    if comment(path, line) {
        return vec![];
    }
    if is_fluent(path) {
        return line
            .split_once(['=', ']'])
            .map_or(vec![line], |(_, said)| vec![said]);
    }
    line.split('"').skip(1).step_by(2).collect()
}

/// What a sentence may not hold: spaces stand for the ends of words. It names the cab he or him, or is Spanish or Portuguese that
/// a crew reads otherwise than it is meant.
const MISLEADS: [&str; 21] = [
    " leave the face",
    " the face was left",
    " levántela ",
    " he ",
    " him ",
    " his ",
    " él ",
    " may be used",
    " look, then release",
    " dejen el talud",
    " se dejó el talud",
    " se suelta",
    " soltar ",
    " oprima ",
    " presione ",
    " alto levantado",
    " lado bajo",
    " deixem o talude",
    " o talude foi deixado",
    " lado baixo",
    " pressione ",
];

#[test]
fn nothing_that_a_person_reads_names_the_cab_him_or_reads_otherwise_than_meant() {
    let mut faults = Vec::new();
    for path in what_a_person_reads() {
        let body = text(&path);
        // Tests at a file's end quote what people type.
        let spoken = body.split("#[cfg(test)]").next().unwrap_or_default();
        for (number, line) in spoken.lines().enumerate() {
            for said in quoted(&path, line) {
                let padded = format!(" {} ", said.to_lowercase());
                let word = MISLEADS.iter().find(|word| padded.contains(**word));
                if let Some(word) = word {
                    faults.push(format!("{}:{}: “{word}”", short(&path), number + 1));
                }
            }
        }
    }
    none(&faults);
}

/// Words that would tell somebody that there is no danger.
const PROMISES: [&str; 12] = [
    "safe",
    "safely",
    "all clear",
    "is clear",
    "seguro",
    "segura",
    "despejado",
    "sin peligro",
    "livre",
    "liberado",
    "desimpedido",
    "sem perigo",
];

#[test]
fn nothing_that_a_person_reads_promises_that_there_is_no_danger() {
    let mut faults = Vec::new();
    for path in what_a_person_reads() {
        let body = text(&path);
        let lines = body
            .lines()
            .enumerate()
            .filter(|(_, line)| !comment(&path, line));
        for (number, line) in lines {
            let lower = format!(
                " {} ",
                line.to_lowercase()
                    .replace(|c: char| !c.is_alphabetic(), " ")
            );
            let promised = PROMISES
                .iter()
                .find(|word| lower.contains(&format!(" {word} ")));
            if let Some(word) = promised {
                faults.push(format!("{}:{}: “{word}”", short(&path), number + 1));
            }
        }
    }
    none(&faults);
}

#[test]
fn every_sentence_of_the_hub_is_said_somewhere() {
    let sources: Vec<String> = files("hub", &[".rs"])
        .iter()
        .map(|path| text(path))
        .collect();
    let mut faults = Vec::new();
    for path in hub_words() {
        for line in text(&path).lines() {
            let Some((id, _)) = line.split_once(" = ") else {
                continue;
            };
            let named = id
                .chars()
                .all(|c| c.is_ascii_alphanumeric() || c == '_' || c == '-');
            let own = id.rsplit('-').next().unwrap_or(id);
            let called = format!("{own}(");
            if named && !sources.iter().any(|source| source.contains(&called)) {
                faults.push(format!("{}: nothing says {id}: take it out", short(&path)));
            }
        }
    }
    none(&faults);
}
