//! A screen's socket: waits for what fits, answers each beat as a page does, hides nothing that came before.

use std::net::TcpStream;
use std::time::{Duration, Instant};

use rodcall::socket::assembled::Assembled;
use serde_json::{Value, json};
use tokio_tungstenite::tungstenite::client::IntoClientRequest as _;
use tokio_tungstenite::tungstenite::{self, Error, Message, WebSocket};

use super::PATIENCE;
use super::phone::Phone;

/// How long one look at the line may wait.
const LOOK: Duration = Duration::from_millis(20);

/// One screen's socket.
pub(crate) struct Socket {
    line: WebSocket<TcpStream>,
    /// Everything that has come, in order; each view as the screen had it then, whole.
    pub(crate) heard: Vec<Value>,
    screen: Assembled,
}

impl Socket {
    /// Opens the socket of a phone that is in, as the hub's own page does.
    pub(crate) fn open(phone: &Phone) -> Self {
        Self::try_open(phone, &phone.base).expect("the socket opens")
    }

    /// Opens the socket as a page of that origin does.
    pub(crate) fn try_open(phone: &Phone, origin: &str) -> Result<Self, Box<Error>> {
        let page = web_ui::entry().expect("a page");
        Self::open_as(phone, origin, &format!("?page={page}"))
    }

    /// Opens the socket with that said of the page.
    pub(crate) fn open_as(phone: &Phone, origin: &str, page: &str) -> Result<Self, Box<Error>> {
        let host = phone.base.strip_prefix("http://").expect("an address");
        let request = format!("ws://{host}/api/live{page}").into_client_request();
        let mut request = request.expect("a request");
        let headers = request.headers_mut();
        if !phone.cookie.is_empty() {
            headers.insert("Cookie", phone.cookie.parse().expect("a header"));
        }
        headers.insert("Origin", origin.parse().expect("a header"));
        let stream = TcpStream::connect(host).map_err(|error| Box::new(error.into()))?;
        let opened = tungstenite::client(request, stream);
        let (line, _) = opened.map_err(|error| match error {
            tungstenite::HandshakeError::Failure(error) => Box::new(error),
            tungstenite::HandshakeError::Interrupted(_) => Box::new(Error::ConnectionClosed),
        })?;
        let looks = line.get_ref().set_read_timeout(Some(LOOK));
        looks.expect("a line with a time limit");
        Ok(Self {
            line,
            heard: Vec::new(),
            screen: Assembled::default(),
        })
    }

    /// The next message; none when the line is closed or broken, or when nothing comes for a while.
    fn next(&mut self) -> Result<Option<Value>, Error> {
        match self.line.read() {
            Ok(Message::Text(text)) => {
                let mut value: Value = serde_json::from_str(&text).expect("JSON from the hub");
                if let Some(view) = self.screen.take(&value) {
                    value["view"] = view;
                }
                if value["kind"] == "beat" {
                    // A line that is gone shows at the next look.
                    let _ = self.line.send(Message::text(r#"{"kind":"alive"}"#));
                }
                self.heard.push(value.clone());
                Ok(Some(value))
            }
            Ok(Message::Close(_)) => Err(Error::ConnectionClosed),
            Ok(_) => Ok(None),
            Err(Error::Io(error))
                if [std::io::ErrorKind::WouldBlock, std::io::ErrorKind::TimedOut]
                    .contains(&error.kind()) =>
            {
                Ok(None)
            }
            Err(error) => Err(error),
        }
    }

    /// The next message that fits, whatever comes before it.
    pub(crate) fn until(&mut self, what: &str, fits: impl Fn(&Value) -> bool) -> Value {
        let deadline = Instant::now() + PATIENCE;
        loop {
            match self.next() {
                Ok(Some(value)) if fits(&value) => return value,
                Ok(_) => {}
                Err(error) => panic!("{error} while waiting for {what}; heard {}", self.last()),
            }
            assert!(
                Instant::now() < deadline,
                "waited in vain for {what}; heard {}",
                self.last()
            );
        }
    }

    /// The next view of this topic that fits; gives the view itself.
    pub(crate) fn view(&mut self, topic: &str, fits: impl Fn(&Value) -> bool) -> Value {
        let fits = |value: &Value| value["topic"] == topic && fits(&value["view"]);
        self.until(&format!("a view for the {topic}"), fits)["view"].take()
    }

    /// Waits until the hub has closed the line.
    pub(crate) fn until_closed(&mut self) {
        let deadline = Instant::now() + PATIENCE;
        while self.next().is_ok() {
            assert!(
                Instant::now() < deadline,
                "the line was never closed; heard {}",
                self.last()
            );
        }
    }

    fn last(&self) -> String {
        let last = &self.heard[self.heard.len().saturating_sub(3)..];
        format!("{} messages, at last {last:?}", self.heard.len())
    }

    /// Says a word of a page.
    pub(crate) fn says(&mut self, word: &Value) {
        let sent = self.line.send(Message::text(word.to_string()));
        sent.expect("the line is open");
    }

    /// Says that the page can be seen.
    pub(crate) fn shows(&mut self) {
        self.says(&json!({ "kind": "visible", "visible": true }));
    }
}
