//! A reading on a benchmark proves that the set-up still holds, or puts it in doubt.

use earthwork::laser::drift::CHECK_DOUBT_FT;
use earthwork::length::Length;
use earthwork::level::{self, Check};
use earthwork::slip::{Misclosure, Slip, explain_misclosure};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::asked::By;
use crate::decide::When;
use crate::entry::{Body, Entry};
use crate::refusal::Refusal;
use crate::said::call;
use crate::said::set_up::{self, DoubtReason, Proof, SetUpProven};
use crate::said::suspect::{self, EndShot};
use crate::state::{SetUp, State};
use crate::time::Time;
use crate::views::call::Ending;
use crate::views::ground::{CheckCard, SetUpState};

/// A reading on a benchmark.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ShootCheck {
    /// Which set-up.
    pub set_up: String,
    /// The benchmark under the rod.
    pub benchmark: String,
    /// The rod.
    pub rod: String,
    /// The rod value as typed.
    pub text: String,
}

/// Somebody saw the laser move.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayBumped {
    /// Which set-up.
    pub set_up: String,
}

/// A check shot was made.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CheckShot {
    /// Which set-up.
    pub set_up: String,
    /// The benchmark.
    pub benchmark: String,
    /// The rod.
    pub rod: String,
    /// As typed.
    pub text: String,
    /// The rod value.
    pub foresight: Length,
    /// (HI − rod) − benchmark: positive when the tool reads high.
    pub residual: Length,
    /// Good, again, failed.
    pub check: Check,
    /// Slips that would explain a failure, likeliest first: asked, never applied.
    pub slips: Vec<Slip>,
    /// Whether the set-up could be used when the shot was made.
    pub usable: bool,
}

/// A set-up is in doubt.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SetUpDoubted {
    /// Which set-up.
    pub set_up: String,
    /// Why.
    pub why: DoubtReason,
    /// The machines that are paused by it.
    pub pauses: Vec<String>,
}

pub(crate) fn shoot(state: &State, asked: &ShootCheck, when: When) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let set_up = set_up::standing(state, &asked.set_up)?;
    let shot_on = set_up::benchmark(site, &asked.benchmark)?;
    let foresight = set_up::rod_value(site, &asked.rod, &asked.text)?.value;
    let residual = level::check_residual(set_up.height(), foresight, shot_on.elevation);
    let check = level::judge_check(residual, site.rules.checks);
    let slips = if check == Check::Failed {
        explain(state, set_up, asked, residual, foresight)
    } else {
        vec![]
    };
    let mut bodies = vec![Body::CheckShot(CheckShot {
        set_up: asked.set_up.clone(),
        benchmark: asked.benchmark.clone(),
        rod: asked.rod.clone(),
        text: asked.text.clone(),
        foresight,
        residual,
        check,
        slips,
        usable: set_up.usable(),
    })];
    let proof = (check == Check::Good)
        .then(|| proof(set_up, &asked.benchmark))
        .flatten();
    if let Some(ends) = ends_doubt(
        state,
        set_up,
        proof.as_ref(),
        (when.made_at, residual, check),
    ) {
        bodies.extend(suspect::window(state, set_up, Some(ends)));
    }
    match check {
        Check::Good => bodies.extend(proof.map(|proof| {
            Body::SetUpProven(SetUpProven {
                set_up: asked.set_up.clone(),
                proof,
                basis: None,
            })
        })),
        Check::Failed if set_up.usable() => {
            let why = DoubtReason::FailedCheck {
                benchmark: asked.benchmark.clone(),
                residual,
            };
            let ends = EndShot {
                at: when.made_at,
                residual,
            };
            bodies.extend(doubt(state, set_up, why, Some(ends)));
        }
        Check::Again | Check::Failed => {}
    }
    Ok(bodies)
}

/// The shot that says what a doubted laser did: the first benchmark after a bump, and later the second one that agrees,
/// after which the laser is known not to have moved.
fn ends_doubt(
    state: &State,
    set_up: &SetUp,
    proof: Option<&Proof>,
    (at, residual, check): (Time, Length, Check),
) -> Option<EndShot> {
    if !matches!(set_up.state, SetUpState::InDoubt { .. }) {
        return None;
    }
    let unmoved = EndShot {
        at,
        residual: Length::ZERO,
    };
    if proof.is_some() {
        return Some(unmoved);
    }
    if !suspect::is_open_ended(state, &set_up.id) {
        return None;
    }
    Some(match check {
        Check::Good => unmoved,
        Check::Again | Check::Failed => EndShot { at, residual },
    })
}

/// What a good shot on this benchmark proves, if anything.
fn proof(set_up: &SetUp, benchmark: &str) -> Option<Proof> {
    match &set_up.state {
        SetUpState::Unproven => {
            let backsight_on = set_up.basis()?.benchmark.as_str();
            (backsight_on != benchmark).then(|| Proof::SecondBenchmark {
                benchmark: benchmark.to_owned(),
            })
        }
        SetUpState::Proven { .. } => None,
        SetUpState::InDoubt { agreed, .. } => {
            let first = agreed.iter().find(|other| *other != benchmark)?;
            Some(Proof::TwoBenchmarks {
                first: first.clone(),
                second: benchmark.to_owned(),
            })
        }
    }
}

fn explain(
    state: &State,
    set_up: &SetUp,
    asked: &ShootCheck,
    residual: Length,
    foresight: Length,
) -> Vec<Slip> {
    let (Some(site), Some(basis)) = (state.site(), set_up.basis()) else {
        return vec![];
    };
    let Some(rod) = site.rod(&asked.rod) else {
        return vec![];
    };
    let benchmarks: Vec<(String, Length)> = site
        .benchmarks
        .iter()
        .map(|benchmark| (benchmark.id.clone(), benchmark.elevation))
        .collect();
    explain_misclosure(&Misclosure {
        residual,
        backsight_on: &basis.benchmark,
        checked_on: &asked.benchmark,
        benchmarks: &benchmarks,
        backsight: basis.backsight,
        foresight,
        rod,
        doubt: site.rules.checks.warn,
    })
}

pub(crate) fn bumped(state: &State, by: &By, asked: &SayBumped) -> Result<Vec<Body>, Refusal> {
    let set_up = set_up::standing(state, &asked.set_up)?;
    if matches!(set_up.state, SetUpState::InDoubt { .. }) {
        return Ok(vec![]);
    }
    Ok(doubt(
        state,
        set_up,
        DoubtReason::Bumped {
            by: by.person.clone(),
        },
        None,
    ))
}

/// Calls on a set-up in doubt are gone. A machine pauses unless its work rests on another set-up that still holds.
fn doubt(state: &State, set_up: &SetUp, why: DoubtReason, ends: Option<EndShot>) -> Vec<Body> {
    let rests_elsewhere = |machine: &str| {
        state
            .cabs
            .get(machine)
            .and_then(|cab| cab.works_from.as_deref())
            .filter(|from| *from != set_up.id)
            .and_then(|from| state.set_up(from))
            .is_some_and(SetUp::usable)
    };
    let pauses: Vec<String> = state
        .cabs
        .keys()
        .filter(|machine| !rests_elsewhere(machine))
        .cloned()
        .collect();
    let mut bodies: Vec<Body> = pauses
        .iter()
        .filter_map(|machine| call::end_live(state, machine, Ending::StaleByLaser))
        .collect();
    bodies.push(Body::SetUpDoubted(SetUpDoubted {
        set_up: set_up.id.clone(),
        why,
        pauses,
    }));
    bodies.extend(suspect::window(state, set_up, ends));
    bodies
}

pub(crate) fn apply_check(state: &mut State, entry: &Entry, body: &CheckShot) {
    let Some(set_up) = state.set_up_mut(&body.set_up) else {
        return;
    };
    set_up.last_check = Some(CheckCard {
        benchmark: body.benchmark.clone(),
        residual: body.residual,
        at: entry.at,
        check: body.check,
    });
    match (&mut set_up.state, body.check) {
        (SetUpState::Proven { .. }, Check::Good) => set_up.now_good(entry.made_at),
        (SetUpState::Proven { .. }, Check::Again) => {
            if let Ok(drift) = set_up.drift.after(body.residual, CHECK_DOUBT_FT) {
                set_up.drift = drift;
            }
        }
        (SetUpState::InDoubt { agreed, .. }, Check::Good) if !agreed.contains(&body.benchmark) => {
            agreed.push(body.benchmark.clone());
        }
        (SetUpState::InDoubt { agreed, .. }, Check::Failed) => agreed.clear(),
        _ => {}
    }
}

pub(crate) fn apply_doubted(state: &mut State, entry: &Entry, body: &SetUpDoubted) {
    if let Some(set_up) = state.set_up_mut(&body.set_up) {
        set_up.state = SetUpState::InDoubt {
            why: body.why.clone(),
            since: entry.at,
            agreed: vec![],
        };
    }
    state.bumps += 1;
    for machine in &body.pauses {
        state.cab_mut(machine).paused = Some((body.set_up.clone(), entry.at));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::answer::Outcome;
    use crate::asked::Command;
    use crate::given::{Crew, ground, len};
    use crate::said::set_up::{CloseSetUp, LevelAgain, RestateSetUp, UseOneBenchmark};
    use crate::views::operator::{self, CabScreen};

    fn slips(outcome: &Outcome) -> Vec<Slip> {
        match outcome {
            Outcome::Checked { slips, .. } => slips.clone(),
            other => panic!("not a check: {other:?}"),
        }
    }

    fn paused(crew: &Crew, machine: &str) -> bool {
        let screen = operator::view(&crew.state, machine).unwrap().screen;
        matches!(screen, CabScreen::Pause { .. })
    }

    #[test]
    fn a_second_benchmark_proves_a_set_up_and_the_first_again_does_not() {
        let mut crew = Crew::opened();
        crew.set_up("BM-1", "5.00");
        crew.check("S1", "BM-1", "5.00").unwrap();
        assert!(!crew.state.set_up("S1").unwrap().usable());
        crew.check("S1", "BM-2", "3.48").unwrap();
        assert!(crew.state.set_up("S1").unwrap().usable());
    }

    #[test]
    fn the_wrong_benchmark_is_asked_about_first_and_never_put_right_by_itself() {
        let mut crew = Crew::opened();
        // The rod was on BM-2, BM-1 was picked: BM-2 then reads low by 101.52 − 100.00 = 1.52.
        crew.set_up("BM-1", "3.48");
        let answer = crew.check("S1", "BM-2", "3.48").unwrap();
        let Outcome::Checked { residual, .. } = answer.outcome else {
            panic!()
        };
        assert_eq!(residual, len("-1.52 ft"));
        assert!(matches!(
            slips(&answer.outcome).first(),
            Some(Slip::OtherBenchmark { perhaps, .. }) if perhaps == "BM-2"
        ));
        assert_eq!(crew.state.set_up("S1").unwrap().height(), len("103.48 ft"));
        crew.says(
            &ground(),
            Command::RestateSetUp(RestateSetUp {
                set_up: "S1".into(),
                benchmark: "BM-2".into(),
                rod: "A".into(),
                text: "3.48".into(),
            }),
        )
        .unwrap();
        let set_up = crew.state.set_up("S1").unwrap();
        assert_eq!(set_up.height(), len("105.00 ft"));
        assert_eq!(set_up.basis.len(), 2);
        assert!(!set_up.usable());
    }

    #[test]
    fn a_failed_check_takes_the_numbers_away_until_two_benchmarks_agree() {
        let mut crew = Crew::digging();
        crew.reads("P-1", "4.70").unwrap();
        crew.check("S1", "BM-2", "3.35").unwrap();
        assert!(paused(&crew, "EX-1") && paused(&crew, "EX-2"));
        assert!(crew.state.live_call("EX-1").is_none());
        let spot = crew.reads("P-1", "4.80").unwrap();
        assert!(matches!(spot.outcome, Outcome::Spot { .. }));
        crew.check("S1", "BM-2", "3.48").unwrap();
        crew.check("S1", "BM-2", "3.48").unwrap();
        assert!(paused(&crew, "EX-1"), "one benchmark twice is not two");
        crew.check("S1", "BM-1", "5.00").unwrap();
        assert!(!paused(&crew, "EX-1"));
        assert!(
            crew.state.live_call("EX-1").is_none(),
            "an ended call never comes back"
        );
        assert!(crew.reads("P-1", "4.80").is_ok());
    }

    #[test]
    fn between_good_and_failed_it_is_shot_again_and_nothing_changes() {
        let mut crew = Crew::digging();
        let answer = crew.check("S1", "BM-2", "3.46").unwrap();
        assert!(matches!(
            answer.outcome,
            Outcome::Checked {
                check: Check::Again,
                usable: true,
                ..
            }
        ));
        assert!(crew.state.set_up("S1").unwrap().usable());
    }

    #[test]
    fn a_bump_pauses_the_cabs_at_once() {
        let mut crew = Crew::digging();
        let bumped = SayBumped {
            set_up: "S1".into(),
        };
        crew.says(&ground(), Command::SayBumped(bumped)).unwrap();
        assert!(paused(&crew, "EX-1") && paused(&crew, "EX-2"));
    }

    #[test]
    fn a_new_proven_set_up_lifts_the_pause_too() {
        let mut crew = Crew::digging();
        crew.check("S1", "BM-2", "3.35").unwrap();
        crew.says(
            &ground(),
            Command::CloseSetUp(CloseSetUp {
                set_up: "S1".into(),
                why: "legs moved".into(),
            }),
        )
        .unwrap();
        assert!(paused(&crew, "EX-1"));
        crew.set_up("BM-1", "6.00");
        crew.check("S2", "BM-2", "4.48").unwrap();
        assert!(!paused(&crew, "EX-1"));
    }

    #[test]
    fn with_more_than_one_benchmark_one_is_not_enough() {
        let mut crew = Crew::opened();
        crew.set_up("BM-1", "5.00");
        let one = Command::UseOneBenchmark(UseOneBenchmark {
            set_up: "S1".into(),
        });
        assert!(matches!(
            crew.says(&ground(), one),
            Err(Refusal::SecondBenchmarkThere { .. })
        ));
    }

    #[test]
    fn the_only_benchmark_levelled_again_from_a_changed_height_proves_a_set_up() {
        let mut crew = Crew::opened();
        crew.state
            .site
            .as_mut()
            .unwrap()
            .site
            .benchmarks
            .truncate(1);
        crew.set_up("BM-1", "5.00");
        let again = |benchmark_again: &str, point_again: &str| {
            Command::LevelAgain(LevelAgain {
                set_up: "S1".into(),
                rod: "A".into(),
                point_before: "4.20".into(),
                benchmark_again: benchmark_again.into(),
                point_again: point_again.into(),
            })
        };
        // The same height again would repeat the same slip.
        assert!(crew.says(&ground(), again("5.00", "4.20")).is_err());
        // 0.30 higher, but the point is off by 0.10.
        assert!(crew.says(&ground(), again("5.30", "4.60")).is_err());
        crew.says(&ground(), again("5.30", "4.50")).unwrap();
        let set_up = crew.state.set_up("S1").unwrap();
        assert!(set_up.usable());
        assert_eq!(set_up.height(), len("105.30 ft"));
    }

    #[test]
    fn two_lasers_at_nearly_the_same_height_are_refused() {
        let mut crew = Crew::digging();
        let alike = Command::SetUpLaser(set_up::SetUpLaser {
            laser: "L1".into(),
            place: None,
            benchmark: "BM-1".into(),
            rod: "A".into(),
            text: "5.40".into(),
        });
        assert_eq!(
            crew.says(&ground(), alike),
            Err(Refusal::SetUpsAlike {
                set_up: "S1".into()
            })
        );
    }
}
