//! The one writer: takes what waits, decides, keeps it in one durable write, answers, publishes, and indexes when it has a
//! moment to spare.
//!
//! It is an ordinary thread, because it waits for the disk. Nobody else changes the state.

mod indexing;
mod not_done;
mod spare;

use std::sync::mpsc::{Receiver, RecvTimeoutError, SyncSender, TrySendError, sync_channel};
use std::thread::JoinHandle;
use std::time::{Duration, Instant};

use day::answer::{self, Answer};
use day::asked::{Asked, By};
use day::chain::{self, Hash};
use day::entry::{Body, Entry};
use day::state::State;
use day::time::Time;
use show::views::parts::Due;
use tokio::sync::oneshot;

use crate::clock::Clock;
use crate::publish::{Publish, UnkeptStop};
use crate::store::index::Index;
use crate::store::{Kept, Store, StoreError};

use indexing::Behind;
pub use not_done::NotDone;
use not_done::{HaltIfLost, not_kept};
use spare::Spare;

/// Requests that may wait; when more come, they are told to come again.
const WAITING_ROOM: usize = 1_024;
/// Requests that are kept in one write.
const BATCH_MAX: usize = 64;
/// A deadline is looked at again at least this often: a laptop that slept wakes up late.
const LONGEST_WAIT: Duration = Duration::from_secs(1);

/// When nothing comes for so long, what is kept is taken into the index: by then the screens have got their views.
const INDEX_PAUSE: Duration = Duration::from_millis(5);
/// Kept entries wait no longer for the index, whatever comes.
const INDEX_LATEST: Duration = Duration::from_millis(50);

/// Where an answer goes.
type Reply = oneshot::Sender<Result<Answer, NotDone>>;

/// Reads what is kept, once.
type Look = Box<dyn FnOnce(&State) + Send>;

/// What the writer waits for.
enum Event {
    /// A request.
    Asked { asked: Box<Asked>, reply: Reply },
    /// Somebody wants to see what is kept.
    Look(Look),
    /// The clock was moved by hand.
    Stepped,
    /// Somebody began to watch a screen that nobody had watched.
    Wake,
    /// The index was made anew, or could not be.
    Indexed(Result<Index, StoreError>),
    /// The end.
    Stop,
}

/// How others reach the writer.
#[derive(Clone, Debug)]
pub struct Writer {
    events: SyncSender<Event>,
    publish: Publish,
}

impl Writer {
    /// Starts the writer's thread.
    ///
    /// # Errors
    /// When the system gives no thread.
    pub fn start(
        store: Store,
        state: State,
        clock: Clock,
        publish: Publish,
    ) -> Result<(Self, JoinHandle<()>), std::io::Error> {
        let (events, waiting) = sync_channel(WAITING_ROOM);
        let (bell, made) = (events.clone(), events.clone());
        clock.on_step(move || {
            // A full waiting room wakes the writer by itself.
            let _ = bell.try_send(Event::Stepped);
        });
        let head = store.head().hash.clone();
        publish.board(&state);
        publish.views(&state, &Due::ALL);
        publish.head(state.seq, &head);
        publish.indexed(state.seq);
        let shows = publish.clone();
        let mut desk = Desk {
            store,
            state,
            head,
            clock,
            publish,
            halted: false,
            behind: Behind::default(),
            spare: Spare::default(),
            made,
        };
        let thread = std::thread::Builder::new()
            .name("writer".into())
            .spawn(move || {
                let alarm = HaltIfLost(desk.publish.clone());
                desk.serve(&waiting);
                std::mem::forget(alarm);
            })?;
        Ok((
            Self {
                events,
                publish: shows,
            },
            thread,
        ))
    }

    /// Asks, and waits until the answer is kept.
    ///
    /// # Errors
    /// [`NotDone`].
    pub async fn ask(&self, asked: Asked) -> Result<Answer, NotDone> {
        let (reply, answer) = oneshot::channel();
        let asked = Box::new(asked);
        match self.events.try_send(Event::Asked { asked, reply }) {
            Ok(()) => answer.await.unwrap_or(Err(NotDone::NotKept)),
            Err(TrySendError::Full(_)) => Err(NotDone::Busy),
            // The writer is lost, or the hub closes.
            Err(TrySendError::Disconnected(Event::Asked { asked, .. }))
                if self.publish.pulse().halted.is_some() =>
            {
                Err(not_kept(&self.publish, &asked))
            }
            Err(TrySendError::Disconnected(_)) => Err(NotDone::Closing),
        }
    }

    /// Sees what is kept at this moment, as one value of its own.
    ///
    /// # Errors
    /// [`NotDone`], never a refusal.
    pub async fn look<T: Send + 'static>(
        &self,
        see: impl FnOnce(&State) -> T + Send + 'static,
    ) -> Result<T, NotDone> {
        let (reply, seen) = oneshot::channel();
        let look: Look = Box::new(move |state| {
            // Who has hung up need not see it.
            let _ = reply.send(see(state));
        });
        match self.events.try_send(Event::Look(look)) {
            Ok(()) => seen.await.map_err(|_gone| NotDone::NotKept),
            Err(TrySendError::Full(_)) => Err(NotDone::Busy),
            Err(TrySendError::Disconnected(_)) => Err(NotDone::Closing),
        }
    }

    /// Works out the views that somebody has begun to watch. A waiting room that is full does so by itself.
    pub fn wake(&self) {
        let _ = self.events.try_send(Event::Wake);
    }

    /// Ends the writer after what waits.
    pub fn stop(&self) {
        // A writer that is gone need not be stopped.
        let _ = self.events.send(Event::Stop);
    }
}

/// What the writer works with.
struct Desk {
    store: Store,
    state: State,
    head: Hash,
    clock: Clock,
    publish: Publish,
    halted: bool,
    behind: Behind,
    spare: Spare,
    /// Where an index that was made anew is handed in.
    made: SyncSender<Event>,
}

/// What is decided and not yet kept.
#[derive(Default)]
struct Batch {
    kept: Vec<Kept>,
    replies: Vec<(Reply, Result<Answer, NotDone>)>,
    openings: Vec<Opening>,
}

/// The state that a new day opens with, put by so that a restart need not read the days before.
struct Opening {
    first: u64,
    prev: Hash,
    state: Vec<u8>,
}

impl Desk {
    fn serve(&mut self, waiting: &Receiver<Event>) {
        loop {
            let mut events = match self.wait(waiting) {
                Ok(event) => vec![event],
                Err(RecvTimeoutError::Timeout) => Vec::new(),
                Err(RecvTimeoutError::Disconnected) => break,
            };
            while events.len() < BATCH_MAX
                && let Ok(event) = waiting.try_recv()
            {
                events.push(event);
            }
            if events.is_empty() {
                if self.spare.may_be_done() {
                    self.spare_moment();
                }
                self.catch_up();
            }
            if !self.turn(events) {
                break;
            }
            if self.spare.is_late() {
                self.spare_moment();
            }
            let due = |since: Instant| since.elapsed() >= INDEX_LATEST;
            if self.behind.since.is_some_and(due) {
                self.catch_up();
            }
        }
        self.catch_up();
        if let Err(error) = self.store.close() {
            tracing::warn!("{error}");
        }
    }

    fn wait(&self, waiting: &Receiver<Event>) -> Result<Event, RecvTimeoutError> {
        let due = day::next_deadline(&self.state).filter(|_| !self.halted);
        let wait = due.and_then(|due| self.clock.wait_for(due));
        let pause = self.behind.since.map(|_| INDEX_PAUSE);
        let spare = self.spare.since.map(|_| self.spare.pause());
        match wait
            .map(|wait| wait.min(LONGEST_WAIT))
            .into_iter()
            .chain(pause)
            .chain(spare)
            .min()
        {
            Some(wait) => waiting.recv_timeout(wait),
            None => waiting.recv().map_err(RecvTimeoutError::from),
        }
    }

    /// One round; false when it was the last.
    fn turn(&mut self, events: Vec<Event>) -> bool {
        let mut batch = Batch::default();
        let mut go_on = true;
        let mut looks = Vec::new();
        let mut wake = false;
        self.ended_by_itself(&mut batch);
        for event in events {
            match event {
                Event::Asked { asked, reply } => {
                    let answer = self.answer(&asked, &mut batch);
                    batch.replies.push((reply, answer));
                }
                Event::Look(look) => looks.push(look),
                Event::Stepped => {}
                Event::Wake => wake = true,
                Event::Indexed(made) => self.indexed_anew(made),
                Event::Stop => go_on = false,
            }
        }
        self.keep(batch);
        if wake && !self.halted {
            self.publish.views(&self.state, &Due::NOTHING);
        }
        // A state that could not be kept is shown to nobody.
        for look in looks.into_iter().filter(|_| !self.halted) {
            look(&self.state);
        }
        go_on
    }

    fn now(&self) -> Time {
        self.clock.now().max(self.state.at)
    }

    /// What ends without anybody's word: stale calls and the like.
    fn ended_by_itself(&mut self, batch: &mut Batch) {
        while !self.halted {
            let now = self.now();
            let Some(due) = day::next_deadline(&self.state).filter(|due| *due <= now) else {
                break;
            };
            // A stepped clock jumps; what fell due on the way is entered at its own moment.
            let at = if self.clock.is_stepped() {
                due.max(self.state.at)
            } else {
                now
            };
            let bodies = day::on_deadline(&self.state, at);
            if bodies.is_empty() || self.enter(&By::hub(), "", at, at, bodies, batch).is_err() {
                break;
            }
        }
    }

    fn answer(&mut self, asked: &Asked, batch: &mut Batch) -> Result<Answer, NotDone> {
        if self.halted {
            return Err(not_kept(&self.publish, asked));
        }
        if let Some(answer) = self.already(asked)? {
            return Ok(answer);
        }
        let now = self.now();
        let bodies = day::decide(&self.state, asked, now, &self.head)?;
        let made_at = asked.made_at.min(now);
        let first = batch.kept.len();
        self.enter(&asked.by, &asked.key, made_at, now, bodies, batch)
            .map_err(|error| {
                tracing::error!("{error}");
                NotDone::NotKept
            })?;
        let entries: Vec<Entry> = batch.kept[first..]
            .iter()
            .map(|kept| kept.entry.clone())
            .collect();
        Ok(answer::of(&entries))
    }

    /// The answer that this key already got, on this day or an older one.
    fn already(&mut self, asked: &Asked) -> Result<Option<Answer>, NotDone> {
        let (device, key) = (&asked.by.device, &asked.key);
        if key.is_empty() {
            return Ok(None);
        }
        if let Some(answer) = day::answered(&self.state, device, key) {
            return Ok(Some(answer));
        }
        // A day may have been opened since: what it left behind is not in the index yet.
        let behind: Vec<Entry> = self
            .behind
            .kept
            .iter()
            .map(|located| &located.entry)
            .filter(|entry| entry.key == *key && entry.by.device == *device)
            .cloned()
            .collect();
        if !behind.is_empty() {
            return Ok(Some(answer::of(&behind)));
        }
        match self.store.by_key(device, key) {
            Ok(entries) if entries.is_empty() => Ok(None),
            Ok(entries) => Ok(Some(answer::of(&entries))),
            // What is of this day is known without the index; of an older one nothing is said twice.
            Err(_) if self.is_of_this_day(asked.made_at) => Ok(None),
            Err(error) => {
                tracing::warn!("{error}");
                Err(NotDone::Busy)
            }
        }
    }

    fn is_of_this_day(&self, made_at: Time) -> bool {
        let day = self.state.day.as_ref();
        day.is_some_and(|day| made_at >= day.at)
    }

    /// Numbers, stamps, seals and applies, so that the next request in the batch sees it. Nothing is published yet.
    fn enter(
        &mut self,
        by: &By,
        key: &str,
        made_at: Time,
        at: Time,
        bodies: Vec<Body>,
        batch: &mut Batch,
    ) -> Result<(), chain::ChainError> {
        let mut following = day::Following::new(bodies);
        while let Some(body) = following.next(&self.state) {
            let entry = Entry {
                seq: self.state.seq + 1,
                at,
                made_at,
                by: by.clone(),
                key: key.to_owned(),
                body,
            };
            let sealed = chain::seal(&entry, &self.head)?;
            if matches!(entry.body, Body::DayOpened(_)) {
                batch.openings.push(Opening {
                    first: entry.seq,
                    prev: self.head.clone(),
                    // A state that can't be put by only makes the next start slower.
                    state: serde_json::to_vec(&self.state).unwrap_or_default(),
                });
            }
            day::apply(&mut self.state, &entry);
            self.head.clone_from(&sealed.hash);
            batch.kept.push(Kept {
                entry,
                sealed,
                more: following.more(&self.state),
            });
        }
        Ok(())
    }

    fn keep(&mut self, batch: Batch) {
        let located = match self.store.append(&batch.kept) {
            Ok(located) => located,
            Err(error) => return self.halt(&error, batch),
        };
        let changed = !located.is_empty();
        let due = Due::by(batch.kept.iter().map(|kept| &kept.entry.body));
        if changed {
            // A phone that has just joined is known before it hears that it has; who hears of an entry can read it.
            if due.is_all() {
                self.publish.board(&self.state);
            }
            self.publish.head(self.state.seq, &self.head);
        }
        for (reply, answer) in batch.replies {
            // Who has hung up asks again with the same key.
            let _ = reply.send(answer);
        }
        if changed {
            self.publish.views(&self.state, &due);
            self.spare.since.get_or_insert_with(Instant::now);
            self.behind.kept.extend(located);
            self.behind.since.get_or_insert_with(Instant::now);
            if !batch.openings.is_empty() {
                self.catch_up();
            }
            for opening in &batch.openings {
                let (first, prev) = (opening.first, &opening.prev);
                if let Err(error) = self.store.put_opening(first, prev, &opening.state) {
                    tracing::error!("{error}");
                }
            }
        }
    }

    /// Works out what is costly in the views.
    fn spare_moment(&mut self) {
        if self.spare.since.take().is_some() && !self.halted {
            self.publish.views(&self.state, &Due::SPARE);
            self.spare.done = Some(Instant::now());
        }
    }

    /// The state is ahead of the log and is never used again.
    fn halt(&mut self, error: &StoreError, batch: Batch) {
        tracing::error!("The hub takes no calls any more. {error}");
        self.halted = true;
        self.publish.halt(&error.to_string());
        let stops = batch.kept.iter().filter_map(|kept| match &kept.entry.body {
            Body::Stopped(stop) => Some((stop, &kept.entry)),
            _ => None,
        });
        for (stop, entry) in stops {
            self.publish.unkept_stop(UnkeptStop {
                by: entry.by.person.clone(),
                why: stop.why.clone(),
                since: entry.at,
                machine: stop.machines.first().filter(|_| !stop.all).cloned(),
            });
        }
        for (reply, _) in batch.replies {
            let _ = reply.send(Err(NotDone::NotKept));
        }
    }
}
