//! Does the plan make sense: what is odd about a site that is not wrong. Told, never put right.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::site_frame::{FitFinding, fit_to_pins};
use earthwork::target::{DigTo, KeptNet, Shape};
use serde::{Deserialize, Serialize};
use words::Text;

use crate::site::{Site, Target};

mod layers;
mod lines;

/// Something odd about the plan, in every language.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Odd {
    /// Where, by kind and name: `targets.EAST`.
    pub path: String,
    /// What is odd.
    #[serde(flatten)]
    pub text: Text,
}

/// Ends that meet differ by no more than this: 0.02 ft (field practice).
const ENDS_AGREE: Length = Length::from_hundredths_of_a_foot(2);
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
        found.layers(target);
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

impl Found {
    fn odd(&mut self, path: String, text: impl Into<Text>) {
        self.0.push(Odd {
            path,
            text: text.into(),
        });
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
                words::plan_sense::point_east_north_elevation_stands(
                    &point.at.x,
                    &point.at.y,
                    &point.elevation,
                ),
            );
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
                    words::plan_sense::ft_off_line_from(
                        &here,
                        &format!("{:.2}", off.abs()),
                        &before,
                        &after,
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
                    words::plan_sense::dig_lies_above_existing_ground(&mark.id, &by),
                );
            }
        }
    }

    /// Found pins fit the plan.
    fn frame(&mut self, site: &Site) {
        let Some(frame) = &site.frame else { return };
        let fit = frame.pairs().and_then(|pairs| fit_to_pins(&pairs));
        let Ok(fit) = fit else {
            self.odd("frame".into(), words::plan_sense::no_two_found_pins_stand());
            return;
        };
        for finding in &fit.findings {
            let text = match finding {
                FitFinding::ScaleOff => {
                    words::plan_sense::between_pins_site_measures_plan(&format!("{:.5}", fit.scale))
                }
                FitFinding::PlanInMetres => words::plan_sense::pins_fit_if_plan_were().into(),
                FitFinding::SiteInMetres => words::plan_sense::pins_fit_if_site_had().into(),
                FitFinding::PinOff { number, by } => {
                    let pin = frame.pins.get(*number).map_or("?", |pin| pin.id.as_str());
                    words::plan_sense::pin_stands_off_where_others(&pin, &by)
                }
            };
            self.odd("frame".into(), text);
        }
        let turned = fit.turn().abs();
        if turned > 0.1 {
            self.odd(
                "frame".into(),
                words::plan_sense::pins_lie_turned_by_frame(&format!("{turned:.2}")),
            );
        }
    }
}

#[cfg(test)]
mod tests;
