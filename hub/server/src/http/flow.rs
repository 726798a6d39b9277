//! A file that is written while it is sent: memory holds a few pieces of it, however long it is.

use std::fmt::Display;
use std::io::{BufWriter, Error, Write};

use actix_web::web::{Bytes, block};
use futures_util::stream::{Stream, poll_fn};
use tokio::sync::mpsc::{Sender, channel};

/// Bytes of a piece.
const PIECE: usize = 64 * 1024;
/// Pieces that wait for the reader.
const WAITING: usize = 4;

type Piece = Result<Bytes, Error>;

/// What goes out in pieces.
struct Pieces(Sender<Piece>);

impl Write for Pieces {
    fn write(&mut self, bytes: &[u8]) -> Result<usize, Error> {
        let piece = Bytes::copy_from_slice(bytes);
        let sent = self.0.blocking_send(Ok(piece));
        // Whoever asked has hung up: there is nobody to write for.
        sent.map_err(|_gone| Error::from(std::io::ErrorKind::BrokenPipe))?;
        Ok(bytes.len())
    }

    fn flush(&mut self) -> Result<(), Error> {
        Ok(())
    }
}

/// The body of an answer, written away from the workers. An error breaks it off, so that half a file is never taken for one.
pub(super) fn flow<E: Display>(
    write: impl FnOnce(&mut dyn Write) -> Result<(), E> + Send + 'static,
) -> impl Stream<Item = Piece> {
    let (pieces, mut sent) = channel(WAITING);
    let broken = pieces.clone();
    drop(block(move || {
        let mut out = BufWriter::with_capacity(PIECE, Pieces(pieces));
        let written = write(&mut out).map_err(|error| error.to_string());
        let written = written.and_then(|()| out.flush().map_err(|error| error.to_string()));
        if let Err(error) = written {
            tracing::error!("{error}");
            // Whoever has hung up need not hear of it.
            let _ = broken.blocking_send(Err(Error::other(error)));
        }
    }));
    poll_fn(move |context| sent.poll_recv(context))
}
