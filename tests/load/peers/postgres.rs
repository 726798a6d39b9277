//! `PostgreSQL`: a record is inserted, and whoever listens is notified, by one statement.

use std::fs;
use std::future::poll_fn;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use tokio::time::sleep;
use tokio_postgres::{AsyncMessage, Client, Config, NoTls, Statement};

use crate::RECORD;
use crate::harness::{PATIENCE, folder};
use crate::screens::{News, Screens, Turn};
use crate::servers::{Running, free_port};

/// A server that keeps each record before it answers.
pub(crate) struct Server(Running);

impl Server {
    /// A fresh one.
    pub(crate) fn open() -> Self {
        let (folder, port) = (folder(), free_port());
        let data = folder.path().join("data");
        fs::create_dir(&data).expect("a folder");
        let made = as_owner(&program("initdb"), &data)
            .args(["--username", "rodcall", "--auth", "trust", "--pgdata"])
            .arg(&data)
            .stdout(Stdio::null())
            .status();
        let made = made.expect("initdb runs (Debian: apt-get install postgresql)");
        assert!(made.success(), "initdb: {made}");
        let mut command = as_owner(&program("postgres"), &data);
        command
            .arg("-D")
            .arg(&data)
            .args(["-c", "listen_addresses=127.0.0.1"])
            .args(["-c", &format!("port={port}")])
            .args(["-c", "unix_socket_directories="])
            .args(["-c", "max_connections=250"])
            .stdout(Stdio::null())
            .stderr(Stdio::null());
        Self(Running::start(&mut command, port, folder, "postgresql"))
    }
}

/// The newest version that Debian has installed.
fn program(name: &str) -> PathBuf {
    let versions = fs::read_dir("/usr/lib/postgresql");
    let versions = versions.expect("PostgreSQL (Debian: apt-get install postgresql)");
    let mut found: Vec<PathBuf> = versions
        .filter_map(|version| Some(version.ok()?.path().join("bin").join(name)))
        .filter(|program| program.exists())
        .collect();
    found.sort();
    found
        .pop()
        .unwrap_or_else(|| panic!("{name} is not there (Debian: apt-get install postgresql)"))
}

/// It refuses to run as root: then it runs as the user that its package has made.
fn as_owner(program: &Path, data: &Path) -> Command {
    let id = Command::new("id").arg("-u").output().expect("id runs");
    if id.stdout.trim_ascii() != b"0" {
        return Command::new(program);
    }
    // The user must come through to its folder.
    let outer = data.parent().expect("a folder around it");
    let opened = Command::new("chmod").arg("711").arg(outer).status();
    let given = Command::new("chown").arg("postgres").arg(data).status();
    for done in [opened, given] {
        assert!(
            done.expect("coreutils").success(),
            "its folder is given to the user postgres"
        );
    }
    let mut command = Command::new("setpriv");
    command
        .args([
            "--reuid=postgres",
            "--regid=postgres",
            "--init-groups",
            "--",
        ])
        .arg(program);
    command
}

/// The phones' side of it.
pub(crate) struct Line {
    post: Client,
    keep_and_tell: Statement,
    screens: Screens,
    number: u64,
}

impl Line {
    /// So many screens.
    pub(crate) async fn open(server: &Server, count: usize) -> Self {
        let mut config = Config::new();
        config
            .host("127.0.0.1")
            .port(server.0.port)
            .user("rodcall")
            .dbname("postgres");
        let started = Instant::now();
        let post = loop {
            match config.connect(NoTls).await {
                Ok((post, line)) => {
                    tokio::spawn(line);
                    break post;
                }
                Err(_) if started.elapsed() < PATIENCE => sleep(Duration::from_millis(50)).await,
                Err(error) => panic!("PostgreSQL: {error}"),
            }
        };
        let table =
            "CREATE TABLE IF NOT EXISTS log (seq bigserial PRIMARY KEY, record text NOT NULL)";
        post.batch_execute(table).await.expect("PostgreSQL");
        let screens = Screens::new(count);
        for screen in 0..count {
            listen(&config, screen, screens.tell.clone()).await;
        }
        let keep_and_tell = "WITH kept AS (INSERT INTO log (record) VALUES ($1) RETURNING record) SELECT pg_notify('news', record) FROM kept";
        let keep_and_tell = post.prepare(keep_and_tell).await;
        Self {
            keep_and_tell: keep_and_tell.expect("PostgreSQL"),
            post,
            screens,
            number: 0,
        }
    }

    /// One record, to its answer and to every screen.
    pub(crate) async fn turn(&mut self) -> Turn {
        self.number += 1;
        // Each is another one, as readings are.
        let record = format!("{:0RECORD$}", self.number);
        let posted = Instant::now();
        let kept = self.post.query(&self.keep_and_tell, &[&record]).await;
        assert_eq!(
            kept.expect("PostgreSQL").len(),
            1,
            "the record is in the table"
        );
        let answered = Instant::now();
        self.screens.turn(self.number, posted, answered).await
    }
}

/// A screen: it hears of each record.
async fn listen(config: &Config, screen: usize, tell: tokio::sync::mpsc::UnboundedSender<News>) {
    let (client, mut line) = config.connect(NoTls).await.expect("PostgreSQL");
    tokio::spawn(async move {
        let mut number = 0;
        // The server ends with the measurement.
        while let Some(Ok(message)) = poll_fn(|waker| line.poll_message(waker)).await {
            if matches!(message, AsyncMessage::Notification(_)) {
                number += 1;
                if tell.send((screen, number, Instant::now())).is_err() {
                    return;
                }
            }
        }
    });
    client
        .batch_execute("LISTEN news")
        .await
        .expect("PostgreSQL");
    // Dropped, it would end the line.
    std::mem::forget(client);
}
