//! Takes values out of one table of the file, and notes what is wrong with them.

use std::cell::RefCell;
use std::collections::BTreeSet;
use std::ops::Range;

use earthwork::length::{Length, parse};
use earthwork::point::Point;
use serde::de::DeserializeOwned;
use toml::Spanned;
use toml::de::{DeTable, DeValue};
use words::Text;

use super::notes::Notes;

/// No figure of a site comes to more, in any unit.
const MOST: f64 = 1e9;

/// One table of the file; what it holds that nobody asked for is a fault.
pub(super) struct Fields<'a, 't> {
    table: &'a DeTable<'t>,
    at: usize,
    what: Text,
    used: RefCell<BTreeSet<String>>,
}

impl<'a, 't> Fields<'a, 't> {
    /// The whole document.
    pub(super) fn whole(document: &'a Spanned<DeTable<'t>>) -> Self {
        Self::of(
            document.get_ref(),
            document.span(),
            words::site_file::the_site_file().into(),
        )
    }

    fn of(table: &'a DeTable<'t>, span: Range<usize>, what: Text) -> Self {
        Self {
            table,
            at: span.start,
            what,
            used: RefCell::new(BTreeSet::new()),
        }
    }

    /// Where a key's value stands, or the table itself.
    pub(super) fn at(&self, key: &str) -> usize {
        self.find(key).map_or(self.at, |value| value.span().start)
    }

    /// Where the table itself stands.
    pub(super) fn start(&self) -> usize {
        self.at
    }

    /// Whether the key is there.
    pub(super) fn has(&self, key: &str) -> bool {
        self.find(key).is_some()
    }

    fn find(&self, key: &str) -> Option<&'a Spanned<DeValue<'t>>> {
        self.used.borrow_mut().insert(key.to_owned());
        let mut entries = self.table.iter();
        entries
            .find(|(name, _)| name.get_ref() == key)
            .map(|(_, value)| value)
    }

    fn needed(&self, notes: &mut Notes, key: &str) -> Option<&'a Spanned<DeValue<'t>>> {
        let found = self.find(key);
        if found.is_none() {
            notes.missing_at(self.at, key, words::site_file::has_no(&self.what, &key));
        }
        found
    }

    fn string(notes: &mut Notes, key: &str, value: &Spanned<DeValue<'t>>) -> Option<String> {
        if let DeValue::String(text) = value.get_ref() {
            return Some(text.to_string());
        }
        notes.said_at(
            value.span().start,
            words::site_file::must_text_quotes_length_with(&key),
        );
        None
    }

    /// A number or text, as it is written.
    pub(super) fn plain(&self, notes: &mut Notes, key: &str) -> Option<String> {
        let value = self.needed(notes, key)?;
        match value.get_ref() {
            DeValue::String(text) => Some(text.to_string()),
            DeValue::Integer(number) => Some(number.as_str().to_owned()),
            DeValue::Float(number) => Some(number.as_str().to_owned()),
            _ => {
                notes.said_at(value.span().start, words::site_file::must_be_a_number(&key));
                None
            }
        }
    }

    /// Text that must be there.
    pub(super) fn text(&self, notes: &mut Notes, key: &str) -> Option<String> {
        let value = self.needed(notes, key)?;
        if let DeValue::String(text) = value.get_ref() {
            return Some(text.to_string());
        }
        notes.said_at(
            value.span().start,
            words::site_file::must_be_text_in_quotes(&key),
        );
        None
    }

    /// Text that may be left out.
    pub(super) fn note(&self, notes: &mut Notes, key: &str) -> String {
        if self.has(key) {
            self.text(notes, key).unwrap_or_default()
        } else {
            String::new()
        }
    }

    /// A yes or no; no when left out.
    pub(super) fn flag(&self, notes: &mut Notes, key: &str) -> bool {
        match self.find(key).map(|value| (value.get_ref(), value.span())) {
            None => false,
            Some((DeValue::Boolean(flag), _)) => *flag,
            Some((_, span)) => {
                notes.said_at(span.start, words::site_file::must_be_true_or_false(&key));
                false
            }
        }
    }

    /// A number that may be left out.
    pub(super) fn number_or(&self, notes: &mut Notes, key: &str, default: f64) -> Option<f64> {
        if !self.has(key) {
            return Some(default);
        }
        let text = self.plain(notes, key)?;
        // Also 1e308, inf and nan are numbers to a file; no site has them.
        let number = text.parse().ok().filter(|one: &f64| one.abs() <= MOST);
        if number.is_none() {
            notes.said_at(
                self.at(key),
                words::site_file::not_number_within_1_000(&key, &text),
            );
        }
        number
    }

    /// One word out of a fixed list.
    pub(super) fn word<T: DeserializeOwned>(&self, notes: &mut Notes, key: &str) -> Option<T> {
        let text = self.text(notes, key)?;
        match word(&text) {
            Ok(word) => Some(word),
            Err(why) => {
                notes.said_at(self.at(key), words::site_file::not_of_the_list(&key, &why));
                None
            }
        }
    }

    /// A length that must be there.
    pub(super) fn length(&self, notes: &mut Notes, key: &str) -> Option<Length> {
        let value = self.needed(notes, key)?;
        length(notes, key, value)
    }

    /// A length that may be left out.
    pub(super) fn length_or(
        &self,
        notes: &mut Notes,
        key: &str,
        default: Length,
    ) -> Option<Length> {
        self.find(key)
            .map_or(Some(default), |value| length(notes, key, value))
    }

    /// A text that a rule of its own reads.
    pub(super) fn read<T>(
        &self,
        notes: &mut Notes,
        key: &str,
        read: impl Fn(&str) -> Result<T, Text>,
    ) -> Option<T> {
        let text = self.plain(notes, key)?;
        match read(&text) {
            Ok(value) => Some(value),
            Err(why) => {
                notes.said_at(self.at(key), words::site_file::at(&key, &why));
                None
            }
        }
    }

    /// A point, `["x", "y"]`.
    pub(super) fn point(&self, notes: &mut Notes, key: &str) -> Option<Point> {
        let value = self.needed(notes, key)?;
        point(notes, key, value)
    }

    /// Points in order.
    pub(super) fn points(&self, notes: &mut Notes, key: &str) -> Option<Vec<Point>> {
        let value = self.needed(notes, key)?;
        let items = list(notes, key, value)?;
        items.iter().map(|item| point(notes, key, item)).collect()
    }

    /// Places with their elevation, `[["x", "y", "z"], …]`.
    pub(super) fn places(&self, notes: &mut Notes, key: &str) -> Option<Vec<(Point, Length)>> {
        let value = self.needed(notes, key)?;
        let each = list(notes, key, value)?.into_iter().map(|item| {
            let parts = list(notes, key, item)?;
            let [x, y, z] = parts.as_slice() else {
                notes.wrong_at(
                    item.span().start,
                    format!("`{key}` must be places with their elevation: [[\"12.00 ft\", \"30.00 ft\", \"302.00 ft\"], …]."),
                );
                return None;
            };
            let (x, y) = (length(notes, key, x), length(notes, key, y));
            let elevation = length(notes, key, z);
            Some((Point { x: x?, y: y? }, elevation?))
        });
        each.collect()
    }

    /// A length that may be left out.
    #[expect(clippy::option_option, reason = "faulty, left out, given")]
    pub(super) fn length_if(&self, notes: &mut Notes, key: &str) -> Option<Option<Length>> {
        if self.has(key) {
            self.length(notes, key).map(Some)
        } else {
            Some(None)
        }
    }

    /// Lengths in order; none when left out.
    pub(super) fn lengths(&self, notes: &mut Notes, key: &str) -> Option<Vec<Length>> {
        let Some(value) = self.find(key) else {
            return Some(Vec::new());
        };
        let items = list(notes, key, value)?;
        items.iter().map(|item| length(notes, key, item)).collect()
    }

    /// Names in order; none when left out.
    pub(super) fn names(&self, notes: &mut Notes, key: &str) -> Option<Vec<String>> {
        let Some(value) = self.find(key) else {
            return Some(Vec::new());
        };
        let items = list(notes, key, value)?;
        items
            .iter()
            .map(|item| Self::string(notes, key, item))
            .collect()
    }

    /// A table inside this one, if it is there.
    pub(super) fn table(&self, notes: &mut Notes, key: &str) -> Option<Self> {
        let value = self.find(key)?;
        if let DeValue::Table(table) = value.get_ref() {
            return Some(Self::of(
                table,
                value.span(),
                Text::alike(&format!("`{key}`")),
            ));
        }
        notes.wrong_at(
            value.span().start,
            format!("`{key}` must be a table: [{key}] or {key} = {{ … }}."),
        );
        None
    }

    /// Every table of a list, in order; those with faults are left out, the faults are noted.
    pub(super) fn each<T>(
        &self,
        notes: &mut Notes,
        key: &str,
        kind: &str,
        mut read: impl FnMut(&mut Notes, &Self) -> Option<T>,
    ) -> Vec<T> {
        let Some(value) = self.find(key) else {
            return Vec::new();
        };
        notes.stands(kind.to_owned(), value.span().start);
        let DeValue::Array(items) = value.get_ref() else {
            notes.wrong_at(
                value.span().start,
                format!("Write [[{key}]] with two brackets on each side: there can be several."),
            );
            return Vec::new();
        };
        let mut found = Vec::new();
        for item in items {
            let DeValue::Table(table) = item.get_ref() else {
                notes.wrong_at(item.span().start, format!("Each `{key}` must be a table."));
                continue;
            };
            let fields = Self::of(table, item.span(), words::site_file::this(&key));
            fields.stands(notes, kind);
            found.extend(read(notes, &fields));
            fields.done(notes);
        }
        found
    }

    /// Remembers where this thing and its parts stand, if it has a name.
    fn stands(&self, notes: &mut Notes, kind: &str) {
        let mut entries = self.table.iter();
        let id = entries.find(|(name, _)| name.get_ref() == "id");
        let Some(DeValue::String(id)) = id.map(|(_, value)| value.get_ref()) else {
            return;
        };
        let path = format!("{kind}.{id}");
        notes.stands(path.clone(), self.at);
        for (key, value) in self.table {
            notes.stands(format!("{path}.{}", key.get_ref()), value.span().start);
            if let DeValue::Table(inner) = value.get_ref() {
                for (part, value) in inner {
                    notes.stands(format!("{path}.{}", part.get_ref()), value.span().start);
                }
            }
        }
    }

    /// Says what nobody asked for.
    pub(super) fn done(&self, notes: &mut Notes) {
        let used = self.used.borrow();
        for name in self.table.keys() {
            if !used.contains(name.get_ref().as_ref()) {
                let known: Vec<&str> = used.iter().map(String::as_str).collect();
                notes.wrong_at(
                    name.span().start,
                    format!(
                        "{} has no place for `{}`. It knows: {}.",
                        self.what.english,
                        name.get_ref(),
                        known.join(", ")
                    ),
                );
            }
        }
    }
}

/// One word of a fixed list of the day's or the trade's.
pub(super) fn word<T: DeserializeOwned>(text: &str) -> Result<T, String> {
    serde_json::from_value(serde_json::Value::String(text.to_owned()))
        .map_err(|error| error.to_string().replace("unknown variant", "there is no"))
}

fn length(notes: &mut Notes, key: &str, value: &Spanned<DeValue<'_>>) -> Option<Length> {
    let text = Fields::string(notes, key, value)?;
    match parse(&text) {
        Ok(length) => Some(length),
        Err(error) => {
            let said = error.text();
            notes.said_at(value.span().start, words::site_file::at(&key, &said));
            None
        }
    }
}

fn list<'a, 't>(
    notes: &mut Notes,
    key: &str,
    value: &'a Spanned<DeValue<'t>>,
) -> Option<Vec<&'a Spanned<DeValue<'t>>>> {
    if let DeValue::Array(items) = value.get_ref() {
        return Some(items.iter().collect());
    }
    notes.said_at(
        value.span().start,
        words::site_file::must_list_brackets(&key),
    );
    None
}

fn point(notes: &mut Notes, key: &str, value: &Spanned<DeValue<'_>>) -> Option<Point> {
    let items = list(notes, key, value)?;
    let [x, y] = items.as_slice() else {
        notes.said_at(
            value.span().start,
            words::site_file::must_point_east_then_north(&key),
        );
        return None;
    };
    let (x, y) = (length(notes, key, x), length(notes, key, y));
    Some(Point { x: x?, y: y? })
}
