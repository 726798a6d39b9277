//! The form of a target: its stack, its tolerance, and one shape of its kind.

use super::form::{Field, Takes, may, needed, sides, units, words};

pub(super) fn fields() -> Vec<Field> {
    let layers = vec![
        needed("name", words::form::name(), Takes::Text),
        needed("thickness", words::form::thickness(), Takes::Size),
    ];
    let tolerance = vec![
        needed("high", words::form::allowed_high(), Takes::Size),
        needed("low", words::form::allowed_low(), Takes::Size),
    ];
    let undercuts = vec![
        needed("name", words::form::name(), Takes::Text),
        needed("within", words::form::corners_in_order(), Takes::Points),
        needed("depth", words::form::deeper_by(), Takes::Size),
        needed("material", words::form::filled_again_with(), Takes::Text),
        may("lifts", words::form::lifts(), Takes::Number),
    ];
    vec![
        needed("id", words::form::short_name(), Takes::Text),
        needed(
            "name",
            words::form::name_on_the_operator_screen(),
            Takes::Text,
        ),
        needed("surface", words::form::its_elevation_is_of(), Takes::Text),
        needed(
            "shape",
            words::form::shape(),
            Takes::OneOf { tables: shapes() },
        ),
        may(
            "layers",
            words::form::layers_under_down_dig(),
            Takes::Rows { fields: layers },
        ),
        may(
            "tolerance",
            words::form::tolerance(),
            Takes::Table { fields: tolerance },
        ),
        may("within", words::form::its_edge(), Takes::Points),
        may(
            "guard_factor",
            words::form::guard_factor_1_is_usual(),
            Takes::Number,
        ),
        may(
            "undercut",
            words::form::undercut_zones(),
            Takes::Rows { fields: undercuts },
        ),
    ]
}

pub(super) fn shapes() -> Vec<Field> {
    let table = |key, name, fields| needed(key, name, Takes::Table { fields });
    let elevation = || needed("elevation", words::form::elevation(), Takes::Length);
    vec![
        table("flat", words::form::level(), vec![elevation()]),
        table("plane", words::form::plane(), plane()),
        table("run", words::form::run_in_steps(), run()),
        table("along", words::form::profile_along_a_line(), along()),
        table("trench", words::form::pipe_trench(), trench()),
        table("face", words::form::cut_face(), face()),
        table(
            "contour",
            words::form::contour_walked_on_the_ground(),
            vec![
                elevation(),
                may("band", words::form::off_level_by_at_most(), Takes::Length),
            ],
        ),
        table("fold", words::form::planes_folded(), fold()),
        table("triangles", words::form::surface_from_a_file(), net()),
        table("strip", words::form::below_ground_as_lies(), strip()),
    ]
}

fn plane() -> Vec<Field> {
    vec![
        needed("through", words::form::a_place_on_it(), Takes::Point),
        needed("elevation", words::form::elevation_there(), Takes::Length),
        needed("rise_east", words::form::rise_to_the_east(), Takes::Rise),
        needed("rise_north", words::form::rise_to_the_north(), Takes::Rise),
    ]
}

fn fold() -> Vec<Field> {
    let kinds = words(&[
        ("crown", words::form::crown()),
        ("valley", words::form::valley()),
    ]);
    vec![
        needed("kind", words::form::kind(), kinds),
        needed(
            "planes",
            words::form::planes(),
            Takes::Rows { fields: plane() },
        ),
    ]
}

fn widths() -> [Field; 2] {
    [
        needed("left", words::form::width_to_the_left(), Takes::Length),
        needed("right", words::form::width_to_the_right(), Takes::Length),
    ]
}

fn window() -> Field {
    may(
        "window",
        words::form::may_fall_off_by_either(),
        Takes::Length,
    )
}

fn run() -> Vec<Field> {
    let steps = vec![
        needed("from", words::form::from_station(), Takes::Length),
        needed("elevation", words::form::elevation(), Takes::Length),
        window(),
    ];
    let mut fields = vec![
        needed("start", words::form::station_0(), Takes::Point),
        needed("toward", words::form::toward(), Takes::Point),
        needed("length", words::form::length(), Takes::Length),
    ];
    fields.extend(widths());
    fields.push(needed(
        "steps",
        words::form::steps(),
        Takes::Rows { fields: steps },
    ));
    fields
}

/// A line of straights and arcs.
fn axis() -> Vec<Field> {
    let pieces = vec![
        needed("to", words::form::to(), Takes::Point),
        may("centre", words::form::centre_of_an_arc(), Takes::Point),
        may("turn", words::form::the_arc_turns(), sides()),
    ];
    vec![
        needed("start", words::form::starts_at(), Takes::Point),
        may("first", words::form::first_station(), Takes::Length),
        needed(
            "pieces",
            words::form::straights_and_arcs(),
            Takes::Rows { fields: pieces },
        ),
    ]
}

fn corners() -> Vec<Field> {
    vec![
        needed("station", words::form::station(), Takes::Length),
        needed("elevation", words::form::elevation(), Takes::Length),
        may(
            "curve",
            words::form::length_of_vertical_curve(),
            Takes::Length,
        ),
    ]
}

fn along() -> Vec<Field> {
    let steps = vec![
        needed("station", words::form::station(), Takes::Length),
        needed("by", words::form::up_down(), Takes::Length),
        window(),
    ];
    let mut fields = axis();
    fields.extend(widths());
    fields.push(needed(
        "profile",
        words::form::where_grades_meet(),
        Takes::Rows { fields: corners() },
    ));
    fields.push(may(
        "steps",
        words::form::steps(),
        Takes::Rows { fields: steps },
    ));
    fields
}

fn trench() -> Vec<Field> {
    let inverts = vec![
        needed("station", words::form::station(), Takes::Length),
        needed("elevation", words::form::invert(), Takes::Length),
    ];
    let flows = words(&[
        ("up_station", words::form::toward_higher_stations()),
        ("down_station", words::form::toward_station_0()),
    ]);
    let mut fields = axis();
    fields.extend([
        needed(
            "inverts",
            words::form::inverts(),
            Takes::Rows { fields: inverts },
        ),
        needed("flow", words::form::flows(), flows),
        needed(
            "outside_diameter",
            words::form::outside_diameter(),
            Takes::Size,
        ),
        needed("side", words::form::room_on_each_side(), Takes::Size),
        may("wall", words::form::pipe_wall(), Takes::Size),
        may("bedding", words::form::bedding(), Takes::Size),
        may("least_fall", words::form::least_fall(), Takes::Rise),
    ]);
    fields
}

fn face() -> Vec<Field> {
    let parts = vec![
        may("rise", words::form::rises(), Takes::Length),
        may("run", words::form::goes_back(), Takes::Length),
    ];
    let mut fields = axis();
    fields.extend([
        needed("rises", words::form::rises_to_the(), sides()),
        needed("toe", words::form::toe(), Takes::Rows { fields: corners() }),
        needed(
            "faces",
            words::form::from_the_toe_outward(),
            Takes::Rows { fields: parts },
        ),
    ]);
    fields
}

fn net() -> Vec<Field> {
    vec![
        may("kept", words::form::triangles_of(), Takes::Fixed),
        may("file", words::form::file_sent_with_import(), Takes::Text),
        may("name", words::form::which_surface_in_it(), Takes::Text),
        may("unit", words::form::it_counts_in(), units()),
        may(
            "on_plan",
            words::form::its_coordinates_are_the_plan(),
            Takes::Flag,
        ),
        may("source", words::form::came_from(), Takes::Fixed),
    ]
}

fn strip() -> Vec<Field> {
    let mut fields = net();
    fields.push(needed("thickness", words::form::stripped_by(), Takes::Size));
    fields
}
