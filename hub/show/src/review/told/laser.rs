//! What stands behind the laser of some calls: the good check before them, the check after, what was in doubt.

use std::collections::BTreeMap;

use contract::ToSchema;
use earthwork::level::Check;
use serde::Serialize;

use crate::review::Day;
use crate::review::calls::CallHistory;
use crate::review::set_ups::{CheckMade, set_ups};
use day::said::suspect::SuspectMark;
use day::time::Time;

/// What stands behind a set-up while some calls rested on it.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct LaserProof {
    /// The set-up.
    pub set_up: String,
    /// The laser.
    pub laser: String,
    /// The benchmark of its backsight.
    pub benchmark: String,
    /// The last good check before the first call.
    pub before: Option<CheckMade>,
    /// The first check after the last call, good or not.
    pub after: Option<CheckMade>,
    /// What a failed check put in doubt of the marks that were called, judged both ways.
    pub doubts: Vec<SuspectMark>,
}

impl LaserProof {
    /// A good check follows, or the doubt has been settled by judging both ways.
    pub fn holds(&self) -> bool {
        let good = |check: &CheckMade| check.check == Check::Good;
        let stands =
            || !self.doubts.is_empty() && self.doubts.iter().all(|mark| !mark.standing.is_owed());
        self.after.as_ref().is_some_and(good) || stands()
    }
}

/// One proof for each set-up that the calls rested on.
pub(super) fn proofs(day: &Day<'_>, calls: &[CallHistory]) -> Vec<LaserProof> {
    let mut spans: BTreeMap<&str, (Time, Time)> = BTreeMap::new();
    for call in calls {
        if let Some(set_up) = &call.set_up {
            let span = spans.entry(set_up).or_insert((call.made_at, call.made_at));
            *span = (span.0.min(call.made_at), span.1.max(call.made_at));
        }
    }
    let all = set_ups(day);
    let called = |mark: &str| calls.iter().any(|call| call.mark.as_deref() == Some(mark));
    spans
        .into_iter()
        .filter_map(|(id, (first, last))| {
            let set_up = all.iter().find(|one| one.set_up == id)?;
            let checks = &set_up.checks;
            Some(LaserProof {
                set_up: id.to_owned(),
                laser: set_up.laser.clone(),
                benchmark: set_up
                    .basis
                    .last()
                    .map(|basis| basis.benchmark.clone())
                    .unwrap_or_default(),
                before: checks
                    .iter()
                    .rfind(|check| check.at <= first && check.check == Check::Good)
                    .cloned(),
                after: checks.iter().find(|check| check.at >= last).cloned(),
                doubts: set_up
                    .doubts
                    .iter()
                    .flat_map(|window| &window.marks)
                    .filter(|mark| called(&mark.mark))
                    .cloned()
                    .collect(),
            })
        })
        .collect()
}
