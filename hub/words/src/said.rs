//! What can be put into a sentence.

use std::fmt::{Display, Write};

use crate::{Fixed, Language, Text};

/// What can be put into a sentence: whatever is shown alike in every language, and what has words of its own in each.
pub trait Said {
    /// Writes it.
    fn say(&self, language: Language, out: &mut String);
}

impl<T: Display + ?Sized> Said for T {
    fn say(&self, _: Language, out: &mut String) {
        // A `String` takes everything.
        let _ = write!(out, "{self}");
    }
}

impl Said for Text {
    fn say(&self, language: Language, out: &mut String) {
        out.push_str(self.of(language));
    }
}

impl Said for &Text {
    fn say(&self, language: Language, out: &mut String) {
        out.push_str(self.of(language));
    }
}

impl Said for Fixed {
    fn say(&self, language: Language, out: &mut String) {
        out.push_str(self.of(language));
    }
}

/// By what a selector on a text picks its branch.
pub(crate) fn key(of: &dyn Said, language: Language) -> String {
    let mut key = String::new();
    of.say(language, &mut key);
    key
}
