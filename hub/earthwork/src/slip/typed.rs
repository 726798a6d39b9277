//! What else could the same keys mean: digits swapped, inches typed as tenths.

use crate::length::{FOOT, INCH, Length, METRE};
use crate::rod::{Rod, RodUnit};

/// The smallest mark of a decimal rod, in counts; none for a rod in inches.
fn mark_of(rod: &Rod) -> Option<i64> {
    match rod.unit {
        RodUnit::FeetHundredths => Some(FOOT / 100),
        RodUnit::Metres => Some(METRE / 1000),
        RodUnit::FeetInchesEighths => None,
    }
}

/// Readings that two neighbouring digits, swapped, would have made of this one; `typed` without the bracket.
pub(super) fn digits_swapped(typed: Length, rod: &Rod) -> Vec<Length> {
    let Some(mark) = mark_of(rod) else {
        return vec![];
    };
    let counts = typed.tenth_micrometres();
    if counts < 0 || counts % mark != 0 {
        return vec![];
    }
    let value = counts / mark;
    let places = if mark == METRE / 1000 { 4 } else { 3 };
    let mut swapped = Vec::new();
    let mut low = 1_i64;
    for place in 1.. {
        if place >= places && value / low < 10 {
            break;
        }
        let (right, left) = ((value / low) % 10, (value / low / 10) % 10);
        let other = value + (right - left) * low * 9;
        let length = Length::from_tenth_micrometres(other * mark);
        if left != right && length <= rod.length {
            swapped.push(length);
        }
        low *= 10;
    }
    swapped
}

/// Feet and inches that may have been typed on a tenths rod's pad: 7.10 for 7 ft 10 in, 7.5 for 7 ft 5 in.
pub(super) fn inches_as_tenths(typed: Length, rod: &Rod) -> Vec<(u8, u8)> {
    let hundredth = FOOT / 100;
    let counts = typed.tenth_micrometres();
    if rod.unit != RodUnit::FeetHundredths || counts < 0 || counts % hundredth != 0 {
        return vec![];
    }
    let (feet, part) = (counts / FOOT, counts % FOOT / hundredth);
    let tenths = (part % 10 == 0 && part > 0).then_some(part / 10);
    [(1..=11).contains(&part).then_some(part), tenths]
        .into_iter()
        .flatten()
        .filter_map(|inches| Some((u8::try_from(feet).ok()?, u8::try_from(inches).ok()?)))
        .collect()
}

/// The length of so many feet and inches.
pub(super) fn feet_and_inches(feet: u8, inches: u8) -> Length {
    Length::from_tenth_micrometres(i64::from(feet) * FOOT + i64::from(inches) * INCH)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rod::tests::rod;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    #[test]
    fn neighbouring_digits_swap_within_the_rods_length() {
        let tenths = rod(RodUnit::FeetHundredths);
        assert_eq!(digits_swapped(ft(542), &tenths), [ft(524), ft(452)]);
        assert_eq!(digits_swapped(ft(710), &tenths), [ft(701), ft(170)]);
        assert_eq!(digits_swapped(ft(1213), &tenths), [ft(1231), ft(1123)]);
        assert_eq!(digits_swapped(ft(45), &tenths), [ft(54), ft(405)]);
        assert_eq!(digits_swapped(ft(555), &tenths), []);
        assert_eq!(
            digits_swapped(ft(542), &rod(RodUnit::FeetInchesEighths)),
            []
        );
    }

    #[test]
    fn inches_typed_on_a_tenths_pad_are_seen() {
        let tenths = rod(RodUnit::FeetHundredths);
        assert_eq!(inches_as_tenths(ft(710), &tenths), [(7, 10), (7, 1)]);
        assert_eq!(inches_as_tenths(ft(750), &tenths), [(7, 5)]);
        assert_eq!(inches_as_tenths(ft(705), &tenths), [(7, 5)]);
        assert_eq!(inches_as_tenths(ft(742), &tenths), []);
        assert_eq!(inches_as_tenths(ft(700), &tenths), []);
    }
}
