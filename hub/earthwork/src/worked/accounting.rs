//! Worked examples of loads, gravel, soil tests, landings, aims, arrivals and costs.

use super::inputs::{Inputs, bad};
use super::{Outputs, Quantity, WorkedError, outputs, refused, word, yes};
use crate::amount::{CubicFeet, PoundsPerCubicFoot, PoundsPerSquareFoot, SquareFeet};
use crate::arrival::{self, Dug, Visit};
use crate::figure::Figure;
use crate::gravel::{self, Need};
use crate::haul::{self, Factors, Truck};
use crate::landing::aim::{self, AimCosts};
use crate::landing::{self, Landing};
use crate::length::Length;
use crate::soil::{bearing, density};
use crate::tolerance::Tolerance;

/// Swell and compacted factor from one soil's three weights, in pounds per cubic yard.
pub(super) fn soil_factors(inputs: &mut Inputs) -> Outputs {
    let weights = inputs.numbers("loose_bank_compacted_lb_cy")?;
    let [loose, bank, compacted] = weights.as_slice() else {
        let name = "loose_bank_compacted_lb_cy";
        return Err(bad(name, inputs.text(name)?, "give three weights."));
    };
    let pcf = |lb_cy: &f64| PoundsPerCubicFoot(lb_cy / 27.0);
    let factors = Factors::from_weights(pcf(loose), pcf(bank), pcf(compacted)).map_err(refused)?;
    Ok(outputs([
        ("swell", Quantity::Number(factors.swell)),
        ("load_factor", Quantity::Number(1.0 / factors.swell)),
        ("compacted", Quantity::Number(factors.compacted)),
    ]))
}

/// Loads of a volume in the ground (`bank_cy`) or rammed (`compacted_cy`).
pub(super) fn loads(inputs: &mut Inputs) -> Outputs {
    let factors = Factors {
        swell: inputs.number("swell")?,
        compacted: inputs.optional_number("compacted")?.unwrap_or(1.0),
    }
    .checked()
    .map_err(refused)?;
    let bank = match inputs.optional_number("compacted_cy")? {
        Some(yards) => factors.bank_for(CubicFeet::from_cubic_yards(yards)),
        None => CubicFeet::from_cubic_yards(inputs.number("bank_cy")?),
    };
    let loose = factors.loose(bank);
    let truck = Truck {
        cubic_yards: inputs.number("truck_cy")?,
        tons: inputs.optional_number("truck_tons")?,
    };
    let weight = inputs.optional_number("loose_pcf")?.map(PoundsPerCubicFoot);
    let loads = haul::loads(loose, &truck, weight).map_err(refused)?;
    Ok(outputs([
        ("bank_cy", Quantity::Number(bank.cubic_yards())),
        ("loose_cy", Quantity::Number(loose.cubic_yards())),
        ("loads", Quantity::Number(f64::from(loads))),
    ]))
}

/// Trucks that keep a machine busy.
pub(super) fn trucks(inputs: &mut Inputs) -> Outputs {
    let trucks = haul::trucks_needed(
        inputs.number("round_minutes")?,
        inputs.number("load_minutes")?,
    )
    .map_err(refused)?;
    Ok(outputs([("trucks", Quantity::Number(f64::from(trucks)))]))
}

/// How much gravel: layers of `areas_sf` and `thicknesses`, patches in cubic yards.
pub(super) fn gravel_order(inputs: &mut Inputs) -> Outputs {
    let areas: Vec<_> = inputs
        .numbers("areas_sf")?
        .into_iter()
        .map(SquareFeet)
        .collect();
    let thick = inputs.lengths("thicknesses")?;
    let layers = inputs.together(("areas_sf", areas), ("thicknesses", thick))?;
    let patches = match inputs.optional_text("patches_cy") {
        Some(_) => inputs.numbers("patches_cy")?,
        None => vec![],
    };
    let all = gravel::forecast(&Need {
        layers,
        landing_mean: inputs.number("landing_mean")?,
        landing_sd: inputs.number("landing_sd")?,
        landings: inputs.count("landings")?,
        patches: patches
            .into_iter()
            .map(CubicFeet::from_cubic_yards)
            .collect(),
        density: PoundsPerCubicFoot(inputs.number("pcf")?),
    })
    .map_err(refused)?;
    Ok(outputs([
        ("nominal_cy", Quantity::Number(all.nominal.cubic_yards())),
        ("low_cy", Quantity::Number(all.low.cubic_yards())),
        ("patches_cy", Quantity::Number(all.patches.cubic_yards())),
        ("mean_cy", Quantity::Number(all.mean.cubic_yards())),
        ("sd_cy", Quantity::Number(all.sd.cubic_yards())),
        ("enough_cy", Quantity::Number(all.enough.cubic_yards())),
        ("mean_tons", Quantity::Number(all.mean_tons.0)),
        ("enough_tons", Quantity::Number(all.enough_tons.0)),
    ]))
}

/// Expected depth below the target, in feet.
pub(super) fn expected_low(inputs: &mut Inputs) -> Outputs {
    let low = gravel::expected_low_ft(inputs.number("mean")?, inputs.amount("sd")?);
    Ok(outputs([("low", Quantity::Number(low))]))
}

/// Lifts of a thickness.
pub(super) fn lifts(inputs: &mut Inputs) -> Outputs {
    let lifts =
        gravel::lifts(inputs.length("thickness")?, inputs.length("lift")?).map_err(refused)?;
    Ok(outputs([("lifts", Quantity::Number(f64::from(lifts)))]))
}

/// A density test: `wet_pcf` with `water_percent`, or with the gauge's `water_pcf`.
pub(super) fn density_test(inputs: &mut Inputs) -> Outputs {
    let wet = PoundsPerCubicFoot(inputs.number("wet_pcf")?);
    let (dry, water) = if let Some(water) = inputs.optional_number("water_pcf")? {
        density::by_gauge(wet, PoundsPerCubicFoot(water)).map_err(refused)?
    } else {
        let water = inputs.number("water_percent")?;
        (density::dry(wet, water).map_err(refused)?, water)
    };
    let wanted = density::Wanted {
        maximum_pcf: inputs.number("maximum_pcf")?,
        least_percent: inputs.number("least_percent")?,
        optimum_percent: inputs.optional_number("optimum_percent")?,
        window_points: inputs.optional_number("window_points")?.unwrap_or(2.0),
    };
    let judged = density::judge(dry, water, &wanted).map_err(refused)?;
    Ok(outputs([
        ("dry_pcf", Quantity::Number(judged.dry_pcf)),
        ("water_percent", Quantity::Number(water)),
        ("percent", Quantity::Number(judged.percent)),
        ("shown_percent", Quantity::Number(judged.shown_percent())),
        ("moisture", word(judged.moisture)),
        ("passes", yes(judged.passes)),
    ]))
}

/// Wet density by the sand cone; weights in pounds. With `water_percent` the dry one too.
pub(super) fn sand_cone(inputs: &mut Inputs) -> Outputs {
    let wet = density::by_sand_cone(
        inputs.number("soil_lb")?,
        inputs.number("sand_poured_lb")?,
        inputs.number("sand_in_cone_lb")?,
        PoundsPerCubicFoot(inputs.number("sand_pcf")?),
    )
    .map_err(refused)?;
    let mut all = outputs([("wet_pcf", Quantity::Number(wet.0))]);
    if let Some(water) = inputs.optional_number("water_percent")? {
        let dry = density::dry(wet, water).map_err(refused)?;
        all.insert("dry_pcf".into(), Quantity::Number(dry.0));
    }
    Ok(all)
}

/// A stated bearing against the asked one.
pub(super) fn bearing_test(inputs: &mut Inputs) -> Outputs {
    let (stated, asked) = (inputs.number("stated_psf")?, inputs.number("asked_psf")?);
    let stated = PoundsPerSquareFoot(stated);
    let passes = bearing::passes(stated, PoundsPerSquareFoot(asked)).map_err(refused)?;
    Ok(outputs([
        ("passes", yes(passes)),
        ("stated_kpa", Quantity::Number(stated.kilopascals())),
    ]))
}

/// What a code presumes.
pub(super) fn presumed_bearing(inputs: &mut Inputs) -> Outputs {
    let soil: bearing::Soil = inputs.name("soil")?;
    let Some(psf) = soil.presumed() else {
        return Ok(outputs([("psf", Quantity::Word("none".into()))]));
    };
    Ok(outputs([
        ("psf", Quantity::Number(psf.0)),
        ("kpa", Quantity::Number(psf.kilopascals())),
    ]))
}

/// Mean and scatter of landings, and between which values the scatter lies.
pub(super) fn landings(inputs: &mut Inputs) -> Outputs {
    let errors = inputs.lengths("errors")?;
    let Some(landing) = landing::landing(&errors) else {
        return Err(refused("one landing has no scatter. Give at least two."));
    };
    let chance = inputs.optional_number("chance")?.unwrap_or(0.8);
    let (low, high) = landing.sd_between(chance);
    Ok(outputs([
        ("mean_ft", Quantity::Number(landing.mean_ft)),
        ("sd_ft", Quantity::Number(landing.sd_ft)),
        ("sd_low_ft", Quantity::Number(low)),
        ("sd_high_ft", Quantity::Number(high)),
    ]))
}

fn given_landing(inputs: &mut Inputs) -> Result<Landing, WorkedError> {
    Ok(Landing {
        count: inputs.count("count")?,
        mean_ft: inputs.number("mean")?,
        sd_ft: inputs.amount("sd")?,
    })
}

/// How well a tolerance holds a mean and a scatter.
pub(super) fn capability(inputs: &mut Inputs) -> Outputs {
    let landing = given_landing(inputs)?;
    // Limits on one side of the aim are limits too, as long as one lies above the other.
    let tolerance = Tolerance {
        high: inputs.length("high")?,
        low: inputs.length("low")?,
    };
    if tolerance.high <= -tolerance.low {
        let why = "the high limit lies at or below the low one. Look at their signs.";
        return Err(bad("high", inputs.text("high")?, why));
    }
    let Some(found) = landing.capability(tolerance) else {
        return Err(refused(
            "no scatter, no capability. Give a scatter above 0.",
        ));
    };
    Ok(outputs([
        ("cp", Quantity::Number(found.cp)),
        ("cpk", Quantity::Number(found.cpk)),
        ("within", Quantity::Number(found.within)),
    ]))
}

/// Where to aim.
pub(super) fn aim(inputs: &mut Inputs) -> Outputs {
    let landing = given_landing(inputs)?;
    let tolerance =
        Tolerance::new(inputs.length("high")?, inputs.length("low")?).map_err(refused)?;
    let costs = AimCosts {
        spot_sf: inputs.number("spot_sf")?,
        gravel_cf: inputs.number("gravel_cf")?,
        shallow: inputs.number("shallow")?,
        too_deep: inputs.number("too_deep")?,
    };
    let advice =
        aim::advise(&landing, tolerance, inputs.size("guard")?, &costs).map_err(refused)?;
    Ok(outputs([
        ("aim", Quantity::Length(advice.aim)),
        ("mean", Quantity::Length(advice.mean)),
        ("cost", Quantity::Number(advice.cost)),
        ("cost_on_target", Quantity::Number(advice.cost_on_target)),
        ("from", Quantity::Length(advice.from)),
        ("to", Quantity::Length(advice.to)),
    ]))
}

/// A bottom's pace, when it arrives, and when to look again.
pub(super) fn pace(inputs: &mut Inputs) -> Outputs {
    let minutes = inputs.figures("minutes", Figure::Minutes)?;
    let devs = inputs.lengths("differences")?;
    let readings: Vec<Dug> = inputs
        .together(("minutes", minutes), ("differences", devs))?
        .into_iter()
        .map(|(work_minutes, dev)| Dug { work_minutes, dev })
        .collect();
    let Some(pace) = arrival::pace(&readings) else {
        return Err(refused(
            "the bottom does not go down. Give readings that do.",
        ));
    };
    let mut all = outputs([
        ("ft_per_min", Quantity::Number(pace.ft_per_min)),
        ("slow", Quantity::Number(pace.slow)),
        ("fast", Quantity::Number(pace.fast)),
        ("wander", Quantity::Number(pace.wander)),
    ]);
    let left = inputs.length_or("left", Length::ZERO)?;
    let room = inputs.size_or("room", Length::ZERO)?;
    if let Some(found) = arrival::arrival(&pace, left, room) {
        all.insert("minutes_left".into(), Quantity::Number(found.minutes));
        all.insert("look".into(), Quantity::Number(found.look));
        let late = arrival::too_deep_chance(&pace, room, found.minutes);
        all.insert("too_deep_chance".into(), Quantity::Number(late));
    }
    Ok(all)
}

/// The order of visits that costs least: what a minute of waiting costs, and the minutes of each visit.
pub(super) fn visits(inputs: &mut Inputs) -> Outputs {
    let rates = inputs.figures("per_minute", Figure::Money)?;
    let minutes = inputs.figures("minutes", Figure::Minutes)?;
    let visits: Vec<Visit> = inputs
        .together(("per_minute", rates), ("minutes", minutes))?
        .into_iter()
        .map(|(idle_per_minute, minutes)| Visit {
            idle_per_minute,
            minutes,
            digging: None,
            patch_cost: 0.0,
        })
        .collect();
    let order = arrival::cheapest_order(&visits);
    let numbers: Vec<String> = order.iter().map(|one| (one + 1).to_string()).collect();
    Ok(outputs([
        ("order", Quantity::Word(numbers.join(" "))),
        (
            "cost",
            Quantity::Number(arrival::order_cost(&visits, &order)),
        ),
    ]))
}

/// What so many minutes cost at a rate an hour.
pub(super) fn time_cost(inputs: &mut Inputs) -> Outputs {
    let ms = crate::length::whole((inputs.figure("minutes", Figure::Minutes)? * 60_000.0).round());
    let cost = crate::cost::of_time(ms, inputs.number("per_hour")?).map_err(refused)?;
    Ok(outputs([("cost", Quantity::Number(cost))]))
}
