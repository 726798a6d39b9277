//! Worked examples of lengths, places, rods and targets.

use super::inputs::{Inputs, bad};
use super::{Outputs, Quantity, WorkedError, outputs, refused, yes};
use crate::keep_out::{Reach, keep_out_radius, shown_radius, tail_swing_radius};
use crate::length::{Form, Length};
use crate::point::Point;
use crate::rod::Rod;
use crate::target::{DigTo, Layer, Run, Shape, Stack, Step, Target};

/// A length in another form: `ft 2`, `ft in 8`, `in 16`, `m 3` or `mm`.
pub(super) fn convert(inputs: &mut Inputs) -> Outputs {
    let length = inputs.length("length")?;
    let form = form(inputs.optional_text("to").unwrap_or("ft 4"))?;
    Ok(outputs([
        ("length", Quantity::Length(length)),
        ("shown", Quantity::Word(length.show(form))),
        ("feet", Quantity::Number(length.feet())),
        ("metres", Quantity::Number(length.metres())),
    ]))
}

fn form(text: &str) -> Result<Form, WorkedError> {
    let wrong = || bad("to", text, "write ft 2, ft in 8, in 16, m 3 or mm.");
    let words: Vec<&str> = text.split_whitespace().collect();
    let number = |text: &str| {
        text.parse::<u8>()
            .map_err(|_parse: std::num::ParseIntError| wrong())
    };
    Ok(match words.as_slice() {
        ["ft", places] => Form::DecimalFeet {
            places: number(places)?,
        },
        ["ft", "in", parts] => Form::FeetInches {
            parts: number(parts)?,
        },
        ["in", parts] => Form::Inches {
            parts: number(parts)?,
        },
        ["m", places] => Form::Metres {
            places: number(places)?,
        },
        ["mm"] => Form::Millimetres,
        _ => return Err(wrong()),
    })
}

/// How far apart two places are.
pub(super) fn distance(inputs: &mut Inputs) -> Outputs {
    let apart = inputs.point("from")?.distance(inputs.point("to")?);
    Ok(outputs([("distance", Quantity::Length(apart))]))
}

/// A reading as typed on a rod.
pub(super) fn rod_reading(inputs: &mut Inputs) -> Outputs {
    let rod = Rod {
        id: "A".into(),
        unit: inputs.name("marking")?,
        length: inputs.length("rod_length")?,
        joints: vec![],
        bracket: inputs.length_or("bracket", Length::ZERO)?,
    };
    let reading = rod.read(inputs.text("typed")?).map_err(refused)?;
    Ok(outputs([
        ("value", Quantity::Length(reading.value)),
        ("coarse", yes(reading.coarse)),
    ]))
}

pub(super) fn stack(inputs: &mut Inputs) -> Result<Stack, WorkedError> {
    let layers = if inputs.optional_text("layers").is_some() {
        inputs.lengths("layers")?
    } else {
        vec![]
    };
    Ok(Stack {
        surface: "surface".into(),
        layers: (1..)
            .zip(layers)
            .map(|(number, thickness)| Layer {
                name: format!("layer {number}"),
                thickness,
            })
            .collect(),
    })
}

pub(super) fn dig_to(shape: Shape, stack: Stack, at: Point) -> Outputs {
    let target = Target::new(shape, stack);
    if let Some(wrong) = target.check().into_iter().next() {
        return Err(refused(wrong));
    }
    Ok(match target.dig_to(at).map_err(refused)? {
        DigTo::At(elevation) => outputs([("dig_to", Quantity::Length(elevation))]),
        DigTo::NearStep {
            station,
            before,
            after,
        } => outputs([
            ("step", Quantity::Length(station)),
            ("before", Quantity::Length(before)),
            ("after", Quantity::Length(after)),
        ]),
    })
}

/// What to dig to on a plane; level when no rises are given.
pub(super) fn plane(inputs: &mut Inputs) -> Outputs {
    let shape = Shape::Plane {
        through: inputs.point("through")?,
        elevation: inputs.length("elevation")?,
        rise_east: inputs.optional_number("rise_east")?.unwrap_or(0.0),
        rise_north: inputs.optional_number("rise_north")?.unwrap_or(0.0),
    };
    let at = inputs.point("at")?;
    dig_to(shape, stack(inputs)?, at)
}

/// Station, offset and dig-to on a stepped run.
pub(super) fn run(inputs: &mut Inputs) -> Outputs {
    let (from, elevations) = (
        inputs.stations("step_stations")?,
        inputs.lengths("step_elevations")?,
    );
    let steps = inputs.together(("step_stations", from), ("step_elevations", elevations))?;
    let run = Run {
        start: inputs.point("start")?,
        toward: inputs.point("toward")?,
        length: inputs.length("length")?,
        left: inputs.length("left")?,
        right: inputs.length("right")?,
        steps: steps
            .into_iter()
            .map(|(from, elevation)| Step {
                from,
                elevation,
                window: Length::ZERO,
            })
            .collect(),
    };
    let at = inputs.point("at")?;
    let (station, offset) = run.station_offset(at);
    let mut all = dig_to(Shape::Run(run), stack(inputs)?, at)?;
    all.insert("station".into(), Quantity::Length(station));
    all.insert("offset".into(), Quantity::Length(offset));
    Ok(all)
}

/// How far to keep out of a machine's swing.
pub(super) fn keep_out(inputs: &mut Inputs) -> Outputs {
    let reach = Reach {
        reach_at_ground: inputs.length("reach_at_ground")?,
        tail_radius: inputs.length("tail_radius")?,
        track_width: inputs.length("track_width")?,
    }
    .checked()
    .map_err(refused)?;
    let radius = keep_out_radius(&reach);
    Ok(outputs([
        ("radius", Quantity::Length(radius)),
        (
            "shown_ft",
            Quantity::Number(f64::from(shown_radius(radius))),
        ),
        ("tail_swing", Quantity::Length(tail_swing_radius(&reach))),
    ]))
}
