//! A run drawn along its stations: the ground to dig to in its steps, what is allowed, what was got and how sure.

use day::review::hand_over::HandOver;
use maud::{Markup, html};

use super::paper::{Paper, feet};

const WIDE: f64 = 720.0;
const TALL: f64 = 230.0;
const LEFT: f64 = 62.0;
const BELOW: f64 = 34.0;

/// A stretch of one elevation, in feet.
struct Stretch {
    from: f64,
    to: f64,
    at: f64,
}

/// The picture; nothing for a shape without level stretches or a run that nobody has read.
pub(super) fn profile(paper: &Paper, run: &HandOver) -> Markup {
    let shots: Vec<(f64, f64, f64, &str)> = run
        .stations
        .iter()
        .filter_map(|one| {
            let got = one.got.as_ref()?;
            let guard = got.guard.map_or(0.0, earthwork::length::Length::feet);
            Some((
                one.station?.feet(),
                got.elevation.feet(),
                guard,
                one.mark.as_str(),
            ))
        })
        .collect();
    let stretches = stretches(run);
    if shots.is_empty() || stretches.is_empty() {
        return html! {};
    }
    let (high, low) = (run.tolerance.high.feet(), run.tolerance.low.feet());
    let heights = stretches.iter().map(|one| one.at);
    let heights: Vec<f64> = heights
        .chain(shots.iter().map(|(_, at, _, _)| *at))
        .collect();
    let top = heights.iter().copied().fold(f64::MIN, f64::max) + high + 0.3;
    let bottom = heights.iter().copied().fold(f64::MAX, f64::min) - low - 0.2;
    let (first, last) = (stretches[0].from, stretches[stretches.len() - 1].to);
    let x = |station: f64| LEFT + (station - first) / (last - first) * (WIDE - LEFT - 12.0);
    let y = |at: f64| 6.0 + (top - at) / (top - bottom) * (TALL - BELOW - 6.0);
    html! {
        svg viewBox=(format!("0 0 {WIDE} {TALL}")) role="img" aria-label=(format!("{} {}", paper.t("Profile of", "Perfil de"), run.name)) {
            @for one in &stretches {
                rect x=(x(one.from)) width=(x(one.to) - x(one.from)) y=(y(one.at + high)) height=(y(one.at - low) - y(one.at + high)) fill="#eee" stroke="#000" stroke-dasharray="2 3" {}
                line x1=(x(one.from)) x2=(x(one.to)) y1=(y(one.at)) y2=(y(one.at)) stroke="#000" stroke-width="2.5" {}
                text x=(LEFT - 6.0) y=(y(one.at) + 4.0) text-anchor="end" font-size="12" { (format!("{:.2}", one.at)) }
                text x=(x(one.from)) y=(TALL - 18.0) text-anchor="middle" font-size="11" { (format!("{:.0}", one.from)) }
            }
            text x=(x(last)) y=(TALL - 18.0) text-anchor="end" font-size="11" { (format!("{last:.0}")) }
            @for (station, at, guard, mark) in &shots {
                @let (cx, up, down) = (x(*station), y(at + guard), y(at - guard));
                path d=(format!("M{cx} {up}V{down}M{} {up}h8M{} {down}h8", cx - 4.0, cx - 4.0)) stroke="#000" stroke-width="1.5" fill="none" {}
                circle cx=(cx) cy=(y(*at)) r="3.5" fill="#000" {}
                text x=(cx) y=(y(at + guard) - 6.0) text-anchor="middle" font-size="11" { (mark) }
            }
            text x=(LEFT) y=(TALL - 3.0) font-size="11" {
                (paper.t("Stations in feet. Band: what is allowed. Whisker: how sure. Allowed ", "Estaciones en pies. Franja: lo permitido. Bigote: la duda. Permitido "))
                "+" (feet(run.tolerance.high)) " −" (feet(run.tolerance.low))
            }
        }
    }
}

/// The level stretches from step to step; of a run without steps, one at its first mark's elevation.
fn stretches(run: &HandOver) -> Vec<Stretch> {
    let Some((from, to)) = run.from_to else {
        return vec![];
    };
    let mut found: Vec<Stretch> = Vec::new();
    let mut at = from;
    for step in &run.steps {
        found.push(Stretch {
            from: at.feet(),
            to: step.station.feet(),
            at: step.before.feet(),
        });
        at = step.station;
    }
    let last = match run.steps.last() {
        Some(step) => Some(step.after),
        None if run.level => run.stations.iter().find_map(|one| one.dig_to),
        None => None,
    };
    found.extend(last.map(|last| Stretch {
        from: at.feet(),
        to: to.feet(),
        at: last.feet(),
    }));
    found
}
