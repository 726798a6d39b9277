//! What every sheet shares: its head and foot, its style, tables, words in the reader's language.

use day::read_as;
use day::time::Time;
use earthwork::length::{Form, Length};
use maud::{DOCTYPE, Markup, PreEscaped, html};
use words::{Fixed, Language, Text};

use crate::store::Head;
use crate::store::photos::{PhotoError, Photos};
use crate::when::to_the_minute;

/// Black on white, no hue; a table's head comes again on each page, and no row is torn.
const STYLE: &str = "
@page { margin: 15mm 14mm; }
* { box-sizing: border-box; }
body { font: 10.5pt/1.35 'Liberation Sans', Arial, Helvetica, sans-serif; color: #000; background: #fff; margin: 0 auto; padding: 1rem; max-width: 190mm; }
h1 { font-size: 18pt; margin: 0; }
h2 { font-size: 13pt; margin: 1.4em 0 .3em; border-bottom: 2px solid #000; break-after: avoid; }
h3 { font-size: 11pt; margin: 1em 0 .2em; break-after: avoid; }
p { margin: .3em 0; }
table { border-collapse: collapse; width: 100%; margin: .3em 0 .8em; font-variant-numeric: tabular-nums; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { border: 1px solid #000; padding: .15em .4em; text-align: left; vertical-align: top; }
th { font-weight: 700; border-bottom-width: 2px; }
td.n, th.n { text-align: right; }
td.n { white-space: nowrap; }
th.w { width: 30%; }
ul { margin: .3em 0; padding-left: 1.3em; }
li { break-inside: avoid; }
.answer { border: 3px solid #000; padding: .6em .8em; font-size: 12pt; }
.head { font-family: 'Liberation Mono', monospace; overflow-wrap: anywhere; }
.foot { margin-top: 2em; border-top: 2px solid #000; padding-top: .4em; font-size: 9pt; break-inside: avoid; }
.photos { display: grid; grid-template-columns: 1fr 1fr; gap: 4mm; margin: .4em 0 .8em; }
.photos figure { margin: 0; break-inside: avoid; font-size: 9pt; }
.photos img { display: block; max-width: 100%; max-height: 80mm; border: 1px solid #000; }
.photos .head { font-size: 7pt; }
.owed { border: 2px dashed #000; padding: .6em; margin: 0; font-weight: 700; }
.sheet + .sheet { break-before: page; }
svg { width: 100%; height: auto; display: block; }
.cab { font-size: 9pt; line-height: 1.25; }
.cab ~ .foot { margin-top: .6em; }
.beside { display: grid; grid-template-columns: 58mm 1fr; gap: 6mm; align-items: start; }
.cards { display: grid; grid-template-columns: repeat(4, 1fr); gap: 3mm; }
.card { border: 2px solid #000; padding: 2mm; break-inside: avoid; font-size: 9pt; }
.card svg { height: 36mm; }
.card h3 { margin: 0; font-size: 13pt; }
@media print { body { padding: 0; max-width: none; } }
";

/// A sheet in one language about one day.
pub(super) struct Paper {
    language: Language,
    site: String,
    day: String,
    head: Head,
    photos: Photos,
}

impl Paper {
    /// `site` and `name` as the sheet calls them.
    pub(super) fn new(
        language: Language,
        site: &str,
        name: &str,
        head: Head,
        photos: Photos,
    ) -> Self {
        Self {
            language,
            site: site.to_owned(),
            day: name.to_owned(),
            head,
            photos,
        }
    }

    /// The bytes of a photo, proven.
    pub(super) fn photo(&self, sha256: &str) -> Result<Vec<u8>, PhotoError> {
        self.photos.read(sha256)
    }

    /// The words in the reader's language.
    pub(super) fn t(&self, words: Fixed) -> &'static str {
        words.of(self.language)
    }

    /// A sentence in the reader's language.
    pub(super) fn of<'a>(&self, text: &'a Text) -> &'a str {
        text.of(self.language)
    }

    pub(super) fn language(&self) -> Language {
        self.language
    }

    /// A set-up's name as people read it.
    pub(super) fn set_up(&self, id: &str) -> String {
        read_as::set_up(id).take(self.language)
    }

    /// A gravel patch's name as people read it.
    pub(super) fn patch(&self, id: &str) -> String {
        read_as::patch(id).take(self.language)
    }

    /// The minute of a moment, with its day when that is another than the sheet's.
    pub(super) fn at(&self, day: &str, at: Time) -> String {
        let minute = to_the_minute(at);
        if day == self.day {
            minute
        } else {
            format!("{day} {minute}")
        }
    }

    /// The whole sheet.
    pub(super) fn sheet(&self, title: &str, body: &Markup) -> String {
        let lang = self.language.code();
        let page = html! {
            (DOCTYPE)
            html lang=(lang) {
                head {
                    meta charset="utf-8";
                    meta name="viewport" content="width=device-width, initial-scale=1";
                    title { (title) " · " (self.site) " · " (self.day) }
                    style { (PreEscaped(STYLE)) }
                }
                body {
                    header {
                        h1 { (title) }
                        p { strong { (self.site) } " · " (self.day) }
                    }
                    (body)
                    (self.foot())
                }
            }
        };
        page.into_string()
    }

    fn foot(&self) -> Markup {
        html! {
            footer.foot {
                p {
                    (self.t(words::sheet::head_chain_entry())) (self.head.seq) ": "
                    span.head { (self.head.hash) }
                }
                p { (self.t(words::sheet::whoever_holds_this_sheet_can())) }
                p { (self.t(words::sheet::a_reminder_not_a_guard())) }
            }
        }
    }

    /// A table; a column whose name begins with `#` holds numbers, one with `*` is wide. A word without rows.
    pub(super) fn table(&self, columns: &[&str], rows: &[Vec<String>]) -> Markup {
        let class = |at: usize| match columns.get(at).and_then(|name| name.chars().next()) {
            Some('#') => "n",
            Some('*') => "w",
            _ => "",
        };
        html! {
            @if rows.is_empty() {
                p { (self.t(words::sheet::none())) }
            } @else {
                table {
                    thead { tr {
                        @for (at, name) in columns.iter().enumerate() {
                            th class=(class(at)) { (name.trim_start_matches(['#', '*'])) }
                        }
                    } }
                    tbody {
                        @for row in rows {
                            tr { @for (at, cell) in row.iter().enumerate() { td class=(class(at)) { (cell) } } }
                        }
                    }
                }
            }
        }
    }
}

/// Feet with two places and no unit: the column says it.
pub(super) fn feet(length: Length) -> String {
    let text = length.show(Form::DecimalFeet { places: 2 });
    text.trim_end_matches(" ft").to_owned()
}

/// The same with its sign: positive is HIGH.
pub(super) fn signed(length: Length) -> String {
    if length > Length::ZERO {
        format!("+{}", feet(length))
    } else {
        feet(length)
    }
}

/// A value that may be missing.
pub(super) fn or_dash<T>(value: Option<T>, show: impl FnOnce(T) -> String) -> String {
    value.map_or_else(|| "–".to_owned(), show)
}

/// Milliseconds as hours and minutes.
pub(super) fn hours(ms: i64) -> String {
    let minutes = ms / 60_000;
    format!("{}:{:02}", minutes / 60, minutes % 60)
}
