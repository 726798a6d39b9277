//! An operator's screen: it shows, answers each heartbeat, and says which call has reached it.

use std::time::Duration;

use actix_web::http::header::{COOKIE, ORIGIN};
use actix_web::rt;
use awc::Client;
use awc::ws::{Frame, Message};
use futures_util::{SinkExt, StreamExt};
use serde_json::{Value, json};
use tokio::sync::watch;
use tokio::task::JoinHandle;
use tracing::debug;

use super::hub::Phone;
use crate::socket::assembled::Assembled;

/// How long a screen waits before it tries the hub again.
const AGAIN: Duration = Duration::from_millis(500);

/// How long a picture is waited for; a stop may stand before it.
const PATIENCE: Duration = Duration::from_secs(5);

/// No message to a screen is longer than this.
const LONGEST_FRAME: usize = 16 << 20;

/// What the screen shows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Picture {
    /// The live call.
    pub(super) call: Option<u64>,
    /// Whether the hub knows that it is here.
    pub(super) delivered: bool,
}

impl Picture {
    /// Whether the call is here, and the hub knows it.
    pub(super) fn has(&self, call: u64) -> bool {
        self.call == Some(call) && self.delivered
    }
}

/// A screen in a cab; gone when it is dropped.
#[derive(Debug)]
pub(super) struct Cab {
    picture: watch::Receiver<Option<Picture>>,
    task: JoinHandle<()>,
}

impl Drop for Cab {
    fn drop(&mut self) {
        self.task.abort();
    }
}

impl Cab {
    /// Opens the screen of a phone that has joined.
    pub(super) fn open(base: &str, phone: &Phone) -> Self {
        let (sender, picture) = watch::channel(None);
        let task = rt::spawn(live(base.to_owned(), phone.clone(), sender));
        Self { picture, task }
    }

    /// Waits until the screen's picture is as wanted; false when it has not become so in time.
    pub(super) async fn shows(&self, wanted: impl FnMut(&Option<Picture>) -> bool) -> bool {
        let mut picture = self.picture.clone();
        let seen = tokio::time::timeout(PATIENCE, picture.wait_for(wanted)).await;
        matches!(seen, Ok(Ok(_)))
    }

    /// Whether the hub has sent the screen away: another phone took its place.
    pub(super) fn is_out(&self) -> bool {
        self.task.is_finished()
    }

    /// Waits until the hub has sent the screen away.
    pub(super) async fn sent_away(&self) {
        let mut picture = self.picture.clone();
        while picture.changed().await.is_ok() {}
    }
}

/// Stays connected until the hub says good-bye.
async fn live(base: String, phone: Phone, picture: watch::Sender<Option<Picture>>) {
    loop {
        match connected(&base, &phone, &picture).await {
            Ok(why) => {
                debug!("a demo screen was sent away: {why}");
                return;
            }
            Err(why) => debug!("a demo screen lost its link: {why}"),
        }
        tokio::time::sleep(AGAIN).await;
    }
}

/// One connection: returns the hub's reason for its good-bye, or why the link broke.
async fn connected(
    base: &str,
    phone: &Phone,
    picture: &watch::Sender<Option<Picture>>,
) -> Result<String, String> {
    let request = Client::new()
        .ws(format!(
            "{base}/api/live?page={}",
            web_ui::entry().unwrap_or_default()
        ))
        .max_frame_size(LONGEST_FRAME)
        .header(COOKIE, phone.cookie.as_str())
        .header(ORIGIN, base);
    let (_, mut socket) = request.connect().await.map_err(|e| e.to_string())?;
    let shows = json!({ "kind": "visible", "visible": true });
    socket
        .send(Message::Text(shows.to_string().into()))
        .await
        .map_err(|e| e.to_string())?;
    let mut screen = Assembled::default();
    while let Some(frame) = socket.next().await {
        let text = match frame.map_err(|e| e.to_string())? {
            Frame::Text(text) => text,
            Frame::Ping(what) => {
                let pong = socket.send(Message::Pong(what)).await;
                pong.map_err(|e| e.to_string())?;
                continue;
            }
            _ => continue,
        };
        let told: Value = serde_json::from_slice(&text).map_err(|e| e.to_string())?;
        let answer = match told["kind"].as_str() {
            Some("beat") => Some(json!({ "kind": "alive" })),
            Some("view") => {
                let view = screen.take(&told);
                let own = view.filter(|_| told["topic"] == "operator");
                own.and_then(|view| painted(&view, picture))
            }
            Some("bye") => return Ok(told["why"].as_str().unwrap_or_default().to_owned()),
            _ => None,
        };
        if let Some(answer) = answer {
            socket
                .send(Message::Text(answer.to_string().into()))
                .await
                .map_err(|e| e.to_string())?;
        }
    }
    Err("closed".to_owned())
}

/// Paints the newest view; a call that is new here is answered for.
fn painted(view: &Value, picture: &watch::Sender<Option<Picture>>) -> Option<Value> {
    let call = &view["screen"]["call"];
    let id = call["id"].as_u64();
    let delivered = !call["delivered_at"].is_null();
    picture.send_replace(Some(Picture {
        call: id,
        delivered,
    }));
    id.filter(|_| !delivered)
        .map(|id| json!({ "kind": "have", "call": id }))
}
