//! Does the plan make sense: what is odd about a site that is not wrong. Told, never put right.

use earthwork::alignment::{StationOffset, show_station};
use earthwork::layout::step_window::{Forms, step_window};
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::site_frame::{FitFinding, fit_to_pins};
use earthwork::target::{DigTo, KeptNet, Shape};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::site::{FormsAtHand, Site, Target};

/// Something odd about the plan, in both languages.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Odd {
    /// Where, by kind and name: `targets.EAST`.
    pub path: String,
    /// What is odd.
    pub english: String,
    /// The same in Spanish.
    pub spanish: String,
}

/// A step may miss a whole number of forms by this: 0.01 ft (common practice).
const STEP_OFF: Length = Length::from_hundredths_of_a_foot(1);
/// Ends nearer than this are meant to meet: 1 ft (common practice).
const ENDS_NEAR: Length = Length::from_hundredths_of_a_foot(100);
/// Ends that meet differ by no more than this: 0.02 ft (field practice).
const ENDS_AGREE: Length = Length::from_hundredths_of_a_foot(2);
/// Between a pipe and what crosses it: 1 ft when nobody says more (common practice).
const CLEARANCE: Length = Length::from_hundredths_of_a_foot(100);
/// A crossing is looked for at so many places along a trench at the most.
const MOST_PLACES: i64 = 2_000;
/// Larger nets are not searched for spikes.
const MOST_TRIANGLES: usize = 200_000;

/// Everything odd about a site's plan.
pub fn odd(site: &Site) -> Vec<Odd> {
    let mut found = Found(Vec::new());
    found.frame(site);
    for target in &site.targets {
        // What is wrong is told elsewhere, and is not worked to here.
        if !target.grade.check().is_empty() {
            continue;
        }
        if let Some(forms) = &site.rules.forms {
            found.steps(target, forms);
        }
        found.reach(target);
        found.spikes(target);
    }
    for (i, one) in site.targets.iter().enumerate() {
        for other in &site.targets[i + 1..] {
            found.ends(one, other);
            found.crossing(one, other);
        }
    }
    found.neighbours(site);
    found.fill(site);
    found.0
}

struct Found(Vec<Odd>);

fn one_elevation(target: &Target, at: Point) -> Option<Length> {
    match target.grade.dig_to(at) {
        Ok(DigTo::At(elevation)) => Some(elevation),
        Ok(DigTo::NearStep { .. }) | Err(_) => None,
    }
}

/// The steps of a target: station, window, and how much it goes up.
fn steps(target: &Target) -> Vec<(Length, Length, Length)> {
    match &target.grade.shape {
        Shape::Run(run) => run
            .steps
            .windows(2)
            .map(|pair| {
                let by = pair[1].elevation - pair[0].elevation;
                (pair[1].from, pair[1].window, by)
            })
            .filter(|(_, _, by)| *by != Length::ZERO)
            .collect(),
        Shape::Along(along) => along
            .drawn()
            .steps
            .iter()
            .map(|step| (step.station, step.window, step.by))
            .collect(),
        _ => Vec::new(),
    }
}

impl Found {
    fn odd(&mut self, path: String, english: String, spanish: String) {
        self.0.push(Odd {
            path,
            english,
            spanish,
        });
    }

    /// Step heights are whole forms; step stations are what widths and filler can make.
    fn steps(&mut self, target: &Target, forms: &FormsAtHand) {
        let height = forms.height.tenth_micrometres().max(1);
        let first = target
            .grade
            .stations()
            .map_or(Length::ZERO, |(first, _)| first);
        let widths: Vec<Forms> = forms
            .widths
            .iter()
            .map(|width| Forms {
                width: *width,
                at_hand: None,
            })
            .collect();
        for (station, window, by) in steps(target) {
            let path = format!("targets.{}", target.id);
            let over = by.tenth_micrometres().rem_euclid(height);
            let off = Length::from_tenth_micrometres(over.min(height - over));
            let at = show_station(station);
            if off > STEP_OFF {
                self.odd(
                    path.clone(),
                    format!(
                        "The step at {at} is {} high: not a whole number of forms of {}.",
                        by.abs(),
                        forms.height
                    ),
                    format!(
                        "El escalón en {at} mide {}: no es un número entero de cimbras de {}.",
                        by.abs(),
                        forms.height
                    ),
                );
            }
            if widths.is_empty() {
                continue;
            }
            if let Err(error) = step_window(&widths, forms.filler, station - first, window) {
                self.odd(
                    path,
                    format!("The step at {at}: {error}"),
                    format!("El escalón en {at}: {}", error.spanish()),
                );
            }
        }
    }

    /// A trench falls enough; a profile reaches as far as its line.
    fn reach(&mut self, target: &Target) {
        let path = format!("targets.{}", target.id);
        let profile = match &target.grade.shape {
            Shape::Trench(trench) => {
                let drawn = trench.drawn();
                for pair in drawn.inverts.windows(2) {
                    let run = (pair[1].station - pair[0].station).feet();
                    let fall = (pair[1].elevation - pair[0].elevation).abs().feet() / run;
                    if fall < drawn.least_fall {
                        let (from, to) =
                            (show_station(pair[0].station), show_station(pair[1].station));
                        let (fall, least) = (fall * 100.0, drawn.least_fall * 100.0);
                        self.odd(
                            path.clone(),
                            format!("From {from} to {to} the pipe falls {fall:.2} %, less than {least:.2} %."),
                            format!("De {from} a {to} el tubo baja {fall:.2} %, menos de {least:.2} %."),
                        );
                    }
                }
                let ends = drawn.inverts.first().zip(drawn.inverts.last());
                ends.map(|(first, last)| (first.station, last.station))
            }
            Shape::Along(along) => {
                let corners = &along.drawn().corners;
                let ends = corners.first().zip(corners.last());
                ends.map(|(first, last)| (first.station, last.station))
            }
            _ => None,
        };
        let (Some(profile), Some(line)) = (profile, target.grade.stations()) else {
            return;
        };
        let apart = (profile.0 - line.0).abs().max((profile.1 - line.1).abs());
        if apart > ENDS_AGREE {
            let show = |ends: (Length, Length)| (show_station(ends.0), show_station(ends.1));
            let ((a, b), (c, d)) = (show(profile), show(line));
            self.odd(
                path,
                format!("The profile goes from {a} to {b}, the line from {c} to {d}: what one of them leaves out has no grade."),
                format!("El perfil va de {a} a {b} y el eje de {c} a {d}: lo que uno no cubre no tiene rasante."),
            );
        }
    }

    /// A point that stands above or below all of its neighbours more steeply than one to one.
    fn spikes(&mut self, target: &Target) {
        let (Shape::Surface(net) | Shape::Strip { ground: net }) = &target.grade.shape else {
            return;
        };
        let net = net.drawn();
        if net.triangles().len() > MOST_TRIANGLES {
            return;
        }
        let points = net.points();
        // Whether each point's edges all go down, or all go up, more steeply than one to one.
        let mut spike = vec![(true, true); points.len()];
        for [a, b, c] in net.triangles() {
            for (one, other) in [(a, b), (b, c), (c, a), (b, a), (c, b), (a, c)] {
                let (from, to) = (&points[*one as usize], &points[*other as usize]);
                let rise = from.elevation - to.elevation;
                let steep = rise.abs() > from.at.distance(to.at);
                let seen = &mut spike[*one as usize];
                seen.0 &= steep && rise > Length::ZERO;
                seen.1 &= steep && rise < Length::ZERO;
            }
        }
        let named = points
            .iter()
            .zip(&spike)
            .filter(|(_, seen)| seen.0 != seen.1);
        for (point, _) in named.take(10) {
            self.odd(
                format!("targets.{}", target.id),
                format!(
                    "The point at east {}, north {}, elevation {}, stands steeper than 1 to 1 from all its neighbours. Was it mistyped?",
                    point.at.x, point.at.y, point.elevation
                ),
                format!(
                    "El punto en este {}, norte {}, cota {}, queda a más de 1 a 1 de todos sus vecinos. ¿Se escribió mal?",
                    point.at.x, point.at.y, point.elevation
                ),
            );
        }
    }

    /// Ends that come near each other meet, at one elevation.
    fn ends(&mut self, one: &Target, other: &Target) {
        for a in ends(one) {
            for b in ends(other) {
                let apart = a.distance(b);
                if apart > ENDS_NEAR {
                    continue;
                }
                let path = format!("targets.{}", other.id);
                let (one_id, other_id) = (&one.id, &other.id);
                if apart > ENDS_AGREE {
                    self.odd(
                        path.clone(),
                        format!("{one_id} and {other_id} end {apart} apart: should they meet?"),
                        format!("{one_id} y {other_id} terminan a {apart}: ¿deben encontrarse?"),
                    );
                }
                let (Some(z), Some(w)) = (one_elevation(one, a), one_elevation(other, b)) else {
                    continue;
                };
                let by = (z - w).abs();
                if by > ENDS_AGREE {
                    self.odd(
                        path,
                        format!("Where {one_id} and {other_id} meet, their dig-tos are {by} apart. Is a step meant there?"),
                        format!("Donde se encuentran {one_id} y {other_id}, sus rasantes difieren {by}. ¿Hay ahí un escalón?"),
                    );
                }
            }
        }
    }

    /// What crosses a pipe keeps clear of it.
    fn crossing(&mut self, one: &Target, other: &Target) {
        let (trench, crossed) = match (&one.grade.shape, &other.grade.shape) {
            (Shape::Trench(_), _) => (one, other),
            (_, Shape::Trench(_)) => (other, one),
            _ => return,
        };
        let (Some((first, last)), Some(_)) = (trench.grade.stations(), crossed.grade.stations())
        else {
            return;
        };
        let pipe = |target: &Target| match &target.grade.shape {
            Shape::Trench(trench) => trench.drawn().outside_diameter,
            _ => Length::ZERO,
        };
        let foot = Length::from_hundredths_of_a_foot(100).tenth_micrometres();
        let span = (last - first).tenth_micrometres();
        let step = (span / MOST_PLACES).max(foot);
        let mut before: Option<Length> = None;
        let mut along = 0;
        while along <= span {
            let station = first + Length::from_tenth_micrometres(along);
            along += step;
            let beside = StationOffset {
                station,
                offset: Length::ZERO,
            };
            let Ok(at) = trench.grade.place(beside) else {
                continue;
            };
            let Ok(found) = crossed.grade.station_offset(at) else {
                before = None;
                continue;
            };
            let here = found.offset;
            let crosses = before.is_some_and(|before| {
                (before < Length::ZERO) != (here < Length::ZERO)
                    && (before - here).abs().tenth_micrometres() <= 2 * step
            });
            before = Some(here);
            let onto = StationOffset {
                offset: Length::ZERO,
                ..found
            };
            let Some(there) = crossed.grade.place(onto).ok().filter(|_| crosses) else {
                continue;
            };
            let (Some(z), Some(w)) = (one_elevation(trench, at), one_elevation(crossed, there))
            else {
                continue;
            };
            let lower = if z < w { trench } else { crossed };
            let clear = (z - w).abs() - pipe(lower);
            if clear < CLEARANCE {
                let (a, b, at) = (&trench.id, &crossed.id, show_station(station));
                self.odd(
                    format!("targets.{a}"),
                    format!("At {at}, {a} and {b} cross with {clear} between them; {CLEARANCE} is usual."),
                    format!("En {at}, {a} y {b} se cruzan con {clear} entre ellos; lo usual es {CLEARANCE}."),
                );
            }
        }
    }

    /// A mark between two others of flat targets stands on the line between them.
    fn neighbours(&mut self, site: &Site) {
        let flat = |name: &Option<String>| {
            let target = name.as_deref().and_then(|id| site.target(id));
            target.filter(|target| matches!(target.grade.shape, Shape::Flat { .. }))
        };
        for three in site.marks.windows(3) {
            let [one, mid, two] = three else { continue };
            let (Some(first), Some(own), Some(last)) =
                (flat(&one.target), flat(&mid.target), flat(&two.target))
            else {
                continue;
            };
            if first.id == own.id || own.id == last.id {
                continue;
            }
            let (whole, part) = (one.place.distance(two.place), one.place.distance(mid.place));
            let detour = part + mid.place.distance(two.place) - whole;
            if whole == Length::ZERO || detour > ENDS_AGREE {
                continue;
            }
            let (Some(from), Some(level), Some(to)) = (
                one_elevation(first, one.place),
                one_elevation(own, mid.place),
                one_elevation(last, two.place),
            ) else {
                continue;
            };
            let line = from.feet() + (to - from).feet() * part.feet() / whole.feet();
            let off = level.feet() - line;
            if off.abs() > ENDS_AGREE.feet() {
                let (before, here, after) = (&one.id, &mid.id, &two.id);
                self.odd(
                    format!("marks.{here}"),
                    format!(
                        "{here} is {:.2} ft off the line from {before} to {after}. Is a step meant there?",
                        off.abs()
                    ),
                    format!(
                        "{here} queda a {:.2} ft de la línea de {before} a {after}. ¿Hay ahí un escalón?",
                        off.abs()
                    ),
                );
            }
        }
    }

    /// A dig-to above the ground as it lies is fill.
    fn fill(&mut self, site: &Site) {
        let grounds: Vec<(&str, &KeptNet)> = site
            .targets
            .iter()
            .filter_map(|target| match &target.grade.shape {
                Shape::Strip { ground } => Some((target.id.as_str(), ground)),
                _ => None,
            })
            .collect();
        for mark in &site.marks {
            let Some(target) = site.target_of(mark) else {
                continue;
            };
            // A contour is looked for where the ground has it: nothing is filled there.
            if matches!(target.grade.shape, Shape::Contour { .. }) {
                continue;
            }
            let Some(dig_to) = one_elevation(target, mark.place) else {
                continue;
            };
            let above = grounds.iter().find_map(|(_, ground)| {
                let ground = ground.made().ok()?.elevation_at(mark.place).ok()?;
                (dig_to > ground).then(|| dig_to - ground)
            });
            if let Some(by) = above {
                self.odd(
                    format!("marks.{}", mark.id),
                    format!("{}: the dig-to lies {by} above existing ground. That is fill, not cut: is it meant?", mark.id),
                    format!("{}: la rasante queda {by} sobre el terreno. Eso es relleno, no corte: ¿así debe ser?", mark.id),
                );
            }
        }
    }

    /// Found pins fit the plan.
    fn frame(&mut self, site: &Site) {
        let Some(frame) = &site.frame else { return };
        let fit = frame.pairs().and_then(|pairs| fit_to_pins(&pairs));
        let Ok(fit) = fit else {
            self.odd(
                "frame".into(),
                "No two found pins stand apart: nothing shows that the frame is right.".into(),
                "No hay dos puntos hallados separados: nada prueba que el marco esté bien.".into(),
            );
            return;
        };
        for finding in &fit.findings {
            let (english, spanish) = match finding {
                FitFinding::ScaleOff => (
                    format!("Between the pins the site measures {:.5} of the plan, more than one in 5000 off.", fit.scale),
                    format!("Entre los puntos, la obra mide {:.5} del plano: más de uno en 5000 de diferencia.", fit.scale),
                ),
                FitFinding::PlanInMetres => (
                    "The pins fit if the plan were in metres. Nothing was changed.".into(),
                    "Los puntos coinciden si el plano estuviera en metros. No se cambió nada.".into(),
                ),
                FitFinding::SiteInMetres => (
                    "The pins fit if the site had been measured in metres. Nothing was changed.".into(),
                    "Los puntos coinciden si la obra se hubiera medido en metros. No se cambió nada.".into(),
                ),
                FitFinding::PinOff { number, by } => {
                    let pin = frame.pins.get(*number).map_or("?", |pin| pin.id.as_str());
                    (
                        format!("Pin {pin} stands {by} off where the others put it."),
                        format!("El punto {pin} queda a {by} de donde lo ponen los demás."),
                    )
                }
            };
            self.odd("frame".into(), english, spanish);
        }
        let turned = fit.turn().abs();
        if turned > 0.1 {
            self.odd(
                "frame".into(),
                format!("The pins lie turned by {turned:.2}° to the frame. Check `turn`."),
                format!("Los puntos quedan girados {turned:.2}° respecto al marco. Revise `turn`."),
            );
        }
    }
}

/// Both ends of a target's line.
fn ends(target: &Target) -> Vec<Point> {
    let Some((first, last)) = target.grade.stations() else {
        return Vec::new();
    };
    [first, last]
        .into_iter()
        .filter_map(|station| {
            let offset = Length::ZERO;
            target.grade.place(StationOffset { station, offset }).ok()
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::given::{at, len, site};
    use crate::site::{FoundPin, Frame};
    use earthwork::alignment::Piece;
    use earthwork::grade::{Flow, Invert};
    use earthwork::target::{Axis, PipeTrench};

    fn told(site: &Site, words: &str) -> bool {
        let found = odd(site);
        let told = found.iter().any(|one| one.english.contains(words));
        assert!(
            told || found.iter().all(|one| !one.spanish.is_empty()),
            "{found:#?}"
        );
        told
    }

    #[test]
    fn the_test_yard_has_nothing_odd_in_its_plan() {
        assert_eq!(odd(&site()), []);
    }

    #[test]
    fn a_step_is_made_of_whole_forms_that_exist() {
        let mut site = site();
        site.rules.forms = Some(FormsAtHand {
            height: len("1 ft"),
            widths: vec![len("2 ft")],
            filler: Length::ZERO,
        });
        assert_eq!(
            odd(&site),
            [],
            "the step is 1 ft high, ten forms of 2 ft along"
        );
        site.rules.forms = Some(FormsAtHand {
            height: len("0.75 ft"),
            widths: vec![len("3 ft")],
            filler: Length::ZERO,
        });
        assert!(told(&site, "The step at 0+20.00 is 1 ft high"));
        assert!(told(&site, "The step at 0+20.00: "));
    }

    fn drain(elevations: [&str; 2]) -> Shape {
        let invert = |station: &str, elevation: &str| Invert {
            station: len(station),
            elevation: len(elevation),
        };
        let trench = PipeTrench {
            axis: Axis {
                start: at("30 ft", "80 ft"),
                first: Length::ZERO,
                pieces: vec![Piece::Line {
                    to: at("30 ft", "20 ft"),
                }],
            },
            inverts: vec![
                invert("0 ft", elevations[0]),
                invert("60 ft", elevations[1]),
            ],
            flow: Flow::UpStation,
            outside_diameter: len("0.5 ft"),
            side: len("0.5 ft"),
            least_fall: 0.01,
        };
        Shape::Trench(trench.into())
    }

    #[test]
    fn a_flat_pipe_and_a_near_crossing_are_odd() {
        let mut site = site();
        let mut target = site.targets[1].clone();
        target.id = "DRAIN".into();
        target.grade.shape = drain(["90 ft", "88 ft"]);
        site.targets.push(target);
        assert_eq!(odd(&site), []);
        site.targets[2].grade.shape = drain(["90 ft", "89.9 ft"]);
        assert!(told(&site, "falls 0.17 %, less than 1.00 %"));
        site.targets[2].grade.shape = drain(["97 ft", "96 ft"]);
        assert!(told(&site, "DRAIN and RUN cross with"), "{:#?}", odd(&site));
    }

    #[test]
    fn runs_that_end_together_have_one_elevation() {
        let mut site = site();
        let mut next = site.targets[1].clone();
        next.id = "NEXT".into();
        if let Shape::Run(run) = &mut next.grade.shape {
            run.start = at("40.3 ft", "50 ft");
            run.toward = at("80 ft", "50 ft");
            run.steps.truncate(1);
        }
        site.targets.push(next);
        assert!(told(&site, "RUN and NEXT end 0.3 ft apart"));
        assert!(told(&site, "their dig-tos are 1 ft apart"));
    }

    #[test]
    fn a_pin_that_does_not_fit_is_named() {
        let mut site = site();
        let pin = |id: &str, east: &str, north: &str, x: &str, y: &str| FoundPin {
            id: id.into(),
            east: east.into(),
            north: north.into(),
            at: at(x, y),
        };
        let mut frame = Frame {
            unit: earthwork::site_frame::PlanUnit::Foot,
            east: "2000000".into(),
            north: "700000".into(),
            turn: 0.0,
            pins: vec![
                pin("SW", "2000000", "700000", "0 ft", "0 ft"),
                pin("SE", "2000100", "700000", "100 ft", "0 ft"),
                pin("NE", "2000100", "700100", "100 ft", "100 ft"),
                pin("NW", "2000000", "700100", "0 ft", "100 ft"),
            ],
        };
        site.frame = Some(frame.clone());
        assert_eq!(odd(&site), []);
        frame.pins[2].at = at("100.5 ft", "100 ft");
        site.frame = Some(frame);
        assert!(told(&site, "Pin NE stands"));
    }
}
