//! The forms of what is cut and of what is buried: faces and trenches, footings behind them, buried lines, locate tickets.

use ::words::Fixed;

use super::form::{Field, FormOf, Takes, may, needed, sides, some_words, words};
use super::form_target::shapes;

pub(super) fn face() -> Vec<Field> {
    let kinds = words(&[
        ("face", words::form::open_face()),
        ("trench", words::form::trench()),
    ]);
    let classes = words(&[
        ("rock", words::form::rock()),
        ("a", words::form::type_a()),
        ("b", words::form::type_b()),
        ("c", words::form::type_c()),
    ]);
    let layers = vec![
        may("top", words::form::its_top_elevation(), Takes::Length),
        needed("class", words::form::soil_class(), classes),
    ];
    let ground = vec![needed(
        "shape",
        words::form::shape(),
        Takes::OneOf { tables: shapes() },
    )];
    let marks = || Takes::Several { of: FormOf::Mark };
    vec![
        needed("id", words::form::short_name(), Takes::Text),
        needed("name", words::form::name(), Takes::Text),
        needed("kind", words::form::kind(), kinds),
        needed("toe", words::form::toe_corner_by_corner(), Takes::Corners),
        needed("bank", words::form::bank_stands_on_this_hand(), sides()),
        needed(
            "ground",
            words::form::ground_before_the_cut(),
            Takes::Table { fields: ground },
        ),
        may(
            "layers",
            words::form::soil_from_the_bottom_up(),
            Takes::Rows { fields: layers },
        ),
        may("toe_marks", words::form::marks_on_its_toe(), marks()),
        may("crest_marks", words::form::marks_on_its_crest(), marks()),
        may("pins", words::form::pairs_of_pins(), Takes::Texts),
        may(
            "target",
            words::form::target_that_is_dug_there(),
            Takes::One { of: FormOf::Target },
        ),
        may(
            "pipe_crown",
            words::form::top_of_the_pipe_in_it(),
            Takes::Length,
        ),
    ]
}

pub(super) fn structure() -> Vec<Field> {
    vec![
        needed("id", words::form::name(), Takes::Text),
        needed("points", words::form::its_near_edge(), Takes::Points),
        needed("bottom", words::form::its_lower_edge(), Takes::Length),
    ]
}

fn kinds() -> [(&'static str, Fixed); 7] {
    [
        ("gas", words::form::gas()),
        ("electric", words::form::electric()),
        ("communication", words::form::communication()),
        ("water", words::form::water()),
        ("reclaimed", words::form::reclaimed()),
        ("sewer", words::form::sewer()),
        ("unknown", words::form::nobody_knows()),
    ]
}

pub(super) fn utility() -> Vec<Field> {
    let marked = words(&[
        ("centre", words::form::along_its_middle()),
        ("edges", words::form::along_both_edges()),
    ]);
    vec![
        needed("id", words::form::name(), Takes::Text),
        needed("kind", words::form::what_runs_in_it(), words(&kinds())),
        needed("points", words::form::its_places_as_marked(), Takes::Points),
        may("outside", words::form::outside_diameter(), Takes::Size),
        may(
            "zone",
            words::form::by_hand_so_far_to_each_side(),
            Takes::Length,
        ),
        may("marked", words::form::marked_on_the_ground(), marked),
        may("call", words::form::whom_to_call(), Takes::Text),
    ]
}

pub(super) fn ticket() -> Vec<Field> {
    vec![
        needed("id", words::form::ticket_number(), Takes::Text),
        needed("from", words::form::first_day(), Takes::Text),
        needed("to", words::form::last_day(), Takes::Text),
        needed(
            "area",
            words::form::ground_that_was_asked_for(),
            Takes::Points,
        ),
        may(
            "asks",
            words::form::who_has_to_answer(),
            some_words(&kinds()),
        ),
    ]
}
