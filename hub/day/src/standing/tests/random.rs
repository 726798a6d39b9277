//! On random days no call lives that the hub would not send again at that moment: found on 10⁵ steps.

use super::*;

/// One step of a random day: what, with which number, and how many seconds ago it was said.
type Step = (u8, u32, i64);

#[expect(
    clippy::too_many_lines,
    reason = "one line for each thing that can be said"
)]
fn command(crew: &Crew, what: u8, n: u32) -> (By, Command) {
    let pick = |names: &[&str]| names[n as usize % names.len()].to_owned();
    let machine = pick(&["EX-1", "EX-2"]);
    let mark = pick(&["R-1", "R-2", "P-1", "R-3", "P-2"]);
    let zone = pick(&["BANK", "DITCH"]);
    let alarm = crew
        .state
        .cuts
        .face(&zone)
        .and_then(|face| face.alarm.as_ref());
    let alarm = alarm.map(|alarm| alarm.alarm);
    let set_up = crew
        .state
        .set_ups
        .last()
        .map_or("S1".into(), |last| last.id.clone());
    let cab = operator(&machine);
    match what {
        0..=9 => {
            let text = format!("{}.{:02}", 4 + n % 4, n % 100);
            let restates = n
                .is_multiple_of(11)
                .then(|| crew.state.readings.keys().last().copied());
            let asked = TakeReading {
                set_up,
                restates: restates.flatten(),
                machine: n.is_multiple_of(7).then_some(machine),
                ..reading(&mark, &text)
            };
            (ground(), Command::TakeReading(asked))
        }
        10 => (ground(), Command::StopAll(StopAll::default())),
        11 | 12 => (supervisor(), lifts(crew)),
        13 => (ground(), Command::SayMoved(SayMoved { machine })),
        14 => (
            ground(),
            places(&machine, &format!("{} ft", n % 60), "40 ft"),
        ),
        15 if n.is_multiple_of(2) => (cab, gives(&machine)),
        15 => (By::hub(), joins(&format!("m{n}"), &machine)),
        16 => {
            let device = crew.state.cabs[&machine].device.clone();
            let device = device.unwrap_or_else(|| "m1".into());
            (supervisor(), Command::RemovePhone(RemovePhone { device }))
        }
        17 => (ground(), paint(n.is_multiple_of(2))),
        18 => (ground(), bared()),
        19 => (ground(), Command::SayCameDown(SayCameDown { zone })),
        20 => {
            let alarm = alarm.unwrap_or_default();
            (cab, Command::LeaveFace(LeaveFace { zone, alarm }))
        }
        21 | 22 => {
            let class = [SoilClass::B, SoilClass::C][n as usize % 2];
            (
                supervisor(),
                Command::InspectFace(inspection(&zone, class, alarm)),
            )
        }
        23 => {
            let held = crate::cuts::held::at_mark(&crew.state, &mark);
            let held = held.unwrap_or(crate::cuts::held::HeldBy::NotLocated {
                mark: Some(mark.clone()),
            });
            let why = "the engineer says so".into();
            (supervisor(), Command::AllowDig(AllowDig { held, why }))
        }
        24 => (ground(), Command::SayBumped(SayBumped { set_up })),
        25 => {
            let why = String::new();
            (ground(), Command::CloseSetUp(CloseSetUp { set_up, why }))
        }
        26 => (
            supervisor(),
            corrected(crew, &pick(&["BM-1", "BM-2"]), "0.50 ft"),
        ),
        27 => {
            let mut things = machine_without_its_run(crew);
            if n.is_multiple_of(2) {
                let site = site();
                things = site.machines.into_iter().map(SiteThing::Machine).collect();
            }
            (supervisor(), change(things, vec![]))
        }
        28 => {
            let asked = AskQuery {
                question: "which line?".into(),
                of: "engineer".into(),
                on: vec![mark],
                stop: true,
                photo: None,
            };
            (supervisor(), Command::AskQuery(asked))
        }
        29 => {
            let asked = AnswerQuery {
                query: format!("Q-{}", 1 + n % 4),
                answer: "the upper one".into(),
                answered_by: "engineer".into(),
                target: None,
            };
            (supervisor(), Command::AnswerQuery(asked))
        }
        30 => {
            let mark = n.is_multiple_of(2).then_some(mark);
            let word = QuickWord::More;
            (
                ground(),
                Command::QuickCall(QuickCall {
                    machine,
                    word,
                    mark,
                }),
            )
        }
        _ => {
            let behind = n.is_multiple_of(3);
            (
                By::hub(),
                Command::NoticeRestart(NoticeRestart {
                    clock_behind: behind,
                }),
            )
        }
    }
}

/// The hub would send it again at this moment: the same shot, from the same person, is neither held nor refused nor late.
fn would_be_sent(crew: &Crew, machine: &str) -> Result<(), TestCaseError> {
    let Some((id, call)) = crew.state.live_call(machine) else {
        return Ok(());
    };
    let cab = &crew.state.cabs[machine];
    prop_assert_eq!(
        &cab.device,
        &call.screen,
        "call {} was sent to another screen",
        id
    );
    prop_assert!(
        cab.stop.is_some() || call.stale_at > crew.state.at,
        "call {id} is too old"
    );
    // What was said since, read off the log alone.
    for entry in crew.log.iter().filter(|entry| entry.seq > id) {
        let gone = match &entry.body {
            Body::MachineMoved(b) => b.machine == machine && entry.made_at >= call.made_at,
            Body::SetUpClosed(b) => Some(&b.set_up) == call.sent.set_up.as_ref(),
            Body::SetUpDoubted(b) => Some(&b.set_up) == call.sent.set_up.as_ref(),
            Body::ReadingTaken(b) => b
                .reading
                .restates
                .is_some_and(|old| call.sent.readings.contains(&old)),
            Body::CallEnded(b) => b.call == id,
            _ => false,
        };
        prop_assert!(!gone, "call {} outlived {:?}", id, entry.body);
    }
    let again = match (call.sent.readings.last(), &call.sent.mark) {
        (Some(last), Some(_)) => {
            let taken = &crew.state.readings[last].reading;
            Command::TakeReading(TakeReading {
                set_up: taken.set_up.clone(),
                machine: Some(machine.to_owned()),
                ..reading(&taken.mark, &taken.text)
            })
        }
        (_, mark) => Command::QuickCall(QuickCall {
            machine: machine.to_owned(),
            word: QuickWord::More,
            mark: mark.clone(),
        }),
    };
    let asked = Asked {
        key: "probe-of-the-test".into(),
        by: ground(),
        made_at: crew.now,
        command: again,
    };
    let bodies = decide(&crew.state, &asked, crew.now, "");
    // A question, and a doubt that a supervisor rules on, are about the figure and hold nothing.
    let sent = bodies.as_ref().is_ok_and(|bodies| {
        bodies.iter().any(|body| match body {
            Body::CallSent(_) | Body::ReadingAsked(_) => true,
            Body::ReadingTaken(b) => b
                .reading
                .judged
                .as_ref()
                .is_some_and(|one| one.needs_ruling),
            _ => false,
        })
    });
    prop_assert!(sent, "call {} lives, and would now be {:?}", id, bodies);
    Ok(())
}

/// Random days below, of ninety steps each at the mean: 10⁵ steps in all; set it higher for a long run.
fn days() -> u32 {
    std::env::var_os("RODCALL_STANDING_DAYS")
        .and_then(|days| days.to_str()?.parse().ok())
        .unwrap_or(1_200)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: days(), max_shrink_iters: 2_000, ..ProptestConfig::default() })]

    #[test]
    fn on_random_days_no_call_lives_that_would_not_be_sent(
        steps in prop::collection::vec((0_u8..32, 0_u32..1_000, prop_oneof![3 => Just(0_i64), 1 => 1_i64..200]), 60..120),
    ) {
        let mut crew = called();
        let steps: Vec<Step> = steps;
        for (what, n, ago) in steps {
            crew.wait(seconds(i64::from(n % 120)));
            let (by, command) = command(&crew, what, n);
            // A refusal is an answer too.
            let _ = crew.said_at(&by, command, crew.now.plus_ms(-seconds(ago)));
            if crew.state.set_ups.iter().all(|one| !one.usable()) && n.is_multiple_of(3) {
                let _ = crew.check("S1", "BM-1", "5.00");
                let _ = crew.check("S1", "BM-2", "3.48");
            }
            for machine in ["EX-1", "EX-2"] {
                would_be_sent(&crew, machine)?;
            }
        }
    }
}
