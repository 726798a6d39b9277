//! The card's second page: how a call reads, and the hands that were agreed on, drawn.

use day::said::start_checks::{CheckSaid, StartCheck};
use day::state::State;
use earthwork::correction::{Amount, Correction, Ground};
use earthwork::length::Length;
use earthwork::words::{ScreenUnit, call_text};
use maud::{Markup, html};

use crate::report::hand_signals::{agreed_words, drawn, stop_at_once};
use crate::report::paper::Paper;
use crate::when::to_the_minute;

/// Calls as the cab shows them, written by the same function, and what to do.
pub(super) fn calls(paper: &Paper) -> Markup {
    let examples = [
        (
            Correction::Down(Amount::HalfTenths(6)),
            30,
            paper.t(words::sheet_cab_card::dig_three_tenths_foot()),
        ),
        (
            Correction::Down(Amount::TenthsOfFeet(12)),
            120,
            paper.t(words::sheet_cab_card::the_number_is_in_feet()),
        ),
        (
            Correction::Shave(Amount::HalfTenths(1)),
            5,
            paper.t(words::sheet_cab_card::take_a_thin_slice()),
        ),
        (
            Correction::Grade,
            0,
            paper.t(words::sheet_cab_card::on_grade()),
        ),
        (
            Correction::Up(Amount::HalfTenths(4)),
            -20,
            paper.t(words::sheet_cab_card::too_deep()),
        ),
        (
            Correction::Wait,
            0,
            paper.t(words::sheet_cab_card::too_close_to_call()),
        ),
    ];
    let rows: Vec<Vec<String>> = examples
        .into_iter()
        .map(|(correction, hundredths, does)| {
            let ground = Ground {
                dev: Length::from_hundredths_of_a_foot(hundredths),
                aim: Length::ZERO,
                tolerance: None,
            };
            let text = call_text(&correction, &ground, paper.language(), ScreenUnit::Tenths);
            let mut line = text.line;
            if !text.warning.is_empty() {
                line = format!("{line} · {}", text.warning);
            }
            vec![line, does.to_owned()]
        })
        .collect();
    paper.table(
        &[
            paper.t(words::sheet_cab_card::on_the_screen()),
            paper.t(words::sheet_cab_card::what_to_do()),
        ],
        &rows,
    )
}

/// The signals of today with who said so and to whom, each drawn; without them only the one that counts from anybody.
pub(super) fn hands(paper: &Paper, state: &State) -> Markup {
    let said = state.start.said.get(&StartCheck::HandSignals);
    html! {
        p.shown {
            @match (said, agreed_words(paper, state)) {
                (Some(said), Some(signals)) => {
                    (paper.t(words::sheet_cab_card::agreed_today())) strong { (signals) } ". " (who(said)) " "
                    (paper.t(words::sheet_cab_card::not_shown_to_you()))
                }
                _ => strong { (paper.t(words::sheet_cab_card::not_agreed_today())) }
            }
            " " (paper.t(words::sheet_cab_card::they_are_drawn_sheet_hand()))
        }
        div.hands {
            @for signal in said.map(|said| said.signals.as_slice()).unwrap_or_default() {
                div { (drawn(*signal)) strong { (signal.word(paper.language())) } }
            }
            div { (stop_at_once()) strong { (paper.t(words::sheet_hand_signals::stop_at_once())) } }
        }
    }
}

/// Who said it, when, and what they put to it: with whom.
fn who(said: &CheckSaid) -> String {
    let with = if said.value.is_empty() {
        String::new()
    } else {
        format!(" · {}", said.value)
    };
    format!("{}, {}{with}.", said.by, to_the_minute(said.at))
}
