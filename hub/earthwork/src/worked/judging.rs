//! Worked examples of judging: verdicts, guard bands, chances, and what the operator is told.

use super::inputs::{Inputs, bad};
use super::{Outputs, Quantity, WorkedError, outputs, refused, word, yes};
use crate::correction::{self, Ground};
use crate::length::Length;
use crate::pace;
use crate::tolerance::{self, Tolerance};
use crate::uncertainty::{self, Doubts};
use crate::words::{Language, ScreenUnit, call_text};

/// The verdict on differences, or on elevations against a target.
pub(super) fn verdict(inputs: &mut Inputs) -> Outputs {
    let tolerance = tolerance_of(inputs)?;
    let guard = inputs.length_or("guard", Length::ZERO)?;
    let differences = if inputs.optional_text("target").is_some() {
        let target = inputs.length("target")?;
        let elevations = inputs.lengths("elevations")?;
        elevations
            .into_iter()
            .map(|elevation| elevation - target)
            .collect()
    } else {
        inputs.lengths("differences")?
    };
    Ok(outputs([
        (
            "verdict",
            word(tolerance::verdict(&differences, tolerance, guard)),
        ),
        ("provable", yes(tolerance::can_be_proven(tolerance, guard))),
    ]))
}

fn tolerance_of(inputs: &mut Inputs) -> Result<Tolerance, WorkedError> {
    Tolerance::new(inputs.length("high")?, inputs.length("low")?).map_err(refused)
}

fn doubts(inputs: &mut Inputs) -> Result<Doubts, WorkedError> {
    Ok(Doubts {
        benchmark: inputs.length("benchmark_doubt")?,
        reading: inputs.name("reading")?,
        coarse_text: inputs.yes("coarse_text")?,
        surface: inputs.name("surface")?,
        laser_per_100_ft: inputs.length("laser_per_100_ft")?,
        backsight_distance: inputs.length("backsight_distance")?,
        foresight_distance: inputs.length("foresight_distance")?,
        shots: inputs.count("shots")?,
        own_reading: None,
    })
}

/// The standard uncertainty of a shot, in feet, and its guard band.
pub(super) fn guard_band(inputs: &mut Inputs) -> Outputs {
    let doubts = doubts(inputs)?;
    let guard = uncertainty::guard(&doubts, inputs.number("k")?);
    Ok(outputs([
        (
            "uncertainty_ft",
            Quantity::Number(uncertainty::standard_uncertainty(&doubts)),
        ),
        ("guard", Quantity::Length(guard)),
    ]))
}

/// How near the laser must stand for a tolerance to be provable.
pub(super) fn furthest_provable(inputs: &mut Inputs) -> Outputs {
    let (doubts, tolerance) = (doubts(inputs)?, tolerance_of(inputs)?);
    let furthest = tolerance::furthest_provable(&doubts, tolerance, inputs.number("k")?)
        .ok_or_else(|| {
            refused("No distance makes this tolerance provable. Read finer, or on trimmed ground.")
        })?;
    Ok(outputs([("furthest", Quantity::Length(furthest))]))
}

/// The chance that the true value lies between limits.
pub(super) fn chance(inputs: &mut Inputs) -> Outputs {
    let (low, high) = (
        inputs.optional_number("low")?,
        inputs.optional_number("high")?,
    );
    let (value, deviation) = (inputs.number("value")?, inputs.number("uncertainty")?);
    if deviation <= 0.0 {
        return Err(bad(
            "uncertainty",
            inputs.text("uncertainty")?,
            "it must be above zero.",
        ));
    }
    let chance = uncertainty::chance_between(low, high, value, deviation);
    Ok(outputs([("chance", Quantity::Number(chance))]))
}

/// What the operator is told; with a tolerance rounded so that obeying stays in it.
pub(super) fn correction(inputs: &mut Inputs) -> Outputs {
    let difference = inputs.length("difference")?;
    let aim = inputs.length_or("aim", Length::ZERO)?;
    let ground = Ground {
        dev: difference,
        aim,
        tolerance: match inputs.optional_text("high").or(inputs.optional_text("low")) {
            Some(_) => Some(tolerance_of(inputs)?),
            None => None,
        },
    };
    let told = correction::correction(
        &ground,
        inputs.name("verdict")?,
        inputs.yes("settled_high")?,
    );
    let line = |language, unit| Quantity::Word(call_text(&told, &ground, language, unit).line);
    Ok(outputs([
        ("english", line(Language::English, ScreenUnit::Tenths)),
        ("spanish", line(Language::Spanish, ScreenUnit::Tenths)),
        ("inches", line(Language::English, ScreenUnit::FeetInches)),
        (
            "millimetres",
            line(Language::English, ScreenUnit::Millimetres),
        ),
    ]))
}

/// How long a call lasts.
pub(super) fn stale_after(inputs: &mut Inputs) -> Outputs {
    let milliseconds =
        pace::stale_after_ms(inputs.length("amount")?, inputs.number("feet_per_minute")?);
    Ok(outputs([(
        "minutes",
        Quantity::Number(milliseconds as f64 / 60_000.0),
    )]))
}
