//! Words into which nothing is put: the same for ever, in every language.

use crate::Language;

/// Words without a variable.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Fixed([&'static str; Language::ALL.len()]);

impl Fixed {
    pub(crate) const fn new(in_each: [&'static str; Language::ALL.len()]) -> Self {
        Self(in_each)
    }

    /// In a language.
    pub const fn of(self, language: Language) -> &'static str {
        self.0[language.place()]
    }
}
