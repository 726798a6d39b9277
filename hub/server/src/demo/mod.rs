//! The demo: a simulated crew plays one invented day through the public interface alone, as phones would.
//!
//! The story is `fixtures/demo-day`; [`story`] reads it, [`hub`] speaks HTTP, [`cab`] is an operator's screen on its socket,
//! [`player`] plays row after row as the hub's clock reaches them, and sends the [`photos`] behind their promises.

mod cab;
mod hub;
mod kept;
mod photos;
mod player;
mod story;

use day::time::{Time, minutes, seconds};
use jiff::civil::Date;
use jiff::tz::TimeZone;
use thiserror::Error;

use crate::clock::{Clock, Skip};

/// The site of the demo, as a site file.
pub const SITE_FILE: &str = include_str!("../../../../fixtures/site/alder-bend/site.toml");

/// A file that the demo's site file names.
///
/// # Errors
/// A word about any other file.
pub fn beside(name: &str) -> Result<String, String> {
    if name == "marks.csv" {
        let marks = include_str!("../../../../fixtures/site/alder-bend/marks.csv");
        return Ok(marks.to_owned());
    }
    Err(format!("the demo has no file {name}"))
}

/// The demo's day starts at this time of day: its clock, not its first call.
const OPENS_MS: i64 = minutes(6 * 60 + 40);
/// In the empty first hour the clock stays this long at each thing that is done.
const GLANCE_MS: i64 = seconds(10);

/// The midnight before the story, on the wall of wherever the hub runs.
fn midnight() -> Time {
    let date = Date::constant(2030, 5, 14);
    let zoned = date.to_zoned_datetime(TimeZone::system());
    zoned.map_or(Time(0), |zoned| Time(zoned.timestamp().as_millisecond()))
}

/// The moment at which the demo's clock starts: 2030-05-14, 06:40 on the wall.
pub fn start() -> Time {
    midnight().plus_ms(OPENS_MS)
}

/// What the demo's clock jumps over: the first hour, in which nobody digs, but for what is done in it.
///
/// # Errors
/// [`DemoError::Story`].
pub fn skips() -> Result<Vec<Skip>, DemoError> {
    let rows = story::rows()?;
    let steps = story::steps(&rows);
    let first = steps
        .iter()
        .position(|step| step.row.what == "take_reading");
    let quiet = &steps[..first.map_or(0, |first| first + 1)];
    let mut moments: Vec<i64> = quiet.iter().map(|step| step.at).collect();
    moments.insert(0, OPENS_MS);
    moments.dedup();
    Ok(moments
        .windows(2)
        .filter(|pair| pair[1] - pair[0] > GLANCE_MS)
        .map(|pair| Skip {
            from: midnight().plus_ms(pair[0] + GLANCE_MS),
            to: midnight().plus_ms(pair[1]),
        })
        .collect())
}

/// Plays the day on the hub at `base` (`http://127.0.0.1:4100`), let in by the laptop's own link.
///
/// With a clock that runs, each row waits for its moment. A clock that is stepped is moved from row to row. A day that was played in part goes on behind the last row that the log holds. When the
/// story is over the operators' screens stay, so that the pages have someone to talk to.
///
/// # Errors
/// [`DemoError`], which says what went wrong and what to do.
pub async fn play(base: &str, own_secret: &str, clock: Clock) -> Result<(), DemoError> {
    player::Player::begin(base, own_secret, clock)
        .await?
        .play()
        .await
}

/// Why the demo can't go on.
#[derive(Debug, Error)]
pub enum DemoError {
    /// The story in the binary can't be read.
    #[error(
        "row {row} of the demo's story can't be read ({reason}). Run fixtures/demo-day/make.py and build again."
    )]
    Story {
        /// Which line, from 1.
        row: usize,
        /// Why.
        reason: String,
    },
    /// The hub could not be reached.
    #[error("the demo's crew can't reach the hub at {what} ({source}). Start the demo again.")]
    Unreachable {
        /// What was asked for.
        what: String,
        /// Why.
        source: Box<dyn std::error::Error>,
    },
    /// The hub's answer is not what the interface promises.
    #[error(
        "the demo's crew asked for {what} and the hub answered {answer}. Start the demo again with a fresh --data folder."
    )]
    Answer {
        /// What was asked for.
        what: String,
        /// What came.
        answer: String,
    },
    /// No code lets this person in.
    #[error(
        "no join code of today lets {person} in as {roles}. Start the demo with its own site file."
    )]
    NoCode {
        /// Who.
        person: String,
        /// As what.
        roles: String,
    },
    /// The hub stays too busy, or has halted.
    #[error("the hub takes nothing any more ({answer}). Look at its own messages above.")]
    Halted {
        /// What it said last.
        answer: String,
    },
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_empty_first_hour_is_skipped_up_to_the_first_reading() {
        let skips = skips().unwrap();
        assert!(
            skips
                .iter()
                .all(|skip| skip.from < skip.to && skip.from > start())
        );
        assert!(skips.windows(2).all(|pair| pair[0].to < pair[1].from));
        // The first reading of the story: 07:31; the last seconds before it are somebody's way out of the keep-out.
        let last = skips.last().unwrap().to;
        let reading = midnight().plus_ms(minutes(7 * 60 + 31));
        assert!(last <= reading && reading.ms_since(last) < minutes(1));
        let skipped: i64 = skips.iter().map(|skip| skip.to.ms_since(skip.from)).sum();
        assert!(skipped > minutes(45));
    }
}
