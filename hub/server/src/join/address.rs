//! Which of the laptop's addresses the codes carry: the one that phones can most likely reach, or the one that was chosen.

use std::net::{IpAddr, Ipv4Addr, SocketAddr};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use thiserror::Error;

use crate::store::disk;

/// Remembered in the data folder from day to day.
const FILE: &str = "address.json";
/// Names of interfaces that lead to no phone: containers, tunnels, bridges of virtual machines.
const VIRTUAL: [&str; 9] = [
    "docker", "veth", "br-", "virbr", "tun", "tap", "wg", "utun", "vmnet",
];

/// An address that phones may be able to reach.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct Candidate {
    /// The address.
    pub host: String,
    /// Whose it is.
    pub interface: String,
    /// Why it may be the one, or not.
    pub why: String,
}

/// An address that this laptop does not have.
#[derive(Debug, Error)]
#[error("This laptop has no address {host}. Choose one of: {known}.")]
pub struct NoSuchAddress {
    host: String,
    known: String,
}

#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
struct Remembered {
    /// What a person chose.
    chosen: Option<String>,
    /// What the codes carried on the newest day, and which day that was.
    last: Option<String>,
    day: Option<String>,
    /// What they carried on the day before that.
    before: Option<String>,
}

/// The address in the codes; clones share it.
#[derive(Clone, Debug)]
pub struct Addresses {
    listen: SocketAddr,
    path: PathBuf,
    remembered: Arc<Mutex<Remembered>>,
}

impl Addresses {
    /// Reads what was remembered; a file that can't be read only forgets a choice.
    pub fn of(folder: &Path, listen: SocketAddr) -> Self {
        let path = folder.join(FILE);
        let remembered = std::fs::read(&path)
            .ok()
            .and_then(|bytes| serde_json::from_slice(&bytes).ok())
            .unwrap_or_default();
        Self {
            listen,
            path,
            remembered: Arc::new(Mutex::new(remembered)),
        }
    }

    /// Every address that phones may be able to reach, the most likely first.
    pub fn candidates(&self) -> Vec<Candidate> {
        if !self.listen.ip().is_unspecified() {
            return vec![Candidate {
                host: self.listen.ip().to_string(),
                interface: String::new(),
                why: "the hub was told to listen here only".to_owned(),
            }];
        }
        let mut found: Vec<(u8, Candidate)> = if_addrs::get_if_addrs()
            .unwrap_or_default()
            .into_iter()
            .filter_map(|interface| match interface.ip() {
                IpAddr::V4(ip) => rate(&interface.name, ip),
                IpAddr::V6(_) => None,
            })
            .collect();
        found.sort_by(|a, b| (a.0, &a.1.host).cmp(&(b.0, &b.1.host)));
        found.into_iter().map(|(_, candidate)| candidate).collect()
    }

    /// The address in the codes.
    pub fn host(&self) -> String {
        let candidates = self.candidates();
        let chosen = self.lock().chosen.clone();
        chosen
            .filter(|host| candidates.iter().any(|known| known.host == *host))
            .or_else(|| candidates.into_iter().next().map(|first| first.host))
            .unwrap_or_else(|| Ipv4Addr::LOCALHOST.to_string())
    }

    /// The port that the hub listens on.
    pub fn port(&self) -> u16 {
        self.listen.port()
    }

    /// The beginning of every link in the codes.
    pub fn base(&self) -> String {
        let host = self.host();
        if host.contains(':') {
            format!("http://[{host}]:{}", self.port())
        } else {
            format!("http://{host}:{}", self.port())
        }
    }

    /// Takes another of the laptop's addresses into the codes.
    ///
    /// # Errors
    /// [`NoSuchAddress`].
    pub fn choose(&self, host: &str) -> Result<(), NoSuchAddress> {
        let candidates = self.candidates();
        if !candidates.iter().any(|known| known.host == host) {
            let known: Vec<String> = candidates.into_iter().map(|known| known.host).collect();
            return Err(NoSuchAddress {
                host: host.to_owned(),
                known: known.join(", "),
            });
        }
        let mut remembered = self.lock();
        remembered.chosen = Some(host.to_owned());
        self.write(&remembered);
        Ok(())
    }

    /// Remembers what this day's codes carry.
    pub fn begin_day(&self, day: &str) {
        let host = self.host();
        let mut remembered = self.lock();
        if remembered.day.as_deref() != Some(day) {
            remembered.before = remembered.last.take();
            remembered.day = Some(day.to_owned());
        }
        remembered.last = Some(host);
        self.write(&remembered);
    }

    /// Whether the codes carried another address the day before: phones keep what they have not sent under the old one.
    pub fn changed_since_yesterday(&self) -> bool {
        let before = self.lock().before.clone();
        before.is_some_and(|before| before != self.host())
    }

    fn lock(&self) -> std::sync::MutexGuard<'_, Remembered> {
        self.remembered
            .lock()
            .unwrap_or_else(PoisonError::into_inner)
    }

    fn write(&self, remembered: &Remembered) {
        let written = serde_json::to_vec(remembered)
            .map_err(std::io::Error::other)
            .and_then(|bytes| disk::write_whole(&self.path, &bytes));
        if let Err(error) = written {
            tracing::warn!("The chosen address can't be remembered: {error}");
        }
    }
}

/// How likely phones reach an address: lower is better; none when they never do.
fn rate(interface: &str, ip: Ipv4Addr) -> Option<(u8, Candidate)> {
    if ip.is_loopback() || ip.is_link_local() || ip.is_unspecified() {
        return None;
    }
    let is_virtual = VIRTUAL.iter().any(|front| interface.starts_with(front));
    let (rank, why) = match (is_virtual, ip.is_private(), ip.octets()) {
        (true, ..) => (
            3,
            "a tunnel or a container's network: phones hardly reach it",
        ),
        (_, true, [192, 168, ..]) => (0, "a private network, as a router in the truck gives it"),
        (_, true, _) => (1, "a private network"),
        _ => (
            2,
            "a public address: phones of the truck's network may not reach it",
        ),
    };
    Some((
        rank,
        Candidate {
            host: ip.to_string(),
            interface: interface.to_owned(),
            why: why.to_owned(),
        },
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(folder: &Path) -> Addresses {
        Addresses::of(folder, SocketAddr::from(([127, 0, 0, 1], 8080)))
    }

    #[test]
    fn a_router_in_the_truck_comes_before_tunnels_and_containers() {
        let rank = |name, ip: [u8; 4]| rate(name, Ipv4Addr::from(ip)).map(|(rank, _)| rank);
        assert!(rank("wlan0", [192, 168, 8, 2]) < rank("eth0", [10, 0, 0, 5]));
        assert!(rank("eth0", [10, 0, 0, 5]) < rank("docker0", [172, 17, 0, 1]));
        assert_eq!(rank("lo", [127, 0, 0, 1]), None);
        assert_eq!(rank("eth0", [169, 254, 3, 3]), None);
    }

    #[test]
    fn an_address_that_the_laptop_lacks_is_refused_by_name() {
        let folder = tempfile::tempdir().unwrap();
        let error = at(folder.path())
            .choose("192.0.2.7")
            .unwrap_err()
            .to_string();
        assert!(
            error.contains("192.0.2.7") && error.contains("127.0.0.1"),
            "{error}"
        );
    }

    #[test]
    fn a_changed_address_is_noticed_on_the_next_day() {
        let folder = tempfile::tempdir().unwrap();
        at(folder.path()).begin_day("2030-05-14");
        assert!(!at(folder.path()).changed_since_yesterday());
        let moved = Addresses::of(folder.path(), SocketAddr::from(([127, 0, 0, 2], 8080)));
        moved.begin_day("2030-05-15");
        assert!(moved.changed_since_yesterday());
        moved.begin_day("2030-05-15");
        assert!(moved.changed_since_yesterday());
        moved.begin_day("2030-05-16");
        assert!(!moved.changed_since_yesterday());
    }
}
