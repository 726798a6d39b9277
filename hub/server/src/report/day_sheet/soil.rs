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
        paper.t("at", "hora"),
        paper.t("mark", "marca"),
        paper.t("tester", "laboratorista"),
        paper.t("stated", "declarado"),
        paper.t("#elevation, ft", "#elevación, ft"),
        paper.t("standing", "cómo está"),
    ];
    let rows: Vec<Vec<String>> = review
        .account
        .tests
        .iter()
        .map(|test| {
            let stated = paper.t(&test.english, &test.spanish).to_owned();
            let standing = match (test.standing, &test.void) {
                (TestStanding::Passes, _) => paper.t("passes", "pasa").to_owned(),
                (TestStanding::Fails, _) => paper.t("FAILS", "FALLA").to_owned(),
                (TestStanding::Void, Some(why)) => format!(
                    "{}: {}",
                    paper.t("VOID", "NO VALE"),
                    paper.t(&why.english(), &why.spanish())
                ),
                (TestStanding::Void, None) => paper.t("VOID", "NO VALE").to_owned(),
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
        paper.t("material", "material"),
        paper.t("way", "sentido"),
        paper.t("#trucks", "#camiones"),
        paper.t("#loose cy", "#yd³ sueltas"),
        paper.t("#tons", "#toneladas"),
    ];
    let rows: Vec<Vec<String>> = review
        .account
        .materials
        .iter()
        .map(|one| {
            let way = match one.way {
                Way::In => paper.t("in", "entra"),
                Way::Out => paper.t("out", "sale"),
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
        paper.t("patch", "parche"),
        paper.t("mark", "marca"),
        paper.t("#length × width × depth, ft", "#largo × ancho × fondo, ft"),
        paper.t("#cy", "#yd³"),
        paper.t("step", "paso"),
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
                (paper.t("Gravel: mean ", "Grava: media ")) (format!("{:.1}", gravel.mean_tons))
                (paper.t(" t, enough nine times in ten ", " t, alcanza nueve de diez veces ")) (format!("{:.1}", gravel.enough_tons))
                (paper.t(" t; ordered ", " t; pedida ")) (format!("{:.1}", gravel.ordered_tons))
                (paper.t(" t, came ", " t, llegó ")) (format!("{:.1}", gravel.came_tons)) " t."
                @if gravel.short_tons > 0.05 {
                    " " strong { (paper.t("Short by ", "Faltan ")) (format!("{:.1} t.", gravel.short_tons)) }
                }
            }
        }
        (paper.table(&columns, &rows))
    }
}

/// Soil still to be dug, and rock above the dig with its points: what extra work is measured by.
pub(super) fn left_and_rock(paper: &Paper, review: &Review) -> Markup {
    let columns = [
        paper.t("target", "rasante"),
        paper.t("#to dig, cy in the ground", "#por excavar, yd³ en banco"),
        paper.t("#too deep, cy", "#muy hondo, yd³"),
        paper.t("#marks read", "#marcas leídas"),
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
        h3 { (paper.t("Soil still to remove", "Suelo por sacar")) }
        (paper.table(&columns, &rows))
        (rock(paper, review))
    }
}

fn rock(paper: &Paper, review: &Review) -> Markup {
    let rock = &review.account.rock;
    let columns = [
        paper.t("point", "punto"),
        paper.t("mark", "marca"),
        paper.t("#east, ft", "#este, ft"),
        paper.t("#north, ft", "#norte, ft"),
        paper.t("#top, ft", "#cara, ft"),
        paper.t("what", "qué"),
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
            h3 { (paper.t("Rock above the dig", "Roca sobre la excavación")) }
            @match (rock.cy, rock.edge_doubt_cy) {
                (Some(cy), Some(doubt)) => p {
                    strong { (format!("{cy:.1}")) (paper.t(" cy", " yd³")) }
                    (paper.t(" within its points, ± ", " dentro de sus puntos, ± ")) (format!("{doubt:.1}"))
                    (paper.t(" for where it ends.", " por dónde termina."))
                },
                _ => p { (paper.t(&rock.why_english, &rock.why_spanish)) },
            }
            (paper.table(&columns, &rows))
        }
    }
}

fn step(paper: &Paper, step: PatchStep) -> &'static str {
    let (english, spanish) = match step {
        PatchStep::Needed => ("needed", "falta"),
        PatchStep::Filled => ("filled", "rellenado"),
        PatchStep::Compacted => ("compacted", "compactado"),
        PatchStep::Tested => ("tested", "probado"),
        PatchStep::Done => ("done", "hecho"),
    };
    paper.t(english, spanish)
}

pub(super) fn cost(paper: &Paper, review: &Review) -> Markup {
    let card = &review.account.cost;
    let money = review
        .account
        .prices
        .as_ref()
        .map_or("", |prices| prices.money.as_str());
    let columns = [paper.t("what for", "por qué"), paper.t("#cost", "#costo")];
    let mut rows: Vec<Vec<String>> = card
        .lines
        .iter()
        .map(|line| vec![what(paper, &line.what), format!("{money}{:.2}", line.cost)])
        .collect();
    if !rows.is_empty() {
        let mut sum =
            |name: &str, cost: f64| rows.push(vec![name.to_owned(), format!("{money}{cost:.2}")]);
        sum(paper.t("the day", "el día"), card.day);
        sum(paper.t("of it waiting", "de eso, espera"), card.waiting);
        sum(paper.t("the job so far", "la obra hasta hoy"), card.job);
    }
    html! {
        (paper.table(&columns, &rows))
        @if !card.without_rate.is_empty() {
            p { (paper.t("Without a rate, and not in the sum: ", "Sin precio, y fuera de la suma: ")) (card.without_rate.join(", ")) "." }
        }
    }
}

fn what(paper: &Paper, what: &CostOf) -> String {
    match what {
        CostOf::Machine { machine } => format!("{machine} {}", paper.t("digging", "excavando")),
        CostOf::Waiting { cause } => {
            format!("{}: {}", paper.t("waiting", "espera"), doing(paper, *cause))
        }
        CostOf::Loads { material } => format!("{}: {material}", paper.t("loads", "viajes")),
        CostOf::Gravel { tons } => format!("{} {tons:.1} t", paper.t("gravel", "grava")),
        CostOf::Patches { cy } => {
            format!(
                "{} {cy:.2} {}",
                paper.t("patches", "parches"),
                paper.t("cy", "yd³")
            )
        }
    }
}

/// What a machine does, in words.
pub(super) fn doing(paper: &Paper, doing: Doing) -> &'static str {
    let (english, spanish) = match doing {
        Doing::Digging => ("digging", "excava"),
        Doing::Look => ("waits for a look", "espera una lectura"),
        Doing::Stopped => ("stopped", "parada"),
        Doing::LaserHold => ("laser in doubt", "láser en duda"),
        Doing::TargetHold => ("a changed target to see", "rasante cambiada por ver"),
        Doing::Cant => ("can't go on", "no puede seguir"),
        Doing::Truck => ("waits for trucks", "espera camiones"),
        Doing::Attachment => ("changes an attachment", "cambia de equipo"),
        Doing::Broken => ("broken", "descompuesta"),
        Doing::Parked => ("parked", "estacionada"),
        Doing::OtherWait => ("waits", "espera"),
        Doing::ScreenLost => ("by hand signals, no screen", "por señas, sin pantalla"),
    };
    paper.t(english, spanish)
}
