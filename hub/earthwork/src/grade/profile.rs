//! A profile along stations: straight grades, vertical curves, and steps whose both sides are shown.
//!
//! A vertical curve is the parabola that is tangent to both grades, half its length to each side of their
//! point of intersection: z = z(BVC) + g₁·x + (g₂ − g₁)·x²/(2·L) (as in any route-surveying textbook).

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::GradeError;
use crate::length::Length;
use crate::target::{DigTo, NEAR_STEP};
use crate::vector::{counts, rounded};

/// Where two grades meet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Corner {
    /// Its station.
    pub station: Length,
    /// Its elevation, on the straight grades and before any step.
    pub elevation: Length,
    /// The length of its vertical curve; zero for none.
    #[serde(default)]
    pub curve: Length,
}

/// A step: from here on everything stands higher or lower.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rise {
    /// The station of its face.
    pub station: Length,
    /// Positive up.
    pub by: Length,
}

/// High or low.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Extreme {
    /// Water leaves it both ways.
    High,
    /// Water gathers there.
    Low,
}

/// A high or low point of the grades, steps left out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Turning {
    /// Which.
    pub extreme: Extreme,
    /// Its station.
    pub station: Length,
    /// Its elevation, before any step.
    pub elevation: Length,
}

/// Elevations along stations.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Profile {
    corners: Vec<Corner>,
    steps: Vec<Rise>,
}

impl Profile {
    /// A profile from its corners and its steps, both up-station.
    ///
    /// # Errors
    /// When there are fewer than two corners, something is out of order, or a curve does not fit.
    pub fn new(corners: Vec<Corner>, steps: Vec<Rise>) -> Result<Profile, GradeError> {
        let (Some(first), Some(last), true) = (corners.first(), corners.last(), corners.len() > 1)
        else {
            return Err(GradeError::TooFewCorners {
                corners: corners.len(),
            });
        };
        if let Some(pair) = corners
            .windows(2)
            .find(|pair| pair[1].station <= pair[0].station)
        {
            return Err(GradeError::CornerOrder {
                station: pair[1].station,
            });
        }
        let misfit = |corner: &Corner| GradeError::CurveDoesNotFit {
            station: corner.station,
            length: corner.curve,
        };
        for corner in &corners {
            let at_end = corner == first || corner == last;
            if corner.curve < Length::ZERO || (at_end && corner.curve != Length::ZERO) {
                return Err(misfit(corner));
            }
        }
        for pair in corners.windows(2) {
            if pair[0].curve + pair[1].curve > (pair[1].station - pair[0].station) * 2 {
                return Err(misfit(if pair[1].curve > pair[0].curve {
                    &pair[1]
                } else {
                    &pair[0]
                }));
            }
        }
        let mut before = first.station;
        for step in &steps {
            let in_curve = corners
                .iter()
                .any(|corner| (step.station - corner.station).abs() * 2 < corner.curve);
            if step.station <= before || step.station >= last.station || in_curve {
                return Err(GradeError::StepMisplaced {
                    station: step.station,
                });
            }
            before = step.station;
        }
        Ok(Profile { corners, steps })
    }

    /// The first and the last station.
    pub fn stations(&self) -> (Length, Length) {
        let station = |corner: Option<&Corner>| corner.map_or(Length::ZERO, |at| at.station);
        (station(self.corners.first()), station(self.corners.last()))
    }

    /// The elevation at a station; both elevations within half a foot of a step.
    ///
    /// # Errors
    /// Past an end, by how much.
    pub fn elevation_at(&self, station: Length) -> Result<DigTo, GradeError> {
        let on_grades = self.on_grades(station)?;
        let up_to = |limit: Length| -> Length {
            self.steps
                .iter()
                .filter(|step| step.station <= limit)
                .map(|step| step.by)
                .sum()
        };
        let near = self
            .steps
            .iter()
            .filter(|step| step.by != Length::ZERO)
            .min_by_key(|step| (step.station - station).abs())
            .filter(|step| (step.station - station).abs() <= NEAR_STEP);
        Ok(match near {
            None => DigTo::At(on_grades + up_to(station)),
            Some(step) => DigTo::NearStep {
                station: step.station,
                before: on_grades + up_to(step.station) - step.by,
                after: on_grades + up_to(step.station),
            },
        })
    }

    /// The grade at a station, feet per foot, positive rising up-station; steps left out.
    ///
    /// # Errors
    /// Past an end, by how much.
    pub fn grade_at(&self, station: Length) -> Result<f64, GradeError> {
        let (before, after) = self.reach(station)?;
        let straight = grade(before, after);
        Ok(match self.curve_at(station) {
            Some((corner, first, second)) => {
                let along = counts(station - corner.station) + counts(corner.curve) / 2.0;
                first + (second - first) * along / counts(corner.curve)
            }
            None => straight,
        })
    }

    /// The high and low points between the ends, up-station; steps left out.
    pub fn turnings(&self) -> Vec<Turning> {
        self.corners
            .windows(3)
            .filter_map(|three| {
                let (first, second) = (grade(&three[0], &three[1]), grade(&three[1], &three[2]));
                if first * second >= 0.0 {
                    return None;
                }
                let curve = counts(three[1].curve);
                let along = curve * first / (first - second);
                let station = three[1].station + rounded(along - curve / 2.0);
                Some(Turning {
                    extreme: if first > 0.0 {
                        Extreme::High
                    } else {
                        Extreme::Low
                    },
                    station,
                    elevation: self.on_grades(station).ok()?,
                })
            })
            .collect()
    }

    /// The elevation before any step.
    pub(crate) fn on_grades(&self, station: Length) -> Result<Length, GradeError> {
        if let Some((corner, first, second)) = self.curve_at(station) {
            let half = counts(corner.curve) / 2.0;
            let along = counts(station - corner.station) + half;
            let rise = first * (along - half) + (second - first) * along * along / (4.0 * half);
            return Ok(corner.elevation + rounded(rise));
        }
        let (before, after) = self.reach(station)?;
        let rise = grade(before, after) * counts(station - before.station);
        Ok(before.elevation + rounded(rise))
    }

    /// The curve that a station lies in, with the grades before and after it.
    fn curve_at(&self, station: Length) -> Option<(&Corner, f64, f64)> {
        self.corners
            .windows(3)
            .find(|three| (station - three[1].station).abs() * 2 < three[1].curve)
            .map(|three| {
                (
                    &three[1],
                    grade(&three[0], &three[1]),
                    grade(&three[1], &three[2]),
                )
            })
    }

    /// The corners before and after a station.
    fn reach(&self, station: Length) -> Result<(&Corner, &Corner), GradeError> {
        let (from, to) = self.stations();
        let past = (from - station).max(station - to);
        self.corners
            .windows(2)
            .find(|pair| pair[0].station <= station && station <= pair[1].station)
            .map(|pair| (&pair[0], &pair[1]))
            .ok_or(GradeError::PastEnd {
                station,
                by: past,
                from,
                to,
            })
    }
}

fn grade(before: &Corner, after: &Corner) -> f64 {
    counts(after.elevation - before.elevation) / counts(after.station - before.station)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn corner(station: i64, elevation: i64, curve: i64) -> Corner {
        Corner {
            station: ft(station),
            elevation: ft(elevation),
            curve: ft(curve),
        }
    }

    /// Exercise, source withheld: intersection 56+50 at 1325.00, 500 ft, +5 % and −3.5 %; answers ours.
    #[test]
    fn a_crest_has_its_high_point() {
        let crest = Profile::new(
            vec![
                corner(540_000, 131_250, 0),
                corner(565_000, 132_500, 50_000),
                corner(590_000, 131_625, 0),
            ],
            vec![],
        )
        .unwrap();
        for (station, thousandths) in [
            (540_000, 1_312_500),
            (550_000, 1_316_650),
            (560_000, 1_319_100),
            (570_000, 1_319_850),
            (580_000, 1_318_900),
            (590_000, 1_316_250),
        ] {
            let z = Length::from_thousandths_of_a_foot(thousandths);
            assert_eq!(
                crest.elevation_at(ft(station)),
                Ok(DigTo::At(z)),
                "{station}"
            );
        }
        let [high] = crest.turnings()[..] else {
            panic!("one high point")
        };
        assert_eq!(high.extreme, Extreme::High);
        assert!((high.station.feet() - 5694.118).abs() < 0.001);
        assert!((high.elevation.feet() - 1319.853).abs() < 0.001);
        assert!((crest.grade_at(ft(540_001)).unwrap() - 0.05).abs() < 1e-5);
        assert!(crest.grade_at(high.station).unwrap().abs() < 1e-9);
    }

    /// Exercise, source withheld: intersection 74+26.50 at 772.30, 750 ft, −4 % and +2 %; answers ours.
    #[test]
    fn a_sag_has_its_low_point() {
        let sag = Profile::new(
            vec![
                corner(705_150, 78_730, 0),
                corner(742_650, 77_230, 75_000),
                corner(780_150, 77_980, 0),
            ],
            vec![],
        )
        .unwrap();
        assert_eq!(
            sag.turnings(),
            [Turning {
                extreme: Extreme::Low,
                station: ft(755_150),
                elevation: ft(77_730)
            }]
        );
    }

    /// Invented, demo: a footing that falls 1 ft at 18 ft, on a line that rises 1 %.
    #[test]
    fn near_a_step_both_sides_are_told() {
        let stepped = Profile::new(
            vec![corner(0, 30_000, 0), corner(4000, 30_040, 0)],
            vec![Rise {
                station: ft(1800),
                by: ft(-100),
            }],
        )
        .unwrap();
        assert_eq!(stepped.elevation_at(ft(1000)), Ok(DigTo::At(ft(30_010))));
        assert_eq!(stepped.elevation_at(ft(3000)), Ok(DigTo::At(ft(29_930))));
        assert_eq!(
            stepped.elevation_at(ft(1800)),
            Ok(DigTo::NearStep {
                station: ft(1800),
                before: ft(30_018),
                after: ft(29_918)
            })
        );
    }

    #[test]
    fn a_malformed_profile_is_refused_and_nothing_is_extended() {
        let make = |corners: &[Corner], steps: &[i64]| {
            let steps = steps.iter().map(|at| Rise {
                station: ft(*at),
                by: ft(-100),
            });
            Profile::new(corners.to_vec(), steps.collect())
        };
        let (start, end) = (corner(0, 10_000, 0), corner(10_000, 10_100, 0));
        assert!(matches!(
            make(&[start], &[]),
            Err(GradeError::TooFewCorners { corners: 1 })
        ));
        assert!(matches!(
            make(&[end, start], &[]),
            Err(GradeError::CornerOrder { .. })
        ));
        let long = corner(5000, 10_200, 10_001);
        assert!(matches!(
            make(&[start, long, end], &[]),
            Err(GradeError::CurveDoesNotFit { .. })
        ));
        let fits = corner(5000, 10_200, 10_000);
        assert!(make(&[start, fits, end], &[]).is_ok());
        for wrong in [&[0][..], &[10_000], &[2000, 1000]] {
            assert!(matches!(
                make(&[start, end], wrong),
                Err(GradeError::StepMisplaced { .. })
            ));
        }
        assert!(make(&[start, fits, end], &[5000]).is_err());
        let past = make(&[start, end], &[]).unwrap().elevation_at(ft(10_001));
        assert!(
            past.unwrap_err()
                .to_string()
                .contains("is 0.01 ft past the profile")
        );
    }
}
