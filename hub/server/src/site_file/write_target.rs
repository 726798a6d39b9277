//! Targets back into what is written: the stack, the tolerance, and one shape of its kind.

use day::site::Target;
use earthwork::alignment::Piece;
use earthwork::grade::Corner;
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::target::{self, Along, Axis, CutFace, KeptNet, PipeTrench, Run, Shape, Undercut};
use earthwork::tolerance::Tolerance;

use super::values::{Nets, length, number, point, points, text, unless_zero, word};
use super::written::Written;

/// A rise as a percentage where that is the same number, else as a share.
fn rise(share: impl Into<Option<f64>>) -> Option<Written> {
    share.into().map(|share| {
        let percent = (share * 1e8).round() / 1e6;
        let same = (percent * 0.01).to_bits() == share.to_bits();
        Written::Text(if same {
            format!("{percent} %")
        } else {
            share.to_string()
        })
    })
}

pub(super) fn target(one: &Target, nets: Nets<'_>) -> Written {
    let mut layers = one.grade.stack.layers.clone();
    let (name, shape) = shape(&one.id, &one.grade, nets);
    if let Shape::Strip { .. } = &one.grade.shape {
        // What is stripped is the last layer, and stands with the shape.
        layers.pop_if(|last| last.name == "strip");
    }
    let layers = layers.iter().map(|layer| {
        Written::table([
            ("name", Some(text(&layer.name))),
            ("thickness", length(layer.thickness)),
        ])
    });
    Written::table([
        ("id", Some(text(&one.id))),
        ("name", Some(text(&one.name))),
        ("surface", Some(text(&one.grade.stack.surface))),
        ("layers", Written::some(layers.collect())),
        ("within", one.grade.within.as_deref().map(points)),
        ("tolerance", Some(tolerance(one.tolerance))),
        ("guard_factor", number(one.guard_factor)),
        ("typed_by", one.typed_by.as_deref().map(text)),
        ("proved_by", one.proved_by.as_deref().map(text)),
        (
            "undercut",
            Written::some(one.grade.undercuts.iter().map(undercut).collect()),
        ),
        (name, Some(shape)),
    ])
}

fn undercut(one: &Undercut) -> Written {
    Written::table([
        ("name", Some(text(&one.name))),
        ("within", Some(points(&one.within))),
        ("depth", length(one.depth)),
        ("material", Some(text(&one.material))),
        ("lifts", Some(Written::Text(one.lifts.to_string()))),
    ])
}

fn plane(through: Point, elevation: Length, rises: (f64, f64)) -> Written {
    Written::table([
        ("through", Some(point(through))),
        ("elevation", length(elevation)),
        ("rise_east", rise(rises.0)),
        ("rise_north", rise(rises.1)),
    ])
}

/// A line's own entries, before those of what lies along it.
fn axis(axis: &Axis) -> [(&'static str, Option<Written>); 3] {
    let pieces = axis.pieces.iter().map(|piece| match piece {
        Piece::Line { to } => Written::table([("to", Some(point(*to)))]),
        Piece::Arc { centre, to, turn } => Written::table([
            ("to", Some(point(*to))),
            ("centre", Some(point(*centre))),
            ("turn", word(turn)),
        ]),
    });
    [
        ("start", Some(point(axis.start))),
        ("first", unless_zero(axis.first)),
        ("pieces", Written::some(pieces.collect())),
    ]
}

fn along_axis<const N: usize>(line: &Axis, more: [(&'static str, Option<Written>); N]) -> Written {
    Written::table(axis(line).into_iter().chain(more))
}

fn corners(corners: &[Corner]) -> Option<Written> {
    let each = corners.iter().map(|corner| {
        Written::table([
            ("station", length(corner.station)),
            ("elevation", length(corner.elevation)),
            ("curve", unless_zero(corner.curve)),
        ])
    });
    Written::some(each.collect())
}

pub(super) fn shape(id: &str, target: &target::Target, nets: Nets<'_>) -> (&'static str, Written) {
    let net = |net: &KeptNet| {
        nets(id, net)
            .into_iter()
            .map(|(key, value)| (key, Some(value)))
    };
    match &target.shape {
        Shape::Flat { elevation } => ("flat", Written::table([("elevation", length(*elevation))])),
        Shape::Plane {
            through,
            elevation,
            rise_east,
            rise_north,
        } => (
            "plane",
            plane(*through, *elevation, (*rise_east, *rise_north)),
        ),
        Shape::Fold { fold, planes } => {
            let each = planes
                .iter()
                .map(|one| plane(one.through, one.elevation, (one.rise_east, one.rise_north)));
            let entries = [
                ("kind", word(fold)),
                ("planes", Written::some(each.collect())),
            ];
            ("fold", Written::table(entries))
        }
        Shape::Run(run) => ("run", self::run(run)),
        Shape::Along(along) => ("along", self::along(along.drawn())),
        Shape::Trench(trench) => ("trench", self::trench(trench.drawn())),
        Shape::Face(face) => ("face", self::face(face.drawn())),
        Shape::Contour { elevation, band } => (
            "contour",
            Written::table([("elevation", length(*elevation)), ("band", length(*band))]),
        ),
        Shape::Surface(surface) => ("triangles", Written::table(net(surface))),
        Shape::Strip { ground } => {
            let last = target
                .stack
                .layers
                .last()
                .filter(|last| last.name == "strip");
            let thickness = last.map_or(Length::ZERO, |last| last.thickness);
            let entries = net(ground).chain([("thickness", length(thickness))]);
            ("strip", Written::table(entries))
        }
    }
}

fn run(run: &Run) -> Written {
    let steps = run.steps.iter().map(|step| {
        Written::table([
            ("from", length(step.from)),
            ("elevation", length(step.elevation)),
            ("window", unless_zero(step.window)),
        ])
    });
    Written::table([
        ("start", Some(point(run.start))),
        ("toward", Some(point(run.toward))),
        ("length", length(run.length)),
        ("left", length(run.left)),
        ("right", length(run.right)),
        ("steps", Written::some(steps.collect())),
    ])
}

fn along(along: &Along) -> Written {
    let steps = along.steps.iter().map(|step| {
        Written::table([
            ("station", length(step.station)),
            ("by", length(step.by)),
            ("window", unless_zero(step.window)),
        ])
    });
    let more = [
        ("left", length(along.left)),
        ("right", length(along.right)),
        ("profile", corners(&along.corners)),
        ("steps", Written::some(steps.collect())),
    ];
    along_axis(&along.axis, more)
}

fn trench(trench: &PipeTrench) -> Written {
    let inverts = trench.inverts.iter().map(|one| {
        Written::table([
            ("station", length(one.station)),
            ("elevation", length(one.elevation)),
        ])
    });
    let more = [
        ("inverts", Written::some(inverts.collect())),
        ("flow", word(trench.flow)),
        ("outside_diameter", length(trench.outside_diameter)),
        ("side", length(trench.side)),
        ("least_fall", rise(trench.least_fall)),
    ];
    along_axis(&trench.axis, more)
}

fn face(face: &CutFace) -> Written {
    let faces = face.faces.iter().map(|one| {
        Written::table([
            ("rise", unless_zero(one.rise)),
            ("run", unless_zero(one.run)),
        ])
    });
    let more = [
        ("rises", word(face.rises)),
        ("toe", corners(&face.corners)),
        ("faces", Written::some(faces.collect())),
    ];
    along_axis(&face.axis, more)
}

/// What is allowed high and low.
pub(super) fn tolerance(one: Tolerance) -> Written {
    Written::table([("high", length(one.high)), ("low", length(one.low))])
}
