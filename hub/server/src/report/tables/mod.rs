//! A day as tables for a spreadsheet, its as-built points as `LandXML`, its marks as `GeoJSON`. Feet as numbers, exact; moments in the laptop's zone.

use contract::ToSchema;
use earthwork::length::{Form, Length};
use serde::{Deserialize, Serialize};
use serde_json::Value;
use show::review::{Review, review};
use words::{Language, Text};

use crate::days::KeptDay;
use crate::export::harmless;
use crate::when::in_full;

mod account;
mod measured;

/// A table of a day, by the name of its file.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub enum Table {
    /// Where each mark stands.
    #[serde(rename = "as-built.csv")]
    AsBuilt,
    /// Every reading.
    #[serde(rename = "readings.csv")]
    Readings,
    /// Every call.
    #[serde(rename = "calls.csv")]
    Calls,
    /// Every check shot.
    #[serde(rename = "checks.csv")]
    Checks,
    /// Hours of machines by what they did.
    #[serde(rename = "hours.csv")]
    Hours,
    /// What each line of the day cost.
    #[serde(rename = "costs.csv")]
    Costs,
    /// Every load, with its ticket.
    #[serde(rename = "loads.csv")]
    Loads,
    /// Every patch.
    #[serde(rename = "patches.csv")]
    Patches,
    /// Every soil test, and whether it counts.
    #[serde(rename = "tests.csv")]
    Tests,
    /// Every point on rock.
    #[serde(rename = "rock.csv")]
    Rock,
    /// Every edge that was taped to a line that nobody may cross.
    #[serde(rename = "edges.csv")]
    Edges,
    /// What was out of the ordinary.
    #[serde(rename = "exceptions.csv")]
    Exceptions,
    /// What is open.
    #[serde(rename = "open.csv")]
    Open,
    /// Photos with their hashes.
    #[serde(rename = "photos.csv")]
    Photos,
    /// As-built points as `LandXML`.
    #[serde(rename = "as-built.xml")]
    Points,
    /// Marks on the plan as `GeoJSON`.
    #[serde(rename = "marks.geojson")]
    Marks,
}

impl Table {
    /// Every one.
    pub const ALL: [Self; 16] = [
        Self::AsBuilt,
        Self::Readings,
        Self::Calls,
        Self::Checks,
        Self::Hours,
        Self::Costs,
        Self::Loads,
        Self::Patches,
        Self::Tests,
        Self::Rock,
        Self::Edges,
        Self::Exceptions,
        Self::Open,
        Self::Photos,
        Self::Points,
        Self::Marks,
    ];

    /// The name of its file.
    pub fn name(self) -> String {
        match serde_json::to_value(self) {
            Ok(Value::String(name)) => name,
            _ => String::new(),
        }
    }

    /// The table whose file has this name.
    pub fn named(name: &str) -> Option<Self> {
        serde_json::from_value(Value::from(name)).ok()
    }

    /// What the file is, for whoever takes it.
    pub fn content_type(self) -> &'static str {
        match self {
            Self::Points => "application/xml",
            Self::Marks => "application/geo+json",
            _ => "text/csv; charset=utf-8",
        }
    }
}

/// The text of a table; none before there is a site.
pub fn file(day: &KeptDay, table: Table) -> Option<String> {
    let folded = day.folded();
    let review = review(&folded)?;
    match table {
        Table::AsBuilt => measured::as_built(&review),
        Table::Readings => measured::readings(day),
        Table::Calls => measured::calls(&review),
        Table::Checks => measured::checks(&review),
        Table::Hours => account::hours(&review),
        Table::Costs => account::costs(&review),
        Table::Loads => account::loads(&review),
        Table::Patches => account::patches(&review),
        Table::Tests => account::tests(&review),
        Table::Rock => account::rock(&review),
        Table::Edges => measured::edges(day),
        Table::Exceptions => exceptions(&review),
        Table::Open => open(&review),
        Table::Photos => photos(&review),
        Table::Points => Some(measured::as_built_points(&review)),
        Table::Marks => Some(super::geojson::marks(folded.state.site()?, &review)),
    }
}

fn exceptions(review: &Review) -> Option<String> {
    let columns = ["entry", "at", "kind", "by", "machine", "mark", "*"];
    let rows = review.exceptions.iter().map(|one| {
        let said = &one.said;
        let mut cells = vec![
            said.seq.to_string(),
            in_full(said.at),
            word(Some(one.kind)),
            said.by.clone(),
            said.machine.clone().unwrap_or_default(),
            said.mark.clone().unwrap_or_default(),
        ];
        cells.extend(in_each(&said.text));
        cells
    });
    table(&columns, rows)
}

fn open(review: &Review) -> Option<String> {
    let columns = ["kind", "on", "*"];
    let rows = review.open.iter().map(|one| {
        let mut cells = vec![word(Some(one.kind)), one.on.clone()];
        cells.extend(in_each(&one.text));
        cells
    });
    table(&columns, rows)
}

fn photos(review: &Review) -> Option<String> {
    let columns = [
        "entry",
        "at",
        "by",
        "mark",
        "face",
        "with_entry",
        "words",
        "photo",
        "sha256",
        "original_sha256",
    ];
    let rows = review.photos.iter().map(|one| {
        vec![
            one.seq.to_string(),
            in_full(one.at),
            one.by.clone(),
            one.mark.clone().unwrap_or_default(),
            one.face.clone().unwrap_or_default(),
            number(one.entry),
            one.words.clone(),
            one.photo.clone(),
            one.sha256.clone().unwrap_or_default(),
            one.original.clone().unwrap_or_default(),
        ]
    });
    table(&columns, rows)
}

/// What is said, in every language in turn.
fn in_each(text: &Text) -> [String; Language::ALL.len()] {
    Language::ALL.map(|language| text.of(language).to_owned())
}

/// The column of what is said in one language: English has the bare name, the others their code behind it.
pub(super) fn text_column(name: &str, language: Language) -> String {
    match language {
        Language::English => name.to_owned(),
        other => format!("{name}_{}", other.code()),
    }
}

/// A table; `standing*` stands for a column of each language (`standing`, `standing_es`), `*` for one by the language's own name.
fn table(columns: &[&str], rows: impl Iterator<Item = Vec<String>>) -> Option<String> {
    let mut table = csv::Writer::from_writer(Vec::new());
    let columns = columns
        .iter()
        .flat_map(|column| match column.strip_suffix('*') {
            None => vec![(*column).to_owned()],
            Some("") => Language::ALL.map(|one| one.name().to_owned()).to_vec(),
            Some(name) => Language::ALL.map(|one| text_column(name, one)).to_vec(),
        });
    table.write_record(columns).ok()?;
    for row in rows {
        // A number keeps its sign; anything else is kept from being taken for a formula.
        let cells = row.iter().map(|cell| match cell.parse::<f64>() {
            Ok(_) => cell.clone(),
            Err(_) => harmless(cell),
        });
        table.write_record(cells).ok()?;
    }
    String::from_utf8(table.into_inner().ok()?).ok()
}

fn feet(length: Option<Length>) -> String {
    length.map_or_else(String::new, |length| {
        let text = length.plain(Form::DecimalFeet { places: 7 });
        text.trim_end_matches(" ft").to_owned()
    })
}

fn number(number: Option<impl ToString>) -> String {
    number.map(|number| number.to_string()).unwrap_or_default()
}

/// A word of the wire, such as `too_close_low`.
fn word(value: Option<impl Serialize>) -> String {
    let value = value.and_then(|value| serde_json::to_value(value).ok());
    match value {
        Some(Value::String(word)) => word,
        _ => String::new(),
    }
}
