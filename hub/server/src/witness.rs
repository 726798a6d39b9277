//! Phones witness the log: each keeps the newest end of the chain that it saw and gives it back when it comes again. One that
//! the log does not hold is entered, and told to the supervisor.

use actix_web::{rt, web};
use day::asked::{Asked, By, Command};
use day::said::head::MissHead;
use day::said::signature::ChainHead;

use crate::hub::Hub;

/// A hash in hex.
const HEX: usize = 64;

/// Compares what a phone remembers with the log, without making anybody wait.
pub(crate) fn compare(hub: &Hub, person: &str, remembered: ChainHead) {
    let plain = |c: char| c.is_ascii_digit() || ('a'..='f').contains(&c);
    let proper = remembered.hash.len() == HEX && remembered.hash.chars().all(plain);
    if remembered.seq == 0 || !proper {
        return;
    }
    let (hub, person) = (hub.clone(), person.to_owned());
    rt::spawn(async move {
        let log_ends = hub.past.head().await;
        let (past, seq) = (hub.past.clone(), remembered.seq);
        let has = match web::block(move || past.entry(seq)).await {
            Ok(Ok(found)) => found.map(|linked| linked.hash),
            // What can't be read accuses nobody.
            Ok(Err(error)) => return tracing::warn!("{error}"),
            Err(error) => return tracing::warn!("{error}"),
        };
        if has.as_deref() == Some(remembered.hash.as_str()) {
            return;
        }
        tracing::error!("{person}'s phone remembers entry {seq}, which this log does not hold");
        let asked = Asked {
            key: String::new(),
            by: By::hub(),
            made_at: hub.clock.now(),
            command: Command::MissHead(MissHead {
                person,
                remembered,
                has,
                log_ends,
            }),
        };
        if let Err(error) = hub.writer.ask(asked).await {
            tracing::warn!("{error}");
        }
    });
}
