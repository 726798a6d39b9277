//! The laptop's clock is set back an hour in the middle of the day, and set right again: the day's own clock goes on.

use serde_json::Value;

use crate::harness::phone::now_ms;
use crate::harness::yard::{prove_laser, reading};
use crate::harness::{rodcall, words};
use crate::shim::Shim;

/// The hub's clock may lie this far from the world's, for a slow machine; an hour is 3,600,000 ms.
const NEAR_MS: i64 = 600_000;

#[test]
fn a_clock_that_is_set_back_an_hour_in_the_middle_of_the_day_changes_nothing() {
    let shim = Shim::build();
    let yard = shim.open_yard();
    let (ground, cab) = (yard.ground(), yard.cab("EX-1"));
    let mut screen = cab.socket();
    screen.shows();
    prove_laser(&ground);
    // Back, and right again: each reading is a call, none is late, and what the cab shows is not old.
    for (clock, mark) in [("-", "P-1"), ("h", "P-2"), ("-", "P-3")] {
        shim.fails(clock);
        let answer = ground.says(&reading(mark, "4.70"));
        assert_eq!(answer["outcome"]["kind"], "called", "{clock}: {answer}");
        let called = |view: &Value| {
            view["screen"]["kind"] == "call" && view["screen"]["call"]["mark"] == mark
        };
        screen.view("operator", called);
    }
    let log = yard.truck.log();
    let at = |entry: &Value| entry["at"].as_i64().expect("a moment");
    assert!(log.windows(2).all(|pair| at(&pair[0]) <= at(&pair[1])));
    assert!(
        log.iter()
            .all(|entry| (at(entry) - now_ms()).abs() < NEAR_MS)
    );
    let stopped = yard.stop();
    let proof = rodcall(&["verify".as_ref(), stopped.data().as_os_str()]);
    assert!(proof.status.success(), "{}", words(&proof));
}
