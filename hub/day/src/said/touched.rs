//! What a revision touches: marks whose grade changes, live calls, and marks that were accepted before.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::target::DigTo;
use earthwork::tolerance::{Verdict, verdict};
use serde::{Deserialize, Serialize};

use crate::site::{Mark, Site, Target};
use crate::state::State;

/// What a revision touches.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Touched {
    /// Marks whose grade or tolerance changes.
    pub marks: Vec<TouchedMark>,
    /// The most that a dig-to changes.
    pub most: Length,
    /// Targets whose grade, layers or tolerance change, also those that no mark stands on.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub targets: Vec<TouchedTarget>,
}

impl Touched {
    /// The marks by name.
    pub fn names(&self) -> impl Iterator<Item = &str> {
        self.marks.iter().map(|touched| touched.mark.as_str())
    }
}

/// A target that a revision touches.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct TouchedTarget {
    /// Which.
    pub target: String,
    /// What its layers took off the named surface; none when it is new.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub layers_were: Option<Length>,
    /// What they take off; none when it is gone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub layers_are: Option<Length>,
    /// Its surface itself, its reach, what is dug deeper in it or its tolerance changes too.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub more: bool,
}

/// A mark that a revision touches.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct TouchedMark {
    /// Which.
    pub mark: String,
    /// The dig-to before; none near a step, outside, or when the mark is new.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub was: Option<Length>,
    /// The dig-to now.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub now: Option<Length>,
    /// Near a step, both dig-tos before.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub were_at_step: Option<[Length; 2]>,
    /// Near a step, both dig-tos now.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub are_at_step: Option<[Length; 2]>,
    /// The live call at it, which is withdrawn.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub call: Option<u64>,
    /// The reading by which it was accepted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub accepted: Option<u64>,
    /// Whether that reading would still be in; none when the mark was not accepted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub still_in: Option<bool>,
}

/// What changes for the marks from one site to another.
pub(crate) fn touched(state: &State, old: &Site, new: &Site) -> Touched {
    let mut found = Touched {
        targets: targets(old, new),
        ..Touched::default()
    };
    let gone = old.marks.iter().filter(|mark| new.mark(&mark.id).is_none());
    for mark in new.marks.iter().chain(gone) {
        let (before, after) = (asked(old, &mark.id), asked(new, &mark.id));
        if before == after {
            continue;
        }
        let (was, now) = (dig_to(old, &mark.id), dig_to(new, &mark.id));
        found.most = found.most.max(most(before, after));
        let (accepted, still_in) = accepted(state, new, mark, now);
        found.marks.push(TouchedMark {
            mark: mark.id.clone(),
            was,
            now,
            were_at_step: at_step(before),
            are_at_step: at_step(after),
            call: live_call(state, &mark.id),
            accepted,
            still_in,
        });
    }
    found
}

/// All that a mark asks of the ground; none where it asks nothing.
fn asked(site: &Site, mark: &str) -> Asked {
    let mark = site.mark(mark)?;
    let target = site.target_of(mark)?;
    Some((target.grade.dig_to(mark.place).ok(), target.tolerance))
}

/// The targets that differ in what they ask of the ground.
fn targets(old: &Site, new: &Site) -> Vec<TouchedTarget> {
    let taken = |target: &Target| -> Length {
        let layers = target.grade.stack.layers.iter();
        layers.map(|layer| layer.thickness).sum()
    };
    let gone = old
        .targets
        .iter()
        .filter(|one| new.target(&one.id).is_none());
    let each = new.targets.iter().chain(gone).filter_map(|one| {
        let (before, after) = (old.target(&one.id), new.target(&one.id));
        let more = match (before, after) {
            (Some(before), Some(after)) => {
                if before.grade == after.grade && before.tolerance == after.tolerance {
                    return None;
                }
                let mut same = after.grade.clone();
                same.stack.layers.clone_from(&before.grade.stack.layers);
                same != before.grade || before.tolerance != after.tolerance
            }
            _ => false,
        };
        Some(TouchedTarget {
            target: one.id.clone(),
            layers_were: before.map(taken),
            layers_are: after.map(taken),
            more,
        })
    });
    each.collect()
}

type Asked = Option<(Option<DigTo>, earthwork::tolerance::Tolerance)>;

fn at_step(asked: Asked) -> Option<[Length; 2]> {
    match asked?.0? {
        DigTo::NearStep { before, after, .. } => Some([before, after]),
        DigTo::At(_) => None,
    }
}

/// The most that a dig-to changes, on either side of a step.
fn most(before: Asked, after: Asked) -> Length {
    let sides = |asked: Asked| {
        let at = asked.and_then(|asked| asked.0).map(|dig_to| match dig_to {
            DigTo::At(at) => [at, at],
            DigTo::NearStep { before, after, .. } => [before, after],
        });
        at.unwrap_or_default()
    };
    let both = |asked: &Asked| asked.is_some_and(|asked| asked.0.is_some());
    if !both(&before) || !both(&after) {
        return Length::ZERO;
    }
    let (was, now) = (sides(before), sides(after));
    (now[0] - was[0]).abs().max((now[1] - was[1]).abs())
}

fn dig_to(site: &Site, mark: &str) -> Option<Length> {
    match asked(site, mark)?.0? {
        DigTo::At(elevation) => Some(elevation),
        DigTo::NearStep { .. } => None,
    }
}

fn live_call(state: &State, mark: &str) -> Option<u64> {
    state.cabs.keys().find_map(|machine| {
        let (id, call) = state.live_call(machine)?;
        (call.sent.mark.as_deref() == Some(mark)).then_some(id)
    })
}

/// The reading by which a mark was accepted, and whether it would still be in.
fn accepted(
    state: &State,
    new: &Site,
    mark: &Mark,
    now: Option<Length>,
) -> (Option<u64>, Option<bool>) {
    let Some((id, taken)) = state.last_reading(&mark.id) else {
        return (None, None);
    };
    let Some(judged) = &taken.reading.judged else {
        return (None, None);
    };
    if judged.verdict != Verdict::On || judged.surface.is_some() {
        return (None, None);
    }
    let tolerance = new
        .mark(&mark.id)
        .and_then(|mark| new.target_of(mark))
        .map(|target| target.tolerance);
    let still_in = now.zip(tolerance).is_some_and(|(now, tolerance)| {
        let dev = taken.reading.elevation - now;
        verdict(&[dev], tolerance, judged.guard) == Verdict::On
    });
    (Some(id), Some(still_in))
}
