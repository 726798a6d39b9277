//! The demo day afterwards, folded from the hub's log: as built, open, waiting and its money, who told a machine to dig.

use std::collections::BTreeMap;

use day::account::meter::Doing;
use day::account::soil::TestStanding;
use day::built::LaserDoubt;
use day::entry::Entry;
use day::open::OpenKind;
use day::state::State;
use day::time::Time;
use earthwork::length::Length;
use earthwork::point::Point;
use serde_json::{Value, json};
use show::review::lanes::LaneOf;
use show::review::told::{ToldPage, WhoTold, told};
use show::review::{Day, Review, review};

use super::played::{Played, key, list, played};

fn entries(day: &Played) -> Vec<Entry> {
    let lines = day.log.iter().cloned();
    let entries = lines.map(serde_json::from_value);
    entries.collect::<Result<_, _>>().expect("entries")
}

fn reviewed(day: &Played) -> Review {
    review(&Day::fold(State::default(), &entries(day))).expect("a day")
}

fn oracle(day: &Played, name: &str) -> Value {
    day.oracles["review"][name].clone()
}

#[test]
fn every_mark_is_built_as_it_was_worked_out() {
    let day = played();
    let mut found = serde_json::Map::new();
    for one in reviewed(day).built {
        // Spot elevations have no target to be built to.
        let Some(target) = one.target else { continue };
        let row = json!({
            "target": target,
            "dig_to": one.dig_to,
            "elevation": one.elevation,
            "dev": one.dev,
            "mean": one.mean,
            "at": one.at,
            "by": one.by,
            "set_up": one.set_up,
            "readings": one.readings,
            "verdict": one.verdict,
            "ruling": one.ruling,
            "if_moved": one.if_moved,
            "settles": one.doubt == LaserDoubt::Settled,
            "patch": one.patch,
        });
        found.insert(one.mark, row);
    }
    let mut wanted = oracle(day, "built");
    let rows = wanted.as_object_mut().expect("marks");
    assert_eq!(rows.len(), 24);
    for row in rows.values_mut() {
        row["at"] = json!(day.moment(&row["at"]));
    }
    assert_eq!(Value::Object(found), wanted);
}

#[test]
fn what_is_open_is_what_was_worked_out() {
    let day = played();
    let review = reviewed(day);
    let wanted = oracle(day, "open");
    let of = |kind: OpenKind| -> Vec<&str> {
        let open = review.open.iter().filter(|item| item.kind == kind);
        open.map(|item| item.text.english.as_str()).collect()
    };
    let names = |list: &Value| {
        let names: Vec<&str> = list
            .as_array()
            .expect("names")
            .iter()
            .filter_map(Value::as_str)
            .collect();
        names.join(", ")
    };
    for (target, marks) in wanted["not_read"].as_object().expect("targets") {
        let item = review
            .open
            .iter()
            .find(|item| item.kind == OpenKind::NotRead && item.on == *target);
        let item = item.unwrap_or_else(|| panic!("{target} has marks that nobody has read"));
        assert!(
            item.text.english.ends_with(&format!("{}.", names(marks))),
            "{}",
            item.text.english
        );
    }
    let edges = of(OpenKind::Edge);
    assert_eq!(
        edges,
        [format!(
            "BUFFER: not proven, no tape at {}.",
            names(&wanted["edge"])
        )]
    );
    let on = |kind: OpenKind| -> Vec<&str> {
        let open = review.open.iter().filter(|item| item.kind == kind);
        let mut on: Vec<&str> = open.map(|item| item.on.as_str()).collect();
        on.sort_unstable();
        on
    };
    let tests: Vec<&str> = on(OpenKind::Test)
        .into_iter()
        .filter(|on| on.contains('-'))
        .collect();
    assert_eq!(json!(tests), wanted["test"]);
    let gravel: Vec<&str> = on(OpenKind::Gravel)
        .into_iter()
        .filter(|on| *on != "gravel")
        .collect();
    assert_eq!(json!(gravel), wanted["patches"]);
    assert_eq!(json!(on(OpenKind::High)), wanted["high"]);
    assert_eq!(json!(on(OpenKind::NearMiss)), wanted["near_misses"]);
    // Both lasers were checked at closing, nobody is in, nothing is in doubt; the face is watched.
    for kind in [
        OpenKind::PersonIn,
        OpenKind::Stop,
        OpenKind::InDoubt,
        OpenKind::ClosingCheck,
        OpenKind::Low,
        OpenKind::Ruling,
        OpenKind::NotShown,
    ] {
        assert_eq!(of(kind), [""; 0], "{kind:?}");
    }
    assert_eq!(on(OpenKind::Face), ["T-FACE"]);
    let runs = day.oracles["unproven"].as_object().expect("runs");
    let unproven: Vec<&str> = runs.keys().map(String::as_str).collect();
    assert!(
        unproven
            .iter()
            .all(|run| on(OpenKind::NotProven).contains(run))
    );
}

#[test]
fn tests_stand_fail_and_void_themselves() {
    let day = played();
    let tests: BTreeMap<String, TestStanding> = reviewed(day)
        .account
        .tests
        .into_iter()
        .map(|test| (test.mark, test.standing))
        .collect();
    assert_eq!(json!(tests), oracle(day, "tests"));
}

#[test]
fn waiting_and_patches_cost_what_was_worked_out() {
    let day = played();
    let account = reviewed(day).account;
    let money = oracle(day, "money");
    for (machine, waits) in money["waited"].as_object().expect("machines") {
        let hours = account
            .hours
            .iter()
            .find(|one| one.machine == *machine)
            .expect("hours");
        for (why, want) in waits.as_object().expect("waits") {
            let doing: Doing = serde_json::from_value(json!(why)).expect("a cause");
            let sum = hours.sums.iter().find(|sum| sum.doing == doing);
            let sum = sum.unwrap_or_else(|| panic!("{machine} never waited for {why}"));
            assert_eq!(json!(sum.ms), want["ms"], "{machine} {why}");
            let cost = want["cost"].as_f64().expect("money");
            assert!(
                sum.cost.is_some_and(|got| (got - cost).abs() < 0.005),
                "{machine} {why}: {sum:?}"
            );
        }
    }
    let patches: f64 = account.patches.iter().map(|patch| patch.cy).sum();
    assert!(
        (patches - money["patches"]["cy"].as_f64().expect("yards")).abs() < 1e-6,
        "{patches}"
    );
}

#[test]
fn a_visitor_is_on_site_from_when_they_said_so_to_when_they_said_off() {
    let day = played();
    let lanes = reviewed(day).lanes;
    for person in ["HF", "KB"] {
        let visits = day
            .rows
            .iter()
            .filter(|row| row["what"] == "visit" && row["who"] == person);
        let said: Vec<i64> = visits.map(|row| day.moment(&row["at"])).collect();
        let lane = lanes
            .iter()
            .find(|lane| lane.of == LaneOf::Person(person.to_owned()));
        let spans = lane.map(|lane| &lane.spans[..]).unwrap_or_default();
        let (Some(first), Some(last)) = (spans.first(), spans.last()) else {
            panic!("{person} has no lane");
        };
        assert_eq!(vec![first.from.0, last.to.0], said, "{person}");
    }
}

#[test]
fn rock_above_the_dig_is_what_was_worked_out_of_its_corners() {
    let day = played();
    let rock = reviewed(day).account.rock;
    let names: Vec<&str> = rock.points.iter().map(|one| one.point.as_str()).collect();
    assert_eq!(names, ["RK1", "RK2", "RK3", "RK4", "RK5"]);
    let wanted = oracle(day, "rock")["cy"].as_f64().expect("yards");
    assert!(
        rock.cy.is_some_and(|got| (got - wanted).abs() < 1e-4),
        "{rock:?}, not {wanted}"
    );
}

#[test]
fn every_photo_of_the_story_came_and_stands_with_its_mark_or_face() {
    let day = played();
    let photos = reviewed(day).photos;
    let promised = day.rows.iter().filter(|row| row["what"] == "promise_photo");
    let promised: Vec<&Value> = promised.map(|row| &row["command"]).collect();
    assert_eq!(photos.len(), promised.len());
    for (photo, command) in photos.iter().zip(promised) {
        assert_eq!(json!(photo.sha256), command["sha256"], "{photo:?}");
        assert_eq!(json!(photo.mark), command["mark"], "{photo:?}");
        assert_eq!(json!(photo.face), command["face"], "{photo:?}");
        assert_eq!(json!(photo.words), command["words"], "{photo:?}");
    }
}

/// The page for a question of the oracles.
fn page(day: &Played, question: &Value) -> ToldPage {
    let length =
        |name: &str| Length::from_tenth_micrometres(question[name].as_i64().expect("a length"));
    let asked = WhoTold {
        machine: question["machine"].as_str().expect("a machine").to_owned(),
        near: Point {
            x: length("x"),
            y: length("y"),
        },
        from: Time(day.moment(&question["from"])),
        to: Time(day.moment(&question["to"])),
    };
    told(&Day::fold(State::default(), &entries(day)), &asked).expect("a page")
}

#[test]
fn who_told_it_to_dig_there_is_answered_as_it_was_worked_out() {
    let day = played();
    let keys: BTreeMap<u64, &str> = day
        .log
        .iter()
        .filter_map(|entry| Some((entry["seq"].as_u64()?, entry["key"].as_str()?)))
        .collect();
    let row = |seq: u64| keys.get(&seq).copied().unwrap_or_default();
    for question in list(&oracle(day, "who_told")) {
        let page = page(day, question);
        let marks: Vec<&str> = page.marks.iter().map(|mark| mark.mark.as_str()).collect();
        assert_eq!(json!(marks), question["marks"]);
        let calls: Vec<&str> = page.calls.iter().map(|call| row(call.call)).collect();
        let wanted: Vec<String> = list(&question["calls"])
            .iter()
            .map(|number| key(&json!({ "row": number })))
            .collect();
        assert_eq!(calls, wanted, "{question}");
        let english: Vec<&str> = page
            .calls
            .iter()
            .map(|call| call.text.english.as_str())
            .collect();
        assert_eq!(json!(english), question["english"]);
        let edges: Vec<Value> = page
            .edges
            .iter()
            .map(|edge| json!(edge.shot.distance))
            .collect();
        let wanted: Vec<Value> = list(&question["edges"])
            .iter()
            .map(|edge| edge["inside"].clone())
            .collect();
        assert_eq!(edges, wanted);
        let quiet: Vec<Value> = page
            .gaps
            .iter()
            .filter(|gap| gap.text.english.starts_with("No rod reading"))
            .map(|gap| json!([gap.from, gap.to]))
            .collect();
        let wanted: Vec<Value> = list(&question["quiet"])
            .iter()
            .map(|gap| json!([day.moment(&gap[0]), day.moment(&gap[1])]))
            .collect();
        assert_eq!(quiet, wanted, "{question}");
        for (set_up, want) in question["lasers"].as_object().expect("lasers") {
            let proof = page
                .lasers
                .iter()
                .find(|proof| proof.set_up == *set_up)
                .expect("a proof");
            let before = proof.before.as_ref().map(|check| row(check.seq).to_owned());
            let after = proof.after.as_ref().map(|check| row(check.seq).to_owned());
            let want = |name: &str| {
                want[name]
                    .as_u64()
                    .map(|number| key(&json!({ "row": number })))
            };
            assert_eq!((before, after), (want("before"), want("after")), "{set_up}");
        }
    }
}

/// The question that is asked weeks later: shown in Spanish within 2 s, pressed, from a laser whose fault changes nothing.
#[test]
fn the_page_of_the_workshop_step_holds_its_proof() {
    let day = played();
    let questions = oracle(day, "who_told");
    let page = page(day, &questions[0]);
    let step: Vec<_> = page
        .calls
        .iter()
        .filter(|call| call.mark.as_deref() == Some("E-07"))
        .collect();
    assert_eq!(step.len(), 4);
    for call in &step {
        let shown = call.shown_at.expect("shown").ms_since(call.sent_at);
        assert!(shown <= 2_000, "{shown}");
        assert!(call.got_at.is_some());
        assert_eq!(call.shown_text.as_deref(), Some(call.text.spanish.as_str()));
    }
    assert!(
        page.text
            .english
            .starts_with("JM told EX-2: E-07 DOWN 9, E-07 DOWN 6, E-07 DOWN 4, E-07 GRADE")
    );
    assert!(
        page.text
            .english
            .contains("No call asked for a bottom below 300.00 ft.")
    );
    let paint = page.marks[0].paint.as_ref().expect("paint");
    assert_eq!(paint.generation, 2);
    assert!(page.lasers[0].holds(), "it stands either way");
    assert!(
        !page
            .gaps
            .iter()
            .any(|gap| gap.text.english.starts_with("S1")),
        "{:?}",
        page.gaps
    );
}
