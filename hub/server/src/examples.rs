//! Worked examples from files: read, computed by `earthwork::worked`, and reported case by case.
//!
//! A malformed case is never a passed one: it is reported with its file and its id, and the others still run.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt;
use std::path::{Path, PathBuf};

use earthwork::worked::{Comparison, WorkedError, compare, compute};
use serde::Deserialize;
use thiserror::Error;
use toml::{Table, Value};

use crate::bounded;

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
        "{file} holds no cases. Write each as [[case]] with id, computation, inputs, expected, allowance and source."
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
    computation: String,
    inputs: BTreeMap<String, Value>,
    expected: BTreeMap<String, Value>,
    allowance: String,
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

    /// Whether its figures were read in a publication that is named: not invented, not derived here, not remembered.
    pub fn published(&self) -> bool {
        const OURS: [&str; 4] = ["Invented", "Derived", "Mathematics", "Common practice"];
        !OURS.iter().any(|word| self.source.starts_with(word))
            && !self.source.contains("from memory")
            && !self.source.contains("source withheld")
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
                "{mark}  {}  {}  ({})",
                ran.id, ran.computation, ran.source
            )?;
            for (name, compared) in ran.outputs.iter().filter(|(_, compared)| !compared.agrees) {
                writeln!(
                    f,
                    "        {name}: expected {}, got {}",
                    compared.expected, compared.got
                )?;
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
    if written.expected.is_empty() {
        return Err(CaseError::NothingExpected);
    }
    let computed = compute(&written.computation, &texts(&written.inputs)?)?;
    let mut outputs = Vec::new();
    for (name, expected) in texts(&written.expected)? {
        let got = computed.get(&name).ok_or_else(|| CaseError::NoOutput {
            output: name.clone(),
            known: computed.keys().cloned().collect::<Vec<_>>().join(", "),
        })?;
        let compared = compare(&expected, got, &written.allowance)?;
        outputs.push((name, compared));
    }
    Ok(Ran {
        id: written.id,
        computation: written.computation,
        source: written.source,
        outputs,
    })
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
mod tests {
    use std::fs;

    use super::*;

    const FIXTURES: &str = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/../../fixtures/worked-examples"
    );

    #[test]
    fn every_worked_example_comes_out() {
        let (mut cases, mut published) = (0, 0);
        let mut wrong = String::new();
        for entry in fs::read_dir(FIXTURES).unwrap() {
            let path = entry.unwrap().path();
            if path.extension().is_none_or(|extension| extension != "toml") {
                continue;
            }
            let report = run_file(&path).unwrap();
            cases += report.ran.len();
            published += report.ran.iter().filter(|ran| ran.published()).count();
            if !report.good() {
                wrong.push_str(&report.to_string());
            }
        }
        assert!(wrong.is_empty(), "{wrong}");
        assert!(cases >= 200, "only {cases} cases were found");
        assert!(
            published >= 80,
            "only {published} of {cases} cases name a publication"
        );
    }

    fn run_text(text: &str) -> Result<Report, ExamplesError> {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("mine.toml");
        fs::write(&path, text).unwrap();
        run_file(&path)
    }

    /// Mathematics: 1 ft is 304.8 mm.
    fn case(change: &str, with: &str) -> String {
        r#"[[case]]
id = "foot"
computation = "convert"
inputs = { length = "1 ft" }
expected = { length = "304.8 mm" }
allowance = "exact"
source = "NIST"
"#
        .replace(change, with)
    }

    #[test]
    fn a_case_that_comes_out_otherwise_fails_with_both_numbers() {
        assert!(run_text(&case("", "")).unwrap().good());
        let report = run_text(&case("304.8", "304.9")).unwrap();
        assert_eq!((report.passed(), report.failed()), (0, 1));
        assert!(!report.good());
        let text = report.to_string();
        assert!(
            text.contains("length: expected 304.9 mm, got 1 ft"),
            "{text}"
        );
        assert!(
            text.ends_with("0 passed, 1 failed, 0 could not be run"),
            "{text}"
        );
    }

    #[test]
    fn each_malformed_case_says_what_to_do_and_the_others_still_run() {
        for (change, with, says) in [
            ("source = \"NIST\"", "", "missing field `source`"),
            ("source = \"NIST\"", "source = \" \"", "“source” is empty"),
            ("id = \"foot\"", "", "missing field `id`"),
            ("\"convert\"", "\"covert\"", "no computation “covert”"),
            ("length = \"1 ft\"", "length = \"1\"", "has no unit"),
            ("length = \"1 ft\"", "", "needs the input “length”"),
            (
                "length = \"1 ft\"",
                "length = \"1 ft\", hue = 3",
                "does not take the input “hue”",
            ),
            (
                "length = \"1 ft\"",
                "length = [1]",
                "must be a text or a number",
            ),
            (
                "length = \"304.8 mm\"",
                "wide = \"1 m\"",
                "no output “wide”. It has: feet, length, metres, shown",
            ),
            ("length = \"304.8 mm\"", "", "nothing is expected"),
            ("\"exact\"", "\"about\"", "Allowance “about”"),
            (
                "id = \"foot\"",
                "id = \"foot\"\ncolour = 1",
                "unknown field `colour`",
            ),
        ] {
            let report =
                run_text(&(case("", "").replace("foot", "first") + &case(change, with))).unwrap();
            assert_eq!(report.passed(), 1, "{with}");
            assert_eq!(report.malformed.len(), 1, "{with}");
            assert!(!report.good());
            let why = report.to_string();
            assert!(why.contains(says), "{with}: {why}");
            assert!(why.contains("mine.toml, case "), "{why}");
        }
    }

    #[test]
    fn an_id_is_given_once() {
        let report = run_text(&(case("", "") + &case("", ""))).unwrap();
        assert_eq!(report.malformed[0].id, "foot");
        assert!(report.malformed[0].why.contains("another case has this id"));
    }

    #[test]
    fn a_file_that_holds_no_cases_is_an_error() {
        assert!(matches!(run_text(""), Err(ExamplesError::NoCases { .. })));
        assert!(matches!(
            run_text("case = []"),
            Err(ExamplesError::NoCases { .. })
        ));
        assert!(matches!(
            run_text("[[cases]]\nid = 1"),
            Err(ExamplesError::NotACase { .. })
        ));
        assert!(matches!(
            run_text("[[case"),
            Err(ExamplesError::NotToml { .. })
        ));
        let nowhere = Path::new(FIXTURES).join("nowhere.toml");
        assert!(matches!(
            run_file(&nowhere),
            Err(ExamplesError::Unreadable { .. })
        ));
    }
}
