//! Sentences about what proves the laser: doubted readings, repeats, checks that fall due, answered questions.

use earthwork::laser::check_due::Due;
use earthwork::laser::drift::DriftSign;
use earthwork::length::Form;

use super::{Told, feet, signed};
use day::entry::Body;
use day::read_as::set_up_in_both;
use day::said::blind::BlindPair;
use day::said::check_due::CheckFellDue;
use day::said::repeat::MarkRepeated;
use day::said::settle::QuestionSettled;
use day::said::suspect::{Standing, SuspectWindow};

pub(super) fn suspect(window: &SuspectWindow) -> Told {
    let named = |standing: &[Standing]| -> String {
        let names: Vec<&str> = window
            .marks
            .iter()
            .filter(|mark| standing.contains(&mark.standing))
            .map(|mark| mark.mark.as_str())
            .collect();
        if names.is_empty() {
            "–".to_owned()
        } else {
            names.join(", ")
        }
    };
    let stand = named(&[Standing::Stands, Standing::EarlierStands]);
    let (again, unproven) = (named(&[Standing::ShootAgain]), named(&[Standing::Unproven]));
    let (n, marks) = (window.readings, window.marks.len());
    let (set_up, puesta) = set_up_in_both(&window.set_up);
    match window.residual {
        Some(residual) => Told::new(
            format!(
                "{n} readings of {set_up} on {marks} marks judged both ways ({}): re-shoot {again}; {stand} stand.",
                signed(residual)
            ),
            format!(
                "{n} lecturas de {puesta} en {marks} marcas juzgadas de las dos maneras ({}): lea otra vez {again}; {stand} quedan.",
                signed(residual)
            ),
        ),
        None => Told::new(
            format!("{n} readings of {set_up} on {marks} marks are UNPROVEN: {unproven}."),
            format!("{n} lecturas de {puesta} en {marks} marcas SIN COMPROBAR: {unproven}."),
        ),
    }
}

pub(super) fn due(body: &CheckFellDue) -> Told {
    let (en, es) = match body.why {
        Due::Bumped => ("it was bumped", "lo golpearon"),
        Due::Drift => ("repeats do not agree", "las repeticiones no concuerdan"),
        Due::Overdue => (
            "NOT CHECKED for twice the interval",
            "SIN REVISAR por el doble del plazo",
        ),
        Due::Time => ("the interval has passed", "pasó el plazo"),
        Due::Readings => ("25 readings since", "25 lecturas desde entonces"),
        Due::Temperature => ("the temperature changed", "cambió la temperatura"),
        Due::Restart => ("work starts again", "se reanuda el trabajo"),
    };
    let (set_up, puesta) = set_up_in_both(&body.set_up);
    Told::new(
        format!("Check of {set_up} is due: {en}."),
        format!("Toca revisar {puesta}: {es}."),
    )
}

pub(super) fn repeated(body: &MarkRepeated) -> Told {
    let off = signed(body.residual);
    let (en, es) = match body.says {
        DriftSign::Quiet => ("", ""),
        DriftSign::Higher => (
            " Everything is found HIGHER: check the laser now.",
            " Todo sale MÁS ALTO: revise el láser ya.",
        ),
        DriftSign::Lower => (
            " Everything is found LOWER: check the laser now.",
            " Todo sale MÁS HONDO: revise el láser ya.",
        ),
    };
    let (set_up, puesta) = set_up_in_both(&body.set_up);
    Told::new(
        format!(
            "{} repeated from {set_up}: {off} against its acceptance.{en}",
            body.mark
        ),
        format!(
            "{} repetida desde {puesta}: {off} contra lo aceptado.{es}",
            body.mark
        ),
    )
    .mark(Some(&body.mark))
}

pub(super) fn settled(body: &QuestionSettled) -> Told {
    let hit = body.suggested.iter().any(|one| one.right);
    let (en, es) = match (body.slip, hit) {
        (false, _) => ("the reading was right", "la lectura estaba bien"),
        (true, true) => (
            "a slip, and the one suggested",
            "un error, y el que se sugirió",
        ),
        (true, false) => (
            "a slip, another than suggested",
            "un error, otro que el sugerido",
        ),
    };
    Told::new(
        format!("Question {} answered: {en}.", body.question),
        format!("Pregunta {} contestada: {es}.", body.question),
    )
}

pub(super) fn levels(body: &Body) -> Told {
    match body {
        Body::LaserTested(b) => {
            let (en, es) = if b.service {
                (": TO SERVICE", ": A SERVICIO")
            } else {
                ("", "")
            };
            let found = b.slant_per_100_ft.show(Form::DecimalFeet { places: 3 });
            Told::new(
                format!("{} tested: {found} in 100 ft{en}.", b.laser),
                format!("{} probado: {found} en 100 pies{es}.", b.laser),
            )
        }
        Body::LevelsRun(b) => Told::new(
            format!(
                "Levels from {} to {}: {} set-ups, off by {}, adjusted.",
                b.from,
                b.to,
                b.turns.len(),
                signed(b.misclosure)
            ),
            format!(
                "Nivelación de {} a {}: {} puestas, difiere {}, ajustada.",
                b.from,
                b.to,
                b.turns.len(),
                signed(b.misclosure)
            ),
        ),
        Body::BenchmarkAdded(b) => Told::new(
            format!(
                "Benchmark {} added at {}: {}",
                b.benchmark.id,
                feet(b.benchmark.elevation),
                b.benchmark.note
            ),
            format!(
                "Banco {} agregado en {}: {}",
                b.benchmark.id,
                feet(b.benchmark.elevation),
                b.benchmark.note
            ),
        ),
        Body::SetUpsCompared(b) => {
            let (en, es) = if b.agree {
                ("they agree", "concuerdan")
            } else {
                ("CHECK BOTH", "REVISE LOS DOS")
            };
            let off = signed(b.difference);
            let ((first, primera), (second, segunda)) =
                (set_up_in_both(&b.first), set_up_in_both(&b.second));
            Told::new(
                format!("One point from {first} and {second}: {off}, {en}."),
                format!("Un punto desde {primera} y {segunda}: {off}, {es}."),
            )
        }
        _ => Told::default(),
    }
}

pub(super) fn pair(body: &BlindPair) -> Told {
    let names: Vec<&str> = body.shots.iter().map(|shot| shot.person.as_str()).collect();
    let (off, names) = (signed(body.difference), names.join(", "));
    Told::new(
        format!(
            "{} shot twice, the second time blind ({names}): {off}.",
            body.mark
        ),
        format!(
            "{} leída dos veces, la segunda a ciegas ({names}): {off}.",
            body.mark
        ),
    )
    .mark(Some(&body.mark))
}
