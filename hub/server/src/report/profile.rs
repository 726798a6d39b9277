//! A run drawn along its stations, level, stepped or on a grade: what to dig to, what is allowed, what was got and how sure.

use earthwork::length::{Length, shown_number};
use maud::{Markup, html};
use show::review::hand_over::HandOver;

use super::paper::{Paper, feet};

const WIDE: f64 = 720.0;
const TALL: f64 = 210.0;
const LEFT: f64 = 62.0;
const RIGHT: f64 = 16.0;
const BELOW: f64 = 34.0;
/// A row of names over the picture.
const ROW: f64 = 14.0;
/// The width of a letter of a name, with some air.
const LETTER: f64 = 7.0;

/// A reading along the run, in feet.
struct Shot<'a> {
    station: f64,
    at: f64,
    guard: f64,
    mark: &'a str,
    /// It still speaks for its mark; else its dot is hollow.
    stands: bool,
}

/// The picture; nothing for a shape without stations or a run that nobody has read.
pub(super) fn profile(paper: &Paper, run: &HandOver) -> Markup {
    let shots: Vec<Shot> = run
        .stations
        .iter()
        .filter_map(|one| {
            let got = one.got.as_ref()?;
            Some(Shot {
                station: one.station?.feet(),
                at: got.elevation.feet(),
                guard: got.guard.map_or(0.0, Length::feet),
                mark: one.mark.as_str(),
                stands: got.stands(),
            })
        })
        .collect();
    let line: Vec<(f64, f64)> = run
        .profile
        .iter()
        .map(|point| (point.station.feet(), point.dig_to.feet()))
        .collect();
    let (Some((first, _)), Some((last, _)), false) = (line.first(), line.last(), shots.is_empty())
    else {
        return html! {};
    };
    let (high, low) = (run.tolerance.high.feet(), run.tolerance.low.feet());
    let heights = line.iter().map(|(_, at)| *at);
    let heights: Vec<f64> = heights.chain(shots.iter().map(|shot| shot.at)).collect();
    let top = heights.iter().copied().fold(f64::MIN, f64::max) + high + 0.1;
    let bottom = heights.iter().copied().fold(f64::MAX, f64::min) - low - 0.2;
    let long = (last - first).max(f64::EPSILON);
    let x = |station: f64| LEFT + (station - first) / long * (WIDE - LEFT - RIGHT);
    let names: Vec<(f64, &str)> = shots.iter().map(|one| (x(one.station), one.mark)).collect();
    let rows = rows(&names);
    let over = ROW * (rows.iter().max().map_or(0, |row| row + 1) as f64) + 6.0;
    let tall = TALL + over;
    let y = |at: f64| over + (top - at) / (top - bottom) * (tall - BELOW - over);
    let path = |shift: f64, backwards: bool| -> String {
        let mut points: Vec<String> = line
            .iter()
            .map(|(station, at)| format!("{:.1} {:.1}", x(*station), y(at + shift)))
            .collect();
        if backwards {
            points.reverse();
        }
        points.join("L")
    };
    let band = format!("M{}L{}Z", path(high, false), path(-low, true));
    html! {
        svg viewBox=(format!("0 0 {WIDE} {tall}")) role="img" aria-label=(format!("{} {}", paper.t(words::sheet::profile_of()), run.name)) {
            path d=(band) fill="#eee" stroke="#000" stroke-dasharray="2 3" {}
            path d=(format!("M{}", path(0.0, false))) fill="none" stroke="#000" stroke-width="2.5" {}
            @for at in apart(line.iter().map(|(_, at)| *at), y, 13.0) {
                text x=(LEFT - 6.0) y=(y(at) + 4.0) text-anchor="end" font-size="12" { (shown_number(at, 2)) }
            }
            @for at in apart(stations(&line), x, 34.0) {
                line x1=(x(at)) x2=(x(at)) y1=(tall - BELOW) y2=(tall - BELOW + 4.0) stroke="#000" {}
                text x=(x(at)) y=(tall - 19.0) text-anchor="middle" font-size="11" { (shown_number(at, 0)) }
            }
            @for (shot, row) in shots.iter().zip(&rows) {
                @let (cx, up, down) = (x(shot.station), y(shot.at + shot.guard), y(shot.at - shot.guard));
                @let name = ROW * (*row as f64 + 1.0) - 2.0;
                line x1=(cx) x2=(cx) y1=(name + 3.0) y2=(up) stroke="#000" stroke-width="0.5" {}
                path d=(format!("M{cx:.1} {up:.1}V{down:.1}M{:.1} {up:.1}h8M{:.1} {down:.1}h8", cx - 4.0, cx - 4.0)) stroke="#000" stroke-width="1.5" fill="none" {}
                circle cx=(cx) cy=(y(shot.at)) r="3.5" fill=(if shot.stands { "#000" } else { "#fff" }) stroke="#000" {}
                text x=(cx) y=(name) text-anchor="middle" font-size="11" { (shot.mark) @if !shot.stands { "?" } }
            }
            text x=(LEFT) y=(tall - 4.0) font-size="11" {
                (paper.t(words::sheet::stations_in_feet()))
                "+" (feet(run.tolerance.high)) " −" (feet(run.tolerance.low))
            }
        }
    }
}

/// The row of each name, the first from the top that has room for it: no name lies on another.
fn rows(names: &[(f64, &str)]) -> Vec<usize> {
    let mut ends: Vec<f64> = Vec::new();
    names
        .iter()
        .map(|(at, name)| {
            let half = name.chars().count() as f64 * LETTER / 2.0;
            let free = ends.iter().position(|end| at - half >= *end);
            let row = free.unwrap_or_else(|| {
                ends.push(f64::MIN);
                ends.len() - 1
            });
            ends[row] = at + half;
            row
        })
        .collect()
}

/// The stations that are written: both ends and where it bends or steps, then every tenth part.
fn stations(line: &[(f64, f64)]) -> impl Iterator<Item = f64> {
    let (first, last) = (line[0].0, line[line.len() - 1].0);
    let between = line[1..line.len() - 1].iter().map(|(station, _)| *station);
    let tenths = (1..10).map(move |part| first + (last - first) * f64::from(part) / 10.0);
    let own: Vec<f64> = between.collect();
    [first, last].into_iter().chain(own).chain(tenths)
}

/// Those values that are written this far apart from all before them.
fn apart(values: impl Iterator<Item = f64>, at: impl Fn(f64) -> f64, least: f64) -> Vec<f64> {
    let mut kept: Vec<f64> = Vec::new();
    for value in values {
        if kept.iter().all(|one| (at(*one) - at(value)).abs() >= least) {
            kept.push(value);
        }
    }
    kept
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 3 letters are 21 wide: names 10 apart take three rows, the fourth finds room in the first again.
    #[test]
    fn no_name_lies_on_another() {
        let names = [
            (100.0, "E-1"),
            (110.0, "E-2"),
            (120.0, "E-3"),
            (130.0, "E-4"),
        ];
        assert_eq!(rows(&names), [0, 1, 2, 0]);
        assert_eq!(rows(&[(0.0, "A"), (100.0, "B")]), [0, 0]);
    }

    #[test]
    fn what_is_written_stands_apart() {
        let line = [(0.0, 300.0), (20.0, 300.0), (20.0, 299.0), (40.0, 298.0)];
        let written = apart(stations(&line), |station| station * 10.0, 34.0);
        assert_eq!(
            written,
            [
                0.0, 40.0, 20.0, 4.0, 8.0, 12.0, 16.0, 24.0, 28.0, 32.0, 36.0
            ]
        );
    }
}
