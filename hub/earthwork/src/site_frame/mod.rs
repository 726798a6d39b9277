//! How do the plan's big numbers come on to the site: an origin taken off first, then the unit, then the turn.
//!
//! x = (E−E₀)·cos θ + (N−N₀)·sin θ, y = −(E−E₀)·sin θ + (N−N₀)·cos θ (plane geometry). The two feet differ by
//! two parts in a million, 4 ft at 2,000,000: a difference from the origin is converted, never the big number.

use words::Text;

mod doubt;
mod pins;
mod plan;

use crate::length::Length;
use crate::point::Point;
use crate::vector::Vector;
pub use doubt::{Slip, Suspicion, other_foot, suspicions};
pub use pins::{Fit, FitFinding, Pin, fit_to_pins};
pub use plan::{PlanNumber, PlanPoint, PlanUnit};

/// Why plan coordinates can't be brought on to the site.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FrameError {
    /// Not a plain decimal number.
    NotANumber {
        /// As written.
        text: String,
    },
    /// Too far from the origin.
    TooFar,
    /// An angle that is none.
    NoAngle,
    /// Fewer than two pins, or all at one place.
    TooFewPins {
        /// As given.
        pins: usize,
    },
}

impl FrameError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::NotANumber { text } => words::site_frame::not_a_number(text),
            Self::TooFar => words::site_frame::too_far().into(),
            Self::NoAngle => words::site_frame::no_angle().into(),
            Self::TooFewPins { pins } => words::site_frame::too_few_pins(pins),
        }
    }
}

words::error!(FrameError);

/// The plan's frame as the site sees it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SiteFrame {
    unit: PlanUnit,
    origin: PlanPoint,
    turn: f64,
}

impl SiteFrame {
    /// A frame: the plan's unit, the plan's coordinates of the site's corner, and how far the site's x axis is turned
    /// left of the plan's east, in degrees.
    ///
    /// # Errors
    /// When the turn is no angle, from −360 to 360 degrees.
    pub fn new(unit: PlanUnit, origin: PlanPoint, turn: f64) -> Result<SiteFrame, FrameError> {
        if !(-360.0..=360.0).contains(&turn) {
            return Err(FrameError::NoAngle);
        }
        Ok(SiteFrame {
            unit,
            origin,
            turn: turn.to_radians(),
        })
    }

    /// What the plan counts in.
    pub fn unit(&self) -> PlanUnit {
        self.unit
    }

    /// A plan's place on the site.
    ///
    /// # Errors
    /// When it lies too far from the origin.
    pub fn to_site(&self, at: PlanPoint) -> Result<Point, FrameError> {
        let from_origin = Point {
            x: self.unit.length(self.origin.east, at.east)?,
            y: self.unit.length(self.origin.north, at.north)?,
        };
        Ok(turned(from_origin, -self.turn))
    }

    /// A place of the site on the plan, to the plan's seventh decimal.
    pub fn to_plan(&self, at: Point) -> PlanPoint {
        let from_origin = turned(at, self.turn);
        PlanPoint {
            east: self.unit.beyond(self.origin.east, from_origin.x),
            north: self.unit.beyond(self.origin.north, from_origin.y),
        }
    }
}

fn turned(at: Point, left: f64) -> Point {
    if left == 0.0 {
        return at;
    }
    let corner = Point {
        x: Length::ZERO,
        y: Length::ZERO,
    };
    Vector::between(corner, at)
        .turned_left(left)
        .applied_to(corner)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn plan(east: &str, north: &str) -> PlanPoint {
        PlanPoint {
            east: PlanNumber::parse(east).unwrap(),
            north: PlanNumber::parse(north).unwrap(),
        }
    }

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    /// Derived from NIST Special Publication 811, appendix B: a survey foot is 1200/3937 m.
    #[test]
    fn the_origin_comes_off_before_the_unit() {
        let origin = plan("2000000.00", "700000.00");
        let near = plan("2000123.45", "700010.00");
        let frame = |unit| SiteFrame::new(unit, origin, 0.0).unwrap();
        let here = frame(PlanUnit::Foot).to_site(near).unwrap();
        assert_eq!((here.x, here.y), (ft(12_345), ft(1000)));
        let survey = frame(PlanUnit::SurveyFoot).to_site(near).unwrap();
        assert!(
            (survey.x - ft(12_345)).feet() < 0.0003,
            "two parts in a million of 123 ft"
        );
        assert!(survey.x > ft(12_345));
        let whole = PlanUnit::SurveyFoot
            .length(PlanNumber::parse("0").unwrap(), origin.east)
            .unwrap();
        assert!((whole.feet() - 2_000_004.0).abs() < 0.001);
        let metres = frame(PlanUnit::Metre)
            .to_site(plan("2000001", "700000"))
            .unwrap();
        assert_eq!(metres.x, Length::from_millimetres(1000));
    }

    #[test]
    fn a_turned_frame_goes_there_and_back() {
        let origin = plan("2000000.00", "700000.00");
        let frame = SiteFrame::new(PlanUnit::Foot, origin, 90.0).unwrap();
        let north = plan("2000000.00", "700100.00");
        let here = frame.to_site(north).unwrap();
        assert_eq!((here.x, here.y), (ft(10_000), ft(0)));
        assert_eq!(frame.to_plan(here), north);
        assert_eq!(
            SiteFrame::new(PlanUnit::Foot, origin, f64::NAN),
            Err(FrameError::NoAngle)
        );
    }
}
