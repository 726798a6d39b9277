//! A run for the next crew: what to dig to, what they will find, the gravel that each station takes, step faces, hubs.

use day::said::marks::PaintState;
use maud::{Markup, html};
use show::review::hand_over::{HandOver, HandOverStation};
use show::views::papers::PhotoCard;

use super::paper::{Paper, feet, or_dash, signed};
use super::photos::figures;
use super::profile;

pub(super) fn sheet(paper: &Paper, runs: &[HandOver], photos: &[PhotoCard]) -> String {
    let body = html! {
        @if runs.is_empty() { p { (paper.t("No run has marks or readings yet.", "Ninguna zanja tiene marcas ni lecturas todavía.")) } }
        @for run in runs { section.sheet { (one(paper, run, photos)) } }
    };
    paper.sheet(paper.t("Hand-over", "Entrega"), &body)
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
            @if !layers.is_empty() { (paper.t(", under it: ", ", debajo: ")) (layers.join(", ")) }
            @if let Some(width) = run.width { (paper.t(". Width ", ". Ancho ")) (feet(width)) " ft" }
            (paper.t(". Allowed high ", ". Se permite alto ")) (feet(run.tolerance.high))
            (paper.t(", low ", ", hondo ")) (feet(run.tolerance.low)) " ft."
        }
        (profile::profile(paper, run))
        (stations(paper, run))
        @if !run.steps.is_empty() {
            h3 { (paper.t("Step faces", "Caras de escalón")) }
            (steps(paper, run))
        }
        (figures(paper, photos.iter().filter(|photo| {
            run.stations.iter().any(|one| Some(&one.mark) == photo.mark.as_ref())
        })))
        h3 { (paper.t("Hubs outside of the dig", "Estacas fuera de la excavación")) }
        @if run.hubs.is_empty() {
            p { (paper.t("Nobody said from which hubs its marks were laid.", "Nadie dijo de qué estacas se pusieron sus marcas.")) }
        } @else {
            ul { @for hub in &run.hubs { li { (hub) } } }
        }
    }
}

fn stations(paper: &Paper, run: &HandOver) -> Markup {
    let lowest = run.layers.last().map_or("", |(name, _)| name.as_str());
    let fill = format!("#{lowest}, ft");
    let columns = [
        paper.t("#station", "#estación"),
        paper.t("mark", "marca"),
        paper.t("#dig to, ft", "#cavar a, ft"),
        paper.t("#got, ft", "#quedó, ft"),
        paper.t("#difference", "#diferencia"),
        paper.t("*standing", "*cómo está"),
        fill.as_str(),
        paper.t("#trim first", "#raspar antes"),
        paper.t("paint", "pintura"),
    ];
    let rows: Vec<Vec<String>> = run.stations.iter().map(|one| station(paper, one)).collect();
    paper.table(&columns, &rows)
}

fn station(paper: &Paper, one: &HandOverStation) -> Vec<String> {
    let got = one.got.as_ref();
    let standing = got.map_or_else(
        || paper.t("not read", "sin leer").to_owned(),
        |got| {
            format!(
                "{} ({})",
                paper.t(&got.english, &got.spanish),
                paper.at(&got.day, got.at)
            )
        },
    );
    let paint = one.paint.as_ref().map(|paint| {
        let word = match paint.state {
            PaintState::Laid => paper.t("laid", "puesta"),
            PaintState::Checked => paper.t("checked", "comprobada"),
            PaintState::Scraped => paper.t("GONE", "BORRADA"),
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
        paper.t("#station of the face", "#estación de la cara"),
        paper.t("#may be off, ft", "#puede variar, ft"),
        paper.t("#dig to before, ft", "#cavar antes a, ft"),
        paper.t("#dig to after, ft", "#cavar después a, ft"),
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
