//! The hub under load: phones that keep their lines open, as browsers do, and screens that read what comes.

use std::fs;
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::{Duration, Instant};

use futures_util::{SinkExt as _, StreamExt as _};
use serde_json::{Value, json};
use tokio::io::{AsyncReadExt as _, AsyncWriteExt as _};
use tokio::net::TcpStream;
use tokio::sync::mpsc::UnboundedSender;
use tokio_tungstenite::tungstenite::Message;
use tokio_tungstenite::tungstenite::client::IntoClientRequest as _;

use crate::harness::phone::{Phone, now_ms};
use crate::harness::yard::{Yard, day_file, prove_laser, reading, second_benchmark, set_up};
use crate::screens::{News, Screens, Sizes, Turn};
use crate::site::{self, Size};

/// Ground phones that post in turn: the hub lets each one post so often and no more.
const POSTERS: usize = 8;
/// Of a crew's screens so many are supervisors', when there are more than that.
const SUPERVISORS: usize = 2;

/// From each place of the laser but the last so many marks are read again.
const READ_FROM_EACH: usize = 10;

/// A hub whose laser is proven, with its crew. Opened and closed outside of the measurement's runtime: phones have their own.
pub(crate) struct Crew {
    yard: Yard,
    ground: Vec<Phone>,
    cab: Phone,
    supervisor: Phone,
    /// Marks that are read in turn, all by the machine whose cab has a screen.
    marks: Vec<String>,
    /// The number of the set-up that they are read from.
    set_up: usize,
}

impl Crew {
    /// A fresh hub on a job of that size, with a reading on each of its marks.
    pub(crate) fn open(size: Size) -> Self {
        let mut marks = Vec::new();
        let yard = Yard::open_in(|folder| marks = site::write(folder, size));
        let ground: Vec<Phone> = (0..POSTERS).map(|_| yard.ground()).collect();
        let cab = yard.cab("EX-1");
        for machine in ["EX-2", "EX-3"] {
            yard.cab(machine);
        }
        prove_laser(&ground[0]);
        for (turn, mark) in marks.iter().enumerate() {
            ground[turn % POSTERS].says(&reading(mark, "4.70"));
        }
        for number in 2..=size.set_ups {
            set_up_again(&ground[0], number);
            for turn in 0..READ_FROM_EACH {
                ground[turn % POSTERS].says(&shot(&marks[turn], number));
            }
        }
        let supervisor = yard.truck.lets_in("PN", &["ground", "supervisor"], None);
        marks.truncate(size.pad_marks());
        Self {
            set_up: size.set_ups,
            yard,
            ground,
            cab,
            supervisor,
            marks,
        }
    }
}

/// A reading from the set-up of that number.
fn shot(mark: &str, number: usize) -> Value {
    let mut shot = reading(mark, "4.70");
    shot["set_up"] = json!(format!("S{number}"));
    shot
}

/// The laser is taken down, set up as the set-up of that number, and proven again.
fn set_up_again(phone: &Phone, number: usize) {
    phone.says(
        &json!({ "kind": "close_set_up", "set_up": format!("S{}", number - 1), "why": "moved" }),
    );
    phone.says(&set_up());
    let mut check = second_benchmark();
    check["set_up"] = json!(format!("S{number}"));
    let checked = phone.says(&check);
    assert_eq!(checked["outcome"]["usable"], true, "{checked}");
}

/// The phones' side of the hub.
pub(crate) struct Line<'a> {
    crew: &'a Crew,
    posters: Vec<Poster<'a>>,
    screens: Screens,
    turns: usize,
    last: u64,
    sent: (usize, usize),
    /// Bytes of views that came to the screens of the ground.
    bytes: Arc<AtomicUsize>,
    /// How many screens are of the ground.
    of_ground: usize,
}

impl<'a> Line<'a> {
    /// So many screens: one in the cab, two supervisors', the others on the ground.
    pub(crate) async fn open(crew: &'a Crew, count: usize) -> Self {
        let screens = Screens::new(count);
        let bytes = Arc::new(AtomicUsize::new(0));
        let of_cab = Arc::new(AtomicUsize::new(0));
        watch(&crew.cab, 0, "operator", screens.tell.clone(), of_cab).await;
        let supervisors = if count > SUPERVISORS + 1 {
            SUPERVISORS
        } else {
            0
        };
        for screen in 1..count {
            let (phone, topic, bytes) = if screen <= supervisors {
                let not_counted = Arc::new(AtomicUsize::new(0));
                (&crew.supervisor, "supervisor", not_counted)
            } else {
                (&crew.ground[screen % POSTERS], "ground", Arc::clone(&bytes))
            };
            watch(phone, screen, topic, screens.tell.clone(), bytes).await;
        }
        let mut posters = Vec::new();
        for phone in &crew.ground {
            posters.push(Poster::open(phone).await);
        }
        Self {
            crew,
            posters,
            screens,
            turns: 0,
            last: 0,
            sent: (0, 0),
            bytes,
            of_ground: (count - 1).saturating_sub(supervisors),
        }
    }

    /// One reading, to its answer and to every screen.
    pub(crate) async fn turn(&mut self) -> Turn {
        self.turns += 1;
        let mark = &self.crew.marks[self.turns % self.crew.marks.len()];
        let command = shot(mark, self.crew.set_up);
        let body = json!({ "key": format!("load-{:06}", self.turns), "made_at": now_ms(), "command": command });
        let poster = &mut self.posters[self.turns % POSTERS];
        let request = poster.request(&body);
        let posted = Instant::now();
        let answer = poster.post(&request).await;
        let answered = Instant::now();
        self.sent = (request.len(), answer.len());
        let answer: Value = serde_json::from_slice(&answer).expect("JSON");
        assert_eq!(answer["outcome"]["kind"], "called", "{answer}");
        let number = answer["last"].as_u64().expect("a number");
        self.last = number;
        self.screens.turn(number, posted, answered).await
    }

    /// What a turn moves, as it was seen so far.
    pub(crate) fn sizes(&self) -> Sizes {
        let day = fs::read_to_string(day_file(&self.crew.yard.data())).expect("the day");
        let of_turns = day.lines().filter(|line| line.contains("\"load-"));
        let kept: usize = of_turns.map(|line| line.len() + 1).sum();
        Sizes {
            request: self.sent.0,
            kept: kept / self.turns,
            answer: self.sent.1,
            // With one screen it is the cab's: about as much.
            view: (self.ground_bytes() / self.turns).max(500),
        }
    }

    /// The last entry that was answered.
    pub(crate) fn head(&self) -> u64 {
        self.last
    }

    /// Bytes of views that each screen of the ground has been sent so far; zero without one.
    pub(crate) fn ground_bytes(&self) -> usize {
        self.bytes.load(Ordering::Relaxed) / self.of_ground.max(1)
    }

    /// Processor time of the hub so far, by the kernel's account: in hundredths of a second.
    pub(crate) fn cpu(&self) -> Duration {
        let path = format!("/proc/{}/stat", self.crew.yard.hub.child.id());
        let stat = fs::read_to_string(path).expect("the hub runs");
        // Behind the name in brackets the 12th and 13th fields are user and system ticks (proc_pid_stat(5)).
        let fields = stat.rsplit(')').next().unwrap_or_default();
        let ticks = fields.split_whitespace().skip(11).take(2);
        let ticks: u64 = ticks
            .map(|field| field.parse::<u64>().expect("ticks"))
            .sum();
        Duration::from_millis(ticks * 10)
    }
}

/// A phone that keeps its line open.
struct Poster<'a> {
    phone: &'a Phone,
    line: TcpStream,
}

impl<'a> Poster<'a> {
    async fn open(phone: &'a Phone) -> Self {
        let host = phone.base.trim_start_matches("http://").to_owned();
        let line = TcpStream::connect(host).await.expect("the hub");
        line.set_nodelay(true).expect("a quick line");
        Self { phone, line }
    }

    fn request(&self, body: &Value) -> Vec<u8> {
        let (base, cookie) = (&self.phone.base, &self.phone.cookie);
        let host = base.trim_start_matches("http://");
        let body = body.to_string();
        let length = body.len();
        format!("POST /api/say HTTP/1.1\r\nHost: {host}\r\nOrigin: {base}\r\nCookie: {cookie}\r\nContent-Type: application/json\r\nContent-Length: {length}\r\n\r\n{body}").into_bytes()
    }

    /// Posts, and reads the answer's body.
    async fn post(&mut self, request: &[u8]) -> Vec<u8> {
        self.line.write_all(request).await.expect("the hub");
        let mut answer = Vec::new();
        loop {
            let read = self.line.read_buf(&mut answer).await.expect("an answer");
            assert!(read > 0, "the hub closed the line");
            let text = String::from_utf8_lossy(&answer);
            let Some((head, body)) = text.split_once("\r\n\r\n") else {
                continue;
            };
            assert!(head.starts_with("HTTP/1.1 200"), "{text}");
            let length = head.lines().find_map(|line| {
                let (name, value) = line.split_once(':')?;
                let ours = name.eq_ignore_ascii_case("content-length");
                ours.then(|| value.trim().parse::<usize>().ok()).flatten()
            });
            if body.len() >= length.expect("a length") {
                return body.as_bytes().to_vec();
            }
        }
    }
}

/// Reads what comes to a screen, and says when a view of its topic came and up to which entry it goes.
async fn watch(
    phone: &Phone,
    screen: usize,
    topic: &'static str,
    tell: UnboundedSender<News>,
    bytes: Arc<AtomicUsize>,
) {
    let host = phone.base.trim_start_matches("http://").to_owned();
    let page = web_ui::entry().expect("a page");
    let request = format!("ws://{host}/api/live?page={page}").into_client_request();
    let mut request = request.expect("a request");
    let headers = request.headers_mut();
    headers.insert("Cookie", phone.cookie.parse().expect("a header"));
    headers.insert("Origin", phone.base.parse().expect("a header"));
    let stream = TcpStream::connect(host).await.expect("the hub");
    stream.set_nodelay(true).expect("a quick line");
    let opened = tokio_tungstenite::client_async(request, stream).await;
    let (mut socket, _) = opened.expect("a socket");
    tokio::spawn(async move {
        let begins = format!(r#"{{"kind":"view","topic":"{topic}","seq":"#);
        // The hub ends with the measurement.
        while let Some(Ok(message)) = socket.next().await {
            let Message::Text(text) = message else {
                continue;
            };
            if text.starts_with(r#"{"kind":"view""#) {
                bytes.fetch_add(text.len(), Ordering::Relaxed);
            }
            if let Some(rest) = text.strip_prefix(begins.as_str()) {
                let number = rest.split(',').next().and_then(|seq| seq.parse().ok());
                let news = (screen, number.expect("a number"), Instant::now());
                if tell.send(news).is_err() {
                    return;
                }
            } else if text.starts_with(r#"{"kind":"beat""#) {
                let alive = Message::text(r#"{"kind":"alive"}"#);
                if socket.send(alive).await.is_err() {
                    return;
                }
            }
        }
    });
}
