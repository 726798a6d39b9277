//! The sheet of a run for the next crew: dig-to and got at each station, gravel needed, step faces, marks still standing.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::target::{DigTo, ProfilePoint, Shape};
use earthwork::tolerance::{Tolerance, Verdict};
use serde::Serialize;

use super::Day;
use day::built::{self, BuiltMark};
use day::entry::{Body, Entry};
use day::said::marks::{LaidFrom, Paint};
use day::site::{Site, Target};

/// A run's sheet.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct HandOver {
    /// The target.
    pub target: String,
    /// Its name.
    pub name: String,
    /// Its revision.
    pub revision: u32,
    /// Allowed high and low.
    pub tolerance: Tolerance,
    /// The surface that the drawing gives, and the layers under it from the top down.
    pub surface: String,
    /// Layers with their thickness.
    pub layers: Vec<(String, Length)>,
    /// Its first and last station, when it has stations.
    pub from_to: Option<(Length, Length)>,
    /// The width of a straight run.
    pub width: Option<Length>,
    /// What to dig to along it, up-station; a step stands at one station twice. Empty when it has no stations.
    pub profile: Vec<ProfilePoint>,
    /// Its marks by station.
    pub stations: Vec<HandOverStation>,
    /// Where it steps.
    pub steps: Vec<HandOverStep>,
    /// Hubs that marks of it were laid from, as it was said.
    pub hubs: Vec<String>,
}

/// A mark of the run.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct HandOverStation {
    /// The mark.
    pub mark: String,
    /// Along the run; none when its shape has no stations.
    pub station: Option<Length>,
    /// Positive to the right looking up-station.
    pub offset: Option<Length>,
    /// The elevation to dig to; none near a step.
    pub dig_to: Option<Length>,
    /// What was measured; none while nobody has read it.
    pub got: Option<BuiltMark>,
    /// What the layer that lies on the ground takes there: its thickness less the difference. None without a layer or a
    /// reading on the ground itself.
    pub fill: Option<Length>,
    /// Still to be cut off before that layer may lie there.
    pub trim: Option<Length>,
    /// How the mark stands on the ground.
    pub paint: Option<Paint>,
}

/// A step of the run.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct HandOverStep {
    /// The station of its face.
    pub station: Length,
    /// How far the face may fall from it, either way.
    pub window: Length,
    /// The elevation to dig to before it.
    pub before: Length,
    /// The elevation to dig to after it.
    pub after: Length,
}

/// A sheet for each target that somebody has read or whose marks were laid.
pub fn hand_over(day: &Day<'_>) -> Vec<HandOver> {
    let Some(site) = day.state.site() else {
        return vec![];
    };
    let built = built::built(&day.state);
    site.targets
        .iter()
        .map(|target| of_target(day, site, target, &built))
        .filter(|sheet| {
            let known = |one: &HandOverStation| one.got.is_some() || one.paint.is_some();
            sheet.stations.iter().any(known)
        })
        .collect()
}

fn of_target(day: &Day<'_>, site: &Site, target: &Target, built: &[BuiltMark]) -> HandOver {
    let stack = &target.grade.stack;
    let own: Vec<_> = site
        .marks
        .iter()
        .filter(|mark| mark.target.as_deref() == Some(&target.id))
        .collect();
    let mut stations: Vec<HandOverStation> = own
        .iter()
        .map(|mark| {
            let along = target.grade.station_offset(mark.place).ok();
            let got = built.iter().find(|one| one.mark == mark.id).cloned();
            // A reading on another surface of the stack says nothing about the ground.
            let dig_to = match target.grade.dig_to(mark.place) {
                Ok(DigTo::At(at)) => Some(at),
                _ => None,
            };
            let dev = got
                .as_ref()
                .filter(|got| got.dig_to == dig_to && got.stands())
                .and_then(|got| got.mean);
            let lowest = stack.layers.last().map(|layer| layer.thickness);
            let too_high = got.as_ref().is_some_and(|got| {
                matches!(got.verdict, Some(Verdict::High | Verdict::TooCloseHigh))
            });
            HandOverStation {
                mark: mark.id.clone(),
                station: along.map(|along| along.station),
                offset: along.map(|along| along.offset),
                dig_to,
                fill: lowest
                    .zip(dev)
                    .map(|(thick, dev)| (thick - dev).max(Length::ZERO)),
                trim: dev.filter(|_| too_high),
                got,
                paint: day
                    .state
                    .marks
                    .get(&mark.id)
                    .and_then(|now| now.paint.clone()),
            }
        })
        .collect();
    stations.sort_by_key(|one| one.station);
    let names: Vec<&str> = own.iter().map(|mark| mark.id.as_str()).collect();
    HandOver {
        target: target.id.clone(),
        name: target.name.clone(),
        revision: target.revision,
        tolerance: target.tolerance,
        surface: stack.surface.clone(),
        layers: stack
            .layers
            .iter()
            .map(|layer| (layer.name.clone(), layer.thickness))
            .collect(),
        from_to: target.grade.stations(),
        width: match &target.grade.shape {
            Shape::Run(run) => Some(run.left + run.right),
            _ => None,
        },
        profile: target
            .grade
            .drawn()
            .map_or_else(Vec::new, |drawn| drawn.profile),
        steps: steps(target),
        hubs: hubs(day.entries, &names),
        stations,
    }
}

fn steps(target: &Target) -> Vec<HandOverStep> {
    let Shape::Run(run) = &target.grade.shape else {
        return vec![];
    };
    let below: Length = target
        .grade
        .stack
        .layers
        .iter()
        .map(|layer| layer.thickness)
        .sum();
    let pairs = run.steps.windows(2);
    pairs
        .map(|pair| HandOverStep {
            station: pair[1].from,
            window: pair[1].window,
            before: pair[0].elevation - below,
            after: pair[1].elevation - below,
        })
        .collect()
}

/// What was said about the hubs that these marks were laid from, once each.
fn hubs(entries: &[Entry], marks: &[&str]) -> Vec<String> {
    let mut said = Vec::new();
    for entry in entries {
        let Body::MarksLaid(b) = &entry.body else {
            continue;
        };
        let own = b.marks.iter().any(|one| marks.contains(&one.mark.as_str()));
        if own && b.from == LaidFrom::Hub && !b.note.is_empty() && !said.contains(&b.note) {
            said.push(b.note.clone());
        }
    }
    said
}
