//! The disk fails under the hub: it stops taking calls, says so on every screen, and shows nothing that it could not keep.

use serde_json::{Value, json};

use crate::harness::phone::Phone;
use crate::harness::socket::Socket;
use crate::harness::yard::{prove_laser, reading};
use crate::harness::{rodcall, words};
use crate::shim::Shim;

/// Nothing that was shown lies beyond what is kept.
fn assert_nothing_unkept(screen: &Socket, head: u64) {
    let seen = screen
        .heard
        .iter()
        .filter_map(|value| value["seq"].as_u64());
    assert!(
        seen.max() <= Some(head),
        "head {head}: {:?}",
        screen.heard.last()
    );
}

fn tells_that_nothing_is_kept(screen: &mut Socket) {
    screen.until("a halted beat", |value| value["halted"] == true);
}

fn is_not_kept(phone: &Phone, key: &str, command: &Value) {
    let refused = phone.say(key, command).of(503);
    let said = refused["english"].as_str().expect("words");
    assert!(
        said.contains("Not kept") && said.contains("hand signals"),
        "{said}"
    );
    assert_ne!(refused["english"], refused["spanish"]);
}

fn halts(fault: &str) {
    let shim = Shim::build();
    let yard = shim.open_yard();
    let (ground, cab) = (yard.ground(), yard.cab("EX-1"));
    // Nobody has opened this cab's page when the disk fails.
    let dark = yard.cab("EX-2");
    prove_laser(&ground);
    let kept = ground.say("reading-kept", &reading("P-1", "4.70")).of(200);
    let mut screens = [ground.socket(), cab.socket(), yard.truck.socket()];
    for (screen, topic) in screens.iter_mut().zip(["ground", "operator", "supervisor"]) {
        screen.view(topic, |_| true);
    }
    let head = yard.hub_head();
    shim.fails(fault);
    is_not_kept(&ground, "reading-lost", &reading("P-2", "4.90"));
    for screen in &mut screens {
        tells_that_nothing_is_kept(screen);
    }
    let health = Phone::stranger(&yard.hub.base).get("/healthz").of(503);
    assert_eq!(
        (&health["halted"], &health["head"]),
        (&json!(true), &json!(head))
    );
    assert!(
        health["what_to_do"]
            .as_str()
            .is_some_and(|text| text.contains("start the hub again"))
    );
    // The disk recovers; the hub does not go on over a hole.
    shim.fails("-");
    is_not_kept(&ground, "reading-lost", &reading("P-2", "4.90"));
    // STOP stands on every screen all the same, said to be in no log.
    let stop = json!({ "kind": "stop_all", "why": "test" });
    let shown = ground.say("stop-0001", &stop).of(503);
    let said = shown["english"].as_str().expect("words");
    assert!(said.contains("not in the log"), "{said}");
    for screen in &mut screens {
        screen.until("the stop on a screen", |value| {
            value["stop"]["why"] == "test"
        });
    }
    for screen in &mut screens {
        tells_that_nothing_is_kept(screen);
        assert_nothing_unkept(screen, head);
    }
    // A screen that comes now sees what is kept, and that no more is.
    let mut late = ground.socket();
    tells_that_nothing_is_kept(&mut late);
    assert_nothing_unkept(&late, head);
    // A cab whose page was dark until now has its screen, and the stop on it.
    let mut lit = dark.socket();
    lit.view("operator", |view| view["machine"] == "EX-2");
    lit.until("the stop in a cab that was dark", |value| {
        value["stop"]["why"] == "test"
    });
    assert_nothing_unkept(&lit, head);
    let said = yard.hub.said();
    assert!(said.contains("takes no calls any more"), "{said}");
    let yard = yard.stop().start();
    let ground = ground.at(&yard.hub.base);
    assert_eq!(
        ground.say("reading-kept", &reading("P-1", "4.70")).of(200),
        kept
    );
    let again = ground.say("reading-lost", &reading("P-2", "4.90")).of(200);
    assert_eq!(
        ground.say("reading-lost", &reading("P-2", "4.90")).of(200),
        again
    );
    let log = yard.truck.log();
    let taken = log
        .iter()
        .filter(|entry| entry["key"] == "reading-lost" && entry["body"]["kind"] == "reading_taken");
    assert_eq!(taken.count(), 1, "{fault}");
    let stopped = yard.stop();
    let proof = rodcall(&["verify".as_ref(), stopped.data().as_os_str()]);
    assert!(proof.status.success(), "{}", words(&proof));
}

#[test]
fn a_full_disk_halts_the_hub() {
    halts("n");
}

#[test]
fn an_error_of_the_disk_halts_the_hub() {
    halts("e");
}

#[test]
fn a_write_that_takes_half_halts_the_hub() {
    halts("s");
}

#[test]
fn a_sync_that_fails_halts_the_hub() {
    halts("y");
}
