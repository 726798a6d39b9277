//! Worked examples from files: read, computed by `earthwork::worked`, and reported case by case.
//!
//! A malformed case is never a passed one: it is reported with its file and its id, and the others still run.

mod kind;

use std::collections::{BTreeMap, BTreeSet};
use std::fmt;
use std::path::{Path, PathBuf};

use earthwork::worked::{Comparison, WorkedError, compare, compute};
use serde::Deserialize;
use thiserror::Error;
use toml::{Table, Value};

use crate::bounded;
pub use kind::{Counts, Kind};

/// Why a file can't be run at all.
#[derive(Debug, Error)]
pub enum ExamplesError {
    /// It can't be read.
    #[error("{file} can't be read ({reason}). Check the path and who may read it.")]
    Unreadable {
        /// The file.
        file: String,
        /// What the system says.
        reason: std::io::Error,
    },
    /// It is not TOML.
    #[error("{file} is not TOML: {reason}")]
    NotToml {
        /// The file.
        file: String,
        /// Where and why.
        reason: toml::de::Error,
    },
    /// It holds no cases.
    #[error(
        "{file} holds no cases. Write each as [[case]] with id, kind, computation, inputs, expected, allowance and source."
    )]
    NoCases {
        /// The file.
        file: String,
    },
    /// It holds something else beside cases.
    #[error(
        "{file}: “{key}” is not known here. A file holds [[case]] entries only; check the spelling."
    )]
    NotACase {
        /// The file.
        file: String,
        /// What it holds.
        key: String,
    },
}

/// A case as it is written.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Written {
    id: String,
    /// Read as a text, so that a missing or misspelled one is told what to write.
    kind: Option<String>,
    computation: String,
    inputs: BTreeMap<String, Value>,
    #[serde(default)]
    expected: BTreeMap<String, Value>,
    allowance: Option<String>,
    /// A part of the words that the computation must refuse with, instead of outputs.
    refused: Option<String>,
    source: String,
}

/// What is wrong with a case.
#[derive(Debug, Error)]
enum CaseError {
    #[error("{0}")]
    Shape(String),
    #[error("another case has this id. Give each its own.")]
    IdTaken,
    #[error("“{0}” is empty. Fill it in.")]
    Empty(&'static str),
    #[error("“{name}” must be a text or a number, such as \"5.42 ft\".")]
    NotText { name: String },
    #[error(
        "its source has no kind. Write kind = one of {}; “worked example” only where inputs and answer are printed.",
        Kind::choices()
    )]
    NoKind,
    #[error("“{kind}” is no kind of source. Write one of {}.", Kind::choices())]
    UnknownKind { kind: String },
    #[error(
        "it has no allowance. Write allowance = \"exact\", \"as printed\", a length or a number."
    )]
    NoAllowance,
    #[error("it expects outputs and a refusal. Give expected with an allowance, or refused alone.")]
    Both,
    #[error(
        "nothing is expected. Give at least one output, such as expected = {{ hi = \"111.00 ft\" }}."
    )]
    NothingExpected,
    #[error("the computation has no output “{output}”. It has: {known}.")]
    NoOutput { output: String, known: String },
    #[error(transparent)]
    Worked(#[from] WorkedError),
}

/// A case that was computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Ran {
    /// Its id.
    pub id: String,
    /// The kind of its source.
    pub kind: Kind,
    /// What was computed.
    pub computation: String,
    /// Where its figures come from.
    pub source: String,
    /// Each expected output beside what came out, by name.
    pub outputs: Vec<(String, Comparison)>,
}

impl Ran {
    /// Whether every output is within the allowance.
    pub fn passed(&self) -> bool {
        self.outputs.iter().all(|(_, compared)| compared.agrees)
    }
}

/// A case that could not be computed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Malformed {
    /// Its id, or its place in the file when it has none.
    pub id: String,
    /// What is wrong and what to do.
    pub why: String,
}

/// What came of one file.
#[derive(Clone, Debug, PartialEq)]
pub struct Report {
    /// The file.
    pub file: PathBuf,
    /// The cases that were computed, in order.
    pub ran: Vec<Ran>,
    /// The cases that could not be.
    pub malformed: Vec<Malformed>,
}

impl Report {
    /// How many cases passed.
    pub fn passed(&self) -> usize {
        self.ran.iter().filter(|ran| ran.passed()).count()
    }

    /// How many came out otherwise than expected.
    pub fn failed(&self) -> usize {
        self.ran.len() - self.passed()
    }

    /// How many cases of each kind were computed.
    pub fn counts(&self) -> Counts {
        let mut counts = Counts::default();
        for ran in &self.ran {
            counts.add(ran.kind);
        }
        counts
    }

    /// Whether every case was computed and passed.
    pub fn good(&self) -> bool {
        self.malformed.is_empty() && self.failed() == 0
    }
}

/// A line for each case, with expected and got where it failed, and a line of counts.
impl fmt::Display for Report {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for ran in &self.ran {
            let mark = if ran.passed() { "passed" } else { "FAILED" };
            writeln!(
                f,
                "{mark}  {}  {}  ({}: {})",
                ran.id,
                ran.computation,
                ran.kind.name(),
                ran.source
            )?;
            for (name, compared) in ran.outputs.iter().filter(|(_, compared)| !compared.agrees) {
                let (expected, got) = (&compared.expected, &compared.got);
                write!(f, "        {name}: expected {expected}, got {got}")?;
                match &compared.off {
                    Some(off) => writeln!(f, ", off by {off}")?,
                    None => writeln!(f)?,
                }
            }
        }
        let file = self.file.display();
        for case in &self.malformed {
            writeln!(f, "ERROR   {file}, case {}: {}", case.id, case.why)?;
        }
        write!(
            f,
            "{file}: {} passed, {} failed, {} could not be run",
            self.passed(),
            self.failed(),
            self.malformed.len()
        )
    }
}

/// Runs every case of a file.
///
/// # Errors
/// When the file can't be read, is not TOML, or holds no cases. A malformed case is part of the report.
pub fn run_file(path: &Path) -> Result<Report, ExamplesError> {
    let file = path.display().to_string();
    let text = bounded::text(path, bounded::FILE).map_err(|reason| ExamplesError::Unreadable {
        file: file.clone(),
        reason,
    })?;
    let table: Table = toml::from_str(&text).map_err(|reason| ExamplesError::NotToml {
        file: file.clone(),
        reason,
    })?;
    if let Some(key) = table.keys().find(|key| key.as_str() != "case") {
        return Err(ExamplesError::NotACase {
            file,
            key: key.clone(),
        });
    }
    let Some(Value::Array(cases)) = table.get("case").filter(|cases| has_entries(cases)) else {
        return Err(ExamplesError::NoCases { file });
    };
    let mut report = Report {
        file: path.to_owned(),
        ran: Vec::new(),
        malformed: Vec::new(),
    };
    let mut taken = BTreeSet::new();
    for (number, case) in (1..).zip(cases) {
        match run_case(case, &mut taken) {
            Ok(ran) => report.ran.push(ran),
            Err(error) => report.malformed.push(Malformed {
                id: named(case, number),
                why: error.to_string(),
            }),
        }
    }
    Ok(report)
}

fn has_entries(cases: &Value) -> bool {
    cases.as_array().is_some_and(|cases| !cases.is_empty())
}

/// The id of a case, or its place in the file.
fn named(case: &Value, number: usize) -> String {
    case.get("id")
        .and_then(Value::as_str)
        .map_or_else(|| format!("number {number}"), str::to_owned)
}

fn run_case(case: &Value, taken: &mut BTreeSet<String>) -> Result<Ran, CaseError> {
    let written: Written = case
        .clone()
        .try_into()
        .map_err(|error: toml::de::Error| CaseError::Shape(error.message().to_owned()))?;
    for (name, text) in [("id", &written.id), ("source", &written.source)] {
        if text.trim().is_empty() {
            return Err(CaseError::Empty(name));
        }
    }
    if !taken.insert(written.id.clone()) {
        return Err(CaseError::IdTaken);
    }
    let kind = written.kind.as_deref().ok_or(CaseError::NoKind)?;
    let kind = Kind::named(kind).ok_or_else(|| CaseError::UnknownKind {
        kind: kind.to_owned(),
    })?;
    let outputs = match &written.refused {
        Some(words) => refusal(&written, words)?,
        None => answers(&written)?,
    };
    Ok(Ran {
        id: written.id,
        kind,
        computation: written.computation,
        source: written.source,
        outputs,
    })
}

type Outputs = Result<Vec<(String, Comparison)>, CaseError>;

/// Each expected output beside what came out.
fn answers(written: &Written) -> Outputs {
    if written.expected.is_empty() {
        return Err(CaseError::NothingExpected);
    }
    let allowance = written.allowance.as_deref();
    let allowance = allowance.ok_or(CaseError::NoAllowance)?;
    let computed = compute(&written.computation, &texts(&written.inputs)?)?;
    let mut outputs = Vec::new();
    for (name, expected) in texts(&written.expected)? {
        let got = computed.get(&name).ok_or_else(|| CaseError::NoOutput {
            output: name.clone(),
            known: computed.keys().cloned().collect::<Vec<_>>().join(", "),
        })?;
        let compared = compare(&expected, got, allowance)?;
        outputs.push((name, compared));
    }
    Ok(outputs)
}

/// The words of a refusal beside those that are expected. A misspelled case is no refusal: its error stays an error.
fn refusal(written: &Written, words: &str) -> Outputs {
    if !written.expected.is_empty() || written.allowance.is_some() {
        return Err(CaseError::Both);
    }
    if words.trim().is_empty() {
        return Err(CaseError::Empty("refused"));
    }
    let got = match compute(&written.computation, &texts(&written.inputs)?) {
        Ok(outputs) => {
            let names: Vec<_> = outputs.into_keys().collect();
            format!("an answer ({})", names.join(", "))
        }
        Err(refused @ (WorkedError::Refused { .. } | WorkedError::BadInput { .. })) => {
            refused.to_string()
        }
        Err(error) => return Err(error.into()),
    };
    let compared = Comparison {
        agrees: got.contains(words),
        expected: words.to_owned(),
        got,
        off: None,
    };
    Ok(vec![("refused".to_owned(), compared)])
}

/// Texts as they are, numbers as they are written.
fn texts(values: &BTreeMap<String, Value>) -> Result<BTreeMap<String, String>, CaseError> {
    values
        .iter()
        .map(|(name, value)| {
            let text = match value {
                Value::String(text) => text.clone(),
                Value::Integer(number) => number.to_string(),
                Value::Float(number) => number.to_string(),
                _ => return Err(CaseError::NotText { name: name.clone() }),
            };
            Ok((name.clone(), text))
        })
        .collect()
}

#[cfg(test)]
mod tests;
