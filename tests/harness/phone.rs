//! A phone on the truck's network: a cookie of its own, commands with keys of its own, a socket.

use std::cell::Cell;
use std::time::{SystemTime, UNIX_EPOCH};

use reqwest::header::{CONTENT_TYPE, COOKIE, LOCATION, ORIGIN, SET_COOKIE};
use reqwest::{Client, RequestBuilder, redirect};
use serde_json::{Value, json};
use tokio::runtime::{Builder, Runtime};

use super::socket::Socket;

/// A phone, in or not.
pub(crate) struct Phone {
    http: Client,
    runtime: Runtime,
    /// Where it reaches the hub.
    pub(crate) base: String,
    /// Its cookie header; empty before it is in.
    pub(crate) cookie: String,
    keys: Cell<u64>,
}

/// What the hub answered.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Reply {
    /// The HTTP status; 0 when no answer came.
    pub(crate) status: u16,
    /// The body.
    pub(crate) text: String,
    /// The cookie that was set; empty when none was.
    pub(crate) cookie: String,
    /// Where it points to; empty when nowhere.
    pub(crate) location: String,
}

impl Reply {
    /// The body as JSON.
    pub(crate) fn json(&self) -> Value {
        serde_json::from_str(&self.text)
            .unwrap_or_else(|error| panic!("{error}: {} {}", self.status, self.text))
    }

    /// The body as JSON, when the status is the expected one.
    pub(crate) fn of(&self, status: u16) -> Value {
        assert_eq!(self.status, status, "{}", self.text);
        self.json()
    }
}

/// Milliseconds since 1970 on this machine's clock, which is the hub's too.
pub(crate) fn now_ms() -> i64 {
    let since = SystemTime::now().duration_since(UNIX_EPOCH);
    i64::try_from(since.expect("a clock behind 1970").as_millis()).expect("a date of this age")
}

impl Phone {
    /// A phone that is not in.
    pub(crate) fn stranger(base: &str) -> Self {
        let http = Client::builder()
            .no_proxy()
            // The hub closes a line that is idle: a new one for each request never meets that.
            .pool_max_idle_per_host(0)
            .redirect(redirect::Policy::none())
            .build()
            .expect("a client");
        let runtime = Builder::new_current_thread().enable_all().build();
        Self {
            http,
            runtime: runtime.expect("a runtime"),
            base: base.to_owned(),
            cookie: String::new(),
            keys: Cell::new(0),
        }
    }

    /// The phone that follows the laptop's own link.
    pub(crate) fn let_in_by_link(base: &str, path: &str) -> Self {
        let mut phone = Self::stranger(base);
        let reply = phone.get(path);
        assert_eq!((reply.status, reply.location.as_str()), (303, "/"));
        phone.cookie = reply.cookie;
        phone
    }

    /// The same phone, with the same cookie, at another address of the hub.
    pub(crate) fn at(&self, base: &str) -> Self {
        Self {
            cookie: self.cookie.clone(),
            keys: Cell::new(self.keys.get()),
            ..Self::stranger(base)
        }
    }

    /// Gets an address.
    pub(crate) fn get(&self, path: &str) -> Reply {
        self.send(self.http.get(format!("{}{path}", self.base)))
    }

    /// Gets a page that is there, as text.
    pub(crate) fn text(&self, path: &str) -> String {
        let reply = self.get(path);
        assert_eq!(reply.status, 200, "{path}: {}", reply.text);
        reply.text
    }

    /// Gets something that is there, as JSON.
    pub(crate) fn json(&self, path: &str) -> Value {
        self.get(path).of(200)
    }

    /// Posts a body as the hub's own page does.
    pub(crate) fn post(&self, path: &str, body: &Value) -> Reply {
        self.post_text(path, &body.to_string(), &self.base)
    }

    /// Posts any text as a page of that origin does.
    pub(crate) fn post_text(&self, path: &str, body: &str, origin: &str) -> Reply {
        let request = self.http.post(format!("{}{path}", self.base));
        let request = request
            .header(CONTENT_TYPE, "application/json")
            .header(ORIGIN, origin);
        self.send(request.body(body.to_owned()))
    }

    /// Puts some bytes, as the hub's own page does.
    pub(crate) fn put(&self, path: &str, bytes: &[u8]) -> Reply {
        let request = self.http.put(format!("{}{path}", self.base));
        let request = request.header(ORIGIN, &self.base);
        self.send(request.body(bytes.to_vec()))
    }

    /// Gets the bytes of something that is there.
    pub(crate) fn bytes(&self, path: &str) -> Vec<u8> {
        let request = self.http.get(format!("{}{path}", self.base));
        let answered = async {
            let answer = request.header(COOKIE, &self.cookie).send().await?;
            answer.error_for_status()?.bytes().await
        };
        let bytes = self.runtime.block_on(answered);
        bytes.expect("bytes that are there").to_vec()
    }

    fn send(&self, request: RequestBuilder) -> Reply {
        let request = match self.cookie.as_str() {
            "" => request,
            cookie => request.header(COOKIE, cookie),
        };
        let answered = async {
            let answer = request.send().await?;
            let header = |name| {
                let value = answer.headers().get(name);
                let value = value.and_then(|value| value.to_str().ok());
                value.unwrap_or_default().to_owned()
            };
            let cookie = header(SET_COOKIE);
            Ok::<_, reqwest::Error>(Reply {
                status: answer.status().as_u16(),
                cookie: cookie.split(';').next().unwrap_or_default().to_owned(),
                location: header(LOCATION),
                text: answer.text().await?,
            })
        };
        self.runtime
            .block_on(answered)
            .unwrap_or_else(|error| Reply {
                status: 0,
                text: error.to_string(),
                cookie: String::new(),
                location: String::new(),
            })
    }

    /// A key that this phone has not used.
    pub(crate) fn fresh_key(&self) -> String {
        self.keys.set(self.keys.get() + 1);
        format!("phone-key-{:06}", self.keys.get())
    }

    /// Says a command made now, with this key.
    pub(crate) fn say(&self, key: &str, command: &Value) -> Reply {
        self.say_made_at(key, now_ms(), command)
    }

    /// Says a command made then, with this key.
    pub(crate) fn say_made_at(&self, key: &str, made_at: i64, command: &Value) -> Reply {
        let body = json!({ "key": key, "made_at": made_at, "command": command });
        self.post("/api/say", &body)
    }

    /// Says a command that must be taken; gives the answer.
    pub(crate) fn says(&self, command: &Value) -> Value {
        self.say(&self.fresh_key(), command).of(200)
    }

    /// Says a command that must be refused with this status; gives the refusal.
    pub(crate) fn is_refused(&self, status: u16, command: &Value) -> Value {
        self.say(&self.fresh_key(), command).of(status)
    }

    /// Who this phone is.
    pub(crate) fn me(&self) -> Value {
        self.json("/api/me")
    }

    /// Its device name.
    pub(crate) fn device(&self) -> String {
        let me = self.me();
        me["device"].as_str().expect("a device").to_owned()
    }

    /// The whole log, an entry a line; for a supervisor.
    pub(crate) fn log(&self) -> Vec<Value> {
        let lines = self.text("/api/export");
        let entries = lines.lines().filter(|line| !line.starts_with("{\"photo\""));
        let entries = entries.map(serde_json::from_str);
        entries.collect::<Result<_, _>>().expect("JSON Lines")
    }

    /// The day's code that lets somebody in; for a supervisor.
    pub(crate) fn code(&self, roles: &[&str], machine: Option<&str>) -> String {
        let codes = self.json("/api/codes");
        let codes = codes["codes"].as_array().expect("codes");
        let fits =
            |code: &&Value| code["roles"] == json!(roles) && code["machine"] == json!(machine);
        let code = codes.iter().find(fits).expect("a code for them");
        let url = code["url"].as_str().expect("a link");
        url.rsplit('/').next().expect("a code").to_owned()
    }

    /// Lets another phone in by the day's code; this one supervises.
    pub(crate) fn lets_in(&self, person: &str, roles: &[&str], machine: Option<&str>) -> Self {
        let code = self.code(roles, machine);
        let mut phone = Self::stranger(&self.base);
        let reply = phone.post("/api/join", &joining(&code, person, roles));
        assert_eq!(reply.status, 200, "{}", reply.text);
        phone.cookie = reply.cookie;
        phone
    }

    /// Its socket.
    pub(crate) fn socket(&self) -> Socket {
        Socket::open(self)
    }
}

/// What the join form sends.
pub(crate) fn joining(code: &str, person: &str, roles: &[&str]) -> Value {
    json!({ "code": code, "person": person, "roles": roles, "language": "english", "unit": "tenths", "same_person": true })
}
