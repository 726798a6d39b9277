//! Blind pairs: a second shot made without seeing the first tells how well this person reads with this rod.

use std::collections::BTreeSet;

use contract::ToSchema;
use earthwork::laser::repeats::reading_doubt_ft;
use earthwork::length::Length;
use earthwork::slip::Mode;
use serde::{Deserialize, Serialize};

use crate::asked::By;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::state::State;
use crate::time::{Time, minutes};

/// A pair is made within this time.
const SOON_MS: i64 = minutes(10);

/// Two shots of one mark, the second blind.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct BlindPair {
    /// The entry of the first.
    pub first: u64,
    /// The mark.
    pub mark: String,
    /// Who shot, and with which rod: the first, then the blind one.
    pub shots: Vec<ReadBy>,
    /// The second elevation less the first.
    pub difference: Length,
}

impl Happening for BlindPair {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_pair(state, self);
    }
}

/// A person with a rod.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
pub struct ReadBy {
    /// Who.
    pub person: String,
    /// With which rod.
    pub rod: String,
}

/// The pair that a blind reading about to be entered makes with the one before it.
pub(crate) fn after_reading(state: &State, by: &By, at: Time, bodies: &[Body]) -> Option<Body> {
    let reading = bodies.iter().find_map(|body| match body {
        Body::ReadingTaken(taken) => Some(&taken.reading),
        _ => None,
    })?;
    if !reading.blind || reading.mode != Mode::Rod {
        return None;
    }
    let (first, before) = state.last_reading(&reading.mark)?;
    let alike = before.reading.set_up == reading.set_up
        && before.reading.height == reading.height
        && before.reading.mode == Mode::Rod
        && at.ms_since(before.made_at) <= SOON_MS;
    alike.then(|| {
        Body::BlindPair(BlindPair {
            first,
            mark: reading.mark.clone(),
            shots: vec![
                ReadBy {
                    person: before.by.clone(),
                    rod: before.reading.rod.clone(),
                },
                ReadBy {
                    person: by.person.clone(),
                    rod: reading.rod.clone(),
                },
            ],
            difference: reading.elevation - before.reading.elevation,
        })
    })
}

/// One standard deviation of this person's shots with this rod; none before six pairs, where the usual figure stays.
pub(crate) fn own_doubt(state: &State, person: &str, rod: &str) -> Option<Length> {
    let pairs: Vec<Length> = state
        .pairs
        .iter()
        .filter(|pair| {
            pair.shots
                .iter()
                .any(|shot| shot.person == person && shot.rod == rod)
        })
        .map(|pair| pair.difference)
        .collect();
    Length::from_feet(reading_doubt_ft(&pairs)?).ok()
}

/// What the pairs of a person show of one shot with a rod, for everybody with enough of them.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct OwnDoubt {
    /// Who.
    pub person: String,
    /// With which rod.
    pub rod: String,
    /// One standard deviation of one reading.
    pub doubt: Length,
}

/// How well each person reads, as far as their blind pairs tell it.
pub fn own_doubts(state: &State) -> Vec<OwnDoubt> {
    let who: BTreeSet<(&str, &str)> = state
        .pairs
        .iter()
        .flat_map(|pair| &pair.shots)
        .map(|shot| (shot.person.as_str(), shot.rod.as_str()))
        .collect();
    who.into_iter()
        .filter_map(|(person, rod)| {
            Some(OwnDoubt {
                person: person.to_owned(),
                rod: rod.to_owned(),
                doubt: own_doubt(state, person, rod)?,
            })
        })
        .collect()
}

/// Pairs outlive their day: they are about people and rods, not about where the laser stands.
pub(crate) fn apply_pair(state: &mut State, body: &BlindPair) {
    state.pairs.push(body.clone());
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, reading};
    use crate::said::reading::TakeReading;
    use crate::time::seconds;

    fn blind(crew: &mut Crew, text: &str) -> Length {
        crew.wait(seconds(100));
        let shot = TakeReading {
            blind: true,
            ..reading("P-1", text)
        };
        let answer = crew.says(&ground(), Command::TakeReading(shot)).unwrap();
        let taken = &crew.state.readings[&answer.first].reading;
        taken.judged.as_ref().unwrap().guard
    }

    /// Six pairs that differ by 0.02 ft are 0.0141 ft a shot (statistics textbooks, duplicate measurements): more than the
    /// usual 0.010, so the guard band grows, and not before the sixth.
    #[test]
    fn six_pairs_replace_the_usual_figure() {
        let mut crew = Crew::digging();
        let mut guards = vec![];
        for n in 0..8 {
            crew.reads("P-1", &format!("{:.2}", 4.00 + f64::from(n) / 10.0))
                .unwrap();
            guards.push(blind(
                &mut crew,
                &format!("{:.2}", 4.02 + f64::from(n) / 10.0),
            ));
        }
        assert_eq!(crew.state.pairs.len(), 8);
        assert!(
            guards[..6].iter().all(|guard| *guard == guards[0]),
            "{guards:?}"
        );
        assert!(
            guards[6] > guards[0] && guards[7] == guards[6],
            "{guards:?}"
        );
    }
}
