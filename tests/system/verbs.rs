//! The command line: prove, export, import, table, check, worked examples, the contract. Each fault with its place.

use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Output;

use serde_json::Value;

use crate::harness::yard::{Stopped, Yard, prove_laser, reading, serve, write_site};
use crate::harness::{folder, rodcall, words};

fn a_day() -> Stopped {
    let yard = Yard::open();
    let ground = yard.ground();
    prove_laser(&ground);
    ground.says(&reading("P-1", "4.70"));
    yard.stop()
}

fn run(verb: &str, arguments: &[&OsStr]) -> Output {
    let mut all = vec![OsStr::new(verb)];
    all.extend_from_slice(arguments);
    rodcall(&all)
}

fn works(verb: &str, arguments: &[&OsStr]) -> String {
    let output = run(verb, arguments);
    assert!(output.status.success(), "{}", words(&output));
    words(&output)
}

fn fails(verb: &str, arguments: &[&OsStr]) -> String {
    let output = run(verb, arguments);
    assert_eq!(output.status.code(), Some(1), "{}", words(&output));
    let error = String::from_utf8_lossy(&output.stderr).into_owned();
    assert!(error.starts_with("rodcall: "), "{error}");
    words(&output)
}

fn fixtures(under: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../../fixtures")
        .join(under)
}

fn lines(path: &Path) -> Vec<Value> {
    let text = fs::read_to_string(path).expect("a file");
    let values = text
        .lines()
        .map(|line| serde_json::from_str(line).expect("JSON"));
    values.collect()
}

#[test]
fn a_log_is_proven_and_one_changed_letter_is_found_with_its_entry() {
    let stopped = a_day();
    let (data, file) = (stopped.data(), stopped.day_file());
    let entries = fs::read_to_string(&file).expect("the day").lines().count();
    let said = works("verify", &[data.as_ref()]);
    assert!(said.contains(&format!("Entries 1 to {entries}")), "{said}");
    // One letter of one entry, each in turn: nothing passes.
    let whole = fs::read(&file).expect("the day");
    let text = String::from_utf8(whole.clone()).expect("text");
    let mut begins = 0;
    for (at, line) in (1..).zip(text.lines()) {
        let middle = begins + line.len() / 2;
        let mut bytes = whole.clone();
        bytes[middle] = if bytes[middle] == b'7' { b'8' } else { b'7' };
        fs::write(&file, bytes).expect("a changed day");
        let said = fails("verify", &[data.as_ref()]);
        assert!(said.contains(&at.to_string()), "entry {at}: {said}");
        begins += line.len() + 1;
    }
    // Two entries that changed places, and one that is gone.
    let mut swapped: Vec<&str> = text.lines().collect();
    swapped.swap(3, 4);
    fs::write(&file, swapped.join("\n") + "\n").expect("a changed day");
    assert!(fails("verify", &[data.as_ref()]).contains("damaged"));
    swapped.swap(3, 4);
    swapped.remove(5);
    fs::write(&file, swapped.join("\n") + "\n").expect("a changed day");
    assert!(fails("verify", &[data.as_ref()]).contains("damaged"));
    fs::write(&file, whole).expect("the day");
    works("verify", &[data.as_ref()]);
}

#[test]
fn a_running_hub_can_be_proven_and_its_export_proves_itself_elsewhere() {
    let yard = Yard::open();
    yard.ground();
    works("verify", &[yard.data().as_ref()]);
    let place = folder();
    let file = place.path().join("log.jsonl");
    fs::write(&file, yard.truck.text("/api/export")).expect("a file");
    let head = yard.hub_head();
    let said = works("verify", &[file.as_ref()]);
    assert!(said.contains(&format!("Entries 1 to {head}")), "{said}");
    let text = fs::read_to_string(&file).expect("the export");
    fs::write(&file, text.replacen("RT", "TR", 1)).expect("a changed export");
    fails("verify", &[file.as_ref()]);
    // What begins in the middle says so: the entries before are not proven by it.
    let rest: Vec<&str> = text.lines().skip(2).collect();
    let rest = rest.join("\n") + "\n";
    fs::write(&file, rest).expect("half an export");
    assert!(works("verify", &[file.as_ref()]).contains("begins with entry 3"));
}

#[test]
fn what_holds_no_log_is_said_to_hold_none() {
    let place = folder();
    let nothing = place.path().join("nothing");
    fails("verify", &[place.path().as_ref()]);
    fails("verify", &[nothing.as_ref()]);
    fails("export", &["--data".as_ref(), place.path().as_ref()]);
    fails("csv", &["--data".as_ref(), nothing.as_ref()]);
    let empty = place.path().join("empty.jsonl");
    fs::write(&empty, b"").expect("a file");
    fails("verify", &[empty.as_ref()]);
}

#[test]
fn an_export_imported_elsewhere_is_the_same_log_and_a_hub_goes_on_with_it() {
    let stopped = a_day();
    let place = folder();
    let (file, data) = (place.path().join("log.jsonl"), place.path().join("data"));
    works(
        "export",
        &["--data".as_ref(), stopped.data().as_ref(), file.as_ref()],
    );
    let said = fails(
        "export",
        &["--data".as_ref(), stopped.data().as_ref(), file.as_ref()],
    );
    assert!(
        said.contains("log.jsonl"),
        "an export replaces no file: {said}"
    );
    works("import", &[file.as_ref(), "--data".as_ref(), data.as_ref()]);
    let again = place.path().join("again.jsonl");
    works(
        "export",
        &["--data".as_ref(), data.as_ref(), again.as_ref()],
    );
    assert_eq!(lines(&again), lines(&file));
    let said = fails("import", &[file.as_ref(), "--data".as_ref(), data.as_ref()]);
    assert!(said.contains("holds a log already"), "{said}");
    write_site(place.path(), crate::harness::yard::SITE);
    let hub = serve(place.path());
    let log = hub.laptop().log();
    assert_eq!(log[..lines(&file).len()], lines(&file)[..]);
}

#[test]
fn a_changed_export_is_not_imported() {
    let stopped = a_day();
    let place = folder();
    let (file, data) = (place.path().join("log.jsonl"), place.path().join("data"));
    works(
        "export",
        &["--data".as_ref(), stopped.data().as_ref(), file.as_ref()],
    );
    let text = fs::read_to_string(&file).expect("the export");
    fs::write(&file, text.replacen("DOWN 3", "DOWN 9", 1)).expect("a changed export");
    let said = fails("import", &[file.as_ref(), "--data".as_ref(), data.as_ref()]);
    assert!(
        said.contains("line") && said.contains("Nothing was imported"),
        "{said}"
    );
    fails("verify", &[data.as_ref()]);
}

#[test]
fn the_index_is_made_anew_on_demand() {
    let stopped = a_day();
    let said = works("rebuild", &["--data".as_ref(), stopped.data().as_ref()]);
    assert!(said.contains("made anew"), "{said}");
    let yard = stopped.start();
    assert_eq!(
        yard.truck.json("/api/log?mark=P-1&kind=call_sent")["lines"][0]["mark"],
        "P-1"
    );
}

#[test]
fn the_table_has_a_row_for_each_entry_and_nothing_that_a_spreadsheet_would_run() {
    let yard = Yard::open();
    let sly = yard.truck.lets_in("=1+1", &["ground"], None);
    prove_laser(&sly);
    sly.says(&reading("P-1", "4.70"));
    let head = yard.hub_head();
    let text = yard.truck.text("/api/log.csv");
    let text = text
        .strip_prefix('\u{feff}')
        .expect("a mark for spreadsheets");
    let mut table = csv::Reader::from_reader(text.as_bytes());
    let columns = table.headers().expect("a header").len();
    let rows: Vec<csv::StringRecord> = table.records().map(|row| row.expect("a row")).collect();
    assert_eq!(rows.len() as u64, head);
    assert!(rows.iter().all(|row| row.len() == columns));
    let cells = || rows.iter().flatten();
    assert!(cells().any(|cell| cell == "'=1+1"));
    assert!(cells().all(|cell| !cell.starts_with(['=', '+', '-', '@'])));
    assert!(cells().any(|cell| cell.contains("DOWN 3")));
    let from_terminal = works("csv", &["--data".as_ref(), yard.data().as_ref()]);
    assert_eq!(from_terminal.trim_start_matches('\u{feff}'), text);
}

#[test]
fn each_bad_site_file_is_refused_with_its_line_and_the_good_ones_are_in_order() {
    let mut bad = 0;
    for item in fs::read_dir(fixtures("site/bad")).expect("bad site files") {
        let path = item.expect("a file").path();
        if path.extension().is_none_or(|ending| ending != "toml") {
            continue;
        }
        let text = fs::read_to_string(&path).expect("a file");
        // Each says of itself: `# expect LINE: words`.
        let first = text.lines().next().expect("a line");
        let expected = first.strip_prefix("# expect ").expect("what to expect");
        let (line, says) = expected.split_once(": ").expect("a line and words");
        let said = fails("check", &[path.as_ref()]);
        assert!(
            said.contains(line) && said.contains(says),
            "{path:?}: {said}"
        );
        bad += 1;
    }
    assert!(bad > 10, "{bad} bad site files");
    let mut odd = 0;
    for item in fs::read_dir(fixtures("site/odd")).expect("odd site files") {
        let path = item.expect("a file").path();
        let text = fs::read_to_string(&path).expect("a file");
        let first = text.lines().next().expect("a line");
        let expected = first.strip_prefix("# odd ").expect("what is odd");
        let (line, says) = expected.split_once(": ").expect("a line and words");
        let said = works("check", &[path.as_ref()]);
        let told = |told: &str| told.contains(&format!(":{line}: odd: ")) && told.contains(says);
        assert!(said.lines().any(told), "{path:?}: {said}");
        odd += 1;
    }
    assert!(odd >= 3, "{odd} odd site files");
    for good in [
        "site/example.toml",
        "site/every-kind.toml",
        "site/alder-bend/site.toml",
    ] {
        let said = works("check", &[fixtures(good).as_ref()]);
        assert!(said.contains("in order"), "{good}: {said}");
    }
}

#[test]
fn worked_examples_hold_and_a_false_or_malformed_one_is_named() {
    let mut files: Vec<PathBuf> = fs::read_dir(fixtures("worked-examples"))
        .expect("worked examples")
        .map(|item| item.expect("a file").path())
        .collect();
    files.sort();
    let paths: Vec<&OsStr> = files.iter().map(|path| path.as_os_str()).collect();
    assert!(!paths.is_empty());
    works("examples", &paths);
    let place = folder();
    let mine = place.path().join("mine.toml");
    let text = fs::read_to_string(&files[0]).expect("a file");
    let broken = text.replacen("computation = \"", "computation = \"no_such_", 1);
    assert_ne!(broken, text);
    fs::write(&mine, broken).expect("a file");
    let said = fails("examples", &[mine.as_ref()]);
    assert!(
        said.contains("mine.toml") && said.contains("no_such_"),
        "{said}"
    );
    fs::write(&mine, "[[case]]\nid = \"half").expect("a file");
    assert!(fails("examples", &[mine.as_ref()]).contains("mine.toml"));
    fs::write(&mine, "").expect("a file");
    assert!(fails("examples", &[mine.as_ref()]).contains("holds no cases"));
}

#[test]
fn the_contract_of_the_wire_is_printed_as_it_is_served() {
    let yard = Yard::open();
    let printed: Value = serde_json::from_str(&works("openapi", &[])).expect("JSON");
    assert_eq!(printed, yard.truck.json("/api/openapi.json"));
}
