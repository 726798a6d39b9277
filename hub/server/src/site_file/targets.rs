//! Targets: a reference surface less its named layers, and one shape.

use day::site::Target;
use earthwork::target::{self, Layer, Run, Shape, Stack, Step};
use earthwork::tolerance::Tolerance;

use super::fields::Fields;
use super::notes::Notes;

/// The shapes that a target may have, as they are written.
const SHAPES: [&str; 3] = ["flat", "run", "plane"];

/// Allowed high and allowed low.
pub(super) fn tolerance(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Tolerance> {
    let (high, low) = (fields.length(notes, "high"), fields.length(notes, "low"));
    fields.done(notes);
    match Tolerance::new(high?, low?) {
        Ok(tolerance) => Some(tolerance),
        Err(error) => {
            notes.wrong_at(fields.at("high"), error.to_string());
            None
        }
    }
}

pub(super) fn target(
    notes: &mut Notes,
    fields: &Fields<'_, '_>,
    usual: Option<Tolerance>,
) -> Option<Target> {
    let id = fields.text(notes, "id");
    let name = fields.text(notes, "name");
    let surface = surface(notes, fields);
    let layers = fields.each(notes, "layers", "layers", layer);
    let within = if fields.has("within") {
        fields.points(notes, "within").map(Some)
    } else {
        Some(None)
    };
    let tolerance = match fields.table(notes, "tolerance") {
        Some(own) => tolerance(notes, &own),
        None if fields.has("tolerance") => None,
        None => {
            if usual.is_none() {
                notes.wrong_at(
                    fields.at("id"),
                    "This target has no tolerance, and the site has no default. Add tolerance = { high = \"0.10 ft\", low = \"0.20 ft\" } or a [tolerance] table.".to_owned(),
                );
            }
            usual
        }
    };
    let guard_factor = fields.number_or(notes, "guard_factor", 1.0);
    let shape = shape(notes, fields);
    Some(Target {
        id: id?,
        name: name?,
        grade: target::Target {
            shape: shape?,
            stack: Stack {
                surface: surface?,
                layers,
            },
            within: within?,
            undercuts: vec![],
        },
        tolerance: tolerance?,
        guard_factor: guard_factor?,
        revision: 1,
    })
}

fn surface(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<String> {
    if fields.has("surface") {
        return fields.text(notes, "surface");
    }
    notes.wrong_at(
        fields.at("id"),
        "Say which surface this target's elevation is of: surface = \"top of footing\". A bare number could be any of them.".to_owned(),
    );
    None
}

fn layer(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Layer> {
    let name = fields.text(notes, "name");
    let thickness = fields.length(notes, "thickness");
    Some(Layer {
        name: name?,
        thickness: thickness?,
    })
}

fn shape(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Shape> {
    let given: Vec<&str> = SHAPES
        .into_iter()
        .filter(|shape| fields.has(shape))
        .collect();
    let [shape] = given.as_slice() else {
        notes.wrong_at(
            fields.at(given.last().unwrap_or(&"id")),
            "Give a target exactly one shape: flat, run or plane.".to_owned(),
        );
        return None;
    };
    let inner = fields.table(notes, shape)?;
    let shape = match *shape {
        "flat" => inner
            .length(notes, "elevation")
            .map(|elevation| Shape::Flat { elevation }),
        "run" => run(notes, &inner).map(Shape::Run),
        _ => plane(notes, &inner),
    };
    inner.done(notes);
    shape
}

fn plane(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Shape> {
    let through = fields.point(notes, "through");
    let elevation = fields.length(notes, "elevation");
    let rise_east = fields.read(notes, "rise_east", rise);
    let rise_north = fields.read(notes, "rise_north", rise);
    Some(Shape::Plane {
        through: through?,
        elevation: elevation?,
        rise_east: rise_east?,
        rise_north: rise_north?,
    })
}

/// A rise as a share: `2 %` or `0.02`.
fn rise(text: &str) -> Result<f64, String> {
    let (number, share) = match text.trim().strip_suffix('%') {
        Some(percent) => (percent.trim(), 0.01),
        None => (text.trim(), 1.0),
    };
    match number.parse::<f64>() {
        Ok(rise) if (rise * share).abs() <= 1.0 => Ok(rise * share),
        Ok(_) => Err(format!(
            "“{text}” is steeper than one to one. Write a fall of two feet in a hundred as \"-2 %\"."
        )),
        Err(_) => Err(format!(
            "“{text}” is not a rise. Write \"2 %\" or \"-1.5 %\"."
        )),
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
        notes.wrong_at(
            fields.at("steps"),
            "A run needs at least one step: steps = [{ from = \"0 ft\", elevation = \"99.50 ft\", window = \"0 ft\" }].".to_owned(),
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
    let from = fields.length(notes, "from");
    let elevation = fields.length(notes, "elevation");
    let window = fields.length_or(notes, "window", earthwork::length::Length::ZERO);
    Some(Step {
        from: from?,
        elevation: elevation?,
        window: window?,
    })
}
