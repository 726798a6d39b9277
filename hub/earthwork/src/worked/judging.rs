//! Worked examples of judging: verdicts, guard bands, chances, and what the operator is told.

use super::inputs::{Inputs, bad};
use super::{Outputs, Quantity, WorkedError, outputs, refused, word, yes};
use crate::correction::{self, Ground};
use crate::figure::Figure;
use crate::length::Length;
use crate::pace;
use crate::tolerance::{self, Tolerance, Verdict};
use crate::uncertainty::{self, Doubts};
use crate::words::{ScreenUnit, call_text};
use words::Language;

/// The verdict on differences, or on elevations against a target.
pub(super) fn verdict(inputs: &mut Inputs) -> Outputs {
    let tolerance = tolerance_of(inputs)?;
    let guard = inputs.size_or("guard", Length::ZERO)?;
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
    Doubts {
        benchmark: inputs.length("benchmark_doubt")?,
        reading: inputs.name("reading")?,
        coarse_text: inputs.yes("coarse_text")?,
        surface: inputs.name("surface")?,
        laser_per_100_ft: inputs.length("laser_per_100_ft")?,
        backsight_distance: inputs.length("backsight_distance")?,
        foresight_distance: inputs.length("foresight_distance")?,
        shots: inputs.count("shots")?,
        own_reading: None,
    }
    .checked()
    .map_err(refused)
}

/// The standard uncertainty of a shot, in feet, and its guard band.
pub(super) fn guard_band(inputs: &mut Inputs) -> Outputs {
    let doubts = doubts(inputs)?;
    let guard = uncertainty::guard(&doubts, inputs.figure("k", Figure::GuardFactor)?);
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
    let furthest =
        tolerance::furthest_provable(&doubts, tolerance, inputs.figure("k", Figure::GuardFactor)?)
            .ok_or_else(|| {
                refused(
                    "No distance makes this tolerance provable. Read finer, or on trimmed ground.",
                )
            })?;
    Ok(outputs([("furthest", Quantity::Length(furthest))]))
}

/// The chance that the true value lies between limits.
pub(super) fn chance(inputs: &mut Inputs) -> Outputs {
    let (low, high) = (
        inputs.optional_number("low")?,
        inputs.optional_number("high")?,
    );
    let (value, deviation) = (inputs.number("value")?, inputs.above_zero("uncertainty")?);
    if let (Some(low), Some(high)) = (low, high)
        && low > high
    {
        let why = "it lies above “high”. Look which is which.";
        return Err(bad("low", inputs.text("low")?, why));
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
    let verdict = inputs.name("verdict")?;
    // HIGH is above what is allowed and LOW below it, whatever that is.
    let turned = match verdict {
        Verdict::High => difference < Length::ZERO,
        Verdict::Low => difference > Length::ZERO,
        Verdict::On | Verdict::TooCloseHigh | Verdict::TooCloseLow => false,
    };
    if turned {
        let why = "it lies on the other side of the target than the verdict. Look at its sign.";
        return Err(bad("difference", inputs.text("difference")?, why));
    }
    let told = correction::correction(&ground, verdict, inputs.yes("settled_high")?);
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
    let milliseconds = pace::stale_after_ms(
        inputs.length("amount")?,
        inputs.above_zero("feet_per_minute")?,
    );
    Ok(outputs([(
        "minutes",
        Quantity::Number(milliseconds as f64 / 60_000.0),
    )]))
}
