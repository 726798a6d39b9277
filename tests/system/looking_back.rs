//! Looking back: a replayed day is the day lived, sheets and tables come from the log alone, an import reports the same.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use rodcall::days::KeptDay;
use rodcall::report::tables::Table;
use serde_json::{Value, json};

use super::replayed::{replays, same};
use crate::harness::phone::Phone;
use crate::harness::socket::Socket;
use crate::harness::yard::{FOOT, Yard, prove_laser, reading};
use crate::harness::{Hub, folder, rodcall, words};

/// A beat that has seen the newest entry: every view up to it has come before the next one.
fn settled(yard: &Yard, screen: &mut Socket) {
    let seq = yard.hub_head();
    let newest = |value: &Value| value["head"].as_u64() >= Some(seq);
    screen.until("a beat", newest);
    screen.until("the next beat", newest);
}

#[test]
fn a_replayed_day_is_the_day_lived_view_by_view() {
    let yard = Yard::open();
    let (ground, cab) = (yard.ground(), yard.cab("EX-1"));
    let mut screens = [yard.truck.socket(), ground.socket(), cab.socket()];
    screens[2].shows();
    prove_laser(&ground);
    ground.says(&reading("P-1", "4.70"));
    let shown = screens[2].view("operator", |view| view["screen"]["kind"] == "call");
    let call = shown["screen"]["call"]["id"].clone();
    cab.says(&json!({ "kind": "got_it", "call": call }));
    ground.says(&json!({ "kind": "stop_all", "why": "a child at the fence" }));
    yard.truck
        .says(&json!({ "kind": "lift_stop", "press": u64::MAX, "why": "gone" }));
    ground.says(&reading("P-2", "5.02"));
    ground.says(&json!({ "kind": "say_bumped", "set_up": "S1" }));
    // The cab's page is hidden, as when a phone is locked: the replay has that too.
    screens[2].says(&json!({ "kind": "visible", "visible": false }));
    screens[1].view("ground", |view| {
        view["machines"][0]["screen"]["kind"] == "hidden"
    });
    for screen in &mut screens {
        settled(&yard, screen);
    }
    let [truck, ground, cab] = &screens;
    let compared = [
        replays(&yard.truck, truck, None),
        replays(&yard.truck, ground, None),
        replays(&yard.truck, cab, Some("EX-1")),
    ];
    assert!(compared.iter().all(|many| *many >= 8), "{compared:?}");
    let last = yard.truck.json("/api/replay");
    assert_eq!(last["ground"]["machines"][0]["screen"]["kind"], "hidden");
    assert_eq!(last["operators"]["EX-1"]["screen"]["kind"], "pause");
}

#[test]
fn any_moment_of_the_demo_day_is_a_short_fold_away_and_the_same() {
    let data = folder();
    let hub = Hub::start(&["demo", "--speed", "step"], data.path());
    let laptop = hub.laptop();
    let mut screen = laptop.socket();
    let mut topics = BTreeSet::new();
    // What the supervisor's and the ground person's pages were sent while the day was played.
    while !hub.said().contains("story is over") {
        let view = screen.until("something", |_| true);
        if let Some(topic) = view["topic"].as_str() {
            topics.insert(topic.to_owned());
        }
    }
    assert_eq!(topics.len(), 3, "{topics:?}");
    let views: Vec<Value> = screen
        .heard
        .iter()
        .filter(|heard| heard["kind"] == "view")
        .cloned()
        .collect();
    assert!(hub.stop().success(), "the hub stops cleanly");
    let day = KeptDay::read(data.path(), None, u64::MAX, |_, _| None).expect("a day");
    let mut lived = day::state::State::default();
    for entry in day.entries() {
        day::apply(&mut lived, entry);
        let (at, state) = day.at(entry.seq).expect("an entry");
        assert_eq!(at, entry);
        assert_eq!(state, lived, "entry {}", entry.seq);
        assert_eq!(day.seq_at(entry.at).max(entry.seq), day.seq_at(entry.at));
    }
    assert!(views.len() > 100, "{} views", views.len());
    let mut even = 0;
    for heard in &views {
        let seq = heard["seq"].as_u64().expect("a number");
        let (entry, state) = day.at(seq).expect("an entry");
        let moment = json!(show::review::moment::moment(&state, entry));
        let topic = heard["topic"].as_str().expect("a topic");
        even += usize::from(same(heard, &moment[topic], topic));
    }
    assert!(even > 30, "{even} views were even");
    the_import_reports_the_same(data.path());
}

/// Byte for byte, in both languages, and the log proves itself there too.
fn the_import_reports_the_same(data: &Path) {
    let elsewhere = folder();
    let (file, copy) = (
        elsewhere.path().join("log.jsonl"),
        elsewhere.path().join("copy"),
    );
    let run = |arguments: &[&Path]| {
        let output = rodcall(arguments);
        assert!(output.status.success(), "{}", words(&output));
        output.stdout
    };
    let p = Path::new;
    run(&[p("export"), p("--data"), data, &file]);
    run(&[p("import"), &file, p("--data"), &copy]);
    for kind in ["day", "as-built", "hand-over", "cab-card", "hand-signals"] {
        for language in ["en", "es"] {
            let report = |folder: &Path| {
                run(&[
                    p("report"),
                    p("--kind"),
                    p(kind),
                    p("--language"),
                    p(language),
                    p("--data"),
                    folder,
                ])
            };
            let here = report(data);
            assert_eq!(here, report(&copy), "{kind} {language}");
            let text = String::from_utf8(here).expect("text");
            let head = run(&[p("verify"), data]);
            let head = String::from_utf8(head).expect("text");
            let head = head
                .trim()
                .trim_end_matches('.')
                .rsplit(' ')
                .next()
                .expect("a hash")
                .to_owned();
            assert!(text.contains(&head), "the sheet carries the head {head}");
            assert!(
                !text.contains("<script")
                    && !text.contains("http://")
                    && !text.contains("https://")
            );
            for word in ["SAFE", "CLEAR", "SEGURO"] {
                assert!(
                    !text
                        .to_uppercase()
                        .split(|c: char| !c.is_alphabetic())
                        .any(|one| one == word),
                    "{word}"
                );
            }
        }
    }
    let (one, other) = (elsewhere.path().join("one"), elsewhere.path().join("other"));
    run(&[p("tables"), p("--data"), data, &one]);
    run(&[p("tables"), p("--data"), &copy, &other]);
    for table in Table::ALL {
        let name = table.name();
        let text = fs::read_to_string(one.join(&name)).expect(&name);
        assert_eq!(
            text,
            fs::read_to_string(other.join(&name)).expect(&name),
            "{name}"
        );
        // Its columns, and the two edges that are taped or more.
        assert!(text.lines().count() > 2, "{name}: {text}");
    }
    // Nothing is overwritten.
    let again = rodcall(&[p("tables"), p("--data"), data, &one]);
    assert!(!again.status.success());
}

#[test]
fn a_supervisor_looks_back_and_nobody_else() {
    let yard = Yard::open();
    let ground = yard.ground();
    prove_laser(&ground);
    ground.says(&reading("P-1", "4.70"));
    let truck = &yard.truck;
    let day = truck.json("/api/days")[0]
        .as_str()
        .expect("a day")
        .to_owned();
    let review = truck.json("/api/review");
    assert_eq!(review["day"], day.as_str());
    assert_eq!(review["built"][0]["mark"], "P-1");
    assert_eq!(review, truck.json(&format!("/api/review?day={day}")));
    // The log is found by when it was made, too.
    let made = review["built"][0]["at"].as_i64().expect("a moment");
    let found = |query: String| {
        let page = truck.json(&format!("/api/log?{query}"));
        let lines = page["lines"].as_array().expect("lines").clone();
        lines
            .into_iter()
            .filter(|line| line["kind"] == "reading_taken")
            .count()
    };
    assert_eq!(found(format!("from={made}&to={made}")), 1);
    assert_eq!(found(format!("mark=P-1&from={made}")), 1);
    assert_eq!(found(format!("to={}", made - 1)), 0);
    // What is said afterwards is in the next look.
    ground.says(&reading("P-2", "5.02"));
    let again = truck.json("/api/review");
    assert_eq!(again["built"][1]["mark"], "P-2");
    let question = format!(
        "machine=EX-1&x={}&y={}&from=0&to={}",
        30 * FOOT,
        20 * FOOT,
        i64::MAX
    );
    let told = truck.json(&format!("/api/who-told?{question}"));
    assert_eq!(told["days"][0]["calls"][0]["mark"], "P-1");
    let sheet = truck.text(&format!("/api/report/who-told?{question}&language=spanish"));
    assert!(sheet.contains("RT dijo a EX-1: P-1 BAJE 3."), "{sheet}");
    assert!(
        truck
            .text("/api/report/day")
            .contains("P-1 stands HIGH by +0.30 ft")
    );
    assert!(
        truck
            .text("/api/table/as-built.csv")
            .contains("P-2,PAD,1,40.0000000")
    );
    the_marks_lie_where_the_site_has_them(truck);
    for path in [
        "/api/days",
        "/api/review",
        "/api/replay",
        "/api/report/day",
        "/api/table/open.csv",
        &format!("/api/who-told?{question}"),
    ] {
        assert_eq!(ground.get(path).status, 403, "{path}");
        assert_eq!(
            Phone::stranger(&yard.hub.base).get(path).status,
            401,
            "{path}"
        );
    }
    for path in [
        "/api/review?day=1999-01-01",
        "/api/replay?seq=999999",
        "/api/table/other.csv",
    ] {
        assert_eq!(truck.get(path).status, 404, "{path}");
    }
    assert_eq!(truck.get("/api/report/other").status, 400);
    let malformed = truck.get("/api/replay?at=noon");
    assert_eq!(malformed.status, 400, "{}", malformed.text);
}

/// By RFC 7946: a collection of features, each with a geometry and properties; 30 ft are 9.144 m exactly.
fn the_marks_lie_where_the_site_has_them(truck: &Phone) {
    let marks: Value =
        serde_json::from_str(&truck.text("/api/table/marks.geojson")).expect("GeoJSON");
    assert_eq!(marks["type"], "FeatureCollection");
    let features = marks["features"].as_array().expect("features");
    let of = |id: &str| {
        let found = features.iter().find(|one| one["id"] == id);
        found.unwrap_or_else(|| panic!("{id}")).clone()
    };
    let read = of("P-1");
    assert_eq!(
        (&read["type"], &read["geometry"]["type"]),
        (&json!("Feature"), &json!("Point"))
    );
    assert_eq!(read["geometry"]["coordinates"][0], json!(9.144));
    assert_eq!(
        read["geometry"]["coordinates"].as_array().map(Vec::len),
        Some(3)
    );
    assert_eq!(read["properties"]["verdict"], "high");
    let unread = features
        .iter()
        .filter(|one| one["properties"]["elevation_ft"].is_null());
    assert!(unread.clone().count() > 0);
    assert!(
        unread
            .clone()
            .all(|one| one["geometry"]["coordinates"].as_array().map(Vec::len) == Some(2))
    );
}

/// A name from a stranger's phone stays text on paper.
#[test]
fn a_sheet_shows_what_was_said_and_runs_none_of_it() {
    let yard = Yard::open();
    let evil = yard.truck.lets_in("<b>RT</b>", &["ground"], None);
    prove_laser(&evil);
    evil.says(&reading("P-1", "4.70"));
    let sheet = yard.truck.text("/api/report/day");
    assert!(sheet.contains("&lt;b&gt;RT&lt;/b&gt;"), "escaped");
    assert!(!sheet.contains("<b>RT"), "not markup");
}

#[test]
fn the_papers_for_the_cab_say_which_signals_the_crew_agreed_on_today() {
    let yard = Yard::open();
    let ground = yard.ground();
    let sheet = |kind: &str, language: &str| {
        let address = format!("/api/report/{kind}?language={language}");
        assert_eq!(ground.get(&address).status, 403, "{kind}");
        yard.truck.text(&address)
    };
    for kind in ["cab-card", "hand-signals"] {
        assert!(
            sheet(kind, "english").contains("NOT AGREED TODAY"),
            "{kind}"
        );
        assert!(sheet(kind, "spanish").contains("SIN ACORDAR HOY"), "{kind}");
    }
    ground.says(&json!({ "kind": "say_start_check", "check": "hand_signals", "signals": ["stop", "grade"] }));
    let signals = sheet("hand-signals", "english");
    // Seven to agree on; whoever gives it, STOP AT ONCE counts without.
    assert_eq!(signals.matches("☑ agreed today").count(), 2);
    assert_eq!(signals.matches("☐ not agreed today").count(), 5);
    assert_eq!(signals.matches("<svg").count(), 8);
    let card = sheet("cab-card", "spanish");
    assert!(card.contains("<strong>PARE, A NIVEL</strong>"), "{card}");
    // What is drawn is what was agreed, and the stop of whoever gives it; three pages to a machine.
    let hands = card
        .split("<div class=\"hands\">")
        .nth(1)
        .expect("the hands");
    let hands = hands.split("</table>").next().expect("their end");
    assert_eq!(hands.matches("<svg").count(), 3);
    assert_eq!(card.matches("class=\"page\"").count(), 6);
    // A card for each machine, with its own keep-out (common practice: reach and 7 ft, in whole feet up).
    for (machine, radius) in [("EX-1", "35 ft"), ("EX-2", "28 ft")] {
        let at = card.find(&format!("<h2>{machine}")).expect(machine);
        assert!(card[at..].contains(radius), "{machine}");
    }
}

/// Six weeks later somebody looks for what was said: by day, by verdict, by words of either language.
#[test]
fn the_log_is_searched_by_day_verdict_and_words() {
    let yard = Yard::open();
    let ground = yard.ground();
    prove_laser(&ground);
    ground.says(&reading("P-1", "4.70"));
    ground.says(&reading("P-2", "5.00"));
    let truck = &yard.truck;
    let day = truck.json("/api/days")[0]
        .as_str()
        .expect("a day")
        .to_owned();
    let marks = |query: &str| -> Vec<(String, String)> {
        let page = truck.json(&format!("/api/log?before=0&{query}"));
        assert_eq!(page["stopped"], Value::Null);
        let lines = page["lines"].as_array().expect("lines");
        let text = |line: &Value, name: &str| line[name].as_str().unwrap_or_default().to_owned();
        lines
            .iter()
            .map(|line| (text(line, "kind"), text(line, "mark")))
            .collect()
    };
    let pair = |kind: &str, mark: &str| (kind.to_owned(), mark.to_owned());
    let high = [pair("call_sent", "P-1"), pair("reading_taken", "P-1")];
    assert_eq!(marks("verdict=high"), high);
    // The sentence is Spanish, and the accent is not typed.
    assert_eq!(
        marks("words=lectura%20ALTO"),
        [pair("reading_taken", "P-1")]
    );
    assert_eq!(marks("words=nobody-said-this"), []);
    assert_eq!(marks(&format!("verdict=high&day={day}")), high);
    let refused = truck.get("/api/log?day=1999-01-01");
    assert_eq!(refused.status, 404);
    assert!(refused.text.contains(&day), "{}", refused.text);
    assert_eq!(truck.get("/api/log?verdict=perfect").status, 400);
}

/// A day put by opens without the hub, and everything would come back; what would not is named.
#[test]
fn a_day_is_put_by_and_a_restore_is_tried() {
    let yard = Yard::open();
    let ground = yard.ground();
    prove_laser(&ground);
    ground.says(&reading("P-1", "4.70"));
    assert_eq!(ground.post("/api/try-restore", &json!({})).status, 403);
    let tried = yard.truck.post("/api/try-restore", &json!({}));
    assert_eq!(tried.status, 200, "{}", tried.text);
    let back: Value = serde_json::from_str(&tried.text).expect("an answer");
    // Five sheets in each language.
    let sheets = 5 * ::words::Language::ALL.len();
    assert_eq!(
        (&back["days"], &back["sheets"]),
        (&json!(1), &json!(sheets))
    );
    let elsewhere = folder();
    let out = elsewhere.path().join("put-by");
    let data = yard.data();
    let put_by = [Path::new("archive"), Path::new("--data"), &data, &out];
    let put = rodcall(&put_by);
    assert!(put.status.success(), "{}", words(&put));
    let sheet = fs::read_to_string(out.join("as-built.es.html")).expect("a sheet");
    assert!(sheet.contains("P-1") && sheet.contains(back["hash"].as_str().expect("a hash")));
    let log = out.join("log.jsonl");
    assert!(
        fs::metadata(&log)
            .expect("the log")
            .permissions()
            .readonly()
    );
    assert!(rodcall(&[Path::new("verify"), &log]).status.success());
    // A folder that is there already keeps what it has.
    let again = rodcall(&put_by);
    assert!(!again.status.success() && words(&again).contains("Name a new folder"));
}
