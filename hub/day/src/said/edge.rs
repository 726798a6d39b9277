//! The tape from a line that nobody may cross to the edge of the cut. Every doubt counts against the crew.

use contract::ToSchema;
use earthwork::layout::marks::TAPE_DOUBT_FT;
use earthwork::layout::no_cross::{self, LineDoubts, LineShot, NoCrossLine, Standing};
use earthwork::layout::tie;
use earthwork::length::{self, Length};
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::call::{Ending, Message};
use crate::cuts::held;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::overtaken;
use crate::refusal::{Refusal, Thing};
use crate::said::call::{self, Draft};
use crate::said::marks::PaintState;
use crate::said::slew::Compass;
use crate::said::stop::Stopped;
use crate::saying::{Asking, Closed, Saying};
use crate::site::{Line, Side, Site};
use crate::state::State;
use crate::time::When;

/// A string on a dig, one standard deviation in feet (common practice).
const STRING_FT: f64 = 0.02;
/// A tape longer than this is no edge reading any more.
const LONGEST_TAPE: Length = Length::from_hundredths_of_a_foot(5_000);

/// The tape from a line to the cut's edge.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ReadEdge {
    /// The machine that digs there.
    pub machine: String,
    /// The line; the only one that must not be crossed when left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub line: Option<String>,
    /// The mark at which it was taped.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// The tape, in feet as typed: `0.30`, or with its unit: `4 in`.
    pub text: String,
    /// The edge lies beyond the line; of a tape from the mark, beyond the mark as seen from the kept side.
    #[serde(default)]
    pub over: bool,
    /// The tape goes from the mark to the edge, not from a string on the line: the doubt of the mark counts.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub from_mark: bool,
}

impl Saying for ReadEdge {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        read(at.state, at.by, self, at.when)
    }
}

/// Which line an edge was taped from, and on which side it lies: what the cab reads before the number.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct LineSide {
    /// The line.
    pub name: String,
    /// The side of the compass on which the ground lies that may not be dug, where one can be told.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lies: Option<Compass>,
}

/// An edge was taped.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct EdgeRead {
    /// The machine.
    pub machine: String,
    /// The line.
    pub line: String,
    /// The mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// As typed.
    pub text: String,
    /// The tape went from the mark, whose doubt was this; none when it went from a string on the line.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark_doubt: Option<Length>,
    /// How far, how sure, and where that stands.
    pub shot: LineShot,
}

impl Happening for EdgeRead {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_read(state, self);
    }
}

pub(crate) fn read(
    state: &State,
    by: &By,
    asked: &ReadEdge,
    when: When,
) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    if state.day.is_none() {
        return Err(Refusal::NoDay);
    }
    let unknown = |what, name: &str| Refusal::Unknown {
        what,
        name: name.to_owned(),
    };
    if site.machine(&asked.machine).is_none() {
        return Err(unknown(Thing::Machine, &asked.machine));
    }
    if let Some(mark) = &asked.mark
        && site.mark(mark).is_none()
    {
        return Err(unknown(Thing::Mark, mark));
    }
    let line = line(site, asked.line.as_deref())?;
    let tape = tape(&asked.text)?;
    let refused = |error: no_cross::LineError| Refusal::RodValue(error.text());
    let inward = if asked.over { -tape } else { tape };
    let (distance, mark_doubt) = if asked.from_mark {
        let mark = asked.mark.as_deref().ok_or(Refusal::NoMarkToTapeFrom)?;
        let (from, doubt) = from_mark(state, site, line, mark)?;
        (from.map_err(refused)? + inward, Some(doubt))
    } else {
        (inward, None)
    };
    let guard = LineDoubts {
        tape_ft: TAPE_DOUBT_FT,
        string_ft: mark_doubt.map_or(STRING_FT, Length::feet),
        line_ft: line.doubt.feet(),
        k: 1.0,
    }
    .guard()
    .map_err(refused)?;
    let shot = no_cross::judge(distance, guard);
    let calls = may_call(state, asked, when);
    if shot.standing != Standing::Crossed {
        calls.clone()?;
    }
    // Over the line the machine stops, however late the word comes and whatever else holds.
    let calls = calls.is_ok();
    Ok(bodies(
        state,
        by,
        asked,
        when,
        (line, mark_doubt, calls),
        shot,
    ))
}

/// Whether this edge may be told to the machine: not while something holds the work, and not in the place of a newer word.
fn may_call(state: &State, asked: &ReadEdge, when: When) -> Result<(), Refusal> {
    if let Some(held) = held::call(state, &asked.machine, asked.mark.as_deref(), None) {
        return Err(held.refusal());
    }
    overtaken::before_its_call(state, &asked.machine, when)
}

/// How far a mark lies from the line on the plan, and how sure it is that it lies there. Paint that nobody entered, and paint
/// that is gone, is no place to tape from.
fn from_mark(
    state: &State,
    site: &Site,
    line: &Line,
    id: &str,
) -> Result<(Result<Length, no_cross::LineError>, Length), Refusal> {
    let mark = site.mark(id).ok_or(Refusal::NoMarkToTapeFrom)?;
    let paint = state.marks.get(id).and_then(|now| now.paint.as_ref());
    let doubt = paint
        .filter(|paint| paint.state != PaintState::Scraped)
        .and_then(|paint| paint.doubt)
        .ok_or_else(|| Refusal::MarkScraped {
            mark: id.to_owned(),
        })?;
    Ok((kept(line).distance(mark.place), doubt))
}

/// The reading, the call, and a stop for the machine when the line is crossed.
fn bodies(
    state: &State,
    by: &By,
    asked: &ReadEdge,
    when: When,
    (on, mark_doubt, calls): (&Line, Option<Length>, bool),
    shot: LineShot,
) -> Vec<Body> {
    let line = &on.id;
    let mut bodies = vec![Body::EdgeRead(EdgeRead {
        machine: asked.machine.clone(),
        line: line.clone(),
        mark: asked.mark.clone(),
        text: asked.text.clone(),
        mark_doubt,
        shot,
    })];
    if calls {
        bodies.extend(call::end_live(state, &asked.machine, Ending::Superseded));
        let draft = Draft {
            machine: asked.machine.clone(),
            mark: asked.mark.clone(),
            target: None,
            set_up: None,
            message: Message::Edge { shot },
            line: Some(side_of(state, on, asked.mark.as_deref())),
            aim: Length::ZERO,
            readings: vec![state.seq + 1],
            labels: vec![],
            checked_at: None,
            warnings: vec![],
        };
        bodies.push(call::send(state, by, when, draft));
    }
    if shot.standing == Standing::Crossed {
        bodies.push(Body::Stopped(Stopped {
            machines: vec![asked.machine.clone()],
            all: false,
            why: format!("{line}: line crossed / línea cruzada"),
        }));
    }
    bodies
}

/// On which side the line lies, from the mark at which it was taped.
fn side_of(state: &State, line: &Line, mark: Option<&str>) -> LineSide {
    let at = mark
        .and_then(|mark| state.site()?.mark(mark))
        .map(|mark| mark.place);
    LineSide {
        name: line.id.clone(),
        lies: kept(line).beyond(at).map(Compass::toward),
    }
}

pub(crate) fn apply_read(state: &mut State, body: &EdgeRead) {
    state.taped.extend(body.mark.clone());
}

fn line<'a>(site: &'a Site, name: Option<&str>) -> Result<&'a Line, Refusal> {
    let mut kept = site.lines.iter().filter(|line| line.no_cross);
    match name {
        Some(name) => kept
            .find(|line| line.id == name)
            .ok_or_else(|| Refusal::Unknown {
                what: Thing::Line,
                name: name.to_owned(),
            }),
        None => match (kept.next(), kept.next()) {
            (Some(only), None) => Ok(only),
            (None, _) => Err(Refusal::NoLine),
            (Some(_), Some(_)) => Err(Refusal::WhichLine),
        },
    }
}

/// A line of the site as the arithmetic takes it.
pub fn kept(line: &Line) -> NoCrossLine {
    NoCrossLine {
        corners: line.points.clone(),
        keep: match line.keep {
            Side::Left => tie::Side::Left,
            Side::Right => tie::Side::Right,
        },
    }
}

/// A bare number is feet, as on the tape in the truck.
fn tape(text: &str) -> Result<Length, Refusal> {
    let typed = text.trim();
    let bare = typed
        .chars()
        .all(|c| c.is_ascii_digit() || matches!(c, '.' | ','));
    let written = if bare {
        format!("{typed} ft")
    } else {
        typed.to_owned()
    };
    let tape = length::parse(&written).map_err(|error| Refusal::RodValue(error.text()))?;
    if tape < Length::ZERO || tape > LONGEST_TAPE {
        return Err(Refusal::RodValue(words::edge::cant_tape_from_line_edge(
            &typed,
        )));
    }
    Ok(tape)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::answer::Outcome;
    use crate::asked::Command;
    use crate::given::{Crew, at, ground, len};
    use crate::said::marks::{LaidFrom, LayMarks};
    use crate::site::LineKind;

    fn lined() -> Crew {
        let mut crew = Crew::digging();
        let site = &mut crew.state.site.as_mut().unwrap().site;
        site.lines.push(Line {
            id: "BUFFER".into(),
            kind: LineKind::Easement,
            points: vec![at("0 ft", "0 ft"), at("0 ft", "100 ft")],
            keep: Side::Right,
            no_cross: true,
            doubt: len("0.02 ft"),
            note: String::new(),
        });
        crew
    }

    fn tapes(crew: &mut Crew, text: &str, over: bool) -> Result<String, Refusal> {
        let asked = ReadEdge {
            machine: "EX-1".into(),
            line: None,
            mark: Some("S-1".into()),
            text: text.into(),
            over,
            from_mark: false,
        };
        let answer = crew.says(&ground(), Command::ReadEdge(asked))?;
        match answer.outcome {
            Outcome::Called { text, .. } => Ok(text.english),
            other => panic!("no call: {other:?}"),
        }
    }

    #[test]
    fn the_call_says_which_line_and_on_which_side_of_the_compass_it_lies() {
        // It runs north along x = 0 and what lies to its right is kept: what may not be dug lies to the west.
        let mut crew = lined();
        tapes(&mut crew, "0.30", false).unwrap();
        let call = crew.state.calls.values().next_back().unwrap();
        let side = LineSide {
            name: "BUFFER".into(),
            lies: Some(Compass::West),
        };
        assert_eq!(call.sent.line, Some(side));
    }

    #[test]
    fn every_doubt_is_taken_off_and_the_rest_is_rounded_down() {
        // Invented, demo: 0.30 and 0.22 ft inside, doubts 0.02 each: 0.035 off.
        let mut crew = lined();
        assert_eq!(tapes(&mut crew, "0.30", false).unwrap(), "LINE 2½");
        assert_eq!(tapes(&mut crew, "0.22", false).unwrap(), "LINE 1½");
        assert!(crew.state.cabs["EX-1"].stop.is_none());
    }

    fn from_mark(crew: &mut Crew, mark: &str, text: &str) -> Result<LineShot, Refusal> {
        let asked = ReadEdge {
            machine: "EX-1".into(),
            line: None,
            mark: Some(mark.into()),
            text: text.into(),
            over: true,
            from_mark: true,
        };
        crew.says(&ground(), Command::ReadEdge(asked))?;
        let last = crew.log.iter().rev().find_map(|entry| match &entry.body {
            Body::EdgeRead(read) => Some(read.shot),
            _ => None,
        });
        Ok(last.unwrap())
    }

    fn lays(crew: &mut Crew, mark: &str, from: LaidFrom) {
        let laid = LayMarks {
            marks: vec![mark.into()],
            from,
            note: String::new(),
        };
        crew.says(&ground(), Command::LayMarks(laid)).unwrap();
    }

    /// Derived: P-1 lies 30 ft from the line; 29.60 ft toward it leave 0.40. A hub of 0.02 and a tape of 0.02 make a mark
    /// of 0.0283; with the tape's 0.02 and the line's 0.02 the guard is 0.04. P-2, laid from P-1: 0.0346, so 0.0447.
    #[test]
    fn a_tape_from_a_mark_carries_the_doubt_of_the_marks_parents() {
        let mut crew = lined();
        assert_eq!(
            from_mark(&mut crew, "P-1", "29.60"),
            Err(Refusal::MarkScraped { mark: "P-1".into() }),
            "nobody entered from what it was laid"
        );
        lays(&mut crew, "P-1", LaidFrom::Hub);
        lays(&mut crew, "P-2", LaidFrom::Mark { id: "P-1".into() });
        let near = |a: Length, feet: f64| (a.feet() - feet).abs() < 1e-4;
        let one = from_mark(&mut crew, "P-1", "29.60").unwrap();
        assert_eq!(one.distance, len("0.40 ft"));
        assert!(near(one.guard, 0.04), "{one:?}");
        assert_eq!(one.half_tenths, 7, "0.36 left");
        let two = from_mark(&mut crew, "P-2", "39.60").unwrap();
        assert_eq!(two.distance, one.distance);
        assert!(near(two.guard, 0.0447), "{two:?}");
        let crossed = from_mark(&mut crew, "P-2", "40.05").unwrap();
        assert_eq!(crossed.standing, Standing::Crossed);
    }

    #[test]
    fn over_the_line_beyond_doubt_stops_that_machine_alone() {
        let mut crew = lined();
        tapes(&mut crew, "0.03", true).unwrap();
        assert!(
            crew.state.cabs["EX-1"].stop.is_none(),
            "within the doubt it is a touch"
        );
        tapes(&mut crew, "0.04", true).unwrap();
        assert!(crew.state.cabs["EX-1"].stop.is_some());
        assert!(crew.state.cabs["EX-2"].stop.is_none());
    }

    #[test]
    fn what_is_no_tape_is_refused() {
        let mut crew = lined();
        for text in ["", "-0.30", "far", "51", "0.3 in in"] {
            assert!(matches!(
                tapes(&mut crew, text, false),
                Err(Refusal::RodValue { .. })
            ));
        }
        assert_eq!(tapes(&mut crew, "4 in", false).unwrap(), "LINE 2½");
    }

    #[test]
    fn without_such_a_line_there_is_nothing_to_tape_to() {
        let mut crew = Crew::digging();
        assert_eq!(tapes(&mut crew, "0.30", false), Err(Refusal::NoLine));
    }
}
