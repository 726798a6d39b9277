//! What the network does to a call: sent twice, sent before a restart, a phone that does not read, a link that breaks.

use std::collections::BTreeSet;

use serde_json::{Value, json};

use crate::harness::link::Link;
use crate::harness::phone::{Phone, now_ms};
use crate::harness::socket::Socket;
use crate::harness::wait;
use crate::harness::yard::{Yard, prove_laser, reading, serve};

fn entries_of(log: &[Value], key: &str) -> usize {
    log.iter().filter(|entry| entry["key"] == key).count()
}

/// The numbers of the log, one after the other.
fn numbers(log: &[Value]) -> Vec<u64> {
    let number = |entry: &Value| entry["seq"].as_u64().expect("a number");
    log.iter().map(number).collect()
}

#[test]
fn the_same_key_five_times_is_one_entry_and_one_answer_even_after_a_restart() {
    let yard = Yard::open();
    let ground = yard.ground();
    prove_laser(&ground);
    let first = ground.say("reading-0001", &reading("P-1", "4.70")).of(200);
    let once = entries_of(&yard.truck.log(), "reading-0001");
    assert!(once > 0);
    for _ in 0..4 {
        let again = ground.say("reading-0001", &reading("P-1", "4.70"));
        assert_eq!(again.of(200), first);
    }
    // The key is what counts: a page that says something else under it hears what the key was answered.
    assert_eq!(
        ground.say("reading-0001", &reading("P-2", "4.90")).of(200),
        first
    );
    assert_eq!(entries_of(&yard.truck.log(), "reading-0001"), once);
    // A key belongs to its phone: the same one from another is another.
    let other = yard.ground();
    let theirs = other.say("reading-0001", &reading("P-3", "4.90")).of(200);
    assert_ne!(theirs, first);
    let all = entries_of(&yard.truck.log(), "reading-0001");
    let yard = yard.stop().start();
    let (ground, other) = (ground.at(&yard.hub.base), other.at(&yard.hub.base));
    assert_eq!(
        ground.say("reading-0001", &reading("P-1", "4.70")).of(200),
        first
    );
    assert_eq!(
        other.say("reading-0001", &reading("P-3", "4.90")).of(200),
        theirs
    );
    assert_eq!(entries_of(&yard.truck.log(), "reading-0001"), all);
}

#[test]
fn two_at_once_with_one_key_are_one_stop() {
    let yard = Yard::open();
    let ground = yard.ground();
    let stop = json!({ "kind": "stop_all", "why": "twice at once" });
    let answers: Vec<Value> = std::thread::scope(|scope| {
        let phones: Vec<Phone> = (0..8).map(|_| ground.at(&yard.hub.base)).collect();
        let threads: Vec<_> = phones
            .into_iter()
            .map(|phone| {
                scope.spawn(|| {
                    let phone = phone;
                    phone.say("at-once-01", &stop).of(200)
                })
            })
            .collect();
        threads
            .into_iter()
            .map(|thread| thread.join().expect("an answer"))
            .collect()
    });
    assert!(
        answers.iter().all(|answer| *answer == answers[0]),
        "{answers:?}"
    );
    let log = yard.truck.log();
    let stops = log
        .iter()
        .filter(|entry| entry["body"]["kind"] == "stopped");
    assert_eq!(stops.count(), 1);
    assert_eq!(
        entries_of(&log, "at-once-01"),
        2,
        "the stop and its near miss"
    );
}

#[test]
fn a_phone_that_never_reads_delays_nobody_and_gets_the_newest_view_when_it_does() {
    let yard = Yard::open();
    let (slow, quick) = (yard.ground(), yard.ground());
    let mut asleep = slow.socket();
    asleep.view("ground", |_| true);
    let mut awake = quick.socket();
    let boss = yard.truck.lets_in("PN", &["ground", "supervisor"], None);
    // Hundreds of views, each of some kilobytes: far more than the line to the sleeping phone holds.
    let last = 400;
    for turn in 1..=last {
        // A place in whole millimetres: 10 000 counts.
        let at = json!({ "x": turn * 10_000, "y": 0 });
        let place = json!({ "kind": "place_machine", "machine": "EX-1", "at": at });
        let phone = [&quick, &boss, &yard.truck][turn % 3];
        phone.says(&place);
    }
    let newest = |view: &Value| view["machines"][0]["place"]["at"]["x"] == json!(last * 10_000);
    awake.view("ground", newest);
    // What waited on the line comes first; it is let go by the hub, or it reads on to the newest.
    let mut back = slow.socket();
    let view = back.view("ground", |_| true);
    assert!(newest(&view), "the first view after waking is the newest");
}

/// A page that was left open while the hub was brought up to date puts views together by its own rules.
#[test]
fn a_page_of_another_build_gets_each_view_whole_and_as_fields_alone() {
    let yard = Yard::open();
    let ground = yard.ground();
    let mut own = ground.socket();
    own.view("ground", |_| true);
    let said = ["", "?page=", "?page=/assets/index-0a1b2c3d.js"];
    let mut others = said.map(|said| {
        let mut other = Socket::open_as(&ground, &ground.base, said).expect("the socket opens");
        other.view("ground", |_| true);
        other
    });
    for turn in 1..=3 {
        let at = json!({ "x": turn * 10_000, "y": 0 });
        yard.truck
            .says(&json!({ "kind": "place_machine", "machine": "EX-1", "at": at }));
        let placed = |view: &Value| view["machines"][0]["place"]["at"]["x"] == json!(turn * 10_000);
        let view = own.view("ground", placed);
        for other in &mut others {
            assert_eq!(other.view("ground", placed), view);
        }
    }
    for (other, said) in others.iter().zip(said) {
        let views = other.heard.iter().filter(|word| word["kind"] == "view");
        for view in views {
            let words: BTreeSet<&str> = view
                .as_object()
                .expect("words")
                .keys()
                .map(String::as_str)
                .collect();
            let plain = BTreeSet::from(["kind", "topic", "seq", "whole", "even", "view"]);
            assert_eq!((&view["whole"], words), (&json!(true), plain), "{said}");
        }
    }
    // Its own build's page had parts.
    assert!(own.heard.iter().any(|word| word["whole"] == json!(false)));
}

#[test]
fn a_screen_that_comes_back_when_nothing_on_it_has_changed_gets_it_whole() {
    let yard = Yard::open();
    let (ground, cab) = (yard.ground(), yard.cab("EX-1"));
    let mut truck = yard.truck.socket();
    let mut screen = cab.socket();
    let before = screen.view("operator", |_| true);
    drop(screen);
    truck.view("supervisor", |view| {
        view["machines"][0]["screen"]["kind"] == "lost"
    });
    // An entry that changes nothing in the cab, while nobody watches its screen.
    ground.says(&json!({ "kind": "add_note", "words": "rain is coming" }));
    for _ in 0..2 {
        let mut back = cab.socket();
        let first = back.until("the cab's view", |value| value["topic"] == "operator");
        assert_eq!((&first["whole"], &first["view"]), (&json!(true), &before));
    }
}

#[test]
fn a_phone_whose_link_was_cut_comes_back_to_the_newest_view_and_a_log_without_gaps() {
    let yard = Yard::open();
    let link = Link::to(&yard.hub.base);
    let far = yard.ground().at(&link.base);
    let near = yard.ground();
    prove_laser(&near);
    let mut screen = far.socket();
    screen.view("ground", |_| true);
    let seen = far.json("/api/log")["head"].as_u64().expect("a number");
    link.cut();
    screen.until_closed();
    let key = far.fresh_key();
    let made_at = now_ms();
    let command = reading("P-1", "4.70");
    assert_eq!(
        far.say_made_at(&key, made_at, &command).status,
        0,
        "nothing passes"
    );
    let called = near.says(&reading("P-2", "4.80"));
    link.mend();
    // The phone kept what it could not send, and sends it with its key and its own moment.
    let late = far.say_made_at(&key, made_at, &command).of(200);
    assert!(late["first"].as_u64() > called["last"].as_u64());
    assert_eq!(far.say_made_at(&key, made_at, &command).of(200), late);
    let mut screen = far.socket();
    let view = screen.view("ground", |_| true);
    let marks = view["marks"].as_array().expect("marks");
    assert!(marks.iter().any(|mark| mark["id"] == "P-2"), "{marks:?}");
    let page = far.json(&format!("/api/log?after={seen}&limit=1000"));
    let lines = page["lines"].as_array().expect("lines");
    let head = page["head"].as_u64().expect("a number");
    assert_eq!(numbers(lines), (seen + 1..=head).collect::<Vec<_>>());
}

#[test]
fn an_operators_page_behind_a_frozen_link_is_said_to_be_lost() {
    let yard = Yard::open();
    let link = Link::to(&yard.hub.base);
    let cab = yard.cab("EX-1").at(&link.base);
    let mut screen = cab.socket();
    screen.shows();
    let mut rod = yard.ground().socket();
    let screen_is =
        |kind: &'static str| move |view: &Value| view["machines"][0]["screen"]["kind"] == kind;
    rod.view("ground", screen_is("showing"));
    link.freeze();
    rod.view("ground", screen_is("lost"));
    link.mend();
    let mut again = cab.socket();
    again.shows();
    rod.view("ground", screen_is("showing"));
}

#[test]
fn a_line_whose_one_end_is_closed_is_given_up_and_the_hub_goes_on() {
    let yard = Yard::open();
    let link = Link::to(&yard.hub.base);
    let phone = yard.ground();
    let far = phone.at(&link.base);
    let mut screen = far.socket();
    screen.view("ground", |_| true);
    link.half_close();
    screen.until_closed();
    phone.says(&json!({ "kind": "stop_all", "why": "still here" }));
    far.socket()
        .view("ground", |view| !view["machines"][0]["stop"].is_null());
}

#[test]
fn a_screen_finds_its_way_back_after_the_hub_was_killed() {
    let yard = Yard::open();
    let (ground, cab) = (yard.ground(), yard.cab("EX-1"));
    prove_laser(&ground);
    let called = ground.says(&reading("P-1", "4.70"));
    let mut screen = cab.socket();
    screen.view("operator", |view| view["screen"]["kind"] == "call");
    let yard = yard.kill().start();
    screen.until_closed();
    let mut screen = cab.at(&yard.hub.base).socket();
    let view = screen.view("operator", |_| true);
    assert_eq!(view["screen"]["call"]["id"], called["outcome"]["call"]);
    let log = yard.truck.log();
    assert_eq!(numbers(&log), (1..=log.len() as u64).collect::<Vec<_>>());
}

#[test]
fn a_changed_site_file_counts_when_it_is_confirmed_and_its_target_is_seen_first() {
    let yard = Yard::open();
    let (ground, cab) = (yard.ground(), yard.cab("EX-1"));
    prove_laser(&ground);
    ground.says(&reading("P-1", "4.70"));
    let stopped = yard.stop();
    // The pad is drawn 0.20 ft higher: top of slab 100.70, so the ground to dig to is 100.20 ft.
    let raised = crate::harness::yard::SITE.replace("100.50 ft", "100.70 ft");
    crate::harness::yard::write_site(stopped.folder(), &raised);
    let yard = stopped.start();
    assert!(
        yard.hub.said().contains("differs from the site in force"),
        "{}",
        yard.hub.said()
    );
    let ground = ground.at(&yard.hub.base);
    let cab = cab.at(&yard.hub.base);
    let mut office = yard.truck.socket();
    let view = office.view("supervisor", |view| !view["site_change"].is_null());
    let change = &view["site_change"];
    let differences = change["differences"].as_array().expect("differences");
    assert!(
        differences
            .iter()
            .any(|one| one["what"].to_string().contains("PAD")),
        "{change}"
    );
    // Until then the old one counts: 105.00 − 4.80 = 100.20, and 100.20 − 100.00 = +0.20 ft: DOWN 2.
    let old = ground.says(&reading("P-2", "4.80"));
    assert_eq!(old["outcome"]["english"], "DOWN 2");
    let wrong = json!({ "kind": "confirm_site", "digest": "0000" });
    assert_eq!(
        yard.truck.is_refused(409, &wrong)["refusal"]["kind"],
        "site_changed_again"
    );
    yard.truck
        .says(&json!({ "kind": "confirm_site", "digest": change["digest"] }));
    let mut screen = cab.socket();
    let new = screen.view("operator", |view| view["screen"]["kind"] == "new_target");
    assert_eq!(
        (&new["screen"]["target"], &new["screen"]["revision"]),
        (&json!("PAD"), &json!(2))
    );
    cab.says(&json!({ "kind": "see_target", "target": "PAD", "revision": 2 }));
    screen.view("operator", |view| view["screen"]["kind"] != "new_target");
    office.view("supervisor", |view| view["site_change"].is_null());
    // Now 105.00 − 4.50 = 100.50, and 100.50 − 100.20 = +0.30 ft: DOWN 3.
    let fresh = ground.says(&reading("P-3", "4.50"));
    assert_eq!(fresh["outcome"]["english"], "DOWN 3");
    let yard = yard.stop().start();
    assert!(!yard.hub.said().contains("differs"), "{}", yard.hub.said());
}

#[test]
fn a_second_hub_on_the_same_folder_is_turned_away_and_the_first_goes_on() {
    let yard = Yard::open();
    let (data, site) = (yard.data(), yard.site_file());
    let text = |path: &std::path::Path| path.to_str().expect("a plain path").to_owned();
    let second = crate::harness::rodcall(&[
        "serve",
        "--listen",
        "127.0.0.1:0",
        "--site",
        &text(&site),
        "--data",
        &text(&data),
    ]);
    assert!(!second.status.success());
    let said = crate::harness::words(&second);
    assert!(
        said.contains("in use by another hub") && said.contains("--data"),
        "{said}"
    );
    yard.truck
        .says(&json!({ "kind": "stop_all", "why": "still here" }));
    // The lock goes with the hub that held it, however it ended.
    let stopped = yard.kill();
    let hub = serve(stopped.folder());
    wait(
        || "the health".to_owned(),
        || (Phone::stranger(&hub.base).get("/healthz").status == 200).then_some(()),
    );
}
