//! The day's sheet: what is open and what was out of the ordinary first, then everything that was measured, called, hauled.

use maud::{Markup, html};
use show::review::exceptions::NotedKind;
use show::review::lanes::{LaneOf, LaneWhat};
use show::review::{Day, Review, Sentence};

use super::as_built;
use super::paper::{Paper, feet, hours, or_dash, signed};
use super::photos::figures;
use crate::when::{date, to_the_minute, to_the_second};

mod laser;
mod soil;

pub(super) fn sheet(paper: &Paper, day: &Day<'_>, review: &Review) -> String {
    let body = html! {
        p {
            (to_the_minute(review.from)) "–" (to_the_minute(review.to)) ". "
            (paper.t("Entries ", "Asientos ")) (review.first) "–" (review.last) ". "
            (summary(paper, review))
        }
        (signature(paper, day))
        (amended_later(paper, review))
        h2 { (paper.t("Open", "Pendiente")) }
        @if review.open.is_empty() {
            p { (paper.t("Nothing that this sheet knows of.", "Nada que esta hoja conozca.")) }
        } @else {
            ul { @for item in &review.open { li { (paper.t(&item.english, &item.spanish)) } } }
        }
        h2 { (paper.t("Out of the ordinary", "Fuera de lo común")) }
        (exceptions(paper, review))
        h2 { (paper.t("Put on record", "Asentado")) }
        (said(paper, &review.record))
        (figures(paper, &review.photos))
        h2 { (paper.t("People", "Gente")) }
        (people(paper, review))
        h2 { (paper.t("Machines and hours", "Máquinas y horas")) }
        (machines(paper, review))
        h2 { (paper.t("As built", "Cómo quedó")) }
        (as_built::tables(paper, review, false))
        h3 { (paper.t("Not proven", "Sin probar")) }
        (as_built::coverage(paper, review))
        h2 { (paper.t("Laser proof", "Prueba de los láseres")) }
        (laser::set_ups(paper, review))
        h2 { (paper.t("Soil tests", "Pruebas de suelo")) }
        (soil::tests(paper, review))
        h2 { (paper.t("Loads and gravel", "Viajes y grava")) }
        (soil::loads(paper, review))
        (soil::gravel(paper, review))
        (soil::left_and_rock(paper, review))
        h2 { (paper.t("Cost, at the site's own rates", "Costo, a los precios de la obra")) }
        (soil::cost(paper, review))
        h2 { (paper.t("What changed in the site, and why", "Qué cambió en la obra, y por qué")) }
        (said(paper, &review.changes))
        h2 { (paper.t("Calls", "Órdenes")) }
        (calls(paper, review))
        h2 { (paper.t("Readings", "Lecturas")) }
        (laser::readings(paper, day))
    };
    paper.sheet(paper.t("Day report", "Informe del día"), &body)
}

fn summary(paper: &Paper, review: &Review) -> String {
    let marks = review
        .built
        .iter()
        .filter(|one| one.target.is_some())
        .count();
    format!(
        "{marks} {}, {} {}, {} {}.",
        paper.t("marks measured", "marcas medidas"),
        review.calls.len(),
        paper.t("calls", "órdenes"),
        review.exceptions.len(),
        paper.t("things out of the ordinary", "cosas fuera de lo común")
    )
}

fn exceptions(paper: &Paper, review: &Review) -> Markup {
    let columns = [
        paper.t("#entry", "#asiento"),
        paper.t("at", "hora"),
        paper.t("what", "qué"),
        paper.t("by", "quién"),
        paper.t("said", "dicho"),
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
                paper.t(&said.english, &said.spanish).to_owned(),
            ]
        })
        .collect();
    paper.table(&columns, &rows)
}

fn kind(paper: &Paper, kind: NotedKind) -> &'static str {
    let (english, spanish) = match kind {
        NotedKind::NearMiss => ("NEAR MISS", "CASI ACCIDENTE"),
        NotedKind::Stop => ("stop", "paro"),
        NotedKind::Face => ("face", "talud"),
        NotedKind::Rain => ("rain, water", "lluvia, agua"),
        NotedKind::Laser => ("laser", "láser"),
        NotedKind::Asked => ("asked", "se preguntó"),
        NotedKind::Late => ("late", "tarde"),
        NotedKind::Paper => ("from paper", "del papel"),
        NotedKind::Override => ("a person decided", "decidió una persona"),
        NotedKind::CallLost => ("call lost", "orden perdida"),
        NotedKind::Screen => ("screen", "pantalla"),
        NotedKind::Test => ("soil test", "prueba de suelo"),
        NotedKind::Void => ("VOID", "NO VALE"),
        NotedKind::Gravel => ("gravel", "grava"),
        NotedKind::Buried => ("buried line", "línea enterrada"),
        NotedKind::LogCut => ("LOG CUT", "REGISTRO CORTADO"),
    };
    paper.t(english, spanish)
}

/// Who was there from when, and how long in a keep-out.
fn people(paper: &Paper, review: &Review) -> Markup {
    let columns = [
        paper.t("who", "quién"),
        paper.t("from", "desde"),
        paper.t("to", "hasta"),
        paper.t("#times in a keep-out", "#veces en una zona prohibida"),
        paper.t("#minutes in", "#minutos dentro"),
    ];
    let rows: Vec<Vec<String>> = review
        .lanes
        .iter()
        .filter_map(|lane| {
            let LaneOf::Person(name) = &lane.of else {
                return None;
            };
            let inside = lane
                .spans
                .iter()
                .filter(|span| matches!(span.what, LaneWhat::In { .. }));
            let ms: i64 = inside.clone().map(|span| span.to.ms_since(span.from)).sum();
            // A stay goes on while its link is lost: spans that follow one another are one time in.
            let times = inside
                .clone()
                .filter(|span| {
                    !lane.spans.iter().any(|before| {
                        before.to == span.from && matches!(before.what, LaneWhat::In { .. })
                    })
                })
                .count();
            Some(vec![
                name.clone(),
                or_dash(lane.spans.first(), |span| to_the_minute(span.from)),
                or_dash(lane.spans.last(), |span| to_the_minute(span.to)),
                times.to_string(),
                format!("{:.1}", ms as f64 / 60_000.0),
            ])
        })
        .collect();
    paper.table(&columns, &rows)
}

fn machines(paper: &Paper, review: &Review) -> Markup {
    let columns = [
        paper.t("machine", "máquina"),
        paper.t("what it did", "qué hizo"),
        paper.t("#h:min", "#h:min"),
        paper.t("#cost", "#costo"),
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

/// Who signed the day, as drawn, and what the signature covers.
fn signature(paper: &Paper, day: &Day<'_>) -> Markup {
    let Some(signed) = &day.state.record.signed else {
        return html! { p { strong { (paper.t("Not signed.", "Sin firma.")) } } };
    };
    let how = &signed.said;
    html! {
        p {
            strong { (paper.t("Signed by ", "Firmado por ")) (how.signature.name) } " " (to_the_minute(signed.at))
            (paper.t(", up to entry ", ", hasta el asiento ")) (how.head.seq) ": " span.head { (how.head.hash) }
        }
        @if how.unproven { p { (paper.t("Closed without a check behind its last readings.", "Cerrado sin comprobación después de sus últimas lecturas.")) } }
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
            h2 { (paper.t("Amended on later days", "Enmendado en días posteriores")) }
            ul { @for one in &review.amended_later {
                li {
                    (date(one.at)) " " (to_the_minute(one.at)) ", " (paper.t("entry ", "asiento ")) (one.seq) ", " (one.by) ": "
                    (paper.t(&one.english, &one.spanish))
                }
            } }
        }
    }
}

fn said(paper: &Paper, sentences: &[Sentence]) -> Markup {
    html! {
        @if sentences.is_empty() { p { (paper.t("Nothing.", "Nada.")) } }
        ul { @for one in sentences {
            li { (to_the_minute(one.at)) " " (one.by) ": " (paper.t(&one.english, &one.spanish)) }
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
        paper.t("#entry", "#asiento"),
        paper.t("sent", "enviada"),
        paper.t("by", "quién"),
        paper.t("machine", "máquina"),
        paper.t("mark", "marca"),
        paper.t("called", "se dijo"),
        paper.t("#s to the screen", "#s a la pantalla"),
        paper.t("#s to GOT IT", "#s a ENTENDIDO"),
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
                paper.t(&call.english, &call.spanish).to_owned(),
                since(call.shown_at, call.sent_at),
                since(call.got_at, call.sent_at),
            ]
        })
        .collect();
    html! {
        @if let (Some(middle), Some(longest)) = (seconds.get(seconds.len() / 2), seconds.last()) {
            p {
                (paper.t("From sent to GOT IT: middle ", "De enviada a ENTENDIDO: mediana "))
                (format!("{middle:.1}")) (paper.t(" s, longest ", " s, la más larga ")) (format!("{longest:.1}")) " s."
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
