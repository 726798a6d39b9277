//! A site back into what is written: the same tables that the site file has, each length exact. Reading them again gives
//! the same site.

use day::site::{Benchmark, FormsAtHand, Frame, Laser, Line, Machine, Mark, Rules, Site};
use earthwork::alignment::StationOffset;
use earthwork::length::{Form, Length, parse};
use earthwork::point::Point;
use earthwork::rod::Rod;
use earthwork::target::KeptNet;
use indexmap::IndexMap;
use serde::Serialize;

use super::write_cuts;
use super::write_prices::prices;
use super::write_target::target;
use super::written::Written;

/// How triangles are named, by their target or face: an export writes them to a file, a draft keeps those of the target itself.
pub(super) type Nets<'a> = &'a dyn Fn(&str, &KeptNet) -> Vec<(&'static str, Written)>;

/// A whole site.
pub(super) fn site(site: &Site, nets: Nets<'_>) -> IndexMap<String, Written> {
    let list = |items: Vec<Written>| Written::some(items);
    let things = [
        ("name", Some(text(&site.name))),
        ("rules", Some(rules(&site.rules))),
        ("frame", site.frame.as_ref().map(frame)),
        (
            "benchmark",
            list(site.benchmarks.iter().map(benchmark).collect()),
        ),
        ("line", list(site.lines.iter().map(line).collect())),
        (
            "target",
            list(site.targets.iter().map(|one| target(one, nets)).collect()),
        ),
        (
            "mark",
            list(site.marks.iter().map(|one| mark(site, one)).collect()),
        ),
        ("machine", list(site.machines.iter().map(machine).collect())),
        ("rod", list(site.rods.iter().map(rod).collect())),
        ("laser", list(site.lasers.iter().map(laser).collect())),
        ("prices", site.prices.as_deref().map(prices)),
    ];
    let cuts = write_cuts::entries(&site.cuts, nets);
    match Written::table(things.into_iter().chain(cuts)) {
        Written::Table(entries) => entries,
        _ => IndexMap::new(),
    }
}

/// A length as somebody would write it, exact: feet, else inches, else metres.
pub fn exact(length: Length) -> String {
    let feet = length.to_string();
    let small = length.abs() < Length::from_hundredths_of_a_foot(200);
    let inches = if small {
        length.show(Form::Inches { parts: 64 })
    } else {
        length.show(Form::FeetInches { parts: 64 })
    };
    let metres = length.show(Form::Metres { places: 7 });
    [feet, inches]
        .into_iter()
        .find(|text| parse(text) == Ok(length))
        .unwrap_or(metres)
}

pub(super) fn text(text: &str) -> Written {
    Written::Text(text.to_owned())
}

pub(super) fn length(value: impl Into<Option<Length>>) -> Option<Written> {
    value.into().map(|value| Written::Text(exact(value)))
}

/// A length, unless it is zero, which is what is read when nothing is written.
pub(super) fn unless_zero(value: Length) -> Option<Written> {
    (value != Length::ZERO).then(|| Written::Text(exact(value)))
}

pub(super) fn point(at: Point) -> Written {
    Written::List(vec![text(&exact(at.x)), text(&exact(at.y))])
}

pub(super) fn points(corners: &[Point]) -> Written {
    Written::List(corners.iter().copied().map(point).collect())
}

/// A word of a fixed list, as its own name is written.
pub(super) fn word(of: impl Serialize) -> Option<Written> {
    match serde_json::to_value(of) {
        Ok(serde_json::Value::String(word)) => Some(Written::Text(word)),
        _ => None,
    }
}

pub(super) fn number(value: impl Into<Option<f64>>) -> Option<Written> {
    value.into().map(|value| Written::Text(value.to_string()))
}

fn benchmark(one: &Benchmark) -> Written {
    Written::table([
        ("id", Some(text(&one.id))),
        ("elevation", length(one.elevation)),
        ("at", one.place.map(point)),
        ("doubt", length(one.doubt)),
        ("note", Written::note(&one.note)),
    ])
}

fn line(one: &Line) -> Written {
    Written::table([
        ("id", Some(text(&one.id))),
        ("kind", word(one.kind)),
        ("points", Some(points(&one.points))),
        ("keep", word(one.keep)),
        ("no_cross", Some(Written::Flag(one.no_cross))),
        ("doubt", length(one.doubt)),
        ("note", Written::note(&one.note)),
    ])
}

fn mark(site: &Site, one: &Mark) -> Written {
    let offset = one.offset.unwrap_or(Length::ZERO);
    // A station is written only where it gives the mark's own place.
    let by_station = one.station.filter(|station| {
        let at = StationOffset {
            station: *station,
            offset,
        };
        let target = site.target_of(one);
        target.is_some_and(|target| target.grade.place(at) == Ok(one.place))
    });
    Written::table([
        ("id", Some(text(&one.id))),
        ("target", one.target.as_deref().map(text)),
        ("at", by_station.is_none().then(|| point(one.place))),
        ("station", by_station.and_then(length)),
        ("offset", by_station.and(one.offset).and_then(length)),
        ("surface", word(one.surface)),
        ("note", Written::note(&one.note)),
    ])
}

fn machine(one: &Machine) -> Written {
    Written::table([
        ("id", Some(text(&one.id))),
        ("shape", word(one.shape)),
        ("reach_at_ground", length(one.reach.reach_at_ground)),
        ("tail_radius", length(one.reach.tail_radius)),
        ("track_width", length(one.reach.track_width)),
        (
            "works_on",
            Some(Written::List(
                one.works_on.iter().map(|id| text(id)).collect(),
            )),
        ),
        ("direction", Written::note(&one.direction)),
    ])
}

fn rod(one: &Rod) -> Written {
    let joints = one.joints.iter().map(|joint| text(&exact(*joint)));
    Written::table([
        ("id", Some(text(&one.id))),
        ("unit", word(one.unit)),
        ("length", length(one.length)),
        ("joints", Written::some(joints.collect())),
        ("bracket", unless_zero(one.bracket)),
    ])
}

fn laser(one: &Laser) -> Written {
    Written::table([
        ("id", Some(text(&one.id))),
        ("doubt_per_100_ft", length(one.doubt_per_100_ft)),
    ])
}

fn rules(rules: &Rules) -> Written {
    Written::table([
        ("check_good", length(rules.checks.good)),
        ("check_warn", length(rules.checks.warn)),
        ("unsettled_high", word(rules.unsettled_high)),
        ("level_closure", length(rules.closure)),
        ("check_cost", number(rules.check_costs.check)),
        (
            "undetected_hour_cost",
            number(rules.check_costs.undetected_hour),
        ),
        (
            "hours_between_bumps",
            number(rules.check_costs.hours_between_bumps),
        ),
        ("forms", rules.forms.as_ref().map(forms)),
    ])
}

fn forms(forms: &FormsAtHand) -> Written {
    let widths = forms.widths.iter().map(|width| text(&exact(*width)));
    Written::table([
        ("height", length(forms.height)),
        ("widths", Written::some(widths.collect())),
        ("filler", unless_zero(forms.filler)),
    ])
}

fn frame(frame: &Frame) -> Written {
    let pins = frame.pins.iter().map(|pin| {
        Written::table([
            ("id", Some(text(&pin.id))),
            ("east", Some(text(&pin.east))),
            ("north", Some(text(&pin.north))),
            ("at", Some(point(pin.at))),
        ])
    });
    Written::table([
        ("unit", word(frame.unit)),
        ("east", Some(text(&frame.east))),
        ("north", Some(text(&frame.north))),
        ("turn", number(frame.turn)),
        ("pin", Written::some(pins.collect())),
    ])
}
