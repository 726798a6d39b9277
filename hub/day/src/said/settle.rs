//! A question about a reading is answered: was it a slip, and was it the one that was suggested? What is asked wrongly five
//! times in a row weighs half for the rest of the day.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::slip::{Doubt, Hypothesis, Perhaps};
use serde::{Deserialize, Serialize};

use crate::asked::By;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::said::reading::{Question, Reading};
use crate::site::Site;
use crate::state::{AskedReading, State};
use crate::time::{Time, minutes};

/// A reading this long after a question, by the same person, no longer answers it.
const ANSWERS_WITHIN_MS: i64 = minutes(5);
/// Two rod values this near are the same one.
const SAME: Length = Length::from_thousandths_of_a_foot(6);

/// A question was answered by what was done next.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct QuestionSettled {
    /// The entry of the question.
    pub question: u64,
    /// The reading had been a slip: another one took its place.
    pub slip: bool,
    /// What was suggested, and whether that was it.
    pub suggested: Vec<Suggested>,
}

impl Happening for QuestionSettled {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_settled(state, self);
    }
}

/// A suggestion and how it came out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Suggested {
    /// What kind of slip.
    pub kind: Hypothesis,
    /// That was it.
    pub right: bool,
}

/// The question that a reading about to be entered answers, if any.
pub(crate) fn after_reading(state: &State, by: &By, at: Time, bodies: &[Body]) -> Option<Body> {
    let reading = bodies.iter().find_map(|body| match body {
        Body::ReadingTaken(taken) => Some(&taken.reading),
        _ => None,
    })?;
    let site = state.site()?;
    if let Some(id) = reading.sure {
        let asked = state.asked.get(&id).filter(|asked| !asked.settled)?;
        let suggested = suggestions(site, asked)
            .into_iter()
            .map(|(kind, _)| Suggested { kind, right: false })
            .collect();
        return Some(settled(id, false, suggested));
    }
    let (id, asked) = state.asked.iter().rev().find(|(_, asked)| {
        !asked.settled && asked.by == by.person && at.ms_since(asked.made_at) <= ANSWERS_WITHIN_MS
    })?;
    let suggested: Vec<Suggested> = suggestions(site, asked)
        .into_iter()
        .map(|(kind, perhaps)| Suggested {
            kind,
            right: is_it(&perhaps, asked, reading),
        })
        .collect();
    let here = reading.mark == asked.reading.mark;
    let there = suggested.iter().any(|one| one.right);
    (here || there).then(|| settled(*id, true, suggested))
}

fn settled(question: u64, slip: bool, suggested: Vec<Suggested>) -> Body {
    Body::QuestionSettled(QuestionSettled {
        question,
        slip,
        suggested,
    })
}

/// What a question suggested.
fn suggestions(site: &Site, asked: &AskedReading) -> Vec<(Hypothesis, Perhaps)> {
    let Question::DoesNotFit { doubt } = &asked.question else {
        return vec![];
    };
    let bracket = site
        .rod(&asked.reading.rod)
        .map_or(Length::ZERO, |rod| rod.bracket);
    let typed = asked.reading.value.unwrap_or(Length::ZERO) - bracket;
    let all = match doubt {
        Doubt::OtherMark { perhaps } => vec![Perhaps::Mark {
            id: perhaps.clone(),
        }],
        Doubt::GroundRose { perhaps, .. } | Doubt::FarBelow { perhaps, .. } => perhaps.clone(),
        Doubt::WhichWay | Doubt::RepeatOff { .. } => vec![],
    };
    all.into_iter()
        .map(|perhaps| (Hypothesis::of(&perhaps, typed), perhaps))
        .collect()
}

/// Whether the reading that came instead is the one that was suggested.
fn is_it(perhaps: &Perhaps, asked: &AskedReading, reading: &Reading) -> bool {
    let value = |wanted: Length| {
        reading.mark == asked.reading.mark
            && reading
                .value
                .is_some_and(|value| (value - wanted).abs() <= SAME)
    };
    match perhaps {
        Perhaps::Mark { id } => {
            reading.mark == *id && (reading.elevation - asked.reading.elevation).abs() <= SAME
        }
        Perhaps::Reading { value: wanted } => value(*wanted),
        Perhaps::FeetInches { feet, inches, .. } => {
            let inches = i64::from(*feet) * 12 + i64::from(*inches);
            value(Length::from_sixteenths_of_an_inch(inches * 16))
        }
    }
}

pub(crate) fn apply_settled(state: &mut State, body: &QuestionSettled) {
    if let Some(asked) = state.asked.get_mut(&body.question) {
        asked.settled = true;
    }
    let record = &mut state.slips;
    record.answered += 1;
    record.slips += u32::from(body.slip);
    record.hits += u32::from(body.suggested.iter().any(|one| one.right));
    for one in &body.suggested {
        record.learned.answered(one.kind, one.right);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::answer::Outcome;
    use crate::asked::Command;
    use crate::given::{Crew, ground, reading};
    use crate::said::reading::TakeReading;

    fn asked(crew: &mut Crew, mark: &str, text: &str) -> u64 {
        match crew.reads(mark, text).unwrap().outcome {
            Outcome::Asked { reading, .. } => reading,
            other => panic!("not asked: {other:?}"),
        }
    }

    fn sure(crew: &mut Crew, mark: &str, text: &str, question: u64) {
        let reading = TakeReading {
            sure: Some(question),
            ..reading(mark, text)
        };
        crew.says(&ground(), Command::TakeReading(reading)).unwrap();
    }

    #[test]
    fn a_slip_that_was_suggested_is_a_hit_and_a_confirmed_reading_a_miss() {
        let mut crew = Crew::digging();
        crew.reads("P-1", "4.50").unwrap();
        // 5.02 typed as 4.02 lifts the ground by 0.48; a whole foot is among the suggestions.
        asked(&mut crew, "P-1", "4.02");
        crew.reads_now("P-1", "5.02").unwrap();
        let slips = &crew.state.slips;
        let asked_so_far = crew.state.asked.len();
        assert_eq!((asked_so_far, slips.slips, slips.hits), (1, 1, 1));
        let id = asked(&mut crew, "P-1", "4.20");
        sure(&mut crew, "P-1", "4.20", id);
        let slips = &crew.state.slips;
        let asked_so_far = crew.state.asked.len();
        assert_eq!(
            (asked_so_far, slips.answered, slips.slips, slips.hits),
            (2, 2, 1, 1)
        );
    }

    /// 0.71 below its target, each first reading suggests a foot less; right as typed five times in a row, that weighs half.
    #[test]
    fn what_is_asked_wrongly_five_times_weighs_half_for_the_day() {
        let mut crew = Crew::digging();
        for (mark, text) in [
            ("P-1", "5.71"),
            ("P-2", "5.71"),
            ("R-1", "7.71"),
            ("R-2", "7.71"),
            ("R-3", "8.71"),
        ] {
            let learned = crew.state.slips.learned.factor(Hypothesis::WholeFoot);
            assert!((learned - 1.0).abs() < f64::EPSILON, "{mark}");
            let id = asked(&mut crew, mark, text);
            sure(&mut crew, mark, text, id);
        }
        let learned = crew.state.slips.learned.factor(Hypothesis::WholeFoot);
        assert!((learned - 0.5).abs() < f64::EPSILON);
    }
}
