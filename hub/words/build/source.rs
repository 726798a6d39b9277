//! Which languages there are, and what their folders hold.

use serde_json::Value;

/// The languages of the screen, which the pages read too: a line each, English, the reference, first.
const LIST: &str = include_str!("../../../web-ui/src/languages.json");

/// A language as the list has it. It is added by a line there, its folder, and a variant and a field in `src/text.rs`.
#[derive(Clone, Debug)]
pub(crate) struct Listed {
    /// As the wire and the log call it, and its field of `Text`: `english`.
    pub(crate) name: String,
    /// The folder of its words, and its code of BCP 47: `en`.
    pub(crate) code: String,
}

impl Listed {
    /// Its variant of `Language`: `English`.
    pub(crate) fn variant(&self) -> String {
        let (first, rest) = self.name.split_at(self.name.len().min(1));
        first.to_uppercase() + rest
    }
}

/// The languages in the list's order.
pub(crate) fn languages() -> Result<Vec<Listed>, String> {
    listed(LIST)
}

/// The languages of a list.
pub(crate) fn listed(list: &str) -> Result<Vec<Listed>, String> {
    let wrong = |what: &str| format!("web-ui/src/languages.json: {what}");
    let read: Value = serde_json::from_str(list).map_err(|error| wrong(&error.to_string()))?;
    let named = read
        .as_object()
        .ok_or_else(|| wrong("write a table of languages by name"))?;
    let mut found = Vec::new();
    for (name, one) in named {
        let code = one["folder"]
            .as_str()
            .ok_or_else(|| wrong(&format!("{name} has no folder")))?;
        found.push(Listed {
            name: name.clone(),
            code: code.to_owned(),
        });
    }
    // A table of JSON has no order of its own; the list is read from above.
    found.sort_by_key(|one| list.find(&format!("\"{}\"", one.name)));
    Ok(found)
}

/// One language's folder.
pub(crate) struct Source {
    /// The folder's name.
    pub(crate) code: String,
    /// Its files.
    pub(crate) files: Vec<File>,
}

/// One file of words.
pub(crate) struct File {
    /// Its name without its ending: a module of the generated code.
    pub(crate) name: String,
    /// As a fault names it.
    pub(crate) path: String,
    /// What it holds.
    pub(crate) text: String,
}

/// The categories that a language's plurals have for whole numbers below a million, as the Unicode CLDR gives them; `src/number.rs`
/// says which number falls into which. (Spanish and Portuguese have `many` too, for whole millions: no crew counts so far.)
pub(crate) fn plurals(code: &str) -> &'static [&'static str] {
    match code {
        "en" | "es" | "pt" => &["one", "other"],
        // A language whose plurals nobody has looked up has none.
        _ => &["other"],
    }
}
