//! What is near underground: the stretches that are dug by hand, and how clear a trench crosses each line.

use contract::ToSchema;
use earthwork::buried::{away, clearance, half_band, stretches};
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::target::DigTo;
use serde::{Deserialize, Serialize};

use super::daylight::Stretch;
use super::plan::{CutKind, FaceZone, Utility, UtilityKind};
use crate::site::Site;
use crate::state::State;

/// A dig without a crown is open to the sky: nothing crosses over it.
const SKY: Length = Length::from_hundredths_of_a_foot(1_000_000);

/// A trench that crosses a buried line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Crossing {
    /// The trench.
    pub zone: String,
    /// The target that is dug in it.
    pub target: Option<String>,
    /// The line.
    pub utility: String,
    /// What runs in it.
    pub kind: UtilityKind,
    /// Dug by hand, by station along the trench's toe.
    pub by_hand: Stretch,
    /// The middle of that stretch.
    pub at: Point,
    /// How clear they cross; none while nobody has bared the line: then its whole depth is hot.
    pub clear: Option<Length>,
    /// How clear they have to.
    pub need: Length,
}

impl Crossing {
    /// Whether the line was bared and lies too near.
    pub fn too_near(&self) -> bool {
        self.clear.is_some_and(|clear| clear < self.need)
    }
}

/// From the middle of a line to where the machine may dig again.
pub(crate) fn half(utility: &Utility) -> Length {
    half_band(utility.outside, utility.zone).unwrap_or(utility.zone)
}

/// How far a place lies from a line.
pub(crate) fn from_line(utility: &Utility, at: Point) -> Option<Length> {
    away(&utility.points, at).ok()
}

/// The lines within whose hand-dig band a place lies.
pub(crate) fn by_hand(site: &Site, at: Point) -> impl Iterator<Item = &Utility> {
    site.cuts
        .utilities
        .iter()
        .filter(move |one| from_line(one, at).is_some_and(|away| away <= half(one)))
}

/// Every trench against every line.
pub fn crossings(state: &State) -> Vec<Crossing> {
    let Some(site) = state.site() else {
        return vec![];
    };
    let mut found = Vec::new();
    for zone in site
        .cuts
        .faces
        .iter()
        .filter(|zone| zone.kind == CutKind::Trench)
    {
        for utility in &site.cuts.utilities {
            for (by_hand, at) in along(zone, utility) {
                found.push(Crossing {
                    zone: zone.id.clone(),
                    target: zone.target.clone(),
                    utility: utility.id.clone(),
                    kind: utility.kind,
                    by_hand,
                    at,
                    clear: clear(state, site, zone, utility),
                    need: site.cuts.clearance,
                });
            }
        }
    }
    found
}

/// The stretches of a trench's toe within a line's band, each with its middle.
fn along(zone: &FaceZone, utility: &Utility) -> Vec<(Stretch, Point)> {
    let mut found: Vec<(Stretch, Point)> = Vec::new();
    let mut station = Length::ZERO;
    for pair in zone.toe.windows(2) {
        let (from, to) = (pair[0].at, pair[1].at);
        let length = from.distance(to);
        for (first, last) in
            stretches((from, to), &utility.points, half(utility)).unwrap_or_default()
        {
            let share = (first + last).feet() / 2.0 / length.feet().max(f64::MIN_POSITIVE);
            let part = |one: Length, other: Length| {
                one + Length::from_feet((other - one).feet() * share).unwrap_or(Length::ZERO)
            };
            let middle = Point {
                x: part(from.x, to.x),
                y: part(from.y, to.y),
            };
            let (first, last) = (station + first, station + last);
            match found.last_mut() {
                Some((before, _)) if first <= before.to => before.to = before.to.max(last),
                _ => found.push((
                    Stretch {
                        from: first,
                        to: last,
                    },
                    middle,
                )),
            }
        }
        station += length;
    }
    found
}

/// The least clearance at the places where the line was bared within the trench's target.
fn clear(state: &State, site: &Site, zone: &FaceZone, utility: &Utility) -> Option<Length> {
    let target = site.target(zone.target.as_deref()?)?;
    let known = state.cuts.utilities.get(&utility.id)?;
    let each = known.potholes.iter().filter_map(|hole| {
        let lowest = |found| match found {
            DigTo::At(at) => at,
            DigTo::NearStep { before, after, .. } => Length::min(before, after),
        };
        let bottom = lowest(target.grade.dig_to(hole.at).ok()?);
        let surface = lowest(
            target
                .grade
                .named(&target.grade.stack.surface, hole.at)
                .ok()?,
        );
        let top = zone.pipe_crown.map_or(SKY, |crown| surface + crown);
        clearance(bottom, top.max(bottom), hole.bottom, hole.top).ok()
    });
    each.min()
}
