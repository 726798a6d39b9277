//! What every sheet shares: its head and foot, tables, words in the reader's language.

use day::read_as;
use day::time::Time;
use earthwork::length::{Form, Length};
use maud::{DOCTYPE, Markup, PreEscaped, html};
use words::{Fixed, Language, Text};

use super::photos::PHOTOS;
use super::style::STYLE;
use crate::store::Head;
use crate::store::photos::{PhotoError, Photos};
use crate::when::to_the_minute;

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

    /// The whole sheet. Each part begins a page of its own.
    pub(super) fn sheet(&self, title: &str, parts: &[Markup]) -> String {
        self.styled(title, parts, "")
    }

    /// The same, with rules of its own behind those of every sheet.
    pub(super) fn styled(&self, title: &str, parts: &[Markup], own: &str) -> String {
        let lang = self.language.code();
        let page = html! {
            (DOCTYPE)
            html lang=(lang) {
                head {
                    meta charset="utf-8";
                    meta name="viewport" content="width=device-width, initial-scale=1";
                    title { (title) " · " (self.site) " · " (self.day) }
                    style { (PreEscaped(STYLE)) (PreEscaped(own)) }
                }
                body {
                    main {
                        @for (at, part) in parts.iter().enumerate() {
                            table.page role="presentation" {
                                thead { tr { td { (self.running(title)) } } }
                                tbody { tr { td {
                                    @if at == 0 {
                                        header {
                                            h1 { (title) }
                                            p { strong { (self.site) } " · " (self.day) }
                                        }
                                    }
                                    (part)
                                    @if at + 1 == parts.len() { (self.foot(parts)) }
                                } } }
                            }
                        }
                    }
                }
            }
        };
        page.into_string()
    }

    /// What stands over every page: whose it is, and the head of the chain that proves it.
    fn running(&self, title: &str) -> Markup {
        html! {
            div.run {
                span { strong { (self.site) } " · " (self.day) " · " (title) }
                span.head { (self.head.seq) ": " (self.head.hash) }
            }
        }
    }

    fn foot(&self, parts: &[Markup]) -> Markup {
        let photos = parts.iter().any(|part| part.0.contains(PHOTOS));
        html! {
            footer.foot {
                p {
                    (self.t(words::sheet::head_chain_entry())) (self.head.seq) ": "
                    span.head { (self.head.hash) }
                }
                p { (self.t(words::sheet::whoever_holds_this_sheet_can())) }
                @if photos { p { (self.t(words::sheet_photos::printed_smaller())) } }
                p { (self.t(words::sheet::a_reminder_not_a_guard())) }
            }
        }
    }

    /// A table; a column whose name begins with `#` holds numbers, one with `*` is wide. A word without rows.
    pub(super) fn table(&self, columns: &[&str], rows: &[Vec<String>]) -> Markup {
        let class = |at: usize| match columns.get(at).and_then(|name| name.chars().next()) {
            Some('#') => "n",
            Some('*') => "w",
            _ if short(rows, at) => "s",
            _ => "",
        };
        html! {
            @if rows.is_empty() {
                p { (self.t(words::sheet::none())) }
            } @else {
                div.scroll {
                    table.rows {
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
}

/// Names and times that stay on their line: nothing in this column is longer than a dozen letters.
fn short(rows: &[Vec<String>], at: usize) -> bool {
    let cells = rows.iter().filter_map(|row| row.get(at));
    cells.map(|cell| cell.chars().count()).max() <= Some(12)
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
