//! One sentence in every language.

use std::mem;

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::Fixed;

/// A language that a screen speaks. [`Language::ALL`], what each is called and which field of [`Text`] is its own are made by the
/// build from `web-ui/src/languages.json`, which the pages read too.
#[derive(
    Clone,
    Copy,
    Debug,
    Default,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    ToSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Language {
    /// English.
    #[default]
    English,
    /// Spanish.
    Spanish,
    /// Portuguese, as Brazil has it.
    Portuguese,
}

/// A sentence in every language, as the log and the wire hold it. A language that is added later gets a field with
/// `#[serde(default, skip_serializing_if = "String::is_empty")]`: logs from before do not hold it, and it reads as English.
#[derive(
    Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema,
)]
pub struct Text {
    /// In English.
    pub english: String,
    /// In Spanish.
    pub spanish: String,
    /// In Portuguese; logs from before do not hold it.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub portuguese: String,
}

impl Text {
    /// What is said in each language by what writes it.
    pub(crate) fn said(write: &dyn Fn(Language, &mut String)) -> Self {
        Self::in_each(|language| {
            let mut out = String::new();
            write(language, &mut out);
            out
        })
    }

    /// What is made for each language.
    pub fn in_each(make: impl Fn(Language) -> String) -> Self {
        let mut text = Self::default();
        for language in Language::ALL {
            *text.field_mut(language) = make(language);
        }
        text
    }

    /// The same in every language: a name, a number, what somebody typed.
    pub fn alike(text: &str) -> Self {
        Self::in_each(|_| text.to_owned())
    }

    /// Several, with something between them.
    pub fn joined(several: &[Self], between: &str) -> Self {
        Self::in_each(|language| {
            let each: Vec<&str> = several.iter().map(|one| one.of(language)).collect();
            each.join(between)
        })
    }

    /// In a language; English where that language was not there yet when it was said.
    pub fn of(&self, language: Language) -> &str {
        let own = self.field(language);
        if own.is_empty() { &self.english } else { own }
    }

    /// In a language alone.
    pub fn take(mut self, language: Language) -> String {
        let own = mem::take(self.field_mut(language));
        if own.is_empty() { self.english } else { own }
    }

    /// Whether nothing is said.
    pub fn is_empty(&self) -> bool {
        self.english.is_empty()
    }
}

impl From<Fixed> for Text {
    fn from(words: Fixed) -> Self {
        Self::in_each(|language| words.of(language).to_owned())
    }
}
