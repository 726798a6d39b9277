//! Does the reading fit: four rules that ask once, each with its reason.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::candidate::{Candidate, FAR, FITS, Mode, NEAR_BY};
use super::perhaps::{Perhaps, perhaps};
use crate::length::Length;

/// What is asked before the call is sent.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Doubt {
    /// The receiver says LOW where the ground was HIGH: which way is it?
    WhichWay,
    /// The ground stands higher than before, and nothing put soil there.
    GroundRose {
        /// By how much.
        by: Length,
        /// What it may have been.
        perhaps: Vec<Perhaps>,
    },
    /// An accepted mark reads otherwise than it did, and nobody was told to dig there: check the laser.
    RepeatOff {
        /// By how much: positive when it reads higher, negative when it reads lower.
        by: Length,
    },
    /// It fits the machine's last mark, not the one that was picked.
    OtherMark {
        /// That mark.
        perhaps: String,
    },
    /// Far below target.
    FarBelow {
        /// By how much.
        by: Length,
        /// What it may have been.
        perhaps: Vec<Perhaps>,
    },
}

/// A machine takes soil away; more than this is no longer reading error.
const ROSE: Length = Length::from_hundredths_of_a_foot(5);
/// Ground falls for good reasons too, so that only a fall that one repeat alone makes an alarm is asked about (4.5 standard
/// deviations of a repeat); smaller ones add up in `laser::drift`.
const FELL: Length = Length::from_hundredths_of_a_foot(10);
/// Where the ground was above grade before, a machine that is told how much to take seldom goes this far below.
const TOO_DEEP: Length = Length::from_hundredths_of_a_foot(30);

/// What must be asked about a reading, if anything: the first of the four rules that it breaks.
pub fn doubt(reading: &Candidate) -> Option<Doubt> {
    low_after_high(reading)
        .or_else(|| ground_rose(reading))
        .or_else(|| fits_the_last_mark(reading))
        .or_else(|| far_below(reading))
}

/// The receiver's two signs look alike in the sun, and the press is the whole reading: after HIGH, a LOW on
/// the same mark is asked about.
fn low_after_high(reading: &Candidate) -> Option<Doubt> {
    let earlier = reading.earlier?;
    (reading.mode == Mode::ReceiverLow && earlier.said_high).then_some(Doubt::WhichWay)
}

/// Digging does not raise the ground. On an accepted mark, where nobody digs, a rise or a fall is a free check
/// of the laser instead.
fn ground_rose(reading: &Candidate) -> Option<Doubt> {
    let earlier = reading.earlier?;
    let by = reading.dev() - earlier.dev;
    if !earlier.same_set_up || earlier.ground_changed {
        return None;
    }
    if earlier.accepted {
        // A lifted laser makes accepted ground fall, and a dropped one makes it rise.
        return (by > ROSE || -by > FELL).then_some(Doubt::RepeatOff { by });
    }
    if by <= ROSE {
        return None;
    }
    Some(Doubt::GroundRose {
        by,
        perhaps: perhaps(reading),
    })
}

/// A first reading far from its target that fits the mark the machine has just left: the page may still show
/// that mark's neighbour.
fn fits_the_last_mark(reading: &Candidate) -> Option<Doubt> {
    if reading.earlier.is_some() || reading.dev().abs() <= FAR {
        return None;
    }
    reading
        .neighbours
        .iter()
        .filter(|other| other.machines_last && other.distance <= NEAR_BY)
        .map(|other| ((reading.elevation - other.target).abs(), other))
        .filter(|(miss, _)| *miss <= FITS)
        .min_by_key(|(miss, _)| *miss)
        .map(|(_, other)| Doubt::OtherMark {
            perhaps: other.mark.clone(),
        })
}

/// Ground so far below its target was dug in error or read in error; either way somebody must look. Where the ground was
/// known from the same set-up, less is enough.
fn far_below(reading: &Candidate) -> Option<Doubt> {
    let by = -reading.dev();
    let known = reading.earlier.is_some_and(|earlier| {
        earlier.same_set_up && !earlier.ground_changed && earlier.dev > -TOO_DEEP
    });
    (by > if known { TOO_DEEP } else { FAR }).then(|| Doubt::FarBelow {
        by,
        perhaps: perhaps(reading),
    })
}

#[cfg(test)]
mod tests;
