//! A table of points: the customary point, northing, easting, elevation, description; or named columns in any order.

use std::collections::{BTreeMap, BTreeSet};

use csv::StringRecord;
use earthwork::site_frame::PlanUnit;

use super::{Faults, MOST_POINTS, Remark, Survey, SurveyPoint, number};

/// What a column can be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Column {
    Id,
    East,
    North,
    Elevation,
    Line,
    Note,
}

/// The names that people and the trade's point lists give the columns.
const NAMES: [(Column, &[&str]); 6] = [
    (
        Column::Id,
        &[
            "id",
            "mark",
            "name",
            "point",
            "p",
            "no",
            "pt",
            "pointno",
            "ptno",
            "pointnumber",
            "pointid",
            "pointname",
            "punto",
        ],
    ),
    (Column::East, &["x", "easting", "east", "e", "este"]),
    (Column::North, &["y", "northing", "north", "n", "norte"]),
    (
        Column::Elevation,
        &["elevation", "elev", "z", "height", "cota"],
    ),
    (Column::Line, &["line", "string", "breakline", "línea"]),
    (
        Column::Note,
        &[
            "note",
            "description",
            "desc",
            "d",
            "code",
            "nota",
            "descripción",
        ],
    ),
];

/// What parts the cells of a row: whichever stands most often in the first one.
const PARTINGS: [(u8, &str); 4] = [
    (b',', "commas"),
    (b';', "semicolons"),
    (b'\t', "tabs"),
    (b'|', "bars"),
];

/// How a column's name may say its unit.
const UNITS: [(&str, PlanUnit); 8] = [
    ("ft", PlanUnit::Foot),
    ("feet", PlanUnit::Foot),
    ("foot", PlanUnit::Foot),
    ("sft", PlanUnit::SurveyFoot),
    ("usft", PlanUnit::SurveyFoot),
    ("m", PlanUnit::Metre),
    ("metres", PlanUnit::Metre),
    ("meters", PlanUnit::Metre),
];

/// Where each column stands when the table has no header: the customary order.
const CUSTOMARY: [Column; 5] = [
    Column::Id,
    Column::North,
    Column::East,
    Column::Elevation,
    Column::Note,
];

struct Header {
    columns: BTreeMap<Column, usize>,
    unit: Option<PlanUnit>,
}

/// All of a table.
///
/// # Errors
/// Every fault that was found, with its line.
pub(super) fn read(text: &str) -> Result<Survey, Vec<Remark>> {
    let (survey, rows, faults) = rows(text);
    let whole = faults.or(survey)?;
    rows.faults.or(whole)
}

/// A list of points without the rows that are wrong, each of which is named. Of two rows that give one name other numbers both
/// are left out: which of them is right nobody knows. A table that draws a surface is not taken without one of its rows.
///
/// # Errors
/// Every fault that was found, when the table can't be read at all, or draws a surface.
pub(super) fn without_wrong_rows(text: &str) -> Result<(Survey, Vec<Remark>), Vec<Remark>> {
    let (mut survey, rows, faults) = rows(text);
    survey = faults.or(survey)?;
    if !survey.breaklines.is_empty() || survey.boundary.is_some() || !survey.holes.is_empty() {
        return Ok((rows.faults.or(survey)?, Vec::new()));
    }
    survey
        .points
        .retain(|point| !rows.twice.contains(&point.id));
    match rows.faults.or(()) {
        Ok(()) => Ok((survey, Vec::new())),
        Err(wrong) if survey.points.is_empty() => Err(wrong),
        Err(wrong) => Ok((survey, wrong)),
    }
}

/// What is wrong with single rows.
#[derive(Default)]
struct WrongRows {
    faults: Faults,
    /// Names that two rows give other numbers.
    twice: BTreeSet<String>,
}

fn rows(text: &str) -> (Survey, WrongRows, Faults) {
    let (parting, parted) = parting(text);
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(parting)
        .has_headers(false)
        .flexible(true)
        .trim(csv::Trim::All)
        .comment(Some(b'#'))
        .from_reader(text.as_bytes());
    let mut faults = Faults::default();
    let mut wrong = WrongRows::default();
    let mut survey = Survey::default();
    if parting != b',' {
        survey.remarks.push(Remark {
            line: 1,
            message: format!("Read as parted by {parted}."),
        });
    }
    let mut header: Option<Header> = None;
    let mut lines: BTreeMap<String, Vec<usize>> = BTreeMap::new();
    let mut ids: BTreeMap<String, usize> = BTreeMap::new();
    for record in reader.records() {
        let record = match record {
            Ok(record) => record,
            Err(error) => {
                let line = error.position().map_or(1, line_of);
                let why = format!("This row can't be read: {error}.");
                wrong.faults.wrong(line, why);
                continue;
            }
        };
        let line = record.position().map_or(1, line_of);
        let Some(known) = &header else {
            match Header::of(&record, line, &mut survey.remarks) {
                Ok((found, is_header)) => {
                    survey.unit = found.unit;
                    let known = header.insert(found);
                    if !is_header {
                        row(
                            known,
                            &record,
                            line,
                            &mut survey,
                            &mut ids,
                            &mut lines,
                            &mut wrong,
                        );
                    }
                }
                Err(why) => {
                    faults.wrong(line, why);
                    break;
                }
            }
            continue;
        };
        if survey.points.len() == MOST_POINTS {
            faults.wrong(
                line,
                "The table has more than 3,000,000 points. Give a thinned one.",
            );
            break;
        }
        row(
            known,
            &record,
            line,
            &mut survey,
            &mut ids,
            &mut lines,
            &mut wrong,
        );
    }
    if header.is_none() {
        faults.wrong(1, "The table is empty. Give one point a row.");
    }
    for (name, points) in lines {
        let kind = name.to_lowercase();
        match kind.as_str() {
            "boundary" | "edge" => survey.boundary = Some(points),
            _ if kind.starts_with("hole") => survey.holes.push(points),
            _ => survey.breaklines.push(points),
        }
    }
    (survey, wrong, faults)
}

/// What parts the cells, by the first row that says something.
fn parting(text: &str) -> (u8, &'static str) {
    let says = |line: &&str| !line.trim().is_empty() && !line.starts_with('#');
    let first = text.lines().find(says).unwrap_or_default();
    let count = |parting: u8| first.bytes().filter(|byte| *byte == parting).count();
    let [commas, others @ ..] = PARTINGS;
    others.into_iter().fold(commas, |best, other| {
        if count(other.0) > count(best.0) {
            other
        } else {
            best
        }
    })
}

/// A column's name without its unit and its signs, and the unit.
fn plain(name: &str) -> (String, Option<PlanUnit>) {
    let name = name.to_lowercase();
    let mut words: Vec<&str> = name
        .split(|letter: char| !letter.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .collect();
    let named = |word: &&str| UNITS.iter().find(|(known, _)| known == word);
    let unit = match words.as_slice() {
        [_, .., last] => named(last).map(|(_, unit)| *unit),
        _ => None,
    };
    if unit.is_some() {
        words.pop();
    }
    (words.concat(), unit)
}

fn line_of(position: &csv::Position) -> usize {
    usize::try_from(position.line()).unwrap_or(usize::MAX)
}

fn row(
    header: &Header,
    record: &StringRecord,
    line: usize,
    survey: &mut Survey,
    ids: &mut BTreeMap<String, usize>,
    lines: &mut BTreeMap<String, Vec<usize>>,
    wrong: &mut WrongRows,
) {
    let point = match header.point(record, line) {
        Ok(point) => point,
        Err(why) => return wrong.faults.wrong(line, why),
    };
    let mut number = survey.points.len();
    if let Some(&before) = ids.get(&point.id).filter(|_| !point.id.is_empty()) {
        let first = &survey.points[before];
        let same = first.east == point.east
            && first.north == point.north
            && first.elevation == point.elevation;
        if !same {
            wrong.twice.insert(point.id.clone());
            return wrong.faults.wrong(
                line,
                format!(
                    "“{}” already stands in line {} with other numbers. Remove or rename one.",
                    point.id, first.line
                ),
            );
        }
        number = before;
        survey.remarks.push(Remark {
            line,
            message: format!("“{}” stands twice with the same numbers.", point.id),
        });
    } else {
        if !point.id.is_empty() {
            ids.insert(point.id.clone(), number);
        }
        survey.points.push(point);
    }
    if let Some(name) = header.cell(record, Column::Line) {
        lines.entry(name.to_owned()).or_default().push(number);
    }
}

impl Header {
    /// The header of a table from its first row, and whether that row is one.
    fn of(
        first: &StringRecord,
        line: usize,
        remarks: &mut Vec<Remark>,
    ) -> Result<(Header, bool), String> {
        if first.len() == 1 && first.iter().any(|cell| cell.split_whitespace().count() > 2) {
            return Err("The row is parted by blanks, which may stand inside a description too. Save it with commas, semicolons or tabs between the columns.".to_owned());
        }
        let numbers = first.iter().filter(|cell| number(cell).is_ok()).count();
        if numbers >= 2 {
            if first.len() < 3 {
                return Err("Without a header, a row is point, northing, easting, elevation, description. Add a header that names the columns.".to_owned());
            }
            remarks.push(Remark {
                line,
                message:
                    "There is no header: read as point, northing, easting, elevation, description."
                        .to_owned(),
            });
            let columns = CUSTOMARY.into_iter().zip(0..).collect();
            return Ok((
                Header {
                    columns,
                    unit: None,
                },
                false,
            ));
        }
        let mut columns = BTreeMap::new();
        let mut units: Vec<PlanUnit> = Vec::new();
        for (at, name) in first.iter().enumerate() {
            let (plain, unit) = plain(name);
            let Some((column, _)) = NAMES
                .iter()
                .find(|(_, known)| known.contains(&plain.as_str()))
            else {
                if name.is_empty() {
                    continue;
                }
                remarks.push(Remark {
                    line,
                    message: format!("The column “{name}” is not known and not used."),
                });
                continue;
            };
            units.extend(unit);
            if columns.insert(*column, at).is_some() {
                return Err(format!("The column “{name}” stands twice. Remove one."));
            }
        }
        if !(columns.contains_key(&Column::East) && columns.contains_key(&Column::North)) {
            return Err("The first row must name the columns: id or point, x or easting, y or northing, elevation; line and description if there are any.".to_owned());
        }
        units.dedup();
        let unit = match units.as_slice() {
            [] => None,
            [unit] => Some(*unit),
            _ => {
                return Err(
                    "Columns in different units stand side by side. Give all in one unit."
                        .to_owned(),
                );
            }
        };
        Ok((Header { columns, unit }, true))
    }

    fn cell<'r>(&self, record: &'r StringRecord, column: Column) -> Option<&'r str> {
        let at = self.columns.get(&column)?;
        record.get(*at).filter(|cell| !cell.is_empty())
    }

    fn point(&self, record: &StringRecord, line: usize) -> Result<SurveyPoint, String> {
        let id = self.cell(record, Column::Id).unwrap_or_default();
        let needed = |column, name: &str| {
            let cell = self
                .cell(record, column)
                .ok_or_else(|| format!("{id}: the {name} is missing."))?;
            number(cell).map_err(|why| format!("{id}: {name}: {why}"))
        };
        let elevation = match self.cell(record, Column::Elevation) {
            Some(cell) => Some(number(cell).map_err(|why| format!("{id}: elevation: {why}"))?),
            None => None,
        };
        Ok(SurveyPoint {
            id: id.to_owned(),
            line,
            east: needed(Column::East, "easting")?,
            north: needed(Column::North, "northing")?,
            elevation,
            note: self
                .cell(record, Column::Note)
                .unwrap_or_default()
                .to_owned(),
        })
    }
}
