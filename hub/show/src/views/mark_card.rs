//! The card of the last reading on a mark, for the ground person, the supervisor and a visitor.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::tolerance::Verdict;
use serde::Serialize;

use crate::views::parts::Each;
use day::built;
use day::last::{self, StillCounts};
use day::said::reading::Judged;
use day::site::Site;
use day::state::State;
use day::time::Time;

/// The last reading on a mark.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct MarkCard {
    /// The mark.
    pub id: String,
    /// The entry of the reading.
    pub reading: u64,
    /// Measured elevation.
    pub elevation: Length,
    /// Measured − target; none for a spot elevation, and none when it does not count any more.
    pub dev: Option<Length>,
    /// The verdict; none for a spot elevation, and none when it does not count any more.
    pub verdict: Option<Verdict>,
    /// What a supervisor ruled on it, while it stands.
    pub ruling: Option<day::said::rule::Ruling>,
    /// Two shots were too close on the low side: the supervisor rules.
    pub needs_ruling: bool,
    /// When it was made.
    pub at: Time,
    /// Who took it.
    pub by: String,
    /// On which set-up.
    pub set_up: String,
    /// The day on which it was made, when that is not this day.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub day: Option<String>,
    /// Whether it still speaks for the mark, and why not.
    pub counts: StillCounts,
    /// Measured − target as it was booked, when it does not count any more.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub was: Option<Length>,
}

/// The last reading on each mark, of this day or the days before, in the order of work; then of this day on places that are
/// no mark, by name.
pub(crate) fn cards<'a>(state: &'a State, site: &'a Site) -> Each<'a, &'a str, MarkCard> {
    let marks = site.marks.iter().map(|mark| mark.id.as_str());
    let places = state.marks.keys().filter(|id| site.mark(id).is_none());
    Each {
        keys: marks.chain(places.map(String::as_str)).collect(),
        mark: |mark| mark,
        name: |mark| (*mark).to_owned(),
        one: Box::new(|mark| read_today(state, mark).or_else(|| built_before(state, mark))),
    }
}

fn read_today(state: &State, mark: &str) -> Option<MarkCard> {
    let (id, taken) = state.last_reading(mark)?;
    let counts = last::of_reading(state, id, taken);
    let judged: Option<&Judged> = taken.reading.judged.as_ref();
    let ruling = state.marks.get(mark).and_then(|now| now.ruling);
    let needs_ruling = ruling.is_none() && judged.is_some_and(|judged| judged.needs_ruling);
    let card = MarkCard {
        id: mark.to_owned(),
        reading: id,
        elevation: taken.reading.elevation,
        dev: judged.map(|judged| judged.mean),
        verdict: judged.map(|judged| judged.verdict),
        ruling,
        needs_ruling,
        at: taken.made_at,
        by: taken.by.clone(),
        set_up: taken.reading.set_up.clone(),
        day: None,
        counts,
        was: None,
    };
    Some(as_it_counts(card))
}

/// What a day before left, until somebody reads there again.
fn built_before(state: &State, mark: &str) -> Option<MarkCard> {
    let before = built::before(state, mark)?;
    let counts = last::of_before(state, &before);
    Some(as_it_counts(MarkCard {
        id: before.mark,
        reading: before.reading,
        elevation: before.elevation,
        dev: before.mean,
        verdict: before.verdict,
        ruling: before.ruling,
        needs_ruling: false,
        at: before.at,
        by: before.by,
        set_up: before.set_up,
        day: Some(before.day),
        counts,
        was: None,
    }))
}

/// What does not count any more has no difference and no verdict: no view can show them as if they held.
fn as_it_counts(card: MarkCard) -> MarkCard {
    if card.counts == StillCounts::Counts {
        return card;
    }
    MarkCard {
        was: card.dev,
        dev: None,
        verdict: None,
        ruling: None,
        needs_ruling: false,
        ..card
    }
}
