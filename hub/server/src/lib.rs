//! The hub: everything that touches the world. Rules of the trade live in `day` and `earthwork`, none here.
//!
//! | to learn | read |
//! |---|---|
//! | how a start goes, from the data folder to the first answer | [`run`], `start` |
//! | how a request becomes entries, an answer and views | [`writer`], [`publish`] |
//! | where things are kept, and what happens after a power cut | [`store`] |
//! | the wire | [`http`], [`socket`] |
//! | how phones come in | [`join`], [`http::join`] |
//! | the site file | [`site_file`] |
//! | files of others | [`import`] |
//! | the log in files | [`past`], [`export`] |
//! | what a photo must be, where its bytes are | [`jpeg`], [`store::photos`] |
//! | days that are over: any moment of them, and on paper | [`days`], [`report`] |
//! | the command line | [`cli`], [`examples`], [`compute`] |

pub mod archive;
mod bounded;
pub mod cli;
pub mod clock;
pub mod compute;
pub mod config;
pub mod days;
pub mod demo;
pub mod desk;
pub mod error;
pub mod examples;
pub mod export;
pub mod http;
pub mod hub;
pub mod import;
pub mod join;
pub mod jpeg;
pub mod limits;
mod lookout;
mod new_day;
pub mod opening;
pub mod past;
pub mod publish;
pub mod report;
pub mod screens;
pub mod site_export;
pub mod site_file;
pub mod socket;
mod start;
pub mod store;
mod terminal;
mod when;
mod witness;
pub mod writer;

#[cfg(test)]
mod tests;

use std::net::TcpListener;

use actix_web::rt;
use actix_web::{App, HttpServer};

use clock::Clock;
use config::Config;
use error::StartError;
use hub::Hub;
use start::Opened;

/// Two cores serve a crew; the writer has a thread of its own.
const WORKERS: usize = 2;
/// How long open requests may take at the end, in seconds.
const LAST_WORDS_S: u64 = 3;

/// A hub that answers.
#[derive(Clone, Debug)]
pub struct Started {
    /// Where this laptop reaches it.
    pub base: String,
    /// The secret of the laptop's own link.
    pub own: String,
    /// Its clock.
    pub clock: Clock,
}

/// Runs the hub until `shutdown` is done; `started` is told once it answers.
///
/// # Errors
/// [`StartError`], for the person at the terminal.
pub async fn run(
    config: Config,
    listener: TcpListener,
    shutdown: impl Future<Output = ()>,
    started: impl FnOnce(&Hub, Started),
) -> Result<(), StartError> {
    let Opened { hub, thread } = start::open(&config, listener.local_addr()?).await?;
    let routes = http::routes(hub.clone());
    let server =
        HttpServer::new(move || App::new().wrap(http::headers()).configure(routes.clone()))
            .workers(WORKERS)
            .disable_signals()
            .tcp_nodelay(true)
            .shutdown_timeout(LAST_WORDS_S)
            .listen(listener)?
            .run();
    let handle = server.handle();
    let serving = rt::spawn(server);
    rt::spawn(lookout::watch(hub.clone()));
    let up = start::started(&hub);
    started(&hub, up);
    shutdown.await;
    hub.publish.close();
    handle.stop(true).await;
    // The server's own end is no news: what matters is that the writer has kept everything.
    let _ = serving.await;
    hub.writer.stop();
    // A writer that met an error of its own has already halted the hub and said so.
    let _ = actix_web::web::block(move || thread.join()).await;
    Ok(())
}
