//! Who is known and what the day is: all that joining and answering a phone needs.

use std::collections::BTreeMap;

use day::asked::{By, Role};
use day::site::{Frame, LineKind, Site};
use day::state::{Device, State};
use earthwork::point::Point;
use earthwork::words::ScreenUnit;
use words::Language;

/// Who is known and what the day is: all that joining and answering a phone needs.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Board {
    /// The job's name; empty before a site is read.
    pub site: String,
    /// The day's name; empty before one is open.
    pub day: String,
    /// How often the codes of the day were renewed.
    pub generation: u32,
    /// The day that the codes which hold were made for.
    pub codes_of: String,
    /// The machines, in the order of the site file.
    pub machines: Vec<String>,
    /// How the plan's coordinates come on to the site.
    pub frame: Option<Frame>,
    /// The lot's corners, by the first property line that has three; else the box around what the site knows.
    pub lot: Vec<Point>,
    /// Phones that are in, by the digest of their cookie.
    pub phones: BTreeMap<String, Phone>,
    /// Phones of people who ask to come in, are in, or spot for a machine, and whether their link is known to be lost.
    pub visiting: BTreeMap<String, bool>,
    /// Phones that are out and from which STOP alone is taken, by the digest of their cookie.
    pub stoppers: BTreeMap<String, Phone>,
    /// Phones that are out, and whether another screen took over.
    pub gone: BTreeMap<String, Gone>,
}

/// A phone that is in.
#[derive(Clone, Debug, PartialEq)]
pub struct Phone {
    /// Who it is, as entries name it.
    pub by: By,
    /// The screen's language.
    pub language: Language,
    /// The screen's unit.
    pub unit: ScreenUnit,
    /// It stayed in over the night, and nobody has said yet who holds it.
    pub asks_who: bool,
}

impl Phone {
    fn of(id: &str, device: &Device) -> Self {
        Self {
            by: By {
                device: id.to_owned(),
                person: device.person.clone(),
                roles: device.roles.clone(),
                machine: device.machine.clone(),
            },
            language: device.language,
            unit: device.unit,
            asks_who: device.asks_who,
        }
    }
}

/// Why a phone is out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Gone {
    /// A supervisor removed it.
    Removed,
    /// Another phone took its place in the cab.
    Retired,
}

/// The day that the codes which hold were made for.
fn codes_of(state: &State) -> String {
    let open = state.day.as_ref().map(|day| day.id.clone());
    let made_for = Some(&state.codes.made_for).filter(|day| !day.is_empty());
    made_for.cloned().or(open).unwrap_or_default()
}

/// The phones of spotters, and whether their link is known to be lost.
fn spotters(state: &State) -> impl Iterator<Item = (String, bool)> {
    let spotters = state.cabs.values().filter_map(|cab| cab.spotter.as_ref());
    spotters.map(|one| (one.device.clone(), one.lost.is_some()))
}

/// The corners of the first property line that goes around something; else of the box around what has a place.
fn lot(site: &Site) -> Vec<Point> {
    let property = site
        .lines
        .iter()
        .find(|line| line.kind == LineKind::Property && line.points.len() >= 3);
    let Some(property) = property else {
        let marks = site.marks.iter().map(|mark| mark.place);
        let known = site.benchmarks.iter().filter_map(|one| one.place);
        return boxed(marks.chain(known));
    };
    let mut corners = property.points.clone();
    if corners.first() == corners.last() {
        corners.pop();
    }
    corners
}

/// The corners of the box around places; none when there are none.
fn boxed(places: impl Iterator<Item = Point> + Clone) -> Vec<Point> {
    let (xs, ys) = (places.clone().map(|at| at.x), places.map(|at| at.y));
    let (east, north) = (xs.clone().max(), ys.clone().max());
    let (Some(west), Some(east), Some(south), Some(north)) = (xs.min(), east, ys.min(), north)
    else {
        return vec![];
    };
    [(west, south), (east, south), (east, north), (west, north)]
        .map(|(x, y)| Point { x, y })
        .to_vec()
}

impl Board {
    /// As a state has it.
    pub fn of(state: &State) -> Self {
        let mut board = Self {
            site: state
                .site()
                .map(|site| site.name.clone())
                .unwrap_or_default(),
            day: state
                .day
                .as_ref()
                .map(|day| day.id.clone())
                .unwrap_or_default(),
            generation: state.codes_generation,
            codes_of: codes_of(state),
            machines: state
                .site()
                .map(|site| {
                    site.machines
                        .iter()
                        .map(|machine| machine.id.clone())
                        .collect()
                })
                .unwrap_or_default(),
            frame: state.site().and_then(|site| site.frame.clone()),
            lot: state.site().map(lot).unwrap_or_default(),
            visiting: state
                .way_in
                .gates()
                .flat_map(|(_, gate)| gate.visits())
                .map(|(_, visit)| (visit.device.clone(), visit.lost.is_some()))
                .chain(spotters(state))
                .collect(),
            ..Self::default()
        };
        for (id, device) in &state.devices {
            if device.removed {
                let cab = device
                    .machine
                    .as_ref()
                    .and_then(|machine| state.cabs.get(machine));
                let replaced = cab.is_some_and(|cab| cab.device.is_some());
                let why = if replaced {
                    Gone::Retired
                } else {
                    Gone::Removed
                };
                board.gone.insert(id.clone(), why);
                continue;
            }
            let phone = Phone::of(id, device);
            board.phones.insert(device.token_digest.clone(), phone);
        }
        let stoppers = state.may_still_stop();
        let stoppers =
            stoppers.map(|(id, device)| (device.token_digest.clone(), Phone::of(id, device)));
        board.stoppers = stoppers.collect();
        board
    }

    /// Whether a phone was in on the day before and is not any more.
    pub fn was_in_before(&self, device: &str) -> bool {
        let mut before = self.stoppers.values();
        !self.gone.contains_key(device) && before.any(|phone| phone.by.device == device)
    }

    /// The operators' phones that are in.
    pub fn cabs(&self) -> impl Iterator<Item = &Phone> {
        self.phones
            .values()
            .filter(|phone| phone.by.is(Role::Operator))
    }
}
