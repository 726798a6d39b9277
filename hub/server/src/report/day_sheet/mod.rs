//! The day's sheet: what is open and what was out of the ordinary first, then everything that was measured, called, hauled.

use maud::{Markup, html};
use show::review::exceptions::NotedKind;
use show::review::{Day, Review, Sentence};

use super::as_built;
use super::paper::{Paper, feet, hours, or_dash, signed};
use super::photos::figures;
use crate::when::{date, to_the_minute, to_the_second};

mod laser;
mod one_page;
mod people;
mod soil;

pub(super) fn sheet(paper: &Paper, day: &Day<'_>, review: &Review) -> String {
    let full = html! {
        h2 { (paper.t(words::sheet_day::in_full())) }
        p {
            (to_the_minute(review.from)) "–" (to_the_minute(review.to)) ". "
            (paper.t(words::sheet_day::entries())) (review.first) "–" (review.last) ". "
            (summary(paper, review))
        }
        (signature(paper, day))
        (amended_later(paper, review))
        h2 { (paper.t(words::sheet_day::open())) }
        @if review.open.is_empty() {
            p { (paper.t(words::sheet_day::nothing_this_sheet_knows())) }
        } @else {
            ul { @for item in &review.open { li { (paper.of(&item.text)) } } }
        }
        h2 { (paper.t(words::sheet_day::out_of_the_ordinary())) }
        (exceptions(paper, review))
        h2 { (paper.t(words::sheet_day::put_on_record())) }
        (said(paper, &review.record))
        (figures(paper, &review.photos))
        h2 { (paper.t(words::sheet_day::people())) }
        (paper.table(&people::columns(paper), &people::rows(review)))
        h2 { (paper.t(words::sheet_day::machines_and_hours())) }
        (machines(paper, review))
        h2 { (paper.t(words::sheet_day::as_built())) }
        (as_built::tables(paper, review, false))
        h3 { (paper.t(words::sheet_day::not_proven_2())) }
        (as_built::coverage(paper, review))
        h2 { (paper.t(words::sheet_day::laser_proof())) }
        (laser::set_ups(paper, review))
        h2 { (paper.t(words::sheet_day::soil_tests())) }
        (soil::tests(paper, review))
        h2 { (paper.t(words::sheet_day::loads_and_gravel())) }
        (soil::loads(paper, review))
        (soil::gravel(paper, review))
        (soil::left_and_rock(paper, review))
        h2 { (paper.t(words::sheet_day::cost_site_own_rates())) }
        (soil::cost(paper, review))
        h2 { (paper.t(words::sheet_day::what_changed_site_why())) }
        (said(paper, &review.changes))
        h2 { (paper.t(words::sheet_day::calls())) }
        (calls(paper, review))
        h2 { (paper.t(words::sheet_day::readings_2())) }
        (laser::readings(paper, day))
    };
    let parts = [one_page::page(paper, day, review), full];
    let title = paper.t(words::sheet_day::day_report());
    paper.styled(title, &parts, one_page::STYLE)
}

fn summary(paper: &Paper, review: &Review) -> String {
    let marks = review
        .built
        .iter()
        .filter(|one| one.target.is_some())
        .count();
    format!(
        "{marks} {}, {} {}, {} {}.",
        paper.t(words::sheet_day::marks_measured()),
        review.calls.len(),
        paper.t(words::sheet_day::calls_2()),
        review.exceptions.len(),
        paper.t(words::sheet_day::things_out_of_the_ordinary())
    )
}

fn exceptions(paper: &Paper, review: &Review) -> Markup {
    let columns = [
        paper.t(words::sheet_day::entry()),
        paper.t(words::sheet_day::at()),
        paper.t(words::sheet_day::what()),
        paper.t(words::sheet_day::by()),
        paper.t(words::sheet_day::said()),
    ];
    let rows: Vec<Vec<String>> = review
        .exceptions
        .iter()
        .map(|one| {
            let said = &one.said;
            vec![
                said.seq.to_string(),
                to_the_minute(said.at),
                kind(paper, one.kind).to_owned(),
                said.by.clone(),
                paper.of(&said.text).to_owned(),
            ]
        })
        .collect();
    paper.table(&columns, &rows)
}

fn kind(paper: &Paper, kind: NotedKind) -> &'static str {
    let words = match kind {
        NotedKind::NearMiss => words::sheet_day::near_miss(),
        NotedKind::Stop => words::sheet_day::stop(),
        NotedKind::Face => words::sheet_day::face(),
        NotedKind::Rain => words::sheet_day::rain_water(),
        NotedKind::Laser => words::sheet_day::laser(),
        NotedKind::Asked => words::sheet_day::asked(),
        NotedKind::Late => words::sheet_day::late(),
        NotedKind::Paper => words::sheet_day::from_paper(),
        NotedKind::Override => words::sheet_day::a_person_decided(),
        NotedKind::CallLost => words::sheet_day::call_lost(),
        NotedKind::Screen => words::sheet_day::screen(),
        NotedKind::Test => words::sheet_day::soil_test(),
        NotedKind::Void => words::sheet_day::void(),
        NotedKind::Gravel => words::sheet_day::gravel(),
        NotedKind::Buried => words::sheet_day::buried_line(),
        NotedKind::LogCut => words::sheet_day::log_cut(),
    };
    paper.t(words)
}

fn machines(paper: &Paper, review: &Review) -> Markup {
    let columns = [
        paper.t(words::sheet_day::machine()),
        paper.t(words::sheet_day::what_it_did()),
        paper.t(words::sheet_day::h()),
        paper.t(words::sheet_day::cost()),
    ];
    let money = review
        .account
        .prices
        .as_ref()
        .map_or("", |prices| prices.money.as_str());
    let rows: Vec<Vec<String>> = review
        .account
        .hours
        .iter()
        .flat_map(|machine| {
            machine.sums.iter().map(|sum| {
                vec![
                    machine.machine.clone(),
                    soil::doing(paper, sum.doing).to_owned(),
                    hours(sum.ms),
                    or_dash(sum.cost, |cost| format!("{money}{cost:.2}")),
                ]
            })
        })
        .collect();
    paper.table(&columns, &rows)
}

/// Who signed the day, and when.
fn signed_by(paper: &Paper, day: &Day<'_>) -> Markup {
    html! {
        @match &day.state.record.signed {
            Some(signed) => { strong { (paper.t(words::sheet_day::signed_by())) (signed.said.signature.name) } " " (to_the_minute(signed.at)) }
            None => strong { (paper.t(words::sheet_day::not_signed())) }
        }
    }
}

/// Who signed the day, as drawn, and what the signature covers.
fn signature(paper: &Paper, day: &Day<'_>) -> Markup {
    let Some(signed) = &day.state.record.signed else {
        return html! { p { (signed_by(paper, day)) } };
    };
    let how = &signed.said;
    html! {
        p {
            (signed_by(paper, day))
            (paper.t(words::sheet_day::up_to_entry())) (how.head.seq) ": " span.head { (how.head.hash) }
        }
        @if how.unproven { p { (paper.t(words::sheet_day::closed_without_check_behind_its())) } }
        @if !how.words.is_empty() { p { (how.words) } }
        svg viewBox="0 0 300 100" style="width: 60mm" role="img" aria-label=(how.signature.name) {
            path d=(how.signature.strokes) fill="none" stroke="#000" stroke-width="2.5" {}
        }
    }
}

/// What was put right on a later day, under a signature of its own.
fn amended_later(paper: &Paper, review: &Review) -> Markup {
    html! {
        @if !review.amended_later.is_empty() {
            h2 { (paper.t(words::sheet_day::amended_on_later_days())) }
            ul { @for one in &review.amended_later {
                li {
                    (date(one.at)) " " (to_the_minute(one.at)) ", " (paper.t(words::sheet_day::entry_2())) (one.seq) ", " (one.by) ": "
                    (paper.of(&one.text))
                }
            } }
        }
    }
}

fn said(paper: &Paper, sentences: &[Sentence]) -> Markup {
    html! {
        @if sentences.is_empty() { p { (paper.t(words::sheet_day::nothing())) } }
        ul { @for one in sentences {
            li { (to_the_minute(one.at)) " " (one.by) ": " (paper.of(&one.text)) }
        } }
    }
}

fn calls(paper: &Paper, review: &Review) -> Markup {
    let mut seconds: Vec<f64> = review
        .calls
        .iter()
        .filter_map(|call| Some(call.got_at?.ms_since(call.sent_at) as f64 / 1_000.0))
        .collect();
    seconds.sort_by(f64::total_cmp);
    let columns = [
        paper.t(words::sheet_day::entry()),
        paper.t(words::sheet_day::sent()),
        paper.t(words::sheet_day::by()),
        paper.t(words::sheet_day::machine()),
        paper.t(words::sheet_day::mark()),
        paper.t(words::sheet_day::called()),
        paper.t(words::sheet_day::s_to_the_screen()),
        paper.t(words::sheet_day::s_to_got_it()),
    ];
    let since = |at: Option<day::time::Time>, sent: day::time::Time| {
        or_dash(at, |at| {
            format!("{:.1}", at.ms_since(sent) as f64 / 1_000.0)
        })
    };
    let rows: Vec<Vec<String>> = review
        .calls
        .iter()
        .map(|call| {
            vec![
                call.call.to_string(),
                to_the_second(call.sent_at),
                call.by.clone(),
                call.machine.clone(),
                or_dash(call.mark.clone(), |mark| mark),
                paper.of(&call.text).to_owned(),
                since(call.shown_at, call.sent_at),
                since(call.got_at, call.sent_at),
            ]
        })
        .collect();
    html! {
        @if let (Some(middle), Some(longest)) = (seconds.get(seconds.len() / 2), seconds.last()) {
            p {
                (paper.t(words::sheet_day::from_sent_to_got_it()))
                (format!("{middle:.1}")) (paper.t(words::sheet_day::s_longest())) (format!("{longest:.1}")) " s."
            }
        }
        (paper.table(&columns, &rows))
    }
}

/// A difference for a cell.
fn difference(dev: Option<earthwork::length::Length>) -> String {
    or_dash(dev, signed)
}

/// A length for a cell.
fn length(length: Option<earthwork::length::Length>) -> String {
    or_dash(length, feet)
}
