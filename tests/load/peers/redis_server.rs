//! Redis: a record goes to the end of a list and out to whoever has subscribed, in one transaction.

use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use futures_util::StreamExt as _;
use redis::Client;
use redis::aio::MultiplexedConnection;
use tokio::time::sleep;

use crate::RECORD;
use crate::harness::{PATIENCE, folder};
use crate::screens::{Screens, Turn};
use crate::servers::{Running, free_port};

/// Where it tells of a record.
const NEWS: &str = "news";

/// A server that keeps each record before it answers.
pub(crate) struct Server(Running);

impl Server {
    /// A fresh one.
    pub(crate) fn open() -> Self {
        let (folder, port) = (folder(), free_port());
        let mut command = Command::new("redis-server");
        command
            .args(["--bind", "127.0.0.1", "--port", &port.to_string()])
            .args([
                "--save",
                "",
                "--appendonly",
                "yes",
                "--appendfsync",
                "always",
            ])
            .arg("--dir")
            .arg(folder.path())
            .stdout(Stdio::null());
        Self(Running::start(&mut command, port, folder, "redis-server"))
    }
}

/// The phones' side of it.
pub(crate) struct Line {
    post: MultiplexedConnection,
    screens: Screens,
    number: u64,
}

impl Line {
    /// So many screens.
    pub(crate) async fn open(server: &Server, count: usize) -> Self {
        let client = Client::open(("127.0.0.1", server.0.port)).expect("an address");
        let started = Instant::now();
        let post = loop {
            match client.get_multiplexed_async_connection().await {
                Ok(post) => break post,
                Err(_) if started.elapsed() < PATIENCE => sleep(Duration::from_millis(50)).await,
                Err(error) => panic!("Redis: {error}"),
            }
        };
        let screens = Screens::new(count);
        for screen in 0..count {
            let mut news = client.get_async_pubsub().await.expect("Redis");
            news.subscribe(NEWS).await.expect("Redis");
            let tell = screens.tell.clone();
            tokio::spawn(async move {
                let mut news = news.on_message();
                for number in 1.. {
                    // The server ends with the measurement.
                    if news.next().await.is_none()
                        || tell.send((screen, number, Instant::now())).is_err()
                    {
                        return;
                    }
                }
            });
        }
        Self {
            post,
            screens,
            number: 0,
        }
    }

    /// One record, to its answer and to every screen.
    pub(crate) async fn turn(&mut self) -> Turn {
        self.number += 1;
        let record = "x".repeat(RECORD);
        let posted = Instant::now();
        let mut both = redis::pipe();
        both.atomic();
        both.rpush("log", &record).publish(NEWS, &record);
        let kept: (u64, u64) = both.query_async(&mut self.post).await.expect("Redis");
        let answered = Instant::now();
        assert_eq!(kept.0, self.number, "the record is in the list");
        self.screens.turn(self.number, posted, answered).await
    }
}
