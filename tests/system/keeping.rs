//! What is kept: stops and starts, a lost index, a torn end, damage in the middle, a taken port, a missing site file.

use std::fs;
use std::path::{Path, PathBuf};

use serde_json::json;

use crate::harness::phone::Phone;
use crate::harness::yard::{SITE, Stopped, Yard, prove_laser, reading, write_site};
use crate::harness::{folder, rodcall, words};

/// A day with a call in it, stopped; with the ground phone, which keeps its cookie.
fn a_day() -> (Stopped, Phone) {
    let yard = Yard::open();
    let ground = yard.ground();
    prove_laser(&ground);
    ground.say("reading-0001", &reading("P-1", "4.70")).of(200);
    (yard.stop(), ground)
}

fn plain(path: &Path) -> &str {
    path.to_str().expect("a plain path")
}

/// A start that must fail; gives what it said.
fn fails_to_serve(folder: &Path) -> String {
    let (site, data) = (folder.join("site.toml"), folder.join("data"));
    let output = rodcall(&[
        "serve",
        "--listen",
        "127.0.0.1:0",
        "--site",
        plain(&site),
        "--data",
        plain(&data),
    ]);
    assert!(!output.status.success(), "{}", words(&output));
    words(&output)
}

fn index_folders(data: &Path) -> Vec<PathBuf> {
    let items = fs::read_dir(data).expect("a data folder");
    let paths = items.map(|item| item.expect("an item").path());
    paths
        .filter(|path| {
            path.file_name()
                .is_some_and(|name| name.to_string_lossy().starts_with("index."))
        })
        .collect()
}

#[test]
fn either_signal_stops_the_hub_cleanly_and_it_starts_where_it_was() {
    for signal in ["TERM", "INT"] {
        let yard = Yard::open();
        let ground = yard.ground();
        prove_laser(&ground);
        ground.says(&reading("P-1", "4.70"));
        let mut screen = ground.socket();
        // A view from before the call may come first.
        let before = screen.view("ground", |view| !view["machines"][0]["call"].is_null());
        let log = yard.truck.log();
        let ended = yard.signal(signal);
        let bye = screen.until("a last word", |value| value["kind"] == "bye");
        assert_eq!(bye["why"], "closing", "{signal}");
        let yard = ended.start();
        assert!(
            !yard.hub.said().contains("index"),
            "nothing to mend: {}",
            yard.hub.said()
        );
        assert_eq!(yard.truck.log(), log, "{signal}");
        let mut screen = ground.at(&yard.hub.base).socket();
        let after = screen.view("ground", |_| true);
        assert_eq!(
            after["machines"][0]["call"], before["machines"][0]["call"],
            "{signal}"
        );
        assert_eq!(after["set_ups"], before["set_ups"], "{signal}");
    }
}

#[test]
fn a_missing_index_is_made_anew_and_said() {
    let (stopped, ground) = a_day();
    for index in index_folders(&stopped.data()) {
        fs::remove_dir_all(index).expect("an index");
    }
    let yard = stopped.start();
    assert!(
        yard.hub.said().contains("made anew from the log"),
        "{}",
        yard.hub.said()
    );
    finds_its_reading(&yard, &ground);
}

#[test]
fn a_damaged_index_is_made_anew_and_said() {
    let (stopped, ground) = a_day();
    let mut damaged = 0;
    for index in index_folders(&stopped.data()) {
        for file in fs::read_dir(index).expect("an index") {
            let path = file.expect("a file").path();
            if path.is_file() {
                fs::write(&path, b"no index at all").expect("a file to damage");
                damaged += 1;
            }
        }
    }
    assert!(damaged > 0);
    let yard = stopped.start();
    assert!(
        yard.hub.said().contains("made anew from the log"),
        "{}",
        yard.hub.said()
    );
    finds_its_reading(&yard, &ground);
}

/// The old answer by its key, and the entry by its mark.
fn finds_its_reading(yard: &Yard, ground: &Phone) {
    let ground = ground.at(&yard.hub.base);
    let head = yard.hub_head();
    let again = ground.say("reading-0001", &reading("P-1", "4.70")).of(200);
    assert_eq!(again["outcome"]["english"], "DOWN 3");
    assert_eq!(yard.hub_head(), head, "nothing was entered twice");
    let page = ground.json("/api/log?mark=P-1&kind=reading_taken");
    assert_eq!(page["lines"].as_array().map(Vec::len), Some(1), "{page}");
}

#[test]
fn an_index_of_another_day_is_not_believed() {
    let (stopped, ground) = a_day();
    let other = {
        let yard = Yard::open();
        yard.truck.says(&json!({ "kind": "renew_codes" }));
        yard.stop()
    };
    for index in index_folders(&stopped.data()) {
        fs::remove_dir_all(index).expect("an index");
    }
    let theirs = index_folders(&other.data()).pop().expect("an index");
    let ours = stopped.data().join(theirs.file_name().expect("a name"));
    fs::rename(theirs, ours).expect("the wrong index");
    let yard = stopped.start();
    assert!(
        yard.hub.said().contains("belongs to another log"),
        "{}",
        yard.hub.said()
    );
    finds_its_reading(&yard, &ground);
}

#[test]
fn a_torn_end_is_cut_put_by_and_said() {
    let (stopped, ground) = a_day();
    let file = stopped.day_file();
    let whole = fs::read(&file).expect("the day");
    // The front of an entry that a power cut left behind; the index never saw it.
    let torn = br#"{"entry":{"seq":99,"at":190000"#;
    let bytes = [&whole[..], &torn[..]].concat();
    fs::write(&file, bytes).expect("a torn day");
    let data = stopped.data();
    let yard = stopped.start();
    let said = yard.hub.said();
    assert!(
        said.contains("30 torn bytes") && said.contains("put by"),
        "{said}"
    );
    let put_by = fs::read_dir(data.join("log")).expect("a log").any(|item| {
        let path = item.expect("an item").path();
        path.to_string_lossy().contains(".torn-at-") && fs::read(&path).expect("a file") == torn
    });
    assert!(put_by, "the torn bytes are kept");
    let kept = fs::read(&file).expect("the day");
    assert!(kept.starts_with(&whole));
    finds_its_reading(&yard, &ground);
}

#[test]
fn damage_in_the_middle_stops_the_start_and_is_named() {
    let (stopped, _) = a_day();
    let file = stopped.day_file();
    let text = fs::read_to_string(&file).expect("the day");
    // The third entry is another one than it was: one letter of it.
    let lines: Vec<&str> = text.lines().collect();
    let changed = lines[2].replacen("hub", "hob", 1);
    assert_ne!(changed, lines[2]);
    fs::write(&file, text.replacen(lines[2], &changed, 1)).expect("a damaged day");
    let said = fails_to_serve(stopped.folder());
    assert!(
        said.contains("damaged") && said.contains("entry 3"),
        "{said}"
    );
    assert!(said.contains("does not start over it"), "{said}");
    assert_eq!(
        fs::read_to_string(&file).expect("the day"),
        text.replacen(lines[2], &changed, 1)
    );
}

#[test]
fn a_log_that_its_index_remembers_longer_is_told_to_the_supervisor() {
    let (stopped, _) = a_day();
    let file = stopped.day_file();
    let text = fs::read_to_string(&file).expect("the day");
    // The last request is cut off cleanly, as by somebody who wants it gone.
    let lines: Vec<&str> = text.lines().collect();
    let at = lines
        .iter()
        .position(|line| line.contains("reading-0001"))
        .expect("the reading");
    let short = lines[..at].join("\n") + "\n";
    fs::write(&file, short).expect("a short day");
    let yard = stopped.start();
    let said = yard.hub.said();
    assert!(said.contains("entries were lost from the log"), "{said}");
    let view = yard.truck.socket().view("supervisor", |_| true);
    let needs = view["exceptions"].as_array().expect("exceptions");
    let told = needs.iter().find(|one| one["what"]["kind"] == "log_cut");
    assert_eq!(told.expect("a cut")["what"]["person"], "hub", "{needs:?}");
    let table = yard.truck.text("/api/log.csv");
    assert!(table.contains("its index remembers entry"), "{table}");
}

#[test]
fn a_taken_port_is_named_with_the_way_out() {
    let yard = Yard::open();
    let port = yard.hub.base.rsplit(':').next().expect("a port").to_owned();
    let place = folder();
    write_site(place.path(), SITE);
    let (site, data) = (place.path().join("site.toml"), place.path().join("data"));
    let output = rodcall(&[
        "serve",
        "--listen",
        &format!("127.0.0.1:{port}"),
        "--site",
        plain(&site),
        "--data",
        plain(&data),
    ]);
    assert!(!output.status.success());
    let said = words(&output);
    assert!(
        said.contains(&port) && said.contains("in use") && said.contains("--listen"),
        "{said}"
    );
}

#[test]
fn a_site_file_that_can_not_be_used_stops_the_start_before_anything_is_made() {
    let place = folder();
    let said = fails_to_serve(place.path());
    assert!(said.contains("site.toml"), "{said}");
    write_site(place.path(), "version = 1\nname = \"Half");
    let said = fails_to_serve(place.path());
    assert!(said.contains("site.toml") && said.contains('2'), "{said}");
    fs::create_dir(place.path().join("folder.toml")).expect("a folder");
    let output = rodcall(&["check", plain(&place.path().join("folder.toml"))]);
    assert!(
        !output.status.success() && words(&output).contains("folder.toml"),
        "{}",
        words(&output)
    );
    assert!(!place.path().join("data").exists(), "nothing was made");
}

#[test]
fn a_data_folder_that_is_a_file_is_named() {
    let place = folder();
    write_site(place.path(), SITE);
    fs::write(place.path().join("data"), b"a file").expect("a file");
    let said = fails_to_serve(place.path());
    assert!(
        said.contains("data") && said.contains("can't be used"),
        "{said}"
    );
}
