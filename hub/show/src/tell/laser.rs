//! Sentences about set-ups and check shots.

use earthwork::level::Check;

use super::{Told, feet, proving, signed};
use day::entry::Body;
use day::read_as::set_up_in_both;
use day::said::set_up::{DoubtReason, LaserSlope, Proof};

pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::LaserSetUp(b) => Told::new(
            format!(
                "{} set up on {}: HI {}{}.",
                set_up_in_both(&b.set_up).0,
                b.basis.benchmark,
                feet(b.basis.height),
                sloped(b.slope, ["sloped", "east", "north"])
            ),
            format!(
                "{} puesta sobre {}: altura {}{}.",
                set_up_in_both(&b.set_up).1,
                b.basis.benchmark,
                feet(b.basis.height),
                sloped(b.slope, ["inclinada", "al este", "al norte"])
            ),
        ),
        Body::SetUpRestated(b) => Told::new(
            format!(
                "{} restated on {}: HI {}.",
                set_up_in_both(&b.set_up).0,
                b.basis.benchmark,
                feet(b.basis.height)
            ),
            format!(
                "{} corregida sobre {}: altura {}.",
                set_up_in_both(&b.set_up).1,
                b.basis.benchmark,
                feet(b.basis.height)
            ),
        ),
        Body::SetUpProven(b) => proven(&b.set_up, &b.proof),
        Body::SetUpClosed(b) => {
            let (en, es) = set_up_in_both(&b.set_up);
            Told::new(
                format!("{en} taken down. {}", b.why),
                format!("{es} quitada. {}", b.why),
            )
        }
        Body::CheckShot(b) => {
            let (en, es) = match b.check {
                Check::Good => ("good", "bien"),
                Check::Again => ("shoot again", "lea otra vez"),
                Check::Failed => ("FAILED", "FALLÓ"),
            };
            let off = signed(b.residual);
            let (set_up, puesta) = set_up_in_both(&b.set_up);
            Told::new(
                format!("Check of {set_up} on {}: {off}, {en}.", b.benchmark),
                format!("Revisión de {puesta} en {}: {off}, {es}.", b.benchmark),
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
            let (set_up, puesta) = set_up_in_both(&b.set_up);
            Told::new(
                format!("{set_up} IN DOUBT: {en}. Cabs paused."),
                format!("{puesta} EN DUDA: {es}. Cabinas en pausa."),
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
    let (set_up, puesta) = set_up_in_both(set_up);
    Told::new(
        format!("{set_up} takes readings now: {en}."),
        format!("{puesta} ya da lecturas: {es}."),
    )
}
