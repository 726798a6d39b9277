//! The screens of a measurement: each says when it has got what.

use std::time::{Duration, Instant};

use tokio::sync::mpsc::{UnboundedReceiver, UnboundedSender, unbounded_channel};
use tokio::time::timeout;

use crate::harness::PATIENCE;

/// One turn: from the post until the answer, the cab's screen, all screens.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Turn {
    pub(crate) answered: Duration,
    pub(crate) cab: Duration,
    pub(crate) all: Duration,
}

/// How many bytes a turn moves.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Sizes {
    /// Posted.
    pub(crate) request: usize,
    /// Kept in the file.
    pub(crate) kept: usize,
    /// Answered.
    pub(crate) answer: usize,
    /// Sent to each screen.
    pub(crate) view: usize,
}

/// A screen has got the news of a number.
pub(crate) type News = (usize, u64, Instant);

/// All screens of one side.
pub(crate) struct Screens {
    count: usize,
    /// Where a screen's reader tells its news.
    pub(crate) tell: UnboundedSender<News>,
    told: UnboundedReceiver<News>,
}

impl Screens {
    /// So many screens.
    pub(crate) fn new(count: usize) -> Self {
        let (tell, told) = unbounded_channel();
        Self { count, tell, told }
    }

    /// Waits until each screen has this number or a later one.
    pub(crate) async fn turn(&mut self, number: u64, posted: Instant, answered: Instant) -> Turn {
        let mut got = vec![None; self.count];
        while let Some(missing) = got.iter().position(Option::is_none) {
            let news = timeout(PATIENCE, self.told.recv()).await;
            let Ok(Some((screen, seen, at))) = news else {
                panic!("screen {missing} never got {number}");
            };
            if seen >= number {
                got[screen].get_or_insert(at);
            }
        }
        let since =
            |at: Option<&Instant>| at.map_or(Duration::ZERO, |at| at.duration_since(posted));
        let cab = got.first().copied().flatten();
        let got: Vec<Instant> = got.into_iter().flatten().collect();
        Turn {
            answered: answered.duration_since(posted),
            cab: since(cab.as_ref()),
            all: since(got.iter().max()),
        }
    }
}

/// One of the moments of a turn.
pub(crate) type Moment = fn(&Turn) -> Duration;

/// A percentile, in milliseconds.
pub(crate) fn at(percent: usize, turns: &[Turn], of: Moment) -> f64 {
    let mut times: Vec<Duration> = turns.iter().map(of).collect();
    times.sort();
    let place = (times.len() * percent).div_ceil(100).saturating_sub(1);
    times[place].as_secs_f64() * 1_000.0
}
