//! Each mark's history: every reading and what became of it, when its bottom was expected at grade, what was said about it.

use std::collections::BTreeMap;

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::tolerance::Verdict;
use serde::Serialize;

use super::{Day, Sentence};
use day::entry::{Body, Entry};
use day::said::reading::Reading;
use day::time::Time;

/// A mark's history.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct MarkHistory {
    /// The mark, or the name under which a place is kept.
    pub mark: String,
    /// Its readings, in the order of the log.
    pub readings: Vec<MarkReading>,
    /// Everything that was said about it, readings and calls with it.
    pub said: Vec<Sentence>,
}

/// A reading of a mark.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct MarkReading {
    /// Its entry.
    pub seq: u64,
    /// When it was made.
    pub at: Time,
    /// Who made it.
    pub by: String,
    /// On which set-up.
    pub set_up: String,
    /// The rod as typed.
    pub text: String,
    /// Measured.
    pub elevation: Length,
    /// Measured − target.
    pub dev: Option<Length>,
    /// The guard band.
    pub guard: Option<Length>,
    /// The verdict.
    pub verdict: Option<Verdict>,
    /// What became of it.
    pub became: Became,
    /// When the bottom was expected at grade from then on, if it was dug on; none when it was not HIGH.
    pub arrives: Option<Time>,
}

/// What became of a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Became {
    /// Taken.
    Taken,
    /// Asked about, and not shown.
    Asked,
    /// Late: kept, never shown.
    Late,
}

/// Every mark of which anything was said, by name.
pub fn marks(day: &Day<'_>) -> Vec<MarkHistory> {
    let mut found: BTreeMap<String, MarkHistory> = BTreeMap::new();
    for entry in day.entries {
        for mark in about(entry) {
            let one = found.entry(mark.clone()).or_insert_with(|| MarkHistory {
                mark,
                readings: vec![],
                said: vec![],
            });
            one.said.push(Sentence::of(entry));
            one.readings.extend(reading(day, entry));
        }
    }
    found.into_values().collect()
}

/// The marks that an entry is about.
fn about(entry: &Entry) -> Vec<String> {
    match &entry.body {
        Body::MarksLaid(b) => b.marks.iter().map(|one| one.mark.clone()).collect(),
        Body::MarksChecked(b) => b.marks.clone(),
        Body::MarksScraped(b) => b.marks.clone(),
        _ => Sentence::of(entry).mark.into_iter().collect(),
    }
}

fn reading(day: &Day<'_>, entry: &Entry) -> Option<MarkReading> {
    let (became, reading): (Became, &Reading) = match &entry.body {
        Body::ReadingTaken(b) => (Became::Taken, &b.reading),
        Body::ReadingAsked(b) => (Became::Asked, &b.reading),
        Body::ReadingLate(b) => (Became::Late, &b.reading),
        _ => return None,
    };
    let judged = reading.judged.as_ref();
    Some(MarkReading {
        seq: entry.seq,
        at: entry.made_at,
        by: entry.by.person.clone(),
        set_up: reading.set_up.clone(),
        text: reading.text.clone(),
        elevation: reading.elevation,
        dev: judged.map(|judged| judged.dev),
        guard: judged.map(|judged| judged.guard),
        verdict: judged.map(|judged| judged.verdict),
        became,
        arrives: day
            .arrivals
            .get(&entry.seq)
            .filter(|_| judged.is_some_and(|judged| judged.verdict == Verdict::High))
            .copied(),
    })
}
