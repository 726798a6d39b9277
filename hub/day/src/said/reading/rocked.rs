//! A rocked rod: up to three quick readings, of which the smallest counts, because a leaning rod reads too large.

use earthwork::length::Length;
use words::Fixed;

use super::TakeReading;
use crate::refusal::Refusal;
use crate::said::set_up::rod_value;
use crate::site::Site;

/// Quick readings of one rocked rod, the one that counts included.
const MOST: usize = 3;
/// A lean of more than this is none: 8 degrees on 13 ft are 0.13 ft (from 1 − cos, mathematics).
const LEANS: Length = Length::from_hundredths_of_a_foot(15);

/// The same with the smallest value as its text and the others kept beside it.
///
/// # Errors
/// When there are too many, when one is none, or when they differ by more than a lean.
pub(super) fn smallest(site: &Site, asked: &TakeReading) -> Result<TakeReading, Refusal> {
    let mut asked = asked.clone();
    if asked.rocked.is_empty() {
        return Ok(asked);
    }
    if asked.rocked.len() >= MOST {
        return Err(refused(words::reading::give_most_three_readings_one()));
    }
    let mut read = Vec::new();
    for text in std::iter::once(&asked.text).chain(&asked.rocked) {
        read.push((rod_value(site, &asked.rod, text)?.value, text.clone()));
    }
    read.sort_by_key(|(value, _)| *value);
    let spread = match (read.first(), read.last()) {
        (Some((low, _)), Some((high, _))) => *high - *low,
        _ => Length::ZERO,
    };
    if spread > LEANS {
        return Err(refused(words::reading::readings_rocked_rod_differ_by()));
    }
    let mut texts = read.into_iter().map(|(_, text)| text);
    asked.text = texts.next().unwrap_or_default();
    asked.rocked = texts.collect();
    Ok(asked)
}

fn refused(text: Fixed) -> Refusal {
    Refusal::RodValue(text.into())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, len, reading};

    fn rocked(text: &str, others: &[&str]) -> Command {
        Command::TakeReading(TakeReading {
            rocked: others.iter().map(|text| (*text).to_owned()).collect(),
            ..reading("P-1", text)
        })
    }

    #[test]
    fn the_smallest_of_a_rocked_rod_counts_and_the_others_are_kept() {
        let mut crew = Crew::digging();
        let answer = crew
            .says(&ground(), rocked("5.07", &["5.00", "5.03"]))
            .unwrap();
        let kept = &crew.state.readings[&answer.first].reading;
        assert_eq!(kept.text, "5.00");
        assert_eq!(kept.rocked, ["5.03", "5.07"]);
        assert_eq!(kept.elevation, len("100.00 ft"));
        for others in [&["5.00", "5.01", "5.02"][..], &["5.30"][..], &["x"][..]] {
            assert!(
                crew.says(&ground(), rocked("5.07", others)).is_err(),
                "{others:?}"
            );
        }
    }
}
