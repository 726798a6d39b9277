//! Do the pins found on the ground fit the plan: the turn and shift that fit best, without stretching.
//!
//! On pairs from their middles, the turn is atan2(Σ(dx·dv − dy·du), Σ(dx·du + dy·dv)): least squares of a rigid
//! motion in the plane.

use super::FrameError;
use crate::length::Length;
use crate::point::Point;
use crate::vector::Vector;

/// A pin by the plan and as measured on the site.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pin {
    /// By the plan, its origin taken off.
    pub plan: Point,
    /// As measured.
    pub site: Point,
}

/// A residual above this names its pin: 0.05 ft (common practice).
const RESIDUAL: Length = Length::from_hundredths_of_a_foot(5);
/// A scale may be off by one in this (common practice).
const SCALE: f64 = 5000.0;
/// Feet in a metre.
const FEET_IN_A_METRE: f64 = 1.0 / 0.3048;

/// What a person is to look at; nothing is put right by itself.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FitFinding {
    /// The site measures more or less than the plan by more than one in 5000.
    ScaleOff,
    /// The site's numbers are about 3.2808 times the plan's: the plan is likely in metres.
    PlanInMetres,
    /// The site's numbers are about 0.3048 of the plan's: the site was likely measured in metres.
    SiteInMetres,
    /// This pin stands off by more than 0.05 ft.
    PinOff {
        /// Its place in the list, from 0.
        number: usize,
        /// How far.
        by: Length,
    },
}

/// How the plan lies on the site.
#[derive(Clone, Debug, PartialEq)]
pub struct Fit {
    middle: (Point, Point),
    turn: f64,
    /// Sizes on the site over sizes on the plan.
    pub scale: f64,
    /// How far each pin stands from where the fit puts it.
    pub residuals: Vec<Length>,
    /// What to look at before trusting the fit.
    pub findings: Vec<FitFinding>,
}

impl Fit {
    /// How far the plan is turned left, in degrees.
    pub fn turn(&self) -> f64 {
        self.turn.to_degrees()
    }

    /// Where a plan's place lies on the site.
    pub fn to_site(&self, plan: Point) -> Point {
        Vector::between(self.middle.0, plan)
            .turned_left(self.turn)
            .applied_to(self.middle.1)
    }
}

/// Fits the plan to found pins, without stretching it.
///
/// # Errors
/// When fewer than two pins stand apart.
pub fn fit_to_pins(pins: &[Pin]) -> Result<Fit, FrameError> {
    let too_few = FrameError::TooFewPins { pins: pins.len() };
    let (Some(plan), Some(site)) = (
        middle(pins.iter().map(|pin| pin.plan)),
        middle(pins.iter().map(|pin| pin.site)),
    ) else {
        return Err(too_few);
    };
    let (mut along, mut across, mut on_plan, mut on_site) = (0.0, 0.0, 0.0, 0.0);
    for pin in pins {
        let (from, to) = (
            Vector::between(plan, pin.plan),
            Vector::between(site, pin.site),
        );
        along += from.dot(to);
        across += from.dot(to.to_the_right());
        on_plan += from.size();
        on_site += to.size();
    }
    if on_plan <= 0.0 || on_site <= 0.0 {
        return Err(too_few);
    }
    let mut fit = Fit {
        middle: (plan, site),
        turn: across.atan2(along),
        scale: on_site / on_plan,
        residuals: Vec::new(),
        findings: Vec::new(),
    };
    fit.residuals = pins
        .iter()
        .map(|pin| fit.to_site(pin.plan).distance(pin.site))
        .collect();
    fit.findings = findings(&fit);
    Ok(fit)
}

fn findings(fit: &Fit) -> Vec<FitFinding> {
    let about = |scale: f64| (fit.scale / scale - 1.0).abs() < 0.01;
    if about(FEET_IN_A_METRE) {
        return vec![FitFinding::PlanInMetres];
    }
    if about(1.0 / FEET_IN_A_METRE) {
        return vec![FitFinding::SiteInMetres];
    }
    let mut found = Vec::new();
    if (fit.scale - 1.0).abs() > 1.0 / SCALE {
        found.push(FitFinding::ScaleOff);
    }
    let off = fit.residuals.iter().copied().enumerate();
    found.extend(
        off.filter(|(_, by)| *by > RESIDUAL)
            .map(|(number, by)| FitFinding::PinOff { number, by }),
    );
    found
}

/// The middle of places, from the first, so that big numbers lose nothing.
fn middle(places: impl Iterator<Item = Point> + Clone) -> Option<Point> {
    let first = places.clone().next()?;
    let (mut sum, mut many) = (Vector::between(first, first), 0.0);
    for place in places {
        sum = sum.plus(Vector::between(first, place));
        many += 1.0;
    }
    Some(sum.times(1.0 / many).applied_to(first))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(x: i64, y: i64) -> Point {
        let ft = Length::from_hundredths_of_a_foot;
        Point { x: ft(x), y: ft(y) }
    }

    /// Derived from plane geometry: a lot of 100 by 60 ft, turned a quarter left and shifted.
    fn pins() -> Vec<Pin> {
        [(0, 0), (10_000, 0), (10_000, 6000), (0, 6000)]
            .into_iter()
            .map(|(x, y)| Pin {
                plan: at(x, y),
                site: at(500 - y, 700 + x),
            })
            .collect()
    }

    #[test]
    fn a_turned_plan_fits_without_stretching() {
        let fit = fit_to_pins(&pins()).unwrap();
        assert!((fit.turn() - 90.0).abs() < 1e-9 && (fit.scale - 1.0).abs() < 1e-12);
        assert_eq!(fit.to_site(at(5000, 1000)), at(-500, 5700));
        assert!(fit.findings.is_empty());
    }

    #[test]
    fn a_pin_that_was_moved_is_named() {
        let mut moved = pins();
        moved[2].site = at(-5500 + 20, 10_700);
        let fit = fit_to_pins(&moved).unwrap();
        let named: Vec<usize> = fit
            .findings
            .iter()
            .filter_map(|one| match one {
                FitFinding::PinOff { number, .. } => Some(*number),
                _ => None,
            })
            .collect();
        assert!(named.contains(&2), "{:?}", fit.findings);
        let most = fit.residuals.iter().max();
        assert_eq!(fit.residuals.get(2), most);
    }

    #[test]
    fn metres_are_suspected_and_never_put_right() {
        let metres = pins().into_iter().map(|mut pin| {
            pin.plan.x =
                Length::from_tenth_micrometres(pin.plan.x.tenth_micrometres() * 381 / 1250);
            pin.plan.y =
                Length::from_tenth_micrometres(pin.plan.y.tenth_micrometres() * 381 / 1250);
            pin
        });
        let fit = fit_to_pins(&metres.collect::<Vec<_>>()).unwrap();
        assert_eq!(fit.findings, [FitFinding::PlanInMetres]);
        assert!((fit.scale - FEET_IN_A_METRE).abs() < 1e-6);
        let one = &pins()[..1];
        assert_eq!(fit_to_pins(one), Err(FrameError::TooFewPins { pins: 1 }));
    }
}
