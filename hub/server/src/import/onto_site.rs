//! From plan numbers to the site: origin off, unit, turn; then triangles as drawn or as the points make them.

use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::site_frame::{FrameError, PlanNumber, PlanPoint, PlanUnit, SiteFrame};
use earthwork::surface::{Drawn, Surface, Vertex};

use super::{Remark, Survey, SurveyPoint};

/// How a file's numbers come on to the site.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Frame {
    /// The plan's frame with its origin; the file's numbers are the site's own when none.
    pub(super) frame: Option<(SiteFrame, PlanPoint)>,
    /// What the file's numbers are counted in, when the file does not say.
    pub(super) unit: PlanUnit,
}

impl Frame {
    /// The file's numbers are the site's own, in this unit.
    pub fn new(unit: PlanUnit) -> Frame {
        Frame { frame: None, unit }
    }

    /// The file's numbers are the plan's.
    pub fn on(frame: SiteFrame, unit: PlanUnit, origin: PlanPoint) -> Frame {
        Frame {
            frame: Some((frame, origin)),
            unit,
        }
    }

    /// What the plan counts in; none when the numbers are the site's own.
    pub(super) fn plan_unit(&self) -> Option<PlanUnit> {
        Some(self.frame?.0.unit())
    }

    /// A file's point in the plan's own unit; as written when the numbers are the site's.
    pub(super) fn on_plan(&self, unit: PlanUnit, point: &SurveyPoint) -> PlanPoint {
        let own = |number| {
            self.plan_unit()
                .map_or(number, |plan| plan.of(unit, number))
        };
        PlanPoint {
            east: own(point.east),
            north: own(point.north),
        }
    }

    /// The plan's coordinates of the site's corner.
    pub(super) fn origin(&self) -> Option<PlanPoint> {
        Some(self.frame?.1)
    }
}

/// A file's points on the site.
#[derive(Clone, Debug, PartialEq)]
pub struct OntoSite {
    /// In the order of the file; the elevation is none where the file has none.
    pub points: Vec<(Point, Option<Length>)>,
}

/// Brings a file's points on to the site.
///
/// # Errors
/// When a number leaves the scale, with its line.
pub fn onto_site(survey: &Survey, frame: &Frame) -> Result<OntoSite, Remark> {
    let unit = survey.unit.unwrap_or(frame.unit);
    let zero = PlanNumber::ZERO;
    let place = |at: PlanPoint| -> Result<Point, FrameError> {
        match &frame.frame {
            Some((frame, _)) => frame.to_site(at),
            None => Ok(Point {
                x: unit.length(zero, at.east)?,
                y: unit.length(zero, at.north)?,
            }),
        }
    };
    let points = survey.points.iter().map(|point| {
        let about = |error: FrameError| Remark {
            line: point.line,
            message: format!("{}: {error}", point.id),
        };
        let at = place(frame.on_plan(unit, point)).map_err(about)?;
        let elevation = point
            .elevation
            .map(|elevation| unit.length(zero, elevation))
            .transpose()
            .map_err(about)?;
        Ok((at, elevation))
    });
    Ok(OntoSite {
        points: points.collect::<Result<_, Remark>>()?,
    })
}

impl OntoSite {
    /// The surface that the file draws.
    ///
    /// # Errors
    /// When a point has no elevation, or the triangles are not a surface.
    pub fn surface(&self, survey: &Survey) -> Result<Surface, Remark> {
        let vertices = self
            .points
            .iter()
            .zip(&survey.points)
            .map(|((at, z), from)| {
                let elevation = z.ok_or_else(|| Remark {
                    line: from.line,
                    message: format!(
                        "Point {} has no elevation. A surface needs one for each point.",
                        from.id
                    ),
                })?;
                Ok(Vertex { at: *at, elevation })
            });
        let points: Vec<Vertex> = vertices.collect::<Result<_, Remark>>()?;
        let made = match &survey.triangles {
            Some(triangles) => Surface::from_triangles(points, triangles),
            None => Surface::from_points(&Drawn {
                points,
                breaklines: survey.breaklines.clone(),
                boundary: survey.boundary.clone(),
                holes: survey.holes.clone(),
            }),
        };
        made.map_err(|error| Remark {
            line: survey.points.first().map_or(1, |point| point.line),
            message: error.to_string(),
        })
    }
}
