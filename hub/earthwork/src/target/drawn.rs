//! How is a target drawn: where its line and its edges run on the plan, what to dig to along it, a face's section.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::{DigTo, OnLine, Shape, Target};
use crate::alignment::{Alignment, StationOffset};
use crate::grade::{Corner, Face};
use crate::length::Length;
use crate::point::Point;
use crate::vector::counts;

/// Every foot is looked at, and every step; on longer lines, so many places and every step.
const PLACES: i64 = 2_000;
/// What is drawn lies this near to what is asked for: less than a pencil's width on any screen.
const NEAR: Length = Length::from_hundredths_of_a_foot(1);

/// A target as a page draws it.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Drawn {
    /// Where its line runs: an arc in short straights. Empty when it has no line.
    pub line: Vec<Point>,
    /// Where it ends beside its line, or all around: a surface's outline and holes come back to where they begin.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub edges: Vec<Vec<Point>>,
    /// What to dig to along its line, up-station; a step stands at one station twice. Of a face, its toe.
    pub profile: Vec<ProfilePoint>,
    /// Square to a face's toe, from the toe to the crest; empty when it is no face.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub section: Vec<SectionPoint>,
}

/// What to dig to at a station.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct ProfilePoint {
    /// Along the line.
    pub station: Length,
    /// Under all layers, and under an undercut where there is one.
    pub dig_to: Length,
}

/// A corner of a face.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct SectionPoint {
    /// Level, outward from the toe.
    pub out: Length,
    /// Above the toe.
    pub up: Length,
}

/// A line with the widths to both sides of it.
type Sides<'a> = (&'a Alignment, Length, Length);

impl Target {
    /// The target, drawn; none when the shape itself runs nowhere: a level or a plane ends at its boundary alone.
    pub fn drawn(&self) -> Option<Drawn> {
        if let Shape::Surface(net) | Shape::Strip { ground: net } = &self.shape {
            let edges = net.made().ok()?.edges().to_vec();
            return Some(Drawn {
                edges,
                ..Drawn::default()
            });
        }
        let places = self.drawn_places()?;
        let line = places.iter().filter_map(|station| {
            let (station, offset) = (*station, Length::ZERO);
            Some((station, self.place(StationOffset { station, offset }).ok()?))
        });
        let line: Vec<(Length, Point)> = line.collect();
        let mut profile = Vec::new();
        for (station, at) in &line {
            let here = match self.toe(*station) {
                Some(toe) => vec![toe],
                None => match self.dig_to(*at) {
                    Ok(DigTo::At(dig_to)) => vec![(*station, dig_to)],
                    Ok(DigTo::NearStep {
                        station,
                        before,
                        after,
                    }) => vec![(station, before), (station, after)],
                    // Outside its own boundary a target asks for nothing.
                    Err(_) => vec![],
                },
            };
            let here = here
                .into_iter()
                .map(|(station, dig_to)| ProfilePoint { station, dig_to });
            let here: Vec<ProfilePoint> = here.collect();
            if !profile.ends_with(&here) {
                profile.extend(here);
            }
        }
        let line: Vec<Point> = line.into_iter().map(|(_, at)| at).collect();
        Some(Drawn {
            line: fewest(&line, off_line, counts(NEAR)),
            edges: self.sides(&places),
            profile: fewest(&profile, off_grade, counts(NEAR)),
            section: match &self.shape {
                Shape::Face(face) => section(&face.drawn().faces),
                _ => Vec::new(),
            },
        })
    }

    /// The stations that are looked at, up-station: evenly, and where a grade breaks or a step falls.
    fn drawn_places(&self) -> Option<Vec<Length>> {
        let (first, last) = self.stations()?;
        let long = (last - first).tenth_micrometres();
        let foot = Length::from_hundredths_of_a_foot(100).tenth_micrometres();
        let parts = (long / foot + 1).clamp(1, PLACES);
        let even = (0..=parts).filter_map(|part| {
            let along = i128::from(long) * i128::from(part) / i128::from(parts);
            Some(first + Length::from_tenth_micrometres(i64::try_from(along).ok()?))
        });
        let of_corners = |corners: &[Corner]| -> Vec<Length> {
            let half = |corner: &Corner| {
                Length::from_tenth_micrometres(corner.curve.tenth_micrometres() / 2)
            };
            let ends = |one: &Corner| {
                [
                    one.station - half(one),
                    one.station,
                    one.station + half(one),
                ]
            };
            corners.iter().flat_map(ends).collect()
        };
        let breaks = match &self.shape {
            Shape::Run(run) => run.steps.iter().map(|step| step.from).collect(),
            Shape::Along(along) => {
                let along = along.drawn();
                let mut breaks = of_corners(&along.corners);
                breaks.extend(along.steps.iter().map(|step| step.station));
                breaks
            }
            Shape::Trench(trench) => {
                let inverts = &trench.drawn().inverts;
                inverts.iter().map(|invert| invert.station).collect()
            }
            Shape::Face(face) => of_corners(&face.drawn().corners),
            _ => Vec::new(),
        };
        let mut places: Vec<Length> = even.chain(breaks).collect();
        places.retain(|station| (first..=last).contains(station));
        places.sort_unstable();
        places.dedup();
        Some(places)
    }

    /// A face's toe at a station, under all layers; none when it is no face, or the toe is not drawn so far.
    fn toe(&self, station: Length) -> Option<(Length, Length)> {
        let Shape::Face(face) = &self.shape else {
            return None;
        };
        let layers: Length = self.stack.layers.iter().map(|layer| layer.thickness).sum();
        Some((station, face.made().ok()?.toe_at(station)? - layers))
    }

    /// The edges to the left and to the right of its line; a face's crest.
    fn sides(&self, places: &[Length]) -> Vec<Vec<Point>> {
        let made: Option<Sides<'_>> = match &self.shape {
            Shape::Along(along) => along.made().ok().map(OnLine::sides),
            Shape::Trench(trench) => trench.made().ok().map(OnLine::sides),
            Shape::Face(face) => face.made().ok().map(OnLine::sides),
            _ => None,
        };
        let Some((axis, left, right)) = made else {
            return Vec::new();
        };
        let beside = |offset: Length| -> Vec<Point> {
            let places = places.iter().map(|station| (*station, offset));
            let points = places
                .filter_map(|(station, offset)| axis.place(StationOffset { station, offset }).ok());
            fewest(&points.collect::<Vec<_>>(), off_line, counts(NEAR))
        };
        [-left, right]
            .into_iter()
            .filter(|offset| *offset != Length::ZERO)
            .map(beside)
            .collect()
    }
}

/// The corners of a face from its parts.
fn section(faces: &[Face]) -> Vec<SectionPoint> {
    let mut at = SectionPoint::default();
    let mut corners = vec![at];
    for face in faces {
        at.out += face.run;
        at.up += face.rise;
        corners.push(at);
    }
    corners
}

/// How far a place lies off the straight from one to another, in counts.
pub(crate) fn off_line(from: &Point, to: &Point, at: &Point) -> f64 {
    let ((x, y), (px, py)) = (from.to(*to), from.to(*at));
    let long = x.hypot(y);
    if long == 0.0 {
        px.hypot(py)
    } else {
        (x * py - y * px).abs() / long
    }
}

/// How far an elevation lies off the straight grade from one to another, in counts.
fn off_grade(from: &ProfilePoint, to: &ProfilePoint, at: &ProfilePoint) -> f64 {
    if at.station == from.station || at.station == to.station {
        // Of a step's face both ends are drawn.
        return f64::INFINITY;
    }
    let share = counts(at.station - from.station) / counts(to.station - from.station);
    let straight = counts(from.dig_to) + share * counts(to.dig_to - from.dig_to);
    (counts(at.dig_to) - straight).abs()
}

/// The ends, and of the points between only those without which the drawing would leave what is asked for by more than
/// `near` counts (Douglas and Peucker's way: the farthest point is kept and both halves are looked at again).
pub(crate) fn fewest<T: Copy>(points: &[T], off: impl Fn(&T, &T, &T) -> f64, near: f64) -> Vec<T> {
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
            && by > near
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
    use crate::alignment::Piece;
    use crate::layout::tie::Side;
    use crate::surface::{self, Surface, Vertex};
    use crate::target::{Along, Axis, CutFace, Net, ProfileStep, Run, Stack, Step};

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
        Target::new(Shape::Run(run), bare())
    }

    fn bare() -> Stack {
        Stack {
            surface: "bare ground".into(),
            layers: vec![],
        }
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

    /// Invented: on 5,000 ft, where not every foot is looked at, a step of 1 ft at station 2,345.67 stays a step.
    #[test]
    fn a_step_on_a_long_line_is_no_slope() {
        let corner = |station, elevation| Corner {
            station: ft(station),
            elevation: ft(elevation),
            curve: Length::ZERO,
        };
        let at = |x| Point { x: ft(x), y: ft(0) };
        let along = Along {
            axis: Axis {
                start: at(0),
                first: ft(0),
                pieces: vec![Piece::Line { to: at(500_000) }],
            },
            left: ft(200),
            right: ft(0),
            corners: vec![corner(0, 10_000), corner(500_000, 10_000)],
            steps: vec![ProfileStep {
                station: ft(234_567),
                by: ft(-100),
                window: ft(0),
            }],
        };
        let drawn = Target::new(Shape::Along(along.into()), bare())
            .drawn()
            .unwrap();
        let profile = drawn.profile.iter().map(|one| (one.station, one.dig_to));
        let wanted = [
            (0, 10_000),
            (234_567, 10_000),
            (234_567, 9_900),
            (500_000, 9_900),
        ];
        assert!(profile.eq(wanted.map(|(station, dig_to)| (ft(station), ft(dig_to)))));
        let left = |x| Point {
            x: ft(x),
            y: ft(200),
        };
        assert_eq!(drawn.edges, [[left(0), left(500_000)]]);
    }

    /// Invented: 4 ft upright, 4 ft tread, 6 ft at one to one, on a toe that rises from 98.00 to 99.00.
    #[test]
    fn a_face_is_its_toe_its_section_and_its_crest() {
        let corner = |station, elevation| Corner {
            station: ft(station),
            elevation: ft(elevation),
            curve: Length::ZERO,
        };
        let part = |rise, run| Face {
            rise: ft(rise),
            run: ft(run),
        };
        let at = |x, y| Point { x: ft(x), y: ft(y) };
        let face = CutFace {
            axis: Axis {
                start: at(6000, 9000),
                first: ft(0),
                pieces: vec![Piece::Line { to: at(9500, 9000) }],
            },
            rises: Side::Left,
            corners: vec![corner(0, 9800), corner(3500, 9900)],
            faces: vec![part(400, 0), part(0, 400), part(600, 600)],
        };
        let drawn = Target::new(Shape::Face(face.into()), bare())
            .drawn()
            .unwrap();
        let profile = drawn.profile.iter().map(|one| (one.station, one.dig_to));
        assert!(profile.eq([(ft(0), ft(9800)), (ft(3500), ft(9900))]));
        let section: Vec<_> = drawn.section.iter().map(|one| (one.out, one.up)).collect();
        let wanted = [(0, 0), (0, 400), (400, 400), (1000, 1000)];
        assert_eq!(section, wanted.map(|(out, up)| (ft(out), ft(up))));
        assert_eq!(drawn.edges, [[at(6000, 10_000), at(9500, 10_000)]]);
    }

    /// Invented: a square of 10 ft with a hole of 2 ft in it, each edge divided: the outline is its corners.
    #[test]
    fn a_surface_is_its_outline_and_its_holes() {
        let at = |x, y| Point { x: ft(x), y: ft(y) };
        let ring = |from: i64, to: i64| {
            let middle = i64::midpoint(from, to);
            [
                at(from, from),
                at(middle, from),
                at(to, from),
                at(to, middle),
                at(to, to),
                at(middle, to),
                at(from, to),
                at(from, middle),
            ]
        };
        let points = [ring(0, 1000), ring(400, 600)].concat();
        let points = points.into_iter().map(|at| Vertex {
            at,
            elevation: ft(100),
        });
        let surface = Surface::from_points(&surface::Drawn {
            points: points.collect(),
            boundary: Some((0..8).collect()),
            holes: vec![(8..16).collect()],
            ..surface::Drawn::default()
        });
        let net = Net::of(&surface.unwrap(), "square.csv");
        let drawn = Target::new(Shape::Surface(net.into()), bare())
            .drawn()
            .unwrap();
        assert!(drawn.line.is_empty() && drawn.profile.is_empty());
        let mut edges = drawn.edges;
        edges.sort_by_key(|ring| ring.iter().map(|at| at.x).max());
        for (ring, (from, to)) in edges.iter().zip([(400, 600), (0, 1000)]) {
            assert_eq!(ring.first(), ring.last());
            // The corners, and the middle where the walk began if it began there.
            assert!((5..=6).contains(&ring.len()), "{ring:?}");
            for corner in [at(from, from), at(to, from), at(to, to), at(from, to)] {
                assert!(ring.contains(&corner), "{ring:?}");
            }
        }
        assert_eq!(edges.len(), 2);
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
        let few = fewest(&hill, off, counts(NEAR));
        assert!(few.len() < 60, "{}", few.len());
        for pair in few.windows(2) {
            for at in hill
                .iter()
                .filter(|at| pair[0].station < at.station && at.station < pair[1].station)
            {
                assert!(off(&pair[0], &pair[1], at) <= counts(NEAR));
            }
        }
        assert!(fewest::<ProfilePoint>(&[], off, 0.0).is_empty());
    }
}
