//! What a file would give, before it is used: what was understood, what was not, and what may have happened to its
//! numbers. Nothing is put right here: a suspicion is shown, and a person decides.

use contract::{IntoParams, ToSchema};
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::site_frame::{
    PlanNumber, PlanPoint, PlanUnit, Slip, Suspicion, other_foot, suspicions,
};
use serde::{Deserialize, Serialize};
use words::{Fixed, Text};

use super::{Frame, OntoSite, Remark, Survey, onto_site, read_without_wrong_rows};

/// So many points are shown, and can be taken at once; all are counted.
const SHOWN: usize = 2_000;

/// How the file is to be read.
#[derive(Clone, Debug, Deserialize, IntoParams)]
#[serde(deny_unknown_fields)]
#[into_params(parameter_in = Query)]
pub struct HowToRead {
    /// The surface to read, when the file has several.
    pub surface: Option<String>,
    /// What it counts in, when it does not say.
    pub unit: Option<PlanUnit>,
    /// Its coordinates are the plan's, not the site's.
    pub on_plan: Option<bool>,
    /// What the file is called, so that a target's surface can come from it.
    pub name: Option<String>,
}

/// What a file would give.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ImportPreview {
    /// Whether it could be imported as it is.
    pub usable: bool,
    /// What was understood, in words.
    pub understood: Vec<Text>,
    /// What was not understood, or is wrong, with its line.
    pub not_understood: Vec<ImportRemark>,
    /// What may have happened to the numbers; never put right by itself.
    pub hypotheses: Vec<Hypothesis>,
    /// The first points, on the site: no more can be taken at once.
    pub points: Vec<ImportPoint>,
    /// How many points there are.
    pub all_points: usize,
    /// How many triangles the surface has; none when the file is no surface.
    pub triangles: Option<usize>,
}

/// A remark with its line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct ImportRemark {
    /// The line, from 1.
    pub line: usize,
    /// What is wrong or left aside, and what to do.
    pub message: String,
    /// It keeps the file from being used.
    pub wrong: bool,
    /// Its row is left out, and the others can be taken.
    #[serde(default)]
    pub left_out: bool,
}

/// What may have happened to the numbers.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Hypothesis {
    /// Which slip.
    pub slip: Slip,
    /// So many of the stray points would then lie on the lot.
    pub explains: usize,
    /// Of so many that lie off it.
    pub of: usize,
    /// The same as a sentence.
    #[serde(flatten)]
    pub text: Text,
}

/// A point of the file, on the site.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct ImportPoint {
    /// Its name.
    pub id: String,
    /// Where it comes to lie.
    pub at: Point,
    /// How high.
    pub elevation: Option<Length>,
    /// What the file says about it.
    pub note: String,
    /// Its line.
    pub line: usize,
}

/// What the site knows already, for suspicions.
#[derive(Clone, Debug, Default)]
pub struct Known {
    /// The lot's outline on the site; empty when unknown.
    pub lot: Vec<Point>,
    /// Pins by name, with their places on the plan.
    pub pins: Vec<(String, PlanPoint)>,
}

/// What a file would give on this site.
pub fn preview(text: &str, surface: Option<&str>, frame: &Frame, known: &Known) -> ImportPreview {
    let (survey, rows) = match read_without_wrong_rows(text, surface) {
        Ok(found) => found,
        Err(faults) => return refused(faults),
    };
    let left_out = rows.into_iter().map(|one| ImportRemark {
        left_out: true,
        ..remark(one, false)
    });
    let remarks = survey.remarks.iter().cloned().map(|one| remark(one, false));
    let mut not_understood: Vec<ImportRemark> = left_out.chain(remarks).collect();
    let all_rows = not_understood.iter().all(|one| !one.left_out);
    let mut understood = understood(&survey, frame);
    let hypotheses = hypotheses(&survey, frame, known);
    let (mut points, mut triangles) = (Vec::new(), None);
    match onto_site(&survey, frame) {
        Err(wrong) => not_understood.push(remark(wrong, true)),
        Ok(placed) => {
            points = shown(&survey, &placed);
            let draws = survey.triangles.is_some()
                || !survey.breaklines.is_empty()
                || survey.boundary.is_some();
            match placed.surface(&survey) {
                // A surface without some of its points would be another one.
                Ok(_) if !all_rows => {}
                Ok(surface) => {
                    triangles = Some(surface.triangles());
                    understood.push(words::import::a_surface_of_triangles(&surface.triangles()));
                }
                Err(wrong) if draws => not_understood.push(remark(wrong, true)),
                // A list of points need not make a surface.
                Err(_) => {}
            }
        }
    }
    ImportPreview {
        usable: not_understood.iter().all(|one| !one.wrong),
        understood,
        not_understood,
        hypotheses,
        all_points: survey.points.len(),
        points,
        triangles,
    }
}

fn refused(faults: Vec<Remark>) -> ImportPreview {
    ImportPreview {
        usable: false,
        understood: Vec::new(),
        not_understood: faults.into_iter().map(|one| remark(one, true)).collect(),
        hypotheses: Vec::new(),
        points: Vec::new(),
        all_points: 0,
        triangles: None,
    }
}

fn remark(from: Remark, wrong: bool) -> ImportRemark {
    ImportRemark {
        line: from.line,
        message: from.message,
        wrong,
        left_out: false,
    }
}

fn understood(survey: &Survey, frame: &Frame) -> Vec<Text> {
    let unit = survey.unit.unwrap_or(frame.unit);
    let other = frame.plan_unit().filter(|plan| *plan != unit);
    let unit = names(unit);
    let said = if survey.unit.is_some() {
        words::import::as_the_file_says()
    } else {
        words::import::as_the_site_says()
    };
    let all = survey.points.len();
    let high = survey.points.iter().filter(|one| one.elevation.is_some());
    let high = high.count();
    let mut found = vec![
        words::import::points_them_with_elevation(&all, &high),
        words::import::counted_in(&unit, &said),
    ];
    if let Some(plan) = other.map(names) {
        found.push(words::import::the_plan_counts_in(&plan));
    }
    if let Some(name) = &survey.name {
        found.push(words::import::the_surface(&name));
    }
    if frame.frame.is_some() {
        found.push(Text::from(words::import::brought_site_by_site_frame()));
    }
    let parts = [
        (survey.breaklines.len(), words::import::breaklines()),
        (
            usize::from(survey.boundary.is_some()),
            words::import::outer_edge(),
        ),
        (survey.holes.len(), words::import::holes()),
    ];
    let there = parts.into_iter().filter(|(count, _)| *count > 0);
    found.extend(there.map(|(count, what)| words::import::counted(&count, &what)));
    found
}

fn names(unit: PlanUnit) -> Fixed {
    match unit {
        PlanUnit::Foot => words::import::feet(),
        PlanUnit::SurveyFoot => words::import::us_survey_feet(),
        PlanUnit::Metre => words::import::metres(),
    }
}

fn shown(survey: &Survey, placed: &OntoSite) -> Vec<ImportPoint> {
    survey
        .points
        .iter()
        .zip(&placed.points)
        .take(SHOWN)
        .map(|(from, (at, elevation))| ImportPoint {
            id: from.id.clone(),
            at: *at,
            elevation: *elevation,
            note: from.note.clone(),
            line: from.line,
        })
        .collect()
}

/// What would bring stray points on to the lot, the best first; then what the two feet would explain.
fn hypotheses(survey: &Survey, frame: &Frame, known: &Known) -> Vec<Hypothesis> {
    let origin = frame.origin().unwrap_or(PlanPoint {
        east: PlanNumber::ZERO,
        north: PlanNumber::ZERO,
    });
    let own = survey.unit.unwrap_or(frame.unit);
    let points: Vec<PlanPoint> = survey
        .points
        .iter()
        .map(|point| frame.on_plan(own, point))
        .collect();
    let unit = frame.plan_unit().unwrap_or(own);
    let stray = suspicions(unit, origin, &known.lot, &points).unwrap_or_default();
    let mut found: Vec<Hypothesis> = stray
        .into_iter()
        .map(|one| {
            let slip = in_words(one.slip);
            hypothesis(
                one,
                &words::import::points_off_lot_would_lie(&one.explains, &one.of, &slip),
            )
        })
        .collect();
    found.extend(two_feet(survey, frame, known, &points));
    found
}

/// The two feet lie 4 ft apart at 2,000,000: said when the file and the plan differ in them, and when a pin tells it.
fn two_feet(
    survey: &Survey,
    frame: &Frame,
    known: &Known,
    points: &[PlanPoint],
) -> Option<Hypothesis> {
    let plan = frame.plan_unit()?;
    let own = survey.unit.unwrap_or(frame.unit);
    let far = points
        .first()?
        .east
        .value()
        .abs()
        .max(points.first()?.north.value().abs());
    let apart = format!("{:.2}", far * 0.000_002);
    let slip = in_words(Slip::OtherFoot);
    if own != plan && own != PlanUnit::Metre && plan != PlanUnit::Metre {
        let all = Suspicion {
            slip: Slip::OtherFoot,
            explains: points.len(),
            of: points.len(),
        };
        return Some(hypothesis(
            all,
            &words::import::file_plan_name_different_feet(&apart, &slip),
        ));
    }
    let named = survey.points.iter().zip(points);
    let pairs: Vec<(PlanPoint, PlanPoint)> = named
        .filter_map(|(point, at)| {
            let (_, pin) = known.pins.iter().find(|(id, _)| *id == point.id)?;
            Some((*at, *pin))
        })
        .collect();
    let one = other_foot(plan, &pairs)?;
    Some(hypothesis(
        one,
        &words::import::pins_site_knows_lie_up(&one.explains, &one.of, &apart, &slip),
    ))
}

fn hypothesis(one: Suspicion, would: &Text) -> Hypothesis {
    Hypothesis {
        slip: one.slip,
        explains: one.explains,
        of: one.of,
        text: words::import::nothing_was_changed(would),
    }
}

fn in_words(slip: Slip) -> Fixed {
    match slip {
        Slip::Swapped => words::import::east_north_were_each_other(),
        Slip::Metres => words::import::they_were_metres(),
        Slip::Feet => words::import::they_were_feet(),
        Slip::TenTimes => words::import::point_had_slipped_they_were(),
        Slip::ATenth => words::import::point_had_slipped_they_were_2(),
        Slip::OtherFoot => words::import::they_counted_other_foot(),
    }
}
