//! Worked examples of volumes: end areas, grids, strips, surfaces, rock above the dig.

use super::inputs::{Inputs, bad};
use super::placing::{net, vertices};
use super::{Outputs, Quantity, outputs, refused};
use crate::amount::SquareFeet;
use crate::figure::Figure;
use crate::length::Length;
use crate::rock_line;
use crate::volume::grid::{Grid, grid, points};
use crate::volume::sections::{Trapezoid, average_end_area, prismoidal, strip};
use crate::volume::{CutFill, between};

/// Both formulas between two end areas, in square feet; the prismoid needs the middle one.
pub(super) fn end_areas(inputs: &mut Inputs) -> Outputs {
    let length = inputs.size("length")?;
    let (first, last) = (
        inputs.figure("first", Figure::Area)?,
        inputs.figure("last", Figure::Area)?,
    );
    let (first, last) = (SquareFeet(first), SquareFeet(last));
    let rough = average_end_area(length, first, last);
    let mut all = outputs([
        ("average_cf", Quantity::Number(rough.0)),
        ("average_cy", Quantity::Number(rough.cubic_yards())),
    ]);
    if inputs.optional_text("middle").is_some() {
        let middle = inputs.figure("middle", Figure::Area)?;
        let fine = prismoidal(length, first, SquareFeet(middle), last);
        all.insert("prismoidal_cf".into(), Quantity::Number(fine.0));
    }
    Ok(all)
}

/// A trench between two sections: `bottoms`, `depths` and `out_per_up` of both ends.
pub(super) fn trench_volume(inputs: &mut Inputs) -> Outputs {
    let length = inputs.size("length")?;
    let out = inputs.numbers("out_per_up")?;
    let ends = inputs.pairs("bottoms", "depths")?;
    let ([first, last], [out_first, out_last]) = (ends.as_slice(), out.as_slice()) else {
        let why = "give both ends, of “bottoms”, “depths” and “out_per_up” alike.";
        return Err(bad("depths", inputs.text("depths")?, why));
    };
    let end = |(bottom, depth): &(Length, Length), out_per_up: f64| {
        Trapezoid {
            bottom: *bottom,
            depth: *depth,
            out_per_up,
        }
        .checked()
        .map_err(refused)
    };
    let (first, last) = (end(first, *out_first)?, end(last, *out_last)?);
    let rough = average_end_area(length, first.area(), last.area());
    Ok(outputs([
        ("first_sf", Quantity::Number(first.area().0)),
        ("last_sf", Quantity::Number(last.area().0)),
        ("middle_sf", Quantity::Number(first.halfway(&last).area().0)),
        ("average_cf", Quantity::Number(rough.0)),
        ("prismoidal_cf", Quantity::Number(first.to(&last, length).0)),
    ]))
}

fn cut_fill(volume: CutFill) -> [(&'static str, Quantity); 2] {
    [
        ("cut_cf", Quantity::Number(volume.cut.0)),
        ("fill_cf", Quantity::Number(volume.fill.0)),
    ]
}

/// A grid by the borrow-pit rule: `columns` corners to a row.
pub(super) fn borrow_pit(inputs: &mut Inputs) -> Outputs {
    let columns = usize::try_from(inputs.count("columns")?).unwrap_or(usize::MAX);
    let corners = inputs.lengths("corners")?;
    let volume = grid(&Grid {
        along: inputs.length("along")?,
        across: inputs.length("across")?,
        corners: corners
            .chunks(columns)
            .map(|row| row.iter().copied().map(Some).collect())
            .collect(),
    })
    .map_err(refused)?;
    let mut all = outputs(cut_fill(volume.split));
    all.insert("net_cf".into(), Quantity::Number(volume.net.0));
    all.insert("net_cy".into(), Quantity::Number(volume.net.cubic_yards()));
    Ok(all)
}

/// Points that each stand for an area, in square feet.
pub(super) fn point_areas(inputs: &mut Inputs) -> Outputs {
    let areas: Vec<_> = inputs
        .numbers("areas")?
        .into_iter()
        .map(SquareFeet)
        .collect();
    let devs = inputs.lengths("differences")?;
    let all = inputs.together(("areas", areas), ("differences", devs))?;
    Ok(outputs(cut_fill(points(&all).map_err(refused)?)))
}

/// A strip of one width between two differences.
pub(super) fn strip_volume(inputs: &mut Inputs) -> Outputs {
    let volume = strip(
        inputs.size("length")?,
        inputs.size("width")?,
        inputs.length("first")?,
        inputs.length("last")?,
    )
    .map_err(refused)?;
    Ok(outputs(cut_fill(volume)))
}

/// From one surface to another: what is there, and what is wanted.
pub(super) fn surface_volume(inputs: &mut Inputs) -> Outputs {
    let there = net(inputs, "there", "there_triangles")?;
    let wanted = net(inputs, "wanted", "wanted_triangles")?;
    let found = between::surfaces(&there, &wanted).map_err(refused)?;
    let mut all = outputs(cut_fill(found.volume));
    all.insert("area_sf".into(), Quantity::Number(found.area.0));
    let bare = Quantity::Number(found.not_covered.0);
    all.insert("not_covered_sf".into(), bare);
    Ok(all)
}

/// From a surface to one level.
pub(super) fn surface_to_level(inputs: &mut Inputs) -> Outputs {
    let there = net(inputs, "there", "there_triangles")?;
    let level = inputs.length("level")?;
    let found = between::to_grade(&there, |_| Some(level)).map_err(refused)?;
    let mut all = outputs(cut_fill(found.volume));
    all.insert("area_sf".into(), Quantity::Number(found.area.0));
    Ok(all)
}

/// Rock above one level.
pub(super) fn rock_above(inputs: &mut Inputs) -> Outputs {
    let points = vertices(inputs, "points")?;
    let level = inputs.length("level")?;
    let rock = rock_line::above(&points, |_| Some(level)).map_err(refused)?;
    Ok(outputs([
        ("volume_cf", Quantity::Number(rock.volume.0)),
        ("area_sf", Quantity::Number(rock.area.0)),
        ("edge_doubt_cf", Quantity::Number(rock.edge_doubt.0)),
    ]))
}
