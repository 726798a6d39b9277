//! What a start needs, in one checked struct.

use std::net::SocketAddr;
use std::path::PathBuf;

use day::time::Time;

use crate::clock::Skip;
use crate::hub::Wifi;
use crate::site_file::SiteRead;

/// A checked start.
#[derive(Clone, Debug)]
pub struct Config {
    /// The site, read from its file.
    pub site: SiteRead,
    /// The data folder.
    pub data: PathBuf,
    /// Where to listen.
    pub listen: SocketAddr,
    /// How the hub's clock goes.
    pub pace: Pace,
    /// The day's name, when it is not the date.
    pub day: Option<String>,
    /// The truck's Wi-Fi.
    pub wifi: Option<Wifi>,
}

/// How the hub's clock goes.
#[derive(Clone, Debug, PartialEq)]
pub enum Pace {
    /// With the world.
    Real,
    /// A demo's: from a moment on, faster.
    Fast {
        /// The demo's beginning; a second start goes on where the first was.
        start: Time,
        /// Hub seconds in a second.
        speed: f64,
        /// Stretches that are jumped over.
        skips: Vec<Skip>,
    },
    /// Moved by hand.
    Stepped {
        /// The demo's beginning.
        start: Time,
    },
}
