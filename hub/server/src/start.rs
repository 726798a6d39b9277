//! A start: the data folder, the log, the state, the writer, the day, the site; in this order.

use std::net::SocketAddr;
use std::sync::Arc;
use std::thread::JoinHandle;

use day::answer::Answer;
use day::asked::{Asked, By, Command};
use day::said::head::MissHead;
use day::said::photo::{self, AddPhoto};
use day::said::signature::ChainHead;
use day::said::site::ReadSite;
use day::said::way_in::notice::NoticeRestart;
use day::time::Time;

use crate::clock::Clock;
use crate::config::{Config, Pace};
use crate::error::StartError;
use crate::hub::{Allowances, Hub};
use crate::join::address::Addresses;
use crate::join::code::Secret;
use crate::past::Past;
use crate::publish::Publish;
use crate::screens::Screens;
use crate::store::photos::Photos;
use crate::store::{self, DataFolder, Head};
use crate::writer::{NotDone, Writer};
use crate::{Started, new_day, opening, terminal};

/// A laptop's clock this far behind the log was set back: it can't tell how long the hub was down.
const CLOCK_BEHIND_MS: i64 = 2_000;

/// A hub that has opened its day and may answer.
pub(crate) struct Opened {
    pub(crate) hub: Hub,
    /// The writer's thread.
    pub(crate) thread: JoinHandle<()>,
}

/// Opens everything; nothing has been answered yet when this is done.
pub(crate) async fn open(config: &Config, listen: SocketAddr) -> Result<Opened, StartError> {
    let folder = DataFolder::take(&config.data)?;
    let (secret, note) = Secret::of(folder.path())?;
    if let Some(note) = note {
        terminal::say(&note);
    }
    let addresses = Addresses::of(folder.path(), listen);
    let mut opened = store::open(folder)?;
    for note in &opened.notes {
        terminal::say(note);
    }
    let lost = opened.lost.take();
    let state = opening::state(&mut opened)?;
    let photos = Photos::of(&config.data);
    photos.sweep()?;
    let clock = clock(&config.pace, state.at);
    if clock.ahead_ms() > 0 {
        terminal::say(&format!(
            "This laptop's clock is {} s behind the last entry of the log. The hub's clock goes on from there; set the laptop's clock right before the next day.",
            clock.ahead_ms() / 1_000
        ));
    }
    let day = new_day::at_start(config.day.as_deref(), &state, clock.now());
    let publish = Publish::default();
    let past = Past::new(opened.store.reader(), publish.clone(), &config.data);
    let (writer, thread) = Writer::start(opened.store, state, clock.clone(), publish.clone())?;
    let hub = Hub {
        clock,
        writer,
        publish,
        past,
        photos,
        screens: Arc::new(Screens::default()),
        secret,
        addresses,
        wifi: config.wifi.clone(),
        desk: Arc::default(),
        limits: Arc::new(Allowances::default()),
    };
    if let Err(error) = begin(&hub, config, day, lost).await {
        hub.writer.stop();
        return Err(error.into());
    }
    Ok(Opened { hub, thread })
}

async fn begin(hub: &Hub, config: &Config, day: String, lost: Option<Head>) -> Result<(), NotDone> {
    let log_ends = hub.publish.pulse().head;
    new_day::open(hub, By::hub(), day).await?;
    if let Some(Head { seq, hash }) = lost {
        // The supervisor reads it on a page, not on a terminal that nobody looks at.
        let missed = MissHead {
            person: By::hub().person,
            remembered: ChainHead { seq, hash },
            has: None,
            log_ends,
        };
        ask(hub, Command::MissHead(missed)).await?;
    }
    let first = hub.publish.known().site.is_empty();
    let site = config.site.site.clone();
    let answer = ask(hub, Command::ReadSite(ReadSite { site })).await?;
    if answer.first > 0 && !first {
        terminal::say(
            "The site file differs from the site in force. The supervisor's page shows the differences; until they are confirmed there, the old site counts.",
        );
    }
    adopt_photos(hub).await?;
    // Whoever had asked to come in was not answered by a hub that did not run.
    let restart = NoticeRestart {
        clock_behind: hub.clock.ahead_ms() > CLOCK_BEHIND_MS,
    };
    ask(hub, Command::NoticeRestart(restart)).await?;
    for odd in &config.site.odd {
        terminal::say(&odd.to_string());
    }
    Ok(())
}

/// A hub that died between a photo's file and its entry has the bytes and does not say so: it says so now.
async fn adopt_photos(hub: &Hub) -> Result<(), NotDone> {
    for owed in hub.writer.look(photo::owed).await? {
        if let Ok(bytes) = hub.photos.read(&owed.sha256) {
            let bytes = bytes.len() as u64;
            ask(hub, Command::AddPhoto(AddPhoto { bytes, ..owed })).await?;
        }
    }
    Ok(())
}

async fn ask(hub: &Hub, command: Command) -> Result<Answer, NotDone> {
    hub.writer
        .ask(Asked {
            key: String::new(),
            by: By::hub(),
            made_at: hub.clock.now(),
            command,
        })
        .await
}

/// What the outside needs to know of a hub that answers.
pub(crate) fn started(hub: &Hub) -> Started {
    Started {
        base: format!("http://127.0.0.1:{}", hub.addresses.port()),
        own: hub.secret.own(&hub.publish.known().day),
        clock: hub.clock.clone(),
    }
}

/// A demo's clock goes on where the log ends.
fn clock(pace: &Pace, log_ends: Time) -> Clock {
    match pace {
        Pace::Real => Clock::real(log_ends),
        Pace::Fast {
            start,
            speed,
            skips,
        } => Clock::fast(log_ends.max(*start), *speed, skips.clone()),
        Pace::Stepped { start } => Clock::stepped(log_ends.max(*start)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_demo_goes_on_where_its_log_ends() {
        let pace = Pace::Stepped { start: Time(1_000) };
        assert_eq!(clock(&pace, Time(0)).now(), Time(1_000));
        assert_eq!(clock(&pace, Time(5_000)).now(), Time(5_000));
    }
}
