//! One screen's socket: the newest views out, heartbeats out, words of the page in. Nothing queues behind a slow phone.

pub mod assembled;
pub mod words;

use std::collections::{BTreeMap, BTreeSet};
use std::time::{Duration, Instant};

use actix_web::web::{Data, Payload, Query};
use actix_web::{HttpRequest, HttpResponse, get, rt};
use actix_ws::{AggregatedMessage, AggregatedMessageStream, CloseCode, CloseReason, Session};
use day::asked::{Asked, Command, Role};
use day::said::receipt::Delivered;
use day::said::signature::ChainHead;
use tokio::time::{MissedTickBehavior, interval, timeout};
use tokio_stream::wrappers::WatchStream;
use tokio_stream::{StreamExt as _, StreamMap};

use crate::http::auth::{Known, OwnPage};
use crate::hub::Hub;
use crate::publish::{Board, Form, Gone, Phone, Topic};
use crate::{lookout, witness};
use words::{FromHub, FromPhone, Opened, Why};

/// Between two heartbeats, in the world's time whatever the hub's clock does.
const BEAT: Duration = Duration::from_secs(1);
/// A phone that takes nothing for so long is let go; it comes back and gets the newest view.
const SEND_PATIENCE: Duration = Duration::from_secs(3);
/// A link on which nothing at all comes back for so long is dead.
const SILENCE: Duration = Duration::from_secs(30);
/// Beats between two pings: a browser answers them by itself.
const PING_EVERY: u32 = 5;
/// A page has no need to say more in a second.
const WORDS_IN_A_BEAT: u32 = 60;

/// The socket of one screen.
#[contract::path(
    context_path = "/api",
    params(Opened),
    responses(
        (status = 101, body = FromHub, description = "Speaks FromHub and hears FromPhone from now on"),
        (status = 401, description = "Not in"),
        (status = 403, description = "Another site's page")
    )
)]
#[get("/live")]
pub(crate) async fn live(
    hub: Data<Hub>,
    known: Known,
    _: OwnPage,
    opened: Query<Opened>,
    request: HttpRequest,
    body: Payload,
) -> Result<HttpResponse, actix_web::Error> {
    let (answer, session, stream) = actix_ws::handle(&request, body)?;
    let talk = Talk {
        hub: hub.get_ref().clone(),
        day: hub.publish.known().day.clone(),
        phone: known.phone,
        form: opened.form(),
        session,
        heard: Instant::now(),
        beats: 0,
        words: 0,
        witnessed: false,
    };
    rt::spawn(talk.run(stream.aggregate_continuations()));
    Ok(answer)
}

/// One screen's talk with the hub.
struct Talk {
    hub: Hub,
    day: String,
    phone: Phone,
    form: Form,
    session: Session,
    heard: Instant,
    beats: u32,
    words: u32,
    witnessed: bool,
}

/// The socket is of no more use.
struct Over;

impl Talk {
    async fn run(mut self, mut stream: AggregatedMessageStream) {
        let why = match self.talk(&mut stream).await {
            Ok(why) => why,
            Err(Over) => return,
        };
        if self.send(&FromHub::Bye { why }).await.is_ok() {
            let reason = CloseReason {
                code: CloseCode::Away,
                description: None,
            };
            // The phone may be gone already.
            let _ = timeout(SEND_PATIENCE, self.session.close(Some(reason))).await;
        }
    }

    async fn talk(&mut self, stream: &mut AggregatedMessageStream) -> Result<Why, Over> {
        let publish = self.hub.publish.clone();
        let mut board = publish.watch_board();
        let mut closing = publish.watch_closing();
        let mut halts = publish.watch_halts();
        let mut screens: StreamMap<Topic, WatchStream<u64>> = topics(&self.phone)
            .into_iter()
            .map(|topic| (topic.clone(), WatchStream::new(publish.watch(topic))))
            .collect();
        self.hub.writer.wake();
        let mut has: BTreeMap<Topic, u64> = BTreeMap::new();
        let mut beat = interval(BEAT);
        beat.set_missed_tick_behavior(MissedTickBehavior::Delay);
        self.hello().await?;
        loop {
            tokio::select! {
                message = stream.recv() => match message {
                    Some(Ok(message)) => self.hear(message).await?,
                    Some(Err(_)) | None => return Err(Over),
                },
                Some((topic, _)) = screens.next() => {
                    let has = has.entry(topic.clone()).or_default();
                    if let Some((round, newer)) = publish.newer(&topic, *has, self.form) {
                        in_time(self.session.text(newer)).await?;
                        *has = round;
                    }
                }
                _ = beat.tick() => self.beat().await?,
                Ok(()) = halts.changed() => self.pulse().await?,
                Ok(()) = board.changed() => {
                    let board = board.borrow_and_update().clone();
                    if let Some(why) = self.out(&board) {
                        return Ok(why);
                    }
                }
                _ = closing.wait_for(|closing| *closing) => return Ok(Why::Closing),
            }
        }
    }

    async fn hello(&mut self) -> Result<(), Over> {
        let hello = FromHub::Hello {
            build: web_ui::build_id().to_owned(),
            device: self.phone.by.device.clone(),
            log: self.hub.secret.log(),
            at: self.hub.clock.now(),
            speed: self.hub.clock.speed(),
        };
        self.send(&hello).await
    }

    async fn beat(&mut self) -> Result<(), Over> {
        if self.heard.elapsed() > SILENCE {
            return Err(Over);
        }
        self.words = 0;
        self.beats = self.beats.wrapping_add(1);
        if self.beats.is_multiple_of(PING_EVERY) {
            in_time(self.session.ping(b"")).await?;
        }
        self.pulse().await
    }

    /// How far the log has come, and whether it goes on.
    async fn pulse(&mut self) -> Result<(), Over> {
        let pulse = self.hub.publish.pulse();
        let beat = FromHub::Beat {
            at: self.hub.clock.now(),
            speed: self.hub.clock.speed(),
            head: pulse.head,
            hash: pulse.hash,
            halted: pulse.halted.is_some(),
            stop: pulse.stop,
        };
        self.send(&beat).await
    }

    /// Why this phone is out, if it is.
    fn out(&self, board: &Board) -> Option<Why> {
        let device = &self.phone.by.device;
        let mut phones = board.phones.values();
        if let Some(phone) = phones.find(|phone| phone.by.device == *device) {
            return (phone.asks_who && !self.phone.asks_who).then_some(Why::AskWho);
        }
        Some(match board.gone.get(device) {
            Some(Gone::Retired) => Why::Retired,
            Some(Gone::Removed) => Why::Removed,
            // It had stayed in over the night for somebody in a keep-out, who is out now.
            None if board.was_in_before(device) => Why::DayOver,
            None if board.day == self.day => Why::Removed,
            None => Why::DayOver,
        })
    }

    async fn hear(&mut self, message: AggregatedMessage) -> Result<(), Over> {
        self.heard = Instant::now();
        match message {
            AggregatedMessage::Text(text) => {
                self.words += 1;
                if self.words > WORDS_IN_A_BEAT {
                    return Err(Over);
                }
                match serde_json::from_str(&text) {
                    Ok(word) => self.word(word).await,
                    Err(error) => {
                        tracing::debug!("a page said what nobody understands: {error}");
                        Ok(())
                    }
                }
            }
            AggregatedMessage::Ping(bytes) => in_time(self.session.pong(&bytes)).await,
            AggregatedMessage::Close(_) => Err(Over),
            AggregatedMessage::Binary(_) | AggregatedMessage::Pong(_) => Ok(()),
        }
    }

    async fn word(&mut self, word: FromPhone) -> Result<(), Over> {
        let device = self.phone.by.device.clone();
        let is_cab = self.phone.by.is(Role::Operator);
        self.hub.screens.heard(&device);
        match word {
            FromPhone::Clock { t0 } => {
                let at = self.hub.clock.now();
                self.send(&FromHub::Clock { t0, at }).await?;
            }
            FromPhone::Visible { visible } if is_cab => {
                self.hub.screens.visible(&device, visible);
                let hub = self.hub.clone();
                rt::spawn(async move { lookout::look(&hub).await });
            }
            FromPhone::Alive { page: Some(page) } if is_cab => {
                self.hub.screens.says(&device, page);
                let hub = self.hub.clone();
                rt::spawn(async move { lookout::look(&hub).await });
            }
            FromPhone::Have { call } if is_cab => self.delivered(call),
            FromPhone::Saw { seq, hash } if !self.witnessed => {
                // Once for each time that it comes.
                self.witnessed = true;
                witness::compare(&self.hub, &self.phone.by.person, ChainHead { seq, hash });
            }
            FromPhone::Have { .. }
            | FromPhone::Saw { .. }
            | FromPhone::Visible { .. }
            | FromPhone::Alive { .. } => {}
        }
        Ok(())
    }

    /// The call has arrived. One that is not live any more is no news.
    fn delivered(&self, call: u64) {
        let writer = self.hub.writer.clone();
        let asked = Asked {
            key: format!("have-{call}"),
            by: self.phone.by.clone(),
            made_at: self.hub.clock.now(),
            command: Command::Delivered(Delivered { call }),
        };
        rt::spawn(async move {
            if let Err(error) = writer.ask(asked).await {
                tracing::debug!("a delivery was not entered: {error}");
            }
        });
    }

    async fn send(&mut self, word: &FromHub) -> Result<(), Over> {
        let text = serde_json::to_string(word).or(Err(Over))?;
        in_time(self.session.text(text)).await
    }
}

/// What a phone's pages show.
fn topics(phone: &Phone) -> BTreeSet<Topic> {
    let mut topics = BTreeSet::new();
    if let (true, Some(machine)) = (phone.by.is(Role::Operator), &phone.by.machine) {
        topics.insert(Topic::Operator(machine.clone()));
    }
    if phone.by.roles == [Role::Visitor] {
        // What a supervisor chose for them, nothing else.
        topics.insert(Topic::Visitor(phone.by.person.clone()));
        return topics;
    }
    // The crew has the plan, and what stands on it.
    topics.insert(Topic::Ground);
    topics.insert(Topic::Sheet);
    if phone.by.is(Role::Supervisor) {
        topics.insert(Topic::Supervisor);
    }
    topics
}

async fn in_time<E>(send: impl Future<Output = Result<(), E>>) -> Result<(), Over> {
    match timeout(SEND_PATIENCE, send).await {
        Ok(Ok(())) => Ok(()),
        _ => Err(Over),
    }
}
