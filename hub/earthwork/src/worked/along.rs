//! Worked examples of volumes along a line: section after section, by end areas and by prismoids.

use super::inputs::{Inputs, bad};
use super::{Outputs, Quantity, WorkedError, outputs, refused};
use crate::amount::{CubicFeet, SquareFeet};
use crate::figure::{Figure, can_be, can_be_feet};
use crate::volume::sections::{Section, along, prismoidal};

/// As many numbers as there are of another list.
fn as_many(inputs: &mut Inputs, name: &str, of: usize) -> Result<Vec<f64>, WorkedError> {
    let numbers = inputs.numbers(name)?;
    if numbers.len() == of {
        return Ok(numbers);
    }
    let why = format!("it has {} entries; give {of}.", numbers.len());
    Err(bad(name, inputs.text(name)?, why))
}

/// Cut and fill by average end areas, in square feet, at `stations`; without `fills` there are none.
pub(super) fn sections(inputs: &mut Inputs) -> Outputs {
    let stations = inputs.lengths("stations")?;
    let cuts = as_many(inputs, "cuts", stations.len())?;
    let fills = if inputs.optional_text("fills").is_some() {
        as_many(inputs, "fills", stations.len())?
    } else {
        vec![0.0; stations.len()]
    };
    let sections: Vec<Section> = stations
        .into_iter()
        .zip(cuts)
        .zip(fills)
        .map(|((station, cut), fill)| Section {
            station,
            cut: SquareFeet(cut),
            fill: SquareFeet(fill),
        })
        .collect();
    let found = along(&sections).map_err(refused)?;
    Ok(outputs([
        ("cut_cf", Quantity::Number(found.cut.0)),
        ("fill_cf", Quantity::Number(found.fill.0)),
        ("cut_cy", Quantity::Number(found.cut.cubic_yards())),
    ]))
}

/// The sum of prismoids that follow each other: each with its length, and its first, middle and last area in square feet.
pub(super) fn prismoids(inputs: &mut Inputs) -> Outputs {
    let lengths = inputs.lengths("lengths")?;
    let firsts = as_many(inputs, "firsts", lengths.len())?;
    let middles = as_many(inputs, "middles", lengths.len())?;
    let lasts = as_many(inputs, "lasts", lengths.len())?;
    for area in firsts.iter().chain(&middles).chain(&lasts) {
        can_be(Figure::Area, *area).map_err(refused)?;
    }
    for length in &lengths {
        can_be_feet(Figure::Distance, *length).map_err(refused)?;
    }
    let pieces = lengths.into_iter().zip(firsts).zip(middles).zip(lasts);
    let sum: f64 = pieces
        .map(|(((length, first), middle), last)| {
            let [first, middle, last] = [first, middle, last].map(SquareFeet);
            prismoidal(length, first, middle, last).0
        })
        .sum();
    Ok(outputs([
        ("volume_cf", Quantity::Number(sum)),
        ("volume_cy", Quantity::Number(CubicFeet(sum).cubic_yards())),
    ]))
}
