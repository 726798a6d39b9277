//! What is known of a reading when it is asked whether it fits.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::Learned;
use crate::length::Length;
use crate::rod::Rod;

/// A first reading within this of its target needs no explanation; nor one less far below it.
pub(super) const FAR: Length = Length::from_hundredths_of_a_foot(50);
/// This near another mark's target, a reading fits it.
pub(super) const FITS: Length = Length::from_hundredths_of_a_foot(10);
/// Nobody takes a mark further away for the one they stand at.
pub(super) const NEAR_BY: Length = Length::from_hundredths_of_a_foot(1500);

/// How the ground was read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Mode {
    /// A number was read off the rod.
    Rod,
    /// The receiver stood at the grade rod and said that the ground is high.
    ReceiverHigh,
    /// The receiver stood at the grade rod and said that the ground is low.
    ReceiverLow,
}

/// The last reading on the same mark.
#[expect(
    clippy::struct_excessive_bools,
    reason = "four facts that do not depend on one another"
)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Earlier {
    /// Its difference (measured − target).
    pub dev: Length,
    /// It was shot from the same set-up.
    pub same_set_up: bool,
    /// The mark was accepted on it.
    pub accepted: bool,
    /// It said that the ground was high.
    pub said_high: bool,
    /// The ground has changed since, by a slough or by laying the mark again.
    pub ground_changed: bool,
}

/// Another mark near by.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Neighbour {
    /// Its name.
    pub mark: String,
    /// Its target.
    pub target: Length,
    /// How far away it is.
    pub distance: Length,
    /// It was this machine's last mark.
    pub machines_last: bool,
}

/// A reading about to be taken.
#[derive(Clone, Debug)]
pub struct Candidate<'a> {
    /// The elevation it gives.
    pub elevation: Length,
    /// The target of the mark that was picked.
    pub target: Length,
    /// The rod's value, bracket included; zero in receiver mode.
    pub typed: Length,
    /// How it was read.
    pub mode: Mode,
    /// The last reading on this mark.
    pub earlier: Option<Earlier>,
    /// Marks near by.
    pub neighbours: &'a [Neighbour],
    /// The rod that was picked.
    pub rod: &'a Rod,
    /// All rods of the site.
    pub rods: &'a [Rod],
    /// What the day has taught about suggestions.
    pub learned: &'a Learned,
}

impl Candidate<'_> {
    pub(super) fn dev(&self) -> Length {
        self.elevation - self.target
    }
}
