//! What a revision touches: marks whose grade changes, live calls, and marks that were accepted before.

use earthwork::length::Length;
use earthwork::target::DigTo;
use earthwork::tolerance::{Verdict, verdict};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::site::{Mark, Site};
use crate::state::State;

/// What a revision touches.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Touched {
    /// Marks whose grade or tolerance changes.
    pub marks: Vec<TouchedMark>,
    /// The most that a dig-to changes.
    pub most: Length,
}

impl Touched {
    /// The marks by name.
    pub fn names(&self) -> impl Iterator<Item = &str> {
        self.marks.iter().map(|touched| touched.mark.as_str())
    }
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
    let mut found = Touched::default();
    let gone = old.marks.iter().filter(|mark| new.mark(&mark.id).is_none());
    for mark in new.marks.iter().chain(gone) {
        let (before, after) = (asked(old, &mark.id), asked(new, &mark.id));
        if before == after {
            continue;
        }
        let (was, now) = (dig_to(old, &mark.id), dig_to(new, &mark.id));
        if let (Some(was), Some(now)) = (was, now) {
            found.most = found.most.max((now - was).abs());
        }
        let (accepted, still_in) = accepted(state, new, mark, now);
        found.marks.push(TouchedMark {
            mark: mark.id.clone(),
            was,
            now,
            call: live_call(state, &mark.id),
            accepted,
            still_in,
        });
    }
    found
}

/// All that a mark asks of the ground; none where it asks nothing.
fn asked(site: &Site, mark: &str) -> Option<(Option<DigTo>, earthwork::tolerance::Tolerance)> {
    let mark = site.mark(mark)?;
    let target = site.target_of(mark)?;
    Some((target.grade.dig_to(mark.place).ok(), target.tolerance))
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
