//! The day on one page, before all of it: how the marks stand, what is open, what was grave, who was there, what it rests on.
//!
//! It never takes a second page: each list has so many lines, and says how many more stand on the pages behind.

use std::collections::BTreeMap;

use day::account::soil::TestStanding;
use day::entry::{Body, Entry};
use day::open::OpenKind;
use earthwork::tolerance::Verdict;
use maud::{Markup, html};
use show::review::exceptions::{Noted, NotedKind};
use show::review::{Day, Review};

use super::{kind, laser, people, signed_by, summary};
use crate::report::paper::{Paper, hours};
use crate::when::to_the_minute;

/// Letters of a full line, by the widest of the usual faces; what is counted wrong costs a line, not a page.
const LETTERS: usize = 88;
/// Lines for what is open and for what was grave, together.
const LINES: usize = 31;
/// What was grave has at least these of them.
const GRAVE: usize = 14;
/// Rows for people.
const ROWS: usize = 7;
/// Lines for machines, and as many for lasers.
const FEW: usize = 4;

/// The rules of this page alone: smaller, so that it is one.
pub(super) const STYLE: &str = "
.one { font-size: 9pt; line-height: 1.25; }
.one h2 { font-size: 11pt; margin: .6em 0 .2em; border-bottom-width: 1px; }
.one ul, .one p { margin: .1em 0; }
.one .rows { font-size: 8.5pt; margin: .2em 0; }
.one .rows td { padding: 0 .4em; white-space: nowrap; }
.boxes { display: grid; grid-template-columns: repeat(8, 1fr); border: 2px solid #000; margin: .4em 0; text-align: center; break-inside: avoid; }
.boxes > div + div { border-left: 1px solid #000; }
.boxes strong { display: block; font-size: 18pt; line-height: 1.1; }
.two { display: grid; grid-template-columns: minmax(min-content, 3fr) minmax(0, 2fr); gap: 0 5mm; }
@media screen and (max-width: 40rem) { .boxes { grid-template-columns: repeat(4, 1fr); } .two { grid-template-columns: 1fr; } }
";

pub(super) fn page(paper: &Paper, day: &Day<'_>, review: &Review) -> Markup {
    let open: Vec<String> = review
        .open
        .iter()
        .map(|item| paper.of(&item.text).to_owned())
        .collect();
    let grave: Vec<String> = review
        .exceptions
        .iter()
        .filter(|one| one.kind.is_grave())
        .map(|one| {
            let (at, what) = (to_the_minute(one.said.at), kind(paper, one.kind));
            format!("{at} {what}, {}: {}", one.said.by, paper.of(&one.said.text))
        })
        .collect();
    let (open, open_more) = fit(&open, LINES - lines(&grave).min(GRAVE));
    let (grave, grave_more) = fit(&grave, LINES - lines(open));
    html! {
        div.one {
            p {
                (to_the_minute(review.from)) "–" (to_the_minute(review.to)) ". "
                (summary(paper, review)) " " (signed_by(paper, day))
            }
            (boxes(paper, day, review))
            h2 { (paper.t(words::sheet_day::open())) }
            @if open.is_empty() && open_more == 0 { p { (paper.t(words::sheet_day::nothing_this_sheet_knows())) } }
            (list(paper, open, open_more))
            h2 { (paper.t(words::sheet_day::grave())) }
            @if grave.is_empty() && grave_more == 0 { p { (paper.t(words::sheet_day::nothing())) } }
            (list(paper, grave, grave_more))
            (also(paper, review))
            div.two {
                div {
                    h2 { (paper.t(words::sheet_day::people())) }
                    (table(paper, people::columns(paper), &people::rows(review)))
                }
                div {
                    h2 { (paper.t(words::sheet_day::machines_and_hours())) }
                    (machines(paper, review))
                    h2 { (paper.t(words::sheet_day::lasers())) }
                    (lasers(paper, review))
                }
            }
            p { (soil(paper, review)) }
        }
    }
}

/// How many lines these take.
fn lines(said: &[String]) -> usize {
    said.iter()
        .map(|one| one.chars().count().div_ceil(LETTERS).max(1))
        .sum()
}

/// As many of the first as fit in so many lines, and how many are left; one line is kept to say so.
fn fit(said: &[String], room: usize) -> (&[String], usize) {
    let many = (0..=said.len())
        .rev()
        .find(|many| lines(&said[..*many]) + usize::from(*many < said.len()) <= room)
        .unwrap_or(0);
    (&said[..many], said.len() - many)
}

fn list(paper: &Paper, said: &[String], more: usize) -> Markup {
    html! {
        @if !said.is_empty() { ul { @for one in said { li { (one) } } } }
        (more_behind(paper, more))
    }
}

fn more_behind(paper: &Paper, more: usize) -> Markup {
    html! {
        @if more > 0 { p { strong { (words::sheet_day::more_behind(&more).of(paper.language())) } } }
    }
}

/// The first rows of a table, and how many more there are.
fn table(paper: &Paper, columns: [&str; 5], rows: &[Vec<String>]) -> Markup {
    html! {
        (paper.table(&columns, &rows[..rows.len().min(ROWS)]))
        (more_behind(paper, rows.len().saturating_sub(ROWS)))
    }
}

/// How the marks stand, and how often machines stood still.
fn boxes(paper: &Paper, day: &Day<'_>, review: &Review) -> Markup {
    let built = |wanted: &[Verdict]| {
        let judged = review.built.iter().filter(|one| one.stands());
        judged
            .filter(|one| one.verdict.is_some_and(|verdict| wanted.contains(&verdict)))
            .count()
    };
    let open = |wanted: OpenKind| review.open.iter().filter(|one| one.kind == wanted).count();
    // What was said about one afterwards is no other.
    let told = |entry: &&Entry| matches!(entry.body, Body::NearMissTold(_));
    let told = day.entries.iter().filter(told).count();
    let near = |one: &&Noted| one.kind == NotedKind::NearMiss;
    let near = review.exceptions.iter().filter(near).count();
    let stopped = |entry: &&Entry| matches!(entry.body, Body::Stopped(_));
    let stops = day.entries.iter().filter(stopped).count();
    let in_doubt = review
        .built
        .iter()
        .filter(|one| one.target.is_some() && !one.stands());
    let boxes = [
        (built(&[Verdict::On]), words::sheet_day::on_2()),
        (built(&[Verdict::High]), words::sheet_day::high()),
        (built(&[Verdict::Low]), words::sheet_day::low()),
        (
            built(&[Verdict::TooCloseHigh, Verdict::TooCloseLow]),
            words::sheet_day::marks_too_close(),
        ),
        (in_doubt.count(), words::sheet_day::marks_in_doubt()),
        (open(OpenKind::NotRead), words::sheet_day::marks_not_read()),
        (stops, words::sheet_day::stops()),
        (near.saturating_sub(told), words::sheet_day::near_misses()),
    ];
    html! {
        div.boxes { @for (many, name) in boxes { div { strong { (many) } (paper.t(name)) } } }
    }
}

/// What was out of the ordinary and not grave, by kind.
fn also(paper: &Paper, review: &Review) -> Markup {
    let mut counts: BTreeMap<NotedKind, usize> = BTreeMap::new();
    for one in review.exceptions.iter().filter(|one| !one.kind.is_grave()) {
        *counts.entry(one.kind).or_default() += 1;
    }
    let counts: Vec<String> = counts
        .into_iter()
        .map(|(what, many)| format!("{} {many}", kind(paper, what)))
        .collect();
    html! {
        @if !counts.is_empty() { p { (paper.t(words::sheet_day::also())) (counts.join(", ")) "." } }
    }
}

fn machines(paper: &Paper, review: &Review) -> Markup {
    let all = &review.account.hours;
    let said: Vec<String> = all
        .iter()
        .map(|machine| {
            let sum = |works: bool| -> i64 {
                let of = machine.sums.iter().filter(|sum| sum.doing.works() == works);
                of.map(|sum| sum.ms).sum()
            };
            let hours = words::sheet_day::hours_in_short(&hours(sum(true)), &hours(sum(false)));
            format!("{}: {}", machine.machine, hours.of(paper.language()))
        })
        .collect();
    few(paper, &said)
}

fn lasers(paper: &Paper, review: &Review) -> Markup {
    if review.set_ups.is_empty() {
        return html! { p { (paper.t(words::sheet_day::no_laser_was_set_up())) } };
    }
    let said: Vec<String> = review
        .set_ups
        .iter()
        .map(|one| {
            let state = laser::state(paper, one);
            format!("{} · {} · {state}", paper.set_up(&one.set_up), one.laser)
        })
        .collect();
    few(paper, &said)
}

/// The first of short lines, and how many more there are.
fn few(paper: &Paper, said: &[String]) -> Markup {
    if said.is_empty() {
        return html! { p { (paper.t(words::sheet_day::nothing())) } };
    }
    let some = said.len().min(FEW);
    list(paper, &said[..some], said.len() - some)
}

/// Tests, gravel and money, each in a sentence, where there are any.
fn soil(paper: &Paper, review: &Review) -> String {
    let account = &review.account;
    let language = paper.language();
    let tests = |wanted: TestStanding| {
        let of = account.tests.iter().filter(|test| test.standing == wanted);
        of.count().to_string()
    };
    let mut said = Vec::new();
    if !account.tests.is_empty() {
        let (passes, fails, void) = (
            tests(TestStanding::Passes),
            tests(TestStanding::Fails),
            tests(TestStanding::Void),
        );
        let text = words::sheet_day::tests_in_short(&passes, &fails, &void);
        said.push(text.of(language).to_owned());
    }
    if let Some(gravel) = account.gravel.as_ref().filter(|one| one.short_tons > 0.05) {
        let text = words::sheet_day::gravel_short(&format!("{:.1}", gravel.short_tons));
        said.push(text.of(language).to_owned());
    }
    if let Some(prices) = account
        .prices
        .as_ref()
        .filter(|_| !account.cost.lines.is_empty())
    {
        let text =
            words::sheet_day::cost_in_short(&format!("{}{:.2}", prices.money, account.cost.day));
        said.push(text.of(language).to_owned());
    }
    said.join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_list_keeps_to_its_lines_and_counts_what_it_leaves_out() {
        let short: Vec<String> = (0..30).map(|at| format!("point {at}")).collect();
        assert_eq!(fit(&short[..5], 5), (&short[..5], 0));
        // The last line says that there are more.
        assert_eq!(fit(&short, 12), (&short[..11], 19));
        let long = vec!["word ".repeat(100), "short".to_owned()];
        assert_eq!(lines(&long), 7);
        assert_eq!(fit(&long, 7), (&long[..], 0));
        assert_eq!(fit(&long, 6), (&long[..0], 2));
        assert_eq!(fit(&[], 0), (&[][..], 0));
    }
}
