//! The sheet of hand signals, for when hands are all there is: each drawn, said in words, and whether the crew agreed on it today.
//!
//! Five are those of 29 CFR 1926 Subpart CC, Appendix A, which is written for cranes; SO MUCH and GRADE are common practice and
//! differ from crew to crew. So all of them count only as far as the crew agreed on them at the start checks.

mod figure;

use day::said::start_checks::{CheckSaid, HandSignal, StartCheck};
use day::state::State;
use maud::{Markup, html};

use super::paper::Paper;
use crate::when::to_the_minute;

/// Every signal that a crew can agree on, in the order of the page where they agree.
const SIGNALS: [HandSignal; 7] = [
    HandSignal::Stop,
    HandSignal::Lower,
    HandSignal::Raise,
    HandSignal::Swing,
    HandSignal::Travel,
    HandSignal::SoMuch,
    HandSignal::Grade,
];

pub(super) fn sheet(paper: &Paper, state: &State) -> String {
    let agreed = state.start.said.get(&StartCheck::HandSignals);
    let body = html! {
        (who_agreed(paper, agreed))
        div.cards {
            @for signal in SIGNALS {
                @let held = agreed.is_some_and(|said| said.signals.contains(&signal));
                (card(paper, signal.word(paper.language()), how(paper, signal), &figure::of(signal), Some(held)))
                @if signal == HandSignal::Stop {
                    (card(
                        paper,
                        paper.t(words::sheet_hand_signals::stop_at_once()),
                        paper.t(words::sheet_hand_signals::both_arms_out_sides_palms()),
                        &figure::emergency_stop(),
                        None,
                    ))
                }
            }
        }
        (rules(paper))
    };
    paper.sheet(paper.t(words::sheet_hand_signals::hand_signals()), &[body])
}

/// The signals that were agreed on, in the sheet's order and language; none when nobody has said.
pub(super) fn agreed_words(paper: &Paper, state: &State) -> Option<String> {
    let said = state.start.said.get(&StartCheck::HandSignals)?;
    let words: Vec<&str> = said
        .signals
        .iter()
        .map(|signal| signal.word(paper.language()))
        .collect();
    Some(words.join(", "))
}

/// How a signal is given, drawn.
pub(super) fn drawn(signal: HandSignal) -> Markup {
    figure::of(signal)
}

/// The stop that counts from anybody, drawn.
pub(super) fn stop_at_once() -> Markup {
    figure::emergency_stop()
}

fn who_agreed(paper: &Paper, agreed: Option<&CheckSaid>) -> Markup {
    html! {
            @if let Some(said) = agreed {
                p {
                    (paper.t(words::sheet_hand_signals::agreed_today())) (said.by) ", " (to_the_minute(said.at))
    @if !said.value.is_empty() { " · " (said.value) }
                }
            } @else {
                p.answer { (paper.t(words::sheet_hand_signals::not_agreed_today())) }
            }
        }
}

fn card(paper: &Paper, word: &str, how: &str, figure: &Markup, agreed: Option<bool>) -> Markup {
    html! {
        div.card {
            (figure)
            h3 { (word) }
            p { (how) }
            @if let Some(agreed) = agreed {
                p { strong { @if agreed { (paper.t(words::sheet_hand_signals::agreed_today_2())) } @else { (paper.t(words::sheet_hand_signals::not_agreed_today_2())) } } }
            }
        }
    }
}

/// How it is given. The first five are Appendix A's, in our words; the last two are common practice.
fn how(paper: &Paper, signal: HandSignal) -> &'static str {
    let words = match signal {
        HandSignal::Stop => words::sheet_hand_signals::one_arm_out_side_palm(),
        HandSignal::Lower => words::sheet_hand_signals::arm_and_forefinger_point_down(),
        HandSignal::Raise => words::sheet_hand_signals::upper_arm_out_forearm_forefinger(),
        HandSignal::Swing => words::sheet_hand_signals::arm_straight_out(),
        HandSignal::Travel => words::sheet_hand_signals::arm_straight_out_fingers_up(),
        HandSignal::SoMuch => words::sheet_hand_signals::one_flat_hand_over_other(),
        HandSignal::Grade => words::sheet_hand_signals::closed_fist_held_up_still(),
    };
    paper.t(words)
}

/// 29 CFR 1926.1419 (c)(2), (f) and 1926.1417 (y), written for cranes; the rest is common practice.
fn rules(paper: &Paper) -> Markup {
    let rules = [
        words::sheet_hand_signals::one_person_signals(),
        words::sheet_hand_signals::you_do_not_see_signaller(),
        words::sheet_hand_signals::signal_not_agreed_not_signal(),
        words::sheet_hand_signals::stand_where_cab_sees_you(),
    ];
    html! {
        ul { @for words in rules { li { (paper.t(words)) } } }
        p { small { (paper.t(words::sheet_hand_signals::drawn_after_29_cfr_1926())) } }
    }
}
