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
                        paper.t("STOP AT ONCE", "PARE YA"),
                        paper.t("Both arms out to the sides, palms down, swung back and forth. From anybody.", "Los dos brazos extendidos a los lados, palmas abajo, de un lado a otro. De cualquiera."),
                        &figure::emergency_stop(),
                        None,
                    ))
                }
            }
        }
        (rules(paper))
    };
    paper.sheet(paper.t("Hand signals", "Señas"), &body)
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

fn who_agreed(paper: &Paper, agreed: Option<&CheckSaid>) -> Markup {
    html! {
            @if let Some(said) = agreed {
                p {
                    (paper.t("Agreed today: ", "Acordadas hoy: ")) (said.by) ", " (to_the_minute(said.at))
    @if !said.value.is_empty() { " · " (said.value) }
                }
            } @else {
                p.answer { (paper.t(
                    "NOT AGREED TODAY. Show each other every signal before the first bucket, then say it at the start checks. Who, with whom, when: ______________________",
                    "SIN ACORDAR HOY. Muéstrense cada seña antes del primer cucharón y díganlo en las revisiones de inicio. Quién, con quién, hora: ______________________",
                )) }
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
                p { strong { @if agreed { (paper.t("☑ agreed today", "☑ acordada hoy")) } @else { (paper.t("☐ not agreed today", "☐ sin acordar hoy")) } } }
            }
        }
    }
}

/// How it is given. The first five are Appendix A's, in our words; the last two are common practice.
fn how<'a>(paper: &Paper, signal: HandSignal) -> &'a str {
    let (english, spanish) = match signal {
        HandSignal::Stop => (
            "One arm out to the side, palm down, swung back and forth.",
            "Un brazo extendido a un lado, palma abajo, de un lado a otro.",
        ),
        HandSignal::Lower => (
            "Arm and forefinger point down; the hand makes small circles.",
            "Brazo e índice apuntan abajo; la mano hace círculos pequeños.",
        ),
        HandSignal::Raise => (
            "Upper arm out, forearm and forefinger straight up; the hand makes small circles.",
            "Brazo a un lado, antebrazo e índice hacia arriba; la mano hace círculos pequeños.",
        ),
        HandSignal::Swing => (
            "Arm straight out; the forefinger points to the side to swing to.",
            "Brazo extendido; el índice apunta al lado hacia el que se gira.",
        ),
        HandSignal::Travel => (
            "Arm straight out, fingers up; the hand pushes the way to travel.",
            "Brazo extendido, dedos arriba; la mano empuja hacia donde se avanza.",
        ),
        HandSignal::SoMuch => (
            "One flat hand over the other: as far apart as there is still to dig. (Common practice.)",
            "Una mano plana sobre la otra: tan separadas como falta por cavar. (Práctica común.)",
        ),
        HandSignal::Grade => (
            "A closed fist, held up and still: on grade, stop digging here. (Common practice; differs between crews.)",
            "Puño cerrado, en alto y quieto: a nivel, deje de cavar aquí. (Práctica común; cambia de una cuadrilla a otra.)",
        ),
    };
    paper.t(english, spanish)
}

/// 29 CFR 1926.1419 (c)(2), (f) and 1926.1417 (y), written for cranes; the rest is common practice.
fn rules(paper: &Paper) -> Markup {
    let rules = [
        (
            "One person signals. Everybody may give STOP, and every STOP is obeyed, whoever gives it.",
            "Una sola persona da señas. Cualquiera puede dar PARE, y todo PARE se obedece, lo dé quien lo dé.",
        ),
        (
            "You do not see the signaller, or you do not understand: stand still, bucket down.",
            "No ve a quien da las señas, o no entiende: quieto, cucharón al suelo.",
        ),
        (
            "A signal that was not agreed on is not a signal: stand still and ask.",
            "Una seña que no se acordó no es una seña: quieto, y pregunte.",
        ),
        (
            "Stand where the cab sees you, out of the swing, never behind the house. Eyes first, then hands.",
            "Párese donde lo vean desde la cabina, fuera del giro, nunca detrás de la caseta. Primero la mirada, después las manos.",
        ),
    ];
    html! {
        ul { @for (english, spanish) in rules { li { (paper.t(english, spanish)) } } }
        p { small { (paper.t(
            "Drawn after 29 CFR 1926 Subpart CC, Appendix A (cranes), except where common practice is said. Your own code, the operator and the crew's agreement come first.",
            "Dibujadas según 29 CFR 1926 Subparte CC, Apéndice A (grúas), salvo donde dice práctica común. Su propia norma, el operador y lo que acordó la cuadrilla valen más.",
        )) } }
    }
}
