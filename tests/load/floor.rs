//! The floor: a relay that reads a message, appends, fdatasyncs, answers, and writes to every socket. Nothing less will do.

use std::fs::File;
use std::io::{Read as _, Write as _};
use std::net::{TcpListener, TcpStream as Blocking};
use std::thread;
use std::time::Instant;

use tempfile::TempDir;
use tokio::io::{AsyncReadExt as _, AsyncWriteExt as _};
use tokio::net::TcpStream;

use crate::harness::folder;
use crate::screens::{Screens, Sizes, Turn};

/// The phones' side of the relay.
pub(crate) struct Line {
    sizes: Sizes,
    post: TcpStream,
    screens: Screens,
    number: u64,
    _folder: TempDir,
}

impl Line {
    /// A relay with so many screens.
    pub(crate) async fn open(count: usize, sizes: Sizes) -> Self {
        let place = folder();
        let file = File::options()
            .create_new(true)
            .append(true)
            .open(place.path().join("floor"));
        let file = file.expect("a file");
        let listener = TcpListener::bind("127.0.0.1:0").expect("a free port");
        let address = listener.local_addr().expect("an address");
        thread::spawn(move || relay(&listener, count, file, sizes));
        let connect = || async {
            let stream = TcpStream::connect(address).await.expect("the relay");
            stream.set_nodelay(true).expect("a quick line");
            stream
        };
        let post = connect().await;
        let screens = Screens::new(count);
        for screen in 0..count {
            let (mut stream, tell) = (connect().await, screens.tell.clone());
            tokio::spawn(async move {
                let mut bytes = vec![0; sizes.view];
                for number in 1.. {
                    // The relay ends with the measurement.
                    if stream.read_exact(&mut bytes).await.is_err()
                        || tell.send((screen, number, Instant::now())).is_err()
                    {
                        return;
                    }
                }
            });
        }
        Self {
            sizes,
            post,
            screens,
            number: 0,
            _folder: place,
        }
    }

    /// One message, to its answer and to every screen.
    pub(crate) async fn turn(&mut self) -> Turn {
        self.number += 1;
        let mut answer = vec![0; self.sizes.answer];
        let posted = Instant::now();
        let request = vec![b'x'; self.sizes.request];
        self.post.write_all(&request).await.expect("the relay");
        self.post.read_exact(&mut answer).await.expect("an answer");
        let answered = Instant::now();
        self.screens.turn(self.number, posted, answered).await
    }
}

fn relay(listener: &TcpListener, count: usize, mut file: File, sizes: Sizes) {
    let accept = || {
        let (stream, _) = listener.accept().expect("a phone");
        stream.set_nodelay(true).expect("a quick line");
        stream
    };
    let mut post = accept();
    let mut screens: Vec<Blocking> = (0..count).map(|_| accept()).collect();
    let (mut request, answer) = (vec![0; sizes.request], vec![b'x'; sizes.answer]);
    let (kept, view) = (vec![b'x'; sizes.kept], vec![b'x'; sizes.view]);
    // The phones' side goes away when all is measured.
    while post.read_exact(&mut request).is_ok() {
        file.write_all(&kept).expect("a file");
        file.sync_data().expect("a file");
        if post.write_all(&answer).is_err() {
            return;
        }
        for screen in &mut screens {
            if screen.write_all(&view).is_err() {
                return;
            }
        }
    }
}
