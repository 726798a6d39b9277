//! A database server of a measurement: started in a folder of its own, gone with it.

use std::net::TcpListener;
use std::process::{Child, Command};

use tempfile::TempDir;

/// A server that runs.
pub(crate) struct Running {
    child: Child,
    /// Where it listens, on loopback.
    pub(crate) port: u16,
    _folder: TempDir,
}

impl Running {
    /// Starts it; `package` says what to install when it is not there.
    pub(crate) fn start(command: &mut Command, port: u16, folder: TempDir, package: &str) -> Self {
        let child = command.spawn();
        let child = child.unwrap_or_else(|error| {
            let program = command.get_program().display();
            panic!("{program}: {error}. Install it (Debian: apt-get install {package}).")
        });
        Self {
            child,
            port,
            _folder: folder,
        }
    }
}

impl Drop for Running {
    fn drop(&mut self) {
        // What is gone already need not be ended.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// A port that is free at this moment.
pub(crate) fn free_port() -> u16 {
    let listener = TcpListener::bind("127.0.0.1:0").expect("a free port");
    listener.local_addr().expect("an address").port()
}
