//! What every handler and socket shares.

use std::sync::Arc;

use tokio::sync::Semaphore;

use crate::clock::Clock;
use crate::desk::Desk;
use crate::join::address::Addresses;
use crate::join::code::Secret;
use crate::limits::Limits;
use crate::past::Past;
use crate::publish::Publish;
use crate::screens::Screens;
use crate::store::photos::Photos;
use crate::writer::Writer;

/// Wrong codes from one address: a handful at once, then one every ten seconds.
const GUESSES: (f64, f64) = (10.0, 0.1);
/// Wrong codes from everywhere together.
const ALL_GUESSES: (f64, f64) = (100.0, 1.0);
/// Requests of one phone: a phone that comes back after an hour sends what it kept at once.
const REQUESTS: (f64, f64) = (300.0, 100.0);
/// Photos on their way in at once, each held in memory until it is known to be one.
const UPLOADS: usize = 6;

/// The running hub; clones share it.
#[derive(Clone, Debug)]
pub struct Hub {
    /// The time.
    pub clock: Clock,
    /// Who takes requests.
    pub writer: Writer,
    /// What is current.
    pub publish: Publish,
    /// What was said before.
    pub past: Past,
    /// The photos of the data folder.
    pub photos: Photos,
    /// Which operators' pages can be seen.
    pub screens: Arc<Screens>,
    /// The secret behind the codes.
    pub secret: Secret,
    /// The address in the codes.
    pub addresses: Addresses,
    /// The Wi-Fi that a code joins, when its name was given.
    pub wifi: Option<Wifi>,
    /// Files that were sent and not yet used.
    pub desk: Arc<Desk>,
    /// How often somebody may try.
    pub limits: Arc<Allowances>,
}

/// The truck's Wi-Fi.
#[derive(Clone, PartialEq, Eq)]
pub struct Wifi {
    /// Its name.
    pub ssid: String,
    /// Its password; empty when it is open.
    pub password: String,
}

impl std::fmt::Debug for Wifi {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "Wifi {{ ssid: {:?} }}", self.ssid)
    }
}

/// How often somebody may try what.
#[derive(Debug)]
pub struct Allowances {
    /// Wrong codes, by the address that they come from.
    pub guesses: Limits,
    /// Wrong codes, all together.
    pub all_guesses: Limits,
    /// Requests, by phone.
    pub requests: Limits,
    /// Photos on their way in.
    pub uploads: Semaphore,
}

impl Default for Allowances {
    fn default() -> Self {
        let of = |(size, per_second)| Limits::new(size, per_second);
        Self {
            guesses: of(GUESSES),
            all_guesses: of(ALL_GUESSES),
            requests: of(REQUESTS),
            uploads: Semaphore::new(UPLOADS),
        }
    }
}
