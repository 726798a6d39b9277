//! What no entry is said to touch does not change: a part that is not worked out anew is still what it was.

use std::collections::{BTreeMap, BTreeSet};

use day::asked::{By, Command};
use day::given::{Crew, ground, operator, reading, supervisor};
use day::said::call::GotIt;
use day::said::receipt::{Delivered, Shown};
use day::said::spotter::BeSpotter;
use day::said::way_in::notice::NoticeLink;
use day::state::State;
use day::time::seconds;
use earthwork::words::ScreenUnit;
use show::board::Board;
use show::views;
use show::views::parts::{Alike, Due, Part};
use words::Language;

/// Parts by view and field; those of a list that goes mark by mark each under its own name too.
fn parts(state: &State, due: &Due) -> BTreeMap<String, Part> {
    let alike = &Alike::default();
    let views = [
        ("ground", views::ground::parts(state, due, alike)),
        ("supervisor", views::supervisor::parts(state, due, alike)),
        ("sheet", views::sheet::parts(state, due, alike)),
        ("visitor", views::visitor::parts(state, "PN", due, alike)),
        ("EX-1", views::operator::parts(state, "EX-1", due, alike)),
        ("EX-2", views::operator::parts(state, "EX-2", due, alike)),
    ];
    let mut all = BTreeMap::new();
    for (view, parts) in views {
        for (field, part) in parts.into_iter().flatten() {
            let names: Vec<&String> = match &part {
                Part::List(items) => items.iter().map(|(name, _)| name).collect(),
                Part::Some { order, .. } => order.iter().collect(),
                _ => vec![],
            };
            let different: BTreeSet<&String> = names.iter().copied().collect();
            assert_eq!(
                names.len(),
                different.len(),
                "two items of one name in {field}"
            );
            match part {
                Part::Some { items, order } => {
                    let order = Part::Field(order.join(" "));
                    all.insert(format!("{view}: {field}"), order);
                    all.extend(items.into_iter().map(|(name, item)| {
                        let item = item.map_or(Part::LeftOut, Part::Field);
                        (format!("{view}: {field}: {name}"), item)
                    }));
                }
                part => {
                    all.insert(format!("{view}: {field}"), part);
                }
            }
        }
    }
    all
}

/// Between two moments of a day: what the entries between them are not said to touch has not changed but by the clock alone.
pub(crate) fn nothing_untouched_changed(before: &State, crew: &Crew) -> Result<(), String> {
    let entries = crew.log.iter().filter(|entry| entry.seq > before.seq);
    let touched = Due::by(entries.map(|entry| &entry.body));
    let due = parts(&crew.state, &touched);
    let spare = parts(&crew.state, &Due::SPARE);
    let before = State {
        at: crew.state.at,
        ..before.clone()
    };
    if !touched.is_all() && Board::of(&before) != Board::of(&crew.state) {
        return Err(format!("who is known has changed after {touched:?}"));
    }
    let before = parts(&before, &Due::ALL);
    let now = parts(&crew.state, &Due::ALL);
    for name in before.keys().chain(now.keys()) {
        // What is worked out whole also loses what is not there any more.
        let field: String = name.split(": ").take(2).collect::<Vec<_>>().join(": ");
        let whole = touched.is_all() && due.contains_key(&field);
        let is_due = whole || due.contains_key(name) || spare.contains_key(name);
        let (was, is) = (before.get(name), now.get(name));
        if !is_due && was != is {
            return Err(format!(
                "{name} was\n{was:?}\nand is\n{is:?}\nafter {touched:?}"
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

/// Whose link is known to be lost is no part of a call's life: the hub asks by it whom to say it of.
#[test]
fn a_link_that_is_lost_and_back_touches_who_is_known() {
    let mut crew = Crew::digging();
    let machine = "EX-1".to_owned();
    crew.says(&ground(), Command::BeSpotter(BeSpotter { machine }))
        .unwrap();
    for lost in [true, false] {
        crew.wait(seconds(5));
        let before = crew.state.clone();
        let device = ground().device;
        crew.says(&By::hub(), Command::NoticeLink(NoticeLink { device, lost }))
            .unwrap();
        assert_ne!(Board::of(&before), Board::of(&crew.state));
        nothing_untouched_changed(&before, &crew).unwrap();
    }
}
