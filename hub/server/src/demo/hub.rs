//! A phone's way to the hub: the public HTTP interface, nothing else.

use std::error::Error;
use std::time::Duration;

use actix_web::http::StatusCode;
use actix_web::http::header::{CONTENT_TYPE, COOKIE, HeaderMap, ORIGIN, SET_COOKIE};
use awc::{Client, ClientRequest, ClientResponse, SendClientRequest};
use day::answer::{Answer, Outcome};
use day::asked::{Command, Role};
use day::time::Time;
use earthwork::words::ScreenUnit;
use serde::Deserialize;
use serde_json::{Value, json};
use words::Language;

use super::DemoError;

/// A busy hub is asked again this often: two minutes in all.
const TRIES: u32 = 480;
/// The pause between two tries.
const PAUSE: Duration = Duration::from_millis(250);
/// No answer to the demo is longer than this, its day's log included.
const LONGEST_ANSWER: usize = 64 << 20;

/// The hub, as a phone reaches it.
#[derive(Clone)]
pub(super) struct Hub {
    base: String,
    http: Client,
}

/// What came back.
struct Came {
    status: StatusCode,
    headers: HeaderMap,
    text: String,
}

/// A phone that is let in, known to the hub by its cookie.
#[derive(Clone, Debug)]
pub(super) struct Phone {
    /// The cookie header.
    pub(super) cookie: String,
}

/// What a command came to.
#[derive(Clone, Debug)]
pub(super) enum Said {
    /// The hub took it.
    Answered(Answer),
    /// The hub refused it, and said what to do instead.
    Refused(String),
}

impl Said {
    /// The call that it sent, and to which machine.
    pub(super) fn call(&self) -> Option<(u64, &str)> {
        match self {
            Self::Answered(Answer {
                outcome: Outcome::Called { call, machine, .. },
                ..
            }) => Some((*call, machine)),
            _ => None,
        }
    }
}

/// What a phone hears of itself.
#[derive(Debug, Deserialize)]
struct Own {
    device: String,
}

/// A join code of today.
#[derive(Clone, Debug, Deserialize)]
pub(super) struct Code {
    roles: Vec<Role>,
    machine: Option<String>,
    url: String,
}

impl Code {
    /// Whether it lets somebody in with these roles, for this machine.
    pub(super) fn admits(&self, roles: &[Role], machine: Option<&str>) -> bool {
        roles.iter().all(|role| self.roles.contains(role)) && self.machine.as_deref() == machine
    }

    fn code(&self) -> &str {
        self.url.rsplit('/').next().unwrap_or_default()
    }
}

#[derive(Deserialize)]
struct Codes {
    codes: Vec<Code>,
}

#[derive(Deserialize)]
struct Refused {
    english: String,
}

impl Hub {
    /// The hub at an address such as `http://127.0.0.1:4100`.
    pub(super) fn at(base: &str) -> Self {
        let http = Client::builder()
            .disable_redirects()
            .timeout(Duration::from_secs(30))
            .finish();
        Self {
            base: base.trim_end_matches('/').to_owned(),
            http,
        }
    }

    /// Its address.
    pub(super) fn base(&self) -> &str {
        &self.base
    }

    /// The laptop's own browser, let in by the link in the terminal.
    pub(super) async fn own(&self, secret: &str) -> Result<Phone, DemoError> {
        let what = format!("{}/own/…", self.base);
        let link = format!("{}/own/{secret}", self.base);
        let came = came(&what, fresh(self.http.get(link)).send()).await?;
        cookie(&what, &came)
    }

    /// Today's join codes.
    pub(super) async fn codes(&self, by: &Phone) -> Result<Vec<Code>, DemoError> {
        let (what, text) = self.get("/api/codes", by).await?;
        let codes: Codes = serde_json::from_str(&text).map_err(|error| DemoError::Answer {
            what,
            answer: error.to_string(),
        })?;
        Ok(codes.codes)
    }

    /// The device that a phone is to the hub.
    pub(super) async fn device(&self, by: &Phone) -> Result<String, DemoError> {
        let (what, text) = self.get("/api/me", by).await?;
        let me: Own = serde_json::from_str(&text).map_err(|error| DemoError::Answer {
            what,
            answer: error.to_string(),
        })?;
        Ok(me.device)
    }

    /// The day's log as it is kept, one entry a line.
    pub(super) async fn export(&self, by: &Phone) -> Result<String, DemoError> {
        Ok(self.get("/api/export", by).await?.1)
    }

    async fn get(&self, path: &str, by: &Phone) -> Result<(String, String), DemoError> {
        let what = format!("{}{path}", self.base);
        let request = fresh(self.http.get(&what));
        let request = request.insert_header((COOKIE, by.cookie.as_str()));
        let Came { status, text, .. } = came(&what, request.send()).await?;
        if status.is_success() {
            return Ok((what, text));
        }
        Err(DemoError::Answer {
            what,
            answer: format!("{status} {text}"),
        })
    }

    /// Joins with a code.
    pub(super) async fn join(
        &self,
        code: &Code,
        person: &str,
        roles: &[Role],
        language: Language,
    ) -> Result<Phone, DemoError> {
        let what = format!("{}/api/join", self.base);
        let body = json!({
            "code": code.code(),
            "person": person,
            "roles": roles,
            "language": language,
            "unit": ScreenUnit::Tenths,
            // After a new start the same people join once more.
            "same_person": true,
        });
        for _ in 0..TRIES {
            let came = self.post(&what, None, &body).await?;
            if !asks_to_wait(came.status) {
                return cookie(&what, &came);
            }
            tokio::time::sleep(PAUSE).await;
        }
        Err(DemoError::Halted { answer: what })
    }

    /// Says one thing; a busy hub is asked again under the same key.
    pub(super) async fn say(
        &self,
        by: &Phone,
        key: &str,
        made_at: Time,
        command: &Command,
    ) -> Result<Said, DemoError> {
        let what = format!("{}/api/say", self.base);
        let body = json!({ "key": key, "made_at": made_at, "command": command });
        let mut last = String::new();
        for _ in 0..TRIES {
            let Came { status, text, .. } = self.post(&what, Some(by), &body).await?;
            if asks_to_wait(status) {
                last = text;
                tokio::time::sleep(PAUSE).await;
                continue;
            }
            return said(status, &text).ok_or_else(|| DemoError::Answer {
                what: format!("{what} ({key})"),
                answer: format!("{status} {text}"),
            });
        }
        Err(DemoError::Halted { answer: last })
    }

    /// Brings the bytes of a photo that was promised; a busy hub is asked again.
    pub(super) async fn bring(
        &self,
        by: &Phone,
        photo: &str,
        bytes: &'static [u8],
    ) -> Result<(), DemoError> {
        let what = format!("{}/api/photos/{photo}", self.base);
        let mut last = String::new();
        for _ in 0..TRIES {
            let request = fresh(self.http.put(&what))
                .insert_header((ORIGIN, self.base.as_str()))
                .insert_header((COOKIE, by.cookie.as_str()))
                .insert_header((CONTENT_TYPE, "image/jpeg"));
            let Came { status, text, .. } = came(&what, request.send_body(bytes)).await?;
            if status.is_success() {
                return Ok(());
            }
            if !asks_to_wait(status) {
                let answer = format!("{status} {text}");
                return Err(DemoError::Answer { what, answer });
            }
            last = text;
            tokio::time::sleep(PAUSE).await;
        }
        Err(DemoError::Halted { answer: last })
    }

    async fn post(&self, what: &str, by: Option<&Phone>, body: &Value) -> Result<Came, DemoError> {
        let mut request = fresh(self.http.post(what));
        request = request.insert_header((ORIGIN, self.base.as_str()));
        if let Some(phone) = by {
            request = request.insert_header((COOKIE, phone.cookie.as_str()));
        }
        came(what, request.send_json(body)).await
    }
}

/// The hub closes a line that is idle: a new one for each request never meets that.
fn fresh(request: ClientRequest) -> ClientRequest {
    request.force_close()
}

/// The whole answer to a request.
async fn came(what: &str, sent: SendClientRequest) -> Result<Came, DemoError> {
    let mut answer: ClientResponse = sent.await.map_err(|error| unreachable(what, error))?;
    let body = answer.body().limit(LONGEST_ANSWER).await;
    let body = body.map_err(|error| unreachable(what, error))?;
    Ok(Came {
        status: answer.status(),
        headers: answer.headers().clone(),
        text: String::from_utf8_lossy(&body).into_owned(),
    })
}

fn unreachable(what: &str, source: impl Error + 'static) -> DemoError {
    DemoError::Unreachable {
        what: what.to_owned(),
        source: Box::new(source),
    }
}

/// Too many at once, or busy: kept, and sent again.
fn asks_to_wait(status: StatusCode) -> bool {
    matches!(
        status,
        StatusCode::SERVICE_UNAVAILABLE | StatusCode::TOO_MANY_REQUESTS
    )
}

fn said(status: StatusCode, text: &str) -> Option<Said> {
    match status {
        StatusCode::OK => serde_json::from_str(text).ok().map(Said::Answered),
        // A phone that is out was replaced by whoever came to try the demo.
        StatusCode::CONFLICT | StatusCode::FORBIDDEN | StatusCode::UNAUTHORIZED => {
            let refused: Refused = serde_json::from_str(text).ok()?;
            Some(Said::Refused(refused.english))
        }
        _ => None,
    }
}

/// The device's cookie out of an answer that lets it in.
fn cookie(what: &str, came: &Came) -> Result<Phone, DemoError> {
    let cookies = came.headers.get_all(SET_COOKIE);
    let found = cookies
        .filter_map(|value| value.to_str().ok()?.split(';').next())
        .find(|pair| pair.starts_with("rodcall="));
    found
        .map(|pair| Phone {
            cookie: pair.to_owned(),
        })
        .ok_or_else(|| DemoError::Answer {
            what: what.to_owned(),
            answer: format!("{} without a cookie", came.status),
        })
}
