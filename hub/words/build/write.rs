//! The Rust that a build makes of the words: a module for each file and level, a function for each message.

use std::collections::BTreeMap;
use std::fmt::Write;

use super::check::Module;
use super::message::{Message, Piece};
use super::source::Listed;

/// Whether a word can be a name in Rust, as it stands or as `r#…`.
pub(crate) fn is_name(word: &str) -> bool {
    word.starts_with(|c: char| c.is_ascii_lowercase())
        && word
            .chars()
            .all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_')
        && !["self", "super", "crate"].contains(&word)
}

/// Words of Rust that a message may be called by.
const KEYWORDS: [&str; 48] = [
    "abstract", "as", "async", "await", "become", "box", "break", "const", "continue", "do", "dyn",
    "else", "enum", "extern", "false", "final", "fn", "for", "gen", "if", "impl", "in", "let",
    "loop", "macro", "match", "mod", "move", "mut", "override", "priv", "pub", "ref", "return",
    "static", "struct", "trait", "true", "try", "type", "typeof", "unsafe", "unsized", "use",
    "virtual", "where", "while", "yield",
];

fn name(word: &str) -> String {
    if KEYWORDS.contains(&word) {
        format!("r#{word}")
    } else {
        word.to_owned()
    }
}

/// A level: what is said there, and the levels below it.
#[derive(Default)]
struct Level<'a> {
    said: BTreeMap<&'a str, Vec<&'a Message>>,
    below: BTreeMap<&'a str, Level<'a>>,
}

/// The whole file that `lib.rs` includes.
pub(crate) fn rust(languages: &[Listed], modules: &[Module]) -> String {
    let mut out = String::new();
    write_languages(&mut out, languages);
    for module in modules {
        let mut top = Level::default();
        let Some(english) = module.languages.first() else {
            continue;
        };
        for id in english.keys() {
            let mut levels: Vec<&str> = id.split('-').collect();
            let last = levels.pop().unwrap_or_default();
            let level = levels
                .into_iter()
                .fold(&mut top, |level, word| level.below.entry(word).or_default());
            let in_each = module
                .languages
                .iter()
                .filter_map(|messages| messages.get(id));
            level.said.insert(last, in_each.collect());
        }
        // What is made is not written in the house's style.
        out.push_str("#[allow(clippy::pedantic, reason = \"made by the build\")]\n");
        write_level(
            &mut out,
            languages,
            &module.name,
            &format!("{}.ftl", module.name),
            &top,
        );
    }
    out
}

/// What there is to say of each language, and which field of a text is its own.
fn write_languages(out: &mut String, languages: &[Listed]) {
    let each = |say: &dyn Fn(&Listed) -> String| {
        let arms = languages
            .iter()
            .map(|one| format!("crate::Language::{} => {},\n", one.variant(), say(one)));
        arms.collect::<String>()
    };
    let all = languages
        .iter()
        .map(|one| format!("Self::{}", one.variant()));
    let all = all.collect::<Vec<_>>().join(", ");
    let place = |one: &Listed| {
        let at = languages.iter().position(|other| other.name == one.name);
        at.unwrap_or_default().to_string()
    };
    let _ = writeln!(
        out,
        "impl crate::Language {{\n\
         /// Every language, English first.\n\
         pub const ALL: [Self; {}] = [{all}];\n\
         /// The code of BCP 47.\n\
         pub const fn code(self) -> &'static str {{ match self {{\n{}}} }}\n\
         /// As the wire and the log have it.\n\
         pub const fn name(self) -> &'static str {{ match self {{\n{}}} }}\n\
         /// Its place among all.\n\
         pub(crate) const fn place(self) -> usize {{ match self {{\n{}}} }}\n\
         }}\n\
         impl crate::Text {{\n\
         pub(crate) fn field(&self, language: crate::Language) -> &String {{ match language {{\n{}}} }}\n\
         pub(crate) fn field_mut(&mut self, language: crate::Language) -> &mut String {{ match language {{\n{}}} }}\n\
         }}",
        languages.len(),
        each(&|one| format!("{:?}", one.code)),
        each(&|one| format!("{:?}", one.name)),
        each(&place),
        each(&|one| format!("&self.{}", one.name)),
        each(&|one| format!("&mut self.{}", one.name)),
    );
}

fn write_level(out: &mut String, languages: &[Listed], word: &str, path: &str, level: &Level<'_>) {
    let _ = writeln!(out, "/// The words of `{path}`.\npub mod {} {{", name(word));
    let variables = level
        .said
        .values()
        .any(|all| all.first().is_some_and(|one| !one.parameters.is_empty()));
    let plain = level
        .said
        .values()
        .any(|all| all.first().is_some_and(|one| one.parameters.is_empty()));
    if plain {
        out.push_str("use crate::Fixed;\n");
    }
    if variables {
        out.push_str("use crate::{Language, Said, Text};\n");
    }
    for (word, in_each) in &level.said {
        write_message(out, languages, word, in_each);
    }
    for (word, below) in &level.below {
        write_level(out, languages, word, &format!("{path}: {word}"), below);
    }
    out.push_str("}\n");
}

fn write_message(out: &mut String, languages: &[Listed], word: &str, in_each: &[&Message]) {
    let Some(english) = in_each.first() else {
        return;
    };
    let _ = writeln!(
        out,
        "/// ```text\n/// {}\n/// ```",
        plainly(&english.pieces).replace('\n', " ")
    );
    if english.parameters.is_empty() {
        let texts = in_each
            .iter()
            .map(|message| format!("{:?}", text(&message.pieces)));
        let texts = texts.collect::<Vec<_>>().join(", ");
        let _ = writeln!(
            out,
            "pub const fn {}() -> Fixed {{ Fixed::new([{texts}]) }}",
            name(word)
        );
        return;
    }
    out.push_str("///\n");
    for one in &english.parameters {
        let _ = writeln!(out, "/// - `{}`: {}", one.name, one.about);
    }
    let takes = english.parameters.iter().map(|one| {
        let kind = if one.number { "crate::Number" } else { "Said" };
        format!("{}: &dyn {kind}", name(&one.name))
    });
    let takes = takes.collect::<Vec<_>>().join(", ");
    let _ = writeln!(
        out,
        "pub fn {}({takes}) -> Text {{\nText::said(&|language, out| match language {{",
        name(word)
    );
    for (language, message) in languages.iter().zip(in_each) {
        let _ = writeln!(out, "Language::{} => {{", language.variant());
        let numbers: Vec<&str> = english
            .parameters
            .iter()
            .filter(|one| one.number)
            .map(|one| one.name.as_str())
            .collect();
        write_pieces(out, &message.pieces, &numbers);
        out.push_str("}\n");
    }
    out.push_str("})\n}\n");
}

fn write_pieces(out: &mut String, pieces: &[Piece], numbers: &[&str]) {
    for piece in pieces {
        match piece {
            Piece::Text(text) => {
                let _ = writeln!(out, "out.push_str({text:?});");
            }
            Piece::Variable(variable) => {
                let _ = writeln!(out, "{}.say(language, out);", name(variable));
            }
            // Put in by the check.
            Piece::Other(_) => {}
            Piece::Select {
                on,
                branches,
                default,
            } => {
                let on_number = numbers.contains(&on.as_str());
                if on_number {
                    let _ = writeln!(
                        out,
                        "match crate::number::branch({}, language, &{:?}) {{",
                        name(on),
                        keys(branches)
                    );
                } else {
                    let _ = writeln!(
                        out,
                        "match crate::said::key({}, language).as_str() {{",
                        name(on)
                    );
                }
                for (at, (key, said)) in branches.iter().enumerate() {
                    if at != *default {
                        let _ = writeln!(out, "{key:?} => {{");
                        write_pieces(out, said, numbers);
                        out.push_str("}\n");
                    }
                }
                out.push_str("_ => {\n");
                if let Some((_, said)) = branches.get(*default) {
                    write_pieces(out, said, numbers);
                }
                out.push_str("}\n}\n");
            }
        }
    }
}

fn keys(branches: &[(String, Vec<Piece>)]) -> Vec<&str> {
    branches.iter().map(|(key, _)| key.as_str()).collect()
}

/// What a message without variables says.
fn text(pieces: &[Piece]) -> String {
    let said = pieces.iter().map(|piece| match piece {
        Piece::Text(text) => text.as_str(),
        Piece::Variable(_) | Piece::Other(_) | Piece::Select { .. } => "",
    });
    said.collect()
}

/// What a message says, for whoever reads the documentation.
fn plainly(pieces: &[Piece]) -> String {
    let mut out = String::new();
    for piece in pieces {
        match piece {
            Piece::Text(text) => out.push_str(text),
            Piece::Variable(name) => {
                let _ = write!(out, "{{ ${name} }}");
            }
            Piece::Other(id) => {
                let _ = write!(out, "{{ {id} }}");
            }
            Piece::Select {
                branches, default, ..
            } => {
                if let Some((_, said)) = branches.get(*default) {
                    out.push_str(&plainly(said));
                }
            }
        }
    }
    out
}
