//! Who told a machine to dig near a place: the answer first, then its proof, then what the log does not say.

use day::said::marks::PaintState;
use day::time::Time;
use maud::{Markup, html};
use show::review::Sentence;
use show::review::told::{Gap, Told, ToldPage};

use super::paper::{Paper, feet, or_dash, signed};
use super::photos::figures;
use crate::when::{date, in_full, to_the_minute, to_the_second};

pub(super) fn sheet(paper: &Paper, told: &Told) -> String {
    let asked = &told.asked;
    let question = format!(
        "{} {} {} ({}, {}) {} {} {} {}?",
        paper.t(words::sheet_who_told::who_told()),
        asked.machine,
        paper.t(words::sheet_who_told::to_dig_near()),
        feet(asked.near.x),
        feet(asked.near.y),
        paper.t(words::sheet_who_told::between()),
        moment(told, asked.from),
        paper.t(words::sheet_who_told::and()),
        moment(told, asked.to)
    );
    let several = told.days.len() > 1;
    let mut parts: Vec<Markup> = told
        .days
        .iter()
        .map(|page| {
            html! {
                @if several { h2 { (page.day) } }
                (one(paper, page))
            }
        })
        .collect();
    if parts.is_empty() {
        parts.push(html! { p.answer { (paper.t(words::sheet_who_told::log_has_no_day_this())) } });
    }
    paper.sheet(&question, &parts)
}

/// A moment of the question, with its date when it is not of one day.
fn moment(told: &Told, at: Time) -> String {
    if told.days.len() > 1 {
        format!("{} {}", date(at), to_the_minute(at))
    } else {
        to_the_minute(at)
    }
}

fn one(paper: &Paper, page: &ToldPage) -> Markup {
    let asked = &page.asked;
    html! {
        p.answer { (paper.of(&page.text)) }
        p {
            (paper.t(words::sheet_who_told::from())) (in_full(asked.from)) (paper.t(words::sheet_who_told::to())) (in_full(asked.to))
            (paper.t(words::sheet_who_told::what_lies_within())) (feet(page.within))
            (paper.t(words::sheet_who_told::ft_of_the_place()))
        }
        h3 { (paper.t(words::sheet_who_told::what_log_does_not_say())) }
        (gaps(paper, &page.gaps))
        h3 { (paper.t(words::sheet_who_told::calls())) }
        (calls(paper, page))
        h3 { (paper.t(words::sheet_who_told::readings_there())) }
        (sentences(paper, &page.readings))
        h3 { (paper.t(words::sheet_who_told::lasers_behind_these_calls())) }
        (lasers(paper, page))
        h3 { (paper.t(words::sheet_who_told::lines_that_nobody_may_cross())) }
        (lines(paper, page))
        h3 { (paper.t(words::sheet_who_told::targets_and_marks())) }
        (targets(paper, page))
        h3 { (paper.t(words::sheet_who_told::notes_photos_queries_amendments())) }
        (sentences(paper, &page.papers))
        (figures(paper, &page.photos))
        h3 { (paper.t(words::sheet_who_told::pressed_said_for_this_machine())) }
        (sentences(paper, &page.presses))
    }
}

fn gaps(paper: &Paper, gaps: &[Gap]) -> Markup {
    html! {
        @if gaps.is_empty() {
            p { (paper.t(words::sheet_who_told::no_gap_found_by_rules())) }
        } @else {
            ul { @for gap in gaps {
                li {
                    @if let (Some(from), Some(to)) = (gap.from, gap.to) {
                        (to_the_minute(from)) "–" (to_the_minute(to)) ": "
                    }
                    (paper.of(&gap.text))
                }
            } }
        }
    }
}

fn calls(paper: &Paper, page: &ToldPage) -> Markup {
    let columns = [
        paper.t(words::sheet_who_told::entry()),
        paper.t(words::sheet_who_told::sent()),
        paper.t(words::sheet_who_told::by()),
        paper.t(words::sheet_who_told::mark()),
        paper.t(words::sheet_who_told::called()),
        paper.t(words::sheet_who_told::on_the_screen_as_painted()),
        paper.t(words::sheet_who_told::painted()),
        paper.t(words::sheet_who_told::got_it()),
        paper.t(words::sheet_who_told::laser()),
        paper.t(words::sheet_who_told::target()),
    ];
    let rows: Vec<Vec<String>> = page
        .calls
        .iter()
        .map(|call| {
            vec![
                call.call.to_string(),
                to_the_second(call.sent_at),
                call.by.clone(),
                or_dash(call.mark.clone(), |mark| mark),
                paper.of(&call.text).to_owned(),
                or_dash(call.shown_text.clone(), |text| text),
                or_dash(call.shown_at, to_the_second),
                or_dash(call.got_at, to_the_second),
                or_dash(call.set_up.as_ref(), |id| paper.set_up(id)),
                or_dash(call.target.as_ref(), |target| {
                    format!("{target} r{}", call.revision.unwrap_or(1))
                }),
            ]
        })
        .collect();
    paper.table(&columns, &rows)
}

fn lasers(paper: &Paper, page: &ToldPage) -> Markup {
    html! {
        @if page.lasers.is_empty() { p { (paper.t(words::sheet_who_told::none())) } }
        @for proof in &page.lasers {
            h3 { (paper.set_up(&proof.set_up)) ", " (proof.laser) ", " (proof.benchmark) }
            ul {
                @for (name, check) in [
                    (paper.t(words::sheet_who_told::good_before_the_first_call()), &proof.before),
                    (paper.t(words::sheet_who_told::next_check_after_last_call()), &proof.after),
                ] {
                    li {
                        (name) ": "
                        @match check {
                            Some(check) => { (to_the_minute(check.at)) " " (check.benchmark) " " (signed(check.residual)) " ft, " (check.by) }
                            None => { (paper.t(words::sheet_who_told::none_2())) }
                        }
                    }
                }
                @for doubt in &proof.doubts {
                    li {
                        (doubt.mark) " " (or_dash(doubt.dev, signed)) " ft; "
                        (paper.t(words::sheet_who_told::if_laser_had_moved_before()))
                        (or_dash(doubt.dev_if_moved, signed)) " ft: "
                        @if doubt.standing.is_owed() { (paper.t(words::sheet_who_told::shot_again())) }
                        @else { (paper.t(words::sheet_who_told::verdict_same_either_way())) }
                    }
                }
            }
        }
    }
}

fn lines(paper: &Paper, page: &ToldPage) -> Markup {
    html! {
        @if page.lines.is_empty() { p { (paper.t(words::sheet_who_told::none_within_15_ft())) } }
        ul {
            @for line in &page.lines {
                li { (line.line) ": " (paper.t(words::sheet_who_told::place_asked_about_lies())) (signed(line.inside)) " ft " (paper.t(words::sheet_who_told::from_minus_over())) }
            }
            @for edge in &page.edges {
                li { (to_the_minute(edge.said.at)) " " (edge.said.by) ": " (paper.of(&edge.said.text)) }
            }
        }
    }
}

fn targets(paper: &Paper, page: &ToldPage) -> Markup {
    html! {
        ul {
            @for target in &page.targets {
                li {
                    (target.name) " r" (target.revision)
                    @if let Some(by) = &target.typed_by { "; " (paper.t(words::sheet_who_told::typed_by())) (by) }
                    @if let Some(by) = &target.proved_by { "; " (paper.t(words::sheet_who_told::typed_a_second_time_by())) (by) }
                    @for change in &target.changes { "; " (to_the_minute(change.at)) " " (paper.of(&change.text)) }
                }
            }
            @for mark in &page.marks {
                li {
                    (mark.mark) ", " (feet(mark.away)) " ft"
                    @if let Some(dig_to) = mark.dig_to { "; " (paper.t(words::sheet_who_told::dig_to())) (feet(dig_to)) " ft" }
                    @if let Some(paint) = &mark.paint {
                        "; " (paper.t(words::sheet_who_told::laid())) (paint.generation) "×, " (paper.t(words::sheet_who_told::last_by())) (paint.by) " " (to_the_minute(paint.at))
                        @if paint.state == PaintState::Checked { ", " (paper.t(words::sheet_who_told::checked())) }
                        @if let Some(doubt) = paint.doubt { " ±" (feet(doubt)) " ft" }
                    }
                    @for laid in &mark.laid { "; " (to_the_minute(laid.at)) " " (laid.by) ": " (paper.of(&laid.text)) }
                }
            }
        }
    }
}

fn sentences(paper: &Paper, said: &[Sentence]) -> Markup {
    let columns = [
        paper.t(words::sheet_who_told::entry()),
        paper.t(words::sheet_who_told::at()),
        paper.t(words::sheet_who_told::by()),
        paper.t(words::sheet_who_told::what()),
    ];
    let rows: Vec<Vec<String>> = said
        .iter()
        .map(|one| {
            vec![
                one.seq.to_string(),
                to_the_second(one.at),
                one.by.clone(),
                paper.of(&one.text).to_owned(),
            ]
        })
        .collect();
    paper.table(&columns, &rows)
}
