//! A hub that runs in this very process, and the phones that talk to it.

use std::net::TcpListener;
use std::path::Path;
use std::time::Duration;

use day::time::Time;
use futures_util::{SinkExt as _, StreamExt as _};
use reqwest::header::{COOKIE, SET_COOKIE};
use reqwest::redirect::Policy;
use serde_json::{Value, json};
use tokio::sync::oneshot;
use tokio_tungstenite::tungstenite::Message;
use tokio_tungstenite::tungstenite::client::IntoClientRequest as _;

use crate::config::{Config, Pace};
use crate::socket::assembled::Assembled;
use crate::{Started, run, site_file};

/// No wait in these tests takes longer, unless it fails.
const PATIENCE: Duration = Duration::from_secs(20);

/// A hub that runs in this very process.
pub(super) struct Running {
    up: Started,
    pub(super) http: reqwest::Client,
    stop: oneshot::Sender<()>,
    ended: actix_web::rt::task::JoinHandle<()>,
}

impl Running {
    pub(super) async fn start(data: &Path) -> Self {
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

    pub(super) async fn end(self) {
        self.stop.send(()).unwrap();
        self.ended.await.unwrap();
    }

    pub(super) fn url(&self, path: &str) -> String {
        format!("{}{path}", self.up.base)
    }

    /// The laptop's own browser.
    pub(super) async fn own(&self) -> String {
        let answer = self
            .http
            .get(self.url(&format!("/own/{}", self.up.own)))
            .send()
            .await
            .unwrap();
        cookie(&answer)
    }

    /// A phone that is let in by the day's code for this machine, or for the ground.
    pub(super) async fn phone(&self, person: &str, machine: Option<&str>) -> String {
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

    pub(super) async fn get(&self, path: &str, cookie: &str) -> Value {
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

    pub(super) async fn say(&self, cookie: &str, key: &str, command: Value) -> (u16, Value) {
        let body = json!({"key": key, "made_at": 1_900_000_000_000_i64, "command": command});
        let request = self
            .http
            .post(self.url("/api/say"))
            .header(COOKIE, cookie)
            .json(&body);
        let answer = request.send().await.unwrap();
        (answer.status().as_u16(), answer.json().await.unwrap())
    }

    pub(super) async fn socket(&self, cookie: &str) -> Socket {
        let address = self.up.base.replace("http://", "ws://")
            + "/api/live?page="
            + &web_ui::entry().unwrap();
        let mut request = address.into_client_request().unwrap();
        request
            .headers_mut()
            .insert("Cookie", cookie.parse().unwrap());
        request
            .headers_mut()
            .insert("Origin", self.up.base.parse().unwrap());
        Socket {
            line: tokio_tungstenite::connect_async(request).await.unwrap().0,
            screen: Assembled::default(),
        }
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

pub(super) struct Socket {
    line: tokio_tungstenite::WebSocketStream<
        tokio_tungstenite::MaybeTlsStream<tokio::net::TcpStream>,
    >,
    screen: Assembled,
}

impl Socket {
    /// The next message that fits, whatever comes before it.
    pub(super) async fn until(&mut self, fits: impl Fn(&Value) -> bool) -> Value {
        let wait = async {
            loop {
                if let Message::Text(text) = self.line.next().await.unwrap().unwrap() {
                    let mut value: Value = serde_json::from_str(&text).unwrap();
                    if let Some(view) = self.screen.take(&value) {
                        value["view"] = view;
                    }
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

    pub(super) async fn says(&mut self, word: Value) {
        self.line
            .send(Message::text(word.to_string()))
            .await
            .unwrap();
    }
}
