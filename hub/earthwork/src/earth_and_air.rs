//! What do earth, air and a leaning rod add to a reading.

use crate::length::{Length, whole};

/// Curvature less refraction, 0.0675 m at one kilometre, as textbooks give it (0.574 ft at a mile).
const AT_A_KILOMETRE: f64 = 0.0675;

/// How much too large a rod reads at a distance because the earth is round and the air bends the sight: it
/// grows with the square of the distance.
pub fn curvature_and_refraction(distance: Length) -> Length {
    let kilometres = distance.metres() / 1000.0;
    rounded_metres(AT_A_KILOMETRE * kilometres * kilometres)
}

/// What a rod reads that leans by so many degrees: true / cos θ, always too large, so that the ground seems
/// low. `None` from 90° on, where a rod no longer stands.
pub fn leaning_rod(upright: Length, degrees: f64) -> Option<Length> {
    if !(-90.0 < degrees && degrees < 90.0) {
        return None;
    }
    let metres = upright.metres() / degrees.to_radians().cos();
    Some(rounded_metres(metres))
}

fn rounded_metres(metres: f64) -> Length {
    Length::from_tenth_micrometres(whole((metres * 1e7).round()))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Mathematics: 5.00 ft / cos 5° = 5.019 ft.
    #[test]
    fn a_leaning_rod_reads_too_much_either_way() {
        let five = Length::from_hundredths_of_a_foot(500);
        let leaning = leaning_rod(five, 5.0).unwrap();
        assert!((leaning.feet() - 5.0191).abs() < 0.0001);
        assert_eq!(leaning_rod(five, -5.0), Some(leaning));
        assert_eq!(leaning_rod(five, 0.0), Some(five));
        assert_eq!(leaning_rod(five, 90.0), None);
        assert_eq!(leaning_rod(five, f64::NAN), None);
    }

    /// Engineering handbooks: 0.0206 ft at 1,000 ft.
    #[test]
    fn earth_and_air_grow_with_the_square() {
        let at = |feet: i64| {
            curvature_and_refraction(Length::from_hundredths_of_a_foot(feet * 100)).feet()
        };
        assert!((at(1000) - 0.0206).abs() < 0.000_05);
        assert!((at(2000) / at(1000) - 4.0).abs() < 0.001);
    }
}
