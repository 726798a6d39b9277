//! What a file would give, before it is used: what was understood, what was not, and what may have happened to its
//! numbers. Nothing is put right here: a suspicion is shown, and a person decides.

use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::site_frame::{PlanNumber, PlanPoint, PlanUnit, Slip, suspicions};
use serde::{Deserialize, Serialize};
use utoipa::{IntoParams, ToSchema};

use super::{Frame, OntoSite, Remark, Survey, onto_site, read};

/// So many points are shown; all are counted.
const SHOWN: usize = 200;

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
}

/// What a file would give.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ImportPreview {
    /// Whether it could be imported as it is.
    pub usable: bool,
    /// What was understood, in words.
    pub understood: Vec<Understood>,
    /// What was not understood, or is wrong, with its line.
    pub not_understood: Vec<ImportRemark>,
    /// What may have happened to the numbers; never put right by itself.
    pub hypotheses: Vec<Hypothesis>,
    /// The first points, on the site.
    pub points: Vec<ImportPoint>,
    /// How many points there are.
    pub all_points: usize,
    /// How many triangles the surface has; none when the file is no surface.
    pub triangles: Option<usize>,
}

/// One thing that was understood.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Understood {
    /// In English.
    pub english: String,
    /// The same in Spanish.
    pub spanish: String,
}

impl Understood {
    fn new(english: String, spanish: String) -> Self {
        Self { english, spanish }
    }
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
    pub english: String,
    /// And in Spanish.
    pub spanish: String,
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

/// What a file would give on this site. `lot` is the lot's outline on the site, for suspicions; none when unknown.
pub fn preview(text: &str, surface: Option<&str>, frame: &Frame, lot: &[Point]) -> ImportPreview {
    let survey = match read(text, surface) {
        Ok(survey) => survey,
        Err(faults) => return refused(faults),
    };
    let remarks = survey.remarks.iter().cloned().map(|one| remark(one, false));
    let mut not_understood: Vec<ImportRemark> = remarks.collect();
    let mut understood = understood(&survey, frame);
    let hypotheses = hypotheses(&survey, frame, lot);
    let (mut points, mut triangles) = (Vec::new(), None);
    match onto_site(&survey, frame) {
        Err(wrong) => not_understood.push(remark(wrong, true)),
        Ok(placed) => {
            points = shown(&survey, &placed);
            let draws = survey.triangles.is_some()
                || !survey.breaklines.is_empty()
                || survey.boundary.is_some();
            match placed.surface(&survey) {
                Ok(surface) => {
                    triangles = Some(surface.triangles());
                    understood.push(Understood::new(
                        format!("A surface of {} triangles.", surface.triangles()),
                        format!("Una superficie de {} triángulos.", surface.triangles()),
                    ));
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
    }
}

fn understood(survey: &Survey, frame: &Frame) -> Vec<Understood> {
    let (unit, unidad) = match survey.unit.unwrap_or(frame.unit) {
        PlanUnit::Foot => ("feet", "pies"),
        PlanUnit::SurveyFoot => ("US survey feet", "pies de topografía (EE. UU.)"),
        PlanUnit::Metre => ("metres", "metros"),
    };
    let (said, dicho) = if survey.unit.is_some() {
        ("as the file says", "como dice el archivo")
    } else {
        (
            "as the site says; the file does not",
            "como dice la obra; el archivo no lo dice",
        )
    };
    let all = survey.points.len();
    let high = survey.points.iter().filter(|one| one.elevation.is_some());
    let high = high.count();
    let mut found = vec![
        Understood::new(
            format!("{all} points, {high} of them with an elevation."),
            format!("{all} puntos, {high} de ellos con cota."),
        ),
        Understood::new(
            format!("Counted in {unit}, {said}."),
            format!("Contado en {unidad}, {dicho}."),
        ),
    ];
    if let Some(name) = &survey.name {
        found.push(Understood::new(
            format!("The surface “{name}”."),
            format!("La superficie «{name}»."),
        ));
    }
    if frame.frame.is_some() {
        found.push(Understood::new(
            "Brought on to the site by the site's frame.".to_owned(),
            "Llevado a la obra por el marco de la obra.".to_owned(),
        ));
    }
    let parts = [
        (survey.breaklines.len(), "breaklines", "líneas de quiebre"),
        (
            usize::from(survey.boundary.is_some()),
            "outer edge",
            "contorno",
        ),
        (survey.holes.len(), "holes", "huecos"),
    ];
    let there = parts.into_iter().filter(|(count, ..)| *count > 0);
    found.extend(there.map(|(count, english, spanish)| {
        Understood::new(format!("{count} {english}."), format!("{count} {spanish}."))
    }));
    found
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

/// What would bring stray points on to the lot, the best first.
fn hypotheses(survey: &Survey, frame: &Frame, lot: &[Point]) -> Vec<Hypothesis> {
    let origin = frame.origin().unwrap_or(PlanPoint {
        east: PlanNumber::ZERO,
        north: PlanNumber::ZERO,
    });
    let points: Vec<PlanPoint> = survey
        .points
        .iter()
        .map(|point| PlanPoint {
            east: point.east,
            north: point.north,
        })
        .collect();
    let unit = survey.unit.unwrap_or(frame.unit);
    let found = suspicions(unit, origin, lot, &points).unwrap_or_default();
    found
        .into_iter()
        .map(|one| {
            let (english, spanish) = in_words(one.slip);
            Hypothesis {
                slip: one.slip,
                explains: one.explains,
                of: one.of,
                english: format!(
                    "{} of {} points off the lot would lie on it if {english}. Nothing was changed: ask who made the file.",
                    one.explains, one.of
                ),
                spanish: format!(
                    "{} de {} puntos fuera del lote quedarían en él si {spanish}. No se cambió nada: pregunte a quien hizo el archivo.",
                    one.explains, one.of
                ),
            }
        })
        .collect()
}

fn in_words(slip: Slip) -> (&'static str, &'static str) {
    match slip {
        Slip::Swapped => (
            "east and north were in each other's place",
            "este y norte estuvieran cambiados",
        ),
        Slip::Metres => ("they were metres", "fueran metros"),
        Slip::Feet => ("they were feet", "fueran pies"),
        Slip::TenTimes => (
            "the point had slipped and they were ten times too large",
            "el punto se hubiera corrido y fueran diez veces más grandes",
        ),
        Slip::ATenth => (
            "the point had slipped and they were ten times too small",
            "el punto se hubiera corrido y fueran diez veces más chicos",
        ),
    }
}
