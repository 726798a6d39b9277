//! A hub as its users meet it: the real binary in a folder of its own, reached by HTTP, killed when the test ends.

use std::io::{BufRead, BufReader, Read};
use std::path::Path;
use std::process::{Child, Command, ExitStatus, Stdio};
use std::sync::{Arc, Mutex};
use std::thread;
use std::time::{Duration, Instant};

use serde_json::Value;
use tempfile::TempDir;

/// A generous deadline: the machine that tests may be slow.
pub(crate) const PATIENCE: Duration = Duration::from_secs(180);

/// A running hub.
pub(crate) struct Hub {
    child: Child,
    /// Its address: `http://127.0.0.1:PORT`.
    pub(crate) base: String,
    own: String,
    said: Arc<Mutex<String>>,
}

impl Hub {
    /// Starts `rodcall` with these arguments, and waits for its ready line.
    pub(crate) fn start(arguments: &[&str], data: &Path) -> Self {
        let mut child = Command::new(env!("CARGO_BIN_EXE_rodcall"))
            .args(arguments)
            .args(["--listen", "127.0.0.1:0", "--data"])
            .arg(data)
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .expect("the rodcall binary starts");
        let said = Arc::new(Mutex::new(String::new()));
        let stdout = child.stdout.take().expect("stdout is a pipe");
        let stderr = child.stderr.take().expect("stderr is a pipe");
        listen(stderr, Arc::clone(&said));
        listen(stdout, Arc::clone(&said));
        let mut hub = Self {
            child,
            base: String::new(),
            own: String::new(),
            said,
        };
        let ready = hub.wait("the ready line", |hub| {
            assert!(
                hub.child.try_wait().expect("a child").is_none(),
                "{}",
                hub.said()
            );
            let said = hub.said();
            let line = said.lines().find(|line| line.starts_with("rodcall ready "));
            line.map(str::to_owned)
        });
        let mut words = ready.split_whitespace().skip(2);
        hub.base = words.next().expect("an address").to_owned();
        let own = words.next().and_then(|word| word.strip_prefix("own="));
        hub.own = own.expect("the laptop's own link").to_owned();
        hub
    }

    /// Everything that the hub has written to its terminal.
    pub(crate) fn said(&self) -> String {
        self.said.lock().expect("a quiet listener").clone()
    }

    /// Waits until a condition holds; fails with what the hub said when it does not in time.
    pub(crate) fn wait<T>(
        &mut self,
        what: &str,
        mut ready: impl FnMut(&mut Self) -> Option<T>,
    ) -> T {
        let deadline = Instant::now() + PATIENCE;
        loop {
            if let Some(value) = ready(self) {
                return value;
            }
            assert!(
                Instant::now() < deadline,
                "waited in vain for {what}; the hub said:\n{}",
                self.said()
            );
            thread::park_timeout(Duration::from_millis(50));
        }
    }

    /// The laptop's own browser: a supervisor.
    pub(crate) fn laptop(&self) -> Laptop {
        let http = reqwest::Client::builder()
            .no_proxy()
            // The hub closes a line that is idle: a new one for each request never meets that.
            .pool_max_idle_per_host(0)
            .redirect(reqwest::redirect::Policy::none())
            .build()
            .expect("a client");
        let runtime = tokio::runtime::Builder::new_current_thread()
            .enable_all()
            .build()
            .expect("a runtime");
        let own = self.own.replacen("localhost", "127.0.0.1", 1);
        let answer = runtime
            .block_on(http.get(own).send())
            .expect("the own link answers");
        let cookie = answer
            .headers()
            .get("set-cookie")
            .and_then(|value| value.to_str().ok()?.split(';').next())
            .expect("the own link gives a cookie")
            .to_owned();
        Laptop {
            http,
            runtime,
            cookie,
            base: self.base.clone(),
        }
    }

    /// Asks the hub to stop, as a service manager does, and waits until it has.
    pub(crate) fn stop(mut self) -> ExitStatus {
        let asked = Command::new("kill")
            .args(["-TERM", &self.child.id().to_string()])
            .status()
            .expect("kill is there");
        assert!(asked.success());
        self.wait("the hub to stop", |hub| {
            hub.child.try_wait().expect("a child")
        })
    }
}

impl Drop for Hub {
    fn drop(&mut self) {
        // A hub that has stopped by itself can't be killed, and need not be.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

fn listen(pipe: impl Read + Send + 'static, said: Arc<Mutex<String>>) {
    thread::spawn(move || {
        for line in BufReader::new(pipe).lines().map_while(Result::ok) {
            let mut said = said.lock().expect("a quiet listener");
            said.push_str(&line);
            said.push('\n');
        }
    });
}

/// The laptop's own browser.
pub(crate) struct Laptop {
    http: reqwest::Client,
    runtime: tokio::runtime::Runtime,
    cookie: String,
    base: String,
}

impl Laptop {
    /// Gets a page as text.
    pub(crate) fn text(&self, path: &str) -> String {
        let request = self
            .http
            .get(format!("{}{path}", self.base))
            .header("cookie", &self.cookie);
        self.runtime.block_on(async {
            let answer = request.send().await.expect("the hub answers");
            assert!(answer.status().is_success(), "{path}: {}", answer.status());
            answer.text().await.expect("a text")
        })
    }

    /// The whole log, an entry a line.
    pub(crate) fn log(&self) -> Vec<Value> {
        let lines = self.text("/api/export");
        let entries = lines.lines().map(serde_json::from_str);
        entries.collect::<Result<_, _>>().expect("JSON Lines")
    }
}

/// A folder for one hub's data.
pub(crate) fn folder() -> TempDir {
    tempfile::tempdir().expect("a folder for the hub's data")
}
