//! The daylight line of a face against every line and footing, before it is dug.

use contract::ToSchema;
use earthwork::face::{self, FaceError, SoilClass};
use earthwork::layout::no_cross::{self, LineDoubts, NoCrossLine, Standing};
use earthwork::layout::tie;
use earthwork::length::Length;
use earthwork::point::Point;
use serde::{Deserialize, Serialize};

use super::plan::FaceZone;
use super::strip;
use crate::entry::Entry;
use crate::happening::{Happening, Touches};
use crate::said::face_design::DesignPiece;
use crate::site::{Line, Side, Site};
use crate::state::State;

/// The daylight line is worked out at least this often along a toe.
const EVERY: Length = Length::from_hundredths_of_a_foot(200);
/// No farther behind a toe than this.
const FARTHEST: Length = Length::from_hundredths_of_a_foot(30_000);
/// From the near lower edge of a footing a line falls so far to one (common practice).
const INFLUENCE_RUN: f64 = 1.0;

/// Where a face comes to daylight, against what stands there.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct DaylightFound {
    /// The face.
    pub zone: String,
    /// The class that counts.
    pub class: SoilClass,
    /// The pieces that it was worked out with.
    pub pieces: Vec<DesignPiece>,
    /// By an engineer's own design, not by the tables.
    pub designed: bool,
    /// Places along the toe, in order.
    pub places: Vec<Daylit>,
    /// Each line.
    pub lines: Vec<LineFound>,
    /// Each footing.
    pub structures: Vec<StructureFound>,
    /// The highest place.
    pub highest: Length,
    /// Higher than the tables go: an engineer designs it.
    pub engineer: bool,
    /// Places that never come to daylight, or where the ground is not known.
    pub missing: u32,
}

impl Happening for DaylightFound {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        crate::said::face_design::apply_daylight(state, entry, self);
    }
}

/// One place of the daylight line.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Daylit {
    /// Along the toe.
    pub station: Length,
    /// The toe.
    pub toe: Point,
    /// Where it comes out.
    pub at: Point,
    /// From the toe, level.
    pub run: Length,
    /// From the toe, up.
    pub height: Length,
}

/// The daylight line against a line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct LineFound {
    /// Which.
    pub line: String,
    /// Nobody may cross it.
    pub no_cross: bool,
    /// The least distance, positive on the side to keep to.
    pub least: Length,
    /// The toe there.
    pub toe: Point,
    /// Where that stands.
    pub standing: Standing,
    /// The stretches of the toe whose daylight touches or crosses it, a place farther each way.
    pub over: Vec<Stretch>,
}

/// A stretch by station.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Stretch {
    /// From.
    pub from: Length,
    /// To.
    pub to: Length,
}

/// A face against a footing.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct StructureFound {
    /// Which.
    pub structure: String,
    /// The least room between daylight and its near edge.
    pub room: Length,
    /// How far the toe lies below the line that falls from its lower edge; an engineer says what is done.
    pub below: Option<Length>,
}

impl DaylightFound {
    /// The lines that it touches or crosses though nobody may.
    pub fn crossed(&self) -> impl Iterator<Item = &LineFound> {
        self.lines
            .iter()
            .filter(|line| line.no_cross && !line.over.is_empty())
    }
}

/// Works the daylight line out with what is known now.
///
/// # Errors
/// When the toe, the pieces or a line are none.
pub(crate) fn find(
    state: &State,
    site: &Site,
    zone: &FaceZone,
) -> Result<DaylightFound, FaceError> {
    let pieces = strip::pieces(state, site, zone);
    let ground = |at| strip::ground(zone, at);
    let toe = strip::toe(state, zone);
    let line = face::daylight_line(&toe, zone.bank, &pieces, &ground, EVERY, FARTHEST)?;
    let all = line.len();
    let places: Vec<Daylit> = line
        .into_iter()
        .flatten()
        .map(|found| Daylit {
            station: strip::on_toe(zone, found.toe.at).map_or(Length::ZERO, |here| here.station),
            toe: found.toe.at,
            at: found.at,
            run: found.run,
            height: found.height,
        })
        .collect();
    let highest = places
        .iter()
        .map(|place| place.height)
        .max()
        .unwrap_or(Length::ZERO);
    let now = state.cuts.face(&zone.id);
    Ok(DaylightFound {
        zone: zone.id.clone(),
        class: now.map_or(SoilClass::C, super::now::FaceNow::class),
        designed: now.is_some_and(|now| !now.design.is_empty()),
        pieces: pieces.iter().map(DesignPiece::of).collect(),
        lines: site
            .lines
            .iter()
            .filter_map(|line| against(line, &places))
            .collect(),
        structures: structures(site, &toe, &places),
        highest,
        engineer: site.cuts.rules().engineer.owed(highest),
        missing: u32::try_from(all - places.len()).unwrap_or(u32::MAX),
        places,
    })
}

/// The daylight lines that change with a new site or a revised target; only faces whose daylight is known already.
pub(crate) fn anew(state: &State, new: &Site) -> Vec<DaylightFound> {
    let known = |zone: &&FaceZone| {
        let now = state.cuts.face(&zone.id);
        now.is_some_and(|now| now.daylight.is_some())
    };
    if !new.cuts.faces.iter().any(|zone| known(&zone)) {
        return vec![];
    }
    let mut after = state.clone();
    if let Some(in_force) = &mut after.site {
        in_force.site.clone_from(new);
    }
    let each = new.cuts.faces.iter().filter(known).filter_map(|zone| {
        let found = find(&after, new, zone).ok()?;
        let before = state.cuts.face(&zone.id)?.daylight.as_ref();
        (before != Some(&found)).then_some(found)
    });
    each.collect()
}

fn against(line: &Line, places: &[Daylit]) -> Option<LineFound> {
    let drawn = NoCrossLine {
        corners: line.points.clone(),
        keep: match line.keep {
            Side::Left => tie::Side::Left,
            Side::Right => tie::Side::Right,
        },
    };
    let doubts = LineDoubts {
        tape_ft: 0.0,
        string_ft: 0.0,
        line_ft: line.doubt.feet(),
        k: 1.0,
    };
    let guard = doubts.guard().ok()?;
    let away: Option<Vec<Length>> = places
        .iter()
        .map(|place| drawn.distance(place.at).ok())
        .collect();
    let away = away?;
    let (index, least) = away
        .iter()
        .copied()
        .enumerate()
        .min_by_key(|(_, away)| *away)?;
    // A line that the whole toe lies beyond is none of this face's.
    if drawn.distance(places.get(index)?.toe).ok()? < Length::ZERO {
        return None;
    }
    Some(LineFound {
        line: line.id.clone(),
        no_cross: line.no_cross,
        least,
        toe: places.get(index)?.toe,
        standing: no_cross::judge(least, guard).standing,
        over: over(places, &away, guard),
    })
}

/// Stretches whose daylight is no farther inside than the doubt, a place farther each way.
fn over(places: &[Daylit], away: &[Length], guard: Length) -> Vec<Stretch> {
    let mut found: Vec<Stretch> = Vec::new();
    for (index, _) in away.iter().enumerate().filter(|(_, away)| **away <= guard) {
        let from = places[index.saturating_sub(1)]
            .station
            .min(places[index].station);
        let after = places.get(index + 1).unwrap_or(&places[index]);
        let to = after.station.max(places[index].station);
        match found.last_mut() {
            Some(last) if from <= last.to => last.to = last.to.max(to),
            _ => found.push(Stretch { from, to }),
        }
    }
    found
}

fn structures(site: &Site, toe: &[face::Toe], places: &[Daylit]) -> Vec<StructureFound> {
    let each = site.cuts.structures.iter().filter_map(|one| {
        let away = |at| earthwork::buried::away(&one.points, at).ok();
        let room = places.iter().filter_map(|place| away(place.at)).min()?;
        let below = toe
            .iter()
            .filter_map(|toe| {
                face::under_influence(toe.elevation, one.bottom, away(toe.at)?, INFLUENCE_RUN)
                    .ok()
                    .flatten()
            })
            .max();
        Some(StructureFound {
            structure: one.id.clone(),
            room,
            below,
        })
    });
    each.collect()
}
