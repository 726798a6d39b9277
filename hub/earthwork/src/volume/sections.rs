//! Volumes along a line: average end areas, prismoids, and strips between readings.

use super::{CutFill, VolumeError};
use crate::amount::{CubicFeet, SquareFeet};
use crate::figure::{Figure, FigureError, can_be, can_be_feet};
use crate::length::Length;

/// Average end area: V = L·(A₁ + A₂)/2 (surveying textbooks). It is up to half too much where an end is a point.
pub fn average_end_area(length: Length, first: SquareFeet, last: SquareFeet) -> CubicFeet {
    CubicFeet(length.feet() * (first.0 + last.0) / 2.0)
}

/// Prismoidal formula: V = L·(A₁ + 4Aₘ + A₂)/6, where the middle area comes from the mean of the ends' dimensions and
/// not from the mean of their areas (surveying textbooks).
pub fn prismoidal(
    length: Length,
    first: SquareFeet,
    middle: SquareFeet,
    last: SquareFeet,
) -> CubicFeet {
    CubicFeet(length.feet() * (first.0 + 4.0 * middle.0 + last.0) / 6.0)
}

/// A trench's section: a level bottom between sides alike.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Trapezoid {
    /// Width of the bottom.
    pub bottom: Length,
    /// From the ground down to the bottom.
    pub depth: Length,
    /// How far a side goes out for each foot up; 0 is a vertical side.
    pub out_per_up: f64,
}

impl Trapezoid {
    /// The same, when its measures are those of a trench.
    ///
    /// # Errors
    /// When one is below zero or beyond every site's.
    pub fn checked(self) -> Result<Trapezoid, FigureError> {
        can_be_feet(Figure::Distance, self.bottom)?;
        can_be_feet(Figure::Thickness, self.depth)?;
        can_be(Figure::Slope, self.out_per_up)?;
        Ok(self)
    }

    /// Its area: (b + s·d)·d.
    pub fn area(&self) -> SquareFeet {
        let depth = self.depth.feet();
        SquareFeet((self.bottom.feet() + self.out_per_up * depth) * depth)
    }

    /// The section halfway to another, from the mean of each dimension.
    #[must_use]
    pub fn halfway(&self, other: &Trapezoid) -> Trapezoid {
        let mean = |one: Length, other: Length| {
            Length::from_tenth_micrometres(i64::midpoint(
                one.tenth_micrometres(),
                other.tenth_micrometres(),
            ))
        };
        Trapezoid {
            bottom: mean(self.bottom, other.bottom),
            depth: mean(self.depth, other.depth),
            out_per_up: f64::midpoint(self.out_per_up, other.out_per_up),
        }
    }

    /// The prismoid from here to another section, `length` along.
    pub fn to(&self, other: &Trapezoid, length: Length) -> CubicFeet {
        prismoidal(
            length,
            self.area(),
            self.halfway(other).area(),
            other.area(),
        )
    }
}

/// End areas at a station.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Section {
    /// Where.
    pub station: Length,
    /// The area to be dug away.
    pub cut: SquareFeet,
    /// The area to be filled.
    pub fill: SquareFeet,
}

/// Cut and fill from section to section, average end area.
///
/// # Errors
/// When there are fewer than two sections, their stations do not go up, or an area is negative.
pub fn along(sections: &[Section]) -> Result<CutFill, VolumeError> {
    if sections.len() < 2 {
        return Err(VolumeError::OneSection);
    }
    for section in sections {
        can_be(Figure::Area, section.cut.0)?;
        can_be(Figure::Area, section.fill.0)?;
    }
    sections
        .windows(2)
        .enumerate()
        .map(|(number, pair)| {
            let length = pair[1].station - pair[0].station;
            if length <= Length::ZERO {
                return Err(VolumeError::NotInOrder { number: number + 2 });
            }
            Ok(CutFill {
                cut: average_end_area(length, pair[0].cut, pair[1].cut),
                fill: average_end_area(length, pair[0].fill, pair[1].fill),
            })
        })
        .sum()
}

/// A strip of one width whose difference (there − wanted) runs evenly from one end to the other, split at zero.
///
/// Source: the section is a rectangle, so the average end area is exact (plane geometry).
///
/// # Errors
/// When length or width is negative.
pub fn strip(
    length: Length,
    width: Length,
    first: Length,
    last: Length,
) -> Result<CutFill, VolumeError> {
    for (size, what) in [
        (length, words::volume::what::strips_length()),
        (width, words::volume::what::strips_width()),
    ] {
        if size < Length::ZERO {
            return Err(VolumeError::NotAbove { what });
        }
    }
    let (area, first, last) = (length.feet() * width.feet(), first.feet(), last.feet());
    if first * last >= 0.0 {
        return Ok(CutFill::of(CubicFeet(area * f64::midpoint(first, last))));
    }
    let part = first / (first - last);
    let part_of = |end: f64, part: f64| CutFill::of(CubicFeet(area * part * end / 2.0));
    Ok(part_of(first, part) + part_of(last, 1.0 - part))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    #[test]
    fn sections_go_in_order() {
        let at = |station, cut| Section {
            station: ft(station),
            cut: SquareFeet(cut),
            fill: SquareFeet(1.0),
        };
        let volume = along(&[at(0, 80.0), at(10_000, 140.0), at(20_000, 0.0)]).unwrap();
        assert!((volume.cut.0 - 18_000.0).abs() < 1e-9, "{volume:?}");
        assert!((volume.fill.0 - 200.0).abs() < 1e-9);
        assert_eq!(along(&[at(0, 1.0)]), Err(VolumeError::OneSection));
        let back = along(&[at(100, 1.0), at(100, 1.0)]).unwrap_err();
        assert_eq!(back, VolumeError::NotInOrder { number: 2 });
        assert!(along(&[at(0, -1.0), at(100, 1.0)]).is_err());
    }

    proptest! {
        /// Where the sides are vertical and the width stays, end areas are exact; elsewhere they are never too small.
        #[test]
        fn end_areas_are_never_too_small(one in 0_i64..1000, other in 0_i64..1000, out in 0.0..2.0_f64) {
            let end = |depth| Trapezoid { bottom: ft(300), depth: ft(depth), out_per_up: out };
            let (first, last) = (end(one), end(other));
            let rough = average_end_area(ft(5000), first.area(), last.area()).0;
            let fine = first.to(&last, ft(5000)).0;
            prop_assert!(rough >= fine - 1e-6, "{rough} {fine}");
            let upright = |depth| Trapezoid { out_per_up: 0.0, ..end(depth) };
            let exact = average_end_area(ft(5000), upright(one).area(), upright(other).area()).0;
            prop_assert!((upright(one).to(&upright(other), ft(5000)).0 - exact).abs() < 1e-3);
        }

        /// A strip is the sum of its halves, and cut less fill is the mean times the area.
        #[test]
        fn a_strip_adds_up(first in -200_i64..200, last in -200_i64..200) {
            let whole = strip(ft(1000), ft(600), ft(2 * first), ft(2 * last)).unwrap();
            let middle = ft(first + last);
            let halves = strip(ft(500), ft(600), ft(2 * first), middle).unwrap()
                + strip(ft(500), ft(600), middle, ft(2 * last)).unwrap();
            prop_assert!((whole.cut.0 - halves.cut.0).abs() < 1e-9);
            prop_assert!((whole.fill.0 - halves.fill.0).abs() < 1e-9);
            prop_assert!((whole.net().0 - 60.0 * middle.feet()).abs() < 1e-9);
        }
    }
}
