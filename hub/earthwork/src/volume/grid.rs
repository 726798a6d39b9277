//! Volumes from a grid of corners, and from points that each stand for an area.

use words::Fixed;

use super::{CutFill, VolumeError, prism};
use crate::amount::{CubicFeet, SquareFeet};
use crate::figure::{Figure, can_be};
use crate::length::Length;

/// A grid of equal cells: rows of corners, each with its difference (there − wanted), none where nobody measured.
#[derive(Clone, Debug, PartialEq)]
pub struct Grid {
    /// A cell's size along a row.
    pub along: Length,
    /// A cell's size from row to row.
    pub across: Length,
    /// The corners, row by row.
    pub corners: Vec<Vec<Option<Length>>>,
}

/// What a grid holds.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct GridVolume {
    /// Cut less fill by the borrow-pit rule: A·Σ(n·d)/4, where n cells meet at a corner.
    pub net: CubicFeet,
    /// Cut and fill apart, each cell split into four triangles about its middle.
    pub split: CutFill,
    /// Cells with four known corners; the others are left out.
    pub cells: usize,
    /// Cells that were left out.
    pub left_out: usize,
}

/// The volume of a grid, borrow-pit method.
///
/// Source: surveying textbooks, V = A·(Σh₁ + 2Σh₂ + 3Σh₃ + 4Σh₄)/4.
///
/// # Errors
/// When rows differ in length, a size is not above zero, or no cell has four known corners.
pub fn grid(grid: &Grid) -> Result<GridVolume, VolumeError> {
    let cell = size(grid.along, words::volume::what::cells_length())?
        * size(grid.across, words::volume::what::cells_width())?;
    let first = grid.corners.first().map_or(0, Vec::len);
    for (row, corners) in grid.corners.iter().enumerate() {
        if corners.len() != first {
            return Err(VolumeError::UnevenRows {
                row: row + 1,
                has: corners.len(),
                first,
            });
        }
    }
    let mut all = GridVolume::default();
    let mut weighed = 0.0;
    for rows in grid.corners.windows(2) {
        for column in 1..first {
            let around = [
                rows[0][column - 1],
                rows[0][column],
                rows[1][column],
                rows[1][column - 1],
            ];
            let [Some(a), Some(b), Some(c), Some(d)] = around else {
                all.left_out += 1;
                continue;
            };
            let corners = [a, b, c, d].map(Length::feet);
            // Each cell gives each of its corners one count: n adds up by itself.
            weighed += corners.iter().sum::<f64>();
            all.split += about_middle(SquareFeet(cell), corners);
            all.cells += 1;
        }
    }
    if all.cells == 0 {
        return Err(VolumeError::NoCells);
    }
    all.net = CubicFeet(cell * weighed / 4.0);
    Ok(all)
}

fn size(length: Length, what: Fixed) -> Result<f64, VolumeError> {
    if length > Length::ZERO {
        Ok(length.feet())
    } else {
        Err(VolumeError::NotAbove { what })
    }
}

/// Four triangles about a cell's middle, where the difference is the mean of the corners'.
fn about_middle(cell: SquareFeet, corners: [f64; 4]) -> CutFill {
    let middle = corners.iter().sum::<f64>() / 4.0;
    (0..4)
        .map(|one| prism(cell * 0.25, [corners[one], corners[(one + 1) % 4], middle]))
        .sum()
}

/// Cut and fill from points that each stand for an area: ΣA·d, by sign.
///
/// # Errors
/// When an area is negative or no number.
pub fn points(points: &[(SquareFeet, Length)]) -> Result<CutFill, VolumeError> {
    points
        .iter()
        .map(|(area, difference)| {
            let area = can_be(Figure::Area, area.0)?;
            Ok(CutFill::of(CubicFeet(area * difference.feet())))
        })
        .sum()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn even(rows: usize, columns: usize, by: i64) -> Grid {
        Grid {
            along: ft(5000),
            across: ft(5000),
            corners: vec![vec![Some(ft(by)); columns]; rows],
        }
    }

    #[test]
    fn a_missing_corner_leaves_its_cells_out() {
        let mut with_gap = even(3, 3, 100);
        with_gap.corners[0][0] = None;
        let volume = grid(&with_gap).unwrap();
        assert_eq!((volume.cells, volume.left_out), (3, 1));
        assert!((volume.net.cubic_yards() - 3.0 * 2500.0 / 27.0).abs() < 1e-9);
        with_gap.corners[1][1] = None;
        assert_eq!(grid(&with_gap), Err(VolumeError::NoCells));
        with_gap.corners[2].pop();
        let uneven = grid(&with_gap).unwrap_err();
        assert!(uneven.to_string().contains("Row 3"), "{uneven}");
        assert!(uneven.text().spanish.contains("fila 3"));
        let none = Grid {
            along: Length::ZERO,
            ..even(2, 2, 1)
        };
        assert!(matches!(grid(&none), Err(VolumeError::NotAbove { .. })));
    }

    proptest! {
        /// Cut less fill is the borrow-pit rule's volume.
        #[test]
        fn both_ways_agree(by in prop::collection::vec(prop::collection::vec(-300_i64..300, 4), 2..6)) {
            let volume = grid(&Grid {
                along: ft(1000),
                across: ft(2000),
                corners: by.iter().map(|row| row.iter().map(|one| Some(ft(*one))).collect()).collect(),
            }).unwrap();
            prop_assert!((volume.split.net().0 - volume.net.0).abs() < 1e-6);
        }

        /// Points of one sign sum to that sign alone.
        #[test]
        fn points_go_by_sign(area in 0.0..500.0_f64, by in 1_i64..300) {
            let both = points(&[(SquareFeet(area), ft(by)), (SquareFeet(area), ft(-by))]).unwrap();
            prop_assert!(both.net().0.abs() < 1e-9);
            prop_assert!((both.cut.0 - area * ft(by).feet()).abs() < 1e-9);
        }
    }
}
