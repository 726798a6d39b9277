//! Laws of the whole day, on random crews: a replay is the day lived, and no old number ever comes back.

use super::parts::nothing_untouched_changed;
use proptest::prelude::*;

use day::asked::{By, Command};
use day::call::CallState;
use day::given::{Crew, ground, operator, reading, site, supervisor};
use day::said::call::{CantReason, CheckMe, GotIt, SayCant, WithdrawCall};
use day::said::check_shot::SayBumped;
use day::said::machine::SayMoved;
use day::said::rule::{Rule, Ruling};
use day::said::set_up::CloseSetUp;
use day::said::stop::{LiftStop, StopAll};
use day::state::State;
use day::{apply, chain};
use show::tell;
use show::views::{ground as ground_view, operator as cab, sheet, supervisor as supervisor_view};

const MARKS: [&str; 7] = ["P-1", "P-2", "R-1", "R-2", "R-3", "R-4", "S-1"];

#[derive(Clone, Debug)]
enum Step {
    Read {
        mark: usize,
        hundredths: u32,
        age_s: i64,
        restates: bool,
        paper: bool,
    },
    Check {
        benchmark: usize,
        hundredths: u32,
    },
    SetUp {
        hundredths: u32,
    },
    Press {
        which: u8,
    },
    Wait {
        seconds: i64,
    },
}

fn step() -> impl Strategy<Value = Step> {
    prop_oneof![
        6 => (0..MARKS.len(), 380_u32..780, -5_i64..120, prop::bool::weighted(0.1), prop::bool::weighted(0.15))
            .prop_map(|(mark, hundredths, age_s, restates, paper)| Step::Read { mark, hundredths, age_s, restates, paper }),
        2 => (0..2_usize, 340_u32..360).prop_map(|(benchmark, hundredths)| Step::Check { benchmark, hundredths }),
        1 => (500_u32..900).prop_map(|hundredths| Step::SetUp { hundredths }),
        4 => (0..11_u8).prop_map(|which| Step::Press { which }),
        3 => (0_i64..1_500).prop_map(|seconds| Step::Wait { seconds }),
    ]
}

fn feet(hundredths: u32) -> String {
    format!("{}.{:02}", hundredths / 100, hundredths % 100)
}

fn press(crew: &mut Crew, which: u8) {
    let live = crew.state.live_call("EX-1").map(|(id, _)| id);
    let machine = || "EX-1".to_owned();
    let set_up = || "S1".to_owned();
    let (by, command): (By, Command) = match which {
        0 => (ground(), Command::StopAll(StopAll { why: String::new() })),
        1 => (
            supervisor(),
            Command::LiftStop(LiftStop {
                machine: Some(machine()),
                press: u64::MAX,
                why: "seen".into(),
            }),
        ),
        2 => (
            supervisor(),
            Command::LiftStop(LiftStop {
                machine: None,
                press: u64::MAX,
                why: "seen".into(),
            }),
        ),
        3 => (operator("EX-1"), Command::CheckMe(CheckMe {})),
        4 => (
            operator("EX-1"),
            Command::SayCant(SayCant {
                why: CantReason::Water,
            }),
        ),
        5 => (
            operator("EX-1"),
            Command::GotIt(GotIt {
                call: live.unwrap_or(0),
            }),
        ),
        6 => (
            ground(),
            Command::WithdrawCall(WithdrawCall {
                call: live.unwrap_or(0),
            }),
        ),
        7 => (ground(), Command::SayBumped(SayBumped { set_up: set_up() })),
        8 => (
            ground(),
            Command::CloseSetUp(CloseSetUp {
                set_up: set_up(),
                why: String::new(),
            }),
        ),
        9 => (ground(), Command::SayMoved(SayMoved { machine: machine() })),
        _ => (
            supervisor(),
            Command::Rule(Rule {
                mark: "P-1".into(),
                ruling: Ruling::Patch,
                why: "so".into(),
            }),
        ),
    };
    // A refusal is an answer too; what it must not do is checked below.
    let _ = crew.says(&by, command);
}

fn play(crew: &mut Crew, step: &Step) {
    match step {
        Step::Read {
            mark,
            hundredths,
            age_s,
            restates,
            paper,
        } => {
            let mut asked = reading(MARKS[*mark], &feet(*hundredths));
            if let Some(last) = crew.state.set_ups.last() {
                asked.set_up.clone_from(&last.id);
            }
            if *restates {
                asked.restates = crew.state.readings.keys().last().copied();
            }
            // Paper is minutes old where a phone is seconds old.
            let age_s = if *paper { age_s * 20 } else { *age_s };
            asked.paper = paper.then(|| "JM".into());
            let made_at = crew.now.plus_ms(-age_s * 1_000);
            let _ = crew.said_at(
                &ground(),
                Command::TakeReading(asked),
                made_at.min(crew.now),
            );
        }
        Step::Check {
            benchmark,
            hundredths,
        } => {
            let id = crew
                .state
                .set_ups
                .last()
                .map_or("S1".into(), |last| last.id.clone());
            let (name, extra) = if *benchmark == 0 {
                ("BM-1", 152)
            } else {
                ("BM-2", 0)
            };
            let _ = crew.check(&id, name, &feet(hundredths + extra));
        }
        Step::SetUp { hundredths } => {
            let command = Command::SetUpLaser(day::said::set_up::SetUpLaser {
                laser: "L1".into(),
                place: None,
                benchmark: "BM-1".into(),
                rod: "A".into(),
                text: feet(*hundredths),
                slope: None,
            });
            let _ = crew.says(&ground(), command);
        }
        Step::Press { which } => press(crew, *which),
        Step::Wait { seconds } => {
            crew.wait(seconds * 1_000);
        }
    }
}

fn folded(crew: &Crew, from: State, skip: usize) -> State {
    let mut state = from;
    for entry in &crew.log[skip..] {
        apply(&mut state, entry);
    }
    state
}

fn no_old_number(crew: &Crew) -> Result<(), TestCaseError> {
    for machine in ["EX-1", "EX-2"] {
        let Some((id, call)) = crew.state.live_call(machine) else {
            continue;
        };
        prop_assert!(
            !matches!(call.state, CallState::Ended { .. }),
            "call {id} ended and is live"
        );
        if let Some(set_up) = &call.sent.set_up {
            // Taking the laser down does not make what it measured wrong; doubt does.
            let set_up = crew.state.set_up(set_up).unwrap();
            let doubted = matches!(set_up.state, day::state::SetUpState::InDoubt { .. });
            prop_assert!(!doubted, "call {id} rests on a laser in doubt");
        }
        let newest = call.sent.readings.last();
        let newest = newest.and_then(|id| crew.state.readings.get(id));
        let paper = newest.is_some_and(|taken| taken.reading.paper.is_some());
        prop_assert!(!paper, "call {id} came out of paper");
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, ..ProptestConfig::default() })]

    #[test]
    fn a_replay_from_anywhere_is_the_day_lived(
        steps in prop::collection::vec(step(), 1..60),
        cut in 0.0_f64..1.0,
    ) {
        let mut crew = Crew::digging();
        // On some days what the screens are sent is looked at too: it takes its time.
        let watched = steps.len().is_multiple_of(5);
        for step in &steps {
            let before = watched.then(|| crew.state.clone());
            play(&mut crew, step);
            no_old_number(&crew)?;
            if let Some(before) = before {
                nothing_untouched_changed(&before, &crew).map_err(TestCaseError::fail)?;
            }
        }
        prop_assert_eq!(&folded(&crew, State::default(), 0), &crew.state);
        // A restart at any entry: the state kept as JSON, the rest folded on top.
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a share of a short log")]
        let at = (cut * crew.log.len() as f64) as usize;
        let mut half = State::default();
        for entry in &crew.log[..at] {
            apply(&mut half, entry);
        }
        let kept: State = serde_json::from_str(&serde_json::to_string(&half).unwrap()).unwrap();
        prop_assert_eq!(&folded(&crew, kept, at), &crew.state);
        // The log on paper gives the log in memory, and every entry reads as a sentence.
        let mut walk = chain::Walk::default();
        for entry in &crew.log {
            let sealed = chain::seal(entry, &walk.hash).unwrap();
            prop_assert_eq!(&walk.step(&sealed.line).unwrap(), entry);
            let told = tell::tell(entry);
            prop_assert!(!told.text.english.is_empty() && !told.text.spanish.is_empty());
        }
        prop_assert!(ground_view::view(&crew.state).is_some());
        prop_assert!(supervisor_view::view(&crew.state).is_some());
        prop_assert_eq!(sheet::view(&crew.state).unwrap().marks.len(), site().marks.len());
        prop_assert!(cab::view(&crew.state, "EX-1").is_some());
    }
}
