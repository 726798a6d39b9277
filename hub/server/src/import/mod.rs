//! Files of others, read in bounded memory: point lists and surfaces as CSV, `LandXML` 1.2 points and surfaces.
//!
//! All of a file comes in, or nothing; whatever is not understood is named with its line. Of a list of points somebody who sees
//! which rows are wrong may take the others. Numbers stay as written until a site's frame brings them on to the site.
//!
//! | to learn | read |
//! |---|---|
//! | a table of points, with lines and an edge | `points_csv` |
//! | `LandXML` points and surfaces | `landxml` |
//! | from plan numbers to a surface of the site | `onto_site` |
//! | what a file would give, before it is used | `preview` |

mod landxml;
mod onto_site;
mod points_csv;
pub mod preview;

use earthwork::site_frame::{PlanNumber, PlanUnit};

pub use onto_site::{Frame, OntoSite, onto_site};

/// A larger file is refused before it is read (about a million triangles of `LandXML`).
pub const LARGEST_FILE: u64 = 256 * 1024 * 1024;
/// More points or triangles than this are refused.
pub const MOST_POINTS: usize = 3_000_000;
/// So many faults are named; the rest is counted.
const MOST_FAULTS: usize = 40;
/// So many letters of a fault are said.
const LONGEST_FAULT: usize = 400;

/// A fault or a remark with its line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Remark {
    /// The line, from 1.
    pub line: usize,
    /// What is wrong or odd, and what to do.
    pub message: String,
}

/// A point as a file gives it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SurveyPoint {
    /// Its name; may be empty in a surface.
    pub id: String,
    /// Its line in the file.
    pub line: usize,
    /// East, as written.
    pub east: PlanNumber,
    /// North, as written.
    pub north: PlanNumber,
    /// Elevation, as written; none for a place alone.
    pub elevation: Option<PlanNumber>,
    /// What the file says about it.
    pub note: String,
}

/// What a file gives. Lines are numbers of points, counted from 0.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Survey {
    /// The surface's name, when the file names one.
    pub name: Option<String>,
    /// The unit, when the file says it.
    pub unit: Option<PlanUnit>,
    /// Its points.
    pub points: Vec<SurveyPoint>,
    /// Its triangles; none when they are to be made from the points.
    pub triangles: Option<Vec<[usize; 3]>>,
    /// Lines that triangles do not cross.
    pub breaklines: Vec<Vec<usize>>,
    /// The outer edge.
    pub boundary: Option<Vec<usize>>,
    /// Where there is no surface.
    pub holes: Vec<Vec<usize>>,
    /// The names of its surfaces, when it has several and nobody said which.
    pub several: Vec<String>,
    /// What was left aside or is odd.
    pub remarks: Vec<Remark>,
}

/// What was found wrong, so many named and the rest counted.
#[derive(Debug, Default)]
struct Faults {
    named: Vec<Remark>,
    more: usize,
}

impl Faults {
    fn wrong(&mut self, line: usize, message: impl Into<String>) {
        if self.named.len() < MOST_FAULTS {
            // A name of a million letters is not repeated.
            let message: String = message.into();
            let message = message.replace(char::is_control, "\u{fffd}");
            let message = match message.char_indices().nth(LONGEST_FAULT) {
                Some((end, _)) => format!("{}…", &message[..end]),
                None => message,
            };
            self.named.push(Remark { line, message });
        } else {
            self.more += 1;
        }
    }

    fn or<T>(mut self, good: T) -> Result<T, Vec<Remark>> {
        if self.named.is_empty() {
            return Ok(good);
        }
        if self.more > 0 {
            let line = self.named.last().map_or(1, |last| last.line);
            self.named.push(Remark {
                line,
                message: format!("{} more lines have faults like these.", self.more),
            });
        }
        Err(self.named)
    }
}

/// Reads a file by its content: `LandXML` when it begins with a tag, else a table. `surface` picks one of several.
///
/// # Errors
/// Every fault that was found, with its line; then nothing of the file is used.
pub fn read(text: &str, surface: Option<&str>) -> Result<Survey, Vec<Remark>> {
    let text = text.trim_start_matches('\u{feff}');
    let survey = if text.trim_start().starts_with('<') {
        landxml::read(text, surface)?
    } else {
        points_csv::read(text)?
    };
    Ok(fewer_remarks(survey))
}

/// The same of a list of points without its wrong rows, each of which is named: for somebody who sees what is left out.
///
/// # Errors
/// Every fault that was found, when not even that can be done.
pub fn read_without_wrong_rows(
    text: &str,
    surface: Option<&str>,
) -> Result<(Survey, Vec<Remark>), Vec<Remark>> {
    let text = text.trim_start_matches('\u{feff}');
    if text.trim_start().starts_with('<') {
        return read(text, surface).map(|survey| (survey, Vec::new()));
    }
    let (survey, left_out) = points_csv::without_wrong_rows(text)?;
    Ok((fewer_remarks(survey), left_out))
}

fn fewer_remarks(mut survey: Survey) -> Survey {
    let more = survey.remarks.len().saturating_sub(MOST_FAULTS);
    if more > 0 {
        survey.remarks.truncate(MOST_FAULTS);
        let line = survey.remarks.last().map_or(1, |last| last.line);
        let message = format!("{more} more remarks like these.");
        survey.remarks.push(Remark { line, message });
    }
    survey
}

/// A plan's number; more decimals than seven are cut off, which is less than a tenth of a micrometre of a foot's hair.
fn number(text: &str) -> Result<PlanNumber, String> {
    let text = text.trim();
    let short = match text.split_once('.') {
        Some((_, decimals))
            if decimals.len() > 7 && decimals.bytes().all(|b| b.is_ascii_digit()) =>
        {
            &text[..text.len() - decimals.len() + 7]
        }
        _ => text,
    };
    let short = short.strip_prefix('+').unwrap_or(short);
    let whole = if short.starts_with('.') || short.starts_with("-.") {
        short.replacen('.', "0.", 1)
    } else {
        short.to_owned()
    };
    PlanNumber::parse(&whole).map_err(|error| error.to_string())
}

#[cfg(test)]
mod tests;
