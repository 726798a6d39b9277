//! The shapes that a target may have: level, planes, runs, trenches, faces, surfaces of triangles from files.

use day::site::Frame;
use earthwork::alignment::{Piece, Turn};
use earthwork::grade::{Corner, Face, Fold, Invert, Plane};
use earthwork::length::Length;
use earthwork::site_frame::PlanUnit;
use earthwork::target::{
    Along, Axis, CutFace, KeptNet, Layer, Net, PipeTrench, ProfileStep, Run, Shape, Step,
};
use words::Text;

use super::fields::Fields;
use super::marks::station;
use super::notes::Notes;
use crate::import::{self, Survey};

/// The shapes that a target may have, as they are written.
const SHAPES: [&str; 10] = [
    "flat",
    "plane",
    "fold",
    "run",
    "along",
    "trench",
    "face",
    "triangles",
    "strip",
    "contour",
];
/// A fall below this is odd when the site file does not say (common practice for small pipes).
const USUAL_LEAST_FALL: f64 = 0.01;
/// How far off level a contour may be walked when the site file does not say (common practice).
const USUAL_BAND: Length = Length::from_hundredths_of_a_foot(3);

/// The files beside the site file, and how their coordinates come on to the site.
pub(super) struct Files<'a> {
    /// The text of a file by its name.
    pub(super) beside: &'a dyn Fn(&str) -> Result<String, String>,
    /// The triangles that a target of this name has already.
    pub(super) kept: &'a dyn Fn(&str) -> Option<KeptNet>,
    /// The site's frame.
    pub(super) frame: Option<&'a Frame>,
}

/// The shape of a target; what lies under a pipe or is stripped goes on to the layers.
pub(super) fn shape(
    notes: &mut Notes,
    fields: &Fields<'_, '_>,
    files: &Files<'_>,
    layers: &mut Vec<Layer>,
) -> Option<Shape> {
    let given: Vec<&str> = SHAPES
        .into_iter()
        .filter(|shape| fields.has(shape))
        .collect();
    let [shape] = given.as_slice() else {
        let said = words::site_file::give_target_exactly_one_shape(&SHAPES.join(", "));
        match given.last() {
            Some(one_too_many) => notes.said_at(fields.at(one_too_many), said),
            None => notes.missing_at(fields.start(), "shape", said),
        }
        return None;
    };
    let inner = fields.table(notes, shape)?;
    let shape = match *shape {
        "flat" => inner
            .length(notes, "elevation")
            .map(|elevation| Shape::Flat { elevation }),
        "run" => run(notes, &inner).map(Shape::Run),
        "plane" => plane(notes, &inner).map(|plane| Shape::Plane {
            through: plane.through,
            elevation: plane.elevation,
            rise_east: plane.rise_east,
            rise_north: plane.rise_north,
        }),
        "fold" => fold(notes, &inner),
        "along" => along(notes, &inner),
        "trench" => trench(notes, &inner, layers),
        "face" => face(notes, &inner),
        "contour" => contour(notes, &inner),
        "strip" => strip(notes, &inner, files, layers),
        _ => net(notes, &inner, files).map(Shape::Surface),
    };
    inner.done(notes);
    shape
}

fn plane(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Plane> {
    let through = fields.point(notes, "through");
    let elevation = fields.length(notes, "elevation");
    let rise_east = fields.read(notes, "rise_east", rise);
    let rise_north = fields.read(notes, "rise_north", rise);
    Some(Plane {
        through: through?,
        elevation: elevation?,
        rise_east: rise_east?,
        rise_north: rise_north?,
    })
}

/// A rise as a share: `2 %` or `0.02`.
fn rise(text: &str) -> Result<f64, Text> {
    let (number, share) = match text.trim().strip_suffix('%') {
        Some(percent) => (percent.trim(), 0.01),
        None => (text.trim(), 1.0),
    };
    match number.parse::<f64>() {
        Ok(rise) if (rise * share).abs() <= 1.0 => Ok(rise * share),
        Ok(_) => Err(words::site_file::steeper_than_one_one(&text)),
        Err(_) => Err(words::site_file::is_not_a_rise(&text)),
    }
}

fn run(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Run> {
    let start = fields.point(notes, "start");
    let toward = fields.point(notes, "toward");
    let length = fields.length(notes, "length");
    let left = fields.length(notes, "left");
    let right = fields.length(notes, "right");
    let steps = fields.each(notes, "steps", "steps", step);
    if steps.is_empty() {
        notes.said_at(
            fields.at("steps"),
            words::site_file::run_needs_least_one_step(),
        );
    }
    Some(Run {
        start: start?,
        toward: toward?,
        length: length?,
        left: left?,
        right: right?,
        steps,
    })
}

fn step(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Step> {
    let from = fields.read(notes, "from", station);
    let elevation = fields.length(notes, "elevation");
    let window = fields.length_or(notes, "window", Length::ZERO);
    Some(Step {
        from: from?,
        elevation: elevation?,
        window: window?,
    })
}

/// A whole number out of a plain one; what is none becomes 0.
pub(super) fn count(number: f64) -> u32 {
    format!("{number:.0}").parse().unwrap_or(0)
}

fn fold(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Shape> {
    let fold: Option<Fold> = fields.word(notes, "kind");
    let planes = fields.each(notes, "planes", "planes", plane);
    Some(Shape::Fold {
        fold: fold?,
        planes,
    })
}

/// A line on the plan: `start`, `first` and its `pieces`.
fn axis(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Axis> {
    let start = fields.point(notes, "start");
    let first = if fields.has("first") {
        fields.read(notes, "first", station)
    } else {
        Some(Length::ZERO)
    };
    let pieces = fields.each(notes, "pieces", "pieces", piece);
    Some(Axis {
        start: start?,
        first: first?,
        pieces,
    })
}

fn piece(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Piece> {
    let to = fields.point(notes, "to");
    if !fields.has("centre") {
        return Some(Piece::Line { to: to? });
    }
    let centre = fields.point(notes, "centre");
    let turn: Option<Turn> = fields.word(notes, "turn");
    Some(Piece::Arc {
        centre: centre?,
        to: to?,
        turn: turn?,
    })
}

fn corner(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Corner> {
    let at = fields.read(notes, "station", station);
    let elevation = fields.length(notes, "elevation");
    let curve = fields.length_or(notes, "curve", Length::ZERO);
    Some(Corner {
        station: at?,
        elevation: elevation?,
        curve: curve?,
    })
}

fn along(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Shape> {
    let axis = axis(notes, fields);
    let left = fields.length(notes, "left");
    let right = fields.length(notes, "right");
    let corners = fields.each(notes, "profile", "profile", corner);
    let steps = fields.each(notes, "steps", "steps", |notes, fields| {
        let at = fields.read(notes, "station", station);
        let by = fields.length(notes, "by");
        let window = fields.length_or(notes, "window", Length::ZERO);
        Some(ProfileStep {
            station: at?,
            by: by?,
            window: window?,
        })
    });
    let along = Along {
        axis: axis?,
        left: left?,
        right: right?,
        corners,
        steps,
    };
    Some(Shape::Along(along.into()))
}

fn trench(notes: &mut Notes, fields: &Fields<'_, '_>, layers: &mut Vec<Layer>) -> Option<Shape> {
    let axis = axis(notes, fields);
    let inverts = fields.each(notes, "inverts", "inverts", |notes, fields| {
        let at = fields.read(notes, "station", station);
        let elevation = fields.length(notes, "elevation");
        Some(Invert {
            station: at?,
            elevation: elevation?,
        })
    });
    let flow = fields.word(notes, "flow");
    let outside_diameter = fields.length(notes, "outside_diameter");
    let side = fields.length(notes, "side");
    for (key, name) in [("wall", "pipe wall"), ("bedding", "bedding")] {
        let thickness = fields.length_or(notes, key, Length::ZERO)?;
        if thickness != Length::ZERO {
            layers.push(Layer {
                name: name.to_owned(),
                thickness,
            });
        }
    }
    let least_fall = if fields.has("least_fall") {
        fields.read(notes, "least_fall", rise)
    } else {
        Some(USUAL_LEAST_FALL)
    };
    let trench = PipeTrench {
        axis: axis?,
        inverts,
        flow: flow?,
        outside_diameter: outside_diameter?,
        side: side?,
        least_fall: least_fall?,
    };
    Some(Shape::Trench(trench.into()))
}

fn face(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Shape> {
    let axis = axis(notes, fields);
    let rises = fields.word(notes, "rises");
    let corners = fields.each(notes, "toe", "toe", corner);
    let faces = fields.each(notes, "faces", "faces", |notes, fields| {
        let rise = fields.length_or(notes, "rise", Length::ZERO);
        let run = fields.length_or(notes, "run", Length::ZERO);
        Some(Face {
            rise: rise?,
            run: run?,
        })
    });
    let face = CutFace {
        axis: axis?,
        rises: rises?,
        corners,
        faces,
    };
    Some(Shape::Face(face.into()))
}

fn contour(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Shape> {
    let elevation = fields.length(notes, "elevation");
    let band = fields.length_or(notes, "band", USUAL_BAND);
    Some(Shape::Contour {
        elevation: elevation?,
        band: band?,
    })
}

fn strip(
    notes: &mut Notes,
    fields: &Fields<'_, '_>,
    files: &Files<'_>,
    layers: &mut Vec<Layer>,
) -> Option<Shape> {
    let thickness = fields.length(notes, "thickness");
    let ground = net(notes, fields, files);
    let thickness = thickness?;
    if thickness != Length::ZERO {
        layers.push(Layer {
            name: "strip".to_owned(),
            thickness,
        });
    }
    Some(Shape::Strip { ground: ground? })
}

/// The triangles that a target has already: a draft need not bring their file again.
fn kept(notes: &mut Notes, fields: &Fields<'_, '_>, files: &Files<'_>) -> Option<KeptNet> {
    let target = fields.text(notes, "kept")?;
    let net = (files.kept)(&target);
    if net.is_none() {
        notes.said_at(
            fields.at("kept"),
            words::site_file::has_no_triangles_to_keep(&target),
        );
    }
    net
}

/// Triangles from a table of points or from `LandXML`; every fault stands with its own file's line.
fn net(notes: &mut Notes, fields: &Fields<'_, '_>, files: &Files<'_>) -> Option<KeptNet> {
    if fields.has("kept") {
        return kept(notes, fields, files);
    }
    let file = fields.text(notes, "file");
    let source = fields.has("source").then(|| fields.text(notes, "source"));
    let unit: Option<PlanUnit> = if fields.has("unit") {
        fields.word(notes, "unit")
    } else {
        Some(files.frame.map_or(PlanUnit::Foot, |frame| frame.unit))
    };
    let name = fields.has("name").then(|| fields.text(notes, "name"));
    let on_plan = fields.flag(notes, "on_plan");
    let (file, unit) = (file?, unit?);
    let frame = match (on_plan, files.frame) {
        (false, _) => import::Frame::new(unit),
        (true, None) => {
            notes.said_at(
                fields.at("on_plan"),
                words::site_file::file_coordinates_are_plan_but(),
            );
            return None;
        }
        (true, Some(frame)) => {
            let made = frame.made().and_then(|made| Ok((made, frame.origin()?)));
            let (made, origin) = made
                .map_err(|error| notes.wrong_at(fields.at("on_plan"), error.to_string()))
                .ok()?;
            import::Frame::on(made, unit, origin)
        }
    };
    let text = (files.beside)(&file)
        .map_err(|why| {
            notes.said_at(
                fields.at("file"),
                words::site_file::cant_be_read(&file, &why),
            );
        })
        .ok()?;
    let survey = import::read(&text, name.flatten().as_deref());
    if let Ok(Survey { several, .. }) = &survey
        && !several.is_empty()
    {
        let names = several.join(", ");
        notes.said_at(
            fields.at("file"),
            words::site_file::has_several_surfaces(&file, &names, &several[0]),
        );
        return None;
    }
    let read = survey.and_then(|survey| {
        let surface = import::onto_site(&survey, &frame).and_then(|on| on.surface(&survey));
        surface.map_err(|fault| vec![fault])
    });
    match read {
        Ok(surface) => {
            let source = source.flatten().unwrap_or_else(|| file.clone());
            Some(KeptNet::made_already(Net::of(&surface, &source), surface))
        }
        Err(faults) => {
            for fault in faults {
                notes.wrong_in(file.clone(), fault.line, &fault.message);
            }
            None
        }
    }
}
