//! Worked examples of cuts: soil, slopes, benches, daylight, what hangs over, pins, and what is buried.

use super::inputs::{Inputs, bad};
use super::{Outputs, Quantity, WorkedError, outputs, refused, word, yes};
use crate::buried;
use crate::face::{
    self, Evidence, ExcavationRules, FaceError, Piece, SoilClass, Strength, Taped, Toe,
};
use crate::figure::Figure;
use crate::layout::tie::Side;
use crate::length::Length;
use crate::point::Point;

fn rules() -> &'static ExcavationRules {
    ExcavationRules::us_federal()
}

/// The classes that finds still allow, and the class that counts when one was picked.
pub(super) fn soil(inputs: &mut Inputs) -> Outputs {
    let rules = rules();
    let tsf = inputs.optional_number("strength_tsf")?;
    let kpa = inputs.optional_number("strength_kpa")?;
    let read = [
        tsf.map(|value| Strength::Tsf { value }),
        kpa.map(|value| Strength::Kpa { value }),
    ];
    let strength = read
        .into_iter()
        .flatten()
        .reduce(|one, other| one.weaker(other, rules));
    let material = match inputs.text("material")?.trim() {
        "unknown" => None,
        _ => Some(inputs.name("material")?),
    };
    let thumb = match inputs.optional_text("thumb") {
        Some(_) => Some(inputs.name("thumb")?),
        None => None,
    };
    let found = Evidence {
        material,
        strength,
        thumb,
        cracks: inputs.yes("cracks")?,
        vibration: inputs.yes("vibration")?,
        disturbed: inputs.yes("disturbed")?,
        water: inputs.yes("water")?,
        dip_run: inputs.optional_number("dip_run")?,
    }
    .checked()
    .map_err(refused)?;
    let bounds = found.bounds(rules);
    let mut all = outputs([
        ("firmest", word(bounds.firmest)),
        ("weakest", word(bounds.weakest)),
    ]);
    if inputs.optional_text("picked").is_some() {
        let counted = found.counted(inputs.name("picked")?, rules);
        all.insert("counts".into(), word(counted.class));
    }
    Ok(all)
}

/// What a depth owes.
pub(super) fn owed_at_depth(inputs: &mut Inputs) -> Outputs {
    let depth = inputs.size("depth")?;
    let rules = rules();
    Ok(outputs([
        ("egress", yes(rules.egress.limit.owed(depth))),
        ("protection", yes(rules.protection.owed(depth))),
        ("engineer", yes(rules.engineer.owed(depth))),
    ]))
}

/// The steepest slope, as run, degrees and set-back of the crest.
pub(super) fn owed_slope(inputs: &mut Inputs) -> Outputs {
    let depth = inputs.length("depth")?;
    let class: SoilClass = inputs.name("class")?;
    let (short, distress) = (inputs.yes("short_term")?, inputs.yes("distress")?);
    let run = face::owed_slope(rules(), class, depth, short, distress).map_err(refused)?;
    let level = face::present_slope(depth, Length::ZERO).map_err(refused)?;
    Ok(outputs([
        ("run", Quantity::Number(run)),
        ("degrees", Quantity::Number(face::degrees(run))),
        ("set_back", Quantity::Length(face::crest_back(&level, run))),
    ]))
}

/// A face as it stands, and how far its crest must go back.
pub(super) fn present_slope(inputs: &mut Inputs) -> Outputs {
    let present =
        face::present_slope(inputs.length("rise")?, inputs.length("run")?).map_err(refused)?;
    let owed = inputs.figure("owed", Figure::Slope)?;
    Ok(outputs([
        ("run_per_rise", Quantity::Number(present.run_per_rise)),
        (
            "degrees",
            Quantity::Number(face::degrees(present.run_per_rise)),
        ),
        (
            "crest_back",
            Quantity::Length(face::crest_back(&present, owed)),
        ),
    ]))
}

/// Slopes of layers, from the top down.
pub(super) fn layered_slopes(inputs: &mut Inputs) -> Outputs {
    let classes: Result<Vec<SoilClass>, WorkedError> = inputs
        .text("classes")?
        .split(';')
        .map(|name| match name.trim() {
            "rock" => Ok(SoilClass::Rock),
            "a" => Ok(SoilClass::A),
            "b" => Ok(SoilClass::B),
            "c" => Ok(SoilClass::C),
            other => Err(bad("classes", other, "write rock, a, b or c.")),
        })
        .collect();
    let runs: Vec<String> = face::layered(rules(), &classes?)
        .into_iter()
        .map(|run| run.to_string())
        .collect();
    Ok(outputs([("runs", Quantity::Word(runs.join("; ")))]))
}

/// Benches for a height, or whether given ones keep the rule.
pub(super) fn benches(inputs: &mut Inputs) -> Outputs {
    let class: SoilClass = inputs.name("class")?;
    let cohesive = inputs.yes("cohesive")?;
    if inputs.optional_text("rises").is_some() {
        let rises = inputs.lengths("rises")?;
        face::check_benches(rules(), class, cohesive, &rises).map_err(refused)?;
        return Ok(outputs([("kept", yes(true))]));
    }
    let found = face::benches(rules(), class, cohesive, inputs.length("height")?);
    let found = found.map_err(refused)?;
    Ok(outputs([
        (
            "rises",
            Quantity::Lengths(found.iter().map(|bench| bench.rise).collect()),
        ),
        (
            "treads",
            Quantity::Lengths(found.iter().map(|bench| bench.tread).collect()),
        ),
    ]))
}

/// An unsupported vertical at the bottom, or a shield around it.
pub(super) fn vertical_part(inputs: &mut Inputs) -> Outputs {
    let vertical = inputs.length("vertical")?;
    if inputs.yes("shielded")? {
        let class: SoilClass = inputs.name("class")?;
        let depth = inputs.length("depth")?;
        let run = face::owed_slope(rules(), class, depth, false, false).map_err(refused)?;
        let level = face::present_slope(depth - vertical, Length::ZERO).map_err(refused)?;
        return Ok(outputs([
            (
                "shield_top",
                Quantity::Length(face::shield_top(rules(), vertical).map_err(refused)?),
            ),
            ("set_back", Quantity::Length(face::crest_back(&level, run))),
        ]));
    }
    let class: SoilClass = inputs.name("class")?;
    let back = face::lower_part(rules(), class, inputs.length("depth")?, vertical);
    Ok(outputs([(
        "set_back",
        Quantity::Length(back.map_err(refused)?),
    )]))
}

/// Ladders along a trench.
pub(super) fn ladders(inputs: &mut Inputs) -> Outputs {
    let many = face::ladders(rules(), inputs.length("length")?).map_err(refused)?;
    Ok(outputs([("ladders", Quantity::Number(f64::from(many)))]))
}

/// Pieces from the toe up: a run for each, and a top for each but the last.
fn pieces(inputs: &mut Inputs) -> Result<Vec<Piece>, WorkedError> {
    let runs = inputs.figures("runs", Figure::Slope)?;
    let tops = if inputs.optional_text("tops").is_some() {
        inputs.lengths("tops")?
    } else {
        vec![]
    };
    if tops.len() + 1 != runs.len() {
        return Err(refused(FaceError::PieceOrder));
    }
    let tops = tops.into_iter().map(Some).chain([None]);
    let pieces = runs.into_iter().zip(tops);
    Ok(pieces
        .map(|(run_per_rise, top)| Piece { top, run_per_rise })
        .collect())
}

/// Where a face comes out along a toe, on a plane: its places, runs and heights.
pub(super) fn daylight_line(inputs: &mut Inputs) -> Outputs {
    let toe: Vec<Toe> = inputs
        .groups("toe")?
        .into_iter()
        .map(|[x, y, elevation]| Toe {
            at: Point { x, y },
            elevation,
        })
        .collect();
    let bank: Side = inputs.name("bank")?;
    let pieces = pieces(inputs)?;
    let base = inputs.length("ground")?.feet();
    let (east, north) = (inputs.number("rise_east")?, inputs.number("rise_north")?);
    let ground = |at: Point| {
        Length::from_feet(base + east * at.x.feet() + north * at.y.feet())
            .map_err(|error| error.to_string())
    };
    let every = inputs.length_or("every", Length::from_hundredths_of_a_foot(200))?;
    let farthest = Length::from_hundredths_of_a_foot(100_000);
    let line = face::daylight_line(&toe, bank, &pieces, &ground, every, farthest);
    let found: Result<Vec<_>, FaceError> = line.map_err(refused)?.into_iter().collect();
    let found = found.map_err(refused)?;
    let all = |of: fn(&face::Outcrop) -> Vec<Length>| {
        Quantity::Lengths(found.iter().flat_map(of).collect())
    };
    Ok(outputs([
        ("toes", all(|one| vec![one.toe.at.x, one.toe.at.y])),
        ("places", all(|one| vec![one.at.x, one.at.y])),
        ("runs", all(|one| vec![one.run])),
        ("heights", all(|one| vec![one.height])),
    ]))
}

/// What hangs over a plane, and what it weighs.
pub(super) fn wedge(inputs: &mut Inputs) -> Outputs {
    let height = inputs.length("height")?;
    let area = face::wedge_area(height, inputs.number("steep")?, inputs.number("flat")?)
        .map_err(refused)?;
    let yards = area * inputs.size("length")?.feet() / 27.0;
    let pcf = match inputs.optional_text("pcf") {
        Some(_) => inputs.figure("pcf", Figure::UnitWeight)?,
        None => 0.0,
    };
    let pounds = pcf * yards * 27.0;
    Ok(outputs([
        ("square_feet", Quantity::Number(area)),
        ("cubic_yards", Quantity::Number(yards)),
        ("tons", Quantity::Number(pounds / 2_000.0)),
    ]))
}

/// What came down.
pub(super) fn slough(inputs: &mut Inputs) -> Outputs {
    let yards = face::slough_volume(
        inputs.length("length")?,
        inputs.length("height")?,
        inputs.length("back")?,
    )
    .map_err(refused)?;
    Ok(outputs([("cubic_yards", Quantity::Number(yards))]))
}

/// Textbooks' critical heights, the hopeful and the cautious ones, in the unit of cohesion over unit weight.
pub(super) fn critical_height(inputs: &mut Inputs) -> Outputs {
    let found = face::critical_height(
        inputs.number("cohesion")?,
        inputs.number("unit_weight")?,
        inputs.optional_number("friction")?.unwrap_or(0.0),
        inputs.optional_number("face")?.unwrap_or(90.0),
    )
    .map_err(refused)?;
    let mut all = outputs([
        ("height", Quantity::Number(found.height)),
        ("crack", Quantity::Number(found.crack)),
    ]);
    let cautious = [("cracked", found.cracked), ("no_tension", found.no_tension)];
    for (name, height) in cautious {
        if let Some(height) = height {
            all.insert(name.to_owned(), Quantity::Number(height));
        }
    }
    Ok(all)
}

/// How far a dig lies below a footing's line.
pub(super) fn influence(inputs: &mut Inputs) -> Outputs {
    let below = face::under_influence(
        inputs.length("dig_bottom")?,
        inputs.length("footing_bottom")?,
        inputs.length("distance")?,
        inputs.optional_number("run")?.unwrap_or(1.0),
    )
    .map_err(refused)?;
    Ok(outputs([(
        "below",
        Quantity::Length(below.unwrap_or(Length::ZERO)),
    )]))
}

/// Pins across a crack.
pub(super) fn pins(inputs: &mut Inputs) -> Outputs {
    let (hours, apart) = (
        inputs.figures("hours", Figure::Hours)?,
        inputs.lengths("apart")?,
    );
    let tapes: Vec<Taped> = inputs
        .together(("hours", hours), ("apart", apart))?
        .into_iter()
        .map(|(hour, apart)| Taped {
            at_ms: crate::length::whole((hour * 3_600_000.0).round()),
            apart,
        })
        .collect();
    let found = face::judge_pins(&tapes).map_err(refused)?;
    Ok(outputs([
        ("state", word(found.state)),
        ("rate", Quantity::Number(found.rate_ft_per_hour)),
        ("opened", Quantity::Length(found.opened)),
    ]))
}

/// The band that is dug by hand, and the stretches of a run in it.
pub(super) fn hand_dig(inputs: &mut Inputs) -> Outputs {
    let half =
        buried::half_band(inputs.length("outside")?, inputs.length("zone")?).map_err(refused)?;
    let mut all = outputs([("band", Quantity::Length(half * 2))]);
    if inputs.optional_text("line").is_some() {
        let line = inputs.places("line")?;
        let run = (inputs.point("from")?, inputs.point("to")?);
        let found = buried::stretches(run, &line, half).map_err(refused)?;
        let ends = found.iter().flat_map(|(from, to)| [*from, *to]).collect();
        all.insert("stretches".into(), Quantity::Lengths(ends));
        let away = buried::away(&line, run.0).map_err(refused)?;
        all.insert("away".into(), Quantity::Length(away));
    }
    Ok(all)
}

/// How clear a pipe crosses a buried line.
pub(super) fn crossing(inputs: &mut Inputs) -> Outputs {
    let gap = buried::clearance(
        inputs.length("bottom")?,
        inputs.length("top")?,
        inputs.length("line_bottom")?,
        inputs.length("line_top")?,
    )
    .map_err(refused)?;
    Ok(outputs([("clearance", Quantity::Length(gap))]))
}
