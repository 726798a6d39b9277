//! A site back into what is written: the same tables that the site file has, each length exact. Reading them again gives
//! the same site.

use day::site::{Benchmark, FormsAtHand, Frame, Laser, Line, Machine, Mark, Rules, Site};
use earthwork::alignment::StationOffset;
use earthwork::length::Length;
use earthwork::rod::Rod;
use indexmap::IndexMap;

use super::values::{Nets, exact, length, number, point, points, text, unless_zero, word};
use super::write_cuts;
use super::write_prices::prices;
use super::write_target::{target, tolerance};
use super::written::Written;

/// A whole site.
pub(super) fn site(site: &Site, nets: Nets<'_>) -> IndexMap<String, Written> {
    let list = |items: Vec<Written>| Written::some(items);
    let things = [
        ("name", Some(text(&site.name))),
        ("tolerance", site.tolerance.map(tolerance)),
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
        ("class", Written::note(&one.geometry.class)),
        ("dig_depth", length(one.geometry.dig_depth)),
        ("dump_height", length(one.geometry.dump_height)),
        ("boom_height", length(one.geometry.boom_height)),
        (
            "buckets",
            Written::some(
                one.geometry
                    .buckets
                    .iter()
                    .map(|width| text(&exact(*width)))
                    .collect(),
            ),
        ),
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
        ("truck_side", length(rules.truck_side)),
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
