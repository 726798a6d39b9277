//! The network between a phone and the hub, as a test wants it: cut, frozen, one way only, and whole again.

use std::io::{Read as _, Write as _};
use std::net::{Shutdown, TcpListener, TcpStream};
use std::sync::{Arc, Condvar, Mutex, MutexGuard};
use std::thread;

/// A loopback proxy in front of the hub.
pub(crate) struct Link {
    /// Where phones reach the hub through it.
    pub(crate) base: String,
    shared: Arc<Shared>,
}

#[derive(Default)]
struct Shared {
    state: Mutex<State>,
    changed: Condvar,
}

#[derive(Default)]
struct State {
    cut: bool,
    frozen: bool,
    lines: Vec<(TcpStream, TcpStream)>,
}

impl Shared {
    fn state(&self) -> MutexGuard<'_, State> {
        self.state.lock().expect("a whole link")
    }

    fn change(&self, change: impl FnOnce(&mut State)) {
        change(&mut self.state());
        self.changed.notify_all();
    }

    /// Waits until bytes may pass.
    fn pass(&self) {
        let state = self.state();
        let wait = self.changed.wait_while(state, |state| state.frozen);
        drop(wait.expect("a whole link"));
    }
}

impl Link {
    /// A link to the hub at this address.
    pub(crate) fn to(hub: &str) -> Self {
        let hub = hub.strip_prefix("http://").expect("an address").to_owned();
        let listener = TcpListener::bind("127.0.0.1:0").expect("a free port");
        let base = format!("http://{}", listener.local_addr().expect("an address"));
        let shared = Arc::new(Shared::default());
        let link = Self {
            base,
            shared: Arc::clone(&shared),
        };
        thread::spawn(move || {
            for phone in listener.incoming().map_while(Result::ok) {
                let mut state = shared.state();
                let Some(hub) = open(&hub).filter(|_| !state.cut) else {
                    // A phone without a network hears nothing but the end of the line.
                    let _ = phone.shutdown(Shutdown::Both);
                    continue;
                };
                carry(&phone, &hub, &shared);
                carry(&hub, &phone, &shared);
                state.lines.push((phone, hub));
            }
        });
        link
    }

    /// Cuts every line, and lets no new one through.
    pub(crate) fn cut(&self) {
        self.shared.change(|state| {
            state.cut = true;
            for (phone, hub) in state.lines.drain(..) {
                // A line that has ended by itself is cut already.
                let _ = phone.shutdown(Shutdown::Both);
                let _ = hub.shutdown(Shutdown::Both);
            }
        });
    }

    /// Nothing passes and nothing is closed, as behind a bank of earth.
    pub(crate) fn freeze(&self) {
        self.shared.change(|state| state.frozen = true);
    }

    /// The phone's side falls silent for the hub, which may still speak.
    pub(crate) fn half_close(&self) {
        self.shared.change(|state| {
            for (_, hub) in &state.lines {
                let _ = hub.shutdown(Shutdown::Write);
            }
        });
    }

    /// Whole again: what was frozen passes, new lines are let through.
    pub(crate) fn mend(&self) {
        self.shared.change(|state| {
            state.cut = false;
            state.frozen = false;
        });
    }
}

fn open(hub: &str) -> Option<TcpStream> {
    TcpStream::connect(hub).ok()
}

fn carry(from: &TcpStream, to: &TcpStream, shared: &Arc<Shared>) {
    let mut from = from.try_clone().expect("a second handle");
    let mut to = to.try_clone().expect("a second handle");
    let shared = Arc::clone(shared);
    thread::spawn(move || {
        let mut bytes = [0; 16 * 1024];
        while let Ok(count @ 1..) = from.read(&mut bytes) {
            shared.pass();
            if to.write_all(&bytes[..count]).is_err() {
                break;
            }
        }
        // The other side may be gone already.
        let _ = to.shutdown(Shutdown::Write);
    });
}
