//! What is odd about runs, trenches and alignments: steps that no form makes, flat pipes, ends that don't meet, pipes too near.

use earthwork::alignment::{StationOffset, show_station};
use earthwork::layout::step_window::{Forms, step_window};
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::target::Shape;

use super::{ENDS_AGREE, Found, one_elevation};
use crate::site::{FormsAtHand, Target};

/// A step may miss a whole number of forms by this: 0.01 ft (common practice).
const STEP_OFF: Length = Length::from_hundredths_of_a_foot(1);
/// Ends nearer than this are meant to meet: 1 ft (common practice).
const ENDS_NEAR: Length = Length::from_hundredths_of_a_foot(100);
/// Between a pipe and what crosses it: 1 ft when nobody says more (common practice).
const CLEARANCE: Length = Length::from_hundredths_of_a_foot(100);
/// A crossing is looked for at so many places along a trench at the most.
const MOST_PLACES: i64 = 2_000;
/// The steps of a target: station, window, and how much it goes up.
fn steps(target: &Target) -> Vec<(Length, Length, Length)> {
    match &target.grade.shape {
        Shape::Run(run) => run
            .steps
            .windows(2)
            .map(|pair| {
                let by = pair[1].elevation - pair[0].elevation;
                (pair[1].from, pair[1].window, by)
            })
            .filter(|(_, _, by)| *by != Length::ZERO)
            .collect(),
        Shape::Along(along) => along
            .drawn()
            .steps
            .iter()
            .map(|step| (step.station, step.window, step.by))
            .collect(),
        _ => Vec::new(),
    }
}

impl Found {
    /// Step heights are whole forms; step stations are what widths and filler can make.
    pub(super) fn steps(&mut self, target: &Target, forms: &FormsAtHand) {
        let height = forms.height.tenth_micrometres().max(1);
        let first = target
            .grade
            .stations()
            .map_or(Length::ZERO, |(first, _)| first);
        let widths: Vec<Forms> = forms
            .widths
            .iter()
            .map(|width| Forms {
                width: *width,
                at_hand: None,
            })
            .collect();
        for (station, window, by) in steps(target) {
            let path = format!("targets.{}", target.id);
            let over = by.tenth_micrometres().rem_euclid(height);
            let off = Length::from_tenth_micrometres(over.min(height - over));
            let at = show_station(station);
            if off > STEP_OFF {
                self.odd(
                    path.clone(),
                    words::plan_sense::the_step_at_is_high(&at, &by.abs(), &forms.height),
                );
            }
            if widths.is_empty() {
                continue;
            }
            if let Err(error) = step_window(&widths, forms.filler, station - first, window) {
                self.odd(path, words::plan_sense::the_step_at(&at, &error.text()));
            }
        }
    }

    /// A trench falls enough; a profile reaches as far as its line.
    pub(super) fn reach(&mut self, target: &Target) {
        let path = format!("targets.{}", target.id);
        let profile = match &target.grade.shape {
            Shape::Trench(trench) => {
                let drawn = trench.drawn();
                for pair in drawn.inverts.windows(2) {
                    let run = (pair[1].station - pair[0].station).feet();
                    let fall = (pair[1].elevation - pair[0].elevation).abs().feet() / run;
                    if fall < drawn.least_fall {
                        let (from, to) =
                            (show_station(pair[0].station), show_station(pair[1].station));
                        let (fall, least) = (fall * 100.0, drawn.least_fall * 100.0);
                        self.odd(
                            path.clone(),
                            words::plan_sense::from_pipe_falls_less_than(
                                &from,
                                &to,
                                &format!("{fall:.2}"),
                                &format!("{least:.2}"),
                            ),
                        );
                    }
                }
                let ends = drawn.inverts.first().zip(drawn.inverts.last());
                ends.map(|(first, last)| (first.station, last.station))
            }
            Shape::Along(along) => {
                let corners = &along.drawn().corners;
                let ends = corners.first().zip(corners.last());
                ends.map(|(first, last)| (first.station, last.station))
            }
            _ => None,
        };
        let (Some(profile), Some(line)) = (profile, target.grade.stations()) else {
            return;
        };
        let apart = (profile.0 - line.0).abs().max((profile.1 - line.1).abs());
        if apart > ENDS_AGREE {
            let show = |ends: (Length, Length)| (show_station(ends.0), show_station(ends.1));
            let ((a, b), (c, d)) = (show(profile), show(line));
            self.odd(
                path,
                words::plan_sense::profile_goes_from_line_from(&a, &b, &c, &d),
            );
        }
    }

    /// Ends that come near each other meet, at one elevation.
    pub(super) fn ends(&mut self, one: &Target, other: &Target) {
        for a in ends(one) {
            for b in ends(other) {
                let apart = a.distance(b);
                if apart > ENDS_NEAR {
                    continue;
                }
                let path = format!("targets.{}", other.id);
                let (one_id, other_id) = (&one.id, &other.id);
                if apart > ENDS_AGREE {
                    self.odd(
                        path.clone(),
                        words::plan_sense::and_end_apart(&one_id, &other_id, &apart),
                    );
                }
                let (Some(z), Some(w)) = (one_elevation(one, a), one_elevation(other, b)) else {
                    continue;
                };
                let by = (z - w).abs();
                if by > ENDS_AGREE {
                    self.odd(
                        path,
                        words::plan_sense::where_meet_their_dig_tos(&one_id, &other_id, &by),
                    );
                }
            }
        }
    }

    /// What crosses a pipe keeps clear of it.
    pub(super) fn crossing(&mut self, one: &Target, other: &Target) {
        let (trench, crossed) = match (&one.grade.shape, &other.grade.shape) {
            (Shape::Trench(_), _) => (one, other),
            (_, Shape::Trench(_)) => (other, one),
            _ => return,
        };
        let (Some((first, last)), Some(_)) = (trench.grade.stations(), crossed.grade.stations())
        else {
            return;
        };
        let pipe = |target: &Target| match &target.grade.shape {
            Shape::Trench(trench) => trench.drawn().outside_diameter,
            _ => Length::ZERO,
        };
        let foot = Length::from_hundredths_of_a_foot(100).tenth_micrometres();
        let span = (last - first).tenth_micrometres();
        let step = (span / MOST_PLACES).max(foot);
        let mut before: Option<Length> = None;
        let mut along = 0;
        while along <= span {
            let station = first + Length::from_tenth_micrometres(along);
            along += step;
            let beside = StationOffset {
                station,
                offset: Length::ZERO,
            };
            let Ok(at) = trench.grade.place(beside) else {
                continue;
            };
            let Ok(found) = crossed.grade.station_offset(at) else {
                before = None;
                continue;
            };
            let here = found.offset;
            let crosses = before.is_some_and(|before| {
                (before < Length::ZERO) != (here < Length::ZERO)
                    && (before - here).abs().tenth_micrometres() <= 2 * step
            });
            before = Some(here);
            let onto = StationOffset {
                offset: Length::ZERO,
                ..found
            };
            let Some(there) = crossed.grade.place(onto).ok().filter(|_| crosses) else {
                continue;
            };
            let (Some(z), Some(w)) = (one_elevation(trench, at), one_elevation(crossed, there))
            else {
                continue;
            };
            let lower = if z < w { trench } else { crossed };
            let clear = (z - w).abs() - pipe(lower);
            if clear < CLEARANCE {
                let (a, b, at) = (&trench.id, &crossed.id, show_station(station));
                self.odd(
                    format!("targets.{a}"),
                    words::plan_sense::cross_with_between_them(&at, &a, &b, &clear, &CLEARANCE),
                );
            }
        }
    }
}

/// Both ends of a target's line.
fn ends(target: &Target) -> Vec<Point> {
    let Some((first, last)) = target.grade.stations() else {
        return Vec::new();
    };
    [first, last]
        .into_iter()
        .filter_map(|station| {
            let offset = Length::ZERO;
            target.grade.place(StationOffset { station, offset }).ok()
        })
        .collect()
}
