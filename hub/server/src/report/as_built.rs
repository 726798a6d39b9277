//! As built: where each mark stands, by target, with how the differences spread.

use std::collections::BTreeMap;

use day::built::BuiltMark;
use earthwork::length::shown_number;
use maud::{Markup, html};
use show::review::Review;

use super::paper::{Paper, feet, or_dash, signed};
use super::photos::figures;

/// A bar of the histogram is half a tenth wide.
const BAR: f64 = 0.05;

pub(super) fn sheet(paper: &Paper, review: &Review) -> String {
    let body = html! {
        (tables(paper, review, true))
        h2 { (paper.t(words::sheet_as_built::final_differences())) }
        (histogram(paper, &review.built))
        h2 { (paper.t(words::sheet_as_built::not_proven())) }
        (coverage(paper, review))
    };
    paper.sheet(paper.t(words::sheet_as_built::as_built()), &[body])
}

/// One table for each target, spot elevations last; with the day's photos of its marks, where they do not stand elsewhere.
pub(super) fn tables(paper: &Paper, review: &Review, photos: bool) -> Markup {
    let mut groups: BTreeMap<(bool, &str), Vec<&BuiltMark>> = BTreeMap::new();
    for mark in &review.built {
        let target = mark.target.as_deref();
        groups
            .entry((target.is_none(), target.unwrap_or_default()))
            .or_default()
            .push(mark);
    }
    html! {
        @if groups.is_empty() { p { (paper.t(words::sheet_as_built::nobody_has_read_a_mark())) } }
        @for ((spot, target), marks) in groups {
            h3 { @if spot { (paper.t(words::sheet_as_built::spot_elevations())) } @else { (target) } }
            (table(paper, &marks))
            @if photos {
                (figures(paper, review.photos.iter().filter(|photo| {
                    marks.iter().any(|one| Some(&one.mark) == photo.mark.as_ref())
                })))
            }
        }
    }
}

fn table(paper: &Paper, marks: &[&BuiltMark]) -> Markup {
    let columns = [
        paper.t(words::sheet_as_built::mark()),
        paper.t(words::sheet_as_built::dig_to_ft()),
        paper.t(words::sheet_as_built::got_ft()),
        paper.t(words::sheet_as_built::difference()),
        paper.t(words::sheet_as_built::doubt()),
        paper.t(words::sheet_as_built::at()),
        paper.t(words::sheet_as_built::by()),
        paper.t(words::sheet_as_built::laser()),
        paper.t(words::sheet_as_built::shots()),
        paper.t(words::sheet_as_built::standing()),
    ];
    let rows: Vec<Vec<String>> = marks
        .iter()
        .map(|one| {
            vec![
                one.mark.clone(),
                or_dash(one.dig_to, feet),
                feet(one.elevation),
                or_dash(one.dev, signed),
                or_dash(one.guard, feet),
                paper.at(&one.day, one.at),
                one.by.clone(),
                paper.set_up(&one.set_up),
                one.readings.to_string(),
                paper.of(&one.text).to_owned(),
            ]
        })
        .collect();
    paper.table(&columns, &rows)
}

/// How many marks came out how far from their target; each bar says its count, so that it reads without a ruler.
fn histogram(paper: &Paper, built: &[BuiltMark]) -> Markup {
    let mut bars: BTreeMap<i64, u32> = BTreeMap::new();
    for dev in built
        .iter()
        .filter(|one| one.stands())
        .filter_map(|one| one.mean)
    {
        *bars.entry(bar(dev.feet())).or_default() += 1;
    }
    let (Some(first), Some(last)) = (bars.keys().next().copied(), bars.keys().last().copied())
    else {
        return html! { p { (paper.t(words::sheet_as_built::none())) } };
    };
    let most = bars.values().copied().max().unwrap_or(1).max(1);
    let (first, last) = (first.min(-2), last.max(2));
    let wide = 700.0 / (last - first + 1) as f64;
    let x = |at: i64| 10.0 + (at - first) as f64 * wide;
    let label = |at: i64| {
        let sign = if at > 0 { "+" } else { "" };
        format!("{sign}{}", shown_number(at as f64 * BAR, 2))
    };
    html! {
        svg viewBox="0 0 720 190" role="img" aria-label=(paper.t(words::sheet_as_built::histogram_of_final_differences())) {
            line x1=(x(0) + wide / 2.0) x2=(x(0) + wide / 2.0) y1="6" y2="156" stroke="#000" stroke-width="1.5" stroke-dasharray="6 4" {}
            @for at in first..=last {
                @let many = bars.get(&at).copied().unwrap_or(0);
                @let tall = f64::from(many) / f64::from(most) * 130.0;
                @if many > 0 {
                    rect x=(x(at) + 2.0) y=(150.0 - tall) width=(wide - 4.0) height=(tall) fill="#ddd" stroke="#000" stroke-width="1.5" {}
                    text x=(x(at) + wide / 2.0) y=(145.0 - tall) text-anchor="middle" font-size="13" stroke="#fff" stroke-width="4" paint-order="stroke" { (many) }
                }
                text x=(x(at) + wide / 2.0) y="168" text-anchor="middle" font-size="11" { (label(at)) }
            }
            line x1="10" x2="710" y1="150" y2="150" stroke="#000" stroke-width="1.5" {}
            text x="10" y="186" font-size="12" { (paper.t(words::sheet_as_built::low())) }
            text x="710" y="186" text-anchor="end" font-size="12" { (paper.t(words::sheet_as_built::high_feet())) }
        }
    }
}

/// The bar that a difference falls into: the nearest half-tenth.
fn bar(feet: f64) -> i64 {
    #[expect(
        clippy::cast_possible_truncation,
        reason = "a difference is a few hundred half-tenths at most"
    )]
    let bar = (feet / BAR).round() as i64;
    bar
}

/// The stretches of each run that no proven reading speaks for.
pub(super) fn coverage(paper: &Paper, review: &Review) -> Markup {
    let columns = [
        paper.t(words::sheet_as_built::run()),
        paper.t(words::sheet_as_built::length_ft()),
        paper.t(words::sheet_as_built::readings()),
        paper.t(words::sheet_as_built::not_proven_ft()),
        paper.t(words::sheet_as_built::stations()),
    ];
    let rows: Vec<Vec<String>> = review
        .coverage
        .iter()
        .map(|run| {
            let gaps: Vec<String> = run
                .unproven
                .iter()
                .map(|gap| format!("{}–{}", feet(gap.from), feet(gap.to)))
                .collect();
            vec![
                run.name.clone(),
                feet(run.to - run.from),
                run.proven.to_string(),
                feet(run.unproven_length),
                gaps.join(", "),
            ]
        })
        .collect();
    paper.table(&columns, &rows)
}
