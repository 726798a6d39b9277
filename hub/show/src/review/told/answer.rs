//! The answer to who told a machine to dig, in a few sentences.

use std::collections::BTreeSet;

use earthwork::length::Length;

use super::{EdgeTaped, WhoTold};
use crate::review::Day;
use crate::review::calls::CallHistory;
use day::call::Message;
use day::lengths::feet;

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
) -> (String, String) {
    let machine = &asked.machine;
    let mut said = Both::default();
    if calls.is_empty() {
        said.push(
            format!("Nobody told {machine} by this log to dig here in this time."),
            format!("Según este registro nadie mandó a {machine} excavar aquí en este tiempo."),
        );
    } else {
        let who: BTreeSet<&str> = calls.iter().map(|call| call.by.as_str()).collect();
        let who = who.into_iter().collect::<Vec<_>>().join(", ");
        let lines = |line: fn(&CallHistory) -> &str| {
            let told: Vec<String> = calls
                .iter()
                .map(|call| format!("{} {}", call.mark.as_deref().unwrap_or("–"), line(call)))
                .collect();
            told.join(", ")
        };
        said.push(
            format!("{who} told {machine}: {}.", lines(|call| &call.english)),
            format!("{who} dijo a {machine}: {}.", lines(|call| &call.spanish)),
        );
    }
    if let Some(deepest) = deepest(day, calls) {
        let deepest = feet(deepest);
        said.push(
            format!("No call asked for a bottom below {deepest}."),
            format!("Ninguna orden pidió un fondo por debajo de {deepest}."),
        );
    }
    for taped in edges {
        let (line, shot) = (&taped.line, &taped.shot);
        let (away, guard) = (feet(shot.distance.abs()), feet(shot.guard));
        let (en, es) = if shot.distance < Length::ZERO {
            ("OVER the line", "PASADO de la línea")
        } else {
            ("inside the line", "dentro de la línea")
        };
        said.push(
            format!("The edge was taped {away} {en} {line}, give or take {guard}."),
            format!("El borde se midió {away} {es} {line}, más o menos {guard}."),
        );
    }
    (said.english.join(" "), said.spanish.join(" "))
}

/// Sentences in both languages.
#[derive(Default)]
struct Both {
    english: Vec<String>,
    spanish: Vec<String>,
}

impl Both {
    fn push(&mut self, english: String, spanish: String) {
        self.english.push(english);
        self.spanish.push(spanish);
    }
}
