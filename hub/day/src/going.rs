//! Which marks a machine is about to take, and whether anything written down would bring them back.

use contract::ToSchema;
use earthwork::layout::going::{TieEnd, Ties, best_ties, goes_over};
use earthwork::layout::marks::TAPE_DOUBT_FT;
use earthwork::length::Length;
use serde::{Deserialize, Serialize};

use crate::last;
use crate::said::marks::PaintState;
use crate::said::ties;
use crate::site::{Machine, Mark, Site};
use crate::state::State;

/// The nearest so many places are looked at for ties: the best pair is among them on any lot.
const ENDS_LOOKED_AT: usize = 24;

/// A mark that a machine is about to take.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct GoingMark {
    /// The machine.
    pub machine: String,
    /// The mark.
    pub mark: String,
    /// What brings it back.
    pub back: Back,
    /// The two tapes to take first, when nothing does and two places stand within a tape.
    pub take: Option<TiesToTake>,
}

/// What brings a mark back once its paint is gone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Back {
    /// It was laid straight from control, a hub or a string: lay it from there again.
    Laid,
    /// Its ties.
    Ties,
    /// It was laid from another mark, and has no ties that stand.
    Nothing,
    /// Nobody has said from what it was laid.
    NotSaid,
}

/// Two tapes to take while the mark is still there.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct TiesToTake {
    /// Where the first is held.
    pub first: String,
    /// What it should read, level, by the plan.
    pub first_tape: Length,
    /// Where the second is held.
    pub second: String,
    /// What it should read.
    pub second_tape: Length,
    /// The angle between them at the mark, in degrees.
    pub angle_degrees: f64,
    /// They meet too flatly, and no pair meets better.
    pub weak: bool,
    /// One standard deviation of the place that they give.
    pub doubt: Length,
}

/// The marks that each machine is about to take, in its order of work. Finished ground needs no mark any more.
pub fn going(state: &State) -> Vec<GoingMark> {
    let Some(site) = state.site() else {
        return vec![];
    };
    let goes: Vec<(&Machine, &Mark)> = site
        .machines
        .iter()
        .flat_map(|machine| {
            let path: Vec<_> = path(state, site, machine)
                .iter()
                .map(|mark| mark.place)
                .collect();
            let width = machine.reach.track_width;
            site.marks
                .iter()
                .filter(move |mark| goes_over(&path, width, mark.place))
                .map(move |mark| (machine, mark))
        })
        .filter(|(_, mark)| !scraped(state, mark) && !finished(state, mark))
        .collect();
    let taken: Vec<&str> = goes.iter().map(|(_, mark)| mark.id.as_str()).collect();
    goes.iter()
        .map(|(machine, mark)| {
            let back = back(state, mark);
            let needs = matches!(back, Back::Nothing | Back::NotSaid);
            GoingMark {
                machine: machine.id.clone(),
                mark: mark.id.clone(),
                back,
                take: needs.then(|| to_take(state, site, mark, &taken)).flatten(),
            }
        })
        .collect()
}

/// From the mark where a machine digs, on over its unfinished marks in the direction in which it works.
fn path<'a>(state: &State, site: &'a Site, machine: &Machine) -> Vec<&'a Mark> {
    let of = |target: &str| -> Vec<&'a Mark> {
        let belongs = |mark: &&Mark| mark.target.as_deref() == Some(target);
        site.marks.iter().filter(belongs).collect()
    };
    let unfinished = |marks: Vec<&'a Mark>| -> Vec<&'a Mark> {
        let open = |mark: &&Mark| !finished(state, mark) && !scraped(state, mark);
        marks.into_iter().filter(open).collect()
    };
    if let Some(front) = front(state, site, machine) {
        let all = of(front.target.as_deref().unwrap_or_default());
        let here = all.iter().position(|mark| mark.id == front.id).unwrap_or(0);
        let mut ahead: Vec<&Mark> = if works_backward(state, &all, here) {
            all[..here].iter().rev().copied().collect()
        } else {
            all.iter().skip(here + 1).copied().collect()
        };
        ahead = unfinished(ahead);
        if !ahead.is_empty() || !finished(state, front) {
            ahead.insert(0, front);
            return ahead;
        }
    }
    let next = machine.works_on.iter().map(|target| unfinished(of(target)));
    next.into_iter()
        .find(|marks| !marks.is_empty())
        .unwrap_or_default()
}

/// Where a machine digs: at the mark that it was last called to, else at its mark nearest to where it stands.
fn front<'a>(state: &State, site: &'a Site, machine: &Machine) -> Option<&'a Mark> {
    let cab = state.cabs.get(&machine.id)?;
    let called = cab.last_mark.as_ref().and_then(|mark| site.mark(mark));
    if let Some(mark) = called.filter(|mark| mark.target.is_some()) {
        return Some(mark);
    }
    let stands = cab.place.as_ref()?.at;
    let reach = machine.reach.reach_at_ground;
    site.marks
        .iter()
        .filter(|mark| {
            mark.target
                .as_ref()
                .is_some_and(|target| machine.works_on.contains(target))
        })
        .map(|mark| (mark.place.distance(stands), mark))
        .filter(|(far, _)| *far <= reach)
        .min_by_key(|(far, _)| *far)
        .map(|(_, mark)| mark)
}

/// Whether the mark of this run that was read last before came later in the order of work.
fn works_backward(state: &State, run: &[&Mark], here: usize) -> bool {
    let read = |(at, mark): (usize, &&Mark)| Some((state.last_reading(&mark.id)?.1.made_at, at));
    let others = run.iter().enumerate().filter(|(at, _)| *at != here);
    others
        .filter_map(read)
        .max()
        .is_some_and(|(_, at)| at > here)
}

fn finished(state: &State, mark: &Mark) -> bool {
    last::is_on(state, &mark.id)
}

fn scraped(state: &State, mark: &Mark) -> bool {
    let paint = state.marks.get(&mark.id).and_then(|now| now.paint.as_ref());
    paint.is_some_and(|paint| paint.state == PaintState::Scraped)
}

fn back(state: &State, mark: &Mark) -> Back {
    if ties::standing(state, &mark.id).is_some() {
        return Back::Ties;
    }
    let paint = state.marks.get(&mark.id).and_then(|now| now.paint.as_ref());
    match paint {
        None => Back::NotSaid,
        Some(paint) if paint.depth == 1 => Back::Laid,
        Some(_) => Back::Nothing,
    }
}

/// The best tapes from benchmarks and from marks that stand and are not about to go themselves.
fn to_take(state: &State, site: &Site, mark: &Mark, taken: &[&str]) -> Option<TiesToTake> {
    let stays = |other: &&Mark| {
        let laid = state
            .marks
            .get(&other.id)
            .is_some_and(|now| now.paint.is_some());
        laid && !scraped(state, other) && !taken.contains(&other.id.as_str())
    };
    let marks = site.marks.iter().filter(stays).map(|other| &other.id);
    let names = site
        .benchmarks
        .iter()
        .map(|benchmark| &benchmark.id)
        .chain(marks);
    let mut ends: Vec<(&String, TieEnd)> = names
        .filter_map(|name| {
            let (at, doubt_ft) = ties::held_at(state, site, name)?;
            Some((name, TieEnd { at, doubt_ft }))
        })
        .collect();
    ends.sort_by_key(|(_, end)| end.at.distance(mark.place));
    ends.truncate(ENDS_LOOKED_AT);
    let places: Vec<TieEnd> = ends.iter().map(|(_, end)| *end).collect();
    let best: Ties = best_ties(mark.place, &places, TAPE_DOUBT_FT)?;
    Some(TiesToTake {
        first: ends[best.ends.0].0.clone(),
        first_tape: best.tapes.0,
        second: ends[best.ends.1].0.clone(),
        second_tape: best.tapes.1,
        angle_degrees: best.angle_degrees,
        weak: best.weak,
        doubt: Length::from_feet(best.doubt_ft).unwrap_or(Length::ZERO),
    })
}
