//! The answer to who told a machine to dig, in a few sentences.

use std::collections::BTreeSet;

use earthwork::length::Length;

use super::{EdgeTaped, WhoTold};
use crate::review::Day;
use crate::review::calls::CallHistory;
use day::call::Message;
use day::lengths::feet;
use words::Text;

/// The deepest elevation that a measured call was to reach.
fn deepest(day: &Day<'_>, calls: &[CallHistory]) -> Option<Length> {
    calls
        .iter()
        .filter(|call| {
            let sent = day.state.calls.get(&call.call);
            sent.is_some_and(|call| matches!(call.sent.message, Message::Measured { .. }))
        })
        .flat_map(|call| &call.readings)
        .filter_map(|id| day.state.readings.get(id)?.reading.judged.as_ref())
        .map(|judged| judged.dig_to)
        .min()
}

/// The answer in a few sentences. Moments are left to whoever shows them: the day knows no clock.
pub(super) fn answer(
    day: &Day<'_>,
    asked: &WhoTold,
    calls: &[CallHistory],
    edges: &[EdgeTaped],
) -> Text {
    let machine = &asked.machine;
    let mut said: Vec<Text> = Vec::new();
    if calls.is_empty() {
        said.push(words::told_answer::nobody_told_by_this_log(&machine));
    } else {
        let who: BTreeSet<&str> = calls.iter().map(|call| call.by.as_str()).collect();
        let who = who.into_iter().collect::<Vec<_>>().join(", ");
        let lines: Vec<Text> = calls
            .iter()
            .map(|call| {
                let mark = call.mark.as_deref().unwrap_or("–");
                Text::in_each(|language| format!("{mark} {}", call.text.of(language)))
            })
            .collect();
        said.push(words::told_answer::told(
            &who,
            &machine,
            &Text::joined(&lines, ", "),
        ));
    }
    if let Some(deepest) = deepest(day, calls) {
        let deepest = feet(deepest);
        said.push(words::told_answer::no_call_asked_for_bottom(&deepest));
    }
    for taped in edges {
        let (line, shot) = (&taped.line, &taped.shot);
        let (away, guard) = (feet(shot.distance.abs()), feet(shot.guard));
        let what = if shot.distance < Length::ZERO {
            words::told_answer::over_the_line()
        } else {
            words::told_answer::inside_the_line()
        };
        said.push(words::told_answer::edge_taped_give_or_take(
            &away, &what, &line, &guard,
        ));
    }
    Text::joined(&said, " ")
}
