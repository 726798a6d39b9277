//! What the day's numbers rest on: set-ups with their checks, and every reading.

use day::entry::Body;
use day::said::reading::Reading;
use day::state::SetUpState;
use earthwork::level::Check;
use earthwork::tolerance::Verdict;
use maud::{Markup, html};
use show::review::Day;
use show::review::Review;
use show::review::set_ups::SetUpHistory;

use super::{difference, length};
use crate::report::paper::{Paper, feet, signed};
use crate::when::to_the_minute;

pub(super) fn set_ups(paper: &Paper, review: &Review) -> Markup {
    html! {
        @if review.set_ups.is_empty() { p { (paper.t("No laser was set up.", "No se puso ningún láser.")) } }
        @for one in &review.set_ups { (set_up(paper, one)) }
    }
}

fn set_up(paper: &Paper, one: &SetUpHistory) -> Markup {
    let columns = [
        paper.t("at", "hora"),
        paper.t("by", "quién"),
        paper.t("benchmark", "banco"),
        paper.t("#rod", "#estadal"),
        paper.t("#off by, ft", "#error, ft"),
        paper.t("check", "comprobación"),
    ];
    let rows: Vec<Vec<String>> = one
        .checks
        .iter()
        .map(|check| {
            let word = match check.check {
                Check::Good => paper.t("holds", "se mantiene"),
                Check::Again => paper.t("shoot again", "lea otra vez"),
                Check::Failed => paper.t("DOES NOT HOLD", "NO SE MANTIENE"),
            };
            vec![
                to_the_minute(check.at),
                check.by.clone(),
                check.benchmark.clone(),
                check.text.clone(),
                signed(check.residual),
                word.to_owned(),
            ]
        })
        .collect();
    let state = match one.state {
        SetUpState::Unproven => paper.t("not proven", "sin probar"),
        SetUpState::Proven { .. } => paper.t("proven", "probado"),
        SetUpState::InDoubt { .. } => paper.t("IN DOUBT", "EN DUDA"),
    };
    html! {
        h3 { (paper.set_up(&one.set_up)) " · " (one.laser) " · " (state) @if one.closed { ", " (paper.t("taken down", "retirado")) } }
        p {
            (to_the_minute(one.at)) " " (one.by) ". "
            @for basis in &one.basis {
                (paper.t("Backsight ", "Vista atrás ")) (basis.text) (paper.t(" on ", " en ")) (basis.benchmark)
                ", HI " (feet(basis.height)) " ft. "
            }
            (one.readings) " " (paper.t("readings", "lecturas"))
            @if let Some(since) = one.unproven_since {
                ". " (paper.t("No good check after the last, of ", "Sin comprobación buena después de la última, de ")) (to_the_minute(since))
            } "."
        }
        (paper.table(&columns, &rows))
        @for doubt in &one.doubts {
            p {
                (paper.t("In doubt from ", "En duda desde ")) (to_the_minute(doubt.from))
                @if let Some(to) = doubt.to { (paper.t(" to ", " hasta ")) (to_the_minute(to)) }
                @if let Some(by) = doubt.residual { (paper.t(", off by ", ", error ")) (signed(by)) " ft" }
                ": " (doubt.readings) " " (paper.t("readings", "lecturas")) ". "
                @for mark in &doubt.marks {
                    (mark.mark) " "
                    @if mark.standing.is_owed() { (paper.t("was to be shot again", "había que leer otra vez")) }
                    @else { (paper.t("stands", "vale")) }
                    "; "
                }
            }
        }
    }
}

pub(super) fn readings(paper: &Paper, day: &Day<'_>) -> Markup {
    let columns = [
        paper.t("#entry", "#asiento"),
        paper.t("at", "hora"),
        paper.t("by", "quién"),
        paper.t("mark", "marca"),
        paper.t("laser", "láser"),
        paper.t("#rod", "#estadal"),
        paper.t("#elevation, ft", "#elevación, ft"),
        paper.t("#difference", "#diferencia"),
        paper.t("#doubt ±", "#duda ±"),
        paper.t("verdict", "veredicto"),
    ];
    let rows: Vec<Vec<String>> = day
        .entries
        .iter()
        .filter_map(|entry| {
            let (reading, verdict) = match &entry.body {
                Body::ReadingTaken(b) => (&b.reading, verdict(paper, &b.reading)),
                Body::ReadingAsked(b) => (
                    &b.reading,
                    paper.t("asked, not shown", "se preguntó, no se mostró"),
                ),
                Body::ReadingLate(b) => (
                    &b.reading,
                    paper.t("late, not shown", "tarde, no se mostró"),
                ),
                _ => return None,
            };
            let judged = reading.judged.as_ref();
            Some(vec![
                entry.seq.to_string(),
                to_the_minute(entry.made_at),
                entry.by.person.clone(),
                reading.mark.clone(),
                paper.set_up(&reading.set_up),
                reading.text.clone(),
                feet(reading.elevation),
                difference(judged.map(|judged| judged.dev)),
                length(judged.map(|judged| judged.guard)),
                verdict.to_owned(),
            ])
        })
        .collect();
    paper.table(&columns, &rows)
}

fn verdict(paper: &Paper, reading: &Reading) -> &'static str {
    let Some(judged) = &reading.judged else {
        return paper.t("spot", "suelta");
    };
    let (english, spanish) = match judged.verdict {
        _ if judged.settled_high => ("HIGH BY RULE", "ALTO POR REGLA"),
        Verdict::High => ("HIGH", "ALTO"),
        Verdict::On => ("ON", "A NIVEL"),
        Verdict::Low => ("LOW", "HONDO"),
        Verdict::TooCloseHigh => ("too close, HIGH side", "muy justo, lado ALTO"),
        Verdict::TooCloseLow => ("too close, LOW side", "muy justo, lado HONDO"),
    };
    paper.t(english, spanish)
}
