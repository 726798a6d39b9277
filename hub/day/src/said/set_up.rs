//! The laser is set up, proven, restated, taken down.

use earthwork::length::Length;
use earthwork::point::Point;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// A backsight on a benchmark.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SetUpLaser {
    /// The laser.
    pub laser: String,
    /// Where it stands, paced or taped; unknown is taken as far.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place: Option<Point>,
    /// The benchmark under the rod.
    pub benchmark: String,
    /// The rod.
    pub rod: String,
    /// The rod value as typed.
    pub text: String,
}

/// The backsight was not what it was said to be.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RestateSetUp {
    /// Which set-up.
    pub set_up: String,
    /// The benchmark that was really under the rod.
    pub benchmark: String,
    /// The rod.
    pub rod: String,
    /// The rod value as typed.
    pub text: String,
}

/// The only benchmark levelled again: a point shot before, the laser's height changed, benchmark and point shot again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LevelAgain {
    /// Which set-up.
    pub set_up: String,
    /// The rod.
    pub rod: String,
    /// The rod on a hard point, before the height was changed.
    pub point_before: String,
    /// The rod on the benchmark, after.
    pub benchmark_again: String,
    /// The rod on the same point, after.
    pub point_again: String,
}

/// Work on one benchmark, each call labelled so.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct UseOneBenchmark {
    /// Which set-up.
    pub set_up: String,
}

/// The set-up is taken down.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CloseSetUp {
    /// Which set-up.
    pub set_up: String,
    /// Why.
    #[serde(default)]
    pub why: String,
}

/// What a set-up's height rests on.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Basis {
    /// The benchmark of the backsight.
    pub benchmark: String,
    /// The rod.
    pub rod: String,
    /// The rod value as typed.
    pub text: String,
    /// The rod value.
    pub backsight: Length,
    /// Height of instrument: benchmark + backsight.
    pub height: Length,
}

/// A laser was set up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct LaserSetUp {
    /// Its name, given by the hub: S1, S2 and so on.
    pub set_up: String,
    /// The laser.
    pub laser: String,
    /// Where it stands.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place: Option<Point>,
    /// What its height rests on.
    pub basis: Basis,
}

/// A set-up's backsight was restated; the set-up must be proven again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SetUpRestated {
    /// Which set-up.
    pub set_up: String,
    /// Its new basis.
    pub basis: Basis,
}

/// A set-up may be used.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SetUpProven {
    /// Which set-up.
    pub set_up: String,
    /// How.
    pub proof: Proof,
    /// The new basis, when the laser's height was changed for the proof.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub basis: Option<Basis>,
}

/// A set-up was taken down.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SetUpClosed {
    /// Which set-up.
    pub set_up: String,
    /// Why.
    pub why: String,
}

/// What stands behind a set-up.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Proof {
    /// A second benchmark agreed.
    SecondBenchmark {
        /// Which.
        benchmark: String,
    },
    /// Two benchmarks agreed after a doubt.
    TwoBenchmarks {
        /// The first.
        first: String,
        /// The second.
        second: String,
    },
    /// The only benchmark was levelled a second time from a changed height.
    LevelledAgain {
        /// Between the two levellings of the point.
        disagreement: Length,
    },
    /// Nothing but the backsight: each call says ONE BENCHMARK.
    OneBenchmark,
}

/// Why a set-up is in doubt.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum DoubtReason {
    /// A check shot failed.
    FailedCheck {
        /// On which benchmark.
        benchmark: String,
        /// (HI − rod) − benchmark.
        residual: Length,
    },
    /// Somebody saw it move.
    Bumped {
        /// Who.
        by: String,
    },
}
