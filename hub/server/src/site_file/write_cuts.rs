//! Faces, footings behind them, buried lines and tickets back into what is written. Rules of another country come from a
//! file of their own, which is named and not written.

use day::cuts::plan::{Cuts, FaceZone, OverheadLine, Pile, SoilLayer, Structure, Ticket, Utility};

use super::values::{Nets, length, number, point, points, text, unless_zero, word};
use super::write_target::shape;
use super::written::Written;

/// The file of other rules, as an export names it.
pub const RULES_FILE: &str = "excavation-rules.toml";

pub(super) fn entries(cuts: &Cuts, nets: Nets<'_>) -> [(&'static str, Option<Written>); 7] {
    let usual = Cuts::default();
    let excavation = Written::table([
        ("rules", cuts.rules.as_ref().map(|_| text(RULES_FILE))),
        ("competent", names(&cuts.competent)),
        ("clearance", length(cuts.clearance)),
    ]);
    let said =
        cuts.rules.is_some() || !cuts.competent.is_empty() || cuts.clearance != usual.clearance;
    let list = |items: Vec<Written>| Written::some(items);
    [
        ("excavation", said.then_some(excavation)),
        (
            "face",
            list(cuts.faces.iter().map(|one| face(one, nets)).collect()),
        ),
        (
            "structure",
            list(cuts.structures.iter().map(structure).collect()),
        ),
        (
            "utility",
            list(cuts.utilities.iter().map(utility).collect()),
        ),
        ("ticket", list(cuts.tickets.iter().map(ticket).collect())),
        (
            "overhead",
            list(cuts.overheads.iter().map(overhead).collect()),
        ),
        ("pile", list(cuts.piles.iter().map(pile).collect())),
    ]
}

fn names(list: &[String]) -> Option<Written> {
    Written::some(list.iter().map(|name| text(name)).collect())
}

fn face(one: &FaceZone, nets: Nets<'_>) -> Written {
    let toe = one.toe.iter().map(|corner| {
        let mut place = point(corner.at);
        if let (Written::List(parts), Some(elevation)) = (&mut place, length(corner.elevation)) {
            parts.push(elevation);
        }
        place
    });
    let (kind, of_kind) = shape(&one.id, &one.ground, nets);
    Written::table([
        ("id", Some(text(&one.id))),
        ("name", Some(text(&one.name))),
        ("kind", word(one.kind)),
        ("toe", Written::some(toe.collect())),
        ("bank", word(one.bank)),
        (
            "layers",
            Written::some(one.layers.iter().map(layer).collect()),
        ),
        ("toe_marks", names(&one.toe_marks)),
        ("crest_marks", names(&one.crest_marks)),
        ("pins", names(&one.pins)),
        ("target", one.target.as_deref().map(text)),
        ("pipe_crown", length(one.pipe_crown)),
        ("ground", Some(Written::table([(kind, Some(of_kind))]))),
    ])
}

fn layer(one: &SoilLayer) -> Written {
    Written::table([("top", length(one.top)), ("class", word(one.class))])
}

fn structure(one: &Structure) -> Written {
    Written::table([
        ("id", Some(text(&one.id))),
        ("points", Some(points(&one.points))),
        ("bottom", length(one.bottom)),
    ])
}

fn utility(one: &Utility) -> Written {
    Written::table([
        ("id", Some(text(&one.id))),
        ("kind", word(one.kind)),
        ("points", Some(points(&one.points))),
        ("outside", unless_zero(one.outside)),
        ("zone", length(one.zone)),
        ("marked", word(one.marked)),
        ("call", Written::note(&one.call)),
    ])
}

fn overhead(one: &OverheadLine) -> Written {
    Written::table([
        ("id", Some(text(&one.id))),
        ("points", Some(points(&one.points))),
        ("height", length(one.height)),
        ("kilovolts", number(one.kilovolts)),
        ("kilovolts_at_most", number(one.kilovolts_at_most)),
        ("clearance", length(one.clearance)),
        ("call", Written::note(&one.call)),
    ])
}

fn pile(one: &Pile) -> Written {
    Written::table([
        ("id", Some(text(&one.id))),
        ("at", Some(point(one.at))),
        ("across", length(one.across)),
        ("note", Written::note(&one.note)),
    ])
}

fn ticket(one: &Ticket) -> Written {
    Written::table([
        ("id", Some(text(&one.id))),
        ("from", Some(text(&one.from))),
        ("to", Some(text(&one.to))),
        ("area", Some(points(&one.area))),
        (
            "asks",
            Written::some(one.asks.iter().filter_map(word).collect()),
        ),
    ])
}
