//! Holds every language against English: the same files, the same messages, the same variables, the same branches.

use std::collections::BTreeMap;

use super::message::{Message, Piece, branches, variables};
use super::read::read;
use super::source::{Source, plurals};

/// The messages of one file in each language, English first.
pub(crate) struct Module {
    /// The file's name.
    pub(crate) name: String,
    /// In each language, in the order of the sources: by id, what other messages say put in.
    pub(crate) languages: Vec<BTreeMap<String, Message>>,
}

/// Every file's messages, or every fault: `path:line: id: what is wrong and what to write`.
pub(crate) fn all(sources: &[Source]) -> Result<Vec<Module>, Vec<String>> {
    let mut faults = Vec::new();
    let Some((english, others)) = sources.split_first() else {
        return Err(vec!["no language is given".to_owned()]);
    };
    for other in others {
        for file in &other.files {
            if english.files.iter().all(|one| one.name != file.name) {
                faults.push(format!(
                    "{}:1: English has no file {}.ftl. Remove it, or add the English.",
                    file.path, file.name
                ));
            }
        }
    }
    let mut modules = Vec::new();
    for file in &english.files {
        let mut module = Module {
            name: file.name.clone(),
            languages: Vec::new(),
        };
        if !super::write::is_name(&file.name) {
            faults.push(format!(
                "{}:1: a file's name is lower case letters, digits and `_`.",
                file.path
            ));
        }
        for source in sources {
            let Some(own) = source.files.iter().find(|one| one.name == file.name) else {
                faults.push(format!(
                    "{}:1: {} has no file {}.ftl. Add it.",
                    file.path, source.code, file.name
                ));
                continue;
            };
            let (messages, wrong) = read(own);
            faults.extend(wrong);
            let messages = filled(&own.path, messages, &mut faults);
            match module.languages.first() {
                None => of_english(&source.code, &own.path, &messages, &mut faults),
                Some(english) => of_other(
                    &source.code,
                    &file.path,
                    english,
                    &own.path,
                    &messages,
                    &mut faults,
                ),
            }
            module.languages.push(messages);
        }
        modules.push(module);
    }
    if faults.is_empty() {
        Ok(modules)
    } else {
        Err(faults)
    }
}

/// By id, with what other messages and terms say put in their place; terms are not messages of their own.
fn filled(
    path: &str,
    messages: Vec<Message>,
    faults: &mut Vec<String>,
) -> BTreeMap<String, Message> {
    let mut by_id: BTreeMap<String, Message> = BTreeMap::new();
    for message in messages {
        if let Some(first) = by_id.get(&message.id) {
            faults.push(format!(
                "{path}:{}: {}: stands there twice. Rename or remove one.",
                first.line, message.id
            ));
        }
        by_id.insert(message.id.clone(), message);
    }
    let said: BTreeMap<String, Vec<Piece>> = by_id
        .iter()
        .map(|(id, message)| (id.clone(), message.pieces.clone()))
        .collect();
    for message in by_id.values_mut() {
        let place = format!("{path}:{}: {}", message.line, message.id);
        message.pieces = put_in(&message.pieces, &said, &place, faults);
    }
    by_id.retain(|id, _| !id.starts_with('-'));
    by_id
}

fn put_in(
    pieces: &[Piece],
    said: &BTreeMap<String, Vec<Piece>>,
    place: &str,
    faults: &mut Vec<String>,
) -> Vec<Piece> {
    let mut whole = Vec::new();
    for piece in pieces {
        match piece {
            Piece::Text(_) | Piece::Variable(_) => whole.push(piece.clone()),
            Piece::Select { on, branches, default } => {
                let branches = branches
                    .iter()
                    .map(|(key, inner)| (key.clone(), put_in(inner, said, place, faults)))
                    .collect();
                whole.push(Piece::Select { on: on.clone(), branches, default: *default });
            }
            Piece::Other(id) => match said.get(id) {
                Some(inner) if inner.iter().all(|one| matches!(one, Piece::Text(_))) => whole.extend(inner.iter().cloned()),
                Some(_) => faults.push(format!("{place}: {id} has variables or others within. Only plain texts stand in others.")),
                None => faults.push(format!("{place}: this file has no {id}. Check its name.")),
            },
        }
    }
    whole
}

/// English by itself: each variable is named above the message, and each one that is named is said.
fn of_english(
    code: &str,
    path: &str,
    messages: &BTreeMap<String, Message>,
    faults: &mut Vec<String>,
) {
    for message in messages.values() {
        let place = format!("{path}:{}: {}", message.line, message.id);
        let said = variables(&message.pieces);
        for name in &said {
            if message.parameters.iter().all(|one| one.name != *name) {
                faults.push(format!("{place}: ${name} is not named in the comment above it. Write `# ${name} (text) what it is`."));
            }
        }
        for one in &message.parameters {
            if !said.contains(&one.name.as_str()) {
                faults.push(format!("{place}: its comment names ${}, which it does not say. Say it, or leave it out.", one.name));
            }
            if !super::write::is_name(&one.name) {
                faults.push(format!(
                    "{place}: ${} is no name. Use lower case letters, digits and `_`.",
                    one.name
                ));
            }
        }
        selectors(code, &place, message, message, faults);
    }
}

/// Another language beside English.
fn of_other(
    code: &str,
    english_path: &str,
    english: &BTreeMap<String, Message>,
    path: &str,
    messages: &BTreeMap<String, Message>,
    faults: &mut Vec<String>,
) {
    for (id, message) in english {
        if !messages.contains_key(id) {
            faults.push(format!(
                "{english_path}:{}: {id}: {path} does not say it. Add it there.",
                message.line
            ));
        }
    }
    for (id, message) in messages {
        let place = format!("{path}:{}: {id}", message.line);
        let Some(reference) = english.get(id) else {
            faults.push(format!(
                "{place}: English has no such message. Check its name, or remove it."
            ));
            continue;
        };
        let (said, wanted) = (variables(&message.pieces), variables(&reference.pieces));
        for name in wanted.iter().filter(|name| !said.contains(name)) {
            faults.push(format!(
                "{place}: does not say ${name}, which English says."
            ));
        }
        for name in said.iter().filter(|name| !wanted.contains(name)) {
            faults.push(format!("{place}: English has no ${name}. Check its name."));
        }
        let (keys, wanted) = (branches(&message.pieces), branches(&reference.pieces));
        for parameter in &reference.parameters {
            let on = parameter.name.as_str();
            let of_it = |(own, _): &&(&str, &str)| *own == on;
            if parameter.number {
                let told = wanted.iter().any(|one| of_it(&one));
                if told && plurals(code).len() > 1 && !keys.iter().any(|one| of_it(&one)) {
                    faults.push(format!(
                        "{place}: does not tell one ${on} from several, as English does."
                    ));
                }
                continue;
            }
            for (_, key) in wanted.iter().filter(of_it) {
                if !keys.contains(&(on, key)) {
                    faults.push(format!(
                        "{place}: has no branch [{key}] of ${on}, which English has."
                    ));
                }
            }
        }
        selectors(code, &place, message, reference, faults);
    }
}

/// The branches of each selector: on a number those of the language's plurals, on a text those that English has.
fn selectors(
    code: &str,
    place: &str,
    message: &Message,
    reference: &Message,
    faults: &mut Vec<String>,
) {
    let own = branches(&message.pieces);
    let english = branches(&reference.pieces);
    for parameter in &reference.parameters {
        let keys: Vec<&str> = own
            .iter()
            .filter(|(on, _)| *on == parameter.name)
            .map(|(_, key)| *key)
            .collect();
        if keys.is_empty() {
            continue;
        }
        if parameter.number {
            let known = |key: &str| plurals(code).contains(&key) || key.parse::<u32>().is_ok();
            for key in keys.iter().filter(|key| !known(key)) {
                faults.push(format!(
                    "{place}: [{key}] is no plural of {code}. It has: {}.",
                    plurals(code).join(", ")
                ));
            }
            for key in plurals(code).iter().filter(|key| !keys.contains(key)) {
                faults.push(format!(
                    "{place}: has no branch [{key}] of ${}.",
                    parameter.name
                ));
            }
        } else {
            let listed: Vec<&str> = english
                .iter()
                .filter(|(on, _)| *on == parameter.name)
                .map(|(_, key)| *key)
                .collect();
            for key in keys
                .iter()
                .filter(|key| !listed.is_empty() && !listed.contains(key))
            {
                faults.push(format!(
                    "{place}: English has no branch [{key}] of ${}. Check its name.",
                    parameter.name
                ));
            }
        }
    }
}
