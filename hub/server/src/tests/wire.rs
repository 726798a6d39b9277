//! Letting in, saying, seeing and reading, over the wire.

use reqwest::header::{COOKIE, ORIGIN};
use serde_json::{Value, json};

use super::running::Running;

fn stop() -> Value {
    json!({"kind": "stop_all", "why": "test"})
}

#[actix_web::test]
async fn nobody_reads_or_writes_without_being_let_in() {
    let folder = tempfile::tempdir().unwrap();
    let hub = Running::start(folder.path()).await;
    for path in [
        "/api/me",
        "/api/log",
        "/api/log/1",
        "/api/log.csv",
        "/api/export",
        "/api/codes",
        "/api/live",
    ] {
        let answer = hub.http.get(hub.url(path)).send().await.unwrap();
        assert_eq!(answer.status(), 401, "{path}");
    }
    assert_eq!(hub.say("rodcall=guessed", "key-0001", stop()).await.0, 401);
    for path in ["/", "/j/ANYTHING", "/healthz", "/api/openapi.json"] {
        let answer = hub.http.get(hub.url(path)).send().await.unwrap();
        assert_eq!(answer.status(), 200, "{path}");
    }
    let ground = hub.phone("RT", None).await;
    for path in ["/api/export", "/api/codes"] {
        let answer = hub
            .http
            .get(hub.url(path))
            .header(COOKIE, &ground)
            .send()
            .await
            .unwrap();
        assert_eq!(answer.status(), 403, "{path}");
    }
    let other = hub
        .http
        .post(hub.url("/api/say"))
        .header(COOKIE, &ground)
        .header(ORIGIN, "http://elsewhere");
    let body = json!({"key": "key-0001", "made_at": 0, "command": stop()});
    assert_eq!(other.json(&body).send().await.unwrap().status(), 403);
    hub.end().await;
}

#[actix_web::test]
async fn wrong_codes_are_soon_no_longer_heard() {
    let folder = tempfile::tempdir().unwrap();
    let hub = Running::start(folder.path()).await;
    let mut heard = Vec::new();
    for _ in 0..12 {
        let answer = hub
            .http
            .get(hub.url("/api/join/BBBBBBBBBB"))
            .send()
            .await
            .unwrap();
        heard.push(answer.status().as_u16());
    }
    assert_eq!(heard[..10], [404; 10]);
    assert_eq!(heard[10..], [429; 2]);
    hub.end().await;
}

#[actix_web::test]
async fn the_same_key_gets_the_same_answer_and_no_second_entry_even_after_a_restart() {
    let folder = tempfile::tempdir().unwrap();
    let hub = Running::start(folder.path()).await;
    let ground = hub.phone("RT", None).await;
    let first = hub.say(&ground, "key-0001", stop()).await;
    assert_eq!(first.0, 200);
    let head = hub.get("/api/log", &ground).await["head"].clone();
    assert_eq!(hub.say(&ground, "key-0001", stop()).await, first);
    assert_eq!(hub.get("/api/log", &ground).await["head"], head);
    hub.end().await;
    let hub = Running::start(folder.path()).await;
    assert_eq!(hub.say(&ground, "key-0001", stop()).await, first);
    assert_eq!(hub.get("/api/log", &ground).await["head"], head);
    assert_eq!(hub.say(&ground, "short", stop()).await.0, 400);
    assert_eq!(
        hub.say(&ground, "key-0002", json!({"kind": "renew_codes"}))
            .await
            .0,
        403
    );
    hub.end().await;
}

#[actix_web::test]
async fn a_screen_gets_its_views_its_beats_and_a_last_word() {
    let folder = tempfile::tempdir().unwrap();
    let hub = Running::start(folder.path()).await;
    let (ground, cab) = (
        hub.phone("RT", None).await,
        hub.phone("OW", Some("EX-1")).await,
    );
    let mut screen = hub.socket(&cab).await;
    assert_eq!(screen.until(|_| true).await["kind"], "hello");
    // A cab has the ground's view and the site's sheet too, for its plan: they come in any order.
    screen
        .until(|value| value["kind"] == "view" && value["topic"] == "operator")
        .await;
    screen
        .until(|value| value["kind"] == "beat" && value["halted"] == false)
        .await;
    screen.says(json!({"kind": "clock", "t0": 42})).await;
    let clock = screen.until(|value| value["kind"] == "clock").await;
    assert_eq!(
        (&clock["t0"], &clock["at"]),
        (&json!(42), &json!(1_900_000_000_000_i64))
    );
    let (status, stopped) = hub.say(&ground, "key-0001", stop()).await;
    assert_eq!(status, 200);
    screen
        .until(|value| value["kind"] == "view" && value["seq"] == stopped["last"])
        .await;
    let mut supervisor = hub.socket(&hub.own().await).await;
    let shows = |screen: &'static str| {
        move |value: &Value| {
            value["topic"] == "supervisor"
                && value["view"]["machines"][0]["screen"]["kind"] == screen
        }
    };
    screen
        .says(json!({"kind": "visible", "visible": true}))
        .await;
    supervisor.until(shows("showing")).await;
    drop(screen);
    supervisor.until(shows("lost")).await;
    let mut replaced = hub.socket(&cab).await;
    replaced.until(|value| value["kind"] == "hello").await;
    let give = json!({"kind": "give_cab", "machine": "EX-1"});
    assert_eq!(hub.say(&cab, "key-0002", give).await.0, 200);
    hub.phone("OV", Some("EX-1")).await;
    assert_eq!(
        replaced.until(|value| value["kind"] == "bye").await["why"],
        "retired"
    );
    hub.end().await;
    assert_eq!(
        supervisor.until(|value| value["kind"] == "bye").await["why"],
        "closing"
    );
}

#[actix_web::test]
async fn the_log_is_read_by_number_and_by_name() {
    let folder = tempfile::tempdir().unwrap();
    let hub = Running::start(folder.path()).await;
    let ground = hub.phone("RT", None).await;
    hub.say(&ground, "key-0001", stop()).await;
    let seqs = |page: &Value| -> Vec<u64> {
        page["lines"]
            .as_array()
            .unwrap()
            .iter()
            .map(|line| line["seq"].as_u64().unwrap())
            .collect()
    };
    let all = hub.get("/api/log?after=0", &ground).await;
    let head = all["head"].as_u64().unwrap();
    assert_eq!(seqs(&all), (1..=head).collect::<Vec<_>>());
    assert_eq!(
        seqs(
            &hub.get("/api/log?after=1&limit=1&before=&mark=", &ground)
                .await
        ),
        [2]
    );
    assert_eq!(
        seqs(&hub.get("/api/log?before=0&limit=2", &ground).await),
        [head, head - 1]
    );
    assert_eq!(
        seqs(&hub.get("/api/log?person=RT&kind=stopped", &ground).await),
        // The stop is followed by the near miss that it opens.
        [head - 1]
    );
    assert_eq!(
        seqs(&hub.get("/api/log?person=NOBODY", &ground).await),
        Vec::<u64>::new()
    );
    let entry = hub.get(&format!("/api/log/{head}"), &ground).await;
    assert_eq!(entry["entry"]["seq"], head);
    assert_eq!(entry["hash"].as_str().unwrap().len(), 64);
    hub.end().await;
}

#[actix_web::test]
async fn a_file_is_shown_before_it_is_used() {
    let folder = tempfile::tempdir().unwrap();
    let hub = Running::start(folder.path()).await;
    let send = async |cookie: &str, query: &str, body: Vec<u8>| {
        let sent = hub
            .http
            .post(hub.url(&format!("/api/import/preview{query}")));
        let answer = sent.header(COOKIE, cookie).body(body).send().await.unwrap();
        (
            answer.status().as_u16(),
            answer.json::<Value>().await.unwrap_or_default(),
        )
    };
    let ground = hub.phone("RT", None).await;
    assert_eq!(send(&ground, "", b"1,2,3,4\n".to_vec()).await.0, 403);
    let boss = hub.own().await;
    let table = "id,x,y,z,colour\nA,0,0,1,\nB,10,0,1,\nC,0,10,1,\n";
    let (status, seen) = send(&boss, "?unit=foot", table.into()).await;
    assert_eq!(status, 200);
    assert_eq!(
        (&seen["usable"], &seen["triangles"]),
        (&json!(true), &json!(1))
    );
    assert_eq!(seen["not_understood"][0]["line"], 1);
    let (status, seen) = send(&boss, "", b"id,x,y\nA,zero,0\n".to_vec()).await;
    assert_eq!((status, &seen["usable"]), (200, &json!(false)));
    assert_eq!(seen["not_understood"][0]["line"], 2);
    assert_eq!(send(&boss, "?on_plan=true", table.into()).await.0, 400);
    assert_eq!(send(&boss, "", vec![0xff, 0xfe]).await.0, 400);
    assert_eq!(send(&boss, "?unit=cubit", table.into()).await.0, 400);
    // A target's surface comes from a file that was sent, by its name; one that was not sent is asked for.
    let faults = async |file: &str| {
        let typed = json!({
            "id": "FG", "name": "finish", "surface": "finish grade",
            "tolerance": { "high": "0.10 ft", "low": "0.20 ft" },
            "triangles": { "file": file, "unit": "foot" },
        });
        let draft = json!({ "put": [{ "of": "target", "typed": typed }], "retire": [] });
        let asked = hub.http.post(hub.url("/api/site/draft"));
        let answer = asked.header(COOKIE, &boss).json(&draft).send().await;
        let seen: Value = answer.unwrap().json().await.unwrap();
        seen["faults"].to_string()
    };
    assert!(faults("fg.csv").await.contains("send it with IMPORT"));
    let sent = send(&boss, "?unit=foot&name=fg.csv", table.into()).await;
    assert_eq!(sent.0, 200);
    assert!(!faults("fg.csv").await.contains("IMPORT"));
    hub.end().await;
}
