//! Bad inputs that a job sees sooner or later, each with the test that shows what becomes of it.
//!
//! | bad input | shown by |
//! |---|---|
//! | points with east and north swapped; in metres; off by the other foot (`fixtures/survey`) | `import::tests::the_bad_lists_of_points_are_suspected_for_what_they_are` |
//! | a plan's big survey-foot numbers, not truncated | `a_plans_big_numbers_are_noticed`; `site_frame::tests::the_origin_comes_off_before_the_unit` |
//! | a target elevation of 3020.0 for 302.00 | `a_slipped_decimal_in_a_target_is_noticed` |
//! | a trench whose outlet lies above its inlet | `a_trench_that_rises_the_way_it_flows_is_refused` |
//! | a mark's name twice | `a_name_that_stands_twice_is_refused_with_its_line` |
//! | a polygon that crosses itself | `a_boundary_that_crosses_itself_is_refused` |
//! | 85.4 on a rod of 13 ft; 7-13 in | `a_rod_value_that_is_not_on_the_rod_is_refused` |
//! | an expired ticket, ground asked for that crosses itself, a face of negative height | `cuts::a_site_file_whose_cuts_can_not_be_is_refused_with_the_line`; expired today: `day::cuts::tests::ground_that_no_ticket_covers…` |
//! | a negative tolerance | `a_negative_tolerance_is_refused` |
//! | two benchmarks 0.03 ft apart | `benchmarks_that_look_alike_are_noticed`; disagreeing by it: `two_benchmarks_that_disagree_prove_nothing` |
//! | a log with one byte changed | `verbs::a_log_is_proven_and_one_changed_letter_is_found_with_its_entry`; any damage: `readers`, `log` |
//! | a log cut while a phone remembers more | `keeping::a_log_that_lost_what_was_answered_is_said_to_be_short`; `a_phone_that_remembers_more_than_the_log_loses_nothing` |
//! | a phone's clock three hours wrong | `a_phone_whose_clock_is_three_hours_wrong_is_told_the_hubs` |
//! | one key five times | `delivery::the_same_key_five_times_is_one_entry_and_one_answer_even_after_a_restart` |
//! | 300 readings in ten seconds | `three_hundred_readings_at_once_are_each_kept_or_told_to_come_again` |
//! | a name with script tags; a mark named by an emoji | `names_that_are_code_or_pictures_are_names` |
//! | a day over midnight | `said::day::tests::a_day_that_goes_on_over_midnight_keeps_its_name_and_its_laser` |
//! | a clock set back an hour in the middle of the day | `faults`: `clock::a_clock_that_is_set_back_an_hour_in_the_middle_of_the_day_changes_nothing` |
//! | an empty day that is signed | `day::record::tests::signing::an_empty_day_is_signed_as_empty` |
//!
//! Site files to look at: `fixtures/site/bad` are refused, `fixtures/site/odd` are in order and odd; each says in its first line
//! where and why, and `verbs::each_bad_site_file_is_refused_with_its_line_and_the_good_ones_are_in_order` holds `check` to it.

use std::fs;
use std::path::Path;

use serde_json::Value;

use crate::harness::phone::now_ms;
use crate::harness::yard::{SITE, Yard, prove_laser, reading, serve, set_up, write_site};
use crate::harness::{folder, rodcall, words};

/// What `check` says of the yard's site file with one thing changed.
fn checked(text: &str, with: &str) -> (bool, String) {
    assert!(SITE.contains(text), "{text}");
    let place = folder();
    write_site(place.path(), &SITE.replacen(text, with, 1));
    check(&place.path().join("site.toml"))
}

fn check(path: &Path) -> (bool, String) {
    let output = rodcall(&["check".as_ref(), path.as_os_str()]);
    (output.status.success(), words(&output))
}

/// The line on which a text stands in the site file of the yard.
fn line_of(text: &str) -> usize {
    let at = SITE.find(text).expect("a text of the site");
    SITE[..at].lines().count() + 1
}

#[test]
fn a_plans_big_numbers_are_noticed() {
    let place = r#"at = ["30 ft", "20 ft"]"#;
    let (good, said) = checked(place, r#"at = ["2000030.12 ft", "700020.45 ft"]"#);
    assert!(
        good && said.contains("odd: P-1 lies 2,000,030.12 ft")
            || said.contains("odd: P-1 lies 2000030.12 ft"),
        "{said}"
    );
    assert!(said.contains("the plan's own number"), "{said}");
    let (good, said) = checked(place, place);
    assert!(good && !said.contains("odd"), "{said}");
}

#[test]
fn a_slipped_decimal_in_a_target_is_noticed() {
    // 1005.00 − 0.50 = 1004.50 ft, 902.98 ft above BM-2 at 101.52 ft (derived by hand).
    let (good, said) = checked("100.50 ft", "1005.0 ft");
    assert!(
        good && said.contains("902.98 ft from the nearest benchmark"),
        "{said}"
    );
    assert!(said.contains("slipped decimal"), "{said}");
}

#[test]
fn a_trench_that_rises_the_way_it_flows_is_refused() {
    let fixtures = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../fixtures/site");
    let place = folder();
    for item in fs::read_dir(&fixtures).expect("sites") {
        let path = item.expect("a site").path();
        if let (true, Some(name)) = (path.is_file(), path.file_name()) {
            fs::copy(&path, place.path().join(name)).expect("a copy");
        }
    }
    let path = place.path().join("every-kind.toml");
    let site = fs::read_to_string(&path).expect("the site");
    // The inlet stands at 98.00 ft, the outlet of 96.40 ft becomes 99.40 ft: 1.40 ft above it.
    let outlet = r#"elevation = "96.40 ft""#;
    assert_eq!(site.matches(outlet).count(), 1);
    fs::write(&path, site.replace(outlet, r#"elevation = "99.40 ft""#)).expect("the site");
    let (good, said) = check(&path);
    assert!(
        !good && said.contains("rises 1.4 ft the way it should flow"),
        "{said}"
    );
}

#[test]
fn a_name_that_stands_twice_is_refused_with_its_line() {
    let second = r#"id = "P-2""#;
    let (good, said) = checked(second, r#"id = "P-1""#);
    assert!(
        !good && said.contains("“P-1” stands twice among the marks"),
        "{said}"
    );
    let line = line_of(second);
    assert!(
        said.contains(&format!("site.toml:{line}:"))
            || said.contains(&format!("site.toml:{}:", line - 1)),
        "{line}: {said}"
    );
}

#[test]
fn a_boundary_that_crosses_itself_is_refused() {
    let bow = "within = [[\"0 ft\", \"0 ft\"], [\"60 ft\", \"60 ft\"], [\"60 ft\", \"0 ft\"], [\"0 ft\", \"60 ft\"]]";
    let flat = r#"flat = { elevation = "100.50 ft" }"#;
    let (good, said) = checked(flat, &format!("{bow}\n{flat}"));
    assert!(
        !good && said.contains("The boundary crosses itself"),
        "{said}"
    );
}

#[test]
fn a_negative_tolerance_is_refused() {
    let (good, said) = checked(r#"low = "0.20 ft""#, r#"low = "-0.20 ft""#);
    assert!(!good && said.contains("at or above zero"), "{said}");
}

#[test]
fn benchmarks_that_look_alike_are_noticed() {
    let (good, said) = checked("101.52 ft", "100.03 ft");
    assert!(
        good && said.contains("BM-1 and BM-2 are only 0.03 ft apart"),
        "{said}"
    );
}

#[test]
fn two_benchmarks_that_disagree_prove_nothing() {
    let yard = Yard::open();
    let ground = yard.ground();
    ground.says(&set_up());
    // 105.00 − 3.45 = 101.55 ft, where BM-2 is said to be 101.52 ft: 0.03 ft off, more than the 0.02 ft that pass
    // (common practice).
    let off = serde_json::json!({ "kind": "shoot_check", "set_up": "S1", "benchmark": "BM-2", "rod": "A", "text": "3.45" });
    let checked = ground.says(&off);
    assert_ne!(checked["outcome"]["usable"], true, "{checked}");
    ground.is_refused(409, &reading("P-1", "4.70"));
}

#[test]
fn a_rod_value_that_is_not_on_the_rod_is_refused() {
    let inches = "id = \"B\"\nunit = \"feet_inches_eighths\"\nlength = \"13 ft\"\n\n[[laser]]";
    let place = folder();
    write_site(
        place.path(),
        &SITE.replacen("[[laser]]", &format!("[[rod]]\n{inches}"), 1),
    );
    let hub = serve(place.path());
    let truck = hub.laptop();
    let ground = truck.lets_in("RT", &["ground"], None);
    prove_laser(&ground);
    let refused = ground.is_refused(409, &reading("P-1", "85.4"));
    assert_eq!(refused["refusal"]["kind"], "rod_value", "{refused}");
    let mut in_inches = reading("P-1", "7-13");
    in_inches["rod"] = "B".into();
    let refused = ground.is_refused(409, &in_inches);
    let said = refused["english"].as_str().expect("a sentence");
    assert!(said.contains("12"), "{said}");
}

#[test]
fn a_phone_whose_clock_is_three_hours_wrong_is_told_the_hubs() {
    let yard = Yard::open();
    let ground = yard.ground();
    prove_laser(&ground);
    let three_hours = 3 * 3_600_000;
    // Fast: it counts as the arrival. Slow: it is late, kept and never shown.
    let fast = ground
        .say_made_at(
            "fast-clock",
            now_ms() + three_hours,
            &reading("P-1", "4.70"),
        )
        .json();
    assert_eq!(fast["outcome"]["kind"], "called", "{fast}");
    let slow = ground
        .say_made_at(
            "slow-clock",
            now_ms() - three_hours,
            &reading("P-2", "4.80"),
        )
        .json();
    assert_ne!(slow["outcome"]["kind"], "called", "{slow}");
    for entry in yard.truck.log() {
        assert!(entry["made_at"].as_i64() <= entry["at"].as_i64(), "{entry}");
    }
    // A page asks what the hub's clock says and corrects its own by it.
    let mut socket = ground.socket();
    socket.says(&serde_json::json!({ "kind": "clock", "t0": 7 }));
    let told = socket.until("the hub's clock", |word| {
        word["kind"] == "clock" && word["t0"] == 7
    });
    let off = told["at"].as_i64().expect("a moment") - now_ms();
    assert!(off.abs() < 600_000, "{told}");
}

#[test]
fn a_phone_that_remembers_more_than_the_log_loses_nothing() {
    let yard = Yard::open();
    let ground = yard.ground();
    let past = yard.hub_head() + 21;
    let after: Value = ground.json(&format!("/api/log?after={past}"));
    assert_eq!(after["lines"], serde_json::json!([]), "{after}");
    assert_eq!(after["head"].as_u64(), Some(yard.hub_head()), "{after}");
    // It hears the newest view all the same, with the number that the log really has.
    let view = ground.socket().view("ground", |_| true);
    assert!(view.is_object(), "{view}");
}

#[test]
fn three_hundred_readings_at_once_are_each_kept_or_told_to_come_again() {
    let yard = Yard::open();
    let ground = yard.ground();
    prove_laser(&ground);
    let mut kept = 0;
    for number in 0..300 {
        let mark = ["P-1", "P-2", "P-3"][number % 3];
        let reply = ground.say(&format!("burst-{number:03}"), &reading(mark, "4.70"));
        match reply.status {
            200 => kept += 1,
            429 | 503 => {}
            other => panic!("{other}: {}", reply.json()),
        }
    }
    assert!(kept > 0);
    let log = yard.truck.log();
    let in_log = |number: usize| {
        let key = format!("burst-{number:03}");
        log.iter().any(|entry| entry["key"] == key.as_str())
    };
    assert_eq!((0..300).filter(|number| in_log(*number)).count(), kept);
    // Nobody else waits for it.
    let other = yard.truck.lets_in("MH", &["ground"], None);
    other.says(&reading("P-1", "4.70"));
}

#[test]
fn names_that_are_code_or_pictures_are_names() {
    let script = "<script>alert(1)</script>";
    let place = folder();
    let site = SITE
        .replace(r#"id = "P-1""#, r#"id = "🚧-1""#)
        .replace("yard pad", script);
    write_site(place.path(), &site);
    let hub = serve(place.path());
    let truck = hub.laptop();
    let ground = truck.lets_in("<script>", &["ground"], None);
    prove_laser(&ground);
    let called = ground.says(&reading("🚧-1", "4.70"));
    assert_eq!(called["outcome"]["kind"], "called", "{called}");
    let names = |entry: &Value| entry["by"]["person"] == "<script>";
    assert!(
        truck.log().iter().any(names),
        "the name is kept as it was given"
    );
}
