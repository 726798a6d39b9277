//! Which phones are heard: operators' pages that can be seen, are hidden or lost; and the links of people in a keep-out.
//! Counts in the world's time.

use std::collections::BTreeMap;
use std::sync::{Mutex, PoisonError};
use std::time::{Duration, Instant};

use day::said::receipt::{CabPage, ScreenNotice};

/// A page that is silent for longer is lost (field practice: a number older than this must not stand).
const SILENCE: Duration = Duration::from_secs(4);

/// When each operator's page was last heard, and whether it said that it can be seen.
#[derive(Debug, Default)]
pub struct Screens(Mutex<BTreeMap<String, Screen>>);

#[derive(Clone, Copy, Debug)]
struct Screen {
    heard: Instant,
    visible: bool,
    page: Option<CabPage>,
    told: Option<News>,
}

/// What is said of a page: whether it can be seen, and what it says of itself.
pub type News = (ScreenNotice, Option<CabPage>);

impl Screens {
    /// A page has been heard.
    pub fn heard(&self, device: &str) {
        self.with(device, |screen| screen.heard = Instant::now());
    }

    /// A page has said whether it can be seen.
    pub fn visible(&self, device: &str, visible: bool) {
        self.with(device, |screen| {
            screen.heard = Instant::now();
            screen.visible = visible;
        });
    }

    /// A page has said what it can't give.
    pub fn says(&self, device: &str, page: CabPage) {
        self.with(device, |screen| screen.page = Some(page));
    }

    fn with(&self, device: &str, change: impl FnOnce(&mut Screen)) {
        let mut screens = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        let screen = screens.entry(device.to_owned()).or_insert_with(|| Screen {
            heard: Instant::now(),
            visible: false,
            page: None,
            told: None,
        });
        change(screen);
    }

    /// Whether nothing has been heard of a phone for too long.
    pub fn is_silent(&self, device: &str, now: Instant) -> bool {
        let mut silent = false;
        self.with(device, |screen| {
            silent = now.saturating_duration_since(screen.heard) > SILENCE;
        });
        silent
    }

    /// What is to be said of a page, when that differs from what was said last.
    pub fn news(&self, device: &str, now: Instant) -> Option<News> {
        let mut news = None;
        self.with(device, |screen| {
            let silence = now.saturating_duration_since(screen.heard);
            let seen = (judge(silence, screen.visible), screen.page);
            if screen.told != Some(seen) {
                news = Some(seen);
            }
        });
        news
    }

    /// It has been said.
    pub fn told(&self, device: &str, news: News) {
        self.with(device, |screen| screen.told = Some(news));
    }
}

fn judge(silence: Duration, visible: bool) -> ScreenNotice {
    if silence > SILENCE {
        ScreenNotice::Lost
    } else if visible {
        ScreenNotice::Showing
    } else {
        ScreenNotice::Hidden
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_silent_page_is_lost_whatever_it_said_last() {
        assert_eq!(judge(Duration::from_secs(1), true), ScreenNotice::Showing);
        assert_eq!(judge(Duration::from_secs(1), false), ScreenNotice::Hidden);
        assert_eq!(
            judge(Duration::from_millis(4_001), true),
            ScreenNotice::Lost
        );
    }

    #[test]
    fn what_was_said_is_not_said_again() {
        let screens = Screens::default();
        screens.visible("m1", true);
        let now = Instant::now();
        assert!(!screens.is_silent("m1", now));
        assert!(screens.is_silent("m1", now + SILENCE * 2));
        let showing = (ScreenNotice::Showing, None);
        assert_eq!(screens.news("m1", now), Some(showing));
        screens.told("m1", showing);
        assert_eq!(screens.news("m1", now), None);
        assert_eq!(
            screens.news("m1", now + SILENCE * 2),
            Some((ScreenNotice::Lost, None))
        );
        let mute = CabPage {
            covered: false,
            mute: true,
        };
        screens.says("m1", mute);
        assert_eq!(
            screens.news("m1", now),
            Some((ScreenNotice::Showing, Some(mute)))
        );
    }
}
