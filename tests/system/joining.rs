//! Coming in: codes, cookies, roles, and being shown out.

use serde_json::json;

use crate::harness::phone::{Phone, joining};
use crate::harness::socket::Socket;
use crate::harness::yard::{Yard, reading};

#[test]
fn a_code_from_the_tailgate_becomes_a_cookie() {
    let yard = Yard::open();
    let code = yard.truck.code(&["ground"], None);
    let mut phone = Phone::stranger(&yard.hub.base);
    let invitation = phone.json(&format!("/api/join/{code}"));
    assert_eq!(invitation["site"], "Test yard");
    assert_eq!(invitation["roles"], json!(["ground"]));
    assert_eq!(invitation["machine"], json!(null));
    assert_eq!(phone.get("/api/me").status, 401);
    let reply = phone.post("/api/join", &joining(&code, "RT", &["ground"]));
    let me = reply.of(200);
    phone.cookie = reply.cookie;
    assert_eq!(
        (&me["person"], &me["roles"]),
        (&json!("RT"), &json!(["ground"]))
    );
    assert_eq!(phone.me(), me);
    let entry = yard.truck.log().pop().expect("an entry");
    assert_eq!(entry["body"]["kind"], "joined");
    let cookie = phone
        .cookie
        .strip_prefix("rodcall=")
        .expect("the cookie's name");
    assert!(
        !entry.to_string().contains(cookie),
        "the cookie is written down"
    );
}

#[test]
fn a_stranger_sees_the_join_page_the_health_and_the_contract_and_nothing_else() {
    let yard = Yard::open();
    let stranger = Phone::stranger(&yard.hub.base);
    let page = stranger.text("/");
    assert!(
        page.contains("<!doctype html>") || page.contains("<!DOCTYPE html>"),
        "{page}"
    );
    assert_eq!(stranger.text("/j/ANYTHING"), page);
    assert_eq!(stranger.json("/healthz")["ok"], true);
    assert_eq!(stranger.json("/api/openapi.json")["openapi"], "3.1.0");
    for path in [
        "/api/me",
        "/api/log",
        "/api/log/1",
        "/api/log.csv",
        "/api/export",
        "/api/codes",
    ] {
        let reply = stranger.get(path);
        assert_eq!(reply.status, 401, "{path}");
        assert!(
            reply.text.contains("Scan the code"),
            "{path}: {}",
            reply.text
        );
    }
    assert!(Socket::try_open(&stranger, &stranger.base).is_err());
    let mut liar = Phone::stranger(&yard.hub.base);
    liar.cookie = "rodcall=0123456789abcdef".to_owned();
    assert_eq!(liar.get("/api/me").status, 401);
    liar.is_refused(401, &json!({ "kind": "stop_all" }));
}

#[test]
fn a_void_code_opens_nothing_and_says_what_to_do() {
    let yard = Yard::open();
    let stranger = Phone::stranger(&yard.hub.base);
    let void = stranger.get("/api/join/BBBBBBBBBB");
    assert!(
        void.of(404)["english"]
            .as_str()
            .is_some_and(|text| text.contains("Scan today's code"))
    );
    let reply = stranger.post("/api/join", &joining("BBBBBBBBBB", "RT", &["ground"]));
    assert_eq!((reply.status, reply.cookie.as_str()), (404, ""));
    assert_eq!(
        stranger.get("/own/0123456789abcdef0123456789abcdef").status,
        404
    );
}

#[test]
fn a_code_lets_nobody_in_as_more_than_it_says() {
    let yard = Yard::open();
    let stranger = Phone::stranger(&yard.hub.base);
    let code = yard.truck.code(&["ground"], None);
    for roles in [
        &["supervisor"][..],
        &["ground", "supervisor"],
        &["hub"],
        &["operator"],
    ] {
        let reply = stranger.post("/api/join", &joining(&code, "RT", roles));
        assert_eq!(
            (reply.status, reply.cookie.as_str()),
            (400, ""),
            "{roles:?}"
        );
    }
    for (person, roles) in [("", &["ground"][..]), ("RT", &[])] {
        let reply = stranger.post("/api/join", &joining(&code, person, roles));
        assert_eq!(
            (reply.status, reply.cookie.as_str()),
            (409, ""),
            "{person:?} {roles:?}"
        );
    }
}

#[test]
fn the_code_of_a_cab_names_its_machine_and_a_second_phone_takes_the_first_ones_place() {
    let yard = Yard::open();
    let code = yard.truck.code(&["operator"], Some("EX-2"));
    let invitation = Phone::stranger(&yard.hub.base).json(&format!("/api/join/{code}"));
    assert_eq!(invitation["machine"], "EX-2");
    let first = yard.cab("EX-2");
    assert_eq!(first.me()["machine"], "EX-2");
    let mut screen = first.socket();
    screen.until("hello", |value| value["kind"] == "hello");
    // Scanned by somebody else, the code takes nothing.
    let taken =
        Phone::stranger(&yard.hub.base).post("/api/join", &joining(&code, "ZZ", &["operator"]));
    assert_eq!(taken.of(409)["refusal"]["kind"], "cab_taken");
    assert_eq!(first.me()["machine"], "EX-2");
    first.says(&json!({ "kind": "give_cab", "machine": "EX-2" }));
    let second = yard.cab("EX-2");
    let bye = screen.until("a last word", |value| value["kind"] == "bye");
    assert_eq!(bye["why"], "retired");
    screen.until_closed();
    assert_eq!(
        (first.get("/api/me").status, second.get("/api/me").status),
        (401, 200)
    );
}

#[test]
fn a_name_that_is_in_joins_as_that_person_or_under_another_name() {
    let yard = Yard::open();
    let first = yard.ground();
    let code = yard.truck.code(&["ground"], None);
    let mut asks = joining(&code, "rt", &["ground"]);
    asks["same_person"] = json!(false);
    let refused = Phone::stranger(&yard.hub.base).post("/api/join", &asks);
    let refused = refused.of(409);
    assert_eq!(refused["refusal"]["kind"], "same_name");
    assert_eq!(refused["refusal"]["person"], "RT");
    assert_eq!(refused["refusal"]["another"], "rt 2");
    assert_ne!(refused["english"], refused["spanish"]);
    // The same browser comes in again, and nobody asks.
    let mut again = Phone::stranger(&yard.hub.base);
    again.cookie.clone_from(&first.cookie);
    let reply = again.post("/api/join", &asks);
    assert_eq!(reply.of(200)["person"], "RT");
    let entry = yard.truck.log().pop().expect("an entry");
    assert_eq!(entry["body"]["handset"], json!(first.device()));
    // Whoever says to be RT is RT, in the log as in the list.
    asks["same_person"] = json!(true);
    let reply = Phone::stranger(&yard.hub.base).post("/api/join", &asks);
    reply.of(200);
    let entry = yard.truck.log().pop().expect("an entry");
    assert!(entry["body"]["same_as"].is_string(), "{entry}");
}

#[test]
fn a_removed_phone_is_out_at_once_with_its_socket() {
    let yard = Yard::open();
    let phone = yard.ground();
    let mut screen = phone.socket();
    screen.until("hello", |value| value["kind"] == "hello");
    yard.truck
        .says(&json!({ "kind": "remove_phone", "device": phone.device() }));
    let bye = screen.until("a last word", |value| value["kind"] == "bye");
    assert_eq!(bye["why"], "removed");
    screen.until_closed();
    assert_eq!(phone.get("/api/log").status, 401);
    phone.is_refused(401, &reading("P-1", "4.70"));
    assert!(Socket::try_open(&phone, &phone.base).is_err());
}

#[test]
fn the_laptop_supervises_by_the_link_in_its_terminal() {
    let yard = Yard::open();
    assert_eq!(yard.truck.me()["roles"], json!(["supervisor"]));
    let codes = yard.truck.json("/api/codes");
    let codes = codes["codes"].as_array().expect("codes");
    assert!(
        codes
            .iter()
            .all(|code| code["svg"].as_str().is_some_and(|svg| svg.contains("<svg")))
    );
    assert_eq!(yard.ground().get("/api/codes").status, 403);
    assert_eq!(yard.ground().get("/api/export").status, 403);
}

#[test]
fn one_phone_holds_ground_and_supervisor() {
    let yard = Yard::open();
    let both = yard.truck.lets_in("PN", &["ground", "supervisor"], None);
    both.says(&crate::harness::yard::set_up());
    both.says(&json!({ "kind": "set_aim", "on": ["PAD"], "aim": 0, "why": "as drawn" }));
    for topic in ["ground", "supervisor", "sheet"] {
        both.socket().view(topic, |_| true);
    }
}

#[test]
fn renewed_codes_void_the_old_ones_and_leave_phones_in() {
    let yard = Yard::open();
    let old = yard.truck.code(&["ground"], None);
    let phone = yard.ground();
    yard.truck.says(&json!({ "kind": "renew_codes" }));
    let stranger = Phone::stranger(&yard.hub.base);
    assert_eq!(stranger.get(&format!("/api/join/{old}")).status, 404);
    let fresh = yard.truck.code(&["ground"], None);
    assert_ne!(fresh, old);
    assert_eq!(stranger.get(&format!("/api/join/{fresh}")).status, 200);
    assert_eq!(phone.get("/api/me").status, 200);
}

#[test]
fn a_restart_keeps_codes_and_cookies() {
    let yard = Yard::open();
    let code = yard.truck.code(&["ground"], None);
    let phone = yard.ground();
    let yard = yard.stop().start();
    assert_eq!(yard.truck.code(&["ground"], None), code);
    assert_eq!(phone.at(&yard.hub.base).me()["person"], "RT");
}
