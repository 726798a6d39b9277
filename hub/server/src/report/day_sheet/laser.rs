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
        @if review.set_ups.is_empty() { p { (paper.t(words::sheet_day::no_laser_was_set_up())) } }
        @for one in &review.set_ups { (set_up(paper, one)) }
    }
}

fn set_up(paper: &Paper, one: &SetUpHistory) -> Markup {
    let columns = [
        paper.t(words::sheet_day::at()),
        paper.t(words::sheet_day::by()),
        paper.t(words::sheet_day::benchmark()),
        paper.t(words::sheet_day::rod()),
        paper.t(words::sheet_day::off_by_ft()),
        paper.t(words::sheet_day::check()),
    ];
    let rows: Vec<Vec<String>> = one
        .checks
        .iter()
        .map(|check| {
            let word = match check.check {
                Check::Good => paper.t(words::sheet_day::holds()),
                Check::Again => paper.t(words::sheet_day::shoot_again()),
                Check::Failed => paper.t(words::sheet_day::does_not_hold()),
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
    html! {
        h3 { (paper.set_up(&one.set_up)) " · " (one.laser) " · " (state(paper, one)) }
        p {
            (to_the_minute(one.at)) " " (one.by) ". "
            @for basis in &one.basis {
                (paper.t(words::sheet_day::backsight())) (basis.text) (paper.t(words::sheet_day::on())) (basis.benchmark)
                ", HI " (feet(basis.height)) " ft. "
            }
            (one.readings) " " (paper.t(words::sheet_day::readings()))
            @if let Some(since) = one.unproven_since {
                ". " (paper.t(words::sheet_day::no_good_check_after_last())) (to_the_minute(since))
            } "."
        }
        (paper.table(&columns, &rows))
        @for doubt in &one.doubts {
            p {
                (paper.t(words::sheet_day::in_doubt_from())) (to_the_minute(doubt.from))
                @if let Some(to) = doubt.to { (paper.t(words::sheet_day::to())) (to_the_minute(to)) }
                @if let Some(by) = doubt.residual { (paper.t(words::sheet_day::off_by())) (signed(by)) " ft" }
                ": " (doubt.readings) " " (paper.t(words::sheet_day::readings())) ". "
                @for mark in &doubt.marks {
                    (mark.mark) " "
                    @if mark.standing.is_owed() { (paper.t(words::sheet_day::was_to_be_shot_again())) }
                    @else { (paper.t(words::sheet_day::stands())) }
                    "; "
                }
            }
        }
    }
}

/// Whether its height was proven at the end, and whether it was taken down.
pub(super) fn state(paper: &Paper, one: &SetUpHistory) -> String {
    let state = paper.t(match one.state {
        SetUpState::Unproven => words::sheet_day::not_proven(),
        SetUpState::Proven { .. } => words::sheet_day::proven(),
        SetUpState::InDoubt { .. } => words::sheet_day::in_doubt(),
    });
    if one.closed {
        format!("{state}, {}", paper.t(words::sheet_day::taken_down()))
    } else {
        state.to_owned()
    }
}

pub(super) fn readings(paper: &Paper, day: &Day<'_>) -> Markup {
    let columns = [
        paper.t(words::sheet_day::entry()),
        paper.t(words::sheet_day::at()),
        paper.t(words::sheet_day::by()),
        paper.t(words::sheet_day::mark()),
        paper.t(words::sheet_day::laser()),
        paper.t(words::sheet_day::rod()),
        paper.t(words::sheet_day::elevation_ft()),
        paper.t(words::sheet_day::difference()),
        paper.t(words::sheet_day::doubt()),
        paper.t(words::sheet_day::verdict()),
    ];
    let rows: Vec<Vec<String>> = day
        .entries
        .iter()
        .filter_map(|entry| {
            let (reading, verdict) = match &entry.body {
                Body::ReadingTaken(b) => (&b.reading, verdict(paper, &b.reading)),
                Body::ReadingAsked(b) => (&b.reading, paper.t(words::sheet_day::asked_not_shown())),
                Body::ReadingLate(b) => (&b.reading, paper.t(words::sheet_day::late_not_shown())),
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
        return paper.t(words::sheet_day::spot());
    };
    let words = match judged.verdict {
        _ if judged.settled_high => words::sheet_day::high_by_rule(),
        Verdict::High => words::sheet_day::high(),
        Verdict::On => words::sheet_day::on_2(),
        Verdict::Low => words::sheet_day::low(),
        Verdict::TooCloseHigh => words::sheet_day::too_close_high_side(),
        Verdict::TooCloseLow => words::sheet_day::too_close_low_side(),
    };
    paper.t(words)
}
