//! The forms of everything but targets: marks, lines, benchmarks, machines, rods, lasers, rules, the frame.

use super::form::{Field, FormOf, Takes, may, needed, sides, units, words};

fn id() -> Field {
    needed("id", words::form::name(), Takes::Text)
}

fn note() -> Field {
    may("note", words::form::note(), Takes::Text)
}

pub(super) fn mark() -> Vec<Field> {
    vec![
        id(),
        may(
            "target",
            words::form::target(),
            Takes::One { of: FormOf::Target },
        ),
        may("at", words::form::place_or_station_below(), Takes::Point),
        may(
            "station",
            words::form::station_along_its_target(),
            Takes::Length,
        ),
        may("offset", words::form::offset_right_left(), Takes::Length),
        may(
            "surface",
            words::form::ground_under_the_rod(),
            words(&[
                ("trimmed", words::form::trimmed_or_compacted()),
                ("tooth_marked", words::form::marked_by_teeth()),
                ("hard_or_rock", words::form::rock_or_cobbles()),
            ]),
        ),
        note(),
    ]
}

pub(super) fn line() -> Vec<Field> {
    let kinds = words(&[
        ("property", words::form::property()),
        ("easement", words::form::easement()),
        ("setback", words::form::setback()),
        ("limit_of_work", words::form::limit_of_work()),
    ]);
    vec![
        id(),
        needed("kind", words::form::kind(), kinds),
        needed("points", words::form::corners_in_order(), Takes::Points),
        needed("keep", words::form::work_stays_this_side_looking(), sides()),
        may("no_cross", words::form::must_not_be_crossed(), Takes::Flag),
        needed("doubt", words::form::doubt_of_its_place(), Takes::Length),
        note(),
    ]
}

pub(super) fn benchmark() -> Vec<Field> {
    vec![
        id(),
        needed("elevation", words::form::elevation(), Takes::Length),
        may("at", words::form::place(), Takes::Point),
        may(
            "doubt",
            words::form::doubt_of_its_elevation(),
            Takes::Length,
        ),
        note(),
    ]
}

pub(super) fn machine() -> Vec<Field> {
    let shapes = words(&[
        ("square", words::form::square()),
        ("triangle", words::form::triangle()),
        ("ring", words::form::ring()),
        ("bars", words::form::two_bars()),
    ]);
    vec![
        id(),
        needed("shape", words::form::shape_on_the_screens(), shapes),
        needed(
            "reach_at_ground",
            words::form::reach_at_ground(),
            Takes::Length,
        ),
        needed("tail_radius", words::form::tail_radius(), Takes::Length),
        needed(
            "track_width",
            words::form::width_over_the_tracks(),
            Takes::Length,
        ),
        may("class", words::form::class_such_as_14_t(), Takes::Text),
        may("dig_depth", words::form::digs_so_deep(), Takes::Length),
        may(
            "dump_height",
            words::form::empties_its_bucket_so_high(),
            Takes::Length,
        ),
        may(
            "boom_height",
            words::form::its_boom_comes_so_high(),
            Takes::Length,
        ),
        may(
            "buckets",
            words::form::widths_of_its_buckets(),
            Takes::Lengths,
        ),
        may(
            "works_on",
            words::form::works_on(),
            Takes::Several { of: FormOf::Target },
        ),
        may("direction", words::form::direction_of_work(), Takes::Text),
    ]
}

pub(super) fn overhead() -> Vec<Field> {
    vec![
        id(),
        needed(
            "points",
            words::form::what_hangs_over_pole_by(),
            Takes::Points,
        ),
        needed(
            "height",
            words::form::its_lowest_over_the_ground(),
            Takes::Length,
        ),
        may(
            "kilovolts",
            words::form::kilovolts_as_its_owner_says(),
            Takes::Number,
        ),
        may(
            "kilovolts_at_most",
            words::form::no_more_than_so_many(),
            Takes::Number,
        ),
        may(
            "clearance",
            words::form::stay_off_by_as_its(),
            Takes::Length,
        ),
        may("call", words::form::whom_to_call(), Takes::Text),
    ]
}

pub(super) fn pile() -> Vec<Field> {
    vec![
        id(),
        needed("at", words::form::its_middle(), Takes::Point),
        needed("across", words::form::across_its_foot(), Takes::Length),
        note(),
    ]
}

pub(super) fn rod() -> Vec<Field> {
    let units = words(&[
        ("feet_hundredths", words::form::feet_and_hundredths()),
        ("feet_inches_eighths", words::form::feet_inches_eighths()),
        ("metres", words::form::metres()),
    ]);
    vec![
        id(),
        needed("unit", words::form::marked_in(), units),
        needed("length", words::form::length(), Takes::Length),
        may(
            "joints",
            words::form::joints_from_the_foot_up(),
            Takes::Lengths,
        ),
        may(
            "bracket",
            words::form::bracket_added_to_readings(),
            Takes::Length,
        ),
    ]
}

pub(super) fn rules() -> Vec<Field> {
    let unsettled = words(&[
        ("trim", words::form::counts_as_high()),
        ("ask_supervisor", words::form::the_supervisor_rules()),
    ]);
    let forms = vec![
        needed("height", words::form::height_of_one_form(), Takes::Size),
        may("widths", words::form::widths_there_are(), Takes::Lengths),
        may(
            "filler",
            words::form::filler_makes_up_either_way(),
            Takes::Size,
        ),
    ];
    vec![
        may("check_good", words::form::check_good_up(), Takes::Length),
        may(
            "check_warn",
            words::form::and_shot_again_up_to(),
            Takes::Length,
        ),
        may(
            "unsettled_high",
            words::form::two_shots_unsettled_high_side(),
            unsettled,
        ),
        may(
            "level_closure",
            words::form::levels_may_miss_by_this(),
            Takes::Length,
        ),
        may(
            "truck_side",
            words::form::truck_side_so_high(),
            Takes::Length,
        ),
        may("check_cost", words::form::one_check_costs(), Takes::Number),
        may(
            "undetected_hour_cost",
            words::form::hour_moved_laser_costs(),
            Takes::Number,
        ),
        may(
            "hours_between_bumps",
            words::form::hours_between_bumps(),
            Takes::Number,
        ),
        may(
            "forms",
            words::form::forms_at_hand(),
            Takes::Table { fields: forms },
        ),
    ]
}

pub(super) fn frame() -> Vec<Field> {
    let pins = vec![
        id(),
        needed("east", words::form::plan_east(), Takes::Number),
        needed("north", words::form::plan_north(), Takes::Number),
        needed("at", words::form::measured_at(), Takes::Point),
    ];
    vec![
        needed("unit", words::form::the_plan_counts_in(), units()),
        needed("east", words::form::plan_east_site_corner(), Takes::Number),
        needed(
            "north",
            words::form::plan_north_site_corner(),
            Takes::Number,
        ),
        may(
            "turn",
            words::form::turn_to_the_left_degrees(),
            Takes::Number,
        ),
        may(
            "pin",
            words::form::pins_that_were_found(),
            Takes::Rows { fields: pins },
        ),
    ]
}

pub(super) fn laser() -> Vec<Field> {
    vec![
        id(),
        may(
            "doubt_per_100_ft",
            words::form::doubt_over_100_ft(),
            Takes::Length,
        ),
    ]
}
