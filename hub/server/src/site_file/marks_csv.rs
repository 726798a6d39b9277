//! Marks from a table with a header, columns in any order. All of it comes in, or nothing; every fault is named at once.

use std::collections::BTreeMap;

use csv::StringRecord;
use day::site::{Frame, Mark, Target};
use earthwork::length::{Length, parse};
use earthwork::point::Point;
use earthwork::site_frame::{PlanNumber, PlanPoint, SiteFrame};
use earthwork::uncertainty::Surface;

use super::fields::{Fields, word};
use super::marks::{along, station};
use super::notes::Notes;

/// What a column can be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Column {
    Id,
    X,
    Y,
    Station,
    Offset,
    Target,
    Surface,
    Note,
    /// A point list carries elevations; a mark's grade comes from its target, so they are not used.
    Elevation,
}

/// The names that people and the trade's point lists give the columns.
const NAMES: [(Column, &[&str]); 9] = [
    (Column::Id, &["id", "mark", "name", "point", "p", "no"]),
    (Column::X, &["x", "easting", "east", "e"]),
    (Column::Y, &["y", "northing", "north", "n"]),
    (Column::Station, &["station", "sta"]),
    (Column::Offset, &["offset", "off"]),
    (Column::Target, &["target"]),
    (Column::Surface, &["surface"]),
    (Column::Note, &["note", "description", "desc", "d"]),
    (Column::Elevation, &["elevation", "elev", "z"]),
];

/// The columns of one table: where each stands, and in which unit its plain numbers are.
struct Header {
    columns: BTreeMap<Column, (usize, String)>,
    /// The plan's frame, when x and y are the plan's.
    frame: Option<SiteFrame>,
}

/// Reads the table that `[marks_csv]` names.
pub(super) fn marks(
    notes: &mut Notes,
    fields: &Fields<'_, '_>,
    targets: &[Target],
    frame: Option<&Frame>,
    beside: &dyn Fn(&str) -> Result<String, String>,
) -> Vec<Mark> {
    let file = fields.text(notes, "file");
    let unit = fields.text(notes, "unit");
    let on_plan = fields.flag(notes, "on_plan");
    fields.done(notes);
    let frame = if on_plan {
        let made = frame.and_then(|frame| frame.made().ok());
        if made.is_none() {
            notes.wrong_at(
                fields.at("on_plan"),
                "The table's coordinates are the plan's, but the site has no [frame]. Add one, or leave `on_plan` out.",
            );
            return Vec::new();
        }
        made
    } else {
        None
    };
    let (Some(file), Some(unit)) = (file, unit) else {
        return Vec::new();
    };
    if !["ft", "m", "mm", "in"].contains(&unit.as_str()) {
        notes.wrong_at(
            fields.at("unit"),
            format!("`unit`: “{unit}” is not ft, m, mm or in."),
        );
        return Vec::new();
    }
    match beside(&file) {
        Ok(text) => match header(notes, &file, &text, &unit) {
            Some(header) => table(notes, &file, &text, &Header { frame, ..header }, targets),
            None => Vec::new(),
        },
        Err(why) => {
            notes.wrong_at(
                fields.at("file"),
                format!("The table of marks “{file}” can't be read ({why}). It is looked for beside the site file."),
            );
            Vec::new()
        }
    }
}

fn reader(text: &str) -> csv::Reader<&[u8]> {
    csv::ReaderBuilder::new()
        .trim(csv::Trim::All)
        .from_reader(text.trim_start_matches('\u{feff}').as_bytes())
}

/// The table's header; what is wrong with it is noted.
fn header(notes: &mut Notes, file: &str, text: &str, unit: &str) -> Option<Header> {
    let found = match reader(text).headers() {
        Ok(names) => Header::of(names, unit),
        Err(error) => Err(format!("This is not a table: {error}.")),
    };
    found
        .map_err(|why| notes.wrong_in(file.to_owned(), 1, &why))
        .ok()
}

fn table(
    notes: &mut Notes,
    file: &str,
    text: &str,
    header: &Header,
    targets: &[Target],
) -> Vec<Mark> {
    let mut reader = reader(text);
    let mut found = Vec::new();
    for record in reader.records() {
        let line_of = |position: Option<&csv::Position>| {
            position.map_or(1, |at| usize::try_from(at.line()).unwrap_or(usize::MAX))
        };
        let (line, row) = match record {
            Ok(record) => (line_of(record.position()), header.mark(&record, targets)),
            Err(error) => (
                line_of(error.position()),
                Err(vec![format!("This row does not fit the header: {error}.")]),
            ),
        };
        match row {
            Ok(mark) => {
                notes.stands_in(format!("marks.{}", mark.id), file, line);
                found.push(mark);
            }
            // A file with a fault is not taken at all; what can be read is kept so that its other faults are found too.
            Err(all) => {
                for why in all {
                    notes.wrong_in(file.to_owned(), line, &why);
                }
            }
        }
    }
    found
}

impl Header {
    fn of(names: &StringRecord, unit: &str) -> Result<Self, String> {
        let mut columns = BTreeMap::new();
        for (at, name) in names.iter().enumerate() {
            let plain = name.to_lowercase();
            let (plain, unit) = match plain.rsplit_once('_') {
                Some((stem, own @ ("ft" | "m" | "mm" | "in"))) => (stem.to_owned(), own.to_owned()),
                _ => (plain, unit.to_owned()),
            };
            let Some((column, _)) = NAMES
                .iter()
                .find(|(_, known)| known.contains(&plain.as_str()))
            else {
                return Err(format!(
                    "There is no column “{name}”. The first row names the columns: id or point, x or easting, y or northing, or station and offset; target, surface, note or description, elevation."
                ));
            };
            if columns.insert(*column, (at, unit)).is_some() {
                return Err(format!("The column “{name}” stands twice. Remove one."));
            }
        }
        let has = |column| columns.contains_key(&column);
        if !has(Column::Id) {
            return Err("The table has no column `id` or `point`.".to_owned());
        }
        if !(has(Column::X) && has(Column::Y) || has(Column::Station)) {
            return Err(
                "The table needs x and y (or easting and northing), or station.".to_owned(),
            );
        }
        Ok(Self {
            columns,
            frame: None,
        })
    }

    fn cell<'r>(&self, record: &'r StringRecord, column: Column) -> Option<&'r str> {
        let (at, _) = self.columns.get(&column)?;
        record.get(*at).filter(|cell| !cell.is_empty())
    }

    /// A plain number in the column's unit, or a length that carries its own.
    fn length(&self, record: &StringRecord, column: Column) -> Result<Option<Length>, String> {
        let Some(cell) = self.cell(record, column) else {
            return Ok(None);
        };
        let text = self.with_unit(cell, column);
        let length = if column == Column::Station {
            station(&text).map_err(|why| why.english)
        } else {
            parse(&text).map_err(|error| error.to_string())
        };
        length.map(Some)
    }

    fn with_unit(&self, cell: &str, column: Column) -> String {
        let plain = cell
            .chars()
            .all(|c| c.is_ascii_digit() || matches!(c, '.' | '-' | '+' | '−'));
        match self.columns.get(&column) {
            Some((_, unit)) if plain => format!("{cell} {unit}"),
            _ => cell.to_owned(),
        }
    }

    /// The place of a row whose x and y are the plan's east and north.
    fn on_plan(&self, record: &StringRecord) -> Result<Option<Point>, String> {
        let cells = self
            .cell(record, Column::X)
            .zip(self.cell(record, Column::Y));
        let (Some(frame), Some((east, north))) = (&self.frame, cells) else {
            return Ok(None);
        };
        let place = PlanNumber::parse(east).and_then(|east| {
            let north = PlanNumber::parse(north)?;
            frame.to_site(PlanPoint { east, north })
        });
        place.map(Some).map_err(|error| error.to_string())
    }

    /// The mark of a row, or everything that is wrong with the row.
    fn mark(&self, record: &StringRecord, targets: &[Target]) -> Result<Mark, Vec<String>> {
        let Some(id) = self.cell(record, Column::Id).map(str::to_owned) else {
            return Err(vec!["This row has no name.".to_owned()]);
        };
        let mut wrong: Vec<String> = Vec::new();
        let about = |why: String| format!("{id}: {why}");
        let mut length = |column| {
            self.length(record, column).unwrap_or_else(|why| {
                wrong.push(about(why));
                None
            })
        };
        let (x, y) = match self.frame {
            Some(_) => (None, None),
            None => (length(Column::X), length(Column::Y)),
        };
        let (station, offset) = (length(Column::Station), length(Column::Offset));
        length(Column::Elevation);
        let (x, y) = match self.on_plan(record) {
            Ok(at) => at.map_or((x, y), |at| (Some(at.x), Some(at.y))),
            Err(why) => {
                wrong.push(about(why));
                (x, y)
            }
        };
        let surface = self
            .cell(record, Column::Surface)
            .map_or(Ok(Surface::Trimmed), word);
        let surface = surface.map_err(|why| wrong.push(about(why))).ok();
        let target = self.cell(record, Column::Target).map(str::to_owned);
        // A place is worked out of what could be read alone: a fault must not follow from another.
        if !wrong.is_empty() {
            return Err(wrong);
        }
        let place = match (x, y, station) {
            (Some(x), Some(y), _) => Point { x, y },
            (None, None, Some(station)) => {
                let offset = offset.unwrap_or(Length::ZERO);
                along(target.as_deref(), targets, station, offset)
                    .map_err(|why| vec![about(why.english)])?
            }
            _ => return Err(vec![about("give both x and y, or a station.".to_owned())]),
        };
        let note = self
            .cell(record, Column::Note)
            .unwrap_or_default()
            .to_owned();
        Ok(Mark {
            place,
            target,
            station,
            offset: station.and(offset),
            surface: surface.unwrap_or(Surface::Trimmed),
            note,
            id,
        })
    }
}
