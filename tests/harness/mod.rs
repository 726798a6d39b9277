//! A hub as its users meet it: the real binary in a folder of its own, reached by HTTP, killed when the test ends.
//!
//! | to use | read |
//! |---|---|
//! | a phone that joins, says, reads, listens | `phone`, `socket` |
//! | a network that breaks | `link` |
//! | numbers by chance, from a seed | `chance` |
//! | a small site whose numbers can be worked out by hand | `yard` |
//! | photos as a phone makes them | `photo` |

pub(crate) mod chance;
pub(crate) mod link;
pub(crate) mod phone;
pub(crate) mod photo;
pub(crate) mod socket;
pub(crate) mod yard;

use std::ffi::OsStr;
use std::io::{BufRead, BufReader, Read};
use std::path::Path;
use std::process::{Child, Command, ExitStatus, Output, Stdio};
use std::sync::{Arc, Mutex};
use std::thread;
use std::time::{Duration, Instant};

use tempfile::TempDir;

use phone::Phone;

/// A generous deadline: the machine that tests may be slow.
pub(crate) const PATIENCE: Duration = Duration::from_mins(3);
/// Between two looks at a condition.
const LOOK: Duration = Duration::from_millis(20);

/// The laptop's own browser: a phone like any other, let in by the link in the terminal.
pub(crate) type Laptop = Phone;

/// A running hub.
pub(crate) struct Hub {
    pub(crate) child: Child,
    /// Its address: `http://127.0.0.1:PORT`.
    pub(crate) base: String,
    own: String,
    said: Arc<Mutex<String>>,
}

impl Hub {
    /// Starts `rodcall` with these arguments on a free port, and waits for its ready line.
    pub(crate) fn start(arguments: &[&str], data: &Path) -> Self {
        Self::start_with(arguments, data, &[])
    }

    /// As [`Hub::start`], with something in its environment.
    pub(crate) fn start_with(
        arguments: &[&str],
        data: &Path,
        environment: &[(&str, &OsStr)],
    ) -> Self {
        let mut child = binary()
            .args(arguments)
            .args(["--listen", "127.0.0.1:0", "--data"])
            .arg(data)
            .envs(environment.iter().copied())
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
        words.next().expect("an address").clone_into(&mut hub.base);
        let own = words.next().and_then(|word| word.strip_prefix("own="));
        own.expect("the laptop's own link").clone_into(&mut hub.own);
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
        let said = Arc::clone(&self.said);
        wait(
            || {
                let said = said.lock().expect("a quiet listener");
                format!("{what}; the hub said:\n{said}")
            },
            || ready(self),
        )
    }

    /// The laptop's own browser: a supervisor.
    pub(crate) fn laptop(&self) -> Laptop {
        let path = self
            .own
            .strip_prefix(&self.base)
            .expect("a link of its own");
        Phone::let_in_by_link(&self.base, path)
    }

    /// Asks the hub to stop, as a service manager does, and waits until it has.
    pub(crate) fn stop(self) -> ExitStatus {
        self.signal("TERM")
    }

    /// Sends a signal, and waits until the hub has ended.
    pub(crate) fn signal(mut self, signal: &str) -> ExitStatus {
        let asked = Command::new("kill")
            .args([&format!("-{signal}"), &self.child.id().to_string()])
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
        if thread::panicking() {
            println!("The hub said:\n{}", self.said());
        }
    }
}

/// The real binary, with an environment that says nothing of this machine's own settings.
fn binary() -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_rodcall"));
    for name in ["DATA", "LISTEN", "WIFI_NAME", "WIFI_PASSWORD", "LOG"] {
        command.env_remove(format!("RODCALL_{name}"));
    }
    command
}

/// Runs a verb of the command line to its end.
pub(crate) fn rodcall<S: AsRef<OsStr>>(arguments: &[S]) -> Output {
    binary()
        .args(arguments)
        .stdin(Stdio::null())
        .output()
        .expect("the rodcall binary starts")
}

/// What a verb wrote, on either stream.
pub(crate) fn words(output: &Output) -> String {
    let text = |bytes| String::from_utf8_lossy(bytes).into_owned();
    text(&output.stdout) + &text(&output.stderr)
}

/// Waits until a condition holds; fails with `what` when it does not in time.
pub(crate) fn wait<T>(what: impl Fn() -> String, mut ready: impl FnMut() -> Option<T>) -> T {
    let deadline = Instant::now() + PATIENCE;
    loop {
        if let Some(value) = ready() {
            return value;
        }
        assert!(Instant::now() < deadline, "waited in vain for {}", what());
        thread::park_timeout(LOOK);
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

/// A folder for one hub's data.
pub(crate) fn folder() -> TempDir {
    tempfile::tempdir().expect("a folder for the hub's data")
}
