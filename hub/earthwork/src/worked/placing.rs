//! Worked examples of places: beside an alignment, on a surface of triangles, by found pins, from a line.

use super::inputs::{Inputs, bad};
use super::{Outputs, Quantity, WorkedError, outputs, refused};
use crate::alignment::{Alignment, Piece, StationOffset, Turn};
use crate::layout::no_cross::NoCrossLine;
use crate::layout::tie;
use crate::length::{Length, parse};
use crate::point::Point;
use crate::site_frame::{Pin, fit_to_pins};
use crate::surface::{Surface, Vertex};

/// An alignment: `start`, `first` (its station, 0 when left out), and `pieces` parted by `|`. A piece is
/// `line; EAST; NORTH` of its end, or `left` or `right` with the centre's and the end's east and north.
fn alignment(inputs: &mut Inputs) -> Result<Alignment, WorkedError> {
    let start = inputs.point("start")?;
    let first = match inputs.optional_text("first") {
        Some(_) => inputs.station("first")?,
        None => Length::ZERO,
    };
    let text = inputs.text("pieces")?;
    let pieces = text
        .split('|')
        .map(|one| piece(one).map_err(|why| bad("pieces", one, why)))
        .collect::<Result<Vec<_>, _>>()?;
    Alignment::new(start, first, &pieces).map_err(refused)
}

fn piece(text: &str) -> Result<Piece, String> {
    let mut parts = text.split(';').map(str::trim);
    let word = parts.next().unwrap_or_default();
    let lengths = parts
        .map(|part| parse(part).map_err(|error| error.to_string()))
        .collect::<Result<Vec<_>, _>>()?;
    let turn = match word {
        "left" => Turn::Left,
        _ => Turn::Right,
    };
    match (word, lengths.as_slice()) {
        ("line", [x, y]) => Ok(Piece::Line {
            to: Point { x: *x, y: *y },
        }),
        ("left" | "right", [east, north, x, y]) => Ok(Piece::Arc {
            centre: Point {
                x: *east,
                y: *north,
            },
            to: Point { x: *x, y: *y },
            turn,
        }),
        _ => Err("a piece is line; 0 ft; 100 ft to its end, or right (or left); 50 ft; 100 ft; 50 ft; 150 ft with its centre and its end.".to_owned()),
    }
}

/// Station and offset of a place beside an alignment.
pub(super) fn station_offset(inputs: &mut Inputs) -> Outputs {
    let alignment = alignment(inputs)?;
    let found = alignment
        .station_offset(inputs.point("at")?)
        .map_err(refused)?;
    Ok(outputs([
        ("station", Quantity::Length(found.station)),
        ("offset", Quantity::Length(found.offset)),
        ("last", Quantity::Length(alignment.stations().1)),
    ]))
}

/// The place at a station and an offset.
pub(super) fn place_beside(inputs: &mut Inputs) -> Outputs {
    let alignment = alignment(inputs)?;
    let place = alignment
        .place(StationOffset {
            station: inputs.station("station")?,
            offset: inputs.length_or("offset", Length::ZERO)?,
        })
        .map_err(refused)?;
    Ok(outputs([("place", place_of(place))]))
}

fn place_of(place: Point) -> Quantity {
    Quantity::Lengths(vec![place.x, place.y])
}

/// Elevations on given triangles: `points` as east, north and elevation of each, `triangles` as three numbers of
/// points, counted from 0, for each triangle, `at` as east and north of each place.
pub(super) fn triangles(inputs: &mut Inputs) -> Outputs {
    let surface = net(inputs, "points", "triangles")?;
    let elevations = inputs
        .places("at")?
        .into_iter()
        .map(|at| surface.elevation_at(at).map_err(refused))
        .collect::<Result<Vec<_>, _>>()?;
    Ok(outputs([("elevations", Quantity::Lengths(elevations))]))
}

/// Points with elevations, east, north and up of each.
pub(super) fn vertices(inputs: &mut Inputs, name: &str) -> Result<Vec<Vertex>, WorkedError> {
    let groups = inputs.groups(name)?.into_iter();
    Ok(groups
        .map(|[x, y, elevation]| Vertex {
            at: Point { x, y },
            elevation,
        })
        .collect())
}

/// A surface from points and the numbers of each triangle's corners, counted from 0.
pub(super) fn net(
    inputs: &mut Inputs,
    points: &str,
    triangles: &str,
) -> Result<Surface, WorkedError> {
    let vertices = vertices(inputs, points)?;
    let text = inputs.text(triangles)?;
    let numbers = text
        .split(';')
        .map(|number| number.trim().parse())
        .collect::<Result<Vec<usize>, _>>();
    let wrong = "write three numbers of points for each triangle, counted from 0, parted by “;”.";
    let numbers = numbers.map_err(|_parse| bad(triangles, text, wrong))?;
    let (corners, left_over) = numbers.as_chunks::<3>();
    if !left_over.is_empty() {
        return Err(bad(triangles, text, wrong));
    }
    Surface::from_triangles(vertices, corners).map_err(refused)
}

/// The turn and shift that fit a plan best to found pins: `plan` and `site` as east and north of each pin, and
/// where the plan's places `at` then lie.
pub(super) fn found_pins(inputs: &mut Inputs) -> Outputs {
    let (plan, site) = (inputs.places("plan")?, inputs.places("site")?);
    let pins: Vec<Pin> = inputs
        .together(("plan", plan), ("site", site))?
        .into_iter()
        .map(|(plan, site)| Pin { plan, site })
        .collect();
    let fit = fit_to_pins(&pins).map_err(refused)?;
    let lie = inputs
        .places("at")?
        .into_iter()
        .map(|at| fit.to_site(at))
        .flat_map(|place| [place.x, place.y])
        .collect();
    Ok(outputs([
        ("turn_degrees", Quantity::Number(fit.turn())),
        ("scale", Quantity::Number(fit.scale)),
        ("residuals", Quantity::Lengths(fit.residuals)),
        ("places", Quantity::Lengths(lie)),
    ]))
}

/// The distance from a line that must not be crossed, positive on the hand to `keep`.
pub(super) fn distance_from_line(inputs: &mut Inputs) -> Outputs {
    let line = NoCrossLine {
        corners: inputs.places("corners")?,
        keep: inputs.name("keep")?,
    };
    let distance = line.distance(inputs.point("at")?).map_err(refused)?;
    Ok(outputs([("distance", Quantity::Length(distance))]))
}

/// A place paced between two marks.
pub(super) fn paced(inputs: &mut Inputs) -> Outputs {
    let place = tie::paced_between(
        inputs.point("from")?,
        inputs.point("to")?,
        inputs.count("paces")?,
        inputs.count("of")?,
    )
    .map_err(refused)?;
    Ok(outputs([("place", place_of(place))]))
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use super::super::{Outputs, Quantity, compute};
    use crate::length::Length;

    fn given(computation: &str, pairs: &[(&str, &str)]) -> Outputs {
        let inputs: BTreeMap<String, String> = pairs
            .iter()
            .map(|(name, text)| ((*name).to_owned(), (*text).to_owned()))
            .collect();
        compute(computation, &inputs)
    }

    fn lengths(hundredths: &[i64]) -> Quantity {
        let lengths = hundredths.iter().copied();
        Quantity::Lengths(lengths.map(Length::from_hundredths_of_a_foot).collect())
    }

    /// Derived from plane geometry: 100 ft north, then a quarter turn to the right about (50, 100).
    #[test]
    fn a_place_beside_a_bend_is_found_both_ways() {
        let bend = [
            ("start", "0 ft; 0 ft"),
            (
                "pieces",
                "line; 0 ft; 100 ft | right; 50 ft; 100 ft; 50 ft; 150 ft",
            ),
        ];
        let there = [bend[0], bend[1], ("at", "3 ft; 25 ft")];
        let found = given("station_offset", &there).unwrap();
        assert_eq!(
            found["station"],
            Quantity::Length(Length::from_hundredths_of_a_foot(2500))
        );
        assert_eq!(
            found["offset"],
            Quantity::Length(Length::from_hundredths_of_a_foot(300))
        );
        let back = [bend[0], bend[1], ("station", "25 ft"), ("offset", "3 ft")];
        assert_eq!(
            given("place_beside", &back).unwrap()["place"],
            lengths(&[300, 2500])
        );
        let wrong = given(
            "station_offset",
            &[bend[0], ("pieces", "line; 0 ft"), there[2]],
        );
        assert!(wrong.unwrap_err().to_string().contains("a piece is line;"));
    }

    /// By hand: a square folded along its diagonal; a plan turned a quarter; a paced third; a line along north.
    #[test]
    fn places_come_out_and_half_a_place_is_named() {
        let square = [
            (
                "points",
                "0 ft; 0 ft; 1 ft; 10 ft; 0 ft; 0 ft; 10 ft; 10 ft; 1 ft; 0 ft; 10 ft; 0 ft",
            ),
            ("triangles", "0; 1; 2; 0; 2; 3"),
            ("at", "5 ft; 5 ft; 10 ft; 5 ft"),
        ];
        assert_eq!(
            given("triangles", &square).unwrap()["elevations"],
            lengths(&[100, 50])
        );
        let half = given("triangles", &[square[0], square[1], ("at", "5 ft")]);
        assert!(
            half.unwrap_err()
                .to_string()
                .contains("give 2 for each place")
        );
        let two = given("triangles", &[square[0], ("triangles", "0; 1"), square[2]]);
        assert!(
            two.unwrap_err()
                .to_string()
                .contains("three numbers of points")
        );
        let pins = given(
            "found_pins",
            &[
                ("plan", "0 ft; 0 ft; 10 ft; 0 ft"),
                ("site", "1 ft; 0 ft; 1 ft; 10 ft"),
                ("at", "0 ft; 2 ft"),
            ],
        );
        let pins = pins.unwrap();
        assert_eq!(pins["turn_degrees"], Quantity::Number(90.0));
        assert_eq!(pins["places"], lengths(&[-100, 0]));
        let paced = given(
            "paced",
            &[
                ("from", "0 ft; 0 ft"),
                ("to", "30 ft; 0 ft"),
                ("paces", "4"),
                ("of", "12"),
            ],
        );
        assert_eq!(paced.unwrap()["place"], lengths(&[1000, 0]));
        let line = [
            ("corners", "0 ft; 0 ft; 0 ft; 10 ft"),
            ("keep", "right"),
            ("at", "3 ft; 5 ft"),
        ];
        let line = given("distance_from_line", &line).unwrap();
        assert_eq!(
            line["distance"],
            Quantity::Length(Length::from_hundredths_of_a_foot(300))
        );
    }
}
