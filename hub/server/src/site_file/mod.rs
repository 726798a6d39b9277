//! The site file: TOML that people write, read into the day's [`Site`] with every fault named by its line.
//!
//! | to learn | read |
//! |---|---|
//! | how a value is taken out of the file, and how a fault gets its line | `fields`, `notes` |
//! | benchmarks, lines, machines, rods, lasers, rules | `things` |
//! | prices, factors, asked values | `prices` |
//! | targets with their stack; their shapes | `targets`, `shapes` |
//! | marks in the file, and from a table | `marks`, `marks_csv` |
//! | faces, buried lines, tickets, whose rules hold | `cuts` |
//! | a site back into what is written, as TOML too | `write`, `write_target`, `values`, `written` |
//! | the form that a phone shows for each thing, and reading its draft | `form`, `draft` |

mod cuts;
mod draft;
mod fields;
mod form;
mod form_cuts;
mod form_target;
mod form_things;
mod forms;
mod marks;
mod marks_csv;
mod notes;
mod prices;
mod shapes;
mod targets;
mod things;
mod values;
mod write;
mod write_cuts;
mod write_prices;
mod write_target;
mod written;

use std::path::{Path, PathBuf};

use day::site::{Rules, Site};
use thiserror::Error;
use toml::de::DeTable;

use crate::{bounded, import};
pub use draft::{Draft, DraftFault, read as read_draft, written};
use fields::Fields;
pub use form::Form;
pub use forms::form;
use notes::Notes;
pub use values::exact;
use words::Text;
pub use write_cuts::RULES_FILE;
pub use written::Written;

/// The version of the format that this hub reads.
const VERSION: &str = "1";

/// One fault of a site file, or one oddity that the crew may mean.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// The file, as it was named.
    pub file: String,
    /// The line, from 1.
    pub line: usize,
    /// What is wrong and what to do.
    pub text: Text,
    /// Odd, but the site can be used.
    pub warning: bool,
    /// The key that should stand in the table there, when it is what is wrong that it does not.
    pub missing: Option<String>,
}

impl std::fmt::Display for Fault {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let odd = if self.warning { "odd: " } else { "" };
        write!(f, "{}:{}: {odd}{}", self.file, self.line, self.text.english)
    }
}

/// Why a site file can't be used.
#[derive(Debug, Error)]
pub enum SiteFileError {
    /// It can't be read at all.
    #[error("The site file {} can't be read ({source}). Give the path of a site file with --site.", path.display())]
    Unreadable {
        /// Which file.
        path: PathBuf,
        /// Why.
        source: std::io::Error,
    },
    /// It says something that can't be.
    #[error("{}", in_lines(faults))]
    Faulty {
        /// Every fault, in the order of the lines.
        faults: Vec<Fault>,
    },
}

fn in_lines(faults: &[Fault]) -> String {
    let lines: Vec<String> = faults.iter().map(ToString::to_string).collect();
    lines.join("\n")
}

/// A site that can be used, and what is odd about it.
#[derive(Clone, Debug, PartialEq)]
pub struct SiteRead {
    /// The site.
    pub site: Site,
    /// Oddities, each with its line.
    pub odd: Vec<Fault>,
}

/// Reads a site file and the table of marks that it names.
///
/// # Errors
/// [`SiteFileError`], with every fault that was found.
pub fn read(path: &Path) -> Result<SiteRead, SiteFileError> {
    let text = bounded::text(path, bounded::FILE).map_err(|source| SiteFileError::Unreadable {
        path: path.to_owned(),
        source,
    })?;
    let folder = path.parent().map(Path::to_owned).unwrap_or_default();
    read_text(&path.display().to_string(), &text, &|name| {
        bounded::text(&folder.join(name), import::LARGEST_FILE).map_err(|error| error.to_string())
    })
}

/// Reads a site from text; `beside` gives the text of a file that it names.
///
/// # Errors
/// [`SiteFileError::Faulty`], with every fault that was found.
pub fn read_text(
    file: &str,
    text: &str,
    beside: &dyn Fn(&str) -> Result<String, String>,
) -> Result<SiteRead, SiteFileError> {
    let mut notes = Notes::new(file, text);
    let (document, errors) = DeTable::parse_recoverable(text);
    for error in &errors {
        let at = error.span().map_or(0, |span| span.start);
        let what = error.message();
        notes.wrong_at(
            at,
            format!(
                "This is not TOML: {what}. Look for a missing quote, bracket or comma on this line."
            ),
        );
    }
    // A document with broken syntax is read no further: what is missing from it may stand in the broken part.
    let site = if errors.is_empty() {
        let top = Fields::whole(&document);
        site(&mut notes, &top, beside)
    } else {
        None
    };
    // What could not be read comes first: that something is not on the site may only follow from it.
    let read = notes.count();
    if let Some(site) = &site {
        for fault in day::site_faults::faults(site) {
            notes.about(&fault.path, fault.text, fault.warning);
        }
    }
    let mut faults = notes.into_faults();
    let place = |fault: &Fault| (fault.file != file, fault.file.clone(), fault.line);
    let (unread, follows) = faults.split_at_mut(read);
    unread.sort_by_key(place);
    follows.sort_by_key(place);
    match site {
        Some(site) if faults.iter().all(|fault| fault.warning) => {
            Ok(SiteRead { site, odd: faults })
        }
        _ => Err(SiteFileError::Faulty { faults }),
    }
}

fn site(
    notes: &mut Notes,
    top: &Fields<'_, '_>,
    beside: &dyn Fn(&str) -> Result<String, String>,
) -> Option<Site> {
    match top.plain(notes, "version") {
        Some(version) if version == VERSION => {}
        Some(version) => notes.wrong_at(
            top.at("version"),
            format!("This hub reads version {VERSION} of the site file, not {version}. Use a newer hub or write version = {VERSION}."),
        ),
        None => {}
    }
    let name = top.text(notes, "name");
    let tolerance = top.table(notes, "tolerance");
    let tolerance = tolerance.and_then(|fields| targets::tolerance(notes, &fields));
    let benchmarks = top.each(notes, "benchmark", "benchmarks", things::benchmark);
    let lines = top.each(notes, "line", "lines", things::line);
    let frame = match top.table(notes, "frame") {
        Some(fields) => things::frame(notes, &fields).map(Some),
        None => Some(None),
    };
    let files = shapes::Files {
        beside,
        kept: &|_| None,
        frame: frame.as_ref().and_then(Option::as_ref),
    };
    let targets = top.each(notes, "target", "targets", |notes, fields| {
        targets::target(notes, fields, tolerance, &files)
    });
    let mut marks = top.each(notes, "mark", "marks", |notes, fields| {
        marks::mark(notes, fields, &targets)
    });
    if let Some(table) = top.table(notes, "marks_csv") {
        marks.extend(marks_csv::marks(
            notes,
            &table,
            &targets,
            frame.as_ref().and_then(Option::as_ref),
            beside,
        ));
    }
    let machines = top.each(notes, "machine", "machines", things::machine);
    let rods = top.each(notes, "rod", "rods", things::rod);
    let lasers = top.each(notes, "laser", "lasers", things::laser);
    let rules = top.table(notes, "rules").map_or_else(
        || Some(Rules::default()),
        |fields| things::rules(notes, &fields),
    );
    let cuts = cuts::cuts(notes, top, &files);
    let prices = prices::prices(notes, top, &machines, &targets);
    top.done(notes);
    Some(Site {
        name: name?,
        benchmarks,
        lines,
        targets,
        marks,
        machines,
        rods,
        lasers,
        tolerance,
        rules: rules?,
        frame: frame?,
        cuts: cuts?,
        prices,
    })
}

/// A site as the text of a site file. Its surfaces stand in `surfaces`, each under its target's name.
pub fn text_of(of: &Site, surfaces: &str) -> String {
    let nets = |id: &str, net: &earthwork::target::KeptNet| {
        let text = |text: &str| Written::Text(text.to_owned());
        vec![
            ("file", text(surfaces)),
            ("name", text(id)),
            ("source", text(&net.drawn().source)),
        ]
    };
    let apart = if of.cuts.rules.is_some() {
        format!(
            "# {RULES_FILE} is not written with this: put your own file of rules beside it under that name.\n"
        )
    } else {
        String::new()
    };
    format!(
        "{apart}version = {VERSION}\n{}",
        written::toml(&write::site(of, &nets))
    )
}

#[cfg(test)]
mod tests;
