//! Worked examples of grades: stations, profiles, trenches, faces, folds, catch points, arcs, the plan's frame.

use super::inputs::{Inputs, bad};
use super::{Outputs, Quantity, WorkedError, outputs, refused};
use crate::alignment::{fit_arc, show_station};
use crate::grade::{
    Corner, Extreme, Face, Flow, Fold, Invert, Layback, Plane, Profile, Rise, Trench, TrenchSizes,
    daylight, folded,
};
use crate::length::Length;
use crate::point::Point;
use crate::site_frame::{PlanNumber, PlanPoint, SiteFrame};
use crate::target::DigTo;

/// A station as it is written, and how far it is.
pub(super) fn station(inputs: &mut Inputs) -> Outputs {
    let at = inputs.station("station")?;
    Ok(outputs([
        ("length", Quantity::Length(at)),
        ("written", Quantity::Word(show_station(at))),
    ]))
}

/// A profile's elevation and grade at a station, the ends of its first curve, its high and low points.
pub(super) fn profile(inputs: &mut Inputs) -> Outputs {
    let (places, elevations) = (inputs.stations("stations")?, inputs.lengths("elevations")?);
    let curves = if inputs.optional_text("curves").is_some() {
        inputs.lengths("curves")?
    } else {
        vec![Length::ZERO; places.len()]
    };
    let corners = inputs.together(("stations", places), ("elevations", elevations))?;
    let corners: Vec<Corner> = inputs
        .together(("stations", corners), ("curves", curves))?
        .into_iter()
        .map(|((station, elevation), curve)| Corner {
            station,
            elevation,
            curve,
        })
        .collect();
    let curved = corners.iter().find(|corner| corner.curve > Length::ZERO);
    let curved = curved.copied();
    let steps = if inputs.optional_text("steps").is_some() {
        let (at, by) = (inputs.stations("steps")?, inputs.lengths("rises")?);
        inputs
            .together(("steps", at), ("rises", by))?
            .into_iter()
            .map(|(station, by)| Rise { station, by })
            .collect()
    } else {
        vec![]
    };
    let profile = Profile::new(corners, steps).map_err(refused)?;
    let mut all = outputs([]);
    let mut put = |name: &str, quantity| all.insert(name.to_owned(), quantity);
    if inputs.optional_text("at").is_some() {
        let at = inputs.station("at")?;
        match profile.elevation_at(at).map_err(refused)? {
            DigTo::At(elevation) => put("elevation", Quantity::Length(elevation)),
            DigTo::NearStep { before, after, .. } => {
                put("before", Quantity::Length(before));
                put("after", Quantity::Length(after))
            }
        };
        let grade = profile.grade_at(at).map_err(refused)?;
        put("grade", Quantity::Number(grade));
    }
    for turning in profile.turnings() {
        let name = match turning.extreme {
            Extreme::High => "high",
            Extreme::Low => "low",
        };
        put(
            &format!("{name}_station"),
            Quantity::Length(turning.station),
        );
        put(
            &format!("{name}_point"),
            Quantity::Length(turning.elevation),
        );
    }
    if let Some(Corner { station, curve, .. }) = curved {
        let half = Length::from_tenth_micrometres(curve.tenth_micrometres() / 2);
        for (name, at) in [("begins", station - half), ("ends", station + half)] {
            put(name, Quantity::Length(at));
            let elevation = profile.on_grades(at).map_err(refused)?;
            put(&format!("{name}_at"), Quantity::Length(elevation));
        }
    }
    Ok(all)
}

/// A pipe trench: dig-to, width, the end to dig from, the least fall.
pub(super) fn trench(inputs: &mut Inputs) -> Outputs {
    let (places, elevations) = (inputs.stations("stations")?, inputs.lengths("inverts")?);
    let inverts: Vec<Invert> = inputs
        .together(("stations", places), ("inverts", elevations))?
        .into_iter()
        .map(|(station, elevation)| Invert { station, elevation })
        .collect();
    let flow: Flow = inputs.name("flow")?;
    let sizes = TrenchSizes {
        wall: inputs.length_or("wall", Length::ZERO)?,
        bedding: inputs.length_or("bedding", Length::ZERO)?,
        outside_diameter: inputs.length("outside_diameter")?,
        side: inputs.length("side")?,
    };
    let at = inputs.station("at")?;
    let least = match inputs.optional_text("least_fall") {
        Some(_) => inputs.amount("least_fall")?,
        None => 0.01,
    };
    let trench = Trench::new(inverts, flow, sizes).map_err(refused)?;
    let flat = trench.too_flat(least);
    Ok(outputs([
        (
            "dig_to",
            Quantity::Length(trench.dig_to(at).map_err(refused)?),
        ),
        ("width", Quantity::Length(trench.width())),
        ("dig_from", Quantity::Length(trench.dig_from())),
        ("too_flat", Quantity::Number(flat.len() as f64)),
    ]))
}

/// A face laid back or benched, at a level distance from its toe.
pub(super) fn face(inputs: &mut Inputs) -> Outputs {
    let parts = inputs.pairs("rises", "runs")?;
    let faces = parts.into_iter().map(|(rise, run)| Face { rise, run });
    let face = Layback::new(faces.collect()).map_err(refused)?;
    let toe = inputs.length("toe")?;
    let found = face
        .elevation_at(toe, inputs.length("distance")?)
        .map_err(refused)?;
    let mut all = outputs([
        ("width", Quantity::Length(face.width())),
        ("height", Quantity::Length(face.height())),
    ]);
    match found {
        DigTo::At(elevation) => {
            all.insert("elevation".into(), Quantity::Length(elevation));
        }
        DigTo::NearStep { before, after, .. } => {
            all.insert("before".into(), Quantity::Length(before));
            all.insert("after".into(), Quantity::Length(after));
        }
    }
    Ok(all)
}

/// Where a cut face meets the ground; a slope stake stands half the base further out.
pub(super) fn catch_point(inputs: &mut Inputs) -> Outputs {
    let half_base = inputs.size_or("half_base", Length::ZERO)?;
    let rise = inputs.number("ground_rise")?;
    let depth = inputs.length("centre_cut")?;
    // The ground at the toe, as far out as half the base.
    let at_toe = Length::from_feet(depth.feet() + half_base.feet() * rise).map_err(refused)?;
    let found = daylight(at_toe, inputs.number("slope")?, rise).map_err(refused)?;
    Ok(outputs([
        ("out", Quantity::Length(found.distance + half_base)),
        ("cut", Quantity::Length(found.height)),
    ]))
}

/// Planes that meet in a crown or a valley.
pub(super) fn fold(inputs: &mut Inputs) -> Outputs {
    let fold: Fold = inputs.name("kind")?;
    let through = inputs.point("through")?;
    let elevation = inputs.length("elevation")?;
    let planes: Vec<Plane> = inputs
        .numbers("rises_east")?
        .into_iter()
        .map(|rise_east| Plane {
            through,
            elevation,
            rise_east,
            rise_north: 0.0,
        })
        .collect();
    let found = folded(fold, &planes, inputs.point("at")?).map_err(refused)?;
    Ok(outputs([("elevation", Quantity::Length(found))]))
}

/// The arc that fits a walked line.
pub(super) fn fitted_arc(inputs: &mut Inputs) -> Outputs {
    let walked = inputs.pairs("east", "north")?;
    let points: Vec<Point> = walked.into_iter().map(|(x, y)| Point { x, y }).collect();
    let arc = fit_arc(&points).ok_or_else(|| {
        refused("The points make no arc: give at least three that do not lie in one line.")
    })?;
    Ok(outputs([
        ("radius", Quantity::Length(arc.radius)),
        (
            "centre",
            Quantity::Lengths(vec![arc.centre.x, arc.centre.y]),
        ),
        ("most_off", Quantity::Length(arc.most_off)),
    ]))
}

fn plan_point(inputs: &mut Inputs, east: &str, north: &str) -> Result<PlanPoint, WorkedError> {
    let mut number = |name: &str| {
        let text = inputs.text(name)?;
        PlanNumber::parse(text).map_err(|error| bad(name, text, error))
    };
    Ok(PlanPoint {
        east: number(east)?,
        north: number(north)?,
    })
}

/// A plan's coordinates on the site.
pub(super) fn site_frame(inputs: &mut Inputs) -> Outputs {
    let unit = inputs.name("unit")?;
    let origin = plan_point(inputs, "origin_east", "origin_north")?;
    let turn = inputs.optional_number("turn")?.unwrap_or(0.0);
    let frame = SiteFrame::new(unit, origin, turn).map_err(refused)?;
    let at = frame
        .to_site(plan_point(inputs, "east", "north")?)
        .map_err(refused)?;
    Ok(outputs([
        ("x", Quantity::Length(at.x)),
        ("y", Quantity::Length(at.y)),
    ]))
}
