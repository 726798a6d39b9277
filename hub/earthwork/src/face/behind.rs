//! What hangs over a face, what came down, and what its bottom does to a footing nearby. Volumes in cubic yards.

use words::Fixed;

use super::FaceError;
use crate::length::Length;

const CUBIC_FEET_IN_A_YARD: f64 = 27.0;

/// Nothing that is weighed, pressed or sloped on a site comes to more, in any unit.
const MOST: f64 = 1e9;

fn sound(what: Fixed, value: f64) -> Result<f64, FaceError> {
    if (0.0..=MOST).contains(&value) {
        return Ok(value);
    }
    Err(FaceError::NotANumber {
        what,
        value: value.to_string(),
    })
}

fn size(what: Fixed, length: Length) -> Result<f64, FaceError> {
    if length < Length::ZERO {
        return Err(FaceError::Negative {
            what,
            value: length,
        });
    }
    Ok(length.feet())
}

/// The soil between a face and a flatter plane from the same toe, below the crest's level, in square feet:
/// ½·h²·(flat − steep); zero when the face is as flat. The textbooks' sliding wedge, and what a layback takes off.
///
/// # Errors
/// When a size is below zero or no number.
pub fn wedge_area(height: Length, steep: f64, flat: f64) -> Result<f64, FaceError> {
    let (height, steep) = (
        size(words::face::what::height(), height)?,
        sound(words::face::what::faces_slope(), steep)?,
    );
    let flat = sound(words::face::what::planes_slope(), flat)?;
    Ok(0.5 * height * height * (flat - steep).max(0.0))
}

/// The soil that hangs over the line it should be cut to, in cubic yards, for a length of face on rising ground: the
/// triangle of toe, crest and daylight, by their runs and rises from the toe.
///
/// # Errors
/// When the length of face is below zero.
pub fn hanging_volume(
    length: Length,
    crest: (Length, Length),
    daylight: (Length, Length),
) -> Result<f64, FaceError> {
    let length = size(words::face::what::length_of_face(), length)?;
    let twice = daylight.0.feet() * crest.1.feet() - crest.0.feet() * daylight.1.feet();
    Ok(0.5 * twice.max(0.0) * length / CUBIC_FEET_IN_A_YARD)
}

/// What came down, in cubic yards: half of length × height × depth back, the wedge (common practice).
///
/// # Errors
/// When a size is below zero.
pub fn slough_volume(length: Length, height: Length, back: Length) -> Result<f64, FaceError> {
    let box_of = size(words::face::what::length(), length)?
        * size(words::face::what::height(), height)?
        * size(words::face::what::depth_back(), back)?;
    Ok(0.5 * box_of / CUBIC_FEET_IN_A_YARD)
}

/// How far a dig's bottom lies below the line that falls from a footing's near lower edge, run to one of rise; none
/// when it does not. Below it an engineer says what is done (common practice: 1 to 1).
///
/// # Errors
/// When the distance is below zero or the line is no slope.
pub fn under_influence(
    dig_bottom: Length,
    footing_bottom: Length,
    distance: Length,
    run_per_rise: f64,
) -> Result<Option<Length>, FaceError> {
    let away = size(words::face::what::to_the_footing(), distance)?;
    let run = sound(words::face::what::lines_slope(), run_per_rise)?;
    if run <= 0.0 {
        return Err(FaceError::NotANumber {
            what: words::face::what::lines_slope(),
            value: run_per_rise.to_string(),
        });
    }
    let line = footing_bottom.feet() - away / run;
    let below = line - dig_bottom.feet();
    Ok((below > 0.0)
        .then(|| Length::from_feet(below).unwrap_or(Length::ZERO))
        .filter(|below| *below > Length::ZERO))
}

/// Textbooks' critical heights of a dry face in one soil, in the length unit of cohesion over unit weight. They differ by what
/// they take the soil to bear: the hopeful one is twice the cautious one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CriticalHeight {
    /// By a plane through the toe, the soil whole up to the top and holding in tension (Culmann; for a vertical face the same
    /// as Rankine's): the most hopeful.
    pub height: f64,
    /// The same for a vertical face that has cracked down half of its height, 2.67·c/γ·tan(45° + φ/2) (Terzaghi, Theoretical
    /// Soil Mechanics, 1943, article 57): two thirds. None for another face.
    pub cracked: Option<f64>,
    /// For a vertical face when no tension at all is relied on, a dry crack to the whole depth of [`Self::crack`],
    /// 2·c/γ·tan(45° + φ/2): half, and the lower bound of limit analysis. None for another face.
    pub no_tension: Option<f64>,
    /// How deep a tension crack may go (Rankine).
    pub crack: f64,
}

/// 4·c·sin β·cos φ / (γ·(1 − cos(β − φ))) and what is left of it with cracks, for the engineer alone: one soil, dry, no load,
/// no water in the cracks, plane slip. Water makes each of them less. It is no permission.
///
/// # Errors
/// When the face is no steeper than the soil's friction, or a number is none.
pub fn critical_height(
    cohesion: f64,
    unit_weight: f64,
    friction_degrees: f64,
    face_degrees: f64,
) -> Result<CriticalHeight, FaceError> {
    let cohesion = sound(words::face::what::cohesion(), cohesion)?;
    let weight = sound(words::face::what::unit_weight(), unit_weight)?;
    let friction = sound(words::face::what::friction(), friction_degrees)?;
    if weight <= 0.0 || friction >= 90.0 {
        return Err(FaceError::NotANumber {
            what: words::face::what::weight_or_friction(),
            value: format!("{unit_weight}, {friction_degrees}°"),
        });
    }
    if !(face_degrees > friction && face_degrees <= 90.0) {
        return Err(FaceError::NotANumber {
            what: words::face::what::faces_angle(),
            value: format!("{face_degrees}°"),
        });
    }
    let (phi, beta) = (friction.to_radians(), face_degrees.to_radians());
    let height = 4.0 * cohesion * beta.sin() * phi.cos() / (weight * (1.0 - (beta - phi).cos()));
    let crack = 2.0 * cohesion / weight * (std::f64::consts::FRAC_PI_4 + phi / 2.0).tan();
    let vertical = face_degrees >= 90.0;
    Ok(CriticalHeight {
        height,
        cracked: vertical.then_some(height * 2.0 / 3.0),
        no_tension: vertical.then_some(crack),
        crack,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    #[test]
    fn on_the_line_is_not_below_it() {
        // Derived: 10 ft away from a footing at 100 ft, the line stands at 90 ft.
        let at = |bottom| under_influence(ft(bottom), ft(10_000), ft(1000), 1.0).unwrap();
        assert_eq!(at(9000), None);
        assert_eq!(at(8950), Some(ft(50)));
        assert!(under_influence(ft(0), ft(0), ft(-1), 1.0).is_err());
        assert!(under_influence(ft(0), ft(0), ft(1), 0.0).is_err());
    }

    /// Terzaghi 1943: 4·c/γ whole, 2.67·c/γ cracked to half its height; 2·c/γ where no tension is relied on.
    #[test]
    fn the_cautious_heights_stand_beside_the_hopeful_one() {
        let clay = critical_height(500.0, 120.0, 0.0, 90.0).unwrap();
        let by_c = |height: f64| height * 120.0 / 500.0;
        assert!((by_c(clay.height) - 4.0).abs() < 1e-9);
        assert!((by_c(clay.cracked.unwrap()) - 2.67).abs() < 0.004);
        assert!((by_c(clay.no_tension.unwrap()) - 2.0).abs() < 1e-9);
        let silt = critical_height(20.0, 18.0, 15.0, 90.0).unwrap();
        assert!((silt.no_tension.unwrap() / silt.height - 0.5).abs() < 1e-9);
        let sloped = critical_height(20.0, 18.0, 15.0, 60.0).unwrap();
        assert_eq!((sloped.cracked, sloped.no_tension), (None, None));
    }

    #[test]
    fn sizes_below_zero_and_flat_faces_are_refused() {
        assert!(slough_volume(ft(-1600), ft(800), ft(500)).is_err());
        assert!(wedge_area(ft(1000), -0.5, 1.0).is_err());
        assert!(critical_height(15.0, 20.0, 30.0, 30.0).is_err());
        assert!(critical_height(15.0, 0.0, 30.0, 90.0).is_err());
        assert!(critical_height(f64::NAN, 20.0, 0.0, 90.0).is_err());
        assert!(critical_height(1e308, 20.0, 0.0, 90.0).is_err());
        assert!(wedge_area(ft(1000), 0.0, 1e308).is_err());
    }
}
