//! What is near a machine where it was last said to stand: another machine, a face, a wall, a slope's line, a line overhead.
//!
//! Derived from what was said; nothing senses it, and nothing listed does not mean that nothing is there.

use contract::ToSchema;
use earthwork::buried;
use earthwork::face::{Piece, SoilClass};
use earthwork::layout::tie::Side;
use earthwork::length::Length;
use earthwork::machine::{self, Overhead};
use earthwork::point::Point;
use serde::{Deserialize, Serialize};

use crate::cuts::plan::{CutKind, FaceZone, OverheadLine, Pile};
use crate::cuts::strip;
use crate::site::{Machine, Site};
use crate::state::State;

/// Something near a machine.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Near {
    /// Its boom and another's can meet.
    CanMeet {
        /// Which other machine.
        other: String,
        /// From middle to middle.
        apart: Length,
        /// What it takes for them not to meet.
        needs: Length,
    },
    /// Its tail pinches whoever stands between it and another machine.
    TailAtMachine {
        /// Which.
        other: String,
        /// From middle to middle.
        apart: Length,
        /// What it takes.
        needs: Length,
    },
    /// Its tail pinches whoever stands between it and a face.
    TailAtFace {
        /// Which.
        zone: String,
        /// From its middle to the toe.
        apart: Length,
        /// What it takes.
        needs: Length,
    },
    /// Its tail pinches whoever stands between it and a wall.
    TailAtWall {
        /// Which.
        structure: String,
        /// From its middle to the wall.
        apart: Length,
        /// What it takes.
        needs: Length,
    },
    /// Its tail pinches whoever stands between it and a pile.
    TailAtPile {
        /// Which.
        pile: String,
        /// From its middle to the pile's foot.
        apart: Length,
        /// What it takes.
        needs: Length,
    },
    /// Its tracks stand inside of the slope's line: the competent person rules.
    OnSlope {
        /// Which face.
        zone: String,
        /// How far inside.
        inside: Length,
        /// The soil's class that counts.
        class: SoilClass,
    },
    /// It can come nearer to a line overhead than its clearance: somebody spots.
    Overhead {
        /// Which.
        line: String,
        /// From its middle to under the line.
        away: Length,
        /// How far every part of it stays from the line.
        clearance: Length,
        /// Somebody spots whose phone is heard, and who is not in a keep-out: the distance still holds.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        spotted: bool,
    },
}

/// What is near a machine from where it was last said to stand; nothing while nobody has said.
pub(crate) fn near(state: &State, machine: &str) -> Vec<Near> {
    let place = |machine: &str| Some(state.cabs.get(machine)?.place.as_ref()?.at);
    match place(machine) {
        Some(at) => near_at(state, machine, at),
        None => vec![],
    }
}

/// What is near a machine and not settled: booms whose operators have not agreed, a line overhead that nobody watches.
pub fn unsettled(state: &State, machine: &str) -> Vec<Near> {
    let mut found = in_the_cab(state, machine);
    found.retain(|one| !matches!(one, Near::Overhead { spotted: true, .. }));
    found
}

/// What stands on the cab's screen: what is not settled, and a line overhead with its distance also while somebody watches it.
/// Who spots sees what the boom does; how far it has to stay is for whoever moves it.
pub fn in_the_cab(state: &State, machine: &str) -> Vec<Near> {
    let mut found = near(state, machine);
    found.retain(|one| match one {
        Near::CanMeet { other, .. } => !state
            .slews
            .iter()
            .any(|slew| slew.between(machine, other) && slew.holds()),
        Near::TailAtMachine { .. }
        | Near::TailAtFace { .. }
        | Near::TailAtWall { .. }
        | Near::TailAtPile { .. }
        | Near::Overhead { .. }
        | Near::OnSlope { .. } => true,
    });
    for one in &mut found {
        if let Near::Overhead { spotted, .. } = one {
            *spotted = is_spotted(state, machine);
        }
    }
    found
}

/// Whether somebody spots for it whose phone is heard, and who is not in a keep-out: who works in the cut watches nothing.
fn is_spotted(state: &State, machine: &str) -> bool {
    let spotter = state.cabs.get(machine).and_then(|cab| cab.spotter.as_ref());
    spotter.is_some_and(|spotter| {
        let mut visits = state.way_in.gates().flat_map(|(_, gate)| gate.visits());
        let is_in = visits.any(|(_, visit)| {
            let own = visit.device == spotter.device || visit.person == spotter.person;
            own && visit.stage.may_be_in()
        });
        spotter.lost.is_none() && !is_in
    })
}

/// What would be near a machine that stands there.
pub(crate) fn near_at(state: &State, machine: &str, at: Point) -> Vec<Near> {
    let Some((site, here)) = state
        .site()
        .and_then(|site| Some((site, site.machine(machine)?)))
    else {
        return vec![];
    };
    let mut found = Vec::new();
    others(state, site, here, at, &mut found);
    for zone in &site.cuts.faces {
        found.extend(face(state, site, here, zone, at));
    }
    let needs = machine::tail_needs(&here.reach, Length::ZERO);
    for wall in &site.cuts.structures {
        if let Ok(apart) = buried::away(&wall.points, at)
            && apart < needs
        {
            let structure = wall.id.clone();
            found.push(Near::TailAtWall {
                structure,
                apart,
                needs,
            });
        }
    }
    let piles = site.cuts.piles.iter().map(|pile| (pile, pile.away(at)));
    found.extend(
        piles
            .filter(|(_, apart)| *apart < needs)
            .map(|(pile, apart)| Near::TailAtPile {
                pile: pile.id.clone(),
                apart: apart.max(Length::ZERO),
                needs,
            }),
    );
    found.extend(
        site.cuts
            .overheads
            .iter()
            .filter_map(|line| overhead(here, line, at)),
    );
    found
}

fn others(state: &State, site: &Site, here: &Machine, at: Point, found: &mut Vec<Near>) {
    for other in site.machines.iter().filter(|other| other.id != here.id) {
        let cab = state.cabs.get(&other.id);
        let Some(place) = cab.and_then(|cab| cab.place.as_ref()) else {
            continue;
        };
        let apart = at.distance(place.at);
        let tail = machine::tail_needs(&here.reach, machine::body(&other.reach));
        if apart < tail {
            found.push(Near::TailAtMachine {
                other: other.id.clone(),
                apart,
                needs: tail,
            });
        }
        let needs = machine::can_meet_within(&here.reach, &other.reach);
        if apart < needs {
            found.push(Near::CanMeet {
                other: other.id.clone(),
                apart,
                needs,
            });
        }
    }
}

/// Before a face its tail counts, behind its crest the tracks. A trench is straddled or stood beside: there the tracks alone.
fn face(state: &State, site: &Site, here: &Machine, zone: &FaceZone, at: Point) -> Option<Near> {
    let toe = strip::on_toe(zone, at)?;
    let height = strip::height(state, zone, &toe);
    if height <= Length::ZERO {
        return None;
    }
    if on_the_bank(zone, toe.at, at) {
        let bottom = strip::bottom(state, zone, &toe);
        let run = run_to(&strip::pieces(state, site, zone), bottom, height);
        let per_rise = run.feet() / height.feet();
        let inside = machine::inside_slope_line(toe.away, here.reach.track_width, height, per_rise);
        return (inside > Length::ZERO).then(|| Near::OnSlope {
            zone: zone.id.clone(),
            inside,
            class: state
                .cuts
                .face(&zone.id)
                .map_or(SoilClass::C, crate::cuts::now::FaceNow::class),
        });
    }
    let needs = machine::tail_needs(&here.reach, Length::ZERO);
    (zone.kind == CutKind::Face && toe.away < needs).then(|| Near::TailAtFace {
        zone: zone.id.clone(),
        apart: toe.away,
        needs,
    })
}

/// Piles whose foot stands nearer to a crest than the rule has it, each with the face and how far back it stands; below zero is
/// within the slope. The crest is where the slope's line of the class that counts comes out.
pub fn piles_at_crests(state: &State, site: &Site) -> Vec<(String, String, Length)> {
    let set_back = site.cuts.rules().spoil.distance;
    let faces = site.cuts.faces.iter();
    faces
        .flat_map(|zone| {
            let each = site.cuts.piles.iter();
            each.filter_map(move |pile| {
                let back = behind_crest(state, site, zone, pile)?;
                (back < set_back).then(|| (pile.id.clone(), zone.id.clone(), back))
            })
        })
        .collect()
}

/// How far behind a face's crest a pile's foot stands; none before the face, or where nothing is dug yet.
fn behind_crest(state: &State, site: &Site, zone: &FaceZone, pile: &Pile) -> Option<Length> {
    let toe = strip::on_toe(zone, pile.at)?;
    let height = strip::height(state, zone, &toe);
    if height <= Length::ZERO || !on_the_bank(zone, toe.at, pile.at) {
        return None;
    }
    let bottom = strip::bottom(state, zone, &toe);
    let run = run_to(&strip::pieces(state, site, zone), bottom, height);
    Some(pile.away(toe.at) - run)
}

/// Whether a place lies on the bank's hand of the toe's nearest piece.
fn on_the_bank(zone: &FaceZone, nearest: Point, at: Point) -> bool {
    let on_piece = |pair: &&[crate::cuts::plan::ToeCorner]| {
        let (from, to) = (pair[0].at, pair[1].at);
        let around = from.distance(nearest) + nearest.distance(to);
        from != to && around - from.distance(to) < Length::from_thousandths_of_a_foot(1)
    };
    let Some(pair) = zone.toe.windows(2).find(on_piece) else {
        return false;
    };
    let (from, to) = (pair[0].at, pair[1].at);
    let along = ((to.x - from.x).feet(), (to.y - from.y).feet());
    let out = ((at.x - from.x).feet(), (at.y - from.y).feet());
    let left = along.0 * out.1 - along.1 * out.0;
    match zone.bank {
        Side::Left => left > 0.0,
        Side::Right => left < 0.0,
    }
}

/// How far out the slope's line comes to the ground that is so high over the bottom.
fn run_to(pieces: &[Piece], bottom: Length, height: Length) -> Length {
    let top = bottom + height;
    let mut from = bottom;
    let mut run = 0.0;
    for piece in pieces {
        let to = piece.top.map_or(top, |end| end.min(top)).max(from);
        run += (to - from).feet() * piece.run_per_rise;
        from = to;
    }
    Length::from_feet(run).unwrap_or(Length::ZERO)
}

fn overhead(here: &Machine, line: &OverheadLine, at: Point) -> Option<Near> {
    let away = buried::away(&line.points, at).ok()?;
    let clearance = line.clearance();
    let met = Overhead {
        away,
        height: line.height,
        clearance,
    };
    machine::needs_spotter(&here.reach, here.geometry.boom_height, met).then(|| Near::Overhead {
        line: line.id.clone(),
        away,
        clearance,
        spotted: false,
    })
}

#[cfg(test)]
mod tests;
