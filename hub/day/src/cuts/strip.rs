//! How high a face is at a place, and who stands under it: the strip as wide as the face is high (common practice).

use earthwork::face::{Piece, Toe};
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::target::DigTo;

use super::plan::{CutKind, FaceZone};
use crate::said::face_design::DesignPiece;
use crate::site::Site;
use crate::state::State;

/// A reading speaks for the toe no farther than this along it.
const SPEAKS_FOR: Length = Length::from_hundredths_of_a_foot(1_000);

/// The nearest place of a toe.
#[derive(Clone, Copy, Debug)]
pub struct OnToe {
    /// Along the toe, from its first corner.
    pub station: Length,
    /// Where it is.
    pub at: Point,
    /// As planned; at a step the lower.
    pub elevation: Length,
    /// How far the place that was asked about is from it.
    pub away: Length,
}

fn feet(length: f64) -> Length {
    Length::from_feet(length).unwrap_or(Length::ZERO)
}

/// The nearest place of a zone's toe.
pub fn on_toe(zone: &FaceZone, at: Point) -> Option<OnToe> {
    let mut station = 0.0;
    let mut best: Option<(f64, OnToe)> = None;
    for pair in zone.toe.windows(2) {
        let (from, to) = (pair[0], pair[1]);
        let (along_x, along_y) = ((to.at.x - from.at.x).feet(), (to.at.y - from.at.y).feet());
        let (to_x, to_y) = ((at.x - from.at.x).feet(), (at.y - from.at.y).feet());
        let length = along_x.hypot(along_y);
        let share = if length > 0.0 {
            ((to_x * along_x + to_y * along_y) / (length * length)).clamp(0.0, 1.0)
        } else {
            0.0
        };
        let away = (to_x - share * along_x).hypot(to_y - share * along_y);
        let here = OnToe {
            station: feet(station + share * length),
            at: Point {
                x: from.at.x + feet(share * along_x),
                y: from.at.y + feet(share * along_y),
            },
            elevation: if length > 0.0 {
                from.elevation + feet(share * (to.elevation - from.elevation).feet())
            } else {
                from.elevation.min(to.elevation)
            },
            away: feet(away),
        };
        let better = best.as_ref().is_none_or(|(nearest, kept)| {
            away < nearest - 1e-6 || (away < nearest + 1e-6 && here.elevation < kept.elevation)
        });
        if better {
            best = Some((away, here));
        }
        station += length;
    }
    best.map(|(_, here)| here)
}

/// The ground before the cut.
///
/// # Errors
/// Why the ground before the cut has no elevation there, as its grade says it.
pub fn ground(zone: &FaceZone, at: Point) -> Result<Length, String> {
    match zone.ground.dig_to(at) {
        Ok(DigTo::At(elevation)) => Ok(elevation),
        Ok(DigTo::NearStep { before, after, .. }) => Ok(before.max(after)),
        Err(error) => Err(error.to_string()),
    }
}

/// What the zone's target is dug to there; none where it does not reach. Beside a step the lower counts.
fn dug(site: &Site, zone: &FaceZone, at: Point) -> Option<Length> {
    let target = site.target(zone.target.as_deref()?)?;
    Some(match target.grade.dig_to(at).ok()? {
        DigTo::At(elevation) => elevation,
        DigTo::NearStep { before, after, .. } => before.min(after),
    })
}

/// The bottom at a place of the toe: as the target has it where it reaches there, else as planned; or as the nearest toe
/// mark's reading has it when that is deeper.
pub fn bottom(state: &State, zone: &FaceZone, here: &OnToe) -> Length {
    let Some(site) = state.site() else {
        return here.elevation;
    };
    let planned = dug(site, zone, here.at).unwrap_or(here.elevation);
    let read = zone.toe_marks.iter().filter_map(|id| {
        let away = site.mark(id)?.place.distance(here.at);
        let (_, taken) = state.last_reading(id)?;
        (away <= SPEAKS_FOR).then_some((away, taken.reading.elevation))
    });
    read.min_by_key(|(away, _)| *away)
        .map_or(planned, |(_, elevation)| elevation.min(planned))
}

/// How high the face is at a place of its toe; nothing where the ground is no higher or not known.
pub(crate) fn height(state: &State, zone: &FaceZone, here: &OnToe) -> Length {
    ground(zone, here.at).map_or(Length::ZERO, |ground| {
        (ground - bottom(state, zone, here)).max(Length::ZERO)
    })
}

/// The highest place of a zone, by its corners and the places between them.
pub fn highest(state: &State, zone: &FaceZone) -> Length {
    zone.toe
        .windows(2)
        .flat_map(|pair| places_between(pair[0].at, pair[1].at))
        .map(|(at, _)| at)
        .filter_map(|at| on_toe(zone, at))
        .map(|here| height(state, zone, &here))
        .max()
        .unwrap_or(Length::ZERO)
}

/// Whether a cut of that height is being dug: a face is from the start, a trench once it is deeper than nothing.
pub fn is_dug(zone: &FaceZone, height: Length) -> bool {
    zone.kind != CutKind::Trench || height > Length::ZERO
}

/// The names of the faces and trenches that are being dug.
pub(crate) fn being_dug(state: &State) -> Vec<String> {
    let zones = state.site().into_iter().flat_map(|site| &site.cuts.faces);
    let dug = zones.filter(|zone| is_dug(zone, highest(state, zone)));
    dug.map(|zone| zone.id.clone()).collect()
}

/// Along a toe its height is looked at this often, in feet, but no more often than [`MOST_PARTS`] between two corners.
const LOOKED_AT_FT: f64 = 2.0;
const MOST_PARTS: f64 = 100.0;

/// The place of the toe, when a place lies within the face's height of it.
pub(crate) fn within(state: &State, zone: &FaceZone, at: Point) -> Option<OnToe> {
    let here = on_toe(zone, at)?;
    let high = height(state, zone, &here);
    (high > Length::ZERO && here.away <= high).then_some(here)
}

/// The faces whose strip holds a place.
pub(crate) fn zones_at<'a>(
    state: &'a State,
    site: &'a Site,
    at: Point,
) -> impl Iterator<Item = (&'a FaceZone, OnToe)> {
    site.cuts
        .faces
        .iter()
        .filter_map(move |zone| Some((zone, within(state, zone, at)?)))
}

/// Where a mark lies.
pub fn place_of(state: &State, mark: &str) -> Option<Point> {
    let site = state.site()?;
    site.mark(mark).map(|mark| mark.place).or_else(|| {
        let (_, taken) = state.last_reading(mark)?;
        Some(taken.reading.placed.as_ref()?.at)
    })
}

/// Whether people there work under a face that nobody has inspected today.
pub(crate) fn not_inspected(state: &State, at: Point) -> bool {
    let Some(site) = state.site() else {
        return false;
    };
    let rules = site.cuts.rules();
    zones_at(state, site, at).any(|(zone, here)| {
        let asks = zone.kind == CutKind::Face || rules.protection.owed(height(state, zone, &here));
        let stands = state
            .cuts
            .face(&zone.id)
            .is_some_and(super::now::FaceNow::inspection_stands);
        asks && !stands
    })
}

/// The pieces that a face is to be cut to: the engineer's own, the layers', or one slope of its class.
pub fn pieces(state: &State, site: &Site, zone: &FaceZone) -> Vec<Piece> {
    let empty = super::now::FaceNow::default();
    let now = state.cuts.face(&zone.id).unwrap_or(&empty);
    if !now.design.is_empty() {
        return now.design.iter().map(DesignPiece::piece).collect();
    }
    let rules = site.cuts.rules();
    let flatter = if now.evidence.cracks {
        rules.distress.flatter
    } else {
        0.0
    };
    if zone.layers.is_empty() {
        return vec![Piece {
            top: None,
            run_per_rise: rules.slopes.of(now.class()) + flatter,
        }];
    }
    let mut from_top: Vec<_> = zone
        .layers
        .iter()
        .rev()
        .map(|layer| {
            let capped = now.evidence.counted(layer.class, rules).class;
            if now.retyped {
                capped.max(now.class())
            } else {
                capped
            }
        })
        .collect();
    let mut runs = earthwork::face::layered(rules, &from_top);
    runs.reverse();
    from_top.reverse();
    zone.layers
        .iter()
        .zip(runs)
        .map(|(layer, run)| Piece {
            top: layer.top,
            run_per_rise: run + flatter,
        })
        .collect()
}

/// The toe with the bottom as it is known: corner by corner, and every two feet where its target reaches it.
pub(crate) fn toe(state: &State, zone: &FaceZone) -> Vec<Toe> {
    let corner = |at: Point, planned: Length| {
        let here = OnToe {
            station: Length::ZERO,
            at,
            elevation: planned,
            away: Length::ZERO,
        };
        Toe {
            at,
            elevation: bottom(state, zone, &here),
        }
    };
    let reaches = |at: Point| {
        state
            .site()
            .is_some_and(|site| dug(site, zone, at).is_some())
    };
    let mut found: Vec<Toe> = zone
        .toe
        .first()
        .map(|first| corner(first.at, first.elevation))
        .into_iter()
        .collect();
    for pair in zone.toe.windows(2) {
        let between = places_between(pair[0].at, pair[1].at);
        let planned = |share: f64| {
            pair[0].elevation + feet((pair[1].elevation - pair[0].elevation).feet() * share)
        };
        if between.iter().any(|(at, _)| reaches(*at)) {
            found.extend(
                between
                    .iter()
                    .skip(1)
                    .map(|(at, share)| corner(*at, planned(*share))),
            );
        } else {
            found.push(corner(pair[1].at, pair[1].elevation));
        }
    }
    found
}

/// Places from one corner to the next, every [`LOOKED_AT_FT`], each with its share of the way.
fn places_between(from: Point, to: Point) -> Vec<(Point, f64)> {
    let parts = (from.distance(to).feet() / LOOKED_AT_FT)
        .ceil()
        .clamp(1.0, MOST_PARTS);
    let part = std::iter::successors(Some(0.0), |part| (*part < parts).then_some(part + 1.0));
    part.map(|part: f64| {
        let share = part / parts;
        let along = |one: Length, other: Length| one + feet((other - one).feet() * share);
        let at = Point {
            x: along(from.x, to.x),
            y: along(from.y, to.y),
        };
        (at, share)
    })
    .collect()
}
