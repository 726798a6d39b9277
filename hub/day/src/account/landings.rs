//! Where finish passes landed today: the first reading after a machine was told less than a few tenths.
//!
//! Readings on a set-up that was in doubt when they were made are left out. Landings are grouped by machine and ground,
//! never by person.

use std::collections::BTreeMap;

use earthwork::correction::Correction;
use earthwork::landing::FINISH;
use earthwork::length::Length;
use earthwork::tolerance::Tolerance;
use earthwork::uncertainty::Surface;

use crate::call::Message;
use crate::said::suspect;
use crate::state::{Call, State, TakenReading};

/// A landing: where it came out against what was told.
#[derive(Clone, Debug, PartialEq)]
pub struct Landed {
    /// The machine.
    pub machine: String,
    /// The mark.
    pub mark: String,
    /// The ground.
    pub surface: Surface,
    /// Measured − what it was told to reach: positive is high.
    pub error: Length,
    /// The tolerance there.
    pub tolerance: Tolerance,
    /// The guard band of the reading.
    pub guard: Length,
    /// The reading's entry.
    pub reading: u64,
}

/// Every landing of the day, in the order of the readings.
pub fn landed(state: &State) -> Vec<Landed> {
    // The call that each reading led to.
    let calls: BTreeMap<u64, &Call> = state
        .calls
        .values()
        .filter_map(|call| Some((*call.sent.readings.last()?, call)))
        .collect();
    let mut all: Vec<Landed> = state
        .marks
        .iter()
        .flat_map(|(mark, now)| {
            let ids: Vec<u64> = now.readings.iter().map(|(_, id)| *id).collect();
            let pairs: Vec<(u64, u64)> = ids.windows(2).map(|pair| (pair[0], pair[1])).collect();
            let calls = &calls;
            pairs.into_iter().filter_map(move |(before, after)| {
                one(state, mark, calls.get(&before)?, before, after)
            })
        })
        .collect();
    all.sort_by_key(|landed| landed.reading);
    all
}

fn one(state: &State, mark: &str, call: &Call, before: u64, after: u64) -> Option<Landed> {
    let Message::Measured {
        correction: Correction::Down(_) | Correction::Shave(_),
        amount,
        ..
    } = call.sent.message
    else {
        return None;
    };
    let (earlier, later) = (state.readings.get(&before)?, state.readings.get(&after)?);
    let judged = later.reading.judged.as_ref()?;
    if amount > FINISH || judged.joined.contains(&before) || judged.surface.is_some() {
        return None;
    }
    if in_doubt(state, earlier) || in_doubt(state, later) {
        return None;
    }
    let site = state.site()?;
    Some(Landed {
        machine: call.sent.machine.clone(),
        mark: mark.to_owned(),
        surface: site.mark(mark)?.surface,
        error: judged.dev - call.sent.aim,
        tolerance: site.target(&judged.target)?.tolerance,
        guard: judged.guard,
        reading: after,
    })
}

/// Whether a reading lies in a window that a failed check or a bump put in doubt.
fn in_doubt(state: &State, taken: &TakenReading) -> bool {
    suspect::doubted_at(state, &taken.reading.set_up, taken.made_at)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::given::{Crew, len};
    use crate::time::minutes;

    #[test]
    fn the_first_reading_after_a_small_call_is_a_landing() {
        let mut crew = Crew::digging();
        for text in ["4.20", "4.75", "5.02"] {
            crew.wait(minutes(9));
            crew.reads("P-1", text).unwrap();
        }
        let found = landed(&crew.state);
        // 4.20 told 8 tenths, 4.75 told 2½: only the last is a finish pass.
        assert_eq!(found.len(), 1, "{found:?}");
        assert_eq!(found[0].error, len("-0.02 ft"));
        assert_eq!(found[0].machine, "EX-1");
        crew.check("S1", "BM-2", "3.20").unwrap();
        assert!(
            landed(&crew.state).is_empty(),
            "a doubted laser teaches nothing"
        );
    }
}
