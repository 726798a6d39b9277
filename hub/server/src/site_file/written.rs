//! A site as it is written: texts, flags, lists and tables, before anybody has read them. A draft on a phone is one, and
//! so is what an export writes.

use indexmap::IndexMap;
use serde::{Deserialize, Serialize};
use toml::Spanned;
use toml::de::{DeArray, DeTable, DeValue};

/// A value as it is written.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(untagged)]
pub enum Written {
    /// Yes or no.
    Flag(bool),
    /// A text: a length with its unit, a name, a word, a number.
    Text(String),
    /// In order.
    List(Vec<Written>),
    /// Values by their keys, in order.
    Table(IndexMap<String, Written>),
}

impl Written {
    /// A table of what is there.
    pub(super) fn table<'k>(entries: impl IntoIterator<Item = (&'k str, Option<Written>)>) -> Self {
        let there = entries
            .into_iter()
            .filter_map(|(key, value)| Some((key.to_owned(), value?)));
        Self::Table(there.collect())
    }

    /// A text, unless it is empty.
    pub(super) fn note(text: &str) -> Option<Self> {
        (!text.is_empty()).then(|| Self::Text(text.to_owned()))
    }

    /// A list, unless it is empty.
    pub(super) fn some(items: Vec<Written>) -> Option<Self> {
        (!items.is_empty()).then_some(Self::List(items))
    }

    /// The value under a key of a table.
    pub fn get(&self, key: &str) -> Option<&Self> {
        match self {
            Self::Table(entries) => entries.get(key),
            _ => None,
        }
    }

    /// Whether a text like this stands anywhere in it.
    pub(super) fn says(&self, text: &str) -> bool {
        match self {
            Self::Flag(_) => false,
            Self::Text(own) => own == text,
            Self::List(items) => items.iter().any(|item| item.says(text)),
            Self::Table(entries) => entries.values().any(|value| value.says(text)),
        }
    }
}

/// What is written, as the reader of the site file takes it: every value stands on a line of its own, and `paths` says
/// which it is.
#[derive(Debug, Default)]
pub(super) struct Lines {
    pub(super) paths: Vec<String>,
}

impl Lines {
    /// The table as a document.
    pub(super) fn document<'w>(
        &mut self,
        entries: &'w IndexMap<String, Written>,
    ) -> Spanned<DeTable<'w>> {
        let at = self.stands("");
        Spanned::new(at..at, self.entries(entries, ""))
    }

    fn stands(&mut self, path: &str) -> usize {
        self.paths.push(path.to_owned());
        self.paths.len() - 1
    }

    fn entries<'w>(&mut self, entries: &'w IndexMap<String, Written>, path: &str) -> DeTable<'w> {
        let mut table = DeTable::new();
        for (key, value) in entries {
            let inner = join(path, key);
            let value = self.value(value, &inner);
            let span = value.span();
            table.insert(Spanned::new(span, key.as_str().into()), value);
        }
        table
    }

    fn value<'w>(&mut self, value: &'w Written, path: &str) -> Spanned<DeValue<'w>> {
        let at = self.stands(path);
        let value = match value {
            Written::Flag(flag) => DeValue::Boolean(*flag),
            Written::Text(text) => DeValue::String(text.as_str().into()),
            Written::List(items) => {
                let mut list = DeArray::new();
                for (i, item) in items.iter().enumerate() {
                    list.push(self.value(item, &join(path, &i.to_string())));
                }
                DeValue::Array(list)
            }
            Written::Table(entries) => DeValue::Table(self.entries(entries, path)),
        };
        Spanned::new(at..at, value)
    }
}

pub(super) fn join(path: &str, key: &str) -> String {
    if path.is_empty() {
        key.to_owned()
    } else {
        format!("{path}.{key}")
    }
}

/// What is written, as TOML: texts first, then tables; each item of a list of tables on a line of its own.
pub(super) fn toml(top: &IndexMap<String, Written>) -> String {
    let mut text: Vec<String> = Vec::new();
    let is_table = |value: &Written| matches!(value, Written::Table(_));
    for (key, value) in top
        .iter()
        .filter(|(_, value)| !is_table(value) && !of_tables(value))
    {
        text.push(format!("{key} = {}\n", inline(value)));
    }
    for (key, value) in top {
        match value {
            Written::Table(entries) => table(&mut text, &format!("[{key}]"), key, entries),
            Written::List(items) if of_tables(value) => {
                for item in items {
                    if let Written::Table(entries) = item {
                        table(&mut text, &format!("[[{key}]]"), key, entries);
                    }
                }
            }
            _ => {}
        }
    }
    text.concat()
}

fn of_tables(value: &Written) -> bool {
    matches!(value, Written::List(items) if matches!(items.first(), Some(Written::Table(_))))
}

fn table(text: &mut Vec<String>, head: &str, path: &str, entries: &IndexMap<String, Written>) {
    text.push(format!("\n{head}\n"));
    for (key, value) in entries {
        match value {
            Written::Table(_) => {}
            Written::List(items) if of_tables(value) => {
                text.push(format!("{key} = [\n"));
                for item in items {
                    text.push(format!("    {},\n", inline(item)));
                }
                text.push("]\n".to_owned());
            }
            other => text.push(format!("{key} = {}\n", inline(other))),
        }
    }
    for (key, value) in entries {
        if let Written::Table(inner) = value {
            table(
                text,
                &format!("[{path}.{key}]"),
                &format!("{path}.{key}"),
                inner,
            );
        }
    }
}

fn inline(value: &Written) -> String {
    let list = |items: Vec<String>| items.join(", ");
    match value {
        Written::Flag(flag) => flag.to_string(),
        Written::Text(text) => toml::Value::String(text.clone()).to_string(),
        Written::List(items) => format!("[{}]", list(items.iter().map(inline).collect())),
        Written::Table(entries) => {
            let pairs = entries
                .iter()
                .map(|(key, value)| format!("{key} = {}", inline(value)));
            format!("{{ {} }}", list(pairs.collect()))
        }
    }
}
