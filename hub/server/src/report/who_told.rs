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
        paper.t("Who told", "¿Quién mandó a"),
        asked.machine,
        paper.t("to dig near", "excavar cerca de"),
        feet(asked.near.x),
        feet(asked.near.y),
        paper.t("between", "entre"),
        moment(told, asked.from),
        paper.t("and", "y"),
        moment(told, asked.to)
    );
    let several = told.days.len() > 1;
    let body = html! {
        @if told.days.is_empty() {
            p.answer { (paper.t("The log has no day in this time.", "El registro no tiene ningún día en este tiempo.")) }
        }
        @for page in &told.days {
            section.sheet {
                @if several { h2 { (page.day) } }
                (one(paper, page))
            }
        }
    };
    paper.sheet(&question, &body)
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
        p.answer { (paper.t(&page.english, &page.spanish)) }
        p {
            (paper.t("From ", "De ")) (in_full(asked.from)) (paper.t(" to ", " a ")) (in_full(asked.to))
            (paper.t("; what lies within ", "; lo que queda a menos de ")) (feet(page.within))
            (paper.t(" ft of the place.", " ft del lugar."))
        }
        h3 { (paper.t("What the log does not say", "Lo que el registro no dice")) }
        (gaps(paper, &page.gaps))
        h3 { (paper.t("Calls", "Órdenes")) }
        (calls(paper, page))
        h3 { (paper.t("Readings there", "Lecturas ahí")) }
        (sentences(paper, &page.readings))
        h3 { (paper.t("Lasers behind these calls", "Láseres detrás de estas órdenes")) }
        (lasers(paper, page))
        h3 { (paper.t("Lines that nobody may cross", "Líneas que nadie cruza")) }
        (lines(paper, page))
        h3 { (paper.t("Targets and marks", "Rasantes y marcas")) }
        (targets(paper, page))
        h3 { (paper.t("Notes, photos, queries, amendments", "Notas, fotos, consultas, enmiendas")) }
        (sentences(paper, &page.papers))
        (figures(paper, &page.photos))
        h3 { (paper.t("Pressed and said for this machine", "Apretado y dicho para esta máquina")) }
        (sentences(paper, &page.presses))
    }
}

fn gaps(paper: &Paper, gaps: &[Gap]) -> Markup {
    html! {
        @if gaps.is_empty() {
            p { (paper.t("No gap was found by the rules of this page.", "Las reglas de esta hoja no hallaron huecos.")) }
        } @else {
            ul { @for gap in gaps {
                li {
                    @if let (Some(from), Some(to)) = (gap.from, gap.to) {
                        (to_the_minute(from)) "–" (to_the_minute(to)) ": "
                    }
                    (paper.t(&gap.english, &gap.spanish))
                }
            } }
        }
    }
}

fn calls(paper: &Paper, page: &ToldPage) -> Markup {
    let columns = [
        paper.t("#entry", "#asiento"),
        paper.t("sent", "enviada"),
        paper.t("by", "quién"),
        paper.t("mark", "marca"),
        paper.t("called", "se dijo"),
        paper.t("on the screen, as painted", "en la pantalla, tal cual"),
        paper.t("painted", "mostrada"),
        paper.t("GOT IT", "ENTENDIDO"),
        paper.t("laser", "láser"),
        paper.t("target", "rasante"),
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
                paper.t(&call.english, &call.spanish).to_owned(),
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
        @if page.lasers.is_empty() { p { (paper.t("None.", "Ninguno.")) } }
        @for proof in &page.lasers {
            h3 { (paper.set_up(&proof.set_up)) ", " (proof.laser) ", " (proof.benchmark) }
            ul {
                @for (name, check) in [
                    (paper.t("Good before the first call", "Bien antes de la primera"), &proof.before),
                    (paper.t("Next check after the last call", "Comprobación siguiente a la última"), &proof.after),
                ] {
                    li {
                        (name) ": "
                        @match check {
                            Some(check) => { (to_the_minute(check.at)) " " (check.benchmark) " " (signed(check.residual)) " ft, " (check.by) }
                            None => { (paper.t("none", "ninguna")) }
                        }
                    }
                }
                @for doubt in &proof.doubts {
                    li {
                        (doubt.mark) " " (or_dash(doubt.dev, signed)) " ft; "
                        (paper.t("if the laser had moved before: ", "si el láser se hubiera movido antes: "))
                        (or_dash(doubt.dev_if_moved, signed)) " ft: "
                        @if doubt.standing.is_owed() { (paper.t("it was to be shot again", "había que leer otra vez")) }
                        @else { (paper.t("the verdict is the same either way", "el veredicto es igual de ambos modos")) }
                    }
                }
            }
        }
    }
}

fn lines(paper: &Paper, page: &ToldPage) -> Markup {
    html! {
        @if page.lines.is_empty() { p { (paper.t("None within 15 ft.", "Ninguna a menos de 15 ft.")) } }
        ul {
            @for line in &page.lines {
                li { (line.line) ": " (paper.t("the place that was asked about lies ", "el lugar preguntado queda ")) (signed(line.inside)) " ft " (paper.t("from it (minus is over it)", "de ella (menos es pasado)")) }
            }
            @for edge in &page.edges {
                li { (to_the_minute(edge.said.at)) " " (edge.said.by) ": " (paper.t(&edge.said.english, &edge.said.spanish)) }
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
                    @if let Some(by) = &target.typed_by { "; " (paper.t("typed by ", "tecleado por ")) (by) }
                    @if let Some(by) = &target.proved_by { "; " (paper.t("typed a second time by ", "tecleado otra vez por ")) (by) }
                    @for change in &target.changes { "; " (to_the_minute(change.at)) " " (paper.t(&change.english, &change.spanish)) }
                }
            }
            @for mark in &page.marks {
                li {
                    (mark.mark) ", " (feet(mark.away)) " ft"
                    @if let Some(dig_to) = mark.dig_to { "; " (paper.t("dig to ", "cavar a ")) (feet(dig_to)) " ft" }
                    @if let Some(paint) = &mark.paint {
                        "; " (paper.t("laid ", "puesta ")) (paint.generation) "×, " (paper.t("last by ", "la última por ")) (paint.by) " " (to_the_minute(paint.at))
                        @if paint.state == PaintState::Checked { ", " (paper.t("checked", "comprobada")) }
                        @if let Some(doubt) = paint.doubt { " ±" (feet(doubt)) " ft" }
                    }
                    @for laid in &mark.laid { "; " (to_the_minute(laid.at)) " " (laid.by) ": " (paper.t(&laid.english, &laid.spanish)) }
                }
            }
        }
    }
}

fn sentences(paper: &Paper, said: &[Sentence]) -> Markup {
    let columns = [
        paper.t("#entry", "#asiento"),
        paper.t("at", "hora"),
        paper.t("by", "quién"),
        paper.t("what", "qué"),
    ];
    let rows: Vec<Vec<String>> = said
        .iter()
        .map(|one| {
            vec![
                one.seq.to_string(),
                to_the_second(one.at),
                one.by.clone(),
                paper.t(&one.english, &one.spanish).to_owned(),
            ]
        })
        .collect();
    paper.table(&columns, &rows)
}
