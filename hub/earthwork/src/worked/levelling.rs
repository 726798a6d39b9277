//! Worked examples of levelling: set-ups, lines, checks, and the level's own truth.

use super::inputs::Inputs;
use super::{Outputs, Quantity, outputs, refused, word, yes};
use crate::earth_and_air;
use crate::length::Length;
use crate::level::{self, CheckLimits, SecondLevelling};
use crate::level_line::{self, LevelLine, Turn};
use crate::two_peg::{self, Pegs};

/// Benchmark, backsight and foresight: height of instrument and elevation.
pub(super) fn rod_to_elevation(inputs: &mut Inputs) -> Outputs {
    let hi = level::height_of_instrument(inputs.length("benchmark")?, inputs.length("backsight")?);
    let elevation = level::elevation(hi, inputs.length("foresight")?);
    Ok(outputs([
        ("hi", Quantity::Length(hi)),
        ("elevation", Quantity::Length(elevation)),
    ]))
}

/// The same against a target: the grade rod and the difference too.
pub(super) fn dig_check(inputs: &mut Inputs) -> Outputs {
    let hi = level::height_of_instrument(inputs.length("benchmark")?, inputs.length("backsight")?);
    let elevation = level::elevation(hi, inputs.length("foresight")?);
    let target = inputs.length("target")?;
    Ok(outputs([
        ("hi", Quantity::Length(hi)),
        ("elevation", Quantity::Length(elevation)),
        ("grade_rod", Quantity::Length(level::grade_rod(hi, target))),
        ("difference", Quantity::Length(elevation - target)),
    ]))
}

/// A check shot: by how much it misses and what that says.
pub(super) fn check_shot(inputs: &mut Inputs) -> Outputs {
    let residual = level::check_residual(
        inputs.length("hi")?,
        inputs.length("foresight")?,
        inputs.length("benchmark")?,
    );
    let limits = limits(inputs)?;
    Ok(outputs([
        ("residual", Quantity::Length(residual)),
        ("check", word(level::judge_check(residual, limits))),
    ]))
}

fn limits(inputs: &mut Inputs) -> Result<CheckLimits, super::WorkedError> {
    let usual = CheckLimits::default();
    let limits = CheckLimits {
        good: inputs.size_or("good", usual.good)?,
        warn: inputs.size_or("warn", usual.warn)?,
    };
    if limits.warn < limits.good {
        return Err(refused(
            "“warn” is less than “good”. What warns lies beyond what is good.",
        ));
    }
    Ok(limits)
}

/// One benchmark levelled twice.
pub(super) fn second_levelling(inputs: &mut Inputs) -> Outputs {
    let levelled = level::second_levelling(&SecondLevelling {
        benchmark: inputs.length("benchmark")?,
        backsight: inputs.length("backsight")?,
        point: inputs.length("point")?,
        backsight_again: inputs.length("backsight_again")?,
        point_again: inputs.length("point_again")?,
        limits: limits(inputs)?,
    })
    .map_err(refused)?;
    Ok(outputs([
        ("hi", Quantity::Length(levelled.height)),
        ("disagreement", Quantity::Length(levelled.disagreement)),
    ]))
}

/// A line of levels. With `end` its misclosure, and with `allowed` whether it closes and the adjusted elevations.
pub(super) fn level_line(inputs: &mut Inputs) -> Outputs {
    let turns: Vec<Turn> = inputs
        .pairs("backsights", "foresights")?
        .into_iter()
        .map(|(backsight, foresight)| Turn {
            backsight,
            foresight,
        })
        .collect();
    let line = LevelLine::run(inputs.length("start")?, &turns).map_err(refused)?;
    let mut all = outputs([
        ("sum_backsights", Quantity::Length(line.backsights)),
        ("sum_foresights", Quantity::Length(line.foresights)),
        ("rise", Quantity::Length(line.rise())),
        ("heights", Quantity::Lengths(line.heights.clone())),
        ("elevations", Quantity::Lengths(line.elevations.clone())),
    ]);
    if inputs.optional_text("end").is_none() {
        return Ok(all);
    }
    let end = inputs.length("end")?;
    all.insert("misclosure".into(), Quantity::Length(line.misclosure(end)));
    if inputs.optional_text("allowed").is_some() {
        let adjusted = line.adjusted(end, inputs.size("allowed")?);
        all.insert("closes".into(), yes(adjusted.is_ok()));
        if let Ok(adjusted) = adjusted {
            all.insert("adjusted".into(), Quantity::Lengths(adjusted));
        }
    }
    Ok(all)
}

/// What to add to points along a line that misses.
pub(super) fn adjust_by_distance(inputs: &mut Inputs) -> Outputs {
    let (misclosure, total) = (inputs.length("misclosure")?, inputs.length("total")?);
    let corrections =
        level_line::corrections_by_distance(misclosure, &inputs.lengths("distances")?, total)
            .map_err(refused)?;
    Ok(outputs([("corrections", Quantity::Lengths(corrections))]))
}

/// The closure allowed over a distance.
pub(super) fn closure_over_distance(inputs: &mut Inputs) -> Outputs {
    let allowed = level_line::allowed_over(
        inputs.size("rate")?,
        inputs.name("per")?,
        inputs.size("distance")?,
    );
    Ok(outputs([("allowed", Quantity::Length(allowed))]))
}

/// The closure allowed over a number of set-ups.
pub(super) fn closure_over_set_ups(inputs: &mut Inputs) -> Outputs {
    let allowed = level_line::allowed_for_set_ups(inputs.size("rate")?, inputs.count("set_ups")?);
    Ok(outputs([("allowed", Quantity::Length(allowed))]))
}

/// What earth and air add at a distance.
pub(super) fn curvature_and_refraction(inputs: &mut Inputs) -> Outputs {
    let added = earth_and_air::curvature_and_refraction(inputs.size("distance")?);
    Ok(outputs([("added", Quantity::Length(added))]))
}

/// What a leaning rod reads.
pub(super) fn leaning_rod(inputs: &mut Inputs) -> Outputs {
    let reads = earth_and_air::leaning_rod(inputs.size("upright")?, inputs.number("degrees")?)
        .ok_or_else(|| {
            refused("A rod that leans by 90 degrees or more does not stand. Give less.")
        })?;
    Ok(outputs([("reads", Quantity::Length(reads))]))
}

/// The two-peg test: from the middle, then with unlike sights.
pub(super) fn two_peg(inputs: &mut Inputs) -> Outputs {
    let middle = Pegs {
        a: inputs.length("middle_a")?,
        b: inputs.length("middle_b")?,
    };
    let far = Pegs {
        a: inputs.length("far_a")?,
        b: inputs.length("far_b")?,
    };
    let (distance_a, distance_b) = (inputs.length("distance_a")?, inputs.length("distance_b")?);
    let slant = two_peg::slant(
        middle.difference(),
        far.difference(),
        distance_a,
        distance_b,
    )
    .map_err(refused)?;
    Ok(outputs([
        ("true_difference", Quantity::Length(middle.difference())),
        ("slant", Quantity::Number(slant)),
        (
            "corrected_a",
            Quantity::Length(two_peg::corrected(far.a, slant, distance_a)),
        ),
        (
            "corrected_b",
            Quantity::Length(two_peg::corrected(far.b, slant, distance_b)),
        ),
    ]))
}

/// The slant from a true difference and one seen with unlike sights.
pub(super) fn slant_from_differences(inputs: &mut Inputs) -> Outputs {
    let slant = two_peg::slant(
        inputs.length("true_difference")?,
        inputs.length("seen_difference")?,
        inputs.length("distance_a")?,
        inputs.length("distance_b")?,
    )
    .map_err(refused)?;
    let at = inputs.size("at")?;
    Ok(outputs([
        ("slant", Quantity::Number(slant)),
        ("off", Quantity::Length(two_peg::over(slant, at))),
    ]))
}

/// A laser turned half round on its axis.
pub(super) fn half_turn(inputs: &mut Inputs) -> Outputs {
    let slant = two_peg::half_turn(
        inputs.length("first")?,
        inputs.length("turned")?,
        inputs.length("distance")?,
    )
    .map_err(refused)?;
    let hundred_feet = Length::from_hundredths_of_a_foot(10_000);
    Ok(outputs([
        ("slant", Quantity::Number(slant)),
        (
            "off_at_100_ft",
            Quantity::Length(two_peg::over(slant, hundred_feet)),
        ),
    ]))
}

/// A laser's stated error at one distance, as an angle and at another distance.
pub(super) fn laser_slant(inputs: &mut Inputs) -> Outputs {
    let distance = inputs.length("distance")?;
    if distance <= Length::ZERO {
        return Err(refused(
            "The distance of the stated error must be above zero.",
        ));
    }
    let slant = inputs.size("error")?.feet() / distance.feet();
    let at = inputs.size_or("at", distance)?;
    Ok(outputs([
        ("arc_seconds", Quantity::Number(two_peg::arc_seconds(slant))),
        ("off", Quantity::Length(two_peg::over(slant, at))),
    ]))
}
