//! Drafts of a phone's form, read as the site file is read: every fault comes back with the field that it is about.

use contract::ToSchema;
use day::said::change::SiteThing;
use day::site::Site;
use day::site_faults::SiteFault;
use earthwork::target::{KeptNet, Shape};
use indexmap::IndexMap;
use serde::{Deserialize, Serialize};
use words::Text;

use super::fields::Fields;
use super::form::FormOf;
use super::forms::called;
use super::notes::Notes;
use super::written::{self, Lines, Written};
use super::{Fault, cuts, marks, shapes, targets, things, write};

/// A thing as somebody has typed it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Draft {
    /// What it is.
    pub of: FormOf,
    /// What was typed, by the form's keys: texts, yes or no, lists and tables of them.
    #[schema(value_type = Object)]
    pub typed: Written,
}

/// What is wrong with a draft, and where.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct DraftFault {
    /// Which draft of those that were sent, from 0; none when it is about another thing of the site.
    pub draft: Option<usize>,
    /// The field, as `run.steps.1.elevation`; empty when it is about the whole thing.
    pub field: String,
    /// What is wrong and what to do.
    #[serde(flatten)]
    pub text: Text,
    /// Odd, but it can be used.
    pub warning: bool,
}

/// A site as a phone's form takes it: every thing under its key, triangles kept by their target's name.
pub fn written(site: &Site) -> IndexMap<String, Written> {
    write::site(site, &|id, _| vec![("kept", Written::Text(id.to_owned()))])
}

impl DraftFault {
    /// A fault of the whole site, at the draft and the field that it is about.
    pub fn of(fault: &SiteFault, drafts: &[Draft]) -> Self {
        let mut parts = fault.path.splitn(3, '.');
        let (list, id) = (
            parts.next().unwrap_or_default(),
            parts.next().unwrap_or_default(),
        );
        let own = drafts.iter().position(|draft| {
            let named = matches!(draft.typed.get("id"), Some(Written::Text(text)) if text == id);
            // Faults name lists as people do: utilities, and marks.
            let key = draft.of.key();
            let many = list.strip_suffix('s') == Some(key)
                || list.strip_suffix("ies") == key.strip_suffix('y') && list.ends_with("ies");
            many && named || list == key
        });
        Self {
            draft: own,
            field: parts
                .next()
                .filter(|_| own.is_some())
                .unwrap_or_default()
                .to_owned(),
            text: fault.text.clone(),
            warning: fault.warning,
        }
    }
}

/// What stands for all drafts while they are read.
const FILE: &str = "draft";

/// Reads drafts onto a site: targets first, so that marks may stand on them. `beside` gives the text of a file that was
/// sent before.
///
/// # Errors
/// Every fault that was found, with its field.
pub fn read(
    drafts: &[Draft],
    site: &Site,
    beside: &dyn Fn(&str) -> Result<String, String>,
) -> Result<Vec<SiteThing>, Vec<DraftFault>> {
    let mut top: IndexMap<String, Written> = IndexMap::new();
    let mut numbers: IndexMap<&str, Vec<usize>> = IndexMap::new();
    for (number, draft) in drafts.iter().enumerate() {
        let key = draft.of.key();
        numbers.entry(key).or_default().push(number);
        if draft.of.once() {
            top.insert(key.to_owned(), draft.typed.clone());
        } else if let Written::List(list) = top
            .entry(key.to_owned())
            .or_insert_with(|| Written::List(vec![]))
        {
            list.push(draft.typed.clone());
        }
    }
    let mut lines = Lines::default();
    let document = lines.document(&top);
    let mut notes = Notes::new(FILE, &"\n".repeat(lines.paths.len()));
    let found = things_of(&mut notes, &Fields::whole(&document), site, beside);
    let faults: Vec<DraftFault> = notes
        .into_faults()
        .into_iter()
        .map(|fault| placed(fault, &lines.paths, &numbers, drafts))
        .collect();
    if faults.is_empty() {
        Ok(found)
    } else {
        Err(faults)
    }
}

fn things_of(
    notes: &mut Notes,
    top: &Fields<'_, '_>,
    site: &Site,
    beside: &dyn Fn(&str) -> Result<String, String>,
) -> Vec<SiteThing> {
    let mut found: Vec<SiteThing> = Vec::new();
    let frame = top.table(notes, "frame");
    let frame = frame.and_then(|fields| things::frame(notes, &fields));
    let files = shapes::Files {
        beside,
        kept: &|id| net_of(site, id),
        frame: frame.as_ref().or(site.frame.as_ref()),
    };
    let new = top.each(notes, "target", "targets", |notes, fields| {
        targets::target(notes, fields, site.tolerance, &files)
    });
    let mut all = new.clone();
    let given = |id: &String| new.iter().any(|target| target.id == *id);
    all.extend(
        site.targets
            .iter()
            .filter(|target| !given(&target.id))
            .cloned(),
    );
    found.extend(
        new.iter()
            .cloned()
            .map(|one| SiteThing::Target(Box::new(one))),
    );
    let marks = top.each(notes, "mark", "marks", |notes, fields| {
        marks::mark(notes, fields, &all)
    });
    found.extend(marks.into_iter().map(SiteThing::Mark));
    let benchmarks = top.each(notes, "benchmark", "benchmarks", things::benchmark);
    found.extend(benchmarks.into_iter().map(SiteThing::Benchmark));
    found.extend(
        top.each(notes, "line", "lines", things::line)
            .into_iter()
            .map(SiteThing::Line),
    );
    let machines = top.each(notes, "machine", "machines", things::machine);
    found.extend(machines.into_iter().map(SiteThing::Machine));
    found.extend(
        top.each(notes, "rod", "rods", things::rod)
            .into_iter()
            .map(SiteThing::Rod),
    );
    let lasers = top.each(notes, "laser", "lasers", things::laser);
    found.extend(lasers.into_iter().map(SiteThing::Laser));
    let overheads = top.each(notes, "overhead", "overheads", cuts::overhead);
    found.extend(overheads.into_iter().map(SiteThing::Overhead));
    let piles = top.each(notes, "pile", "piles", cuts::pile);
    found.extend(piles.into_iter().map(SiteThing::Pile));
    let of_faces = shapes::Files {
        kept: &|id| ground_of(site, id),
        ..files
    };
    let faces = top.each(notes, "face", "faces", |notes, fields| {
        cuts::face(notes, fields, &of_faces)
    });
    found.extend(faces.into_iter().map(|one| SiteThing::Face(Box::new(one))));
    let structures = top.each(notes, "structure", "structures", cuts::structure);
    found.extend(structures.into_iter().map(SiteThing::Structure));
    let utilities = top.each(notes, "utility", "utilities", cuts::utility);
    found.extend(utilities.into_iter().map(SiteThing::Utility));
    let tickets = top.each(notes, "ticket", "tickets", cuts::ticket);
    found.extend(tickets.into_iter().map(SiteThing::Ticket));
    let rules = top.table(notes, "rules");
    let rules = rules.and_then(|fields| things::rules(notes, &fields));
    found.extend(rules.map(|rules| SiteThing::Rules(Box::new(rules))));
    found.extend(frame.map(SiteThing::Frame));
    found
}

/// The triangles that a target has.
fn net_of(site: &Site, target: &str) -> Option<KeptNet> {
    net(&site.target(target)?.grade.shape)
}

/// The triangles of the ground before a face's cut: a target may go by the same name.
fn ground_of(site: &Site, face: &str) -> Option<KeptNet> {
    let mut faces = site.cuts.faces.iter();
    net(&faces.find(|one| one.id == face)?.ground.shape)
}

fn net(shape: &Shape) -> Option<KeptNet> {
    match shape {
        Shape::Surface(net) | Shape::Strip { ground: net } => Some(net.clone()),
        _ => None,
    }
}

/// A fault with its draft and its field; one of a file belongs to the draft that names the file.
fn placed(
    fault: Fault,
    paths: &[String],
    numbers: &IndexMap<&str, Vec<usize>>,
    drafts: &[Draft],
) -> DraftFault {
    if fault.file != FILE {
        let draft = drafts
            .iter()
            .position(|draft| draft.typed.says(&fault.file));
        let (file, line) = (&fault.file, fault.line);
        return DraftFault {
            draft,
            field: "file".to_owned(),
            text: Text::in_each(|language| format!("{file} {line}: {}", fault.text.of(language))),
            warning: fault.warning,
        };
    }
    let path = paths
        .get(fault.line.saturating_sub(1))
        .map_or("", String::as_str);
    let (key, rest) = path.split_once('.').unwrap_or((path, ""));
    let own = numbers.get(key).map_or(&[][..], Vec::as_slice);
    let once = own.len() == 1 && drafts.get(own[0]).is_some_and(|draft| draft.of.once());
    let (draft, field) = if once {
        (Some(own[0]), rest)
    } else {
        let (number, field) = rest.split_once('.').unwrap_or((rest, ""));
        let number: usize = number.parse().unwrap_or_default();
        (own.get(number).copied(), field)
    };
    let Some(key) = &fault.missing else {
        return DraftFault {
            draft,
            field: field.to_owned(),
            text: fault.text,
            warning: fault.warning,
        };
    };
    // What is not there has no place of its own: it is said at the field where it belongs, by the field's name.
    let field = written::join(field, key);
    let name = draft
        .and_then(|number| drafts.get(number))
        .and_then(|draft| called(draft.of, &field));
    DraftFault {
        draft,
        field,
        text: name.map_or(fault.text, |name| words::site_file::not_there_yet(&name)),
        warning: fault.warning,
    }
}

#[cfg(test)]
mod tests;
