//! What a machine can do and where it must not stand: depth, height, width, two machines, a slope's line, lines overhead.
//!
//! Everything from where machines were last said to stand. It senses nothing.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::keep_out::{Reach, tail_swing_radius};
use crate::length::Length;

/// What a machine can do, as far as somebody has said it.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Geometry {
    /// Its class, as the crew says it: `14 t`.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub class: String,
    /// How deep it digs below the ground under its tracks.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub dig_depth: Option<Length>,
    /// How high its bucket can be emptied over the ground under its tracks.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub dump_height: Option<Length>,
    /// The highest that its boom comes over the ground under its tracks.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub boom_height: Option<Length>,
    /// The widths of its buckets.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub buckets: Vec<Length>,
}

impl Geometry {
    /// Whether nobody has said anything of it.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }

    /// Its narrowest bucket.
    pub fn narrowest(&self) -> Option<Length> {
        self.buckets.iter().copied().min()
    }
}

/// Between the reaches of two machines (common practice).
const BETWEEN_REACHES: Length = Length::from_hundredths_of_a_foot(600);
/// A bucket swings over a truck's side with this to spare (common practice).
const OVER_A_SIDE: Length = Length::from_hundredths_of_a_foot(100);

/// Two machines nearer to each other than this can meet: both reaches and 6 ft (common practice).
pub fn can_meet_within(one: &Reach, other: &Reach) -> Length {
    one.reach_at_ground + other.reach_at_ground + BETWEEN_REACHES
}

/// From a machine's middle to the middle of something as wide as `half_width` to each side: nearer than this the tail pinches
/// a person between them. The tail's radius, 3 ft, and the other's own half width (common practice).
pub fn tail_needs(reach: &Reach, half_width: Length) -> Length {
    tail_swing_radius(reach) + half_width
}

/// How far a machine reaches round its middle with the bucket in: its tail, or half its tracks.
pub fn body(reach: &Reach) -> Length {
    reach.tail_radius.max(half(reach.track_width))
}

/// How far a machine's near track stands inside of the slope's line, which goes up from the toe with `run_per_rise` to the
/// ground that is `height` above it. `away` is from the toe to the machine's middle, level. Zero or less: on or behind it.
/// A run that is no number counts as zero.
pub fn inside_slope_line(
    away: Length,
    track_width: Length,
    height: Length,
    run_per_rise: f64,
) -> Length {
    let run = Length::from_feet(height.feet() * run_per_rise).unwrap_or(Length::ZERO);
    run - (away - half(track_width))
}

/// Half of a width, to the count below.
fn half(width: Length) -> Length {
    Length::from_tenth_micrometres(width.tenth_micrometres() / 2)
}

/// Whether a bucket can be emptied over a truck's side.
pub fn loads_over(dump_height: Length, truck_side: Length) -> bool {
    dump_height >= truck_side + OVER_A_SIDE
}

/// Which part of a machine's keep-out a place lies in: the innermost counts.
///
/// The blind side (right and behind the cab, common practice) turns with the house, at every bucket anew: whichever way somebody
/// said that it faces is old at the next swing. So no part is the blind side, and reach and margin count as it altogether.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Zone {
    /// Between the house and the tracks: pinched when the house turns.
    Pinch,
    /// Where the tail swings, and 3 ft round it: hot also with the bucket down.
    Tail,
    /// Within the bucket's reach.
    Reach,
    /// Beyond the reach, within what a person walks unseen.
    Margin,
}

/// The part of the keep-out at so much from the machine's middle; beyond all of them none. No word for it promises anything.
pub fn zone(away: Length, reach: &Reach, keep_out: Length) -> Option<Zone> {
    let bounds = [
        (half(reach.track_width), Zone::Pinch),
        (tail_swing_radius(reach), Zone::Tail),
        (reach.reach_at_ground, Zone::Reach),
        (keep_out, Zone::Margin),
    ];
    bounds
        .into_iter()
        .find(|(bound, _)| away <= *bound)
        .map(|(_, zone)| zone)
}

/// How far every part of a machine stays from a line of so many kilovolts, by [`crate::overhead`]; nothing above 1,000 kV,
/// where the line's owner says it. Also where nobody knows the voltage nothing is known: `None` in gives `None`, and so does what
/// is no voltage.
pub fn overhead_clearance(kilovolts: Option<f64>) -> Option<Length> {
    crate::overhead::clearance(kilovolts?)
}

/// A line overhead, as a machine meets it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Overhead {
    /// From the machine's middle to under the line, level.
    pub away: Length,
    /// The line's lowest over the ground there.
    pub height: Length,
    /// How far every part of the machine stays from it.
    pub clearance: Length,
}

/// Whether the machine could come nearer to the line than its clearance: then somebody spots for it. A boom of which nobody
/// has said how high it comes counts as too high.
pub fn needs_spotter(reach: &Reach, boom_height: Option<Length>, line: Overhead) -> bool {
    let near = line.away < reach.reach_at_ground + line.clearance;
    near && boom_height.is_none_or(|boom| boom + line.clearance > line.height)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::keep_out::keep_out_radius;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn reach() -> Reach {
        Reach {
            reach_at_ground: ft(2780),
            tail_radius: ft(700),
            track_width: ft(820),
        }
    }

    #[test]
    fn the_innermost_part_of_the_keep_out_counts() {
        let reach = reach();
        let at = |away| zone(ft(away), &reach, keep_out_radius(&reach));
        assert_eq!(at(0), Some(Zone::Pinch));
        assert_eq!(at(410), Some(Zone::Pinch));
        assert_eq!(at(411), Some(Zone::Tail));
        assert_eq!(at(1000), Some(Zone::Tail));
        assert_eq!(at(1001), Some(Zone::Reach));
        assert_eq!(at(2781), Some(Zone::Margin));
        assert_eq!(at(3481), None);
    }

    #[test]
    fn a_line_of_unknown_voltage_has_no_clearance_of_ours() {
        assert_eq!(overhead_clearance(None), None);
        assert_eq!(overhead_clearance(Some(1_000.1)), None);
        assert_eq!(overhead_clearance(Some(f64::NAN)), None);
        assert_eq!(overhead_clearance(Some(-50.0)), None);
    }

    #[test]
    fn a_boom_of_unknown_height_needs_a_spotter_under_any_line_within_reach() {
        let line = |away| Overhead {
            away: ft(away),
            height: ft(9_000),
            clearance: ft(1_000),
        };
        assert!(needs_spotter(&reach(), None, line(3_779)));
        assert!(!needs_spotter(&reach(), None, line(3_780)));
        assert!(!needs_spotter(&reach(), Some(ft(2_960)), line(0)));
    }

    proptest! {
        /// Nearer is never less grave, and a weaker soil never lets a machine stand nearer.
        #[test]
        fn nearer_is_never_less_grave(near in 0_i64..6_000, more in 0_i64..6_000, m in 0.0_f64..3.0, flatter in 0.0_f64..2.0) {
            let reach = reach();
            let radius = keep_out_radius(&reach);
            let grave = |away| zone(ft(away), &reach, radius).map_or(9, |zone| zone as u8);
            prop_assert!(grave(near) <= grave(near + more));
            let inside = |away, m| inside_slope_line(ft(away), reach.track_width, ft(1_200), m);
            prop_assert!(inside(near, m) >= inside(near + more, m));
            prop_assert!(inside(near, m + flatter) >= inside(near, m));
        }

        /// A higher voltage never asks for less, and two machines meet as one sees the other.
        #[test]
        fn more_volts_ask_for_more(kv in 0.0_f64..1_000.0, more in 0.0_f64..1_000.0) {
            if let (Some(low), Some(high)) = (overhead_clearance(Some(kv)), overhead_clearance(Some(kv + more))) {
                prop_assert!(low <= high);
            }
            let small = Reach { reach_at_ground: ft(2_030), tail_radius: ft(360), track_width: ft(640) };
            prop_assert_eq!(can_meet_within(&reach(), &small), can_meet_within(&small, &reach()));
        }
    }
}
