//! Sentences about set-ups and check shots.

use earthwork::length::shown_number;
use earthwork::level::Check;

use super::{Told, feet, proving, signed};
use day::entry::Body;
use day::read_as;
use day::said::set_up::{DoubtReason, LaserSlope, Proof};

pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::LaserSetUp(b) => Told::new(match b.slope {
            None => words::tell_laser::set_up_on(
                &read_as::set_up(&b.set_up),
                &b.basis.benchmark,
                &feet(b.basis.height),
            ),
            Some(LaserSlope {
                rise_east,
                rise_north,
            }) => words::tell_laser::set_up_sloped_on(
                &read_as::set_up(&b.set_up),
                &b.basis.benchmark,
                &feet(b.basis.height),
                &percent(rise_east),
                &percent(rise_north),
            ),
        }),
        Body::SetUpRestated(b) => Told::new(words::tell_laser::restated_on(
            &read_as::set_up(&b.set_up),
            &b.basis.benchmark,
            &feet(b.basis.height),
        )),
        Body::SetUpProven(b) => proven(&b.set_up, &b.proof),
        Body::SetUpClosed(b) => {
            let what = read_as::set_up(&b.set_up);
            Told::new(words::tell_laser::taken_down(&what, &b.why))
        }
        Body::CheckShot(b) => {
            let what = match b.check {
                Check::Good => words::tell_laser::good(),
                Check::Again => words::tell_laser::shoot_again(),
                Check::Failed => words::tell_laser::failed(),
            };
            let off = signed(b.residual);
            let set_up = read_as::set_up(&b.set_up);
            Told::new(words::tell_laser::check_of_on(
                &set_up,
                &b.benchmark,
                &off,
                &what,
            ))
        }
        Body::SetUpDoubted(b) => {
            let what = match &b.why {
                DoubtReason::FailedCheck {
                    benchmark,
                    residual,
                } => words::tell_laser::check_on_off_by(&benchmark, &signed(*residual)),
                DoubtReason::Bumped { by } => words::tell_laser::bumped_says(&by),
                DoubtReason::BenchmarkChanged { benchmark, by } => {
                    words::tell_laser::elevation_changed_by(&benchmark, &signed(*by))
                }
            };
            let set_up = read_as::set_up(&b.set_up);
            Told::new(words::tell_laser::in_doubt(&set_up, &what))
        }
        Body::SuspectWindow(b) => proving::suspect(b),
        Body::CheckFellDue(b) => proving::due(b),
        _ => Told::default(),
    }
}

/// A rise in percent, with its sign.
fn percent(rise: f64) -> String {
    let sign = if rise > 0.0 { "+" } else { "" };
    format!("{sign}{}", shown_number(rise * 100.0, 2))
}

fn proven(set_up: &str, proof: &Proof) -> Told {
    let what = match proof {
        Proof::SecondBenchmark { benchmark } => words::tell_laser::agrees(&benchmark),
        Proof::TwoBenchmarks { first, second } | Proof::AcrossTheSlope { first, second } => {
            words::tell_laser::and_agree(&first, &second)
        }
        Proof::LevelledAgain { disagreement } => {
            words::tell_laser::levelled_again_off_by(&signed(*disagreement))
        }
        Proof::OneBenchmark => words::tell_laser::one_benchmark_nothing_else_behind().into(),
    };
    let set_up = read_as::set_up(set_up);
    Told::new(words::tell_laser::takes_readings_now(&set_up, &what))
}
