//! What a failed check or a bump puts in doubt: each reading since the last good check, judged both ways, so that only
//! those are shot again that may be wrong.

use std::collections::BTreeMap;

use contract::ToSchema;
use earthwork::laser::suspect::{self, Doubted, Fate, Repeat, Window};
use earthwork::length::Length;
use earthwork::slip::Doubt;
use earthwork::tolerance::Verdict;
use serde::{Deserialize, Serialize};

use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::said::reading::{Question, Reading};
use crate::state::{SetUp, State, Suspect, TakenReading};
use crate::time::Time;

/// What was found about the readings between the last good check and the shot that ended the doubt. A later one of the
/// same set-up takes its place.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SuspectWindow {
    /// Which set-up.
    pub set_up: String,
    /// The last good check.
    pub from: Time,
    /// The benchmark shot that ends it; none while no benchmark was shot again: then nothing can be said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub to: Option<Time>,
    /// What that shot missed by: positive when everything was found too high. Zero when it found the laser unmoved.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub residual: Option<Length>,
    /// How many readings lie in it, repeats that were asked about included.
    pub readings: u32,
    /// The last repeat on an accepted mark that fits a laser not yet moved.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub held_at: Option<Time>,
    /// The first repeat that fits a laser already moved.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub moved_by: Option<Time>,
    /// Its marks in walking order: the order of work.
    pub marks: Vec<SuspectMark>,
}

impl Happening for SuspectWindow {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_window(state, self);
    }
}

/// A mark with a reading in the window.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SuspectMark {
    /// The mark.
    pub mark: String,
    /// What becomes of it.
    pub standing: Standing,
    /// The entry of the reading that is spoken of: the last in the window, or the acceptance before it that stands.
    pub reading: u64,
    /// When that reading was made.
    pub at: Time,
    /// Its difference as booked; none for a spot elevation.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub dev: Option<Length>,
    /// The same with all of the fault taken out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub dev_if_moved: Option<Length>,
    /// The verdict as booked.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub verdict: Option<Verdict>,
    /// The verdict if the laser had moved before the reading.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub verdict_if_moved: Option<Verdict>,
}

/// What becomes of a mark's reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Standing {
    /// The verdict is the same with and without the fault.
    Stands,
    /// The window holds nothing but a repeat; what was accepted before it stands.
    EarlierStands,
    /// It may be wrong: shoot it again.
    ShootAgain,
    /// No benchmark was shot since: nothing can be said.
    Unproven,
}

impl Standing {
    /// Whether the mark is to be shot again.
    pub fn is_owed(self) -> bool {
        matches!(self, Self::ShootAgain | Self::Unproven)
    }
}

/// The shot that ends a window.
#[derive(Clone, Copy, Debug)]
pub(crate) struct EndShot {
    pub(crate) at: Time,
    /// (HI − rod) − benchmark; zero when the laser is found unmoved.
    pub(crate) residual: Length,
}

/// The entry about a set-up's readings since its last good check; none when it has none.
pub(crate) fn window(state: &State, set_up: &SetUp, ends: Option<EndShot>) -> Option<Body> {
    window_from(state, set_up, set_up.good_at?, ends)
}

/// The same from another moment than the last good check.
pub(crate) fn window_from(
    state: &State,
    set_up: &SetUp,
    from: Time,
    ends: Option<EndShot>,
) -> Option<Body> {
    let inside = |at: Time| at > from && ends.is_none_or(|shot| at <= shot.at);
    let mut last: BTreeMap<&str, (u64, &TakenReading)> = BTreeMap::new();
    let mut readings = 0;
    for (id, taken) in &state.readings {
        let reading = &taken.reading;
        if reading.set_up == set_up.id && on_this_basis(reading, set_up) && inside(taken.made_at) {
            readings += 1;
            if !taken.restated
                && last
                    .get(reading.mark.as_str())
                    .is_none_or(|(_, other)| other.made_at <= taken.made_at)
            {
                last.insert(&reading.mark, (*id, taken));
            }
        }
    }
    let repeats: Vec<&crate::state::AskedReading> = state
        .asked
        .values()
        .filter(|asked| asked.reading.set_up == set_up.id && inside(asked.made_at))
        .filter(|asked| !asked.settled && is_repeat(&asked.question))
        .collect();
    readings += u32::try_from(repeats.len()).unwrap_or(u32::MAX);
    if readings == 0 {
        return None;
    }
    let site = state.site()?;
    // In the order of work, then places that are no mark, by name.
    let mut names: Vec<&str> = site.marks.iter().map(|mark| mark.id.as_str()).collect();
    let others = last.keys().filter(|name| site.mark(name).is_none());
    names.extend(others);
    let marks = names
        .into_iter()
        .filter_map(|mark| match last.get(mark) {
            Some((id, taken)) => Some(judge(state, from, ends, *id, taken)),
            None => repeats
                .iter()
                .any(|asked| asked.reading.mark == mark)
                .then(|| earlier(state, mark))
                .flatten(),
        })
        .collect();
    let (held_at, moved_by) = ends.map_or((None, None), |shot| jump(set_up, from, shot));
    Some(Body::SuspectWindow(SuspectWindow {
        set_up: set_up.id.clone(),
        from,
        to: ends.map(|shot| shot.at),
        residual: ends.map(|shot| shot.residual),
        readings,
        held_at,
        moved_by,
        marks,
    }))
}

fn on_this_basis(reading: &Reading, set_up: &SetUp) -> bool {
    usize::try_from(reading.basis).is_ok_and(|basis| basis == set_up.basis.len())
}

fn is_repeat(question: &Question) -> bool {
    matches!(
        question,
        Question::DoesNotFit {
            doubt: Doubt::RepeatOff { .. }
        }
    )
}

/// A reading in the window, under each story of the laser.
fn judge(
    state: &State,
    from: Time,
    ends: Option<EndShot>,
    id: u64,
    taken: &TakenReading,
) -> SuspectMark {
    let mut mark = SuspectMark {
        mark: taken.reading.mark.clone(),
        standing: if ends.is_some() {
            Standing::ShootAgain
        } else {
            Standing::Unproven
        },
        reading: id,
        at: taken.made_at,
        dev: None,
        dev_if_moved: None,
        verdict: None,
        verdict_if_moved: None,
    };
    let Some(judged) = &taken.reading.judged else {
        // A spot elevation has no verdict that could change: it is wrong by the fault, or it is not.
        if ends.is_some_and(|shot| shot.residual == Length::ZERO) {
            mark.standing = Standing::Stands;
        }
        return mark;
    };
    mark.dev = Some(judged.mean);
    mark.verdict = Some(judged.verdict);
    let target = state.site().and_then(|site| site.target(&judged.target));
    let Some(target) = target.filter(|target| target.revision == judged.revision) else {
        // The target has changed since: the reading says nothing about the new one.
        return mark;
    };
    let window = Window {
        good_at: from.0,
        failed_at: ends.map(|shot| shot.at.0),
        residual: ends.map_or(Length::ZERO, |shot| shot.residual),
    };
    let reading = Doubted {
        at: taken.made_at.0,
        difference: judged.mean,
        tolerance: target.tolerance,
        guard: judged.guard,
    };
    if let Ok(rejudged) = suspect::rejudge(&window, &reading)
        && ends.is_some()
    {
        mark.dev_if_moved = Some(rejudged.difference_if_jumped);
        mark.verdict_if_moved = Some(rejudged.jumped);
        // What turned a sloped plane did not lift it everywhere alike.
        let level = state
            .set_up(&taken.reading.set_up)
            .is_none_or(|set_up| set_up.slope.is_none());
        if rejudged.fate == Fate::Stands && (level || window.residual == Length::ZERO) {
            mark.standing = Standing::Stands;
        }
    }
    mark
}

/// A mark that was only repeated in the window: what was accepted before stands, because nobody was told to dig.
fn earlier(state: &State, mark: &str) -> Option<SuspectMark> {
    let (id, taken) = state.last_reading(mark)?;
    let judged = taken.reading.judged.as_ref();
    Some(SuspectMark {
        mark: mark.to_owned(),
        standing: Standing::EarlierStands,
        reading: id,
        at: taken.made_at,
        dev: judged.map(|judged| judged.mean),
        dev_if_moved: None,
        verdict: judged.map(|judged| judged.verdict),
        verdict_if_moved: None,
    })
}

/// Between which repeats the laser most likely jumped.
fn jump(set_up: &SetUp, from: Time, shot: EndShot) -> (Option<Time>, Option<Time>) {
    if shot.residual == Length::ZERO {
        return (None, None);
    }
    let repeats: Vec<Repeat> = set_up
        .repeats
        .iter()
        .filter(|repeat| repeat.at > from && repeat.at <= shot.at)
        .map(|repeat| Repeat {
            at: repeat.at.0,
            residual: repeat.residual,
        })
        .collect();
    let before = suspect::likeliest_jump(shot.residual, &repeats);
    let at = |n: usize| repeats.get(n).map(|repeat| Time(repeat.at));
    (before.checked_sub(1).and_then(at), at(before))
}

/// Whether a moment lies in a window of the set-up that a failed check or a bump put in doubt.
pub(crate) fn doubted_at(state: &State, set_up: &str, at: Time) -> bool {
    state.suspects.iter().any(|suspect| {
        let window = &suspect.window;
        window.set_up == set_up && at > window.from && window.to.is_none_or(|to| at <= to)
    })
}

/// The open window of a set-up, when no benchmark was shot since.
pub(crate) fn is_open_ended(state: &State, set_up: &str) -> bool {
    state
        .suspects
        .iter()
        .any(|suspect| suspect.window.set_up == set_up && suspect.window.to.is_none())
}

pub(crate) fn apply_window(state: &mut State, body: &SuspectWindow) {
    state
        .suspects
        .retain(|suspect| suspect.window.set_up != body.set_up || suspect.window.from != body.from);
    // A mark that was shot again meanwhile, with another laser, is owed nothing.
    let open = body
        .marks
        .iter()
        .filter(|mark| mark.standing.is_owed())
        .filter(|mark| {
            state
                .last_reading(&mark.mark)
                .is_none_or(|(id, taken)| id <= mark.reading || taken.reading.judged.is_none())
        })
        .map(|mark| mark.mark.clone())
        .collect();
    state.suspects.push(Suspect {
        window: body.clone(),
        open,
    });
}

/// A mark that was shot again leaves every list; gives which those were, by their place.
pub(crate) fn shot_again(state: &mut State, mark: &str) -> Vec<usize> {
    let all = state.suspects.iter_mut().enumerate();
    all.filter_map(|(at, suspect)| suspect.open.remove(mark).then_some(at))
        .collect()
}

/// The shot that had taken the mark off those lists was wrong: it is on them again.
pub(crate) fn not_shot(state: &mut State, lists: &[usize], mark: &str) {
    for at in lists {
        if let Some(suspect) = state.suspects.get_mut(*at) {
            suspect.open.insert(mark.to_owned());
        }
    }
}
