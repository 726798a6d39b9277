//! What a file would give, before it is used: what was understood, what was not, and what may have happened to its
//! numbers. Nothing is put right here: a suspicion is shown, and a person decides.

use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::site_frame::{
    PlanNumber, PlanPoint, PlanUnit, Slip, Suspicion, other_foot, suspicions,
};
use serde::{Deserialize, Serialize};
use utoipa::{IntoParams, ToSchema};

use super::{Frame, OntoSite, Remark, Survey, onto_site, read};

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
    pub understood: Vec<Understood>,
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
    let survey = match read(text, surface) {
        Ok(survey) => survey,
        Err(faults) => return refused(faults),
    };
    let remarks = survey.remarks.iter().cloned().map(|one| remark(one, false));
    let mut not_understood: Vec<ImportRemark> = remarks.collect();
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
    let unit = survey.unit.unwrap_or(frame.unit);
    let other = frame.plan_unit().filter(|plan| *plan != unit);
    let (unit, unidad) = names(unit);
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
    if let Some((plan, plano)) = other.map(names) {
        found.push(Understood::new(
            format!("The plan counts in {plan}: each coordinate was converted."),
            format!("El plano cuenta en {plano}: cada coordenada se convirtió."),
        ));
    }
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

fn names(unit: PlanUnit) -> (&'static str, &'static str) {
    match unit {
        PlanUnit::Foot => ("feet", "pies"),
        PlanUnit::SurveyFoot => ("US survey feet", "pies de topografía (EE. UU.)"),
        PlanUnit::Metre => ("metres", "metros"),
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
            let (english, spanish) = in_words(one.slip);
            hypothesis(
                one,
                &format!(
                    "{} of {} points off the lot would lie on it if {english}.",
                    one.explains, one.of
                ),
                &format!(
                    "{} de {} puntos fuera del lote quedarían en él si {spanish}.",
                    one.explains, one.of
                ),
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
    let (english, spanish) = in_words(Slip::OtherFoot);
    if own != plan && own != PlanUnit::Metre && plan != PlanUnit::Metre {
        let all = Suspicion {
            slip: Slip::OtherFoot,
            explains: points.len(),
            of: points.len(),
        };
        return Some(hypothesis(
            all,
            &format!(
                "The file and the plan name different feet. All would lie up to {apart} ft elsewhere if {english}."
            ),
            &format!(
                "El archivo y el plano nombran pies distintos. Todos quedarían hasta {apart} ft en otra parte si {spanish}."
            ),
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
        &format!(
            "{} of {} pins that the site knows lie up to {apart} ft off, and would lie where they were found if {english}.",
            one.explains, one.of
        ),
        &format!(
            "{} de {} puntos que la obra conoce quedan hasta {apart} ft fuera, y quedarían donde se hallaron si {spanish}.",
            one.explains, one.of
        ),
    ))
}

fn hypothesis(one: Suspicion, english: &str, spanish: &str) -> Hypothesis {
    Hypothesis {
        slip: one.slip,
        explains: one.explains,
        of: one.of,
        english: format!("{english} Nothing was changed: ask who made the file."),
        spanish: format!("{spanish} No se cambió nada: pregunte a quien hizo el archivo."),
    }
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
        Slip::OtherFoot => ("they counted in the other foot", "contaran en el otro pie"),
    }
}
