//! One laser set-up as it stands: its height, its checks, what its laser's test found.

use contract::ToSchema;
use earthwork::laser::check_due::Due;
use earthwork::laser::drift::Drift;
use earthwork::laser::plane::SlopedLaser;
use earthwork::length::Length;
use earthwork::level;
use earthwork::point::Point;
use serde::{Deserialize, Serialize};

use crate::said::set_up::{Basis, DoubtReason, LaserSlope, Proof};
use crate::time::Time;

/// Whether a set-up may be used.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum SetUpState {
    /// Shoot a second benchmark before it may be used.
    Unproven,
    /// In use.
    Proven {
        /// How.
        proof: Proof,
    },
    /// Something does not agree: two benchmarks must agree before it may be used again.
    InDoubt {
        /// Why.
        why: DoubtReason,
        /// Since when.
        since: Time,
        /// The benchmarks that have agreed since.
        agreed: Vec<String>,
    },
}

/// A check shot.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CheckCard {
    /// On which benchmark.
    pub benchmark: String,
    /// (HI − rod) − benchmark.
    pub residual: Length,
    /// When.
    pub at: Time,
    /// Good, again, failed.
    pub check: level::Check,
}

/// A laser set-up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SetUp {
    /// Its name.
    pub id: String,
    /// The laser.
    pub laser: String,
    /// Where it stands.
    pub place: Option<Point>,
    /// What its height rests on; the last is in force.
    pub basis: Vec<Basis>,
    /// When the height that is in force was found.
    #[serde(default)]
    pub since: Option<Time>,
    /// How its plane is sloped; level without.
    #[serde(default)]
    pub slope: Option<LaserSlope>,
    /// Benchmarks that agreed before it was proven, when it is sloped.
    #[serde(default)]
    pub good_on: Vec<String>,
    /// Whether it may be used.
    pub state: SetUpState,
    /// Taken down.
    pub closed: bool,
    /// The last check shot.
    pub last_check: Option<CheckCard>,
    /// Readings since the last good check.
    pub readings_since_check: u32,
    /// When the shot was made that last proved it.
    pub good_at: Option<Time>,
    /// A check is due: why, and since when.
    pub due: Option<(Due, Time)>,
    /// What repeats on accepted marks and check shots add up to since the last good check.
    pub drift: Drift,
    /// Repeats on accepted marks, in the order in which they were made.
    pub repeats: Vec<RepeatShot>,
    /// What the newest test of its laser found.
    pub tested: Option<TestedLaser>,
}

/// What a test of a laser found.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct TestedLaser {
    /// The slant, over 100 ft.
    pub slant_per_100_ft: Length,
    /// It goes to service.
    pub service: bool,
    /// When.
    pub at: Time,
}

/// An accepted mark shot again, when nobody was told to dig there.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct RepeatShot {
    /// The mark.
    pub mark: String,
    /// When it was made.
    pub at: Time,
    /// The elevation now less the accepted one.
    pub residual: Length,
}

impl SetUp {
    /// The basis in force.
    pub fn basis(&self) -> Option<&Basis> {
        self.basis.last()
    }

    /// Its plane, when it is sloped.
    pub fn plane(&self) -> Option<SlopedLaser> {
        let (slope, at) = self.slope.zip(self.place)?;
        Some(slope.plane(at, self.height()))
    }

    /// The height of its plane over a place.
    pub fn height_at(&self, place: Point) -> Length {
        // A slope that is none was refused when it was set up.
        self.plane()
            .and_then(|plane| plane.height(place).ok())
            .unwrap_or_else(|| self.height())
    }

    /// Height of instrument in force; of a sloped laser, over the laser itself.
    pub fn height(&self) -> Length {
        self.basis.last().map_or(Length::ZERO, |basis| basis.height)
    }

    /// A shot made at this moment proved it: everything is counted from here.
    pub(crate) fn now_good(&mut self, at: Time) {
        self.good_at = Some(at);
        self.readings_since_check = 0;
        self.due = None;
        self.drift = Drift::default();
    }

    /// Whether readings on it become calls.
    pub fn usable(&self) -> bool {
        !self.closed && matches!(self.state, SetUpState::Proven { .. })
    }
}
