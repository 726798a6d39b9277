//! The life of a mark: laid from something better than old paint, checked by a second person, scraped, laid again.

use contract::ToSchema;
use earthwork::layout::marks::{self, Parent};
use earthwork::length::Length;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::call::Ending;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::overtaken;
use crate::refusal::{Refusal, Thing};
use crate::said::{call, edge, tape, ties};
use crate::saying::{Asking, Closed, Saying};
use crate::site::{Mark, Site};
use crate::state::State;
use crate::time::{Time, When};

/// Within this of a line that must not be crossed, a mark is near it (common practice).
pub(crate) const NEAR_A_LINE: Length = Length::from_hundredths_of_a_foot(200);

/// What marks are laid from.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum LaidFrom {
    /// The surveyor's control.
    Control,
    /// A hub outside of the dig.
    Hub,
    /// A string between two of them.
    String,
    /// Another mark.
    Mark {
        /// Which.
        id: String,
    },
    /// The two tapes that were taken before it went.
    Ties,
    /// What is left of its own paint: refused.
    OldPaint,
}

/// Marks are laid, or laid again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LayMarks {
    /// Which.
    pub marks: Vec<String>,
    /// From what.
    pub from: LaidFrom,
    /// A word about it.
    #[serde(default)]
    pub note: String,
}

impl Saying for LayMarks {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        lay(at.state, self, at.when)
    }
}

/// Marks were laid.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct MarksLaid {
    /// Each with its generation: 1, and one more each time that it is laid again.
    pub marks: Vec<Generation>,
    /// From what.
    pub from: LaidFrom,
    /// How many marks away from control, hub or string; 1 is straight from one.
    pub depth: u8,
    /// A word about it.
    pub note: String,
    /// One standard deviation of where they lie: the parent's and the tape's, as squares. Older entries have none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub doubt: Option<Length>,
}

impl Happening for MarksLaid {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_laid(state, entry, self);
    }
}

/// A mark's generation.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Generation {
    /// The mark.
    pub mark: String,
    /// Its generation.
    pub generation: u32,
}

/// A second person has measured marks again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CheckMarks {
    /// Which.
    pub marks: Vec<String>,
    /// How far the two measures are apart at most, as typed in feet or with a unit.
    pub apart: String,
}

impl Saying for CheckMarks {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        check(at.state, at.by, self)
    }
}

/// Marks were checked.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct MarksChecked {
    /// Which.
    pub marks: Vec<String>,
    /// How far the two measures are apart at most.
    pub apart: Length,
}

impl Happening for MarksChecked {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_checked(state, self);
    }
}

/// The machine has taken the paint.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ScrapeMarks {
    /// Which.
    pub marks: Vec<String>,
}

impl Saying for ScrapeMarks {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        scrape(at.state, self)
    }
}

/// Marks are gone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct MarksScraped {
    /// Which.
    pub marks: Vec<String>,
}

impl Happening for MarksScraped {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_scraped(state, entry, self);
    }
}

/// How a mark stands on the ground.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Paint {
    /// Which generation.
    pub generation: u32,
    /// Where it is in its life.
    pub state: PaintState,
    /// How many marks away from control, hub or string.
    pub depth: u8,
    /// One standard deviation of where it lies, with its parents'; none when nobody entered from what it was laid.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub doubt: Option<Length>,
    /// Who laid it.
    pub by: String,
    /// When.
    pub at: Time,
    /// When it was said to be gone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gone_at: Option<Time>,
}

/// Where a mark is in its life.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum PaintState {
    /// Laid, not yet measured a second time.
    Laid,
    /// A second person's measure agrees.
    Checked,
    /// Gone: lay it again before it is read.
    Scraped,
}

fn known<'a>(site: &'a Site, names: &[String]) -> Result<Vec<&'a Mark>, Refusal> {
    if names.is_empty() {
        return Err(Refusal::say_why(words::marks::which_marks()));
    }
    names
        .iter()
        .map(|name| {
            site.mark(name).ok_or_else(|| Refusal::Unknown {
                what: Thing::Mark,
                name: name.clone(),
            })
        })
        .collect()
}

fn paint<'a>(state: &'a State, mark: &str) -> Option<&'a Paint> {
    state.marks.get(mark)?.paint.as_ref()
}

/// The entries of laying marks: calls on their older generation are gone.
pub(crate) fn lay(state: &State, asked: &LayMarks, when: When) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    known(site, &asked.marks)?;
    let painted = asked.marks.iter().filter_map(|mark| paint(state, mark));
    let said = painted.map(|paint| paint.gone_at.unwrap_or(paint.at)).max();
    let newer = words::marks::one_these_marks_laid_or();
    overtaken::after(when, said, newer)?;
    let parent = match &asked.from {
        LaidFrom::Control => Parent::Control,
        LaidFrom::Hub => Parent::Hub,
        LaidFrom::String => Parent::String,
        LaidFrom::Ties => from_ties(state, &asked.marks)?,
        LaidFrom::OldPaint => Parent::OldPaint,
        LaidFrom::Mark { id } => {
            known(site, std::slice::from_ref(id))?;
            let from = paint(state, id);
            Parent::Mark {
                depth: from.map_or(1, |paint| paint.depth),
                stands: from.is_some_and(|paint| paint.state != PaintState::Scraped),
            }
        }
    };
    let depth = marks::depth_from(parent).map_err(|error| Refusal::BadMark(error.text()))?;
    let generations = asked
        .marks
        .iter()
        .map(|mark| Generation {
            mark: mark.clone(),
            generation: paint(state, mark).map_or(1, |paint| paint.generation + 1),
        })
        .collect();
    let mut bodies = vec![Body::MarksLaid(MarksLaid {
        marks: generations,
        from: asked.from.clone(),
        depth,
        doubt: doubt(state, &asked.from, &asked.marks),
        note: asked.note.trim().to_owned(),
    })];
    bodies.extend(gone(state, &asked.marks));
    Ok(bodies)
}

/// The parent of marks that are laid from their ties: each must have ties whose ends still stand.
fn from_ties(state: &State, laid: &[String]) -> Result<Parent, Refusal> {
    let mut deepest = 0;
    for mark in laid {
        let card = ties::standing(state, mark)
            .ok_or_else(|| Refusal::BadMark(words::marks::has_no_ties_whose_ends(&mark)))?;
        deepest = deepest.max(ties::depth_of_ends(state, &card.ties));
    }
    Ok(match deepest {
        0 => Parent::Control,
        depth => Parent::Mark {
            depth,
            stands: true,
        },
    })
}

/// The doubt of a mark that is laid from this, its parents' in it.
fn doubt(state: &State, from: &LaidFrom, laid: &[String]) -> Option<Length> {
    let parent = match from {
        LaidFrom::Control => marks::CONTROL_DOUBT_FT,
        LaidFrom::Hub | LaidFrom::String => marks::HUB_DOUBT_FT,
        LaidFrom::Mark { id } => paint(state, id)?.doubt?.feet(),
        LaidFrom::Ties => {
            let of = |mark: &String| Some(ties::standing(state, mark)?.ties.doubt);
            return laid.iter().filter_map(of).max();
        }
        LaidFrom::OldPaint => return None,
    };
    let feet = marks::doubt_from(parent, marks::TAPE_DOUBT_FT).ok()?;
    Length::from_feet(feet).ok()
}

/// The ends of live calls about marks that are not where they were.
fn gone(state: &State, marks: &[String]) -> Vec<Body> {
    state
        .cabs
        .keys()
        .filter(|machine| {
            state.live_call(machine).is_some_and(|(_, call)| {
                let about = call.sent.mark.as_ref();
                about.is_some_and(|mark| marks.contains(mark) && paint(state, mark).is_some())
            })
        })
        .filter_map(|machine| call::end_live(state, machine, Ending::StaleByMark))
        .collect()
}

/// A second person's measure makes a mark CHECKED; near a line that must not be crossed it is judged harder.
pub(crate) fn check(state: &State, by: &By, asked: &CheckMarks) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let apart = tape::typed(&asked.apart)?;
    for mark in known(site, &asked.marks)? {
        let Some(paint) = paint(state, &mark.id).filter(|paint| paint.state != PaintState::Scraped)
        else {
            return Err(Refusal::MarkScraped {
                mark: mark.id.clone(),
            });
        };
        if paint.by == by.person {
            return Err(Refusal::SameEyes {
                mark: mark.id.clone(),
            });
        }
        marks::second_measure(apart, near_a_line(site, mark))
            .map_err(|error| Refusal::BadMark(words::marks::of(&mark.id, &error.text())))?;
    }
    Ok(vec![Body::MarksChecked(MarksChecked {
        marks: asked.marks.clone(),
        apart,
    })])
}

/// Whether a mark lies by a line that must not be crossed.
fn near_a_line(site: &Site, mark: &Mark) -> bool {
    site.lines.iter().filter(|line| line.no_cross).any(|line| {
        edge::kept(line)
            .distance(mark.place)
            .is_ok_and(|distance| distance.abs() <= NEAR_A_LINE)
    })
}

pub(crate) fn scrape(state: &State, asked: &ScrapeMarks) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    known(site, &asked.marks)?;
    let left: Vec<String> = asked
        .marks
        .iter()
        .filter(|mark| paint(state, mark).is_none_or(|paint| paint.state != PaintState::Scraped))
        .cloned()
        .collect();
    if left.is_empty() {
        return Ok(vec![]);
    }
    Ok(vec![Body::MarksScraped(MarksScraped { marks: left })])
}

pub(crate) fn apply_laid(state: &mut State, entry: &Entry, body: &MarksLaid) {
    for laid in &body.marks {
        state.marks.entry(laid.mark.clone()).or_default().paint = Some(Paint {
            generation: laid.generation,
            state: PaintState::Laid,
            depth: body.depth,
            doubt: body.doubt,
            by: entry.by.person.clone(),
            at: entry.made_at,
            gone_at: None,
        });
    }
}

pub(crate) fn apply_checked(state: &mut State, body: &MarksChecked) {
    set_state(state, &body.marks, PaintState::Checked);
}

pub(crate) fn apply_scraped(state: &mut State, entry: &Entry, body: &MarksScraped) {
    for mark in &body.marks {
        let now = state.marks.entry(mark.clone()).or_default();
        // Paint that nobody entered was there all the same: it was the first.
        now.paint.get_or_insert_with(|| Paint {
            generation: 1,
            state: PaintState::Laid,
            depth: 1,
            doubt: None,
            by: String::new(),
            at: entry.made_at,
            gone_at: None,
        });
    }
    set_state(state, &body.marks, PaintState::Scraped);
    for mark in &body.marks {
        if let Some(paint) = state.marks.get_mut(mark).and_then(|now| now.paint.as_mut()) {
            paint.gone_at = Some(entry.made_at);
        }
    }
}

fn set_state(state: &mut State, marks: &[String], to: PaintState) {
    for mark in marks {
        if let Some(paint) = state.marks.get_mut(mark).and_then(|now| now.paint.as_mut()) {
            paint.state = to;
        }
    }
}

#[cfg(test)]
mod tests;
