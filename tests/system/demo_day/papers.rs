//! The papers of the demo day: queries, visitors, the inspection, the close and the signature.

use serde_json::{Value, json};

use super::played::{Played, list, played};

fn one<'a>(day: &'a Played, kind: &'static str) -> &'a Value {
    let mut found = day.of_kind(kind);
    let first = found.next().unwrap_or_else(|| panic!("no {kind}"));
    assert!(found.next().is_none(), "more than one {kind}");
    first
}

fn text(value: &Value) -> String {
    value.as_str().expect("text").to_owned()
}

#[test]
fn the_day_is_closed_with_its_checks_shot_and_names_what_stays_open() {
    let day = played();
    let wanted = &day.oracles["papers"]["closed"];
    let closed = one(day, "day_closed");
    assert_eq!(closed["at"], json!(day.moment(&wanted["at"])));
    // Where marks and runs stand is the review's; here is the work that the next day takes over.
    let review = [
        "high",
        "not_read",
        "not_proven",
        "edge",
        "not_shown",
        "scraped",
    ];
    let mut work: Vec<(String, String)> = list(&closed["body"]["open"])
        .iter()
        .map(|item| (text(&item["kind"]), text(&item["on"])))
        .filter(|(kind, _)| !review.contains(&kind.as_str()))
        .collect();
    work.sort();
    assert_eq!(json!(work), wanted["open"]);
    assert_eq!(closed["body"]["overrides"], json!([]));
    assert_eq!(closed["body"]["unproven"], json!([]));
    assert_eq!(closed["body"]["empty"], json!(false));
    // Behind the close nobody is asked for a check, and nothing is called.
    let after = day
        .log
        .iter()
        .filter(|entry| entry["seq"].as_u64() > closed["seq"].as_u64());
    let kinds: Vec<&Value> = after.map(|entry| &entry["body"]["kind"]).collect();
    let quiet = |kind: &&&Value| **kind != "screen_noticed" && **kind != "day_signed";
    assert_eq!(kinds.iter().filter(quiet).count(), 0, "{kinds:?}");
}

#[test]
fn the_signature_names_the_hash_of_the_entry_before_it() {
    let day = played();
    let signed = one(day, "day_signed");
    let head = &signed["body"]["head"];
    let seq = signed["seq"].as_u64().expect("a number");
    assert_eq!(head["seq"], json!(seq - 1));
    let before = day.log.iter().find(|entry| entry["seq"] == head["seq"]);
    assert_eq!(head["hash"], before.expect("the entry before")["hash"]);
    assert_eq!(signed["body"]["unproven"], json!(false));
    assert_eq!(signed["body"]["signature"]["name"], json!("P. N."));
}

#[test]
fn each_query_is_answered_when_it_was_and_by_the_revision_that_carries_it_out() {
    let day = played();
    let opened: Vec<&Value> = day.of_kind("query_opened").collect();
    let wanted = list(&day.oracles["papers"]["queries"]);
    assert_eq!(opened.len(), wanted.len());
    for (entry, want) in opened.iter().zip(wanted) {
        assert_eq!(entry["body"]["query"], want["query"]);
        assert_eq!(entry["body"]["on"], want["on"]);
        assert_eq!(entry["at"], json!(day.moment(&want["asked"])));
        let answer = day
            .of_kind("query_answered")
            .find(|answer| answer["body"]["query"] == want["query"]);
        match answer {
            None => assert_eq!(want["answered"], Value::Null),
            Some(answer) => {
                assert_eq!(answer["at"], json!(day.moment(&want["answered"])));
                assert_eq!(answer["body"]["revision"]["revision"], want["revision"]);
            }
        }
    }
}

#[test]
fn visitors_are_on_site_when_they_were_and_the_inspection_knows_when_its_inspector_came() {
    let day = played();
    for want in list(&day.oracles["papers"]["visits"]) {
        let of = |on: bool| {
            let mut noticed = day.of_kind("visitor_noticed");
            let found = noticed.find(|entry| {
                entry["body"]["person"] == want["person"] && entry["body"]["on_site"] == json!(on)
            });
            found.unwrap_or_else(|| panic!("{} {on}", want["person"]))
        };
        assert_eq!(of(true)["at"], json!(day.moment(&want["on"])));
        assert_eq!(of(false)["at"], json!(day.moment(&want["off"])));
    }
    let wanted = &day.oracles["papers"]["inspected"];
    let made = one(day, "inspected");
    assert_eq!(made["body"]["result"], wanted["result"]);
    assert_eq!(
        made["body"]["arrived"],
        json!(day.moment(&wanted["arrived"]))
    );
}
