//! What no entry is said to touch does not change: a part that is not worked out anew is still what it was.

use std::collections::{BTreeMap, BTreeSet};

use day::asked::Command;
use day::entry::Body;
use day::given::{Crew, ground, operator, reading, supervisor};
use day::said::call::GotIt;
use day::said::receipt::{Delivered, Shown};
use day::state::State;
use day::time::seconds;
use earthwork::words::ScreenUnit;
use show::views;
use show::views::parts::{Due, Part};
use words::Language;

/// Parts by view and field.
fn parts(state: &State, due: Due) -> BTreeMap<String, Part> {
    let views = [
        ("ground", views::ground::parts(state, due)),
        ("supervisor", views::supervisor::parts(state, due)),
        ("sheet", views::sheet::parts(state, due)),
        ("visitor", views::visitor::parts(state, "PN", due)),
        ("EX-1", views::operator::parts(state, "EX-1", due)),
        ("EX-2", views::operator::parts(state, "EX-2", due)),
    ];
    let mut all = BTreeMap::new();
    for (view, parts) in views {
        for (field, part) in parts.into_iter().flatten() {
            if let Part::List(items) = &part {
                let names: BTreeSet<&String> = items.iter().map(|(name, _)| name).collect();
                assert_eq!(names.len(), items.len(), "two items of one name in {field}");
            }
            all.insert(format!("{view}: {field}"), part);
        }
    }
    all
}

/// Between two moments of a day: what the entries between them are not said to touch has not changed but by the clock alone.
pub(crate) fn nothing_untouched_changed(before: &State, crew: &Crew) -> Result<(), String> {
    let entries = crew.log.iter().filter(|entry| entry.seq > before.seq);
    let bodies = entries.map(|entry| &entry.body);
    let touched = bodies.map(Body::touches).max();
    let due = parts(&crew.state, Due::by(touched));
    let spare = parts(&crew.state, Due::SPARE);
    let before = State {
        at: crew.state.at,
        ..before.clone()
    };
    let before = parts(&before, Due::ALL);
    for (name, now) in parts(&crew.state, Due::ALL) {
        let is_due = due.contains_key(&name) || spare.contains_key(&name);
        if !is_due && before.get(&name).is_some_and(|before| *before != now) {
            let was = &before[&name];
            return Err(format!(
                "{name} was\n{was:?}\nand is\n{now:?}\nafter {touched:?}"
            ));
        }
    }
    Ok(())
}

/// The life of a call touches the machines' cards and the cab alone; a reading touches the mark's parts too.
#[test]
fn what_a_call_and_its_receipts_do_not_touch_stays() {
    let mut crew = Crew::digging();
    let step = |crew: &mut Crew, by, command| {
        let before = crew.state.clone();
        crew.says(&by, command).unwrap();
        nothing_untouched_changed(&before, crew).unwrap();
    };
    for (text, wait) in [("4.70", 2), ("4.95", 200), ("5.02", 300)] {
        crew.wait(seconds(wait));
        step(
            &mut crew,
            ground(),
            Command::TakeReading(reading("P-1", text)),
        );
        let Some(call) = crew.state.cabs["EX-1"].live else {
            continue;
        };
        let cab = || operator("EX-1");
        step(&mut crew, cab(), Command::Delivered(Delivered { call }));
        let (language, unit) = (Language::English, ScreenUnit::Tenths);
        let shown = Shown {
            call,
            language,
            unit,
        };
        step(&mut crew, cab(), Command::Shown(shown));
        step(&mut crew, cab(), Command::GotIt(GotIt { call }));
    }
    step(
        &mut crew,
        supervisor(),
        Command::StopAll(day::said::stop::StopAll::default()),
    );
}
