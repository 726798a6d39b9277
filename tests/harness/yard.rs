//! A yard whose numbers can be worked out by hand, and a crew in it. Invented.
//!
//! The pad: top of slab 100.50 ft, half a foot of gravel below, so the ground to dig to is 100.00 ft; a tenth high and two
//! tenths low are allowed. The laser stands 5.00 ft above BM-1 (100.00 ft): its height of instrument is 105.00 ft.

use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};

use serde_json::{Value, json};
use tempfile::TempDir;

use super::phone::Phone;
use super::socket::Socket;
use super::{Hub, folder};

/// The site file.
pub(crate) const SITE: &str = r#"
version = 1
name = "Test yard"

[tolerance]
high = "0.10 ft"
low = "0.20 ft"

[[benchmark]]
id = "BM-1"
elevation = "100.00 ft"
at = ["0 ft", "0 ft"]

[[benchmark]]
id = "BM-2"
elevation = "101.52 ft"
at = ["80 ft", "0 ft"]

[[target]]
id = "PAD"
name = "yard pad"
surface = "top of slab"
layers = [{ name = "gravel", thickness = "0.50 ft" }]
flat = { elevation = "100.50 ft" }

[[target]]
id = "POND"
name = "pond floor"
surface = "bare ground"
flat = { elevation = "97.00 ft" }

[[mark]]
id = "P-1"
target = "PAD"
at = ["30 ft", "20 ft"]

[[mark]]
id = "P-2"
target = "PAD"
at = ["40 ft", "20 ft"]

[[mark]]
id = "P-3"
target = "PAD"
at = ["50 ft", "20 ft"]

[[mark]]
id = "W-1"
target = "POND"
at = ["30 ft", "60 ft"]

[[mark]]
id = "S-1"
at = ["90 ft", "90 ft"]

[[machine]]
id = "EX-1"
shape = "square"
reach_at_ground = "27.8 ft"
tail_radius = "7 ft"
track_width = "8.2 ft"
works_on = ["PAD"]
direction = "north"

[[machine]]
id = "EX-2"
shape = "triangle"
reach_at_ground = "20.3 ft"
tail_radius = "4.5 ft"
track_width = "6.5 ft"
works_on = ["POND"]
direction = "east"

[[rod]]
id = "A"
unit = "feet_hundredths"
length = "13 ft"

[[laser]]
id = "L1"
doubt_per_100_ft = "0.005 ft"
"#;

/// A hub on the yard, in a folder of its own.
pub(crate) struct Yard {
    /// The hub.
    pub(crate) hub: Hub,
    /// The laptop's own browser.
    pub(crate) truck: Phone,
    folder: TempDir,
}

impl Yard {
    /// A hub on the yard, with nobody in but the laptop.
    pub(crate) fn open() -> Self {
        Self::open_with(&[])
    }

    /// As [`Yard::open`], on another site file.
    pub(crate) fn open_on(site: &str) -> Self {
        Self::open_in(|folder| write_site(folder, site))
    }

    /// As [`Yard::open`], on the site file that is put into the folder, and what it names.
    pub(crate) fn open_in(put: impl FnOnce(&Path)) -> Self {
        let folder = folder();
        put(folder.path());
        let hub = serve(folder.path());
        let truck = hub.laptop();
        Self { hub, truck, folder }
    }

    /// As [`Yard::open`], with something in the hub's environment.
    pub(crate) fn open_with(environment: &[(&str, &OsStr)]) -> Self {
        let folder = folder();
        write_site(folder.path(), SITE);
        let hub = serve_with(folder.path(), environment);
        let truck = hub.laptop();
        Self { hub, truck, folder }
    }

    /// The data folder.
    pub(crate) fn data(&self) -> PathBuf {
        self.folder.path().join("data")
    }

    /// The site file.
    pub(crate) fn site_file(&self) -> PathBuf {
        self.folder.path().join("site.toml")
    }

    /// Stops the hub cleanly; gives the folder, so that it can be started again.
    pub(crate) fn stop(self) -> Stopped {
        self.signal("TERM")
    }

    /// Stops the hub by a signal that it takes for a wish to stop.
    pub(crate) fn signal(self, signal: &str) -> Stopped {
        assert!(self.hub.signal(signal).success(), "the hub stops cleanly");
        Stopped {
            folder: self.folder,
            truck: self.truck,
        }
    }

    /// The hub dies as in a power cut of the process: no last word, no last write.
    pub(crate) fn kill(self) -> Stopped {
        drop(self.hub);
        Stopped {
            folder: self.folder,
            truck: self.truck,
        }
    }

    /// A ground person's phone.
    pub(crate) fn ground(&self) -> Phone {
        self.truck.lets_in("RT", &["ground"], None)
    }

    /// What the cab's screen shows once everything that is kept so far has been told to it.
    pub(crate) fn cab_view(&self, screen: &mut Socket) -> Value {
        let seq = self.hub_head();
        let newest = |value: &Value| value["head"].as_u64() >= Some(seq);
        // The first such beat may overtake the view; the next one can't.
        screen.until("a beat", newest);
        screen.until("the next beat", newest);
        let views = screen.heard.iter().rev();
        let mut views = views.filter(|value| value["topic"] == "operator");
        views.next().expect("a view")["view"].clone()
    }

    /// The last entry of the log.
    pub(crate) fn hub_head(&self) -> u64 {
        let health = self.truck.json("/healthz");
        health["head"].as_u64().expect("a number")
    }

    /// The phone in a machine's cab.
    pub(crate) fn cab(&self, machine: &str) -> Phone {
        self.truck.lets_in("OW", &["operator"], Some(machine))
    }
}

/// A yard whose hub does not run.
pub(crate) struct Stopped {
    folder: TempDir,
    truck: Phone,
}

impl Stopped {
    /// The folder of site file and data.
    pub(crate) fn folder(&self) -> &Path {
        self.folder.path()
    }

    /// The data folder.
    pub(crate) fn data(&self) -> PathBuf {
        self.folder.path().join("data")
    }

    /// The one file of the day's log.
    pub(crate) fn day_file(&self) -> PathBuf {
        day_file(&self.data())
    }

    /// Starts the hub again; the laptop's browser keeps its cookie.
    pub(crate) fn start(self) -> Yard {
        let hub = serve(self.folder.path());
        let truck = self.truck.at(&hub.base);
        Yard {
            hub,
            truck,
            folder: self.folder,
        }
    }
}

/// Writes the site file of a folder.
pub(crate) fn write_site(folder: &Path, text: &str) {
    fs::write(folder.join("site.toml"), text).expect("a site file");
}

/// A hub on the site file of a folder.
pub(crate) fn serve(folder: &Path) -> Hub {
    serve_with(folder, &[])
}

fn serve_with(folder: &Path, environment: &[(&str, &OsStr)]) -> Hub {
    let site = folder.join("site.toml");
    let site = site.to_str().expect("a plain path");
    let arguments = ["serve", "--site", site];
    Hub::start_with(&arguments, &folder.join("data"), environment)
}

/// The one file of the day's log in a data folder.
pub(crate) fn day_file(data: &Path) -> PathBuf {
    let files = fs::read_dir(data.join("log")).expect("a log");
    let mut files: Vec<PathBuf> = files
        .map(|file| file.expect("a file").path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "jsonl"))
        .collect();
    assert_eq!(files.len(), 1, "{files:?}");
    files.remove(0)
}

/// The laser is set up on BM-1: 100.00 + 5.00 = HI 105.00 ft (common practice: elevation + backsight).
pub(crate) fn set_up() -> Value {
    json!({ "kind": "set_up_laser", "laser": "L1", "benchmark": "BM-1", "rod": "A", "text": "5.00",
            "place": { "x": 40 * FOOT, "y": 20 * FOOT } })
}

/// The second benchmark: 105.00 − 3.48 = 101.52 ft, as BM-2 is said to be.
pub(crate) fn second_benchmark() -> Value {
    json!({ "kind": "shoot_check", "set_up": "S1", "benchmark": "BM-2", "rod": "A", "text": "3.48" })
}

/// The laser is set up and proven.
pub(crate) fn prove_laser(phone: &Phone) {
    phone.says(&set_up());
    let checked = phone.says(&second_benchmark());
    assert_eq!(checked["outcome"]["usable"], true, "{checked}");
}

/// A rod value at a mark.
pub(crate) fn reading(mark: &str, text: &str) -> Value {
    json!({ "kind": "take_reading", "mark": mark, "set_up": "S1", "rod": "A", "text": text, "mode": "rod" })
}

/// A foot in tenth-micrometres (NIST Handbook 44: 1 ft = 0.3048 m exactly).
pub(crate) const FOOT: i64 = 3_048_000;
