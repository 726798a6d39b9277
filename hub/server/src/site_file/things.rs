//! Benchmarks, lines, machines, rods, lasers and rules, out of their tables.

use day::site::{Benchmark, CheckCosts, FormsAtHand, FoundPin, Frame, Laser, Line, Machine, Rules};
use earthwork::keep_out::Reach;
use earthwork::length::Length;
use earthwork::level::CheckLimits;
use earthwork::machine::Geometry;
use earthwork::rod::Rod;

use super::fields::Fields;
use super::notes::Notes;

/// One standard deviation of a benchmark's elevation that is not given (common practice).
const USUAL_BENCHMARK_DOUBT: Length = Length::from_thousandths_of_a_foot(5);
/// One standard deviation of a laser's plane over 100 ft that is not given (common practice).
const USUAL_LASER_DOUBT: Length = Length::from_thousandths_of_a_foot(5);

pub(super) fn benchmark(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Benchmark> {
    let id = fields.text(notes, "id");
    let elevation = fields.length(notes, "elevation");
    let place = if fields.has("at") {
        fields.point(notes, "at").map(Some)
    } else {
        Some(None)
    };
    let doubt = fields.length_or(notes, "doubt", USUAL_BENCHMARK_DOUBT);
    let note = fields.note(notes, "note");
    Some(Benchmark {
        id: id?,
        elevation: elevation?,
        place: place?,
        doubt: doubt?,
        note,
    })
}

pub(super) fn line(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Line> {
    let id = fields.text(notes, "id");
    let kind = fields.word(notes, "kind");
    let points = fields.points(notes, "points");
    let keep = fields.word(notes, "keep");
    let no_cross = fields.flag(notes, "no_cross");
    let doubt = fields.length(notes, "doubt");
    let note = fields.note(notes, "note");
    Some(Line {
        id: id?,
        kind: kind?,
        points: points?,
        keep: keep?,
        no_cross,
        doubt: doubt?,
        note,
    })
}

pub(super) fn machine(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Machine> {
    let id = fields.text(notes, "id");
    let shape = fields.word(notes, "shape");
    let reach_at_ground = fields.length(notes, "reach_at_ground");
    let tail_radius = fields.length(notes, "tail_radius");
    let track_width = fields.length(notes, "track_width");
    let geometry = geometry(notes, fields);
    let works_on = fields.names(notes, "works_on");
    let direction = fields.note(notes, "direction");
    Some(Machine {
        id: id?,
        shape: shape?,
        reach: Reach {
            reach_at_ground: reach_at_ground?,
            tail_radius: tail_radius?,
            track_width: track_width?,
        },
        geometry: geometry?,
        works_on: works_on?,
        direction,
    })
}

/// What else a machine can do, as far as somebody has said it.
fn geometry(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Geometry> {
    let class = fields.note(notes, "class");
    let dig_depth = fields.length_if(notes, "dig_depth");
    let dump_height = fields.length_if(notes, "dump_height");
    let boom_height = fields.length_if(notes, "boom_height");
    let buckets = fields.lengths(notes, "buckets");
    Some(Geometry {
        class,
        dig_depth: dig_depth?,
        dump_height: dump_height?,
        boom_height: boom_height?,
        buckets: buckets?,
    })
}

pub(super) fn rod(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Rod> {
    let id = fields.text(notes, "id");
    let unit = fields.word(notes, "unit");
    let length = fields.length(notes, "length");
    let joints = fields.lengths(notes, "joints");
    let bracket = fields.length_or(notes, "bracket", Length::ZERO);
    Some(Rod {
        id: id?,
        unit: unit?,
        length: length?,
        joints: joints?,
        bracket: bracket?,
    })
}

pub(super) fn laser(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Laser> {
    let id = fields.text(notes, "id");
    let doubt = fields.length_or(notes, "doubt_per_100_ft", USUAL_LASER_DOUBT);
    Some(Laser {
        id: id?,
        doubt_per_100_ft: doubt?,
    })
}

pub(super) fn rules(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Rules> {
    let usual = Rules::default();
    let good = fields.length_or(notes, "check_good", usual.checks.good);
    let warn = fields.length_or(notes, "check_warn", usual.checks.warn);
    let unsettled_high = if fields.has("unsettled_high") {
        fields.word(notes, "unsettled_high")
    } else {
        Some(usual.unsettled_high)
    };
    let forms = match fields.table(notes, "forms") {
        Some(forms) => forms_at_hand(notes, &forms).map(Some),
        None => Some(None),
    };
    let closure = fields.length_or(notes, "level_closure", usual.closure);
    let truck_side = fields.length_if(notes, "truck_side");
    let check_costs = check_costs(notes, fields, usual.check_costs);
    fields.done(notes);
    let (good, warn) = (good?, warn?);
    if good <= Length::ZERO || warn < good {
        notes.said_at(
            fields.at("check_good"),
            words::site_file::check_good_must_above_zero(),
        );
    }
    Some(Rules {
        checks: CheckLimits { good, warn },
        unsettled_high: unsettled_high?,
        forms: forms?,
        check_costs,
        closure: closure?,
        truck_side: truck_side?,
    })
}

fn forms_at_hand(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<FormsAtHand> {
    let height = fields.length(notes, "height");
    let widths = fields.lengths(notes, "widths");
    let filler = fields.length_or(notes, "filler", Length::ZERO);
    fields.done(notes);
    let height = height?;
    if height <= Length::ZERO {
        notes.said_at(
            fields.at("height"),
            words::site_file::height_forms_must_above_zero(),
        );
    }
    Some(FormsAtHand {
        height,
        widths: widths?,
        filler: filler?,
    })
}

/// How the plan's coordinates come on to the site.
pub(super) fn frame(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Frame> {
    let unit = fields.word(notes, "unit");
    let east = fields.plain(notes, "east");
    let north = fields.plain(notes, "north");
    let turn = fields.number_or(notes, "turn", 0.0);
    let pins = fields.each(notes, "pin", "frame.pins", pin);
    fields.done(notes);
    let frame = Frame {
        unit: unit?,
        east: east?,
        north: north?,
        turn: turn?,
        pins,
    };
    if let Err(error) = frame.made() {
        notes.wrong_at(fields.at("east"), error.to_string());
        return None;
    }
    Some(frame)
}

fn pin(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<FoundPin> {
    let id = fields.text(notes, "id");
    let east = fields.plain(notes, "east");
    let north = fields.plain(notes, "north");
    let at = fields.point(notes, "at");
    Some(FoundPin {
        id: id?,
        east: east?,
        north: north?,
        at: at?,
    })
}

/// What a check of the laser costs and saves; what is not given is as usual.
fn check_costs(notes: &mut Notes, fields: &Fields<'_, '_>, usual: CheckCosts) -> CheckCosts {
    let mut above_zero = |key: &str, usual: f64| {
        let value = fields.number_or(notes, key, usual).unwrap_or(usual);
        if value.is_finite() && value > 0.0 {
            return value;
        }
        notes.said_at(
            fields.at(key),
            words::site_file::must_number_above_zero(&key),
        );
        usual
    };
    CheckCosts {
        check: above_zero("check_cost", usual.check),
        undetected_hour: above_zero("undetected_hour_cost", usual.undetected_hour),
        hours_between_bumps: above_zero("hours_between_bumps", usual.hours_between_bumps),
    }
}
