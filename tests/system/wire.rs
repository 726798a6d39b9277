//! What does not fit the wire: malformed, too large, from another site's page, too often. Each with what to do.

use serde_json::{Value, json};

use crate::harness::phone::now_ms;
use crate::harness::socket::Socket;
use crate::harness::yard::Yard;

fn stop() -> Value {
    json!({ "kind": "stop_all", "why": "test" })
}

#[test]
fn malformed_bodies_are_refused_with_the_reason() {
    let yard = Yard::open();
    let ground = yard.ground();
    let head = yard.hub_head();
    let now = now_ms();
    let with = |key: &Value, command: &Value| {
        json!({ "key": key, "made_at": now, "command": command }).to_string()
    };
    let key = json!("key-00001");
    let bodies = [
        String::new(),
        "{".to_owned(),
        "[]".to_owned(),
        "null".to_owned(),
        "\u{0}\u{1}".to_owned(),
        json!({ "key": "key-00001", "command": stop() }).to_string(),
        json!({ "key": "key-00001", "made_at": "noon", "command": stop() }).to_string(),
        json!({ "key": "key-00001", "made_at": now, "command": stop(), "by": "hub" }).to_string(),
        with(&json!(7), &stop()),
        with(&json!("short"), &stop()),
        with(&json!("k".repeat(65)), &stop()),
        with(&json!("key 0001 <>"), &stop()),
        with(&json!("llave-ñ-01"), &stop()),
        with(&key, &json!({})),
        with(&key, &json!({ "kind": "dig_everything" })),
        with(&key, &json!({ "kind": "stop_all", "extra": 1 })),
        with(&key, &json!({ "kind": "take_reading", "mark": "P-1" })),
        with(
            &key,
            &json!({ "kind": "place_machine", "machine": "EX-1", "at": { "x": 1.5, "y": 0 } }),
        ),
        with(
            &key,
            &json!({ "kind": "place_machine", "machine": "EX-1", "at": { "x": 1e300, "y": 0 } }),
        ),
    ];
    for body in bodies {
        let reply = ground.post_text("/api/say", &body, &ground.base);
        assert_eq!(reply.status, 400, "{body}: {}", reply.text);
        let text = reply.json()["english"]
            .as_str()
            .unwrap_or_default()
            .to_owned();
        assert!(text.len() > 10, "{body}: {text:?}");
    }
    assert_eq!(yard.hub_head(), head, "nothing of it is in the log");
}

#[test]
fn what_is_too_large_is_refused_and_the_hub_goes_on() {
    let yard = Yard::open();
    let ground = yard.ground();
    // The hub takes 64 KiB.
    let why = "x".repeat(64 * 1024);
    let refused = ground.is_refused(413, &json!({ "kind": "stop_all", "why": why }));
    assert!(
        refused["english"]
            .as_str()
            .is_some_and(|text| text.contains("Send less"))
    );
    ground.says(&stop());
}

#[test]
fn another_sites_page_can_not_speak_for_a_phone() {
    let yard = Yard::open();
    let ground = yard.ground();
    let body = json!({ "key": "key-00001", "made_at": now_ms(), "command": stop() }).to_string();
    let port = ground.base.rsplit(':').next().expect("a port");
    let other_port = port.parse::<u16>().expect("a port") ^ 1;
    for origin in [
        "http://elsewhere.example".to_owned(),
        "null".to_owned(),
        "http://127.0.0.1".to_owned(),
        format!("http://127.0.0.1:{other_port}"),
        format!("https://127.0.0.1:{port}"),
        format!("http://127.0.0.1:{port}.example"),
    ] {
        let reply = ground.post_text("/api/say", &body, &origin);
        assert_eq!(reply.status, 403, "{origin}: {}", reply.text);
        assert!(Socket::try_open(&ground, &origin).is_err(), "{origin}");
        let code = yard.truck.code(&["ground"], None);
        let joining = crate::harness::phone::joining(&code, "XX", &["ground"]).to_string();
        assert_eq!(
            ground.post_text("/api/join", &joining, &origin).status,
            403,
            "{origin}"
        );
    }
    assert_eq!(
        ground.post_text("/api/say", &body, &ground.base).status,
        200
    );
}

#[test]
fn unknown_addresses_say_so() {
    let yard = Yard::open();
    let ground = yard.ground();
    assert_eq!(ground.get("/api/nothing").status, 404);
    assert_eq!(ground.get("/api/log/999999").status, 404);
    assert_eq!(ground.get("/api/log/minus").status, 400);
    assert_eq!(ground.get("/api/log?limit=many").status, 400);
    assert_eq!(ground.get("/assets/none.js").status, 404);
    assert_eq!(ground.post("/somewhere", &json!({})).status, 404);
}

#[test]
fn guesses_at_codes_run_out_but_the_crew_goes_on() {
    let yard = Yard::open();
    let ground = yard.ground();
    let tries: Vec<u16> = (0..30)
        .map(|guess| ground.get(&format!("/api/join/GUESSED{guess:03}")).status)
        .collect();
    assert_eq!(tries[0], 404);
    assert_eq!(tries[29], 429);
    assert_eq!(
        ground.get("/own/00000000000000000000000000000000").status,
        429
    );
    ground.says(&stop());
}

#[test]
fn names_that_are_not_on_the_site_are_refused_by_name() {
    let yard = Yard::open();
    let ground = yard.ground();
    crate::harness::yard::prove_laser(&ground);
    let mut cases = vec![
        (crate::harness::yard::reading("P-99", "4.70"), "P-99"),
        (json!({ "kind": "say_moved", "machine": "EX-9" }), "EX-9"),
        (
            json!({ "kind": "shoot_check", "set_up": "S1", "benchmark": "BM-9", "rod": "A", "text": "3.48" }),
            "BM-9",
        ),
    ];
    // A set-up is read SETUP-9, or PUESTA-9: a mark may be S9 too.
    for (field, name, read) in [
        ("rod", "Z", "Z"),
        ("set_up", "S9", "-9"),
        ("machine", "EX-9", "EX-9"),
    ] {
        let mut command = crate::harness::yard::reading("P-1", "4.70");
        command[field] = json!(name);
        cases.push((command, read));
    }
    for (command, name) in cases {
        let refused = ground.is_refused(409, &command);
        assert_eq!(refused["refusal"]["kind"], "unknown", "{refused}");
        for language in ["english", "spanish"] {
            let said = refused[language].as_str().unwrap_or_default();
            assert!(said.contains(name), "{language}: {said}");
        }
    }
}
