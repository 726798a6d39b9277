//! A cut face laid back or benched: rises and runs from the toe outward.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::GradeError;
use crate::length::Length;
use crate::target::{DigTo, NEAR_STEP};
use crate::vector::{counts, rounded};

/// One part of a face: a slope, a vertical (no run) or a bench's tread (no rise).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Face {
    /// Up.
    pub rise: Length,
    /// Outward, level.
    pub run: Length,
}

/// A face from toe to crest.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Layback {
    faces: Vec<Face>,
}

impl Layback {
    /// A face from its parts, from the toe outward.
    ///
    /// # Errors
    /// When there is no part, one has neither rise nor run, or a size is below zero.
    pub fn new(faces: Vec<Face>) -> Result<Layback, GradeError> {
        for face in &faces {
            for (what, value) in [
                (words::grade::what::faces_rise(), face.rise),
                (words::grade::what::faces_run(), face.run),
            ] {
                if value < Length::ZERO {
                    return Err(GradeError::NegativeSize { what, value });
                }
            }
        }
        let empty = |face: &Face| face.rise == Length::ZERO && face.run == Length::ZERO;
        if faces.is_empty() || faces.iter().any(empty) {
            return Err(GradeError::EmptyFace);
        }
        Ok(Layback { faces })
    }

    /// From toe to crest, level.
    pub fn width(&self) -> Length {
        self.faces.iter().map(|face| face.run).sum()
    }

    /// From toe to crest, up.
    pub fn height(&self) -> Length {
        self.faces.iter().map(|face| face.rise).sum()
    }

    /// How steep the face is at a level distance from the toe, feet per foot; none past its ends.
    pub fn slope_at(&self, distance: Length) -> Option<f64> {
        let mut out = Length::ZERO;
        for face in &self.faces {
            out += face.run;
            if distance <= out && face.run > Length::ZERO {
                return Some(counts(face.rise) / counts(face.run));
            }
        }
        None
    }

    /// The elevation at a level distance from the toe, which stands at `toe`; both elevations within half a foot
    /// of a vertical, whose distance is then given as the station.
    ///
    /// # Errors
    /// In front of the toe or behind the crest, by how much.
    pub fn elevation_at(&self, toe: Length, distance: Length) -> Result<DigTo, GradeError> {
        let width = self.width();
        let by = (-distance).max(distance - width);
        if by > Length::ZERO {
            return Err(GradeError::BesideFace {
                before: distance < Length::ZERO,
                by,
                width,
            });
        }
        let (mut out, mut up) = (Length::ZERO, toe);
        let mut near: Option<(Length, DigTo)> = None;
        let mut here = up;
        for face in &self.faces {
            let off = (distance - out).abs();
            if face.run == Length::ZERO {
                let both = DigTo::NearStep {
                    station: out,
                    before: up,
                    after: up + face.rise,
                };
                if off <= NEAR_STEP && near.is_none_or(|(nearest, _)| off < nearest) {
                    near = Some((off, both));
                }
            } else if out <= distance {
                let along = (distance - out).min(face.run);
                here = up + rounded(counts(face.rise) * counts(along) / counts(face.run));
            }
            out += face.run;
            up += face.rise;
        }
        Ok(near.map_or(DigTo::At(here), |(_, both)| both))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    /// Invented, demo: 4 ft vertical, 4 ft tread, then 6 ft at 1 to 1.
    fn bench() -> Layback {
        let face = |rise, run| Face {
            rise: ft(rise),
            run: ft(run),
        };
        Layback::new(vec![face(400, 0), face(0, 400), face(600, 600)]).unwrap()
    }

    #[test]
    fn a_bench_is_flat_a_slope_rises_and_a_vertical_has_two_sides() {
        let at = |u| bench().elevation_at(ft(10_000), ft(u));
        assert_eq!(at(200), Ok(DigTo::At(ft(10_400))));
        assert_eq!(at(700), Ok(DigTo::At(ft(10_700))));
        assert_eq!(at(1000), Ok(DigTo::At(ft(11_000))));
        assert_eq!(
            at(20),
            Ok(DigTo::NearStep {
                station: ft(0),
                before: ft(10_000),
                after: ft(10_400)
            })
        );
        assert_eq!((bench().width(), bench().height()), (ft(1000), ft(1000)));
    }

    #[test]
    fn beside_the_face_is_refused() {
        let error = bench().elevation_at(ft(0), ft(1025)).unwrap_err();
        assert!(
            error.to_string().contains("0.25 ft behind the crest"),
            "{error}"
        );
        assert!(bench().elevation_at(ft(0), ft(-1)).is_err());
        assert_eq!(Layback::new(vec![]), Err(GradeError::EmptyFace));
    }
}
