//! How much is to be dug or filled: cut and fill apart, split where the difference is zero.
//!
//! A difference is what is there − what should be: positive is cut. [`grid`] takes corners of cells or points that
//! stand for areas, [`sections`] end areas along a line, [`between`] two surfaces of triangles.

pub mod between;
pub mod grid;
pub mod sections;

use std::iter::Sum;
use std::ops::{Add, AddAssign};

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::{Fixed, Text};

use crate::amount::{CubicFeet, SquareFeet};
use crate::figure::FigureError;

/// Cut and fill, apart; neither is below zero.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CutFill {
    /// To be dug away.
    pub cut: CubicFeet,
    /// To be filled.
    pub fill: CubicFeet,
}

impl CutFill {
    /// Cut less fill.
    pub fn net(self) -> CubicFeet {
        self.cut - self.fill
    }

    /// A volume that is cut when positive and fill when negative.
    pub fn of(signed: CubicFeet) -> CutFill {
        CutFill {
            cut: CubicFeet(signed.0.max(0.0)),
            fill: CubicFeet((-signed.0).max(0.0)),
        }
    }
}

impl Add for CutFill {
    type Output = CutFill;
    fn add(self, other: CutFill) -> CutFill {
        CutFill {
            cut: self.cut + other.cut,
            fill: self.fill + other.fill,
        }
    }
}

impl AddAssign for CutFill {
    fn add_assign(&mut self, other: CutFill) {
        *self = *self + other;
    }
}

impl Sum for CutFill {
    fn sum<I: Iterator<Item = CutFill>>(all: I) -> CutFill {
        all.fold(CutFill::default(), Add::add)
    }
}

/// Why there is no volume.
#[derive(Clone, Debug, PartialEq)]
pub enum VolumeError {
    /// Rows of a grid that differ in length.
    UnevenRows {
        /// Counted from 1.
        row: usize,
        /// Its corners.
        has: usize,
        /// Corners of the first row.
        first: usize,
    },
    /// No cell with four known corners.
    NoCells,
    /// Stations that do not go up.
    NotInOrder {
        /// Counted from 1.
        number: usize,
    },
    /// Fewer than two sections.
    OneSection,
    /// A size that is not above zero.
    NotAbove {
        /// Which.
        what: Fixed,
    },
    /// The surfaces do not lie over each other.
    Apart,
    /// A figure that can't be.
    Figure(FigureError),
}

impl VolumeError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::UnevenRows { row, has, first } => words::volume::uneven_rows(row, has, first),
            Self::NoCells => words::volume::no_cells().into(),
            Self::NotInOrder { number } => words::volume::not_in_order(number),
            Self::OneSection => words::volume::one_section().into(),
            Self::NotAbove { what } => words::volume::not_above(what),
            Self::Apart => words::volume::apart().into(),
            Self::Figure(error) => error.text(),
        }
    }
}

words::error!(VolumeError; Figure(FigureError));

/// A prism that stands on a triangle, with its difference at each corner in feet, split where it is zero.
///
/// Source: a triangular prism's volume is its area times the mean of its three heights (solid geometry); the tip cut
/// off by the zero line has its area in proportion to both edges that the line crosses.
pub fn prism(area: SquareFeet, differences: [f64; 3]) -> CutFill {
    let net = CubicFeet(area.0 * differences.iter().sum::<f64>() / 3.0);
    let alone = (0..3).find(|one| {
        let (a, b, c) = (
            differences[*one],
            differences[(one + 1) % 3],
            differences[(one + 2) % 3],
        );
        a * b < 0.0 && (a * c < 0.0 || c == 0.0)
    });
    let Some(one) = alone else {
        return CutFill::of(net);
    };
    let (a, b, c) = (
        differences[one],
        differences[(one + 1) % 3],
        differences[(one + 2) % 3],
    );
    let tip = CubicFeet(area.0 * a / 3.0 * (a / (a - b)) * (a / (a - c)));
    CutFill::of(tip) + CutFill::of(net - tip)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Derived: of a right triangle of 1 ft with +1, 0 and −1 at its corners, half is cut and half is fill.
    #[test]
    fn a_prism_is_split_at_the_zero_line() {
        let split = prism(SquareFeet(0.5), [1.0, 0.0, -1.0]);
        assert!((split.cut.0 - split.fill.0).abs() < 1e-15);
        assert!((split.cut.0 - 0.5 * 0.5 / 3.0).abs() < 1e-15, "{split:?}");
        let flat = prism(SquareFeet(2.0), [-0.5, -0.5, -0.5]);
        assert_eq!(flat, CutFill::of(CubicFeet(-1.0)));
    }

    proptest! {
        /// The parts make the whole, neither is negative, corners may come in any order, and turning every sign
        /// turns cut into fill.
        #[test]
        fn the_parts_make_the_whole(a in -3.0..3.0_f64, b in -3.0..3.0_f64, c in -3.0..3.0_f64, area in 0.0..100.0_f64) {
            let split = prism(SquareFeet(area), [a, b, c]);
            prop_assert!(split.cut.0 >= 0.0 && split.fill.0 >= 0.0);
            prop_assert!((split.net().0 - area * (a + b + c) / 3.0).abs() < 1e-9);
            let turned = prism(SquareFeet(area), [b, c, a]);
            prop_assert!((turned.cut.0 - split.cut.0).abs() < 1e-9);
            let mirrored = prism(SquareFeet(area), [-a, -b, -c]);
            prop_assert!((mirrored.fill.0 - split.cut.0).abs() < 1e-9);
        }
    }
}
