//! The shape of the state, read from the sources: each type that a state is made of, with a digest of its fields.
//!
//! A state that was put by is only taken in the shape in which it was written. The sources are read as text: they are in the one
//! form that rustfmt gives them (a library for Rust's grammar would be built for the macros of every crate again). Where a
//! type stands does not matter, only its name and its fields. What a module named in `#[serde(with = "…")]` does is not seen.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use day::chain::digest;

/// The floors that a state's types stand on: a crate's name and its sources.
const FLOORS: [(&str, &str); 2] = [("earthwork", "hub/earthwork/src"), ("day", "hub/day/src")];
const COMMITTED: &str = "hub/server/src/store/state_shape.txt";
/// Of a digest, in hex: a listing for people to compare.
const SHORT: usize = 12;

/// A module's path, its crate first; of a type, its name last.
type Place = Vec<String>;

/// A type as it is written, and the paths in it.
#[derive(Default)]
struct Written {
    text: String,
    paths: BTreeSet<String>,
}

/// The types of the sources, and what each module calls others by.
#[derive(Default)]
struct Sources {
    types: BTreeMap<Place, Written>,
    modules: BTreeSet<Place>,
    uses: BTreeMap<Place, Vec<(String, Place)>>,
}

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn inner(c: char) -> bool {
    c.is_alphanumeric() || c == '_'
}

/// Paths of a text: `Length`, `said::call::CallSent`.
fn paths(text: &str) -> impl Iterator<Item = &str> {
    text.split(|c| !inner(c) && c != ':')
        .map(|path| path.trim_matches(':'))
}

fn capital(name: &str) -> bool {
    name.starts_with(|c: char| c.is_uppercase())
}

/// The lines of a file without comments, attributes that serde does not read, and tests at its end.
fn plain(text: &str) -> Vec<&str> {
    let mut lines = Vec::new();
    let mut attribute = false;
    let mut all = text.lines().peekable();
    while let Some(line) = all.next() {
        let code = line.trim_start();
        if code == "#[cfg(test)]" && all.peek().is_some_and(|next| next.ends_with('{')) {
            break;
        }
        attribute |= code.starts_with("#[") && !code.starts_with("#[serde");
        if attribute {
            attribute = !code.ends_with(']');
        } else if !code.is_empty() && !code.starts_with("//") {
            lines.push(line);
        }
    }
    lines
}

fn published(line: &str) -> &str {
    let rest = line.strip_prefix("pub").unwrap_or(line);
    let rest = rest
        .strip_prefix('(')
        .and_then(|rest| rest.split_once(')'))
        .map_or(rest, |(_, rest)| rest);
    if rest.len() < line.len() {
        rest.trim_start()
    } else {
        line
    }
}

/// The name of the type that a line begins, or whose serde is written by hand from it on.
fn begins(line: &str) -> Option<&str> {
    let name = |rest: &str| rest.find(|c| !inner(c)).unwrap_or(rest.len());
    let item = published(line);
    for word in ["struct ", "enum ", "type "] {
        if let Some(rest) = item.strip_prefix(word) {
            return Some(&rest[..name(rest)]);
        }
    }
    let (of, rest) = line.strip_prefix("impl")?.split_once(" for ")?;
    let by_hand = ["Serialize", "Deserialize<'de>"]
        .iter()
        .any(|one| of.ends_with(one));
    by_hand.then(|| &rest[..name(rest)])
}

impl Sources {
    fn read(&mut self, file: &Path, module: &Place) {
        let text = fs::read_to_string(file).expect("a source");
        self.modules.insert(module.clone());
        let lines = plain(&text);
        let (mut before, mut at) = (0, 0);
        while at < lines.len() {
            let line = lines[at];
            let end = |closes: &dyn Fn(&str) -> bool| {
                let rest = lines[at..].iter().position(|line| closes(line));
                rest.map_or(lines.len() - 1, |many| at + many)
            };
            let mut last = at;
            if published(line).starts_with("use ") {
                last = end(&|line| line.ends_with(';'));
                let tree = lines[at..=last].join(" ");
                let tree = published(&tree)
                    .trim_start_matches("use ")
                    .trim_end_matches(';')
                    .to_owned();
                self.import(&tree, &[], module);
            } else if let Some(name) = begins(line) {
                last =
                    end(&|line| line == "}" || (line.ends_with(';') && !line.starts_with("    ")));
                self.take(name, &lines[before..=last], module);
            }
            // What serde is told of a type stands above it.
            let above = lines[at].starts_with("#[serde");
            at = last + 1;
            before = if above { before } else { at };
        }
    }

    fn take(&mut self, name: &str, lines: &[&str], module: &Place) {
        let mut place = module.clone();
        place.push(name.to_owned());
        let written = self.types.entry(place).or_default();
        for line in lines {
            let bare = published(line.trim_start());
            written.text.push_str(bare);
            written.text.push('\n');
            // A variant's own name is no type.
            let variant = line.starts_with("    ") && !line.starts_with("     ") && capital(bare);
            let types = if variant {
                bare.trim_start_matches(inner)
            } else {
                bare
            };
            written.paths.extend(paths(types).map(str::to_owned));
        }
    }

    /// One tree of `use`, its front known.
    fn import(&mut self, tree: &str, front: &[String], module: &Place) {
        let tree = tree.trim();
        let Some((head, rest)) = tree.split_once('{') else {
            let (path, name) = tree.split_once(" as ").unwrap_or((tree, ""));
            let mut place = front.to_vec();
            place.extend(
                path.split("::")
                    .filter(|part| !part.is_empty())
                    .map(|part| part.trim().to_owned()),
            );
            if place.last().is_some_and(|last| last == "self") {
                place.pop();
            }
            let own = if name.is_empty() {
                place.last().cloned().unwrap_or_default()
            } else {
                name.to_owned()
            };
            self.uses
                .entry(module.clone())
                .or_default()
                .push((own, place));
            return;
        };
        let mut place = front.to_vec();
        place.extend(
            head.split("::")
                .filter(|part| !part.trim().is_empty())
                .map(|part| part.trim().to_owned()),
        );
        let (mut depth, mut from) = (0, 0);
        let inside = rest.trim_end().strip_suffix('}').unwrap_or(rest);
        for (at, c) in inside.char_indices() {
            match c {
                '{' => depth += 1,
                '}' => depth -= 1,
                ',' if depth == 0 => {
                    self.import(&inside[from..at], &place, module);
                    from = at + 1;
                }
                _ => {}
            }
        }
        if !inside[from..].trim().is_empty() {
            self.import(&inside[from..], &place, module);
        }
    }

    /// Where a path leads that stands in a module.
    fn leads(&self, path: &[String], module: &[String], depth: u8) -> Option<Place> {
        let (first, rest) = path.split_first()?;
        if depth == 0 {
            return None;
        }
        let place = match first.as_str() {
            "crate" => [&module[..1], rest].concat(),
            "self" => [module, rest].concat(),
            "super" => {
                return self.leads(
                    &[&["self".to_owned()], rest].concat(),
                    module.split_last()?.1,
                    depth - 1,
                );
            }
            _ => {
                let here = [module, path].concat();
                let known =
                    self.types.contains_key(&here) || self.modules.contains(&here[..=module.len()]);
                let floor = FLOORS.iter().any(|(floor, _)| floor == first);
                if known {
                    here
                } else if floor {
                    path.to_vec()
                } else {
                    return self.imported(first, rest, module, depth);
                }
            }
        };
        if self.types.contains_key(&place) {
            return Some(place);
        }
        let (name, at) = place.split_last()?;
        if at.len() < module.len() || at != module {
            self.imported(name, &[], at, depth)
        } else {
            None
        }
    }

    fn imported(&self, name: &str, rest: &[String], module: &[String], depth: u8) -> Option<Place> {
        let uses = self.uses.get(module)?;
        uses.iter()
            .filter(|(own, _)| own == name || own == "*")
            .find_map(|(own, place)| {
                let place = if own == "*" {
                    [&place[..place.len() - 1], &[name.to_owned()]].concat()
                } else {
                    place.clone()
                };
                self.leads(&[&place[..], rest].concat(), module, depth - 1)
            })
    }
}

fn walk(folder: &Path, module: &Place, sources: &mut Sources) {
    for item in fs::read_dir(folder).expect("a folder of sources") {
        let path = item.expect("a file").path();
        let stem = path
            .file_stem()
            .unwrap_or_default()
            .to_string_lossy()
            .into_owned();
        let mut own = module.clone();
        if !["lib", "mod"].contains(&stem.as_str()) {
            own.push(stem.clone());
        }
        if path.is_dir() {
            walk(&path, &own, sources);
        } else if path.extension().is_some_and(|ending| ending == "rs") && stem != "tests" {
            sources.read(&path, &own);
        }
    }
}

/// One line a type that `State` is made of.
fn shape() -> String {
    let mut sources = Sources::default();
    for (floor, folder) in FLOORS {
        walk(&root().join(folder), &vec![floor.to_owned()], &mut sources);
    }
    let mut reached = BTreeSet::new();
    let mut waiting: Vec<Place> = vec![["day", "state", "State"].map(str::to_owned).to_vec()];
    while let Some(place) = waiting.pop() {
        let Some((_, module)) = place.split_last() else {
            continue;
        };
        if !reached.insert(place.clone()) {
            continue;
        }
        for path in &sources.types[&place].paths {
            let path: Vec<String> = path.split("::").map(str::to_owned).collect();
            if path.last().is_some_and(|name| capital(name)) {
                waiting.extend(sources.leads(&path, module, 8));
            }
        }
    }
    let lines = reached.iter().map(|place| {
        let name = place.last().map_or("", String::as_str);
        format!(
            "{name} {}\n",
            &digest(sources.types[place].text.as_bytes())[..SHORT]
        )
    });
    let lines: BTreeSet<String> = lines.collect();
    lines.into_iter().collect()
}

#[test]
fn a_put_by_state_is_known_by_the_shape_that_the_code_has() {
    let made = shape();
    for part in [
        "State",
        "SetUp",
        "Call",
        "Cab",
        "Length",
        "Time",
        "WayIn",
        "Record",
        "Site",
        "SoilClass",
    ] {
        let line = made
            .lines()
            .any(|line| line.split(' ').next() == Some(part));
        assert!(
            line,
            "{part} is a part of every state, and is not found:\n{made}"
        );
    }
    let path = root().join(COMMITTED);
    if std::env::var_os("UPDATE").is_some() {
        fs::write(&path, &made).expect("the shape");
    }
    let committed = fs::read_to_string(&path).unwrap_or_default();
    let lines = |text: &str| {
        text.lines()
            .map(str::to_owned)
            .collect::<BTreeSet<String>>()
    };
    let (is, was) = (lines(&made), lines(&committed));
    let changed: Vec<&String> = is.symmetric_difference(&was).collect();
    assert!(
        made == committed,
        "The state has another shape now: {changed:?}. Run UPDATE=1 cargo test -p rodcall --test readers shape, and commit \
         {COMMITTED}. States that were put by in the old shape are then folded anew from the log: nothing else is to be done, \
         but that each kind of entry, old ones too, still folds (fixtures/golden)."
    );
}
