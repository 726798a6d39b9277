//! How near the machine: the ground that is kept out of, and whether a mark lies in it.
//!
//! A reminder computed from where the machine was last said to stand. It senses nobody.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::figure::{Figure, FigureError, can_be_feet};
use crate::length::Length;
use crate::point::Point;

/// What a machine reaches.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Reach {
    /// From the centre of turning to the bucket's teeth, stretched out on the ground.
    pub reach_at_ground: Length,
    /// From the centre of turning to the back of the house.
    pub tail_radius: Length,
    /// Over the tracks.
    pub track_width: Length,
}

impl Reach {
    /// The same, when each measure is one that a machine has.
    ///
    /// # Errors
    /// When one is below zero or more than any machine has.
    pub fn checked(self) -> Result<Reach, FigureError> {
        for measure in [self.reach_at_ground, self.tail_radius, self.track_width] {
            can_be_feet(Figure::Reach, measure)?;
        }
        Ok(self)
    }
}

/// Never less than this beyond the bucket (common practice).
const LEAST_MARGIN: Length = Length::from_hundredths_of_a_foot(600);
/// A person walks 4.4 ft/s for the 1.5 s it takes to notice: 6.6 ft, held as 7 ft.
const WALKED_UNSEEN: Length = Length::from_hundredths_of_a_foot(700);
/// Around the tail: room for a person between it and a wall (common practice).
const TAIL_MARGIN: Length = Length::from_hundredths_of_a_foot(300);
/// After this a machine's place is too old to judge by, in milliseconds.
pub const PLACE_TOO_OLD_MS: i64 = 30 * 60 * 1000;

/// The radius to keep out of: reach plus the larger of 6 ft and what a person walks unseen.
pub fn keep_out_radius(reach: &Reach) -> Length {
    reach.reach_at_ground + LEAST_MARGIN.max(WALKED_UNSEEN)
}

/// The radius in whole feet, rounded up, as it is shown and painted.
pub fn shown_radius(radius: Length) -> u32 {
    let foot = Length::from_hundredths_of_a_foot(100).tenth_micrometres();
    let counts = radius.max(Length::ZERO).tenth_micrometres();
    u32::try_from(counts / foot + i64::from(counts % foot != 0)).unwrap_or(u32::MAX)
}

/// The radius of the tail swing, which is hot even while the bucket is down.
pub fn tail_swing_radius(reach: &Reach) -> Length {
    reach.tail_radius + TAIL_MARGIN
}

/// Where a mark lies against a keep-out. There is no word for "clear": outside is a distance only.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Nearness {
    /// Beyond the radius.
    Outside {
        /// By how much.
        by: Length,
    },
    /// On or within the radius.
    Inside {
        /// By how much.
        by: Length,
    },
    /// The mark or the machine has no place.
    PlaceUnknown,
    /// The machine's place was said too long ago.
    PlaceOld,
}

/// Where a mark lies against the keep-out of a machine that was placed `age` milliseconds ago.
pub fn nearness(mark: Option<Point>, machine: Option<(Point, i64)>, radius: Length) -> Nearness {
    let (Some(mark), Some((place, age))) = (mark, machine) else {
        return Nearness::PlaceUnknown;
    };
    if age > PLACE_TOO_OLD_MS {
        return Nearness::PlaceOld;
    }
    let apart = mark.distance(place);
    if apart > radius {
        Nearness::Outside { by: apart - radius }
    } else {
        Nearness::Inside { by: radius - apart }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn reach(reach: i64, tail: i64) -> Reach {
        Reach {
            reach_at_ground: ft(reach),
            tail_radius: ft(tail),
            track_width: ft(820),
        }
    }

    /// Invented, demo: EX-1 reaches 27.8 ft, EX-2 20.3 ft.
    #[test]
    fn the_keep_out_is_reach_and_a_margin() {
        assert_eq!(keep_out_radius(&reach(2780, 700)), ft(3480));
        assert_eq!(shown_radius(ft(3480)), 35);
        assert_eq!(shown_radius(keep_out_radius(&reach(2030, 360))), 28);
        assert_eq!(shown_radius(ft(3500)), 35);
        assert_eq!(tail_swing_radius(&reach(2780, 700)), ft(1000));
    }

    #[test]
    fn nearness_says_what_it_does_not_know() {
        let at = |x| Point {
            x: ft(x),
            y: Length::ZERO,
        };
        let near = |x, age| nearness(Some(at(x)), Some((at(0), age)), ft(3500));
        assert_eq!(near(3500, 0), Nearness::Inside { by: Length::ZERO });
        assert_eq!(
            near(3501, PLACE_TOO_OLD_MS),
            Nearness::Outside { by: ft(1) }
        );
        assert_eq!(near(100, PLACE_TOO_OLD_MS + 1), Nearness::PlaceOld);
        assert_eq!(
            nearness(None, Some((at(0), 0)), ft(1)),
            Nearness::PlaceUnknown
        );
        assert_eq!(nearness(Some(at(0)), None, ft(1)), Nearness::PlaceUnknown);
    }
}
