//! As built: where each mark stands at the end of the day, by its last reading, and what speaks for it.

use std::collections::BTreeMap;

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::tolerance::Verdict;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::coverage;
use crate::last;
use crate::lengths::signed;
use crate::said::marks::PaintState;
use crate::said::reading::StepSide;
use crate::said::rule::Ruling;
use crate::said::suspect::{Standing, SuspectMark};
use crate::said::void::VoidCause;
use crate::state::State;
use crate::time::Time;

/// A mark as it was last measured.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[expect(
    clippy::struct_excessive_bools,
    reason = "each stands for itself: a row of the as-built sheet"
)]
pub struct BuiltMark {
    /// The mark.
    pub mark: String,
    /// Where it is, when known.
    pub place: Option<Point>,
    /// The target that it was judged against; none for a spot elevation.
    pub target: Option<String>,
    /// That target's revision.
    pub revision: Option<u32>,
    /// The elevation to dig to, or of the surface that was named.
    pub dig_to: Option<Length>,
    /// Measured by the last shot.
    pub elevation: Length,
    /// The last shot less the target: positive is HIGH.
    pub dev: Option<Length>,
    /// The mean of the shots that were judged together, less the target.
    pub mean: Option<Length>,
    /// The guard band that the verdict kept to.
    pub guard: Option<Length>,
    /// The day of the last shot.
    pub day: String,
    /// When the last shot was made.
    pub at: Time,
    /// Who made it.
    pub by: String,
    /// Booked on paper, and typed in afterwards.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub paper: bool,
    /// On which set-up.
    pub set_up: String,
    /// The entry of the last reading.
    pub reading: u64,
    /// Readings of the mark that count, this one with them.
    pub readings: u32,
    /// The verdict; none for a spot elevation.
    pub verdict: Option<Verdict>,
    /// The supervisor's ruling on it.
    pub ruling: Option<Ruling>,
    /// The difference if the laser had moved before it: the verdict is the same.
    pub if_moved: Option<Length>,
    /// What a laser in doubt has to do with it.
    pub doubt: LaserDoubt,
    /// What is asked there has changed since: the difference is against the target of then.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub changed: bool,
    /// Which side of the step was read.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub side: Option<StepSide>,
    /// The surface that was read, when it is not the ground to dig to.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub surface: Option<String>,
    /// Why its acceptance does not count any more, though nobody has measured it since.
    pub void: Option<VoidCause>,
    /// Its soil failed a test, and no later one took its place.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub failed: bool,
    /// The gravel patch over it.
    pub patch: Option<String>,
    /// On grade, on the target as it is now, from a laser that was found good afterwards or whose fault changes nothing.
    pub proven: bool,
    /// The paint is gone.
    pub scraped: bool,
    /// How it stands.
    #[serde(flatten)]
    pub text: Text,
}

impl BuiltMark {
    /// Whether its last reading still speaks for it: see [`crate::last`].
    pub fn stands(&self) -> bool {
        !self.changed && self.void.is_none() && self.doubt != LaserDoubt::Open
    }

    /// The elevation of its ground, as the mean of its shots has it.
    pub fn ground(&self) -> Length {
        let mean = self.dig_to.zip(self.mean);
        mean.map_or(self.elevation, |(dig_to, mean)| dig_to + mean)
    }
}

/// What a laser that was in doubt has to do with a mark's last reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum LaserDoubt {
    /// Nothing that asks for another reading.
    Nothing,
    /// It may be wrong, and nobody has shot it again.
    Open,
    /// An earlier reading was in doubt; this one, made later, settles it.
    Settled,
}

/// Every mark or place with a reading that counts, by name: of this day, else as the days before left it.
pub fn built(state: &State) -> Vec<BuiltMark> {
    let read = state.marks.keys();
    let mut found: BTreeMap<String, BuiltMark> = read
        .filter_map(|mark| Some((mark.clone(), of_mark(state, mark)?)))
        .collect();
    for (mark, before) in &state.built_before {
        let now = found.entry(mark.clone());
        now.or_insert_with(|| still(state, before));
    }
    found.into_values().collect()
}

/// A mark as the days before left it; none when nobody had read it.
pub fn before(state: &State, mark: &str) -> Option<BuiltMark> {
    Some(still(state, state.built_before.get(mark)?))
}

/// A mark as a day before left it; what has changed since does not prove it any more.
fn still(state: &State, before: &BuiltMark) -> BuiltMark {
    let target = before.target.as_deref();
    let target = target.and_then(|target| state.site()?.target(target));
    let same = target.is_some_and(|target| Some(target.revision) == before.revision);
    let changed = last::changed_since(state, before);
    let now = state.marks.get(&before.mark);
    let paint = now.and_then(|now| now.paint.as_ref());
    let void = now.and_then(|now| now.void.as_ref());
    let void = void
        .map(|(_, why)| why.clone())
        .or_else(|| before.void.clone());
    BuiltMark {
        proven: before.proven
            && same
            && !changed
            && void.is_none()
            && !state.account.fails(&before.mark),
        changed,
        failed: state.account.fails(&before.mark),
        void,
        scraped: paint.map_or(before.scraped, |paint| paint.state == PaintState::Scraped),
        patch: patch(state, &before.mark).or_else(|| before.patch.clone()),
        ..before.clone()
    }
}

fn patch(state: &State, mark: &str) -> Option<String> {
    let mut patches = state.account.patches.values();
    let patch = patches.find(|patch| patch.needed.mark == mark)?;
    Some(patch.needed.patch.clone())
}

fn of_mark(state: &State, mark: &str) -> Option<BuiltMark> {
    let (id, taken) = state.last_reading(mark)?;
    let now = state.marks.get(mark)?;
    let judged = taken.reading.judged.as_ref();
    let place = match &taken.reading.placed {
        Some(placed) => Some(placed.at),
        None => state.site().and_then(|site| Some(site.mark(mark)?.place)),
    };
    let doubts: Vec<&SuspectMark> = state
        .suspects
        .iter()
        .flat_map(|suspect| &suspect.window.marks)
        .filter(|doubt| doubt.mark == mark)
        .collect();
    let of_this = doubts.iter().find(|doubt| doubt.reading == id);
    let owed = state
        .suspects
        .iter()
        .any(|suspect| suspect.open.contains(mark));
    let mut found = BuiltMark {
        mark: mark.to_owned(),
        place,
        target: judged.map(|judged| judged.target.clone()),
        revision: judged.map(|judged| judged.revision),
        dig_to: judged.map(|judged| judged.dig_to),
        elevation: taken.reading.elevation,
        dev: judged.map(|judged| judged.dev),
        mean: judged.map(|judged| judged.mean),
        guard: judged.map(|judged| judged.guard),
        day: state.day.as_ref()?.id.clone(),
        at: taken.made_at,
        by: taken.by.clone(),
        paper: taken.reading.paper.is_some(),
        set_up: taken.reading.set_up.clone(),
        reading: id,
        readings: u32::try_from(now.readings.len()).unwrap_or(u32::MAX),
        verdict: judged.map(|judged| judged.verdict),
        ruling: now.ruling,
        if_moved: of_this
            .filter(|doubt| doubt.standing == Standing::Stands)
            .and_then(|doubt| doubt.dev_if_moved),
        doubt: match (owed, of_this) {
            (true, _) => LaserDoubt::Open,
            (false, None) if !doubts.is_empty() => LaserDoubt::Settled,
            (false, _) => LaserDoubt::Nothing,
        },
        changed: false,
        side: taken.reading.side,
        surface: judged.and_then(|judged| judged.surface.clone()),
        void: now.void.as_ref().map(|(_, why)| why.clone()),
        failed: state.account.fails(mark),
        patch: patch(state, mark),
        proven: coverage::proven(state, mark),
        scraped: now
            .paint
            .as_ref()
            .is_some_and(|paint| paint.state == PaintState::Scraped),
        text: Text::default(),
    };
    found.changed = last::changed_since(state, &found);
    found.text = standing(&found, judged.is_some_and(|one| one.settled_high));
    Some(found)
}

/// How a mark stands, in a few words: the verdict, what a person decided about it, what stands behind it.
fn standing(mark: &BuiltMark, high_by_rule: bool) -> Text {
    let verdict = match mark.verdict {
        None => words::built::spot_elevation(),
        Some(_) if high_by_rule => words::built::high_by_rule(),
        Some(Verdict::On) => words::built::on(),
        Some(Verdict::High) => words::built::high(),
        Some(Verdict::Low) => words::built::low(),
        Some(Verdict::TooCloseHigh) => words::built::too_close_call_high_side(),
        Some(Verdict::TooCloseLow) => words::built::too_close_call_low_side(),
    };
    let mut said = vec![Text::from(verdict)];
    let mut add = |text: Text| said.push(text);
    if mark.paper {
        add(words::built::typed_in_from_paper().into());
    }
    match mark.ruling {
        Some(Ruling::Leave) => add(words::built::left_by_ruling().into()),
        Some(Ruling::Patch) => add(words::built::patch_by_ruling().into()),
        Some(Ruling::Trim) => add(words::built::trim_by_ruling().into()),
        None => {}
    }
    if mark.failed {
        add(words::built::soil_test_failed().into());
    }
    if let Some(patch) = &mark.patch {
        add(words::built::gravel(&crate::read_as::patch(patch)));
    }
    if let Some(moved) = mark.if_moved.map(signed) {
        add(words::built::same_if_laser_had_moved(&moved));
    }
    if mark.changed {
        add(words::built::measured_before_its_target_changed().into());
    }
    match mark.doubt {
        LaserDoubt::Nothing => {}
        LaserDoubt::Open => add(words::built::in_doubt().into()),
        LaserDoubt::Settled => add(words::built::settles_an_earlier_doubt().into()),
    }
    if let Some(void) = &mark.void {
        add(words::built::void(&void.text()));
    }
    Text::joined(&said, "; ")
}
