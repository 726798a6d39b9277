//! How is a target with a line drawn: where the line runs on the plan, and what to dig to along it.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{DigTo, Target};
use crate::alignment::StationOffset;
use crate::length::Length;
use crate::point::Point;
use crate::vector::counts;

/// Every foot is looked at, so that no step of a run is passed over; on longer lines, so many places.
const PLACES: i64 = 2_000;
/// What is drawn lies this near to what is asked for: less than a pencil's width on any screen.
const NEAR: Length = Length::from_hundredths_of_a_foot(1);

/// A target's line as a page draws it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Drawn {
    /// Where it runs: an arc in short straights.
    pub line: Vec<Point>,
    /// What to dig to along it, up-station; a step stands at one station twice.
    pub profile: Vec<ProfilePoint>,
}

/// What to dig to at a station.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct ProfilePoint {
    /// Along the line.
    pub station: Length,
    /// Under all layers, and under an undercut where there is one.
    pub dig_to: Length,
}

impl Target {
    /// The target's line, drawn; none when it has none.
    pub fn drawn(&self) -> Option<Drawn> {
        let (first, last) = self.stations()?;
        let long = (last - first).tenth_micrometres();
        let foot = Length::from_hundredths_of_a_foot(100).tenth_micrometres();
        let parts = (long / foot + 1).clamp(1, PLACES);
        let (mut line, mut profile) = (Vec::new(), Vec::new());
        for part in 0..=parts {
            let along = i128::from(long) * i128::from(part) / i128::from(parts);
            let station = first + Length::from_tenth_micrometres(i64::try_from(along).ok()?);
            let offset = Length::ZERO;
            let Ok(at) = self.place(StationOffset { station, offset }) else {
                continue;
            };
            line.push(at);
            match self.dig_to(at) {
                Ok(DigTo::At(dig_to)) => profile.push(ProfilePoint { station, dig_to }),
                Ok(DigTo::NearStep {
                    station,
                    before,
                    after,
                }) => {
                    let face = [before, after].map(|dig_to| ProfilePoint { station, dig_to });
                    if !profile.ends_with(&face) {
                        profile.extend(face);
                    }
                }
                // Outside its own boundary a target asks for nothing.
                Err(_) => {}
            }
        }
        let off_line = |from: &Point, to: &Point, at: &Point| {
            let ((x, y), (px, py)) = (from.to(*to), from.to(*at));
            let long = x.hypot(y);
            if long == 0.0 {
                px.hypot(py)
            } else {
                (x * py - y * px).abs() / long
            }
        };
        let off_grade = |from: &ProfilePoint, to: &ProfilePoint, at: &ProfilePoint| {
            let long = counts(to.station - from.station);
            let share = if long == 0.0 {
                0.0
            } else {
                counts(at.station - from.station) / long
            };
            let straight = counts(from.dig_to) + share * counts(to.dig_to - from.dig_to);
            if at.station == from.station || at.station == to.station {
                // Of a step's face both ends are drawn.
                return f64::INFINITY;
            }
            (counts(at.dig_to) - straight).abs()
        };
        Some(Drawn {
            line: fewest(&line, off_line),
            profile: fewest(&profile, off_grade),
        })
    }
}

/// The ends, and of the points between only those without which the drawing would leave what is asked for (Douglas and
/// Peucker's way: the farthest point is kept and both halves are looked at again).
fn fewest<T: Copy>(points: &[T], off: impl Fn(&T, &T, &T) -> f64) -> Vec<T> {
    let Some(end) = points.len().checked_sub(1) else {
        return vec![];
    };
    let mut kept = vec![false; points.len()];
    (kept[0], kept[end]) = (true, true);
    let mut open = vec![(0, end)];
    while let Some((from, to)) = open.pop() {
        let between = (from + 1..to).map(|at| (at, off(&points[from], &points[to], &points[at])));
        let farthest = between.max_by(|(_, a), (_, b)| a.total_cmp(b));
        if let Some((at, by)) = farthest
            && by > counts(NEAR)
        {
            kept[at] = true;
            open.extend([(from, at), (at, to)]);
        }
    }
    let points = points.iter().zip(kept);
    points
        .filter(|(_, kept)| *kept)
        .map(|(point, _)| *point)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::target::{Run, Shape, Stack, Step};

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn run() -> Target {
        let step = |from, elevation| Step {
            from: ft(from),
            elevation: ft(elevation),
            window: ft(25),
        };
        let run = Run {
            start: Point { x: ft(0), y: ft(0) },
            toward: Point {
                x: ft(100),
                y: ft(0),
            },
            length: ft(4_000),
            left: ft(300),
            right: ft(300),
            steps: vec![step(0, 30_000), step(1_840, 29_900)],
        };
        let stack = Stack {
            surface: "bare ground".into(),
            layers: vec![],
        };
        Target::new(Shape::Run(run), stack)
    }

    /// Invented: level at 300.00 to station 18.40, then at 299.00 to 40.
    #[test]
    fn a_stepped_run_is_its_corners() {
        let drawn = run().drawn().unwrap();
        assert_eq!(
            drawn.line,
            [
                Point { x: ft(0), y: ft(0) },
                Point {
                    x: ft(4_000),
                    y: ft(0)
                }
            ]
        );
        let profile: Vec<(Length, Length)> = drawn
            .profile
            .iter()
            .map(|one| (one.station, one.dig_to))
            .collect();
        let wanted = [
            (0, 30_000),
            (1_840, 30_000),
            (1_840, 29_900),
            (4_000, 29_900),
        ];
        assert_eq!(
            profile,
            wanted.map(|(station, dig_to)| (ft(station), ft(dig_to)))
        );
    }

    #[test]
    fn what_is_drawn_is_no_farther_from_what_is_asked_for_than_a_pencils_width() {
        let hill: Vec<ProfilePoint> = (0..400)
            .map(|n: i32| ProfilePoint {
                station: ft(i64::from(n) * 100),
                dig_to: Length::from_feet(300.0 - f64::from(n * n) / 4_000.0).unwrap(),
            })
            .collect();
        let off = |from: &ProfilePoint, to: &ProfilePoint, at: &ProfilePoint| {
            let share = counts(at.station - from.station) / counts(to.station - from.station);
            (counts(at.dig_to - from.dig_to) - share * counts(to.dig_to - from.dig_to)).abs()
        };
        let few = fewest(&hill, off);
        assert!(few.len() < 60, "{}", few.len());
        for pair in few.windows(2) {
            for at in hill
                .iter()
                .filter(|at| pair[0].station < at.station && at.station < pair[1].station)
            {
                assert!(off(&pair[0], &pair[1], at) <= counts(NEAR));
            }
        }
        assert!(fewest::<ProfilePoint>(&[], off).is_empty());
    }
}
