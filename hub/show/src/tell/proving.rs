//! Sentences about what proves the laser: doubted readings, repeats, checks that fall due, answered questions.

use earthwork::laser::check_due::Due;
use earthwork::laser::drift::DriftSign;
use earthwork::length::Form;

use super::{Told, feet, signed};
use day::entry::Body;
use day::read_as;
use day::said::blind::BlindPair;
use day::said::check_due::CheckFellDue;
use day::said::repeat::MarkRepeated;
use day::said::settle::QuestionSettled;
use day::said::suspect::{Standing, SuspectWindow};
use words::Text;

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
    let set_up = read_as::set_up(&window.set_up);
    match window.residual {
        Some(residual) => Told::new(words::tell_proving::readings_marks_judged_both_ways(
            &n,
            &set_up,
            &marks,
            &signed(residual),
            &again,
            &stand,
        )),
        None => Told::new(words::tell_proving::readings_marks_are_unproven(
            &n, &set_up, &marks, &unproven,
        )),
    }
}

pub(super) fn due(body: &CheckFellDue) -> Told {
    let what = match body.why {
        Due::Bumped => words::tell_proving::it_was_bumped(),
        Due::Drift => words::tell_proving::repeats_do_not_agree(),
        Due::Overdue => words::tell_proving::not_checked_for_twice_interval(),
        Due::Time => words::tell_proving::the_interval_has_passed(),
        Due::Readings => words::tell_proving::n25_readings_since(),
        Due::Temperature => words::tell_proving::the_temperature_changed(),
        Due::Restart => words::tell_proving::work_starts_again(),
    };
    let set_up = read_as::set_up(&body.set_up);
    Told::new(words::tell_proving::check_of_is_due(&set_up, &what))
}

pub(super) fn repeated(body: &MarkRepeated) -> Told {
    let off = signed(body.residual);
    let what = match body.says {
        DriftSign::Quiet => Text::default(),
        DriftSign::Higher => words::tell_proving::everything_is_found_higher().into(),
        DriftSign::Lower => words::tell_proving::everything_is_found_lower().into(),
    };
    let set_up = read_as::set_up(&body.set_up);
    Told::new(words::tell_proving::repeated_from(
        &body.mark, &set_up, &off, &what,
    ))
    .mark(Some(&body.mark))
}

pub(super) fn settled(body: &QuestionSettled) -> Told {
    let hit = body.suggested.iter().any(|one| one.right);
    let what = match (body.slip, hit) {
        (false, _) => words::tell_proving::the_reading_was_right(),
        (true, true) => words::tell_proving::slip_one_suggested(),
        (true, false) => words::tell_proving::a_slip_another_than_suggested(),
    };
    Told::new(words::tell_proving::question_answered(
        &body.question,
        &what,
    ))
}

pub(super) fn levels(body: &Body) -> Told {
    match body {
        Body::LaserTested(b) => {
            let what = if b.service {
                words::tell_proving::to_service().into()
            } else {
                Text::default()
            };
            let found = b.slant_per_100_ft.show(Form::DecimalFeet { places: 3 });
            Told::new(words::tell_proving::tested(&b.laser, &found, &what))
        }
        Body::LevelsRun(b) => Told::new(words::tell_proving::levels_from_to(
            &b.from,
            &b.to,
            &b.turns.len(),
            &signed(b.misclosure),
        )),
        Body::BenchmarkAdded(b) => Told::new(words::tell_proving::benchmark_added_at(
            &b.benchmark.id,
            &feet(b.benchmark.elevation),
            &b.benchmark.note,
        )),
        Body::SetUpsCompared(b) => {
            let what = if b.agree {
                words::tell_proving::they_agree()
            } else {
                words::tell_proving::check_both()
            };
            let off = signed(b.difference);
            let (first, second) = (read_as::set_up(&b.first), read_as::set_up(&b.second));
            Told::new(words::tell_proving::one_point_from_and(
                &first, &second, &off, &what,
            ))
        }
        _ => Told::default(),
    }
}

pub(super) fn pair(body: &BlindPair) -> Told {
    let names: Vec<&str> = body.shots.iter().map(|shot| shot.person.as_str()).collect();
    let (off, names) = (signed(body.difference), names.join(", "));
    Told::new(words::tell_proving::shot_twice_second_time_blind(
        &body.mark, &names, &off,
    ))
    .mark(Some(&body.mark))
}
