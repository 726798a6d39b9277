//! Logs as each version wrote them, opened by today's hub: proven, folded, reviewed, put on paper, served, beside what they
//! came to when they were made.
//!
//! `RODCALL_GOLDEN=1` writes what a new folder of `fixtures/golden` lacks of its outcome. What is there is never written again.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use day::chain::GENESIS;
use day::state::State;
use rodcall::days::{self, KeptDay};
use rodcall::export;
use rodcall::store::put_by::known_by;
use serde_json::{Value, json};
use tempfile::TempDir;

use crate::harness::{Hub, folder, words};

mod outcome;

use outcome::{differences, facts, none, same_table};

fn fixtures() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../fixtures")
}

fn sorted(folder: &Path) -> Vec<PathBuf> {
    let items =
        fs::read_dir(folder).unwrap_or_else(|error| panic!("{}: {error}", folder.display()));
    let mut paths: Vec<PathBuf> = items.map(|item| item.expect("a file").path()).collect();
    paths.sort();
    paths
}

/// Every version's folder.
fn versions() -> Vec<PathBuf> {
    let mut all = sorted(&fixtures().join("golden"));
    all.retain(|path| path.join("yard.jsonl").is_file());
    assert!(!all.is_empty(), "fixtures/golden holds no logs");
    all
}

/// Every golden log: of each version a data folder, and an export.
pub(crate) fn logs() -> Vec<PathBuf> {
    let of = |version: PathBuf| [version.join("alder-bend"), version.join("yard.jsonl")];
    versions().into_iter().flat_map(of).collect()
}

/// A golden log in a data folder that may be used, and where what it came to is kept.
struct Golden {
    place: TempDir,
    outcome: PathBuf,
    site: PathBuf,
}

impl Golden {
    fn of(log: &Path) -> Self {
        let place = folder();
        let data = place.path().join("data");
        let yard = log.is_file();
        if yard {
            ran(&["import", text(log), "--data", text(&data)]);
        } else {
            for part in ["log", "photos"] {
                fs::create_dir_all(data.join(part)).expect("a folder");
                for path in sorted(&log.join(part)) {
                    let name = path.file_name().expect("a name");
                    fs::copy(&path, data.join(part).join(name)).expect("a copy");
                }
            }
        }
        let site = if yard {
            "golden/yard.toml"
        } else {
            "site/alder-bend/site.toml"
        };
        let outcome = if yard {
            "yard.outcome"
        } else {
            "alder-bend.outcome"
        };
        Self {
            place,
            outcome: log.with_file_name(outcome),
            site: fixtures().join(site),
        }
    }

    fn data(&self) -> PathBuf {
        self.place.path().join("data")
    }

    fn days(&self) -> Vec<String> {
        days::names(&self.data()).expect("days")
    }

    fn day(&self, name: &str) -> KeptDay {
        KeptDay::read(&self.data(), Some(name), u64::MAX, |_, _| None).expect("a day")
    }

    /// What was kept of the outcome under this name; made from `now` when a new folder is filled.
    fn kept(&self, name: &str, now: &str) -> String {
        let path = self.outcome.join(name);
        if !path.exists() && std::env::var_os("RODCALL_GOLDEN").is_some() {
            fs::create_dir_all(path.parent().expect("a folder")).expect("a folder");
            fs::write(&path, now).expect("an outcome");
        }
        fs::read_to_string(&path).unwrap_or_else(|error| {
            panic!(
                "{}: {error}. A new golden folder is filled with RODCALL_GOLDEN=1",
                path.display()
            )
        })
    }
}

fn text(path: &Path) -> &str {
    path.to_str().expect("a plain name")
}

/// The real binary on a machine whose clock shows UTC.
fn run(arguments: &[&str]) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_rodcall"));
    command
        .args(arguments)
        .env("TZ", "UTC")
        .output()
        .expect("rodcall starts")
}

fn ran(arguments: &[&str]) -> String {
    let output = run(arguments);
    assert!(output.status.success(), "{arguments:?}: {}", words(&output));
    words(&output)
}

#[test]
fn every_golden_log_proves_itself_and_folds_to_what_it_did() {
    for log in logs() {
        ran(&["verify", text(&log)]);
        let golden = Golden::of(&log);
        export::verify(&golden.data()).expect("a proof");
        assert!(
            golden.days().len() >= 2,
            "an opening is carried from a day to the next"
        );
        let mut found = Vec::new();
        for name in golden.days() {
            let day = golden.day(&name);
            for entry in day.entries() {
                let told = show::tell::tell(entry);
                let wordless = told.text.english.is_empty() || told.text.spanish.is_empty();
                assert!(!wordless, "no sentence tells of {}", entry.body.kind());
            }
            let is = facts(&day);
            let was = golden.kept(&format!("{name}.json"), &format!("{is:#}\n"));
            let was: Value = serde_json::from_str(&was).expect("facts");
            differences(&name, &was, &is, &mut found);
        }
        none(&log, &found);
    }
}

#[test]
fn every_golden_log_is_reviewed_and_reported_as_it_was() {
    for log in logs() {
        let golden = Golden::of(&log);
        let data = golden.data();
        let mut found = Vec::new();
        for day in golden.days() {
            let out = golden.place.path().join(&day);
            ran(&["tables", "--data", text(&data), "--day", &day, text(&out)]);
            for path in sorted(&out)
                .into_iter()
                .filter(|path| path.extension() == Some("csv".as_ref()))
            {
                let name = path
                    .file_name()
                    .expect("a name")
                    .to_string_lossy()
                    .into_owned();
                let is = fs::read_to_string(&path).expect("a table");
                let was = golden.kept(&format!("{day}/{name}"), &is);
                same_table(&day, &name, &was, &is, &mut found);
            }
            let head = ran(&["verify", text(&data)]);
            for kind in ["day", "as-built", "hand-over", "cab-card", "hand-signals"] {
                for language in ["en", "es"] {
                    let arguments = [
                        "report",
                        "--data",
                        text(&data),
                        "--day",
                        &day,
                        "--kind",
                        kind,
                        "--language",
                        language,
                    ];
                    let sheet = ran(&arguments);
                    assert!(sheet.contains("</html>"), "{kind} {language}: {sheet}");
                }
            }
            assert!(head.contains("untouched"), "{head}");
        }
        none(&log, &found);
        ran(&["try-restore", "--data", text(&data)]);
    }
}

#[test]
fn every_golden_log_is_served_and_goes_on() {
    for log in logs() {
        let golden = Golden::of(&log);
        let hub = Hub::start(&["serve", "--site", text(&golden.site)], &golden.data());
        let laptop = hub.laptop();
        let served = laptop.json("/api/days");
        for day in golden.days() {
            assert!(
                served.as_array().expect("days").contains(&json!(day)),
                "{served}"
            );
            let review = laptop.json(&format!("/api/review?day={day}"));
            assert_eq!(review["day"], json!(day));
            let last = golden
                .day(&day)
                .head()
                .seq
                .min(review["last"].as_u64().expect("a number"));
            let moment = laptop.json(&format!("/api/replay?day={day}&seq={last}"));
            assert_eq!(moment["said"]["seq"], json!(last), "{day}");
            assert!(
                laptop
                    .text(&format!("/api/report/day?day={day}"))
                    .contains("</html>")
            );
        }
        // The hub's clock goes on from the log's end, however far that is from this machine's.
        let newest = laptop.json("/api/log?before=0&limit=1")["lines"][0].clone();
        let now = newest["at"].as_i64().expect("a moment");
        let note = json!({ "kind": "add_note", "words": "an old log goes on" });
        let said = laptop.say_made_at(&laptop.fresh_key(), now, &note).of(200);
        assert!(said["first"].as_u64() > newest["seq"].as_u64(), "{said}");
        assert!(hub.stop().success());
        ran(&["verify", text(&golden.data())]);
    }
}

#[test]
fn a_state_that_was_put_by_is_what_its_days_fold_to_or_is_not_taken() {
    for log in logs() {
        let golden = Golden::of(&log);
        let days = golden.days();
        let folded = golden.day(&days[0]).newest().clone();
        let second = golden.day(&days[1]);
        let first = second.entries().first().expect("an entry");
        assert_eq!(folded.seq + 1, first.seq);
        let prev = golden.day(&days[0]).head().hash;
        assert_ne!(prev, GENESIS);
        let now = serde_json::to_string(&folded).expect("a state");
        let again: State = serde_json::from_str(&now).expect("a state that was put by comes back");
        assert!(
            again == folded,
            "a state that is put by is another when it comes back"
        );
        let kept = golden.kept("opening.txt", &format!("{}\n{prev}\n{now}", known_by()));
        let mut parts = kept.splitn(3, '\n');
        let (known, follows, state) = (parts.next(), parts.next(), parts.next());
        assert_eq!(follows, Some(prev.as_str()));
        // Of another shape or other rules: it is not taken, and the days are folded anew.
        if known != Some(known_by()) {
            continue;
        }
        let put_by: Value = serde_json::from_str(state.expect("a state")).expect("JSON");
        let mut found = Vec::new();
        differences("state", &put_by, &json!(folded), &mut found);
        assert!(
            found.is_empty(),
            "{}: a fold makes something else of the same entries. States that are put by would hide it: count RULES up in \
             hub/server/src/store/put_by.rs.\n{}",
            log.display(),
            found.join("\n")
        );
    }
}

/// The kinds of entries that no golden log of the newest version holds, by name: a kind that is added says so here.
#[test]
fn the_kinds_that_no_golden_log_holds_are_listed() {
    let schema: Value = serde_json::from_str(rodcall::http::openapi::TEXT).expect("the contract");
    let text = schema["components"]["schemas"]["Body"].to_string();
    let all: BTreeSet<String> = text
        .split(r#""enum":[""#)
        .skip(1)
        .filter_map(|rest| rest.split('"').next())
        .map(str::to_owned)
        .collect();
    assert!(all.len() > 100, "{all:?}");
    let newest = versions().pop().expect("a version");
    let mut held = BTreeSet::new();
    for log in [newest.join("alder-bend"), newest.join("yard.jsonl")] {
        let golden = Golden::of(&log);
        for day in golden.days() {
            held.extend(
                golden
                    .day(&day)
                    .entries()
                    .iter()
                    .map(|entry| entry.body.kind().to_owned()),
            );
        }
    }
    let missing: Vec<&str> = all.difference(&held).map(String::as_str).collect();
    let listed = fs::read_to_string(newest.join("not_held.txt")).unwrap_or_default();
    let listed: Vec<&str> = listed.lines().collect();
    assert_eq!(
        missing,
        listed,
        "{}: a kind is written that no golden log holds, or one of the list is held by now. Name it in not_held.txt of a folder \
         that is not released yet; else make the next version's folder (fixtures/golden/README.md)",
        newest.display()
    );
}
