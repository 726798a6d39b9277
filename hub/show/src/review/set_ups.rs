//! What happened to each laser: its backsight, its checks, what was measured with it, what was in doubt.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::level::Check;
use serde::Serialize;

use super::{Day, Sentence};
use day::entry::{Body, Entry};
use day::said::set_up::Basis;
use day::said::suspect::SuspectWindow;
use day::state::SetUpState;
use day::time::Time;

/// A set-up of the day.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct SetUpHistory {
    /// Its name.
    pub set_up: String,
    /// The laser.
    pub laser: String,
    /// Who set it up.
    pub by: String,
    /// When.
    pub at: Time,
    /// What its height rested on; the last counts.
    pub basis: Vec<Basis>,
    /// How it stands now.
    pub state: SetUpState,
    /// Taken down.
    pub closed: bool,
    /// Its check shots.
    pub checks: Vec<CheckMade>,
    /// Readings that were taken with it.
    pub readings: u32,
    /// The last shot that proved it.
    pub good_at: Option<Time>,
    /// The last reading on it that no good check has followed.
    pub unproven_since: Option<Time>,
    /// What was in doubt.
    pub doubts: Vec<SuspectWindow>,
    /// Everything that was said about it.
    pub said: Vec<Sentence>,
}

/// A check shot.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct CheckMade {
    /// Its entry.
    pub seq: u64,
    /// When.
    pub at: Time,
    /// Who.
    pub by: String,
    /// On which benchmark.
    pub benchmark: String,
    /// The rod as typed.
    pub text: String,
    /// (HI − rod) − benchmark: positive when the laser's heights come out too high.
    pub residual: Length,
    /// What came of it.
    pub check: Check,
}

/// Every set-up of the day, in the order in which they were made.
pub fn set_ups(day: &Day<'_>) -> Vec<SetUpHistory> {
    let state = &day.state;
    state
        .set_ups
        .iter()
        .map(|set_up| {
            let about = |entry: &&Entry| of(entry) == Some(set_up.id.as_str());
            let said: Vec<&Entry> = day.entries.iter().filter(about).collect();
            let own = state.readings.values();
            let own = own.filter(|taken| taken.reading.set_up == set_up.id);
            let last = own.clone().map(|taken| taken.made_at).max();
            SetUpHistory {
                set_up: set_up.id.clone(),
                laser: set_up.laser.clone(),
                by: said
                    .first()
                    .map(|entry| entry.by.person.clone())
                    .unwrap_or_default(),
                at: said.first().map(|entry| entry.made_at).unwrap_or_default(),
                basis: set_up.basis.clone(),
                state: set_up.state.clone(),
                closed: set_up.closed,
                checks: said.iter().filter_map(|entry| check(entry)).collect(),
                readings: u32::try_from(own.count()).unwrap_or(u32::MAX),
                good_at: set_up.good_at,
                unproven_since: last.filter(|last| set_up.good_at.is_none_or(|good| *last > good)),
                doubts: state
                    .suspects
                    .iter()
                    .filter(|suspect| suspect.window.set_up == set_up.id)
                    .map(|suspect| suspect.window.clone())
                    .collect(),
                said: said.into_iter().map(Sentence::of).collect(),
            }
        })
        .collect()
}

/// The set-up that an entry is about, readings apart.
fn of(entry: &Entry) -> Option<&str> {
    Some(match &entry.body {
        Body::LaserSetUp(b) => &b.set_up,
        Body::SetUpRestated(b) => &b.set_up,
        Body::SetUpProven(b) => &b.set_up,
        Body::SetUpClosed(b) => &b.set_up,
        Body::CheckShot(b) => &b.set_up,
        Body::SetUpDoubted(b) => &b.set_up,
        Body::SuspectWindow(b) => &b.set_up,
        Body::CheckFellDue(b) => &b.set_up,
        _ => return None,
    })
}

fn check(entry: &Entry) -> Option<CheckMade> {
    let Body::CheckShot(b) = &entry.body else {
        return None;
    };
    Some(CheckMade {
        seq: entry.seq,
        at: entry.made_at,
        by: entry.by.person.clone(),
        benchmark: b.benchmark.clone(),
        text: b.text.clone(),
        residual: b.residual,
        check: b.check,
    })
}
