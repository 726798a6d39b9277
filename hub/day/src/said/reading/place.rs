//! Where the rod stands when it stands on no mark: at a station, at two ties, or paced between two marks.
//!
//! The computed place and its doubt are kept with the reading. On a slope, a place in doubt is an elevation in
//! doubt: how much the target changes over the place's doubt goes into the guard band.

use contract::ToSchema;
use earthwork::alignment::{StationOffset, show_station};
use earthwork::layout::tie::{Side, Tape, paced_between, swing_tie};
use earthwork::length::{Form, Length};
use earthwork::point::Point;
use earthwork::target::DigTo;
use earthwork::uncertainty::Surface;
use serde::{Deserialize, Serialize};
use words::Text;

use super::TakeReading;
use crate::refusal::{Refusal, Thing};
use crate::site::{Mark, Site, Target};

/// One standard deviation of a tape held by hand, in feet (common practice).
const TAPE_DOUBT_FT: f64 = 0.02;
/// A paced place is no better known than this, in feet, one standard deviation (from memory).
const LEAST_PACED_DOUBT_FT: f64 = 0.5;

/// Where the rod stands when it stands on no mark.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum Where {
    /// Along a target's line.
    Station {
        /// The target.
        target: String,
        /// Along its line.
        station: Length,
        /// Positive to the right looking up-station.
        offset: Length,
    },
    /// Where tapes from two marks meet.
    Ties {
        /// What it is judged against; the first mark's target when none.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        target: Option<String>,
        /// One mark.
        first: String,
        /// The level distance from it.
        first_tape: Length,
        /// Another mark.
        second: String,
        /// The level distance from it.
        second_tape: Length,
        /// Which of the two places, standing at the first mark and looking toward the second.
        side: Side,
    },
    /// On the way between two marks, by counted paces.
    Paced {
        /// What it is judged against; the first mark's target when none.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        target: Option<String>,
        /// From this mark.
        from: String,
        /// Toward this one.
        to: String,
        /// So many paces.
        paces: u32,
        /// Of so many for the whole way.
        of: u32,
    },
}

/// A computed place.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Placed {
    /// As it was said.
    pub said: Where,
    /// Where that is.
    pub at: Point,
    /// One standard deviation of the place.
    pub doubt: Length,
    /// The tapes meet so flatly that another pair of marks is better.
    pub weak: bool,
}

/// The request with the name under which its place is kept; a mark's own name when it stands on one.
pub(super) fn named(site: &Site, asked: &TakeReading) -> Result<TakeReading, Refusal> {
    let mut named = asked.clone();
    let Some(said) = &asked.place else {
        return Ok(named);
    };
    if asked.mark.trim().is_empty() {
        named.mark = name(said);
    } else if site.mark(&asked.mark).is_some() {
        return Err(Refusal::NoGrade(words::reading::mark_this_site_has_its(
            &asked.mark,
        )));
    }
    Ok(named)
}

fn name(said: &Where) -> String {
    let feet = |length: Length| {
        let shown = length.show(Form::DecimalFeet { places: 2 });
        shown.trim_end_matches(" ft").to_owned()
    };
    match said {
        Where::Station {
            target,
            station,
            offset,
        } => {
            let station = show_station(*station);
            match offset.cmp(&Length::ZERO) {
                std::cmp::Ordering::Equal => format!("{target} {station}"),
                std::cmp::Ordering::Greater => format!("{target} {station} R {}", feet(*offset)),
                std::cmp::Ordering::Less => format!("{target} {station} L {}", feet(-*offset)),
            }
        }
        Where::Ties {
            first,
            first_tape,
            second,
            second_tape,
            ..
        } => format!(
            "{first} {} × {second} {}",
            feet(*first_tape),
            feet(*second_tape)
        ),
        Where::Paced {
            from,
            to,
            paces,
            of,
            ..
        } => format!("{from}–{to} {paces}/{of}"),
    }
}

/// The place as a mark that nobody has painted, and how it was computed.
pub(super) fn mark(site: &Site, name: &str, said: &Where) -> Result<(Mark, Placed), Refusal> {
    let known = |id: &str| {
        site.mark(id).ok_or_else(|| Refusal::Unknown {
            what: Thing::Mark,
            name: id.to_owned(),
        })
    };
    let (placed, target, along) = match said {
        Where::Station {
            target,
            station,
            offset,
        } => {
            let grade = &named_target(site, target)?.grade;
            let beside = StationOffset {
                station: *station,
                offset: *offset,
            };
            let at = grade
                .place(beside)
                .map_err(|error| no_grade(name, &error.text()))?;
            let doubt = TAPE_DOUBT_FT * std::f64::consts::SQRT_2;
            (
                placed(said, at, doubt, false),
                Some(target.clone()),
                Some(beside),
            )
        }
        Where::Ties {
            target,
            first,
            first_tape,
            second,
            second_tape,
            side,
        } => {
            let (one, other) = (known(first)?, known(second)?);
            let tape = |mark: &Mark, distance| Tape {
                from: mark.place,
                distance,
            };
            let tie = swing_tie(tape(one, *first_tape), tape(other, *second_tape))
                .map_err(|error| no_grade(name, &error.text()))?;
            let doubt = tie
                .doubt_ft(TAPE_DOUBT_FT)
                .ok_or_else(|| Refusal::NoGrade(words::reading::tapes_lie_one_line_place(&name)))?;
            let target = target.clone().or_else(|| one.target.clone());
            (placed(said, tie.on(*side), doubt, tie.weak()), target, None)
        }
        Where::Paced {
            target,
            from,
            to,
            paces,
            of,
        } => {
            let (one, other) = (known(from)?, known(to)?);
            let at = paced_between(one.place, other.place, *paces, *of)
                .map_err(|error| no_grade(name, &error.text()))?;
            let half_a_pace = one.place.distance(other.place).feet() / f64::from(*of) / 2.0;
            let doubt = half_a_pace.max(LEAST_PACED_DOUBT_FT);
            let target = target.clone().or_else(|| one.target.clone());
            (placed(said, at, doubt, false), target, None)
        }
    };
    if let Some(target) = &target {
        named_target(site, target)?;
    }
    let mark = Mark {
        id: name.to_owned(),
        place: placed.at,
        target,
        station: along.map(|along| along.station),
        offset: along.map(|along| along.offset),
        surface: Surface::Trimmed,
        note: String::new(),
    };
    Ok((mark, placed))
}

fn named_target<'a>(site: &'a Site, id: &str) -> Result<&'a Target, Refusal> {
    site.target(id).ok_or_else(|| Refusal::Unknown {
        what: Thing::Target,
        name: id.to_owned(),
    })
}

fn no_grade(name: &str, error: &Text) -> Refusal {
    Refusal::NoGrade(words::reading::at_mark(&name, error))
}

fn placed(said: &Where, at: Point, doubt_ft: f64, weak: bool) -> Placed {
    Placed {
        said: said.clone(),
        at,
        doubt: Length::from_feet(doubt_ft).unwrap_or(Length::ZERO),
        weak,
    }
}

/// How much a target changes, at the most, over the doubt of a place in the four directions.
pub(super) fn sideways(target: &Target, placed: &Placed) -> Length {
    let one_elevation = |at: Point| match target.grade.dig_to(at) {
        Ok(DigTo::At(elevation)) => Some(elevation),
        Ok(DigTo::NearStep { .. }) | Err(_) => None,
    };
    let Some(here) = one_elevation(placed.at) else {
        return Length::ZERO;
    };
    let by = placed.doubt;
    [
        (by, Length::ZERO),
        (-by, Length::ZERO),
        (Length::ZERO, by),
        (Length::ZERO, -by),
    ]
    .into_iter()
    .filter_map(|(east, north)| {
        one_elevation(Point {
            x: placed.at.x + east,
            y: placed.at.y + north,
        })
    })
    .map(|there| (there - here).abs())
    .max()
    .unwrap_or(Length::ZERO)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::answer::Outcome;
    use crate::asked::Command;
    use crate::given::{Crew, ground, len, reading};
    use crate::said::reading::SpotReason;

    fn at_place(crew: &mut Crew, place: Where, text: &str) -> Result<Outcome, Refusal> {
        let mut asked = reading("", text);
        asked.place = Some(place);
        let told = crew.says(&ground(), Command::TakeReading(asked))?;
        Ok(told.outcome)
    }

    fn line(outcome: &Outcome) -> &str {
        match outcome {
            Outcome::Called { text, .. } => &text.english,
            other => panic!("no call: {other:?}"),
        }
    }

    /// Invented: the run's dig-to is 98.00 before its step; 105.00 − 6.70 = 98.30.
    #[test]
    fn a_station_needs_no_mark() {
        let mut crew = Crew::digging();
        let station = |offset: &str| Where::Station {
            target: "RUN".into(),
            station: len("12 ft"),
            offset: len(offset),
        };
        let told = at_place(&mut crew, station("1 ft"), "6.70").unwrap();
        assert_eq!(line(&told), "DOWN 3");
        let (_, taken) = crew.state.last_reading("RUN 0+12.00 R 1.00").unwrap();
        let placed = taken.reading.placed.as_ref().unwrap();
        assert_eq!((placed.at.x, placed.at.y), (len("12 ft"), len("49 ft")));
        assert!(at_place(&mut crew, station("4 ft"), "6.70").is_err());
    }

    /// Mathematics: 6 and 8 ft from two marks 10 ft apart meet square, 3.6 ft along and 4.8 ft to the side.
    #[test]
    fn two_tapes_fix_a_place() {
        let mut crew = Crew::digging();
        let tie = Where::Ties {
            target: None,
            first: "P-1".into(),
            first_tape: len("6 ft"),
            second: "P-2".into(),
            second_tape: len("8 ft"),
            side: Side::Left,
        };
        let told = at_place(&mut crew, tie, "4.70").unwrap();
        assert_eq!(line(&told), "DOWN 3");
        let taken = crew.state.readings.values().last().unwrap();
        let placed = taken.reading.placed.as_ref().unwrap();
        assert_eq!((placed.at.x, placed.at.y), (len("33.6 ft"), len("24.8 ft")));
        assert!(!placed.weak);
    }

    #[test]
    fn paces_between_marks_place_a_spot_or_a_call() {
        let mut crew = Crew::digging();
        let paced = |from: &str, to: &str| Where::Paced {
            target: None,
            from: from.into(),
            to: to.into(),
            paces: 2,
            of: 4,
        };
        let told = at_place(&mut crew, paced("P-1", "P-2"), "4.70").unwrap();
        assert_eq!(line(&told), "DOWN 3");
        let spot = at_place(&mut crew, paced("S-1", "P-2"), "4.70").unwrap();
        assert!(matches!(
            spot,
            Outcome::Spot {
                why: SpotReason::NoTarget,
                ..
            }
        ));
        assert!(at_place(&mut crew, paced("P-1", "nowhere"), "4.70").is_err());
    }

    /// Invented: gravel of 0.50 ft lies between dig-to 100.00 and the top of gravel at 100.50.
    #[test]
    fn the_surface_that_is_named_is_the_one_that_is_judged() {
        let mut crew = Crew::digging();
        let mut gravel = reading("P-1", "4.50");
        gravel.surface = Some("gravel".into());
        let told = crew.says(&ground(), Command::TakeReading(gravel.clone()));
        assert_eq!(line(&told.unwrap().outcome), "GRADE");
        let (_, taken) = crew.state.last_reading("P-1").unwrap();
        let judged = taken.reading.judged.as_ref().unwrap();
        assert_eq!(judged.surface.as_deref(), Some("gravel"));
        assert_eq!(judged.dig_to, len("100.50 ft"));
        gravel.surface = Some("concrete".into());
        let refused = crew
            .says(&ground(), Command::TakeReading(gravel))
            .unwrap_err();
        assert!(
            refused
                .to_string()
                .contains("top of slab, gravel, subgrade")
        );
    }
}
