//! What is wrong with a file so far, and where each thing of the site stands, so that every fault gets its line.

use std::collections::BTreeMap;
use words::Text;

use super::Fault;

/// What was found wrong so far, and where the things of the site stand.
pub(super) struct Notes {
    file: String,
    line_starts: Vec<usize>,
    faults: Vec<Fault>,
    places: BTreeMap<String, (String, usize)>,
}

impl Notes {
    pub(super) fn new(file: &str, text: &str) -> Self {
        let newlines = text.bytes().enumerate().filter(|(_, byte)| *byte == b'\n');
        Self {
            file: file.to_owned(),
            line_starts: std::iter::once(0)
                .chain(newlines.map(|(at, _)| at + 1))
                .collect(),
            faults: Vec::new(),
            places: BTreeMap::new(),
        }
    }

    fn line(&self, at: usize) -> usize {
        self.line_starts.partition_point(|start| *start <= at)
    }

    /// A fault at a byte of the file.
    pub(super) fn wrong_at(&mut self, at: usize, message: impl AsRef<str>) {
        let (file, line) = (self.file.clone(), self.line(at));
        self.wrong_in(file, line, message.as_ref());
    }

    /// A fault at a byte of the file, in every language.
    pub(super) fn said_at(&mut self, at: usize, said: impl Into<Text>) {
        let (file, line) = (self.file.clone(), self.line(at));
        self.faults.push(Fault {
            file,
            line,
            text: said.into(),
            warning: false,
            missing: None,
        });
    }

    /// A key that should stand in the table at a byte of the file.
    pub(super) fn missing_at(&mut self, at: usize, key: &str, said: impl Into<Text>) {
        self.said_at(at, said);
        if let Some(last) = self.faults.last_mut() {
            last.missing = Some(key.to_owned());
        }
    }

    /// A fault at a line of any file.
    pub(super) fn wrong_in(&mut self, file: String, line: usize, message: &str) {
        self.faults.push(Fault {
            file,
            line,
            text: Text::alike(message),
            warning: false,
            missing: None,
        });
    }

    /// Remembers where a thing stands; of two with one name the second, which is the one too many.
    pub(super) fn stands(&mut self, path: String, at: usize) {
        let place = (self.file.clone(), self.line(at));
        self.places.insert(path, place);
    }

    /// Remembers where a thing of another file stands.
    pub(super) fn stands_in(&mut self, path: String, file: &str, line: usize) {
        self.places.insert(path, (file.to_owned(), line));
    }

    /// A fault of a named thing: at its own line, or that of what it is part of.
    pub(super) fn about(&mut self, path: &str, text: Text, warning: bool) {
        let mut part = path;
        let place = loop {
            if let Some(place) = self.places.get(part) {
                break place.clone();
            }
            match part.rsplit_once('.') {
                Some((whole, _)) => part = whole,
                None => break (self.file.clone(), 1),
            }
        };
        self.faults.push(Fault {
            file: place.0,
            line: place.1,
            text,
            warning,
            missing: None,
        });
    }

    /// How many faults there are so far.
    pub(super) fn count(&self) -> usize {
        self.faults.len()
    }

    pub(super) fn into_faults(self) -> Vec<Fault> {
        self.faults
    }
}
