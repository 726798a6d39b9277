//! The hub in one piece, in process: let in, say, see, restart, halt.

use std::net::TcpListener;
use std::path::Path;
use std::time::Duration;

use day::asked::{Asked, By, Command};
use day::said::day::OpenDay;
use day::said::join::RenewCodes;
use day::said::stop::StopAll;
use day::time::Time;
use futures_util::{SinkExt as _, StreamExt as _};
use reqwest::header::{COOKIE, ORIGIN, SET_COOKIE};
use reqwest::redirect::Policy;
use serde_json::{Value, json};
use tokio::sync::oneshot;
use tokio_tungstenite::tungstenite::Message;
use tokio_tungstenite::tungstenite::client::IntoClientRequest as _;

use crate::config::{Config, Pace};
use crate::publish::Publish;
use crate::store::{self, DataFolder};
use crate::writer::{NotDone, Writer};
use crate::{Started, clock::Clock, opening, run, site_file};

/// No wait in these tests takes longer, unless it fails.
const PATIENCE: Duration = Duration::from_secs(20);

/// A hub that runs in this very process.
struct Running {
    up: Started,
    http: reqwest::Client,
    stop: oneshot::Sender<()>,
    ended: actix_web::rt::task::JoinHandle<()>,
}

impl Running {
    async fn start(data: &Path) -> Self {
        let site = concat!(
            env!("CARGO_MANIFEST_DIR"),
            "/../../fixtures/site/example.toml"
        );
        let listener = TcpListener::bind("127.0.0.1:0").unwrap();
        let config = Config {
            site: site_file::read(Path::new(site)).unwrap(),
            data: data.to_owned(),
            listen: listener.local_addr().unwrap(),
            pace: Pace::Stepped {
                start: Time(1_900_000_000_000),
            },
            day: Some("2030-03-17".into()),
            wifi: None,
        };
        let (stop, stopped) = oneshot::channel::<()>();
        let (started, up) = oneshot::channel();
        let ended = actix_web::rt::spawn(async move {
            let shutdown = async {
                let _ = stopped.await;
            };
            run(config, listener, shutdown, |_, up| drop(started.send(up)))
                .await
                .unwrap();
        });
        let http = reqwest::Client::builder()
            .no_proxy()
            .redirect(Policy::none())
            .build()
            .unwrap();
        Self {
            up: up.await.unwrap(),
            http,
            stop,
            ended,
        }
    }

    async fn end(self) {
        self.stop.send(()).unwrap();
        self.ended.await.unwrap();
    }

    fn url(&self, path: &str) -> String {
        format!("{}{path}", self.up.base)
    }

    /// The laptop's own browser.
    async fn own(&self) -> String {
        let answer = self
            .http
            .get(self.url(&format!("/own/{}", self.up.own)))
            .send()
            .await
            .unwrap();
        cookie(&answer)
    }

    /// A phone that is let in by the day's code for this machine, or for the ground.
    async fn phone(&self, person: &str, machine: Option<&str>) -> String {
        let own = self.own().await;
        let codes = self.get("/api/codes", &own).await;
        let role = if machine.is_some() {
            "operator"
        } else {
            "ground"
        };
        let code = codes["codes"]
            .as_array()
            .unwrap()
            .iter()
            .find(|code| code["roles"] == json!([role]) && code["machine"].as_str() == machine)
            .unwrap();
        let code = code["url"].as_str().unwrap().rsplit('/').next().unwrap();
        let body = json!({"code": code, "person": person, "roles": [role], "language": "english", "unit": "tenths"});
        let answer = self
            .http
            .post(self.url("/api/join"))
            .json(&body)
            .send()
            .await
            .unwrap();
        assert_eq!(answer.status(), 200);
        cookie(&answer)
    }

    async fn get(&self, path: &str, cookie: &str) -> Value {
        let answer = self
            .http
            .get(self.url(path))
            .header(COOKIE, cookie)
            .send()
            .await
            .unwrap();
        assert_eq!(answer.status(), 200, "{path}");
        answer.json().await.unwrap()
    }

    async fn say(&self, cookie: &str, key: &str, command: Value) -> (u16, Value) {
        let body = json!({"key": key, "made_at": 1_900_000_000_000_i64, "command": command});
        let request = self
            .http
            .post(self.url("/api/say"))
            .header(COOKIE, cookie)
            .json(&body);
        let answer = request.send().await.unwrap();
        (answer.status().as_u16(), answer.json().await.unwrap())
    }

    async fn socket(&self, cookie: &str) -> Socket {
        let address = self.up.base.replace("http://", "ws://") + "/api/live";
        let mut request = address.into_client_request().unwrap();
        request
            .headers_mut()
            .insert("Cookie", cookie.parse().unwrap());
        request
            .headers_mut()
            .insert("Origin", self.up.base.parse().unwrap());
        Socket(tokio_tungstenite::connect_async(request).await.unwrap().0)
    }
}

fn cookie(answer: &reqwest::Response) -> String {
    let cookie = answer.headers()[SET_COOKIE].to_str().unwrap();
    assert!(
        cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict"),
        "{cookie}"
    );
    cookie.split(';').next().unwrap().to_owned()
}

struct Socket(
    tokio_tungstenite::WebSocketStream<tokio_tungstenite::MaybeTlsStream<tokio::net::TcpStream>>,
);

impl Socket {
    /// The next message that fits, whatever comes before it.
    async fn until(&mut self, fits: impl Fn(&Value) -> bool) -> Value {
        let wait = async {
            loop {
                if let Message::Text(text) = self.0.next().await.unwrap().unwrap() {
                    let value: Value = serde_json::from_str(&text).unwrap();
                    if fits(&value) {
                        return value;
                    }
                }
            }
        };
        tokio::time::timeout(PATIENCE, wait)
            .await
            .expect("the message never came")
    }

    async fn says(&mut self, word: Value) {
        self.0.send(Message::text(word.to_string())).await.unwrap();
    }
}

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
    let view = screen.until(|value| value["kind"] == "view").await;
    assert_eq!(view["topic"], "operator");
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
    hub.phone("OW", Some("EX-1")).await;
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
        [head]
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

/// The writer alone, on a store whose disk can be made to fail.
async fn writer(folder: &Path, publish: &Publish) -> (Writer, std::thread::JoinHandle<()>) {
    let mut opened = store::open(DataFolder::take(folder).unwrap()).unwrap();
    let state = opening::state(&mut opened).unwrap();
    let clock = Clock::stepped(Time(1_900_000_000_000));
    let (writer, thread) = Writer::start(opened.store, state, clock, publish.clone()).unwrap();
    let open = Command::OpenDay(OpenDay {
        day: "2030-03-17".into(),
    });
    writer.ask(hubs(open)).await.unwrap();
    (writer, thread)
}

fn hubs(command: Command) -> Asked {
    Asked {
        key: String::new(),
        by: By::hub(),
        made_at: Time(0),
        command,
    }
}

#[actix_web::test]
async fn a_log_that_can_not_be_kept_halts_the_hub_for_good() {
    let folder = tempfile::tempdir().unwrap();
    let publish = Publish::default();
    let (writer, thread) = writer(folder.path(), &publish).await;
    // A day's file of that very name is there already: the next day can't be begun.
    let head = publish.pulse().head;
    let name = format!("log/{:010}-2030-03-18.jsonl", head + 1);
    std::fs::write(folder.path().join(name), b"").unwrap();
    let next = Command::OpenDay(OpenDay {
        day: "2030-03-18".into(),
    });
    assert_eq!(writer.ask(hubs(next)).await, Err(NotDone::NotKept));
    assert!(publish.pulse().halted.is_some());
    assert_eq!(publish.pulse().head, head);
    let stop = Command::StopAll(StopAll { why: String::new() });
    assert_eq!(writer.ask(hubs(stop)).await, Err(NotDone::NotKept));
    writer.stop();
    thread.join().unwrap();
    let opened = store::open(DataFolder::take(folder.path()).unwrap()).unwrap();
    assert_eq!(opened.store.head().seq, head);
}

#[actix_web::test]
async fn a_replay_of_the_log_is_the_state_that_was_live() {
    let folder = tempfile::tempdir().unwrap();
    let publish = Publish::default();
    let (first, thread) = writer(folder.path(), &publish).await;
    let renew = Asked {
        by: By {
            roles: vec![day::asked::Role::Supervisor],
            ..By::hub()
        },
        ..hubs(Command::RenewCodes(RenewCodes {}))
    };
    first.ask(renew).await.unwrap();
    let day = Command::OpenDay(OpenDay {
        day: "2030-03-18".into(),
    });
    first.ask(hubs(day)).await.unwrap();
    first.stop();
    thread.join().unwrap();
    let mut opened = store::open(DataFolder::take(folder.path()).unwrap()).unwrap();
    assert!(opened.opening.is_some());
    let from_opening = opening::state(&mut opened).unwrap();
    assert!(opened.opening.is_none());
    let from_the_start = opening::state(&mut opened).unwrap();
    assert_eq!(from_opening, from_the_start);
    assert_eq!(from_opening.seq, publish.pulse().head);
}
