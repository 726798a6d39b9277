//! What is current, for everyone who looks: the newest view of each screen, who is known, how far the log has come.
//!
//! Each is one value in a `watch`: a slow phone jumps to the newest and nothing queues behind it.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Arc, Mutex, PoisonError};

use bytestring::ByteString;
use day::asked::{By, Role};
use day::site::{Frame, LineKind, Site};
use day::state::{Device, State};
use day::time::Time;
use earthwork::point::Point;
use earthwork::words::{Language, ScreenUnit};
use serde::Serialize;
use show::views;
use tokio::sync::watch;
use utoipa::ToSchema;

/// A screen's subject.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Topic {
    /// The cab of one machine.
    Operator(String),
    /// The ground person's page.
    Ground,
    /// The supervisor's page.
    Supervisor,
    /// What stays put: marks, targets, benchmarks.
    Sheet,
    /// The page of one visitor, by name.
    Visitor(String),
}

impl Topic {
    fn word(&self) -> &'static str {
        match self {
            Self::Operator(_) => "operator",
            Self::Ground => "ground",
            Self::Supervisor => "supervisor",
            Self::Sheet => "sheet",
            Self::Visitor(_) => "visitor",
        }
    }
}

/// Who is known and what the day is: all that joining and answering a phone needs.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Board {
    /// The job's name; empty before a site is read.
    pub site: String,
    /// The day's name; empty before one is open.
    pub day: String,
    /// How often the codes of the day were renewed.
    pub generation: u32,
    /// The day that the codes which hold were made for.
    pub codes_of: String,
    /// The machines, in the order of the site file.
    pub machines: Vec<String>,
    /// How the plan's coordinates come on to the site.
    pub frame: Option<Frame>,
    /// The lot's corners, by the first property line that has three; else the box around what the site knows.
    pub lot: Vec<Point>,
    /// Phones that are in, by the digest of their cookie.
    pub phones: BTreeMap<String, Phone>,
    /// Phones of people who ask to come in, are in, or spot for a machine, and whether their link is known to be lost.
    pub visiting: BTreeMap<String, bool>,
    /// Phones that are out and from which STOP alone is taken, by the digest of their cookie.
    pub stoppers: BTreeMap<String, Phone>,
    /// Phones that are out, and whether another screen took over.
    pub gone: BTreeMap<String, Gone>,
}

/// A phone that is in.
#[derive(Clone, Debug, PartialEq)]
pub struct Phone {
    /// Who it is, as entries name it.
    pub by: By,
    /// The screen's language.
    pub language: Language,
    /// The screen's unit.
    pub unit: ScreenUnit,
    /// It stayed in over the night, and nobody has said yet who holds it.
    pub asks_who: bool,
}

impl Phone {
    fn of(id: &str, device: &Device) -> Self {
        Self {
            by: By {
                device: id.to_owned(),
                person: device.person.clone(),
                roles: device.roles.clone(),
                machine: device.machine.clone(),
            },
            language: device.language,
            unit: device.unit,
            asks_who: device.asks_who,
        }
    }
}

/// Why a phone is out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Gone {
    /// A supervisor removed it.
    Removed,
    /// Another phone took its place in the cab.
    Retired,
}

/// The day that the codes which hold were made for.
fn codes_of(state: &State) -> String {
    let open = state.day.as_ref().map(|day| day.id.clone());
    let made_for = Some(&state.codes.made_for).filter(|day| !day.is_empty());
    made_for.cloned().or(open).unwrap_or_default()
}

/// The phones of spotters, and whether their link is known to be lost.
fn spotters(state: &State) -> impl Iterator<Item = (String, bool)> {
    let spotters = state.cabs.values().filter_map(|cab| cab.spotter.as_ref());
    spotters.map(|one| (one.device.clone(), one.lost.is_some()))
}

/// The corners of the first property line that goes around something; else of the box around what has a place.
fn lot(site: &Site) -> Vec<Point> {
    let property = site
        .lines
        .iter()
        .find(|line| line.kind == LineKind::Property && line.points.len() >= 3);
    let Some(property) = property else {
        let marks = site.marks.iter().map(|mark| mark.place);
        let known = site.benchmarks.iter().filter_map(|one| one.place);
        return boxed(marks.chain(known));
    };
    let mut corners = property.points.clone();
    if corners.first() == corners.last() {
        corners.pop();
    }
    corners
}

/// The corners of the box around places; none when there are none.
fn boxed(places: impl Iterator<Item = Point> + Clone) -> Vec<Point> {
    let (xs, ys) = (places.clone().map(|at| at.x), places.map(|at| at.y));
    let (east, north) = (xs.clone().max(), ys.clone().max());
    let (Some(west), Some(east), Some(south), Some(north)) = (xs.min(), east, ys.min(), north)
    else {
        return vec![];
    };
    [(west, south), (east, south), (east, north), (west, north)]
        .map(|(x, y)| Point { x, y })
        .to_vec()
}

impl Board {
    fn of(state: &State) -> Self {
        let mut board = Self {
            site: state
                .site()
                .map(|site| site.name.clone())
                .unwrap_or_default(),
            day: state
                .day
                .as_ref()
                .map(|day| day.id.clone())
                .unwrap_or_default(),
            generation: state.codes_generation,
            codes_of: codes_of(state),
            machines: state
                .site()
                .map(|site| {
                    site.machines
                        .iter()
                        .map(|machine| machine.id.clone())
                        .collect()
                })
                .unwrap_or_default(),
            frame: state.site().and_then(|site| site.frame.clone()),
            lot: state.site().map(lot).unwrap_or_default(),
            visiting: state
                .way_in
                .gates()
                .flat_map(|(_, gate)| gate.visits())
                .map(|(_, visit)| (visit.device.clone(), visit.lost.is_some()))
                .chain(spotters(state))
                .collect(),
            ..Self::default()
        };
        for (id, device) in &state.devices {
            if device.removed {
                let cab = device
                    .machine
                    .as_ref()
                    .and_then(|machine| state.cabs.get(machine));
                let replaced = cab.is_some_and(|cab| cab.device.is_some());
                let why = if replaced {
                    Gone::Retired
                } else {
                    Gone::Removed
                };
                board.gone.insert(id.clone(), why);
                continue;
            }
            let phone = Phone::of(id, device);
            board.phones.insert(device.token_digest.clone(), phone);
        }
        let stoppers = state.may_still_stop();
        let stoppers =
            stoppers.map(|(id, device)| (device.token_digest.clone(), Phone::of(id, device)));
        board.stoppers = stoppers.collect();
        board
    }

    /// Whether a phone was in on the day before and is not any more.
    pub fn was_in_before(&self, device: &str) -> bool {
        let mut before = self.stoppers.values();
        !self.gone.contains_key(device) && before.any(|phone| phone.by.device == device)
    }

    /// The operators' phones that are in.
    pub fn cabs(&self) -> impl Iterator<Item = &Phone> {
        self.phones
            .values()
            .filter(|phone| phone.by.is(Role::Operator))
    }
}

/// How far the log has come, and whether it still goes on.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Pulse {
    /// The last entry that is kept.
    pub head: u64,
    /// Its hash.
    pub hash: String,
    /// Why nothing is kept any more.
    pub halted: Option<String>,
    /// A stop that was pressed after that: it is on the screens and not in the log.
    pub stop: Option<UnkeptStop>,
}

/// A stop that a hub took that can't keep its log: it stands on the screens until the hub is started again, and then comes anew
/// from the phone that pressed it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct UnkeptStop {
    /// Who pressed.
    pub by: String,
    /// Why; may be empty.
    pub why: String,
    /// Since when.
    pub since: Time,
    /// The machine that it is for; every one when none is named.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
}

/// What is current; clones share it.
#[derive(Clone, Debug)]
pub struct Publish(Arc<Shared>);

#[derive(Debug)]
struct Shared {
    board: watch::Sender<Arc<Board>>,
    pulse: watch::Sender<Pulse>,
    halts: watch::Sender<u32>,
    indexed: watch::Sender<u64>,
    closing: watch::Sender<bool>,
    views: Mutex<BTreeMap<Topic, Channel>>,
}

#[derive(Debug)]
struct Channel {
    last: String,
    newest: watch::Sender<ByteString>,
}

impl Default for Publish {
    fn default() -> Self {
        Self(Arc::new(Shared {
            board: watch::Sender::default(),
            pulse: watch::Sender::default(),
            halts: watch::Sender::default(),
            indexed: watch::Sender::default(),
            closing: watch::Sender::default(),
            views: Mutex::default(),
        }))
    }
}

impl Publish {
    /// Says who is known, when that has changed.
    pub fn board(&self, state: &State) {
        let board = Board::of(state);
        self.0.board.send_if_modified(|known| {
            let changed = **known != board;
            if changed {
                *known = Arc::new(board);
            }
            changed
        });
    }

    /// Encodes each view once and hands it to whoever watches, when it has changed.
    pub fn views(&self, state: &State) {
        for machine in state.cabs.keys() {
            let view = views::operator::view(state, machine);
            self.view(Topic::Operator(machine.clone()), state.seq, view.as_ref());
        }
        self.view(
            Topic::Ground,
            state.seq,
            views::ground::view(state).as_ref(),
        );
        self.view(
            Topic::Supervisor,
            state.seq,
            views::supervisor::view(state).as_ref(),
        );
        self.view(Topic::Sheet, state.seq, views::sheet::view(state).as_ref());
        let visitors = state.devices.values();
        let visitors =
            visitors.filter(|device| !device.removed && device.roles.contains(&Role::Visitor));
        let people: BTreeSet<&String> = visitors.map(|device| &device.person).collect();
        for person in people {
            let view = views::visitor::view(state, person);
            self.view(Topic::Visitor(person.clone()), state.seq, view.as_ref());
        }
    }

    fn view(&self, topic: Topic, seq: u64, view: Option<&impl Serialize>) {
        let Some(view) = view else { return };
        let text = match serde_json::to_string(view) {
            Ok(text) => text,
            Err(error) => {
                tracing::error!("the {} view can't be written: {error}", topic.word());
                return;
            }
        };
        let mut views = self.0.views.lock().unwrap_or_else(PoisonError::into_inner);
        let word = topic.word();
        let channel = views.entry(topic).or_insert_with(Channel::new);
        if channel.last != text {
            let message =
                format!(r#"{{"kind":"view","topic":"{word}","seq":{seq},"view":{text}}}"#);
            channel.newest.send_replace(message.into());
            channel.last = text;
        }
    }

    /// The newest view of a topic, from now on; empty until there is one.
    pub fn watch(&self, topic: Topic) -> watch::Receiver<ByteString> {
        let mut views = self.0.views.lock().unwrap_or_else(PoisonError::into_inner);
        let channel = views.entry(topic).or_insert_with(Channel::new);
        channel.newest.subscribe()
    }

    /// Says how far the log has come.
    pub fn head(&self, seq: u64, hash: &str) {
        self.0.pulse.send_modify(|pulse| {
            pulse.head = seq;
            hash.clone_into(&mut pulse.hash);
        });
    }

    /// Says how far the index has come.
    pub fn indexed(&self, seq: u64) {
        self.0.indexed.send_replace(seq);
    }

    /// Says that nothing is kept any more, and why.
    pub fn halt(&self, why: &str) {
        self.0.pulse.send_modify(|pulse| {
            pulse.halted.get_or_insert_with(|| why.to_owned());
        });
        self.0.halts.send_modify(|halts| *halts += 1);
    }

    /// Shows a stop that could not be kept. One for every machine is not narrowed by one for a single machine.
    pub fn unkept_stop(&self, stop: UnkeptStop) {
        self.0.pulse.send_modify(|pulse| {
            let all = pulse.stop.as_ref().is_some_and(|one| one.machine.is_none());
            if !(all && stop.machine.is_some()) {
                pulse.stop = Some(stop);
            }
        });
        self.0.halts.send_modify(|halts| *halts += 1);
    }

    /// Says that the hub is closing.
    pub fn close(&self) {
        self.0.closing.send_replace(true);
    }

    /// Who is known now.
    pub fn known(&self) -> Arc<Board> {
        self.0.board.borrow().clone()
    }

    /// Who is known, from now on.
    pub fn watch_board(&self) -> watch::Receiver<Arc<Board>> {
        self.0.board.subscribe()
    }

    /// How far the log has come.
    pub fn pulse(&self) -> Pulse {
        self.0.pulse.borrow().clone()
    }

    /// Each time that the log ends for good, or a stop stands that it can't take: what a screen hears at once.
    pub fn watch_halts(&self) -> watch::Receiver<u32> {
        self.0.halts.subscribe()
    }

    /// How far the index has come, from now on.
    pub fn watch_indexed(&self) -> watch::Receiver<u64> {
        self.0.indexed.subscribe()
    }

    /// Whether the hub is closing, from now on.
    pub fn watch_closing(&self) -> watch::Receiver<bool> {
        self.0.closing.subscribe()
    }
}

impl Channel {
    fn new() -> Self {
        Self {
            last: String::new(),
            newest: watch::Sender::default(),
        }
    }
}
