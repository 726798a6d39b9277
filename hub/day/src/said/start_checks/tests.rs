//! The start of a day, told as given – when – then.

use super::*;
use crate::asked::{By, Command};
use crate::given::{Crew, ground, operator, supervisor};
use crate::said::day::OpenDay;

fn says(check: StartCheck, value: &str) -> Command {
    Command::SayStartCheck(SayStartCheck {
        check,
        value: value.into(),
        signals: vec![],
        as_before: None,
    })
}

fn ready(overrides: &[(StartCheck, &str)]) -> Command {
    let overrides = overrides.iter().map(|(check, why)| StartOverride {
        check: *check,
        why: (*why).into(),
    });
    Command::ReadyDay(ReadyDay {
        overrides: overrides.collect(),
    })
}

#[test]
fn a_start_check_takes_a_value_and_no_tick() {
    let mut crew = Crew::digging();
    for tick in ["", " ", "ok", "OK.", "✓", "x", "sí", "Listo!"] {
        let said = crew.says(&ground(), says(StartCheck::FirstAid, tick));
        assert!(matches!(said, Err(Refusal::HeldBack { .. })), "{tick:?}");
    }
    let value = "box in the truck, hospital 4 miles by the county road";
    crew.says(&ground(), says(StartCheck::FirstAid, value))
        .unwrap();
    assert_eq!(crew.state.start.said[&StartCheck::FirstAid].value, value);
    assert_eq!(crew.state.start.said[&StartCheck::FirstAid].by, "RT");
    let no = crew.says(&operator("EX-1"), says(StartCheck::Laser, "tested"));
    assert!(matches!(no, Err(Refusal::NotAllowed { .. })));
}

#[test]
fn hand_signals_are_named_and_stop_is_among_them() {
    let mut crew = Crew::digging();
    let signals = |signals: &[HandSignal]| {
        Command::SayStartCheck(SayStartCheck {
            check: StartCheck::HandSignals,
            value: String::new(),
            signals: signals.to_vec(),
            as_before: None,
        })
    };
    let without = crew.says(&ground(), signals(&[HandSignal::Lower]));
    assert!(matches!(without, Err(Refusal::HeldBack { .. })));
    let with = [HandSignal::Grade, HandSignal::Stop, HandSignal::Stop];
    crew.says(&ground(), signals(&with)).unwrap();
    let said = &crew.state.start.said[&StartCheck::HandSignals];
    assert_eq!(said.signals, [HandSignal::Stop, HandSignal::Grade]);
}

#[test]
fn a_day_is_ready_with_every_check_or_a_named_reason_and_begins_anew_tomorrow() {
    let mut crew = Crew::digging();
    let Err(Refusal::HeldBack(text)) = crew.says(&supervisor(), ready(&[])) else {
        panic!("nothing was looked at");
    };
    assert!(
        text.english.contains("hat and vest") && text.english.contains("ladders"),
        "{text:?}"
    );
    for check in START_CHECKS {
        if check != StartCheck::HandSignals && check != StartCheck::WaysOut {
            crew.says(&ground(), says(check, "seen at the truck"))
                .unwrap();
        }
    }
    let why = "no cut is 4 ft deep yet";
    let one = crew.says(&supervisor(), ready(&[(StartCheck::WaysOut, why)]));
    assert!(
        matches!(one, Err(Refusal::HeldBack { .. })),
        "signals are left"
    );
    let tick = [(StartCheck::WaysOut, why), (StartCheck::HandSignals, "ok")];
    assert!(crew.says(&supervisor(), ready(&tick)).is_err());
    let both = [
        (StartCheck::WaysOut, why),
        (StartCheck::HandSignals, "operators come at 8, agreed then"),
        // It has a value: a reason for it is not needed, and not kept.
        (StartCheck::Laser, "whatever else"),
    ];
    assert!(
        crew.says(&ground(), ready(&both)).is_err(),
        "a supervisor says it"
    );
    crew.says(&supervisor(), ready(&both)).unwrap();
    let kept = crew.state.start.ready.clone().unwrap();
    assert_eq!((kept.by.as_str(), kept.overrides.len()), ("PN", 2));
    let day = OpenDay {
        day: "2030-05-15".into(),
    };
    crew.says(&By::hub(), Command::OpenDay(day)).unwrap();
    assert!(crew.state.start.said.is_empty() && crew.state.start.ready.is_none());
}

#[test]
fn yesterdays_words_stand_only_by_whoever_looks_again_and_not_for_ever() {
    let mut crew = Crew::digging();
    let value = "box in the truck, hospital 4 miles by the county road";
    crew.says(&ground(), says(StartCheck::FirstAid, value))
        .unwrap();
    crew.says(&ground(), says(StartCheck::HatAndVest, "RT, OP, PN"))
        .unwrap();
    let first = crew.state.start.said[&StartCheck::FirstAid].at;
    let next = |crew: &mut Crew, day: &str, hours: i64| {
        crew.wait(minutes(60 * hours));
        let open = OpenDay { day: day.into() };
        crew.says(&By::hub(), Command::OpenDay(open)).unwrap();
    };
    next(&mut crew, "2030-05-15", 20);
    assert!(
        crew.state.start.said.is_empty(),
        "nothing is ticked by itself"
    );
    assert!(
        crew.says(&supervisor(), ready(&[])).is_err(),
        "what nobody has looked at again is missing"
    );
    let again = |check, at, value: &str| {
        Command::SayStartCheck(SayStartCheck {
            check,
            value: value.into(),
            signals: vec![],
            as_before: Some(at),
        })
    };
    let offered = before(&crew.state, StartCheck::FirstAid).unwrap();
    assert_eq!((offered.value.as_str(), offered.at), (value, first));
    let hats = crew.state.start.before[&StartCheck::HatAndVest].at;
    for wrong in [
        again(StartCheck::HatAndVest, hats, ""),
        again(StartCheck::FirstAid, first.plus_ms(1), ""),
        again(StartCheck::FirstAid, first, "and more"),
        again(StartCheck::Laser, first, ""),
    ] {
        let said = crew.says(&ground(), wrong.clone());
        assert!(matches!(said, Err(Refusal::HeldBack { .. })), "{wrong:?}");
    }
    crew.says(&ground(), again(StartCheck::FirstAid, first, ""))
        .unwrap();
    let said = crew.state.start.said[&StartCheck::FirstAid].clone();
    assert_eq!((said.value.as_str(), said.as_before), (value, Some(first)));
    assert_eq!(said.at, crew.now, "seen now");
    // Confirmed day after day, it is typed anew a week after it was typed.
    next(&mut crew, "2030-05-16", 24);
    assert!(before(&crew.state, StartCheck::FirstAid).is_some());
    next(&mut crew, "2030-05-22", 6 * 24);
    assert_eq!(before(&crew.state, StartCheck::FirstAid), None);
}

#[test]
fn words_about_tickets_are_typed_anew_once_one_has_run_out() {
    let mut crew = Crew::digging();
    crew.says(
        &ground(),
        says(StartCheck::LocateTickets, "A1 until the 15th"),
    )
    .unwrap();
    let site = &mut crew.state.site.as_mut().unwrap().site;
    site.cuts.tickets = vec![crate::cuts::plan::Ticket {
        id: "A1".into(),
        from: "2030-05-01".into(),
        to: "2030-05-15".into(),
        area: vec![],
        asks: vec![],
    }];
    let open = |crew: &mut Crew, day: &str| {
        let open = OpenDay { day: day.into() };
        crew.says(&By::hub(), Command::OpenDay(open)).unwrap();
    };
    open(&mut crew, "2030-05-15");
    assert!(before(&crew.state, StartCheck::LocateTickets).is_some());
    open(&mut crew, "2030-05-16");
    assert_eq!(before(&crew.state, StartCheck::LocateTickets), None);
}
