//! A stepped run: stations along a line, widths to both sides, one elevation from each step to the next.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::{DigTo, TargetError};
use crate::length::{Length, whole};
use crate::point::Point;

/// A footing, trench or drain along a straight line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Run {
    /// Station 0.
    pub start: Point,
    /// Any other point up-station on the line.
    pub toward: Point,
    /// From station 0 to the end.
    pub length: Length,
    /// Width to the left of the line, looking up-station.
    pub left: Length,
    /// Width to the right of the line, looking up-station.
    pub right: Length,
    /// From station 0 up.
    pub steps: Vec<Step>,
}

/// From here on the run stands at one elevation, up to the next step.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Step {
    /// The station of the step's face; 0 for the first.
    pub from: Length,
    /// The elevation of the shape's surface from here on.
    pub elevation: Length,
    /// How far, either way, the face may fall from its station.
    pub window: Length,
}

/// This near a step's face, either way, both elevations are shown and nobody guesses which side it is.
pub const NEAR_STEP: Length = Length::from_hundredths_of_a_foot(50);
/// Placing rounds to a count on each axis, so that this much past an edge is still the edge (1 µm).
const EDGE: Length = Length::from_tenth_micrometres(10);

impl Run {
    /// The place at a station and an offset; the offset is positive to the right looking up-station.
    ///
    /// # Errors
    /// When the line has no direction.
    pub fn place(&self, station: Length, offset: Length) -> Result<Point, TargetError> {
        let (east, north) = self.direction().ok_or(TargetError::NoDirection)?;
        let (along, right) = (counts(station), counts(offset));
        let moved = |counts: f64| Length::from_tenth_micrometres(whole(counts.round()));
        Ok(Point {
            x: self.start.x + moved(along * east + right * north),
            y: self.start.y + moved(along * north - right * east),
        })
    }

    /// The station and the offset of a place; the offset is positive to the right looking up-station. On a
    /// line without direction both are zero, and `check` says what is wrong.
    pub fn station_offset(&self, at: Point) -> (Length, Length) {
        let (east, north) = self.direction().unwrap_or((0.0, 0.0));
        let (x, y) = self.start.to(at);
        let length = |counts: f64| Length::from_tenth_micrometres(whole(counts.round()));
        (length(x * east + y * north), length(x * north - y * east))
    }

    /// One foot up-station, east and north.
    fn direction(&self) -> Option<(f64, f64)> {
        let (east, north) = self.start.to(self.toward);
        let apart = east.hypot(north);
        (apart > 0.0).then(|| (east / apart, north / apart))
    }

    /// The elevation of its surface at a place; both near a step.
    pub(super) fn surface_at(&self, at: Point) -> Result<DigTo, TargetError> {
        let (station, offset) = self.station_offset(at);
        let station = self.on_run(station)?;
        self.within_width(offset)?;
        let face = self
            .steps
            .windows(2)
            .map(|pair| (&pair[0], &pair[1]))
            .filter(|(before, after)| before.elevation != after.elevation)
            .min_by_key(|(_, after)| (station - after.from).abs())
            .filter(|(_, after)| (station - after.from).abs() <= NEAR_STEP);
        if let Some((before, after)) = face {
            return Ok(DigTo::NearStep {
                station: after.from,
                before: before.elevation,
                after: after.elevation,
            });
        }
        self.steps
            .iter()
            .rev()
            .find(|step| step.from <= station)
            .map(|step| DigTo::At(step.elevation))
            .ok_or(TargetError::NoSteps)
    }

    /// The station, held to the run's ends where rounding put it a count past them.
    fn on_run(&self, station: Length) -> Result<Length, TargetError> {
        let past = (-station).max(station - self.length);
        if past > EDGE {
            return Err(TargetError::PastEnd {
                station,
                by: past,
                length: self.length,
            });
        }
        Ok(station.max(Length::ZERO).min(self.length))
    }

    fn within_width(&self, offset: Length) -> Result<(), TargetError> {
        let (side, by) = if offset > Length::ZERO {
            ("right", offset - self.right)
        } else {
            ("left", -offset - self.left)
        };
        if by > EDGE {
            return Err(TargetError::BesideRun { side, by });
        }
        Ok(())
    }

    /// What is wrong with the run.
    pub(super) fn check(&self) -> Vec<TargetError> {
        let mut wrong = Vec::new();
        if self.direction().is_none() {
            wrong.push(TargetError::NoDirection);
        }
        if self.length <= Length::ZERO {
            wrong.push(TargetError::NoLength {
                length: self.length,
            });
        }
        if self.left < Length::ZERO
            || self.right < Length::ZERO
            || self.left + self.right == Length::ZERO
        {
            wrong.push(TargetError::NoWidth {
                left: self.left,
                right: self.right,
            });
        }
        match self.steps.first() {
            None => wrong.push(TargetError::NoSteps),
            Some(first) if first.from != Length::ZERO => {
                wrong.push(TargetError::FirstStep { from: first.from });
            }
            Some(_) => {}
        }
        for pair in self.steps.windows(2) {
            if pair[1].from <= pair[0].from {
                wrong.push(TargetError::StepOrder {
                    station: pair[1].from,
                });
            }
        }
        for step in &self.steps {
            if step.from > self.length {
                wrong.push(TargetError::StepPastEnd {
                    station: step.from,
                    length: self.length,
                });
            }
            if step.window < Length::ZERO {
                wrong.push(TargetError::StepWindow { station: step.from });
            }
        }
        wrong
    }
}

fn counts(length: Length) -> f64 {
    length.tenth_micrometres() as f64
}

#[cfg(test)]
mod tests {
    use super::super::tests::{at, ft};
    use super::*;

    /// Invented, demo: the stepped run south from (86.75, 93.00).
    fn south() -> Run {
        let step = |from, elevation| Step {
            from: ft(from),
            elevation: ft(elevation),
            window: ft(25),
        };
        Run {
            start: at(8675, 9300),
            toward: at(8675, 2100),
            length: ft(7200),
            left: ft(300),
            right: ft(300),
            steps: vec![
                step(0, 30_333),
                step(1800, 30_233),
                step(3600, 30_133),
                step(5400, 30_033),
            ],
        }
    }

    fn dig_to(run: &Run, x: i64, y: i64) -> Result<DigTo, TargetError> {
        run.surface_at(at(x, y))
            .map(|surface| surface.lowered(ft(133)))
    }

    #[test]
    fn right_of_a_run_that_goes_south_is_west() {
        let run = south();
        assert_eq!(run.station_offset(at(8975, 8800)), (ft(500), ft(-300)));
        assert_eq!(run.place(ft(500), ft(300)), Ok(at(8375, 8800)));
    }

    #[test]
    fn each_step_has_its_own_dig_to() {
        let run = south();
        for (y, expected) in [
            (8900, 30_200),
            (7600, 30_200),
            (7400, 30_100),
            (5800, 30_100),
            (2200, 29_900),
            (2100, 29_900),
            (9300, 30_200),
        ] {
            assert_eq!(dig_to(&run, 8675, y), Ok(DigTo::At(ft(expected))), "y {y}");
        }
    }

    #[test]
    fn near_a_step_both_sides_are_told() {
        let run = south();
        let both = Ok(DigTo::NearStep {
            station: ft(1800),
            before: ft(30_200),
            after: ft(30_100),
        });
        for y in [7550, 7500, 7450] {
            assert_eq!(dig_to(&run, 8675, y), both, "y {y}");
        }
        assert_eq!(dig_to(&run, 8675, 7551), Ok(DigTo::At(ft(30_200))));
    }

    #[test]
    fn outside_is_refused_with_how_far_and_what_to_do() {
        let run = south();
        for (x, y, says) in [
            (8675, 9301, "0.01 ft past its start"),
            (8675, 2050, "0.5 ft past its end"),
            (8976, 5000, "0.01 ft past the left edge"),
            (8300, 5000, "0.75 ft past the right edge"),
        ] {
            let error = dig_to(&run, x, y).unwrap_err().to_string();
            assert!(error.contains(says), "{error}");
        }
        assert!(
            dig_to(&run, 8975, 5000).is_ok(),
            "an edge belongs to the run"
        );
    }

    #[test]
    fn a_malformed_run_is_found_out() {
        let mut run = south();
        run.toward = run.start;
        run.length = Length::ZERO;
        run.left = -run.left;
        run.steps[0].from = ft(10);
        run.steps[2].from = ft(1800);
        let wrong = run.check();
        for expected in [
            TargetError::NoDirection,
            TargetError::NoLength {
                length: Length::ZERO,
            },
            TargetError::NoWidth {
                left: ft(-300),
                right: ft(300),
            },
            TargetError::FirstStep { from: ft(10) },
            TargetError::StepOrder { station: ft(1800) },
            TargetError::StepPastEnd {
                station: ft(5400),
                length: Length::ZERO,
            },
        ] {
            assert!(wrong.contains(&expected), "{expected:?} in {wrong:?}");
        }
        assert_eq!(south().check(), []);
    }
}
