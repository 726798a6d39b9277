//! The writer alone: what can't be kept halts it, and a replay is what was live.

use std::path::Path;

use day::asked::{Asked, By, Command};
use day::said::codes::RenewCodes;
use day::said::day::OpenDay;
use day::said::stop::StopAll;
use day::time::Time;

use crate::clock::Clock;
use crate::opening;
use crate::publish::Publish;
use crate::store::{self, DataFolder};
use crate::writer::{NotDone, Writer};

/// The writer alone, on a store whose disk can be made to fail.
async fn writer(folder: &Path, publish: &Publish) -> (Writer, std::thread::JoinHandle<()>) {
    let mut opened = store::open(DataFolder::take(folder).unwrap()).unwrap();
    let state = opening::state(&mut opened).unwrap();
    let clock = Clock::stepped(Time(1_900_000_000_000));
    let (writer, thread) = Writer::start(opened.store, state, clock, publish.clone()).unwrap();
    let open = Command::OpenDay(OpenDay {
        day: "2030-03-17".into(),
    });
    writer.ask(hubs(open)).await.unwrap();
    (writer, thread)
}

fn hubs(command: Command) -> Asked {
    Asked {
        key: String::new(),
        by: By::hub(),
        made_at: Time(0),
        command,
    }
}

#[actix_web::test]
async fn a_log_that_can_not_be_kept_halts_the_hub_for_good() {
    let folder = tempfile::tempdir().unwrap();
    let publish = Publish::default();
    let (writer, thread) = writer(folder.path(), &publish).await;
    // A day's file of that very name is there already: the next day can't be begun.
    let head = publish.pulse().head;
    let name = format!("log/{:010}-2030-03-18.jsonl", head + 1);
    std::fs::write(folder.path().join(name), b"").unwrap();
    let next = Command::OpenDay(OpenDay {
        day: "2030-03-18".into(),
    });
    assert_eq!(writer.ask(hubs(next)).await, Err(NotDone::NotKept));
    assert!(publish.pulse().halted.is_some());
    assert_eq!(publish.pulse().head, head);
    let stop = Command::StopAll(StopAll { why: String::new() });
    assert_eq!(writer.ask(hubs(stop)).await, Err(NotDone::NotKept));
    writer.stop();
    thread.join().unwrap();
    let opened = store::open(DataFolder::take(folder.path()).unwrap()).unwrap();
    assert_eq!(opened.store.head().seq, head);
}

#[actix_web::test]
async fn a_replay_of_the_log_is_the_state_that_was_live() {
    let folder = tempfile::tempdir().unwrap();
    let publish = Publish::default();
    let (first, thread) = writer(folder.path(), &publish).await;
    let renew = Asked {
        by: By {
            roles: vec![day::asked::Role::Supervisor],
            ..By::hub()
        },
        ..hubs(Command::RenewCodes(RenewCodes {}))
    };
    first.ask(renew).await.unwrap();
    let day = Command::OpenDay(OpenDay {
        day: "2030-03-18".into(),
    });
    first.ask(hubs(day)).await.unwrap();
    first.stop();
    thread.join().unwrap();
    let mut opened = store::open(DataFolder::take(folder.path()).unwrap()).unwrap();
    assert!(opened.opening.is_some());
    let from_opening = opening::state(&mut opened).unwrap();
    assert!(opened.opening.is_none());
    let from_the_start = opening::state(&mut opened).unwrap();
    assert_eq!(from_opening, from_the_start);
    assert_eq!(from_opening.seq, publish.pulse().head);
}
