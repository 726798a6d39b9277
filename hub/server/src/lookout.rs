//! Looks after the phones that must be heard, and says what has changed.

use std::time::{Duration, Instant};

use day::asked::{Asked, By, Command};
use day::said::receipt::NoticeScreen;
use day::said::way_in::notice::NoticeLink;

use crate::hub::Hub;

/// Between two looks.
const LOOK: Duration = Duration::from_millis(250);

/// Looks at the operators' pages until the hub closes, and says what has changed.
pub(crate) async fn watch(hub: Hub) {
    let mut tick = tokio::time::interval(LOOK);
    let mut closing = hub.publish.watch_closing();
    loop {
        tokio::select! {
            _ = tick.tick() => look(&hub).await,
            _ = closing.wait_for(|closing| *closing) => return,
        }
    }
}

/// Looks once: after each word from a page, and at every tick.
pub(crate) async fn look(hub: &Hub) {
    let board = hub.publish.known();
    for phone in board.cabs() {
        let device = &phone.by.device;
        let Some(news) = hub.screens.news(device, Instant::now()) else {
            continue;
        };
        let (screen, page) = news;
        let asked = Asked {
            key: String::new(),
            by: By::hub(),
            made_at: hub.clock.now(),
            command: Command::NoticeScreen(NoticeScreen {
                device: device.clone(),
                screen,
                page,
            }),
        };
        if hub.writer.ask(asked).await.is_ok() {
            hub.screens.told(device, news);
        }
    }
    for (device, known_lost) in &board.visiting {
        let lost = hub.screens.is_silent(device, Instant::now());
        if lost != *known_lost {
            let asked = Asked {
                key: String::new(),
                by: By::hub(),
                made_at: hub.clock.now(),
                command: Command::NoticeLink(NoticeLink {
                    device: device.clone(),
                    lost,
                }),
            };
            if let Err(error) = hub.writer.ask(asked).await {
                tracing::debug!("a link was not entered: {error}");
            }
        }
    }
}
