//! A run for the next crew: what to dig to, what they will find, the gravel that each station takes, step faces, hubs.

use day::said::marks::PaintState;
use maud::{Markup, html};
use show::review::hand_over::{HandOver, HandOverStation};
use show::views::papers::PhotoCard;

use super::paper::{Paper, feet, or_dash, signed};
use super::photos::figures;
use super::profile;

pub(super) fn sheet(paper: &Paper, runs: &[HandOver], photos: &[PhotoCard]) -> String {
    let mut parts: Vec<Markup> = runs.iter().map(|run| one(paper, run, photos)).collect();
    if parts.is_empty() {
        parts.push(html! { p { (paper.t(words::sheet_hand_over::no_run_has_marks_or())) } });
    }
    paper.sheet(paper.t(words::sheet_hand_over::hand_over()), &parts)
}

fn one(paper: &Paper, run: &HandOver, photos: &[PhotoCard]) -> Markup {
    let layers: Vec<String> = run
        .layers
        .iter()
        .map(|(name, thick)| format!("{name} {} ft", feet(*thick)))
        .collect();
    html! {
        h2 { (run.name) " (" (run.target) ", r" (run.revision) ")" }
        p {
            (run.surface)
            @if !layers.is_empty() { (paper.t(words::sheet_hand_over::under_it())) (layers.join(", ")) }
            @if let Some(width) = run.width { (paper.t(words::sheet_hand_over::width())) (feet(width)) " ft" }
            (paper.t(words::sheet_hand_over::allowed_high())) (feet(run.tolerance.high))
            (paper.t(words::sheet_hand_over::low())) (feet(run.tolerance.low)) " ft."
        }
        (profile::profile(paper, run))
        (stations(paper, run))
        @if !run.steps.is_empty() {
            h3 { (paper.t(words::sheet_hand_over::step_faces())) }
            (steps(paper, run))
        }
        h3 { (paper.t(words::sheet_hand_over::hubs_outside_of_the_dig())) }
        @if run.hubs.is_empty() {
            p { (paper.t(words::sheet_hand_over::nobody_said_from_which_hubs())) }
        } @else {
            ul { @for hub in &run.hubs { li { (hub) } } }
        }
        (figures(paper, photos.iter().filter(|photo| {
            run.stations.iter().any(|one| Some(&one.mark) == photo.mark.as_ref())
        })))
    }
}

fn stations(paper: &Paper, run: &HandOver) -> Markup {
    let lowest = run.layers.last().map_or("", |(name, _)| name.as_str());
    let fill = format!("#{lowest}, ft");
    let columns = [
        paper.t(words::sheet_hand_over::station()),
        paper.t(words::sheet_hand_over::mark()),
        paper.t(words::sheet_hand_over::dig_to_ft()),
        paper.t(words::sheet_hand_over::got_ft()),
        paper.t(words::sheet_hand_over::difference()),
        paper.t(words::sheet_hand_over::standing()),
        fill.as_str(),
        paper.t(words::sheet_hand_over::trim_first()),
        paper.t(words::sheet_hand_over::paint()),
    ];
    let rows: Vec<Vec<String>> = run.stations.iter().map(|one| station(paper, one)).collect();
    paper.table(&columns, &rows)
}

fn station(paper: &Paper, one: &HandOverStation) -> Vec<String> {
    let got = one.got.as_ref();
    let standing = got.map_or_else(
        || paper.t(words::sheet_hand_over::not_read()).to_owned(),
        |got| format!("{} ({})", paper.of(&got.text), paper.at(&got.day, got.at)),
    );
    let paint = one.paint.as_ref().map(|paint| {
        let word = match paint.state {
            PaintState::Laid => paper.t(words::sheet_hand_over::laid()),
            PaintState::Checked => paper.t(words::sheet_hand_over::checked()),
            PaintState::Scraped => paper.t(words::sheet_hand_over::gone()),
        };
        format!("{word}, {}", paint.generation)
    });
    vec![
        or_dash(one.station, feet),
        one.mark.clone(),
        or_dash(one.dig_to, feet),
        or_dash(got, |got| feet(got.elevation)),
        or_dash(got.and_then(|got| got.dev), signed),
        standing,
        or_dash(one.fill, feet),
        or_dash(one.trim, feet),
        or_dash(paint, |paint| paint),
    ]
}

fn steps(paper: &Paper, run: &HandOver) -> Markup {
    let columns = [
        paper.t(words::sheet_hand_over::station_of_the_face()),
        paper.t(words::sheet_hand_over::may_be_off_ft()),
        paper.t(words::sheet_hand_over::dig_to_before_ft()),
        paper.t(words::sheet_hand_over::dig_to_after_ft()),
    ];
    let rows: Vec<Vec<String>> = run
        .steps
        .iter()
        .map(|step| {
            vec![
                feet(step.station),
                format!("±{}", feet(step.window)),
                feet(step.before),
                feet(step.after),
            ]
        })
        .collect();
    paper.table(&columns, &rows)
}
