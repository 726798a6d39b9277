//! Sentences about set-ups and check shots.

use earthwork::level::Check;

use super::{Told, feet, proving, signed};
use day::entry::Body;
use day::said::set_up::{DoubtReason, LaserSlope, Proof};

pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::LaserSetUp(b) => Told::new(
            format!(
                "{} set up on {}: HI {}{}.",
                b.set_up,
                b.basis.benchmark,
                feet(b.basis.height),
                sloped(b.slope, ["sloped", "east", "north"])
            ),
            format!(
                "{} puesta sobre {}: altura {}{}.",
                b.set_up,
                b.basis.benchmark,
                feet(b.basis.height),
                sloped(b.slope, ["inclinada", "al este", "al norte"])
            ),
        ),
        Body::SetUpRestated(b) => Told::new(
            format!(
                "{} restated on {}: HI {}.",
                b.set_up,
                b.basis.benchmark,
                feet(b.basis.height)
            ),
            format!(
                "{} corregida sobre {}: altura {}.",
                b.set_up,
                b.basis.benchmark,
                feet(b.basis.height)
            ),
        ),
        Body::SetUpProven(b) => proven(&b.set_up, &b.proof),
        Body::SetUpClosed(b) => Told::new(
            format!("{} taken down. {}", b.set_up, b.why),
            format!("{} levantada. {}", b.set_up, b.why),
        ),
        Body::CheckShot(b) => {
            let (en, es) = match b.check {
                Check::Good => ("good", "bien"),
                Check::Again => ("shoot again", "lea otra vez"),
                Check::Failed => ("FAILED", "FALLÓ"),
            };
            let off = signed(b.residual);
            Told::new(
                format!("Check of {} on {}: {off}, {en}.", b.set_up, b.benchmark),
                format!("Revisión de {} en {}: {off}, {es}.", b.set_up, b.benchmark),
            )
        }
        Body::SetUpDoubted(b) => {
            let (en, es) = match &b.why {
                DoubtReason::FailedCheck {
                    benchmark,
                    residual,
                } => (
                    format!("check on {benchmark} off by {}", signed(*residual)),
                    format!("revisión en {benchmark} con {}", signed(*residual)),
                ),
                DoubtReason::Bumped { by } => {
                    (format!("bumped, says {by}"), format!("golpeada, dice {by}"))
                }
                DoubtReason::BenchmarkChanged { benchmark, by } => (
                    format!(
                        "the elevation of {benchmark} was changed by {}",
                        signed(*by)
                    ),
                    format!("la elevación de {benchmark} cambió {}", signed(*by)),
                ),
            };
            Told::new(
                format!("{} IN DOUBT: {en}. Cabs paused.", b.set_up),
                format!("{} EN DUDA: {es}. Cabinas en pausa.", b.set_up),
            )
        }
        Body::SuspectWindow(b) => proving::suspect(b),
        Body::CheckFellDue(b) => proving::due(b),
        _ => Told::default(),
    }
}

/// How a plane is sloped, in percent; nothing for a level one.
fn sloped(slope: Option<LaserSlope>, [word, east, north]: [&str; 3]) -> String {
    slope.map_or_else(String::new, |slope| {
        let (x, y) = (slope.rise_east * 100.0, slope.rise_north * 100.0);
        format!(", {word} {x:+.2} % {east}, {y:+.2} % {north}")
    })
}

fn proven(set_up: &str, proof: &Proof) -> Told {
    let (en, es) = match proof {
        Proof::SecondBenchmark { benchmark } => (
            format!("{benchmark} agrees"),
            format!("{benchmark} concuerda"),
        ),
        Proof::TwoBenchmarks { first, second } | Proof::AcrossTheSlope { first, second } => (
            format!("{first} and {second} agree"),
            format!("{first} y {second} concuerdan"),
        ),
        Proof::LevelledAgain { disagreement } => (
            format!("levelled again, off by {}", signed(*disagreement)),
            format!("nivelada otra vez, con {}", signed(*disagreement)),
        ),
        Proof::OneBenchmark => (
            "ONE BENCHMARK, nothing else behind it".to_owned(),
            "UN SOLO BANCO, nada más detrás".to_owned(),
        ),
    };
    Told::new(
        format!("{set_up} takes readings now: {en}."),
        format!("{set_up} ya da lecturas: {es}."),
    )
}
