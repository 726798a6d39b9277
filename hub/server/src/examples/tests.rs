//! Tests of the worked examples' reader, and the worked examples themselves.

use std::fs;

use super::*;

const FIXTURES: &str = concat!(
    env!("CARGO_MANIFEST_DIR"),
    "/../../fixtures/worked-examples"
);

/// Every file of ours, worked out.
fn ours() -> Vec<Report> {
    let files = fs::read_dir(FIXTURES).unwrap();
    let paths = files.map(|entry| entry.unwrap().path());
    let ours = paths.filter(|path| path.extension().is_some_and(|end| end == "toml"));
    ours.map(|path| run_file(&path).unwrap()).collect()
}

#[test]
fn every_worked_example_comes_out() {
    let mut counts = Counts::default();
    let mut wrong = String::new();
    for report in ours() {
        counts.add_all(report.counts());
        if !report.good() {
            wrong.push_str(&report.to_string());
        }
    }
    assert!(wrong.is_empty(), "{wrong}");
    assert!(counts.of(Kind::WorkedExample) >= 120, "{counts}");
}

/// What says of itself that it was not read, or was read where anybody uploads, is no publication.
#[test]
fn what_counts_as_published_names_a_publication() {
    const NO_PUBLICATION: [&str; 20] = [
        "withheld",
        "memory",
        "Invented",
        "invented",
        "Derived",
        "Mathematics:",
        "Common practice",
        "exercise",
        "quoted",
        "scribd",
        "studylib",
        "coursehero",
        "chegg",
        "tutor",
        "expertsmind",
        "example-a",
        "coursepaper",
        "issuhub",
        "dokumen",
        "answers to",
    ];
    for ran in ours().iter().flat_map(|report| &report.ran) {
        let said = NO_PUBLICATION
            .iter()
            .find(|word| ran.source.contains(**word));
        assert!(
            !ran.kind.published() || said.is_none(),
            "{} says {said:?}: {}",
            ran.id,
            ran.source
        );
    }
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
kind = "table"
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
        text.contains(
            "length: expected 304.9 mm, got 1.0000000 ft (0.3048000 m), off by −0.0003281 ft (−0.0001000 m)"
        ),
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
        (
            "kind = \"table\"",
            "",
            "its source has no kind. Write kind = one of “worked example”, “table”, “rule”, “common practice”, \
             “mathematics”, “from memory”",
        ),
        (
            "kind = \"table\"",
            "kind = \"NIST\"",
            "“NIST” is no kind of source. Write one of “worked example”",
        ),
        ("allowance = \"exact\"", "", "it has no allowance"),
        (
            "allowance = \"exact\"",
            "allowance = \"exact\"\nrefused = \"no\"",
            "expects outputs and a refusal",
        ),
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

/// A distance of nothing has no angle. A case that is misspelled, or that is answered, is not refused.
#[test]
fn a_refusal_that_is_expected_is_held_against_the_words() {
    let refused = |computation: &str, inputs: &str, words: &str| {
        run_text(&format!(
            "[[case]]\nid = \"far\"\nkind = \"mathematics\"\ncomputation = \"{computation}\"\ninputs = {{ {inputs} }}\n\
             refused = \"{words}\"\nsource = \"by hand\"\n"
        ))
        .unwrap()
    };
    let no_distance = "error = \"1 mm\", distance = \"0 ft\"";
    assert!(refused("laser_slant", no_distance, "above zero").good());
    assert!(
        refused(
            "laser_slant",
            "error = \"1\", distance = \"9 ft\"",
            "has no unit"
        )
        .good()
    );
    let other_words = refused("laser_slant", no_distance, "too far");
    assert_eq!(other_words.failed(), 1);
    let said = other_words.to_string();
    assert!(
        said.contains("refused: expected too far, got The computation refuses this: The distance"),
        "{said}"
    );
    let answered = refused(
        "laser_slant",
        "error = \"1 mm\", distance = \"9 ft\"",
        "above zero",
    );
    assert_eq!(answered.failed(), 1);
    let said = answered.to_string();
    assert!(said.contains("got an answer (arc_seconds, off)"), "{said}");
    for (computation, inputs, words, says) in [
        (
            "laser_slant",
            "error = \"1 mm\"",
            "needs",
            "needs the input “distance”",
        ),
        (
            "lazer_slant",
            no_distance,
            "no computation",
            "no computation “lazer_slant”",
        ),
        ("laser_slant", no_distance, " ", "“refused” is empty"),
        (
            "laser_slant",
            "error = \"1 mm\", distance = \"9 ft\", hue = 3",
            "hue",
            "does not take the input “hue”",
        ),
    ] {
        let report = refused(computation, inputs, words);
        assert_eq!(report.malformed.len(), 1, "{says}");
        assert!(report.to_string().contains(says), "{report}");
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
