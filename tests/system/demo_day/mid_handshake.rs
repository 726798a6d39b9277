//! The laptop dies at any moment of the demo day, above all while somebody asks, was told to come in, or is in: whoever was in is
//! in, and no call that had ended is back.

use std::collections::BTreeSet;
use std::fs;

use day::entry::Entry;
use day::state::State;
use serde_json::{Value, json};
use show::review::moment::moment;

use super::played::{fixtures, list, played};
use crate::harness::chance::Chance;
use crate::harness::yard::day_file;
use crate::harness::{self, Hub};

/// How often the day is broken off.
const DEATHS: usize = 50;

/// The end of a request in the day's file.
struct Kept {
    /// Behind its last byte.
    end: usize,
    /// What the ground person's page shows then.
    ground: Value,
    /// The calls that have ended by then.
    ended: BTreeSet<u64>,
}

/// Whoever asks or may be in, at each machine. Links are left out: after a new start no phone is heard yet.
fn people(ground: &Value) -> BTreeSet<[String; 4]> {
    let text = |value: &Value| value.as_str().expect("a text").to_owned();
    let of = |machine: &Value| {
        let each = list(&machine["way_in"]["people"]).iter();
        each.map(|one| {
            let [visit, person, stage] = ["visit", "person", "stage"].map(|key| text(&one[key]));
            [text(&machine["id"]), visit, person, stage]
        })
        .collect::<Vec<_>>()
    };
    // Before the site is read nobody sees a machine.
    let machines = ground["machines"].as_array();
    machines.into_iter().flatten().flat_map(of).collect()
}

fn live(ground: &Value) -> Vec<u64> {
    let machines = list(&ground["machines"]).iter();
    machines
        .map(|machine| &machine["call"])
        .filter(|call| !call.is_null() && call["state"]["kind"] != "ended")
        .map(|call| call["id"].as_u64().expect("a call"))
        .collect()
}

/// The requests of the day, each with what was shown behind it. A line that ends in a blank is followed by another of its request.
fn requests(bytes: &[u8]) -> Vec<Kept> {
    let mut state = State::default();
    let (mut end, mut found, mut ended) = (0, Vec::new(), BTreeSet::new());
    for line in bytes.split_inclusive(|byte| *byte == b'\n') {
        end += line.len();
        let entry: Entry = serde_json::from_slice(line).expect("an entry");
        day::apply(&mut state, &entry);
        let body = serde_json::to_value(&entry.body).expect("plain data");
        if body["kind"] == "call_ended" {
            ended.insert(body["call"].as_u64().expect("a call"));
        }
        if line.ends_with(b" \n") {
            continue;
        }
        found.push(Kept {
            end,
            ground: json!(moment(&state, &entry).ground),
            ended: ended.clone(),
        });
    }
    found
}

#[test]
fn a_hub_that_dies_in_mid_handshake_names_the_same_people_and_brings_no_call_back() {
    let bytes = &played().bytes;
    let requests = requests(bytes);
    let (asked, others): (Vec<usize>, Vec<usize>) =
        (0..requests.len() - 1).partition(|at| !people(&requests[*at].ground).is_empty());
    let stages: BTreeSet<String> = asked
        .iter()
        .flat_map(|at| people(&requests[*at].ground))
        .map(|[.., stage]| stage)
        .collect();
    assert!(asked.len() > 20 && stages.len() > 2, "{asked:?} {stages:?}");
    let mut chance = Chance::new();
    let mut below = |end: usize| usize::try_from(chance.below(end as u64)).expect("a place");
    // In every handshake once, the rest anywhere.
    let rest = DEATHS - asked.len();
    let anywhere: Vec<usize> = (0..rest).map(|_| others[below(others.len())]).collect();
    for at in asked.into_iter().chain(anywhere) {
        // Somewhere in the next request: what is not whole of it was never answered.
        let (from, to) = (requests[at].end, requests[at + 1].end);
        let cut = from + below(to - from);
        starts_as(&requests[at], &bytes[..cut]);
    }
}

fn starts_as(kept: &Kept, bytes: &[u8]) {
    let data = harness::folder();
    let file = data.path().join("log").join(&played().file);
    fs::create_dir(data.path().join("log")).expect("a folder");
    fs::write(&file, bytes).expect("the day's file");
    assert_eq!(day_file(data.path()), file);
    let site = fixtures().join("../site/alder-bend/site.toml");
    let site = site.to_str().expect("a plain path");
    let hub = Hub::start(&["serve", "--site", site], data.path());
    let ground = hub.laptop().socket().view("ground", |_| true);
    let what = format!("{} of the bytes, {}", bytes.len(), hub.said());
    assert_eq!(people(&ground), people(&kept.ground), "{what}");
    for call in live(&ground) {
        assert!(!kept.ended.contains(&call), "{call} is back: {what}");
        assert!(live(&kept.ground).contains(&call), "{call}: {what}");
    }
}
