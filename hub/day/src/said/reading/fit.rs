//! Does a reading fit what is known of its mark? What does not fit is asked about once; what fits may be averaged.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::rod::Rod;
use earthwork::slip::{self, Candidate, Earlier, Mode, Neighbour};
use earthwork::tolerance::Verdict;
use serde::{Deserialize, Serialize};

use super::shot::{MOST_SHOTS, Shot};
use super::{Judged, Question, StepSide, TakeReading};
use crate::site::Target;
use crate::state::{SetUp, State, TakenReading};
use crate::time::{Time, When, seconds};

/// Farther from the target than this, a footing reading is asked about.
const FAR_FROM_GRADE: Length = Length::from_hundredths_of_a_foot(600);
/// Shots of the same ground within this time are one measurement.
const SAME_GROUND_MS: i64 = seconds(90);
/// Shots of the same ground that differ by more than this can't both be right.
const SPREAD: Length = Length::from_hundredths_of_a_foot(4);
/// Marks this near may have been mixed up.
const NEIGHBOURS: Length = Length::from_hundredths_of_a_foot(1_500);

/// What is asked before this reading is shown, if anything.
pub(super) fn question(
    state: &State,
    shot: &Shot<'_>,
    asked: &TakeReading,
    when: When,
    corrected: Option<u64>,
) -> Option<Question> {
    let (Some(dig_to), Some(dev)) = (shot.dig_to, shot.dev()) else {
        return None;
    };
    if let (Some(assigned), Some(machine)) = (shot.assigned, shot.machine)
        && assigned.id != machine.id
    {
        return Some(Question::OtherMachine {
            assigned: assigned.id.clone(),
        });
    }
    let earlier = last(state, asked, corrected);
    // A second shot of doubtful ground is no free laser check: the spread of the two says what is wrong.
    if let Some(before) = earlier
        && waits_for_second(before)
        && same_shot(before, shot, asked)
    {
        let spread = (shot.elevation - before.reading.elevation).abs();
        let soon = when.made_at.ms_since(before.made_at) <= SAME_GROUND_MS;
        return (soon && spread > SPREAD).then_some(Question::WhichIsRight { spread });
    }
    let rods: &[Rod] = &shot.site.rods;
    let doubt = slip::doubt(&Candidate {
        elevation: shot.elevation,
        target: dig_to,
        typed: shot
            .value
            .as_ref()
            .map_or(Length::ZERO, |value| value.value),
        mode: asked.mode,
        earlier: earlier.and_then(|taken| fact(state, taken, shot)),
        neighbours: &neighbours(state, shot),
        rod: shot.rod,
        rods,
        learned: &state.slips.learned,
    });
    if let Some(doubt) = doubt {
        return Some(Question::DoesNotFit { doubt });
    }
    (dev.abs() > FAR_FROM_GRADE).then_some(Question::FarFromGrade { dev })
}

/// Earlier shots of the same ground that are averaged with this one, with their differences.
pub(super) fn joined(
    state: &State,
    shot: &Shot<'_>,
    asked: &TakeReading,
    when: When,
    corrected: Option<u64>,
) -> Vec<(u64, Length)> {
    let Some(before) = last(state, asked, corrected) else {
        return vec![];
    };
    let Some(judged) = &before.reading.judged else {
        return vec![];
    };
    let soon = when.made_at.ms_since(before.made_at) <= SAME_GROUND_MS;
    if !(soon || waits_for_second(before)) || !same_shot(before, shot, asked) {
        return vec![];
    }
    let shots = joined_before(state, judged, last_id(state, asked, corrected));
    let dev = shot.dev().unwrap_or(Length::ZERO);
    let fits = shots
        .iter()
        .all(|(_, other)| (*other - dev).abs() <= SPREAD);
    if fits { shots } else { vec![] }
}

/// The shots that a next one is averaged with: those of the last judgement, the last itself with them, up to what is joined.
fn joined_before(state: &State, judged: &Judged, last: Option<u64>) -> Vec<(u64, Length)> {
    let ids: Vec<u64> = judged.joined.iter().copied().chain(last).collect();
    ids.iter()
        .rev()
        .take(MOST_SHOTS - 1)
        .rev()
        .filter_map(|id| {
            let taken = state.readings.get(id)?;
            // One that was corrected, or called wrong, is in no mean any more.
            let judged = taken.reading.judged.as_ref().filter(|_| !taken.restated)?;
            Some((*id, judged.dev))
        })
        .collect()
}

/// An earlier reading of a mark, as a next shot of the rod from a set-up would join it: enough for a phone to say the call
/// before it is sent, as the hub then says it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Joinable {
    /// Its entry; a reading that corrects this one looks at the one before.
    pub reading: u64,
    /// Until when a shot is of the same ground; none while it waits for a second shot, however late.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub until: Option<Time>,
    /// The side of the step on which it was read: a shot on the other side is not joined.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub side: Option<StepSide>,
    /// The differences that are averaged with the next, if all lie within `spread` of it; empty when none can be.
    pub devs: Vec<Length>,
    /// Shots that differ by more are not averaged.
    pub spread: Length,
}

/// The last two readings of a mark, newest first, for a shot of the ground to dig to.
pub fn joinable(state: &State, set_up: &SetUp, mark: &str, target: &Target) -> Vec<Joinable> {
    let Some(now) = state.marks.get(mark) else {
        return vec![];
    };
    let newest = now.readings.iter().rev().take(2);
    newest
        .filter_map(|(_, id)| {
            let before = state.readings.get(id)?;
            let judged = before.reading.judged.as_ref();
            let alike = alike(before, set_up, Some(target), None);
            let joined = judged.filter(|_| alike);
            Some(Joinable {
                reading: *id,
                until: (!waits_for_second(before)).then(|| before.made_at.plus_ms(SAME_GROUND_MS)),
                side: before.reading.side,
                devs: joined.map_or_else(Vec::new, |judged| {
                    let shots = joined_before(state, judged, Some(*id));
                    shots.into_iter().map(|(_, dev)| dev).collect()
                }),
                spread: SPREAD,
            })
        })
        .collect()
}

fn last_id(state: &State, asked: &TakeReading, corrected: Option<u64>) -> Option<u64> {
    let mark = state.marks.get(&asked.mark)?;
    let newest = mark.readings.iter().rev().map(|(_, id)| *id);
    newest.into_iter().find(|id| Some(*id) != corrected)
}

fn last<'a>(
    state: &'a State,
    asked: &TakeReading,
    corrected: Option<u64>,
) -> Option<&'a TakenReading> {
    state.readings.get(&last_id(state, asked, corrected)?)
}

/// Two shots that can be averaged: the same laser on the same height, rod against rod, the same revision and side.
fn same_shot(before: &TakenReading, shot: &Shot<'_>, asked: &TakeReading) -> bool {
    asked.mode == Mode::Rod
        && before.reading.side == asked.side
        && alike(before, shot.set_up, shot.target, shot.surface.as_ref())
}

/// What of that an earlier reading shows by itself.
fn alike(
    before: &TakenReading,
    set_up: &SetUp,
    target: Option<&Target>,
    surface: Option<&String>,
) -> bool {
    let reading = &before.reading;
    let target = target.map(|target| (target.id.as_str(), target.revision));
    let judged = reading.judged.as_ref();
    same_set_up(before, set_up)
        && reading.mode == Mode::Rod
        && judged.and_then(|judged| judged.surface.as_ref()) == surface
        && judged.map(|judged| (judged.target.as_str(), judged.revision)) == target
}

fn same_set_up(before: &TakenReading, set_up: &SetUp) -> bool {
    before.reading.set_up == set_up.id && before.reading.height == set_up.height()
}

/// The first shot was too close to call, and nobody has settled it.
fn waits_for_second(before: &TakenReading) -> bool {
    before.reading.judged.as_ref().is_some_and(|judged| {
        !judged.settled_high
            && matches!(judged.verdict, Verdict::TooCloseHigh | Verdict::TooCloseLow)
    })
}

/// What the slip rules need to know of the last reading on the mark.
fn fact(state: &State, before: &TakenReading, shot: &Shot<'_>) -> Option<Earlier> {
    let laid_since = state
        .marks
        .get(&shot.mark.id)
        .and_then(|now| now.paint.as_ref())
        .is_some_and(|paint| paint.at >= before.made_at);
    let dev = before.reading.elevation - shot.dig_to?;
    let judged = before.reading.judged.as_ref();
    Some(Earlier {
        dev,
        same_set_up: same_set_up(before, shot.set_up),
        accepted: judged.is_some_and(|judged| judged.verdict == Verdict::On),
        said_high: judged.is_some_and(|judged| judged.verdict == Verdict::High),
        // Another surface of the stack is other ground: gravel was laid, or taken off.
        ground_changed: laid_since || judged.is_some_and(|judged| judged.surface != shot.surface),
    })
}

/// Marks near enough to be mixed up with this one.
fn neighbours(state: &State, shot: &Shot<'_>) -> Vec<Neighbour> {
    let last_mark = shot
        .machine
        .and_then(|machine| state.cabs.get(&machine.id))
        .and_then(|cab| cab.last_mark.as_deref());
    shot.site
        .marks
        .iter()
        .filter(|other| other.id != shot.mark.id)
        .filter_map(|other| {
            let distance = other.place.distance(shot.mark.place);
            if distance > NEIGHBOURS {
                return None;
            }
            let target = shot.site.target_of(other)?;
            let at = super::shot::dig_to(target, other, None).ok()?;
            // A sloped plane stands at another height over the other mark.
            let lifted =
                shot.set_up.height_at(other.place) - shot.set_up.height_at(shot.mark.place);
            Some(Neighbour {
                mark: other.id.clone(),
                target: at - lifted,
                distance,
                machines_last: last_mark == Some(other.id.as_str()),
            })
        })
        .collect()
}
