//! Which languages there are, and what their folders hold.

/// The folder of each language and its variant of `Language`; English, the reference, first. A language is added by its folder,
/// a line here, and a variant and a field in `src/text.rs`.
pub(crate) const LANGUAGES: [(&str, &str); 2] = [("en", "English"), ("es", "Spanish")];

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

/// The categories that a language's plurals have for whole numbers below a million, as the Unicode CLDR gives them. (Spanish has
/// `many` too, for whole millions: no crew counts so far.)
pub(crate) fn plurals(code: &str) -> &'static [&'static str] {
    match code {
        "en" | "es" | "pt" => &["one", "other"],
        // A language whose plurals nobody has looked up has none.
        _ => &["other"],
    }
}
