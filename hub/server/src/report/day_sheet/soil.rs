//! Soil work and what it costs: tests, loads, gravel, patches, the cost line by line.

use day::account::meter::Doing;
use day::account::soil::TestStanding;
use day::said::load::Way;
use day::said::patch::PatchStep;
use maud::{Markup, html};
use show::review::Review;
use show::views::account::hours::CostOf;

use crate::report::paper::{Paper, feet};
use crate::when::to_the_minute;

pub(super) fn tests(paper: &Paper, review: &Review) -> Markup {
    let columns = [
        paper.t(words::sheet_day::at()),
        paper.t(words::sheet_day::mark()),
        paper.t(words::sheet_day::tester()),
        paper.t(words::sheet_day::stated()),
        paper.t(words::sheet_day::elevation_ft()),
        paper.t(words::sheet_day::standing()),
    ];
    let rows: Vec<Vec<String>> = review
        .account
        .tests
        .iter()
        .map(|test| {
            let stated = paper.of(&test.text).to_owned();
            let standing = match (test.standing, &test.void) {
                (TestStanding::Passes, _) => paper.t(words::sheet_day::passes()).to_owned(),
                (TestStanding::Fails, _) => paper.t(words::sheet_day::fails()).to_owned(),
                (TestStanding::Void, Some(why)) => format!(
                    "{}: {}",
                    paper.t(words::sheet_day::void()),
                    paper.of(&why.text())
                ),
                (TestStanding::Void, None) => paper.t(words::sheet_day::void()).to_owned(),
            };
            vec![
                to_the_minute(test.made_at),
                test.mark.clone(),
                test.tester.clone(),
                stated,
                feet(test.elevation),
                standing,
            ]
        })
        .collect();
    paper.table(&columns, &rows)
}

pub(super) fn loads(paper: &Paper, review: &Review) -> Markup {
    let columns = [
        paper.t(words::sheet_day::material()),
        paper.t(words::sheet_day::way()),
        paper.t(words::sheet_day::trucks()),
        paper.t(words::sheet_day::loose_cy()),
        paper.t(words::sheet_day::tons()),
    ];
    let rows: Vec<Vec<String>> = review
        .account
        .materials
        .iter()
        .map(|one| {
            let way = match one.way {
                Way::In => paper.t(words::sheet_day::r#in()),
                Way::Out => paper.t(words::sheet_day::out()),
            };
            vec![
                one.material.clone(),
                way.to_owned(),
                one.trucks.to_string(),
                format!("{:.1}", one.loose_cy),
                format!("{:.1}", one.tons),
            ]
        })
        .collect();
    paper.table(&columns, &rows)
}

pub(super) fn gravel(paper: &Paper, review: &Review) -> Markup {
    let columns = [
        paper.t(words::sheet_day::patch()),
        paper.t(words::sheet_day::mark()),
        paper.t(words::sheet_day::length_width_depth_ft()),
        paper.t(words::sheet_day::cy()),
        paper.t(words::sheet_day::step()),
    ];
    let rows: Vec<Vec<String>> = review
        .account
        .patches
        .iter()
        .map(|patch| {
            vec![
                paper.patch(&patch.patch),
                patch.mark.clone(),
                format!(
                    "{} × {} × {}",
                    feet(patch.length),
                    feet(patch.width),
                    feet(patch.depth)
                ),
                format!("{:.2}", patch.cy),
                step(paper, patch.step).to_owned(),
            ]
        })
        .collect();
    html! {
        @if let Some(gravel) = &review.account.gravel {
            p {
                (paper.t(words::sheet_day::gravel_2())) (format!("{:.1}", gravel.mean_tons))
                (paper.t(words::sheet_day::t_enough_nine_times_ten())) (format!("{:.1}", gravel.enough_tons))
                (paper.t(words::sheet_day::t())) (format!("{:.1}", gravel.ordered_tons))
                (paper.t(words::sheet_day::t_came())) (format!("{:.1}", gravel.came_tons)) " t."
                @if gravel.short_tons > 0.05 {
                    " " strong { (paper.t(words::sheet_day::short_by())) (format!("{:.1} t.", gravel.short_tons)) }
                }
            }
        }
        (paper.table(&columns, &rows))
    }
}

/// Soil still to be dug, and rock above the dig with its points: what extra work is measured by.
pub(super) fn left_and_rock(paper: &Paper, review: &Review) -> Markup {
    let columns = [
        paper.t(words::sheet_day::target()),
        paper.t(words::sheet_day::dig_cy_ground()),
        paper.t(words::sheet_day::too_deep_cy()),
        paper.t(words::sheet_day::marks_read()),
    ];
    let rows: Vec<Vec<String>> = review
        .account
        .soil_left
        .iter()
        .map(|one| {
            vec![
                one.target.clone(),
                format!("{:.1}", one.cut_cy),
                format!("{:.1}", one.low_cy),
                format!("{} / {}", one.read, one.marks),
            ]
        })
        .collect();
    html! {
        h3 { (paper.t(words::sheet_day::soil_still_to_remove())) }
        (paper.table(&columns, &rows))
        (rock(paper, review))
    }
}

fn rock(paper: &Paper, review: &Review) -> Markup {
    let rock = &review.account.rock;
    let columns = [
        paper.t(words::sheet_day::point()),
        paper.t(words::sheet_day::mark()),
        paper.t(words::sheet_day::east_ft()),
        paper.t(words::sheet_day::north_ft()),
        paper.t(words::sheet_day::top_ft()),
        paper.t(words::sheet_day::what()),
    ];
    let rows: Vec<Vec<String>> = rock
        .points
        .iter()
        .map(|one| {
            vec![
                one.point.clone(),
                one.mark.clone(),
                feet(one.at.x),
                feet(one.at.y),
                feet(one.top),
                one.what.clone(),
            ]
        })
        .collect();
    html! {
        @if !rows.is_empty() {
            h3 { (paper.t(words::sheet_day::rock_above_the_dig())) }
            @match (rock.cy, rock.edge_doubt_cy) {
                (Some(cy), Some(doubt)) => p {
                    strong { (format!("{cy:.1}")) (paper.t(words::sheet_day::cy_2())) }
                    (paper.t(words::sheet_day::within_its_points())) (format!("{doubt:.1}"))
                    (paper.t(words::sheet_day::for_where_it_ends()))
                },
                _ => { @if let Some(why) = &rock.why { p { (paper.of(why)) } } }
            }
            (paper.table(&columns, &rows))
        }
    }
}

fn step(paper: &Paper, step: PatchStep) -> &'static str {
    let words = match step {
        PatchStep::Needed => words::sheet_day::needed(),
        PatchStep::Filled => words::sheet_day::filled(),
        PatchStep::Compacted => words::sheet_day::compacted(),
        PatchStep::Tested => words::sheet_day::tested(),
        PatchStep::Done => words::sheet_day::done(),
    };
    paper.t(words)
}

pub(super) fn cost(paper: &Paper, review: &Review) -> Markup {
    let card = &review.account.cost;
    let money = review
        .account
        .prices
        .as_ref()
        .map_or("", |prices| prices.money.as_str());
    let columns = [
        paper.t(words::sheet_day::what_for()),
        paper.t(words::sheet_day::cost()),
    ];
    let mut rows: Vec<Vec<String>> = card
        .lines
        .iter()
        .map(|line| vec![what(paper, &line.what), format!("{money}{:.2}", line.cost)])
        .collect();
    if !rows.is_empty() {
        let mut sum =
            |name: &str, cost: f64| rows.push(vec![name.to_owned(), format!("{money}{cost:.2}")]);
        sum(paper.t(words::sheet_day::the_day()), card.day);
        sum(paper.t(words::sheet_day::of_it_waiting()), card.waiting);
        sum(paper.t(words::sheet_day::the_job_so_far()), card.job);
    }
    html! {
        (paper.table(&columns, &rows))
        @if !card.without_rate.is_empty() {
            p { (paper.t(words::sheet_day::without_rate_not_sum())) (card.without_rate.join(", ")) "." }
        }
    }
}

fn what(paper: &Paper, what: &CostOf) -> String {
    match what {
        CostOf::Machine { machine } => {
            format!("{machine} {}", paper.t(words::sheet_day::digging()))
        }
        CostOf::Waiting { cause } => {
            format!(
                "{}: {}",
                paper.t(words::sheet_day::waiting()),
                doing(paper, *cause)
            )
        }
        CostOf::Loads { material } => format!("{}: {material}", paper.t(words::sheet_day::loads())),
        CostOf::Gravel { tons } => format!("{} {tons:.1} t", paper.t(words::sheet_day::gravel())),
        CostOf::Patches { cy } => {
            format!(
                "{} {cy:.2} {}",
                paper.t(words::sheet_day::patches()),
                paper.t(words::sheet_day::cy_3())
            )
        }
    }
}

/// What a machine does, in words.
pub(super) fn doing(paper: &Paper, doing: Doing) -> &'static str {
    let words = match doing {
        Doing::Digging => words::sheet_day::digging_2(),
        Doing::Look => words::sheet_day::waits_for_a_look(),
        Doing::Stopped => words::sheet_day::stopped(),
        Doing::LaserHold => words::sheet_day::laser_in_doubt(),
        Doing::TargetHold => words::sheet_day::a_changed_target_to_see(),
        Doing::Cant => words::sheet_day::cant_go_on(),
        Doing::Truck => words::sheet_day::waits_for_trucks(),
        Doing::Attachment => words::sheet_day::changes_an_attachment(),
        Doing::Broken => words::sheet_day::broken(),
        Doing::Parked => words::sheet_day::parked(),
        Doing::OtherWait => words::sheet_day::waits(),
        Doing::ScreenLost => words::sheet_day::by_hand_signals_no_screen(),
    };
    paper.t(words)
}
