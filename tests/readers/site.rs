//! Site files and tables of marks: arbitrary, damaged, huge, hostile.

use std::fs;
use std::path::Path;

use proptest::prelude::*;
use rodcall::site_file::{SiteFileError, SiteRead, read, read_text};

use crate::damage::{damaged, damages};

const SITES: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../fixtures/site");

fn example(name: &str) -> String {
    fs::read_to_string(Path::new(SITES).join(name)).expect("the example")
}

/// Reads a site and its table; a refusal has sentences, each of which names a line that there is.
fn tried(site: &str, table: &str) -> Result<SiteRead, String> {
    let beside = |name: &str| match name {
        "every-kind-finish.xml" | "every-kind-ground.csv" => Ok(example(name)),
        _ => Ok(table.to_owned()),
    };
    match read_text("site.toml", site, &beside) {
        Ok(read) => Ok(read),
        Err(SiteFileError::Faulty { faults }) => {
            assert!(!faults.is_empty(), "a refusal without a fault");
            // A damaged line has its own faults and those of who needs it; each thing stands on a line.
            let lines = site.lines().count() + table.lines().count() + 2;
            assert!(
                faults.len() <= 40 * lines,
                "{} faults in {lines} lines",
                faults.len()
            );
            for fault in &faults {
                assert!(fault.line >= 1 && fault.line <= lines, "{fault}");
                assert!(!fault.text.is_empty(), "{fault:?}");
            }
            Err(faults[0].to_string())
        }
        Err(error) => panic!("text in memory is readable: {error}"),
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn a_damaged_site_is_read_or_its_lines_are_named(damages in damages(), every_kind in any::<bool>()) {
        let name = if every_kind { "every-kind.toml" } else { "example.toml" };
        let good = damaged(example(name).as_bytes(), &damages);
        let _ = tried(&String::from_utf8_lossy(&good), &example("example-marks.csv"));
    }

    #[test]
    fn any_text_is_no_site_and_says_why(text in "\\PC{0,400}|[\\[\\]{}=\"'#a-z0-9.,\n ]{0,400}") {
        prop_assert!(tried(&text, "").is_err());
    }

    #[test]
    fn a_damaged_table_comes_in_whole_or_not_at_all(damages in damages()) {
        let table = damaged(example("example-marks.csv").as_bytes(), &damages);
        let table = String::from_utf8_lossy(&table);
        let marks = |table: &str| tried(&example("example.toml"), table).map(|read| read.site.marks.len());
        let without = marks("point,x,y\n").expect("a table without rows");
        if let Ok(marks) = marks(&table) {
            prop_assert!(marks - without <= table.lines().count());
        }
    }

    #[test]
    fn any_table_is_read_or_refused(table in "\\PC{0,300}|[\"',;a-z0-9.\n -]{0,300}") {
        let _ = tried(&example("example.toml"), &table);
    }
}

/// Bytes that are no text are refused by the file's name, as is a file that never ends.
#[test]
fn a_file_that_is_no_text_or_too_large_is_refused_by_name() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("site.toml");
    fs::write(&path, [0xff, 0xfe, b'x', 0]).expect("a file");
    let why = read(&path).expect_err("no text").to_string();
    assert!(why.contains("site.toml can't be read"), "{why}");
    let file = fs::File::create(&path).expect("a file");
    // A sparse file of a terabyte: whoever reads it whole runs out of memory.
    file.set_len(1 << 40).expect("a large file");
    let why = read(&path).expect_err("too large").to_string();
    assert!(why.contains("larger than 16 MB"), "{why}");
    let site = example("example.toml").replace("example-marks.csv", "table.csv");
    fs::write(folder.path().join("good.toml"), site).expect("a file");
    let table = fs::File::create(folder.path().join("table.csv")).expect("a file");
    table.set_len(1 << 40).expect("a large table");
    let why = read(&folder.path().join("good.toml"))
        .expect_err("too large")
        .to_string();
    assert!(
        why.contains("“table.csv” can't be read") && why.contains("larger than 256 MB"),
        "{why}"
    );
}

/// Nesting, names and rows without end, numbers beyond all bounds: each is refused, or read as what it is.
#[test]
fn hostile_sites_are_refused_in_words() {
    let table = "point,x,y\n";
    let deep = 100_000;
    for (hostile, says) in [
        (
            format!("version = 1\nname = {}", "[".repeat(deep)),
            "not TOML",
        ),
        (
            format!("version = 1\nname = {}", "{a=".repeat(deep)),
            "not TOML",
        ),
        (format!("[{}a]", "a.".repeat(deep)), ""),
        ("[[target]]\n".repeat(20_000), "has no `version`"),
        (
            format!("version = 1\nname = \"{}\"\n", "x".repeat(1_000_000)),
            "",
        ),
        (
            example("example.toml").replace("100.50 ft", &format!("{} ft", "9".repeat(100_000))),
            "",
        ),
        (example("example.toml").replace("100.50 ft", "1e999 ft"), ""),
        (example("example.toml").replace("100.50 ft", "nan ft"), ""),
        (example("example.toml").replace("100.50 ft", "inf ft"), ""),
    ] {
        let why = tried(&hostile, table).expect_err("hostile");
        assert!(why.contains(says), "{says}: {}", &why[..why.len().min(300)]);
    }
    for hostile in [
        format!("point,x,y\n\"{}", "a,".repeat(500_000)),
        format!("point,x,y\n{}\n", "a,".repeat(500_000)),
        format!("{}\n", "x,".repeat(100_000)),
        "point,x,y\n".to_owned() + &"A,1,2\n".repeat(20_000),
        "point,x,y\nA,1e999,2\n".to_owned(),
        "point,x,y\nA,nan,2\n".to_owned(),
        "point,x,y\nA,99999999999999999999999999,2\n".to_owned(),
    ] {
        let why = tried(&example("example.toml"), &hostile);
        assert!(why.is_err(), "{}", &hostile[..hostile.len().min(60)]);
    }
}
