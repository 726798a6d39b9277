//! Worked examples of proving: check intervals, readings in doubt, repeats, and how much a few places say.

use super::inputs::Inputs;
use super::{Outputs, Quantity, outputs, refused, word};
use crate::laser::check_due::{self, CheckCosts};
use crate::laser::drift::Drift;
use crate::laser::suspect::{Doubted, Window, rejudge};
use crate::laser::{coverage, plane, repeats};
use crate::tolerance::Tolerance;

/// The interval between checks that costs least.
pub(super) fn check_interval(inputs: &mut Inputs) -> Outputs {
    let interval = check_due::interval_ms(&CheckCosts {
        check: inputs.number("check_cost")?,
        undetected_hour: inputs.number("undetected_hour_cost")?,
        disturbed_per_hour: inputs.number("disturbed_per_hour")?,
    })
    .map_err(refused)?;
    Ok(outputs([(
        "minutes",
        Quantity::Number(interval as f64 / 60_000.0),
    )]))
}

/// A reading between a good and a failed check; times are minutes after the good one.
pub(super) fn doubted_reading(inputs: &mut Inputs) -> Outputs {
    let window = Window {
        good_at: 0,
        failed_at: Some(i64::from(inputs.count("failed_after_min")?)),
        residual: inputs.length("residual")?,
    };
    let rejudged = rejudge(
        &window,
        &Doubted {
            at: i64::from(inputs.count("read_after_min")?),
            difference: inputs.length("difference")?,
            tolerance: Tolerance::new(inputs.length("high")?, inputs.length("low")?)
                .map_err(refused)?,
            guard: inputs.size("guard")?,
        },
    )
    .map_err(refused)?;
    Ok(outputs([
        ("fate", word(rejudged.fate)),
        ("unmoved", word(rejudged.unmoved)),
        ("jumped", word(rejudged.jumped)),
        ("crept", word(rejudged.crept)),
        (
            "difference_if_jumped",
            Quantity::Length(rejudged.difference_if_jumped),
        ),
    ]))
}

/// The doubt of one shot from blind pairs.
pub(super) fn blind_repeats(inputs: &mut Inputs) -> Outputs {
    let doubt = repeats::reading_doubt_ft(&inputs.lengths("differences")?)
        .ok_or_else(|| refused("Fewer than 6 pairs say too little. Give at least 6."))?;
    Ok(outputs([("doubt_ft", Quantity::Number(doubt))]))
}

/// How many places, all found in, say so much.
pub(super) fn places_to_say(inputs: &mut Inputs) -> Outputs {
    let places = coverage::places_to_say(inputs.number("confidence")?, inputs.number("share")?)
        .ok_or_else(|| {
            refused("Confidence and share lie between 0 and 1, without the ends: nothing proves all of it.")
        })?;
    Ok(outputs([("places", Quantity::Number(f64::from(places)))]))
}

/// The two sums of what repeats and checks miss by, and what they say.
pub(super) fn drift(inputs: &mut Inputs) -> Outputs {
    let doubt_ft = inputs.above_zero("doubt_ft")?;
    let mut drift = Drift::default();
    for residual in inputs.lengths("residuals")? {
        drift = drift.after(residual, doubt_ft).map_err(refused)?;
    }
    Ok(outputs([
        ("up", Quantity::Number(drift.up)),
        ("down", Quantity::Number(drift.down)),
        ("says", word(drift.says())),
    ]))
}

/// How far a turned axis puts a sloped plane off.
pub(super) fn turned_axis(inputs: &mut Inputs) -> Outputs {
    let off = plane::turned_axis(
        inputs.size("distance")?,
        inputs.number("grade")?,
        inputs.number("degrees")?,
    );
    Ok(outputs([("off", Quantity::Length(off))]))
}
