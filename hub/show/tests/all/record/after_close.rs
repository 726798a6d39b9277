//! Whatever is tried on a closed and signed day, in whatever order: nothing changes that the signature covers, what is refused
//! leaves no trace and says why in both languages, and what is taken is a new entry behind the signed ones.

use proptest::prelude::*;
use serde_json::{Value, json};

use super::{closed, folded, signs, visitor};
use day::account::meter::Doing;
use day::asked::{By, Command};
use day::chain;
use day::given::{Crew, ground, operator, supervisor};
use day::state::State;
use day::time::minutes;

const FOOT: i64 = 3_048_000;

/// One of everything that people say on a dig, and who says it.
fn tries() -> Vec<(By, Value)> {
    let signature = json!({ "name": "P. N.", "strokes": "M10 20L11 22L40 8" });
    let grade = json!({ "shape": { "kind": "flat", "elevation": 99 * FOOT }, "stack": { "surface": "ground", "layers": [] } });
    let said_on_site = [
        json!({ "kind": "take_reading", "mark": "P-1", "set_up": "S1", "rod": "A", "text": "4.70", "mode": "rod" }),
        json!({ "kind": "take_reading", "mark": "R-1", "set_up": "S1", "rod": "A", "text": "7.00", "mode": "rod" }),
        json!({ "kind": "set_up_laser", "laser": "L1", "benchmark": "BM-1", "rod": "A", "text": "5.00" }),
        json!({ "kind": "shoot_check", "set_up": "S1", "benchmark": "BM-2", "rod": "A", "text": "3.78" }),
        json!({ "kind": "say_bumped", "set_up": "S1" }),
        json!({ "kind": "close_set_up", "set_up": "S1", "why": "home" }),
        json!({ "kind": "restate_set_up", "set_up": "S1", "benchmark": "BM-2", "rod": "A", "text": "3.48" }),
        json!({ "kind": "quick_call", "machine": "EX-1", "word": "more" }),
        json!({ "kind": "withdraw_call", "call": 1 }),
        json!({ "kind": "lay_marks", "marks": ["P-1"], "from": { "kind": "control" } }),
        json!({ "kind": "scrape_marks", "marks": ["P-1"] }),
        json!({ "kind": "place_machine", "machine": "EX-1", "at": { "x": 30 * FOOT, "y": 20 * FOOT } }),
        json!({ "kind": "count_load", "way": "out", "material": "soil", "loose_cy": 12 }),
        json!({ "kind": "compact", "on": "PAD", "lift": 1, "thickness": FOOT / 2, "passes": 4, "damp": "right" }),
        json!({ "kind": "test_soil", "mark": "P-1", "tester": "HF", "test": { "kind": "bearing", "stated_psf": 3_000, "asked_psf": 2_500 } }),
        json!({ "kind": "void_test", "test": 1, "why": "rain" }),
        json!({ "kind": "point_rock", "mark": "P-1", "top": 100 * FOOT }),
        json!({ "kind": "promise_photo", "photo": "photo-after", "sha256": "a".repeat(64), "mark": "P-1" }),
        json!({ "kind": "add_note", "words": "gate locked" }),
        json!({ "kind": "ask_in", "machine": "EX-1", "visit": "visit-after" }),
        json!({ "kind": "stop_all", "why": "a child at the fence" }),
    ];
    let said_in_the_truck = [
        json!({ "kind": "lift_stop", "why": "gone" }),
        json!({ "kind": "set_aim", "on": ["PAD"], "aim": -FOOT / 50, "why": "scatter" }),
        json!({ "kind": "change_site", "put": [], "retire": [{ "list": "mark", "id": "P-1" }], "why": "gone" }),
        json!({ "kind": "revise_target", "target": "PAD", "grade": grade, "tolerance": { "high": FOOT / 10, "low": FOOT / 5 }, "why": "as told" }),
        json!({ "kind": "rule", "mark": "P-1", "ruling": "leave", "why": "as told" }),
        json!({ "kind": "order_gravel", "tons": 24 }),
        json!({ "kind": "set_prices", "prices": { "money": "$" } }),
        json!({ "kind": "ask_inspection", "what": "pad", "of": "county", "targets": ["PAD"] }),
        json!({ "kind": "inspect", "what": "pad", "targets": ["PAD"], "inspector": "VZ",
            "items": [{ "what": "pad", "found": "clean" }], "result": "passed", "words": "fine" }),
        json!({ "kind": "ask_query", "question": "how deep?", "of": "engineer", "on": ["P-1"], "stop": true }),
        json!({ "kind": "answer_query", "query": "Q1", "answer": "a foot", "answered_by": "engineer" }),
        json!({ "kind": "close_day", "overrides": [] }),
        json!({ "kind": "sign_day", "signature": signature }),
        json!({ "kind": "amend_day", "entry": 5, "words": "the rod was B", "signature": signature }),
    ];
    let said_in_the_cab = [
        json!({ "kind": "got_it", "call": 1 }),
        json!({ "kind": "check_me" }),
        json!({ "kind": "say_cant", "why": "water" }),
        json!({ "kind": "release" }),
    ];
    let on_site = said_on_site.into_iter().map(|said| (ground(), said));
    let truck = said_in_the_truck
        .into_iter()
        .map(|said| (supervisor(), said));
    let cab = said_in_the_cab
        .into_iter()
        .map(|said| (operator("EX-1"), said));
    let visit = (visitor("VZ"), json!({ "kind": "visit", "on_site": true }));
    on_site.chain(truck).chain(cab).chain([visit]).collect()
}

/// What a signature stands under: what was measured, called, asked of the ground and worked.
fn covered(state: &State) -> impl PartialEq + std::fmt::Debug + use<> {
    let hours: Vec<(String, Vec<(Doing, i64)>)> = state
        .account
        .meters
        .iter()
        .map(|(machine, meter)| {
            let spans = meter.spans.iter();
            let spans = spans.map(|span| (span.doing, span.to.ms_since(span.from)));
            (machine.clone(), spans.collect())
        })
        .collect();
    (
        (
            state.readings.clone(),
            state.calls.clone(),
            state.set_ups.clone(),
        ),
        (
            state.suspects.clone(),
            state.site.clone(),
            state.aims.clone(),
        ),
        (
            state.record.closed.clone(),
            state.record.signed.clone(),
            hours,
        ),
    )
}

/// The hash that the chain has after its first so many entries.
fn hash(crew: &Crew, entries: u64) -> String {
    let mut head = chain::GENESIS.to_owned();
    for entry in crew.log.iter().take_while(|entry| entry.seq <= entries) {
        head = chain::seal(entry, &head).unwrap().hash;
    }
    head
}

/// Tries one thing, made so many minutes ago.
fn attempt(crew: &mut Crew, one: &(By, Value), ago: i64) -> bool {
    let command: Command =
        serde_json::from_value(one.1.clone()).unwrap_or_else(|error| panic!("{}: {error}", one.1));
    let before = (crew.state.clone(), crew.log.len());
    let made_at = crew.now.plus_ms(-minutes(ago));
    match crew.said_at(&one.0, command, made_at) {
        Ok(_) => true,
        Err(refusal) => {
            assert_eq!(
                (&crew.state, crew.log.len()),
                (&before.0, before.1),
                "{refusal}"
            );
            let (english, spanish) = (refusal.to_string(), refusal.text().spanish);
            assert!(
                english.len() > 12 && spanish.len() > 12 && english != spanish,
                "{english}"
            );
            false
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]
    #[test]
    fn nothing_that_a_signature_covers_changes_behind_it(
        sign in any::<bool>(),
        steps in proptest::collection::vec((0_usize..40, 0_i64..40), 1..24),
    ) {
        let tries = tries();
        prop_assert_eq!(tries.len(), 40);
        let mut crew = closed();
        if sign {
            crew.says(&supervisor(), signs()).unwrap();
        }
        let (end, before) = (crew.state.seq, covered(&crew.state));
        let head = hash(&crew, end);
        for (which, ago) in steps {
            // An unsigned day may still be signed: then its signature is what changes.
            if !sign && tries[which].1["kind"] == "sign_day" {
                continue;
            }
            crew.wait(minutes(1));
            attempt(&mut crew, &tries[which], ago);
            prop_assert!(covered(&crew.state) == before, "{}", tries[which].1);
        }
        prop_assert_eq!(hash(&crew, end), head);
        prop_assert!(folded(&crew) == crew.state);
    }
}

/// The property says something only when some of these are taken and some are refused for the close alone.
#[test]
fn on_the_open_day_the_same_is_taken_that_the_close_refuses() {
    let taken = |mut crew: Crew| -> Vec<String> {
        let all = tries().into_iter();
        all.filter(|one| attempt(&mut crew, one, 0))
            .map(|(_, said)| said["kind"].as_str().unwrap().to_owned())
            .collect()
    };
    let mut open = Crew::digging();
    open.reads("P-1", "4.70").unwrap();
    let mut behind = closed();
    behind.wait(minutes(1));
    let (open, closed) = (taken(open), taken(behind));
    for kind in [
        "take_reading",
        "set_aim",
        "revise_target",
        "order_gravel",
        "count_load",
        "quick_call",
    ] {
        assert!(open.iter().any(|one| one == kind), "{kind}: {open:?}");
        assert!(!closed.iter().any(|one| one == kind), "{kind}");
    }
    for kind in [
        "add_note",
        "stop_all",
        "test_soil",
        "ask_inspection",
        "visit",
    ] {
        assert!(closed.iter().any(|one| one == kind), "{kind}: {closed:?}");
    }
}
